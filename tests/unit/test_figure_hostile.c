/* test_figure_hostile.c - figures of records at their edges: hulls of a catamaran,
 * shafts, equal openings, extremes, what stands dry; and what is for the base alone. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "card_fixture.h"
#include "figure.h"
#include "text.h"

static struct figure_result of(const char *id)
{
    struct figure_record record = {test.boat, test.base};
    assert_non_null(figure_find(id));
    return figure_evaluate(figure_find(id), &record, test.arena);
}

#define HEAD(type, facts) \
    "boat: {name: Tamarisk, specimen: yes, hull: " type ", rig: sail, loa_m: 12, beam_m: 5, " \
    "persons_max: 8" facts "}\n" CASE_RADIO "equipment:\n"
#define HAND "  - {item: bilge_pump_manual, tag: C20, zone: cockpit, stroke_l: 0.8}\n"
#define PUMP(tag, zone, more) \
    "  - {item: bilge_pump_electric, tag: " tag ", zone: " zone ", rated_lph: 6000" more "}\n"
#define OPENING(tag, bore, depth) \
    "  - {item: seacock, tag: " tag ", name: hole " tag ", zone: forward_heads, " \
    "side: port, bore_mm: " bore ", depth_m: " depth ", bung_mm: " bore "}\n"
#define SEAL(tag, bore, depth) \
    "  - {item: shaft_seal, tag: " tag ", name: shaft " tag ", zone: engine_space, bore_mm: " bore \
    ", depth_m: " depth "}\n"

static void of_boat(const char *text)
{
    case_boat(&test, text);
}

/* ---- catamarans ---- */

/* Each pump gives 50 L/min. What a hull is not known to have it has not. */
static void a_pump_serves_its_own_hull(void **state)
{
    static const struct { const char *pumps, *rate; } rows[] = {
        {PUMP("C1", "bridgedeck", ", side: port, count: 2"), "50 L/min"},
        {PUMP("C1", "bridgedeck", ", count: 5"), "100 L/min"},
        {PUMP("C1", "port_hull", "") PUMP("C2", "starboard_hull", ""), "50 L/min"},
        {PUMP("C1", "port_hull", ", count: 3") PUMP("C2", "starboard_hull", ""), "50 L/min"},
        {PUMP("C1", "aft_heads", ", side: port") PUMP("C2", "aft_heads", ", side: starboard"),
         "50 L/min"},
        {PUMP("C1", "bilge", ", side: both, count: 2"), "50 L/min"}};
    (void)state;
    for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
        of_boat(text_format(test.arena, HEAD("catamaran", "") "%s" HAND OPENING("C9", "38", "0.3"),
                            rows[i].pumps));
        struct figure_result result = of("pump_rate");
        assert_int_equal(result.status, FIGURE_VALUE);
        assert_string_equal(result.before,
                            text_format(test.arena, "the hull with less: %s", rows[i].rate));
    }
    assert_non_null(strstr(figure_find("pump_rate")->assumed, "hull with less"));
}

static void a_pump_of_no_known_hull_is_missing(void **state)
{
    static const char *const pumps[] = {
        PUMP("C1", "bridgedeck", ", side: port"),
        PUMP("C1", "bridgedeck", "") PUMP("C2", "port_hull", "")};
    static const char *const ids[] = {"beat_pumps", "pump_rate", "largest_hole"};
    (void)state;
    for (size_t i = 0; i < sizeof pumps / sizeof *pumps; i++) {
        of_boat(text_format(test.arena, HEAD("catamaran", "") "%s" HAND OPENING("C9", "38", "0.3"),
                            pumps[i]));
        for (size_t f = 0; f < sizeof ids / sizeof *ids; f++) {
            struct figure_result result = of(ids[f]);
            assert_int_equal(result.status, FIGURE_INPUT_MISSING);
            assert_int_equal(result.lack_count, 1);
            assert_string_equal(result.lacks[0].owner, "bilge_pump_electric C1");
            assert_string_equal(result.lacks[0].field, "the hull it pumps");
        }
    }
    /* both in one hull: the other has none, and nothing more is to be recorded */
    of_boat(HEAD("catamaran", "") PUMP("C1", "port_hull", ", count: 2") HAND
            OPENING("C9", "38", "0.3"));
    assert_int_equal(of("beat_pumps").status, FIGURE_NOT_APPLICABLE);
    assert_int_equal(of("beat_pumps").lack_count, 0);
}

