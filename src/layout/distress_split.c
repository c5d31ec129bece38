/* distress_split.c - a distress call over two pages: one to send it, one to answer that of
 * others and to end it (room: layout). Each block is on one of them, in the order in which it is
 * read there: the call before all else. */
#include "pages.h"

/* A long name that is spelled may go to the second page. */
enum move { STAYS_THERE, UNLESS_MOVED, WHERE_MOVED };

static const struct standing {
    enum block_key key;
    enum call_part part;
    enum move move;
} standings[] = {
    {BLOCK_CALL, CALL_PART_SENDING, STAYS_THERE},
    {BLOCK_NATURE, CALL_PART_SENDING, STAYS_THERE},
    {BLOCK_NO_ANSWER, CALL_PART_SENDING, STAYS_THERE},
    {BLOCK_SPELL, CALL_PART_SENDING, UNLESS_MOVED},
    {BLOCK_NEVER, CALL_PART_SENDING, STAYS_THERE},
    {BLOCK_CAUTIONS, CALL_PART_SENDING, STAYS_THERE},
    {BLOCK_LOCAL_RULES, CALL_PART_SENDING, STAYS_THERE},
    {BLOCK_PAN_PAN, CALL_PART_SENDING, STAYS_THERE},
    {BLOCK_RELAY, CALL_PART_ANSWERING, STAYS_THERE},
    {BLOCK_DOWNGRADE, CALL_PART_ANSWERING, STAYS_THERE},
    {BLOCK_CANCEL, CALL_PART_ANSWERING, STAYS_THERE},
    {BLOCK_SPELL, CALL_PART_ANSWERING, WHERE_MOVED},
    {BLOCK_HINTS, CALL_PART_ANSWERING, STAYS_THERE}};
#define STANDING_COUNT (sizeof standings / sizeof *standings)

static bool stands_so(const struct standing *standing, const struct laying *laying,
                      enum call_part part)
{
    bool there = standing->move == STAYS_THERE ||
                 (standing->move == WHERE_MOVED) == laying->moved;
    return there && (part == CALL_PART_WHOLE || part == standing->part);
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
    if (place->part == CALL_PART_ANSWERING)
        page_block_remove(sheet, BLOCK_PLAN);
    return sheet;
}

size_t distress_split(struct laying *laying, struct pen *pen)
{
    static const enum call_part parts[] = {CALL_PART_SENDING, CALL_PART_ANSWERING};
    const struct sheet *whole = sheet_trimmed(laying->whole, &laying->trim, pen->arena);
    struct page_place place = {0, 1, CALL_PART_WHOLE};
    if (!answers(whole)) {
        laying->sheets[0] = call_page(laying, whole, &place, pen->arena);
        return 1;
    }
    place.count = sizeof parts / sizeof *parts;
    for (; place.index < place.count; place.index++) {
        place.part = (int)parts[place.index];
        laying->sheets[place.index] = call_page(laying, whole, &place, pen->arena);
    }
    return place.count;
}

/* The name that is spelled moves before anything yields. */
bool distress_lessen(struct laying *laying)
{
    bool full = laying->count > 1 && laying->full[0];
    if (!full || laying->moved || sheet_block(laying->sheets[0], BLOCK_SPELL) == NULL)
        return rank_lessen(laying);
    laying->moved = true;
    return true;
}
