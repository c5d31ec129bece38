/* labels_improve.c - labels in a better order by small changes (room: layout). Takes labels
 * that stand in their columns; swaps two of them or moves one, stacks the columns anew,
 * and keeps the change only where the arrangement is worth more. Gives the best that was
 * found. Never draws. */
#include "labels_room.h"

#define IMPROVEMENTS_MOST 60   /* changes that are kept, one after the other */
#define SHAKES_MOST 12         /* times that labels are put elsewhere to begin again */
#define MOVES_A_SHAKE 3        /* labels that are put elsewhere each time */

/* Pairs of labels that are looked at for one plan, at most. */
#define WORK_MOST ((size_t)4000000)

/* What an arrangement is worth: the fewer wrong leaders the better, and among as many the
 * shorter. `wrong` counts leaders that come near a foreign box, pairs of leaders that
 * meet, and labels on the wrong side; `length` is the sum of leaders in thousandths of a
 * point. */
struct worth { size_t wrong; double length; };

static double lengths_sum(const struct arranging *arranging)
{
    double sum = 0;
    for (size_t i = 0; i < arranging->count; i++)
        sum += length_between(arranging->labels[i].from, arranging->labels[i].to);
    return sum;
}

/* The count of wrong leaders; one more than `most` stands for any number above it, since
 * the caller then gives up. */
static size_t wrong_count(const struct arranging *arranging, size_t most)
{
    const struct label *labels = arranging->labels;
    size_t wrong = 0;
    for (size_t i = 0; i < arranging->count && wrong <= most; i++) {
        for (size_t j = 0; j < arranging->count && wrong <= most; j++) {
            if (i == j)
                continue;
            wrong += box_near(&labels[i], labels[j].box, arranging->columns->clearance);
            wrong += i < j && segments_meet(labels[i].from, labels[i].to, labels[j].from,
                                            labels[j].to);
        }
        wrong += label_astray(arranging, &labels[i], labels[i].side);
    }
    return wrong;
}

static struct worth worth_of(const struct arranging *arranging)
{
    return (struct worth){wrong_count(arranging, SIZE_MAX - 1), lengths_sum(arranging)};
}

/* Is the arrangement worth more than the best one known so far? Then *known becomes its
 * worth. A gain of less than a thousandth of a point is none: rounding could go round in
 * circles. Lengths come first because they are cheap: what is not shorter must have fewer
 * wrong leaders, and counting stops as soon as it has not. */
static bool worth_gain(const struct arranging *arranging, struct worth *known)
{
    struct worth worth = {.length = lengths_sum(arranging)};
    bool shorter = worth.length < known->length - 1;
    if (known->wrong == 0 && !shorter)
        return false;
    size_t most = shorter ? known->wrong : known->wrong - 1;
    worth.wrong = wrong_count(arranging, most);
    if (worth.wrong > most)
        return false;
    *known = worth;
    return true;
}

static void order_swap(struct arranging *arranging, size_t a, size_t b)
{
    size_t label = arranging->order[a];
    arranging->order[a] = arranging->order[b];
    arranging->order[b] = label;
}

/* Gives the labels their columns: the first `left` of the order the left one. */
static void sides_set(struct arranging *arranging, size_t left)
{
    for (size_t i = 0; i < arranging->count; i++)
        arranging->labels[arranging->order[i]].side = i >= left ? LABEL_RIGHT : LABEL_LEFT;
}

/* Takes the label at place `from` of the order to place `to`; the others close up. */
static void order_move(struct arranging *arranging, size_t from, size_t to)
{
    for (; from < to; from++)
        order_swap(arranging, from, from + 1);
    for (; from > to; from--)
        order_swap(arranging, from, from - 1);
}

/* Every judgement looks at each pair of labels. A boat with many places must not take
 * minutes: what is not found by then is not found. Counted, not timed: pages repeat. */
static bool work_allowed(struct arranging *arranging)
{
    size_t work = arranging->count * arranging->count;
    if (arranging->work_done > WORK_MOST - work)
        return false;
    arranging->work_done += work;
    return true;
}

/* Stacks the columns in the present order, `left` labels in the left one, and asks whether
 * that is worth more than the best arrangement known. False too where a column overflows
 * or the work for this plan is used up; the caller then takes its change back. */
static bool order_judge(struct arranging *arranging, size_t left, struct worth *known)
{
    if (!work_allowed(arranging))
        return false;
    sides_set(arranging, left);
    if (columns_overflow(arranging))
        return false;
    columns_stack(arranging);
    return worth_gain(arranging, known);
}

