/* test_yaml_tree.c - the tree reader: what it gives, and what it has to say of
 * wrong files, word for word; and that no damaged file gets past it. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include <string.h>

#include "text.h"
#include "utf8.h"
#include "yaml_character_cases.h"
#include "yaml_damage.h"
#include "yaml_event_cases.h"
#include "yaml_slip_cases.h"
#include "yaml_syntax_cases.h"
#include "yaml_tree.h"

struct bench {
    struct arena *arena;
    struct problems *problems;
};

static struct bench bench_new(void)
{
    struct arena *arena = arena_new((size_t)256 * 1024 * 1024);

    return (struct bench){.arena = arena, .problems = problems_new(arena)};
}

static const struct yaml_node *bench_read(struct bench *bench, const char *bytes,
                                          size_t length)
{
    struct source *source = source_from(bench->arena, "t.yaml", bytes, length);

    return yaml_tree_read(source, bench->arena, bench->problems);
}

static const struct yaml_node *string_read(struct bench *bench, const char *string)
{
    return bench_read(bench, string, strlen(string));
}

static const char *told(struct bench *bench)
{
    struct text_builder out = text_builder_in(bench->arena);
    size_t count;
    const struct problem *problems = problems_sorted(bench->problems, &count);

    for (size_t i = 0; i < count; i++)
        text_add_format(&out, "%d:%d+%d %s: %s\n", problems[i].place.line,
                        problems[i].place.column, problems[i].place.span,
                        severity_word(problems[i].severity), problems[i].what);
    return out.at;
}

/* ---- wrong files ---- */

static void case_check(const struct reading_case *row)
{
    struct bench bench = bench_new();
    const struct yaml_node *tree = bench_read(&bench, row->input, row->length);
    size_t count;

    if (!text_equal(told(&bench), row->told))
        print_error("in the case \"%s\":\n", row->name);
    assert_string_equal(told(&bench), row->told);
    assert_int_equal(tree != NULL, row->tree);
    const struct problem *problems = problems_sorted(bench.problems, &count);
    for (size_t i = 0; i < count; i++)
        assert_string_equal(problems[i].place.source->name, "t.yaml");
    if (row->remedy != NULL)
        assert_string_equal(problems[0].remedy, row->remedy);
    else
        assert_int_equal(count, 0);
    arena_free(bench.arena);
}

static void test_characters(void **state)
{
    (void)state;
    for (size_t i = 0; i < sizeof character_cases / sizeof character_cases[0]; i++)
        case_check(&character_cases[i]);
}

static void test_events(void **state)
{
    (void)state;
    for (size_t i = 0; i < sizeof event_cases / sizeof event_cases[0]; i++)
        case_check(&event_cases[i]);
}

static void test_slips(void **state)
{
    (void)state;
    for (size_t i = 0; i < sizeof slip_cases / sizeof slip_cases[0]; i++)
        case_check(&slip_cases[i]);
}

static void test_syntax(void **state)
{
    (void)state;
    for (size_t i = 0; i < sizeof syntax_cases / sizeof syntax_cases[0]; i++)
        case_check(&syntax_cases[i]);
}

/* ---- limits ---- */

static const char *repeated(struct arena *arena, const char *part, size_t count)
{
    struct text_builder out = text_builder_in(arena);

    for (size_t i = 0; i < count; i++)
        text_add(&out, part);
    return out.at;
}

static void test_size_limit(void **state)
{
    (void)state;
    struct bench bench = bench_new();
    struct text_builder text = text_builder_in(bench.arena);

    text_add(&text, "a: 1\n#");
    text_add(&text, repeated(bench.arena, "x", YAML_FILE_LIMIT - text.length));
    assert_non_null(string_read(&bench, text.at));
    text_add(&text, "x");
    assert_null(string_read(&bench, text.at));
    assert_string_equal(told(&bench),
                        "0:0+0 error: the file has 262145 bytes; at most 262144 are read\n");
    arena_free(bench.arena);
}

/* A list of n entries has n + 5 events: stream and document, list, entries. */
static void test_event_limit(void **state)
{
    (void)state;
    struct bench bench = bench_new();

    const struct yaml_node *tree = string_read(&bench, repeated(bench.arena, "- x\n", 9995));
    assert_non_null(tree);
    assert_int_equal(tree->count, 9995);
    assert_null(string_read(&bench, repeated(bench.arena, "- x\n", 10000)));
    assert_string_equal(told(&bench), "9999:3+1 error: the file has more than 10000 entries\n");
    arena_free(bench.arena);
}

static void test_depth_limit(void **state)
{
    (void)state;
    struct bench bench = bench_new();

    assert_non_null(string_read(&bench, "[[[[[[[[[[[[[[[[x]]]]]]]]]]]]]]]]"));
    assert_null(string_read(&bench, repeated(bench.arena, "[", YAML_FILE_LIMIT)));
    assert_string_equal(
        told(&bench),
        "1:17+1 error: lists and mappings stand more than 16 deep in each other\n");
    arena_free(bench.arena);
}

