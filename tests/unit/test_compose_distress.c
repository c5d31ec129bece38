/* test_compose_distress.c - the distress card: which sections it has on this boat, and what they
 * say by her record and the base's. */
#include "call_case.h"

#include "compose.h"
#include "radio.h"
#include "text.h"

static const char *base_with(const char *centre, const char *clocks)
{
    return text_format(test.arena,
                       "base: {name: B, specimen: yes, phone_24h: \"+999 00 000 000\"}\n"
                       "rescue_centre: {name: C, call: C COASTGUARD, channel: \"67\", "
                       "phone: \"+999 00 000 001\"%s}\n"
                       "cruising_area: {latitude: north, longitude: east, sea_area: A1}\n%s",
                       centre, clocks);
}

static void the_distress_card_lists_natures_and_every_form(void **state)
{
    (void)state;
    static const enum block_key keys[] = {
        BLOCK_NATURE, BLOCK_NO_ANSWER, BLOCK_POSITION, BLOCK_PAN_PAN, BLOCK_PHRASES, BLOCK_NEEDS,
        BLOCK_HEARD, BLOCK_RELAY, BLOCK_DOWNGRADE, BLOCK_CANCEL, BLOCK_BEACON, BLOCK_ASKED,
        BLOCK_SPELL};
    const size_t count = sizeof keys / sizeof *keys;
    case_boat(&test, case_boat_text(&test, CASE_RADIO, HANDHELD EPIRB, ""));
    const struct sheet *card = case_card(case_compose(&test, false), "distress_call");
    assert_false(card->held);
    assert_int_equal(case_blocks(card, FACTS_SECTION), count);
    for (size_t i = 0; i < count; i++)
        assert_non_null(sheet_section(card, keys[i]));
    const struct section_facts *natures = sheet_section(card, BLOCK_NATURE);
    /* S15: in the order of M.493 */
    for (enum nature_key key = NATURE_NONE + 1; key < NATURE_COUNT; key++) {
        assert_string_equal(natures->lead[key - 1], words_get(test.words, nature_of(key)->brief));
        assert_string_equal(natures->lines[key - 1].text, nature_of(key)->phrase);
    }
    assert_int_equal(natures->line_count, NATURE_COUNT - 1);
    assert_non_null(strstr(natures->note, "press MENU, turn to the nature"));
    assert_string_equal(sheet_section(card, BLOCK_SPELL)->lines[0].text,
                        "TANGO ALFA MIKE ALFA ROMEO INDIA SIERRA KILO");
    assert_non_null(strstr(script_text(sheet_call(card)->script, test.arena),
                           "PROBLEM ____ (nature)"));
    case_boat(&test, case_boat_text(&test, NO_DSC, HANDHELD EPIRB, ""));
    card = case_card(case_compose(&test, false), "distress_call");
    assert_null(sheet_section(card, BLOCK_NATURE)->note); /* no set to be told the nature */
    assert_int_equal(case_blocks(card, FACTS_SECTION), count - 1);
    assert_null(sheet_section(card, BLOCK_CANCEL)); /* and no alert to cancel */
    assert_null(sheet_block(card, BLOCK_CAUTIONS));       /* nor a red key to warn of */
}

/* What is done first has numbers, which stand in discs; what is done without an answer stands
 * behind the natures. */
static void the_distress_card_parts_what_is_done_first_from_what_is_done_then(void **state)
{
    (void)state;
    const struct call_facts *call = panel("distress_call", SET_RADIO, HANDHELD EPIRB, "");
    const struct sheet *card = case_card(case_compose(&test, false), "distress_call");
    const struct section_facts *after = sheet_section(card, BLOCK_NO_ANSWER);
    assert_int_equal(call->operate_count, 4);
    assert_int_equal(call->act_count, 4);
    assert_int_equal(call->act_first, 0);
    for (size_t i = 0; i < 4; i++)
        assert_string_equal(call->operate[i].text, numbered((int)i + 1, call->acts[i].text));
    assert_int_equal(after->line_count, 2);
    assert_string_equal(after->title, "");
    assert_string_equal(after->lines[0].text, instead_handheld(WORD_CAUSE_ANY, HANDHELD_PLACE));
    assert_string_equal(after->lines[1].text,
                        no_answer("handheld E4, " PHONE ", wave, whistle. **MAYDAY only:** "
                                  "EPIRB E3 on"));
}

