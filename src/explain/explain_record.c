/* explain_record.c - the lines of the record that the choice of words rests on: what is
 * asked of the gear, what is not fitted, what is not offered (room: explain). Never asks
 * more than the cases that were tried, nor of a case more than what decides it. */
#include "explain.h"

/* What is told of an item or of the boat but no field. */
enum asked_what {
    ASKED_FITTED = GEAR_FIELD_COUNT, ASKED_REACH, ASKED_LEFT_OUT,
    ASKED_TRAIT              /* and further: the trait's value added */
};

/* What was told already. */
struct asked {
    enum item_key item;             /* ITEM_NONE: the boat herself */
    unsigned what;                  /* a field, or one of enum asked_what */
};

struct record_list {
    const struct explaining *explaining;
    const struct card_step *step;   /* whose rows tell of gear themselves, or NULL */
    const struct condition *having; /* only pieces that have this are told of, or NULL */
    size_t indent;
    struct asked *asked;
    size_t count, room;
};

/* True the first time. */
static bool ask(struct record_list *list, enum item_key item, unsigned what)
{
    for (size_t i = 0; i < list->count; i++)
        if (list->asked[i].item == item && list->asked[i].what == what)
            return false;
    list->asked = arena_grow(list->explaining->arena, list->asked, list->count, &list->room,
                             sizeof *list->asked);
    list->asked[list->count++] = (struct asked){item, what};
    return true;
}

static bool has_tag(const struct row_item *item, const char *tag)
{
    for (size_t i = 0; i < item->tag_count; i++)
        if (text_equal(item->tags[i], tag))
            return true;
    return false;
}

static bool row_shows(const struct card_row *row, const struct equipment *gear)
{
    for (size_t i = 0; i < row->item_count; i++)
        if (row->items[i].kind == gear->kind &&
            has_tag(&row->items[i], TEXT_OR_EMPTY(gear->tag)))
            return true;
    return false;
}

/* Does the step show this very piece? */
static bool is_shown(const struct card_step *step, const struct equipment *gear)
{
    for (size_t i = 0; step != NULL && i < step->row_count; i++)
        if (row_shows(&step->rows[i], gear))
            return true;
    return step != NULL && step->table_count > 0 && step->table_kind == gear->kind;
}

static const struct equipment *entry_of(const struct boat *boat, enum item_key item)
{
    for (size_t i = 0; i < boat->equipment_count; i++)
        if (boat->equipment[i].item.value == item)
            return &boat->equipment[i];
    return NULL;
}

/* The fixed radio has no entry of its own, but a section: its tag stands for it. */
struct place gear_place(const struct equipment *gear)
{
    return gear->item.value == ITEM_vhf_dsc && gear->tag.text != NULL ? gear->tag.place
                                                                            : gear->place;
}

#define GEAR_TELL(list, gear, words, ...) \
    placed_tell((list)->explaining, (list)->indent, gear_place(gear), "record: %s %s " words, \
                (gear)->kind->key, TEXT_OR_EMPTY((gear)->tag), __VA_ARGS__)

/* Where one piece is enough, the others decide nothing. */
static bool is_told(const struct record_list *list, const struct equipment *gear)
{
    const struct condition *having = list->having;
    if (having == NULL)
        return true;
    if (having->kind == CONDITION_CUTS)
        return gear_cuts(gear, having->other);
    if (having->kind == CONDITION_BEYOND)
        return !gear_within(list->explaining->composing, gear, having->reach);
    return condition_admits(list->explaining->composing, having, gear);
}

/* Fitted, but the rows of the step do not show it. */
static void gear_without_row_tell(const struct record_list *list, enum item_key item)
{
    const struct equipment *gear;
    size_t index = 0;
    while ((gear = gear_next(list->explaining->composing, item, &index)) != NULL)
        if (!is_shown(list->step, gear) && is_told(list, gear))
            GEAR_TELL(list, gear, "%s", "fitted");
}

