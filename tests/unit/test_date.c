/* test_date.c - reading, comparing and making calendar dates. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include "date.h"

static void date_is(struct date date, int year, int month, int day)
{
    assert_int_equal(date.year, year);
    assert_int_equal(date.month, month);
    assert_int_equal(date.day, day);
}

static struct date date_of(const char *string)
{
    struct date date = {0};

    assert_true(date_parse(string, &date));
    return date;
}

static void test_parse(void **state)
{
    (void)state;
    date_is(date_of("2027"), 2027, 0, 0);
    date_is(date_of("2027-04"), 2027, 4, 0);
    date_is(date_of("2027-04-30"), 2027, 4, 30);
    date_is(date_of("2028-02-29"), 2028, 2, 29);
    date_is(date_of("2000-02-29"), 2000, 2, 29);
    date_is(date_of("1900-01-01"), 1900, 1, 1);
    date_is(date_of("2199-12-31"), 2199, 12, 31);
}

static void test_parse_refusals(void **state)
{
    (void)state;
    static const char *const wrong[] = {
        "", "27", "202", "20270", "2027-", "2027-4", "2027-00", "2027-13", "2027-04-00",
        "2027-04-31", "2027-02-29", "2100-02-29", "1899", "2200", "2027/04", "2027-04/30",
        "2027-04-3", "2027-04-300", " 2027", "2027 ", "+027", "-027", "2O27", "2027-0a",
        "30.04.2027", "2027-04-30T00",
    };

    for (size_t i = 0; i < sizeof wrong / sizeof wrong[0]; i++) {
        struct date date = {.year = 1, .month = 2, .day = 3};
        assert_false(date_parse(wrong[i], &date));
        date_is(date, 1, 2, 3);
    }
}

static void test_last_day(void **state)
{
    (void)state;
    date_is(date_first_day(date_of("2027")), 2027, 1, 1);
    date_is(date_first_day(date_of("2027-04")), 2027, 4, 1);
    date_is(date_first_day(date_of("2027-04-05")), 2027, 4, 5);
    date_is(date_last_day(date_of("2027")), 2027, 12, 31);
    date_is(date_last_day(date_of("2027-04")), 2027, 4, 30);
    date_is(date_last_day(date_of("2028-02")), 2028, 2, 29);
    date_is(date_last_day(date_of("2100-02")), 2100, 2, 28);
    date_is(date_last_day(date_of("2027-04-05")), 2027, 4, 5);
}

static void test_compare(void **state)
{
    (void)state;
    assert_true(date_compare(date_of("2027"), date_of("2027-12-31")) == 0);
    assert_true(date_compare(date_of("2027-04"), date_of("2027-04-29")) > 0);
    assert_true(date_compare(date_of("2027-04"), date_of("2027-05-01")) < 0);
    assert_true(date_compare(date_of("2026"), date_of("2027-01-01")) < 0);
    assert_true(date_compare(date_of("2028"), date_of("2027-12")) > 0);
}

static void test_text(void **state)
{
    (void)state;
    static const char *const written[] = {"2027", "2027-04", "2027-04-30"};
    struct arena *arena = arena_new((size_t)1024 * 1024);

    for (size_t i = 0; i < 3; i++)
        assert_string_equal(date_text(arena, date_of(written[i])), written[i]);
    arena_free(arena);
}

static void test_from_seconds(void **state)
{
    (void)state;
    date_is(date_from_seconds(0), 1970, 1, 1);
    date_is(date_from_seconds(86399), 1970, 1, 1);
    date_is(date_from_seconds(86400), 1970, 1, 2);
    date_is(date_from_seconds(-1), 1969, 12, 31);
    date_is(date_from_seconds(951782400), 2000, 2, 29);
    date_is(date_from_seconds(951868800), 2000, 3, 1);
    date_is(date_from_seconds(INT64_C(4102444799)), 2099, 12, 31);
    date_is(date_from_seconds(INT64_C(-2203891200)), 1900, 3, 1);
    date_is(date_from_seconds(INT64_MAX), 9999, 12, 31);
    date_is(date_from_seconds(INT64_MIN), 1, 1, 1);
}

/* Every day of three centuries, counted by hand and by the function. */
static void test_each_day(void **state)
{
    (void)state;
    struct date day = {.year = 1900, .month = 1, .day = 1};

    for (int64_t seconds = INT64_C(-2208988800); day.year < 2200; seconds += 86400) {
        date_is(date_from_seconds(seconds), day.year, day.month, day.day);
        struct date month = {.year = day.year, .month = day.month};
        if (day.day++ == date_last_day(month).day) {
            day.day = 1;
            day.month++;
        }
        if (day.month > 12) {
            day.month = 1;
            day.year++;
        }
    }
}

/* A month counts from its last day; years have leap days. */
static void test_days_later(void **state)
{
    (void)state;
    date_is(date_days_later((struct date){2027, 12, 31}, 1), 2028, 1, 1);
    date_is(date_days_later((struct date){2028, 2, 28}, 1), 2028, 2, 29);
    date_is(date_days_later((struct date){2027, 2, 28}, 1), 2027, 3, 1);
    date_is(date_days_later((struct date){.year = 2027, .month = 4}, 1), 2027, 5, 1);
    date_is(date_days_later((struct date){2027, 3, 1}, -1), 2027, 2, 28);
    date_is(date_days_later((struct date){2027, 3, 1}, 366), 2028, 3, 1);
    date_is(date_days_later((struct date){2027, 3, 1}, 0), 2027, 3, 1);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(test_parse),
        cmocka_unit_test(test_parse_refusals),
        cmocka_unit_test(test_last_day),
        cmocka_unit_test(test_compare),
        cmocka_unit_test(test_text),
        cmocka_unit_test(test_from_seconds),
        cmocka_unit_test(test_each_day),
        cmocka_unit_test(test_days_later),
    };

    return cmocka_run_group_tests_name("date", tests, NULL, NULL) != 0;
}
