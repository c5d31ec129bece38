/* test_condition_engines.c - conditions on a boat with two engines: what is recorded of
 * one tells nothing of the other. */
#include "condition_case.h"

static void two_engines(const char *gear, enum zone_key space)
{
    const char *text = text_format(
        test.arena, "boat: {name: Samphire, specimen: yes, hull: catamaran, rig: sail, loa_m: 13, "
        "beam_m: 7, persons_max: 8}\nequipment:\n%s", gear);
    begin_on(case_boat(&test, text), space);
}

#define PORT "engine_space_port"
#define STARBOARD "engine_space_starboard"
#define PORT_SPACE ZONE_engine_space_port
#define STARBOARD_SPACE ZONE_engine_space_starboard
#define STOP "  - {item: engine_stop, tag: C1, zone: cockpit, side: port"

static void gear_of_the_other_engine_is_not_this_card_s(void **state)
{
    (void)state;
    two_engines(STOP ", stop: electric, serves: [" PORT "]}\n", PORT_SPACE);
    expect("fitted: engine_stop", TRUTH_YES);
    assert_false(composing.held);
    two_engines(STOP ", stop: electric, serves: [" PORT "]}\n"
                "not_fitted: [{item: engine_stop, serves: [" STARBOARD "]}]\n", STARBOARD_SPACE);
    expect("fitted: engine_stop", TRUTH_NO);
    expect("not_fitted: engine_stop", TRUTH_YES);
    expect("is: {engine_stop: {stop: electric}}", TRUTH_NO);
    slot.space = PORT_SPACE;
    expect("fitted: engine_stop", TRUTH_YES);
    slot.space = ZONE_NONE;                       /* a card that is about no engine */
    expect("fitted: engine_stop", TRUTH_YES);
    assert_false(composing.held);
    two_engines(STOP ", serves: [" PORT ", " STARBOARD "]}\n", STARBOARD_SPACE);
    expect("fitted: engine_stop", TRUTH_YES);
    two_engines("  - {item: torch, tag: C1, zone: bridgedeck}\n", PORT_SPACE);
    expect("fitted: torch", TRUTH_YES);           /* serves no engine: both cards' */
    assert_false(composing.held);
}

/* What is recorded of one engine tells nothing of the other. */
static void gear_of_one_engine_alone_is_not_known_of_the_other(void **state)
{
    (void)state;
    static const char *const asked[] = {
        "fitted: engine_stop", "not_fitted: engine_stop", "is: {engine_stop: {stop: electric}}",
        "inside: {engine_stop: [engine_space]}", "cuts: {engine_stop: vhf_dsc}"};
    for (size_t i = 0; i < sizeof asked / sizeof asked[0]; i++) {
        two_engines(STOP ", stop: electric, inside: [], serves: [" PORT "]}\n", STARBOARD_SPACE);
        expect(asked[i], TRUTH_UNKNOWN);
        assert_true(composing.held);
        assert_int_equal(composing.missing_count, 1);
        assert_int_equal(composing.missing[0].item, ITEM_engine_stop);
        assert_int_equal(composing.missing[0].space, STARBOARD_SPACE);
        assert_int_equal(composing.missing[0].fact, GEAR_FIELD_NONE);
    }
}

/* A card that is about no engine needs the gear of both. */
static void both_engines_gear_is_asked_for_on_other_cards(void **state)
{
    (void)state;
    two_engines(STOP ", serves: [" PORT "]}\n", ZONE_NONE);
    expect("fitted: engine_stop", TRUTH_UNKNOWN);
    assert_int_equal(composing.missing_count, 1);
    assert_int_equal(composing.missing[0].space, STARBOARD_SPACE);
    two_engines("  - {item: engine_stop, tag: C1, zone: cockpit}\n", ZONE_NONE);
    expect("fitted: engine_stop", TRUTH_YES);     /* whom it serves does not matter here */
    two_engines("  - {item: seacock, tag: C1, zone: bridgedeck, serves: [" PORT "]}\n", ZONE_NONE);
    expect("fitted: seacock", TRUTH_YES);         /* no gear that each engine has */
    assert_false(composing.held);
}

