/* seacock_table.c - openings in the hull as one table of a step, port beside starboard, bow
 * first, so that two people can go down both sides at once (room: compose). Takes the
 * pieces of one item and what the step wants of them; gives the step's lines and heads,
 * and a marker a piece. How a valve is turned is said once, in the note above the table,
 * where most are turned so; a line then says only what differs. Never leaves a piece out:
 * one whose side is not recorded has a group of its own. */
#include "compose_room.h"

#include <string.h>

/* The handling that the table's note says. */
struct handling {
    const struct phrase *how;     /* NULL: no two share one, or one is not recorded */
    bool all;                     /* every valve is turned so, not only most */
    enum end_state state;        /* what the step wants of each: shut */
};

/* How this piece is brought into the state; NULL: the record does not say. */
static const struct phrase *how_of(struct composing *composing, const struct equipment *gear,
                                   enum end_state state)
{
    return gear_handling_known(composing, gear, state);
}

/* How many valves are turned just so. */
static size_t handled_so(struct composing *composing, enum item_key item,
                         const struct phrase *how, enum end_state state)
{
    size_t index = 0, count = 0;
    for (const struct equipment *gear; (gear = gear_next(composing, item, &index)) != NULL;)
        count += gear->valve.answer != ANSWER_NO &&
                         phrase_equal(how_of(composing, gear, state), how) ? 1 : 0;
    return count;
}

/* The handling of the one valve there is. */
static const struct phrase *handled_alone(struct composing *composing, enum item_key item,
                                          enum end_state state)
{
    size_t index = 0;
    const struct equipment *gear = gear_next(composing, item, &index);
    while (gear != NULL && gear->valve.answer == ANSWER_NO)
        gear = gear_next(composing, item, &index);
    return gear == NULL ? NULL : how_of(composing, gear, state);
}

/* The handling that most valves share. Where one is not recorded nothing is shared: the
 * note would speak for it. An opening without a valve is not asked. */
static struct handling common_handling(struct composing *composing, enum item_key item,
                                       enum end_state state)
{
    struct handling common = {.how = NULL, .state = state};
    size_t index = 0, valves = 0, most = 1;
    for (const struct equipment *gear; (gear = gear_next(composing, item, &index)) != NULL;) {
        if (gear->valve.answer == ANSWER_NO)
            continue;
        const struct phrase *how = how_of(composing, gear, state);
        if (how == NULL)
            return (struct handling){.how = NULL, .state = state};
        size_t same = handled_so(composing, item, how, state);
        valves++;
        if (same > most || valves == 1) {
            most = same;
            common.how = same > 1 ? how : NULL;
        }
    }
    common.all = most == valves;
    if (valves == 1)
        common.how = handled_alone(composing, item, state);
    return common;
}

static const struct phrase *cell_name(const struct composing *composing,
                                      const struct equipment *gear)
{
    struct arena *arena = composing->arena;
    const struct phrase *name = gear->name.text == NULL ? phrase_item(arena, gear->item.value)
                                                        : phrase_text(arena, &gear->name);
    return phrase_joined(arena, WORD_JOIN_COMMA, phrase_zone(arena, gear->place_zone), name, NULL);
}

/* What the head of the table does not say of all; NULL: nothing. */
static const struct phrase *own_handling(struct composing *composing,
                                         const struct equipment *gear,
                                         const struct handling *common)
{
    const struct phrase *how = how_of(composing, gear, common->state);
    if (gear->valve.answer == ANSWER_NO)
        return word_alone(composing, WORD_VALVE_NONE);
    return phrase_equal(how, common->how) ? NULL : how;
}

/* Where the piece lies along the boat: twice the middle of its zone, from the bow. */
static int gear_station(const struct equipment *gear)
{
    return gear->place_zone == NULL ? 0 : gear->place_zone->from + gear->place_zone->to;
}

/* The gear in order from bow to stern; equal stations keep the file's order. */
static const struct equipment **gear_by_station(const struct composing *composing,
                                                enum item_key item, size_t *count)
{
    size_t room = composing->in->boat->equipment_count, index = 0;
    const struct equipment **list = arena_array(composing->arena, room + 1, sizeof *list);
    *count = 0;
    for (const struct equipment *gear; (gear = gear_next(composing, item, &index)) != NULL;) {
        size_t at = (*count)++;
        for (; at > 0 && gear_station(list[at - 1]) > gear_station(gear); at--)
            list[at] = list[at - 1];
        list[at] = gear;
    }
    return list;
}

/* The side of the piece as recorded, else of its zone. */
static enum side gear_side(const struct equipment *gear)
{
    if (gear->place_side != SIDE_NONE || gear->place_zone == NULL)
        return gear->place_side;
    return gear->place_zone->side;
}

/* ---- lines ---- */

/* The head of a group. Pieces whose side the record does not tell stand under words that
 * say so, never under those of a side. */
