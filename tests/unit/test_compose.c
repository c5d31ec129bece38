/* test_compose.c - which cards a boat has, which case of which step stands on
 * them, what holds a card back and where decisions lead. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "card_fixture.h"
#include "text.h"

/* One procedure `smoke` of these steps. */
static void procedure_with(const char *logic, const char *words)
{
    const char *const texts[] = {case_procedure_text(&test, "smoke", 10, logic, words), NULL};
    case_procedures(&test, texts);
}

static void boat_with(const char *gear, const char *not_fitted)
{
    case_boat(&test, case_boat_text(&test, CASE_RADIO, gear, not_fitted));
}

static const struct sheet *smoke(bool draft)
{
    return case_card(case_compose(&test, draft), "smoke");
}

#define STOP_STEP \
    "steps:\n" \
    "  - id: stop\n" \
    "    sources: [S5]\n" \
    "    cases:\n" \
    "      - id: electric\n" \
    "        when: {is: {engine_stop: {stop: electric}}}\n" \
    "        uses: [engine_stop]\n" \
    "      - when: {fitted: engine_stop}\n" \
    "        uses: [engine_stop]\n"
#define STOP_TEXTS \
    "steps:\n" \
    "  stop:\n" \
    "    act: \"**STOP** as you can.\"\n" \
    "    cases: {electric: {act: \"**HOLD** the button.\"}}\n"
#define BARE_STEP "steps: [{id: stop, sources: [S5], uses: [engine_stop]}]\n"
#define BARE_TEXTS "steps: {stop: {act: \"**STOP.**\"}}\n"
#define TORCH "  - {item: torch, tag: C9, zone: saloon}\n"
#define STOP "  - {item: engine_stop, tag: C1, zone: cockpit, side: port, how: hold STOP"

/* ---- cases ---- */

static void the_first_case_that_holds_is_taken(void **state)
{
    (void)state;
    procedure_with(STOP_STEP, STOP_TEXTS);
    boat_with(STOP ", stop: electric}\n", "");
    const struct card_step *step = case_step(smoke(false), "stop");
    assert_string_equal(step->headline.text, "**HOLD** the button.");
    assert_ptr_equal(step->taken, &step->step->cases[0]);
    assert_int_equal(step->row_count, 1);
    assert_string_equal(case_row(&test, &step->rows[0]),
                        "Cockpit, PORT | [C1] Engine stop = hold STOP");
}

static void a_case_without_words_keeps_the_step_s_own(void **state)
{
    (void)state;
    procedure_with(STOP_STEP, STOP_TEXTS);
    boat_with(STOP ", stop: mechanical}\n", "");
    const struct card_step *step = case_step(smoke(false), "stop");
    assert_string_equal(step->headline.text, "**STOP** as you can.");
    assert_ptr_equal(step->taken, &step->step->cases[1]);
    assert_int_equal(step->row_count, 1);
}

static void where_no_case_holds_the_step_stands_alone(void **state)
{
    (void)state;
    procedure_with(STOP_STEP, STOP_TEXTS);
    boat_with(TORCH, "  - engine_stop\n");
    const struct sheet *card = smoke(false);
    const struct card_step *step = case_step(card, "stop");
    assert_string_equal(step->headline.text, "**STOP** as you can.");
    assert_null(step->taken);
    assert_int_equal(step->row_count, 0);
    assert_false(card->held);
}

/* A case that cannot be decided must not let a later one stand in its place. */
static void an_undecided_case_stops_the_choice_and_holds_the_card(void **state)
{
    (void)state;
    procedure_with(STOP_STEP, STOP_TEXTS);
    boat_with(STOP "}\n", "");
    const struct sheet *card = smoke(false);
    assert_true(card->held);
    assert_null(case_step(card, "stop")->taken);
    assert_int_equal(case_step(card, "stop")->row_count, 1);
    assert_string_equal(case_step(card, "stop")->rows[0].place,
                        words_get(test.words, WORD_NOT_RECORDED));
    const struct problem *problem = case_problem(
        &test, "stop of engine_stop is not recorded: it holds back the card 10 SMOKE CARD");
    assert_non_null(problem);
    assert_int_equal(problem->severity, SEVERITY_HELD);
    assert_int_equal(problem->place.line, test.boat->equipment[0].place.line);
    assert_non_null(strstr(problem->remedy, "stop: (electric or mechanical)"));
}

