/* test_plan.c - tags on the plan: apart from each other, on the boat, and where
 * they are said to be. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "compose/compose_room.h"
#include "faces_fixture.h"
#include "layout/layout_room.h"
#include "text.h"

#define MOST_TAGS 64

static struct sheet card;
static struct pen pen;

/* The paper that the plan has on a card: the right column, of some height. */
static struct area paper(mpt height)
{
    const struct page_needs needs = {.marked = true};
    struct area area = frame_make(paper_of(PAPER_A4), TEMPLATE_CARD, &needs).at[AREA_RIGHT];
    area.height = height;
    return area;
}

/* A card of the boat with these markers. */
static void plan_card_begin(const char *boat, const struct marker *markers, size_t count)
{
    case_boat(&test, boat);
    card = *case_card(case_compose(&test, false), "flooding");
    struct plan_facts *plan = FACTS(test.arena, &card, plan, BLOCK_PLAN);
    plan->markers = markers;
    plan->marker_count = count;
    test.problems = problems_new(test.arena);
    pen = (struct pen){.faces = faces,
                       .arena = test.arena,
                       .problems = test.problems,
                       .sheet = &card,
                       .paper = paper_of(PAPER_A4)};
}

/* Markers of the boat's own gear, as many as wanted; more than it has stand again
 * where the first ones do. */
static const struct marker *markers_of(const char *boat, size_t count)
{
    struct compose_input input = {.boat = case_boat(&test, boat)};
    struct composing composing = {.in = &input, .arena = test.arena};
    struct marker *markers = arena_array(test.arena, count, sizeof *markers);
    for (size_t i = 0; i < test.boat->equipment_count; i++)
        marker_add(&composing, &test.boat->equipment[i]);
    assert_int_equal(composing.marker_count, test.boat->equipment_count);
    for (size_t i = 0; i < count; i++) {
        markers[i] = composing.markers[i % composing.marker_count];
        if (i >= composing.marker_count)
            markers[i].tag = text_format(test.arena, "C%zu", 80 + i);
    }
    return markers;
}

/* ---- what was drawn ---- */

struct drawn_tag { const char *text; struct area box; bool round; };

static size_t tags_drawn(struct drawn_tag tags[MOST_TAGS])
{
    size_t count = 0;
    for (size_t i = 1; i < pen.count; i++) {
        const struct page_item *text = &pen.items[i], *box = &pen.items[i - 1];
        if (text->kind != PAGE_TEXT || text->role != ROLE_PLAN_TAG)
            continue;
        assert_int_equal(box->kind, PAGE_BOX);
        assert_int_equal(box->fill, INK_BLACK);
        assert_int_equal(text->fill, INK_WHITE);
        assert_true(text->area.x >= box->area.x);     /* the box holds its text */
        assert_true(text->area.x + text->area.width <= box->area.x + box->area.width);
        assert_true(count < MOST_TAGS);
        tags[count++] = (struct drawn_tag){text->run->text, box->area, box->radius > 0};
    }
    return count;
}

static const struct drawn_tag *tag_named(const struct drawn_tag *tags, size_t count,
                                         const char *text)
{
    for (size_t i = 0; i < count; i++)
        if (strcmp(tags[i].text, text) == 0)
            return &tags[i];
    fail_msg("the tag %s is not on the plan", text);
    return NULL;
}

static struct point middle_of(struct area box)
{
    return (struct point){box.x + box.width / 2, box.y + box.height / 2};
}

/* The boat as it was drawn: its outline tells which view was chosen. */
static struct hull_view view_drawn(void)
{
    struct area whole = {0};
    for (size_t i = 0; i < pen.count; i++) {
        struct area area = pen.items[i].area;
        if (pen.items[i].kind != PAGE_PATH)
            continue;
        mpt right = whole.x + whole.width;
        whole = whole.width == 0 ? area
                                 : (struct area){whole.x, whole.y, area.x + area.width - whole.x,
                                                 whole.height};
        assert_true(right <= whole.x + whole.width);
    }
    assert_true(whole.width > 0);
    if (test.boat->catamaran) {                       /* the hulls leave 1 % at each side */
        mpt wide = (mpt)((int64_t)whole.width * 100 / 99);
        whole.x -= (wide - whole.width) / 2;
        whole.width = wide;
    }
    return (struct hull_view){.area = whole, .catamaran = test.boat->catamaran, .mast = true,
                              .cabin = true, .loa_mm = (int32_t)test.boat->facts.loa_m.milli,
                              .beam_mm = (int32_t)test.boat->facts.beam_m.milli,
                              .part = PLAN_PART_WHOLE};
}

static bool overlap(struct area a, struct area b)
{
    return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height &&
           b.y < a.y + a.height;
}

