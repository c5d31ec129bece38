/* test_script_undo.c - what answers and relays another's distress, what ends one's own, and by
 * which clock a time is said. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "arena.h"
#include "problem.h"
#include "radio.h"
#include "text.h"

static struct arena *arena;
static struct problems *problems;
static struct boat boat;
static struct base_record base;

static const struct clock clocks[] = {{.minutes = 120, .read = true}};

/* The specimen boat, fully recorded, in one quarter of the world. */
static int set_up(void **state) {
    (void)state;
    arena = arena_new((size_t)1 << 22);
    problems = problems_new(arena);
    boat = (struct boat){.key = "tamarisk"};
    boat.facts.name.text = "Tamarisk";
    boat.facts.specimen.answer = ANSWER_YES;
    boat.facts.looks.text = "White sailing yacht";
    boat.facts.loa_m = (struct number_value){.milli = 12600, .text = "12.6", .given = true};
    boat.radio.call_sign.text = "QTAB2";
    boat.radio.mmsi.text = "200014730";
    boat.radio.dsc.answer = ANSWER_YES;
    boat.radio.mmsi_programmed.answer = ANSWER_YES;
    base = (struct base_record){.name.text = "base"};
    base.latitude.value = HEMISPHERE_UP;
    base.longitude.value = HEMISPHERE_UP;
    base.clocks = clocks;
    base.clock_count = 1;
    return 0;
}

static int tear_down(void **state) {
    (void)state;
    arena_free(arena);
    return 0;
}

static const struct script *made(struct script_request request) {
    const struct script *script = script_make(&request, &boat, &base, arena, problems);
    assert_non_null(script);
    assert_false(problems_reach(problems, SEVERITY_NOTE));
    return script;
}

static const char *said(struct script_request request) {
    return script_text(made(request), arena);
}

#define POSITION_TEXT \
    "LAT ____ (latitude degrees) DEGREES ____ (latitude minutes) MINUTES NORTH\n" \
    "LONG ____ (longitude degrees) DEGREES ____ (longitude minutes) MINUTES EAST AT " \
    "____ (time UTC) UTC\n"
/* One's own nature, asked for by mistake, must not be said of another vessel. */
static const char *relay_to(const char *called) {
    return text_format(arena,
        "MAYDAY RELAY, MAYDAY RELAY, MAYDAY RELAY\n"
        "%s, %s, %s\n"
        "THIS IS TAMARISK, TAMARISK, TAMARISK\n"
        "CALL SIGN QUEBEC TANGO ALFA BRAVO TWO · MMSI 200 014 730\n"
        "MAYDAY THEIR NAME ____ (name or description of the vessel in distress)\n"
        "THEIR POSITION " POSITION_TEXT
        "THEIR PROBLEM ____ (nature)\n"
        "____ (persons) PERSONS ON BOARD. OVER\n", called, called, called);
}

/* The coastguard by its name, once that is recorded. */
static void a_relay_is_about_another(void **state) {
    (void)state;
    struct script_request request = {.form = SCRIPT_RELAY, .nature = "I AM ON FIRE"};
    assert_string_equal(said(request), relay_to("ALL STATIONS"));
    base.centre_call.text = "Skerry Coastguard";
    assert_string_equal(said(request), relay_to("SKERRY COASTGUARD"));
    assert_null(strstr(said((struct script_request){.form = SCRIPT_MAYDAY}), "SKERRY"));
    assert_null(strstr(said((struct script_request){.form = SCRIPT_PAN_PAN}), "SKERRY"));
}

static void a_receipt_is_exact(void **state) {
    (void)state;
    assert_string_equal(said((struct script_request){.form = SCRIPT_RECEIPT}),
        "MAYDAY ____ (their name and call sign)\n"
        "THIS IS TAMARISK\n"
        "CALL SIGN QUEBEC TANGO ALFA BRAVO TWO\n"
        "RECEIVED MAYDAY\n");
}

/* What has ended is said before OVER: nobody listens after it. */
static void a_downgrade_is_exact(void **state) {
    (void)state;
    assert_string_equal(
        said((struct script_request){.form = SCRIPT_DOWNGRADE, .nature = "I AM ON FIRE"}),
        "MAYDAY\n"
        "ALL STATIONS, ALL STATIONS, ALL STATIONS\n"
        "THIS IS TAMARISK, TAMARISK, TAMARISK\n"
        "CALL SIGN QUEBEC TANGO ALFA BRAVO TWO\n"
        "DANGER IS OVER ____ (what has ended)\n"
        "I NO LONGER REQUIRE IMMEDIATE ASSISTANCE. OVER\n");
}

