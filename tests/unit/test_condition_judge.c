/* test_condition_judge.c - deciding conditions for one boat: three answers, and
 * what not knowing counts as. */
#include "condition_case.h"

static void no_condition_holds(void **state)
{
    (void)state;
    boat_with("  - {item: torch, tag: C1, zone: saloon}\n", "");
    assert_int_equal(condition_judge(&composing, NULL), TRUTH_YES);
    assert_false(composing.held);
}

/* ---- fitted ---- */

static void fitted_has_three_answers(void **state)
{
    (void)state;
    boat_with("  - {item: torch, tag: C1, zone: saloon}\n", "  - knife\n");
    expect("fitted: torch", TRUTH_YES);
    expect("fitted: knife", TRUTH_NO);
    expect("not_fitted: torch", TRUTH_NO);
    expect("not_fitted: knife", TRUTH_YES);
    assert_false(composing.held);
    assert_int_equal(composing.missing_count, 0);
    expect("fitted: liferaft", TRUTH_UNKNOWN);
    assert_true(composing.held);
    assert_int_equal(composing.missing_count, 1);
    assert_int_equal(composing.missing[0].item, ITEM_liferaft);
    assert_int_equal(composing.missing[0].fact, GEAR_FIELD_NONE);
    expect("not_fitted: liferaft", TRUTH_UNKNOWN);
    assert_int_equal(composing.missing_count, 1);   /* asked for once */
}

/* ---- all, any, none ---- */

#define YES "{fitted: torch}"
#define NO "{fitted: knife}"
#define UNKNOWN "{fitted: liferaft}"

static void groups_have_three_answers(void **state)
{
    (void)state;
    static const char *const members[] = {[TRUTH_NO] = NO, [TRUTH_YES] = YES,
                                          [TRUTH_UNKNOWN] = UNKNOWN};
    static const struct { const char *group; enum truth answers[3][3]; } groups[] = {
        {"all", {[TRUTH_NO] = {TRUTH_NO, TRUTH_NO, TRUTH_NO},
                 [TRUTH_YES] = {TRUTH_NO, TRUTH_YES, TRUTH_UNKNOWN},
                 [TRUTH_UNKNOWN] = {TRUTH_NO, TRUTH_UNKNOWN, TRUTH_UNKNOWN}}},
        {"any", {[TRUTH_NO] = {TRUTH_NO, TRUTH_YES, TRUTH_UNKNOWN},
                 [TRUTH_YES] = {TRUTH_YES, TRUTH_YES, TRUTH_YES},
                 [TRUTH_UNKNOWN] = {TRUTH_UNKNOWN, TRUTH_YES, TRUTH_UNKNOWN}}},
        {"none", {[TRUTH_NO] = {TRUTH_YES, TRUTH_NO, TRUTH_UNKNOWN},
                  [TRUTH_YES] = {TRUTH_NO, TRUTH_NO, TRUTH_NO},
                  [TRUTH_UNKNOWN] = {TRUTH_UNKNOWN, TRUTH_NO, TRUTH_UNKNOWN}}}};
    for (size_t g = 0; g < 3; g++)
        for (int a = TRUTH_NO; a <= TRUTH_UNKNOWN; a++)
            for (int b = TRUTH_NO; b <= TRUTH_UNKNOWN; b++) {
                boat_with("  - {item: torch, tag: C1, zone: saloon}\n", "  - knife\n");
                expect(text_format(test.arena, "%s: [%s, %s]", groups[g].group, members[a],
                                   members[b]), groups[g].answers[a][b]);
                assert_int_equal(composing.held, groups[g].answers[a][b] == TRUTH_UNKNOWN);
            }
}

/* What would not change the answer is not asked for. */
static void only_decisive_facts_are_asked_for(void **state)
{
    (void)state;
    boat_with("  - {item: torch, tag: C1, zone: saloon}\n", "  - knife\n");
    expect("all: [" UNKNOWN ", " NO "]", TRUTH_NO);
    expect("any: [" UNKNOWN ", " YES "]", TRUTH_YES);
    assert_int_equal(composing.missing_count, 0);
    expect("any: [" UNKNOWN ", {all: [" YES ", {fitted: epirb}]}]", TRUTH_UNKNOWN);
    assert_int_equal(composing.missing_count, 2);
    expect("{fitted: torch, not_fitted: knife}", TRUTH_YES);   /* several keys: all of them */
    expect("fitted: [torch, knife]", TRUTH_NO);
}