static size_t told_count(struct bench *bench)
{
    return problems_count(bench->problems, SEVERITY_ERROR);
}

static void test_character_tally(void **state)
{
    (void)state;
    struct bench bench = bench_new();

    assert_null(string_read(&bench, repeated(bench.arena, "- \x01\n", 25)));
    assert_int_equal(told_count(&bench), 21);
    assert_non_null(strstr(told(&bench), "0:0+0 error: 5 more characters are not allowed\n"));
    assert_non_null(problems_sorted(bench.problems, &(size_t){0})[0].remedy);
    bench.problems = problems_new(bench.arena);
    assert_null(string_read(&bench, repeated(bench.arena, "- \xFF\n", 21)));
    assert_non_null(strstr(told(&bench), "0:0+0 error: 1 more bytes are not valid UTF-8\n"));
    bench.problems = problems_new(bench.arena);
    assert_null(string_read(&bench, repeated(bench.arena, "\t- x\n", 30)));
    assert_non_null(strstr(told(&bench), ": 10 more lines are indented with a tab\n"));
    bench.problems = problems_new(bench.arena);
    assert_null(string_read(&bench, repeated(bench.arena, "%\n", 30)));
    assert_non_null(strstr(told(&bench), ": 10 more lines begin with \"%\"\n"));
    bench.problems = problems_new(bench.arena);
    assert_null(string_read(&bench, repeated(bench.arena, "\xC2\xA0# x\n", 22)));
    assert_non_null(strstr(told(&bench), ": 2 more lines are indented with what is no space\n"));
    arena_free(bench.arena);
}

static void test_error_tally(void **state)
{
    (void)state;
    struct bench bench = bench_new();

    assert_null(string_read(&bench, repeated(bench.arena, "- *x\n", 100)));
    assert_int_equal(told_count(&bench), 100);
    bench.problems = problems_new(bench.arena);
    assert_null(string_read(&bench, repeated(bench.arena, "- *x\n", 101)));
    assert_int_equal(told_count(&bench), 101);
    assert_non_null(
        strstr(told(&bench), "0:0+0 error: the file has more than 100 errors; the others"));
    arena_free(bench.arena);
}

/* ---- right files ---- */

static void tree_is(const char *input, const char *expected)
{
    struct bench bench = bench_new();
    struct text_builder out = text_builder_in(bench.arena);
    const struct yaml_node *tree = string_read(&bench, input);

    assert_string_equal(told(&bench), "");
    assert_non_null(tree);
    yaml_dump(tree, &out);
    assert_string_equal(out.at, expected);
    arena_free(bench.arena);
}

static void test_block_tree(void **state)
{
    (void)state;
    tree_is("# a boat\n"
            "boat:\n"
            "  name: Tamarisk   # as painted\n"
            "  loa_m: 12.6\n"
            "gear:\n"
            "  - {item: seacock, how: \"across = shut\"}\n"
            "  - 'x'\n"
            "spot:\n",
            "mapping @2:1+1\n"
            "  \"boat\" @2:1+4: mapping @3:3+1\n"
            "    \"name\" @3:3+4: plain \"Tamarisk\" @3:9+8\n"
            "    \"loa_m\" @4:3+5: plain \"12.6\" @4:10+4\n"
            "  \"gear\" @5:1+4: list @6:3+1\n"
            "    - mapping @6:5+37\n"
            "      \"item\" @6:6+4: plain \"seacock\" @6:12+7\n"
            "      \"how\" @6:21+3: quoted \"across = shut\" @6:26+15\n"
            "    - quoted \"x\" @7:5+3\n"
            "  \"spot\" @8:1+4: plain \"\" @8:6+0\n");
}

static void test_scalars_stay(void **state)
{
    (void)state;
    tree_is("[NO, 012, 5E12, 1:30, 0x1F, ~, 2026-01-02, \" x \", '']",
            "list @1:1+53\n"
            "  - plain \"NO\" @1:2+2\n"
            "  - plain \"012\" @1:6+3\n"
            "  - plain \"5E12\" @1:11+4\n"
            "  - plain \"1:30\" @1:17+4\n"
            "  - plain \"0x1F\" @1:23+4\n"
            "  - plain \"~\" @1:29+1\n"
            "  - plain \"2026-01-02\" @1:32+10\n"
            "  - quoted \" x \" @1:44+5\n"
            "  - quoted \"\" @1:51+2\n");
}

static void test_block_scalars(void **state)
{
    (void)state;
    tree_is("a: |\n  one\n  two\n\nb: >\n  one\n  two\nc: \"x\n  y\"\n",
            "mapping @1:1+1\n"
            "  \"a\" @1:1+1: quoted \"one\\ntwo\" @1:4+1\n"
            "  \"b\" @5:1+1: quoted \"one two\" @5:4+1\n"
            "  \"c\" @8:1+1: quoted \"x y\" @8:4+2\n");
}

