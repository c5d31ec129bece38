/* test_script.c - what is said, in which order, by whom. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "arena.h"
#include "problem.h"
#include "radio.h"
#include "rules/rules_room.h"
#include "text.h"

static struct arena *arena;
static struct problems *problems;
static struct boat boat;
static struct base_record base;

static const struct clock clocks[] = {{.minutes = 120, .read = true}};
static const struct text_value urgency_steps[] = {{.text = "MENU"}, {.text = "URGENCY"}};

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

/* The given words stand in the text, each after the one before. */
static void in_order(const char *text, const char *const *words, size_t count) {
    for (size_t i = 0; i < count; i++) {
        const char *at = strstr(text, words[i]);
        if (at == NULL)
            fail_msg("`%s` does not follow in:\n%s", words[i], text);
        text = at + strlen(words[i]);
    }
}

#define IN_ORDER(text, ...) \
    in_order(text, (const char *const[]){__VA_ARGS__}, \
             sizeof (const char *const[]){__VA_ARGS__} / sizeof(const char *))

#define POSITION_TEXT \
    "LAT ____ (latitude degrees) DEGREES ____ (latitude minutes) MINUTES NORTH\n" \
    "LONG ____ (longitude degrees) DEGREES ____ (longitude minutes) MINUTES EAST AT " \
    "____ (time UTC) UTC\n"
#define PERSONS_TEXT \
    "____ (persons) PERSONS ON BOARD. WHITE SAILING YACHT, 12.6 METRES. OVER\n"

static void mayday_is_exact(void **state) {
    (void)state;
    assert_string_equal(said((struct script_request){.form = SCRIPT_MAYDAY,
                                                     .nature = "I AM ON FIRE"}),
        "MAYDAY, MAYDAY, MAYDAY\n"
        "THIS IS TAMARISK, TAMARISK, TAMARISK\n"
        "CALL SIGN QUEBEC TANGO ALFA BRAVO TWO · MMSI 200 014 730\n"
        "MAYDAY TAMARISK QUEBEC TANGO ALFA BRAVO TWO · 200 014 730\n"
        POSITION_TEXT
        "I AM ON FIRE. I REQUIRE IMMEDIATE ASSISTANCE.\n"
        PERSONS_TEXT);
}

static void without_dsc_no_mmsi_is_said(void **state) {
    (void)state;
    boat.radio.dsc.answer = ANSWER_NO;
    const char *text = said((struct script_request){.form = SCRIPT_MAYDAY,
                                                    .nature = "I AM ON FIRE"});
    assert_null(strstr(text, "MMSI"));
    assert_null(strstr(text, "200 014 730"));
    IN_ORDER(text, "CALL SIGN QUEBEC TANGO ALFA BRAVO TWO\n",
             "MAYDAY TAMARISK QUEBEC TANGO ALFA BRAVO TWO\n");
}

static void an_unprogrammed_set_says_no_mmsi(void **state) {
    (void)state;
    boat.radio.mmsi_programmed.answer = ANSWER_NOT_RECORDED;
    assert_null(strstr(said((struct script_request){.form = SCRIPT_MAYDAY}), "MMSI"));
    boat.radio.mmsi_programmed.answer = ANSWER_YES;
    boat.radio.mmsi.text = "20001473";
    assert_null(strstr(said((struct script_request){.form = SCRIPT_MAYDAY}), "MMSI"));
}

