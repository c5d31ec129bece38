/* test_proof_pages.c - each page rule catches the pages that break it, and passes the
 * same pages mended; none of the rules is without such a page. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <stdio.h>

#include "proof_case.h"

#define TESTS_MOST 240
#define NAME_BYTES 80
#define COUNT_OF(list) (sizeof list / sizeof *(list))

static const struct proof_breaks *const all[] = {&breaks_place, &breaks_size,    &breaks_light,
                                                 &breaks_sign,  &breaks_wording, &breaks_steps,
                                                 &breaks_rows,  &breaks_plan,    &breaks_bands,
                                                 &breaks_set};

static void broken_page_is_caught(void **state)
{
    break_must_be_caught(*state);
}

static bool is_broken_by_some(enum proof_rule_key rule)
{
    for (size_t i = 0; i < COUNT_OF(all); i++)
        for (size_t k = 0; k < all[i]->count; k++)
            if (all[i]->rows[k].rule == rule)
                return true;
    return false;
}

static void no_rule_is_without_its_page(void **state)
{
    (void)state;
    for (int key = 0; key < RULE_COUNT; key++) {
        const struct proof_rule *rule = proof_rule((enum proof_rule_key)key);
        bool judged = rule->judge == PROOF_PAGE || rule->judge == PROOF_SET;
        if (judged != is_broken_by_some((enum proof_rule_key)key))
            fail_msg("%s (%s): %s", rule->id, rule->sentence,
                     judged ? "no page breaks it" : "judged elsewhere, yet a page breaks it");
    }
}

int main(void)
{
    static struct CMUnitTest tests[TESTS_MOST];
    static char names[TESTS_MOST][NAME_BYTES];
    size_t count = 0;
    for (size_t i = 0; i < COUNT_OF(all); i++)
        for (size_t k = 0; k < all[i]->count && count + 1 < TESTS_MOST; k++) {
            const struct proof_break *row = &all[i]->rows[k];
            snprintf(names[count], NAME_BYTES, "%s %s", proof_rule(row->rule)->id, row->name);
            tests[count] = (struct CMUnitTest){.name = names[count],
                                               .test_func = broken_page_is_caught,
                                               .initial_state = (void *)(uintptr_t)row};
            count++;
        }
    tests[count++] = (struct CMUnitTest)cmocka_unit_test(no_rule_is_without_its_page);
    return _cmocka_run_group_tests("page rules", tests, count, proof_case_open, proof_case_close);
}
