/* test_figure.c - the table of figures: verdicts are law, each figure of a record
 * comes with what it read, and a missing input makes it go. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "card_fixture.h"
#include "figure.h"
#include "text.h"

#define PUMPS \
    "  - {item: bilge_pump_electric, tag: C9, zone: saloon, rated_lph: 12000}\n" \
    "  - {item: bilge_pump_manual, tag: C10, zone: cockpit, stroke_l: 0.8}\n"
#define INTAKE \
    "  - {item: seacock, tag: C1, zone: saloon, bore_mm: 38, depth_m: 0.45, bung_mm: 38}\n"
#define SINK \
    "  - {item: seacock, tag: C2, zone: galley, side: port, bore_mm: 25, depth_m: 0.20, " \
    "bung_mm: 25}\n"
#define DRAIN \
    "  - {item: seacock, tag: C3, zone: lazarette, bore_mm: 32, depth_m: 0.40, bung_mm: 32}\n"

static const char *boat_text(const char *type, const char *facts, const char *gear,
                             const char *not_fitted)
{
    return text_format(test.arena,
                       "boat: {name: Tamarisk, specimen: yes, hull: %s, rig: sail, loa_m: 12, "
                       "beam_m: 4, persons_max: 8%s}\n" CASE_RADIO
                       "  antenna_m: 18\nequipment:\n%s%s%s",
                       type, facts, gear, not_fitted[0] == '\0' ? "" : "not_fitted:\n",
                       not_fitted);
}

static struct figure_result of(const char *id)
{
    struct figure_record record = {test.boat, test.base};
    assert_non_null(figure_find(id));
    return figure_evaluate(figure_find(id), &record, test.arena);
}

static struct figure_result of_boat(const char *id, const char *facts, const char *gear)
{
    case_boat(&test, boat_text("monohull", facts, gear, ""));
    return of(id);
}

/* ---- the table ---- */

/* The verdicts: nothing else may come near a card. */
static void the_verdicts_are_these(void **state)
{
    static const struct { const char *id; char verdict; } rows[] = {
        {"inflow", 'A'}, {"worst_openings", 'A'}, {"beat_pumps", 'A'}, {"pumps_cope", 'N'},
        {"floor_wet", 'A'}, {"time_to_sinking", 'N'}, {"distance_run", 'F'},
        {"head_hidden", 'A'}, {"separation", 'A'}, {"manoeuvre_time", 'B'},
        {"survival_hours", 'N'}, {"discharge", 'A'}, {"agent_mass", 'B'}, {"gas_volume", 'A'},
        {"boat_fulls", 'A'}, {"gas_limit", 'A'}, {"detector_grams", 'N'}, {"fuel_range", 'B'},
        {"run_on", 'N'}, {"slick_area", 'B'}, {"raft_places", 'F'}, {"radio_range", 'A'},
        {"handheld_range", 'A'}, {"pump_rate", 'B'}, {"hand_pump", 'A'}, {"largest_hole", 'B'},
        {"sinkage", 'B'}, {"us_outfit", 'B'}, {"shelters", 'A'}};
    (void)state;
    assert_int_equal(figure_count(), sizeof rows / sizeof *rows);
    for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
        const struct figure *figure = figure_find(rows[i].id);
        if (figure == NULL || (char)figure->verdict != rows[i].verdict)
            fail_msg("%s: not in the table as %c", rows[i].id, rows[i].verdict);
    }
    assert_null(figure_find("frobnicate"));
    assert_null(figure_at(figure_count()));
}

