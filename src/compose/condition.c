/* condition.c - deciding a procedure's conditions for one boat (room: compose).
 *
 * Three answers: yes, no, and not known. Not known never passes for no: the fact
 * is noted and the card waits for it. Where one answer is the dangerous one, not known
 * counts as that: an isolator cuts, gas is carried, gear is below. */
#include "compose_room.h"

#include "promise.h"

#define TRUTH_IF(so) ((so) ? TRUTH_YES : TRUTH_NO)

static bool space_is_burning(const struct composing *composing, enum zone_key zone)
{
    enum zone_key space = composing->slot->space;
    return space == ZONE_NONE || zone == space;
}

/* `engine_space` in a procedure means the space that the card is about, even where another one
 * bears that very name. */
static bool zone_counts(const struct composing *composing, enum zone_key key,
                        const enum zone_key *zones, size_t count)
{
    for (size_t i = 0; key != ZONE_NONE && i < count; i++)
        if (zone_within(zone_of(key), zones[i]) &&
            ((key == zones[i] && key != ZONE_engine_space) || space_is_burning(composing, key)))
            return true;
    return false;
}

enum truth gear_inside(const struct composing *composing, const struct equipment *gear,
                       const enum zone_key *zones, size_t count)
{
    const struct zone *worked = worked_zone(gear);
    struct zone_value way;
    if (worked != NULL && zone_counts(composing, worked->id, zones, count))
        return TRUTH_YES;
    for (size_t i = 0; way_zone(gear, i, &way); i++)
        if (zone_counts(composing, way.value, zones, count))
            return TRUTH_YES;
    return gear->inside.given ? TRUTH_NO : TRUTH_UNKNOWN;
}

bool gear_cuts(const struct equipment *gear, enum item_key other)
{
    if (!gear->cuts.given)
        return true;
    return item_value_find(&gear->cuts, other) != NULL;
}

static enum truth judge_inside(struct composing *composing, const struct condition *condition,
                               enum noting noting)
{
    enum truth all = fitted_judge(composing, condition->item, noting);
    size_t index = 0;
    if (all != TRUTH_YES)
        return all;
    for (const struct equipment *gear;
         (gear = gear_next(composing, condition->item, &index)) != NULL;) {
        enum truth inside = gear_inside(composing, gear, condition->zones, condition->zone_count);
        if (inside == TRUTH_UNKNOWN && noting == NOTE_MISSING)
            missing_note(composing, condition->item, GEAR_inside, gear->place);
        if (inside == TRUTH_UNKNOWN)
            all = TRUTH_UNKNOWN;
        else if (inside == TRUTH_NO && all == TRUTH_YES)
            all = TRUTH_NO;
    }
    return all;
}

/* One piece: has the field this value? What lies in a space by its zone is in that space,
 * whatever `space` says beside. */
static enum truth gear_is(const struct composing *composing, const struct equipment *gear,
                          const struct condition *condition)
{
    const struct field *field = gear_field_row(condition->field);
    const char *value = field_text(field, gear, composing->arena);
    const struct zone *zone = zone_find(value), *wanted = zone_find(condition->value);
    if (wanted != NULL && condition->field == GEAR_space &&
        zone_counts(composing, gear->zone.value, &wanted->id, 1))
        return TRUTH_YES;
    if (value == NULL)
        return TRUTH_UNKNOWN;
    if (field->kind == FIELD_CHOICES)
        return TRUTH_IF(field_chooses(field, gear, condition->value));
    if (zone != NULL && wanted != NULL)
        return zone_counts(composing, zone->id, &wanted->id, 1) ? TRUTH_YES : TRUTH_NO;
    return text_equal(value, condition->value) ? TRUTH_YES : TRUTH_NO;
}

/* True when one piece of the gear has the value; every piece must be known
 * before it is said that none has. */
static enum truth judge_is(struct composing *composing, const struct condition *condition,
                           enum noting noting)
{
    enum truth any = fitted_judge(composing, condition->item, noting);
    size_t index = 0;
    if (any != TRUTH_YES)
        return any;
    any = TRUTH_NO;
    for (const struct equipment *gear;
         (gear = gear_next(composing, condition->item, &index)) != NULL;) {
        enum truth is = gear_is(composing, gear, condition);
        if (is == TRUTH_YES)
            return TRUTH_YES;
        if (is == TRUTH_UNKNOWN && noting == NOTE_MISSING)
            missing_note(composing, condition->item, condition->field, gear->place);
        if (is == TRUTH_UNKNOWN)
            any = TRUTH_UNKNOWN;
    }
    return any;
}

