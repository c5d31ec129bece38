/* test_hull.c - the boat's outline on paper: its shape, what lies on it, and on
 * which side. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include "card_fixture.h"
#include "layout/layout_room.h"

static const struct area paper = {MM(20), MM(30), MM(60), MM(70)};

static struct hull_view monohull(void)
{
    return hull_view_in(case_boat(&test, "tests/fleet/boats/tamarisk.yaml"), paper, 165);
}

static struct hull_view catamaran(void)
{
    return hull_view_in(case_boat(&test, "tests/fleet/boats/samphire.yaml"), paper, 150);
}

static mpt centre_of(const struct hull_view *view)
{
    return view->area.x + view->area.width / 2;
}

/* ---- breadth ---- */

static void the_hull_widens_to_its_maximum_and_narrows_to_the_stern(void **state)
{
    (void)state;
    int32_t widest = 0;
    assert_int_equal(hull_half_breadth(0), 0);
    for (int32_t along = 1; along <= 1000; along++)
        if (hull_half_breadth(along) > hull_half_breadth(widest))
            widest = along;
    assert_int_equal(hull_half_breadth(widest), 1000);
    assert_in_range(widest, 500, 850);
    for (int32_t along = 1; along <= 1000; along++) {
        int32_t change = hull_half_breadth(along) - hull_half_breadth(along - 1);
        assert_true(along <= widest ? change >= 0 : change <= 0);
        assert_in_range(change + 10, 0, 20);          /* no step in the outline */
    }
    assert_in_range(hull_half_breadth(1000), 700, 999);
    assert_int_equal(hull_half_breadth(1050), hull_half_breadth(1000));
    assert_int_equal(hull_half_breadth(-50), 0);
}

static void the_boat_stands_in_the_middle_of_its_paper(void **state)
{
    (void)state;
    struct hull_view views[] = {monohull(), catamaran()};
    for (size_t i = 0; i < 2; i++) {
        assert_int_equal(views[i].area.height, paper.height);
        assert_true(views[i].area.width <= paper.width);
        assert_in_range(centre_of(&views[i]) - (paper.x + paper.width / 2) + 1, 0, 2);
    }
    /* as wide as it is for its length, times the widening */
    assert_in_range(views[0].area.width, MM(70.0 * 4.1 / 12.6 * 1.65) - 3,
                    MM(70.0 * 4.1 / 12.6 * 1.65) + 3);
    assert_int_equal(hull_view_in(test.boat, paper, 500).area.width, paper.width);
}

/* ---- points ---- */

static struct point point_of(const struct hull_view *view, int32_t x_mm, int32_t y_mm, bool exact)
{
    struct marker marker = {.x_mm = x_mm, .y_mm = y_mm, .exact = exact};
    return hull_point(view, &marker);
}

static void port_is_left_and_the_bow_is_up(void **state)
{
    (void)state;
    struct hull_view views[] = {monohull(), catamaran()};
    for (size_t i = 0; i < 2; i++)
        for (int exact = 0; exact < 2; exact++) {
            const struct hull_view *view = &views[i];
            int32_t half = view->beam_mm / 2, length = view->loa_mm;
            struct point bow = point_of(view, 0, 0, exact);
            struct point stern = point_of(view, length, 0, exact);
            struct point port = point_of(view, length / 2, -half / 2, exact);
            struct point starboard = point_of(view, length / 2, half / 2, exact);
            assert_int_equal(bow.x, centre_of(view));
            assert_int_equal(bow.y, view->area.y);
            assert_int_equal(stern.y, view->area.y + view->area.height);
            assert_true(port.x < centre_of(view) - MM(2));
            assert_true(starboard.x > centre_of(view) + MM(2));
            assert_in_range(port.x + starboard.x - 2 * centre_of(view) + 2, 0, 4);
            assert_in_range(port.y - (view->area.y + view->area.height / 2) + 100, 0, 200);
        }
}

/* An exact place is to scale; a zone's keeps its share of the local breadth. */
static void an_exact_place_is_not_squeezed_by_the_bow(void **state)
{
    (void)state;
    struct hull_view view = monohull();
    int32_t x = view.loa_mm / 10, y = view.beam_mm / 8;
    mpt quarter = view.area.width / 8;                /* half the beam is half the width */
    struct point exact = point_of(&view, x, y, true), by_zone = point_of(&view, x, y, false);
    assert_in_range(exact.x - centre_of(&view) - quarter + 200, 0, 400);
    mpt share = quarter * hull_half_breadth(100) / 1000;
    assert_in_range(by_zone.x - centre_of(&view) - share + 200, 0, 400);
}

/* ---- what lies on the boat ---- */

