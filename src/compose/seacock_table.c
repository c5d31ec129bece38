/* seacock_table.c - openings in the hull as one table of a step, side by side and bow first, so
 * that two people can go down both sides at once (room: compose). Takes the pieces of one item
 * and what the step wants of them; gives a group a side, a row a place, and a marker a piece.
 * How the valves of a side are turned is said once, in its head, where most are turned so; an
 * opening then says only what differs. Never leaves a piece out: those whose side is not
 * recorded are a group of their own. */
#include "compose_room.h"

/* The table while it is made. */
struct openings {
    struct composing *composing;
    enum end_state state;            /* what the step wants of each: shut */
    const struct equipment **list;   /* all pieces, from bow to stern */
    size_t count;
};

/* ---- which there are ---- */

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

static struct openings openings_of_side(const struct openings *all, enum side side)
{
    struct openings own = *all;
    own.list = arena_array(all->composing->arena, all->count + 1, sizeof *own.list);
    own.count = 0;
    for (size_t i = 0; i < all->count; i++)
        if (gear_side(all->list[i]) == side)
            own.list[own.count++] = all->list[i];
    return own;
}

/* ---- handling ---- */

static bool is_turned(const struct equipment *gear)
{
    return gear->valve.answer != ANSWER_NO;
}

/* How this piece is brought into the state; NULL: the record does not say. */
static const struct phrase *how_of(const struct openings *openings, const struct equipment *gear)
{
    return gear_handling_known(openings->composing, gear, openings->state);
}

/* How many valves are turned just so. */
static size_t turned_so(const struct openings *openings, const struct phrase *how)
{
    size_t count = 0;
    for (size_t i = 0; i < openings->count; i++)
        count += is_turned(openings->list[i]) &&
                         phrase_equal(how_of(openings, openings->list[i]), how) ? 1 : 0;
    return count;
}

/* The handling that most valves share, or that of the one valve there is; NULL: no two share
 * one. Where one is not recorded nothing is shared: the head would speak for it. An opening
 * without a valve is not asked. */
static const struct phrase *common_how(const struct openings *openings)
{
    const struct phrase *common = NULL;
    size_t valves = 0, most = 0;
    for (size_t i = 0; i < openings->count; i++) {
        if (!is_turned(openings->list[i]))
            continue;
        const struct phrase *how = how_of(openings, openings->list[i]);
        if (how == NULL)
            return NULL;
        size_t same = turned_so(openings, how);
        valves++;
        if (same > most) {
            most = same;
            common = how;
        }
    }
    return valves == 1 || most > 1 ? common : NULL;
}

/* What the head of its side does not say; NULL: nothing. */
static const struct phrase *own_end(const struct openings *openings,
                                    const struct equipment *gear, const struct phrase *common)
{
    struct composing *composing = openings->composing;
    const struct phrase *how = how_of(openings, gear);
    if (!is_turned(gear))
        return word_alone(composing, WORD_VALVE_NONE);
    if (how == NULL || phrase_equal(how, common))
        return NULL;
    return row_end_phrase(composing, gear, openings->state);
}

/* ---- rows ---- */

static struct row_item opening_said(const struct openings *openings,
                                    const struct equipment *gear, const struct phrase *common)
{
    struct composing *composing = openings->composing;
    const char **tags = arena_array(composing->arena, 1, sizeof *tags);
    const struct phrase *name = gear->name.text == NULL
                                    ? phrase_item(composing->arena, gear->item.value)
                                    : phrase_text(composing->arena, &gear->name);
    tags[0] = TEXT_OR_EMPTY(gear->tag);
    return (struct row_item){.kind = gear->kind, .tags = tags, .tag_count = 1,
                             .name = phrase_said(composing, name), .spot = "",
                             .end = phrase_said(composing, own_end(openings, gear, common)),
                             .origin = gear->place};
}

static bool is_first_of_its_zone(const struct openings *openings, size_t index)
{
    for (size_t i = 0; i < index; i++)
        if (openings->list[i]->place_zone == openings->list[index]->place_zone)
            return false;
    return true;
}

/* All of the zone of that piece. */
static struct card_row zone_row(const struct openings *openings, size_t index,
                                const struct phrase *common)
{
    struct composing *composing = openings->composing;
    const struct equipment *first = openings->list[index];
    struct row_item *items = arena_array(composing->arena, openings->count, sizeof *items);
    size_t count = 0;
    for (size_t i = index; i < openings->count; i++)
        if (openings->list[i]->place_zone == first->place_zone)
            items[count++] = opening_said(openings, openings->list[i], common);
    return (struct card_row){
        .place = phrase_said(composing, phrase_zone(composing->arena, first->place_zone)),
        .spot = "", .items = items, .item_count = count, .origin = first->place};
}

/* ---- groups ---- */

/* "PORT: across = SHUT". Pieces whose side the record does not tell stand under words that say
 * so, never under those of a side. */
static const char *head_said(const struct openings *openings, enum side side,
                             const struct phrase *common)
{
    static const enum word heads[] = {
        [SIDE_NONE] = WORD_TABLE_SIDE_UNKNOWN, [SIDE_PORT] = WORD_PLAN_PORT,
        [SIDE_STARBOARD] = WORD_PLAN_STARBOARD, [SIDE_CENTRE] = WORD_TABLE_CENTRE,
        [SIDE_BOTH] = WORD_TABLE_BOTH_SIDES};
    struct composing *composing = openings->composing;
    const struct phrase *head = word_alone(composing, heads[side]);
    if (common == NULL)
        return phrase_said(composing, phrase_word(composing->arena, WORD_OPENINGS_AT, "side", head,
                                                  NULL));
    return phrase_said(composing,
                       phrase_word(composing->arena, WORD_OPENINGS_HANDLED, "side", head, "how",
                                   common, "state", state_said(composing, openings->state),
                                   NULL));
}

static struct opening_group group_said(const struct openings *openings, enum side side)
{
    const struct phrase *common = common_how(openings);
    struct card_row *rows = arena_array(openings->composing->arena, openings->count,
                                        sizeof *rows);
    struct opening_group group = {.side = side, .head = head_said(openings, side, common),
                                  .rows = rows};
    for (size_t i = 0; i < openings->count; i++)
        if (is_first_of_its_zone(openings, i))
            rows[group.row_count++] = zone_row(openings, i, common);
    return group;
}

void table_make(struct composing *composing, enum item_key item, enum end_state state,
                struct card_step *step)
{
    static const enum side sides[] = {SIDE_PORT, SIDE_STARBOARD, SIDE_CENTRE, SIDE_BOTH,
                                      SIDE_NONE};
    struct openings all = {.composing = composing, .state = state};
    struct opening_group *groups = arena_array(composing->arena, sizeof sides / sizeof *sides,
                                               sizeof *groups);
    all.list = gear_by_station(composing, item, &all.count);
    for (size_t i = 0; i < all.count; i++)
        marker_add(composing, all.list[i]);
    for (size_t i = 0; i < sizeof sides / sizeof *sides; i++) {
        struct openings own = openings_of_side(&all, sides[i]);
        if (own.count > 0)
            groups[step->table_count++] = group_said(&own, sides[i]);
    }
    step->table = groups;
    step->table_kind = item_kind_of(item);
}
