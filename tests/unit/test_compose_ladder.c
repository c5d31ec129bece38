/* test_compose_ladder.c - the order in which a boat's ways to be heard are tried: what goes before
 * the set, what goes with the first call, the position. */
#include "call_case.h"

/* ---- with the first call ---- */

static const char *with_call(const char *beacons)
{
    return words_fill(test.words, test.arena, WORD_BEACON_FIRST, "beacons", beacons, NULL);
}

static void beyond_a1_the_beacon_goes_with_the_first_call(void **state)
{
    (void)state;
    static const char area[] =
        "base: {name: Base, specimen: yes, phone_24h: \"+999 00 000 000\"}\n"
        "rescue_centre: {name: Skerry Sound, channel: \"67\"}\n"
        "cruising_area: {latitude: north, longitude: both, sea_area: A2}\nlanguages: [en]\n";
    case_base(&test, area);
    const struct call_facts *call = panel("galley_fire", SET_RADIO, HANDHELD EPIRB, "");
    assert_int_equal(call->operate_count, 8);
    assert_string_equal(call->operate[6].text, with_call("EPIRB E3 on"));
    assert_string_equal(call->operate[7].text, no_answer("handheld E4, wave, whistle"));
    assert_non_null(strstr(said(call), "EAST / WEST"));
    call = panel("galley_fire", SET_RADIO, HANDHELD, "  - epirb\n  - flares\n");
    assert_int_equal(call->operate_count, 7);
}

/* Where VHF may not be heard nobody waits for two calls that nobody answers. */
static void a_sea_area_that_nobody_recorded_counts_as_beyond_a1(void **state)
{
    (void)state;
    case_base(&test, "base: {name: Base, specimen: yes, phone_24h: \"+999 00 000 000\"}\n"
                     "rescue_centre: {name: Skerry Sound, channel: \"67\"}\n"
                     "cruising_area: {latitude: north, longitude: both}\nlanguages: [en]\n");
    const struct call_facts *call = panel("galley_fire", SET_RADIO, HANDHELD EPIRB, "");
    assert_string_equal(call->operate[6].text, with_call("EPIRB E3 on"));
}

#define BEACONS_AND_RAFT \
    EPIRB_DECK "  - {item: personal_beacon, tag: E6, zone: cockpit, side: port}\n" \
    "  - {item: sart, tag: E7, zone: cockpit, side: port}\n" \
    "  - {item: liferaft, tag: E8, zone: coachroof}\n"

/* One beacon does not stand for another: each is named by its tag. */
static void a_boat_that_goes_down_sends_each_beacon_with_the_call(void **state)
{
    (void)state;
    const struct call_facts *call =
        panel("abandon_ship", SET_RADIO, HANDHELD BEACONS_AND_RAFT FLARES, "");
    assert_string_equal(call->operate[call->operate_count - 2].text,
                        with_call("EPIRB E3 on, personal beacon E6 on"));
    assert_string_equal(call->operate[call->operate_count - 1].text,
                        no_answer("handheld E4, " PHONE ", flares E5, SART E7 on (in the raft)"));
    call = panel("man_overboard", SET_RADIO, HANDHELD BEACONS_AND_RAFT FLARES, "");
    assert_string_equal(call->operate[call->operate_count - 1].text,
                        no_answer("handheld E4, " PHONE ", EPIRB E3 on, personal beacon E6 on, "
                                  "flares E5, SART E7 on"));
}

#define RADIO_WITH(more) \
    "radio: {tag: E9, call_sign: QTAB2, mmsi: \"200014730\", mmsi_programmed: yes, dsc: yes, " \
    "zone: navigation_station, side: port, power_switch: breaker VHF, " \
    "distress_key: Lift the red lid, hold_s: 5" more "}\n"
#define KNOWN_AND(more) RADIO_WITH(", gnss: yes" more)

static void what_is_on_deck_is_tried_before_the_set(void **state)
{
    (void)state;
    const char *second = words_fill(test.words, test.arena, WORD_SECOND_NAMED, "place",
                                    "at the wheel", NULL);
    const char *handheld = tagged(WORD_HANDHELD_NAMED, "E4", DECK_PLACE);
    const struct call_facts *call =
        panel("galley_fire", KNOWN_AND(STATION), HANDHELD_DECK EPIRB, "");
    assert_string_equal(call->operate[0].text,
                        first_tried(WORD_SET_SMOKE_FIRST,
                                    text_format(test.arena, "%s · %s", second, handheld)));
    assert_string_equal(call->operate[1].text, word(WORD_SET_OUTSIDE_SMOKE));
    assert_string_equal(call->operate[2].text, set_on());
    call = panel("man_overboard", KNOWN_AND(STATION), HANDHELD_DECK EPIRB, "");
    assert_string_equal(call->operate[0].text, first_tried(WORD_SET_ALONE, second));
    call = panel("flooding", KNOWN_AND(STATION), HANDHELD_DECK EPIRB, "");
    assert_string_equal(call->operate[0].text, first_tried(WORD_SET_FIRST, second));
    call = panel("flooding", KNOWN_AND(", second_station: {zone: saloon}"), HANDHELD_DECK EPIRB,
                 "");
    assert_string_equal(call->operate[0].text, set_on());
}

