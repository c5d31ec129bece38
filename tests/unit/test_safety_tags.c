/* test_safety_tags.c - tags on the safety plan's boat that are not where they belong:
 * in another hull, or cut off from their place by others. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include "card_case.h"
#include "layout/safety.h"

static struct card_case test;
static struct hull_view view;
static const struct area paper = {MM(70), MM(60), MM(60), MM(200)};

static int set_up(void **state)
{
    (void)state;
    case_begin(&test);
    view = hull_view_in(case_boat(&test, "tests/fleet/boats/samphire.yaml"), paper, 150);
    return 0;
}

static int tear_down(void **state)
{
    (void)state;
    case_end(&test);
    return 0;
}

/* Two places on the bridge deck, 1 m apart fore and aft. */
static const struct plan_place places[2] = {
    {.title = "One", .marker = {.tag = "", .x_mm = 6000, .level = LEVEL_BELOW}},
    {.title = "Two", .marker = {.tag = "", .x_mm = 7000, .level = LEVEL_BELOW}}};

static struct area round_place(size_t place, mpt down, mpt width)
{
    struct point at = hull_point(&view, &places[place].marker);
    at.y += down;
    return box_at(at, width, MM(4));
}

static size_t lost(struct area one, struct area two)
{
    struct places_facts plan = {.places = places, .count = 2};
    struct tag_group groups[3] = {{.box = one, .found = true}, {.box = two, .found = true}};
    return tag_groups_lost(&plan, &view, groups);
}

static void tags_on_their_places_are_not_lost(void **state)
{
    (void)state;
    assert_int_equal(lost(round_place(0, 0, MM(8)), round_place(1, 0, MM(8))), 0);
}

static void tags_with_a_free_line_to_their_place_are_not_lost(void **state)
{
    (void)state;
    assert_int_equal(lost(round_place(0, 0, MM(8)), round_place(1, MM(9), MM(8))), 0);
}

static void tags_behind_others_are_lost(void **state)
{
    (void)state;
    struct area far = round_place(1, MM(30), MM(8)), between = round_place(1, MM(15), MM(8));
    assert_int_equal(lost(between, far), 1);    /* the first has a free line, the second none */
    assert_int_equal(lost(round_place(0, 0, MM(8)), far), 0);
}

static void tags_across_two_hulls_are_lost(void **state)
{
    (void)state;
    mpt whole = view.area.width;
    assert_int_equal(lost(round_place(0, 0, whole), round_place(1, 0, MM(8))), 1);
}

/* What found no spot is told as that, not as lost. */
static void what_has_no_spot_is_not_counted(void **state)
{
    (void)state;
    struct places_facts plan = {.places = places, .count = 2};
    struct tag_group groups[3] = {{.found = false}, {.found = false}};
    assert_int_equal(tag_groups_lost(&plan, &view, groups), 0);
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(tags_on_their_places_are_not_lost),
        TEST(tags_with_a_free_line_to_their_place_are_not_lost),
        TEST(tags_behind_others_are_lost),
        TEST(tags_across_two_hulls_are_lost),
        TEST(what_has_no_spot_is_not_counted),
    };
    return cmocka_run_group_tests(tests, NULL, NULL) != 0;
}
