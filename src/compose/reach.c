/* reach.c - how far one goes for a piece of gear, and whether a card may send anyone there
 * (room: compose). What is not recorded counts as far. */
#include "compose.h"

enum reach gear_reach(const struct equipment *gear)
{
    bool below = gear->below.answer == ANSWER_YES ||
                 (gear->place_zone != NULL && gear->place_zone->level == LEVEL_BELOW);
    if (gear->from_cockpit.answer == ANSWER_NO)
        return REACH_BELOW;
    if (below)
        return gear->from_cockpit.answer == ANSWER_YES ? REACH_COMPANIONWAY : REACH_BELOW;
    return gear->place_zone != NULL && gear->place_zone->locker ? REACH_DECK : REACH_OPEN_DECK;
}

/* Both in one locker; a side that is not recorded may be the same. */
static bool shares_locker(const struct equipment *gear, const struct equipment *source)
{
    return gear != source && gear->place_zone != NULL && source->place_zone != NULL &&
           gear->place_zone->locker &&
           text_equal(gear->place_zone->family, source->place_zone->family) &&
           (gear->place_side == source->place_side || gear->place_side == SIDE_NONE ||
            source->place_side == SIDE_NONE);
}

enum reach reach_here(const struct composing *composing, const struct equipment *gear)
{
    const struct list_value *sources = &composing->slot->procedure->vapour_from;
    for (size_t i = 0; i < sources->count; i++) {
        size_t index = 0;
        for (const struct equipment *source;
             (source = gear_next(composing, sources->items[i].text, &index)) != NULL;)
            if (!text_equal(gear->item.text, source->item.text) && shares_locker(gear, source))
                return REACH_BELOW;
    }
    return gear_reach(gear);
}

static enum reach reach_of(const char *word)
{
    int reach = REACH_OPEN_DECK;
    while (reach < REACH_BELOW && !text_equal(reach_words[reach], word))
        reach++;
    return (enum reach)reach;
}

bool gear_within(const struct composing *composing, const struct equipment *gear,
                 const char *reach)
{
    const char *space = composing->slot->space;
    if (reach == NULL)
        return true;
    if (space != NULL && gear_inside(composing, gear, &space, 1) == TRUTH_YES)
        return false;
    return reach_here(composing, gear) <= reach_of(reach);
}