/* ---- inside ---- */

#define VALVE "  - {item: fuel_shutoff_diesel, tag: C1, zone: cockpit_locker, spot: aft"
#define SECOND "  - {item: fuel_shutoff_diesel, tag: C2, zone: cockpit_locker, spot: fore"
#define IN_SPACE "inside: {fuel_shutoff_diesel: [engine_space]}"

static void inside_asks_where_one_must_reach(void **state)
{
    (void)state;
    boat_with(VALVE ", inside: []}\n", "");
    expect(IN_SPACE, TRUTH_NO);
    boat_with(VALVE ", inside: [cockpit_locker]}\n", "");
    expect(IN_SPACE, TRUTH_NO);
    expect("inside: {fuel_shutoff_diesel: [cockpit_locker, lazarette]}", TRUTH_YES);
    boat_with(VALVE ", inside: [engine_space]}\n", "");
    expect(IN_SPACE, TRUTH_YES);
    boat_with("  - {item: fuel_shutoff_diesel, tag: C1, zone: engine_space, inside: []}\n", "");
    expect(IN_SPACE, TRUTH_YES);                 /* its own zone counts */
    boat_with("  - {item: torch, tag: C1, zone: saloon}\n", "  - fuel_shutoff_diesel\n");
    expect(IN_SPACE, TRUTH_NO);
    assert_false(composing.held);
}

static void inside_that_is_not_recorded_is_asked_for(void **state)
{
    (void)state;
    boat_with(VALVE "}\n", "");
    expect(IN_SPACE, TRUTH_UNKNOWN);
    assert_int_equal(composing.missing_count, 1);
    assert_int_equal(composing.missing[0].fact, GEAR_inside);
    boat_with("  - {item: torch, tag: C1, zone: saloon}\n", "");
    expect(IN_SPACE, TRUTH_UNKNOWN);
    /* whether there is one at all */
    assert_int_equal(composing.missing[0].fact, GEAR_FIELD_NONE);
}

/* Two valves, one of them inside: the other can be shut from outside. */
static void inside_means_every_piece(void **state)
{
    (void)state;
    boat_with(VALVE ", inside: [engine_space]}\n" SECOND ", inside: []}\n", "");
    expect(IN_SPACE, TRUTH_NO);
    boat_with(VALVE ", inside: []}\n" SECOND ", inside: [engine_space]}\n", "");
    expect(IN_SPACE, TRUTH_NO);
    boat_with(VALVE ", inside: [engine_space]}\n" SECOND ", inside: [engine_space]}\n", "");
    expect(IN_SPACE, TRUTH_YES);
    boat_with(VALVE ", inside: [engine_space]}\n" SECOND "}\n", "");
    expect(IN_SPACE, TRUTH_UNKNOWN);
}

/* ---- is ---- */

static void is_means_one_piece(void **state)
{
    (void)state;
    static const char wanted[] = "is: {engine_extinguisher: {fits_port: yes}}";
    static const char first[] =
        "  - {item: engine_extinguisher, tag: F1, zone: saloon, fits_port: ";
    static const char second[] = "  - {item: engine_extinguisher, tag: F2, zone: galley";
    boat_with(text_format(test.arena, "%syes}\n", first), "");
    expect(wanted, TRUTH_YES);
    boat_with(text_format(test.arena, "%sno}\n", first), "");
    expect(wanted, TRUTH_NO);
    boat_with(text_format(test.arena, "%sno}\n%s, fits_port: yes}\n", first, second), "");
    expect(wanted, TRUTH_YES);
    boat_with(text_format(test.arena, "%syes}\n%s}\n", first, second), "");
    expect(wanted, TRUTH_YES);                   /* one is enough: the other is not asked for */
    assert_int_equal(composing.missing_count, 0);
    boat_with(text_format(test.arena, "%sno}\n%s}\n", first, second), "");
    expect(wanted, TRUTH_UNKNOWN);
    assert_int_equal(composing.missing[0].fact, GEAR_fits_port);
    assert_int_equal(composing.missing[0].place.line, 4);
    boat_with("  - {item: torch, tag: C1, zone: saloon}\n", "  - engine_extinguisher\n");
    expect(wanted, TRUTH_NO);
}