/* What the record says of the engine of that space where it has no piece for it. */
static void engine_tell(const struct record_list *list, enum item_key item, enum zone_key space)
{
    const struct explaining *explaining = list->explaining;
    const struct boat *boat = explaining->sheet->boat;
    const struct absence *absence = boat_absence(boat, item, space);
    const struct absence *unsurveyed = boat_unsurveyed(boat, item, space);
    const struct equipment *other = entry_of(boat, item);
    if (absence != NULL)
        placed_tell(explaining, list->indent, absence->place, "record: %s not fitted for %s",
                    item_word(item), zone_word(space));
    else if (unsurveyed != NULL)
        placed_tell(explaining, list->indent, unsurveyed->place,
                    "record: %s not surveyed for %s", item_word(item), zone_word(space));
    else if (other != NULL)
        placed_tell(explaining, list->indent, other->place,
                    "record: %s not recorded for %s, only for the other engine",
                    item_word(item), zone_word(space));
    else
        line_tell(explaining, list->indent, "record: %s not recorded for %s", item_word(item),
                  zone_word(space));
}

/* Who asks whether gear is fitted: what a step has gear for is told by its rows. */
enum asker { ASKED_BY_CONDITION, ASKED_BY_STEP };

static void fitted_tell(struct record_list *list, enum item_key item, enum asker asker)
{
    const struct boat *boat = list->explaining->sheet->boat;
    const struct absence *whole = boat_absence(boat, item, ZONE_NONE);
    const struct absence *unsurveyed = boat_unsurveyed(boat, item, ZONE_NONE);
    size_t told = 0;
    if (!ask(list, item, ASKED_FITTED))
        return;
    for (size_t i = 0; whole == NULL && i < boat->engine_space_count; i++)
        if (space_asked(list->explaining->composing, item, boat->engine_spaces[i]) &&
            boat_fitted_for(boat, item, boat->engine_spaces[i]) != ANSWER_YES) {
            engine_tell(list, item, boat->engine_spaces[i]);
            told++;
        }
    if (asker == ASKED_BY_CONDITION && boat_fitted(boat, item) == ANSWER_YES)
        gear_without_row_tell(list, item);
    else if (whole != NULL)
        placed_tell(list->explaining, list->indent, whole->place, "record: %s not fitted",
                    item_word(item));
    else if (told == 0 && unsurveyed != NULL && boat_fitted(boat, item) != ANSWER_YES)
        placed_tell(list->explaining, list->indent, unsurveyed->place,
                    "record: %s not surveyed", item_word(item));
    else if (told == 0 && boat_fitted(boat, item) != ANSWER_YES)
        line_tell(list->explaining, list->indent, "record: %s not recorded", item_word(item));
}

/* What one piece has under that key, at the line that says so. */
static void value_tell(const struct record_list *list, const struct equipment *gear,
                       enum gear_field key)
{
    const struct field *field = gear_field_row(key);
    const char *value = field_text(field, gear, list->explaining->arena);
    struct place place = value == NULL ? gear_place(gear) : field_place(field, gear);
    if (value == NULL)
        value = key == GEAR_cuts ? "not recorded, which counts as cutting" : "not recorded";
    placed_tell(list->explaining, list->indent, place, "record: %s %s %s = %s", gear->kind->key,
                TEXT_OR_EMPTY(gear->tag), field->key, value[0] == '\0' ? "nothing" : value);
}

/* What each piece of the gear has under that key. */
static void field_tell(struct record_list *list, enum item_key item, enum gear_field key)
{
    const struct equipment *gear;
    size_t index = 0;
    if (!ask(list, item, key))
        return;
    while ((gear = gear_next(list->explaining->composing, item, &index)) != NULL)
        if (is_told(list, gear))
            value_tell(list, gear, key);
}

/* ---- reach ---- */

static bool inside_here(const struct explaining *explaining, const struct equipment *gear)
{
    enum zone_key space = explaining->sheet->space;
    return space != ZONE_NONE &&
           gear_inside(explaining->composing, gear, &space, 1) == TRUTH_YES;
}