static void without_call_sign_no_slot_is_left(void **state) {
    (void)state;
    boat.radio.call_sign.text = "none";
    const char *text = said((struct script_request){.form = SCRIPT_MAYDAY,
                                                    .nature = "I AM ON FIRE"});
    assert_null(strstr(text, "CALL SIGN"));
    assert_null(strstr(text, "·"));
    IN_ORDER(text, "TAMARISK, TAMARISK, TAMARISK\nMMSI 200 014 730\n"
             "MAYDAY TAMARISK 200 014 730\nLAT");
    boat.radio.dsc.answer = ANSWER_NO;
    text = said((struct script_request){.form = SCRIPT_MAYDAY, .nature = "I AM ON FIRE"});
    IN_ORDER(text, "TAMARISK, TAMARISK, TAMARISK\nMAYDAY TAMARISK\nLAT");
    boat.radio.call_sign.text = NULL;
    assert_string_equal(text, said((struct script_request){.form = SCRIPT_MAYDAY,
                                                           .nature = "I AM ON FIRE"}));
}

static void pan_pan_is_exact(void **state) {
    (void)state;
    assert_string_equal(
        said((struct script_request){.form = SCRIPT_PAN_PAN, .nature = "I AM AGROUND",
                                     .assistance = "I REQUIRE TUG ASSISTANCE"}),
        "PAN PAN, PAN PAN, PAN PAN\n"
        "ALL STATIONS, ALL STATIONS, ALL STATIONS\n"
        "THIS IS TAMARISK, TAMARISK, TAMARISK\n"
        "CALL SIGN QUEBEC TANGO ALFA BRAVO TWO\n"
        POSITION_TEXT
        "I AM AGROUND. I REQUIRE TUG ASSISTANCE.\n"
        PERSONS_TEXT);
}

static void pan_pan_announced_by_dsc_says_the_mmsi(void **state) {
    (void)state;
    boat.radio.urgency_steps =
        (struct list_value){.items = urgency_steps, .count = 2, .given = true};
    struct script_request request = {.form = SCRIPT_PAN_PAN, .nature = "I AM AGROUND",
                                     .assistance = "I REQUIRE TUG ASSISTANCE"};
    IN_ORDER(said(request), "CALL SIGN QUEBEC TANGO ALFA BRAVO TWO · MMSI 200 014 730\nLAT");
    request.from_handheld = true;
    assert_null(strstr(said(request), "MMSI"));
}

static void pan_pan_without_assistance_leaves_a_blank(void **state) {
    (void)state;
    const char *text = said((struct script_request){.form = SCRIPT_PAN_PAN});
    IN_ORDER(text, "UTC\nPROBLEM ____ (problem)\nI REQUIRE ____ (assistance)\n____ (persons)");
    assert_null(strstr(text, "IMMEDIATE"));
}

static void securite_ends_with_out(void **state) {
    (void)state;
    static const char opening[] =
        "SECURITE, SECURITE, SECURITE\n"
        "ALL STATIONS, ALL STATIONS, ALL STATIONS\n"
        "THIS IS TAMARISK, TAMARISK, TAMARISK\n"
        "CALL SIGN QUEBEC TANGO ALFA BRAVO TWO\n";
    assert_string_equal(said((struct script_request){.form = SCRIPT_SECURITE}),
                        text_format(arena, "%s____ (warning)\nOUT\n", opening));
    assert_string_equal(said((struct script_request){.form = SCRIPT_SECURITE,
                                                     .nature = "MAST ADRIFT"}),
                        text_format(arena, "%sMAST ADRIFT.\nOUT\n", opening));
}

/* ---- two forms on one card ---- */

static const struct script_request holding = {
    .form = SCRIPT_PAN_PAN, .label = "HOLDING", .nature = "I AM FLOODING",
    .assistance = "I REQUIRE PUMPS"};
static const struct script_request gaining = {
    .form = SCRIPT_MAYDAY, .label = "GAINING", .nature = "I AM FLOODING", .other = &holding};

