/* rows.c - the lines under a step: which gear, where, how (room: compose). */
#include "compose_room.h"

#include "figure.h"
#include "item_states.h"

const struct phrase *place_phrase(const struct composing *composing, const struct zone *zone,
                                  enum side side, const struct text_value *spot)
{
    static const enum word words_of_sides[] = {
        [SIDE_PORT] = WORD_SIDE_PORT, [SIDE_STARBOARD] = WORD_SIDE_STARBOARD,
        [SIDE_CENTRE] = WORD_SIDE_CENTRE, [SIDE_BOTH] = WORD_SIDE_BOTH};
    struct arena *arena = composing->arena;
    return phrase_joined(arena, WORD_JOIN_COMMA, phrase_zone(arena, zone),
                         side == SIDE_NONE ? NULL
                                           : phrase_word(arena, words_of_sides[side], NULL),
                         phrase_text(arena, spot));
}

static bool gear_is_inside_here(const struct composing *composing, const struct equipment *gear)
{
    enum zone_key space = composing->slot->space;
    return space != ZONE_NONE && gear_inside(composing, gear, &space, 1) == TRUTH_YES;
}

/* What is said of a control beside its place; inside the burning space that it is left. */
static const struct phrase *row_handling(struct composing *composing,
                                         const struct equipment *gear,
                                         enum end_state state)
{
    if (gear_is_inside_here(composing, gear) && gear->kind->class == ITEM_CONTROL)
        return word_alone(composing, WORD_INSIDE_LEAVE);
    const struct phrase *how = gear_handling(composing, gear, state);
    return how != NULL ? how : handling_unrecorded(composing, gear, state);
}

static const struct phrase *behind_phrase(const struct composing *composing,
                                          const struct equipment *gear)
{
    const struct phrase *behind = phrase_text(composing->arena, &gear->behind);
    return behind == NULL ? NULL
                          : phrase_word(composing->arena, WORD_BEHIND, "what", behind, NULL);
}

const struct phrase *worked_place(struct composing *composing, const struct equipment *gear)
{
    return phrase_joined(composing->arena, WORD_JOIN_COMMA,
                         gear_place_phrase(composing, gear, worked_spot(gear)),
                         behind_phrase(composing, gear), NULL);
}

const struct phrase *handle_phrase(const struct composing *composing,
                                   const struct equipment *gear)
{
    const struct gear_spot *handle = &gear->handle;
    return !handle->section.given
               ? NULL
               : phrase_word(composing->arena, WORD_HANDLE_AT, "place",
                             place_phrase(composing, handle->place_zone, handle->place_side,
                                          &handle->spot), NULL);
}

/* The handle is fetched for those states alone that somebody brings about by it. */
static const struct phrase *handle_fetched(const struct composing *composing,
                                           const struct equipment *gear, enum end_state state)
{
    bool worked = state == STATE_ANY ||
                  item_state_field(gear->item.value, state) != GEAR_FIELD_NONE;
    return worked ? handle_phrase(composing, gear) : NULL;
}

const struct phrase *only_phrase(const struct composing *composing,
                                 const struct equipment *gear)
{
    static const enum word words_of[] = {
        [ONLY_ENGINE_RUNNING] = WORD_ENGINE_RUNNING, [ONLY_ENGINE_STOPPED] = WORD_ENGINE_STOPPED,
        [ONLY_PLATFORM_UP] = WORD_PLATFORM_UP, [ONLY_PLATFORM_DOWN] = WORD_PLATFORM_DOWN};
    const struct phrase *conditions = NULL;
    for (size_t i = 0; i < gear->only_when.count; i++)
        conditions = phrase_joined(composing->arena, WORD_JOIN_COMMA, conditions,
                                   word_alone(composing, words_of[gear->only_when.items[i].value]),
                                   NULL);
    return conditions == NULL ? NULL
                              : phrase_word(composing->arena, WORD_ONLY_WHEN, "conditions",
                                            conditions, NULL);
}

