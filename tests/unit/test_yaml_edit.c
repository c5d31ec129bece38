/* test_yaml_edit.c - the writer: the exact bytes that an edit of each kind leaves, in files
 * of many forms, and what it refuses. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include <string.h>

#include "text.h"
#include "yaml_edit_case.h"

/* ---- setting ---- */

static void test_set(void **state)
{
    (void)state;
    edit_is("a: old\n", SET_TEXT("a", "new"), "a: new\n");
    edit_is("# b\na:   old   # why\n\nb: 1\n", SET_TEXT("a", "new"),
            "# b\na:   new   # why\n\nb: 1\n");
    edit_is("a: \"old\"  # why\n", SET_TEXT("a", "new"), "a: \"new\"  # why\n");
    edit_is("a: 'old'\n", SET_TEXT("a", "it's"), "a: 'it''s'\n");
    edit_is("a: \"old\"\n", SET_TEXT("a", "5\" pipe"), "a: '5\" pipe'\n");
    edit_is("{a: {b: old, c: 2}}\n", SET_TEXT("a/b", "new"), "{a: {b: new, c: 2}}\n");
    edit_is("- a\n- b\n", SET_TEXT("1", "c"), "- a\n- c\n");
    edit_is("x: [a, b]\n", SET_TEXT("x/0", "c"), "x: [c, b]\n");
    edit_is("a:\n  old\nb: 1\n", SET_TEXT("a", "new"), "a:\n  new\nb: 1\n");
    edit_is("\"a\" : old\n", SET_TEXT("a", "new"), "\"a\" : new\n");
}

static void test_set_line_ends(void **state)
{
    (void)state;
    edit_is("a: 1\r\nb: 2\r\n", SET_TEXT("a", "3"), "a: 3\r\nb: 2\r\n");
    edit_is("a: 1\rb: 2", SET_TEXT("b", "3"), "a: 1\rb: 3");
    edit_is("\xEF\xBB\xBF" "a: 1", SET_TEXT("a", "2"), "\xEF\xBB\xBF" "a: 2");
    edit_is("---\na: 1 \t \n...\n", SET_TEXT("a", "2"), "---\na: 2 \t \n...\n");
}

/* Quotes where the plain text would be another one, or a part of it a comment. */
static void test_set_quotes(void **state)
{
    (void)state;
    edit_is("a: x\n", SET_TEXT("a", "b: c"), "a: \"b: c\"\n");
    edit_is("a: x\n", SET_TEXT("a", "b:"), "a: \"b:\"\n");
    edit_is("a: x\n", SET_TEXT("a", "locker #2"), "a: \"locker #2\"\n");
    edit_is("a: x\n", SET_TEXT("a", "#2"), "a: \"#2\"\n");
    edit_is("a: x\n", SET_TEXT("a", "no#2"), "a: no#2\n");
    edit_is("a: x\n", SET_TEXT("a", "port, below"), "a: port, below\n");
    edit_is("{a: x}\n", SET_TEXT("a", "port, below"), "{a: \"port, below\"}\n");
    edit_is("{a: x}\n", SET_TEXT("a", "b [c]"), "{a: \"b [c]\"}\n");
    edit_is("a: x\n", SET_TEXT("a", "[c]"), "a: \"[c]\"\n");
    edit_is("a: x\n", SET_TEXT("a", "- c"), "a: \"- c\"\n");
    edit_is("a: x\n", SET_TEXT("a", "-1.2"), "a: -1.2\n");
    edit_is("a: x\n", SET_TEXT("a", "? c"), "a: \"? c\"\n");
    edit_is("a: x\n", SET_TEXT("a", "*c"), "a: \"*c\"\n");
    edit_is("a: x\n", SET_TEXT("a", "&c"), "a: \"&c\"\n");
    edit_is("a: x\n", SET_TEXT("a", "!c"), "a: \"!c\"\n");
    edit_is("a: x\n", SET_TEXT("a", "%c"), "a: \"%c\"\n");
    edit_is("a: x\n", SET_TEXT("a", "@c"), "a: \"@c\"\n");
    edit_is("a: x\n", SET_TEXT("a", "`c"), "a: \"`c\"\n");
    edit_is("a: x\n", SET_TEXT("a", "|"), "a: \"|\"\n");
    edit_is("a: x\n", SET_TEXT("a", ">"), "a: \">\"\n");
    edit_is("a: x\n", SET_TEXT("a", "\"c\""), "a: '\"c\"'\n");
    edit_is("a: x\n", SET_TEXT("a", "'c'"), "a: \"'c'\"\n");
    edit_is("a: x\n", SET_TEXT("a", "C:\\d"), "a: C:\\d\n");
    edit_is("a: \"x\"\n", SET_TEXT("a", "C:\\d"), "a: 'C:\\d'\n");
    edit_is("a: x\n", SET_TEXT("a", " c "), "a: \" c \"\n");
    edit_is("a: x\n", SET_TEXT("a", "~"), "a: \"~\"\n");
    edit_is("a: x\n", SET_TEXT("a", "null"), "a: \"null\"\n");
    edit_is("a: x\n", SET_TEXT("a", "yes"), "a: yes\n");
    edit_is("a: x\n", SET_TEXT("a", "012"), "a: 012\n");
    edit_is("a: x\n", SET_TEXT("a", "\u201Cc\u201D"), "a: \"\u201Cc\u201D\"\n");
    edit_is("a: x\n", SET_YAML("a", "\"200014980\""), "a: \"200014980\"\n");
    edit_is("a: x\n", SET_TEXT("a", "s\u030C"), "a: \u0161\n");
    edit_is("- x\n", SET_TEXT("0", "b: c"), "- \"b: c\"\n");
}

