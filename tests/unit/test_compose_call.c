/* test_compose_call.c - the call panel: how to work what this very boat has to
 * call with, line by line, and the script beside it. */
#include "call_case.h"

/* ---- MAYDAY from the fixed set ---- */

static void a_dsc_set_is_worked_in_four_numbered_lines(void **state)
{
    (void)state;
    const struct call_facts *call = panel("galley_fire", CASE_RADIO, HANDHELD EPIRB FLARES, "");
    EXPECT_LINES(call, word(WORD_SET_OUTSIDE_SMOKE), set_on(), key(WORD_SET_KEY),
                 numbered(3, set_channel()), numbered(4, word(WORD_SET_TALK)),
                 tagged(WORD_SET_HANDHELD, "E4", HANDHELD_PLACE),
                 no_answer_with(WORD_THEN_HANDHELD, "E4", WORD_THEN_EPIRB, "E3"));
    assert_string_equal(call->title, word(WORD_CALL_MAYDAY));
    assert_string_equal(call->station, tagged(WORD_RADIO_AT, "E9", "Chart table, port"));
    assert_non_null(strstr(said(call), "I AM ON FIRE. I REQUIRE IMMEDIATE ASSISTANCE."));
    assert_non_null(strstr(said(call), "MMSI 200 014 730"));
}

static void what_the_record_lacks_is_said_in_plain_words(void **state)
{
    (void)state;
    const struct call_facts *call =
        panel("galley_fire",
              "radio: {tag: E9, call_sign: QTAB2, mmsi: \"200014730\", "
              "mmsi_programmed: yes, dsc: yes, zone: navigation_station}\n",
              HANDHELD EPIRB, "");
    assert_string_equal(call->operate[1].text, numbered(1, word(WORD_SET_ON_PLAIN)));
    const char *lift = words_fill(test.words, test.arena, WORD_SET_KEY_NO_HOLD, "cover",
                                  word(WORD_SET_KEY_PLAIN), NULL);
    assert_string_equal(call->operate[2].text, numbered(2, lift));
}

static void without_dsc_there_is_no_key_and_it_is_said(void **state)
{
    (void)state;
    const struct call_facts *call = panel("galley_fire", NO_DSC, HANDHELD EPIRB, "");
    EXPECT_LINES(call, word(WORD_SET_OUTSIDE_SMOKE), set_on(),
                 numbered(2, set_channel()), numbered(3, word(WORD_SET_TALK)),
                 word(WORD_SET_NO_DSC),
                 tagged(WORD_SET_HANDHELD, "E4", HANDHELD_PLACE),
                 no_answer_with(WORD_THEN_HANDHELD, "E4", WORD_THEN_EPIRB, "E3"));
    assert_null(strstr(said(call), "MMSI"));
}

/* A set whose MMSI nobody put in sends no alert that names the boat. */
static void a_set_without_its_mmsi_counts_as_without_dsc(void **state)
{
    (void)state;
    const struct call_facts *call =
        panel("galley_fire",
              "radio: {tag: E9, call_sign: QTAB2, mmsi: \"200014730\", "
              "mmsi_programmed: no, dsc: yes, zone: navigation_station, distress_key: Lift, "
              "hold_s: 5}\n",
              HANDHELD EPIRB, "");
    for (size_t i = 0; i < call->operate_count; i++)
        assert_null(strstr(call->operate[i].text, "Lift"));
    assert_string_equal(call->operate[4].text, word(WORD_SET_NO_DSC));
    assert_null(strstr(said(call), "MMSI"));
}

static void without_a_fixed_radio_no_set_is_worked(void **state)
{
    (void)state;
    const struct call_facts *call =
        panel("galley_fire", "radio: {call_sign: QTAB2}\n", HANDHELD EPIRB, "  - vhf_dsc\n");
    EXPECT_LINES(call, word(WORD_SET_OUTSIDE_SMOKE), word(WORD_SET_NO_FIXED),
                 numbered(1, tagged(WORD_SET_HANDHELD_FIRST, "E4", HANDHELD_PLACE)),
                 numbered(2, word(WORD_SET_CHANNEL_HANDHELD)), numbered(3, word(WORD_SET_TALK)),
                 no_answer(tagged(WORD_THEN_EPIRB, "E3", ""), ""));
    assert_string_equal(call->station, tagged(WORD_HANDHELD_AT, "E4", HANDHELD_PLACE));
    for (size_t i = 0; i < call->operate_count; i++) {
        assert_null(strstr(call->operate[i].text, word(WORD_SET_KEY_PLAIN)));
        assert_null(strstr(call->operate[i].text, "25 W"));
    }
    assert_null(strstr(said(call), "MMSI"));
}

