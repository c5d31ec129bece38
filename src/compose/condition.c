/* condition.c - deciding a procedure's conditions for one boat (room: compose).
 *
 * Three answers: yes, no, and not known. Not known never passes for no: the fact
 * is noted and the card waits for it. The one exception is what an isolator
 * cuts: not known counts as cut, the dangerous case. */
#include "compose.h"

static bool space_is_burning(const struct composing *composing, const char *zone_key)
{
    const char *space = composing->slot->space;
    return space == NULL || text_equal(zone_key, space);
}

/* `engine_space` in a procedure means the space that the card is about. */
static bool zone_counts(const struct composing *composing, const char *zone_key,
                        const char *const *zones, size_t count)
{
    const struct zone *zone = zone_find(zone_key);
    for (size_t i = 0; zone != NULL && i < count; i++) {
        if (text_equal(zone->key, zones[i]))
            return true;
        if (zone_within(zone, zones[i]) && space_is_burning(composing, zone->key))
            return true;
    }
    return false;
}

enum truth gear_inside(const struct composing *composing, const struct equipment *gear,
                       const char *const *zones, size_t count)
{
    if (zone_counts(composing, gear->zone.text, zones, count))
        return TRUTH_YES;
    if (!gear->inside.given)
        return TRUTH_UNKNOWN;
    for (size_t i = 0; i < gear->inside.count; i++)
        if (zone_counts(composing, gear->inside.items[i].text, zones, count))
            return TRUTH_YES;
    return TRUTH_NO;
}

bool gear_cuts(const struct equipment *gear, const char *other)
{
    if (!gear->cuts.given)
        return true;
    for (size_t i = 0; i < gear->cuts.count; i++)
        if (text_equal(gear->cuts.items[i].text, other))
            return true;
    return false;
}

enum truth gear_concerns(const struct composing *composing, const struct equipment *gear)
{
    const char *space = composing->slot->space;
    if (space == NULL || composing->in->boat->engine_space_count < 2)
        return TRUTH_YES;
    if (gear->serves.given)
        return gear_serves(gear, space) ? TRUTH_YES : TRUTH_NO;
    if (!gear->kind->by_engine)
        return TRUTH_YES;
    return TRUTH_UNKNOWN;
}

const struct equipment *gear_next(const struct composing *composing, const char *item,
                                  size_t *index)
{
    const struct boat *boat = composing->in->boat;
    while (*index < boat->equipment_count) {
        const struct equipment *gear = &boat->equipment[(*index)++];
        if (text_equal(gear->item.text, item) && gear_concerns(composing, gear) != TRUTH_NO)
            return gear;
    }
    return NULL;
}

/* Is it known of every piece whose engine it serves? */
static bool serving_known(struct composing *composing, const char *item, bool note)
{
    bool known = true;
    size_t index = 0;
    for (const struct equipment *gear; (gear = gear_next(composing, item, &index)) != NULL;)
        if (gear_concerns(composing, gear) == TRUTH_UNKNOWN) {
            if (note)
                missing_note(composing, item, "serves", gear->place);
            known = false;
        }
    return known;
}

bool space_asked(const struct composing *composing, const char *item, const char *space)
{
    const struct boat *boat = composing->in->boat;
    const struct item_kind *kind = item_find(item);
    if (boat->engine_space_count < 2 || kind == NULL)
        return false;
    if (composing->slot->space != NULL)
        return text_equal(composing->slot->space, space);
    return kind->by_engine;
}

/* Where somebody looks who has to record the piece of that engine. */
static struct place other_engine_place(const struct boat *boat, const char *item)
{
    for (size_t i = 0; i < boat->equipment_count; i++)
        if (text_equal(boat->equipment[i].item.text, item))
            return boat->equipment[i].place;
    const struct absence *absence = NULL;
    for (size_t i = 0; absence == NULL && i < boat->engine_space_count; i++)
        absence = boat_absence(boat, item, boat->engine_spaces[i]);
    return absence == NULL ? boat->place : absence->place;
}

/* Fitted for the engines that are asked about: not known of one is not known. */
static enum truth fitted_by_engine(struct composing *composing, const char *item, bool note)
{
    const struct boat *boat = composing->in->boat;
    enum truth any = TRUTH_NO;
    bool known = true;
    for (size_t i = 0; i < boat->engine_space_count; i++) {
        const char *space = boat->engine_spaces[i];
        if (!space_asked(composing, item, space))
            continue;
        enum answer fitted = boat_fitted_for(boat, item, space);
        if (fitted == ANSWER_YES)
            any = TRUTH_YES;
        if (fitted != ANSWER_NOT_RECORDED)
            continue;
        known = false;
        if (note)
            missing_note_for(composing, item, space, other_engine_place(boat, item));
    }
    return known ? any : TRUTH_UNKNOWN;
}