static void only_facts_and_estimates_have_a_place_on_a_card(void **state)
{
    const struct figure *figure;
    (void)state;
    for (size_t i = 0; (figure = figure_at(i)) != NULL; i++) {
        bool placed = figure->procedure != NULL || figure->in_rows;
        assert_int_equal(figure_may_be_printed(figure),
                         figure->verdict == FIGURE_FACT || figure->verdict == FIGURE_ESTIMATE);
        if (placed)
            assert_true(figure_may_be_printed(figure));
        /* what is on no card says why; what is on one has a reason to be computed */
        assert_int_equal(placed, figure->why_not == NULL);
        if (placed)
            assert_non_null(figure->evaluate);
        if (figure->verdict == FIGURE_NEVER)
            assert_null(figure->evaluate);
        /* what is computed for the base alone, `check` tells */
        if (figure->verdict == FIGURE_OFFICE)
            assert_int_equal(figure->in_check, figure->evaluate != NULL);
        if (figure->in_check)
            assert_false(placed);
        assert_ptr_equal(figure_find(figure->id), figure);
        assert_true(strlen(figure->title) > 0 && strlen(figure->formula) > 0);
        /* whose numbers, in words of their own: no section of a text that is not here */
        assert_true(strlen(figure->source) > 0 && strncmp(figure->source, "section", 7) != 0);
    }
}

static void a_place_is_a_step_of_that_procedure(void **state)
{
    const struct figure *figure;
    (void)state;
    for (size_t i = 0; (figure = figure_at(i)) != NULL; i++) {
        bool found = figure->procedure == NULL || figure->step == NULL;
        for (size_t p = 0; p < test.procedures.count; p++) {
            const struct procedure *procedure = test.procedures.rows[p];
            for (size_t s = 0; s < procedure->step_count; s++)
                found = found || (text_equal(procedure->key.text, figure->procedure) &&
                                  text_equal(procedure->steps[s].id.text, figure->step));
        }
        if (!found)
            fail_msg("%s: no step %s in %s", figure->id, figure->step, figure->procedure);
    }
}

/* Every B and N figure that has a result gives a card no words. */
static void what_may_not_be_printed_has_no_sentence(void **state)
{
    const struct figure *figure;
    size_t computed = 0;
    (void)state;
    case_boat(&test, "tests/fleet/boats/tamarisk.yaml");
    for (size_t i = 0; (figure = figure_at(i)) != NULL; i++) {
        struct figure_result result = of(figure->id);
        if (figure_may_be_printed(figure))
            continue;
        assert_null(result.sentence);
        computed += result.status == FIGURE_VALUE && result.after != NULL ? 1 : 0;
    }
    assert_true(computed >= 4);
}

/* ---- openings and pumps ---- */

static void openings_that_beat_the_pumps_are_named(void **state)
{
    (void)state;
    /* 100 + 19.2 L/min: intake 162, drain 108, sink 47 */
    struct figure_result result = of_boat("beat_pumps", "", PUMPS INTAKE SINK DRAIN);
    assert_int_equal(result.status, FIGURE_VALUE);
    assert_string_equal(case_said(&test, result.sentence),
                        "**Pumps lose to** C1, maybe C3 (estimated).");
    assert_string_equal(result.after, "more than the pumps move: C1; half of it or more: C3");
    assert_int_equal(result.input_count, 8);
    assert_string_equal(result.inputs[0].what, "seacock C1 bore_mm");
    assert_string_equal(result.inputs[0].value, "38");
    assert_int_equal(result.inputs[0].place.line, test.boat->equipment[2].bore_mm.place.line);
}

static void where_all_may_beat_them_no_tag_is_named(void **state)
{
    (void)state;
    struct figure_result result = of_boat("beat_pumps", "", PUMPS INTAKE DRAIN);
    assert_string_equal(case_said(&test, result.sentence),
                        "**Pumps can lose to any one open** (estimated).");
}

/* Nothing may be said that reassures. */
static void what_the_pumps_can_do_is_never_said(void **state)
{
    (void)state;
    struct figure_result result = of_boat(
        "beat_pumps", "", "  - {item: bilge_pump_electric, tag: C9, zone: saloon, "
        "measured_lpm: 400}\n  - {item: bilge_pump_manual, tag: C10, zone: cockpit, "
        "stroke_l: 0.8}\n" INTAKE SINK);
    assert_int_equal(result.status, FIGURE_NOT_APPLICABLE);
    assert_null(result.sentence);
    assert_non_null(strstr(result.reason, "reassure"));
}