static void test_set_empty(void **state)
{
    (void)state;
    edit_is("a:\nb: 1\n", SET_TEXT("a", "new"), "a: new\nb: 1\n");
    edit_is("a:   # why\nb: 1\n", SET_TEXT("a", "new"), "a: new   # why\nb: 1\n");
    edit_is("a:", SET_TEXT("a", "new"), "a: new");
    edit_is("{a: , b: }\n", SET_TEXT("a", "new"), "{a: new, b: }\n");
    edit_is("{a: , b: }\n", SET_TEXT("b", "new"), "{a: , b: new}\n");
    edit_is("{\"a\":}\n", SET_TEXT("a", "new"), "{\"a\": new}\n");
    edit_is("-\n- b\n", SET_TEXT("0", "a"), "- a\n- b\n");
    edit_is("a: old  # why\n", SET_TEXT("a", ""), "a:  # why\n");
    edit_is("a: old\n", SET_YAML("a", "\"\""), "a: \"\"\n");
    edit_is("{a: old, b: 1}\n", SET_TEXT("a", ""), "{a: , b: 1}\n");
    edit_is("a: \"\"\n", SET_TEXT("a", "x"), "a: \"x\"\n");
}

static void test_set_lists(void **state)
{
    (void)state;
    edit_is("a: [b, c]  # why\n", SET_YAML("a", "[d]"), "a: [d]  # why\n");
    edit_is("a: b\n", SET_YAML("a", "[\"c, d\", e]"), "a: [\"c, d\", e]\n");
    edit_is("{a: [b], c: d}\n", SET_YAML("a", "[]"), "{a: [], c: d}\n");
    edit_is("a: {b: c}\n", SET_YAML("a", "{b: c, d: {e: , f: \"\"}}"),
            "a: {b: c, d: {e: , f: \"\"}}\n");
    edit_is("a:\n", SET_YAML("a", "{b: c}"), "a: {b: c}\n");
}

/* A value that is the same already keeps its bytes, whatever they are. */
static void test_set_same(void **state)
{
    (void)state;
    edit_is("a: \"\\u0161\"\n", SET_TEXT("a", "\u0161"), "a: \"\\u0161\"\n");
    edit_is("a: |\n  b\n", SET_TEXT("a", "b"), "a: |\n  b\n");
    edit_is("a: [ b,c ]\n", SET_YAML("a", "[b, c]"), "a: [ b,c ]\n");
}

/* ---- adding ---- */

