/* test_utf8.c - decoding, first invalid byte, refused characters. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include <string.h>

#include "utf8.h"

struct decoded {
    const char *bytes;
    size_t length;
    uint32_t code_point;
};

static void test_valid(void **state)
{
    (void)state;
    static const struct decoded rows[] = {
        {"a", 1, 'a'}, {"\0", 1, 0}, {"\xC2\x80", 2, 0x80}, {"\xDF\xBF", 2, 0x7FF},
        {"\xE0\xA0\x80", 3, 0x800}, {"\xED\x9F\xBF", 3, 0xD7FF}, {"\xEE\x80\x80", 3, 0xE000},
        {"\xEF\xBF\xBD", 3, 0xFFFD}, {"\xF0\x90\x80\x80", 4, 0x10000},
        {"\xF4\x8F\xBF\xBF", 4, 0x10FFFF},
    };

    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
        size_t index = 0;
        uint32_t code_point = 1;
        assert_true(utf8_next(rows[i].bytes, rows[i].length, &index, &code_point));
        assert_int_equal(code_point, rows[i].code_point);
        assert_int_equal(index, rows[i].length);
        assert_int_equal(utf8_first_invalid(rows[i].bytes, rows[i].length), rows[i].length);
    }
}

static void test_invalid(void **state)
{
    (void)state;
    static const struct decoded rows[] = {
        {"\x80", 1, 0}, {"\xFF", 1, 0}, {"\xC0\xAF", 2, 0}, {"\xC1\xBF", 2, 0},
        {"\xE0\x9F\xBF", 3, 0}, {"\xED\xA0\x80", 3, 0}, {"\xED\xBF\xBF", 3, 0},
        {"\xF0\x8F\xBF\xBF", 4, 0}, {"\xF4\x90\x80\x80", 4, 0}, {"\xF8\x88\x80\x80\x80", 5, 0},
        {"\xC5", 1, 0}, {"\xE2\x82", 2, 0}, {"\xF0\x9F\x94", 3, 0}, {"\xC3(", 2, 0},
        {"\xE2\x82(", 3, 0},
    };

    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
        size_t index = 0;
        uint32_t code_point = 7;
        assert_false(utf8_next(rows[i].bytes, rows[i].length, &index, &code_point));
        assert_int_equal(index, 0);
        assert_int_equal(code_point, 7);
        assert_int_equal(utf8_first_invalid(rows[i].bytes, rows[i].length), 0);
    }
}

/* A sequence that goes on behind the end of the text must not be read. */
static void test_length_is_kept(void **state)
{
    (void)state;
    size_t index = 0;
    uint32_t code_point;

    assert_false(utf8_next("\xC5\xA1", 1, &index, &code_point));
    assert_false(utf8_next("abc", 3, &(size_t){3}, &code_point));
    assert_int_equal(utf8_first_invalid("ab\xC5\xA1", 3), 2);
    assert_int_equal(utf8_first_invalid("", 0), 0);
}

static void test_allowed(void **state)
{
    (void)state;
    static const uint32_t allowed[] = {
        ' ', 'a', '~', 0xA0, 0xE9, 0x160, 0x301, 0x3A9, 0x416, 0x2011, 0x2013, 0x2019,
        0x201C, 0x2026, 0x202F, 0x20AC, 0x2192, 0x2260,
    };

    for (size_t i = 0; i < sizeof allowed / sizeof allowed[0]; i++)
        assert_null(utf8_refusal(allowed[i]));
}

struct refused {
    uint32_t code_point;
    const char *why;
};

static void test_refused(void **state)
{
    (void)state;
    static const char direction[] =
        "an invisible character that turns the direction of writing";
    static const char stroke[] =
        "a mark laid over the letter before it, which then reads as struck out";
    static const struct refused rows[] = {
        {0x00, "a control character"}, {0x09, "a control character"},
        {0x0A, "a control character"}, {0x1B, "a control character"},
        {0x7F, "a control character"}, {0x80, "a control character"},
        {0x85, "a control character"}, {0x9F, "a control character"},
        {0xAD, "an invisible character"}, {0x061C, direction}, {0x200E, direction},
        {0x200F, direction}, {0x202A, direction}, {0x202E, direction}, {0x2066, direction},
        {0x2069, direction}, {0x200B, "an invisible character"},
        {0x200C, "an invisible character"}, {0x200D, "an invisible character"},
        {0x2060, "an invisible character"}, {0xFE0F, "an invisible character"},
        {0xFEFF, "an invisible byte order mark"}, {0x2028, "an invisible line break"},
        {0x2029, "an invisible line break"}, {0xD800, "half of a character"},
        {0xDFFF, "half of a character"},
        {0xE000, "a private character that means nothing elsewhere"},
        {0x0378, "not assigned to any character"}, {0xFFFF, "not assigned to any character"},
        {0xFFFD, "the mark of a character that was lost before"},
        {0x1F525, "a character (such as an emoji) that the cards' typefaces lack"},
        {0xF0000, "a private character that means nothing elsewhere"},
        {0x0334, stroke}, {0x0336, stroke}, {0x0338, stroke}, {0x0489, stroke}, {0x20D2, stroke},
        {0xE0041, "an invisible character"}, {0x110000, "not assigned to any character"},
    };

    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
        assert_non_null(utf8_refusal(rows[i].code_point));
        assert_string_equal(utf8_refusal(rows[i].code_point), rows[i].why);
    }
}

static void test_whole_texts(void **state)
{
    (void)state;
    assert_null(utf8_text_refusal(""));
    assert_null(utf8_text_refusal("tamarisk 2.yaml"));
    assert_null(utf8_text_refusal("\xC5\xA1ibenik"));
    assert_string_equal(utf8_text_refusal("a\x1B[31m"), "a control character");
    assert_string_equal(utf8_text_refusal("a\nb"), "a control character");
    assert_string_equal(utf8_text_refusal("bad\xFF"), "bytes that are no UTF-8");
    assert_non_null(utf8_text_refusal("x\xCC\xB6"));
}

/* Marks of several languages, and what stands for itself. */
static void marks_lean_on_words(void **state)
{
    (void)state;
    static const struct { uint32_t code_point; bool on, back, letter; } rows[] = {
        {'(', true, false, false},    {')', false, true, false},   {'.', false, true, false},
        {'?', false, true, false},    {0xBF, true, true, false},   {0x201C, true, true, false},
        {0x201E, true, false, false}, {0xBB, true, true, false},   {'-', false, false, false},
        {'=', false, false, false},   {'7', false, false, false},  {'a', false, false, true},
        {0x3C9, false, false, true},  {0x416, false, false, true}, {0x301, false, false, true},
        {' ', false, false, false}};
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
        if (utf8_leans_on(rows[i].code_point) != rows[i].on ||
            utf8_leans_back(rows[i].code_point) != rows[i].back ||
            utf8_is_letter(rows[i].code_point) != rows[i].letter)
            fail_msg("U+%04X", (unsigned)rows[i].code_point);
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(test_valid),   cmocka_unit_test(test_invalid),
        cmocka_unit_test(test_length_is_kept), cmocka_unit_test(test_allowed),
        cmocka_unit_test(test_refused),
        cmocka_unit_test(test_whole_texts),
        cmocka_unit_test(marks_lean_on_words),
    };

    return cmocka_run_group_tests_name("utf8", tests, NULL, NULL) != 0;
}
