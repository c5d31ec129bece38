/* distress_split.c - a distress call over its pages: to send it, and to answer that of others
 * and end it; on paper of two sides, or where one holds no more, what is said first has a page
 * alone (room: layout). Each
 * block is on one of them, in the order in which it is read there: the call before all else. */
#include "pages.h"

#include "promise.h"

/* A long name that is spelled may go to the second page. */
enum move { STAYS_THERE, UNLESS_MOVED, WHERE_MOVED };

static const struct standing {
    enum block_key key;
    enum call_part part;          /* the finest that it is of */
    enum move move;
} standings[] = {
    {BLOCK_CALL, CALL_PART_CALL, STAYS_THERE},
    {BLOCK_NATURE, CALL_PART_HELP, STAYS_THERE},
    {BLOCK_NO_ANSWER, CALL_PART_HELP, STAYS_THERE},
    {BLOCK_SPELL, CALL_PART_HELP, UNLESS_MOVED},
    {BLOCK_NEVER, CALL_PART_HELP, STAYS_THERE},
    {BLOCK_CAUTIONS, CALL_PART_HELP, STAYS_THERE},
    {BLOCK_LOCAL_RULES, CALL_PART_HELP, STAYS_THERE},
    {BLOCK_PAN_PAN, CALL_PART_URGENCY, STAYS_THERE},
    {BLOCK_RELAY, CALL_PART_RELAY, STAYS_THERE},
    {BLOCK_DOWNGRADE, CALL_PART_RELAY, STAYS_THERE},
    {BLOCK_CANCEL, CALL_PART_CANCEL, STAYS_THERE},
    {BLOCK_SPELL, CALL_PART_CANCEL, WHERE_MOVED},
    {BLOCK_HINTS, CALL_PART_CANCEL, STAYS_THERE}};
#define STANDING_COUNT (sizeof standings / sizeof *standings)

static bool part_holds(enum call_part part, enum call_part finest)
{
    switch (part) {
    case CALL_PART_WHOLE:
        return true;
    case CALL_PART_SENDING:
        return finest == CALL_PART_CALL || finest == CALL_PART_HELP ||
               finest == CALL_PART_URGENCY;
    case CALL_PART_ANSWERING:
        return finest == CALL_PART_RELAY || finest == CALL_PART_CANCEL;
    case CALL_PART_CALL:
    case CALL_PART_HELP:
    case CALL_PART_URGENCY:
    case CALL_PART_RELAY:
    case CALL_PART_CANCEL:
        return part == finest;
    }
    promise_unreached();
}

static bool stands_so(const struct standing *standing, const struct laying *laying,
                      enum call_part part)
{
    bool there = standing->move == STAYS_THERE ||
                 (standing->move == WHERE_MOVED) == laying->moved;
    return there && part_holds(part, standing->part);
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

#define CALL_PAGES_MOST 5
struct call_parts { enum call_part at[CALL_PAGES_MOST]; size_t count; };

static struct call_parts parts_of(const struct laying *laying, const struct paper *paper)
{
    struct call_parts parts = {{CALL_PART_SENDING, CALL_PART_ANSWERING}, 2};
    if (paper->sides == TWO_SIDES || laying->wanted[CALL_PART_SENDING] > 1)
        parts = (struct call_parts){{CALL_PART_CALL, CALL_PART_HELP, CALL_PART_URGENCY,
                                     CALL_PART_ANSWERING}, 4};
    if (laying->wanted[CALL_PART_ANSWERING] > 1) {
        parts.at[parts.count - 1] = CALL_PART_RELAY;
        parts.at[parts.count++] = CALL_PART_CANCEL;
    }
    return parts;
}

size_t distress_split(struct laying *laying, struct pen *pen)
{
    const struct sheet *whole = sheet_trimmed(laying->whole, &laying->trim, pen->arena);
    struct call_parts parts = {{CALL_PART_WHOLE}, 1};
    if (answers(whole))
        parts = parts_of(laying, pen->paper);
    for (size_t i = 0; i < parts.count; i++) {
        struct page_place place = {i, parts.count, (int)parts.at[i]};
        laying->sheets[i] = call_page(laying, whole, &place, pen->arena);
    }
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

/* On paper of two sides what is answered takes a page more; the name that is spelled moves before
 * anything yields. When nothing is left that does, what is sent is parted as on two sides. */
bool distress_lessen(struct laying *laying)
{
    bool both = is_full_with(laying, BLOCK_RELAY) && is_full_with(laying, BLOCK_CANCEL);
    if (both && laying->count > 2 && laying->wanted[CALL_PART_ANSWERING] < 2) {
        laying->wanted[CALL_PART_ANSWERING] = 2;
        return true;
    }
    if (laying->count > 1 && !laying->moved && is_full_with(laying, BLOCK_SPELL)) {
        laying->moved = true;
        return true;
    }
    if (rank_lessen(laying))
        return true;
    bool parted = laying->count == 2 && laying->full[0];
    laying->wanted[CALL_PART_SENDING] = parted ? 2 : laying->wanted[CALL_PART_SENDING];
    return parted;
}
