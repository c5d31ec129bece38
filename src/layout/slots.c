/* slots.c - who stands in which row and lane of a plan's hull (room: layout).
 *
 * Each queue is in the order of its places from the bow. Row by row the next of each queue
 * stand, or wait; over all ways of doing so, that with the least sum of squares of distances
 * from their places is taken (dynamic programming over how many of each queue stand). A way on
 * which something waits that lies wholly ahead of what stands already is none. */
#include "slots.h"

#include "promise.h"

#include <stdlib.h>
#include <string.h>

/* Most of a queue that may stand abreast. */
static const int abreast_most[QUEUE_COUNT] = {
    [QUEUE_PORT] = 2, [QUEUE_MIDDLE] = 3, [QUEUE_STARBOARD] = 2};

/* What stands in one row: how many of each queue. */
struct abreast { uint8_t of[QUEUE_COUNT]; };

struct queue {
    struct slot_item **items;
    size_t count;
    int32_t *placed_from;   /* by how many stand: the greatest `from` of those */
    int32_t *waiting_to;    /* by how many stand: the least `to` of those that wait */
};

struct solving {
    const struct slot_body *body;
    struct queue queues[QUEUE_COUNT];
    size_t states;
    int64_t *cost, *next;   /* by state: the least so far; NO_WAY: there is none */
    struct abreast *choice; /* by row and state: what stands in it */
};

#define NO_WAY INT64_MAX
#define ROW_PARTS 16        /* places are told in these shares of a row */
#define OUTSIDE_COST 6

/* ---- queues ---- */

static int items_order(const void *a, const void *b)
{
    const struct slot_item *first = *(struct slot_item *const *)a;
    const struct slot_item *second = *(struct slot_item *const *)b;
    const int32_t keys[][2] = {{first->at, second->at}, {first->from, second->from},
                               {first->to, second->to}};
    for (size_t i = 0; i < sizeof keys / sizeof *keys; i++)
        if (keys[i][0] != keys[i][1])
            return keys[i][0] < keys[i][1] ? -1 : 1;
    return first < second ? -1 : first > second;
}

static void queue_bounds(struct queue *queue, struct arena *arena)
{
    queue->placed_from = arena_array(arena, queue->count + 1, sizeof *queue->placed_from);
    queue->waiting_to = arena_array(arena, queue->count + 1, sizeof *queue->waiting_to);
    queue->placed_from[0] = INT32_MIN;
    queue->waiting_to[queue->count] = INT32_MAX;
    for (size_t i = 0; i < queue->count; i++) {
        int32_t from = queue->items[i]->from;
        queue->placed_from[i + 1] = from > queue->placed_from[i] ? from : queue->placed_from[i];
    }
    for (size_t i = queue->count; i > 0; i--) {
        int32_t to = queue->items[i - 1]->to;
        queue->waiting_to[i - 1] = to < queue->waiting_to[i] ? to : queue->waiting_to[i];
    }
}

static struct queue queue_make(enum slot_queue which, struct slot_item *items, size_t count,
                               struct arena *arena)
{
    struct queue queue = {.items = arena_array(arena, count + 1, sizeof *queue.items)};
    for (size_t i = 0; i < count; i++)
        if (items[i].queue == which && items[i].kind != SLOT_NAME_BELOW)
            queue.items[queue.count++] = &items[i];
    qsort(queue.items, queue.count, sizeof *queue.items, items_order);
    /* A name's second line follows the first, as it does among the items. */
    for (size_t i = count; i > 0; i--) {
        if (items[i - 1].queue != which || items[i - 1].kind != SLOT_NAME_BELOW)
            continue;
        size_t at = 0;
        while (queue.items[at] != &items[i - 2])
            at++;
        memmove(&queue.items[at + 2], &queue.items[at + 1],
                (queue.count - at - 1) * sizeof *queue.items);
        queue.items[at + 1] = &items[i - 1];
        queue.count++;
    }
    queue_bounds(&queue, arena);
    return queue;
}