static bool calls_from_deck(const char *card)
{
    static const char *const cards[] = {"gas_leak", "petrol_leak", "battery_fire",
                                        "abandon_fire"};
    for (size_t i = 0; i < sizeof cards / sizeof *cards; i++)
        if (strcmp(cards[i], card) == 0)
            return true;
    return false;
}

static void a_radio_nobody_recorded_holds_the_card(void **state)
{
    (void)state;
    size_t count, told = 0;
    case_boat(&test, case_boat_text(&test, "", HANDHELD EPIRB, "  - lithium_bank\n"));
    const struct sheet_set *set = case_compose(&test, false);
    const struct problem *all = problems_sorted(test.problems, &count);
    for (size_t i = 0; i < count; i++) {
        if (strncmp(all[i].what, "vhf_dsc is not recorded", 23) != 0)
            continue;
        told++;
        for (size_t c = 0; c < set->count; c++)      /* all that call with the fixed set */
            assert_int_equal(strstr(all[i].what, sheet_title(set->sheets[c])->title) != NULL,
                             !calls_from_deck(set->sheets[c]->id) &&
                                 sheet_source_of(set->sheets[c]->kind) != FROM_RECORD);
    }
    assert_int_equal(told, 1);
    assert_true(case_card(set, "distress_call")->held);
}

/* ---- who else can call ---- */

static void without_a_handheld_the_deck_is_left(void **state)
{
    (void)state;
    const struct call_facts *call = panel("galley_fire", CASE_RADIO, EPIRB, "  - vhf_handheld\n");
    EXPECT_LINES(call, word(WORD_SET_OUTSIDE_SMOKE), set_on(), key(WORD_SET_KEY),
                 numbered(3, set_channel()), numbered(4, word(WORD_SET_TALK)),
                 word(WORD_SET_HANDHELD_NONE),
                 no_answer(tagged(WORD_THEN_EPIRB, "E3", ""), ""));
}

static void without_a_beacon_flares_are_the_last_way(void **state)
{
    (void)state;
    const struct call_facts *call =
        panel("galley_fire", CASE_RADIO, HANDHELD FLARES, "  - epirb\n");
    assert_string_equal(call->operate[call->operate_count - 1].text,
                        no_answer_with(WORD_THEN_HANDHELD, "E4", WORD_THEN_FLARES, "E5"));
    call = panel("galley_fire", CASE_RADIO, "  - {item: torch, tag: C1, zone: saloon}\n",
                 "  - epirb\n  - flares\n  - vhf_handheld\n");
    assert_string_equal(call->operate[call->operate_count - 1].text, no_answer("", ""));
}

static void beyond_a1_the_beacon_goes_with_the_first_call(void **state)
{
    (void)state;
    static const char area[] =
        "base: {name: Base, specimen: yes, phone_24h: \"+999 00 000 000\"}\n"
        "rescue_centre: {name: Skerry Sound, channel: \"67\"}\n"
        "cruising_area: {latitude: north, longitude: both, sea_area: A2}\nlanguages: [en]\n";
    case_base(&test, area);
    const struct call_facts *call = panel("galley_fire", CASE_RADIO, HANDHELD EPIRB, "");
    assert_int_equal(call->operate_count, 8);
    assert_string_equal(call->operate[6].text, tagged(WORD_BEACON_FIRST, "E3", ""));
    assert_string_equal(call->operate[7].text,
                        no_answer(tagged(WORD_THEN_HANDHELD, "E4", ""), ""));
    assert_non_null(strstr(said(call), "EAST / WEST"));
    call = panel("galley_fire", CASE_RADIO, HANDHELD, "  - epirb\n  - flares\n");
    assert_int_equal(call->operate_count, 7);
}

static void what_the_panel_names_stands_on_the_plan(void **state)
{
    (void)state;
    size_t beacon = 0, handheld = 0, radio = 0;
    (void)panel("galley_fire", CASE_RADIO, HANDHELD EPIRB, "");
    const struct sheet *card = case_card(case_compose(&test, false), "galley_fire");
    const struct plan_facts *plan = sheet_plan(card);
    for (size_t i = 0; i < plan->marker_count; i++) {
        beacon += strcmp(plan->markers[i].tag, "E3") == 0 ? 1 : 0;
        handheld += strcmp(plan->markers[i].tag, "E4") == 0 ? 1 : 0;
        radio += strcmp(plan->markers[i].tag, "E9") == 0 ? 1 : 0;
    }
    assert_true(beacon == 1 && handheld == 1 && radio == 1);
}

