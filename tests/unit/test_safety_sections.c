/* test_safety_sections.c - a part of the safety plan that one page does not hold: cut
 * across from the bow aft, every piece of gear on one page of it. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "card_fixture.h"
#include "text.h"

static const struct sheet_set *set;

static void compose(int whole, int deck, int below)
{
    struct set_limits limits = {.plan_pages = {[PLAN_PART_WHOLE] = whole, [PLAN_PART_DECK] = deck,
                                               [PLAN_PART_BELOW] = below}};
    set = case_compose_limited(&test, &limits);
}

static void boat_with(const char *gear)
{
    case_boat(&test, case_boat_text(&test, CASE_RADIO, gear, ""));
}

static size_t plan_count(void)
{
    size_t count = 0;
    while (count < set->count && sheet_block(set->sheets[count], BLOCK_LABELS) != NULL)
        count++;
    return count;
}

/* The number of each page and what of its title stands behind a comma, joined. */
static const char *pages(void)
{
    struct text_builder out = text_builder_in(test.arena);
    for (size_t i = 0; i < plan_count(); i++) {
        const char *title = strchr(sheet_title(set->sheets[i])->title, ',');
        text_add_format(&out, "%s%s%s%s", i == 0 ? "" : "; ", set->sheets[i]->number,
                        set->sheets[i]->page, title == NULL ? "" : title + 1);
    }
    return out.at;
}

static size_t plans_with(const char *tag)
{
    size_t plans = 0;
    for (size_t i = 0; i < plan_count(); i++)
        for (size_t m = 0; m < sheet_plan(set->sheets[i])->marker_count; m++)
            plans += strcmp(sheet_plan(set->sheets[i])->markers[m].tag, tag) == 0 ? 1 : 0;
    return plans;
}

/* From that plan to the next of its part: nothing lies abreast, nothing further forward. */
static void assert_in_order(const struct places_facts *plan, const struct places_facts *next)
{
    int32_t last = plan->places[plan->count - 1].marker.x_mm;
    assert_true(plan->count > 0 && next->count > 0);
    for (size_t p = 0; p < plan->count; p++)
        assert_true(plan->places[p].marker.x_mm <= last);
    for (size_t p = 0; p < next->count; p++)
        assert_true(next->places[p].marker.x_mm > last);
}

static const char *const fleet[] = {"tests/fleet/boats/tamarisk.yaml",
                                    "tests/fleet/boats/samphire.yaml",
                                    "tests/fleet/boats/bramble.yaml"};

static void every_piece_stands_on_one_page_of_its_part(void **state)
{
    (void)state;
    for (size_t b = 0; b < 3; b++)
        for (int most = 2; most <= PLAN_PAGES_MOST; most++) {
            const struct boat *boat = case_boat(&test, fleet[b]);
            compose(0, most, most);
            assert_int_equal(plan_count(), 2 * most);
            for (size_t i = 0; i < boat->equipment_count; i++)
                assert_int_equal(plans_with(boat->equipment[i].tag.text), 1);
            for (size_t i = 0; i + 1 < plan_count(); i++)
                if (sheet_places(set->sheets[i])->part == sheet_places(set->sheets[i + 1])->part)
                    assert_in_order(sheet_places(set->sheets[i]), sheet_places(set->sheets[i + 1]));
        }
}

static void plans_are_numbered_and_name_each_other(void **state)
{
    static const char *const keys[] = {"safety_plan", "safety_plan_2", "safety_plan_3"};
    (void)state;
    case_boat(&test, fleet[0]);
    compose(0, 1, 2);
    assert_string_equal(pages(), "1A ON DECK; 1B BELOW; 1C BELOW");
    for (size_t i = 0; i < 3; i++) {
        assert_string_equal(set->sheets[i]->id, keys[i]);
        assert_non_null(strstr(sheet_signs(set->sheets[i])->signs, "All gear: cards 1A to 1C."));
        assert_string_equal(sheet_footer(set->sheets[i])->code, sheet_footer(set->sheets[0])->code);
        assert_int_equal(sheet_text(set->sheets[i], BLOCK_SOURCES)->text[0] != '\0', i == 2);
    }
    compose(0, 2, 1);
    assert_string_equal(pages(), "1A ON DECK; 1B ON DECK; 1C BELOW");
}

#define TORCH(tag, zone, side) \
    "  - {item: torch, tag: " tag ", zone: " zone ", side: " side ", spot: " tag "}\n"

/* A crew looks for both sides of the saloon on one page. */
static void what_stands_abreast_stays_together(void **state)
{
    (void)state;
    boat_with(TORCH("C1", "navigation_station", "port") TORCH("C2", "navigation_station",
              "starboard") TORCH("C3", "navigation_station", "centre"));
    compose(3, 0, 0);
    assert_string_equal(pages(), "1");
    assert_int_equal(sheet_places(set->sheets[0])->of, 1);
}

static void no_more_pages_than_there_are_stations(void **state)
{
    (void)state;
    boat_with(TORCH("C1", "forward_cabin", "port") TORCH("C2", "forward_cabin", "starboard"));
    compose(4, 0, 0);
    assert_string_equal(pages(), "1A; 1B");
    assert_string_equal(sheet_signs(set->sheets[0])->signs, "All gear: cards 1A to 1B.");
}

/* Even with few lines: they may be long ones. */
static void a_whole_boat_is_first_told_deck_and_below(void **state)
{
    (void)state;
    boat_with(TORCH("C1", "cockpit", "port") TORCH("C2", "saloon", "port"));
    compose(1, 0, 0);
    assert_string_equal(pages(), "1");
    compose(2, 0, 0);
    assert_string_equal(pages(), "1A ON DECK; 1B BELOW");
    assert_non_null(strstr(sheet_signs(set->sheets[0])->signs, "card 1B."));
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(every_piece_stands_on_one_page_of_its_part),
        TEST(plans_are_numbered_and_name_each_other),
        TEST(what_stands_abreast_stays_together),
        TEST(no_more_pages_than_there_are_stations),
        TEST(a_whole_boat_is_first_told_deck_and_below),
    };
    return cmocka_run_group_tests(tests, NULL, NULL) != 0;
}
