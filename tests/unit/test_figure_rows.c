/* test_figure_rows.c - figures on the cards: only those that may be printed, under
 * the step they serve, within the budget, and gone with their inputs. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "card_fixture.h"
#include "figure.h"
#include "source.h"
#include "text.h"

static const char *const fleet[] = {
    "tests/fleet/boats/tamarisk.yaml", "tests/fleet/boats/samphire.yaml",
    "tests/fleet/boats/bramble.yaml"};
#define TAMARISK (fleet[0])

static struct compose_input input_of(void)
{
    return (struct compose_input){test.boat, test.base, &test.procedures, test.authorities,
                                  test.words, {0}, test.today, false, NULL};
}

static const char *dump_of(const struct sheet *card)
{
    struct text_builder out = text_builder_in(test.arena);
    sheet_dump(card, &out);
    return out.at;
}

static struct figure_result result_of(const struct figure *figure)
{
    struct figure_record record = {test.boat, test.base};
    return figure_evaluate(figure, &record, test.arena);
}

/* ---- what stands on cards ---- */

static void figures_must_be_printable(const struct sheet *card)
{
    for (size_t i = 0; i < sheet_steps(card)->figure_count; i++) {
        const struct figure *figure = figure_find(sheet_steps(card)->figures[i].id);
        assert_non_null(figure);
        if (!figure_may_be_printed(figure))
            fail_msg("%s: %s is %c", card->id, figure->id, (char)figure->verdict);
        if (strstr(dump_of(card), sheet_steps(card)->figures[i].text) == NULL)
            fail_msg("%s: %s does not stand there", card->id, sheet_steps(card)->figures[i].text);
    }
}

/* No words of a figure that is only for the office stand anywhere on it. */
static size_t office_words_must_be_absent(const struct sheet *card)
{
    const struct figure *figure;
    size_t looked_for = 0;
    for (size_t i = 0; (figure = figure_at(i)) != NULL; i++) {
        struct figure_result result = result_of(figure);
        if (figure_may_be_printed(figure) || result.status != FIGURE_VALUE)
            continue;
        if (strstr(dump_of(card), result.after) != NULL ||
            strstr(dump_of(card), result.before) != NULL)
            fail_msg("%s says %s: %s", card->id, figure->id, result.after);
        looked_for++;
    }
    return looked_for;
}

static void no_card_of_the_fleet_shows_what_may_not_be_printed(void **state)
{
    size_t figures = 0, looked_for = 0;
    (void)state;
    for (size_t b = 0; b < sizeof fleet / sizeof *fleet; b++) {
        case_boat(&test, fleet[b]);
        const struct sheet_set *set = case_compose(&test, false);
        assert_true(set->count >= 9);
        for (size_t i = 0; i < set->count; i++) {
            figures_must_be_printable(set->sheets[i]);
            looked_for += office_words_must_be_absent(set->sheets[i]);
            figures += sheet_steps(set->sheets[i])->figure_count;
        }
    }
    assert_true(figures >= 10);
    assert_true(looked_for >= 40);
}

static void each_stands_under_the_step_it_serves(void **state)
{
    static const struct { const char *card, *step, *text; } rows[] = {
        {"flooding", "find", "**Most water (estimated):** C13, C15, C17 (bung 38 mm), shaft seal."},
        {"man_overboard", "stop", "**At 6 knots:** 31 metres in 10 seconds."},
        {"gas_leak", "bottle",
         "**One full bottle:** more than a boat-full of explosive air (estimated)."},
        {"abandon_ship", "tie", "**Raft places: 8.** Most people aboard: 8."}};
    (void)state;
    case_boat(&test, TAMARISK);
    const struct sheet_set *set = case_compose(&test, false);
    for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
        const struct card_step *step = case_step(case_card(set, rows[i].card), rows[i].step);
        assert_true(step->figure_count > 0);
        assert_string_equal(step->figures[0].text, rows[i].text);
    }
}

/* What is not named among the openings that beat the pumps would seem safe. */
static void whether_the_pumps_win_stands_on_no_card(void **state)
{
    (void)state;
    case_boat(&test, TAMARISK);
    const struct sheet_set *set = case_compose(&test, false);
    for (size_t i = 0; i < set->count; i++)
        assert_null(strstr(dump_of(set->sheets[i]), "Pumps lose"));
}

