/* test_layout_full.c - a card that cannot fit, among others of its boat that can. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "faces_fixture.h"
#include "layout/layout_room.h"

/* One card that cannot fit is told by name; the others are printed all the same. */
static void what_does_not_fit_is_told_and_holds_only_its_card(void **state)
{
    (void)state;
    case_boat(&test, "tests/fleet/boats/tamarisk.yaml");
    const struct sheet_set *whole = case_compose(&test, false);
    const struct sheet **cards = arena_array(test.arena, whole->count, sizeof *cards);
    struct sheet long_card = *case_card(whole, "flooding");
    struct steps_facts *facts = FACTS(test.arena, &long_card, steps, BLOCK_STEPS);
    struct card_step *steps = arena_array(test.arena, facts->count, sizeof *steps);
    memcpy(steps, facts->items, facts->count * sizeof *steps);
    steps[1].headline.text = "**PUMP** with every pump there is, and then with every bucket too, "
                             "and do not stop for as long as anybody on board has strength left.";
    facts->items = steps;
    for (size_t i = 0; i < whole->count; i++)
        cards[i] = strcmp(whole->sheets[i]->id, "flooding") == 0 ? &long_card : whole->sheets[i];
    const struct sheet_set set = {.sheets = cards, .count = whole->count};
    struct layout_input input = {&set, faces, paper_of(PAPER_A4), false};
    size_t before, count;
    problems_sorted(test.problems, &before);
    struct laid_set laid = layout_set(&input, test.arena, test.problems);
    assert_int_equal(laid.count, whole->count);
    for (size_t i = 0; i < laid.count; i++)
        for (size_t p = 0; p < laid.sheets[i].page_count; p++)
            assert_int_equal(laid.sheets[i].pages[p] == NULL, cards[i] == &long_card);
    const struct problem *told = problems_sorted(test.problems, &count);
    assert_int_equal(count, before + 1);
    assert_int_equal(told[0].severity, SEVERITY_ERROR);
    assert_non_null(strstr(told[0].what, "FLOODING (en): a line of the steps is "));
    assert_non_null(strstr(told[0].what, " mm too long at the smallest size allowed"));
    assert_non_null(told[0].remedy);
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(what_does_not_fit_is_told_and_holds_only_its_card),
    };
    int failed = cmocka_run_group_tests(tests, NULL, NULL);
    return failed != 0;
}
