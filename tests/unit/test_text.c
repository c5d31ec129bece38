/* test_text.c - building, comparing and changing strings. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include <string.h>

#include "text.h"

static int arena_set_up(void **state)
{
    *state = arena_new((size_t)16 * 1024 * 1024);
    return 0;
}

static int arena_tear_down(void **state)
{
    arena_free(*state);
    return 0;
}

static void test_builder(void **state)
{
    struct text_builder builder = text_builder_in(*state);

    assert_string_equal(builder.at, "");
    text_add(&builder, "one");
    text_add_bytes(&builder, " twofold", 4);
    text_add_format(&builder, " %d %s", 3, "four");
    text_add_bytes(&builder, NULL, 0);
    assert_string_equal(builder.at, "one two 3 four");
    assert_int_equal(builder.length, 14);
}

static void test_builder_grows(void **state)
{
    struct text_builder builder = text_builder_in(*state);

    for (int i = 0; i < 1000; i++)
        text_add_format(&builder, "%03d,", i);
    assert_int_equal(builder.length, 4000);
    assert_int_equal(strlen(builder.at), 4000);
    assert_memory_equal(builder.at + 4 * 517, "517,", 4);
    for (size_t length = 60; length < 70; length++) {
        struct text_builder edge = text_builder_in(*state);
        for (size_t i = 0; i < length; i++)
            text_add(&edge, "x");
        text_add_bytes(&edge, "yyyy", 4);
        assert_int_equal(strlen(edge.at), length + 4);
    }
}

static void test_format(void **state)
{
    assert_string_equal(text_format(*state, "%s %zu %.*s", "a", (size_t)7, 2, "xyz"), "a 7 xy");
    assert_string_equal(text_format(*state, "%s", ""), "");
}

static void test_compare(void **state)
{
    (void)state;
    assert_true(text_equal("a", "a"));
    assert_true(text_equal(NULL, NULL));
    assert_false(text_equal("a", NULL));
    assert_false(text_equal(NULL, "a"));
    assert_false(text_equal("a", "A"));
    assert_true(text_empty(NULL));
    assert_true(text_empty(""));
    assert_false(text_empty(" "));
    assert_true(text_begins("seacock", "sea"));
    assert_true(text_begins("seacock", ""));
    assert_false(text_begins("sea", "seacock"));
    assert_false(text_begins(NULL, "a"));
    assert_true(text_ends("seacock", "cock"));
    assert_false(text_ends("cock", "seacock"));
    assert_false(text_ends("seacock", "sea"));
}

static void test_upper(void **state)
{
    assert_string_equal(text_upper(*state, "shut port 12 äöüčš ж λ"),
                        "SHUT PORT 12 ÄÖÜČŠ Ж Λ");
    assert_string_equal(text_upper(*state, ""), "");
    assert_string_equal(text_upper(*state, "a\xFFz"), "A\xFFZ");
}

static void test_nfc(void **state)
{
    assert_string_equal(text_nfc(*state, "s\xCC\x8Cok"), "\xC5\xA1ok");
    assert_string_equal(text_nfc(*state, "plain"), "plain");
    assert_string_equal(text_nfc(*state, ""), "");
    assert_string_equal(text_nfc(*state, "bad\xFF"), "bad\xFF");
}

static void test_folded(void **state)
{
    assert_string_equal(text_folded(*state, "À Préciser…"), "a preciser...");
    assert_string_equal(text_folded(*state, "ΆΓΝΩΣΤΟς"), "αγνωστοσ");
    assert_string_equal(text_folded(*state, "BİLİNMİYOR"), "bilinmiyor");
    assert_string_equal(text_folded(*state, "Maß ？"), "mass ?");
    assert_string_equal(text_folded(*state, ""), "");
    assert_string_equal(text_folded(*state, "A\xFF"), "A\xFF");
}

static void test_code_points(void **state)
{
    (void)state;
    assert_int_equal(text_code_points(""), 0);
    assert_int_equal(text_code_points("žaba"), 4);
    assert_int_equal(text_code_points("a\xC5"), -1);
}

static void test_accents(void **state)
{
    (void)state;
    assert_int_equal(text_accents_most(""), 0);
    assert_int_equal(text_accents_most("plain, žaba"), 0);
    assert_int_equal(text_accents_most("a\xCC\x81 e\xCC\x81\xCC\x82 o"), 2);
    assert_int_equal(text_accents_most("\xCC\x81\xCC\x82\xCC\x83\xCC\x84"), 4);
    assert_int_equal(text_accents_most("a\xCC\x81\xC5" "b\xCC\x81"), 1);
}

static const char *const keys[] = {"loa_m", "beam_m", "draught_m", "port", "starboard"};

static const char *nearest(const char *word)
{
    return text_nearest(word, keys, sizeof keys / sizeof keys[0]);
}

static void test_nearest(void **state)
{
    (void)state;
    assert_string_equal(nearest("loa_n"), "loa_m");      /* replaced */
    assert_string_equal(nearest("prot"), "port");        /* swapped */
    assert_string_equal(nearest("pot"), "port");         /* left out */
    assert_string_equal(nearest("portt"), "port");       /* put in */
    assert_string_equal(nearest("PORT"), "port");        /* capitals */
    assert_string_equal(nearest("staboard"), "starboard");
    assert_string_equal(nearest("strabaord"), "starboard");
}