typedef bool (*piece_test)(const struct composing *composing, const struct equipment *gear,
                           const struct condition *condition);

static bool piece_cuts(const struct composing *composing, const struct equipment *gear,
                       const struct condition *condition)
{
    (void)composing;
    return gear_cuts(gear, condition->other);
}

static bool piece_within(const struct composing *composing, const struct equipment *gear,
                         const struct condition *condition)
{
    return gear_within(composing, gear, condition->reach);
}

static bool piece_beyond(const struct composing *composing, const struct equipment *gear,
                         const struct condition *condition)
{
    return !gear_within(composing, gear, condition->reach);
}

/* Is it so of one piece? Where that is not recorded the test counts the dangerous answer. */
static enum truth judge_pieces(struct composing *composing, const struct condition *condition,
                               piece_test is_so, enum noting noting)
{
    enum truth fitted = fitted_judge(composing, condition->item, noting);
    size_t index = 0;
    if (fitted != TRUTH_YES)
        return fitted;
    for (const struct equipment *gear;
         (gear = gear_next(composing, condition->item, &index)) != NULL;)
        if (is_so(composing, gear, condition))
            return TRUTH_YES;
    return TRUTH_NO;
}

static enum truth judge(struct composing *composing, const struct condition *condition,
                        enum noting noting);

/* All and any, with three answers: one decisive child decides even beside an
 * unknown one. `stop` is the decisive answer. */
static enum truth judge_children(struct composing *composing, const struct condition *condition,
                                 enum truth stop, enum noting noting)
{
    enum truth result = stop == TRUTH_NO ? TRUTH_YES : TRUTH_NO;
    for (size_t i = 0; i < condition->child_count; i++) {
        enum truth child = judge(composing, condition->children[i], noting);
        if (child == stop)
            return stop;
        if (child == TRUTH_UNKNOWN)
            result = TRUTH_UNKNOWN;
    }
    return result;
}

static bool asks_of_piece(const struct condition *condition)
{
    return condition->kind == CONDITION_IS || condition->kind == CONDITION_REACH;
}

static enum truth piece_has(const struct composing *composing, const struct equipment *gear,
                            const struct condition *condition)
{
    if (condition->kind == CONDITION_REACH)
        return gear_within(composing, gear, condition->reach) ? TRUTH_YES : TRUTH_NO;
    return gear_is(composing, gear, condition);
}

/* Has this piece all that the children ask of its kind? */
static enum truth piece_has_all(struct composing *composing, const struct condition *condition,
                                const struct equipment *gear, enum noting noting)
{
    enum truth all = TRUTH_YES;
    for (size_t i = 0; i < condition->child_count; i++) {
        const struct condition *child = condition->children[i];
        if (!asks_of_piece(child) || child->item != gear->item.value)
            continue;
        enum truth is = piece_has(composing, gear, child);
        if (is == TRUTH_NO)
            return TRUTH_NO;
        if (is == TRUTH_UNKNOWN && noting == NOTE_MISSING)
            missing_note(composing, child->item, child->field, gear->place);
        all = is == TRUTH_UNKNOWN ? TRUTH_UNKNOWN : all;
    }
    return all;
}

static enum truth one_has_all(struct composing *composing, const struct condition *condition,
                              enum item_key item, enum noting noting)
{
    enum truth any = TRUTH_NO;
    size_t index = 0;
    for (const struct equipment *gear; (gear = gear_next(composing, item, &index)) != NULL;) {
        enum truth has = piece_has_all(composing, condition, gear, NOTE_NOTHING);
        if (has == TRUTH_YES)
            return TRUTH_YES;
        if (has == TRUTH_UNKNOWN && noting == NOTE_MISSING)
            (void)piece_has_all(composing, condition, gear, NOTE_MISSING);
        any = has == TRUTH_UNKNOWN ? TRUTH_UNKNOWN : any;
    }
    return any;
}

/* Several facts asked of one kind of gear must be true of one and the same piece. */
static enum truth judge_all(struct composing *composing, const struct condition *condition,
                            enum noting noting)
{
    enum truth all = judge_children(composing, condition, TRUTH_NO, noting);
    for (size_t i = 0; all != TRUTH_NO && i < condition->child_count; i++) {
        if (!asks_of_piece(condition->children[i]) || all == TRUTH_UNKNOWN)
            continue;
        all = one_has_all(composing, condition, condition->children[i]->item, noting);
    }
    return all;
}

