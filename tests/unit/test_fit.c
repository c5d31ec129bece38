/* test_fit.c - the largest size of type that fits: between aim and floor of its rule, and
 * exactly the floor where nothing does. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include "layout/measures.h"
#include "pen_fixture.h"

/* Fits up to some size, and counts how often it was asked. */
struct limit { mpt most; size_t asked; mpt least_asked; };

static bool is_within(void *of, mpt size)
{
    struct limit *limit = of;
    limit->asked++;
    limit->least_asked = size;
    return size <= limit->most;
}

static const struct size_rule rule = {12000, 14000, 120};

static void the_largest_step_that_fits_is_taken(void **state)
{
    (void)state;
    struct limit limit = {.most = 13100};
    assert_int_equal(size_that_fits(rule, 250, is_within, &limit), 13000);
    limit.most = 20000;
    assert_int_equal(size_that_fits(rule, 250, is_within, &limit), 14000);
}

/* The floor is not asked about: it is taken in any case. */
static void the_floor_is_never_passed(void **state)
{
    (void)state;
    struct limit limit = {.most = 0};
    assert_int_equal(size_that_fits(rule, 250, is_within, &limit), 12000);
    assert_int_equal(limit.asked, 8);
    assert_true(limit.least_asked > 12000);
}

/* Rules of other papers are no multiples of a step. */
static void steps_that_do_not_meet_the_floor_end_at_it(void **state)
{
    (void)state;
    const struct size_rule uneven = {12110, 14000, 120};
    struct limit limit = {.most = 0};
    assert_int_equal(size_that_fits(uneven, 250, is_within, &limit), 12110);
}

/* Steps are counted from the floor, and few sizes are asked about. */
static void the_largest_is_found_in_few_steps(void **state)
{
    (void)state;
    const struct size_rule wide = {12000, 24000, 120};
    struct limit limit = {.most = 17100};
    assert_int_equal(size_largest(wide, 250, is_within, &limit), 17000);
    assert_true(limit.asked <= 6);
    limit.most = 99000;
    assert_int_equal(size_largest(wide, 250, is_within, &limit), 24000);
    limit.most = 0;
    assert_int_equal(size_largest(wide, 250, is_within, &limit), 12000);
    limit.most = 12000;
    assert_int_equal(size_largest((struct size_rule){12000, 12000, 120}, 250, is_within, &limit),
                     12000);
}

static void a_line_is_as_large_as_its_width_allows(void **state)
{
    (void)state;
    struct style style = {ROLE_ROW, FACE_TEXT, 0, INK_BLACK};
    mpt whole = style_fit(&pen, &style, "Fire blanket", ANY_WIDTH);
    assert_int_equal(style.size, size_rule(pen.paper, ROLE_ROW).aim);
    mpt less = style_fit(&pen, &style, "Fire blanket", whole - 1);
    assert_int_equal(style.size, size_rule(pen.paper, ROLE_ROW).aim - SIZE_STEP);
    assert_true(less < whole);
    assert_true(style_fit(&pen, &style, "Fire blanket", 0) > 0);
    assert_int_equal(style.size, size_rule(pen.paper, ROLE_ROW).floor);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(the_largest_step_that_fits_is_taken),
        cmocka_unit_test(the_floor_is_never_passed),
        cmocka_unit_test(steps_that_do_not_meet_the_floor_end_at_it),
        cmocka_unit_test(the_largest_is_found_in_few_steps),
        cmocka_unit_test(a_line_is_as_large_as_its_width_allows),
    };
    return cmocka_run_group_tests(tests, set_up, tear_down);
}