static void test_nearest_too_far(void **state)
{
    (void)state;
    assert_null(nearest("pt"));           /* two changes of two letters */
    assert_null(nearest("loa"));          /* two changes of three */
    assert_null(nearest("draft_m"));      /* three changes of seven */
    assert_null(nearest("bow"));
    assert_null(nearest("engine"));
    assert_null(nearest(""));
    assert_null(nearest(NULL));
    assert_null(nearest("\xFF"));
    assert_null(text_nearest("port", keys, 0));
}

static void test_nearest_first_and_best(void **state)
{
    (void)state;
    static const char *const equals[] = {"cast", "cost", "coat"};
    static const char *const better[] = {"abcdef", "abcdeg_", "abcdeg"};
    char longest[80];

    assert_string_equal(text_nearest("cxst", equals, 3), "cast");
    assert_string_equal(text_nearest("abcdeg", better, 3), "abcdeg");
    memset(longest, 'a', sizeof longest - 1);
    longest[sizeof longest - 1] = '\0';
    const char *const same[] = {longest};
    assert_null(text_nearest(longest, same, 1));
}

static void test_nearest_remedy(void **state)
{
    (void)state;
    static const char *const known[] = {"saloon", "galley", "mast", NULL};

    assert_int_equal(text_list_length(known), 3);
    assert_int_equal(text_list_length(known + 3), 0);
    assert_string_equal(text_nearest_remedy(*state, "galey", known, 3, "look it up"),
                        "did you mean \"galley\"?");
    assert_string_equal(text_nearest_remedy(*state, "lazarette", known, 3, "look it up"),
                        "look it up");
    assert_null(text_nearest_remedy(*state, "galey", known, 0, NULL));
}

static void test_plain(void **state)
{
    (void)state;

    assert_string_equal(text_plain(*state, "**Shut** the *valve**"), "Shut the *valve");
    assert_string_equal(text_plain(*state, NULL), "");
}

static void test_digits(void **state)
{
    (void)state;

    assert_true(is_digit('0') && is_digit('9'));
    assert_false(is_digit('/') || is_digit(':') || is_digit('\0') || is_digit('a'));
    assert_int_equal(hex_digit_value('9'), 9);
    assert_int_equal(hex_digit_value('F'), 15);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(test_accents),
        cmocka_unit_test(test_builder),
        cmocka_unit_test(test_builder_grows),
        cmocka_unit_test(test_format),
        cmocka_unit_test(test_compare),
        cmocka_unit_test(test_upper),
        cmocka_unit_test(test_nfc),
        cmocka_unit_test(test_folded),
        cmocka_unit_test(test_code_points),
        cmocka_unit_test(test_nearest),
        cmocka_unit_test(test_nearest_too_far),
        cmocka_unit_test(test_nearest_first_and_best),
        cmocka_unit_test(test_nearest_remedy),
        cmocka_unit_test(test_plain),
        cmocka_unit_test(test_digits),
    };

    return cmocka_run_group_tests_name("text", tests, arena_set_up, arena_tear_down) != 0;
}