static void nothing_overlaps(void)
{
    struct drawn_tag tags[MOST_TAGS];
    size_t count = tags_drawn(tags);
    for (size_t i = 0; i < count; i++)
        for (size_t j = 0; j < i; j++)
            if (overlap(tags[i].box, tags[j].box))
                fail_msg("%s lies on %s", tags[i].text, tags[j].text);
    for (size_t i = 0; i < pen.count; i++) {
        const struct page_item *item = &pen.items[i];
        if (item->kind != PAGE_TEXT || item->role != ROLE_PLAN_LABEL)
            continue;
        for (size_t j = 0; j < count; j++)
            if (overlap(item->area, tags[j].box))
                fail_msg("%s lies on the word %s", tags[j].text, item->run->text);
    }
}

/* A tag may touch the outline with its rim. */
static bool on_the_boat(struct area box)
{
    struct hull_view view = view_drawn();
    mpt slack = MM(0.1);                              /* the view was read back from paper */
    return hull_holds(&view, (struct area){box.x + slack, box.y + slack, box.width - 2 * slack,
                                           box.height - 2 * slack});
}

/* ---- tags of the fleet ---- */

static const char *const boats[] = {"tests/fleet/boats/tamarisk.yaml",
                                    "tests/fleet/boats/samphire.yaml"};

/* Each tag is drawn once, or a problem names it. */
static void every_tag_is_drawn_or_told(const struct drawn_tag *tags, size_t count)
{
    size_t told = problems_count(test.problems, SEVERITY_ERROR);
    for (size_t m = 0; m < sheet_plan(&card)->marker_count; m++) {
        size_t drawn = 0;
        const char *what =
            text_format(test.arena, "7 FLOODING: no room on the plan for the tag %s in %s",
                        sheet_plan(&card)->markers[m].tag, sheet_plan(&card)->markers[m].zone->key);
        for (size_t i = 0; i < count; i++)
            drawn += strcmp(tags[i].text, sheet_plan(&card)->markers[m].tag) == 0 ? 1 : 0;
        assert_int_equal(drawn + (case_problem(&test, what) != NULL ? 1 : 0), 1);
    }
    assert_int_equal(count + told, sheet_plan(&card)->marker_count);
    assert_int_equal(pen.failed, told > 0);
}

static void tags_stand_apart_and_on_the_boat(void **state)
{
    (void)state;
    static const size_t counts[] = {3, 12, 24, 40};
    const mpt heights[] = {plan_heights().floor, plan_heights().aim, MM(110)};
    for (size_t b = 0; b < 2; b++)
        for (size_t c = 0; c < 4; c++)
            for (size_t h = 0; h < 3; h++) {
                struct drawn_tag tags[MOST_TAGS];
                plan_card_begin(boats[b], markers_of(boats[b], counts[c]), counts[c]);
                plan_place(&pen, paper(heights[h]));
                size_t count = tags_drawn(tags);
                every_tag_is_drawn_or_told(tags, count);
                nothing_overlaps();
                for (size_t i = 0; i < count; i++)
                    if (!on_the_boat(tags[i].box))
                        fail_msg("%s of %s lies beside the boat", tags[i].text, boats[b]);
                if (counts[c] <= 24 && heights[h] >= plan_heights().aim)
                    assert_int_equal(count, counts[c]);
            }
}

static void all_stays_within_the_plan_s_paper(void **state)
{
    (void)state;
    for (size_t b = 0; b < 2; b++) {
        plan_card_begin(boats[b], markers_of(boats[b], 24), 24);
        struct area area = paper(plan_heights().aim);
        plan_place(&pen, area);
        for (size_t i = 0; i < pen.count; i++) {
            struct area item = pen.items[i].area;
            assert_true(item.x >= area.x && item.y >= area.y - MM(0.5));
            assert_true(item.x + item.width <= area.x + area.width + 1);
            assert_true(item.y + item.height <= area.y + area.height + 1);
        }
    }
}

/* A crew looks where the tag is: port tags stay to port, and near their zone. */
static void tags_stay_on_their_side_and_near_their_zone(void **state)
{
    (void)state;
    for (size_t b = 0; b < 2; b++) {
        struct drawn_tag tags[MOST_TAGS];
        plan_card_begin(boats[b], markers_of(boats[b], 12), 12);
        plan_place(&pen, paper(plan_heights().aim));
        size_t count = tags_drawn(tags);
        struct hull_view view = view_drawn();
        for (size_t m = 0; m < 12; m++) {
            const struct marker *marker = &sheet_plan(&card)->markers[m];
            struct point place = middle_of(tag_named(tags, count, marker->tag)->box);
            struct point true_place = hull_point(&view, marker);
            mpt off = place.x - (view.area.x + view.area.width / 2);
            if (marker->side == SIDE_PORT)
                assert_true(off < MM(2));
            if (marker->side == SIDE_STARBOARD)
                assert_true(off > -MM(2));
            assert_in_range(place.y - true_place.y + MM(12), 0, MM(24));
        }
    }
}