/* Its rating is missed once, though both hulls are looked at. */
static void a_catamaran_s_pump_is_read_once(void **state)
{
    (void)state;
    of_boat(HEAD("catamaran", "") "  - {item: bilge_pump_electric, tag: C1, zone: bridgedeck, "
            "count: 2}\n" HAND OPENING("C9", "38", "0.3"));
    struct figure_result result = of("pump_rate");
    assert_int_equal(result.lack_count, 1);
    assert_string_equal(result.lacks[0].field, "rated_lph");
    of_boat(HEAD("catamaran", "") PUMP("C1", "bridgedeck", ", count: 2") HAND
            OPENING("C9", "38", "0.3"));
    struct figure_result found = of("pump_rate");
    assert_int_equal(found.input_count, 3);
    assert_string_equal(found.inputs[0].what, "bilge_pump_electric C1 zone");
    assert_string_equal(found.inputs[1].what, "bilge_pump_electric C1 count");
    assert_string_equal(found.inputs[2].what, "bilge_pump_electric C1 rated_lph");
}

/* Without pumps that are known to reach her water the floor is wet sooner. */
static void unknown_pumps_hold_no_water_back(void **state)
{
    (void)state;
    of_boat(HEAD("catamaran", ", bilge_to_sole_l: 400") PUMP("C1", "bridgedeck", ", count: 2")
            HAND OPENING("C9", "38", "0.3"));
    struct figure_result with = of("floor_wet");
    assert_string_equal(with.before, "4.875 min with the inflow as it is");
    of_boat(HEAD("catamaran", ", bilge_to_sole_l: 400") PUMP("C1", "bridgedeck", "") HAND
            OPENING("C9", "38", "0.3"));
    struct figure_result without = of("floor_wet");
    assert_string_equal(without.before, "3.029 min with the inflow as it is");
    assert_string_equal(without.after, "under 1 min with twice the inflow");
}

/* ---- shafts ---- */

static void a_shaft_is_an_opening(void **state)
{
    (void)state;
    of_boat(HEAD("monohull", "") PUMP("C1", "saloon", "") HAND OPENING("C9", "19", "0.3")
            OPENING("C10", "25", "0.2") SEAL("C11", "40", "0.5"));
    assert_string_equal(case_said(&test, of("worst_openings").sentence),
                        "**Most water (estimated):** shaft seal.");
    assert_string_equal(case_said(&test, of("beat_pumps").sentence),
                        "**Pumps lose to** shaft seal, maybe C10 (estimated).");
    assert_string_equal(of("floor_wet").lacks[0].field, "bilge_to_sole_l");
    of_boat(HEAD("monohull", "") PUMP("C1", "saloon", "") HAND OPENING("C9", "19", "0.3")
            OPENING("C10", "38", "0.5") SEAL("C11", "40", "0.5") SEAL("C12", "40", "0.5"));
    assert_string_equal(case_said(&test, of("worst_openings").sentence),
                        "**Most water (estimated):** C10 (bung 38 mm), shaft seals.");
}

/* Two in one entry are two, and no opening more than the entries there are. */
static void shafts_of_one_entry_are_several(void **state)
{
    static const char pair[] = "  - {item: shaft_seal, tag: C11, zone: engine_space, count: 2, "
                               "bore_mm: 40, depth_m: 0.5}\n";
    (void)state;
    of_boat(text_format(test.arena, "%s%s", HEAD("monohull", "") PUMP("C1", "saloon", "") HAND
                        OPENING("C9", "13", "0.3"), pair));
    assert_string_equal(case_said(&test, of("worst_openings").sentence),
                        "**Most water (estimated):** shaft seals.");
    assert_string_equal(case_said(&test, of("beat_pumps").sentence),
                        "**Pumps lose to** shaft seals (estimated).");
    of_boat(text_format(test.arena, "%s%s", HEAD("monohull", "") PUMP("C1", "saloon", "") HAND,
                        pair));
    assert_string_equal(case_said(&test, of("beat_pumps").sentence),
                        "**Pumps can lose to any one open** (estimated).");
}

