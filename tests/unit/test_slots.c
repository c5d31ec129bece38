/* test_slots.c - rows and lanes of tags and names in one hull of a plan. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include "layout/slots.h"

enum { ROWS = 18, HALF = 150, TAG = 55, GAP = 5, LIMIT = 64 * 1024 * 1024 };

/* A hull that is as broad everywhere but in its first two rows. */
static struct slot_body hull_of(int rows)
{
    struct slot_body body = {.rows = rows, .tag = TAG, .gap = GAP, .stray_most = rows};
    for (int row = 0; row < rows; row++)
        body.half[row] = row < 2 ? TAG / 2 * row + TAG / 2 : HALF;
    return body;
}

static struct slot_item tag_at(enum slot_queue queue, int32_t from, int32_t to)
{
    return (struct slot_item){.kind = SLOT_TAG, .queue = queue, .from = from, .to = to,
                              .at = (from + to) / 2};
}

static void each_stands_at_its_place(void **state)
{
    struct slot_item items[] = {tag_at(QUEUE_PORT, 300, 300), tag_at(QUEUE_STARBOARD, 900, 900),
                                tag_at(QUEUE_MIDDLE, 500, 500)};
    static const int rows[] = {5, 16, 9};
    struct slot_body body = hull_of(ROWS);
    (void)state;
    assert_true(slots_find(&body, items, 3));
    for (int i = 0; i < 3; i++)
        assert_int_equal(items[i].row, rows[i]);
    assert_true(items[0].x < 0 && items[1].x > 0 && items[2].x == 0);
}

/* None of them lies ahead of another. */
static void several_at_one_point_stand_one_behind_the_other(void **state)
{
    struct slot_item items[5];
    struct slot_body body = hull_of(ROWS);
    (void)state;
    for (int i = 0; i < 5; i++)
        items[i] = tag_at(QUEUE_PORT, 800, 800);
    assert_true(slots_find(&body, items, 5));
    for (int i = 0; i < 5; i++)
        assert_in_range(items[i].row, 12, 16);
}

static void neighbours_share_rows_from_their_middle(void **state)
{
    struct slot_item items[6];
    struct slot_body body = hull_of(ROWS);
    int least = ROWS, most = 0;
    (void)state;
    for (int i = 0; i < 6; i++)
        items[i] = tag_at(QUEUE_PORT, 400, 600);
    assert_true(slots_find(&body, items, 6));
    for (int i = 0; i < 6; i++) {
        least = items[i].row < least ? items[i].row : least;
        most = items[i].row > most ? items[i].row : most;
        for (int j = 0; j < i; j++)
            assert_false(items[i].row == items[j].row && items[i].x == items[j].x);
    }
    assert_int_equal(most - least, 2);
    assert_in_range(least, 7, 8);
}

/* A name as broad as the hull has its row to itself, and stands ahead of what lies in its room. */
static void a_broad_name_has_its_row_alone(void **state)
{
    struct slot_item items[] = {
        {.kind = SLOT_NAME, .queue = QUEUE_MIDDLE, .from = 400, .to = 600, .at = 420, .width = 280},
        {.kind = SLOT_NAME_BELOW, .queue = QUEUE_MIDDLE, .from = 400, .to = 600, .at = 450,
         .width = 100},
        tag_at(QUEUE_PORT, 400, 600), tag_at(QUEUE_STARBOARD, 430, 430)};
    struct slot_body body = hull_of(ROWS);
    (void)state;
    assert_true(slots_find(&body, items, 4));
    assert_int_equal(items[1].row, items[0].row + 1);
    for (int i = 2; i < 4; i++)
        assert_int_not_equal(items[i].row, items[0].row);
}

static void what_lies_ahead_never_stands_abaft(void **state)
{
    struct slot_item items[12];
    struct slot_body body = hull_of(ROWS);
    (void)state;
    for (int i = 0; i < 12; i++)
        items[i] = tag_at(i % 3 == 0 ? QUEUE_PORT : i % 3 == 1 ? QUEUE_STARBOARD : QUEUE_MIDDLE,
                          i < 6 ? 700 : 760, i < 6 ? 760 : 800);
    assert_true(slots_find(&body, items, 12));
    for (int i = 0; i < 6; i++)
        for (int j = 6; j < 12; j++)
            assert_true(items[i].row <= items[j].row);
}

static void too_many_have_no_room(void **state)
{
    struct slot_item items[20];
    struct slot_body body = hull_of(4);
    (void)state;
    for (int i = 0; i < 20; i++)
        items[i] = tag_at(QUEUE_PORT, 0, 1000);
    assert_false(slots_find(&body, items, 20));
    assert_true(slots_find(&body, items, 4));
}

