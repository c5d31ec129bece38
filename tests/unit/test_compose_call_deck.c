/* test_compose_call_deck.c - the call panel where nobody goes to the fixed set: vapour, a
 * boat that is left, one without a radio, a person overboard. */
#include "call_case.h"

/* ---- vapour: from the deck, by handheld ---- */

/* Nothing that makes one touch the fixed set may stand on such a card. */
static void no_line_touches_the_fixed_set(const struct call_facts *call, enum word title)
{
    static const enum word refused[] = {WORD_SET_CHANNEL, WORD_SET_ON_PLAIN, WORD_SET_KEY_PLAIN,
                                        WORD_SET_KEY_DEAD};
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
    const struct call_facts *call = panel("gas_leak", SET_RADIO, HANDHELD_DECK EPIRB FLARES, "");
    EXPECT_LINES(call, numbered(1, tagged(WORD_SET_HANDHELD_FIRST, "E4", DECK_PLACE)),
                 numbered(2, word(WORD_SET_DECK)),
                 numbered(3, word(WORD_SET_CHANNEL_HANDHELD)), numbered(4, word(WORD_SET_TALK)),
                 word(WORD_SET_LEAVE_FIXED),
                 no_answer("wave, whistle, " PHONE " if on (far upwind)"));
    assert_string_equal(call->station, tagged(WORD_HANDHELD_AT, "E4", DECK_PLACE));
    no_line_touches_the_fixed_set(call, WORD_CALL_HANDHELD);
    assert_non_null(strstr(said(call), "FIRE: MAYDAY, MAYDAY, MAYDAY"));
    assert_non_null(strstr(said(call), "NO FIRE: PAN PAN"));
}

/* A beacon below lies in the gas; one on deck may be switched on, for a MAYDAY. */
static void a_beacon_on_deck_answers_silence(void **state)
{
    (void)state;
    const struct call_facts *call = panel("gas_leak", SET_RADIO, HANDHELD_DECK EPIRB_DECK, "");
    assert_string_equal(call->operate[call->operate_count - 1].text,
                        no_answer("wave, whistle, " PHONE " if on (far upwind). **MAYDAY only:** "
                                  "EPIRB E3 on (far upwind)"));
}

/* A contact that breaks may spark: out of the charger it is taken before there is vapour. Not
 * recorded counts as in it. */
static void a_handheld_in_its_charger_is_left_there(void **state)
{
    (void)state;
    static const char *const charged[] = {", in_charger: yes", ""};
    for (size_t i = 0; i < 2; i++) {
        const char *gear = text_format(test.arena, "  - {item: vhf_handheld, tag: E4, "
                                       "zone: cockpit%s}\n", charged[i]);
        const struct call_facts *call = panel("gas_leak", SET_RADIO, gear, "");
        assert_string_equal(call->operate[0].text, tagged(WORD_SET_HANDHELD_BELOW, "E4", ""));
        assert_null(call->script);
        assert_non_null(panel("galley_fire", SET_RADIO, gear, "")->script);
    }
}

static bool row_has(const struct card_row *row, const char *tag)
{
    for (size_t i = 0; i < row->item_count; i++)
        for (size_t t = 0; t < row->items[i].tag_count; t++)
            if (text_equal(row->items[i].tags[t], tag))
                return true;
    return false;
}

/* Rows of steps that send for the gear of that tag. */
static size_t rows_for(const char *card, const char *gear, const char *not_fitted,
                       const char *tag)
{
    size_t count = 0;
    case_boat(&test, case_boat_text(&test, SET_RADIO, gear, not_fitted));
    const struct steps_facts *steps =
        sheet_steps(case_card(case_compose(&test, false), card));
    for (size_t i = 0; i < steps->count; i++)
        for (size_t r = 0; r < steps->items[i].row_count; r++)
            count += row_has(&steps->items[i].rows[r], tag);
    return count;
}

#define IN_CHARGER \
    "  - {item: vhf_handheld, tag: E4, zone: cockpit, from_cockpit: yes, in_charger: yes}\n"