/* A crew that believes a line of sight leaves the beacon off. */
static void ranges_stand_on_no_card(void **state)
{
    (void)state;
    case_boat(&test, TAMARISK);
    const struct sheet_set *set = case_compose(&test, false);
    for (size_t i = 0; i < set->count; i++)
        assert_null(strstr(dump_of(set->sheets[i]), "miles"));
    assert_int_equal(sheet_steps(case_card(set, "distress_call"))->figure_count, 0);
}

static void an_extinguisher_s_row_says_when_it_is_empty(void **state)
{
    (void)state;
    case_boat(&test, TAMARISK);
    const struct sheet *card = case_card(case_compose(&test, false), "engine_fire");
    assert_string_equal(case_step(card, "discharge")->rows[0].items[0].name,
                        "Engine extinguisher, lasts 9 s");
}

/* ---- without an input ---- */

/* The specimen boat's file with one piece of text replaced. */
static const char *tamarisk_with(const char *piece, const char *instead)
{
    struct source *source = NULL;
    struct text_builder text = text_builder_in(test.arena);
    assert_int_equal(source_read(test.arena, TAMARISK, (size_t)256 * 1024, &source), SOURCE_READ);
    const char *at = strstr(source->bytes, piece);
    if (at == NULL)
        fail_msg("%s is not in her file", piece);
    text_add_bytes(&text, source->bytes, (size_t)(at - source->bytes));
    text_add(&text, instead);
    text_add(&text, at + strlen(piece));
    return text.at;
}

static bool has_figure(const struct sheet_set *set, const char *card_key, const char *id)
{
    const struct sheet *card = case_card(set, card_key);
    for (size_t i = 0; i < sheet_steps(card)->figure_count; i++)
        if (text_equal(sheet_steps(card)->figures[i].id, id))
            return true;
    return false;
}

/* The set, with the notes of its figures among the problems. */
static const struct sheet_set *composed_and_noted(void)
{
    const struct sheet_set *set = case_compose(&test, false);
    struct compose_input input = input_of();
    figure_notes(&input, set, test.arena, test.problems);
    return set;
}

static const struct { const char *piece, *instead, *card, *id, *note; } missing[] = {
    {"name: intake, bore_mm: 38, ", "name: intake, ", "flooding", "worst_openings",
     "bore_mm of seacock C15 is not recorded: the figures worst_openings, floor_wet, "
     "largest_hole wait for it"},
    {"name: intake, bore_mm: 38, depth_m: 0.45", "name: intake, bore_mm: 38", "flooding",
     "worst_openings",
     "depth_m of seacock C15 is not recorded: the figures worst_openings, floor_wet, "
     "largest_hole wait for it"},
    {", rated_lph: 12000", "", "flooding", "floor_wet",
     "rated_lph of bilge_pump_electric C9 is not recorded: the figures floor_wet, "
     "pump_rate, largest_hole wait for it"},
    {", stroke_l: 0.8", "", "flooding", "floor_wet",
     "stroke_l of bilge_pump_manual C10 is not recorded: the figures floor_wet, "
     "hand_pump, pump_rate, largest_hole wait for it"},
    {"  usual_kn: 6\n", "", "man_overboard", "distance_run",
     "usual_kn of boat is not recorded: the figure distance_run waits for it"},
    {"  cabin_m3: 32\n", "", "gas_leak", "boat_fulls",
     "cabin_m3 of boat is not recorded: the figure boat_fulls waits for it"},
    {", gas: butane", "", "gas_leak", "boat_fulls",
     "gas of lpg_bottle_valve C8 is not recorded: the figure boat_fulls waits for it"},
    {", persons: 8, painter", ", painter", "abandon_ship", "raft_places",
     "persons of liferaft E2 is not recorded: the figure raft_places waits for it"}};

static void the_figure_goes_and_a_note_comes(void **state)
{
    (void)state;
    for (size_t i = 0; i < sizeof missing / sizeof *missing; i++) {
        case_boat(&test, TAMARISK);
        const struct sheet_set *whole = composed_and_noted();
        assert_true(has_figure(whole, missing[i].card, missing[i].id));
        assert_null(case_problem(&test, missing[i].note));
        case_boat(&test, tamarisk_with(missing[i].piece, missing[i].instead));
        const struct sheet_set *set = composed_and_noted();
        if (has_figure(set, missing[i].card, missing[i].id))
            fail_msg("%s stands without %s", missing[i].id, missing[i].piece);
        const struct problem *problem = case_problem(&test, missing[i].note);
        if (problem == NULL)
            fail_msg("not told: %s\n%s", missing[i].note, case_problems_text(&test));
        assert_int_equal(problem->severity, SEVERITY_NOTE);
        assert_true(problem->place.line > 1);
        assert_non_null(strstr(problem->remedy, "then record "));
        /* a figure never decides whether a card is whole */
        assert_int_equal(set->held, 0);
        assert_int_equal(sheet_steps(case_card(set, missing[i].card))->count,
                         sheet_steps(case_card(whole, missing[i].card))->count);
    }
}