/* Any kind whose pieces are said to serve the other engine only. */
static void gear_said_to_serve_the_other_is_not_known_of_this(void **state)
{
    (void)state;
    const char *bung = "  - {item: softwood_bung, tag: C1, zone: cockpit, serves: [" PORT "]}\n";
    two_engines(bung, STARBOARD_SPACE);
    expect("fitted: softwood_bung", TRUTH_UNKNOWN);
    slot.space = PORT_SPACE;
    expect("fitted: softwood_bung", TRUTH_YES);
}

static void absence_may_be_said_of_each_engine(void **state)
{
    (void)state;
#define NONE_FOR(space) "{item: engine_stop, serves: [" space "]}"
    two_engines("  - {item: torch, tag: C1, zone: cockpit}\n"
                "not_fitted: [" NONE_FOR(PORT) "]\n", PORT_SPACE);
    expect("fitted: engine_stop", TRUTH_NO);
    slot.space = STARBOARD_SPACE;
    expect("fitted: engine_stop", TRUTH_UNKNOWN);
    assert_int_equal(composing.missing[0].space, STARBOARD_SPACE);
    two_engines("  - {item: torch, tag: C1, zone: cockpit}\n"
                "not_fitted: [" NONE_FOR(PORT) ", " NONE_FOR(STARBOARD) "]\n", ZONE_NONE);
    expect("fitted: engine_stop", TRUTH_NO);
    slot.space = STARBOARD_SPACE;
    expect("fitted: engine_stop", TRUTH_NO);
    two_engines("  - {item: torch, tag: C1, zone: cockpit}\nnot_fitted: [engine_stop]\n",
                PORT_SPACE);
    expect("fitted: engine_stop", TRUTH_NO);
    assert_false(composing.held);
    two_engines("  - {item: torch, tag: C1, zone: cockpit}\n", PORT_SPACE);
    expect("fitted: engine_stop", TRUTH_UNKNOWN);
    assert_null(composing.missing[0].space);      /* nothing known: asked for as a whole */
}

static void whom_it_serves_is_asked_for(void **state)
{
    (void)state;
    two_engines(STOP "}\n", PORT_SPACE);
    expect("fitted: engine_stop", TRUTH_UNKNOWN);
    assert_int_equal(composing.missing_count, 1);
    assert_int_equal(composing.missing[0].fact, GEAR_serves);
    assert_true(composing.held);
}

/* `engine_space` is the space that burns; the other engine's is outside. */
static void the_burning_space_is_the_card_s_own(void **state)
{
    (void)state;
    two_engines("  - {item: fuel_shutoff_diesel, tag: C1, zone: bridgedeck, inside: [" STARBOARD
                "], serves: [" PORT "]}\n", PORT_SPACE);
    expect("inside: {fuel_shutoff_diesel: [engine_space]}", TRUTH_NO);
    expect("inside: {fuel_shutoff_diesel: [" STARBOARD "]}", TRUTH_YES);
    two_engines("  - {item: fuel_shutoff_diesel, tag: C1, zone: bridgedeck, inside: [" PORT
                "], serves: [" PORT "]}\n", PORT_SPACE);
    expect("inside: {fuel_shutoff_diesel: [engine_space]}", TRUTH_YES);
}

static void pieces_are_counted_for_their_own_engine(void **state)
{
    (void)state;
    begin_on(case_boat(&test, "tests/fleet/boats/samphire.yaml"), PORT_SPACE);
    size_t index = 0;
    const struct equipment *gear = gear_next(&composing, ITEM_engine_stop, &index);
    assert_non_null(gear);
    assert_string_equal(gear->tag.text, "C1");
    assert_null(gear_next(&composing, ITEM_engine_stop, &index));
    index = 0;
    slot.space = STARBOARD_SPACE;
    assert_string_equal(gear_next(&composing, ITEM_engine_stop, &index)->tag.text, "C2");
    assert_null(gear_next(&composing, ITEM_engine_stop, &index));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(gear_of_the_other_engine_is_not_this_card_s),
        TEST(gear_of_one_engine_alone_is_not_known_of_the_other),
        TEST(both_engines_gear_is_asked_for_on_other_cards),
        TEST(gear_said_to_serve_the_other_is_not_known_of_this),
        TEST(absence_may_be_said_of_each_engine),
        TEST(whom_it_serves_is_asked_for),
        TEST(the_burning_space_is_the_card_s_own),
        TEST(pieces_are_counted_for_their_own_engine),
    };
    int failed = cmocka_run_group_tests(tests, NULL, NULL);
    return failed != 0;
}
