/* content.c - operators of a content stream and their numbers (room: draw). It knows the
 * syntax and no page; what has been set is set once. */
#include "content.h"

#include <string.h>

#include "arena.h"
#include "utf8.h"

#define START ((size_t)64 * 1024)
#define START_SMALL ((size_t)96)
#define DIGITS_MOST 24
#define MILLI 1000
#define UNKNOWN (-1)
#define GLYPH_MOST 4            /* bytes of a glyph in a string */

struct content content_in(struct arena *arena)
{
    return (struct content){.arena = arena, .at = arena_alloc(arena, START), .room = START};
}

struct content content_small_in(struct arena *arena)
{
    return (struct content){.arena = arena, .at = arena_alloc(arena, START_SMALL),
                            .room = START_SMALL};
}

void content_page_begin(struct content *content)
{
    content->length = 0;
    content->state = (struct pen_state){.fill_known = true, .stroke_known = true,
                                        .line_width = MILLI, .join = JOIN_MITRE, .cap = CAP_BUTT,
                                        .face = UNKNOWN};
}

void content_form_begin(struct content *content)
{
    content->length = 0;
    content->state = (struct pen_state){.line_width = UNKNOWN, .join = UNKNOWN, .cap = UNKNOWN,
                                        .face = UNKNOWN};
}

/* Where the next bytes go, with room for so many. */
static char *content_room(struct content *content, size_t more)
{
    if (content->room - content->length < more) {
        size_t larger = 2 * content->room > content->length + more ? 2 * content->room
                                                                   : content->length + more;
        char *at = arena_alloc(content->arena, larger);
        memcpy(at, content->at, content->length);
        content->at = at;
        content->room = larger;
    }
    return content->at + content->length;
}

void content_bytes_add(struct content *content, const char *at, size_t length)
{
    memcpy(content_room(content, length), at, length);
    content->length += length;
}

void content_add(struct content *content, const char *words)
{
    content_bytes_add(content, words, strlen(words));
}

/* Digits are made from the last one on; gives the first of those that end at `end`. */
static char *whole_spell(char *end, uint64_t number)
{
    do {
        *--end = (char)('0' + number % 10);
        number /= 10;
    } while (number > 0);
    return end;
}

/* The fraction without the zeros at its end, and its point; nothing where it is 0. */
static char *fraction_spell(char *end, unsigned fraction, unsigned places)
{
    if (fraction == 0)
        return end;
    for (; fraction % 10 == 0; places--)
        fraction /= 10;
    for (; places > 0; places--) {
        *--end = (char)('0' + fraction % 10);
        fraction /= 10;
    }
    *--end = '.';
    return end;
}

static uint64_t size_without_sign(int64_t number)
{
    return number < 0 ? (uint64_t)0 - (uint64_t)number : (uint64_t)number;
}

void content_whole_add(struct content *content, int64_t number)
{
    char digits[DIGITS_MOST], *end = digits + DIGITS_MOST;
    char *first = whole_spell(end, size_without_sign(number));

    if (number < 0)
        *--first = '-';
    content_bytes_add(content, first, (size_t)(end - first));
}

void content_milli_add(struct content *content, int64_t milli)
{
    char digits[DIGITS_MOST], *end = digits + DIGITS_MOST, *first = end;
    uint64_t size = size_without_sign(milli);

    *--first = ' ';
    first = whole_spell(fraction_spell(first, (unsigned)(size % MILLI), 3), size / MILLI);
    if (milli < 0)
        *--first = '-';
    content_bytes_add(content, first, (size_t)(end - first));
}

void content_micro_add(struct content *content, int64_t micro)
{
    char digits[DIGITS_MOST], *end = digits + DIGITS_MOST, *first = end;
    uint64_t size = size_without_sign(micro);

    *--first = ' ';
    first = whole_spell(fraction_spell(first, (unsigned)(size % MICRO), 6), size / MICRO);
    if (micro < 0)
        *--first = '-';
    content_bytes_add(content, first, (size_t)(end - first));
}

/* Brackets and the backslash mean something within a string, and an end of a line another one. */
static char *byte_spell(char *at, unsigned char byte)
{
    if (byte == '(' || byte == ')' || byte == '\\' || byte == '\n' || byte == '\r')
        *at++ = '\\';
    *at++ = byte == '\n' ? 'n' : byte == '\r' ? 'r' : (char)byte;
    return at;
}

