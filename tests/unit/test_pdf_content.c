/* test_pdf_content.c - numbers, strings and state as they stand in a content stream. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include <string.h>

#include "draw/content.h"
#include "text.h"

static struct arena *arena;

static int arena_begin(void **state)
{
    (void)state;
    arena = arena_new((size_t)64 << 20);
    return 0;
}

static int arena_end(void **state)
{
    (void)state;
    arena_free(arena);
    return 0;
}

static void expect_content(const struct content *content, const char *expected)
{
    assert_string_equal(arena_copy(arena, content->at, content->length), expected);
}

static void numbers_have_no_more_places_than_they_need(void **state)
{
    static const struct { int64_t milli; const char *spelled; } rows[] = {
        {0, "0 "}, {1, "0.001 "}, {-1, "-0.001 "}, {10, "0.01 "}, {100, "0.1 "}, {1000, "1 "},
        {12600, "12.6 "}, {-12060, "-12.06 "}, {841889, "841.889 "}, {1000001, "1000.001 "},
        {INT64_MIN, "-9223372036854775.808 "}, {INT64_MAX, "9223372036854775.807 "}};

    (void)state;
    for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
        struct content content = content_small_in(arena);
        content_milli_add(&content, rows[i].milli);
        expect_content(&content, rows[i].spelled);
    }
}

static void scales_have_six_places(void **state)
{
    struct content content = content_small_in(arena);

    (void)state;
    content_micro_add(&content, 187264);
    content_micro_add(&content, -1500000);
    content_micro_add(&content, 1);
    content_whole_add(&content, -41);
    expect_content(&content, "0.187264 -1.5 0.000001 -41");
}

/* Brackets, backslash and line ends are escaped in either byte; all else is as it is. */
static void glyphs_are_two_bytes(void **state)
{
    struct content content = content_small_in(arena);
    static const char expected[] = "\x01\x41\\(\\)\\\\\\n\\r\x7F";

    (void)state;
    content_glyph_add(&content, 0x0141);
    content_glyph_add(&content, '(' << 8 | ')');
    content_glyph_add(&content, '\\' << 8 | '\n');
    content_glyph_add(&content, '\r' << 8 | 0x7F);
    assert_int_equal(content.length, sizeof expected - 1);
    assert_memory_equal(content.at, expected, content.length);
}

static void texts_are_ascii_or_utf16(void **state)
{
    struct content content = content_small_in(arena);
    static const char wide[] = "(\xFE\xFF\x01\x61\\(\\(\xD8\x3D\xDE\\\\)";

    (void)state;
    content_text_add(&content, "C1 (galley) \\ 2");
    expect_content(&content, "(C1 \\(galley\\) \\\\ 2)");
    content = content_small_in(arena);
    content_text_add(&content, "\xC5\xA1");
    assert_memory_equal(content.at, "(\xFE\xFF\x01\x61)", 6);
    content = content_small_in(arena);
    /* U+0161, U+2828, which has brackets in both bytes, and U+1F65C, a pair with a backslash */
    content_text_add(&content, "\xC5\xA1\xE2\xA0\xA8\xF0\x9F\x99\x9C");
    assert_int_equal(content.length, sizeof wide - 1);
    assert_memory_equal(content.at, wide, content.length);
}

static void what_is_set_is_set_once(void **state)
{
    struct content content = content_in(arena);
    struct rgb black = {0, 0, 0}, red = {155, 36, 35};

    (void)state;
    content_page_begin(&content);
    content_fill_set(&content, black);        /* as a page begins */
    content_ends_set(&content, JOIN_MITRE, CAP_BUTT);
    content_width_set(&content, 1000);
    expect_content(&content, "");
    content_fill_set(&content, red);
    content_fill_set(&content, red);
    content_stroke_set(&content, red);
    content_ends_set(&content, JOIN_ROUND, CAP_BUTT);
    content_width_set(&content, 1417);
    content_width_set(&content, 1417);
    expect_content(&content, "0.608 0.141 0.137 rg\n0.608 0.141 0.137 RG\n1 j\n1.417 w\n");
}

/* A form may be used where anything is set. */
static void a_form_sets_all_that_it_needs(void **state)
{
    struct content content = content_in(arena);
    struct rgb black = {0, 0, 0};

    (void)state;
    content_page_begin(&content);
    content_fill_set(&content, (struct rgb){1, 2, 3});
    content_form_begin(&content);
    content_fill_set(&content, black);
    content_stroke_set(&content, black);
    content_ends_set(&content, JOIN_MITRE, CAP_BUTT);
    content_width_set(&content, 1000);
    expect_content(&content, "0 g\n0 G\n0 j\n0 J\n1 w\n");
}

/* Each of the 256 steps of a colour is read back as itself from three places. */
static void no_step_of_a_colour_is_lost(void **state)
{
    (void)state;
    for (unsigned step = 0; step <= UINT8_MAX; step++) {
        struct content content = content_in(arena);
        unsigned milli = 0, places = 1;
        content_page_begin(&content);
        content_stroke_set(&content, (struct rgb){(unsigned char)step, 0, 255});
        const char *at = content.at;
        for (milli = (unsigned)(*at++ - '0'); *at == '.' || (*at >= '0' && *at <= '9'); at++)
            if (*at != '.') {
                milli = milli * 10 + (unsigned)(*at - '0');
                places++;
            }
        for (; places < 4; places++)
            milli *= 10;
        assert_int_equal((milli * UINT8_MAX + 500) / 1000, step);
    }
}

static void content_grows(void **state)
{
    struct content content = content_small_in(arena);

    (void)state;
    for (int i = 0; i < 10000; i++)
        content_line(&content, i, -i);
    assert_memory_equal(content.at, "0 0 l\n0.001 -0.001 l\n", 21);
    assert_memory_equal(content.at + content.length - 15, "9.999 -9.999 l\n", 15);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(numbers_have_no_more_places_than_they_need),
        cmocka_unit_test(scales_have_six_places),
        cmocka_unit_test(glyphs_are_two_bytes),
        cmocka_unit_test(texts_are_ascii_or_utf16),
        cmocka_unit_test(what_is_set_is_set_once),
        cmocka_unit_test(a_form_sets_all_that_it_needs),
        cmocka_unit_test(no_step_of_a_colour_is_lost),
        cmocka_unit_test(content_grows),
    };

    return cmocka_run_group_tests_name("pdf_content", tests, arena_begin, arena_end) != 0;
}