static void an_extinguisher_without_its_seconds_says_its_weight(void **state)
{
    (void)state;
    case_boat(&test, tamarisk_with("rating: en 34B, discharge_s: 9, ", "rating: en 34B, "));
    const struct sheet *card = case_card(case_compose(&test, false), "engine_fire");
    assert_string_equal(case_step(card, "discharge")->rows[0].items[0].name,
                        "Engine extinguisher, 2 kg");
}

/* ---- room ---- */

/* Where to look first, the minutes last: the last is the first to yield. */
static void the_minutes_yield_first(void **state)
{
    static const char *const order[] = {"worst_openings", "floor_wet"};
    (void)state;
    case_boat(&test, TAMARISK);
    const struct steps_facts *steps = sheet_steps(case_card(case_compose(&test, false),
                                                            "flooding"));
    assert_int_equal(steps->figure_count, 2);
    for (size_t i = 0; i < 2; i++) {
        assert_string_equal(steps->figures[i].id, order[i]);
        assert_int_equal(steps->figures[i].yields, YIELDS_FIGURE + (int)i);
    }
    assert_string_equal(steps->figures[1].text,
                        "**Floor wet in under 3 minutes,** worst one open (estimated).");
    assert_string_equal(steps->figures[1].step, "find");
    /* a larger bilge takes over 15 minutes: nothing is said */
    case_boat(&test, tamarisk_with("bilge_to_sole_l: 700", "bilge_to_sole_l: 9000"));
    assert_false(has_figure(composed_and_noted(), "flooding", "floor_wet"));
}

/* How long it lasts yields to its weight, which stands. */
static void the_seconds_yield_to_the_weight(void **state)
{
    (void)state;
    case_boat(&test, TAMARISK);
    const struct sheet *card = case_card(case_compose(&test, false), "engine_fire");
    const struct row_item *item = &case_step(card, "discharge")->rows[0].items[0];
    assert_string_equal(item->name, "Engine extinguisher, lasts 9 s");
    assert_string_equal(item->lesser, "Engine extinguisher, 2 kg");
    assert_int_equal(item->yields, YIELDS_SECONDS);
    assert_int_equal(case_step(card, "stop")->rows[0].items[0].yields, YIELDS_NEVER);
}

static void the_check_code_tells_a_changed_figure(void **state)
{
    (void)state;
    case_boat(&test, TAMARISK);
    const char *six = sheet_footer(case_card(case_compose(&test, false), "man_overboard"))->code;
    case_boat(&test, tamarisk_with("usual_kn: 6", "usual_kn: 7"));
    assert_string_not_equal(
        six, sheet_footer(case_card(case_compose(&test, false), "man_overboard"))->code);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(no_card_of_the_fleet_shows_what_may_not_be_printed, set_up,
                                        tear_down),
        cmocka_unit_test_setup_teardown(each_stands_under_the_step_it_serves, set_up, tear_down),
        cmocka_unit_test_setup_teardown(whether_the_pumps_win_stands_on_no_card, set_up, tear_down),
        cmocka_unit_test_setup_teardown(ranges_stand_on_no_card, set_up, tear_down),
        cmocka_unit_test_setup_teardown(an_extinguisher_s_row_says_when_it_is_empty, set_up,
                                        tear_down),
        cmocka_unit_test_setup_teardown(the_figure_goes_and_a_note_comes, set_up, tear_down),
        cmocka_unit_test_setup_teardown(an_extinguisher_without_its_seconds_says_its_weight,
                                        set_up, tear_down),
        cmocka_unit_test_setup_teardown(the_minutes_yield_first, set_up, tear_down),
        cmocka_unit_test_setup_teardown(the_seconds_yield_to_the_weight, set_up, tear_down),
        cmocka_unit_test_setup_teardown(the_check_code_tells_a_changed_figure, set_up, tear_down),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