static void without_pumps_there_is_nothing_to_lose_to(void **state)
{
    (void)state;
    case_boat(&test, boat_text("monohull", "", INTAKE,
                               "  - bilge_pump_electric\n  - bilge_pump_manual\n"));
    assert_int_equal(of("beat_pumps").status, FIGURE_NOT_APPLICABLE);
    assert_int_equal(of("pump_rate").status, FIGURE_NOT_APPLICABLE);
    case_boat(&test, boat_text("monohull", "", INTAKE, ""));
    assert_string_equal(of("beat_pumps").reason, "whether she has pumps is not recorded");
}

static void all_pumps_of_a_monohull_count(void **state)
{
    (void)state;
    case_boat(&test, boat_text("monohull", "", PUMPS INTAKE SINK, ""));
    assert_string_equal(of("pump_rate").before, "all pumps: 119.2 L/min");
    assert_string_equal(of("pump_rate").after, "all pumps: 110 L/min");
}

static void a_measurement_comes_before_the_label(void **state)
{
    (void)state;
    struct figure_result result = of_boat(
        "pump_rate", "", "  - {item: bilge_pump_electric, tag: C9, zone: saloon, count: 2, "
        "rated_lph: 12000, measured_lpm: 42.5}\n"
        "  - {item: bilge_pump_manual, tag: C10, zone: cockpit, measured_lpm: 13}\n");
    assert_string_equal(result.before, "all pumps: 98 L/min");
}

/* 38/0.45 162, 32/0.40 108: within the spread of Cd, so equal; 25/0.20 is not. */
static void the_worst_openings_stand_as_equals_with_their_bungs(void **state)
{
    (void)state;
    struct figure_result result = of_boat("worst_openings", "", DRAIN SINK INTAKE);
    assert_string_equal(result.before, "C1 = C3, then C2");
    assert_string_equal(case_said(&test, result.sentence),
                        "**Most water (estimated):** C3 (bung 32 mm), C1 (bung 38 mm).");
}

static void a_bung_is_missed_of_the_worst_only(void **state)
{
    static const char bare_sink[] =
        "  - {item: seacock, tag: C2, zone: galley, side: port, bore_mm: 25, depth_m: 0.20}\n";
    static const char bare_drain[] =
        "  - {item: seacock, tag: C3, zone: lazarette, bore_mm: 32, depth_m: 0.40}\n";
    (void)state;
    assert_int_equal(of_boat("worst_openings", "",
                             text_format(test.arena, "%s%s", INTAKE, bare_sink)).status,
                     FIGURE_VALUE);
    struct figure_result result = of_boat("worst_openings", "",
                                          text_format(test.arena, "%s%s", INTAKE, bare_drain));
    assert_int_equal(result.status, FIGURE_INPUT_MISSING);
    assert_int_equal(result.lack_count, 1);
    assert_string_equal(result.lacks[0].owner, "seacock C3");
    assert_string_equal(result.lacks[0].field, "bung_mm");
}

static void a_missing_bore_makes_the_figure_go(void **state)
{
    static const char *const ids[] = {"beat_pumps", "worst_openings", "floor_wet", "inflow"};
    (void)state;
    case_boat(&test, boat_text("monohull", ", bilge_to_sole_l: 700", PUMPS SINK
                               "  - {item: seacock, tag: C1, zone: saloon, depth_m: 0.45}\n", ""));
    for (size_t i = 0; i < sizeof ids / sizeof *ids; i++) {
        struct figure_result result = of(ids[i]);
        assert_int_equal(result.status, FIGURE_INPUT_MISSING);
        assert_null(result.sentence);
        assert_null(result.after);
        assert_string_equal(result.lacks[0].owner, "seacock C1");
        assert_string_equal(result.lacks[0].field, "bore_mm");
        assert_string_equal(result.lacks[0].about, "bore of the opening");
        assert_int_equal(result.lacks[0].place.line, test.boat->equipment[3].place.line);
    }
}

