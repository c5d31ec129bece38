/* test_procedure.c - reading a procedure: what it gives, and what would make a
 * card that misleads. */
#include "procedure_case.h"

static const char whole_logic[] =
    "per: engine_space\n"
    "when: {fitted: cooker}\n"
    "call_when: [{id: alone, when: {fitted: torch}}, {id: all}]\n"
    "steps:\n"
    "  - id: fuel\n"
    "    cases:\n"
    "      - when: {fitted: fuel_shutoff_diesel}\n"
    "        uses: [{fuel_shutoff_diesel: shut}]\n"
    "        also: generator_stop\n"
    "      - id: none\n"
    "        practice: yes\n"
    "    lethal: [shut]\n    within: deck\n"
    "    sources: [S1]\n"
    "  - {id: holes, table: zones, uses: [{seacock: shut}], practice: yes,\n"
    "     when: {fitted: seacock}}\n"
    "decision:\n"
    "  after: fuel\n"
    "  yes: {card: abandon_ship}\n"
    "  no: {}\n"
    "  practice: yes\n"
    "never: [{id: open, symbol: pflame, when: {fitted: hatch}, sources: [S1, S2]}]\n"
    CAUTIONS
    "calls:\n"
    "  - {id: burning, signal: mayday, nature: fire, say: I AM ON FIRE, from: fixed}\n"
    "  - {id: out, signal: pan_pan, say: FIRE IS OUT, assist: A TOW, from: handheld_on_deck}\n";

static const char whole_texts[] =
    "when_reason: Nothing to burn.\n"
    "call_when: {alone: \"ALONE: after {fuel}.\", all: Now.}\n"
    "steps:\n"
    "  fuel:\n"
    "    act: \"**SHUT** the fuel.\"\n"
    "    cases: {none: {act: \"**TELL** them.\"}}\n"
    "    lethal: {shut: Do not open it.}\n"
    "    because: It feeds the fire.\n"
    "    who: deckhand\n"
    "  holes: {act: \"**CLOSE** all.\"}\n"
    "decision: {ask: Still burning?, yes: Leave., no: Watch.}\n"
    "never: {open: open it}\n" CAUTIONS_TEXTS
    "calls: {burning: burning, out: out}\n";

static void a_whole_procedure_is_read(void **state)
{
    (void)state;
    const struct procedure *procedure = procedure_of(whole_logic, whole_texts);
    expect_errors(0);
    assert_string_equal(procedure->key.text, "trial");
    assert_int_equal(procedure->number.milli, 10000);
    assert_string_equal(procedure->title.text, "Trial");
    assert_string_equal(procedure->signs.items[0].text, "Smoke");
    assert_int_equal(procedure->per.value, PER_ENGINE_SPACE);
    assert_int_equal(procedure->when->kind, CONDITION_FITTED);
    assert_string_equal(procedure->when_reason.text, "Nothing to burn.");
    assert_int_equal(procedure->call_when.count, 2);
    assert_non_null(procedure->call_when.items[0].when);
    assert_string_equal(procedure->call_when.items[1].say.text, "Now.");
    assert_string_equal(procedure->steps[0].lethal.items[0].text, "Do not open it.");
    assert_int_equal(procedure->steps[0].cases[0].within.value, REACH_DECK);
    assert_int_equal(procedure->steps[0].cases[0].uses.items[0].state, STATE_SHUT);
    assert_int_equal(procedure->steps[0].cases[0].also.items[0].value, ITEM_generator_stop);
    assert_int_equal(procedure->steps[0].cases[0].also.items[0].state, STATE_ANY);
    assert_int_equal(procedure->step_count, 2);
    assert_int_equal(procedure->steps[1].table.value, GEAR_TABLE_ZONES);
    assert_non_null(procedure->steps[1].when);
    assert_string_equal(procedure->steps[0].who.text, "deckhand");
}