/* Tries the label at place `from` at place `to`, the left column then holding `left`
 * labels; takes it back where that is not worth more. */
static bool move_judge(struct arranging *arranging, size_t from, size_t to, size_t left,
                       struct worth *known)
{
    order_move(arranging, from, to);
    if (order_judge(arranging, left, known))
        return true;
    order_move(arranging, to, from);
    return false;
}

/* Tries each label at each other place of the order, until one is worth more. Without the
 * label the left column holds `others`: a place up to there can be its last one, a place
 * from there on the first of the right column. */
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

/* Tries each two labels in each other's places, until one pair is worth more. */
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
    size_t left = column_count(arranging, LABEL_LEFT);
    struct worth worth = worth_of(arranging);
    for (int step = 0; step < IMPROVEMENTS_MOST; step++)
        if (!swap_try(arranging, left, &worth) && !move_try(arranging, &left, &worth))
            break;
    sides_set(arranging, left);
    columns_stack(arranging);
    return worth.wrong == 0;
}

/* ---- out of a corner ---- */

/* Where no single change helps, some labels are put elsewhere and improved again. Which
 * ones follows from a linear congruential generator that always starts with the same
 * number, so that the same boat gives the same page. */
bool order_shake(struct arranging *arranging)
{
    uint32_t number = 1;
    for (int shake = 0; shake < SHAKES_MOST && arranging->count > 1; shake++) {
        size_t left = column_count(arranging, LABEL_LEFT);
        for (int move = 0; move < MOVES_A_SHAKE; move++) {
            number = number * 1664525u + 1013904223u;
            size_t from = (number >> 8) % arranging->count, to = (number >> 20) % arranging->count;
            order_move(arranging, from, to);
        }
        sides_set(arranging, left);
        if (columns_overflow(arranging))
            continue;
        columns_stack(arranging);
        if (order_improve(arranging))
            return true;
    }
    return false;
}

/* ---- another beginning: each label on the side of its place, by height ---- */

/* How far to starboard of the page's middle line a label's place lies; negative to port. */
static mpt off_middle(const struct arranging *arranging, size_t label)
{
    const struct area *left = &arranging->columns->left, *right = &arranging->columns->right;
    struct area box = arranging->labels[label].box;
    return box.x + box.width / 2 - (left->x + right->x + right->width) / 2;
}

/* The label of a column whose place is nearest to the middle line: the one that can most
 * easily be led from the other side. */
static size_t innermost(const struct arranging *arranging, enum label_side side)
{
    size_t found = arranging->count;
    mpt least = 0;
    for (size_t i = 0; i < arranging->count; i++) {
        mpt off = off_middle(arranging, i);
        off = off < 0 ? -off : off;
        if (arranging->labels[i].side != side || (found < arranging->count && off >= least))
            continue;
        found = i;
        least = off;
    }
    return found;
}

/* Puts each label on the side of its place; while a column overflows, its innermost label
 * goes to the other. False: that does not end with both columns holding theirs. */
static bool sides_balance(struct arranging *arranging)
{
    for (size_t i = 0; i < arranging->count; i++)
        arranging->labels[i].side = off_middle(arranging, i) > 0 ? LABEL_RIGHT : LABEL_LEFT;
    for (size_t tries = 0; tries <= arranging->count; tries++) {
        if (!columns_overflow(arranging))
            return true;
        enum label_side full = column_over(arranging, LABEL_RIGHT) > 0 ? LABEL_RIGHT : LABEL_LEFT;
        enum label_side other = full == LABEL_RIGHT ? LABEL_LEFT : LABEL_RIGHT;
        arranging->labels[innermost(arranging, full)].side = other;
    }
    return false;
}

/* The order of height: the left column first, in it by the height of the places, and of
 * two as high as each other the one that was given first. */
static bool comes_before(const struct arranging *arranging, size_t a, size_t b)
{
    const struct label *one = &arranging->labels[a], *two = &arranging->labels[b];
    if (one->side != two->side)
        return one->side == LABEL_LEFT;
    mpt one_y = one->box.y + one->box.height / 2, two_y = two->box.y + two->box.height / 2;
    return one_y != two_y ? one_y < two_y : a < b;
}

bool order_by_height(struct arranging *arranging)
{
    if (!sides_balance(arranging))
        return false;
    for (size_t i = 0; i < arranging->count; i++) {
        size_t at = i;
        for (; at > 0 && comes_before(arranging, i, arranging->order[at - 1]); at--)
            arranging->order[at] = arranging->order[at - 1];
        arranging->order[at] = i;
    }
    columns_stack(arranging);
    return true;
}
