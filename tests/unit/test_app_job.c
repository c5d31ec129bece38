/* test_app_job.c - boats by kinds, languages and papers: which parts there are, how far each
 * step goes alone, and that what fails of one boat is hers alone. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include <stdio.h>
#include <string.h>
#include <unistd.h>

#include "app/job.h"
#include "app_case.h"
#include "fleet_case.h"

enum { BOATS = 3, CALLS_MOST = 64 };

static struct fleet_case made;

/* What a run was told, in order. */
struct seen {
    size_t begun, ended, called;
    struct job_part parts[CALLS_MOST];
    const char *boats[CALLS_MOST];
    size_t parts_made[BOATS];
    bool sound[BOATS], read[BOATS];
};
static struct seen seen;

static int set_up(void **state)
{
    (void)state;
    seen = (struct seen){0};
    fleet_case_begin(&made);
    return 0;
}

static int tear_down(void **state)
{
    (void)state;
    fleet_case_end(&made);
    return 0;
}

static void boat_begun(void *run, struct boat_job *boat)
{
    assert_ptr_equal(run, &seen);
    assert_null(boat->boat);
    seen.begun++;
}

static void part_seen(void *run, struct sheets *sheets)
{
    assert_ptr_equal(run, &seen);
    assert_non_null(sheets->set);
    assert_true(seen.called < CALLS_MOST);
    seen.parts[seen.called] = sheets->part;
    seen.boats[seen.called++] = sheets->boat->key;
}

static void boat_ended(void *run, struct boat_job *boat)
{
    assert_ptr_equal(run, &seen);
    seen.read[boat->index] = boat->boat != NULL;
    seen.sound[boat->index] = boat->sound;
    seen.parts_made[boat->index] = boat->parts_made;
    seen.ended++;
}

static void run_to(const struct job *job, enum job_step last)
{
    const struct job_use use = {.last = last, .begin = boat_begun, .sheets = part_seen,
                                .end = boat_ended};
    job_run(job, &use, &seen);
}

static void base_run(enum job_step last)
{
    assert_true(fleet_case_open(&made));
    struct job job = job_of(&made.options, &made.fleet);
    run_to(&job, last);
}

static size_t told_of(size_t boat, enum severity severity)
{
    return problems_count(made.fleet.boats[boat].problems, severity);
}

/* ---- which parts there are ---- */

static void each_part_comes_once_in_order(void **state)
{
    const struct job job = {.kind_count = 2, .languages = {.count = 3}, .paper_count = 2};
    size_t index = 0;
    (void)state;
    assert_int_equal(job_part_count(&job), 12);
    for (size_t kind = 0; kind < 2; kind++)
        for (size_t language = 0; language < 3; language++)
            for (size_t paper = 0; paper < 2; paper++) {
                struct job_part part = job_part_at(&job, index++);
                assert_true(part.kind == kind && part.language == language &&
                            part.paper == paper);
            }
}

static void without_a_language_there_is_no_part(void **state)
{
    const struct job job = {.kind_count = 2, .paper_count = 2};
    (void)state;
    assert_int_equal(job_part_count(&job), 0);
}

static void every_boat_has_every_part(void **state)
{
    (void)state;
    assert_true(fleet_case_open(&made));
    struct job job = job_of(&made.options, &made.fleet);
    const struct words *const twice[] = {job.languages.rows[0], job.languages.rows[0]};
    job.languages = (struct languages){twice, 2};
    job.papers[0] = *paper_of(PAPER_LETTER);
    job.papers[1] = *paper_of(PAPER_A4);
    job.paper_count = 2;
    run_to(&job, STEP_COMPOSE);
    assert_int_equal(seen.called, BOATS * 4);
    for (size_t i = 0; i < seen.called; i++) {
        struct job_part wanted = job_part_at(&job, i % 4);
        assert_true(memcmp(&seen.parts[i], &wanted, sizeof wanted) == 0);
        assert_string_equal(seen.boats[i], made.fleet.boats[i / 4].key);
    }
    for (size_t i = 0; i < BOATS; i++)
        assert_int_equal(seen.parts_made[i], 4);
}

/* ---- one that fails ---- */