static void tags_below_are_round_and_tags_on_deck_are_square(void **state)
{
    (void)state;
    struct drawn_tag tags[MOST_TAGS];
    plan_card_begin(boats[0], markers_of(boats[0], 24), 24);
    plan_place(&pen, paper(plan_heights().aim));
    size_t count = tags_drawn(tags), round = 0;
    for (size_t m = 0; m < 24; m++) {
        bool below = sheet_plan(&card)->markers[m].level == LEVEL_BELOW;
        assert_int_equal(tag_named(tags, count, sheet_plan(&card)->markers[m].tag)->round, below);
        round += below ? 1 : 0;
    }
    assert_in_range(round, 1, 23);
}

/* ---- exact places ---- */

static struct marker exact_marker(const char *tag, int32_t x_mm, int32_t y_mm)
{
    return (struct marker){.tag = tag, .zone = zone_find("saloon"), .level = LEVEL_BELOW,
                           .x_mm = x_mm, .y_mm = y_mm, .exact = true};
}

static void exact_places_are_not_moved(void **state)
{
    (void)state;
    for (size_t b = 0; b < 2; b++) {
        struct drawn_tag tags[MOST_TAGS];
        const struct marker *own = markers_of(boats[b], 24);
        struct marker markers[27];
        memcpy(markers, own, 24 * sizeof *own);       /* the others are found first */
        markers[24] = exact_marker("X1", 6000, -1000);
        markers[25] = exact_marker("X2", 6000, 1000);
        markers[26] = exact_marker("X3", 8500, 0);
        plan_card_begin(boats[b], markers, 27);
        plan_place(&pen, paper(MM(90)));
        size_t count = tags_drawn(tags);
        struct hull_view view = view_drawn();
        nothing_overlaps();
        for (size_t m = 24; m < 27; m++) {
            struct point place = middle_of(tag_named(tags, count, markers[m].tag)->box);
            struct point true_place = hull_point(&view, &markers[m]);
            assert_in_range(place.x - true_place.x + MM(0.1), 0, MM(0.2));
            assert_in_range(place.y - true_place.y + MM(0.1), 0, MM(0.2));
        }
    }
}

static void a_tag_alone_stands_where_it_is(void **state)
{
    (void)state;
    struct drawn_tag tags[MOST_TAGS];
    struct marker marker = {.tag = "C1", .zone = zone_find("galley"), .side = SIDE_STARBOARD,
                            .level = LEVEL_BELOW, .x_mm = 6700, .y_mm = 1100};
    plan_card_begin(boats[0], &marker, 1);
    plan_place(&pen, paper(plan_heights().aim));
    assert_int_equal(tags_drawn(tags), 1);
    struct hull_view view = view_drawn();
    struct point true_place = hull_point(&view, &marker), place = middle_of(tags[0].box);
    assert_in_range(place.x - true_place.x + 3, 0, 6);
    assert_in_range(place.y - true_place.y + 3, 0, 6);
}

/* A stern platform lies behind the hull, but not on the legend. */
static void a_tag_behind_the_stern_lies_on_no_word(void **state)
{
    (void)state;
    for (size_t b = 0; b < 2; b++)
        for (int y = -1; y <= 1; y++) {
            struct drawn_tag tags[MOST_TAGS];
            case_boat(&test, boats[b]);
            int32_t loa = (int32_t)test.boat->facts.loa_m.milli;
            int32_t half = (int32_t)test.boat->facts.beam_m.milli / 2;
            struct marker marker = {.tag = "E7", .zone = zone_find("bathing_platform"),
                                    .x_mm = loa * 203 / 200, .y_mm = y * half * 56 / 100};
            plan_card_begin(boats[b], &marker, 1);
            plan_place(&pen, paper(plan_heights().aim));
            assert_int_equal(tags_drawn(tags), 1);
            nothing_overlaps();
        }
}

static void a_plan_without_tags_still_names_its_zones(void **state)
{
    (void)state;
    struct drawn_tag tags[MOST_TAGS];
    for (size_t b = 0; b < 2; b++) {
        size_t named = 0;
        plan_card_begin(boats[b], NULL, 0);
        plan_place(&pen, paper(plan_heights().aim));
        assert_int_equal(tags_drawn(tags), 0);
        assert_false(pen.failed);
        for (size_t i = 0; i < pen.count; i++)
            for (size_t z = 0; z < sheet_plan(&card)->landmark_count; z++)
                named +=
                    pen.items[i].kind == PAGE_TEXT &&
                            text_equal(pen.items[i].run->text, sheet_plan(&card)->landmarks[z].name)
                        ? 1
                        : 0;
        assert_in_range(named, 2, sheet_plan(&card)->landmark_count);
    }
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(tags_stand_apart_and_on_the_boat),
        TEST(all_stays_within_the_plan_s_paper),
        TEST(tags_stay_on_their_side_and_near_their_zone),
        TEST(tags_below_are_round_and_tags_on_deck_are_square),
        TEST(exact_places_are_not_moved),
        TEST(a_tag_alone_stands_where_it_is),
        TEST(a_tag_behind_the_stern_lies_on_no_word),
        TEST(a_plan_without_tags_still_names_its_zones),
    };
    int failed = cmocka_run_group_tests(tests, NULL, NULL);
    return failed != 0;
}
