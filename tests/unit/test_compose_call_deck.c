/* test_compose_call_deck.c - the call panel where nobody goes to the fixed set: vapour, a
 * boat that is left, one without a radio, a person overboard. */
#include "call_case.h"

/* ---- vapour: from the deck, by handheld ---- */

/* Nothing that makes one touch the fixed set may stand on such a card. */
static void no_line_touches_the_fixed_set(const struct call_facts *call, enum word title)
{
    static const enum word refused[] = {WORD_SET_CHANNEL, WORD_SET_ON_PLAIN, WORD_SET_KEY_PLAIN,
                                        WORD_SET_NO_DSC};
    for (size_t i = 0; i < call->operate_count; i++) {
        const char *text = call->operate[i].text;
        for (size_t w = 0; w < 4; w++)
            assert_null(strstr(text, word(refused[w])));
        assert_null(strstr(text, "red lid"));
        assert_null(strstr(text, "breaker"));
        assert_null(strstr(text, "DSC"));
    }
    if (call->script != NULL) {
        assert_null(strstr(said(call), "MMSI"));
        assert_null(strstr(said(call), "200 014 730"));
    }
    assert_string_equal(call->title, word(title));
}

static void gas_is_told_by_handheld_from_the_deck(void **state)
{
    (void)state;
    const struct call_facts *call = panel("gas_leak", CASE_RADIO, HANDHELD_DECK EPIRB FLARES, "");
    EXPECT_LINES(call, numbered(1, tagged(WORD_SET_HANDHELD_FIRST, "E4", DECK_PLACE)),
                 numbered(2, word(WORD_SET_DECK)),
                 numbered(3, word(WORD_SET_CHANNEL_HANDHELD)), numbered(4, word(WORD_SET_TALK)),
                 word(WORD_SET_LEAVE_FIXED), no_answer("", ""));
    assert_string_equal(call->station, tagged(WORD_HANDHELD_AT, "E4", DECK_PLACE));
    no_line_touches_the_fixed_set(call, WORD_CALL_HANDHELD);
    assert_non_null(strstr(said(call), "FIRE: MAYDAY MAYDAY MAYDAY"));
    assert_non_null(strstr(said(call), "NO FIRE: PAN PAN"));
}

/* A beacon below lies in the gas; one on deck may be switched on, for a MAYDAY. */
static void a_beacon_on_deck_answers_silence(void **state)
{
    (void)state;
    const struct call_facts *call = panel("gas_leak", CASE_RADIO, HANDHELD_DECK EPIRB_DECK, "");
    assert_string_equal(call->operate[call->operate_count - 1].text,
                        no_answer(tagged(WORD_THEN_EPIRB, "E3", ""), ""));
}

/* In the companionway it is an arm's length into the gas; in the saloon farther. */
static void a_handheld_below_is_not_fetched_from_the_gas(void **state)
{
    (void)state;
    static const char *const below[] = {HANDHELD, HANDHELD_BELOW};
    for (size_t i = 0; i < 2; i++) {
        const struct call_facts *call = panel("gas_leak", CASE_RADIO, below[i], "");
        EXPECT_LINES(call, tagged(WORD_SET_HANDHELD_BELOW, "E4", ""), word(WORD_SET_DECK),
                     word(WORD_PHONE_UPWIND), word(WORD_WAVE_WHISTLE),
                     word(WORD_SET_LEAVE_FIXED));
        assert_string_equal(call->station, "");
        assert_null(call->script);
        no_line_touches_the_fixed_set(call, WORD_CALL_NO_RADIO);
    }
}

static void of_two_handhelds_the_one_on_deck_is_taken(void **state)
{
    (void)state;
    const struct call_facts *call = panel(
        "gas_leak", CASE_RADIO,
        HANDHELD_BELOW "  - {item: vhf_handheld, tag: E6, zone: cockpit, from_cockpit: yes}\n", "");
    assert_string_equal(call->operate[0].text,
                        numbered(1, tagged(WORD_SET_HANDHELD_FIRST, "E6", "Cockpit")));
    assert_string_equal(call->station, tagged(WORD_HANDHELD_AT, "E6", "Cockpit"));
}

static void without_a_handheld_the_gas_card_fetches_none(void **state)
{
    (void)state;
    const struct call_facts *call = panel("gas_leak", CASE_RADIO, EPIRB, "  - vhf_handheld\n");
    EXPECT_LINES(call, word(WORD_SET_DECK), word(WORD_PHONE_UPWIND), word(WORD_WAVE_WHISTLE),
                 word(WORD_SET_LEAVE_FIXED));
    assert_null(call->script);
    no_line_touches_the_fixed_set(call, WORD_CALL_NO_RADIO);
}

