/* test_hull.c - the outline of a hull on paper. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include "card_fixture.h"
#include "layout/hull_parts.h"

/* ---- breadth ---- */

static int32_t half_breadth(int32_t along)
{
    return hull_breadth_at(SHAPE_FULL, along);
}

static void the_hull_widens_to_its_maximum_and_narrows_to_the_stern(void **state)
{
    (void)state;
    int32_t widest = 0;
    assert_int_equal(half_breadth(0), 0);
    for (int32_t along = 1; along <= 1000; along++)
        if (half_breadth(along) > half_breadth(widest))
            widest = along;
    assert_int_equal(half_breadth(widest), 1000);
    assert_in_range(widest, 500, 850);
    for (int32_t along = 1; along <= 1000; along++) {
        int32_t change = half_breadth(along) - half_breadth(along - 1);
        assert_true(along <= widest ? change >= 0 : change <= 0);
        assert_in_range(change + 10, 0, 20);          /* no step in the outline */
    }
    assert_in_range(half_breadth(1000), 700, 999);
    assert_int_equal(half_breadth(1050), half_breadth(1000));
    assert_int_equal(half_breadth(-50), 0);
}

/* The outline that is drawn has that shape, all of its area high and no broader. */
static void the_drawn_outline_is_the_outline(void **state)
{
    (void)state;
    for (int shape = SHAPE_FULL; shape <= SHAPE_SLENDER; shape++) {
        struct pen pen = {.paper = paper_of(PAPER_A4), .arena = test.arena,
                          .problems = test.problems};
        struct outline outline = {{MM(20), MM(30), MM(60), MM(70)}, MM(50), MM(14), MM(1),
                                  (enum hull_shape)shape};
        one_hull_draw(&pen, &outline);
        assert_int_equal(pen.count, 1);
        const struct area *area = &pen.items[0].area;
        assert_int_equal(pen.items[0].kind, PAGE_PATH);
        assert_int_equal(pen.items[0].stroke, INK_BLACK);
        assert_int_equal(area->y, MM(30));
        assert_int_equal(area->height, MM(70));
        assert_true(area->x >= MM(36) - 1 && area->x + area->width <= MM(64) + 1);
        assert_true(area->width >= MM(27.9));
    }
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(the_hull_widens_to_its_maximum_and_narrows_to_the_stern),
        TEST(the_drawn_outline_is_the_outline),
    };
    int failed = cmocka_run_group_tests(tests, NULL, NULL);
    return failed != 0;
}
