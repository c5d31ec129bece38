/* slots.c - who stands in which row and lane of a plan's hull (room: layout).
 *
 * Each queue is in the order of its places from the bow. Row by row the next of each queue
 * stand, or wait; over all ways of doing so, that with the least sum of squares of distances
 * from their places is taken (dynamic programming over how many of each queue stand). A way on
 * which something waits that lies wholly ahead of what stands already is none. */
#include "slots_row.h"

#include "promise.h"

#include <stdlib.h>

static const int abreast_most[QUEUE_COUNT] = {
    [QUEUE_PORT] = SIDE_MOST, [QUEUE_MIDDLE] = MIDDLE_MOST, [QUEUE_STARBOARD] = SIDE_MOST};

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
    size_t state;           /* with those that stand in the row */
    int64_t cost;           /* of all these */
    struct abreast abreast;
};

/* Puts one more of the queue into the row, in which so many stand; false: it may not stand there,
 * or there is none. */
static bool row_trial_add(const struct solving *solving, struct row_trial *trial, int q,
                          const size_t *stand)
{
    const struct queue *queue = &solving->queues[q];
    size_t next = stand[q] + trial->abreast.of[q];
    if (trial->abreast.of[q] == abreast_most[q] || next >= queue->count ||
        queue->costs[next] == NO_WAY)
        return false;
    trial->abreast.of[q]++;
    trial->state += solving->strides[q];
    trial->cost += queue->costs[next];
    return true;
}

static void row_trial_take(struct solving *solving, const struct row_trial *trial,
                           struct abreast *choice)
{
    if (trial->cost >= solving->next[trial->state] || !solving->in_order[trial->state])
        return;
    solving->next[trial->state] = trial->cost;
    choice[trial->state] = trial->abreast;
}

/* False: it leads nowhere. */
static bool ways_try(struct solving *solving, size_t state, int row)
{
    struct row_trial port = {.state = state, .cost = solving->cost[state]};
    struct abreast *choice = &solving->choice[(size_t)row * solving->states];
    size_t stand[QUEUE_COUNT];
    stand_of(solving, state, stand);
    if (!may_end(solving, stand, solving->body->rows - row))
        return false;
    const uint16_t *sides = solving->sides[stand[QUEUE_MIDDLE]];
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
                    row_trial_take(solving, &trial, choice);
            } while (row_trial_add(solving, &trial, QUEUE_STARBOARD, stand));
        } while (row_trial_add(solving, &middle, QUEUE_MIDDLE, stand));
    } while (row_trial_add(solving, &port, QUEUE_PORT, stand));
    return true;
}

/* False: nothing leads past this row. */
static bool row_solve(struct solving *solving, int row)
{
    bool some = false;
    for (size_t state = 0; state < solving->states; state++)
        solving->next[state] = NO_WAY;
    row_costs_find(solving, row);
    row_sides_find(solving, row);
    for (size_t state = 0; state < solving->states; state++)
        if (solving->cost[state] != NO_WAY)
            some |= ways_try(solving, state, row);
    int64_t *cost = solving->cost;
    solving->cost = solving->next;
    solving->next = cost;
    return some;
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

/* False: they have no room. */
static bool body_solve(const struct slot_body *body, struct slot_item *items, size_t count,
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
        if (!row_solve(&solving, row))
            return false;
    if (solving.cost[solving.states - 1] == NO_WAY)
        return false;
    way_back(&solving);
    return true;
}

/* The states of a crammed body take many megabytes, which nobody needs once it is solved. */
#define SOLVING_LIMIT ((size_t)1024 * 1024 * 1024)

bool slots_find(const struct slot_body *body, struct slot_item *items, size_t count)
{
    struct arena *own = arena_new(SOLVING_LIMIT);
    bool found = body_solve(body, items, count, own);
    arena_free(own);
    return found;
}