static void test_add_in_brackets(void **state)
{
    (void)state;
    edit_is("x: {a: 1, b: 2}  # why\n", ADD_TEXT("x", "c", "3"),
            "x: {a: 1, b: 2, c: 3}  # why\n");
    edit_is("x: {}\n", ADD_TEXT("x", "c", "3"), "x: {c: 3}\n");
    edit_is("x: {a: }\n", ADD_TEXT("x", "c", "3"), "x: {a: , c: 3}\n");
    edit_is("x: {a: 1,}\n", ADD_TEXT("x", "c", "3"), "x: {a: 1, c: 3,}\n");
    edit_is("x: {a: 1,\n    b: 2 # b\n   }\n", ADD_TEXT("x", "c", "3"),
            "x: {a: 1,\n    b: 2, c: 3 # b\n   }\n");
    edit_is("x: []\n", ADD_TEXT("x", NULL, "b, c"), "x: [\"b, c\"]\n");
    edit_is("x: [a]\n", ADD_TEXT("x", NULL, "b"), "x: [a, b]\n");
    edit_is("x: []\n", ADD_YAML("x", NULL, "{a: 1, b: [2]}"), "x: [{a: 1, b: [2]}]\n");
    edit_is("{a: 1}", ADD_TEXT("", "b", ""), "{a: 1, b: }");
}

static void test_add_lines(void **state)
{
    (void)state;
    edit_is("a: 1\nb: 2  # b\n# end\n", ADD_TEXT("", "c", "3"),
            "a: 1\nb: 2  # b\nc: 3\n# end\n");
    edit_is("x:\n    a: 1\n    # of a\n\ny: 2\n", ADD_TEXT("x", "c", "3"),
            "x:\n    a: 1\n    c: 3\n    # of a\n\ny: 2\n");
    edit_is("x:\r\n  a: 1\r\ny: 2\r\n", ADD_TEXT("x", "c", "3"),
            "x:\r\n  a: 1\r\n  c: 3\r\ny: 2\r\n");
    edit_is("a: 1", ADD_TEXT("", "c", "3"), "a: 1\nc: 3");
    edit_is("a: 1\r\nb: 2", ADD_TEXT("", "c", "3"), "a: 1\r\nb: 2\r\nc: 3");
    edit_is("a:\n", ADD_TEXT("", "c", "3"), "a:\nc: 3\n");
    edit_is("a: {b: 1,\n  c: 2}\n", ADD_TEXT("", "d", "3"), "a: {b: 1,\n  c: 2}\nd: 3\n");
    edit_is("a: |\n  b\n\n\n", ADD_TEXT("", "c", "3"), "a: |\n  b\nc: 3\n\n\n");
    edit_is("a: \"b\n  c\"\n", ADD_TEXT("", "d", "3"), "a: \"b\n  c\"\nd: 3\n");
    edit_is("a: 1\n...\n", ADD_TEXT("", "c", "3"), "a: 1\nc: 3\n...\n");
    edit_is("- a: 1\n  b: 2\n- c\n", ADD_TEXT("0", "d", "3"), "- a: 1\n  b: 2\n  d: 3\n- c\n");
    edit_is("a: 1\n", ADD_TEXT("", "on the way: x", "3"), "a: 1\n\"on the way: x\": 3\n");
    edit_is("a: 1\n", ADD_YAML("", "b", "[{c: 1}, {c: 2}]"),
            "a: 1\nb:\n  - {c: 1}\n  - {c: 2}\n");
    edit_is("a: 1\n", ADD_YAML("", "b", "[c, d]"), "a: 1\nb: [c, d]\n");
}

static void test_add_entries(void **state)
{
    (void)state;
    edit_is("x:\n  - a\n  # end\ny: 1\n", ADD_TEXT("x", NULL, "b"),
            "x:\n  - a\n  - b\n  # end\ny: 1\n");
    edit_is("x:\n- a\ny: 1\n", ADD_TEXT("x", NULL, "b: c"), "x:\n- a\n- \"b: c\"\ny: 1\n");
    edit_is("x:\n  - {a: 1}", ADD_YAML("x", NULL, "{a: 2}"), "x:\n  - {a: 1}\n  - {a: 2}");
    edit_is("x:\n  - a: 1\n    b: 2\n", ADD_YAML("x", NULL, "{a: 3, b: [4]}"),
            "x:\n  - a: 1\n    b: 2\n  - a: 3\n    b: [4]\n");
    edit_is("x:\n  -   a: 1\n", ADD_YAML("x", NULL, "{a: 3, b: 4}"),
            "x:\n  -   a: 1\n  -   a: 3\n      b: 4\n");
    edit_is("- - a\n  - b\n- c\n", ADD_TEXT("0", NULL, "d"), "- - a\n  - b\n  - d\n- c\n");
}

