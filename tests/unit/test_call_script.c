/* test_call_script.c - scripts and spelling for the screen: the same as the cards'. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include <string.h>

#include "card_case.h"
#include "compose.h"

static struct card_case here;

static int begin(void **state)
{
    (void)state;
    case_begin(&here);
    return 0;
}

static int end(void **state)
{
    (void)state;
    case_end(&here);
    return 0;
}

#define CASE(function) cmocka_unit_test_setup_teardown(function, begin, end)

static const char *said(enum script_form form, enum nature_key nature)
{
    struct compose_input input = {.boat = here.boat, .base = here.base};
    const struct script *script = call_script(&input, form, nature_of(nature), here.arena,
                                              here.problems);
    assert_non_null(script);
    return script_text(script, here.arena);
}

static void the_general_call_is_the_distress_card_s(void **state)
{
    (void)state;
    here.boat = case_boat(&here, "tests/fleet/boats/tamarisk.yaml");
    const struct sheet_set *set = case_compose(&here, false);
    const struct sheet *card = case_card(set, "distress_call");
    assert_string_equal(said(SCRIPT_MAYDAY, NATURE_NONE),
                        script_text(sheet_call(card)->script, here.arena));
    assert_non_null(strstr(said(SCRIPT_MAYDAY, NATURE_NONE), "PROBLEM ____ (nature)\n"));
}

static void a_nature_gives_its_phrase(void **state)
{
    (void)state;
    here.boat = case_boat(&here, "tests/fleet/boats/tamarisk.yaml");
    for (enum nature_key key = NATURE_NONE + 1; key < NATURE_COUNT; key++) {
        const char *phrase = nature_of(key)->phrase;
        size_t length = strcspn(phrase, ".");   /* an open end is a blank */
        const char *text = said(SCRIPT_MAYDAY, key);
        assert_non_null(strstr(text, arena_copy(here.arena, phrase, length)));
        assert_null(strstr(text, "(nature)"));
        assert_int_equal(strncmp(text, "MAYDAY, MAYDAY, MAYDAY\n", 23), 0);
    }
}

/* A card says besides what burns; all else it says alike. */
static void a_card_says_the_same_and_what_burns(void **state)
{
    (void)state;
    here.boat = case_boat(&here, "tests/fleet/boats/tamarisk.yaml");
    const struct sheet *card = case_card(case_compose(&here, false), "engine_fire");
    const char *of_card = script_text(sheet_call(card)->script, here.arena);
    const char *burns = "I AM ON FIRE, ENGINE SPACE.", *fire = "I AM ON FIRE.";
    const char *asks = "I REQUIRE IMMEDIATE ASSISTANCE.", *alone = said(SCRIPT_MAYDAY, NATURE_FIRE);
    assert_non_null(strstr(of_card, burns));
    assert_non_null(strstr(alone, fire));
    assert_int_equal(strstr(of_card, burns) - of_card, strstr(alone, fire) - alone);
    assert_memory_equal(of_card, alone, (size_t)(strstr(alone, fire) - alone));
    assert_string_equal(strstr(of_card, asks), strstr(alone, asks));
}

/* Nobody can have sent an alert, so the MMSI means nothing to those who hear. */
static void without_a_fixed_set_no_mmsi_is_said(void **state)
{
    (void)state;
    here.boat = case_boat(&here, case_boat_text(
        &here, "radio: {call_sign: QTAB2, mmsi: \"200014730\", mmsi_programmed: yes, dsc: yes}\n",
        "", "  - vhf_dsc\n"));
    assert_null(strstr(said(SCRIPT_MAYDAY, NATURE_FIRE), "200 014 730"));
    here.boat = case_boat(&here, case_boat_text(&here, CASE_RADIO, "", ""));
    assert_non_null(strstr(said(SCRIPT_MAYDAY, NATURE_FIRE), "200 014 730"));
}

