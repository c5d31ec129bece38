/* test_date_months.c - adding months to dates, what marks without a day mean, and
 * days between dates. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include "arena.h"
#include "date.h"

static struct arena *arena;

static int set_up(void **state)
{
    (void)state;
    arena = arena_new((size_t)1024 * 1024);
    return 0;
}

static int tear_down(void **state)
{
    (void)state;
    arena_free(arena);
    return 0;
}

static struct date date_of(const char *string)
{
    struct date date = {0};
    assert_true(date_parse(string, &date));
    return date;
}

static void expect_date(struct date date, const char *expected)
{
    assert_string_equal(date_text(arena, date), expected);
}

/* The days of months that the year
 * lacks are clamped, months and years stay what they are. */
static const struct {
    const char *from;
    int months;
    const char *to;
} additions[] = {
    {"2025-01-31", 1, "2025-02-28"},
    {"2024-01-31", 1, "2024-02-29"},
    {"2024-02-29", 12, "2025-02-28"},
    {"2023-02-28", 12, "2024-02-28"},
    {"2024-02-29", 48, "2028-02-29"},
    {"2025-08-31", 6, "2026-02-28"},
    {"2025-11-30", 3, "2026-02-28"},
    {"2025-03-31", -1, "2025-02-28"},
    {"2025-12-15", 36, "2028-12-15"},
    {"2096-02-29", 48, "2100-02-28"},
    {"2007-03-31", 1, "2007-04-30"},
    {"2025-01-31", 2, "2025-03-31"},
    {"2022-11-30", 42, "2026-05-30"},
    {"2025-04-30", 12, "2026-04-30"},
    {"2024-08-01", 24, "2026-08-01"},
    {"2025-09-15", 24, "2027-09-15"},
    {"2025-06-30", 12, "2026-06-30"},
    {"2023-05-31", 36, "2026-05-31"},
    {"2025-01-15", -1, "2024-12-15"},
    {"2025-01-15", -13, "2023-12-15"},
    {"2025-12-31", 0, "2025-12-31"},
    {"2022-11", 42, "2026-05"},
    {"2022-06", 48, "2026-06"},
    {"2022-12", 1, "2023-01"},
    {"2022-12", 12, "2023-12"},
    {"2022-01", -1, "2021-12"},
    {"2021", 60, "2026"},
    {"2014", 144, "2026"},
    {"2021", 42, "2024"},
    {"2021", 11, "2021"},
    {"2021", -1, "2020"},
    {"2021", -12, "2020"},
    {"2021", 0, "2021"},
};

static void months_are_added_in_the_date_s_own_precision(void **state)
{
    (void)state;
    for (size_t i = 0; i < sizeof additions / sizeof additions[0]; i++)
        expect_date(date_add_months(date_of(additions[i].from), additions[i].months),
                    additions[i].to);
}

/* Adding twice may lose days that adding once keeps. */
static void the_first_date_is_the_anchor(void **state)
{
    (void)state;
    struct date start = date_of("2025-01-31");
    expect_date(date_add_months(date_add_months(start, 1), 1), "2025-03-28");
    expect_date(date_add_months(start, 2), "2025-03-31");
}

static const struct {
    const char *mark, *end, *start;
} marks[] = {
    {"2026-02", "2026-02-28", "2026-02-01"},
    {"2028-02", "2028-02-29", "2028-02-01"},
    {"2027-05", "2027-05-31", "2027-05-01"},
    {"2026-12", "2026-12-31", "2026-12-01"},
    {"2100-02", "2100-02-28", "2100-02-01"},
    {"2027-05-17", "2027-05-17", "2027-05-17"},
};

static void a_month_holds_to_its_end_or_only_to_its_start(void **state)
{
    (void)state;
    for (size_t i = 0; i < sizeof marks / sizeof marks[0]; i++) {
        struct date mark = date_of(marks[i].mark);
        expect_date(date_last_valid_day(mark, MONTH_MEANS_END, YEAR_MEANS_FIRST_DAY),
                    marks[i].end);
        expect_date(date_last_valid_day(mark, MONTH_MEANS_UNSAID, YEAR_MEANS_FIRST_DAY),
                    marks[i].end);
        expect_date(date_last_valid_day(mark, MONTH_MEANS_START, YEAR_MEANS_LAST_DAY),
                    marks[i].start);
    }
}

