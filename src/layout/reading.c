/* reading.c - how a page is read to one who does not see it: parts and their order (room:
 * layout). It goes by blocks, paragraphs and roles of text, and knows no block's inside. */
#include "layout_room.h"

#include "promise.h"
#include "text.h"
#include "words.h"

/* What is said on the radio is English in every language. */
#define SPOKEN_LANGUAGE "en"

/* Of what is not read. */
#define PASSED_OVER SIZE_MAX

/* Blocks are read in the order of the sheet, but these behind all others: whom to phone behind
 * the call, the picture of the boat behind the words that it repeats, what is about the page. */
static const enum block_key read_last[] = {BLOCK_CONTACT, BLOCK_PLAN, BLOCK_LEGEND, BLOCK_SOURCES,
                                           BLOCK_FOOTER};
#define LAST_COUNT (sizeof read_last / sizeof *read_last)

/* ---- parts ---- */

static struct reading_part *part_at(struct pen *pen, size_t part)
{
    promise(part < pen->reading.count);
    return &pen->reading.parts[part];
}

static void part_put(struct pen *pen, struct reading_part part)
{
    struct reading *reading = &pen->reading;
    reading->parts = arena_grow(pen->arena, reading->parts, reading->count, &reading->room,
                                sizeof *reading->parts);
    reading->parts[reading->count++] = part;
}

/* The first part is the page. */
static size_t part_begin(struct pen *pen, struct reading_part part)
{
    if (pen->reading.count == 0)
        part_put(pen, (struct reading_part){.kind = READING_GROUP});
    part_put(pen, part);
    return pen->reading.count - 1;
}

/* The part of the pen's block, a picture where the block is one. */
static size_t part_of_block(struct pen *pen)
{
    size_t *part = &pen->reading.of_block[pen->block];
    if (*part == 0)
        *part = part_begin(pen, (struct reading_part){.kind = pen->block == BLOCK_PLAN
                                                                  ? READING_FIGURE
                                                                  : READING_GROUP});
    return *part;
}

static size_t part_holding(struct pen *pen)
{
    return pen->reading.open == 0 ? part_of_block(pen) : pen->reading.open;
}

static bool holds_parts(enum reading_kind kind)
{
    return kind == READING_GROUP || kind == READING_ENTRY;
}

/* ---- what is open ---- */

static size_t part_switch(struct pen *pen, size_t part)
{
    size_t outer = pen->reading.open;
    pen->reading.open = part;
    pen->reading.text = 0;
    return outer;
}

size_t reading_begin(struct pen *pen, enum reading_kind kind)
{
    if (pen->reading.open == PASSED_OVER)
        return part_switch(pen, PASSED_OVER);
    struct reading_part part = {.kind = kind, .parent = part_holding(pen),
                                .language = kind == READING_SPOKEN ? SPOKEN_LANGUAGE : NULL};
    return part_switch(pen, part_begin(pen, part));
}

size_t reading_resume(struct pen *pen, size_t part)
{
    return part_switch(pen, part);
}

size_t reading_skip(struct pen *pen)
{
    return part_switch(pen, PASSED_OVER);
}

void reading_end(struct pen *pen, size_t outer)
{
    part_switch(pen, outer);
}

size_t reading_part_open(const struct pen *pen)
{
    return pen->reading.open;
}

/* ---- items ---- */

/* What the text is by its role. */
static enum reading_kind text_kind(enum page_role role, enum reading_kind holder)
{
    if (role == ROLE_TITLE)
        return READING_TITLE;
    if (role == ROLE_HEADLINE)
        return READING_HEADING;
    return role == ROLE_NUMBER && holder == READING_ENTRY ? READING_LABEL : READING_TEXT;
}

/* Does a text of that kind go on with the one being read? Only as one paragraph with it. */
static bool text_goes_on(struct pen *pen, size_t holder, enum reading_kind kind)
{
    const struct reading *reading = &pen->reading;
    if (reading->text == 0 || pen->paragraph == 0)
        return false;
    const struct reading_part *text = part_at(pen, reading->text);
    return text->kind == kind && text->parent == holder &&
           reading->text_paragraph == pen->paragraph;
}

/* The part that words of that role are placed in. */
static size_t text_part(struct pen *pen, enum page_role role)
{
    size_t holder = part_holding(pen);
    if (!holds_parts(part_at(pen, holder)->kind))
        return holder;
    enum reading_kind kind = text_kind(role, part_at(pen, holder)->kind);
    if (!text_goes_on(pen, holder, kind)) {
        pen->reading.text = part_begin(pen, (struct reading_part){.kind = kind, .parent = holder});
        pen->reading.text_paragraph = pen->paragraph;
    }
    return pen->reading.text;
}

void reading_text(struct pen *pen, struct page_item *item)
{
    if (pen->reading.open != PASSED_OVER)
        item->reading = text_part(pen, item->role);
}