/* Does the record say anything of the item for this or that engine? */
static bool is_mentioned(const struct boat *boat, const char *item)
{
    for (size_t i = 0; i < boat->engine_space_count; i++)
        if (boat_fitted_for(boat, item, boat->engine_spaces[i]) != ANSWER_NOT_RECORDED)
            return true;
    return boat_fitted(boat, item) != ANSWER_NOT_RECORDED;
}

/* Fitted on the boat; where it is asked of one engine, or is a kind that each engine has,
 * for that engine. A piece of the other engine tells nothing of this one's. */
static enum truth fitted_here(struct composing *composing, const char *item, bool note)
{
    const struct boat *boat = composing->in->boat;
    bool by_engine = false;
    for (size_t i = 0; i < boat->engine_space_count; i++)
        by_engine = by_engine || space_asked(composing, item, boat->engine_spaces[i]);
    if (by_engine && is_mentioned(boat, item))
        return fitted_by_engine(composing, item, note);
    enum answer fitted = boat_fitted(boat, item);
    if (fitted == ANSWER_NOT_RECORDED && note)
        missing_note(composing, item, NULL, boat->place);
    if (fitted == ANSWER_NOT_RECORDED)
        return TRUTH_UNKNOWN;
    return fitted == ANSWER_YES ? TRUTH_YES : TRUTH_NO;
}

static enum truth judge_fitted(struct composing *composing, const char *item, bool note)
{
    enum truth fitted = fitted_here(composing, item, note);
    if (fitted == TRUTH_YES && !serving_known(composing, item, note))
        return TRUTH_UNKNOWN;
    return fitted;
}

static enum truth judge_inside(struct composing *composing, const struct condition *condition,
                               bool note)
{
    enum truth all = judge_fitted(composing, condition->item, note);
    size_t index = 0;
    if (all != TRUTH_YES)
        return all;
    for (const struct equipment *gear;
         (gear = gear_next(composing, condition->item, &index)) != NULL;) {
        enum truth inside = gear_inside(composing, gear, condition->words, condition->word_count);
        if (inside == TRUTH_UNKNOWN && note)
            missing_note(composing, condition->item, "inside", gear->place);
        if (inside == TRUTH_UNKNOWN)
            all = TRUTH_UNKNOWN;
        else if (inside == TRUTH_NO && all == TRUTH_YES)
            all = TRUTH_NO;
    }
    return all;
}

/* One piece: has the field this value? */
static enum truth gear_is(const struct composing *composing, const struct equipment *gear,
                          const struct condition *condition)
{
    const struct field *field = field_find(equipment_fields(), condition->field);
    const char *value = field == NULL ? NULL : field_text(field, gear, composing->arena);
    const struct zone *zone = value == NULL ? NULL : zone_find(value);
    if (value == NULL)
        return TRUTH_UNKNOWN;
    for (size_t i = 0; i < condition->word_count; i++) {
        const char *wanted = condition->words[i];
        if (text_equal(value, wanted))
            return TRUTH_YES;
        if (zone != NULL && zone_within(zone, wanted) && space_is_burning(composing, value))
            return TRUTH_YES;
    }
    return TRUTH_NO;
}

/* True when one piece of the gear has the value; every piece must be known
 * before it is said that none has. */
static enum truth judge_is(struct composing *composing, const struct condition *condition,
                           bool note)
{
    enum truth any = judge_fitted(composing, condition->item, note);
    size_t index = 0;
    if (any != TRUTH_YES)
        return any;
    any = TRUTH_NO;
    for (const struct equipment *gear;
         (gear = gear_next(composing, condition->item, &index)) != NULL;) {
        enum truth is = gear_is(composing, gear, condition);
        if (is == TRUTH_YES)
            return TRUTH_YES;
        if (is == TRUTH_UNKNOWN && note)
            missing_note(composing, condition->item, condition->field, gear->place);
        if (is == TRUTH_UNKNOWN)
            any = TRUTH_UNKNOWN;
    }
    return any;
}

static enum truth judge_cuts(struct composing *composing, const struct condition *condition,
                             bool note)
{
    enum truth fitted = judge_fitted(composing, condition->item, note);
    size_t index = 0;
    if (fitted != TRUTH_YES)
        return fitted;
    for (const struct equipment *gear;
         (gear = gear_next(composing, condition->item, &index)) != NULL;)
        if (gear_cuts(gear, condition->words[0]))
            return TRUTH_YES;
    return TRUTH_NO;
}

static enum truth judge(struct composing *composing, const struct condition *condition, bool note);

/* All and any, with three answers: one decisive child decides even beside an
 * unknown one. `stop` is the decisive answer. */