static void is_knows_the_family_of_a_zone(void **state)
{
    (void)state;
    boat_with("  - {item: lithium_bank, tag: C1, zone: saloon, space: own_box}\n", "");
    expect("is: {lithium_bank: {space: engine_space}}", TRUTH_NO);
    boat_with("  - {item: lithium_bank, tag: C1, zone: saloon, space: engine_space}\n", "");
    expect("is: {lithium_bank: {space: engine_space}}", TRUTH_YES);
    boat_with("  - {item: lithium_bank, tag: C1, zone: saloon}\n", "");
    expect("is: {lithium_bank: {space: engine_space}}", TRUTH_UNKNOWN);
}

/* A list holds the word, or it does not; where none is given nobody knows. */
static void is_looks_into_lists(void **state)
{
    (void)state;
    static const char wanted[] = "is: {first_aid_kit: {kit: tourniquet}}";
#define KIT "  - {item: first_aid_kit, tag: E1, zone: saloon"
    boat_with(KIT ", kit: [gloves, tourniquet]}\n", "");
    expect(wanted, TRUTH_YES);
    boat_with(KIT ", kit: tourniquet}\n", "");
    expect(wanted, TRUTH_YES);
    boat_with(KIT ", kit: [gloves, film]}\n", "");
    expect(wanted, TRUTH_NO);
    boat_with(KIT ", kit: []}\n", "");
    expect(wanted, TRUTH_NO);
    boat_with(KIT ", kit: [gloves]}\n"
              "  - {item: first_aid_kit, tag: E2, zone: galley, kit: [tourniquet]}\n", "");
    expect(wanted, TRUTH_YES);
    assert_int_equal(composing.missing_count, 0);
    boat_with(KIT "}\n", "");
    expect(wanted, TRUTH_UNKNOWN);
    assert_int_equal(composing.missing[0].fact, GEAR_kit);
#undef KIT
}

/* ---- her base ---- */

#define BASE_WITH(area, aid) \
    "base: {name: Base, specimen: yes, phone_24h: \"+999 00 000 000\"}\n" \
    "rescue_centre: {name: Skerry Sound, channel: \"67\"}\n" \
    "cruising_area: {latitude: north, longitude: east" area "}\n" aid

/* Which of the three hold on a boat of that base: what is not recorded is none of them, and
 * holds no card. */
static void base_expect(const char *base, const char *key, const char *const words[3],
                        int recorded)
{
    boat_with("  - {item: torch, tag: C1, zone: saloon}\n", "");
    input.base = case_base(&test, base);
    for (int i = 0; i < 3; i++)
        expect(text_format(test.arena, "%s: %s", key, words[i]),
               i == recorded ? TRUTH_YES : TRUTH_NO);
    assert_false(composing.held);
}

static void the_base_tells_what_is_poured_on_a_sting(void **state)
{
    (void)state;
    static const char *const stings[] = {"sea_water", "vinegar", "both"};
    base_expect(BASE_WITH("", ""), "sting", stings, -1);
    base_expect(BASE_WITH("", "first_aid: {sting: sea_water}\n"), "sting", stings, 0);
    base_expect(BASE_WITH("", "first_aid: {sting: vinegar}\n"), "sting", stings, 1);
    base_expect(BASE_WITH("", "first_aid: {sting: both}\n"), "sting", stings, 2);
}

static void the_base_tells_how_far_the_water_falls(void **state)
{
    (void)state;
    static const char *const tides[] = {"none", "small", "large"};
    base_expect(BASE_WITH("", ""), "tide", tides, -1);
    base_expect(BASE_WITH(", tide: none", ""), "tide", tides, 0);
    base_expect(BASE_WITH(", tide: small", ""), "tide", tides, 1);
    base_expect(BASE_WITH(", tide: large", ""), "tide", tides, 2);
}

