/* test_problem.c - collecting, ordering and printing problems. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include <string.h>

#include "problem.h"

static int arena_set_up(void **state)
{
    *state = arena_new((size_t)64 * 1024 * 1024);
    return 0;
}

static int arena_tear_down(void **state)
{
    arena_free(*state);
    return 0;
}

static struct source *source_named(struct arena *arena, const char *name, const char *bytes)
{
    return source_from(arena, name, bytes, strlen(bytes));
}

static struct place place_at(const struct source *source, int line, int column, int span)
{
    return (struct place){.source = source, .line = line, .column = column, .span = span};
}

static void test_counts(void **state)
{
    struct problems *problems = problems_new(*state);
    struct place nowhere = {0};

    assert_false(problems_reach(problems, SEVERITY_NOTE));
    problem_add(problems, SEVERITY_NOTE, nowhere, NULL, "a");
    assert_true(problems_reach(problems, SEVERITY_NOTE));
    assert_false(problems_reach(problems, SEVERITY_DEFICIENCY));
    problem_add(problems, SEVERITY_ERROR, nowhere, NULL, "b %d", 1);
    problem_add(problems, SEVERITY_ERROR, nowhere, NULL, "b %d", 2);
    assert_true(problems_reach(problems, SEVERITY_ERROR));
    assert_true(problems_reach(problems, SEVERITY_HELD));
    assert_false(problems_reach(problems, SEVERITY_USE));
    assert_int_equal(problems_count(problems, SEVERITY_ERROR), 2);
    assert_int_equal(problems_count(problems, SEVERITY_NOTE), 1);
    assert_int_equal(problems_count(problems, SEVERITY_FAILURE), 0);
}

static void test_words(void **state)
{
    (void)state;
    static const char *const words[SEVERITY_COUNT] = {
        [SEVERITY_SILENCED] = "silenced",
        [SEVERITY_NOTE] = "note", [SEVERITY_DEFICIENCY] = "deficiency",
        [SEVERITY_HELD] = "held", [SEVERITY_ERROR] = "error",
        [SEVERITY_USE] = "error", [SEVERITY_FAILURE] = "failure",
    };

    for (int i = 0; i < SEVERITY_COUNT; i++)
        assert_string_equal(severity_word((enum severity)i), words[i]);
}

static void test_order(void **state)
{
    struct problems *problems = problems_new(*state);
    struct source *a = source_named(*state, "a.yaml", "x\ny\n");
    struct source *b = source_named(*state, "b.yaml", "x\ny\n");
    static const char *const expected[] = {"6", "4", "5", "8", "7", "9", "3", "2", "1"};
    size_t count;

    problem_add(problems, SEVERITY_FAILURE, (struct place){0}, NULL, "1");
    problem_add(problems, SEVERITY_ERROR, place_at(b, 1, 1, 0), NULL, "2");
    problem_add(problems, SEVERITY_NOTE, source_whole(b), NULL, "3");
    problem_add(problems, SEVERITY_NOTE, place_at(a, 1, 2, 0), NULL, "4");
    problem_add(problems, SEVERITY_NOTE, place_at(a, 1, 10, 0), NULL, "5");
    problem_add(problems, SEVERITY_ERROR, place_at(a, 1, 1, 0), NULL, "6");
    problem_add(problems, SEVERITY_NOTE, place_at(a, 2, 1, 0), NULL, "7");
    problem_add(problems, SEVERITY_HELD, place_at(a, 2, 1, 0), NULL, "8");
    problem_add(problems, SEVERITY_NOTE, place_at(a, 2, 1, 0), NULL, "9");
    const struct problem *sorted = problems_sorted(problems, &count);
    assert_int_equal(count, 9);
    for (size_t i = 0; i < count; i++)
        assert_string_equal(sorted[i].what, expected[i]);
}

static void test_same_is_kept_once(void **state)
{
    struct problems *problems = problems_new(*state);
    struct source *a = source_named(*state, "a.yaml", "x\n");
    struct source *again = source_named(*state, "a.yaml", "x\n");
    size_t count;

    problem_add(problems, SEVERITY_ERROR, place_at(a, 1, 1, 1), "r", "same");
    problem_add(problems, SEVERITY_ERROR, place_at(a, 1, 1, 1), NULL, "other");
    problem_add(problems, SEVERITY_ERROR, place_at(again, 1, 1, 1), "r", "same");
    assert_int_equal(problems_count(problems, SEVERITY_ERROR), 2);
    problem_add(problems, SEVERITY_NOTE, place_at(a, 1, 1, 1), "r", "same");
    problem_add(problems, SEVERITY_ERROR, place_at(a, 1, 1, 2), "r", "same");
    problem_add(problems, SEVERITY_ERROR, place_at(a, 1, 1, 1), "s", "same");
    problem_add(problems, SEVERITY_ERROR, (struct place){0}, "r", "same");
    (void)problems_sorted(problems, &count);
    assert_int_equal(count, 6);
}

/* More than any table starts with, each twice, in an order that must turn. */
static void test_many(void **state)
{
    struct problems *problems = problems_new(*state);
    struct source *source = source_named(*state, "a.yaml", "x\n");
    size_t count;

    for (int round = 0; round < 2; round++)
        for (int line = 5000; line > 0; line--)
            problem_add(problems, SEVERITY_ERROR, place_at(source, line, 1, 0), NULL, "same");
    const struct problem *sorted = problems_sorted(problems, &count);
    assert_int_equal(count, 5000);
    for (size_t i = 0; i < count; i++)
        assert_int_equal(sorted[i].place.line, (int)i + 1);
}