static void what_stands_beside_the_steps_is_read(void **state)
{
    (void)state;
    const struct procedure *procedure = procedure_of(whole_logic, whole_texts);
    expect_errors(0);
    assert_true(procedure->decision.given);
    assert_string_equal(procedure->decision.ask.text, "Still burning?");
    assert_string_equal(procedure->decision.yes.items[0].card.text, "abandon_ship");
    assert_string_equal(procedure->decision.no.items[0].say.text, "Watch.");
    assert_int_equal(procedure->never_count, 1);
    assert_string_equal(procedure->nevers[0].say.text, "open it");
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
        "    cases:\n"
        "      - {when: {fitted: torch}, uses: [torch]}\n"
        "      - {id: none, practice: yes, lethal: [dark]}\n"
        "    lethal: [hot]\n"
        "    sources: [S1, S2]\n" CAUTIONS,
        "steps:\n"
        "  fuel:\n"
        "    act: \"**SHUT** it.\"\n"
        "    cases: {none: {act: \"**TELL** them.\", because: Other.}}\n"
        "    lethal: {hot: It is hot., dark: It is dark.}\n"
        "    because: It burns.\n" CAUTIONS_TEXTS);
    expect_errors(0);
    const struct procedure_step *step = &procedure->steps[0];
    assert_int_equal(step->case_count, 2);
    assert_string_equal(step->cases[0].act.text, "**SHUT** it.");
    assert_string_equal(step->cases[0].because.text, "It burns.");
    assert_string_equal(step->cases[0].lethal.items[0].text, "It is hot.");
    assert_int_equal(step->cases[0].basis.sources.count, 2);
    assert_int_equal(step->cases[0].place.line, 8);
    assert_null(step->cases[1].when);
    assert_string_equal(step->cases[1].act.text, "**TELL** them.");
    assert_string_equal(step->cases[1].because.text, "Other.");
    assert_string_equal(step->cases[1].lethal.items[0].text, "It is dark.");
    assert_int_equal(step->cases[1].basis.sources.count, 0);
    assert_int_equal(step->cases[1].basis.practice.answer, ANSWER_YES);
}

static void a_step_stands_on_something(void **state)
{
    (void)state;
    static const char add[] = "write sources: [...], or practice: yes for trade practice";
    refused("steps: [{id: stop}]\n" CAUTIONS, ALL_TEXTS,
            FAULT(5, "step stop has neither sources nor practice: yes", add));
    refused("steps: [{id: stop, practice: no}]\n" CAUTIONS, ALL_TEXTS,
            FAULT(5, "step stop has neither sources nor practice: yes", add));
    refused("steps: [{id: stop, sources: [S1], cases: [{sources: []}]}]\n" CAUTIONS, ALL_TEXTS,
            FAULT(5, "a case of step stop has neither sources nor practice: yes", add));
    refused("steps: [{id: stop, sources: [S1, S9]}]\n" CAUTIONS, ALL_TEXTS,
            FAULT(5, "no source is called S9", "did you mean \"S1\"?"));
    refused("steps: [{id: stop, sources: [elsewhere]}]\n" CAUTIONS, ALL_TEXTS,
            FAULT(5, "no source is called elsewhere",
                  "add it to sources.yaml, with how far it was read"));
}

static void act_refused(const char *act, const char *what, const char *remedy)
{
    refused(STEPS CAUTIONS,
            text_format(test.arena, "steps: {stop: {act: \"%s\"}}\n" CAUTIONS_TEXTS, act),
            FAULT(5, what, remedy));
}

static void an_act_is_written_well(void **state)
{
    (void)state;
    static const char remedy[] = "put two stars before and two after the bold words: "
                                 "**SHUT** the fuel";
    act_refused("**STOP", "act holds bold stars that are never closed", remedy);
    act_refused("*STOP*", "act holds a single star", remedy);
    act_refused("STOP ****", "act holds bold stars with nothing between them", remedy);
    act_refused("", "\"act\" has no value",
                "fill in \"act: ...\" (the headline, **bold** in stars)");
    act_refused("A ", "act ends with a space",
                "write the words with single spaces between them, on one line");
}

