/* test_plan_lead.c - tags away from their true place: together with others of it,
 * led to it by a line, or neither; and which hull a spot lies in. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include "card_fixture.h"
#include "layout/plan_lead.h"

static const struct area paper = {MM(20), MM(30), MM(60), MM(70)};

static struct marker marker_at(int32_t x_mm, int32_t y_mm, const char *zone)
{
    return (struct marker){.tag = "C1", .zone = zone_find(zone), .level = LEVEL_BELOW,
                           .x_mm = x_mm, .y_mm = y_mm, .exact = true};
}

static struct area box_near_place(const struct hull_view *view, const struct marker *marker,
                                  mpt right, mpt down)
{
    struct point place = hull_point(view, marker);
    return box_at((struct point){place.x + right, place.y + down}, MM(6), MM(4));
}

static void a_tag_on_its_place_needs_no_line(void **state)
{
    (void)state;
    struct hull_view view = hull_view_in(case_boat(&test, "tests/fleet/boats/tamarisk.yaml"),
                                         paper, 150);
    struct marker markers[] = {marker_at(6000, 0, "saloon")};
    struct area boxes[] = {box_near_place(&view, &markers[0], MM(2), MM(1))};
    bool found[] = {true};
    struct placed_tags tags = {&view, markers, boxes, found, 1};
    assert_int_equal(tag_lead(&tags, 0), LEAD_NONE);
    boxes[0] = box_near_place(&view, &markers[0], MM(9), 0);
    assert_int_equal(tag_lead(&tags, 0), LEAD_DRAWN);
}

static void tags_of_one_place_stand_together(void **state)
{
    (void)state;
    struct hull_view view = hull_view_in(case_boat(&test, "tests/fleet/boats/tamarisk.yaml"),
                                         paper, 150);
    struct marker markers[] = {marker_at(6000, 0, "saloon"), marker_at(6000, 0, "saloon")};
    struct area boxes[] = {box_near_place(&view, &markers[0], 0, 0),
                           box_near_place(&view, &markers[0], 0, MM(5))};
    bool found[] = {true, true};
    struct placed_tags tags = {&view, markers, boxes, found, 2};
    assert_int_equal(tag_lead(&tags, 1), LEAD_TOGETHER);
    markers[0].x_mm = 6001;                           /* another place: it hides this one */
    assert_int_equal(tag_lead(&tags, 1), LEAD_LOST);
    found[0] = false;
    assert_int_equal(tag_lead(&tags, 1), LEAD_DRAWN);
}

/* A line under another tag would lead the eye to that tag. */
static void no_line_runs_under_another_tag(void **state)
{
    (void)state;
    struct hull_view view = hull_view_in(case_boat(&test, "tests/fleet/boats/tamarisk.yaml"),
                                         paper, 150);
    struct marker markers[] = {marker_at(6000, 0, "saloon"), marker_at(7500, 0, "saloon")};
    struct area boxes[] = {box_near_place(&view, &markers[0], 0, MM(14)),
                           box_near_place(&view, &markers[0], 0, MM(7))};
    bool found[] = {true, true};
    struct placed_tags tags = {&view, markers, boxes, found, 2};
    assert_int_equal(tag_lead(&tags, 0), LEAD_LOST);
    boxes[1].x += MM(12);
    assert_int_equal(tag_lead(&tags, 0), LEAD_DRAWN);
}

/* Two lines across each other would lead to the wrong tag: one is drawn. Two tags of one
 * place may share its dot. */
static void two_lines_do_not_cross(void **state)
{
    (void)state;
    struct hull_view view = hull_view_in(case_boat(&test, "tests/fleet/boats/tamarisk.yaml"),
                                         paper, 150);
    struct marker markers[] = {marker_at(6000, -500, "saloon"), marker_at(6000, 500, "saloon")};
    struct area left = box_near_place(&view, &markers[0], 0, MM(14));
    struct area right = box_near_place(&view, &markers[1], 0, MM(14));
    struct area boxes[] = {left, right};
    bool found[] = {true, true};
    struct placed_tags tags = {&view, markers, boxes, found, 2};
    assert_int_equal(tag_lead(&tags, 0), LEAD_DRAWN);
    assert_int_equal(tag_lead(&tags, 1), LEAD_DRAWN);
    boxes[0] = right;
    boxes[1] = left;
    assert_int_equal(tag_lead(&tags, 0), LEAD_DRAWN);
    assert_int_equal(tag_lead(&tags, 1), LEAD_LOST);
    markers[0].y_mm = markers[1].y_mm;
    assert_int_equal(tag_lead(&tags, 1), LEAD_DRAWN);
}