static const char *printed(struct arena *arena, struct place place, const char *what,
                           const char *remedy)
{
    struct text_builder out = text_builder_in(arena);
    struct problem problem = {
        .severity = SEVERITY_ERROR, .place = place, .what = what, .remedy = remedy};

    problem_print(&problem, &out);
    return out.at;
}

static void test_print(void **state)
{
    struct source *source = source_named(*state, "boats/x.yaml", "boat:\n  loa: 12.6\n");

    assert_string_equal(printed(*state, place_at(source, 2, 3, 3), "no such key",
                                "did you mean \"loa_m\"?"),
                        "boats/x.yaml:2:3: error: no such key\n"
                        "      loa: 12.6\n"
                        "      ^~~\n"
                        "  remedy: did you mean \"loa_m\"?\n");
    assert_string_equal(printed(*state, place_at(source, 2, 8, 0), "w", NULL),
                        "boats/x.yaml:2:8: error: w\n"
                        "      loa: 12.6\n"
                        "           ^\n");
    assert_string_equal(printed(*state, source_whole(source), "w", "one\ntwo\nthree\n"),
                        "boats/x.yaml: error: w\n"
                        "  remedy: one\n"
                        "    two\n"
                        "    three\n");
    assert_string_equal(printed(*state, (struct place){0}, "w", ""), "maydeck: error: w\n");
    assert_string_equal(printed(*state, place_at(source, 2, 0, 0), "w", NULL),
                        "boats/x.yaml:2: error: w\n      loa: 12.6\n");
}

static void test_print_edges(void **state)
{
    struct source *source = source_named(*state, "f", "ab\n\nc");

    assert_string_equal(printed(*state, place_at(source, 1, 3, 1), "w", NULL),
                        "f:1:3: error: w\n    ab\n      ^\n");
    assert_string_equal(printed(*state, place_at(source, 1, 2, 99), "w", NULL),
                        "f:1:2: error: w\n    ab\n     ^\n");
    assert_string_equal(printed(*state, place_at(source, 1, 50, 1), "w", NULL),
                        "f:1:50: error: w\n    ab\n      ^\n");
    assert_string_equal(printed(*state, place_at(source, 2, 1, 0), "w", NULL),
                        "f:2:1: error: w\n");
    assert_string_equal(printed(*state, place_at(source, 9, 1, 0), "w", NULL),
                        "f:9:1: error: w\n");
}