/* Who leaves a burning boat may have it in the hand: the words stand there for him. */
static void a_handheld_that_is_carried_may_be_used(void **state)
{
    (void)state;
    const struct call_facts *call = panel("abandon_fire", CASE_RADIO, HANDHELD_BELOW, "");
    assert_string_equal(call->operate[0].text, numbered(1, word(WORD_SET_HANDHELD_CARRIED)));
    assert_string_equal(call->station, "");
    assert_non_null(call->script);
    no_line_touches_the_fixed_set(call, WORD_CALL_HANDHELD);
    assert_null(panel("abandon_fire", CASE_RADIO, EPIRB, "  - vhf_handheld\n")->script);
}

/* ---- a boat without any radio ---- */

#define NO_RADIO_AT_ALL "  - vhf_dsc\n  - vhf_handheld\n"

static void without_a_radio_the_beacon_is_switched_on_at_once(void **state)
{
    (void)state;
    const struct call_facts *call =
        panel("galley_fire", "radio: {call_sign: none}\n", EPIRB_DECK FLARES, NO_RADIO_AT_ALL);
    EXPECT_LINES(call, tagged(WORD_BEACON_NOW, "E3", "Cockpit, starboard"),
                 word(WORD_PHONE_CENTRE), tagged(WORD_FLARES_NOW, "E5", "Cockpit locker, port"),
                 word(WORD_WAVE_WHISTLE));
    assert_string_equal(call->title, word(WORD_CALL_NO_RADIO_ABOARD));
    assert_null(call->script);
    call = panel("flooding", "radio: {call_sign: none}\n", EPIRB_DECK, NO_RADIO_AT_ALL);
    assert_string_equal(call->operate[0].text,
                        mayday_only(tagged(WORD_BEACON_NOW, "E3", "Cockpit, starboard")));
    call = panel("diesel_leak", "radio: {call_sign: none}\n", EPIRB_DECK FLARES,
                 NO_RADIO_AT_ALL);
    EXPECT_LINES(call, word(WORD_PHONE_CENTRE), word(WORD_WAVE_WHISTLE));
    call = panel("gas_leak", "radio: {call_sign: none}\n", EPIRB_DECK FLARES, NO_RADIO_AT_ALL);
    EXPECT_LINES(call, word(WORD_SET_DECK),
                 mayday_only(tagged(WORD_BEACON_UPWIND, "E3", "Cockpit, starboard")),
                 word(WORD_PHONE_UPWIND), word(WORD_WAVE_WHISTLE));
}

static void who_cannot_call_has_no_words_to_say(void **state)
{
    (void)state;
    case_boat(&test, case_boat_text(&test, "radio: {call_sign: none}\n", EPIRB,
                                    NO_RADIO_AT_ALL));
    const struct sheet *card = case_card(case_compose(&test, false), "distress_call");
    assert_int_equal(case_blocks(card, FACTS_SECTION), 2);
    assert_non_null(sheet_section(card, BLOCK_NATURE));
    assert_non_null(sheet_section(card, BLOCK_SPELL));
    assert_int_equal(sheet_warnings(card, BLOCK_CAUTIONS)->count, 0);
    assert_null(sheet_pages(card));                 /* one page: nothing to relay or to end */
    const struct call_facts *call = sheet_call(card);
    assert_string_equal(call->operate[1].text, word(WORD_PHONE_CENTRE_BELOW));
}

/* ---- man overboard: the deck first ---- */

static void the_handheld_on_deck_comes_first_when_one_is_lost(void **state)
{
    (void)state;
    const struct call_facts *call = panel("man_overboard", CASE_RADIO, HANDHELD_DECK EPIRB, "");
    assert_string_equal(call->operate[0].text, tagged(WORD_SET_DECK_FIRST, "E4", DECK_PLACE));
    assert_string_equal(call->operate[1].text, set_on());
    call = panel("man_overboard", CASE_RADIO, HANDHELD_BELOW EPIRB, "");
    assert_string_equal(call->operate[0].text, set_on());
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(gas_is_told_by_handheld_from_the_deck),
        TEST(a_beacon_on_deck_answers_silence),
        TEST(a_handheld_below_is_not_fetched_from_the_gas),
        TEST(of_two_handhelds_the_one_on_deck_is_taken),
        TEST(without_a_handheld_the_gas_card_fetches_none),
        TEST(a_handheld_that_is_carried_may_be_used),
        TEST(without_a_radio_the_beacon_is_switched_on_at_once),
        TEST(who_cannot_call_has_no_words_to_say),
        TEST(the_handheld_on_deck_comes_first_when_one_is_lost),
    };
    return cmocka_run_group_tests(tests, NULL, NULL) != 0;
}
