/* test_app_report.c - the exit status that problems ask for, and what is printed of them. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include <string.h>

#include "app/fleet.h"
#include "app_case.h"

static struct fleet fleet;
static struct boat_asked boats[2];

static int set_up(void **state)
{
    (void)state;
    fleet = (struct fleet){.arena = arena_new((size_t)4 * 1024 * 1024), .boats = boats,
                           .boat_count = 2};
    fleet.problems = problems_new(fleet.arena);
    fleet.base_problems = problems_new(fleet.arena);
    boats[0] = (struct boat_asked){.key = "alder", .problems = problems_new(fleet.arena)};
    boats[1] = (struct boat_asked){.key = "birch", .problems = problems_new(fleet.arena)};
    for (size_t i = 0; i < 2; i++)
        problems_about(boats[i].problems, boats[i].key, "run");
    return 0;
}

static int tear_down(void **state)
{
    (void)state;
    arena_free(fleet.arena);
    return 0;
}

static void tell(struct problems *problems, enum severity severity, const char *what)
{
    problem_add(problems, severity, (struct place){0}, "mend it", "%s", what);
}

static enum exit_status status_with(enum severity severity, enum severity least)
{
    struct problems *problems = problems_new(fleet.arena);
    tell(problems, severity, "one");
    return status_of(problems, least);
}

static void the_worst_decides_the_status(void **state)
{
    (void)state;
    assert_int_equal(status_of(fleet.problems, SEVERITY_NOTE), EXIT_GOOD);
    assert_int_equal(status_with(SEVERITY_SILENCED, SEVERITY_DEFICIENCY), EXIT_GOOD);
    assert_int_equal(status_with(SEVERITY_NOTE, SEVERITY_DEFICIENCY), EXIT_GOOD);
    assert_int_equal(status_with(SEVERITY_DEFICIENCY, SEVERITY_DEFICIENCY), EXIT_FOUND);
    assert_int_equal(status_with(SEVERITY_DEFICIENCY, SEVERITY_HELD), EXIT_GOOD);
    assert_int_equal(status_with(SEVERITY_HELD, SEVERITY_HELD), EXIT_FOUND);
    assert_int_equal(status_with(SEVERITY_ERROR, SEVERITY_HELD), EXIT_FOUND);
    assert_int_equal(status_with(SEVERITY_USE, SEVERITY_HELD), EXIT_USE);
    assert_int_equal(status_with(SEVERITY_FAILURE, SEVERITY_HELD), EXIT_SYSTEM);
}

static void failure_goes_before_wrong_use(void **state)
{
    (void)state;
    tell(boats[0].problems, SEVERITY_FAILURE, "the disk is full");
    tell(fleet.problems, SEVERITY_USE, "no such boat");
    assert_int_equal(status_of(fleet_problems(&fleet), SEVERITY_HELD), EXIT_SYSTEM);
}

static const char *printed(enum exit_status (*telling)(const struct fleet *fleet),
                           enum exit_status wanted)
{
    case_catch_begin();
    enum exit_status status = telling(&fleet);
    const char *out = case_catch_end(fleet.arena);
    assert_int_equal(status, wanted);
    return out;
}

static enum exit_status report_all(const struct fleet *all)
{
    return report(all, SEVERITY_DEFICIENCY);
}

/* Of every boat and of the run; what two boats have alike once. */
static void all_is_told_once(void **state)
{
    (void)state;
    tell(fleet.problems, SEVERITY_NOTE, "of the run");
    tell(boats[0].problems, SEVERITY_ERROR, "of both");
    tell(boats[1].problems, SEVERITY_ERROR, "of both");
    tell(boats[1].problems, SEVERITY_NOTE, "of birch");
    assert_string_equal(printed(report_all, EXIT_FOUND),
                        "maydeck: error: of both\n  remedy: mend it\n"
                        "maydeck: note: of the run\n  remedy: mend it\n"
                        "maydeck: note: of birch\n  remedy: mend it\n");
    assert_int_equal(problems_count(boats[1].problems, SEVERITY_ERROR), 1);
}

/* The first check of the table that is no family. */
static const char *some_check(void)
{
    size_t index = 0;
    while (check_at(index)->family)
        index++;
    return check_at(index)->id;
}

/* What a check finds short of an error is for `check` to tell, and only counted. */
static void cards_hide_what_check_tells(void **state)
{
    (void)state;
    problem_add_check(boats[0].problems, some_check(), SEVERITY_DEFICIENCY, (struct place){0},
                      NULL, "few");
    tell(boats[0].problems, SEVERITY_HELD, "a card is held");
    assert_string_equal(printed(report_of_cards, EXIT_FOUND),
                        "maydeck: held: a card is held\n  remedy: mend it\n");
    case_catch_begin();
    report_left_for_check(&fleet);
    assert_string_equal(case_catch_end(fleet.arena),
                        "alder: `maydeck check` tells of 1 deficiency\n");
}

/* Of the run alone, and not what was found in the base's record. */
static void the_run_alone_is_told(void **state)
{
    (void)state;
    tell(fleet.problems, SEVERITY_DEFICIENCY, "a file is not read");
    tell(fleet.base_problems, SEVERITY_ERROR, "of the base");
    tell(boats[0].problems, SEVERITY_ERROR, "of alder");
    assert_string_equal(printed(report_of_run, EXIT_GOOD),
                        "maydeck: deficiency: a file is not read\n  remedy: mend it\n");
}

#define TEST(name) cmocka_unit_test_setup_teardown(name, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(the_worst_decides_the_status), TEST(failure_goes_before_wrong_use),
        TEST(all_is_told_once), TEST(cards_hide_what_check_tells), TEST(the_run_alone_is_told),
    };
    return cmocka_run_group_tests_name("app report", tests, NULL, NULL) != 0;
}
