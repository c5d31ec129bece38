/* test_procedure.c - reading a procedure: what it gives, and what would make a
 * card that misleads. */
#include "procedure_case.h"

static void a_whole_procedure_is_read(void **state)
{
    (void)state;
    const struct procedure *procedure = procedure_of(
        "per: engine_space\n"
        "when: {fitted: cooker}\nwhen_reason: Nothing to burn.\n"
        "call_when: [{when: {fitted: torch}, say: \"ALONE: after {fuel}.\"}, {say: Now.}]\n"
        "steps:\n"
        "  - id: fuel\n"
        "    act: \"**SHUT** the fuel.\"\n"
        "    cases:\n"
        "      - when: {fitted: fuel_shutoff_diesel}\n"
        "        uses: [fuel_shutoff_diesel]\n"
        "        also: generator_stop\n"
        "      - act: \"**TELL** them.\"\n"
        "        practice: yes\n"
        "    because: It feeds the fire.\n"
        "    lethal: [Do not open it.]\n    within: deck\n    state: \"off\"\n"
        "    who: deckhand\n"
        "    sources: [S1]\n"
        "  - {id: holes, act: \"**CLOSE** all.\", table: zones, uses: [seacock], practice: yes,"
        " when: {fitted: seacock}}\n"
        "decision:\n"
        "  ask: Still burning?\n"
        "  after: fuel\n"
        "  yes: {say: Leave., card: abandon_ship}\n"
        "  no: {say: Watch.}\n"
        "  practice: yes\n"
        "never: [{say: open it, symbol: pflame, when: {fitted: hatch}, sources: [S1, S2]}]\n"
        CAUTIONS
        "calls:\n"
        "  - {signal: mayday, nature: fire, say: I AM ON FIRE, from: fixed, if: burning}\n"
        "  - {signal: pan_pan, say: FIRE IS OUT, assist: A TOW, from: handheld_on_deck,"
        " if: out}\n");
    expect_errors(0);
    assert_string_equal(procedure->key.text, "trial");
    assert_int_equal(procedure->number.milli, 10000);
    assert_int_equal(procedure->per.value, PER_ENGINE_SPACE);
    assert_int_equal(procedure->when->kind, CONDITION_FITTED);
    assert_int_equal(procedure->call_when.count, 2);
    assert_non_null(procedure->call_when.items[0].when);
    assert_string_equal(procedure->call_when.items[1].say.text, "Now.");
    assert_string_equal(procedure->steps[0].lethal.items[0].text, "Do not open it.");
    assert_int_equal(procedure->steps[0].cases[0].within.value, REACH_DECK);
    assert_int_equal(procedure->steps[0].cases[1].state.value, STATE_OFF);
    assert_int_equal(procedure->step_count, 2);
    assert_int_equal(procedure->steps[1].table.value, GEAR_TABLE_ZONES);
    assert_non_null(procedure->steps[1].when);
    assert_string_equal(procedure->steps[0].who.text, "deckhand");
    assert_true(procedure->decision.given);
    assert_string_equal(procedure->decision.yes.items[0].card.text, "abandon_ship");
    assert_string_equal(procedure->decision.no.items[0].say.text, "Watch.");
    assert_int_equal(procedure->never_count, 1);
    assert_int_equal(procedure->nevers[0].symbol.value, SYMBOL_pflame);
    assert_non_null(procedure->nevers[0].when);
    assert_null(procedure->cautions[0].when);
    assert_int_equal(procedure->call_count, 2);
    assert_string_equal(procedure->calls[1].if_.text, "out");
    assert_string_equal(procedure->source->name, "trial.yaml");
}

static void cases_have_from_their_step_what_they_leave_out(void **state)
{
    (void)state;
    const struct procedure *procedure = procedure_of(
        "steps:\n"
        "  - id: fuel\n"
        "    act: \"**SHUT** it.\"\n"
        "    cases:\n"
        "      - {when: {fitted: torch}, uses: [torch]}\n"
        "      - {act: \"**TELL** them.\", because: Other., practice: yes}\n"
        "    because: It burns.\n"
        "    sources: [S1, S2]\n" CAUTIONS);
    expect_errors(0);
    const struct procedure_step *step = &procedure->steps[0];
    assert_int_equal(step->case_count, 2);
    assert_string_equal(step->cases[0].act.text, "**SHUT** it.");
    assert_string_equal(step->cases[0].because.text, "It burns.");
    assert_int_equal(step->cases[0].basis.sources.count, 2);
    assert_int_equal(step->cases[0].place.line, 12);
    assert_null(step->cases[1].when);
    assert_string_equal(step->cases[1].because.text, "Other.");
    assert_int_equal(step->cases[1].basis.sources.count, 0);
    assert_int_equal(step->cases[1].basis.practice.answer, ANSWER_YES);
}

