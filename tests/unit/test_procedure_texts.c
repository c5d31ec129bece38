/* test_procedure_texts.c - the texts of a procedure beside its logic: each id has its text in
 * each language, no text stands without an id, and {names} lead somewhere. */
#include "procedure_case.h"

/* ---- ids ---- */

#define FUEL \
    "steps:\n" \
    "  - id: fuel\n" \
    "    cases: [{id: outside, when: {fitted: torch}}, {id: none}]\n" \
    "    lethal: [hot]\n" \
    "    practice: yes\n" CAUTIONS

static void an_id_without_a_text_is_told(void **state)
{
    (void)state;
    refused(STEPS CAUTIONS, CAUTIONS_TEXTS,
            FAULT(1, "a file of texts needs the key \"steps\"",
                  "add \"steps: ...\" (of each step, by its id)"));
    refused("steps: [{id: stop, sources: [S1]}, {id: go, sources: [S1]}]\n" CAUTIONS, ALL_TEXTS,
            FAULT(5, "a set of texts under steps needs the key \"go\"",
                  "add \"go: ...\" (the words of the id on line 5 of trial.yaml)"));
    refused(FUEL, "steps:\n  fuel:\n    cases: {none: {act: A}}\n    lethal: {hot: Hot.}\n"
            CAUTIONS_TEXTS,
            FAULT(7, "a set of texts under cases needs the key \"outside\"",
                  "add \"outside: ...\" (the words of the id on line 7 of trial.yaml)"));
    refused(FUEL, "steps:\n  fuel:\n    cases: {outside: {because: B}, none: {act: A}}\n"
            "    lethal: {hot: Hot.}\n" CAUTIONS_TEXTS,
            FAULT(7, "a case needs the key \"act\"",
                  "add \"act: ...\" (the headline, **bold** in stars)"));
    refused(FUEL, "steps:\n  fuel:\n    cases: {outside: {act: B}, none: {act: A}}\n"
            CAUTIONS_TEXTS,
            FAULT(7, "a step needs the key \"lethal\"",
                  "add \"lethal: ...\" (what kills here, by id, for the step and its cases)"));
    refused(STEPS CAUTIONS "never: [{id: open, sources: [S1]}]\n", ALL_TEXTS "never: {}\n",
            FAULT(7, "a set of texts under never needs the key \"open\"", NULL));
}

static void a_text_without_an_id_gets_the_nearest(void **state)
{
    (void)state;
    refused(STEPS CAUTIONS, ALL_TEXTS "never: {open: open it}\n",
            FAULT(7, "a file of texts has no key \"never\"",
                  "keys of a file of texts: procedure, title, subject, signs, seen, rows_below,\n"
                  "steps, cautions"));
    refused(STEPS CAUTIONS, "steps: {stop: {act: A, lethal: {hot: A}}}\n" CAUTIONS_TEXTS,
            FAULT(5, "a step has no key \"lethal\"", "keys of a step: act, because, who"));
    test.problems = problems_new(test.arena);
    assert_null(procedure_of(FUEL, "steps:\n  feul:\n    act: A\n" CAUTIONS_TEXTS));
    expect_errors(1);   /* the misspelt one is not missing, too */
    expect_error(6, "a set of texts under steps has no key \"feul\"", "did you mean \"fuel\"?");
}

static void what_belongs_into_the_other_file_is_told_so(void **state)
{
    (void)state;
    static const char texts[] = "texts stand apart: write it in the file of the same name in "
                                "words/LANGUAGE, under the id that stands here";
    static const char logic[] = "only texts stand here: gear, conditions and sources stand in "
                                "the procedure's own file";
    refused("title: Trial\n" STEPS CAUTIONS, ALL_TEXTS,
            FAULT(5, "a procedure has no key \"title\"", texts));
    refused("steps: [{id: stop, act: \"**STOP**\", sources: [S1]}]\n" CAUTIONS, ALL_TEXTS,
            FAULT(5, "a step has no key \"act\"", texts));
    refused(STEPS "cautions: [{id: hot, say: Hot., sources: [S1]}]\n", ALL_TEXTS,
            FAULT(6, "a caution has no key \"say\"", texts));
    refused(STEPS CAUTIONS, "steps: {stop: {act: A, uses: [torch]}}\n" CAUTIONS_TEXTS,
            FAULT(5, "a step has no key \"uses\"", logic));
}