/* ---- MAYDAY or PAN PAN ---- */

static void the_key_is_for_mayday_only_where_both_may_be_called(void **state)
{
    (void)state;
    static const char *const cards[] = {"flooding", "distress_call"};
    for (size_t i = 0; i < 2; i++) {
        const struct call_facts *call = panel(cards[i], CASE_RADIO, HANDHELD EPIRB, "");
        const char *press = words_fill(test.words, test.arena, WORD_SET_KEY, "cover",
                                       "Lift the red lid", "seconds", "5", NULL);
        assert_string_equal(call->operate[1].text, numbered(2, mayday_only(press)));
    }
    const struct call_facts *call = panel("flooding", CASE_RADIO, HANDHELD EPIRB, "");
    assert_string_equal(call->title, word(WORD_CALL_BOTH));
    assert_non_null(strstr(said(call), ": MAYDAY MAYDAY MAYDAY\n"));
    assert_non_null(strstr(said(call), ": PAN PAN PAN PAN PAN PAN ALL STATIONS, 3 TIMES\n"));
}

static void an_urgency_call_never_speaks_of_the_key(void **state)
{
    (void)state;
    const char *const texts[] = {
        case_procedure_text(&test, "smoke", 10,
                            "steps: [{id: a, sources: [S5]}]\ncall_when: {}\n"
                            "calls: [{signal: pan_pan, say: I AM AGROUND, from: fixed}]\n",
                            "steps: {a: {act: \"**A.**\"}}\n"
                            "call_when: \"ALL: call now.\"\n"), NULL};
    case_procedures(&test, texts);
    const struct call_facts *call = panel("smoke", CASE_RADIO, HANDHELD EPIRB FLARES, "");
    EXPECT_LINES(call, set_on(), numbered(2, set_channel()),
                 numbered(3, word(WORD_SET_TALK)), tagged(WORD_SET_HANDHELD, "E4", HANDHELD_PLACE),
                 no_answer(tagged(WORD_THEN_HANDHELD, "E4", ""), ""));
    assert_string_equal(call->title, word(WORD_CALL_PAN_PAN));
}

/* ---- the distress card ---- */

static void the_distress_card_lists_natures_and_every_form(void **state)
{
    (void)state;
    static const enum block_key keys[] = {BLOCK_NATURE, BLOCK_NO_ANSWER, BLOCK_PAN_PAN,
                                          BLOCK_RELAY, BLOCK_DOWNGRADE, BLOCK_CANCEL,
                                          BLOCK_SPELL};
    case_boat(&test, case_boat_text(&test, CASE_RADIO, HANDHELD EPIRB, ""));
    const struct sheet *card = case_card(case_compose(&test, false), "distress_call");
    assert_false(card->held);
    assert_int_equal(case_blocks(card, FACTS_SECTION), 7);
    for (size_t i = 0; i < 7; i++)
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
    assert_non_null(strstr(script_text(sheet_call(card)->script, test.arena), "I ____ (nature)"));
    case_boat(&test, case_boat_text(&test, NO_DSC, HANDHELD EPIRB, ""));
    card = case_card(case_compose(&test, false), "distress_call");
    assert_null(sheet_section(card, BLOCK_NATURE)->note); /* no set to be told the nature */
    assert_int_equal(case_blocks(card, FACTS_SECTION), 6);
    assert_null(sheet_section(card, BLOCK_CANCEL)); /* and no alert to cancel */
    assert_null(sheet_block(card, BLOCK_CAUTIONS));       /* nor a red key to warn of */
    const struct pages_facts *pages = sheet_pages(card);
    assert_string_equal(pages->signs_of_two[CALL_PART_ANSWERING], word(WORD_ANSWER_WHEN));
}

/* What is done first has numbers, which stand in discs; what is done without an answer stands
 * behind the natures. */