/* ---- a row ---- */

static bool is_tag(const struct slot_item *item)
{
    return item->kind == SLOT_TAG;
}

static bool is_name(const struct slot_item *item)
{
    return item->kind == SLOT_NAME || item->kind == SLOT_NAME_BELOW;
}

/* The width of what stands in the middle: of tags abreast, of a name, 0 of nothing. */
static mpt middle_width(const struct slot_body *body, struct slot_item *const *middle, int count)
{
    if (count == 0)
        return 0;
    if (!is_tag(middle[0]))
        return middle[0]->width;
    return (mpt)count * (body->tag + body->gap) - body->gap;
}

/* From the middle line to where the tags of a side end: the first of two stands outermost. */
static mpt side_width(const struct slot_body *body, int count)
{
    return (mpt)count * (body->tag + body->gap);
}

/* A name gives way to the tags of a side, as far as the other side has room. */
static bool name_fits(const struct slot_body *body, int row, struct abreast abreast,
                      const struct slot_item *name)
{
    int sides = abreast.of[QUEUE_PORT] + abreast.of[QUEUE_STARBOARD];
    return side_width(body, sides) + name->width <= 2 * body->half[row];
}

/* A side queue keeps clear of the middle line, where nothing stands on it too. */
static bool abreast_fits(const struct slot_body *body, int row, struct abreast abreast,
                      struct slot_item *const *middle)
{
    int standing = abreast.of[QUEUE_MIDDLE];
    for (int i = 0; i < standing && standing > 1; i++)
        if (!is_tag(middle[i]))
            return false;
    mpt inner = middle_width(body, middle, standing) / 2;
    if (inner > body->half[row])
        return false;
    int widest = abreast.of[QUEUE_PORT] > abreast.of[QUEUE_STARBOARD]
                     ? abreast.of[QUEUE_PORT] : abreast.of[QUEUE_STARBOARD];
    if (widest == 0)
        return true;
    bool named = standing == 1 && is_name(middle[0]);
    mpt clear = inner > 0 && !named ? inner : -body->gap / 2;
    return clear + side_width(body, widest) <= body->half[row] &&
           (!named || name_fits(body, row, abreast, middle[0]));
}

/* How far outside the place where it lies it would stand, in parts of a row; <= 0: within. */
static int64_t item_out(const struct solving *solving, const struct slot_item *item, int row)
{
    int64_t parts = (int64_t)solving->body->rows * ROW_PARTS;
    int64_t middle = (int64_t)row * ROW_PARTS + ROW_PARTS / 2;
    int64_t ahead = item->from * parts / 1000 - middle, abaft = middle - item->to * parts / 1000;
    return ahead > abaft ? ahead : abaft;
}

/* The square of how far it is from where it is drawn best; outside the place where it lies each
 * step counts more. */
static int64_t item_cost(const struct solving *solving, const struct slot_item *item, int row)
{
    int64_t parts = (int64_t)solving->body->rows * ROW_PARTS;
    int64_t off = (int64_t)row * ROW_PARTS + ROW_PARTS / 2 - item->at * parts / 1000;
    int64_t out = item_out(solving, item, row);
    return off * off + (out > 0 ? OUTSIDE_COST * out * out : 0);
}

/* Does one of those that would stand in the row stray so far that the plan says what is not? */
static bool row_strays(const struct solving *solving, const size_t *stand, struct abreast abreast,
                       int row)
{
    for (int q = 0; q < QUEUE_COUNT; q++)
        for (int i = 0; i < abreast.of[q]; i++)
            if (item_out(solving, solving->queues[q].items[stand[q] + (size_t)i], row) >
                (int64_t)solving->body->stray_most * ROW_PARTS)
                return true;
    return false;
}

