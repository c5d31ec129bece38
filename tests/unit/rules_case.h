/* rules_case.h - one family of checks run over a boat made by hand, and looking for
 * what it told. */
#ifndef MAYDECK_TEST_RULES_CASE_H
#define MAYDECK_TEST_RULES_CASE_H

#include "record_test.h"

#include "rules/rules_room.h"

/* Silences used, at most so many. */
enum { SILENCES_MOST = 4 };

/* Runs the family on its own; the boat's problems begin anew. */
static inline void family_run(rule_family *family, const struct boat *boat,
                              const struct base_record *base)
{
    static const struct date today = {2026, 11, 20};
    struct rules_input input = {.boat = boat, .base = base, .today = today, .from = today,
                                .to = today};
    bool used[SILENCES_MOST] = {false};
    test.problems = problems_new(test.arena);
    struct rule_run run = {.in = &input, .arena = test.arena, .problems = test.problems,
                           .used = used};
    family(&run);
}

static inline size_t told_count(void)
{
    size_t count = 0;
    (void)problems_sorted(test.problems, &count);
    return count;
}

/* What this check told; NULL: nothing. Twice is a failure. */
static inline const struct problem *told_by(const char *check)
{
    size_t count = 0;
    const struct problem *all = problems_sorted(test.problems, &count), *found = NULL;
    for (size_t i = 0; i < count; i++) {
        if (!text_equal(all[i].check, check))
            continue;
        assert_null(found);
        found = &all[i];
    }
    return found;
}

/* The check told something in this line, with a remedy, at its row's severity. */
static inline const char *expect_told_at(const char *check, int line)
{
    const struct problem *problem = told_by(check);
    if (problem == NULL) {
        problems_show();
        fail_msg("%s told nothing", check);
        return "";
    }
    assert_int_equal(problem->severity, check_find(check)->severity);
    assert_non_null(problem->remedy);
    assert_int_equal(problem->place.line, line);
    return problem->what;
}

/* The same, and in these words. */
static inline void expect_told(const char *check, const char *words, int line)
{
    const char *what = expect_told_at(check, line);
    if (strstr(what, words) == NULL)
        fail_msg("`%s` does not say `%s`", what, words);
}

static inline struct text_value text_at(const char *text, int line)
{
    return (struct text_value){.text = text, .place = {.line = text == NULL ? 0 : line}};
}

#endif