/* What must be so for a hand to work it, and what stops one. */
static const struct phrase *conditions_phrase(const struct composing *composing,
                                              const struct equipment *gear)
{
    return phrase_joined(composing->arena, WORD_JOIN_SEMICOLON, only_phrase(composing, gear),
                         gear_warned(composing, gear), NULL);
}

/* How it is worked, its handle, and what must be so for that. */
static const struct phrase *working_phrase(struct composing *composing,
                                           const struct equipment *gear, enum end_state state)
{
    const struct phrase *how = row_handling(composing, gear, state);
    if (gear_is_inside_here(composing, gear) && gear->kind->class == ITEM_CONTROL)
        return how;
    return phrase_joined(composing->arena, WORD_JOIN_SEMICOLON, how,
                         handle_fetched(composing, gear, state),
                         conditions_phrase(composing, gear));
}

static const struct phrase *where_phrase(struct composing *composing,
                                         const struct equipment *gear, enum end_state state)
{
    const struct phrase *place = worked_place(composing, gear);
    const struct phrase *how = working_phrase(composing, gear, state);
    return how == NULL ? place
                       : phrase_word(composing->arena, WORD_PLACE_HANDLED, "place", place, "how",
                                     how, NULL);
}

/* Of an extinguisher how long it lasts, for whoever uses it, or its weight. */
static const struct phrase *capacity_phrase(struct composing *composing,
                                            const struct equipment *gear,
                                            enum capacity_told told)
{
    struct arena *arena = composing->arena;
    bool extinguisher = gear->kind->class == ITEM_FIRE;
    if (gear->persons.given)
        return phrase_counted(arena, WORD_PERSONS, (uint64_t)(gear->persons.milli / 1000),
                              "count", phrase_verbatim(arena, gear->persons.text), NULL);
    if (extinguisher && told == CAPACITY_SECONDS && gear->discharge_s.given)
        return figure_discharge(gear, arena);
    if (extinguisher && gear->kg.given)
        return phrase_word(arena, WORD_KILOGRAMS, "count",
                           phrase_verbatim(arena, gear->kg.text), NULL);
    return persons_unrecorded(composing, gear);
}

const struct phrase *gear_called(const struct composing *composing,
                                 const struct equipment *gear, size_t pieces)
{
    struct arena *arena = composing->arena;
    if (gear->name.text != NULL)
        return phrase_text(arena, &gear->name);
    if (gear->count.given && gear->count.milli > 1000)
        return phrase_items(arena, gear->item.value, (uint64_t)(gear->count.milli / 1000));
    return pieces > 1 ? phrase_items(arena, gear->item.value, pieces)
                      : phrase_item(arena, gear->item.value);
}

const struct phrase *gear_name(struct composing *composing, const struct equipment *gear,
                               size_t pieces, enum capacity_told told)
{
    const struct phrase *name = gear_called(composing, gear, pieces);
    const struct phrase *capacity = capacity_phrase(composing, gear, told);
    return phrase_joined(composing->arena, WORD_JOIN_COMMA, name, capacity, NULL);
}

/* The rows of a step while they are made. */
struct row_list {
    struct composing *composing;
    const struct step_gear *wants;
    enum end_state state;             /* what the step wants of the item whose rows are made */
    struct card_row *rows;
    const struct equipment **first;   /* by row: the gear that began it */
    size_t count, row_room, first_room;
    bool below;                       /* one of them is not reached from deck */
};

/* May b stand on a's row: the same kind of thing at the same place, handled the
 * same way? A count of its own keeps a row to itself. */
static bool same_row(const struct row_list *list, const struct equipment *a,
                     const struct equipment *b)
{
    struct composing *composing = list->composing;
    return a->item.value == b->item.value && !a->count.given && !b->count.given &&
           text_equal(a->name.text, b->name.text) && a->kg.milli == b->kg.milli &&
           a->persons.milli == b->persons.milli &&
           a->discharge_s.milli == b->discharge_s.milli &&
           phrase_equal(where_phrase(composing, a, list->state),
                        where_phrase(composing, b, list->state));
}