static void a_step_stands_on_something(void **state)
{
    (void)state;
    refused_step("  - {id: stop, act: \"**STOP**\"}\n",
                 "step stop has neither sources nor practice: yes",
                 "write sources: [...], or practice: yes for trade practice");
    refused_step("  - {id: stop, act: \"**STOP**\", practice: no}\n",
                 "step stop has neither sources nor practice: yes", NULL);
    refused_step("  - {id: stop, act: A, sources: [S1], cases: [{sources: []}]}\n",
                 "a case of step stop has neither sources nor practice: yes", NULL);
    refused_step("  - {id: stop, act: A, sources: [S1, S9]}\n", "no source is called S9",
                 "did you mean S1?");
    refused_step("  - {id: stop, act: A, sources: [elsewhere]}\n",
                 "no source is called elsewhere",
                 "add it to sources.yaml, with how far it was read");
}

static void an_act_is_written_well(void **state)
{
    (void)state;
    static const char remedy[] = "put two stars before and two after the bold words: "
                                 "**SHUT** the fuel";
    refused_step("  - {id: a, act: \"**STOP\", practice: yes}\n",
                 "act holds bold stars that are never closed", remedy);
    refused_step("  - {id: a, act: \"*STOP*\", practice: yes}\n", "act holds a single star",
                 remedy);
    refused_step("  - {id: a, act: \"STOP ****\", practice: yes}\n",
                 "act holds bold stars with nothing between them", remedy);
    refused_step("  - {id: a, practice: yes}\n",
                 "step a says nothing to a boat that fits none of its cases",
                 "write an act for the step, or a last case without when");
    refused_step("  - {id: a, act: \"\", practice: yes}\n",
                 "step a says nothing to a boat that fits none of its cases", NULL);
    refused_step("  - {id: a, act: \"A \", practice: yes}\n", "act ends with a space", NULL);
}

static void some_case_always_holds(void **state)
{
    (void)state;
    refused_step("  - {id: a, practice: yes, cases: [{when: {fitted: torch}, act: A}]}\n",
                 "step a says nothing to a boat that fits none of its cases", NULL);
    refused_step("  - {id: a, act: A, practice: yes,"
                 " cases: [{uses: torch}, {when: {fitted: torch}}]}\n",
                 "a case of step a has no when, so those after it never come",
                 "make it the last, or give it a when");
    refused_step("  - {id: a, practice: yes, cases: [{when: {fitted: torch}}, {act: A}]}\n",
                 "a case of step a has no act", "write its act, or an act for the whole step");
    test.problems = problems_new(test.arena);
    assert_non_null(procedure_of("steps: [{id: a, practice: yes, cases: [{act: A}]}]\n" CAUTIONS));
    expect_errors(0);
}

static void a_broken_when_is_not_left_out(void **state)
{
    (void)state;
    refused_step("  - {id: a, act: A, practice: yes, cases: [{when: {fitted: trch}}, {}]}\n",
                 "trch is not a known item", "did you mean torch?");
    refused_step("  - {id: a, act: A, practice: yes, when: {fitted: trch}}\n",
                 "trch is not a known item", NULL);
    refused(STEPS "cautions: [{say: Hot., when: {fitted: trch}, sources: [S1]}]\n", 9,
            "trch is not a known item", NULL);
}

static void steps_are_counted_and_named(void **state)
{
    (void)state;
    struct text_builder steps = text_builder_in(test.arena);
    for (int i = 1; i <= 9; i++)
        text_add_format(&steps, "  - {id: s%d, act: A, practice: yes}\n", i);
    refused(text_format(test.arena, "steps:\n%s" CAUTIONS, steps.at), 17,
            "9 steps: a card holds at most 8", "keep those that save most lives");
    refused(CAUTIONS, 1, "the procedure has no steps", NULL);
    refused("steps:\n  - {id: a, act: A, practice: yes}\n"
            "  - {id: a, act: B, practice: yes}\n" CAUTIONS, 10,
            "two steps are called a (first on line 9)", "give each step an id of its own");
    refused_step("  - {id: a, act: A, lethal: [A, B, C], practice: yes}\n",
                 "3 lethal lines: a step has at most 2", "keep the two that save most lives");
}

static void named_steps_exist(void **state)
{
    (void)state;
    refused(STEPS CAUTIONS
            "decision: {ask: \"A?\", after: stopp, yes: {say: A}, no: {say: B}, practice: yes}\n",
            10, "after: no step is called stopp", "did you mean stop?");
}

static void a_decision_has_both_exits(void **state)
{
    (void)state;
    refused(STEPS CAUTIONS "decision: {ask: \"A?\", after: now, yes: {say: A}, no: {say: B},"
            " practice: yes}\n", 10, "after: no step is called now", NULL);
    refused(STEPS CAUTIONS "decision: {ask: \"A?\", after: stop, yes: {say: A}, no: {say: B}}\n",
            10, "the decision has neither sources nor practice: yes", NULL);
    test.problems = problems_new(test.arena);
    assert_null(procedure_of(STEPS CAUTIONS "decision: {ask: \"A?\", after: stop, yes: {say: A},"
                                            " practice: yes}\n"));
    expect_errors(1);
    expect_error_with(10, "no", "decision");
    test.problems = problems_new(test.arena);
    assert_null(procedure_of(STEPS CAUTIONS "decision: {ask: \"A?\", after: stop, yes: {card: a},"
                                            " no: {say: B}, practice: yes}\n"));
    expect_errors(1);
    expect_error_with(10, "say", "exit");
}

