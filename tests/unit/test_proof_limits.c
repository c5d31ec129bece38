/* test_proof_limits.c - the proofreader's own numbers against those pages are laid out
 * by: what is set at its floor inside its frame passes, and no less is let through. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include "layout/layout_room.h"
#include "proof/limits.h"

/* Papers that are read from as far off as cards are, from farther and from the hand. */
static const int distances[] = {500, 350, 800};
#define DISTANCES (sizeof distances / sizeof *distances)

static void floors_are_not_above_those_of_layout(void **state)
{
    (void)state;
    struct paper paper = *paper_of(PAPER_A4);
    for (size_t i = 0; i < DISTANCES; i++)
        for (int role = 0; role < ROLE_COUNT; role++) {
            paper.reading_mm = distances[i];
            struct role_limit limit = role_limit(&paper, (enum page_role)role);
            struct size_rule rule = size_rule(&paper, (enum page_role)role);
            assert_true(limit.floor <= rule.floor);
            assert_true(limit.aim <= rule.aim);
        }
}

static void every_role_is_judged(void **state)
{
    (void)state;
    for (int role = 0; role < ROLE_COUNT; role++) {
        struct role_limit limit = role_limit(paper_of(PAPER_A4), (enum page_role)role);
        assert_non_null(limit.word);
        assert_true(limit.floor >= 8000 && limit.floor <= limit.aim);
        assert_true(limit.capital_mm > 0 || limit.capitals_read_mm > 0 ||
                    limit.small_read_mm > 0);
        /* what is read in an emergency is never smaller than a row */
        assert_true(limit.tier == TIER_SMALL || limit.floor >= 12000);
    }
}

/* From farther off more is asked for, in points and in metres; of small print never. */
static void limits_grow_with_the_reading_distance(void **state)
{
    (void)state;
    struct paper far = *paper_of(PAPER_A4);
    far.reading_mm = 1000;
    struct role_limit row = role_limit(&far, ROLE_ROW), headline = role_limit(&far, ROLE_HEADLINE);
    assert_int_equal(row.floor, 24000);
    assert_int_equal(row.aim, 28000);
    assert_true(row.small_read_mm > 999 && row.small_read_mm < 1001);
    assert_int_equal(headline.floor, 32000);
    assert_true(headline.capitals_read_mm > 1599 && headline.capitals_read_mm < 1601);
    assert_int_equal(role_limit(&far, ROLE_FOOTER).floor, 8000);
    assert_int_equal(role_limit(&far, ROLE_TITLE).floor, 32000);
    far.title_mm = 800;
    struct role_limit title = role_limit(&far, ROLE_TITLE);
    assert_int_equal(title.floor, 16000);
    assert_true(title.capital_mm > 3.9 && title.capital_mm < 4.1);
}

static struct page page_on(const struct paper *paper)
{
    return (struct page){.paper = paper, .width = paper->width, .height = paper->height};
}

static bool areas_meet(struct area a, struct area b)
{
    return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height &&
           b.y < a.y + a.height;
}

/* However a sheet is punched and laminated. */
static void frame_lies_inside(const struct paper *paper)
{
    const struct page_needs needs = {.way = 0};
    struct frame frame = frame_make(paper, TEMPLATE_CARD, &needs);
    struct page page = page_on(paper);
    struct area safe = safe_area(&page), hole = punched_area(&page);
    assert_true(frame.safe.x >= safe.x && frame.safe.y >= safe.y);
    assert_true(frame.safe.x + frame.safe.width <= safe.x + safe.width);
    assert_true(frame.safe.y + frame.safe.height <= safe.y + safe.height);
    assert_true(frame.at[AREA_STRIP_LEFT].y >= marks_area(&page).y);
    assert_false(areas_meet(frame.safe, hole));
    assert_false(areas_meet(frame.at[AREA_STRIP_LEFT], hole));
    assert_false(areas_meet(frame.at[AREA_STRIP_RIGHT], hole));
}

static void the_frame_lies_inside_the_safe_area(void **state)
{
    (void)state;
    for (enum paper_key key = PAPER_NONE + 1; key < PAPER_COUNT; key++)
        for (enum punch punch = PUNCH_UNSAID; punch < PUNCH_COUNT; punch++)
            for (enum pouch pouch = POUCH_UNSAID; pouch < POUCH_COUNT; pouch++) {
                const struct finish finish = {PALETTE_COLOUR, punch, pouch};
                struct paper paper = paper_finished(key, &finish);
                frame_lies_inside(&paper);
            }
}

static void what_is_cut_off_is_no_margin(void **state)
{
    (void)state;
    const struct finish finish = {.pouch = POUCH_WET};
    struct paper paper = paper_finished(PAPER_A4, &finish);
    struct page page = page_on(&paper);
    assert_int_equal(paper.trim, MM(5));
    assert_int_equal(paper.punch_down, MM(13));
    assert_int_equal(safe_area(&page).y, MM(13) + MM(8));
    paper.trim = MM(9);
    assert_int_equal(safe_area(&page).x, paper.trim + MM(5));
}

/* The proofreader's margins are its own: a paper cannot have less. */
static void the_safe_area_is_no_matter_of_the_paper_s_margins(void **state)
{
    (void)state;
    struct paper paper = *paper_of(PAPER_A4);
    paper.side = paper.head = paper.foot = 0;
    struct page page = page_on(&paper);
    struct area safe = safe_area(&page);
    assert_int_equal(safe.x, MM(10));
    assert_int_equal(safe.y, MM(16));
    assert_int_equal(page.height - safe.y - safe.height, MM(8));
}

static void a_paper_without_a_hole_has_more_room(void **state)
{
    (void)state;
    struct paper paper = *paper_of(PAPER_A4);
    struct page page = page_on(&paper);
    assert_int_equal(punched_area(&page).width, 2 * MM(7.5));
    assert_int_equal(punched_area(&page).y, MM(8) - MM(7.5));
    paper.punch_down = 0;
    assert_int_equal(punched_area(&page).width, 0);
    assert_int_equal(safe_area(&page).y, MM(10));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(floors_are_not_above_those_of_layout),
        cmocka_unit_test(every_role_is_judged),
        cmocka_unit_test(limits_grow_with_the_reading_distance),
        cmocka_unit_test(the_safe_area_is_no_matter_of_the_paper_s_margins),
        cmocka_unit_test(a_paper_without_a_hole_has_more_room),
        cmocka_unit_test(the_frame_lies_inside_the_safe_area),
        cmocka_unit_test(what_is_cut_off_is_no_margin),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