static int64_t row_cost(const struct solving *solving, const size_t *stand,
                        struct abreast abreast, int row)
{
    int64_t cost = 0;
    for (int q = 0; q < QUEUE_COUNT; q++)
        for (int i = 0; i < abreast.of[q]; i++)
            cost += item_cost(solving, solving->queues[q].items[stand[q] + (size_t)i], row);
    return cost;
}

/* ---- states ---- */

static size_t stand_state(const struct solving *solving, const size_t *stand)
{
    const struct queue *queues = solving->queues;
    return (stand[QUEUE_PORT] * (queues[QUEUE_MIDDLE].count + 1) + stand[QUEUE_MIDDLE]) *
               (queues[QUEUE_STARBOARD].count + 1) + stand[QUEUE_STARBOARD];
}

static void stand_of(const struct solving *solving, size_t state, size_t *stand)
{
    const struct queue *queues = solving->queues;
    size_t starboard = queues[QUEUE_STARBOARD].count + 1;
    size_t middle = queues[QUEUE_MIDDLE].count + 1;
    stand[QUEUE_STARBOARD] = state % starboard;
    stand[QUEUE_MIDDLE] = state / starboard % middle;
    stand[QUEUE_PORT] = state / starboard / middle;
}

/* Does nothing wait that lies wholly ahead of something that stands? */
static bool order_holds(const struct solving *solving, const size_t *stand)
{
    int32_t placed = INT32_MIN, waiting = INT32_MAX;
    for (int q = 0; q < QUEUE_COUNT; q++) {
        int32_t from = solving->queues[q].placed_from[stand[q]];
        int32_t to = solving->queues[q].waiting_to[stand[q]];
        placed = from > placed ? from : placed;
        waiting = to < waiting ? to : waiting;
    }
    return placed == INT32_MIN || waiting >= placed;
}

/* The second line of a name waits for no row. */
static bool name_waits(const struct solving *solving, const size_t *stand, struct abreast abreast)
{
    const struct queue *middle = &solving->queues[QUEUE_MIDDLE];
    size_t next = stand[QUEUE_MIDDLE];
    return abreast.of[QUEUE_MIDDLE] == 0 && next < middle->count &&
           middle->items[next]->kind == SLOT_NAME_BELOW;
}

static void abreast_try(struct solving *solving, const size_t *stand, int64_t before,
                    struct abreast abreast, int row)
{
    size_t after[QUEUE_COUNT];
    for (int q = 0; q < QUEUE_COUNT; q++) {
        after[q] = stand[q] + abreast.of[q];
        if (after[q] > solving->queues[q].count)
            return;
    }
    struct slot_item *const *middle = &solving->queues[QUEUE_MIDDLE].items[stand[QUEUE_MIDDLE]];
    if (name_waits(solving, stand, abreast) ||
        !abreast_fits(solving->body, row, abreast, middle) ||
        row_strays(solving, stand, abreast, row) || !order_holds(solving, after))
        return;
    int64_t cost = before + row_cost(solving, stand, abreast, row);
    size_t state = stand_state(solving, after);
    if (cost >= solving->next[state])
        return;
    solving->next[state] = cost;
    solving->choice[(size_t)row * solving->states + state] = abreast;
}

static void ways_try(struct solving *solving, size_t state, int row)
{
    size_t stand[QUEUE_COUNT];
    struct abreast abreast;
    stand_of(solving, state, stand);
    for (int port = 0; port <= abreast_most[QUEUE_PORT]; port++)
        for (int middle = 0; middle <= abreast_most[QUEUE_MIDDLE]; middle++)
            for (int starboard = 0; starboard <= abreast_most[QUEUE_STARBOARD]; starboard++) {
                abreast = (struct abreast){{(uint8_t)port, (uint8_t)middle, (uint8_t)starboard}};
                abreast_try(solving, stand, solving->cost[state], abreast, row);
            }
}

static void row_solve(struct solving *solving, int row)
{
    for (size_t state = 0; state < solving->states; state++)
        solving->next[state] = NO_WAY;
    for (size_t state = 0; state < solving->states; state++)
        if (solving->cost[state] != NO_WAY)
            ways_try(solving, state, row);
    int64_t *cost = solving->cost;
    solving->cost = solving->next;
    solving->next = cost;
}

