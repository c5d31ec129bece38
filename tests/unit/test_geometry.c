/* test_geometry.c - segments and boxes on a page, by small cases reckoned by hand. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <math.h>

#include "geometry.h"

struct segments_row {
    struct point a, b, c, d;
    bool meet;
};

static struct point mirrored(struct point point)
{
    return (struct point){point.y, point.x};
}

/* Whichever of the two is first, and whichever of its ends. */
static bool meet_in_any_order(const struct segments_row *row, bool meet)
{
    return segments_meet(row->a, row->b, row->c, row->d) == meet &&
           segments_meet(row->b, row->a, row->c, row->d) == meet &&
           segments_meet(row->a, row->b, row->d, row->c) == meet &&
           segments_meet(row->b, row->a, row->d, row->c) == meet &&
           segments_meet(row->c, row->d, row->a, row->b) == meet &&
           segments_meet(row->d, row->c, row->a, row->b) == meet &&
           segments_meet(row->c, row->d, row->b, row->a) == meet &&
           segments_meet(row->d, row->c, row->b, row->a) == meet;
}

static void segments_meet_where_they_touch(void **state)
{
    static const struct segments_row rows[] = {
        {{0, 0}, {4, 4}, {0, 4}, {4, 0}, true},
        {{0, 0}, {4, 0}, {0, 1}, {4, 1}, false},
        {{0, 0}, {4, 0}, {4, 0}, {8, 5}, true},   /* one end in common */
        {{0, 0}, {4, 0}, {2, 0}, {8, 0}, true},   /* one on the other */
        {{0, 0}, {4, 0}, {5, 0}, {8, 0}, false},
        {{0, 0}, {4, 4}, {5, 4}, {9, 0}, false},
        {{0, 0}, {8, 8}, {6, 1}, {7, 6}, false},  /* one crosses the other's line alone */
        {{0, 0}, {0, 4}, {0, 4}, {0, 8}, true},
        {{0, 0}, {0, 4}, {0, 5}, {0, 8}, false},
    };
    (void)state;
    for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
        const struct segments_row turned = {mirrored(rows[i].a), mirrored(rows[i].b),
                                            mirrored(rows[i].c), mirrored(rows[i].d),
                                            rows[i].meet};
        if (!meet_in_any_order(&rows[i], rows[i].meet) ||
            !meet_in_any_order(&turned, rows[i].meet))
            fail_msg("row %zu", i);
    }
}

static void a_box_is_as_far_as_its_nearest_point(void **state)
{
    static const struct distance_row {
        struct point a, b;
        double distance;
    } rows[] = {{{0, 0}, {100, 0}, 10},      /* along above */
                {{0, 15}, {100, 15}, 0},     /* through */
                {{15, 15}, {17, 17}, 0},     /* inside */
                {{0, 10}, {5, 15}, 5},       /* an end is nearest */
                {{23, 6}, {23, 0}, 5}};      /* to a corner: 3, 4, 5 */
    struct area box = {10, 10, 10, 10};
    (void)state;
    for (size_t i = 0; i < sizeof rows / sizeof *rows; i++)
        if (fabs(segment_to_box(rows[i].a, rows[i].b, box) - rows[i].distance) > 1e-9)
            fail_msg("row %zu: %f", i, segment_to_box(rows[i].a, rows[i].b, box));
}

static void length_is_that_of_the_straight_line(void **state)
{
    (void)state;
    assert_true(fabs(length_between((struct point){1, 2}, (struct point){4, 6}) - 5) < 1e-9);
    assert_true(length_between((struct point){7, 7}, (struct point){7, 7}) <= 0);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(segments_meet_where_they_touch),
        cmocka_unit_test(a_box_is_as_far_as_its_nearest_point),
        cmocka_unit_test(length_is_that_of_the_straight_line),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
