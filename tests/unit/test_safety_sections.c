/* test_safety_sections.c - a safety plan that one page does not hold: deck and below apart,
 * and each cut across from the bow aft, every piece of gear on one page of it. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "app_case.h"
#include "card_fixture.h"
#include "layout/pages.h"
#include "text.h"

#define PAGES_MOST 6                  /* of a part */
#define ROWS_MOST 25                  /* of a plan of all */

static struct laying laying;

/* The pages of the boat's safety plan, where each part is to have so many. */
static void split(int whole, int deck, int below)
{
    struct pen pen = {.arena = test.arena};
    laying = (struct laying){
        .whole = case_card(case_compose(&test, false), "safety_plan"),
        .wanted = {[PLAN_PART_WHOLE] = whole, [PLAN_PART_DECK] = deck, [PLAN_PART_BELOW] = below},
        .sheets = arena_array(test.arena, SHEET_PAGES_MOST, sizeof *laying.sheets),
        .templates = arena_array(test.arena, SHEET_PAGES_MOST, sizeof *laying.templates),
        .full = arena_array(test.arena, SHEET_PAGES_MOST, sizeof *laying.full)};
    laying.count = plan_split(&laying, &pen) - seen_page_count(&laying);    /* her pages */
}

static void boat_with(const char *gear)
{
    case_boat(&test, case_boat_text(&test, CASE_RADIO, gear, ""));
}

/* The number of each page and what of its title stands behind a comma, joined. */
static const char *pages(void)
{
    struct text_builder out = text_builder_in(test.arena);
    for (size_t i = 0; i < laying.count; i++) {
        const char *title = strchr(sheet_title(laying.sheets[i])->title, ',');
        text_add_format(&out, "%s%s%s%s", i == 0 ? "" : "; ", laying.sheets[i]->number,
                        laying.sheets[i]->page, title == NULL ? "" : title + 1);
    }
    return out.at;
}

static const char *signs_on(size_t page)
{
    return sheet_signs(laying.sheets[page])->signs;
}

static size_t plans_with(const char *tag)
{
    size_t plans = 0;
    for (size_t i = 0; i < laying.count; i++) {
        const struct places_facts *plan = sheet_places(laying.sheets[i]);
        for (size_t p = 0; p < plan->count; p++)
            for (size_t r = 0; r < plan->places[p].row_count; r++)
                plans += strcmp(plan->places[p].rows[r].marker.tag, tag) == 0 ? 1 : 0;
    }
    return plans;
}

/* From that plan to the next of its part nothing lies farther forward. */
static void assert_in_order(const struct places_facts *plan, const struct places_facts *next)
{
    int32_t last = plan->places[plan->count - 1].marker.x_mm;
    assert_true(plan->count > 0 && next->count > 0);
    for (size_t p = 0; p < plan->count; p++)
        assert_true(plan->places[p].marker.x_mm <= last);
    for (size_t p = 0; p < next->count; p++)
        assert_true(next->places[p].marker.x_mm >= last);
}

static const char *const fleet[] = {"tests/fleet/boats/tamarisk.yaml",
                                    "tests/fleet/boats/samphire.yaml",
                                    "tests/fleet/boats/bramble.yaml"};

static void every_piece_stands_on_one_page_of_its_part(void **state)
{
    (void)state;
    for (size_t b = 0; b < 3; b++)
        for (int most = 2; most <= PAGES_MOST; most++) {
            const struct boat *boat = case_boat(&test, fleet[b]);
            split(0, most, most);
            assert_int_equal(laying.count, 2 * most);
            for (size_t i = 0; i < boat->equipment_count; i++)
                assert_int_equal(plans_with(boat->equipment[i].tag.text), 1);
            for (size_t i = 0; i + 1 < laying.count; i++)
                if (sheet_places(laying.sheets[i])->part ==
                    sheet_places(laying.sheets[i + 1])->part)
                    assert_in_order(sheet_places(laying.sheets[i]),
                                    sheet_places(laying.sheets[i + 1]));
        }
}