static void texts_are_those_of_the_procedure(void **state)
{
    (void)state;
    const char *const texts[] = {
        "procedure: other\ntitle: T\nsubject: T\nsigns: [A]\n" ALL_TEXTS, NULL};
    assert_null(procedure_in(LOGIC_HEAD STEPS CAUTIONS, texts));
    expect_errors(1);
    expect_error(1, "these are the texts of other, not of trial",
                 "write procedure: trial, or put the texts into the file of that name");
}

static void a_line_said_in_two_cases_has_one_text(void **state)
{
    (void)state;
    const struct procedure *procedure = procedure_of(
        "steps:\n"
        "  - id: fuel\n"
        "    cases:\n"
        "      - {when: {fitted: torch}, lethal: [hot, dark]}\n"
        "      - {lethal: [hot]}\n"
        "    practice: yes\n" CAUTIONS,
        "steps: {fuel: {act: A, lethal: {hot: Hot., dark: Dark.}}}\n" CAUTIONS_TEXTS);
    expect_errors(0);
    const struct step_case *cases = procedure->steps[0].cases;
    assert_string_equal(cases[0].lethal.items[0].text, "Hot.");
    assert_string_equal(cases[0].lethal.items[1].text, "Dark.");
    assert_string_equal(cases[1].lethal.items[0].text, "Hot.");
    assert_string_equal(cases[0].lethal_ids.items[1].text, "dark");
    assert_int_equal(procedure->steps[0].lethal.count, 0);
}

/* ---- names ---- */

static void names_refused(const char *act, const char *what, const char *remedy)
{
    refused(STEPS CAUTIONS,
            text_format(test.arena, "steps: {stop: {act: \"%s\"}}\n" CAUTIONS_TEXTS, act),
            FAULT(5, what, remedy));
}

static void braces_hold_names(void **state)
{
    (void)state;
    static const char remedy[] = "write {id}, with the id of a step or the name of a procedure in "
                                 "small letters";
    names_refused("Step {stop", "act holds a brace that is not part of a {name}", remedy);
    names_refused("Step {}", "act holds a brace that is not part of a {name}", remedy);
    names_refused("Step {Stop}", "act holds a brace that is not part of a {name}", remedy);
    names_refused("Step stop}", "act holds a brace that is not part of a {name}", remedy);
    refused(STEPS CAUTIONS, STEPS_TEXTS "cautions: {hot: \"Hot at {stop}.\"}\n",
            FAULT(6, "hot holds a brace", NULL));
}

static void names_that_are_no_steps_must_be_cards(void **state)
{
    (void)state;
    const struct procedure *procedure = procedure_of(
        STEPS CAUTIONS "decision: {after: stop, yes: {}, no: {card: trial}, practice: yes}\n",
        "steps: {stop: {act: \"Step {stop}, card {trial}, {nowhere}.\"}}\n" CAUTIONS_TEXTS
        "decision: {ask: \"A?\", yes: \"Step {stop}, {stopp}.\", no: B}\n");
    expect_errors(0);
    assert_int_equal(procedure->lead_count, 3);
    const struct procedure_set set = {&procedure, 1};
    assert_false(procedure_set_check(&set, test.arena, test.problems));
    expect_errors(2);
    expect_error(5, "{nowhere} is neither a step of this procedure nor a card",
                 "write the id of a step of this procedure, or the name of another");
    expect_error(7, "{stopp} is neither a step of this procedure nor a card",
                 "did you mean \"stop\"?");
}