static enum truth negated(enum truth truth)
{
    if (truth == TRUTH_UNKNOWN)
        return TRUTH_UNKNOWN;
    return truth == TRUTH_YES ? TRUTH_NO : TRUTH_YES;
}

/* Known to hold? Nothing is asked for: the next case is that of the dangerous answer. */
static enum truth judge_surely(struct composing *composing, const struct condition *condition)
{
    return judge(composing, condition->children[0],
                 NOTE_NOTHING) == TRUTH_YES ? TRUTH_YES : TRUTH_NO;
}

/* Once for all cards that wait for it. */
static void breaths_hold(struct composing *composing)
{
    enum severity severity = composing->in->draft ? SEVERITY_DEFICIENCY : SEVERITY_HELD;
    composing->held = true;
    if (composing->breaths_told)
        return;
    composing->breaths_told = true;
    problem_add(composing->problems, severity, source_whole(composing->in->base->source),
                "write first_aid: {drowning_breaths: 5}, or 2, as the resuscitation council "
                "of the base's country teaches",
                "drowning_breaths is not recorded: %s each card that tells how to help who does "
                "not breathe", composing->in->draft ? "it is missing on" : "it holds back");
}

/* Two cards of one boat never give two numbers, and none gives one that nobody chose. */
static enum truth breaths_judge(struct composing *composing, const struct condition *condition,
                                enum noting noting)
{
    enum breaths breaths = composing->in->base->drowning_breaths.value;
    if (breaths != BREATHS_NONE)
        return breaths == condition->breaths ? TRUTH_YES : TRUTH_NO;
    if (noting == NOTE_MISSING)
        breaths_hold(composing);
    return TRUTH_UNKNOWN;
}

static enum truth judge(struct composing *composing, const struct condition *condition,
                        enum noting noting)
{
    switch (condition->kind) {
    case CONDITION_FITTED:
        return fitted_judge(composing, condition->item, noting);
    case CONDITION_NOT_FITTED:
        return negated(fitted_judge(composing, condition->item, noting));
    case CONDITION_INSIDE:
        return judge_inside(composing, condition, noting);
    case CONDITION_IS:
        return judge_is(composing, condition, noting);
    case CONDITION_CUTS:
        return judge_pieces(composing, condition, piece_cuts, noting);
    case CONDITION_REACH:
        return judge_pieces(composing, condition, piece_within, noting);
    case CONDITION_BEYOND:
        return judge_pieces(composing, condition, piece_beyond, noting);
    case CONDITION_SURELY:
        return judge_surely(composing, condition);
    case CONDITION_BOAT:
        return boat_is(composing->in->boat, condition->trait, composing->slot->space) ? TRUTH_YES
                                                                                    : TRUTH_NO;
    case CONDITION_BREATHS:
        return breaths_judge(composing, condition, noting);
    case CONDITION_STING:
        return TRUTH_IF(composing->in->base->sting.value == condition->sting);
    case CONDITION_TIDE:
        return TRUTH_IF(composing->in->base->tide.value == condition->tide);
    case CONDITION_ALL:
        return judge_all(composing, condition, noting);
    case CONDITION_ANY:
        return judge_children(composing, condition, TRUTH_YES, noting);
    case CONDITION_NONE:
        return negated(judge_children(composing, condition, TRUTH_YES, noting));
    }
    promise_unreached();
}

enum truth condition_truth(struct composing *composing, const struct condition *condition)
{
    return condition == NULL ? TRUTH_YES : judge(composing, condition, NOTE_NOTHING);
}

enum truth condition_judge(struct composing *composing, const struct condition *condition)
{
    enum truth truth = condition_truth(composing, condition);
    /* Only facts that keep the whole from being decided are asked for. */
    if (truth == TRUTH_UNKNOWN)
        judge(composing, condition, NOTE_MISSING);
    return truth;
}

bool condition_admits(const struct composing *composing, const struct condition *condition,
                      const struct equipment *gear)
{
    if (condition == NULL)
        return true;
    if (asks_of_piece(condition) && condition->item == gear->item.value)
        return piece_has(composing, gear, condition) == TRUTH_YES;
    if (condition->kind == CONDITION_SURELY)
        return condition_admits(composing, condition->children[0], gear);
    if (condition->kind != CONDITION_ALL)
        return true;
    for (size_t i = 0; i < condition->child_count; i++)
        if (!condition_admits(composing, condition->children[i], gear))
            return false;
    return true;
}