static void a_year_holds_to_its_first_day_or_its_last(void **state)
{
    (void)state;
    struct date mark = date_of("2026");
    expect_date(date_last_valid_day(mark, MONTH_MEANS_END, YEAR_MEANS_FIRST_DAY), "2026-01-01");
    expect_date(date_last_valid_day(mark, MONTH_MEANS_START, YEAR_MEANS_LAST_DAY), "2026-12-31");
    assert_int_equal(YEAR_MEANS_FIRST_DAY, 0);
}

/* The month is added first, its end taken after: the other way round loses a day. */
static void the_month_s_end_is_taken_after_adding(void **state)
{
    (void)state;
    struct date made = date_of("2022-11");
    expect_date(date_last_day(date_add_months(made, 42)), "2026-05-31");
    expect_date(date_add_months(date_last_day(made), 42), "2026-05-30");
}

static void days_are_counted_from_one_date_to_the_other(void **state)
{
    (void)state;
    static const struct {
        const char *from, *to;
        int64_t days;
    } cases[] = {
        {"2026-06-13", "2026-06-20", 7},
        {"2026-06-20", "2026-06-13", -7},
        {"2028-02-26", "2028-03-04", 7},
        {"2027-02-26", "2027-03-04", 6},
        {"2026-12-31", "2027-01-01", 1},
        {"2026-01-01", "2026-01-01", 0},
        {"1900-02-28", "1900-03-01", 1},
        {"2000-02-28", "2000-03-01", 2},
        {"1970-01-01", "2000-01-01", 10957},
        {"2026-06", "2026-07-01", 1},
        {"2026", "2027-01-01", 1},
    };
    for (size_t i = 0; i < sizeof cases / sizeof cases[0]; i++)
        assert_int_equal(date_days_between(date_of(cases[i].from), date_of(cases[i].to)),
                         cases[i].days);
}

/* Each day of three centuries is the number of days its own counting says. */
static void days_agree_with_the_calendar(void **state)
{
    (void)state;
    struct date first = date_of("1900-01-01");
    for (int64_t days = 0; days < 109572; days++) {
        struct date day = date_from_seconds(INT64_C(-2208988800) + days * 86400);
        assert_int_equal(date_days_between(first, day), days);
    }
}

/* From every day of nine years, as many as 60 months either way. */
static void adding_keeps_the_month_and_never_leaves_it(void **state)
{
    (void)state;
    for (int64_t days = 0; days < 3288; days++) {
        struct date from = date_from_seconds(INT64_C(1672531200) + days * 86400);
        for (int months = -60; months <= 60; months++) {
            struct date to = date_add_months(from, months);
            struct date month = date_add_months((struct date){from.year, from.month, 0}, months);
            assert_int_equal(to.year * 12 + to.month, from.year * 12 + from.month + months);
            assert_true(date_compare(to, month) <= 0);
            assert_true(to.day <= from.day);
            assert_true(to.day == from.day || date_compare(to, month) == 0);
        }
    }
}

/* A later date never gives an earlier one, nor do more months. */
static void adding_is_monotone(void **state)
{
    (void)state;
    for (int64_t days = 0; days < 1461; days++) {
        struct date day = date_from_seconds(INT64_C(1672531200) + days * 86400);
        struct date next = date_from_seconds(INT64_C(1672531200) + (days + 1) * 86400);
        for (int months = -30; months <= 30; months++) {
            struct date to = date_add_months(day, months);
            assert_true(date_compare(to, date_add_months(next, months)) <= 0);
            assert_true(date_compare(to, date_add_months(day, months + 1)) < 0);
        }
    }
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(months_are_added_in_the_date_s_own_precision),
        TEST(the_first_date_is_the_anchor),
        TEST(a_month_holds_to_its_end_or_only_to_its_start),
        TEST(a_year_holds_to_its_first_day_or_its_last),
        TEST(the_month_s_end_is_taken_after_adding),
        TEST(days_are_counted_from_one_date_to_the_other),
        TEST(days_agree_with_the_calendar),
        TEST(adding_keeps_the_month_and_never_leaves_it),
        TEST(adding_is_monotone),
    };

    return cmocka_run_group_tests_name("date_months", tests, NULL, NULL) != 0;
}