static void some_case_always_holds(void **state)
{
    (void)state;
    refused("steps: [{id: a, practice: yes, cases: [{id: b, when: {fitted: torch}}]}]\n" CAUTIONS,
            "steps: {a: {cases: {b: {act: B}}}}\n" CAUTIONS_TEXTS,
            FAULT(5, "step a says nothing to a boat that fits none of its cases",
                  "write an act for the step in its texts, or a last case without when"));
    refused("steps: [{id: a, practice: yes, cases: [{uses: torch}, {when: {fitted: torch}}]}]\n"
            CAUTIONS, "steps: {a: {act: A}}\n" CAUTIONS_TEXTS,
            FAULT(5, "a case of step a has no when, so those after it never come",
                  "make it the last, or give it a when"));
    refused("steps: [{id: a, practice: yes, cases: [{when: {fitted: torch}}, {id: b}]}]\n"
            CAUTIONS, "steps: {a: {cases: {b: {act: B}}}}\n" CAUTIONS_TEXTS,
            FAULT(5, "a case of step a has no act",
                  "give it an id, and an act under that id in the texts; or give the whole step "
                  "an act"));
}

/* What a draft says where nothing can be decided. */
static void a_last_case_for_all_lends_the_step_its_words(void **state)
{
    (void)state;
    const struct procedure *procedure = procedure_of(
        "steps: [{id: a, practice: yes, cases: [{id: b, when: {fitted: torch}}, {id: c}]}]\n"
        CAUTIONS, "steps: {a: {cases: {b: {act: B}, c: {act: C}}}}\n" CAUTIONS_TEXTS);
    expect_errors(0);
    assert_string_equal(procedure->steps[0].act.text, "C");
}

static void a_broken_when_is_not_left_out(void **state)
{
    (void)state;
    const struct fault fault = {5, "trch is not a known item", "did you mean \"torch\"?"};
    refused("steps: [{id: stop, practice: yes, cases: [{when: {fitted: trch}}, {}]}]\n" CAUTIONS,
            ALL_TEXTS, &fault);
    refused("steps: [{id: stop, practice: yes, when: {fitted: trch}}]\n" CAUTIONS, ALL_TEXTS,
            &fault);
    refused("cautions: [{id: hot, when: {fitted: trch}, sources: [S1]}]\n" STEPS, ALL_TEXTS,
            &fault);
    refused("steps: [{id: stop, practice: yes, cases: [{id: a, when: }]}]\n" CAUTIONS,
            "steps: {stop: {act: A, cases: {a: {act: B}}}}\n" CAUTIONS_TEXTS,
            FAULT(5, "when asks nothing",
                  "write a condition such as {fitted: liferaft}, or take the key out"));
}

static void steps_are_counted_and_named(void **state)
{
    (void)state;
    struct text_builder logic = text_builder_in(test.arena), texts = text_builder_in(test.arena);
    text_add(&logic, "steps:\n");
    text_add(&texts, "steps:\n");
    for (int i = 1; i <= 9; i++) {
        text_add_format(&logic, "  - {id: s%d, practice: yes}\n", i);
        text_add_format(&texts, "  s%d: {act: A}\n", i);
    }
    text_add(&logic, CAUTIONS);
    text_add(&texts, CAUTIONS_TEXTS);
    refused(logic.at, texts.at, FAULT(14, "9 steps: a card holds at most 8",
                                      "keep those that save most lives"));
    refused(CAUTIONS, CAUTIONS_TEXTS, FAULT(1, "the procedure has no steps", NULL));
    refused("steps:\n  - {id: stop, practice: yes}\n  - {id: stop, practice: yes}\n" CAUTIONS,
            ALL_TEXTS, FAULT(7, "id stop stands twice under steps (first on line 6)",
                             "give each an id of its own"));
    refused("steps: [{id: Stop, practice: yes}]\n" CAUTIONS,
            "steps: {Stop: {act: A}}\n" CAUTIONS_TEXTS,
            FAULT(5, "id \"Stop\" is not a plain name",
                  "write small letters, digits and _, a letter first"));
    refused("steps: [{id: stop, practice: yes, lethal: [a, b, c]}]\n" CAUTIONS,
            "steps: {stop: {act: A, lethal: {a: A, b: B, c: C}}}\n" CAUTIONS_TEXTS,
            FAULT(5, "3 lethal lines: a step has at most 2", "keep the two that save most lives"));
}

