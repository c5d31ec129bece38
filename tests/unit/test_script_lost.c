/* test_script_lost.c - what a call for a person in the water adds to a MAYDAY. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include <string.h>

#include "problem.h"
#include "radio.h"
#include "text.h"

static struct arena *arena;
static struct boat boat;
static struct base_record base;

static int set_up(void **state)
{
    (void)state;
    arena = arena_new((size_t)1 << 22);
    boat = (struct boat){.key = "tamarisk"};
    boat.facts.name.text = "Tamarisk";
    boat.radio.call_sign.text = "QTAB2";
    base = (struct base_record){.source = NULL};
    base.latitude.value = base.longitude.value = HEMISPHERE_UP;
    return 0;
}

static int tear_down(void **state)
{
    (void)state;
    arena_free(arena);
    return 0;
}

static const struct script *script_of(const struct script_request *request)
{
    struct problems *problems = problems_new(arena);
    const struct script *script = script_make(request, &boat, &base, arena, problems);
    assert_non_null(script);
    assert_false(problems_reach(problems, SEVERITY_NOTE));
    return script;
}

static const struct script_request lost = {.form = SCRIPT_MAYDAY, .person_lost = true,
                                           .nature = "I HAVE LOST PERSON OVERBOARD"};

#define LOST_LINES \
    "I HAVE LOST PERSON OVERBOARD. I REQUIRE IMMEDIATE ASSISTANCE.\n" \
    "____ (persons in the water) IN THE WATER, ____ (persons) ON BOARD, FELL AT " \
    "____ (time of the fall) LOCAL TIME.\nOVER\n"

static void those_in_the_water_and_on_board_are_counted_apart(void **state)
{
    (void)state;
    const char *text = script_text(script_of(&lost), arena);
    const char *from = strstr(text, "I HAVE LOST");
    assert_non_null(from);
    assert_string_equal(from, LOST_LINES);
}

/* What is known of the boat ends the call as in any other. */
static void the_boat_is_described_behind_them(void **state)
{
    (void)state;
    boat.facts.looks.text = "White sailing yacht";
    const char *text = script_text(script_of(&lost), arena);
    assert_non_null(strstr(text, "LOCAL TIME.\nWHITE SAILING YACHT. OVER\n"));
    assert_null(strstr(text, "PERSONS ON BOARD"));
}

/* Where the base records what UTC is to the clock on board, the fall is told in UTC. */
static void clocks_that_are_known_tell_utc(void **state)
{
    (void)state;
    base.clock_count = 1;
    assert_non_null(strstr(script_text(script_of(&lost), arena), "(time of the fall) UTC."));
}

/* The time of the fall is not that of the position, which a rehearsal may fill in. */
static void a_filled_in_position_leaves_the_fall_open(void **state)
{
    (void)state;
    static const struct position east = {434725000, 54350000};
    const char *text = script_text(script_placed(script_of(&lost), &east, arena), arena);
    assert_non_null(strstr(text, "FELL AT ____ (time of the fall) LOCAL TIME."));
    assert_null(strstr(text, "(latitude degrees)"));
}

static void other_calls_count_all_on_board(void **state)
{
    (void)state;
    struct script_request request = {.form = SCRIPT_MAYDAY, .nature = "I AM ON FIRE"};
    const char *text = script_text(script_of(&request), arena);
    assert_non_null(strstr(text, "____ (persons) PERSONS ON BOARD. OVER\n"));
    assert_null(strstr(text, "IN THE WATER"));
}

#define CASE(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        CASE(those_in_the_water_and_on_board_are_counted_apart),
        CASE(the_boat_is_described_behind_them),
        CASE(clocks_that_are_known_tell_utc),
        CASE(a_filled_in_position_leaves_the_fall_open),
        CASE(other_calls_count_all_on_board),
    };
    return cmocka_run_group_tests_name("script_lost", tests, NULL, NULL) != 0;
}
