/* contrast.c - is every word of a page told from its ground? Reads pictures that
 * another program made of the pages and the boxes of their words; knows nothing of
 * how the pages were made.
 *
 *   contrast colour|grey|red WORDS PICTURE...
 *
 * WORDS is what `pdftotext -bbox` writes, PICTURE a page's PPM or PGM, in the order
 * of the pages. Tells each word below the least ratio; ends with 2 when it could not
 * look at all words. */
#include <math.h>
#include <stdbool.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

/* WCAG 2.1, success criterion 1.4.3. */
#define RATIO_LEAST 4.5
#define LINE_MOST 4096

enum light { LIGHT_COLOUR, LIGHT_GREY, LIGHT_RED };

struct picture {
    unsigned char *bytes;
    long width, height;
    int channels;
};

struct box { double left, top, right, bottom; };

static void give_up(const char *what, const char *of)
{
    fprintf(stderr, "contrast: %s: %s\n", what, of);
    exit(2);
}

/* ---- pictures ---- */

static long header_number(FILE *file)
{
    int c = fgetc(file);
    long number = 0;
    while (c == ' ' || c == '\n')
        c = fgetc(file);
    for (; c >= '0' && c <= '9' && number < 100000; c = fgetc(file))
        number = number * 10 + (c - '0');
    return number;
}

static struct picture picture_read(const char *path)
{
    struct picture picture = {0};
    FILE *file = fopen(path, "rb");
    if (file == NULL)
        give_up("cannot be opened", path);
    bool portable = fgetc(file) == 'P';
    int kind = fgetc(file);
    picture.channels = kind == '6' ? 3 : 1;
    picture.width = header_number(file);
    picture.height = header_number(file);
    long most = header_number(file);
    size_t size = (size_t)(picture.width * picture.height * picture.channels);
    if (!portable || (kind != '5' && kind != '6') || most != 255 || size == 0)
        give_up("is no picture of 8 bits", path);
    picture.bytes = malloc(size);
    if (picture.bytes == NULL || fread(picture.bytes, 1, size, file) != size)
        give_up("is cut short", path);
    fclose(file);
    return picture;
}

/* ---- light ---- */

static double linear(unsigned char value)
{
    double share = value / 255.0;
    return share <= 0.04045 ? share / 12.92 : pow((share + 0.055) / 1.055, 2.4);
}

/* By a red torch only the red of a colour comes back. */
static double luminance(const unsigned char *pixel, int channels, enum light light)
{
    if (channels == 1 || light == LIGHT_RED)
        return linear(pixel[0]);
    return 0.2126 * linear(pixel[0]) + 0.7152 * linear(pixel[1]) + 0.0722 * linear(pixel[2]);
}

static double ratio_of(double one, double other)
{
    return one > other ? (one + 0.05) / (other + 0.05) : (other + 0.05) / (one + 0.05);
}

/* ---- words ---- */

#define LEVELS 256

static int level_of(double luminance_of)
{
    return (int)(luminance_of * (LEVELS - 1) + 0.5);
}

/* The ratio between the light most of the box has and the one farthest from it: of
 * letters and their ground the one is the ink whichever it is. */
static double box_ratio(const struct picture *picture, struct box box, enum light light)
{
    long counts[LEVELS] = {0}, mode = 0;
    double lowest = 1, highest = 0, ground = 0;
    for (long y = (long)box.top; y <= (long)box.bottom && y < picture->height; y++)
        for (long x = (long)box.left; x <= (long)box.right && x < picture->width; x++) {
            if (x < 0 || y < 0)
                continue;
            double here = luminance(picture->bytes + (y * picture->width + x) * picture->channels,
                                    picture->channels, light);
            long *count = &counts[level_of(here)];
            lowest = here < lowest ? here : lowest;
            highest = here > highest ? here : highest;
            if (++*count > mode) {
                mode = *count;
                ground = here;
            }
        }
    double below = ratio_of(ground, lowest), above = ratio_of(ground, highest);
    return below > above ? below : above;
}