#define ASK_TEXTS "decision: {ask: \"A?\", yes: A, no: B}\n"

static void named_steps_exist(void **state)
{
    (void)state;
    refused(STEPS CAUTIONS "decision: {after: stopp, yes: {}, no: {}, practice: yes}\n",
            ALL_TEXTS ASK_TEXTS, FAULT(7, "after: no step is called stopp",
                                       "did you mean \"stop\"?"));
    refused(STEPS CAUTIONS "decision: {after: now, yes: {}, no: {}, practice: yes}\n",
            ALL_TEXTS ASK_TEXTS, FAULT(7, "after: no step is called now", NULL));
}

static void a_decision_has_both_exits(void **state)
{
    (void)state;
    refused(STEPS CAUTIONS "decision: {after: stop, yes: {}, no: {}}\n", ALL_TEXTS ASK_TEXTS,
            FAULT(7, "the decision has neither sources nor practice: yes", NULL));
    refused(STEPS CAUTIONS "decision: {after: stop, yes: {}, practice: yes}\n",
            ALL_TEXTS "decision: {ask: \"A?\", yes: A}\n",
            FAULT(7, "a decision needs the key \"no\"", "add \"no: ...\" (the same)"));
    refused(STEPS CAUTIONS "decision: {after: stop, yes: {}, no: {}, practice: yes}\n",
            ALL_TEXTS "decision: {ask: \"A?\", yes: A}\n",
            FAULT(7, "a decision needs the key \"no\"", "add \"no: ...\" (the same)"));
}

static void warnings_stand_on_authorities(void **state)
{
    (void)state;
    refused(STEPS "cautions: [{id: hot}]\n", ALL_TEXTS,
            FAULT(6, "a caution has no sources", "write sources: [...]"));
    refused(STEPS CAUTIONS "never: [{id: open}]\n", ALL_TEXTS "never: {open: open it}\n",
            FAULT(7, "a never has no sources", NULL));
    refused(STEPS "cautions: [{id: hot, sources: [S1, S3]}]\n", ALL_TEXTS,
            FAULT(6, "a caution stands on S3, which is no authority (VC)",
                  "name an authority's text of which the passage was read (VA or VB)"));
    refused(STEPS CAUTIONS "never: [{id: open, sources: [S2]}]\n",
            ALL_TEXTS "never: {open: open it}\n",
            FAULT(7, "a never stands on no source that is known to be in force",
                  "add a source whose status is current"));
    refused(STEPS "cautions: [{id: hot, practice: yes, sources: [S1]}]\n", ALL_TEXTS,
            FAULT(6, "a caution has no key \"practice\"", NULL));
}

static void warnings_are_few(void **state)
{
    (void)state;
    static const char four[] = "\n  - {id: a, sources: [S1]}\n  - {id: b, sources: [S1]}\n"
                               "  - {id: c, sources: [S1]}\n  - {id: d, sources: [S1]}\n";
    static const char words[] = "{a: A, b: B, c: C, d: D}\n";
    refused(STEPS, STEPS_TEXTS,
            FAULT(1, "the procedure has no caution",
                  "write cautions: with one to three warnings of authorities"));
    refused(text_format(test.arena, STEPS "cautions:%s", four),
            text_format(test.arena, STEPS_TEXTS "cautions: %s", words),
            FAULT(10, "4 cautions: a card holds at most 3", NULL));
    refused(text_format(test.arena, STEPS CAUTIONS "never:%s", four),
            text_format(test.arena, ALL_TEXTS "never: %s", words),
            FAULT(11, "4 nevers: a card holds at most 3", NULL));
}

