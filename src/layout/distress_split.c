/* distress_split.c - a distress call over its pages: to send it, the urgency call, to answer that
 * of others, and to end one's own; on paper of two sides, or where one holds no more, each has
 * several (room: layout). Each block is on one of them, in the order in which it is read there:
 * the call before all else. */
#include "pages.h"

#include "promise.h"

/* Where what answers takes two pages, the spelling goes to the phrases. */
enum move { STAYS_THERE, UNLESS_MOVED, WHERE_MOVED };

static const struct standing {
    enum block_key key;
    enum call_part part;          /* the finest that it is of */
    enum move move;
} standings[] = {
    {BLOCK_CALL, CALL_PART_CALL, STAYS_THERE},
    {BLOCK_NATURE, CALL_PART_HELP, STAYS_THERE},
    {BLOCK_NO_ANSWER, CALL_PART_HELP, STAYS_THERE},
    {BLOCK_POSITION, CALL_PART_PLACE, STAYS_THERE},
    {BLOCK_NEVER, CALL_PART_HELP, STAYS_THERE},
    {BLOCK_CAUTIONS, CALL_PART_HELP, STAYS_THERE},
    {BLOCK_OWN_LINES, CALL_PART_HELP, STAYS_THERE},
    {BLOCK_PAN_PAN, CALL_PART_URGENCY, STAYS_THERE},
    {BLOCK_PHRASES, CALL_PART_PHRASES, STAYS_THERE},
    {BLOCK_NEEDS, CALL_PART_PHRASES, STAYS_THERE},
    {BLOCK_ASKED, CALL_PART_ANSWER, STAYS_THERE},
    {BLOCK_SPELL, CALL_PART_ANSWER, UNLESS_MOVED},
    {BLOCK_SPELL, CALL_PART_PHRASES, WHERE_MOVED},
    {BLOCK_HEARD, CALL_PART_ANSWER, STAYS_THERE},
    {BLOCK_RELAY, CALL_PART_RELAY, STAYS_THERE},
    {BLOCK_DOWNGRADE, CALL_PART_CANCEL, STAYS_THERE},
    {BLOCK_CANCEL, CALL_PART_CANCEL, STAYS_THERE},
    {BLOCK_BEACON, CALL_PART_BEACON, STAYS_THERE},
    {BLOCK_HINTS, CALL_PART_PHRASES, STAYS_THERE}};
#define STANDING_COUNT (sizeof standings / sizeof *standings)

/* The coarser part that a part is of, where it has no page of its own. */
static enum call_part coarser(enum call_part part)
{
    switch (part) {
    case CALL_PART_CALL:
    case CALL_PART_HELP:
        return CALL_PART_SENDING;
    case CALL_PART_PLACE:
        return CALL_PART_HELP;
    case CALL_PART_PHRASES:
        return CALL_PART_URGENCY;
    case CALL_PART_ANSWER:
    case CALL_PART_RELAY:
        return CALL_PART_ANSWERING;
    case CALL_PART_BEACON:
        return CALL_PART_CANCEL;
    case CALL_PART_WHOLE:
    case CALL_PART_SENDING:
    case CALL_PART_URGENCY:
    case CALL_PART_ANSWERING:
    case CALL_PART_CANCEL:
        return part;
    }
    promise_unreached();
}

/* On a page of which part it stands. */
static enum call_part page_part(const struct laying *laying, enum call_part finest)
{
    enum call_part whole = coarser(finest);
    if (laying->wanted[whole] > 1 || whole == finest)
        return finest;
    return page_part(laying, whole);
}

static bool stands_so(const struct standing *standing, const struct laying *laying,
                      enum call_part part)
{
    bool moved = laying->wanted[CALL_PART_ANSWERING] > 1;
    bool there = standing->move == STAYS_THERE || (standing->move == WHERE_MOVED) == moved;
    return there && (part == CALL_PART_WHOLE || part == page_part(laying, standing->part));
}

static bool is_standing(enum block_key key)
{
    for (size_t i = 0; i < STANDING_COUNT; i++)
        if (standings[i].key == key)
            return true;
    return false;
}

/* Is there anything but hints to be read on the second page? */
static bool answers(const struct sheet *sheet)
{
    return sheet_pages(sheet) != NULL && (sheet_block(sheet, BLOCK_RELAY) != NULL ||
                                          sheet_block(sheet, BLOCK_DOWNGRADE) != NULL ||
                                          sheet_block(sheet, BLOCK_CANCEL) != NULL);
}

/* ---- the blocks of a page ---- */

/* All blocks of no page of their own that stand before the call, or behind it. */
enum beside { BEFORE_CALL, BEHIND_CALL };
static size_t beside_keep(const struct sheet *whole, struct block *kept, enum beside which)
{
    size_t count = 0;
    for (size_t i = 0; i < whole->block_count; i++) {
        enum block_key key = whole->blocks[i].key;
        if (!is_standing(key) && (key < BLOCK_STEPS) == (which == BEFORE_CALL))
            kept[count++] = whole->blocks[i];
    }
    return count;
}