static void warnings_stand_on_authorities(void **state)
{
    (void)state;
    refused(STEPS "cautions: [{say: Hot.}]\n", 9, "a caution has no sources",
            "write sources: [...]");
    refused(STEPS CAUTIONS "never: [{say: open it}]\n", 10, "a never has no sources", NULL);
    refused(STEPS "cautions: [{say: Hot., sources: [S1, S3]}]\n", 9,
            "a caution stands on S3, which is no authority (VC)",
            "name an authority's text of which the passage was read (VA or VB)");
    refused(STEPS CAUTIONS "never: [{say: open it, sources: [S2]}]\n", 10,
            "a never stands on no source that is known to be in force",
            "add a source whose status is current");
    test.problems = problems_new(test.arena);
    assert_null(procedure_of(STEPS "cautions: [{say: Hot., practice: yes, sources: [S1]}]\n"));
    expect_errors(1);
    expect_error_with(9, "practice", "caution");
}

static void warnings_are_few(void **state)
{
    (void)state;
    static const char four[] = "\n  - {say: A, sources: [S1]}\n  - {say: B, sources: [S1]}\n"
                               "  - {say: C, sources: [S1]}\n  - {say: D, sources: [S1]}\n";
    refused(STEPS, 1, "the procedure has no caution",
            "write cautions: with one to three warnings of authorities");
    refused(text_format(test.arena, STEPS "cautions:%s", four), 13,
            "4 cautions: a card holds at most 3", NULL);
    refused(text_format(test.arena, STEPS CAUTIONS "never:%s", four), 14,
            "4 nevers: a card holds at most 3", NULL);
}

static void a_distress_card_is_another_kind(void **state)
{
    (void)state;
    assert_non_null(procedure_of("kind: distress\n"));
    expect_errors(0);
    refused("kind: distress\n" STEPS, 1,
            "a card of the kind distress has no steps, decision or calls",
            "take them out: its texts come from the boat's record");
}

static void a_safety_plan_only_shows_where_gear_is(void **state)
{
    (void)state;
    assert_non_null(procedure_of("kind: safety_plan\n"));
    expect_errors(0);
    refused("kind: safety_plan\n" STEPS, 1,
            "a card of the kind safety_plan has no steps, decision or calls",
            "take them out: its texts come from the boat's record");
    refused("kind: safety_plan\n" CAUTIONS, 1, "a safety plan has no never, cautions or when",
            "take them out: every boat has one, and it only shows where gear is");
}

static void a_card_that_some_boats_lack_says_why(void **state)
{
    (void)state;
    refused(STEPS CAUTIONS "when: {fitted: petrol_stowage}\n", 1,
            "the procedure has a when but no when_reason",
            "write when_reason: with why other boats do not need the card");
}

static void unknown_words_get_the_nearest(void **state)
{
    (void)state;
    assert_null(procedure_of("steps:\n"
                             "  - {id: a, act: A, practice: yes, uses: [lifraft]}\n"
                             "  - {id: b, act: A, practice: yes, becuase: c}\n" CAUTIONS
                             "nevr: []\n"));
    expect_errors(3);
    expect_error_with(9, "lifraft", "liferaft");
    expect_error_with(10, "becuase", "because");
    expect_error_with(12, "nevr", "never");
}

static void a_file_without_a_head_is_refused(void **state)
{
    (void)state;
    const struct authorities *authorities =
        authorities_read(file_of("sources.yaml", SOURCES), test.arena, test.problems);
    assert_null(procedure_read(file_of("a.yaml", "procedure: Engine Fire\n"), authorities,
                               test.arena, test.problems));
    expect_error(1, "procedure \"Engine Fire\" is not a plain key", NULL);
    expect_error_with(1, "stripe", "procedure");
    test.problems = problems_new(test.arena);
    assert_null(procedure_read(file_of("a.yaml", "- steps\n"), authorities, test.arena,
                               test.problems));
    expect_errors(1);
    test.problems = problems_new(test.arena);
    assert_null(procedure_read(file_of("a.yaml", "steps: [\n"), authorities, test.arena,
                               test.problems));
    assert_true(problems_count(test.problems, SEVERITY_ERROR) > 0);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(a_whole_procedure_is_read),
        TEST(cases_have_from_their_step_what_they_leave_out),
        TEST(a_step_stands_on_something),
        TEST(an_act_is_written_well),
        TEST(some_case_always_holds),
        TEST(a_broken_when_is_not_left_out),
        TEST(steps_are_counted_and_named),
        TEST(named_steps_exist),
        TEST(a_decision_has_both_exits),
        TEST(warnings_stand_on_authorities),
        TEST(warnings_are_few),
        TEST(a_distress_card_is_another_kind),
        TEST(a_safety_plan_only_shows_where_gear_is),
        TEST(a_card_that_some_boats_lack_says_why),
        TEST(unknown_words_get_the_nearest),
        TEST(a_file_without_a_head_is_refused),
    };
    int failed = cmocka_run_group_tests_name("procedure", tests, NULL, NULL);
    return failed != 0;
}