static struct area box_round(struct point centre, mpt width, mpt height)
{
    return (struct area){centre.x - width / 2, centre.y - height / 2, width, height};
}

static bool holds(const struct hull_view *view, mpt x, mpt y)
{
    struct point point = {centre_of(view) + x, view->area.y + y};
    return hull_holds(view, box_round(point, MM(5), MM(4)));
}

static void a_box_must_lie_on_the_monohull(void **state)
{
    (void)state;
    struct hull_view view = monohull();
    mpt half = view.area.width / 2, height = view.area.height;
    assert_true(holds(&view, 0, height / 2));
    assert_true(holds(&view, half - MM(3), height * 7 / 10));
    assert_true(holds(&view, -half + MM(3), height * 7 / 10));
    assert_false(holds(&view, half, height * 7 / 10));
    assert_false(holds(&view, -half, height * 7 / 10));
    assert_false(holds(&view, 0, 0));                 /* the bow is a point */
    assert_false(holds(&view, half - MM(3), height / 10));
    assert_false(holds(&view, 0, height + MM(1)));
    assert_false(holds(&view, 0, -MM(5)));
}

static void a_box_must_lie_on_a_hull_or_the_bridge(void **state)
{
    (void)state;
    struct hull_view view = catamaran();
    mpt half = view.area.width / 2, height = view.area.height, hull = half * 74 / 100;
    assert_true(holds(&view, hull, height / 2));
    assert_true(holds(&view, -hull, height * 9 / 10));
    assert_true(holds(&view, 0, height / 2));         /* the bridge deck */
    assert_true(holds(&view, 0, height / 4));         /* the net */
    assert_false(holds(&view, 0, height * 5 / 100));  /* open water between the bows */
    assert_false(holds(&view, 0, height * 97 / 100)); /* and between the sterns */
    assert_false(holds(&view, half, height / 2));
    assert_false(holds(&view, hull, height + MM(1)));
}

/* What is wholly inside is also held; a tag may touch the line, a name may not. */
static void enclosing_is_stricter_than_holding(void **state)
{
    (void)state;
    struct hull_view views[] = {monohull(), catamaran()};
    for (size_t i = 0; i < 2; i++) {
        size_t held = 0, enclosed = 0;
        for (mpt y = 0; y < views[i].area.height; y += MM(1))
            for (mpt x = -views[i].area.width / 2; x <= views[i].area.width / 2; x += MM(1)) {
                struct point point = {centre_of(&views[i]) + x, views[i].area.y + y};
                struct area box = box_round(point, MM(5), MM(4));
                held += hull_holds(&views[i], box) ? 1 : 0;
                enclosed += hull_encloses(&views[i], box) ? 1 : 0;
                assert_true(hull_holds(&views[i], box) || !hull_encloses(&views[i], box));
            }
        assert_true(enclosed > 0 && enclosed < held);
    }
}

/* The outline that is drawn is the one that boxes are held against. */
static void the_drawn_outline_is_the_outline(void **state)
{
    (void)state;
    struct hull_view views[] = {monohull(), catamaran()};
    for (size_t i = 0; i < 2; i++) {
        struct pen pen = {.paper = paper_of(PAPER_A4), .arena = test.arena,
                          .problems = test.problems};
        size_t hulls = 0;
        hull_draw(&pen, &views[i]);
        for (size_t n = 0; n < pen.count; n++) {
            const struct area *area = &pen.items[n].area;
            assert_int_equal(pen.items[n].block, BLOCK_PLAN);
            assert_true(area->x >= views[i].area.x - 1 && area->y >= views[i].area.y - 1);
            assert_true(area->x + area->width <= views[i].area.x + views[i].area.width + 1);
            assert_true(area->y + area->height <= views[i].area.y + views[i].area.height + 1);
            if (pen.items[n].kind != PAGE_PATH)
                continue;
            hulls++;
            assert_int_equal(area->y, views[i].area.y);
            assert_int_equal(area->height, views[i].area.height);
            assert_int_equal(pen.items[n].stroke, INK_BLACK);
        }
        assert_int_equal(hulls, i + 1);
    }
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(the_hull_widens_to_its_maximum_and_narrows_to_the_stern),
        TEST(the_boat_stands_in_the_middle_of_its_paper),
        TEST(port_is_left_and_the_bow_is_up),
        TEST(an_exact_place_is_not_squeezed_by_the_bow),
        TEST(a_box_must_lie_on_the_monohull),
        TEST(a_box_must_lie_on_a_hull_or_the_bridge),
        TEST(enclosing_is_stricter_than_holding),
        TEST(the_drawn_outline_is_the_outline),
    };
    int failed = cmocka_run_group_tests(tests, NULL, NULL);
    return failed != 0;
}