/* The boat of that index has no sheets, and errors of her own; the others have all. */
static void expect_alone(size_t bad)
{
    assert_int_equal(seen.begun, BOATS);
    assert_int_equal(seen.ended, BOATS);
    assert_int_equal(seen.called, BOATS - 1);
    for (size_t i = 0; i < BOATS; i++) {
        assert_int_equal(seen.sound[i], i != bad);
        assert_int_equal(seen.parts_made[i], i != bad ? 1 : 0);
        assert_int_equal(told_of(i, SEVERITY_ERROR) > 0, i == bad);
    }
    assert_false(problems_reach(made.fleet.problems, SEVERITY_HELD));
    assert_int_equal(status_of(fleet_problems(&made.fleet), SEVERITY_HELD), EXIT_FOUND);
}

static void a_sound_fleet_is_good(void **state)
{
    (void)state;
    base_run(STEP_COMPOSE);
    assert_int_equal(seen.called, BOATS);
    assert_int_equal(status_of(fleet_problems(&made.fleet), SEVERITY_HELD), EXIT_GOOD);
}

static void broken_files_stop_no_other(void **state)
{
    static const char *const boats[] = {"alder", "birch", "cedar"};
    (void)state;
    for (size_t bad = 0; bad < BOATS; bad++) {
        fleet_case_end(&made);
        set_up(state);
        fleet_case_change(&made, boats[bad], "boat: {", "boat: [{");
        base_run(STEP_COMPOSE);
        expect_alone(bad);
        assert_false(seen.read[bad]);
    }
}

static void a_wrong_record_is_read_and_stops_no_other(void **state)
{
    (void)state;
    fleet_case_change(&made, "birch", "loa_m: 10.2", "loa_m: wide");
    base_run(STEP_COMPOSE);
    expect_alone(1);
    assert_true(seen.read[1]);
}

static void an_absent_file_stops_no_other(void **state)
{
    const char *path = text_format(made.arena, "%s/boats/birch.yaml", made.folder);
    (void)state;
    assert_int_equal(remove(path), 0);
    assert_int_equal(symlink("nowhere", path), 0);
    base_run(STEP_COMPOSE);
    expect_alone(1);
    assert_false(seen.read[1]);
}

/* Her own list outlives her, with the lines of her file. */
static void problems_are_kept_with_their_lines(void **state)
{
    size_t count;
    (void)state;
    fleet_case_change(&made, "birch", "loa_m: 10.2", "loa_m: wide");
    base_run(STEP_COMPOSE);
    const struct problem *list = problems_sorted(made.fleet.boats[1].problems, &count);
    while (count > 0 && strcmp(list->check, "record") != 0)
        list++, count--;                           /* notes on what else is lacking */
    assert_true(count > 0);
    assert_string_equal(list->boat, "birch");
    assert_int_equal(list->place.line, 2);
    assert_non_null(strstr(list->place.source->name, "boats/birch.yaml"));
    assert_non_null(list->remedy);
}

static void an_identity_on_two_boats_holds_both(void **state)
{
    (void)state;
    fleet_case_change(&made, "cedar", "QALD6", "QALD4");
    base_run(STEP_COMPOSE);
    assert_int_equal(seen.called, 1);
    assert_string_equal(seen.boats[0], "birch");
    assert_true(told_of(0, SEVERITY_ERROR) > 0 && told_of(2, SEVERITY_ERROR) > 0);
}

/* Also where the other was not asked for. */
static void an_identity_of_another_boat_holds_her(void **state)
{
    (void)state;
    fleet_case_change(&made, "cedar", "QALD6", "QALD4");
    names_add(&made.options.boats, "cedar", made.arena);
    base_run(STEP_COMPOSE);
    assert_int_equal(seen.begun, 1);
    assert_int_equal(seen.called, 0);
    assert_true(told_of(0, SEVERITY_ERROR) > 0);
}

/* ---- a card that is asked for ---- */