/* From the middle of the tag to the very place. */
static void the_line_ends_in_a_dot_at_the_true_place(void **state)
{
    (void)state;
    struct hull_view view = hull_view_in(case_boat(&test, "tests/fleet/boats/tamarisk.yaml"),
                                         paper, 150);
    struct marker markers[] = {marker_at(6000, 500, "saloon")};
    struct area boxes[] = {box_near_place(&view, &markers[0], MM(9), 0)};
    bool found[] = {true};
    struct placed_tags tags = {&view, markers, boxes, found, 1};
    struct pen pen = {.paper = paper_of(PAPER_A4), .arena = test.arena,
                      .problems = test.problems};
    struct point place = hull_point(&view, &markers[0]);
    tag_lead_draw(&pen, &tags, 0);
    assert_int_equal(pen.count, 2);
    assert_int_equal(pen.items[0].kind, PAGE_LINE);
    assert_int_equal(pen.items[0].to.x, place.x);
    assert_int_equal(pen.items[0].to.y, place.y);
    assert_int_equal(pen.items[1].kind, PAGE_ELLIPSE);
    struct area dot = pen.items[1].area;
    assert_in_range(dot.x + dot.width / 2 - place.x + 1, 0, 2);
    assert_in_range(dot.y + dot.height / 2 - place.y + 1, 0, 2);
}

/* ---- which hull ---- */

static void a_catamaran_has_two_hulls_and_a_bridge(void **state)
{
    (void)state;
    struct hull_view twin = hull_view_in(case_boat(&test, "tests/fleet/boats/samphire.yaml"),
                                         paper, 150);
    struct hull_view one = hull_view_in(case_boat(&test, "tests/fleet/boats/tamarisk.yaml"),
                                        paper, 150);
    mpt centre = twin.area.x + twin.area.width / 2, y = twin.area.y + twin.area.height / 2;
    mpt hull = twin.area.width / 2 * 74 / 100;
    assert_int_equal(hull_body(&twin, (struct point){centre - hull, y}), -1);
    assert_int_equal(hull_body(&twin, (struct point){centre, y}), 0);
    assert_int_equal(hull_body(&twin, (struct point){centre + hull, y}), 1);
    assert_int_equal(hull_body(&one, (struct point){one.area.x + MM(1), y}), 0);
}

/* However many stand there, what is on the bridge deck is not sent into a hull. */
static void a_spot_stays_in_its_hull(void **state)
{
    (void)state;
    struct hull_view view = hull_view_in(case_boat(&test, "tests/fleet/boats/samphire.yaml"),
                                         paper, 150);
    struct marker marker = {.tag = "C1", .zone = zone_find("bridgedeck"), .x_mm = 7000,
                            .y_mm = -1200, .level = LEVEL_BELOW};
    struct area areas[6];
    struct taken taken = {areas, 0, MM(0.4)};
    for (size_t i = 0; i < 6; i++) {
        struct area box;
        assert_true(spot_find(&view, &marker, MM(7), MM(4), &taken, &box));
        struct point centre = {box.x + box.width / 2, box.y + box.height / 2};
        assert_int_equal(hull_body(&view, centre), 0);
        areas[taken.count++] = box;
    }
}

/* The anchor of a catamaran is on the beam between the bows: no dot in the water ahead
 * of it. */
static void no_line_leads_off_the_boat(void **state)
{
    (void)state;
    struct hull_view view = hull_view_in(case_boat(&test, "tests/fleet/boats/samphire.yaml"),
                                         paper, 150);
    struct marker marker = {.tag = "C1", .zone = zone_find("anchor_locker"), .x_mm = 800,
                            .level = LEVEL_DECK};
    struct taken none = {0};
    struct area box;
    bool found = spot_find(&view, &marker, MM(7), MM(4), &none, &box);
    struct placed_tags tags = {&view, &marker, &box, &found, 1};
    assert_true(found);
    assert_false(hull_holds(&view, box_at(hull_point(&view, &marker), 0, 0)));
    assert_int_equal(tag_lead(&tags, 0), LEAD_NONE);
}

/* A dot on a dot would be black on black. */
static void lines_of_one_place_share_one_dot(void **state)
{
    (void)state;
    struct hull_view view = hull_view_in(case_boat(&test, "tests/fleet/boats/tamarisk.yaml"),
                                         paper, 150);
    struct marker markers[] = {marker_at(6000, 0, "saloon"), marker_at(6000, 0, "saloon")};
    struct area boxes[] = {box_near_place(&view, &markers[0], 0, MM(14)),
                           box_near_place(&view, &markers[1], MM(9), 0)};
    bool found[] = {true, true};
    struct placed_tags tags = {&view, markers, boxes, found, 2};
    struct pen pen = {.paper = paper_of(PAPER_A4), .arena = test.arena,
                      .problems = test.problems};
    tag_lead_draw(&pen, &tags, 0);
    tag_lead_draw(&pen, &tags, 1);
    assert_int_equal(pen.count, 3);
    assert_int_equal(pen.items[0].kind, PAGE_LINE);
    assert_int_equal(pen.items[1].kind, PAGE_LINE);
    assert_int_equal(pen.items[2].kind, PAGE_ELLIPSE);
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(a_tag_on_its_place_needs_no_line),
        TEST(tags_of_one_place_stand_together),
        TEST(no_line_runs_under_another_tag),
        TEST(two_lines_do_not_cross),
        TEST(the_line_ends_in_a_dot_at_the_true_place),
        TEST(lines_of_one_place_share_one_dot),
        TEST(a_catamaran_has_two_hulls_and_a_bridge),
        TEST(a_spot_stays_in_its_hull),
        TEST(no_line_leads_off_the_boat),
    };
    return cmocka_run_group_tests(tests, NULL, NULL) != 0;
}