static void a_cancel_is_exact(void **state) {
    (void)state;
    assert_string_equal(said((struct script_request){.form = SCRIPT_CANCEL}),
        "ALL STATIONS, ALL STATIONS, ALL STATIONS\n"
        "THIS IS TAMARISK, TAMARISK, TAMARISK\n"
        "CALL SIGN QUEBEC TANGO ALFA BRAVO TWO · MMSI 200 014 730\n"
        "PLEASE CANCEL MY DISTRESS ALERT OF ____ (time UTC) UTC OVER\n");
}

/* ---- a beacon that went off by mistake ---- */

static struct equipment beacons[2];

static const char *beacon_line(void) {
    const char *text = said((struct script_request){.form = SCRIPT_CANCEL_BEACON});
    const char *line = strstr(text, "MY ");
    assert_non_null(line);
    return arena_copy(arena, line, strcspn(line, "\n"));
}

static void a_beacon_s_false_alert_is_exact(void **state) {
    (void)state;
    beacons[0] = (struct equipment){.item.value = ITEM_epirb, .hex_id.text = "9908D74A71034D1"};
    boat.equipment = beacons;
    boat.equipment_count = 1;
    base.centre_call.text = "Skerry Coastguard";
    assert_string_equal(said((struct script_request){.form = SCRIPT_CANCEL_BEACON}),
        "SKERRY COASTGUARD, SKERRY COASTGUARD, SKERRY COASTGUARD\n"
        "THIS IS TAMARISK, TAMARISK, TAMARISK\n"
        "CALL SIGN QUEBEC TANGO ALFA BRAVO TWO\n"
        "MY EPIRB IDENTITY NINE NINE ZERO EIGHT DELTA, SEVEN FOUR ALFA SEVEN ONE, "
        "ZERO THREE FOUR DELTA ONE\n"
        "IT SENT AN ALERT BY MISTAKE AT ____ (time UTC) UTC\n"
        "LAT ____ (latitude degrees) DEGREES ____ (latitude minutes) MINUTES NORTH\n"
        "LONG ____ (longitude degrees) DEGREES ____ (longitude minutes) MINUTES EAST\n"
        "I REQUIRE NO ASSISTANCE. OVER\n");
}

/* A wrong identity would stop the search for somebody else. */
static void no_identity_is_said_that_may_be_another_s(void **state) {
    (void)state;
    beacons[0] = (struct equipment){.item.value = ITEM_personal_beacon};
    boat.equipment = beacons;
    boat.equipment_count = 1;
    static const char by_hand[] = "MY PERSONAL BEACON IDENTITY ____ (identity on the beacon)";
    assert_string_equal(beacon_line(), by_hand);
    beacons[0].hex_id.text = "99O8D74A71034D1";      /* mistyped */
    assert_string_equal(beacon_line(), by_hand);
    beacons[0].hex_id.text = "9908D74A71034D1";
    beacons[1] = (struct equipment){.item.value = ITEM_epirb, .hex_id.text = "ADCD00800440401"};
    boat.equipment_count = 2;
    assert_string_equal(beacon_line(), "MY BEACON IDENTITY ____ (identity on the beacon)");
}

/* ---- the clock on board ---- */

/* Without a clock of the base nobody can tell what UTC is. */
static void a_time_is_utc_only_where_that_is_recorded(void **state) {
    (void)state;
    for (int form = SCRIPT_MAYDAY; form < SCRIPT_FORM_COUNT; form++) {
        struct script_request request = {.form = (enum script_form)form};
        base.clock_count = 1;
        const char *known = said(request);
        assert_null(strstr(known, "LOCAL TIME"));
        base.clock_count = 0;
        const char *local = said(request);
        assert_null(strstr(local, "UTC"));
        assert_int_equal(strstr(known, "____ (time UTC) UTC") != NULL,
                         strstr(local, "____ (local time) LOCAL TIME") != NULL);
    }
}

/* What is filled in by hand stands beside a list whose phrases begin with I. */
static void no_blank_begins_with_i(void **state) {
    (void)state;
    for (int form = SCRIPT_MAYDAY; form < SCRIPT_FORM_COUNT; form++)
        assert_null(strstr(said((struct script_request){.form = (enum script_form)form}),
                           "\nI ____"));
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void) {
    const struct CMUnitTest tests[] = {
        TEST(a_relay_is_about_another),
        TEST(a_receipt_is_exact),
        TEST(a_downgrade_is_exact),
        TEST(a_cancel_is_exact),
        TEST(a_beacon_s_false_alert_is_exact),
        TEST(no_identity_is_said_that_may_be_another_s),
        TEST(a_time_is_utc_only_where_that_is_recorded),
        TEST(no_blank_begins_with_i),
    };
    return cmocka_run_group_tests(tests, NULL, NULL) != 0;
}
