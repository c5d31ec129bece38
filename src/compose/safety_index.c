/* safety_index.c - the index at the foot of a safety plan: where those things are that save
 * lives (room: compose). Which they are stands in the register. What a boat has not is not
 * in it, and nothing is said of that. */
#include "compose_room.h"

/* It is read at a glance, and stands on every page of the plan. */
#define ENTRIES_MOST 6

/* An entry being made: the gear of one kind, in the order of the boat's file. */
struct listing {
    struct composing *composing;
    const struct equipment **gear;
    size_t count;
};

static void gear_of_kind(struct listing *listing, enum item_key item)
{
    const struct boat *boat = listing->composing->in->boat;
    listing->count = 0;
    for (size_t i = 0; i < boat->equipment_count; i++)
        if (boat->equipment[i].kind->item == item)
            listing->gear[listing->count++] = &boat->equipment[i];
}

static bool one_spot(const struct marker *a, const struct marker *b)
{
    return a->zone == b->zone && a->side == b->side && a->level == b->level;
}

/* All pieces of the kind that stand where this one does, the first of them. */
static struct index_spot spot_of(const struct listing *listing, size_t first)
{
    struct composing *composing = listing->composing;
    const struct boat *boat = composing->in->boat;
    const char **tags = arena_array(composing->arena, listing->count, sizeof *tags);
    struct marker marker = marker_of(boat, listing->gear[first]);
    struct index_spot spot = {plan_place_title(composing, &marker), tags, 0, marker.level,
                              marker.origin};
    for (size_t i = first; i < listing->count; i++) {
        struct marker other = marker_of(boat, listing->gear[i]);
        if (one_spot(&other, &marker) && !text_empty(other.tag))
            tags[spot.tag_count++] = other.tag;
    }
    return spot;
}

static bool spot_is_new(const struct listing *listing, size_t index)
{
    const struct boat *boat = listing->composing->in->boat;
    struct marker own = marker_of(boat, listing->gear[index]);
    for (size_t i = 0; i < index; i++) {
        struct marker other = marker_of(boat, listing->gear[i]);
        if (one_spot(&other, &own))
            return false;
    }
    return true;
}

static uint64_t pieces_of_entry(const struct listing *listing)
{
    uint64_t pieces = 0;
    for (size_t i = 0; i < listing->count; i++) {
        const struct equipment *gear = listing->gear[i];
        pieces += gear->count.given && gear->count.milli > 1000
                      ? (uint64_t)(gear->count.milli / 1000) : 1;
    }
    return pieces;
}

static struct index_entry index_entry_of(const struct listing *listing)
{
    struct composing *composing = listing->composing;
    enum item_key item = listing->gear[0]->kind->item;
    uint64_t pieces = pieces_of_entry(listing);
    struct index_spot *spots = arena_array(composing->arena, listing->count, sizeof *spots);
    struct index_entry entry = {
        phrase_said(composing, pieces > 1 ? phrase_items(composing->arena, item, pieces)
                                          : phrase_item(composing->arena, item)), spots, 0};
    for (size_t i = 0; i < listing->count; i++)
        if (spot_is_new(listing, i))
            spots[entry.spot_count++] = spot_of(listing, i);
    return entry;
}

void index_make(struct composing *composing, struct sheet *sheet)
{
    struct index_facts *index = arena_alloc(composing->arena, sizeof *index);
    struct index_entry *entries = arena_array(composing->arena, ENTRIES_MOST, sizeof *entries);
    struct listing listing = {composing, arena_array(composing->arena,
                                                     composing->in->boat->equipment_count,
                                                     sizeof *listing.gear), 0};
    index->entries = entries;
    for (size_t i = 0; life_saving_items[i] != ITEM_NONE && index->count < ENTRIES_MOST; i++) {
        gear_of_kind(&listing, life_saving_items[i]);
        if (listing.count > 0)
            entries[index->count++] = index_entry_of(&listing);
    }
    if (index->count > 0)
        block_add(composing, sheet, BLOCK_INDEX)->index = index;
}