void content_glyph_add(struct content *content, uint16_t number)
{
    char *first = content_room(content, GLYPH_MOST);
    char *end = byte_spell(byte_spell(first, (unsigned char)(number >> 8)),
                           (unsigned char)(number & 0xFF));

    content->length += (size_t)(end - first);
}

static bool is_plain_ascii(const char *text)
{
    for (; *text != '\0'; text++)
        if ((unsigned char)*text < ' ' || (unsigned char)*text > '~')
            return false;
    return true;
}

void content_text_add(struct content *content, const char *text)
{
    size_t length = strlen(text), index = 0;
    bool ascii = is_plain_ascii(text);
    uint32_t code_point;

    content_add(content, ascii ? "(" : "(\xFE\xFF");
    while (ascii && index < length) {
        char *first = content_room(content, GLYPH_MOST);
        char *end = byte_spell(first, (unsigned char)text[index++]);
        content->length += (size_t)(end - first);
    }
    while (index < length && utf8_next(text, length, &index, &code_point)) {
        if (code_point >= 0x10000) {
            content_glyph_add(content, (uint16_t)(0xD800 + ((code_point - 0x10000) >> 10)));
            code_point = 0xDC00 + ((code_point - 0x10000) & 0x3FF);
        }
        content_glyph_add(content, (uint16_t)code_point);
    }
    content_add(content, ")");
}

/* ---- state ---- */

static bool colours_equal(struct rgb a, struct rgb b)
{
    return a.red == b.red && a.green == b.green && a.blue == b.blue;
}

static void level_add(struct content *content, unsigned char value)
{
    content_milli_add(content, (value * MILLI + UINT8_MAX / 2) / UINT8_MAX);
}

/* Greys are told as grey, so that black text is printed in black alone. */
static void colour_set(struct content *content, struct rgb colour, const char *grey,
                       const char *coloured)
{
    level_add(content, colour.red);
    if (colour.red == colour.green && colour.green == colour.blue) {
        content_add(content, grey);
        return;
    }
    level_add(content, colour.green);
    level_add(content, colour.blue);
    content_add(content, coloured);
}

void content_fill_set(struct content *content, struct rgb colour)
{
    struct pen_state *state = &content->state;

    if (state->fill_known && colours_equal(state->fill, colour))
        return;
    state->fill_known = true;
    state->fill = colour;
    colour_set(content, colour, "g\n", "rg\n");
}

void content_stroke_set(struct content *content, struct rgb colour)
{
    struct pen_state *state = &content->state;

    if (state->stroke_known && colours_equal(state->stroke, colour))
        return;
    state->stroke_known = true;
    state->stroke = colour;
    colour_set(content, colour, "G\n", "RG\n");
}

void content_width_set(struct content *content, int64_t milli)
{
    if (content->state.line_width == milli)
        return;
    content->state.line_width = milli;
    content_milli_add(content, milli);
    content_add(content, "w\n");
}

void content_ends_set(struct content *content, int join, int cap)
{
    if (content->state.join != join)
        content_add(content, join == JOIN_ROUND ? "1 j\n" : "0 j\n");
    if (content->state.cap != cap)
        content_add(content, cap == CAP_ROUND ? "1 J\n" : "0 J\n");
    content->state.join = join;
    content->state.cap = cap;
}

/* ---- paths ---- */

static void place_write(struct content *content, int64_t x, int64_t y, const char *operator)
{
    content_milli_add(content, x);
    content_milli_add(content, y);
    content_add(content, operator);
}

void content_move(struct content *content, int64_t x, int64_t y)
{
    place_write(content, x, y, "m\n");
}

void content_line(struct content *content, int64_t x, int64_t y)
{
    place_write(content, x, y, "l\n");
}

void content_curve(struct content *content, const int64_t numbers[6])
{
    for (size_t i = 0; i < 6; i++)
        content_milli_add(content, numbers[i]);
    content_add(content, "c\n");
}

void content_rectangle(struct content *content, int64_t x, int64_t y, int64_t width,
                       int64_t height)
{
    content_milli_add(content, x);
    content_milli_add(content, y);
    place_write(content, width, height, "re\n");
}
