/* slots_row.c - the queues of a plan's hull, and what may stand in one of its rows (room: layout).
 * It chooses nothing. */
#include "slots_row.h"

#include <stdlib.h>
#include <string.h>

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

struct queue queue_make(enum slot_queue which, struct slot_item *items, size_t count,
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

bool is_name(const struct slot_item *item)
{
    return item->kind == SLOT_NAME || item->kind == SLOT_NAME_BELOW;
}

/* The width of so many tags abreast in the middle. */
static mpt tags_abreast(const struct slot_body *body, int count)
{
    return count == 0 ? 0 : (mpt)count * (body->tag + body->gap) - body->gap;
}

mpt side_width(const struct slot_body *body, int count)
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
void row_sides_find(struct solving *solving, int row)
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
void row_costs_find(struct solving *solving, int row)
{
    int64_t most = (int64_t)solving->body->stray_most * ROW_PARTS;
    for (int q = 0; q < QUEUE_COUNT; q++)
        for (size_t i = 0; i < solving->queues[q].count; i++) {
            const struct slot_item *item = solving->queues[q].items[i];
            solving->queues[q].costs[i] = item_out(solving, item, row) > most
                                              ? NO_WAY : item_cost(solving, item, row);
        }
}