static void two_forms_share_what_is_alike(void **state) {
    (void)state;
    assert_string_equal(said(gaining),
        "GAINING: MAYDAY, MAYDAY, MAYDAY\n"
        "HOLDING: PAN PAN, PAN PAN, PAN PAN ALL STATIONS, 3 TIMES\n"
        "THIS IS TAMARISK, TAMARISK, TAMARISK\n"
        "CALL SIGN QUEBEC TANGO ALFA BRAVO TWO · MMSI 200 014 730\n"
        "GAINING: MAYDAY TAMARISK QUEBEC TANGO ALFA BRAVO TWO · 200 014 730\n"
        POSITION_TEXT
        "GAINING: I AM FLOODING. I REQUIRE IMMEDIATE ASSISTANCE.\n"
        "HOLDING: I AM FLOODING. I REQUIRE PUMPS.\n"
        PERSONS_TEXT);
}

/* The one place of `old` in the text becomes `new`. */
static const char *with(const char *text, const char *old, const char *new) {
    const char *at = strstr(text, old);
    assert_non_null(at);
    assert_null(strstr(at + 1, old));
    return text_format(arena, "%.*s%s%s", (int)(at - text), text, new, at + strlen(old));
}

/* The lines that are said in the one case. */
static const char *lines_for(const struct script *both, const char *label) {
    struct text_builder joined = text_builder_in(arena);
    for (size_t i = 0; i < both->count; i++) {
        struct script_line line = both->lines[i];
        if (line.label != NULL && strcmp(line.label, label) != 0)
            continue;
        line.label = NULL;
        text_add(&joined, script_text(&(struct script){.lines = &line, .count = 1}, arena));
    }
    return joined.at;
}

/* Leaving out the other's lines gives each form just as it is alone; only the
 * call to all stations is told once, and both say who calls in the same words. */
static void each_form_reads_as_if_alone(void **state) {
    (void)state;
    const struct script *both = made(gaining);
    struct script_request mayday = gaining;
    mayday.other = NULL;
    assert_string_equal(lines_for(both, "GAINING"), said(mayday));
    const char *pan_pan = with(said(holding), "\nALL STATIONS, ALL STATIONS, ALL STATIONS\n",
                               " ALL STATIONS, 3 TIMES\n");
    pan_pan = with(pan_pan, "BRAVO TWO\n", "BRAVO TWO · MMSI 200 014 730\n");
    assert_string_equal(lines_for(both, "HOLDING"), pan_pan);
}

/* Both forms named, or neither: never an unlabelled line that only one means. */
static void what_differs_is_labelled_in_pairs(void **state) {
    (void)state;
    static const struct { enum script_element element; const char *label; } expected[] = {
        {ELEMENT_SIGNAL, "GAINING"}, {ELEMENT_SIGNAL, "HOLDING"}, {ELEMENT_NAME, NULL},
        {ELEMENT_IDENTITY, NULL}, {ELEMENT_MESSAGE_SIGNAL, "GAINING"}, {ELEMENT_POSITION, NULL},
        {ELEMENT_POSITION, NULL}, {ELEMENT_NATURE, "GAINING"}, {ELEMENT_NATURE, "HOLDING"},
        {ELEMENT_OTHER, NULL}};
    const struct script *both = made(gaining);
    assert_int_equal(both->count, sizeof expected / sizeof expected[0]);
    for (size_t i = 0; i < both->count; i++) {
        assert_int_equal(both->lines[i].element, expected[i].element);
        assert_true(text_equal(both->lines[i].label, expected[i].label));
    }
}

static void an_mmsi_both_say_is_shared(void **state) {
    (void)state;
    boat.radio.urgency_steps =
        (struct list_value){.items = urgency_steps, .count = 2, .given = true};
    assert_string_equal(lines_for(made(gaining), "HOLDING"),
                        with(said(holding), "\nALL STATIONS, ALL STATIONS, ALL STATIONS\n",
                             " ALL STATIONS, 3 TIMES\n"));
    IN_ORDER(said(gaining), "TAMARISK\nCALL SIGN QUEBEC TANGO ALFA BRAVO TWO · MMSI 200 014 730\n"
             "GAINING: MAYDAY TAMARISK");
}

/* ---- properties ---- */