/* ---- what was found ---- */

/* As near to the middle line as the tags of both sides let it. */
static mpt name_x(const struct slot_body *body, int row, struct abreast abreast,
                  const struct slot_item *name)
{
    mpt room = body->half[row] - name->width / 2;
    mpt least = side_width(body, abreast.of[QUEUE_PORT]) - room;
    mpt most = room - side_width(body, abreast.of[QUEUE_STARBOARD]);
    return least > 0 ? least : most < 0 ? most : 0;
}

static void middle_place(const struct slot_body *body, int row, struct slot_item **items,
                         struct abreast abreast)
{
    int count = abreast.of[QUEUE_MIDDLE];
    mpt pitch = body->tag + body->gap;
    for (int i = 0; i < count; i++)
        items[i]->x = (mpt)(2 * i - (count - 1)) * pitch / 2;
    if (count == 1 && is_name(items[0]))
        items[0]->x = name_x(body, row, abreast, items[0]);
}

/* What lies farther out stands farther out. */
static void side_place(const struct slot_body *body, int row, struct slot_item **items, int count,
                       int side)
{
    bool first_is_out = count < 2 || abs(items[0]->out) >= abs(items[1]->out);
    mpt edge = body->half[row] - body->tag / 2, pitch = body->tag + body->gap;
    for (int i = 0; i < count; i++) {
        bool outermost = (i == 0) == first_is_out;
        items[i]->x = (mpt)side * (outermost ? edge : edge - pitch);
    }
}

static void row_place_items(struct solving *solving, int row, const size_t *stand,
                            struct abreast abreast)
{
    struct slot_item **first[QUEUE_COUNT];
    for (int q = 0; q < QUEUE_COUNT; q++) {
        first[q] = &solving->queues[q].items[stand[q]];
        for (int i = 0; i < abreast.of[q]; i++)
            first[q][i]->row = row;
    }
    side_place(solving->body, row, first[QUEUE_PORT], abreast.of[QUEUE_PORT], -1);
    middle_place(solving->body, row, first[QUEUE_MIDDLE], abreast);
    side_place(solving->body, row, first[QUEUE_STARBOARD], abreast.of[QUEUE_STARBOARD], 1);
}

static void way_back(struct solving *solving)
{
    size_t stand[QUEUE_COUNT];
    stand_of(solving, solving->states - 1, stand);
    for (int row = solving->body->rows - 1; row >= 0; row--) {
        size_t state = stand_state(solving, stand);
        struct abreast abreast = solving->choice[(size_t)row * solving->states + state];
        for (int q = 0; q < QUEUE_COUNT; q++)
            stand[q] -= abreast.of[q];
        row_place_items(solving, row, stand, abreast);
    }
}

bool slots_find(const struct slot_body *body, struct slot_item *items, size_t count,
                struct arena *arena)
{
    struct solving solving = {.body = body, .states = 1};
    promise(body->rows <= SLOT_ROWS_MOST);
    for (int q = 0; q < QUEUE_COUNT; q++) {
        solving.queues[q] = queue_make((enum slot_queue)q, items, count, arena);
        solving.states *= solving.queues[q].count + 1;
    }
    solving.cost = arena_array(arena, solving.states, sizeof *solving.cost);
    solving.next = arena_array(arena, solving.states, sizeof *solving.next);
    solving.choice = arena_array(arena, solving.states * (size_t)body->rows,
                                 sizeof *solving.choice);
    for (size_t state = 1; state < solving.states; state++)
        solving.cost[state] = NO_WAY;
    solving.cost[0] = 0;
    for (int row = 0; row < body->rows; row++)
        row_solve(&solving, row);
    if (solving.cost[solving.states - 1] == NO_WAY)
        return false;
    way_back(&solving);
    return true;
}
