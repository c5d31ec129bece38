/* test_compose_help.c - gear that a step only shows also: what is not recorded of it holds a
 * card where something depends on it, and nowhere else. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "card_fixture.h"
#include "text.h"

static void procedure_with(const char *logic, const char *words)
{
    const char *const texts[] = {case_procedure_text(&test, "smoke", 10, logic, words), NULL};
    case_procedures(&test, texts);
}

/* A boat of one torch. */
static void torch_boat(const char *not_fitted)
{
    case_boat(&test, case_boat_text(&test, CASE_RADIO,
                                    "  - {item: torch, tag: C9, zone: saloon}\n", not_fitted));
}

static const struct sheet *smoke(bool draft)
{
    return case_card(case_compose(&test, draft), "smoke");
}

#define HELP_STEP "steps: [{id: a, sources: [S5], also: [torch, knife]}]\n"
#define HELP_TEXTS "steps: {a: {act: \"**GO.**\"}}\n"
#define KNIFE_NOTE "knife is not recorded: the card 10 SMOKE CARD goes without it"

static const struct sheet *helped(const char *logic, const char *texts)
{
    procedure_with(text_format(test.arena, HELP_STEP "%s", logic),
                   text_format(test.arena, HELP_TEXTS "%s", texts));
    torch_boat("");
    return smoke(false);
}

/* Its row is left out, and whoever prints is told. */
static void gear_that_only_helps_holds_nothing(void **state)
{
    (void)state;
    const struct sheet *card = helped("", "");
    assert_false(card->held);
    assert_int_equal(case_step(card, "a")->row_count, 1);
    const struct problem *problem = case_problem(&test, KNIFE_NOTE);
    assert_non_null(problem);
    assert_int_equal(problem->severity, SEVERITY_NOTE);
    assert_non_null(strstr(problem->remedy, "- {item: knife, tag: E10"));
    card = smoke(true);
    assert_int_equal(case_step(card, "a")->row_count, 2);
    assert_string_equal(case_step(card, "a")->rows[1].place,
                        words_get(test.words, WORD_NOT_RECORDED));
    torch_boat("  - knife\n");
    assert_false(smoke(false)->held);
    assert_null(case_problem(&test, KNIFE_NOTE));
}

static void gear_that_something_depends_on_holds(void **state)
{
    (void)state;
    assert_true(helped("must_know: [knife]\n", "")->held);
    assert_null(case_problem(&test, KNIFE_NOTE));
    assert_true(helped("never: [{id: n, when: {fitted: knife}, sources: [S5]}]\n",
                       "never: {n: cut it.}\n")->held);
    assert_false(helped("never: [{id: n, when: {surely: {fitted: knife}}, sources: [S5]}]\n",
                        "never: {n: cut it.}\n")->held);
    assert_true(helped("call_when: [{id: k, when: {fitted: knife}}, {id: n}]\n"
                       "calls: [{signal: pan_pan, say: A, from: fixed}]\n",
                       "call_when: {k: A, n: B}\n")->held);
    procedure_with("steps: [{id: a, sources: [S5], also: [{engine_blower: off}]}]\n", HELP_TEXTS);
    assert_true(smoke(false)->held);    /* each engine has one */
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(gear_that_only_helps_holds_nothing),
        TEST(gear_that_something_depends_on_holds),
    };
    int failed = cmocka_run_group_tests_name("compose help", tests, NULL, NULL);
    return failed != 0;
}
