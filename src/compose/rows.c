/* rows.c - the lines under a step: which gear, where, how (room: compose). */
#include "compose_room.h"

#include "figure.h"

const char *place_words(const struct composing *composing, const struct zone *zone,
                        enum side side, const char *spot)
{
    static const enum word words_of_sides[] = {
        [SIDE_PORT] = WORD_SIDE_PORT, [SIDE_STARBOARD] = WORD_SIDE_STARBOARD,
        [SIDE_CENTRE] = WORD_SIDE_CENTRE, [SIDE_BOTH] = WORD_SIDE_BOTH};
    const struct words *words = composing->in->words;
    struct text_builder builder = text_builder_in(composing->arena);
    text_add(&builder, zone == NULL ? "" : words_zone(words, zone->id));
    if (side != SIDE_NONE)
        text_add_format(&builder, ", %s", words_get(words, words_of_sides[side]));
    if (!text_empty(spot))
        text_add_format(&builder, ", %s", spot);
    return builder.at;
}

static bool gear_is_inside_here(const struct composing *composing, const struct equipment *gear)
{
    enum zone_key space = composing->slot->space;
    return space != ZONE_NONE && gear_inside(composing, gear, &space, 1) == TRUTH_YES;
}

/* Place, then handling; gear inside the burning space says so instead. */
static const char *where_words(struct composing *composing, const struct step_gear *wants,
                               const struct equipment *gear)
{
    const char *place = place_words(composing, gear->place_zone, gear->place_side,
                                    TEXT_OR_EMPTY(gear->spot));
    const char *how = handling_words(composing, gear, wants->shows, wants->state);
    if (text_empty(how) && gear->vents_to.text != NULL)
        how = words_fill(composing->in->words, composing->arena, WORD_VENTS_TO, "place",
                         gear->vents_to.text, NULL);
    if (gear_is_inside_here(composing, gear) && gear->kind->class == ITEM_CONTROL)
        how = words_get(composing->in->words, WORD_INSIDE_LEAVE);
    return text_empty(how) ? place : text_format(composing->arena, "%s: %s", place, how);
}

/* "lasts 9 s", from the label of an extinguisher, for whoever uses it. */
static const char *discharge_words(const struct composing *composing,
                                   const struct equipment *gear, enum capacity_told told)
{
    if (gear->kind->class != ITEM_FIRE || told == CAPACITY_WEIGHT)
        return NULL;
    return phrase_said(composing, figure_discharge(gear, composing->arena));
}

static const char *capacity_words(const struct composing *composing,
                                  const struct equipment *gear, enum capacity_told told)
{
    const struct words *words = composing->in->words;
    if (gear->persons.given)
        return words_fill(words, composing->arena, WORD_PERSONS, "count", gear->persons.text,
                          NULL);
    /* Seconds say more of an extinguisher than kilograms. */
    const char *discharge = discharge_words(composing, gear, told);
    if (discharge != NULL)
        return discharge;
    if (gear->kg.given && gear->kind->class == ITEM_FIRE)
        return words_fill(words, composing->arena, WORD_KILOGRAMS, "count", gear->kg.text, NULL);
    return NULL;
}

const char *gear_name(const struct composing *composing, const struct equipment *gear,
                      size_t pieces, enum capacity_told told)
{
    const struct words *words = composing->in->words;
    const char *capacity = capacity_words(composing, gear, told);
    const char *name = words_item(words, gear->item.value);
    if (gear->name.text != NULL)
        name = gear->name.text;
    else if (gear->count.given && gear->count.milli > 1000)
        name = text_format(composing->arena, "%s %s", gear->count.text,
                           words_items(words, gear->item.value,
                                       (uint64_t)(gear->count.milli / 1000)));
    else if (pieces > 1)
        name = text_format(composing->arena, "%zu %s", pieces,
                           words_items(words, gear->item.value, pieces));
    return capacity == NULL ? name : text_format(composing->arena, "%s, %s", name, capacity);
}

/* The rows of a step while they are made. */
struct row_list {
    struct composing *composing;
    const struct step_gear *wants;
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
           text_equal(where_words(composing, list->wants, a),
                      where_words(composing, list->wants, b));
}

/* Where the page has no room, an extinguisher has its weight instead of its seconds. */
static void row_name(const struct composing *composing, const struct equipment *gear,
                     struct card_row *row)
{
    row->name = gear_name(composing, gear, row->tag_count, CAPACITY_SECONDS);
    row->lesser = gear_name(composing, gear, row->tag_count, CAPACITY_WEIGHT);
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
        .where = where_words(composing, list->wants, gear), .origin = gear->place};
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

static void gear_add(struct row_list *list, const struct equipment *gear)
{
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
        .kind = item_kind_of(item), .name = words_item(composing->in->words, item),
        .where = words_get(composing->in->words, WORD_NOT_RECORDED), .origin = origin};
}

/* The step cannot do without the item, and this boat has none that will do. */
static void piece_lacking(struct composing *composing, const struct item_value *item)
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

static void item_rows_add(struct row_list *list, const struct item_value *item, enum need need)
{
    struct composing *composing = list->composing;
    struct condition fitted = {.kind = CONDITION_FITTED, .item = item->value, .place = item->place};
    enum truth truth = condition_judge(composing, &fitted);
    size_t before = list->count, index = 0;
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
        const struct item_value *item = &wants->also->items[i];
        if (goes_without(composing, item->value))
            missing_help_note(composing, item->value);
        else
            item_rows_add(&list, item, HELPS);
    }
    step->rows = list.rows;
    step->row_count = list.count;
    return list.below;
}

size_t card_step_rows(const struct card_step *step)
{
    return step->row_count + step->figure_count + (step->table_count + 1) / 2;
}