static void every_fact_is_asked_for_once_with_all_its_cards(void **state)
{
    (void)state;
    const char *const texts[] = {case_procedure_text(&test, "smoke", 10, STOP_STEP, STOP_TEXTS),
                                 case_procedure_text(&test, "steam", 20, STOP_STEP, STOP_TEXTS),
                                 NULL};
    case_procedures(&test, texts);
    boat_with(TORCH, "");
    const struct sheet_set *set = case_compose(&test, false);
    assert_int_equal(set->held, 2);
    assert_int_equal(problems_count(test.problems, SEVERITY_HELD), 1);
    const struct problem *problem = case_problem(
        &test, "engine_stop is not recorded: it holds back the cards 10 SMOKE CARD; "
               "20 STEAM CARD");
    assert_non_null(problem);
    assert_non_null(strstr(problem->remedy,
                           "  - {item: engine_stop, tag: C10, zone: , side: , spot: , how: , "
                           "stop: }"));
    assert_non_null(strstr(problem->remedy, "not_fitted:\n  - engine_stop"));
}

static void a_draft_shows_what_is_not_recorded(void **state)
{
    (void)state;
    procedure_with(BARE_STEP, BARE_TEXTS);
    boat_with(TORCH, "");
    const struct sheet *card = smoke(true);
    const struct card_row *row = &case_step(card, "stop")->rows[0];
    assert_true(card->held);
    assert_int_equal(case_step(card, "stop")->row_count, 1);
    assert_int_equal(row->items[0].tag_count, 0);
    assert_string_equal(row->place, words_get(test.words, WORD_NOT_RECORDED));
    assert_non_null(
        strstr(sheet_text(card, BLOCK_MARK)->text, words_get(test.words, WORD_MARK_DRAFT)));
    assert_int_equal(problems_count(test.problems, SEVERITY_HELD), 0);
    assert_int_equal(problems_count(test.problems, SEVERITY_DEFICIENCY), 1);
}

static void gear_a_step_needs_must_not_be_missing_without_words(void **state)
{
    (void)state;
    procedure_with(BARE_STEP, BARE_TEXTS);
    boat_with(TORCH, "  - engine_stop\n");
    const struct sheet *card = smoke(false);
    assert_true(card->held);
    const struct problem *problem = case_problem(
        &test, "10 SMOKE CARD: this step has no words for a boat without engine_stop");
    assert_non_null(problem);
    assert_int_equal(problem->severity, SEVERITY_HELD);
}

/* ---- numbers ---- */

#define THREE_STEPS \
    "steps:\n" \
    "  - {id: one, sources: [S5]}\n" \
    "  - {id: two, sources: [S5], when: {fitted: liferaft}}\n" \
    "  - {id: three, sources: [S5]}\n"
#define THREE_TEXTS \
    "steps: {one: {act: \"**ONE.**\"}, two: {act: \"**TWO.**\"}, three: {act: \"**THREE.**\"}}\n"
#define RAFT "  - {item: liferaft, tag: E1, zone: coachroof}\n"
#define ASK_AFTER_THREE \
    "decision: {after: three, yes: {card: steam}, no: {}, sources: [S5]}\n"
#define ASK_TEXTS "decision: {ask: still burning?, yes: Leave., no: Stay.}\n"

static void steps_that_do_not_concern_the_boat_leave_no_gap(void **state)
{
    (void)state;
    procedure_with(THREE_STEPS, THREE_TEXTS);
    boat_with(RAFT, "");
    const struct sheet *with = smoke(false);
    assert_int_equal(sheet_steps(with)->count, 3);
    boat_with(TORCH, "  - liferaft\n");
    const struct sheet *without = smoke(false);
    const struct steps_facts *steps = sheet_steps(without);
    assert_int_equal(steps->count, 2);
    assert_string_equal(steps->items[1].id, "three");
    for (size_t i = 0; i < steps->count; i++)
        assert_int_equal(steps->items[i].number, i + 1);
    assert_false(without->held);
}

static void decisions_name_steps_and_cards_by_their_numbers(void **state)
{
    (void)state;
    const char *const texts[] = {
        case_procedure_text(&test, "smoke", 10,
                            THREE_STEPS ASK_AFTER_THREE "call_when: {}\n"
                            "calls: [{signal: mayday, nature: fire, say: I AM ON FIRE, "
                            "from: fixed}]\n",
                            THREE_TEXTS ASK_TEXTS
                            "call_when: \"**SECOND PERSON:** call now | **ALONE:** call after step "
                            "{three}.\"\n"),
        case_procedure_text(&test, "steam", 20, THREE_STEPS, THREE_TEXTS), NULL};
    case_procedures(&test, texts);
    boat_with(TORCH, "  - liferaft\n");
    const struct sheet *card = smoke(false);
    const struct decision_facts *decision = sheet_decision(card);
    assert_true(sheet_block(card, BLOCK_DECISION) != NULL);
    assert_string_equal(decision->ask, "After step 2: still burning?");
    assert_string_equal(decision->yes, "Leave. **Card 20, steam.**");
    assert_string_equal(decision->no, "Stay.");
    assert_int_equal(sheet_cases(card)->count, 2);
    assert_string_equal(sheet_cases(card)->items[0].text, "**SECOND PERSON:** call now");
    assert_string_equal(sheet_cases(card)->items[1].text, "**ALONE:** call after step 2.");
    assert_string_equal(sheet_title(card)->number, "Card 10");
    boat_with(RAFT, "");
    assert_string_equal(sheet_decision(smoke(false))->ask, "After step 3: still burning?");
}