#define FORM_TEXTS \
    "procedure: form\ntitle: Form\nsubject: FORM\nsigns: [Smoke]\n" ALL_TEXTS "seen: [Boom]\n"

/* `trial` has the number 10. */
static void form_refused(int number, const char *keys, const struct fault *fault)
{
    const char *const texts[] = {FORM_TEXTS, NULL};
    const struct procedure *both[] = {
        procedure_of(STEPS CAUTIONS, ALL_TEXTS),
        procedure_in(text_format(test.arena, "procedure: form\nnumber: %d\nsymbol: flame\n"
                                 "stripe: fire\n%s" STEPS CAUTIONS, number, keys), texts)};
    const struct procedure_set set = {both, 2};
    expect_errors(0);
    assert_false(procedure_set_check(&set, test.arena, test.problems));
    expect_errors(1);
    expect_error(fault->line, fault->what, fault->remedy);
    test.problems = problems_new(test.arena);
}

static void a_form_is_of_a_card_of_its_number(void **state)
{
    static const char letter[] = "another form of a card needs a letter of its own";
    (void)state;
    form_refused(10, "form_of: steem\nform_letter: T\n",
                 FAULT(5, "form_of: no procedure is called steem",
                       "write the key of a procedure"));
    form_refused(20, "form_of: trial\nform_letter: T\n",
                 FAULT(2, "form is a form of trial and has another number",
                       "give both one number"));
    form_refused(10, "form_of: trial\n", FAULT(5, letter, NULL));
    form_refused(10, "form_of: trial\nform_letter: P\n", FAULT(5, letter, NULL));
    form_refused(10, "form_of: trial\nform_letter: TU\n", FAULT(5, letter, NULL));
}

static void an_exit_leads_to_a_card(void **state)
{
    (void)state;
    const struct procedure *procedure = procedure_of(
        STEPS CAUTIONS "decision: {after: stop, yes: {}, no: {card: trail}, practice: yes}\n",
        ALL_TEXTS "decision: {ask: \"A?\", yes: A, no: B}\n");
    const struct procedure_set set = {&procedure, 1};
    assert_false(procedure_set_check(&set, test.arena, test.problems));
    expect_errors(1);
    expect_error(7, "card: no procedure is called trail", "did you mean \"trial\"?");
}

/* ---- several languages ---- */

#define TWO STEPS CAUTIONS
#define OTHER_HEAD "procedure: trial\ntitle: Probe\nsubject: PROBE\nsigns: [Rauch]\n"
#define OTHER_TEXTS \
    "steps: {stop: {act: \"**HALT** {stop}\"}}\ncautions: {hot: Heiß.}\n"
#define FIRST_TEXTS "steps: {stop: {act: \"**STOP** {stop}\"}}\n" CAUTIONS_TEXTS

static const struct procedure *in_two(const char *first, const char *other)
{
    const char *const texts[] = {first, other, NULL};
    test.problems = problems_new(test.arena);
    return procedure_in(LOGIC_HEAD TWO, texts);
}

static void each_text_has_its_languages(void **state)
{
    (void)state;
    const struct procedure *procedure =
        in_two(TEXTS_HEAD FIRST_TEXTS, OTHER_HEAD OTHER_TEXTS);
    expect_errors(0);
    const struct text_value *act = &procedure->steps[0].act;
    assert_string_equal(act->text, "**STOP** {stop}");
    assert_string_equal(act->place.source->name, "words/en/trial.yaml");
    assert_string_equal(act->languages[0].language, "en");
    assert_string_equal(act->languages[0].text, act->text);
    assert_string_equal(act->languages[1].language, "xx");
    assert_string_equal(act->languages[1].text, "**HALT** {stop}");
    assert_string_equal(act->languages[1].place.source->name, "words/xx/trial.yaml");
    assert_null(act->languages[2].text);
    assert_string_equal(procedure->signs.items[0].languages[1].text, "Rauch");
    assert_string_equal(procedure->cautions[0].say.languages[1].text, "Heiß.");
    assert_string_equal(procedure->title.languages[1].text, "Probe");
    assert_null(procedure->key.languages);
}