static void a_missing_pump_rating_makes_the_figure_go(void **state)
{
    (void)state;
    struct figure_result result = of_boat(
        "beat_pumps", "", "  - {item: bilge_pump_electric, tag: C9, zone: saloon}\n"
        "  - {item: bilge_pump_manual, tag: C10, zone: cockpit, stroke_l: 0.8}\n" INTAKE);
    assert_int_equal(result.status, FIGURE_INPUT_MISSING);
    assert_string_equal(result.lacks[0].owner, "bilge_pump_electric C9");
    assert_string_equal(result.lacks[0].field, "rated_lph");
}

static void the_floor_is_wet_sooner_than_it_computes(void **state)
{
    (void)state;
    struct figure_result result = of_boat("floor_wet", ", bilge_to_sole_l: 700", PUMPS INTAKE);
    assert_string_equal(result.before, "16.461 min with the inflow as it is");
    assert_string_equal(result.after, "under 3 min with twice the inflow");
    assert_string_equal(case_said(&test, result.sentence),
                        "**Floor wet in under 3 minutes,** worst one open (estimated).");
    /* with her waterplane she settles, and the hole goes deeper */
    result = of_boat("floor_wet", ", bilge_to_sole_l: 700, lwl_m: 11.2, bwl_m: 3.5",
                     PUMPS INTAKE);
    assert_string_equal(result.before, "15.581 min with the inflow as it is");
}

static void over_fifteen_minutes_nothing_is_said(void **state)
{
    (void)state;
    struct figure_result result = of_boat("floor_wet", ", bilge_to_sole_l: 5000", PUMPS INTAKE);
    assert_int_equal(result.status, FIGURE_NOT_APPLICABLE);
    assert_null(result.sentence);
    assert_non_null(result.before);
}

/* ---- others ---- */

static void the_run_is_rounded_up(void **state)
{
    (void)state;
    assert_string_equal(case_said(&test, of_boat("distance_run", ", usual_kn: 6", "").sentence),
                        "**At 6 knots:** 31 metres in 10 seconds.");
    struct figure_result result = of_boat("distance_run", "", "");
    assert_int_equal(result.status, FIGURE_INPUT_MISSING);
    assert_string_equal(result.lacks[0].owner, "boat");
    assert_string_equal(result.lacks[0].about, "her usual speed, in knots");
}

#define BOTTLE(kg, gas) \
    "  - {item: lpg_bottle_valve, tag: C8, zone: gas_locker, kg: " kg ", gas: " gas "}\n"

/* B12: 1.5 boat-fulls are not several. */
static void a_boat_full_is_said_from_one_on(void **state)
{
    (void)state;
    struct figure_result result = of_boat("boat_fulls", ", cabin_m3: 45", BOTTLE("3", "butane"));
    assert_string_equal(result.before, "1.507 times the air in the cabins");
    assert_string_equal(case_said(&test, result.sentence),
                        "**One full bottle:** more than a boat-full of explosive air (estimated).");
    result = of_boat("boat_fulls", ", cabin_m3: 70", BOTTLE("3", "butane"));
    assert_int_equal(result.status, FIGURE_NOT_APPLICABLE);
    assert_null(result.sentence);
    result = of_boat("boat_fulls", "", "  - {item: lpg_bottle_valve, tag: C8, zone: gas_locker}\n");
    assert_int_equal(result.lack_count, 3);
}

static void raft_places_stand_beside_persons(void **state)
{
    (void)state;
    struct figure_result result = of_boat(
        "raft_places", "", "  - {item: liferaft, tag: E2, zone: coachroof, persons: 4}\n"
        "  - {item: liferaft, tag: E3, zone: coachroof, side: port, persons: 3, count: 2}\n");
    assert_string_equal(case_said(&test, result.sentence),
                        "**Raft places: 10.** Most people aboard: 8.");
    assert_int_equal(of_boat("raft_places", "",
                             "  - {item: liferaft, tag: E2, zone: coachroof}\n").status,
                     FIGURE_INPUT_MISSING);
}