static void without_a_fixed_radio_the_first_line_of_the_distress_card_has_no_number(void **state)
{
    (void)state;
    const struct call_facts *call = panel("distress_call", "radio: {call_sign: QTAB2}\n",
                                          HANDHELD EPIRB, "  - vhf_dsc\n");
    assert_string_equal(call->operate[0].text, word(WORD_SET_NO_FIXED));
    assert_int_equal(call->act_first, 1);
    assert_int_equal(call->act_count, 3);
    assert_int_equal(call->operate_count, 4);
}

/* Whole, in the same words and order as on the screen: no page sends its reader to another for
 * who speaks. */
static void every_form_stands_whole_on_the_distress_card(void **state)
{
    (void)state;
    static const struct { enum block_key key; enum script_form form; } rows[] = {
        {BLOCK_PAN_PAN, SCRIPT_PAN_PAN}, {BLOCK_HEARD, SCRIPT_RECEIPT},
        {BLOCK_RELAY, SCRIPT_RELAY}, {BLOCK_DOWNGRADE, SCRIPT_DOWNGRADE},
        {BLOCK_CANCEL, SCRIPT_CANCEL}, {BLOCK_BEACON, SCRIPT_CANCEL_BEACON}};
    struct compose_input input = {.base = test.base};
    case_boat(&test, case_boat_text(&test, CASE_RADIO, HANDHELD EPIRB, ""));
    input.boat = test.boat;
    const struct sheet *card = case_card(case_compose(&test, false), "distress_call");
    for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
        const struct script *said_so = call_script(&input, rows[i].form, NULL, test.arena,
                                                   test.problems);
        const char *text = script_text(sheet_section(card, rows[i].key)->script, test.arena);
        assert_string_equal(text, script_text(said_so, test.arena));
        assert_non_null(strstr(text, "THIS IS TAMARISK"));
    }
}

/* That the nature is left open is a choice of a set's list, and is told of sets alone. */
static void an_open_nature_is_listed_where_a_set_is_told_it(void **state)
{
    (void)state;
    static const char *const radios[] = {CASE_RADIO, NO_DSC};
    for (size_t i = 0; i < 2; i++) {
        size_t open = 0;
        case_boat(&test, case_boat_text(&test, radios[i], HANDHELD EPIRB, ""));
        const struct section_facts *natures =
            sheet_section(case_card(case_compose(&test, false), "distress_call"), BLOCK_NATURE);
        for (size_t k = 0; k < natures->line_count; k++)
            open += strcmp(natures->lead[k], word(WORD_NATURE_UNDESIGNATED)) == 0 ? 1 : 0;
        assert_int_equal(open, i == 0);
        assert_int_equal(natures->line_count, NATURE_COUNT - 1 - (int)i);
    }
}

/* Her beacon can go off by mistake without a radio: who searches is told by telephone. */
static void without_a_radio_a_beacon_is_cancelled_by_telephone(void **state)
{
    (void)state;
    case_base(&test, base_with("", ""));
    case_boat(&test, case_boat_text(
        &test, "radio: {call_sign: none}\n",
        "  - {item: epirb, tag: E3, zone: cockpit, hex_id: \"9908D 74A71 034D1\"}\n",
        "  - vhf_dsc\n  - vhf_handheld\n  - flares\n"));
    const struct sheet *card = case_card(case_compose(&test, false), "distress_call");
    const struct section_facts *beacon = sheet_section(card, BLOCK_BEACON);
    assert_null(beacon->script);
    assert_non_null(strstr(beacon->note, "+999 00 000 001"));
    assert_null(strstr(beacon->note, "16"));
    assert_string_equal(beacon->lines[0].text, "9908D 74A71 034D1");
    assert_null(sheet_section(card, BLOCK_RELAY));
}

