/* condition_fitted.c - is gear fitted, for the engine that a card is about (room:
 * compose)? On a boat with two engines a piece of one tells nothing of the other: what is
 * not recorded of this one is not known, and the card waits for it. */
#include "compose_room.h"

enum truth gear_concerns(const struct composing *composing, const struct equipment *gear)
{
    enum zone_key space = composing->slot->space;
    if (space == ZONE_NONE || composing->in->boat->engine_space_count < 2)
        return TRUTH_YES;
    if (gear->serves.given)
        return gear_serves(gear, space) ? TRUTH_YES : TRUTH_NO;
    if (!gear->kind->by_engine)
        return TRUTH_YES;
    return TRUTH_UNKNOWN;
}

const struct equipment *gear_next(const struct composing *composing, enum item_key item,
                                  size_t *index)
{
    const struct boat *boat = composing->in->boat;
    while (*index < boat->equipment_count) {
        const struct equipment *gear = &boat->equipment[(*index)++];
        if (gear->item.value == item && gear_concerns(composing, gear) != TRUTH_NO)
            return gear;
    }
    return NULL;
}

/* Is it known of every piece whose engine it serves? */
static bool serving_known(struct composing *composing, enum item_key item, enum noting noting)
{
    bool known = true;
    size_t index = 0;
    for (const struct equipment *gear; (gear = gear_next(composing, item, &index)) != NULL;)
        if (gear_concerns(composing, gear) == TRUTH_UNKNOWN) {
            if (noting == NOTE_MISSING)
                missing_note(composing, item, GEAR_serves, gear->place);
            known = false;
        }
    return known;
}

bool space_asked(const struct composing *composing, enum item_key item, enum zone_key space)
{
    const struct boat *boat = composing->in->boat;
    if (boat->engine_space_count < 2)
        return false;
    if (composing->slot->space != ZONE_NONE)
        return composing->slot->space == space;
    return item_kind_of(item)->by_engine;
}

/* Where somebody looks who has to record the piece of that engine. */
static struct place other_engine_place(const struct boat *boat, enum item_key item)
{
    for (size_t i = 0; i < boat->equipment_count; i++)
        if (boat->equipment[i].item.value == item)
            return boat->equipment[i].place;
    const struct absence *absence = NULL;
    for (size_t i = 0; absence == NULL && i < boat->engine_space_count; i++)
        absence = boat_absence(boat, item, boat->engine_spaces[i]);
    return absence == NULL ? boat->place : absence->place;
}

/* Fitted for the engines that are asked about: not known of one is not known. */
static enum truth fitted_by_engine(struct composing *composing, enum item_key item,
                                   enum noting noting)
{
    const struct boat *boat = composing->in->boat;
    enum truth any = TRUTH_NO;
    bool known = true;
    for (size_t i = 0; i < boat->engine_space_count; i++) {
        enum zone_key space = boat->engine_spaces[i];
        if (!space_asked(composing, item, space))
            continue;
        enum answer fitted = boat_fitted_for(boat, item, space);
        if (fitted == ANSWER_YES)
            any = TRUTH_YES;
        if (fitted != ANSWER_NOT_RECORDED)
            continue;
        known = false;
        if (noting == NOTE_MISSING)
            missing_note_for(composing, item, space, other_engine_place(boat, item));
    }
    return known ? any : TRUTH_UNKNOWN;
}

/* Does the record say anything of the item for this or that engine? */
static bool is_mentioned(const struct boat *boat, enum item_key item)
{
    const struct absence *unsurveyed = boat_unsurveyed(boat, item, ZONE_NONE);
    for (size_t i = 0; i < boat->engine_space_count; i++)
        if (boat_fitted_for(boat, item, boat->engine_spaces[i]) != ANSWER_NOT_RECORDED)
            return true;
    return (unsurveyed != NULL && !unsurveyed->whole) ||
           boat_fitted(boat, item) != ANSWER_NOT_RECORDED;
}

/* Fitted on the boat; where it is asked of one engine, or is a kind that each engine has,
 * for that engine. A piece of the other engine tells nothing of this one's. */
static enum truth fitted_here(struct composing *composing, enum item_key item, enum noting noting)
{
    const struct boat *boat = composing->in->boat;
    bool by_engine = false;
    for (size_t i = 0; i < boat->engine_space_count; i++)
        by_engine = by_engine || space_asked(composing, item, boat->engine_spaces[i]);
    if (by_engine && is_mentioned(boat, item))
        return fitted_by_engine(composing, item, noting);
    enum answer fitted = boat_fitted(boat, item);
    if (fitted == ANSWER_NOT_RECORDED && noting == NOTE_MISSING)
        missing_note(composing, item, GEAR_FIELD_NONE, boat->place);
    if (fitted == ANSWER_NOT_RECORDED)
        return TRUTH_UNKNOWN;
    return fitted == ANSWER_YES ? TRUTH_YES : TRUTH_NO;
}

enum truth fitted_judge(struct composing *composing, enum item_key item, enum noting noting)
{
    enum truth fitted = fitted_here(composing, item, noting);
    if (fitted == TRUTH_YES && !serving_known(composing, item, noting))
        return TRUTH_UNKNOWN;
    return fitted;
}