static void ranges_are_rounded_down(void **state)
{
    static const char handhelds[] =
        "  - {item: vhf_handheld, tag: E4, zone: cockpit, antenna_m: 2}\n"
        "  - {item: vhf_handheld, tag: E5, zone: saloon, antenna_m: 1}\n";
    (void)state;
    /* the specimen centre's aerial is 120 m high */
    assert_string_equal(of_boat("radio_range", "", handhelds).after, "33 nm");
    assert_string_equal(of("handheld_range").after, "26 nm");
    case_base(&test, "tests/errors/base/base.yaml");
    assert_false(test.base->centre_antenna_m.given);
    assert_string_equal(of("radio_range").after, "9.3 nm");
    assert_string_equal(of("handheld_range").after, "2.2 nm");
    /* line of sight alone: on no card */
    assert_null(of("handheld_range").sentence);
}

static void seconds_are_the_label_s_rounded_down(void **state)
{
    (void)state;
    struct figure_result result = of_boat(
        "discharge", "", "  - {item: fire_extinguisher, tag: F1, zone: saloon, discharge_s: 9.9}\n"
        "  - {item: fire_extinguisher, tag: F2, zone: galley, discharge_s: 6}\n");
    assert_string_equal(result.after, "F1 9 s, F2 6 s");
    assert_string_equal(case_said(&test, figure_discharge(&test.boat->equipment[0], test.arena)),
                        "lasts 9 s");
    case_boat(&test, boat_text("monohull", "",
                               "  - {item: fire_extinguisher, tag: F1, zone: saloon}\n", ""));
    assert_null(figure_discharge(&test.boat->equipment[0], test.arena));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(the_verdicts_are_these, set_up, tear_down),
        cmocka_unit_test_setup_teardown(only_facts_and_estimates_have_a_place_on_a_card, set_up,
                                        tear_down),
        cmocka_unit_test_setup_teardown(a_place_is_a_step_of_that_procedure, set_up, tear_down),
        cmocka_unit_test_setup_teardown(what_may_not_be_printed_has_no_sentence, set_up, tear_down),
        cmocka_unit_test_setup_teardown(openings_that_beat_the_pumps_are_named, set_up, tear_down),
        cmocka_unit_test_setup_teardown(where_all_may_beat_them_no_tag_is_named, set_up, tear_down),
        cmocka_unit_test_setup_teardown(what_the_pumps_can_do_is_never_said, set_up, tear_down),
        cmocka_unit_test_setup_teardown(without_pumps_there_is_nothing_to_lose_to, set_up,
                                        tear_down),
        cmocka_unit_test_setup_teardown(all_pumps_of_a_monohull_count, set_up, tear_down),
        cmocka_unit_test_setup_teardown(a_measurement_comes_before_the_label, set_up, tear_down),
        cmocka_unit_test_setup_teardown(the_worst_openings_stand_as_equals_with_their_bungs, set_up,
                                        tear_down),
        cmocka_unit_test_setup_teardown(a_bung_is_missed_of_the_worst_only, set_up, tear_down),
        cmocka_unit_test_setup_teardown(a_missing_bore_makes_the_figure_go, set_up, tear_down),
        cmocka_unit_test_setup_teardown(a_missing_pump_rating_makes_the_figure_go, set_up,
                                        tear_down),
        cmocka_unit_test_setup_teardown(the_floor_is_wet_sooner_than_it_computes, set_up,
                                        tear_down),
        cmocka_unit_test_setup_teardown(over_fifteen_minutes_nothing_is_said, set_up, tear_down),
        cmocka_unit_test_setup_teardown(the_run_is_rounded_up, set_up, tear_down),
        cmocka_unit_test_setup_teardown(a_boat_full_is_said_from_one_on, set_up, tear_down),
        cmocka_unit_test_setup_teardown(raft_places_stand_beside_persons, set_up, tear_down),
        cmocka_unit_test_setup_teardown(ranges_are_rounded_down, set_up, tear_down),
        cmocka_unit_test_setup_teardown(seconds_are_the_label_s_rounded_down, set_up, tear_down),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