static const char *head_word(const struct composing *composing, enum side side)
{
    static const enum word heads[] = {
        [SIDE_NONE] = WORD_TABLE_SIDE_UNKNOWN, [SIDE_PORT] = WORD_PLAN_PORT,
        [SIDE_STARBOARD] = WORD_PLAN_STARBOARD, [SIDE_CENTRE] = WORD_TABLE_CENTRE,
        [SIDE_BOTH] = WORD_TABLE_BOTH_SIDES};
    return phrase_said(composing, word_alone(composing, heads[side]));
}

/* The table while it is written. */
struct writing {
    struct composing *composing;
    const struct equipment **list;   /* the pieces from bow to stern */
    size_t gear_count;
    const struct handling *common;
    struct table_row *lines;         /* as far as they are written */
    size_t line_count;
};

static struct table_cell cell_of(const struct writing *writing, const struct equipment *gear)
{
    struct composing *composing = writing->composing;
    const struct phrase *name = cell_name(composing, gear);
    const struct phrase *handling = own_handling(composing, gear, writing->common);
    struct table_cell cell = {.tag = TEXT_OR_EMPTY(gear->tag), .origin = gear->place,
                              .name = phrase_said(composing, name)};
    if (handling == NULL)
        return cell;
    cell.handling_at = strlen(cell.name) + strlen(": ");
    cell.name = phrase_said(composing,
                            phrase_word(composing->arena, WORD_OPENING_HANDLED, "opening", name,
                                        "how", handling, NULL));
    return cell;
}

static size_t side_count(const struct writing *writing, enum side side)
{
    size_t count = 0;
    for (size_t i = 0; i < writing->gear_count; i++)
        count += gear_side(writing->list[i]) == side ? 1 : 0;
    return count;
}

/* Writes one side down a column, from the first line that is not yet written; the caller
 * counts the lines. */
static void column_write(struct writing *writing, enum side side, size_t column)
{
    size_t line = writing->line_count;
    for (size_t i = 0; i < writing->gear_count; i++)
        if (gear_side(writing->list[i]) == side)
            writing->lines[line++].cells[column] = cell_of(writing, writing->list[i]);
}

/* Writes a group that has no other side beside it over both columns: its first half down
 * the left one, the second down the right one. */
static void block_write(struct writing *writing, enum side side)
{
    size_t count = side_count(writing, side), half = (count + 1) / 2, written = 0;
    for (size_t i = 0; i < writing->gear_count; i++) {
        if (gear_side(writing->list[i]) != side)
            continue;
        writing->lines[writing->line_count + written % half].cells[written / half] =
            cell_of(writing, writing->list[i]);
        written++;
    }
    writing->line_count += half;
}

/* Writes a group under its head: that of the table if nothing stands there yet, else one in
 * the middle of the table. */
static void group_write(struct writing *writing, enum side side, struct card_step *step)
{
    if (side_count(writing, side) == 0)
        return;
    bool first = writing->line_count == 0;
    if (first)
        step->table_heads[0] = head_word(writing->composing, side);
    else
        writing->lines[writing->line_count++].head = head_word(writing->composing, side);
    block_write(writing, side);
}

/* Writes port beside starboard; where there is one of the two alone, over both columns. */
static void sides_write(struct writing *writing, struct card_step *step)
{
    size_t port = side_count(writing, SIDE_PORT), starboard = side_count(writing, SIDE_STARBOARD);
    if (port == 0 || starboard == 0) {
        enum side side = port > 0 ? SIDE_PORT : SIDE_STARBOARD;
        group_write(writing, side, step);
        if (port + starboard > 1)
            step->table_heads[1] = step->table_heads[0];
        return;
    }
    column_write(writing, SIDE_PORT, 0);
    column_write(writing, SIDE_STARBOARD, 1);
    writing->line_count = port > starboard ? port : starboard;
    step->table_heads[0] = head_word(writing->composing, SIDE_PORT);
    step->table_heads[1] = head_word(writing->composing, SIDE_STARBOARD);
}

void table_make(struct composing *composing, enum item_key item, enum end_state state,
                struct card_step *step)
{
    static const enum side others[] = {SIDE_CENTRE, SIDE_BOTH, SIDE_NONE};
    struct handling common = common_handling(composing, item, state);
    struct writing writing = {.composing = composing, .common = &common};
    writing.list = gear_by_station(composing, item, &writing.gear_count);
    writing.lines = arena_array(composing->arena,
                                writing.gear_count + sizeof others / sizeof *others,
                                sizeof *writing.lines);
    step->table_heads[0] = step->table_heads[1] = "";
    for (size_t i = 0; i < writing.gear_count; i++)
        marker_add(composing, writing.list[i]);
    sides_write(&writing, step);
    for (size_t i = 0; i < sizeof others / sizeof *others; i++)
        group_write(&writing, others[i], step);
    step->table = writing.lines;
    step->table_count = writing.line_count;
    step->table_kind = item_kind_of(item);
    step->table_note = "";
    if (common.how != NULL)
        step->table_note = phrase_said(
            composing, phrase_word(composing->arena,
                                   common.all ? WORD_ALL_HANDLED : WORD_OTHERS_HANDLED, "how",
                                   common.how, NULL));
}
