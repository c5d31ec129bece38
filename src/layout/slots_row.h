/* slots_row.h - what slots.c reckons with: queues from bow to stern, and what may stand in one
 * row of a body at what cost. Private to src/layout. */
#ifndef MAYDECK_SLOTS_ROW_H
#define MAYDECK_SLOTS_ROW_H

#include "slots.h"

/* Most of a queue that may stand abreast. */
#define SIDE_MOST 2
#define MIDDLE_MOST 3

/* What stands in one row: how many of each queue. */
struct abreast { uint8_t of[QUEUE_COUNT]; };

#define NO_WAY INT64_MAX

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

/* Those of the items that stand in that queue, in their order. */
struct queue queue_make(enum slot_queue which, struct slot_item *items, size_t count,
                        struct arena *arena);

bool is_name(const struct slot_item *item);

/* From the middle line to where so many tags of a side end: the first of two stands outermost. */
mpt side_width(const struct slot_body *body, int count);

/* Which ways of standing in the row have room: of the sides, beside each way of the middle. */
static inline int sides_bit(int port, int starboard)
{
    return port * (SIDE_MOST + 1) + starboard;
}
void row_sides_find(struct solving *solving, int row);

/* What each item of each queue costs in the row. */
void row_costs_find(struct solving *solving, int row);

#endif