/* One event has one wording: what is also a nature of distress is said in its words; and water
 * that comes in is none of this list, since it may be grave. */
static void urgency_has_a_phrase_for_each_common_case(void **state)
{
    (void)state;
    case_boat(&test, case_boat_text(&test, CASE_RADIO, HANDHELD EPIRB, ""));
    const struct sheet *card = case_card(case_compose(&test, false), "distress_call");
    const struct section_facts *wrong = sheet_section(card, BLOCK_PHRASES);
    const struct section_facts *needed = sheet_section(card, BLOCK_NEEDS);
    size_t shared = 0;
    assert_int_equal(wrong->line_count, 8);
    for (size_t i = 0; i < wrong->line_count; i++) {
        const char *phrase = wrong->lines[i].text;
        assert_true(text_begins(phrase, "I "));    /* behind PROBLEM, never behind another I */
        assert_string_equal(phrase, urgency_problem(i)->phrase);
        assert_string_not_equal(phrase, nature_of(NATURE_FLOODING)->phrase);
        for (enum nature_key key = NATURE_NONE + 1; key < NATURE_COUNT; key++)
            shared += strcmp(phrase, nature_of(key)->phrase) == 0 ? 1 : 0;
    }
    assert_int_equal(shared, 2);
    assert_null(urgency_problem(wrong->line_count));
    assert_int_equal(needed->line_count, 4);
    for (size_t i = 0; i < needed->line_count; i++) {
        assert_string_equal(needed->lines[i].text, urgency_need(i)->phrase);
        assert_false(text_begins(urgency_need(i)->phrase, "I "));    /* behind I REQUIRE */
    }
}

/* A boat whose set sends no alert has no red key, and no alarm to stop. */
static void without_dsc_no_page_speaks_of_key_or_alarm(void **state)
{
    (void)state;
    case_boat(&test, case_boat_text(&test, NO_DSC, HANDHELD EPIRB, ""));
    const struct sheet *card = case_card(case_compose(&test, false), "distress_call");
    assert_string_equal(sheet_section(card, BLOCK_HEARD)->end_note, word(WORD_HEARD_THEN_VOICE));
    assert_null(sheet_section(card, BLOCK_ASKED)->note);
    case_boat(&test, case_boat_text(&test, CASE_RADIO, HANDHELD EPIRB, ""));
    card = case_card(case_compose(&test, false), "distress_call");
    assert_string_equal(sheet_section(card, BLOCK_HEARD)->end_note, word(WORD_HEARD_THEN));
    assert_string_equal(sheet_section(card, BLOCK_ASKED)->note, word(WORD_SILENCE_PLAIN));
    case_boat(&test, case_boat_text(
        &test, CASE_RADIO "  silence_steps: [press ENT]\n", HANDHELD EPIRB, ""));
    card = case_card(case_compose(&test, false), "distress_call");
    assert_non_null(strstr(sheet_section(card, BLOCK_ASKED)->note, "press ENT"));
}

/* Of a beacon that she does not have nothing is said, nor asked. */
static void without_a_beacon_none_is_told_of(void **state)
{
    (void)state;
    case_boat(&test, case_boat_text(&test, CASE_RADIO, HANDHELD,
                                    "  - epirb\n  - personal_beacon\n  - liferaft\n"));
    const struct sheet *card = case_card(case_compose(&test, false), "distress_call");
    assert_null(sheet_section(card, BLOCK_BEACON));
    const char *asked = script_text(sheet_section(card, BLOCK_ASKED)->script, test.arena);
    assert_null(strstr(asked, word(WORD_ASKED_BEACON)));
    assert_null(strstr(asked, word(WORD_ASKED_RAFT)));
    assert_non_null(strstr(asked, word(WORD_ASKED_PHONE)));
}

