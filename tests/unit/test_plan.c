/* test_plan.c - tags on the plan beside the steps: each once, in its view, on its side, in the
 * order along the boat and at one place on all cards of a set. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include "plan_case.h"
#include "text.h"

/* ---- tags ---- */

static void each_tag_is_there(const struct sheet *card, const struct pen *pen)
{
    struct drawn_tag tags[TAGS_MOST];
    size_t wanted = 0;
    for (size_t m = 0; m < sheet_plan(card)->marker_count; m++) {
        const struct marker *marker = &sheet_plan(card)->markers[m];
        size_t times = marker->drawn == SIDE_BOTH ? 2 : 1;
        if (tag_find(pen, marker->tag).count != times)
            fail_msg("%s: %s is not drawn %zu times", card->name, marker->tag, times);
        wanted += times;
    }
    assert_int_equal(tags_drawn(pen, tags), wanted);
}

static void every_tag_of_a_card_stands_once_and_no_other(void **state)
{
    (void)state;
    each_plan(each_tag_is_there);
}

static void tags_stand_in_the_view_of_their_level_and_on_their_side(void **state)
{
    (void)state;
    each_plan(each_tag_is_in_its_view);
}

/* Each hull of several has places of its own, and so has the deck between them. */
static bool are_of_one_body(const struct marker *a, const struct marker *b)
{
    return plan_head_of(a) == plan_head_of(b) &&
           (plan_case.cards.boat->facts.hull.value == HULL_MONOHULL ||
            (a->drawn == b->drawn && a->zone->in_hulls == b->zone->in_hulls));
}

static void each_tag_is_in_order(const struct sheet *card, const struct pen *pen)
{
    const struct plan_facts *plan = sheet_plan(card);
    for (size_t a = 0; a < plan->marker_count; a++)
        for (size_t b = 0; b < plan->marker_count; b++) {
            const struct marker *ahead = &plan->markers[a], *abaft = &plan->markers[b];
            if (a == b || ahead->to_mm > abaft->from_mm || !are_of_one_body(ahead, abaft))
                continue;
            if (box_middle(tag_find(pen, ahead->tag).left.box).y >
                box_middle(tag_find(pen, abaft->tag).left.box).y + 1)
                fail_msg("%s: %s stands abaft %s", card->name, ahead->tag, abaft->tag);
        }
}

static void what_lies_ahead_stands_ahead(void **state)
{
    (void)state;
    each_plan(each_tag_is_in_order);
}

static void each_tag_tells_its_level(const struct sheet *card, const struct pen *pen)
{
    for (size_t m = 0; m < sheet_plan(card)->marker_count; m++) {
        const struct marker *marker = &sheet_plan(card)->markers[m];
        assert_int_equal(tag_find(pen, marker->tag).left.round, marker->level == LEVEL_BELOW);
    }
}

static void tags_below_are_round_and_tags_on_deck_are_square(void **state)
{
    (void)state;
    each_plan(each_tag_tells_its_level);
}

/* ---- one place on all cards ---- */

static void same_place(const struct sheet *first, const struct sheet *second)
{
    struct pen one = plan_drawn(first, plan_floor()), other = plan_drawn(second, plan_floor());
    for (size_t m = 0; m < sheet_plan(first)->marker_count; m++) {
        const char *tag = sheet_plan(first)->markers[m].tag;
        struct found_tag found = tag_find(&other, tag);
        if (found.count == 0)
            continue;
        struct point a = box_middle(tag_find(&one, tag).left.box), b = box_middle(found.left.box);
        if (a.x - b.x > 1 || b.x - a.x > 1 || a.y - b.y > 1 || b.y - a.y > 1)
            fail_msg("%s stands elsewhere on %s than on %s", tag, second->name, first->name);
    }
}

static void others_have_the_same_places(const struct sheet *card, const struct pen *pen)
{
    (void)pen;
    for (size_t i = 0; i < plan_case.set->count; i++)
        if (has_plan(plan_case.set->sheets[i]))
            same_place(card, plan_case.set->sheets[i]);
}

static void a_thing_stands_at_one_place_on_every_card(void **state)
{
    (void)state;
    each_plan(others_have_the_same_places);
}

/* ---- boats made up ---- */

static void what_lies_on_both_sides_stands_on_both(void **state)
{
    (void)state;
    const struct sheet *card =
        plan_torches("monohull", PLAN_TORCH("C1", "zone: cockpit_locker, side: both, count: 2"));
    struct pen pen = plan_drawn(card, plan_floor());
    assert_int_equal(tag_find(&pen, "C1").count, 2);
    each_tag_is_in_its_view(card, &pen);
}

/* Two in one zone, told apart by where they were measured. */
static void places_that_are_measured_are_in_order(void **state)
{
    (void)state;
    const struct sheet *card = plan_torches(
        "monohull", PLAN_TORCH("C1", "zone: saloon, spot: aft, side: port, at: [6.2, -1]")
        PLAN_TORCH("C2", "zone: saloon, side: starboard, at: [4.5, 1]")
        PLAN_TORCH("C3", "zone: saloon, spot: shelf, side: port, at: [5.4, -1]"));
    struct pen pen = plan_drawn(card, plan_aim());
    mpt first = box_middle(tag_find(&pen, "C2").left.box).y;
    mpt second = box_middle(tag_find(&pen, "C3").left.box).y;
    mpt third = box_middle(tag_find(&pen, "C1").left.box).y;
    assert_true(first < second && second < third);
    each_tag_is_in_its_view(card, &pen);
}

/* More than a place holds is an error with the line of each that has none; nothing is left out
 * in silence. */
static void what_has_no_room_is_told(void **state)
{
    (void)state;
    struct text_builder gear = text_builder_in(plan_case.cards.arena);
    for (int i = 1; i <= 99; i++)
        text_add_format(&gear, PLAN_TORCH("C%d", "zone: forepeak, spot: hook %d"), i, i);
    const struct sheet *card = plan_torches("monohull", gear.at);
    struct pen pen = plan_drawn(card, plan_floor());
    size_t missing = 0, told = problems_count(plan_case.cards.problems, SEVERITY_ERROR);
    for (size_t m = 0; m < sheet_plan(card)->marker_count; m++) {
        const char *what = text_format(plan_case.cards.arena,
                                       "%s: no room on the plan for the tag %s in forepeak",
                                       card->name, sheet_plan(card)->markers[m].tag);
        missing += case_problem(&plan_case.cards, what) != NULL ? 1 : 0;
    }
    assert_true(missing > 0);
    assert_int_equal(told, missing);
    assert_true(pen.failed);
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, plan_set_up, plan_tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(every_tag_of_a_card_stands_once_and_no_other),
        TEST(tags_stand_in_the_view_of_their_level_and_on_their_side),
        TEST(what_lies_ahead_stands_ahead),
        TEST(tags_below_are_round_and_tags_on_deck_are_square),
        TEST(a_thing_stands_at_one_place_on_every_card),
        TEST(what_lies_on_both_sides_stands_on_both),
        TEST(places_that_are_measured_are_in_order),
        TEST(what_has_no_room_is_told),
    };
    return cmocka_run_group_tests(tests, NULL, NULL) != 0;
}