/* ---- against all ways tried one by one ---- */

enum { SMALL_ROWS = 4, SMALL_COUNT = 4 };

static uint32_t random_next(uint32_t *seed)
{
    *seed = *seed * 1664525U + 1013904223U;
    return *seed >> 16;
}

/* Off the best place, and outside of where it lies each step six times as much. */
static int64_t cost_of(const struct slot_item *items, const int *rows)
{
    int64_t cost = 0;
    for (int i = 0; i < SMALL_COUNT; i++) {
        int64_t at = 16 * rows[i] + 8, off = at - (int64_t)items[i].at * SMALL_ROWS * 16 / 1000;
        int64_t ahead = (int64_t)items[i].from * SMALL_ROWS * 16 / 1000 - at;
        int64_t abaft = at - (int64_t)items[i].to * SMALL_ROWS * 16 / 1000;
        int64_t out = ahead > abaft ? ahead : abaft;
        cost += off * off + (out > 0 ? 6 * out * out : 0);
    }
    return cost;
}

static int standing(const struct slot_item *items, const int *rows, enum slot_queue queue, int row)
{
    int count = 0;
    for (int i = 0; i < SMALL_COUNT; i++)
        count += items[i].queue == queue && rows[i] == row ? 1 : 0;
    return count;
}

/* Of one queue, the one that is drawn farther forward; of two drawn at one place the one that
 * begins, then ends, farther forward. */
static bool is_before(const struct slot_item *a, const struct slot_item *b)
{
    if (a->queue != b->queue || a->at != b->at)
        return a->queue == b->queue && a->at < b->at;
    return a->from < b->from || (a->from == b->from && a->to < b->to);
}

/* So broad that two stand abreast on a side, beside one or two in the middle one, and beside
 * three none. */
static bool way_is_one(const struct slot_item *items, const int *rows)
{
    static const int beside[] = {2, 1, 1, 0};
    for (int i = 0; i < SMALL_COUNT; i++)
        for (int j = 0; j < SMALL_COUNT; j++)
            if (rows[i] > rows[j] &&
                (items[i].to <= items[j].from || is_before(&items[i], &items[j])))
                return false;
    for (int row = 0; row < SMALL_ROWS; row++) {
        int middle = standing(items, rows, QUEUE_MIDDLE, row);
        if (middle > 3 || standing(items, rows, QUEUE_PORT, row) > beside[middle] ||
            standing(items, rows, QUEUE_STARBOARD, row) > beside[middle])
            return false;
    }
    return true;
}

static int64_t least_cost(const struct slot_item *items)
{
    int64_t least = INT64_MAX;
    for (int way = 0; way < SMALL_ROWS * SMALL_ROWS * SMALL_ROWS * SMALL_ROWS; way++) {
        int rows[SMALL_COUNT], left = way;
        for (int i = 0; i < SMALL_COUNT; i++, left /= SMALL_ROWS)
            rows[i] = left % SMALL_ROWS;
        if (way_is_one(items, rows) && cost_of(items, rows) < least)
            least = cost_of(items, rows);
    }
    return least;
}

static void no_way_is_better_than_the_one_found(void **state)
{
    struct slot_body body = {.rows = SMALL_ROWS, .tag = TAG, .gap = GAP, .stray_most = SMALL_ROWS,
                             .half = {140, 140, 140, 140}};
    uint32_t seed = 7;
    (void)state;
    for (int trial = 0; trial < 300; trial++) {
        struct slot_item items[SMALL_COUNT];
        int rows[SMALL_COUNT];
        for (int i = 0; i < SMALL_COUNT; i++) {
            int32_t from = (int32_t)(random_next(&seed) % 900);
            int32_t length = (int32_t)(random_next(&seed) % 300);
            items[i] = tag_at((enum slot_queue)(random_next(&seed) % QUEUE_COUNT), from,
                              from + length > 1000 ? 1000 : from + length);
        }
        int64_t least = least_cost(items);
        bool found = slots_find(&body, items, SMALL_COUNT);
        assert_int_equal(found, least != INT64_MAX);
        for (int i = 0; i < SMALL_COUNT && found; i++)
            rows[i] = items[i].row;
        if (found)
            assert_int_equal(cost_of(items, rows), least);
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(each_stands_at_its_place),
        cmocka_unit_test(several_at_one_point_stand_one_behind_the_other),
        cmocka_unit_test(neighbours_share_rows_from_their_middle),
        cmocka_unit_test(a_broad_name_has_its_row_alone),
        cmocka_unit_test(what_lies_ahead_never_stands_abaft),
        cmocka_unit_test(too_many_have_no_room),
        cmocka_unit_test(no_way_is_better_than_the_one_found),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