static void test_print_odd_characters(void **state)
{
    struct source *tab = source_named(*state, "f", "\ta\tbc");
    struct source *control = source_named(*state, "f", "a\x1B[2Jz\xFF!");
    struct source *wide = source_named(*state, "f", "s\xCC\x8C\xE6\xBC\xA2x");
    struct source *hidden = source_named(*state, "f", "a\xE2\x80\xAE" "b\xC2\x85");

    assert_string_equal(printed(*state, place_at(tab, 1, 4, 2), "w", NULL),
                        "f:1:4: error: w\n    \ta\tbc\n    \t \t^~\n");
    assert_string_equal(printed(*state, place_at(tab, 1, 1, 2), "w", NULL),
                        "f:1:1: error: w\n    \ta\tbc\n    ^~\n");
    assert_string_equal(printed(*state, place_at(control, 1, 7, 1), "w", NULL),
                        "f:1:7: error: w\n    a\\x1B[2Jz\\xFF!\n             ^~~~\n");
    assert_string_equal(printed(*state, place_at(wide, 1, 4, 1), "w", NULL),
                        "f:1:4: error: w\n    s\xCC\x8C\xE6\xBC\xA2x\n       ^\n");
    assert_string_equal(printed(*state, place_at(hidden, 1, 3, 1), "w", NULL),
                        "f:1:3: error: w\n    a<U+202E>b\\x85\n             ^\n");
    assert_string_equal(printed(*state, source_whole(source_named(*state, "\x1B[1m", "")),
                                "a\x07", "b\x07"),
                        "\\x1B[1m: error: a\\x07\n  remedy: b\\x07\n");
}

static void test_print_long_line(void **state)
{
    char line[1001];
    struct text_builder expected = text_builder_in(*state);

    for (size_t i = 0; i < 1000; i++)
        line[i] = (char)('a' + (int)(i % 26));
    line[1000] = '\0';
    struct source *source = source_named(*state, "f", line);
    text_add_format(&expected, "f:1:500: error: w\n    ...%.*s...\n    %*s^~~\n", 160,
                    line + 400, 3 + 99, "");
    assert_string_equal(printed(*state, place_at(source, 1, 500, 3), "w", NULL), expected.at);
    expected = text_builder_in(*state);
    text_add_format(&expected, "f:1:2: error: w\n    %.*s...\n     ^\n", 160, line);
    assert_string_equal(printed(*state, place_at(source, 1, 2, 1), "w", NULL), expected.at);
    expected = text_builder_in(*state);
    text_add_format(&expected, "f:1:1000: error: w\n    ...%s\n    %*s^\n", line + 840,
                    3 + 159, "");
    assert_string_equal(printed(*state, place_at(source, 1, 1000, 9), "w", NULL), expected.at);
    expected = text_builder_in(*state);
    text_add_format(&expected, "f:1:1001: error: w\n    ...%s\n    %*s^\n", line + 840,
                    3 + 160, "");
    assert_string_equal(printed(*state, place_at(source, 1, 1001, 0), "w", NULL), expected.at);
}

/* Of this boat, at this place, and an error: each of them counts. */
static void test_error_at(void **state)
{
    struct problems *problems = problems_new(*state);
    const struct source *source = source_named(*state, "f", "a: 1\nb: 2\n");
    struct place value = place_at(source, 2, 4, 1);

    problems_about(problems, "alder", "record");
    problem_add(problems, SEVERITY_DEFICIENCY, value, NULL, "lesser");
    assert_false(problems_error_at(problems, value, NULL));
    problem_add(problems, SEVERITY_ERROR, value, NULL, "wrong");
    problem_add(problems, SEVERITY_ERROR, place_at(source, 1, 4, 1), NULL, "wrong too");
    assert_true(problems_error_at(problems, value, NULL));
    assert_true(problems_error_at(problems, value, "record"));
    assert_false(problems_error_at(problems, value, "page"));
    assert_false(problems_error_at(problems, place_at(source, 2, 1, 1), NULL));
    assert_false(problems_error_at(problems, place_at(source, 3, 4, 1), NULL));
    assert_false(problems_error_at(problems, place_at(NULL, 2, 4, 1), NULL));
    problems_about(problems, "birch", "record");
    assert_false(problems_error_at(problems, value, NULL));
}

