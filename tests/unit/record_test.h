/* record_test.h - what the tests of the record room share: an arena and problems
 * a test, texts as files, and looking for a message. */
#ifndef MAYDECK_RECORD_TEST_H
#define MAYDECK_RECORD_TEST_H

#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include <stdio.h>
#include <string.h>

#include "arena.h"
#include "problem.h"
#include "source.h"
#include "text.h"

struct record_test {
    struct arena *arena;
    struct problems *problems;
};

static struct record_test test;

static int test_begin(void **state)
{
    (void)state;
    test.arena = arena_new((size_t)64 * 1024 * 1024);
    test.problems = problems_new(test.arena);
    return 0;
}

static int test_end(void **state)
{
    (void)state;
    arena_free(test.arena);
    return 0;
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, test_begin, test_end)

static inline const struct source *file_of(const char *name, const char *text)
{
    return source_from(test.arena, name, text, strlen(text));
}

static inline void problems_show(void)
{
    size_t count = 0;
    const struct problem *all = problems_sorted(test.problems, &count);
    for (size_t i = 0; i < count; i++)
        print_message("    %d:%d: %s: %s | %s\n", all[i].place.line, all[i].place.column,
                      severity_word(all[i].severity), all[i].what,
                      all[i].remedy == NULL ? "" : all[i].remedy);
}

static inline const struct problem *problem_saying(const char *what)
{
    size_t count = 0;
    const struct problem *all = problems_sorted(test.problems, &count);
    for (size_t i = 0; i < count; i++)
        if (strcmp(all[i].what, what) == 0)
            return &all[i];
    return NULL;
}

/* Exactly one message says this, in this line, and offers this remedy; remedy
 * NULL: any, but there must be one. Every error has a remedy. */
static inline void expect_error(int line, const char *what, const char *remedy)
{
    const struct problem *problem = problem_saying(what);
    if (problem == NULL) {
        problems_show();
        fail_msg("nothing says \"%s\"", what);
        return;
    }
    assert_int_equal(problem->severity, SEVERITY_ERROR);
    assert_int_equal(problem->place.line, line);
    assert_non_null(problem->remedy);
    if (remedy != NULL)
        assert_string_equal(problem->remedy, remedy);
}

/* Some error in this line has both pieces in its message or remedy. */
static inline void expect_error_with(int line, const char *piece, const char *other)
{
    size_t count = 0;
    const struct problem *all = problems_sorted(test.problems, &count);
    for (size_t i = 0; i < count; i++) {
        const char *whole = text_format(test.arena, "%s | %s", all[i].what,
                                        all[i].remedy == NULL ? "" : all[i].remedy);
        if (all[i].place.line == line && all[i].severity == SEVERITY_ERROR &&
            strstr(whole, piece) != NULL && strstr(whole, other) != NULL)
            return;
    }
    problems_show();
    fail_msg("no error in line %d speaks of \"%s\" and \"%s\"", line, piece, other);
}

static inline void expect_errors(size_t wanted)
{
    size_t count = 0;
    (void)problems_sorted(test.problems, &count);
    if (count != wanted)
        problems_show();
    assert_int_equal(count, wanted);
    assert_int_equal(problems_count(test.problems, SEVERITY_ERROR), wanted);
}

#endif