static void pages_are_numbered_and_name_each_other(void **state)
{
    static const char *const names[] = {"1A SAFETY PLAN, ON DECK", "1B SAFETY PLAN, BELOW",
                                        "1C SAFETY PLAN, BELOW"};
    (void)state;
    case_boat(&test, fleet[0]);
    split(0, 1, 2);
    assert_string_equal(pages(), "1A ON DECK; 1B BELOW; 1C BELOW");
    for (size_t i = 0; i < 3; i++) {
        assert_string_equal(laying.sheets[i]->name, names[i]);
        assert_string_equal(sheet_title(laying.sheets[i])->number,
                            text_format(test.arena, "Card 1%c", (char)('A' + i)));
        assert_non_null(strstr(signs_on(i), "All gear: cards 1A to 1C."));
        assert_string_equal(sheet_footer(laying.sheets[i])->code, sheet_footer(laying.whole)->code);
        assert_int_equal(sheet_block(laying.sheets[i], BLOCK_SOURCES) != NULL, i == 2);
    }
    split(0, 2, 1);
    assert_string_equal(pages(), "1A ON DECK; 1B ON DECK; 1C BELOW");
}

/* The whole of it is never touched. */
static void the_sheet_itself_is_as_it_was(void **state)
{
    (void)state;
    struct text_builder before = text_builder_in(test.arena), after = text_builder_in(test.arena);
    case_boat(&test, fleet[0]);
    split(0, 1, 1);
    sheet_dump(case_card(case_compose(&test, false), "safety_plan"), &before);
    sheet_dump(laying.whole, &after);
    assert_string_equal(before.at, after.at);
    assert_string_equal(laying.whole->page, "");
}

/* The parts of her length that pages show follow each other without a gap. */
static void pages_show_all_of_her_length(void **state)
{
    (void)state;
    for (size_t b = 0; b < 3; b++)
        for (int most = 1; most <= PAGES_MOST; most++) {
            case_boat(&test, fleet[b]);
            split(0, most, most);
            for (size_t i = 0; i < laying.count; i++) {
                const struct places_facts *plan = sheet_places(laying.sheets[i]);
                bool first = i % (size_t)most == 0, last = (i + 1) % (size_t)most == 0;
                assert_true(plan->from < plan->to);
                assert_int_equal(plan->from == 0, first);
                assert_int_equal(plan->to == 1000, last);
                if (!last)
                    assert_int_equal(plan->to, sheet_places(laying.sheets[i + 1])->from);
            }
        }
}

/* Of each part the page that has its zone; the boat hangs one card, who reads it is there. */
static void where_the_cards_hang_is_on_each_part(void **state)
{
    (void)state;
    case_boat(&test, fleet[0]);
    split(0, 2, 2);
    size_t parts[PLAN_PART_COUNT] = {0};
    for (size_t i = 0; i < laying.count; i++) {
        const struct places_facts *plan = sheet_places(laying.sheets[i]);
        for (size_t p = 0; p < plan->count; p++)
            parts[plan->part] += plan->places[p].rows[0].kind == NULL ? 1 : 0;
    }
    assert_int_equal(parts[PLAN_PART_DECK], 1);
    assert_int_equal(parts[PLAN_PART_BELOW], 1);
}

#define TORCH(tag, zone, side) \
    "  - {item: torch, tag: " tag ", zone: " zone ", side: " side ", spot: " tag "}\n"

/* A crew looks for both sides of the saloon on one page. */
static void what_stands_abreast_stays_together(void **state)
{
    (void)state;
    boat_with(TORCH("C1", "navigation_station", "port") TORCH("C2", "navigation_station",
              "starboard") TORCH("C3", "navigation_station", "centre"));
    split(3, 0, 0);
    assert_string_equal(pages(), "1");
    assert_int_equal(laying.cut[PLAN_PART_WHOLE], 1);
}

static void no_more_pages_than_there_are_stations(void **state)
{
    (void)state;
    boat_with(TORCH("C1", "forward_cabin", "port") TORCH("C2", "forward_cabin", "starboard"));
    split(4, 0, 0);
    assert_string_equal(pages(), "1A; 1B");
    assert_string_equal(signs_on(0), "All gear: cards 1A to 1B.");
}