/* How far one goes for the piece on this card; where that is not recorded, below. */
static const char *reach_told(const struct explaining *explaining, const struct equipment *gear)
{
    enum reach reach = reach_here(explaining->composing, gear);
    if (inside_here(explaining, gear))
        return "inside the space of this card: out of reach";
    if (reach < REACH_BELOW)
        return text_format(explaining->arena, "reached from %s", reach_words[reach - 1]);
    return gear_reach(gear) < REACH_BELOW ? "in the locker where vapour lies: counts as below"
                                          : "reached from below only";
}

/* What its reach rests on, then the reach itself. */
static void piece_reach_tell(const struct record_list *list, const struct equipment *gear)
{
    static const enum gear_field keys[] = {GEAR_zone, GEAR_below, GEAR_from, GEAR_inside,
                                           GEAR_past, GEAR_from_cockpit};
    for (size_t i = 0; i < sizeof keys / sizeof *keys; i++) {
        bool given = field_text(gear_field_row(keys[i]), gear, list->explaining->arena) != NULL;
        if (given || (keys[i] == GEAR_from_cockpit && gear_reach(gear) == REACH_BELOW))
            value_tell(list, gear, keys[i]);
    }
    GEAR_TELL(list, gear, "%s", reach_told(list->explaining, gear));
}

static void reach_tell(struct record_list *list, enum item_key item)
{
    const struct equipment *gear;
    size_t index = 0;
    if (!ask(list, item, ASKED_REACH))
        return;
    while ((gear = gear_next(list->explaining->composing, item, &index)) != NULL)
        if (is_told(list, gear))
            piece_reach_tell(list, gear);
}

/* ---- the boat ---- */

/* The place of what stands nowhere, since it is not recorded: the boat's file. */
static struct place boat_file(const struct explaining *explaining)
{
    return source_whole(explaining->sheet->boat->place.source);
}

/* What she is, and what counts where her record does not tell it. */
static void trait_tell(struct record_list *list, enum trait trait)
{
    const struct sheet *sheet = list->explaining->sheet;
    struct trait_fact fact = boat_trait(sheet->boat, trait, sheet->space);
    const char *said = fact.recorded == ANSWER_YES  ? "yes"
                       : fact.recorded == ANSWER_NO ? "no"
                       : boat_is(sheet->boat, trait, sheet->space)
                           ? "not recorded, which counts as yes"
                           : "not recorded, which counts as no";
    if (!ask(list, ITEM_NONE, ASKED_TRAIT + (unsigned)trait))
        return;
    placed_tell(list->explaining, list->indent,
                fact.recorded != ANSWER_NOT_RECORDED ? fact.place : boat_file(list->explaining),
                "record: %s: %s", trait_sentence(trait), said);
}

/* ---- conditions ---- */

/* The child that alone decides the group; NULL: all of them do. */
static const struct condition *decisive(const struct explaining *explaining,
                                        const struct condition *group)
{
    enum truth stop = group->kind == CONDITION_ALL ? TRUTH_NO : TRUTH_YES;
    bool is_group = group->kind == CONDITION_ALL || group->kind == CONDITION_ANY ||
                    group->kind == CONDITION_NONE;
    for (size_t i = 0; is_group && i < group->child_count; i++)
        if (condition_truth(explaining->composing, group->children[i]) == stop)
            return group->children[i];
    return NULL;
}

static void condition_tell(struct record_list *list, const struct condition *condition);

static void children_tell(struct record_list *list, const struct condition *condition)
{
    const struct condition *one = decisive(list->explaining, condition);
    if (one != NULL) {
        condition_tell(list, one);
        return;
    }
    for (size_t i = 0; i < condition->child_count; i++)
        condition_tell(list, condition->children[i]);
}

