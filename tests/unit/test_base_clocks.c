/* test_base_clocks.c - the clocks of base.yaml against UTC, and what is told of those that are
 * wrong. */
#include "record_test.h"

#include "boat.h"

static bool sound;

static const struct base_record *base_with_clocks(const char *clocks)
{
    const char *text = text_format(test.arena,
                                   "base: {name: Quay, phone_24h: +44 20 7946 0000}\n"
                                   "rescue_centre: {name: Centre, channel: \"06\"}\n"
                                   "cruising_area: {latitude: north, longitude: east}\n"
                                   "clocks:\n%s", clocks);
    return base_read(file_of("base.yaml", text), test.arena, test.problems, &sound);
}

static void an_offset_is_read_in_hours_and_quarters(void **state)
{
    (void)state;
    static const struct { const char *text; int minutes; } rows[] = {
        {"+2", 120}, {"-3", -180}, {"0", 0}, {"+5:45", 345}, {"-3:30", -210}, {"+14", 840},
        {"-12", -720}, {"+00:00", 0}};
    for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
        const struct base_record *base = base_with_clocks(
            text_format(test.arena, "  - {offset: \"%s\"}\n", rows[i].text));
        expect_errors(0);
        assert_int_equal(base->clock_count, 1);
        assert_int_equal(base->clocks[0].minutes, rows[i].minutes);
    }
}

/* What is no offset gives no clock: a call then says local time. */
static void what_no_place_keeps_is_refused(void **state)
{
    (void)state;
    static const char *const wrong[] = {"2", "+", "+15", "-13", "+2:20", "+2:5", "+2:60", "UTC+2",
                                        "+2 h", "+2.5", "+123", "00", "+14:15", "+2:"};
    for (size_t i = 0; i < sizeof wrong / sizeof *wrong; i++) {
        test.problems = problems_new(test.arena);
        const struct base_record *base = base_with_clocks(
            text_format(test.arena, "  - {offset: \"%s\"}\n", wrong[i]));
        expect_errors(1);
        assert_false(sound);
        assert_int_equal(base->clock_count, 0);
    }
}

static void days_are_whole_and_do_not_overlap(void **state)
{
    (void)state;
    static const char *const wrong[] = {
        "  - {offset: +2, from: 2027-03-28}\n",
        "  - {offset: +2, to: 2027-03-28}\n",
        "  - {offset: +2, from: 2027-10-30, to: 2027-03-28}\n",
        "  - {offset: +2, from: 2027-03-28, to: 2027-10-30}\n"
        "  - {offset: +1, from: 2027-10-30, to: 2028-03-25}\n",
        "  - {offset: +2, from: 2027-03-28, to: 2027-10-30}\n  - {offset: +1}\n"};
    for (size_t i = 0; i < sizeof wrong / sizeof *wrong; i++) {
        test.problems = problems_new(test.arena);
        base_with_clocks(wrong[i]);
        expect_errors(1);
    }
}

static void the_clock_of_a_day_is_the_one_that_holds(void **state)
{
    (void)state;
    const struct base_record *base = base_with_clocks(
        "  - {offset: +2, from: 2027-03-28, to: 2027-10-30}\n"
        "  - {offset: +1, from: 2027-10-31, to: 2028-03-25}\n");
    expect_errors(0);
    assert_int_equal(base_clock_on(base, (struct date){2027, 3, 28})->minutes, 120);
    assert_int_equal(base_clock_on(base, (struct date){2027, 10, 30})->minutes, 120);
    assert_int_equal(base_clock_on(base, (struct date){2027, 10, 31})->minutes, 60);
    assert_null(base_clock_on(base, (struct date){2027, 3, 27}));
    assert_null(base_clock_on(base, (struct date){2028, 3, 26}));
    base = base_with_clocks("  - {offset: +2}\n");
    assert_int_equal(base_clock_on(base, (struct date){1999, 1, 1})->minutes, 120);
    assert_null(base_clock_on(NULL, (struct date){2027, 3, 28}));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(an_offset_is_read_in_hours_and_quarters),
        TEST(what_no_place_keeps_is_refused),
        TEST(days_are_whole_and_do_not_overlap),
        TEST(the_clock_of_a_day_is_the_one_that_holds),
    };
    return cmocka_run_group_tests_name("base_clocks", tests, NULL, NULL) != 0;
}