/* Even with few lines: they may be long ones. */
static void a_whole_boat_is_first_told_deck_and_below(void **state)
{
    (void)state;
    boat_with(TORCH("C1", "cockpit", "port") TORCH("C2", "saloon", "port"));
    split(1, 0, 0);
    assert_string_equal(pages(), "1");
    assert_string_equal(signs_on(0), sheet_signs(laying.whole)->signs);
    split(2, 0, 0);
    assert_string_equal(pages(), "1A ON DECK; 1B BELOW");
    assert_non_null(strstr(signs_on(0), "card 1B."));
}

/* A full page has one more of its part, until it has as many as it may; where it cannot be cut,
 * zones are parted. */
static void full_pages_make_more(void **state)
{
    (void)state;
    case_boat(&test, fleet[0]);
    split(0, 0, 0);
    assert_int_equal(laying.count, 2);
    laying.full[1] = true;
    assert_true(plan_lessen(&laying));
    assert_int_equal(laying.wanted[PLAN_PART_DECK], 0);
    assert_int_equal(laying.wanted[PLAN_PART_BELOW], 2);
    laying.cut[PLAN_PART_BELOW] = PAGES_MOST;
    assert_false(plan_lessen(&laying));
    laying.cut[PLAN_PART_BELOW] = 1;               /* it was to have two */
    assert_true(plan_lessen(&laying));
    assert_int_equal(laying.wanted[PLAN_PART_BELOW], 2);
    assert_int_equal(laying.parted[PLAN_PART_BELOW], 1);
    laying.parted[PLAN_PART_BELOW] = 3;
    assert_false(plan_lessen(&laying));
}

/* Half of what is to port with half of what is to starboard. */
static void a_zone_that_no_page_holds_is_parted(void **state)
{
    struct text_builder gear = text_builder_in(test.arena);
    (void)state;
    for (size_t i = 1; i <= 30; i++)
        text_add_format(&gear, "  - {item: torch, tag: C%zu, zone: saloon, side: %s, "
                        "spot: hook %zu}\n", i, i % 2 == 0 ? "port" : "starboard", i);
    case_base(&test, text_format(test.arena, "%s" CORE_ALONE,
                                 case_file_content(test.arena, "tests/fleet/base.yaml")));
    boat_with(gear.at);
    split(2, 0, 0);
    size_t whole = sheet_places(laying.sheets[0])->places[0].row_count;
    assert_int_equal(whole, 15);
    struct pen pen = {.arena = test.arena};
    laying.parted[PLAN_PART_WHOLE] = 1;
    laying.count = plan_split(&laying, &pen) - seen_page_count(&laying);
    assert_int_equal(laying.count, 2);
    for (size_t i = 0; i < 2; i++) {
        const struct places_facts *plan = sheet_places(laying.sheets[i]);
        assert_string_equal(plan->places[0].title, "Saloon, PORT");
        assert_string_equal(plan->places[1].title, "Saloon, STARBOARD");
        assert_in_range(plan->places[0].row_count, 7, 8);
    }
    for (size_t i = 1; i <= 30; i++)
        assert_int_equal(plans_with(text_format(test.arena, "C%zu", i)), 1);
}

/* ---- one plan or two ---- */

static const char *many(size_t deck, size_t below)
{
    struct text_builder gear = text_builder_in(test.arena);
    for (size_t i = 0; i < deck + below; i++)
        text_add_format(&gear, "  - {item: torch, tag: C%zu, zone: %s, spot: hook %zu}\n", i + 1,
                        i < deck ? "cockpit" : "saloon", i + 1);
    return gear.at;
}

static size_t plans_of(size_t deck, size_t below)
{
    boat_with(many(deck, below));
    split(0, 0, 0);
    return laying.count;
}

