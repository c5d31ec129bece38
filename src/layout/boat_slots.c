/* boat_slots.c - the fixed places of a boat's tags and names (room: layout). Each body of each
 * view finds its rows (slots.c), in as few rows as hold all that any card of the set shows. */
#include "slots_gather.h"
#include "plan_tag.h"

#include "measures.h"

#include <stdlib.h>

/* ---- the bodies ---- */

/* Half its breadth where a row is narrowest; at a bow, near the head of the row. A row that a deck
 * does not fill has nothing to stand on. */
static mpt row_half(const struct gathering *gathering, const struct view_body *body, int row)
{
    const struct plan_views *views = &gathering->views;
    int rows = gathering->rows;
    mpt lower = body_half(views, body, (row + 1) * 1000 / rows);
    mpt upper = body_half(views, body, body->shape == SHAPE_STRAIGHT
                                           ? row * 1000 / rows : (4 * row + 1) * 250 / rows);
    return upper < lower ? upper : lower;
}

/* A tag may touch the outline of a hull; a deck between hulls ends where they begin. A hull that
 * is narrower than a tag bears one. */
static struct slot_body slot_body_of(const struct gathering *gathering,
                                     const struct view_body *body, mpt tag)
{
    int rows = gathering->rows;
    struct slot_body slots = {.rows = rows, .tag = tag, .gap = PLAN_TAG_GAP};
    mpt least = hull_share(gathering->views.width / 2, body->half);
    mpt off = hull_share(gathering->views.width / 2, abs(body->centre));
    mpt most = gathering->views.width / 2 - off - TAG_RIM;
    least = least < most ? least : most;
    for (int row = 0; row < rows; row++) {
        mpt over = body->shape == SHAPE_STRAIGHT ? -PLAN_TAG_GAP / 2 : TAG_OVER_HULL;
        mpt half = row_half(gathering, body, row) + over;
        half = half < most ? half : most;
        slots.half[row] = half > 0 ? half : 0;
        if (least < tag / 2 && slots.half[row] > least / 2)
            slots.half[row] = tag / 2;
    }
    return slots;
}

static mpt widest_tag_in(const struct gathering *gathering, int view)
{
    struct style style = plan_tag_style(size_rule(gathering->pen->paper, ROLE_PLAN_TAG).floor);
    mpt widest = 0;
    for (size_t i = 0; i < gathering->count; i++) {
        const struct fixed_slot *slot = &gathering->slots[i];
        if (slot->view != view || slot->kind != SLOT_TAG)
            continue;
        mpt pads = slot->marker->level == LEVEL_BELOW ? PLAN_TAG_PADS_ROUND : PLAN_TAG_PADS;
        mpt width = pen_width(gathering->pen, &style, slot->text) + pads;
        widest = width > widest ? width : widest;
    }
    return widest;
}

static void slots_take(struct gathering *gathering, const size_t *index,
                       const struct slot_item *items, size_t count)
{
    for (size_t i = 0; i < count; i++) {
        struct fixed_slot *slot = &gathering->slots[index[i]];
        const struct view_body *body = &gathering->views.views[slot->view].bodies[slot->body];
        slot->without_room = false;
        slot->row = items[i].row;
        slot->x = hull_share(gathering->views.width / 2, body->centre) + items[i].x;
    }
}

/* What a body gives up where its tags find no room: names that are no room's; then tags of one
 * zone that never stand on one card have one place; then such of neighbouring zones. */
enum given_up { GIVES_NOTHING, GIVES_NAMES, SHARES_IN_ZONE, SHARES_NEAR, GIVES_ROOMS };

/* Those that stand in a body, each with its slot; a tag that shares the place of another has
 * the index of that one. */
struct standing {
    struct slot_item *items;
    size_t *index;                /* of the slot */
    size_t count;
};

/* Is there a place where both lie? */
static bool may_share(const struct gathering *gathering, const struct slot_item *first, size_t a,
                      size_t b, enum given_up given_up)
{
    const struct slot_item *second = &gathering->items[b];
    const struct fixed_slot *slots = gathering->slots;
    if (first->kind != SLOT_TAG || second->kind != SLOT_TAG || first->queue != second->queue ||
        (gathering->cards[a] & gathering->cards[b]) != 0 || first->from > second->to ||
        second->from > first->to)
        return false;
    return given_up >= SHARES_NEAR ||
           (given_up == SHARES_IN_ZONE && slots[a].zone == slots[b].zone);
}

/* The place of both is where each of them lies. */
static void item_narrow(struct slot_item *item, const struct slot_item *other)
{
    item->from = item->from > other->from ? item->from : other->from;
    item->to = item->to < other->to ? item->to : other->to;
    item->at = item->at < item->from ? item->from : item->at > item->to ? item->to : item->at;
}