static void a_handheld_never_speaks_of_dsc(void **state) {
    (void)state;
    boat.radio.urgency_steps =
        (struct list_value){.items = urgency_steps, .count = 2, .given = true};
    for (int form = SCRIPT_MAYDAY; form < SCRIPT_FORM_COUNT; form++)
        for (enum nature_key nature = NATURE_NONE + 1; nature < NATURE_COUNT; nature++) {
            struct script_request milder = {.form = SCRIPT_PAN_PAN, .label = "B",
                                            .from_handheld = true};
            struct script_request request = {.form = (enum script_form)form, .label = "A",
                                             .nature = nature_of(nature)->phrase,
                                             .from_handheld = true};
            for (int both = 0; both < 2; both++) {
                request.other = both ? &milder : NULL;
                const char *text = said(request);
                assert_null(strstr(text, "MMSI"));
                assert_null(strstr(text, "DSC"));
                assert_null(strstr(text, "200 014 730"));
            }
        }
}

static void what_cannot_be_said_gives_no_script(void **state) {
    (void)state;
    struct script_request request = {.form = SCRIPT_MAYDAY, .nature = "I AM ON FIRE"};
    static const char *const bad_call_signs[] = {"SV\xC3\x84" "B", "S VAB", "9A", "qtab2",
                                                 "SV-AB"};
    for (size_t i = 0; i < sizeof bad_call_signs / sizeof bad_call_signs[0]; i++) {
        problems = problems_new(arena);
        boat.radio.call_sign.text = bad_call_signs[i];
        assert_null(script_make(&request, &boat, &base, arena, problems));
        assert_int_equal(problems_count(problems, SEVERITY_ERROR), 1);
    }
    boat.radio.call_sign.text = "QTAB2";
    boat.facts.name.text = "\xC3\x96re";
    problems = problems_new(arena);
    assert_null(script_make(&request, &boat, &base, arena, problems));
    assert_int_equal(problems_count(problems, SEVERITY_ERROR), 1);
    boat.facts.name_latin.text = "Oere";
    problems = problems_new(arena);
    IN_ORDER(said(request), "OERE, OERE, OERE", "MAYDAY OERE QUEBEC");
}

/* A check and a script that find the same fault tell it once. */
static void the_same_fault_is_told_once(void **state) {
    (void)state;
    struct script_request request = {.form = SCRIPT_MAYDAY};
    size_t count = 0;
    boat.radio.call_sign.text = "SV\xC3\x84" "B";
    struct rules_input input = {.boat = &boat};
    struct rule_run run = {.in = &input, .arena = arena, .problems = problems};
    identity_rules(&run);
    assert_int_equal(problems_count(problems, SEVERITY_ERROR), 1);
    assert_null(script_make(&request, &boat, &base, arena, problems));
    assert_null(script_make(&request, &boat, &base, arena, problems));
    problems_sorted(problems, &count);
    assert_int_equal(count, 1);
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void) {
    const struct CMUnitTest tests[] = {
        TEST(mayday_is_exact),
        TEST(without_dsc_no_mmsi_is_said),
        TEST(an_unprogrammed_set_says_no_mmsi),
        TEST(without_call_sign_no_slot_is_left),
        TEST(pan_pan_is_exact),
        TEST(pan_pan_announced_by_dsc_says_the_mmsi),
        TEST(pan_pan_without_assistance_leaves_a_blank),
        TEST(securite_ends_with_out),
        TEST(two_forms_share_what_is_alike),
        TEST(each_form_reads_as_if_alone),
        TEST(what_differs_is_labelled_in_pairs),
        TEST(an_mmsi_both_say_is_shared),
        TEST(a_handheld_never_speaks_of_dsc),
        TEST(what_cannot_be_said_gives_no_script),
        TEST(the_same_fault_is_told_once),
    };
    int failed = cmocka_run_group_tests(tests, NULL, NULL);
    return failed != 0;
}