static void much_gear_has_a_plan_of_the_deck_and_one_of_below(void **state)
{
    (void)state;
    assert_int_equal(plans_of(3, 3), 1);
    assert_int_equal(plans_of(12, ROWS_MOST - 12 - 1), 1);   /* the radio is one */
    assert_int_equal(plans_of(12, ROWS_MOST - 12), 2);
    const struct sheet *deck = laying.sheets[0], *below = laying.sheets[1];
    assert_string_equal(sheet_title(deck)->title, "SAFETY PLAN, ON DECK");
    assert_string_equal(sheet_title(below)->title, "SAFETY PLAN, BELOW");
    assert_non_null(strstr(sheet_signs(deck)->signs, "card 1B."));
    assert_non_null(strstr(sheet_signs(below)->signs, "card 1A."));
    for (size_t i = 0; i < sheet_places(deck)->count; i++)
        assert_int_equal(sheet_places(deck)->places[i].marker.level, LEVEL_DECK);
    for (size_t i = 0; i < sheet_places(below)->count; i++)
        assert_int_equal(sheet_places(below)->places[i].marker.level, LEVEL_BELOW);
    assert_non_null(strstr(sheet_text(below, BLOCK_SOURCES)->text, "**MNZ handbook**"));
}

/* A plan of nothing would only be paper. */
static void all_gear_on_one_level_is_one_plan(void **state)
{
    (void)state;
    assert_int_equal(plans_of(0, 30), 1);
    assert_string_equal(sheet_title(laying.sheets[0])->title, "SAFETY PLAN");
}

/* ---- the index of cards ---- */

/* Behind her pages, and on none of them; where it is full it has one more. */
static void the_index_of_cards_has_pages_of_its_own(void **state)
{
    (void)state;
    case_boat(&test, fleet[0]);
    split(0, 0, 0);
    for (size_t i = 0; i < laying.count; i++)
        assert_null(sheet_block(laying.sheets[i], BLOCK_SEEN));
    const struct sheet *seen = laying.sheets[laying.count];
    assert_int_equal(laying.templates[laying.count], TEMPLATE_INDEX);
    assert_string_equal(sheet_title(seen)->title, "SAFETY PLAN, CARDS");
    assert_string_equal(sheet_title(seen)->number, "Card 1C");
    assert_null(sheet_block(seen, BLOCK_LABELS));
    assert_null(sheet_block(seen, BLOCK_PLAN));
    laying.count++;
    laying.full[2] = true;
    assert_true(plan_lessen(&laying));
    assert_int_equal(laying.wanted[PLAN_PAGE_SEEN], 2);
    assert_int_equal(laying.wanted[PLAN_PART_WHOLE], 0);
}

static size_t seen_lines_on(const struct sheet *sheet)
{
    size_t lines = 0;
    for (size_t i = 0; i < sheet_seen(sheet)->count; i++)
        lines += sheet_seen(sheet)->groups[i].count;
    return lines;
}

/* Each line is on one page, under the head of its group; no head stands alone. */
static void the_index_of_cards_is_cut_between_lines(void **state)
{
    struct pen pen = {.arena = test.arena};
    (void)state;
    case_boat(&test, fleet[0]);
    split(0, 0, 0);
    size_t lines = seen_lines_on(laying.sheets[laying.count]);
    for (int pages = 2; pages <= 4; pages++) {
        laying.wanted[PLAN_PAGE_SEEN] = pages;
        size_t all = plan_split(&laying, &pen), found = 0;
        assert_int_equal(all, laying.count + (size_t)pages);
        for (size_t i = laying.count; i < all; i++) {
            const struct seen_facts *seen = sheet_seen(laying.sheets[i]);
            found += seen_lines_on(laying.sheets[i]);
            for (size_t g = 0; g < seen->count; g++)
                assert_true(seen->groups[g].count > 0);
        }
        assert_int_equal(found, lines);
    }
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(every_piece_stands_on_one_page_of_its_part),
        TEST(pages_are_numbered_and_name_each_other),
        TEST(the_sheet_itself_is_as_it_was),
        TEST(pages_show_all_of_her_length),
        TEST(where_the_cards_hang_is_on_each_part),
        TEST(what_stands_abreast_stays_together),
        TEST(no_more_pages_than_there_are_stations),
        TEST(a_whole_boat_is_first_told_deck_and_below),
        TEST(full_pages_make_more),
        TEST(a_zone_that_no_page_holds_is_parted),
        TEST(much_gear_has_a_plan_of_the_deck_and_one_of_below),
        TEST(all_gear_on_one_level_is_one_plan),
        TEST(the_index_of_cards_has_pages_of_its_own),
        TEST(the_index_of_cards_is_cut_between_lines),
    };
    return cmocka_run_group_tests(tests, NULL, NULL) != 0;
}
