/* test_number.c - decimal numbers in thousandths. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include "number.h"

struct number {
    const char *text;
    int64_t milli;
};

/* Written as the program writes them. */
static const struct number numbers[] = {
    {"0", 0}, {"12.6", 12600}, {"2", 2000}, {"0.45", 450}, {"0.001", 1}, {"-3", -3000},
    {"-0.5", -500}, {"10.05", 10050}, {"100", 100000}, {"999999999.999", INT64_C(999999999999)},
    {"-999999999.999", -INT64_C(999999999999)},
};

static void test_parse_and_text(void **state)
{
    (void)state;
    struct arena *arena = arena_new((size_t)1024 * 1024);

    for (size_t i = 0; i < sizeof numbers / sizeof numbers[0]; i++) {
        int64_t milli = 1;
        assert_true(number_parse_milli(numbers[i].text, &milli));
        assert_true(milli == numbers[i].milli);
        assert_string_equal(number_text_milli(arena, milli), numbers[i].text);
    }
    assert_string_equal(number_text_milli(arena, INT64_MIN), "-9223372036854775.808");
    arena_free(arena);
}

static void test_other_spellings(void **state)
{
    (void)state;
    int64_t milli = 1;

    assert_true(number_parse_milli("2.0", &milli) && milli == 2000);
    assert_true(number_parse_milli("2.500", &milli) && milli == 2500);
    assert_true(number_parse_milli("-0", &milli) && milli == 0);
}

static void test_refusals(void **state)
{
    (void)state;
    static const char *const wrong[] = {
        "", "-", ".", ".5", "5.", "+5", " 5", "5 ", "05", "00", "-05", "--5", "1e3", "5E12",
        "0x1F", "1,5", "1.2.3", "1.2345", "1234567890", "12.6 m", "1_000", "nan", "inf",
        "\xD9\xA3", "5-",
    };

    for (size_t i = 0; i < sizeof wrong / sizeof wrong[0]; i++) {
        int64_t milli = 7;
        assert_false(number_parse_milli(wrong[i], &milli));
        assert_true(milli == 7);
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(test_parse_and_text),
        cmocka_unit_test(test_other_spellings),
        cmocka_unit_test(test_refusals),
    };

    return cmocka_run_group_tests_name("number", tests, NULL, NULL) != 0;
}
