/* rows.c - the lines under a step: which gear, where, how (room: compose). */
#include "compose.h"

#include <string.h>

#include "figure.h"

#define PIECES_MOST 3            /* on a line of gear that only helps */
#define ZONES_MOST 2

const char *place_words(const struct composing *composing, const struct zone *zone,
                        enum side side, const char *spot)
{
    static const enum word side_words[] = {
        [SIDE_PORT] = WORD_SIDE_PORT, [SIDE_STARBOARD] = WORD_SIDE_STARBOARD,
        [SIDE_CENTRE] = WORD_SIDE_CENTRE, [SIDE_BOTH] = WORD_SIDE_BOTH};
    const struct words *words = composing->in->words;
    struct text_builder builder = text_builder_in(composing->arena);
    text_add(&builder, zone == NULL ? "" : words_zone(words, zone->key));
    if (side != SIDE_NONE)
        text_add_format(&builder, ", %s", words_get(words, side_words[side]));
    if (!text_empty(spot))
        text_add_format(&builder, ", %s", spot);
    return builder.at;
}

static bool gear_is_inside_here(const struct composing *composing, const struct equipment *gear)
{
    const char *space = composing->slot->space;
    return space != NULL && gear_inside(composing, gear, &space, 1) == TRUTH_YES;
}

/* Place, then handling; gear inside the burning space says so instead. */
static const char *where_words(const struct composing *composing, const struct equipment *gear)
{
    const char *place = place_words(composing, gear->place_zone, gear->place_side,
                                    TEXT_OR_EMPTY(gear->spot));
    const char *how = TEXT_OR_EMPTY(gear->how);
    if (text_empty(how) && gear->vents_to.text != NULL)
        how = words_fill(composing->in->words, composing->arena, WORD_VENTS_TO, "place",
                         gear->vents_to.text, NULL);
    if (gear_is_inside_here(composing, gear) && gear->kind->class == ITEM_CONTROL)
        how = words_get(composing->in->words, WORD_INSIDE_LEAVE);
    return text_empty(how) ? place : text_format(composing->arena, "%s: %s", place, how);
}

/* "empty in 9 s", from the label of an extinguisher, for whoever uses it. The safety plan,
 * by which it is looked for, has its weight. */
static const char *discharge_words(const struct composing *composing,
                                   const struct equipment *gear)
{
    if (gear->kind->class != ITEM_FIRE || figures_allowed(composing) == 0 ||
        is_safety_plan(composing->slot->procedure))
        return NULL;
    return figure_discharge_words(composing->in->words, gear, composing->arena);
}

static const char *capacity_words(const struct composing *composing, const struct equipment *gear)
{
    const struct words *words = composing->in->words;
    if (gear->persons.given)
        return words_fill(words, composing->arena, WORD_PERSONS, "count", gear->persons.text,
                          NULL);
    /* Seconds say more of an extinguisher than kilograms. */
    const char *discharge = discharge_words(composing, gear);
    if (discharge != NULL)
        return discharge;
    if (gear->kg.given && gear->kind->class == ITEM_FIRE)
        return words_fill(words, composing->arena, WORD_KILOGRAMS, "count", gear->kg.text, NULL);
    return NULL;
}

const char *gear_name(const struct composing *composing, const struct equipment *gear,
                      size_t pieces)
{
    const struct words *words = composing->in->words;
    const char *capacity = capacity_words(composing, gear);
    const char *name = words_item(words, gear->item.text);
    if (gear->name.text != NULL)
        name = gear->name.text;
    else if (gear->count.given && gear->count.milli > 1000)
        name = text_format(composing->arena, "%s %s", gear->count.text,
                           words_items(words, gear->item.text));
    else if (pieces > 1)
        name = text_format(composing->arena, "%zu %s", pieces,
                           words_items(words, gear->item.text));
    return capacity == NULL ? name : text_format(composing->arena, "%s, %s", name, capacity);
}

/* May b stand on a's row: the same kind of thing at the same place, handled the
 * same way? A count of its own keeps a row to itself. */
