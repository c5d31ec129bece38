/* seacock_table.c - openings in the hull as one table, port beside starboard,
 * bow first (room: compose). */
#include "compose.h"

struct column {
    struct table_cell *cells;
    size_t count, room;
};

/* Handling that most share is said once, in the table's head. */
struct handling {
    const char *how;      /* NULL: nothing is shared, or not all is recorded */
    bool all;
};

static size_t handled_so(const struct composing *composing, const char *item, const char *how)
{
    size_t index = 0, count = 0;
    for (const struct equipment *gear; (gear = gear_next(composing, item, &index)) != NULL;)
        count += gear->valve.answer != ANSWER_NO && text_equal(gear->how.text, how) ? 1 : 0;
    return count;
}

/* The handling of the one valve there is. */
static const char *handled_alone(const struct composing *composing, const char *item)
{
    size_t index = 0;
    const struct equipment *gear = gear_next(composing, item, &index);
    while (gear != NULL && gear->valve.answer == ANSWER_NO)
        gear = gear_next(composing, item, &index);
    return gear == NULL ? NULL : gear->how.text;
}

static struct handling common_handling(const struct composing *composing, const char *item)
{
    struct handling common = {.how = NULL};
    size_t index = 0, valves = 0, most = 1;
    for (const struct equipment *gear; (gear = gear_next(composing, item, &index)) != NULL;) {
        if (gear->valve.answer == ANSWER_NO)
            continue;
        if (gear->how.text == NULL)
            return (struct handling){.how = NULL};
        size_t same = handled_so(composing, item, gear->how.text);
        valves++;
        if (same > most || valves == 1) {
            most = same;
            common.how = same > 1 ? gear->how.text : NULL;
        }
    }
    common.all = most == valves;
    if (valves == 1)
        common.how = handled_alone(composing, item);
    return common;
}

static const char *cell_name(const struct composing *composing, const struct equipment *gear,
                             const struct handling *common)
{
    const struct words *words = composing->in->words;
    const char *zone = gear->place_zone == NULL ? ""
                                                : words_zone(words, gear->place_zone->key);
    const char *name = gear->name.text == NULL ? words_item(words, gear->item.text)
                                               : gear->name.text;
    const char *line = text_format(composing->arena, "%s, %s", zone, name);
    if (gear->valve.answer == ANSWER_NO)
        return text_format(composing->arena, "%s: %s", line,
                           words_get(words, WORD_VALVE_NONE));
    if (gear->how.text != NULL && !text_equal(gear->how.text, common->how))
        return text_format(composing->arena, "%s: %s", line, gear->how.text);
    return line;
}

static int station(const struct equipment *gear)
{
    return gear->place_zone == NULL ? 0 : gear->place_zone->from + gear->place_zone->to;
}

/* The gear in order from bow to stern; equal stations keep the file's order. */
static const struct equipment **gear_by_station(const struct composing *composing,
                                                const char *item, size_t *count)
{
    size_t room = composing->in->boat->equipment_count, index = 0;
    const struct equipment **list = arena_array(composing->arena, room + 1, sizeof *list);
    *count = 0;
    for (const struct equipment *gear; (gear = gear_next(composing, item, &index)) != NULL;) {
        size_t at = (*count)++;
        for (; at > 0 && station(list[at - 1]) > station(gear); at--)
            list[at] = list[at - 1];
        list[at] = gear;
    }
    return list;
}

static void cell_add(struct composing *composing, struct column *column,
                     const struct equipment *gear, const struct handling *common)
{
    column->cells = arena_grow(composing->arena, column->cells, column->count, &column->room,
                               sizeof *column->cells);
    column->cells[column->count++] = (struct table_cell){
        .tag = TEXT_OR_EMPTY(gear->tag), .name = cell_name(composing, gear, common),
        .origin = gear->place};
    marker_add(composing, gear);
}

static enum side gear_side(const struct equipment *gear)
{
    if (gear->place_side != SIDE_NONE || gear->place_zone == NULL)
        return gear->place_side;
    return gear->place_zone->side;
}

/* What stands on neither side goes where there is more room. */
static void columns_fill(struct composing *composing, const char *item,
                         const struct handling *common, struct column columns[TABLE_CELLS])
{
    size_t count;
    const struct equipment **list = gear_by_station(composing, item, &count);
    for (size_t i = 0; i < count; i++) {
        enum side side = gear_side(list[i]);
        size_t shorter = columns[0].count <= columns[1].count ? 0 : 1;
        size_t column = side == SIDE_PORT ? 0 : side == SIDE_STARBOARD ? 1 : shorter;
        cell_add(composing, &columns[column], list[i], common);
    }
}

void table_make(struct composing *composing, const char *item, struct card_step *step)
{
    struct column columns[TABLE_CELLS] = {{0}, {0}};
    struct handling common = common_handling(composing, item);
    columns_fill(composing, item, &common, columns);
    size_t lines = columns[0].count > columns[1].count ? columns[0].count : columns[1].count;
    struct table_row *table = arena_array(composing->arena, lines, sizeof *table);
    for (size_t c = 0; c < TABLE_CELLS; c++)
        for (size_t i = 0; i < columns[c].count; i++)
            table[i].cells[c] = columns[c].cells[i];
    step->table = table;
    step->table_count = lines;
    step->table_heads[0] = words_get(composing->in->words, WORD_PLAN_PORT);
    step->table_heads[1] = words_get(composing->in->words, WORD_PLAN_STARBOARD);
    step->table_kind = item_find(item);
    step->table_note = "";
    if (common.how != NULL)
        step->table_note = words_fill(composing->in->words, composing->arena,
                                      common.all ? WORD_ALL_HANDLED : WORD_OTHERS_HANDLED, "how",
                                      common.how, NULL);
}