/* Where the page has no room, an extinguisher has its weight instead of its seconds. */
static void row_name(struct composing *composing, const struct equipment *gear,
                     struct card_row *row)
{
    row->name = phrase_said(composing,
                            gear_name(composing, gear, row->tag_count, CAPACITY_SECONDS));
    row->lesser = phrase_said(composing,
                              gear_name(composing, gear, row->tag_count, CAPACITY_WEIGHT));
    row->yields = text_equal(row->name, row->lesser) ? YIELDS_NEVER : YIELDS_SECONDS;
    if (row->yields == YIELDS_NEVER)
        row->lesser = NULL;
}

static void row_begin(struct row_list *list, const struct equipment *gear)
{
    struct composing *composing = list->composing;
    const char **tags = arena_array(composing->arena, 1, sizeof *tags);
    tags[0] = TEXT_OR_EMPTY(gear->tag);
    list->rows = arena_grow(composing->arena, list->rows, list->count, &list->row_room,
                            sizeof *list->rows);
    list->first = arena_grow(composing->arena, list->first, list->count, &list->first_room,
                             sizeof *list->first);
    list->first[list->count] = gear;
    list->rows[list->count] = (struct card_row){
        .kind = gear->kind, .tags = tags, .tag_count = 1,
        .where = phrase_said(composing, where_phrase(composing, gear, list->state)),
        .origin = gear->place};
    row_name(composing, gear, &list->rows[list->count++]);
}

static void row_join(struct row_list *list, const struct equipment *gear)
{
    struct composing *composing = list->composing;
    struct card_row *row = &list->rows[list->count - 1];
    const char **tags = arena_array(composing->arena, row->tag_count + 1, sizeof *tags);
    for (size_t i = 0; i < row->tag_count; i++)
        tags[i] = row->tags[i];
    tags[row->tag_count] = TEXT_OR_EMPTY(gear->tag);
    row->tags = tags;
    row->tag_count++;
    row_name(composing, list->first[list->count - 1], row);
}

/* Once the engine is stopped nobody starts it again for a control that runs with it alone. */
static void stopped_tell(struct composing *composing, const struct equipment *gear)
{
    for (size_t i = 0; composing->engine_stopped && i < gear->only_when.count; i++)
        if (gear->only_when.items[i].value == ONLY_ENGINE_RUNNING)
            problem_add(composing->problems, SEVERITY_NOTE, gear->only_when.items[i].place,
                        "have it made to work without the engine, or find what else does it",
                        "%s works only with the engine running: %s stops that before",
                        gear->tag.text == NULL ? gear->kind->key : gear->tag.text,
                        composing->slot->name);
}

static void gear_add(struct row_list *list, const struct equipment *gear)
{
    stopped_tell(list->composing, gear);
    const struct equipment *before = list->count == 0 ? NULL : list->first[list->count - 1];
    if (before != NULL && list->rows[list->count - 1].tag_count < 3 &&
        same_row(list, before, gear))
        row_join(list, gear);
    else
        row_begin(list, gear);
    list->below = list->below || (reach_here(list->composing, gear) > REACH_DECK &&
                                  !gear_is_inside_here(list->composing, gear));
    marker_add(list->composing, gear);
}

/* In a draft, what is not recorded is seen on the card, not left out. */
static void not_recorded_add(struct row_list *list, enum item_key item, struct place origin)
{
    struct composing *composing = list->composing;
    list->rows = arena_grow(composing->arena, list->rows, list->count, &list->row_room,
                            sizeof *list->rows);
    list->first = arena_grow(composing->arena, list->first, list->count, &list->first_room,
                             sizeof *list->first);
    list->first[list->count] = NULL;
    list->rows[list->count++] = (struct card_row){
        .kind = item_kind_of(item),
        .name = phrase_said(composing, phrase_item(composing->arena, item)),
        .where = phrase_said(composing, word_alone(composing, WORD_NOT_RECORDED)),
        .origin = origin};
}

