/* test_unsurveyed.c - gear that nobody has looked for: it counts as not recorded, and all of it
 * is told in one problem without lines to paste. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "card_fixture.h"
#include "text.h"

#define STEPS \
    "steps: [{id: a, sources: [S5], cases: [{id: y, when: {fitted: torch}, uses: [torch]},\n" \
    "         {id: n}]}, {id: b, sources: [S5], also: [knife]}]\n"
#define TEXTS \
    "steps: {a: {act: \"**GO.**\", cases: {y: {act: \"**LIGHT.**\"}, n: {act: \"**GO.**\"}}}, " \
    "b: {act: \"**CUT.**\"}}\n"

static const struct sheet *smoke_of(const char *lists, enum answer draft)
{
    const char *const texts[] = {case_procedure_text(&test, "smoke", 10, STEPS, TEXTS), NULL};
    case_procedures(&test, texts);
    case_boat(&test, case_boat_text(&test, CASE_RADIO,
                                    "  - {item: foghorn, tag: E10, zone: saloon}\n", lists));
    return case_card(case_compose(&test, draft == ANSWER_YES), "smoke");
}

#define UNSURVEYED "  - sart\nnot_surveyed:\n  - torch\n  - knife\n  - epirb\n"

static void what_nobody_looked_for_is_told_in_one_line(void **state)
{
    (void)state;
    assert_true(smoke_of(UNSURVEYED, ANSWER_NO)->held);
    const struct problem *problem =
        case_problem(&test, "not surveyed yet: torch, knife, epirb: the card 10 SMOKE CARD "
                            "waits, and the card 10 SMOKE CARD goes without");
    assert_non_null(problem);
    assert_int_equal(problem->severity, SEVERITY_HELD);
    assert_null(strstr(problem->remedy, "{item:"));
    size_t count;
    const struct problem *all = problems_sorted(test.problems, &count);
    for (size_t i = 0; i < count; i++)
        assert_null(strstr(all[i].what, "is not recorded"));
}

/* Gear that only helps holds nothing, and what no card asks for is named all the same. */
static void what_holds_nothing_is_a_note(void **state)
{
    (void)state;
    assert_false(smoke_of("  - torch\nnot_surveyed: [knife, epirb]\n", ANSWER_NO)->held);
    const struct problem *problem = case_problem(
        &test, "not surveyed yet: knife, epirb: the card 10 SMOKE CARD goes without");
    assert_non_null(problem);
    assert_int_equal(problem->severity, SEVERITY_NOTE);
    assert_false(smoke_of("  - torch\n  - knife\nnot_surveyed: [epirb]\n", ANSWER_NO)->held);
    assert_non_null(case_problem(&test, "not surveyed yet: epirb"));
}

static void a_draft_says_that_it_is_not_recorded(void **state)
{
    (void)state;
    const struct sheet *card = smoke_of(UNSURVEYED, ANSWER_YES);
    assert_int_equal(case_step(card, "a")->row_count, 1);
    assert_string_equal(case_step(card, "a")->rows[0].place,
                        words_get(test.words, WORD_NOT_RECORDED));
    assert_int_equal(case_step(card, "b")->row_count, 1);
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(what_nobody_looked_for_is_told_in_one_line),
        TEST(what_holds_nothing_is_a_note),
        TEST(a_draft_says_that_it_is_not_recorded),
    };
    return cmocka_run_group_tests_name("unsurveyed", tests, NULL, NULL) != 0;
}
