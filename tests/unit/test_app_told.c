/* test_app_told.c - lines that are folded to a width: no word is cut or lost, and what was marked
 * stays marked. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include <string.h>

#include "app/told.h"

static int told_set_up(void **state)
{
    *state = arena_new((size_t)16 * 1024 * 1024);
    return 0;
}

static int told_tear_down(void **state)
{
    arena_free(*state);
    return 0;
}

static const char *folded(struct arena *arena, const char *text, size_t columns)
{
    struct text_builder out = text_builder_in(arena);
    text_add(&out, "");
    lines_fold(text, strlen(text), columns, &out);
    return out.at;
}

static void test_lines_kept(void **state)
{
    const char *text = "one two three\n\n  four   five\nno end";
    assert_string_equal(folded(*state, text, 0), text);
    assert_string_equal(folded(*state, text, 13), text);
    assert_string_equal(folded(*state, "", 20), "");
    assert_string_equal(folded(*state, "\n", 20), "\n");
}

static void test_lines_folded(void **state)
{
    assert_string_equal(folded(*state, "one two three\n", 12), "one two\n  three\n");
    assert_string_equal(folded(*state, "one two three", 12), "one two\n  three");
    assert_string_equal(folded(*state, "  one two three\n", 11), "  one two\n    three\n");
    /* what stands apart within a line stays so */
    assert_string_equal(folded(*state, "a   b ccccccc\n", 8), "a   b\n  ccccccc\n");
}

static void test_word_never_cut(void **state)
{
    assert_string_equal(folded(*state, "a 12345678901234 b\n", 8), "a\n  12345678901234\n  b\n");
    /* characters are counted, not bytes */
    const char *five = "\u00E4\u00F6 \u00FC\u00E4\n";
    assert_string_equal(folded(*state, five, 5), five);
}

static void test_far_in(void **state)
{
    assert_string_equal(folded(*state, "            aa bbbbbbbb cccccc\n", 20),
                        "            aa\n  bbbbbbbb cccccc\n");
}

/* Lines of YAML that are to be pasted stay YAML. */
static void test_comment_goes_on(void **state)
{
    assert_string_equal(folded(*state, "  - {item: a, tag: b}  # look at it\n", 18),
                        "  - {item: a, tag:\n    b}  # look at\n    # it\n");
    assert_string_equal(folded(*state, "card # 7 is this one\n", 12), "card # 7 is\n  this one\n");
}

static void test_marks_follow(void **state)
{
    assert_string_equal(folded(*state, "  aaa bbb ccc\n      ^~~\n", 9),
                        "  aaa bbb\n      ^~~\n    ccc\n");
    assert_string_equal(folded(*state, "  aaa bbb ccc\n          ^~~\n", 9),
                        "  aaa bbb\n    ccc\n    ^~~\n");
    /* over the fold, and behind the end of the line */
    assert_string_equal(folded(*state, "  aaa bbb ccc\n      ^~~~~~~\nx\n", 9),
                        "  aaa bbb\n      ^~~\n    ccc\n    ~~~\nx\n");
    assert_string_equal(folded(*state, "  aaa bbb ccc\n             ^\n", 9),
                        "  aaa bbb\n    ccc\n       ^\n");
    /* a line that fits keeps its own */
    assert_string_equal(folded(*state, "  aaa\n  ^~~\n", 9), "  aaa\n  ^~~\n");
}

static void test_widest_line(void **state)
{
    struct text_builder text = text_builder_in(*state);
    assert_int_equal(lines_width(&text), 0);
    text_add(&text, "four\nseven \u00E4\nx");
    assert_int_equal(lines_width(&text), 7);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(test_lines_kept),
        cmocka_unit_test(test_lines_folded),
        cmocka_unit_test(test_word_never_cut),
        cmocka_unit_test(test_far_in),
        cmocka_unit_test(test_comment_goes_on),
        cmocka_unit_test(test_marks_follow),
        cmocka_unit_test(test_widest_line),
    };
    return cmocka_run_group_tests(tests, told_set_up, told_tear_down);
}