static void one_language_is_a_list_of_one(void **state)
{
    (void)state;
    const struct procedure *procedure = procedure_of(TWO, FIRST_TEXTS);
    expect_errors(0);
    assert_string_equal(procedure->title.languages[0].text, "Trial");
    assert_null(procedure->title.languages[1].text);
    assert_null(procedure->rows_below.languages);
}

static void differs(const char *other, int line, const char *what)
{
    assert_null(in_two(TEXTS_HEAD "steps: {stop: {act: \"Do {stop}\", because: A}}\n"
                       CAUTIONS_TEXTS, other));
    expect_errors(1);
    expect_error(line, what, NULL);
}

static void languages_say_the_same(void **state)
{
    (void)state;
    differs(OTHER_HEAD "steps: {stop: {act: \"{stop}\"}}\n" CAUTIONS_TEXTS, 5,
            "because is given in only one of the languages en and xx");
    differs(OTHER_HEAD "steps: {stop: {act: \"{stop}\", because: B, who: C}}\n" CAUTIONS_TEXTS, 5,
            "who is given in only one of the languages en and xx");
    differs(OTHER_HEAD "steps: {stop: {act: \"{stop}\", because: B}}\n", 1,
            "a file of texts needs the key \"cautions\"");
    differs("procedure: trial\ntitle: P\nsubject: P\nsigns: [A, B]\n"
            "steps: {stop: {act: \"{stop}\", because: B}}\n" CAUTIONS_TEXTS, 4,
            "signs has 2 entries, and 1 in the language en");
    differs(OTHER_HEAD "steps: {stop: {act: A, because: B}}\n" CAUTIONS_TEXTS, 5,
            "act has no {stop}, which it has in the first language");
    differs(OTHER_HEAD "steps: {stop: {act: \"{stop} {go}\", because: B}}\n" CAUTIONS_TEXTS, 5,
            "act has {go}, which it has not in the first language");
    differs(OTHER_HEAD "steps: {stop: {act: \"{stop} {\", because: B}}\n" CAUTIONS_TEXTS, 5,
            "act holds a brace that is not part of a {name}");
}

static void only_warnings_and_reasons_name_channel_70(void **state)
{
    (void)state;
    static const char logic[] = STEPS CAUTIONS "never: [{id: talk, sources: [S1]}]\n";
    taken(logic, "steps: {stop: {act: A, because: Nobody talks on channel 70.}}\n"
                 "cautions: {hot: Channel 70 carries data.}\nnever: {talk: talk on VHF 70}\n");
    refused(logic, "steps: {stop: {act: Call on channel 70.}}\n" CAUTIONS_TEXTS
                   "never: {talk: talk}\n",
            FAULT(5, "channel 70 carries data only: nobody can be heard there",
                  "name the channel to talk on"));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(an_id_without_a_text_is_told),
        TEST(a_text_without_an_id_gets_the_nearest),
        TEST(what_belongs_into_the_other_file_is_told_so),
        TEST(texts_are_those_of_the_procedure),
        TEST(a_line_said_in_two_cases_has_one_text),
        TEST(braces_hold_names),
        TEST(names_that_are_no_steps_must_be_cards),
        TEST(an_exit_leads_to_a_card),
        TEST(a_form_is_of_a_card_of_its_number),
        TEST(each_text_has_its_languages),
        TEST(one_language_is_a_list_of_one),
        TEST(languages_say_the_same),
        TEST(only_warnings_and_reasons_name_channel_70),
    };
    int failed = cmocka_run_group_tests_name("procedure texts", tests, NULL, NULL);
    return failed != 0;
}