/* Which opening is the worst cannot be said without it. */
static void an_unmeasured_shaft_makes_the_figures_go(void **state)
{
    static const char *const ids[] = {"beat_pumps", "worst_openings", "inflow", "largest_hole"};
    (void)state;
    of_boat(HEAD("monohull", "") PUMP("C1", "saloon", "") HAND OPENING("C9", "19", "0.3")
            "  - {item: shaft_seal, tag: C11, zone: engine_space}\n");
    for (size_t i = 0; i < sizeof ids / sizeof *ids; i++) {
        struct figure_result result = of(ids[i]);
        assert_int_equal(result.status, FIGURE_INPUT_MISSING);
        assert_int_equal(result.lack_count, 2);
        assert_string_equal(result.lacks[0].owner, "shaft_seal C11");
    }
}

/* ---- extremes ---- */

static void what_lies_dry_says_nothing(void **state)
{
    static const char *const ids[] = {"beat_pumps", "worst_openings", "floor_wet", "largest_hole"};
    (void)state;
    of_boat(HEAD("monohull", ", bilge_to_sole_l: 400") PUMP("C1", "saloon", "") HAND
            OPENING("C9", "200", "0") OPENING("C10", "38", "0"));
    for (size_t i = 0; i < sizeof ids / sizeof *ids; i++) {
        struct figure_result result = of(ids[i]);
        if (result.status != FIGURE_NOT_APPLICABLE || result.sentence != NULL)
            fail_msg("%s of a dry opening: %s", ids[i], result.after);
        assert_non_null(result.reason);
    }
}

static void the_widest_and_deepest_opening_is_told(void **state)
{
    (void)state;
    of_boat(HEAD("monohull", ", bilge_to_sole_l: 10") PUMP("C1", "saloon", "") HAND
            OPENING("C9", "200", "3") OPENING("C10", "5", "0"));
    assert_string_equal(of("inflow").after, "C9 12000 L/min, C10 0 L/min");
    assert_string_equal(case_said(&test, of("beat_pumps").sentence),
                        "**Pumps lose to** C9 (estimated).");
    assert_string_equal(case_said(&test, of("worst_openings").sentence),
                        "**Most water (estimated):** C9 (bung 200 mm).");
    assert_string_equal(case_said(&test, of("floor_wet").sentence),
                        "**Floor wet in under 1 minute,** worst one open (estimated).");
}

/* The smallest pump that a record may hold, and none at all. */
static void next_to_no_pump_loses_to_all(void **state)
{
    static const char opening[] = OPENING("C9", "19", "0.3") OPENING("C10", "25", "0.2");
    (void)state;
    of_boat(text_format(test.arena, HEAD("monohull", "")
                        "  - {item: bilge_pump_electric, tag: C1, zone: saloon, rated_lph: 100}\n"
                        "%snot_fitted: [bilge_pump_manual]\n", opening));
    assert_string_equal(of("pump_rate").before, "all pumps: 0.8333 L/min");
    assert_string_equal(of("pump_rate").after, "all pumps: 0.83 L/min");
    assert_string_equal(case_said(&test, of("beat_pumps").sentence),
                        "**Pumps can lose to any one open** (estimated).");
    of_boat(text_format(test.arena, HEAD("monohull", ", bilge_to_sole_l: 400")
                        "%snot_fitted: [bilge_pump_electric, bilge_pump_manual]\n", opening));
    assert_int_equal(of("beat_pumps").status, FIGURE_NOT_APPLICABLE);
    assert_int_equal(of("pump_rate").status, FIGURE_NOT_APPLICABLE);
    assert_int_equal(of("largest_hole").status, FIGURE_NOT_APPLICABLE);
    assert_int_equal(of("floor_wet").status, FIGURE_VALUE);
}

