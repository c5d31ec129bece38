/* labels_improve.c - labels in a better order by small changes (room: layout): each
 * moves or swaps labels, and is kept only when it is for the better. Never draws. */
#include "labels_room.h"

#define STEPS_MOST 60

struct worth { size_t wrong; double length; };

static struct worth worth_of(const struct arranging *arranging)
{
    const struct label *labels = arranging->labels;
    struct worth worth = {0, 0};
    for (size_t i = 0; i < arranging->count; i++) {
        for (size_t j = 0; j < arranging->count; j++) {
            if (i == j)
                continue;
            worth.wrong += box_near(&labels[i], labels[j].box, arranging->columns->clearance);
            worth.wrong += i < j && segments_meet(labels[i].from, labels[i].to, labels[j].from,
                                                  labels[j].to);
        }
        worth.length += length_between(labels[i].from, labels[i].to);
    }
    return worth;
}

static bool worth_better(struct worth a, struct worth b)
{
    return a.wrong < b.wrong || (a.wrong == b.wrong && a.length < b.length - 1);
}

static void order_swap(struct arranging *arranging, size_t a, size_t b)
{
    size_t label = arranging->order[a];
    arranging->order[a] = arranging->order[b];
    arranging->order[b] = label;
}

/* The sides follow the order: the first `left` stand in the left column. */
static void sides_set(struct arranging *arranging, size_t left)
{
    for (size_t i = 0; i < arranging->count; i++)
        arranging->labels[arranging->order[i]].right = i >= left;
}

/* Takes the label at one place of the order to another. */
static void order_move(struct arranging *arranging, size_t from, size_t to)
{
    for (; from < to; from++)
        order_swap(arranging, from, from + 1);
    for (; from > to; from--)
        order_swap(arranging, from, from - 1);
}

/* Stacks anew; better than what is known? */
static bool order_judge(struct arranging *arranging, size_t left, struct worth *known)
{
    sides_set(arranging, left);
    if (column_over(arranging, false) > 0 || column_over(arranging, true) > 0)
        return false;
    columns_stack(arranging);
    struct worth worth = worth_of(arranging);
    if (!worth_better(worth, *known))
        return false;
    *known = worth;
    return true;
}

/* The label at one place of the order goes to another, and the left column then
 * holds `left` labels. */
static bool move_judge(struct arranging *arranging, size_t from, size_t to, size_t left,
                       struct worth *known)
{
    order_move(arranging, from, to);
    if (order_judge(arranging, left, known))
        return true;
    order_move(arranging, to, from);
    return false;
}

/* One label elsewhere, in its column or in the other. */
static bool move_try(struct arranging *arranging, size_t *left, struct worth *known)
{
    for (size_t from = 0; from < arranging->count; from++) {
        size_t others = *left - (from < *left ? 1 : 0);
        for (size_t to = 0; to < arranging->count; to++) {
            if (to <= others && move_judge(arranging, from, to, others + 1, known)) {
                *left = others + 1;
                return true;
            }
            if (to >= others && move_judge(arranging, from, to, others, known)) {
                *left = others;
                return true;
            }
        }
    }
    return false;
}

static bool swap_try(struct arranging *arranging, size_t left, struct worth *known)
{
    for (size_t a = 0; a < arranging->count; a++)
        for (size_t b = a + 1; b < arranging->count; b++) {
            order_swap(arranging, a, b);
            if (order_judge(arranging, left, known))
                return true;
            order_swap(arranging, a, b);
        }
    return false;
}

bool order_improve(struct arranging *arranging)
{
    size_t left = column_count(arranging, false);
    struct worth worth = worth_of(arranging);
    for (int step = 0; step < STEPS_MOST; step++)
        if (!swap_try(arranging, left, &worth) && !move_try(arranging, &left, &worth))
            break;
    sides_set(arranging, left);
    columns_stack(arranging);
    return worth.wrong == 0;
}
