/* test_promise.c - promises of the program to itself: one that holds does nothing,
 * one that is broken is told with its place and aborts. The latter is looked at in a
 * child process. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include <signal.h>
#include <stdlib.h>

#include "child_case.h"
#include "problem.h"
#include "promise.h"
#include "text.h"

#define START "maydeck: failure: "

static void test_kept(void **state)
{
    (void)state;
    int asked = 0;

    promise(++asked == 1);
    assert_int_equal(asked, 1);
}

/* The sanitizers' report may follow what the program says, but not go before it. */
static void ending_check(void (*fault)(void), const char *said)
{
    struct child_ending ending = child_ending_of(fault);

    assert_true(WIFSIGNALED(ending.status));
    assert_int_equal(WTERMSIG(ending.status), SIGABRT);
    assert_memory_equal(ending.said, said, strlen(said));
}

static void sum_is_broken(void)
{
    promise_broken("a/file.c", 12, "one + one == three");
}

static void test_broken(void **state)
{
    (void)state;
    ending_check(sum_is_broken,
                 START "a/file.c:12: the program broke its own promise: one + one == three\n");
}

static void here_is_broken(void)
{
    size_t three = 3;
    promise(three < 3);
}

static void test_names_file_line_and_condition(void **state)
{
    (void)state;
    struct child_ending ending = child_ending_of(here_is_broken);

    assert_true(WIFSIGNALED(ending.status));
    assert_non_null(strstr(ending.said, "test_promise.c:"));
    assert_non_null(strstr(ending.said, "the program broke its own promise: three < 3\n"));
}

static void way_out_of_switch(void)
{
    promise_unreached();
}

static void test_unreached(void **state)
{
    (void)state;
    struct child_ending ending = child_ending_of(way_out_of_switch);

    assert_int_equal(WTERMSIG(ending.status), SIGABRT);
    assert_non_null(strstr(ending.said, "no way leads here\n"));
}

/* A condition longer than the message may be: cut, the line still ended. */
static void long_is_broken(void)
{
    static char condition[2000];
    memset(condition, 'x', sizeof condition - 1);
    promise_broken("a.c", 1, condition);
}

static void test_long_condition_is_cut(void **state)
{
    (void)state;
    struct child_ending ending = child_ending_of(long_is_broken);
    const char *end = strchr(ending.said, '\n');

    assert_int_equal(WTERMSIG(ending.status), SIGABRT);
    assert_non_null(end);
    assert_int_equal(end - ending.said, 510);
}

/* ---- promises of the rooms below: what a caller must never do ---- */

static struct arena *arena;

static void severity_past_the_last(void)
{
    (void)severity_word(SEVERITY_COUNT);
}

static void text_of_nothing(void)
{
    struct text_builder out = text_builder_in(arena);
    const char *volatile nothing = NULL;
    text_add(&out, nothing);
}

static void more_than_there_is_room_for(void)
{
    size_t room = 2;
    (void)arena_grow(arena, arena_alloc(arena, 2), 3, &room, 1);
}

static void test_callers(void **state)
{
    (void)state;
    static void (*const faults[])(void) = {severity_past_the_last, text_of_nothing,
                                           more_than_there_is_room_for};

    arena = arena_new((size_t)1024 * 1024);
    for (size_t i = 0; i < sizeof faults / sizeof faults[0]; i++)
        ending_check(faults[i], START "src/base/");
    arena_free(arena);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(test_kept),
        cmocka_unit_test(test_broken),
        cmocka_unit_test(test_names_file_line_and_condition),
        cmocka_unit_test(test_unreached),
        cmocka_unit_test(test_long_condition_is_cut),
        cmocka_unit_test(test_callers),
    };

    return cmocka_run_group_tests(tests, NULL, NULL);
}