/* Its alert names the boat where it has an MMSI of its own; in vapour no key is pressed. */
static void the_handheld_s_own_key_is_pressed_first(void **state)
{
    (void)state;
    const struct call_facts *call = panel("galley_fire", "radio: {call_sign: QTAB2}\n",
                                          HANDHELD_KEY EPIRB, "  - vhf_dsc\n");
    assert_string_equal(call->operate[2].text, numbered(2, word(WORD_SET_KEY_HANDHELD)));
    call = panel("abandon_ship", NO_DSC, HANDHELD_KEY EPIRB, "");
    assert_string_equal(call->operate[3].text,
                        instead(WORD_CAUSE_WATER, tagged(WORD_USE_HANDHELD_KEY, "E4",
                                                         DECK_PLACE)));
    call = panel("flooding", NO_DSC, HANDHELD_KEY EPIRB, "");
    assert_string_equal(call->operate[3].text, instead_handheld(WORD_CAUSE_WATER, DECK_PLACE));
    call = panel("diesel_leak", NO_DSC, HANDHELD_KEY EPIRB, "");
    for (size_t i = 0; i < call->operate_count; i++)
        assert_null(strstr(call->operate[i].text, "key"));
    call = panel("gas_leak", NO_DSC, HANDHELD_KEY EPIRB, "");
    for (size_t i = 0; i < call->operate_count; i++)
        assert_null(strstr(call->operate[i].text, "key"));
}

static size_t lines_that_are(const struct call_facts *call, const char *text)
{
    size_t count = 0;
    for (size_t i = 0; i < call->operate_count; i++)
        count += strcmp(call->operate[i].text, text) == 0;
    return count;
}

static void a_position_that_the_set_may_not_know_is_said(void **state)
{
    (void)state;
    static const char *const unknown[] = {RADIO_WITH(""), RADIO_WITH(", gnss: no")};
    const char *said = word(WORD_SAY_POSITION);
    for (size_t i = 0; i < 2; i++)
        assert_int_equal(lines_that_are(panel("galley_fire", unknown[i], EPIRB, ""), said), 1);
    assert_int_equal(lines_that_are(panel("galley_fire", KNOWN_AND(""), EPIRB, ""), said), 0);
    assert_int_equal(lines_that_are(panel("galley_fire", NO_DSC, EPIRB, ""), said), 0);
}

/* On the radio itself only the distress card says so; a tag that no piece has is not printed. */
static void where_the_position_is_read_is_told(void **state)
{
    (void)state;
    const struct call_facts *call = panel(
        "galley_fire", KNOWN_AND(", position_read_at: plotter at the helm"), EPIRB, "");
    const char *place = words_fill(test.words, test.arena, WORD_READ_POSITION, "place",
                                   "plotter at the helm", NULL);
    assert_int_equal(lines_that_are(call, place), 1);
    assert_string_equal(call->operate[call->yielding - 1].text, place);
    call = panel("galley_fire", KNOWN_AND(", position_read_at: E3"), EPIRB, "");
    assert_string_equal(call->operate[call->yielding - 1].text,
                        tagged(WORD_READ_POSITION_ON, "E3", "Companionway, starboard"));
    assert_int_equal(
        panel("galley_fire", KNOWN_AND(", position_read_at: E9"), EPIRB, "")->yielding, 0);
    assert_int_equal(
        panel("galley_fire", KNOWN_AND(", position_read_at: E77"), EPIRB, "")->yielding, 0);
    call = panel("distress_call", KNOWN_AND(", position_read_at: E9"), EPIRB, "");
    assert_int_equal(lines_that_are(call, word(WORD_READ_POSITION_SET)), 1);
}

#define NO_SET(more) "radio: {call_sign: QTAB2" more "}\n"
#define TORCH(zone) "  - {item: torch, tag: C9, zone: " zone "}\n"

/* Who calls from deck in a fire is not sent below to read it. */
static void nobody_reads_the_position_in_the_smoke(void **state)
{
    (void)state;
    static const struct { const char *card, *radio, *gear; bool told; } rows[] = {
        {"galley_fire", NO_SET(", position_read_at: over the table"), "", false},
        {"galley_fire", NO_SET(", position_read_at: C9"), TORCH("saloon"), false},
        {"galley_fire", NO_SET(", position_read_at: C9"), TORCH("cockpit"), true},
        {"flooding", NO_SET(", position_read_at: over the table"), "", true},
    };
    for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
        const char *gear = text_format(test.arena, HANDHELD_DECK "%s", rows[i].gear);
        const struct call_facts *call =
            panel(rows[i].card, rows[i].radio, gear, "  - vhf_dsc\n");
        assert_int_equal(call->yielding > 0, rows[i].told);
    }
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(a_boat_that_goes_down_sends_each_beacon_with_the_call),
        TEST(what_is_on_deck_is_tried_before_the_set),
        TEST(the_handheld_s_own_key_is_pressed_first),
        TEST(a_position_that_the_set_may_not_know_is_said),
        TEST(where_the_position_is_read_is_told),
        TEST(nobody_reads_the_position_in_the_smoke),
        TEST(beyond_a1_the_beacon_goes_with_the_first_call),
        TEST(a_sea_area_that_nobody_recorded_counts_as_beyond_a1),
    };
    return cmocka_run_group_tests(tests, NULL, NULL) != 0;
}