/* ---- cuts, boat ---- */

#define ISOLATOR "  - {item: battery_isolator_service, tag: C1, zone: saloon"

/* The dangerous case: an isolator that is not known to spare the radio kills it. */
static void cuts_that_are_not_recorded_count_as_cut(void **state)
{
    (void)state;
    static const char wanted[] = "cuts: {battery_isolator_service: vhf_dsc}";
    boat_with(ISOLATOR ", cuts: [vhf_dsc]}\n", "");
    expect(wanted, TRUTH_YES);
    boat_with(ISOLATOR ", cuts: [bilge_pump_electric]}\n", "");
    expect(wanted, TRUTH_NO);
    boat_with(ISOLATOR ", cuts: []}\n", "");
    expect(wanted, TRUTH_NO);
    boat_with(ISOLATOR "}\n", "");
    expect(wanted, TRUTH_YES);
    assert_false(composing.held);
    boat_with(ISOLATOR ", cuts: []}\n"
              "  - {item: battery_isolator_service, tag: C2, zone: galley}\n", "");
    expect(wanted, TRUTH_YES);                   /* one of two is enough to lose the radio */
    boat_with("  - {item: torch, tag: C1, zone: saloon}\n", "  - battery_isolator_service\n");
    expect(wanted, TRUTH_NO);
}

static void the_boat_s_type_is_known(void **state)
{
    (void)state;
    boat_with("  - {item: torch, tag: C1, zone: saloon}\n", "");
    expect("boat: monohull", TRUTH_YES);
    expect("boat: catamaran", TRUTH_NO);
    begin_on(case_boat(&test, "tests/fleet/boats/samphire.yaml"), ZONE_NONE);
    expect("boat: catamaran", TRUTH_YES);
}

/* ---- which piece may stand under a step ---- */

static void a_piece_must_have_what_the_case_asks_of_its_kind(void **state)
{
    (void)state;
    boat_with("  - {item: vhf_handheld, tag: E1, zone: cockpit, from_cockpit: yes}\n"
              "  - {item: vhf_handheld, tag: E2, zone: saloon, from_cockpit: no}\n"
              "  - {item: vhf_handheld, tag: E3, zone: galley}\n"
              "  - {item: torch, tag: C1, zone: saloon, from_cockpit: no}\n", "");
    const struct condition *is = condition_of("is: {vhf_handheld: {from_cockpit: yes}}");
    const struct equipment *gear = test.boat->equipment;
    assert_true(condition_admits(&composing, is, &gear[0]));
    assert_false(condition_admits(&composing, is, &gear[1]));
    assert_false(condition_admits(&composing, is, &gear[2]));   /* not known: not offered */
    assert_true(condition_admits(&composing, is, &gear[3]));    /* another kind */
    const struct condition *all = condition_of(
        "{fitted: [torch, vhf_handheld], is: {vhf_handheld: {from_cockpit: yes}}}");
    assert_true(condition_admits(&composing, all, &gear[0]));
    assert_false(condition_admits(&composing, all, &gear[1]));
    assert_true(condition_admits(&composing, NULL, &gear[1]));
    const struct condition *fitted = condition_of("fitted: vhf_handheld");
    assert_true(condition_admits(&composing, fitted, &gear[1]));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(no_condition_holds),
        TEST(fitted_has_three_answers),
        TEST(groups_have_three_answers),
        TEST(only_decisive_facts_are_asked_for),
        TEST(inside_asks_where_one_must_reach),
        TEST(inside_that_is_not_recorded_is_asked_for),
        TEST(inside_means_every_piece),
        TEST(is_means_one_piece),
        TEST(is_knows_the_family_of_a_zone),
        TEST(is_looks_into_lists),
        TEST(the_base_tells_what_is_poured_on_a_sting),
        TEST(the_base_tells_how_far_the_water_falls),
        TEST(cuts_that_are_not_recorded_count_as_cut),
        TEST(the_boat_s_type_is_known),
        TEST(a_piece_must_have_what_the_case_asks_of_its_kind),
    };
    int failed = cmocka_run_group_tests(tests, NULL, NULL);
    return failed != 0;
}