/* Also where her record has no source of it: a guest brings a battery, petrol is in a tank. */
static void steps_and_panel_agree_on_a_handheld_in_its_charger(void **state)
{
    (void)state;
    static const struct { const char *card, *not_fitted; } rows[] = {
        {"gas_leak", ""}, {"battery_fire", "  - lithium_bank\n"},
    };
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
        assert_int_equal(rows_for(rows[i].card, HANDHELD_DECK, rows[i].not_fitted, "E4"), 1);
        assert_int_equal(rows_for(rows[i].card, IN_CHARGER, rows[i].not_fitted, "E4"), 0);
        assert_null(panel(rows[i].card, SET_RADIO, IN_CHARGER, rows[i].not_fitted)->script);
    }
}

/* In the companionway it is an arm's length into the gas; in the saloon farther. */
static void a_handheld_below_is_not_fetched_from_the_gas(void **state)
{
    (void)state;
    static const char *const below[] = {HANDHELD, HANDHELD_BELOW};
    for (size_t i = 0; i < 2; i++) {
        const struct call_facts *call = panel("gas_leak", SET_RADIO, below[i], "");
        EXPECT_LINES(call, tagged(WORD_SET_HANDHELD_BELOW, "E4", ""), word(WORD_SET_DECK),
                     word(WORD_WAVE_WHISTLE), phone(WORD_PHONE_UPWIND),
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
        "gas_leak", SET_RADIO,
        HANDHELD_BELOW "  - {item: vhf_handheld, tag: E6, zone: cockpit, from_cockpit: yes, "
                       "in_charger: no}\n", "");
    assert_string_equal(call->operate[0].text,
                        numbered(1, tagged(WORD_SET_HANDHELD_FIRST, "E6", "Cockpit")));
    assert_string_equal(call->station, tagged(WORD_HANDHELD_AT, "E6", "Cockpit"));
}

static void without_a_handheld_the_gas_card_fetches_none(void **state)
{
    (void)state;
    const struct call_facts *call = panel("gas_leak", SET_RADIO, EPIRB, "  - vhf_handheld\n");
    EXPECT_LINES(call, word(WORD_SET_DECK), word(WORD_WAVE_WHISTLE), phone(WORD_PHONE_UPWIND),
                 word(WORD_SET_LEAVE_FIXED));
    assert_null(call->script);
    no_line_touches_the_fixed_set(call, WORD_CALL_NO_RADIO);
}

/* Who leaves a burning boat may have it in the hand: the words stand there for him. */
static void a_handheld_that_is_carried_may_be_used(void **state)
{
    (void)state;
    const struct call_facts *call = panel("abandon_fire", SET_RADIO, HANDHELD_BELOW, "");
    assert_string_equal(call->operate[0].text, numbered(1, word(WORD_SET_HANDHELD_CARRIED)));
    assert_string_equal(call->station, "");
    assert_non_null(call->script);
    no_line_touches_the_fixed_set(call, WORD_CALL_HANDHELD);
    assert_null(panel("abandon_fire", SET_RADIO, EPIRB, "  - vhf_handheld\n")->script);
}

#define SET_BY_HANDSET \
    "radio: {tag: E9, call_sign: QTAB2, dsc: no, power_switch: knob, zone: navigation_station" \
    STATION "}\ngas: {carried: no}\n"
#define ENGINE(fuel) "engines:\n  - {space: engine_space, fuel: " fuel ", drive: shaft}\n"

/* Nothing aboard that gives vapour, by its record: the handset on deck is in clean air. Petrol
 * in a tank is vapour too, with or without a can. */
static void without_vapour_the_second_handset_serves_who_leaves_a_fire(void **state)
{
    (void)state;
    const char *set = SET_BY_HANDSET ENGINE("diesel");
    static const char none[] = "  - lpg_bottle_valve\n  - petrol_stowage\n  - lithium_bank\n"
                               "  - vhf_handheld\n";
    const struct call_facts *call = panel("abandon_fire", set, EPIRB_DECK, none);
    assert_string_equal(call->operate[0].text,
                        numbered(1, words_fill(test.words, test.arena, WORD_SET_SECOND, "place",
                                               "at the wheel", NULL)));
    assert_non_null(call->script);
    call = panel("abandon_fire", set, EPIRB_DECK, "  - vhf_handheld\n");
    assert_null(call->script);
    assert_null(panel("abandon_fire", SET_BY_HANDSET ENGINE("petrol"), EPIRB_DECK, none)->script);
    assert_null(panel("abandon_fire", SET_BY_HANDSET, EPIRB_DECK, none)->script);
}

/* ---- a boat without any radio ---- */

#define NO_RADIO_AT_ALL "  - vhf_dsc\n  - vhf_handheld\n"

static void without_a_radio_the_beacon_is_switched_on_at_once(void **state)
{
    (void)state;
    const struct call_facts *call =
        panel("galley_fire", "radio: {call_sign: none}\n", EPIRB_DECK FLARES, NO_RADIO_AT_ALL);
    EXPECT_LINES(call, alone(WORD_BEACON_NOW, "EPIRB", "E3", "Cockpit, starboard"),
                 phone(WORD_PHONE_CENTRE),
                 alone(WORD_FLARES_NOW, "Flares", "E5", "Cockpit locker, port"),
                 word(WORD_WAVE_WHISTLE));
    assert_string_equal(call->title, word(WORD_CALL_NO_RADIO_ABOARD));
    assert_null(call->script);
    call = panel("flooding", "radio: {call_sign: none}\n", EPIRB_DECK, NO_RADIO_AT_ALL);
    assert_string_equal(call->operate[0].text,
                        mayday_only(alone(WORD_BEACON_NOW, "EPIRB", "E3", "Cockpit, starboard")));
    call = panel("diesel_leak", "radio: {call_sign: none}\n", EPIRB_DECK FLARES,
                 NO_RADIO_AT_ALL);
    EXPECT_LINES(call, phone(WORD_PHONE_CENTRE), word(WORD_WAVE_WHISTLE));
    call = panel("gas_leak", "radio: {call_sign: none}\n", EPIRB_DECK FLARES, NO_RADIO_AT_ALL);
    EXPECT_LINES(call, word(WORD_SET_DECK),
                 mayday_only(alone(WORD_BEACON_UPWIND, "EPIRB", "E3", "Cockpit, starboard")),
                 word(WORD_WAVE_WHISTLE), phone(WORD_PHONE_UPWIND));
}

static void who_cannot_call_has_no_words_to_say(void **state)
{
    (void)state;
    case_boat(&test, case_boat_text(&test, "radio: {call_sign: none}\n", EPIRB,
                                    NO_RADIO_AT_ALL));
    const struct sheet *card = case_card(case_compose(&test, false), "distress_call");
    assert_int_equal(case_blocks(card, FACTS_SECTION), 3);
    assert_non_null(sheet_section(card, BLOCK_NATURE));
    assert_null(sheet_section(card, BLOCK_BEACON)->script);
    assert_non_null(sheet_section(card, BLOCK_SPELL));
    assert_int_equal(sheet_warnings(card, BLOCK_CAUTIONS)->count, 0);
    assert_null(sheet_pages(card));                 /* one page: nothing to relay or to end */
    const struct call_facts *call = sheet_call(card);
    assert_string_equal(call->operate[1].text, phone(WORD_PHONE_CENTRE));
}

/* ---- man overboard: the deck first ---- */

static void the_handheld_on_deck_comes_first_when_one_is_lost(void **state)
{
    (void)state;
    const struct call_facts *call = panel("man_overboard", SET_RADIO, HANDHELD_DECK EPIRB, "");
    assert_string_equal(call->operate[0].text,
                        first_tried(WORD_SET_ALONE, tagged(WORD_HANDHELD_NAMED, "E4",
                                                           DECK_PLACE)));
    assert_string_equal(call->operate[1].text, set_on());
    call = panel("man_overboard", SET_RADIO, HANDHELD_BELOW EPIRB, "");
    assert_string_equal(call->operate[0].text, set_on());
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(gas_is_told_by_handheld_from_the_deck),
        TEST(a_beacon_on_deck_answers_silence),
        TEST(a_handheld_in_its_charger_is_left_there),
        TEST(steps_and_panel_agree_on_a_handheld_in_its_charger),
        TEST(without_vapour_the_second_handset_serves_who_leaves_a_fire),
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