static void the_mmsi_is_spelled_in_words(void **state)
{
    (void)state;
    case_boat(&test, case_boat_text(&test, CASE_RADIO, HANDHELD EPIRB, ""));
    const struct sheet *card = case_card(case_compose(&test, false), "distress_call");
    const struct section_facts *spelling = sheet_section(card, BLOCK_SPELL);
    assert_int_equal(spelling->line_count, 3);
    assert_string_equal(spelling->lines[1].text, "QUEBEC TANGO ALFA BRAVO TWO");
    assert_string_equal(spelling->lines[2].text,
                        "TWO ZERO ZERO, ZERO ONE FOUR, SEVEN THREE ZERO");
}

/* ---- what the base records ---- */

static const struct sheet *distress_of_base(const char *centre, const char *clocks)
{
    case_base(&test, base_with(centre, clocks));
    case_boat(&test, case_boat_text(&test, CASE_RADIO, HANDHELD EPIRB, ""));
    return case_card(case_compose(&test, false), "distress_call");
}

static void a_beacon_goes_off_first_unless_the_base_says_otherwise(void **state)
{
    (void)state;
    static const char *const bases[] = {"", ", epirb_cancel: off_then_tell",
                                        ", epirb_cancel: tell_then_off"};
    for (size_t i = 0; i < 3; i++) {
        const char *note = sheet_section(distress_of_base(bases[i], ""), BLOCK_BEACON)->note;
        const char *off = strstr(note, "OFF"), *tell = strstr(note, "Tell them");
        assert_true(off != NULL && tell != NULL);
        assert_int_equal(tell < off, i == 2);
        assert_non_null(strstr(note, "+999 00 000 001"));
    }
}

static void utc_is_told_by_the_clocks_of_the_base(void **state)
{
    (void)state;
    static const struct { const char *offset, *said; } rows[] = {
        {"+2", "UTC = clock on board minus 2 h."}, {"0", "UTC = clock on board."},
        {"-3:30", "UTC = clock on board plus 3 h 30 min."}};
    for (size_t i = 0; i < 3; i++) {
        const struct sheet *card = distress_of_base(
            "", text_format(test.arena, "clocks:\n  - {offset: %s}\n", rows[i].offset));
        const struct section_facts *place = sheet_section(card, BLOCK_POSITION);
        assert_int_equal(place->line_count, 2);
        assert_string_equal(place->lines[0].text, rows[i].said);
    }
    const struct sheet *card = distress_of_base(
        "", "clocks:\n  - {offset: +1, from: 2026-10-25, to: 2027-03-27}\n"
            "  - {offset: +2, from: 2027-03-28, to: 2027-10-30}\n");
    const struct section_facts *place = sheet_section(card, BLOCK_POSITION);
    assert_int_equal(place->line_count, 3);
    assert_string_equal(place->lines[1].text,
                        "2027-03-28 to 2027-10-30: UTC = clock on board minus 2 h.");
    card = distress_of_base("", "");
    assert_int_equal(sheet_section(card, BLOCK_POSITION)->line_count, 1);
    assert_non_null(strstr(script_text(sheet_call(card)->script, test.arena), "LOCAL TIME"));
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(the_distress_card_lists_natures_and_every_form),
        TEST(the_distress_card_parts_what_is_done_first_from_what_is_done_then),
        TEST(without_a_fixed_radio_the_first_line_of_the_distress_card_has_no_number),
        TEST(every_form_stands_whole_on_the_distress_card),
        TEST(an_open_nature_is_listed_where_a_set_is_told_it),
        TEST(without_a_radio_a_beacon_is_cancelled_by_telephone),
        TEST(urgency_has_a_phrase_for_each_common_case),
        TEST(without_dsc_no_page_speaks_of_key_or_alarm),
        TEST(without_a_beacon_none_is_told_of),
        TEST(the_mmsi_is_spelled_in_words),
        TEST(a_beacon_goes_off_first_unless_the_base_says_otherwise),
        TEST(utc_is_told_by_the_clocks_of_the_base),
    };
    return cmocka_run_group_tests(tests, NULL, NULL) != 0;
}