static void a_decision_must_lead_to_a_card_of_the_set(void **state)
{
    (void)state;
    procedure_with(THREE_STEPS ASK_AFTER_THREE, THREE_TEXTS ASK_TEXTS);
    boat_with(RAFT, "");
    assert_true(smoke(false)->held);
    assert_non_null(case_problem(&test,
                                 "10 SMOKE CARD: the card steam is not in this boat's set"));
}

static void a_decision_must_follow_a_step_of_the_card(void **state)
{
    (void)state;
    procedure_with(THREE_STEPS "decision: {after: two, yes: {}, no: {}, sources: [S5]}\n",
                   THREE_TEXTS ASK_TEXTS);
    boat_with(TORCH, "  - liferaft\n");
    assert_true(smoke(false)->held);
    assert_non_null(case_problem(&test,
                                 "10 SMOKE CARD: the step two is not on this boat's card"));
    boat_with(RAFT, "");
    assert_false(smoke(false)->held);
}

static void a_card_may_belong_to_some_boats_only(void **state)
{
    (void)state;
    const char *const texts[] = {
        case_procedure_text(&test, "smoke", 10,
                            STOP_STEP "when: {fitted: petrol_stowage}\n",
                            STOP_TEXTS "when_reason: No petrol.\n"),
        case_procedure_text(&test, "steam", 20, STOP_STEP, STOP_TEXTS), NULL};
    case_procedures(&test, texts);
    boat_with(STOP ", stop: electric}\n", "  - petrol_stowage\n");
    const struct sheet_set *set = case_compose(&test, false);
    assert_int_equal(set->count, 1);
    assert_string_equal(set->sheets[0]->id, "steam");
    assert_string_equal(sheet_title(set->sheets[0])->number, "Card 20");
    boat_with(STOP ", stop: electric}\n"
              "  - {item: petrol_stowage, tag: C2, zone: cockpit_locker}\n", "");
    assert_int_equal(case_compose(&test, false)->count, 2);
}

/* ---- the program's own procedures ---- */

static void the_specimen_boats_lack_nothing(void **state)
{
    (void)state;
    /* a card more for each engine */
    static const struct { const char *file; size_t more; } boats[] = {
        {"tests/fleet/boats/tamarisk.yaml", 0}, {"tests/fleet/boats/samphire.yaml", 2}};
    for (size_t b = 0; b < 2; b++) {
        case_boat(&test, boats[b].file);
        const struct sheet_set *set = case_compose(&test, false);
        assert_int_equal(set->held, 0);
        assert_int_equal(problems_count(test.problems, SEVERITY_HELD), 0);
        assert_int_equal(set->count + set->not_hers_count,
                         test.procedures.count + boats[b].more - 1);   /* nobody asks for index */
        assert_int_equal(set->not_hers_count, 1);     /* no outboard drives them */
        for (size_t i = 0; i < set->count; i++) {
            const struct sheet *card = set->sheets[i];
            assert_true(text_begins(card->number, card->procedure->number.text));
            assert_string_equal(sheet_title(card)->number,
                                text_format(test.arena, "Card %s", card->number));
            if (sheet_block(card, BLOCK_DECISION) != NULL)
                assert_non_null(strstr(sheet_decision(card)->ask, "After step "));
        }
    }
}

