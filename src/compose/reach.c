/* reach.c - how far one goes for a piece of gear, and whether a card may send anyone there
 * (room: compose). What is not recorded counts as far. */
#include "compose_room.h"

static bool is_below(const struct zone *zone)
{
    return zone != NULL && zone->level == LEVEL_BELOW;
}

static bool is_locker(const struct zone *zone)
{
    return zone != NULL && zone->locker;
}

/* A piece that is said to be below is reached there, unless it is worked from elsewhere. */
static bool worked_below(const struct equipment *gear)
{
    return is_below(worked_zone(gear)) ||
           (gear->below.answer == ANSWER_YES && gear->from.place_zone == NULL);
}

/* Does one go below for its handle? That a hand gets the piece from the cockpit says nothing of
 * a handle farther in than the door. */
static bool handle_below(const struct equipment *gear)
{
    const struct zone *zone = gear->handle.place_zone;
    return is_below(zone) && !zone->at_door && !zone_within(zone, ZONE_companionway);
}

/* The farthest of the place one works it from, of the spaces that one must open, enter or
 * pass on the way, and of its handle. */
enum reach gear_reach(const struct equipment *gear)
{
    bool below = worked_below(gear), locker = is_locker(worked_zone(gear));
    struct zone_value way;
    for (size_t i = 0; way_zone(gear, i, &way); i++) {
        bool passed = i >= gear->inside.count && i < gear->inside.count + gear->past.count;
        below = below || is_below(zone_of(way.value));
        locker = locker || (!passed && is_locker(zone_of(way.value)));
    }
    if (gear->from_cockpit.answer == ANSWER_NO || handle_below(gear))
        return REACH_BELOW;
    if (below)
        return gear->from_cockpit.answer == ANSWER_YES ? REACH_COMPANIONWAY : REACH_BELOW;
    return locker ? REACH_DECK : REACH_OPEN_DECK;
}

/* Petrol is also in the tank of an engine, gas also in a bottle whose valve nobody recorded. */
static bool source_about(const struct boat *boat, enum item_key item)
{
    if (item == ITEM_petrol_stowage && boat_is(boat, TRAIT_PETROL, ZONE_NONE))
        return true;
    if (item == ITEM_lpg_bottle_valve && boat_is(boat, TRAIT_GAS, ZONE_NONE))
        return true;
    return boat_fitted(boat, item) != ANSWER_NO;
}

/* A card that lets nobody call but by handheld from deck is about vapour on every boat that
 * it is for: what gives it may have come aboard with a guest. */
static bool is_told_by_handheld(struct composing *composing, const struct procedure *procedure)
{
    for (size_t i = 0; i < procedure->call_count; i++)
        if (procedure->calls[i].from.value == CALL_FROM_HANDHELD &&
            condition_truth(composing, procedure->calls[i].when) != TRUTH_NO)
            return true;
    return false;
}

void slot_take(struct composing *composing, const struct slot *slot)
{
    composing->slot = slot;
    composing->told_by_handheld = is_told_by_handheld(composing, slot->procedure);
}

bool vapour_about(const struct composing *composing)
{
    const struct item_values *sources = &composing->slot->procedure->vapour_from;
    for (size_t i = 0; i < sources->count; i++)
        if (source_about(composing->in->boat, sources->items[i].value))
            return true;
    return composing->told_by_handheld;
}

/* Taking a radio out of its charger may spark. */
static bool sparks_here(const struct composing *composing, const struct equipment *gear)
{
    return gear->item.value == ITEM_vhf_handheld && gear->in_charger.answer != ANSWER_NO &&
           vapour_about(composing);
}

bool lies_inverted(const struct composing *composing)
{
    const struct hazard_values *hazards = &composing->slot->procedure->hazards;
    for (size_t i = 0; i < hazards->count; i++)
        if (hazards->items[i].value == HAZARD_INVERTED)
            return true;
    return false;
}

enum reach reach_here(const struct composing *composing, const struct equipment *gear)
{
    const struct procedure *procedure = composing->slot->procedure;
    const struct item_values *sources = &procedure->vapour_from;
    if (lies_inverted(composing))
        return gear->reach_inverted.answer == ANSWER_YES ? REACH_OPEN_DECK : REACH_BELOW;
    if (sparks_here(composing, gear))
        return REACH_BELOW;
    if (item_value_find(&procedure->despite_vapour, gear->item.value) != NULL)
        return gear_reach(gear);
    for (size_t i = 0; i < sources->count; i++) {
        size_t index = 0;
        for (const struct equipment *source;
             (source = gear_next(composing, sources->items[i].value, &index)) != NULL;)
            if (gear->item.value != source->item.value &&
                gear_shares_locker(gear, source))
                return REACH_BELOW;
    }
    return gear_reach(gear);
}

bool gear_within(const struct composing *composing, const struct equipment *gear,
                 enum reach reach)
{
    enum zone_key space = composing->slot->space;
    if (reach == REACH_ANY)
        return true;
    if (space != ZONE_NONE && gear_inside(composing, gear, &space, 1) == TRUTH_YES)
        return false;
    return reach_here(composing, gear) <= reach;
}