/* ---- removing ---- */

static void test_remove_in_brackets(void **state)
{
    (void)state;
    edit_is("x: {a: 1, b: 2, c: 3}  # why\n", REMOVE("x/a"), "x: {b: 2, c: 3}  # why\n");
    edit_is("x: {a: 1, b: 2, c: 3}\n", REMOVE("x/b"), "x: {a: 1, c: 3}\n");
    edit_is("x: {a: 1, b: 2, c: 3}\n", REMOVE("x/c"), "x: {a: 1, b: 2}\n");
    edit_is("x: {a: 1}\n", REMOVE("x/a"), "x: {}\n");
    edit_is("x: {a: , b: 2}\n", REMOVE("x/a"), "x: {b: 2}\n");
    edit_is("x: {a: , b: 2}\n", REMOVE("x/b"), "x: {a: }\n");
    edit_is("x: {a: 1, b: }\n", REMOVE("x/b"), "x: {a: 1}\n");
    edit_is("x: [a, b, c]\n", REMOVE("x/1"), "x: [a, c]\n");
    edit_is("x: [a, [b], {c: 1}]\n", REMOVE("x/2"), "x: [a, [b]]\n");
    edit_is("x: [a, b,]\n", REMOVE("x/1"), "x: [a]\n");
    edit_is("x: {a: 1,\n    b: 2, # b\n    c: 3}\n", REMOVE("x/b"),
            "x: {a: 1,\n    # b\n    c: 3}\n");
    edit_is("x: {\n  a: 1, # a\n  b: 2,\n  c: 3\n}\n", REMOVE("x/b"),
            "x: {\n  a: 1, # a\n  c: 3\n}\n");
    edit_is("x: {\n  a: 1, # a\n  b: 2\n}\n", REMOVE("x/b"), "x: {\n  a: 1 # a\n}\n");
}

static void test_remove_lines(void **state)
{
    (void)state;
    edit_is("a: 1\nb: 2  # b\nc: 3\n", REMOVE("b"), "a: 1\nc: 3\n");
    edit_is("a: 1\n# of b\nb:\n  - c\n  # in b\n  - d\n# after\ne: 1\n", REMOVE("b"),
            "a: 1\n# of b\n# after\ne: 1\n");
    edit_is("a: 1\r\nb: 2", REMOVE("b"), "a: 1\r\n");
    edit_is("a: |\n  x\n\nb: 2\n", REMOVE("a"), "\nb: 2\n");
    edit_is("x:\n  a: 1\n  b:\n", REMOVE("x/b"), "x:\n  a: 1\n");
    edit_is("- a: 1\n  b: 2\n- c\n", REMOVE("0/a"), "- b: 2\n- c\n");
    edit_is("- a: 1\n  b: 2\n- c\n", REMOVE("0/b"), "- a: 1\n- c\n");
    edit_is("x:\n  - a\n  - b # b\n  - c\n", REMOVE("x/1"), "x:\n  - a\n  - c\n");
    edit_is("x:\n  - a: 1\n    b: 2\n  # of c\n  -\n    c: 3\n  - d\n", REMOVE("x/1"),
            "x:\n  - a: 1\n    b: 2\n  # of c\n  - d\n");
    edit_is("- - a\n  - b\n", REMOVE("0/0"), "- - b\n");
    edit_is("- a\n-\n- c\n", REMOVE("1"), "- a\n- c\n");
}

/* ---- several at once ---- */