static void two_engines_have_two_cards_each_with_its_own_gear(void **state)
{
    (void)state;
    case_boat(&test, "tests/fleet/boats/samphire.yaml");
    const struct sheet_set *set = case_compose(&test, false);
    const struct sheet *port = case_card(set, "engine_fire_port");
    const struct sheet *starboard = case_card(set, "engine_fire_starboard");
    assert_string_equal(sheet_title(port)->title, "ENGINE FIRE, PORT ENGINE");
    assert_string_equal(sheet_title(starboard)->title, "ENGINE FIRE, STARBOARD ENGINE");
    assert_string_equal(sheet_title(port)->number, "Card 3P");
    assert_string_equal(sheet_title(starboard)->number, "Card 3S");
    assert_string_equal(case_step(port, "stop")->rows[0].items[0].tags[0], "C1");
    assert_string_equal(case_step(starboard, "stop")->rows[0].items[0].tags[0], "C2");
    /* the port valve is reached from a locker, the starboard one stands in the fire */
    assert_string_equal(case_step(port, "fuel")->rows[0].items[0].tags[0], "C6");
    assert_int_equal(case_step(starboard, "fuel")->row_count, 0);
    assert_non_null(strstr(case_step(starboard, "fuel")->headline.text, "DON’T TOUCH"));
    /* the leak of one engine leads to the fire of the same */
    const struct sheet *leak = case_card(set, "diesel_leak_starboard");
    assert_non_null(strstr(sheet_decision(leak)->yes, "**Card 3S, ENGINE FIRE.**"));
}

/* One piece must have all that a case asks; what no piece has is not said. */
static void a_case_takes_only_pieces_that_have_what_it_asks(void **state)
{
    (void)state;
    procedure_with("steps:\n  - id: call\n    sources: [S5]\n    cases:\n"
                   "      - id: handheld\n        when: {is: {vhf_handheld: {from_cockpit: yes}}}\n"
                   "        uses: [vhf_handheld]\n",
                   "steps:\n  call:\n    act: \"**SHOUT.**\"\n"
                   "    cases: {handheld: {act: \"**CALL.**\"}}\n");
    boat_with("  - {item: vhf_handheld, tag: E1, zone: saloon, from_cockpit: no}\n"
              "  - {item: vhf_handheld, tag: E2, zone: cockpit, from_cockpit: yes}\n", "");
    const struct card_step *step = case_step(smoke(false), "call");
    assert_string_equal(step->headline.text, "**CALL.**");
    assert_int_equal(step->row_count, 1);
    assert_string_equal(step->rows[0].items[0].tags[0], "E2");
}

/* Two facts of two pieces are not one piece that has both. */
static void facts_of_two_pieces_are_not_added_up(void **state)
{
    (void)state;
    procedure_with("steps:\n  - id: stop\n    sources: [S5]\n    cases:\n"
                   "      - id: pull\n"
                   "        when: {is: {engine_stop: {stop: mechanical, from_cockpit: yes}}}\n"
                   "        uses: [engine_stop]\n",
                   "steps:\n  stop:\n    act: \"**LEAVE.**\"\n"
                   "    cases: {pull: {act: \"**STOP** by its pull.\"}}\n");
    boat_with("  - {item: engine_stop, tag: C1, zone: saloon, stop: mechanical, "
              "from_cockpit: no}\n"
              "  - {item: engine_stop, tag: C2, zone: cockpit, stop: electric, "
              "from_cockpit: yes}\n", "");
    assert_string_equal(case_step(smoke(false), "stop")->headline.text, "**LEAVE.**");
    assert_int_equal(case_step(smoke(false), "stop")->row_count, 0);
    boat_with("  - {item: engine_stop, tag: C1, zone: saloon, stop: mechanical}\n"
              "  - {item: engine_stop, tag: C2, zone: cockpit, stop: electric, "
              "from_cockpit: yes}\n", "");
    const struct sheet *card = smoke(false);
    assert_true(card->held);
    assert_non_null(case_problem(&test, "from_cockpit of engine_stop is not recorded: it holds "
                                 "back the card 10 SMOKE CARD"));
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(the_first_case_that_holds_is_taken),
        TEST(a_case_without_words_keeps_the_step_s_own),
        TEST(where_no_case_holds_the_step_stands_alone),
        TEST(an_undecided_case_stops_the_choice_and_holds_the_card),
        TEST(every_fact_is_asked_for_once_with_all_its_cards),
        TEST(a_draft_shows_what_is_not_recorded),
        TEST(gear_a_step_needs_must_not_be_missing_without_words),
        TEST(steps_that_do_not_concern_the_boat_leave_no_gap),
        TEST(decisions_name_steps_and_cards_by_their_numbers),
        TEST(a_decision_must_lead_to_a_card_of_the_set),
        TEST(a_decision_must_follow_a_step_of_the_card),
        TEST(a_card_may_belong_to_some_boats_only),
        TEST(the_specimen_boats_lack_nothing),
        TEST(two_engines_have_two_cards_each_with_its_own_gear),
        TEST(a_case_takes_only_pieces_that_have_what_it_asks),
        TEST(facts_of_two_pieces_are_not_added_up),
    };
    int failed = cmocka_run_group_tests(tests, NULL, NULL);
    return failed != 0;
}