/* The one whose place it shares; its own index where it shares none. */
static size_t share_find(struct gathering *gathering, struct standing *standing, size_t index,
                         enum given_up given_up)
{
    for (size_t i = 0; i < standing->count; i++) {
        size_t leader = standing->index[i];
        if (!may_share(gathering, &standing->items[i], leader, index, given_up))
            continue;
        gathering->cards[leader] |= gathering->cards[index];
        item_narrow(&standing->items[i], &gathering->items[index]);
        return leader;
    }
    return index;
}

static struct standing standing_find(struct gathering *gathering, int view, int body,
                                     enum given_up given_up)
{
    struct arena *arena = gathering->pen->arena;
    struct standing standing = {
        .items = arena_array(arena, gathering->count, sizeof *standing.items),
        .index = arena_array(arena, gathering->count, sizeof *standing.index)};
    for (size_t i = 0; i < gathering->count; i++) {
        struct fixed_slot *slot = &gathering->slots[i];
        if (slot->view != view || slot->body != body)
            continue;
        slot->without_room = true;
        bool named = slot->kind == SLOT_NAME || slot->kind == SLOT_NAME_BELOW;
        bool given = given_up > GIVES_NOTHING && (slot->lesser || given_up == GIVES_ROOMS);
        if ((named && given) || gathering->dropped[i])
            continue;
        gathering->leader[i] = share_find(gathering, &standing, i, given_up);
        if (gathering->leader[i] != i)
            continue;
        standing.index[standing.count] = i;
        standing.items[standing.count++] = gathering->items[i];
    }
    return standing;
}

static void cards_reset(struct gathering *gathering)
{
    for (size_t i = 0; i < gathering->count; i++)
        gathering->cards[i] = gathering->own_cards[i];
}

/* A tag that shares a place takes that of the other. */
static void followers_take(struct gathering *gathering, int view, int body)
{
    for (size_t i = 0; i < gathering->count; i++) {
        struct fixed_slot *slot = &gathering->slots[i];
        const struct fixed_slot *leader = &gathering->slots[gathering->leader[i]];
        if (slot->view != view || slot->body != body || leader == slot || slot->kind != SLOT_TAG ||
            gathering->dropped[i])
            continue;
        slot->row = leader->row;
        slot->x = leader->x;
        slot->without_room = false;
    }
}

/* How a body is tried. */
struct body_way { enum given_up given_up; int stray_most; };

static bool body_solve_with(struct gathering *gathering, int view, int body, struct body_way way)
{
    cards_reset(gathering);
    struct standing standing = standing_find(gathering, view, body, way.given_up);
    struct slot_body slots = slot_body_of(gathering,
                                          &gathering->views.views[view].bodies[body],
                                          widest_tag_in(gathering, view));
    slots.stray_most = way.stray_most;
    if (!slots_find(&slots, standing.items, standing.count))
        return false;
    slots_take(gathering, standing.index, standing.items, standing.count);
    followers_take(gathering, view, body);
    return true;
}

static bool is_tag_of(const struct gathering *gathering, size_t i, int view, int body)
{
    const struct fixed_slot *slot = &gathering->slots[i];
    return slot->view == view && slot->body == body && slot->kind == SLOT_TAG &&
           !gathering->dropped[i];
}

/* So many tags stand at the place of this one. */
static size_t tags_beside(const struct gathering *gathering, size_t index, int view, int body)
{
    size_t count = 0;
    for (size_t i = 0; i < gathering->count; i++)
        count += is_tag_of(gathering, i, view, body) &&
                         gathering->slots[i].zone == gathering->slots[index].zone &&
                         gathering->items[i].queue == gathering->items[index].queue ? 1 : 0;
    return count;
}

/* The last tag of the place with the most: the cards that show it have no room for it, and all
 * others have. False: there is none. */
static bool tag_drop(struct gathering *gathering, int view, int body)
{
    size_t most = 0, last = 0;
    for (size_t i = 0; i < gathering->count; i++) {
        size_t count = is_tag_of(gathering, i, view, body)
                           ? tags_beside(gathering, i, view, body) : 0;
        if (count > 0 && count >= most) {
            most = count;
            last = i;
        }
    }
    if (most > 0)
        gathering->dropped[last] = true;
    return most > 0;
}

/* Names and places of their own go before a thing strays where it is not. */
#define STRAY_LITTLE 2
static const struct body_way body_ways[] = {
    {GIVES_NOTHING, STRAY_LITTLE}, {GIVES_NAMES, STRAY_LITTLE}, {SHARES_IN_ZONE, STRAY_LITTLE},
    {SHARES_NEAR, STRAY_LITTLE},   {GIVES_NOTHING, SLOT_ROWS_MOST}, {GIVES_NAMES, SLOT_ROWS_MOST},
    {SHARES_IN_ZONE, SLOT_ROWS_MOST}, {SHARES_NEAR, SLOT_ROWS_MOST},
    {GIVES_ROOMS, SLOT_ROWS_MOST}};