static enum truth judge_children(struct composing *composing, const struct condition *condition,
                                 enum truth stop, bool note)
{
    enum truth result = stop == TRUTH_NO ? TRUTH_YES : TRUTH_NO;
    for (size_t i = 0; i < condition->child_count; i++) {
        enum truth child = judge(composing, condition->children[i], note);
        if (child == stop)
            return stop;
        if (child == TRUTH_UNKNOWN)
            result = TRUTH_UNKNOWN;
    }
    return result;
}

/* Has this piece all that the children ask of its kind? */
static enum truth piece_has_all(struct composing *composing, const struct condition *condition,
                                const struct equipment *gear, bool note)
{
    enum truth all = TRUTH_YES;
    for (size_t i = 0; i < condition->child_count; i++) {
        const struct condition *child = condition->children[i];
        if (child->kind != CONDITION_IS || !text_equal(child->item, gear->item.text))
            continue;
        enum truth is = gear_is(composing, gear, child);
        if (is == TRUTH_NO)
            return TRUTH_NO;
        if (is == TRUTH_UNKNOWN && note)
            missing_note(composing, child->item, child->field, gear->place);
        all = is == TRUTH_UNKNOWN ? TRUTH_UNKNOWN : all;
    }
    return all;
}

static enum truth one_has_all(struct composing *composing, const struct condition *condition,
                              const char *item, bool note)
{
    enum truth any = TRUTH_NO;
    size_t index = 0;
    for (const struct equipment *gear; (gear = gear_next(composing, item, &index)) != NULL;) {
        enum truth has = piece_has_all(composing, condition, gear, false);
        if (has == TRUTH_YES)
            return TRUTH_YES;
        if (has == TRUTH_UNKNOWN && note)
            (void)piece_has_all(composing, condition, gear, true);
        any = has == TRUTH_UNKNOWN ? TRUTH_UNKNOWN : any;
    }
    return any;
}

/* Several facts asked of one kind of gear must be true of one and the same piece. */
static enum truth judge_all(struct composing *composing, const struct condition *condition,
                            bool note)
{
    enum truth all = judge_children(composing, condition, TRUTH_NO, note);
    for (size_t i = 0; all != TRUTH_NO && i < condition->child_count; i++) {
        if (condition->children[i]->kind != CONDITION_IS || all == TRUTH_UNKNOWN)
            continue;
        all = one_has_all(composing, condition, condition->children[i]->item, note);
    }
    return all;
}

static enum truth negated(enum truth truth)
{
    if (truth == TRUTH_UNKNOWN)
        return TRUTH_UNKNOWN;
    return truth == TRUTH_YES ? TRUTH_NO : TRUTH_YES;
}

static bool boat_is(const struct boat *boat, const char *type)
{
    return text_equal(type, boat->catamaran ? "catamaran" : "monohull");
}

static enum truth judge(struct composing *composing, const struct condition *condition, bool note)
{
    switch (condition->kind) {
    case CONDITION_FITTED:
        return judge_fitted(composing, condition->item, note);
    case CONDITION_NOT_FITTED:
        return negated(judge_fitted(composing, condition->item, note));
    case CONDITION_INSIDE:
        return judge_inside(composing, condition, note);
    case CONDITION_IS:
        return judge_is(composing, condition, note);
    case CONDITION_CUTS:
        return judge_cuts(composing, condition, note);
    case CONDITION_BOAT:
        return boat_is(composing->in->boat, condition->words[0]) ? TRUTH_YES : TRUTH_NO;
    case CONDITION_ALL:
        return judge_all(composing, condition, note);
    case CONDITION_ANY:
        return judge_children(composing, condition, TRUTH_YES, note);
    case CONDITION_NONE:
        return negated(judge_children(composing, condition, TRUTH_YES, note));
    }
    return TRUTH_UNKNOWN;
}

enum truth condition_judge(struct composing *composing, const struct condition *condition)
{
    enum truth truth = condition == NULL ? TRUTH_YES : judge(composing, condition, false);
    /* Only facts that keep the whole from being decided are asked for. */
    if (truth == TRUTH_UNKNOWN)
        judge(composing, condition, true);
    return truth;
}

bool condition_admits(const struct composing *composing, const struct condition *condition,
                      const struct equipment *gear)
{
    if (condition == NULL)
        return true;
    if (condition->kind == CONDITION_IS && text_equal(condition->item, gear->item.text))
        return gear_is(composing, gear, condition) == TRUTH_YES;
    if (condition->kind != CONDITION_ALL)
        return true;
    for (size_t i = 0; i < condition->child_count; i++)
        if (!condition_admits(composing, condition->children[i], gear))
            return false;
    return true;
}