/* What the part has to say stays of its boat and check, and is copied. */
static void test_join(void **state)
{
    struct arena *own = arena_new((size_t)1024 * 1024);
    struct problems *whole = problems_new(*state), *part = problems_new(own);
    size_t count;

    problems_about(part, "alder", "record");
    problem_add(part, SEVERITY_ERROR, (struct place){0}, "mend", "wrong");
    problem_add(part, SEVERITY_NOTE, (struct place){0}, NULL, "odd");
    problem_add(whole, SEVERITY_NOTE, (struct place){0}, NULL, "odd");
    problems_join(whole, part);
    arena_free(own);
    const struct problem *all = problems_sorted(whole, &count);
    assert_int_equal(count, 2);
    assert_string_equal(all[0].what, "wrong");
    assert_string_equal(all[0].remedy, "mend");
    assert_string_equal(all[0].boat, "alder");
    assert_string_equal(all[0].check, "record");
    assert_null(all[1].boat);
    assert_int_equal(problems_count(whole, SEVERITY_NOTE), 1);
}

/* A part is unsound by what is found in it, also where the same was told before. */
static void test_settle(void **state)
{
    struct problems *whole = problems_new(*state);
    size_t count;

    problems_about(whole, "alder", "record");
    problem_add(whole, SEVERITY_ERROR, (struct place){0}, NULL, "wrong");
    struct problems *part = problems_part(whole);
    problem_add(part, SEVERITY_HELD, (struct place){0}, NULL, "held");
    assert_true(problems_settle(whole, part));
    part = problems_part(whole);
    problem_add(part, SEVERITY_ERROR, (struct place){0}, NULL, "wrong");
    assert_false(problems_settle(whole, part));
    const struct problem *all = problems_sorted(whole, &count);
    assert_int_equal(count, 2);
    assert_string_equal(all[1].boat, "alder");
    assert_string_equal(all[1].check, "record");
}

static void test_from(void **state)
{
    size_t count;
    struct arena *arena = *state;
    struct problems *whole = problems_new(arena);
    problem_add(whole, SEVERITY_NOTE, (struct place){0}, NULL, "told elsewhere");
    problem_add(whole, SEVERITY_FAILURE, (struct place){0}, "make room", "no room");
    problem_add(whole, SEVERITY_USE, (struct place){0}, NULL, "no such card");
    const struct problem *kept =
        problems_sorted(problems_from(whole, SEVERITY_USE, arena), &count);
    assert_int_equal(count, 2);
    for (size_t i = 0; i < count; i++)
        assert_true(kept[i].severity >= SEVERITY_USE);
    assert_int_equal(problems_count(whole, SEVERITY_NOTE), 1);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(test_counts),
        cmocka_unit_test(test_words),
        cmocka_unit_test(test_order),
        cmocka_unit_test(test_same_is_kept_once),
        cmocka_unit_test(test_many),
        cmocka_unit_test(test_print),
        cmocka_unit_test(test_print_edges),
        cmocka_unit_test(test_print_odd_characters),
        cmocka_unit_test(test_print_long_line),
        cmocka_unit_test(test_error_at),
        cmocka_unit_test(test_join),
        cmocka_unit_test(test_settle),
        cmocka_unit_test(test_from),
    };

    return cmocka_run_group_tests_name("problem", tests, arena_set_up, arena_tear_down) != 0;
}