static void without_a_call_sign_no_slot_is_left(void **state)
{
    (void)state;
    static const enum script_form forms[] = {SCRIPT_MAYDAY, SCRIPT_PAN_PAN, SCRIPT_RELAY,
                                             SCRIPT_DOWNGRADE, SCRIPT_CANCEL, SCRIPT_RECEIPT,
                                             SCRIPT_CANCEL_BEACON};
    here.boat = case_boat(&here, case_boat_text(&here, "radio: {call_sign: none}\n", "", ""));
    for (size_t i = 0; i < sizeof forms / sizeof forms[0]; i++) {
        const char *text = said(forms[i], NATURE_NONE);
        assert_null(strstr(text, "CALL SIGN"));
        assert_null(strstr(text, "MMSI"));
        assert_null(strstr(text, "·"));
        assert_null(strstr(text, "\n\n"));
        assert_null(strstr(text, " \n"));
    }
    const char *spelling = call_spelling(here.boat, here.arena, here.problems);
    assert_non_null(spelling);
    assert_int_equal(strncmp(spelling, "NAME ", 5), 0);
    assert_string_equal(strchr(spelling, '\n'), "\n");
}

static void identities_are_spelled(void **state)
{
    (void)state;
    here.boat = case_boat(&here, "tests/fleet/boats/tamarisk.yaml");
    assert_string_equal(call_spelling(here.boat, here.arena, here.problems),
                        "NAME TAMARISK: TANGO ALFA MIKE ALFA ROMEO INDIA SIERRA KILO\n"
                        "CALL SIGN QTAB2: QUEBEC TANGO ALFA BRAVO TWO\n"
                        "MMSI 200 014 730: TWO ZERO ZERO, ZERO ONE FOUR, SEVEN THREE ZERO\n"
                        "EPIRB E3 9908D 74A71 034D1: MMSI-coded EPIRB, MMSI 200 014 730, "
                        "country code 200 (no country's), homing 121.5 MHz\n");
}

/* The centre asks for it; one that is mistyped would name another boat, or none. */
static void beacons_are_told_as_coded(void **state)
{
    (void)state;
    here.boat = case_boat(&here, case_boat_text(
        &here, CASE_RADIO,
        "  - {item: epirb, tag: E3, zone: cockpit, hex_id: 2024F7252457804}\n"
        "  - {item: epirb, tag: E4, zone: saloon, hex_id: 9DC9D65O28154D1}\n"
        "  - {item: epirb, tag: E5, zone: galley, hex_id: 9DC8075940A04D1}\n"
        "  - {item: epirb, tag: E6, zone: gas_locker, hex_id: adcd0 08004 40401}\n"
        "  - {item: epirb, tag: E7, zone: transom}\n", ""));
    const char *beacons = strstr(call_spelling(here.boat, here.arena, here.problems), "EPIRB");
    assert_string_equal(beacons,
                        "EPIRB E3 2024F 72524 FFBFF: MMSI-coded EPIRB, MMSI 257 506 153, beacon "
                        "number 2, country code 257 (Norway)\n"
                        "EPIRB E6 ADCD0 08004 40401: serial-coded float-free EPIRB, country code "
                        "366 (United States of America), homing 121.5 MHz\n");
}

static void what_cannot_be_said_gives_nothing(void **state)
{
    (void)state;
    here.boat = case_boat(&here, "boat: {name: \"Ψ\", specimen: yes, hull: monohull, rig: sail, "
                                 "loa_m: 12, beam_m: 4, persons_max: 8}\n"
                                 "radio: {call_sign: none}\n");
    struct compose_input input = {.boat = here.boat, .base = here.base};
    here.problems = problems_new(here.arena);
    assert_null(call_script(&input, SCRIPT_MAYDAY, NULL, here.arena, here.problems));
    assert_int_equal(problems_count(here.problems, SEVERITY_ERROR), 1);
    assert_null(call_spelling(here.boat, here.arena, here.problems));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        CASE(the_general_call_is_the_distress_card_s),
        CASE(a_nature_gives_its_phrase),
        CASE(a_card_says_the_same_and_what_burns),
        CASE(without_a_fixed_set_no_mmsi_is_said),
        CASE(without_a_call_sign_no_slot_is_left),
        CASE(identities_are_spelled),
        CASE(beacons_are_told_as_coded),
        CASE(what_cannot_be_said_gives_nothing),
    };
    int failed = cmocka_run_group_tests(tests, NULL, NULL);
    return failed != 0;
}