static void the_distress_card_parts_what_is_done_first_from_what_is_done_then(void **state)
{
    (void)state;
    const struct call_facts *call = panel("distress_call", CASE_RADIO, HANDHELD EPIRB, "");
    const struct sheet *card = case_card(case_compose(&test, false), "distress_call");
    const struct section_facts *after = sheet_section(card, BLOCK_NO_ANSWER);
    assert_int_equal(call->operate_count, 4);
    assert_int_equal(call->act_count, 4);
    assert_int_equal(call->act_first, 0);
    for (size_t i = 0; i < 4; i++)
        assert_string_equal(call->operate[i].text, numbered((int)i + 1, call->acts[i].text));
    assert_int_equal(after->line_count, 2);
    assert_string_equal(after->title, "");
    assert_string_equal(after->lines[0].text, tagged(WORD_SET_HANDHELD, "E4", HANDHELD_PLACE));
    assert_string_equal(after->lines[1].text,
                        no_answer_with(WORD_THEN_HANDHELD, "E4", WORD_THEN_EPIRB, "E3"));
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

/* The second page says who speaks in full; on the first that stands at its top. */
static void scripts_of_the_second_page_say_who_speaks(void **state)
{
    (void)state;
    static const enum block_key keys[] = {BLOCK_RELAY, BLOCK_DOWNGRADE, BLOCK_CANCEL};
    case_boat(&test, case_boat_text(&test, CASE_RADIO, HANDHELD EPIRB, ""));
    const struct sheet *card = case_card(case_compose(&test, false), "distress_call");
    for (size_t i = 0; i < sizeof keys / sizeof *keys; i++) {
        const char *text = script_text(sheet_section(card, keys[i])->script, test.arena);
        assert_non_null(strstr(text, "THIS IS TAMARISK"));
        assert_non_null(strstr(text, "CALL SIGN QUEBEC TANGO ALFA BRAVO TWO"));
    }
    const char *urgent = script_text(sheet_section(card, BLOCK_PAN_PAN)->script, test.arena);
    assert_null(strstr(urgent, "TAMARISK"));
    assert_non_null(strstr(urgent, words_fill(test.words, test.arena,
                                              WORD_DISTRESS_NAMED_AS_MAYDAY, "this_is",
                                              SPOKEN_THIS_IS, NULL)));
    const char *over = script_text(sheet_section(card, BLOCK_DOWNGRADE)->script, test.arena);
    const char *ended = strstr(over, word(WORD_DISTRESS_WHAT_ENDED));
    assert_true(ended != NULL && ended < strstr(over, "OVER"));    /* nobody listens after it */
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

/* The list on a card has room for a few words only; in English they stay the set's own, and
 * no two natures share them. */
static void brief_words_of_natures_begin_as_the_set_s_own(void **state)
{
    (void)state;
    for (enum nature_key key = NATURE_NONE + 1; key < NATURE_COUNT; key++) {
        const char *brief = words_get(test.words, nature_of(key)->brief);
        const char *label = nature_of(key)->label;
        assert_true(strlen(brief) > 0 && strlen(brief) <= 20);
        assert_true(strlen(brief) <= strlen(label));
        assert_int_equal(strncmp(brief, label, strcspn(brief, "/ ")), 0);
        if (strlen(label) <= 20)
            assert_int_equal(strncmp(brief, label, strlen(brief)), 0);
        for (enum nature_key other = NATURE_NONE + 1; other < key; other++)
            assert_string_not_equal(brief, words_get(test.words, nature_of(other)->brief));
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(a_dsc_set_is_worked_in_four_numbered_lines),
        TEST(what_the_record_lacks_is_said_in_plain_words),
        TEST(without_dsc_there_is_no_key_and_it_is_said),
        TEST(a_set_without_its_mmsi_counts_as_without_dsc),
        TEST(without_a_fixed_radio_no_set_is_worked),
        TEST(a_radio_nobody_recorded_holds_the_card),
        TEST(without_a_handheld_the_deck_is_left),
        TEST(without_a_beacon_flares_are_the_last_way),
        TEST(beyond_a1_the_beacon_goes_with_the_first_call),
        TEST(what_the_panel_names_stands_on_the_plan),
        TEST(the_key_is_for_mayday_only_where_both_may_be_called),
        TEST(an_urgency_call_never_speaks_of_the_key),
        TEST(the_distress_card_lists_natures_and_every_form),
        TEST(the_distress_card_parts_what_is_done_first_from_what_is_done_then),
        TEST(without_a_fixed_radio_the_first_line_of_the_distress_card_has_no_number),
        TEST(scripts_of_the_second_page_say_who_speaks),
        TEST(brief_words_of_natures_begin_as_the_set_s_own),
    };
    return cmocka_run_group_tests(tests, NULL, NULL) != 0;
}
