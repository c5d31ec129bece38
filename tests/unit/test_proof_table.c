/* test_proof_table.c - the table of page rules is whole; the specimen fleet is clean by
 * it; the audit reads as it shall. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <stdio.h>
#include <string.h>
#include <unistd.h>

#include "faces_fixture.h"
#include "proof_case.h"
#include "text.h"

/* ---- the table ---- */

static void each_rule_is_whole(void **state)
{
    (void)state;
    for (int key = 0; key < RULE_COUNT; key++) {
        const struct proof_rule *rule = proof_rule((enum proof_rule_key)key);
        if (text_empty(rule->id) || text_empty(rule->sentence) || text_empty(rule->limit) ||
            rule->exempt == NULL || text_empty(rule->source))
            fail_msg("rule %d is not whole", key);
        bool judged = rule->judge == PROOF_PAGE || rule->judge == PROOF_SET;
        if (judged == text_empty(rule->remedy))
            fail_msg("%s: a remedy for what is judged, and only for that", rule->id);
        if (!judged && text_empty(rule->exempt))
            fail_msg("%s: who judges it is not told", rule->id);
    }
}

static bool rule_stands(const char *id)
{
    for (int key = 0; key < RULE_COUNT; key++)
        if (strcmp(proof_rule((enum proof_rule_key)key)->id, id) == 0)
            return true;
    return false;
}

static void no_rule_of_card_design_is_missing(void **state)
{
    (void)state;
    char id[16];
    for (int n = 1; n <= 35; n++) {
        snprintf(id, sizeof id, "G%d", n);
        if (!rule_stands(id))
            fail_msg("%s is not in the table", id);
    }
}

/* A test that is named for a rule is there. */
static void tests_that_are_named_exist(void **state)
{
    (void)state;
    size_t named = 0;
    for (int key = 0; key < RULE_COUNT; key++) {
        const char *at = strstr(proof_rule((enum proof_rule_key)key)->exempt, "tests/");
        char path[64] = "";
        if (at == NULL)
            continue;
        size_t length = strcspn(at, " ,;");
        assert_true(length < sizeof path);
        memcpy(path, at, length);
        if (access(path, F_OK) != 0)
            fail_msg("%s is no test", path);
        named++;
    }
    assert_true(named >= 4);
}

/* ---- the fleet ---- */

#define NOTES_MOST 3
#define MEASURED_LEAST 800

static void report_must_be_clean(const struct page *page, const struct proof_report *report)
{
    for (size_t i = 0; i < report->count; i++)
        if (proof_rule(report->findings[i].rule)->severity == PROOF_ERROR)
            fail_msg("%s: %s: %s", page->id, proof_rule(report->findings[i].rule)->id,
                     report->findings[i].measured);
    if (report->notes > NOTES_MOST)
        fail_msg("%s: %zu notes", page->id, report->notes);
    if (report->measured < MEASURED_LEAST)
        fail_msg("%s: only %zu things were measured", page->id, report->measured);
    assert_int_equal(report->count, report->errors + report->notes + report->aims);
}

static void boat_must_be_clean(const char *boat)
{
    case_boat(&test, boat);
    struct layout_input input = {case_compose(&test, false), faces, paper_of(PAPER_A4), false};
    struct laid_set laid = layout_set(&input, test.arena, test.problems);
    struct case_pages pages = case_pages(&test, &laid);
    const struct proof_report *reports = proof_set(&laid, faces, test.arena);
    for (size_t i = 0; i < pages.count; i++)
        if (pages.at[i] != NULL)
            report_must_be_clean(pages.at[i], &reports[i]);
}

static void the_fleet_is_clean(void **state)
{
    (void)state;
    boat_must_be_clean("tests/fleet/boats/tamarisk.yaml");
    boat_must_be_clean("tests/fleet/boats/samphire.yaml");
    boat_must_be_clean("tests/fleet/boats/bramble.yaml");
}

/* ---- the audit ---- */