static bool same_row(const struct composing *composing, const struct equipment *a,
                     const struct equipment *b)
{
    return text_equal(a->item.text, b->item.text) && !a->count.given && !b->count.given &&
           text_equal(a->name.text, b->name.text) && a->kg.milli == b->kg.milli &&
           a->persons.milli == b->persons.milli &&
           a->discharge_s.milli == b->discharge_s.milli &&
           text_equal(where_words(composing, a), where_words(composing, b));
}

struct row_list {
    struct card_row *rows;
    const struct equipment **first;   /* by row: the gear that began it */
    size_t count, row_room, first_room;
};

static void row_begin(struct composing *composing, struct row_list *list,
                      const struct equipment *gear)
{
    const char **tags = arena_array(composing->arena, 1, sizeof *tags);
    tags[0] = TEXT_OR_EMPTY(gear->tag);
    list->rows = arena_grow(composing->arena, list->rows, list->count, &list->row_room,
                            sizeof *list->rows);
    list->first = arena_grow(composing->arena, list->first, list->count, &list->first_room,
                             sizeof *list->first);
    list->first[list->count] = gear;
    list->rows[list->count++] = (struct card_row){
        .kind = gear->kind, .tags = tags, .tag_count = 1,
        .name = gear_name(composing, gear, 1), .where = where_words(composing, gear),
        .origin = gear->place};
}

static void row_join(struct composing *composing, struct row_list *list,
                     const struct equipment *gear)
{
    struct card_row *row = &list->rows[list->count - 1];
    const char **tags = arena_array(composing->arena, row->tag_count + 1, sizeof *tags);
    for (size_t i = 0; i < row->tag_count; i++)
        tags[i] = row->tags[i];
    tags[row->tag_count] = TEXT_OR_EMPTY(gear->tag);
    row->tags = tags;
    row->tag_count++;
    row->name = gear_name(composing, list->first[list->count - 1], row->tag_count);
}

static void gear_add(struct composing *composing, struct row_list *list,
                     const struct equipment *gear)
{
    const struct equipment *before = list->count == 0 ? NULL : list->first[list->count - 1];
    if (before != NULL && list->rows[list->count - 1].tag_count < 3 &&
        same_row(composing, before, gear))
        row_join(composing, list, gear);
    else
        row_begin(composing, list, gear);
    marker_add(composing, gear);
}

static size_t pieces_of(const struct composing *composing, const char *item)
{
    size_t index = 0, count = 0;
    while (gear_next(composing, item, &index) != NULL)
        count++;
    return count;
}

/* Is the zone one of those joined so far? "Cockpit" is not in "Cockpit locker". */
static bool zone_told(const char *zones, const char *zone)
{
    size_t length = strlen(zone);
    for (const char *at = strstr(zones, zone); at != NULL; at = strstr(at + 1, zone))
        if ((at == zones || at[-1] == ' ') && (at == zones || at[-2] == ';') &&
            (at[length] == '\0' || at[length] == ';'))
            return true;
    return false;
}

static void zone_add(const struct composing *composing, struct text_builder *zones,
                     const struct equipment *gear)
{
    const char *zone = place_words(composing, gear->place_zone, SIDE_NONE, NULL);
    if (zones->length > 0 && zone_told(zones->at, zone))
        return;
    text_add_format(zones, "%s%s", zones->length == 0 ? "" : "; ", zone);
}

/* Does a piece more fit on the line? Not with a fourth tag, nor with a third zone. */
static bool piece_fits(const struct composing *composing, const struct equipment *gear,
                       const char *zones, size_t zone_count, size_t pieces)
{
    const char *zone = place_words(composing, gear->place_zone, SIDE_NONE, NULL);
    return pieces < PIECES_MOST && (zone_count < ZONES_MOST || zone_told(zones, zone));
}

/* Gear that helps but is not the step itself shares a row, or a few rows where there
 * are many pieces: tags, and the zones. The plan shows each place. */