/* Those of that part; CALL_PART_WHOLE: of all. */
static void page_blocks_set(const struct laying *laying, struct sheet *sheet, enum call_part part,
                            struct arena *arena)
{
    struct block *kept = arena_array(arena, sheet->block_count, sizeof *kept);
    size_t count = beside_keep(sheet, kept, BEFORE_CALL);
    for (size_t i = 0; i < STANDING_COUNT; i++) {
        const struct block *block = sheet_block(sheet, standings[i].key);
        if (block != NULL && stands_so(&standings[i], laying, part))
            kept[count++] = *block;
    }
    count += beside_keep(sheet, kept + count, BEHIND_CALL);
    sheet->blocks = kept;
    sheet->block_count = count;
}

static const struct sheet *call_page(const struct laying *laying, const struct sheet *whole,
                                     const struct page_place *place, struct arena *arena)
{
    struct sheet *sheet = page_sheet(whole, place, arena);
    page_blocks_set(laying, sheet, (enum call_part)place->part, arena);
    if (place->index > 0)
        page_block_remove(sheet, BLOCK_PLAN);
    return sheet;
}

/* ---- which pages ---- */

#define CALL_PAGES_MOST 9
struct call_parts { enum call_part at[CALL_PAGES_MOST]; size_t count; };

/* In the order in which they are read; those that the sheet has nothing of are left out. */
static struct call_parts parts_of(const struct laying *laying)
{
    static const enum call_part order[] = {
        CALL_PART_SENDING, CALL_PART_CALL, CALL_PART_HELP, CALL_PART_PLACE, CALL_PART_URGENCY,
        CALL_PART_PHRASES, CALL_PART_ANSWERING, CALL_PART_ANSWER, CALL_PART_RELAY,
        CALL_PART_CANCEL, CALL_PART_BEACON};
    struct call_parts parts = {.count = 0};
    for (size_t i = 0; i < sizeof order / sizeof *order; i++) {
        bool has_page = false;
        for (size_t s = 0; s < STANDING_COUNT && !has_page; s++)
            has_page = sheet_block(laying->whole, standings[s].key) != NULL &&
                       stands_so(&standings[s], laying, order[i]);
        if (has_page) {
            promise(parts.count < CALL_PAGES_MOST);
            parts.at[parts.count++] = order[i];
        }
    }
    return parts;
}

/* Of the first page with that part, or of one that it is of; the count of pages where none is. */
static size_t page_of_part(const struct call_parts *parts, const struct laying *laying,
                           enum call_part finest)
{
    size_t index = 0;
    while (index < parts->count && parts->at[index] != page_part(laying, finest))
        index++;
    return index;
}

/* What the first page says of the others hangs on how many come between. */
static void first_line_set(const struct laying *laying, const struct call_parts *parts)
{
    struct sheet *first = (struct sheet *)(uintptr_t)laying->sheets[0];    /* of this laying */
    const struct pages_facts *pages = sheet_pages(laying->whole);
    size_t urgency = page_of_part(parts, laying, CALL_PART_URGENCY);
    size_t rest = page_of_part(parts, laying, CALL_PART_ANSWER);
    if (parts->count < 2)
        return;
    promise(urgency > 0 && urgency < rest && rest <= CALL_REST_MOST);
    page_facts_set(first, BLOCK_CALL_LINE,
                   (union block_facts){.cases = pages->first_lines[urgency][rest]});
}

size_t distress_split(struct laying *laying, struct pen *pen)
{
    const struct sheet *whole = sheet_trimmed(laying->whole, &laying->trim, pen->arena);
    struct call_parts parts = {{CALL_PART_WHOLE}, 1};
    if (pen->paper->sides == TWO_SIDES)
        laying->wanted[CALL_PART_SENDING] = 2;
    if (answers(whole))
        parts = parts_of(laying);
    for (size_t i = 0; i < parts.count; i++) {
        struct page_place place = {i, parts.count, (int)parts.at[i], 0};
        laying->sheets[i] = call_page(laying, whole, &place, pen->arena);
    }
    first_line_set(laying, &parts);
    return parts.count;
}

/* Has the page that block, and is it full? */
static bool is_full_with(const struct laying *laying, enum block_key key)
{
    for (size_t p = 0; p < laying->count; p++)
        if (laying->full[p] && sheet_block(laying->sheets[p], key) != NULL)
            return true;
    return false;
}

/* What can be parted, with the block that a full page of it has. */
static bool part_more(struct laying *laying, enum block_key key, enum call_part part)
{
    if (laying->wanted[part] > 1 || !is_full_with(laying, key))
        return false;
    laying->wanted[part] = 2;
    return true;
}

/* What is urgent, what answers and what undoes take a page more before anything yields; when
 * nothing is left that yields, the MAYDAY itself does. */
bool distress_lessen(struct laying *laying)
{
    if (laying->count < 2)
        return rank_lessen(laying);
    if (laying->wanted[CALL_PART_SENDING] > 1 &&
        part_more(laying, BLOCK_POSITION, CALL_PART_HELP))
        return true;
    if (part_more(laying, BLOCK_PAN_PAN, CALL_PART_URGENCY) ||
        part_more(laying, BLOCK_HEARD, CALL_PART_ANSWERING) ||
        part_more(laying, BLOCK_DOWNGRADE, CALL_PART_CANCEL))
        return true;
    return rank_lessen(laying) || part_more(laying, BLOCK_CALL, CALL_PART_SENDING);
}