/* Shapes of a picture are part of it. */
void reading_shape(struct pen *pen, struct page_item *item)
{
    size_t part = pen->reading.open;
    if (part == PASSED_OVER)
        return;
    if (part == 0 && pen->block == BLOCK_PLAN)
        part = part_of_block(pen);
    while (part != 0 && part_at(pen, part)->kind != READING_FIGURE)
        part = part_at(pen, part)->parent;
    item->reading = part;
}

void reading_blank(struct pen *pen, struct page_item *item)
{
    if (pen->reading.open == PASSED_OVER)
        return;
    struct reading_part blank = {.kind = READING_BLANK, .parent = text_part(pen, ROLE_SCRIPT)};
    item->reading = part_begin(pen, blank);
}

/* ---- words in the place of what is drawn ---- */

static void row_markers_told(const struct places_facts *places, struct text_builder *told)
{
    for (size_t i = 0; i < places->count; i++)
        for (size_t r = 0; r < places->places[i].row_count; r++)
            text_add_format(told, " %s", places->places[i].rows[r].marker.told);
}

/* The picture of the boat in words: each tag on it with its place. */
static const char *picture_told(const struct pen *pen)
{
    const struct plan_facts *plan = sheet_plan(pen->sheet);
    struct text_builder told = text_builder_in(pen->arena);
    text_add(&told, text_empty(plan->told) ? "" : plan->told);
    for (size_t i = 0; i < plan->marker_count; i++)
        if (!text_empty(plan->markers[i].told))
            text_add_format(&told, " %s", plan->markers[i].told);
    row_markers_told(sheet_places(pen->sheet), &told);
    return told.at;
}

static const char *alternative_of(const struct pen *pen, enum reading_kind kind)
{
    if (kind == READING_FIGURE)
        return picture_told(pen);
    return kind == READING_BLANK ? words_get(pen->sheet->words, WORD_BLANK_TOLD) : NULL;
}

/* ---- the order ---- */

/* The parts as they are read, and the new number of each; 0: it has none yet. */
struct settling {
    const struct reading *reading;
    struct reading_part *parts;
    size_t count;
    size_t *numbers;
};

static void part_settle(struct settling *settling, size_t part);

/* Those of the part that are titles, or that are none. */
enum titles { TITLES, OTHERS };
static void parts_settle(struct settling *settling, size_t part, enum titles which)
{
    const struct reading_part *parts = settling->reading->parts;
    for (size_t i = part + 1; i < settling->reading->count; i++)
        if (parts[i].parent == part && (parts[i].kind == READING_TITLE) == (which == TITLES))
            part_settle(settling, i);
}

/* A part, then those that belong to it: a title before all else, the others as they were
 * begun. */
static void part_settle(struct settling *settling, size_t part)
{
    const struct reading *reading = settling->reading;
    struct reading_part *settled = &settling->parts[settling->count];
    if (part == 0 || settling->numbers[part] != 0)
        return;
    *settled = reading->parts[part];
    settled->parent = settling->numbers[settled->parent];
    settling->numbers[part] = settling->count++;
    parts_settle(settling, part, TITLES);
    parts_settle(settling, part, OTHERS);
}

static bool is_read_last(enum block_key block)
{
    for (size_t i = 0; i < LAST_COUNT; i++)
        if (read_last[i] == block)
            return true;
    return false;
}

/* Behind those of the sheet come those that only the page has. */
static void blocks_settle(struct settling *settling, const struct sheet *sheet)
{
    const size_t *of_block = settling->reading->of_block;
    for (size_t i = 0; sheet != NULL && i < sheet->block_count; i++)
        if (!is_read_last(sheet->blocks[i].key))
            part_settle(settling, of_block[sheet->blocks[i].key]);
    for (enum block_key block = BLOCK_NONE; block < BLOCK_COUNT; block++)
        if (!is_read_last(block))
            part_settle(settling, of_block[block]);
    for (size_t i = 0; i < LAST_COUNT; i++)
        part_settle(settling, of_block[read_last[i]]);
}

void reading_settle(struct pen *pen, struct page *page)
{
    const struct reading *reading = &pen->reading;
    if (reading->count == 0)
        return;
    struct settling settling = {
        .reading = reading, .count = 1,
        .parts = arena_array(pen->arena, reading->count, sizeof *settling.parts),
        .numbers = arena_array(pen->arena, reading->count, sizeof *settling.numbers)};
    settling.parts[0] = reading->parts[0];
    blocks_settle(&settling, pen->sheet);
    for (size_t i = 0; i < pen->count; i++)
        pen->items[i].reading = settling.numbers[pen->items[i].reading];
    for (size_t i = 0; i < settling.count; i++)
        settling.parts[i].alternative = alternative_of(pen, settling.parts[i].kind);
    page->parts = settling.parts;
    page->part_count = settling.count;
}