/* All sixteen in one group: none is called worse than another. */
static void equal_openings_stand_as_equals(void **state)
{
    struct text_builder text = text_builder_in(test.arena);
    (void)state;
    text_add(&text, HEAD("monohull", "") PUMP("C1", "saloon", "") HAND);
    for (int i = 10; i < 26; i++)
        text_add_format(&text, "  - {item: seacock, tag: C%d, name: hole %d, zone: forward_heads, "
                        "side: port, bore_mm: 38, depth_m: 0.30, bung_mm: 38}\n", i + 30, i);
    of_boat(text.at);
    struct figure_result result = of("worst_openings");
    assert_int_equal(result.status, FIGURE_VALUE);
    assert_null(strstr(result.before, "then"));
    assert_non_null(strstr(case_said(&test, result.sentence), "C40, C41, C42"));
    assert_non_null(strstr(case_said(&test, result.sentence), "C55 (bung 38 mm)."));
    assert_string_equal(case_said(&test, of("beat_pumps").sentence),
                        "**Pumps can lose to any one open** (estimated).");
}

/* 3 kg of butane make 67.8 m3 of air explosive, 2.9 kg of propane 74. */
static void the_worse_bottle_is_not_the_heavier(void **state)
{
    (void)state;
    of_boat(HEAD("monohull", ", cabin_m3: 70")
            "  - {item: lpg_bottle_valve, tag: C1, zone: gas_locker, kg: 3, gas: butane}\n"
            "  - {item: lpg_bottle_valve, tag: C2, zone: gas_locker, side: port, kg: 2.9, "
            "gas: propane}\n");
    assert_string_equal(of("gas_volume").after, "1.6 m3 of gas, 75 m3 of explosive air");
    assert_int_equal(of("boat_fulls").status, FIGURE_VALUE);
    assert_int_equal(of("boat_fulls").origin.line, test.boat->equipment[1].place.line);
}

/* ---- for the base alone ---- */

static void shelters_lie_so_far_and_that_way(void **state)
{
    (void)state;
    of_boat("tests/fleet/boats/tamarisk.yaml");
    struct figure_result result = of("shelters");
    assert_string_equal(result.after,
                        "Inner Skerry Pool (specimen) 6.1 nm, 052 T (048 M); "
                        "Thornback Quay (specimen) 7.9 nm, 234 T (230 M)");
    assert_null(result.sentence);
    assert_int_equal(result.input_count, 5);
    assert_string_equal(result.inputs[0].what, "base position");
    assert_string_equal(result.inputs[3].what, "shelter Inner Skerry Pool (specimen)");
    assert_string_equal(result.inputs[3].value, "12 34.20 N 060 20.10 E");
    assert_true(result.inputs[3].place.line > result.inputs[0].place.line);
    assert_true(result.origin.line == result.inputs[3].place.line);
}

#define BASE(more) \
    "base: {name: Heron Lock Charter (specimen), specimen: yes, phone_24h: \"+999 00 000 000\"" \
    more "}\nrescue_centre: {name: Heron Sound, call: HERON SOUND COASTGUARD, channel: \"67\", " \
    "phone: \"+999 00 000 001\", checked_on: 2026-11-02}\n"
#define AREA(more) \
    "cruising_area: {latitude: both, longitude: both, sea_area: A1" more "}\n" \
    "languages: [en]\napprovals: []\nlines: []\n"

/* A shelter across the date line, one at the berths, and no variation that can be
 * trusted: without its date none is used. */
