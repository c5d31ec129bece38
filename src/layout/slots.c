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
#define SIDE_MOST 2
#define MIDDLE_MOST 3
static const int abreast_most[QUEUE_COUNT] = {
    [QUEUE_PORT] = SIDE_MOST, [QUEUE_MIDDLE] = MIDDLE_MOST, [QUEUE_STARBOARD] = SIDE_MOST};

/* What stands in one row: how many of each queue. */
struct abreast { uint8_t of[QUEUE_COUNT]; };

struct queue {
    struct slot_item **items;
    size_t count;
    int32_t *placed_from;   /* by how many stand: the greatest `from` of those */
    int32_t *waiting_to;    /* by how many stand: the least `to` of those that wait */
    int64_t *costs;         /* of the row being solved, by item; NO_WAY: it may not stand there */
};

struct solving {
    const struct slot_body *body;
    struct queue queues[QUEUE_COUNT];
    size_t states;
    size_t strides[QUEUE_COUNT];    /* one more of the queue stands: so many states on */
    bool *in_order;                 /* by state: nothing waits that must not */
    uint16_t (*sides)[MIDDLE_MOST + 1]; /* of the row, by how many of the middle stand before it
                                           and in it: which sides have room beside these */
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
    struct queue queue = {.items = arena_array(arena, count + 1, sizeof *queue.items),
                          .costs = arena_array(arena, count + 1, sizeof *queue.costs)};
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

/* The width of so many tags abreast in the middle. */
static mpt tags_abreast(const struct slot_body *body, int count)
{
    return count == 0 ? 0 : (mpt)count * (body->tag + body->gap) - body->gap;
}

/* From the middle line to where the tags of a side end: the first of two stands outermost. */
static mpt side_width(const struct slot_body *body, int count)
{
    return (mpt)count * (body->tag + body->gap);
}

/* What stands in the middle of a row. */
struct middle { mpt width; bool named; };

/* A side queue keeps clear of the middle line, where nothing stands on it too. A name gives way to
 * the tags of a side, as far as the other side has room. */
static bool sides_fit(const struct slot_body *body, int row, struct middle middle,
                      const int *standing)
{
    int port = standing[QUEUE_PORT], starboard = standing[QUEUE_STARBOARD];
    mpt inner = middle.width / 2, half = body->half[row];
    if (inner > half)
        return false;
    if (port + starboard == 0)
        return true;
    mpt clear = inner > 0 && !middle.named ? inner : -body->gap / 2;
    return clear + side_width(body, port > starboard ? port : starboard) <= half &&
           (!middle.named || side_width(body, port + starboard) + middle.width <= 2 * half);
}

static int sides_bit(int port, int starboard)
{
    return port * (SIDE_MOST + 1) + starboard;
}

/* A bit for each way in which the sides have room beside it. */
static uint16_t sides_beside(const struct slot_body *body, int row, struct middle middle)
{
    unsigned bits = 0;
    int standing[QUEUE_COUNT];
    for (int port = 0; port <= SIDE_MOST; port++)
        for (int starboard = 0; starboard <= SIDE_MOST; starboard++) {
            standing[QUEUE_PORT] = port;
            standing[QUEUE_STARBOARD] = starboard;
            if (sides_fit(body, row, middle, standing))
                bits |= 1U << sides_bit(port, starboard);
        }
    return (uint16_t)bits;
}

/* Tags stand abreast; a name or a mark stands alone, and the second line of a name waits for no
 * row. */
static void row_sides_find(struct solving *solving, int row)
{
    const struct queue *queue = &solving->queues[QUEUE_MIDDLE];
    uint16_t of_tags[MIDDLE_MOST + 1];
    for (int count = 0; count <= MIDDLE_MOST; count++)
        of_tags[count] = sides_beside(solving->body, row,
                                      (struct middle){tags_abreast(solving->body, count), false});
    for (size_t first = 0; first <= queue->count; first++) {
        uint16_t *sides = solving->sides[first];
        const struct slot_item *item = first < queue->count ? queue->items[first] : NULL;
        sides[0] = item != NULL && item->kind == SLOT_NAME_BELOW ? 0 : of_tags[0];
        for (size_t count = 1; count <= MIDDLE_MOST; count++) {
            bool tags = first + count <= queue->count && sides[count - 1] != 0;
            for (size_t i = first; i < first + count && tags; i++)
                tags = is_tag(queue->items[i]);
            sides[count] = tags ? of_tags[count] : 0;
        }
        if (item != NULL && !is_tag(item))
            sides[1] = sides_beside(solving->body, row,
                                    (struct middle){item->width, is_name(item)});
    }
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

/* Of one that strays so far that the plan would say what is not, there is none. */
static void row_costs_find(struct solving *solving, int row)
{
    int64_t most = (int64_t)solving->body->stray_most * ROW_PARTS;
    for (int q = 0; q < QUEUE_COUNT; q++)
        for (size_t i = 0; i < solving->queues[q].count; i++) {
            const struct slot_item *item = solving->queues[q].items[i];
            solving->queues[q].costs[i] = item_out(solving, item, row) > most
                                              ? NO_WAY : item_cost(solving, item, row);
        }
}

/* ---- states ---- */

static size_t stand_state(const struct solving *solving, const size_t *stand)
{
    size_t state = 0;
    for (int q = 0; q < QUEUE_COUNT; q++)
        state += stand[q] * solving->strides[q];
    return state;
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

/* Can the rows that are left hold all that waits? */
static bool may_end(const struct solving *solving, const size_t *stand, int rows_left)
{
    for (int q = 0; q < QUEUE_COUNT; q++)
        if (solving->queues[q].count - stand[q] > (size_t)(abreast_most[q] * rows_left))
            return false;
    return true;
}

/* A state, and what is to stand in a row behind it. */
struct row_trial {
    size_t stand[QUEUE_COUNT];
    size_t state;           /* with those that stand in the row */
    struct abreast abreast;
    int64_t cost;           /* of all these */
    int row;
};

/* Puts one more of the queue into the row; false: it may not stand there, or there is none. */
static bool row_trial_add(const struct solving *solving, struct row_trial *trial, int q)
{
    const struct queue *queue = &solving->queues[q];
    size_t next = trial->stand[q] + trial->abreast.of[q];
    if (trial->abreast.of[q] == abreast_most[q] || next >= queue->count ||
        queue->costs[next] == NO_WAY)
        return false;
    trial->abreast.of[q]++;
    trial->state += solving->strides[q];
    trial->cost += queue->costs[next];
    return true;
}

static void row_trial_take(struct solving *solving, const struct row_trial *trial)
{
    if (trial->cost >= solving->next[trial->state] || !solving->in_order[trial->state])
        return;
    solving->next[trial->state] = trial->cost;
    solving->choice[(size_t)trial->row * solving->states + trial->state] = trial->abreast;
}

static void ways_try(struct solving *solving, size_t state, int row)
{
    struct row_trial port = {.state = state, .cost = solving->cost[state], .row = row};
    stand_of(solving, state, port.stand);
    if (!may_end(solving, port.stand, solving->body->rows - row))
        return;
    const uint16_t *sides = solving->sides[port.stand[QUEUE_MIDDLE]];
    do {
        struct row_trial middle = port;
        do {
            unsigned fits = sides[middle.abreast.of[QUEUE_MIDDLE]];
            struct row_trial trial = middle;
            if (fits == 0)
                continue;
            do {
                if (fits >> sides_bit(trial.abreast.of[QUEUE_PORT],
                                      trial.abreast.of[QUEUE_STARBOARD]) & 1U)
                    row_trial_take(solving, &trial);
            } while (row_trial_add(solving, &trial, QUEUE_STARBOARD));
        } while (row_trial_add(solving, &middle, QUEUE_MIDDLE));
    } while (row_trial_add(solving, &port, QUEUE_PORT));
}

static void row_solve(struct solving *solving, int row)
{
    for (size_t state = 0; state < solving->states; state++)
        solving->next[state] = NO_WAY;
    row_costs_find(solving, row);
    row_sides_find(solving, row);
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

static void states_begin(struct solving *solving, struct arena *arena)
{
    size_t stand[QUEUE_COUNT];
    solving->states = 1;
    for (int q = QUEUE_COUNT - 1; q >= 0; q--) {
        solving->strides[q] = solving->states;
        solving->states *= solving->queues[q].count + 1;
    }
    solving->cost = arena_array(arena, solving->states, sizeof *solving->cost);
    solving->next = arena_array(arena, solving->states, sizeof *solving->next);
    solving->in_order = arena_array(arena, solving->states, sizeof *solving->in_order);
    solving->choice = arena_array(arena, solving->states * (size_t)solving->body->rows,
                                  sizeof *solving->choice);
    for (size_t state = 0; state < solving->states; state++) {
        stand_of(solving, state, stand);
        solving->in_order[state] = order_holds(solving, stand);
        solving->cost[state] = state == 0 ? 0 : NO_WAY;
    }
}

bool slots_find(const struct slot_body *body, struct slot_item *items, size_t count,
                struct arena *arena)
{
    struct solving solving = {.body = body};
    promise(body->rows <= SLOT_ROWS_MOST);
    for (int q = 0; q < QUEUE_COUNT; q++)
        solving.queues[q] = queue_make((enum slot_queue)q, items, count, arena);
    solving.sides = arena_array(arena, solving.queues[QUEUE_MIDDLE].count + 1,
                                sizeof *solving.sides);
    states_begin(&solving, arena);
    for (int row = 0; row < body->rows; row++)
        row_solve(&solving, row);
    if (solving.cost[solving.states - 1] == NO_WAY)
        return false;
    way_back(&solving);
    return true;
}