static bool pieces_row_add(struct composing *composing, struct row_list *list, const char *item,
                           size_t *index)
{
    struct text_builder zones = text_builder_in(composing->arena);
    const char **tags = arena_array(composing->arena, PIECES_MOST, sizeof *tags);
    const struct equipment *first = NULL, *gear;
    size_t count = 0, zone_count = 0, next = *index;
    while ((gear = gear_next(composing, item, &next)) != NULL &&
           piece_fits(composing, gear, zones.at, zone_count, count)) {
        size_t length = zones.length;
        first = first == NULL ? gear : first;
        tags[count++] = TEXT_OR_EMPTY(gear->tag);
        zone_add(composing, &zones, gear);
        zone_count += zones.length > length ? 1 : 0;
        marker_add(composing, gear);
        *index = next;
    }
    if (first == NULL)
        return false;
    row_begin(composing, list, first);
    struct card_row *row = &list->rows[list->count - 1];
    row->tags = tags;
    row->tag_count = count;
    if (count > 1)
        row->name = text_format(composing->arena, "%zu %s", count,
                                words_items(composing->in->words, item));
    row->where = zones.at;
    row->shared = true;
    return true;
}

static void pieces_add(struct composing *composing, struct row_list *list, const char *item)
{
    size_t index = 0;
    while (pieces_row_add(composing, list, item, &index))
        continue;
}

/* In a draft, what is not recorded is seen on the card, not left out. */
static void not_recorded_add(struct composing *composing, struct row_list *list, const char *item,
                             struct place origin)
{
    list->rows = arena_grow(composing->arena, list->rows, list->count, &list->row_room,
                            sizeof *list->rows);
    list->first = arena_grow(composing->arena, list->first, list->count, &list->first_room,
                             sizeof *list->first);
    list->first[list->count] = NULL;
    list->rows[list->count++] = (struct card_row){
        .kind = item_find(item), .name = words_item(composing->in->words, item),
        .where = words_get(composing->in->words, WORD_NOT_RECORDED), .origin = origin};
}

/* The step cannot do without the item, and this boat has none that will do. */
static void piece_lacking(struct composing *composing, const struct text_value *item)
{
    composing->held = true;
    problem_add(composing->problems, SEVERITY_HELD, item->place, "give the step a case without it",
                "%s: this step has no words for a boat without %s", composing->slot->title,
                item->text);
}

/* Gear without a recorded side of the question holds the card; gear declared
 * not fitted must have its own case when the step cannot do without it. */
static void item_add(struct composing *composing, struct row_list *list,
                     const struct text_value *item, bool needed, const struct condition *when)
{
    struct condition fitted = {.kind = CONDITION_FITTED, .item = item->text, .place = item->place};
    enum truth truth = condition_judge(composing, &fitted);
    size_t before = list->count, index = 0;
    if (truth == TRUTH_UNKNOWN)
        not_recorded_add(composing, list, item->text, item->place);
    if (truth == TRUTH_NO && needed)
        piece_lacking(composing, item);
    if (truth != TRUTH_YES)
        return;
    if (!needed && pieces_of(composing, item->text) > 1) {
        pieces_add(composing, list, item->text);
        return;
    }
    for (const struct equipment *gear; (gear = gear_next(composing, item->text, &index)) != NULL;)
        if (condition_admits(composing, when, gear))
            gear_add(composing, list, gear);
    if (needed && list->count == before)
        piece_lacking(composing, item);
}

/* What keeps a condition from being decided, a row an item. */
static void undecided_add(struct composing *composing, struct row_list *list,
                          const struct condition *condition)
{
    if (condition == NULL || condition_judge(composing, condition) != TRUTH_UNKNOWN)
        return;
    for (size_t i = 0; i < condition->child_count; i++)
        undecided_add(composing, list, condition->children[i]);
    if (condition->item == NULL)
        return;
    for (size_t i = 0; i < list->count; i++)
        if (list->first[i] == NULL && list->rows[i].kind == item_find(condition->item))
            return;
    not_recorded_add(composing, list, condition->item, condition->place);
}

void rows_make(struct composing *composing, const struct list_value *uses,
               const struct list_value *also, const struct condition *when,
               const struct condition *undecided, struct card_step *step)
{
    struct row_list list = {0};
    undecided_add(composing, &list, undecided);
    for (size_t i = 0; i < uses->count; i++)
        item_add(composing, &list, &uses->items[i], true, when);
    for (size_t i = 0; i < also->count; i++)
        item_add(composing, &list, &also->items[i], false, NULL);
    step->rows = list.rows;
    step->row_count = list.count;
}

size_t card_step_rows(const struct card_step *step)
{
    return step->row_count + step->figure_count + (step->table_count + 1) / 2;
}