static const char *audit(const struct proof_report *report)
{
    struct text_builder out = text_builder_in(test.arena);
    proof_print(report, "tamarisk", "gas_leak", &out);
    return out.at;
}

static void an_audit_without_findings_tells_what_was_measured(void **state)
{
    (void)state;
    struct proof_report report = {.measured = 4711};
    assert_string_equal(audit(&report),
                        "tamarisk gas_leak: clean; 0 notes, 0 below aim, 4711 things measured\n");
}

/* English has all lists; the audit of a language without them says what it does not judge. */
static void an_audit_tells_what_a_language_cannot_be_judged_by(void **state)
{
    (void)state;
    static const enum proof_rule_key by_words[] = {RULE_ONE_ACTION, RULE_VERB_FIRST, RULE_PASSIVE,
                                                   RULE_NEGATIVE, RULE_CONTRARY_SIGN};
    struct proof_report report = {.words = test.words};
    assert_null(strstr(audit(&report), "not judged"));
    const struct words *bare = case_words_without_proof(&test);
    report.words = bare;
    const char *text = audit(&report);
    assert_non_null(strstr(text, "not judged, since the words of its language have no list for "
                                 "it: G12 the command of a headline is one action; G12 "));
    for (size_t i = 0; i < sizeof by_words / sizeof *by_words; i++) {
        assert_true(proof_rule_judges(by_words[i], test.words));
        assert_false(proof_rule_judges(by_words[i], bare));
        assert_non_null(strstr(text, proof_rule(by_words[i])->sentence));
    }
    assert_true(proof_rule_judges(RULE_SENTENCE, bare));
}

/* By rule, in the order of the table; what the rule asks stands there once. */
static void an_audit_tells_measured_limit_and_remedy(void **state)
{
    (void)state;
    const struct proof_finding findings[] = {
        {.rule = RULE_HOLE, .page = "gas_leak", .measured = "\"here\": in the circle"},
        {.rule = RULE_SAFE_AREA, .page = "gas_leak", .measured = "\"there\": 1.00 mm outside"},
        {.rule = RULE_HOLE, .page = "gas_leak", .measured = "\"too\": in the circle"}};
    struct proof_report report = {.findings = findings, .count = 3, .errors = 3, .measured = 12};
    assert_string_equal(
        audit(&report),
        "tamarisk gas_leak: held back by 3 errors; 0 notes, 0 below aim, 12 things measured\n"
        "  error  G1   \"there\": 1.00 mm outside\n"
        "              rule:   everything stands inside the safe area\n"
        "              limit:  sides 10, head 16, foot 8 mm; on A5 8, 15, 7\n"
        "              remedy: move it inside, or shorten it\n"
        "  error  G1   \"here\": in the circle\n"
        "  error  G1   \"too\": in the circle\n"
        "              rule:   the punched hole takes nothing away\n"
        "              limit:  7.5 mm round a point 8 mm below the paper's edge\n"
        "              remedy: move it down\n");
}

static void what_people_judge_is_one_line(void **state)
{
    (void)state;
    struct text_builder out = text_builder_in(test.arena);
    proof_people_print(&out);
    assert_non_null(strstr(out.at, "G24 "));
    assert_ptr_equal(strchr(out.at, '\n'), out.at + out.length - 1);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(each_rule_is_whole),
        cmocka_unit_test(no_rule_of_card_design_is_missing),
        cmocka_unit_test(tests_that_are_named_exist),
        cmocka_unit_test_setup_teardown(the_fleet_is_clean, set_up, tear_down),
        cmocka_unit_test_setup_teardown(an_audit_without_findings_tells_what_was_measured,
                                        set_up, tear_down),
        cmocka_unit_test_setup_teardown(an_audit_tells_what_a_language_cannot_be_judged_by, set_up,
                                        tear_down),
        cmocka_unit_test_setup_teardown(an_audit_tells_measured_limit_and_remedy, set_up,
                                        tear_down),
        cmocka_unit_test_setup_teardown(what_people_judge_is_one_line, set_up, tear_down)};
    return cmocka_run_group_tests(tests, NULL, NULL);
}
