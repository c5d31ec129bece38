/* plain_dump.c - the dump of a page (page_dump) read back: what the yardstick is given. It takes
 * the dump for sound and stops at the first line that is not. */
#include "plain.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#define LINE_MOST (64 * 1024)

static const char *const kind_words[] = {
    [PAGE_TEXT] = "text", [PAGE_BOX] = "box", [PAGE_ELLIPSE] = "ellipse", [PAGE_LINE] = "line",
    [PAGE_PATH] = "path", [PAGE_SIGN] = "sign"};
static const char *const ink_words[INK_COUNT] = {
    "none", "black", "white", "grey", "fire", "rescue", "control", "warning"};
static const char *const face_words[FACE_COUNT] = {"regular", "bold", "code"};

/* Which of the words it is; -1: none. */
static int word_of(const char *word, const char *const *words, size_t count)
{
    for (size_t i = 0; i < count; i++)
        if (words[i] != NULL && strcmp(word, words[i]) == 0)
            return (int)i;
    return -1;
}
#define WORD_OF(word, words) word_of(word, words, sizeof(words) / sizeof *(words))

/* What stands behind ` key=` up to the next space; "" where there is none. */
static const char *value_of(const char *line, const char *key, struct arena *arena)
{
    const char *at = strstr(line, text_format(arena, " %s=", key));
    if (at == NULL)
        return "";
    at += strlen(key) + 2;
    return arena_copy(arena, at, strcspn(at, " \n"));
}

static enum ink ink_of(const char *line, const char *key, struct arena *arena)
{
    int ink = WORD_OF(value_of(line, key, arena), ink_words);
    return ink < 0 ? INK_NONE : (enum ink)ink;
}

static mpt length_of(const char *line, const char *key, struct arena *arena)
{
    return (mpt)strtol(value_of(line, key, arena), NULL, 10);
}

/* The text between the first quote and the last, its escapes undone. */
static const char *quoted_of(const char *line, struct arena *arena)
{
    const char *from = strchr(line, '"'), *to = strrchr(line, '"');
    if (from == NULL || to == from)
        return NULL;
    char *text = arena_copy(arena, from + 1, (size_t)(to - from - 1)), *out = text;
    for (const char *at = text; *at != '\0'; at++) {
        if (*at == '\\' && at[1] == 'x') {
            *out++ = (char)strtol((const char[]){at[2], at[3], '\0'}, NULL, 16);
            at += 3;
        } else {
            at += *at == '\\' ? 1 : 0;
            *out++ = *at;
        }
    }
    *out = '\0';
    return text;
}

static bool text_take(const char *line, const struct faces *faces, struct arena *arena,
                      struct page_item *item)
{
    const char *text = quoted_of(line, arena);
    int face = WORD_OF(value_of(line, "face", arena), face_words);
    struct run *run = arena_alloc(arena, sizeof *run);
    uint32_t missing;

    item->fill = ink_of(line, "ink", arena);
    item->baseline = length_of(line, "baseline", arena);
    item->run = run;
    return text != NULL && face >= 0 &&
           run_shape(faces, (enum face_role)face, length_of(line, "size", arena), text,
                     strlen(text), arena, run, &missing);
}

/* `X,Y` and what stands behind it. */
static struct point point_take(const char **at)
{
    char *end;
    struct point point = {.x = (mpt)strtol(*at, &end, 10)};

    point.y = (mpt)strtol(*end == ',' ? end + 1 : end, &end, 10);
    *at = end;
    return point;
}

static void steps_take(const char *line, struct arena *arena, struct page_item *item)
{
    struct path_step *steps = arena_array(arena, strlen(line), sizeof *steps);
    const char *at = strstr(line, " M ");

    item->steps = steps;
    while (at != NULL && *at != '\0' && *at != '\n') {
        struct path_step *step = &steps[item->step_count++];
        char verb = at[1];
        at += 2;
        step->verb = verb == 'M' ? PATH_MOVE : verb == 'L' ? PATH_LINE :
                     verb == 'C' ? PATH_CURVE : PATH_CLOSE;
        for (int i = 0; verb == 'C' && i < 2; i++)
            step->control[i] = point_take(&at);
        if (verb != 'Z')
            step->to = point_take(&at);
    }
}