/* A letter or digit; of those beyond ASCII the Latin, Greek and Cyrillic ones. */
static bool has_letter(const char *word)
{
    for (const unsigned char *at = (const unsigned char *)word; *at != 0; at++)
        if ((*at >= 0xC3 && *at < 0xE0) || (*at >= (unsigned char)0x30 && *at <= 0x39) ||
            ((*at | 0x20) >= 0x61 && (*at | 0x20) <= 0x7A))
            return true;
    return false;
}

/* Of letters the middle, where every one has ink and no frame comes in. */
static struct box inner_box(struct box box, const char *word)
{
    double height = box.bottom - box.top;
    if (!has_letter(word))
        return box;
    return (struct box){box.left, box.top + 0.36 * height, box.right, box.top + 0.68 * height};
}

static struct box scaled(struct box box, double scale)
{
    return (struct box){box.left * scale, box.top * scale, box.right * scale, box.bottom * scale};
}

/* The number that an attribute has: name="12.5". */
static double attribute(const char *line, const char *name)
{
    const char *at = strstr(line, name);
    double number = 0, place = 1;
    if (at == NULL)
        give_up("attribute lacks", name);
    at += strlen(name);
    for (; *at >= '0' && *at <= '9'; at++)
        number = number * 10 + (*at - '0');
    for (at += *at == '.'; *at >= '0' && *at <= '9'; at++)
        number += (*at - '0') * (place /= 10);
    return number;
}

/* The text between `>` and `<`, in place. */
static char *word_text(char *line)
{
    char *text = strchr(line, '>') + 1, *end = strchr(text, '<');
    if (end != NULL)
        *end = '\0';
    return text;
}

static void word_judge(const struct picture *picture, char *line, double scale, int page,
                       enum light light)
{
    struct box box = {attribute(line, "xMin=\""), attribute(line, "yMin=\""),
                      attribute(line, "xMax=\""), attribute(line, "yMax=\"")};
    const char *word = word_text(line);
    double ratio = box_ratio(picture, scaled(inner_box(box, word), scale), light);
    if (ratio < RATIO_LEAST)
        printf("page %d: %s at %.0f,%.0f has %.2f:1\n", page, word, box.left, box.top, ratio);
}

/* ---- all ---- */

static long pages_judge(FILE *words, char **paths, int count, enum light light)
{
    char line[LINE_MOST];
    struct picture picture = {0};
    double scale = 1;
    long judged = 0;
    int page = 0;
    while (fgets(line, sizeof line, words) != NULL) {
        if (strstr(line, "<page ") != NULL) {
            if (page == count)
                give_up("more pages than pictures", paths[count - 1]);
            free(picture.bytes);
            picture = picture_read(paths[page++]);
            scale = (double)picture.width / attribute(line, "width=\"");
        } else if (strstr(line, "<word ") != NULL && picture.bytes != NULL) {
            word_judge(&picture, line, scale, page, light);
            judged++;
        }
    }
    free(picture.bytes);
    if (page != count)
        give_up("more pictures than pages", paths[count - 1]);
    return judged;
}

static enum light light_named(const char *name)
{
    static const char *const names[] = {
        [LIGHT_COLOUR] = "colour", [LIGHT_GREY] = "grey", [LIGHT_RED] = "red"};
    for (int light = LIGHT_COLOUR; light <= LIGHT_RED; light++)
        if (strcmp(names[light], name) == 0)
            return (enum light)light;
    give_up("no such light", name);
    return LIGHT_COLOUR;
}

int main(int argc, char **argv)
{
    if (argc < 4)
        give_up("use", "contrast colour|grey|red WORDS PICTURE...");
    FILE *words = fopen(argv[2], "rb");
    if (words == NULL)
        give_up("cannot be opened", argv[2]);
    long judged = pages_judge(words, argv + 3, argc - 3, light_named(argv[1]));
    fclose(words);
    if (judged == 0)
        give_up("no words", argv[2]);
    return 0;
}