/* The step cannot do without the item, and this boat has none that will do. */
static void piece_lacking(struct composing *composing, const struct item_use *item)
{
    composing->held = true;
    problem_add(composing->problems, SEVERITY_HELD, item->place, "give the step a case without it",
                "%s: this step has no words for a boat without %s", composing->slot->name,
                item_word(item->value));
}

/* Gear that lies farther than the step lets people go is not offered. A control inside the
 * burning space is shown all the same: its row says to leave it. */
static bool offered(const struct row_list *list, const struct equipment *gear)
{
    return gear_within(list->composing, gear, list->wants->within) ||
           (gear_is_inside_here(list->composing, gear) && gear->kind->class == ITEM_CONTROL);
}

/* Gear that only helps, of which nothing is recorded: the card is printed without its row. A
 * draft shows what is missing. Of gear that each engine has, the other engine's tells
 * nothing, so it is never of this kind. */
static bool goes_without(struct composing *composing, enum item_key item)
{
    return !composing->in->draft && !item_kind_of(item)->by_engine &&
           !procedure_needs(composing->slot->procedure, item) &&
           fitted_judge(composing, item, NOTE_NOTHING) == TRUTH_UNKNOWN;
}

/* Gear without a recorded side of the question holds the card; gear declared
 * not fitted must have its own case when the step cannot do without it. */
enum need { NEEDED, HELPS };

static void item_rows_add(struct row_list *list, const struct item_use *item, enum need need)
{
    struct composing *composing = list->composing;
    struct condition fitted = {.kind = CONDITION_FITTED, .item = item->value, .place = item->place};
    enum truth truth = condition_judge(composing, &fitted);
    size_t before = list->count, index = 0;
    list->state = item->state;
    if (truth == TRUTH_UNKNOWN)
        not_recorded_add(list, item->value, item->place);
    if (truth == TRUTH_NO && need == NEEDED)
        piece_lacking(composing, item);
    if (truth != TRUTH_YES)
        return;
    for (const struct equipment *gear; (gear = gear_next(composing, item->value, &index)) != NULL;)
        if (offered(list, gear) &&
            (need == HELPS || condition_admits(composing, list->wants->when, gear)))
            gear_add(list, gear);
    if (need == NEEDED && list->count == before)
        piece_lacking(composing, item);
}

/* What keeps a condition from being decided, a row an item. */
static void undecided_add(struct row_list *list, const struct condition *condition)
{
    if (condition == NULL ||
        condition_judge(list->composing, condition) != TRUTH_UNKNOWN)
        return;
    for (size_t i = 0; i < condition->child_count; i++)
        undecided_add(list, condition->children[i]);
    if (condition->item == ITEM_NONE)
        return;
    for (size_t i = 0; i < list->count; i++)
        if (list->first[i] == NULL && list->rows[i].kind->item == condition->item)
            return;
    not_recorded_add(list, condition->item, condition->place);
}

bool rows_make(struct composing *composing, const struct step_gear *wants, struct card_step *step)
{
    struct row_list list = {.composing = composing, .wants = wants};
    undecided_add(&list, wants->undecided);
    for (size_t i = 0; i < wants->uses->count; i++)
        item_rows_add(&list, &wants->uses->items[i], NEEDED);
    for (size_t i = 0; i < wants->also->count; i++) {
        const struct item_use *item = &wants->also->items[i];
        if (goes_without(composing, item->value))
            missing_help_note(composing, item->value);
        else
            item_rows_add(&list, item, HELPS);
    }
    for (size_t i = 0; i < list.count; i++)
        composing->engine_stopped = composing->engine_stopped ||
                                    list.rows[i].kind->item == ITEM_engine_stop;
    step->rows = list.rows;
    step->row_count = list.count;
    return list.below;
}

size_t card_step_rows(const struct card_step *step)
{
    return step->row_count + step->figure_count + (step->table_count + 1) / 2;
}