static void sign_take(const char *line, struct arena *arena, struct page_item *item)
{
    const char *sign = value_of(line, "class", arena), *glyph = value_of(line, "glyph", arena);

    for (enum sign_class each = SIGN_NONE; each < SIGN_CLASS_COUNT; each++)
        if (strcmp(sign_class_word(each), sign) == 0)
            item->sign = each;
    for (enum symbol_key key = SYMBOL_NONE + 1; key < SYMBOL_COUNT; key++)
        if (strcmp(symbol_of(key)->key, glyph) == 0)
            item->glyph = key;
}

/* Behind the kind and the block, which may be several words, stands where the item is. */
static const char *area_take(const char *line, struct area *area)
{
    const char *at = strpbrk(line, "0123456789-");
    char *end;

    while (at != NULL && (strtol(at, &end, 10), end == at || *end != ','))
        at = strpbrk(at + 1, "0123456789-");
    if (at == NULL)
        return NULL;
    struct point corner = point_take(&at);
    *area = (struct area){.x = corner.x, .y = corner.y, .width = (mpt)strtol(at, &end, 10)};
    area->height = (mpt)strtol(*end == 'x' ? end + 1 : end, &end, 10);
    return end;
}

/* The last two words of a line. */
static void ends_take(const char *line, struct page_item *item)
{
    const char *at = strrchr(line, ' ');

    while (at > line && at[-1] != ' ')
        at--;
    item->from = point_take(&at);
    item->to = point_take(&at);
}

static bool item_take(const char *line, const struct faces *faces, struct arena *arena,
                      struct page_item *item)
{
    char *kind_word = arena_copy(arena, line, strcspn(line, " "));
    int kind = WORD_OF(kind_word, kind_words);
    const char *rest = kind < 0 ? NULL : area_take(line, &item->area);

    if (rest == NULL)
        return false;
    item->kind = (enum page_kind)kind;
    if (item->kind == PAGE_TEXT)
        return text_take(rest, faces, arena, item);
    item->fill = ink_of(rest, "fill", arena);
    item->stroke = ink_of(rest, "stroke", arena);
    item->line_width = length_of(rest, "line", arena);
    item->radius = length_of(rest, "radius", arena);
    if (item->kind == PAGE_SIGN)
        sign_take(rest, arena, item);
    if (item->kind == PAGE_PATH)
        steps_take(rest, arena, item);
    if (item->kind == PAGE_LINE)
        ends_take(rest, item);
    return true;
}

/* `page ID LANGUAGE WIDTHxHEIGHT ...` */
static bool head_take(const char *line, struct page *page)
{
    const char *at = line;
    char *end;

    for (int i = 0; at != NULL && i < 3; i++)
        at = strchr(at + 1, ' ');
    if (strncmp(line, "page ", 5) != 0 || at == NULL)
        return false;
    page->width = (mpt)strtol(at, &end, 10);
    page->height = (mpt)strtol(*end == 'x' ? end + 1 : end, &end, 10);
    return page->width > 0 && page->height > 0;
}

const struct page *plain_dump_read(const char *path, const struct faces *faces,
                                   struct arena *arena)
{
    static char line[LINE_MOST];
    FILE *file = fopen(path, "r");
    struct page *page = arena_alloc(arena, sizeof *page);
    struct page_item *items = NULL;
    size_t room = 0;
    bool good = file != NULL && fgets(line, sizeof line, file) != NULL && head_take(line, page);

    while (good && fgets(line, sizeof line, file) != NULL) {
        struct page_item item = {0};
        good = item_take(line, faces, arena, &item);
        items = arena_grow(arena, items, page->count, &room, sizeof *items);
        items[page->count++] = item;
    }
    if (file != NULL)
        (void)fclose(file);
    if (!good)
        fprintf(stderr, "yardstick: %s: cannot be read: %s\n", path, line);
    page->items = items;
    page->title = arena_copy(arena, path, strlen(path));
    return good ? page : NULL;
}
