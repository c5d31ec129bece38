/* test_script_position.c - a position filled into the scripts of a call. */
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
    base.latitude.value = base.longitude.value = HEMISPHERE_BOTH;
    return 0;
}

static int tear_down(void **state)
{
    (void)state;
    arena_free(arena);
    return 0;
}

static const struct script *script_of(enum script_form form, const struct base_record *from)
{
    struct problems *problems = problems_new(arena);
    struct script_request request = {.form = form};
    const struct script *script = script_make(&request, &boat, from, arena, problems);
    assert_non_null(script);
    return script;
}

static const char *line_beginning(const struct script *script, const char *start)
{
    const char *text = script_text(script, arena);
    const char *line = strstr(text, start);
    assert_non_null(line);
    return arena_copy(arena, line, strcspn(line, "\n"));
}

static void blanks_and_hemispheres_are_filled(void **state)
{
    (void)state;
    static const struct position west = {-434725000, -54350000};
    static const enum script_form forms[] = {SCRIPT_MAYDAY, SCRIPT_PAN_PAN, SCRIPT_RELAY};
    const struct base_record *const bases[] = {&base, NULL};
    for (size_t i = 0; i < 3; i++)
        for (size_t k = 0; k < 2; k++) {
            const struct script *script = script_of(forms[i], bases[k]);
            const char *before = script_text(script, arena);
            const struct script *placed = script_placed(script, &west, arena);
            assert_string_equal(line_beginning(placed, "LAT "),
                                "LAT 43 DEGREES 28.35 MINUTES SOUTH");
            assert_string_equal(line_beginning(placed, "LONG "),
                                "LONG 005 DEGREES 26.10 MINUTES WEST "
                                "AT ____ (local time) LOCAL TIME");
            assert_int_equal(placed->count, script->count);
            assert_string_equal(script_text(script, arena), before);
        }
}

/* Rounded up to the next degree, in both halves of the line. */
static void degrees_and_minutes_are_of_one_rounding(void **state)
{
    (void)state;
    static const struct position near = {439999999, 1799999999};
    const struct script *placed = script_placed(script_of(SCRIPT_MAYDAY, &base), &near, arena);
    assert_string_equal(line_beginning(placed, "LAT "), "LAT 44 DEGREES 00.00 MINUTES NORTH");
    assert_non_null(strstr(line_beginning(placed, "LONG "), "LONG 180 DEGREES 00.00 MINUTES EAST"));
}

static void other_lines_stay(void **state)
{
    (void)state;
    static const struct position east = {434725000, 54350000};
    static const enum script_form forms[] = {SCRIPT_SECURITE, SCRIPT_DOWNGRADE, SCRIPT_CANCEL,
                                             SCRIPT_RECEIPT};
    for (size_t i = 0; i < 4; i++) {
        const struct script *script = script_of(forms[i], &base);
        assert_string_equal(script_text(script_placed(script, &east, arena), arena),
                            script_text(script, arena));
    }
    const struct script *script = script_of(SCRIPT_MAYDAY, &base);
    const char *text = script_text(script_placed(script, &east, arena), arena);
    const char *after = strstr(text, "\nPROBLEM ____ (nature)");
    assert_non_null(after);
    assert_string_equal(after, strstr(script_text(script, arena), "\nPROBLEM ____ (nature)"));
}

/* The time of a position, and that of an alert; by the clock that the script names. */
static void a_time_is_filled_in_where_one_is_said(void **state)
{
    (void)state;
    static const enum script_form timed[] = {SCRIPT_MAYDAY, SCRIPT_PAN_PAN, SCRIPT_RELAY,
                                             SCRIPT_CANCEL, SCRIPT_CANCEL_BEACON};
    static const struct clock clock = {.minutes = 60, .read = true};
    for (size_t known = 0; known < 2; known++) {
        base.clocks = &clock;
        base.clock_count = known;
        for (size_t i = 0; i < sizeof timed / sizeof *timed; i++) {
            const struct script *script = script_of(timed[i], &base);
            const char *text = script_text(script_timed(script, "1430", arena), arena);
            assert_non_null(strstr(text, known ? " 1430 UTC" : " 1430 LOCAL TIME"));
            assert_null(strstr(text, "time)"));
        }
    }
    const struct script *receipt = script_of(SCRIPT_RECEIPT, &base);
    assert_string_equal(script_text(script_timed(receipt, "1430", arena), arena),
                        script_text(receipt, arena));
}

#define CASE(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        CASE(blanks_and_hemispheres_are_filled),
        CASE(degrees_and_minutes_are_of_one_rounding),
        CASE(other_lines_stay),
        CASE(a_time_is_filled_in_where_one_is_said),
    };
    return cmocka_run_group_tests_name("script_position", tests, NULL, NULL) != 0;
}
