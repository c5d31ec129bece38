/* test_charter.c - whether gear lasts through a charter. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <limits.h>
#include <cmocka.h>

#include "gear_date.h"

static struct date date_of(const char *string)
{
    struct date date = {0};
    assert_true(date_parse(string, &date));
    return date;
}

static enum charter_outcome outcome_of(const char *last, const char *start, const char *end,
                                       int margin_days)
{
    struct gear_date date = {.known = last != NULL};
    struct charter charter = {date_of(start), date_of(end), margin_days};
    if (last != NULL)
        date.last = date_of(last);
    return charter_outcome(&date, &charter);
}

/* A charter and its edges. */
static const struct {
    const char *last, *start, *end;
    int margin_days;
    enum charter_outcome outcome;
} cases[] = {
    {"2026-06-20", "2026-06-13", "2026-06-20", 0, CHARTER_OK},
    {"2026-06-19", "2026-06-13", "2026-06-20", 0, CHARTER_EXPIRES_DURING},
    {"2026-06-12", "2026-06-13", "2026-06-20", 0, CHARTER_EXPIRED},
    {"2026-06-25", "2026-06-13", "2026-06-20", 7, CHARTER_OK_INSIDE_MARGIN},
    {"2026-06-30", "2026-06-27", "2026-07-04", 0, CHARTER_EXPIRES_DURING},
    {"2028-02-29", "2028-02-26", "2028-03-04", 0, CHARTER_EXPIRES_DURING},
    {"2026-07-01", "2026-07-04", "2026-06-27", 0, CHARTER_DATES_WRONG},
    {"2026-06-13", "2026-06-13", "2026-06-20", 0, CHARTER_EXPIRES_DURING},
    {"2026-06-27", "2026-06-13", "2026-06-20", 7, CHARTER_OK},
    {"2026-06-26", "2026-06-13", "2026-06-20", 7, CHARTER_OK_INSIDE_MARGIN},
    {"2026-06-20", "2026-06-13", "2026-06-20", 1, CHARTER_OK_INSIDE_MARGIN},
    {"2026-06-20", "2026-06-13", "2026-06-20", -5, CHARTER_OK},
    {"2199-12-31", "2026-06-13", "2026-06-20", INT_MAX, CHARTER_OK_INSIDE_MARGIN},
    {"2026-06-20", "2026-06-20", "2026-06-20", 0, CHARTER_OK},
    {"2026-06-19", "2026-06-20", "2026-06-20", 0, CHARTER_EXPIRED},
    {"2027-01-03", "2026-12-26", "2027-01-02", 1, CHARTER_OK},
    {NULL, "2026-06-13", "2026-06-20", 0, CHARTER_NOT_KNOWN},
    {NULL, "2026-06-20", "2026-06-13", 0, CHARTER_DATES_WRONG},
};

static void each_outcome_follows_from_the_last_valid_day(void **state)
{
    (void)state;
    for (size_t i = 0; i < sizeof cases / sizeof cases[0]; i++)
        assert_int_equal(outcome_of(cases[i].last, cases[i].start, cases[i].end,
                                    cases[i].margin_days), cases[i].outcome);
}

/* As the last day moves on, the outcome only gets better; each of the four is met. */
static void a_later_last_day_is_never_worse(void **state)
{
    (void)state;
    static const enum charter_outcome rising[] = {
        CHARTER_EXPIRED, CHARTER_EXPIRES_DURING, CHARTER_OK_INSIDE_MARGIN, CHARTER_OK};
    for (int length = 0; length < 30; length++) {
        for (int margin = 0; margin < 20; margin++) {
            struct charter charter = {.start = date_of("2028-02-20"), .margin_days = margin};
            charter.end = date_from_seconds(INT64_C(1834617600) + (int64_t)length * 86400);
            size_t stage = 0;
            for (int64_t day = -5; day < 60; day++) {
                struct gear_date date = {.known = true};
                date.last = date_from_seconds(INT64_C(1834617600) + day * 86400);
                enum charter_outcome outcome = charter_outcome(&date, &charter);
                while (stage < 4 && rising[stage] != outcome)
                    stage++;
                assert_true(stage < 4);
                bool good = day >= length;
                assert_int_equal(outcome == CHARTER_EXPIRED, day < 0);
                assert_int_equal(outcome == CHARTER_OK || outcome == CHARTER_OK_INSIDE_MARGIN,
                                 good);
                assert_int_equal(outcome == CHARTER_OK, day >= length + margin);
            }
            assert_int_equal(stage, 3);
        }
    }
}

static void what_fails_depends_on_the_need_only_where_nothing_is_known(void **state)
{
    (void)state;
    struct gear_rule needed = {.needed = true};
    struct gear_rule other = {.needed = false};
    static const struct {
        enum charter_outcome outcome;
        bool needed, other;
    } judged[] = {
        {CHARTER_EXPIRED, true, true},
        {CHARTER_EXPIRES_DURING, true, true},
        {CHARTER_DATES_WRONG, true, true},
        {CHARTER_NOT_KNOWN, true, false},
        {CHARTER_OK, false, false},
        {CHARTER_OK_INSIDE_MARGIN, false, false},
    };
    for (size_t i = 0; i < sizeof judged / sizeof judged[0]; i++) {
        assert_int_equal(charter_outcome_fails(judged[i].outcome, &needed), judged[i].needed);
        assert_int_equal(charter_outcome_fails(judged[i].outcome, &other), judged[i].other);
    }
}

static void a_part_of_a_day_of_margin_is_a_day(void **state)
{
    (void)state;
    struct base_record base = {0};
    assert_int_equal(charter_margin_days(NULL), 0);
    assert_int_equal(charter_margin_days(&base), 0);
    base.margin_days.milli = 14000;
    assert_int_equal(charter_margin_days(&base), 14);
    base.margin_days.milli = 14001;
    assert_int_equal(charter_margin_days(&base), 15);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(each_outcome_follows_from_the_last_valid_day),
        cmocka_unit_test(a_later_last_day_is_never_worse),
        cmocka_unit_test(what_fails_depends_on_the_need_only_where_nothing_is_known),
        cmocka_unit_test(a_part_of_a_day_of_margin_is_a_day),
    };

    return cmocka_run_group_tests_name("charter", tests, NULL, NULL) != 0;
}