static void a_card_that_no_boat_has_is_told_of_each(void **state)
{
    (void)state;
    names_add(&made.options.cards, "no_such_card", made.arena);
    base_run(STEP_COMPOSE);
    assert_int_equal(seen.called, BOATS);
    for (size_t i = 0; i < BOATS; i++)
        assert_int_equal(told_of(i, SEVERITY_USE), 1);
    /* the same words of each: printed once */
    assert_int_equal(problems_count(fleet_problems(&made.fleet), SEVERITY_USE), 1);
    assert_int_equal(status_of(fleet_problems(&made.fleet), SEVERITY_HELD), EXIT_USE);
}

/* ---- each step alone ---- */

static void opening_judges_nothing(void **state)
{
    (void)state;
    fleet_case_change(&made, "cedar", "QALD6", "QALD4");
    base_run(STEP_OPEN);
    assert_int_equal(seen.ended, BOATS);
    assert_int_equal(seen.called, 0);
    for (size_t i = 0; i < BOATS; i++) {
        assert_true(seen.read[i] && seen.sound[i]);
        assert_int_equal(told_of(i, SEVERITY_ERROR), 0);
    }
}

static void judging_composes_nothing(void **state)
{
    (void)state;
    fleet_case_change(&made, "cedar", "QALD6", "QALD4");
    base_run(STEP_JUDGE);
    assert_int_equal(seen.called, 0);
    assert_false(seen.sound[0]);
    assert_true(seen.sound[1]);
    assert_true(told_of(2, SEVERITY_ERROR) > 0);
}

static void steps_are_called_one_by_one(void **state)
{
    (void)state;
    assert_true(fleet_case_open(&made));
    struct job job = job_of(&made.options, &made.fleet);
    struct boat_job boat = boat_begin(&job, 1);
    assert_string_equal(boat.key, "birch");
    boat_open(&boat);
    assert_non_null(boat.boat);
    boat_judge(&boat);
    assert_true(boat.sound);
    struct sheets sheets = sheets_compose(&boat, job_part_at(&job, 0));
    assert_true(sheets.set->count > 0);
    assert_null(sheets.pages);
    assert_int_equal(problems_count(boat.problems, SEVERITY_USE), 0);
    sheets_tell(&sheets);
    assert_true(sheets.asked_exist);
    boat_close(&boat);
    assert_null(boat.arena);
    assert_string_equal(boat.key, "birch");
}

/* A base with errors gives no sheets, and all boats are looked at. */
static void a_wrong_base_holds_sheets_but_no_looking(void **state)
{
    (void)state;
    case_file_make(made.folder, "base.yaml", "base: {name: [}\n");
    fleet_case_change(&made, "birch", "loa_m: 10.2", "loa_m: wide");
    base_run(STEP_PROVE);
    assert_false(made.fleet.ready);
    assert_int_equal(seen.ended, BOATS);
    assert_int_equal(seen.called, 0);
    assert_true(told_of(1, SEVERITY_ERROR) > 0);
    assert_int_equal(told_of(0, SEVERITY_ERROR), 0);
}

static void wrong_use_opens_nothing(void **state)
{
    (void)state;
    names_add(&made.options.boats, "alder", made.arena);
    names_add(&made.options.boats, "elm", made.arena);
    assert_false(fleet_case_open(&made));
    assert_int_equal(status_of(fleet_problems(&made.fleet), SEVERITY_HELD), EXIT_USE);
}

#define TEST(name) cmocka_unit_test_setup_teardown(name, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(each_part_comes_once_in_order), TEST(without_a_language_there_is_no_part),
        TEST(every_boat_has_every_part), TEST(a_sound_fleet_is_good),
        TEST(broken_files_stop_no_other), TEST(a_wrong_record_is_read_and_stops_no_other),
        TEST(an_absent_file_stops_no_other), TEST(problems_are_kept_with_their_lines),
        TEST(an_identity_on_two_boats_holds_both), TEST(an_identity_of_another_boat_holds_her),
        TEST(a_card_that_no_boat_has_is_told_of_each), TEST(opening_judges_nothing),
        TEST(judging_composes_nothing), TEST(steps_are_called_one_by_one),
        TEST(a_wrong_base_holds_sheets_but_no_looking), TEST(wrong_use_opens_nothing),
    };
    return cmocka_run_group_tests_name("app job", tests, NULL, NULL) != 0;
}