static void test_several(void **state)
{
    (void)state;
    edits_are("a: 1\nb: {c: 2, d: 3}\ne:\n  - f\n",
              (struct edit_case[]){ADD_TEXT("e", NULL, "g"), SET_TEXT("b/d", "4"),
                                   REMOVE("a"), ADD_TEXT("b", "h", "5")}, 4,
              "b: {c: 2, d: 4, h: 5}\ne:\n  - f\n  - g\n");
    edits_are("x: {a: 1, b: 2, c: 3}\n", (struct edit_case[]){REMOVE("x/b"), REMOVE("x/c")}, 2,
              "x: {a: 1}\n");
    edits_are("x: {a: 1, b: 2, c: 3}\n", (struct edit_case[]){REMOVE("x/b"), REMOVE("x/a")}, 2,
              "x: {c: 3}\n");
    edits_are("x: {a: 1, b: 2}\n",
              (struct edit_case[]){REMOVE("x/a"), REMOVE("x/b"), ADD_TEXT("x", "c", "3"),
                                   ADD_TEXT("x", "d", "4")}, 4, "x: {c: 3, d: 4}\n");
    edits_are("x: {a: 1, b: 2,}\n",
              (struct edit_case[]){REMOVE("x/b"), ADD_TEXT("x", "c", "3")}, 2,
              "x: {a: 1, c: 3}\n");
    edits_are("x: [{}]\n",
              (struct edit_case[]){ADD_TEXT("x/0", "a", "1"), ADD_TEXT("x/0", "b", "2")}, 2,
              "x: [{a: 1, b: 2}]\n");
    edits_are("x: {a: }\n",
              (struct edit_case[]){ADD_TEXT("x", "b", "2"), SET_TEXT("x/a", "1")}, 2,
              "x: {a: 1, b: 2}\n");
    edits_are("a: 1\nb:\n  - 2\n",
              (struct edit_case[]){REMOVE("b"), ADD_YAML("", "b", "[3]")}, 2, "a: 1\nb: [3]\n");
}

/* At the end of a file without a last line end all of these come to one place. */
static void test_several_at_end(void **state)
{
    (void)state;
    edits_are("a:\n  b: 1",
              (struct edit_case[]){ADD_TEXT("", "d", "3"), ADD_TEXT("a", "c", "2"),
                                   ADD_TEXT("", "e", "4")}, 3, "a:\n  b: 1\n  c: 2\nd: 3\ne: 4");
    edits_are("a:\n- b\n",
              (struct edit_case[]){ADD_TEXT("", "d", "3"), ADD_TEXT("a", NULL, "c")}, 2,
              "a:\n- b\n- c\nd: 3\n");
    edits_are("a: 1\nb: 2",
              (struct edit_case[]){REMOVE("b"), ADD_TEXT("", "c", "3"), ADD_TEXT("", "d", "4")},
              3, "a: 1\nc: 3\nd: 4");
    edits_are("a:", (struct edit_case[]){ADD_TEXT("", "b", "2"), SET_TEXT("a", "1")}, 2,
              "a: 1\nb: 2");
    edits_are("x:\n  - a: 1\n    b: 2\n",
              (struct edit_case[]){REMOVE("x/0/a"), REMOVE("x/0/b"),
                                   ADD_TEXT("x/0", "c", "3")}, 3, "x:\n  - \n    c: 3\n");
}

static void test_none(void **state)
{
    (void)state;
    edits_are("\xEF\xBB\xBF" "a: 1 \r\n\r\n# x", NULL, 0, "\xEF\xBB\xBF" "a: 1 \r\n\r\n# x");
}

/* ---- refused ---- */