/* Columns count characters; s and caron become one. */
static void test_characters_and_nfc(void **state)
{
    (void)state;
    tree_is("\xEF\xBB\xBF" "{s\xCC\x8C: \xC5\xBE\xC5\xBE, b: \"\xC2\xA0\"}\r\n",
            "mapping @1:1+16\n"
            "  \"\xC5\xA1\" @1:2+2: plain \"\xC5\xBE\xC5\xBE\" @1:6+2\n"
            "  \"b\" @1:10+1: quoted \"\xC2\xA0\" @1:13+3\n");
}

static void test_line_ends(void **state)
{
    (void)state;
    tree_is("a: 1\r\n\r\nb:\r\n  - c\r\n",
            "mapping @1:1+1\n"
            "  \"a\" @1:1+1: plain \"1\" @1:4+1\n"
            "  \"b\" @3:1+1: list @4:3+1\n"
            "    - plain \"c\" @4:5+1\n");
    tree_is("a: 1\rb: 2\r",
            "mapping @1:1+1\n"
            "  \"a\" @1:1+1: plain \"1\" @1:4+1\n"
            "  \"b\" @2:1+1: plain \"2\" @2:4+1\n");
}

static void test_harmless_tabs(void **state)
{
    (void)state;
    tree_is("a:\t1\t# note\n \t \nb: 2\t\n",
            "mapping @1:1+1\n"
            "  \"a\" @1:1+1: plain \"1\" @1:4+1\n"
            "  \"b\" @3:1+1: plain \"2\" @3:4+1\n");
}

static void test_document_marks(void **state)
{
    (void)state;
    tree_is("---\na: 1\n...\n",
            "mapping @2:1+1\n"
            "  \"a\" @2:1+1: plain \"1\" @2:4+1\n");
    tree_is("\"only a text\"", "quoted \"only a text\" @1:1+13\n");
}

static void test_get_and_kinds(void **state)
{
    (void)state;
    struct bench bench = bench_new();
    const struct yaml_node *tree = string_read(&bench, "a: [1]\nb: {c: d}\n");

    assert_string_equal(yaml_get(yaml_get(tree, "b"), "c")->text, "d");
    assert_null(yaml_get(tree, "c"));
    assert_null(yaml_get(yaml_get(tree, "a"), "1"));
    assert_null(yaml_get(NULL, "a"));
    assert_string_equal(yaml_kind_word(tree), "a mapping");
    assert_string_equal(yaml_kind_word(yaml_get(tree, "a")), "a list");
    assert_string_equal(yaml_kind_word(yaml_get(yaml_get(tree, "b"), "c")), "a text");
    arena_free(bench.arena);
}

/* ---- damaged files ---- */

static void damaged_check(const char *bytes, size_t length)
{
    struct bench bench = bench_new();
    struct text_builder out = text_builder_in(bench.arena);
    const struct yaml_node *tree = bench_read(&bench, bytes, length);
    size_t count;

    assert_int_equal(tree == NULL, told_count(&bench) > 0);
    if (tree != NULL)
        yaml_dump(tree, &out);
    const struct problem *problems = problems_sorted(bench.problems, &count);
    for (size_t i = 0; i < count; i++) {
        int line = problems[i].place.line;
        assert_in_range(line, 0, problems[i].place.source->line_count);
        assert_true((line == 0) == (problems[i].place.column == 0));
        assert_true(problems[i].place.span >= 0);
        problem_print(&problems[i], &out);
    }
    assert_int_equal(utf8_first_invalid(out.at, out.length), out.length);
    arena_free(bench.arena);
}

static void test_damaged(void **state)
{
    (void)state;
    uint32_t seed = 1;

    for (int round = 0; round < 6000; round++) {
        char bytes[512];
        size_t length = strlen(sound[round % 3]);
        memcpy(bytes, sound[round % 3], length);
        for (uint32_t times = 1 + number_next(&seed) % 4; times > 0 && length > 0; times--)
            bytes_damage(bytes, &length, &seed);
        damaged_check(bytes, length);
    }
}

static void test_cut_short(void **state)
{
    (void)state;
    for (size_t i = 0; i < 3; i++)
        for (size_t length = 0; length <= strlen(sound[i]); length++)
            damaged_check(sound[i], length);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(test_characters),
        cmocka_unit_test(test_events),
        cmocka_unit_test(test_syntax),
        cmocka_unit_test(test_slips),
        cmocka_unit_test(test_size_limit),
        cmocka_unit_test(test_event_limit),
        cmocka_unit_test(test_depth_limit),
        cmocka_unit_test(test_character_tally),
        cmocka_unit_test(test_error_tally),
        cmocka_unit_test(test_block_tree),
        cmocka_unit_test(test_scalars_stay),
        cmocka_unit_test(test_block_scalars),
        cmocka_unit_test(test_characters_and_nfc),
        cmocka_unit_test(test_line_ends),
        cmocka_unit_test(test_harmless_tabs),
        cmocka_unit_test(test_document_marks),
        cmocka_unit_test(test_get_and_kinds),
        cmocka_unit_test(test_damaged),
        cmocka_unit_test(test_cut_short),
    };

    return cmocka_run_group_tests_name("yaml_tree", tests, NULL, NULL) != 0;
}