static void a_distress_card_is_another_kind(void **state)
{
    (void)state;
    taken("kind: distress\n", "");
    refused("kind: distress\n" STEPS, STEPS_TEXTS,
            FAULT(1, "a card of the kind distress has no steps, decision or calls",
                  "take them out: its texts come from the boat's record"));
}

static void a_safety_plan_only_shows_where_gear_is(void **state)
{
    (void)state;
    taken("kind: safety_plan\n", "");
    refused("kind: safety_plan\n" STEPS, STEPS_TEXTS,
            FAULT(1, "a card of the kind safety_plan has no steps, decision or calls",
                  "take them out: its texts come from the boat's record"));
    refused("kind: safety_plan\n" CAUTIONS, CAUTIONS_TEXTS,
            FAULT(1, "a card of the kind safety_plan has no never, cautions or when",
                  "take them out: every boat has one, and it only shows where gear is"));
}

static void a_card_that_some_boats_lack_says_why(void **state)
{
    (void)state;
    refused(STEPS CAUTIONS "when: {fitted: petrol_stowage}\n", ALL_TEXTS,
            FAULT(1, "a file of texts needs the key \"when_reason\"",
                  "add \"when_reason: ...\" (with a when: why other boats do not need the card)"));
}

static void what_must_be_known_is_shown(void **state)
{
    (void)state;
    taken("must_know: [torch]\nsteps: [{id: stop, sources: [S1], also: [torch]}]\n" CAUTIONS,
          ALL_TEXTS);
    refused("must_know: [torch]\nsteps: [{id: stop, sources: [S1], also: [knife]}]\n" CAUTIONS,
            ALL_TEXTS, FAULT(5, "must_know: no step shows torch also",
                             "take it out, or name it under also in the step that shows it"));
}

static void unknown_words_get_the_nearest(void **state)
{
    (void)state;
    assert_null(procedure_of("steps:\n"
                             "  - {id: a, practice: yes, uses: [lifraft]}\n"
                             "  - {id: b, practice: yes, withn: deck}\n" CAUTIONS
                             "nevr: []\n",
                             "steps: {a: {act: A}, b: {act: B}}\n" CAUTIONS_TEXTS));
    expect_errors(3);
    expect_error_with(6, "lifraft", "liferaft");
    expect_error_with(7, "withn", "within");
    expect_error_with(9, "nevr", "never");
}

static void a_file_without_a_head_is_refused(void **state)
{
    (void)state;
    static const char *const texts[] = {TEXTS_HEAD, NULL};
    assert_null(procedure_in("procedure: Engine Fire\n", texts));
    expect_error(1, "procedure \"Engine Fire\" is not a plain key", NULL);
    expect_error_with(1, "stripe", "procedure");
    test.problems = problems_new(test.arena);
    assert_null(procedure_in("- steps\n", texts));
    expect_errors(1);
    test.problems = problems_new(test.arena);
    assert_null(procedure_in("steps: [\n", texts));
    assert_true(problems_count(test.problems, SEVERITY_ERROR) > 0);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(a_whole_procedure_is_read),
        TEST(what_stands_beside_the_steps_is_read),
        TEST(cases_have_from_their_step_what_they_leave_out),
        TEST(a_step_stands_on_something),
        TEST(an_act_is_written_well),
        TEST(some_case_always_holds),
        TEST(a_last_case_for_all_lends_the_step_its_words),
        TEST(a_broken_when_is_not_left_out),
        TEST(steps_are_counted_and_named),
        TEST(named_steps_exist),
        TEST(a_decision_has_both_exits),
        TEST(warnings_stand_on_authorities),
        TEST(warnings_are_few),
        TEST(a_distress_card_is_another_kind),
        TEST(a_safety_plan_only_shows_where_gear_is),
        TEST(a_card_that_some_boats_lack_says_why),
        TEST(what_must_be_known_is_shown),
        TEST(unknown_words_get_the_nearest),
        TEST(a_file_without_a_head_is_refused),
    };
    int failed = cmocka_run_group_tests_name("procedure", tests, NULL, NULL);
    return failed != 0;
}