#define BODY_WAYS ((int)(sizeof body_ways / sizeof *body_ways))

/* What it gave up; more than there is, by so many as it has no room for. */
static int body_solve(struct gathering *gathering, int view, int body)
{
    for (size_t i = 0; i < gathering->count; i++)
        if (gathering->slots[i].view == view && gathering->slots[i].body == body)
            gathering->dropped[i] = false;
    for (int way = 0; way < BODY_WAYS; way++)
        if (body_solve_with(gathering, view, body, body_ways[way]))
            return way;
    int dropped = 0;
    while (tag_drop(gathering, view, body)) {
        dropped++;
        if (body_solve_with(gathering, view, body, body_ways[BODY_WAYS - 1]))
            break;
    }
    return BODY_WAYS + dropped;
}

/* How far all together stand ahead of where they belong, or abaft it: thousandths of the length. */
static int strayed(const struct gathering *gathering)
{
    int strayed = 0;
    for (size_t i = 0; i < gathering->count; i++) {
        const struct slot_item *item = &gathering->items[i];
        int along = (2 * gathering->slots[i].row + 1) * 500 / gathering->rows;
        int ahead = item->from - along, abaft = along - item->to;
        int out = ahead > abaft ? ahead : abaft;
        strayed += gathering->slots[i].without_room || out < 0 ? 0 : out;
    }
    return strayed;
}

#define GIVING_UP 100000        /* is worse than any straying */
#define STRAYED_MORE 30         /* that nobody sees */

/* How badly things stand in so many rows. */
static int boat_solve(struct gathering *gathering, int rows)
{
    int given_up = 0;
    gathering->rows = rows;
    for (int view = 0; view < gathering->views.count; view++)
        for (int body = 0; body < gathering->views.views[view].body_count; body++)
            given_up += body_solve(gathering, view, body);
    return given_up * GIVING_UP + strayed(gathering);
}

static bool all_tags_have_room(const struct gathering *gathering)
{
    for (size_t i = 0; i < gathering->count; i++)
        if (gathering->slots[i].kind == SLOT_TAG && gathering->slots[i].without_room)
            return false;
    return true;
}

/* As few more rows as hold all tags. */
static void boat_solve_crowded(struct gathering *gathering)
{
    for (int rows = VIEW_ROWS_MOST + 1; rows <= VIEW_ROWS_CROWDED; rows++) {
        boat_solve(gathering, rows);
        if (all_tags_have_room(gathering))
            return;
    }
}

/* As few rows as are hardly worse than the most rows would be: the fewer, the taller is each, or
 * the more room is left below the plan. */
static void boat_solve_in_fewest(struct gathering *gathering)
{
    int least = boat_solve(gathering, VIEW_ROWS_MOST);
    if (!all_tags_have_room(gathering)) {
        boat_solve_crowded(gathering);
        return;
    }
    for (int rows = VIEW_ROWS_LEAST; rows < VIEW_ROWS_MOST; rows++)
        if (boat_solve(gathering, rows) <= least + STRAYED_MORE)
            return;
    boat_solve(gathering, VIEW_ROWS_MOST);
}

struct boat_slots boat_slots_find(const struct sheet_set *set, const struct pen *pen)
{
    struct gathering gathering = slots_gather(set, pen);
    gathering.cards = arena_array(pen->arena, gathering.count, sizeof *gathering.cards);
    gathering.leader = arena_array(pen->arena, gathering.count, sizeof *gathering.leader);
    gathering.dropped = arena_array(pen->arena, gathering.count, sizeof *gathering.dropped);
    boat_solve_in_fewest(&gathering);
    return (struct boat_slots){gathering.views, gathering.rows, gathering.slots, gathering.count};
}

/* ---- how high a plan is ---- */

mpt views_begin(const struct plan_views *views)
{
    return VIEW_HEAD_HEIGHT + (views->words_above ? VIEW_WORDS_ABOVE : VIEW_HEAD_GAP);
}

struct plan_heights plan_heights(const struct pen *pen)
{
    mpt size = size_rule(pen->paper, ROLE_PLAN_TAG).floor;
    mpt head = views_begin(&pen->slots->views) + OUTLINE_SMALL / 2;
    mpt row = em_share(size, EM_PLAN_TAG_BOX) + PLAN_TAG_APART;
    return (struct plan_heights){.floor = head + pen->slots->rows * row,
                                 .aim = head + pen->slots->rows * (row + PLAN_ROW_EASE),
                                 .gap = PLAN_CLEAR};
}
