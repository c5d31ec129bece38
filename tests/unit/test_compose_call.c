/* test_compose_call.c - the call panel: how to work what this very boat has to
 * call with, line by line, and the script beside it. */
#include "call_case.h"

/* ---- MAYDAY from the fixed set ---- */

static void a_dsc_set_is_worked_in_four_numbered_lines(void **state)
{
    (void)state;
    const struct call_facts *call = panel("galley_fire", SET_RADIO, HANDHELD EPIRB FLARES, "");
    EXPECT_LINES(call, word(WORD_SET_OUTSIDE_SMOKE), set_on(), key(WORD_SET_KEY),
                 numbered(3, set_channel()), numbered(4, word(WORD_SET_TALK)),
                 instead_handheld(WORD_CAUSE_SMOKE, HANDHELD_PLACE),
                 no_answer("handheld E4, " PHONE ", EPIRB E3 on, flares E5 (clear of fire)"));
    assert_string_equal(call->title, word(WORD_CALL_MAYDAY));
    assert_string_equal(call->station, tagged(WORD_RADIO_AT, "E9", "Chart table, port"));
    assert_non_null(strstr(said(call), "I AM ON FIRE, GALLEY. I REQUIRE IMMEDIATE ASSISTANCE."));
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

/* Nobody looks for a key that is not there. */
static void without_dsc_there_is_no_word_of_a_key(void **state)
{
    (void)state;
    const struct call_facts *call = panel("galley_fire", NO_DSC, HANDHELD EPIRB, "");
    EXPECT_LINES(call, word(WORD_SET_OUTSIDE_SMOKE), set_on(),
                 numbered(2, set_channel()), numbered(3, word(WORD_SET_TALK)),
                 instead_handheld(WORD_CAUSE_SMOKE, HANDHELD_PLACE),
                 no_answer("handheld E4, " PHONE ", EPIRB E3 on, wave, whistle"));
    assert_null(strstr(said(call), "MMSI"));
}

/* A set whose MMSI nobody put in sends no alert that names the boat: its key is there, and dead. */
static void of_a_set_without_its_mmsi_it_is_said_that_the_key_is_dead(void **state)
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
    assert_string_equal(call->operate[4].text, word(WORD_SET_KEY_DEAD));
    assert_null(strstr(said(call), "MMSI"));
}

static void without_a_fixed_radio_no_set_is_worked(void **state)
{
    (void)state;
    const struct call_facts *call =
        panel("galley_fire", "radio: {call_sign: QTAB2}\n", HANDHELD EPIRB, "  - vhf_dsc\n");
    EXPECT_LINES(call, word(WORD_SET_NO_FIXED), word(WORD_SET_OUTSIDE_SMOKE),
                 numbered(1, tagged(WORD_SET_HANDHELD_FIRST, "E4", HANDHELD_PLACE)),
                 numbered(2, word(WORD_SET_CHANNEL_HANDHELD)), numbered(3, word(WORD_SET_TALK)),
                 no_answer(PHONE ", EPIRB E3 on, wave, whistle"));
    assert_string_equal(call->station, tagged(WORD_HANDHELD_AT, "E4", HANDHELD_PLACE));
    for (size_t i = 0; i < call->operate_count; i++) {
        assert_null(strstr(call->operate[i].text, word(WORD_SET_KEY_PLAIN)));
        assert_null(strstr(call->operate[i].text, "25 W"));
    }
    assert_null(strstr(said(call), "MMSI"));
}

static bool calls_from_deck(const char *card)
{
    static const char *const cards[] = {"gas_leak", "petrol_leak", "battery_fire", "capsize",
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
    const struct call_facts *call = panel("galley_fire", SET_RADIO, EPIRB, "  - vhf_handheld\n");
    EXPECT_LINES(call, word(WORD_SET_OUTSIDE_SMOKE), set_on(), key(WORD_SET_KEY),
                 numbered(3, set_channel()), numbered(4, word(WORD_SET_TALK)),
                 instead(WORD_CAUSE_SMOKE, word(WORD_GO_ON_DECK)),
                 no_answer(PHONE ", EPIRB E3 on, wave, whistle"));
}

static void without_a_beacon_flares_are_the_last_way(void **state)
{
    (void)state;
    const struct call_facts *call =
        panel("galley_fire", SET_RADIO, HANDHELD FLARES, "  - epirb\n");
    assert_string_equal(call->operate[call->operate_count - 1].text,
                        no_answer("handheld E4, " PHONE ", flares E5 (clear of fire), wave, "
                                  "whistle"));
    call = panel("galley_fire", SET_RADIO, "  - {item: torch, tag: C1, zone: saloon}\n",
                 "  - epirb\n  - flares\n  - vhf_handheld\n");
    assert_string_equal(call->operate[call->operate_count - 1].text,
                        no_answer(PHONE ", wave, whistle"));
}

static void what_the_panel_names_stands_on_the_plan(void **state)
{
    (void)state;
    size_t beacon = 0, handheld = 0, radio = 0;
    (void)panel("galley_fire", SET_RADIO, HANDHELD EPIRB, "");
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
        const struct call_facts *call = panel(cards[i], SET_RADIO, HANDHELD EPIRB, "");
        const char *press = words_fill(test.words, test.arena, WORD_SET_KEY, "cover",
                                       "Lift the red lid", "seconds", "5", NULL);
        assert_string_equal(call->operate[1].text, numbered(2, mayday_only(press)));
    }
    const struct call_facts *call = panel("flooding", SET_RADIO, HANDHELD EPIRB, "");
    assert_string_equal(call->title, word(WORD_CALL_BOTH));
    assert_non_null(strstr(said(call), ": MAYDAY, MAYDAY, MAYDAY\n"));
    assert_non_null(strstr(said(call), ": PAN PAN, PAN PAN, PAN PAN ALL STATIONS, 3 TIMES\n"));
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
    const struct call_facts *call = panel("smoke", SET_RADIO, HANDHELD EPIRB FLARES, "");
    EXPECT_LINES(call, set_on(), numbered(2, set_channel()),
                 numbered(3, word(WORD_SET_TALK)),
                 instead_handheld(WORD_CAUSE_WATER, HANDHELD_PLACE),
                 no_answer("handheld E4, " PHONE ", wave, whistle"));
    assert_string_equal(call->title, word(WORD_CALL_PAN_PAN));
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
        TEST(without_dsc_there_is_no_word_of_a_key),
        TEST(of_a_set_without_its_mmsi_it_is_said_that_the_key_is_dead),
        TEST(without_a_fixed_radio_no_set_is_worked),
        TEST(a_radio_nobody_recorded_holds_the_card),
        TEST(without_a_handheld_the_deck_is_left),
        TEST(without_a_beacon_flares_are_the_last_way),
        TEST(what_the_panel_names_stands_on_the_plan),
        TEST(the_key_is_for_mayday_only_where_both_may_be_called),
        TEST(an_urgency_call_never_speaks_of_the_key),
        TEST(brief_words_of_natures_begin_as_the_set_s_own),
    };
    return cmocka_run_group_tests(tests, NULL, NULL) != 0;
}
