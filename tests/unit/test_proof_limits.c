/* test_proof_limits.c - the proofreader's own numbers against those pages are laid out
 * by: what is set at its floor inside its frame passes, and no less is let through. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include "layout/layout_room.h"
#include "proof/limits.h"

static void floors_are_not_above_those_of_layout(void **state)
{
    (void)state;
    for (int role = 0; role < ROLE_COUNT; role++) {
        const struct role_limit *limit = role_limit((enum page_role)role);
        assert_true(limit->floor <= size_rule((enum page_role)role)->floor);
        assert_true(limit->aim <= size_rule((enum page_role)role)->aim);
    }
}

static void every_role_is_judged(void **state)
{
    (void)state;
    for (int role = 0; role < ROLE_COUNT; role++) {
        const struct role_limit *limit = role_limit((enum page_role)role);
        assert_non_null(limit->word);
        assert_true(limit->floor >= 8000 && limit->floor <= limit->aim);
        assert_true(limit->capital_mm > 0 || limit->capitals_read_mm > 0 ||
                    limit->small_read_mm > 0);
        /* what is read in an emergency is never smaller than a row */
        assert_true(limit->tier == TIER_SMALL || limit->floor >= 12000);
    }
}

static void the_frame_lies_inside_the_safe_area(void **state)
{
    (void)state;
    struct frame frame = frame_make(0, 0, false);
    struct page page = {.width = frame.paper.width, .height = frame.paper.height};
    struct area safe = safe_area(&page);
    assert_true(frame.safe.x >= safe.x && frame.safe.y >= safe.y);
    assert_true(frame.safe.x + frame.safe.width <= safe.x + safe.width);
    assert_true(frame.safe.y + frame.safe.height <= safe.y + safe.height);
    assert_true(safe.x >= MM(10) && safe.y >= MM(16));
    assert_true(page.height - safe.y - safe.height >= MM(8));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(floors_are_not_above_those_of_layout),
        cmocka_unit_test(every_role_is_judged),
        cmocka_unit_test(the_frame_lies_inside_the_safe_area),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