static bool one_is_enough(const struct condition *condition)
{
    return condition->kind == CONDITION_IS || condition->kind == CONDITION_CUTS ||
           condition->kind == CONDITION_REACH || condition->kind == CONDITION_BEYOND;
}

static void condition_tell(struct record_list *list, const struct condition *condition)
{
    bool holds = one_is_enough(condition) &&
                 condition_truth(list->explaining->composing, condition) == TRUTH_YES;
    list->having = holds ? condition : NULL;
    if (condition->item != ITEM_NONE)
        fitted_tell(list, condition->item, ASKED_BY_CONDITION);
    switch (condition->kind) {
    case CONDITION_INSIDE:
        field_tell(list, condition->item, GEAR_zone);
        field_tell(list, condition->item, GEAR_inside);
        break;
    case CONDITION_IS:
        field_tell(list, condition->item, condition->field);
        if (condition->field == GEAR_space)
            field_tell(list, condition->item, GEAR_zone);
        break;
    case CONDITION_CUTS:
        field_tell(list, condition->item, GEAR_cuts);
        break;
    case CONDITION_REACH:
    case CONDITION_BEYOND:
        reach_tell(list, condition->item);
        break;
    case CONDITION_BOAT:
        trait_tell(list, condition->trait);
        break;
    case CONDITION_BREATHS:
    case CONDITION_STING:
    case CONDITION_TIDE:
        base_tell(list->explaining, list->indent, condition->kind);
        break;
    case CONDITION_SURELY:
    case CONDITION_ALL:
    case CONDITION_ANY:
    case CONDITION_NONE:
        children_tell(list, condition);
        break;
    case CONDITION_FITTED:
    case CONDITION_NOT_FITTED:
        break;
    }
    list->having = NULL;
}

void condition_record_tell(const struct explaining *explaining, size_t indent,
                           const struct condition *condition)
{
    struct record_list list = {.explaining = explaining, .indent = indent};
    if (condition != NULL)
        condition_tell(&list, condition);
}

void said_record_tell(const struct explaining *explaining, size_t indent,
                      const struct said_list *said, size_t tried)
{
    struct record_list list = {.explaining = explaining, .indent = indent};
    for (size_t i = 0; i < tried; i++)
        if (said->items[i].when != NULL)
            condition_tell(&list, said->items[i].when);
}

/* ---- gear of the step ---- */

/* Pieces that the step does not offer, and why not. */
static void left_out_gear_tell(struct record_list *list, enum item_key item)
{
    const struct explaining *explaining = list->explaining;
    enum reach within = step_within(list->step);
    const struct equipment *gear;
    size_t index = 0;
    while ((gear = gear_next(explaining->composing, item, &index)) != NULL) {
        if (is_shown(list->step, gear))
            continue;
        if (gear_within(explaining->composing, gear, within))
            GEAR_TELL(list, gear, "%s", "left out: the case asks for others");
        else
            GEAR_TELL(list, gear, "left out: not reached from %s, but %s",
                      reach_words[within - 1],
                      reach_told(explaining, gear));
    }
}

static void items_tell(struct record_list *list, const struct item_uses *items)
{
    for (size_t i = 0; i < items->count; i++) {
        enum item_key item = items->items[i].value;
        fitted_tell(list, item, ASKED_BY_STEP);
        if (boat_fitted(list->explaining->sheet->boat, item) == ANSWER_YES &&
            ask(list, item, ASKED_LEFT_OUT))
            left_out_gear_tell(list, item);
    }
}

void record_tell(const struct explaining *explaining, const struct card_step *step)
{
    struct record_list list = {.explaining = explaining, .step = step, .indent = INDENT_REASON};
    size_t tried = cases_tried(explaining, step);
    if (step->step->when != NULL)
        condition_tell(&list, step->step->when);
    for (size_t i = 0; i < tried; i++)
        if (step->step->cases[i].when != NULL)
            condition_tell(&list, step->step->cases[i].when);
    items_tell(&list, step_uses(step));
    items_tell(&list, step_also(step));
}