static void test_refused(void **state)
{
    (void)state;
    edit_fails("a: 1\n", SET_TEXT("b", "2"), "1:1 there is no key \"b\"");
    edit_fails("- 1\n", SET_TEXT("1", "2"), "1:1 the list has no entry 1");
    edit_fails("a: 1\n", ADD_TEXT("", "a", "2"), "1:1 the key \"a\" is there already");
    edit_fails("a: 1\n", ADD_TEXT("a", "b", "2"), "1:4 a text has no keys and no entries");
    edit_fails("a: |\n  b\n", SET_TEXT("a", "c"),
               "1:1 a value of several lines cannot be replaced");
    edit_fails("a: b\n  c\n", SET_TEXT("a", "c"),
               "1:1 a value of several lines cannot be replaced");
    edit_fails("a: [b,\n  c]\n", SET_TEXT("a", "c"),
               "1:1 a value of several lines cannot be replaced");
    edit_fails("a:\n  - b\n", SET_TEXT("a", "c"),
               "1:1 a value in lines of its own cannot be replaced");
    edit_fails("a: b\n", SET_TEXT("a", "c\nd"), "1:1 the new value holds a line break");
    edit_fails("a: b\n", SET_TEXT("a", "c\td"),
               "1:1 the new value holds a character that is not allowed");
    edit_fails("a: b\n", SET_TEXT("a", "c\xFF"),
               "1:1 the new value holds bytes that are not valid UTF-8");
    edit_fails("a: b\n", ADD_TEXT("", "c\u202E", "d"),
               "1:1 the new value holds a character that is not allowed");
    edit_fails("x:\n  a: 1\n", REMOVE("x/a"), "2:3 nothing would be left of a mapping");
    edit_fails("x:\n  - a\n", REMOVE("x/0"), "2:5 nothing would be left of a list");
    edit_fails("- a: 1 # a\n  b: 2\n", REMOVE("0/a"),
               "1:3 the first key behind a dash cannot be removed: a comment follows it");
    edit_fails("[a: 1, b]\n", ADD_TEXT("0", "c", "2"),
               "1:2 a pair in a list that has no braces cannot be changed");
    edit_fails("? a\n: b\n", REMOVE("a"), "1:3 nothing would be left of a mapping");
    edit_fails("? a\n: b\nc: d\n", REMOVE("a"),
               "1:3 it cannot be told where the value begins");
    edit_fails("x: [a, b]\n", SET_TEXT("x/0", ""),
               "1:5 the file cannot be changed in this way: a value cannot begin with \",\"");
}

/* What is written is held against the tree it was to be made of, which here is of other
 * bytes. */
static void test_promise(void **state)
{
    (void)state;
    struct edit_bench bench = edit_bench_new("a: 1\nb: 2\n", 10);
    struct edit_bench other = edit_bench_new("a: 1\nb: 3\n", 10);

    bench.source = other.source;
    assert_null(cases_make(&bench, &SET_TEXT("a", "2"), 1));
    assert_string_equal(first_told(&bench), "1:1 the file cannot be changed in this way: it would "
                                            "say something else");
    arena_free(other.arena);
    arena_free(bench.arena);
}

static void test_several_refused(void **state)
{
    (void)state;
    edits_fail("a: 1\n", (struct edit_case[]){SET_TEXT("a", "2"), SET_TEXT("a", "3")}, 2,
               "1:1 two edits are about the same value");
    edits_fail("a: 1\n", (struct edit_case[]){ADD_TEXT("", "b", "2"), ADD_TEXT("", "b", "3")},
               2, "1:1 two edits are about the same value");
    edits_fail("a:\n  b: 1\nc: 2\n", (struct edit_case[]){REMOVE("a"), SET_TEXT("a/b", "3")},
               2, "2:3 an edit changes what another edit changes too");
    edits_fail("a: {b: 1}\n", (struct edit_case[]){SET_TEXT("a", "2"), ADD_TEXT("a", "c", "3")},
               2, "1:4 an edit changes what another edit changes too");
    edits_fail("x: 1\na:\n  b: 1\nc: 2\n",
               (struct edit_case[]){REMOVE("a"), ADD_TEXT("a", "d", "3")}, 2,
               "3:3 an edit changes what another edit changes too");
    edits_fail("a: 1\nb: 2\n", (struct edit_case[]){SET_TEXT("x", "2"), SET_TEXT("y", "3")}, 2,
               "1:1 there is no key \"x\"");
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(test_set),
        cmocka_unit_test(test_set_line_ends),
        cmocka_unit_test(test_set_quotes),
        cmocka_unit_test(test_set_empty),
        cmocka_unit_test(test_set_lists),
        cmocka_unit_test(test_set_same),
        cmocka_unit_test(test_add_in_brackets),
        cmocka_unit_test(test_add_lines),
        cmocka_unit_test(test_add_entries),
        cmocka_unit_test(test_remove_in_brackets),
        cmocka_unit_test(test_remove_lines),
        cmocka_unit_test(test_several),
        cmocka_unit_test(test_several_at_end),
        cmocka_unit_test(test_none),
        cmocka_unit_test(test_refused),
        cmocka_unit_test(test_promise),
        cmocka_unit_test(test_several_refused),
    };

    return cmocka_run_group_tests_name("yaml_edit", tests, NULL, NULL) != 0;
}