static void shelters_need_berths_and_a_dated_variation(void **state)
{
    static const char shelters[] =
        "shelters:\n"
        "  - {name: Far Wall, position: 17 30.00 S 179 30.00 W}\n"
        "  - {name: Home, position: 18 06.00 S 178 54.00 E}\n";
    (void)state;
    of_boat("tests/fleet/boats/tamarisk.yaml");
    case_base(&test, text_format(test.arena, "%s%s%s",
                                 BASE(", position: 18 06.00 S 178 54.00 E"),
                                 AREA(", variation: 4 E"), shelters));
    assert_string_equal(of("shelters").after, "Far Wall 99 nm, 069 T; Home at the berths");
    case_base(&test, text_format(test.arena, "%s%s%s", BASE(", position: 90 00.00 S 000 00.00 E"),
                                 AREA(""), "shelters:\n"
                                 "  - {name: Home, position: 90 00.00 S 120 00.00 E}\n"
                                 "  - {name: Ice, position: 89 00.00 S 120 00.00 E}\n"));
    assert_string_equal(of("shelters").before, "Home 0 nm; Ice 60.041 nm at 0 degrees");
    assert_string_equal(of("shelters").after, "Home at the berths; Ice 61 nm, 000 T");
    case_base(&test, text_format(test.arena, "%s%s%s", BASE(""), AREA(""), shelters));
    struct figure_result result = of("shelters");
    assert_int_equal(result.status, FIGURE_INPUT_MISSING);
    assert_string_equal(result.lacks[0].owner, "base");
    assert_string_equal(result.lacks[0].field, "position");
    assert_non_null(strstr(result.lacks[0].about, "berths"));
    case_base(&test, "tests/errors/base/base.yaml");
    assert_int_equal(of("shelters").status, FIGURE_NOT_APPLICABLE);
}

static void the_list_of_another_nation_says_nothing(void **state)
{
    (void)state;
    of_boat("tests/fleet/boats/tamarisk.yaml");
    assert_int_equal(of("us_outfit").status, FIGURE_NOT_APPLICABLE);
    of_boat(HEAD("monohull", ", flag: US") HAND);
    assert_string_equal(of("us_outfit").after,
                        "2 of 5-B, or 1 of 20-B; indicative, her flag's own list decides");
    of_boat(HEAD("monohull", ", flag: US") HAND
            "  - {item: fixed_extinguisher, tag: F1, zone: engine_space}\n");
    assert_string_equal(of("us_outfit").after,
                        "1 of 5-B; indicative, her flag's own list decides");
    assert_null(of("us_outfit").sentence);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(a_pump_serves_its_own_hull, set_up, tear_down),
        cmocka_unit_test_setup_teardown(a_pump_of_no_known_hull_is_missing, set_up, tear_down),
        cmocka_unit_test_setup_teardown(a_catamaran_s_pump_is_read_once, set_up, tear_down),
        cmocka_unit_test_setup_teardown(unknown_pumps_hold_no_water_back, set_up, tear_down),
        cmocka_unit_test_setup_teardown(a_shaft_is_an_opening, set_up, tear_down),
        cmocka_unit_test_setup_teardown(shafts_of_one_entry_are_several, set_up, tear_down),
        cmocka_unit_test_setup_teardown(an_unmeasured_shaft_makes_the_figures_go, set_up,
                                        tear_down),
        cmocka_unit_test_setup_teardown(what_lies_dry_says_nothing, set_up, tear_down),
        cmocka_unit_test_setup_teardown(the_widest_and_deepest_opening_is_told, set_up, tear_down),
        cmocka_unit_test_setup_teardown(next_to_no_pump_loses_to_all, set_up, tear_down),
        cmocka_unit_test_setup_teardown(equal_openings_stand_as_equals, set_up, tear_down),
        cmocka_unit_test_setup_teardown(the_worse_bottle_is_not_the_heavier, set_up, tear_down),
        cmocka_unit_test_setup_teardown(shelters_lie_so_far_and_that_way, set_up, tear_down),
        cmocka_unit_test_setup_teardown(shelters_need_berths_and_a_dated_variation, set_up,
                                        tear_down),
        cmocka_unit_test_setup_teardown(the_list_of_another_nation_says_nothing, set_up,
                                        tear_down),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
