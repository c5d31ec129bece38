/* test_script_parts.c - the lines of a script: blanks, hemispheres, natures, the boat. */
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
static int set_up(void **state)
{
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

static int tear_down(void **state)
{
    (void)state;
    arena_free(arena);
    return 0;
}

static const struct script *made(struct script_request request)
{
    const struct script *script = script_make(&request, &boat, &base, arena, problems);
    assert_non_null(script);
    assert_false(problems_reach(problems, SEVERITY_NOTE));
    return script;
}

static const char *said(struct script_request request)
{
    return script_text(made(request), arena);
}

/* The given words stand in the text, each after the one before. */
static void in_order(const char *text, const char *const *words, size_t count)
{
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

static void every_piece_is_complete(void **state)
{
    (void)state;
    for (int form = SCRIPT_MAYDAY; form <= SCRIPT_CANCEL; form++) {
        const struct script *script =
            made((struct script_request){.form = (enum script_form)form});
        assert_true(script->count > 0);
        for (size_t i = 0; i < script->count; i++) {
            assert_true(script->lines[i].count > 0);
            for (size_t j = 0; j < script->lines[i].count; j++) {
                const struct script_piece *piece = &script->lines[i].pieces[j];
                assert_true(strlen(piece->text) > 0);
                assert_int_equal(piece->width_mm >= 14, piece->kind == PIECE_BLANK);
            }
        }
    }
}

static void blanks_have_room_for_a_wax_pencil(void **state)
{
    (void)state;
    static const struct { const char *name; int width_mm; } expected[] = {
        {"latitude degrees", 14}, {"latitude minutes", 24}, {"longitude degrees", 15},
        {"longitude minutes", 24}, {"time UTC", 16}, {"nature", 45}, {"persons", 14}};
    const struct script *script = made((struct script_request){.form = SCRIPT_MAYDAY});
    size_t found = 0;
    for (size_t i = 0; i < script->count; i++)
        for (size_t j = 0; j < script->lines[i].count; j++) {
            const struct script_piece *piece = &script->lines[i].pieces[j];
            if (piece->kind != PIECE_BLANK)
                continue;
            assert_true(found < sizeof expected / sizeof expected[0]);
            assert_string_equal(piece->text, expected[found].name);
            assert_int_equal(piece->width_mm, expected[found].width_mm);
            found++;
        }
    assert_int_equal(found, sizeof expected / sizeof expected[0]);
}

static void hemispheres_are_circled_where_both_occur(void **state)
{
    (void)state;
    struct script_request request = {.form = SCRIPT_MAYDAY};
    base.latitude.value = HEMISPHERE_BOTH;
    base.longitude.value = HEMISPHERE_NONE;
    IN_ORDER(said(request), "MINUTES NORTH / SOUTH\n", "MINUTES EAST / WEST AT");
    base.latitude.value = HEMISPHERE_DOWN;
    base.longitude.value = HEMISPHERE_DOWN;
    IN_ORDER(said(request), "MINUTES SOUTH\n", "MINUTES WEST AT");
    const struct script *script = script_make(&request, &boat, NULL, arena, problems);
    assert_non_null(script);
    IN_ORDER(script_text(script, arena), "NORTH / SOUTH", "EAST / WEST");
}

/* East or west to be circled leaves the time no room behind the longitude. */
static void time_leads_astride_greenwich(void **state)
{
    (void)state;
    struct script_request request = {.form = SCRIPT_MAYDAY};
    base.latitude.value = HEMISPHERE_UP;
    base.longitude.value = HEMISPHERE_BOTH;
    IN_ORDER(said(request), "\nAT ____ (time UTC) UTC · LAT ____", "MINUTES NORTH\nLONG ____",
             "MINUTES EAST / WEST\n");
    base.latitude.value = HEMISPHERE_BOTH;
    IN_ORDER(said(request), "\nLAT ____", "MINUTES NORTH / SOUTH\nLONG ____",
             "MINUTES EAST / WEST AT ____ (time UTC) UTC\n");
}

static void natures_are_worded_as_given(void **state)
{
    (void)state;
    IN_ORDER(said((struct script_request){.form = SCRIPT_MAYDAY,
                                          .nature = "I AM NOT UNDER COMMAND, DRIFTING"}),
             "UTC\nI AM NOT UNDER COMMAND, DRIFTING.\nI REQUIRE IMMEDIATE ASSISTANCE.\n____");
    IN_ORDER(said((struct script_request){.form = SCRIPT_MAYDAY,
                                          .nature = "I HAVE COLLIDED WITH ..."}),
             "UTC\nI HAVE COLLIDED WITH ____ (what)\nI REQUIRE IMMEDIATE ASSISTANCE.\n____");
    IN_ORDER(said((struct script_request){.form = SCRIPT_MAYDAY,
                                          .nature = "I REQUIRE IMMEDIATE ASSISTANCE"}),
             "UTC\nI REQUIRE IMMEDIATE ASSISTANCE.\n____");
    IN_ORDER(said((struct script_request){.form = SCRIPT_MAYDAY, .nature = "I AM ON FIRE."}),
             "UTC\nI AM ON FIRE. I REQUIRE IMMEDIATE ASSISTANCE.\n____");
    IN_ORDER(said((struct script_request){.form = SCRIPT_MAYDAY}),
             "UTC\nPROBLEM ____ (nature)\nI REQUIRE IMMEDIATE ASSISTANCE.\n____");
}

static void nothing_is_invented_about_the_boat(void **state)
{
    (void)state;
    struct script_request request = {.form = SCRIPT_MAYDAY};
    boat.facts.looks.text = NULL;
    IN_ORDER(said(request), "PERSONS ON BOARD. LENGTH 12.6 METRES. OVER\n");
    boat.facts.loa_m.given = false;
    IN_ORDER(said(request), "PERSONS ON BOARD. OVER\n");
    boat.facts.looks.text = "Blue hull";
    IN_ORDER(said(request), "PERSONS ON BOARD. BLUE HULL. OVER\n");
}

/* ---- the order of the Radio Regulations, element by element ---- */

/* One form as a boat says it: what each line is, and its words in order. */
struct order_case {
    const char *id;
    struct script_request request;
    bool dsc, call_sign, urgency;
    enum script_element elements[12];
    size_t element_count;
    const char *words[20];        /* NULL-ended */
    const char *never[6];         /* NULL-ended: what must not be said */
};

#define ELEMENTS(...) \
    .elements = {__VA_ARGS__}, \
    .element_count = sizeof (enum script_element[]){__VA_ARGS__} / sizeof(enum script_element)

#define NAME_THREE_TIMES "TAMARISK, TAMARISK, TAMARISK"
#define ALL_STATIONS_THREE_TIMES "ALL STATIONS, ALL STATIONS, ALL STATIONS"
#define SPELLED "QUEBEC TANGO ALFA BRAVO TWO"

static const struct order_case order_cases[] = {
    {.id = "S01", .request = {.form = SCRIPT_MAYDAY,
                              .nature = "I AM NOT UNDER COMMAND, DRIFTING"},
     .dsc = true, .call_sign = true,
     ELEMENTS(ELEMENT_SIGNAL, ELEMENT_NAME, ELEMENT_IDENTITY, ELEMENT_MESSAGE_SIGNAL,
              ELEMENT_POSITION, ELEMENT_POSITION, ELEMENT_NATURE, ELEMENT_ASSISTANCE,
              ELEMENT_OTHER),
     .words = {"MAYDAY, MAYDAY, MAYDAY", "THIS IS", NAME_THREE_TIMES, "CALL SIGN", SPELLED, "MMSI",
               "200 014 730", "MAYDAY", "TAMARISK", SPELLED, "200 014 730", "LAT", "LONG", "UTC",
               "DRIFTING.", "I REQUIRE IMMEDIATE ASSISTANCE", "PERSONS ON BOARD", "OVER"}},
    {.id = "S01, on one line", .request = {.form = SCRIPT_MAYDAY, .nature = "I AM SINKING"},
     .dsc = true, .call_sign = true,
     ELEMENTS(ELEMENT_SIGNAL, ELEMENT_NAME, ELEMENT_IDENTITY, ELEMENT_MESSAGE_SIGNAL,
              ELEMENT_POSITION, ELEMENT_POSITION, ELEMENT_NATURE, ELEMENT_OTHER),
     .words = {"MAYDAY, MAYDAY, MAYDAY", "THIS IS", NAME_THREE_TIMES, "CALL SIGN", SPELLED, "MMSI",
               "200 014 730", "MAYDAY", "TAMARISK", SPELLED, "200 014 730", "LAT", "LONG", "UTC",
               "I AM SINKING", "I REQUIRE IMMEDIATE ASSISTANCE", "PERSONS ON BOARD", "OVER"}},
    {.id = "S01, of a nature in two lines",
     .request = {.form = SCRIPT_MAYDAY,
                 .nature = "I AM ON FIRE, ENGINE SPACE, PETROL, LITHIUM BATTERY ABOARD"},
     .dsc = true, .call_sign = true,
     ELEMENTS(ELEMENT_SIGNAL, ELEMENT_NAME, ELEMENT_IDENTITY, ELEMENT_MESSAGE_SIGNAL,
              ELEMENT_POSITION, ELEMENT_POSITION, ELEMENT_NATURE, ELEMENT_OTHER),
     .words = {"MAYDAY, MAYDAY, MAYDAY",
               "LITHIUM BATTERY ABOARD. I REQUIRE IMMEDIATE ASSISTANCE.\n", "PERSONS ON BOARD",
               "OVER"}},
    {.id = "S02", .request = {.form = SCRIPT_MAYDAY, .nature = "I AM SINKING"},
     .call_sign = true,
     ELEMENTS(ELEMENT_SIGNAL, ELEMENT_NAME, ELEMENT_IDENTITY, ELEMENT_MESSAGE_SIGNAL,
              ELEMENT_POSITION, ELEMENT_POSITION, ELEMENT_NATURE, ELEMENT_OTHER),
     .words = {"MAYDAY, MAYDAY, MAYDAY", "THIS IS", NAME_THREE_TIMES, "CALL SIGN", SPELLED,
               "MAYDAY", "TAMARISK", SPELLED, "LAT", "OVER"},
     .never = {"MMSI", "200 014 730"}},
    {.id = "S04", .request = {.form = SCRIPT_MAYDAY, .nature = "I AM SINKING"},
     ELEMENTS(ELEMENT_SIGNAL, ELEMENT_NAME, ELEMENT_MESSAGE_SIGNAL, ELEMENT_POSITION,
              ELEMENT_POSITION, ELEMENT_NATURE, ELEMENT_OTHER),
     .words = {"MAYDAY, MAYDAY, MAYDAY\nTHIS IS TAMARISK, TAMARISK, TAMARISK\n"
               "MAYDAY TAMARISK\nLAT"},
     .never = {"CALL SIGN", "QUEBEC"}},
    {.id = "S05", .request = {.form = SCRIPT_PAN_PAN},
     .dsc = true, .call_sign = true, .urgency = true,
     ELEMENTS(ELEMENT_SIGNAL, ELEMENT_ALL_STATIONS, ELEMENT_NAME, ELEMENT_IDENTITY,
              ELEMENT_POSITION, ELEMENT_POSITION, ELEMENT_NATURE, ELEMENT_ASSISTANCE,
              ELEMENT_OTHER),
     .words = {"PAN PAN, PAN PAN, PAN PAN", ALL_STATIONS_THREE_TIMES, "THIS IS", NAME_THREE_TIMES,
               "CALL SIGN", SPELLED, "MMSI", "200 014 730", "LAT", "LONG", "(problem)",
               "(assistance)", "PERSONS ON BOARD", "OVER"},
     .never = {"MAYDAY"}},
    {.id = "S06", .request = {.form = SCRIPT_SECURITE, .nature = "MAST ADRIFT"},
     .dsc = true, .call_sign = true,
     ELEMENTS(ELEMENT_SIGNAL, ELEMENT_ALL_STATIONS, ELEMENT_NAME, ELEMENT_IDENTITY,
              ELEMENT_NATURE, ELEMENT_OVER),
     .words = {"SECURITE, SECURITE, SECURITE", ALL_STATIONS_THREE_TIMES, "THIS IS",
               NAME_THREE_TIMES, "CALL SIGN", SPELLED, "MAST ADRIFT", "OUT"},
     .never = {"OVER", "MMSI"}},
    {.id = "S07", .request = {.form = SCRIPT_RELAY}, .dsc = true, .call_sign = true,
     ELEMENTS(ELEMENT_SIGNAL, ELEMENT_ALL_STATIONS, ELEMENT_NAME, ELEMENT_IDENTITY,
              ELEMENT_MESSAGE_SIGNAL, ELEMENT_POSITION, ELEMENT_POSITION, ELEMENT_NATURE,
              ELEMENT_OTHER),
     .words = {"MAYDAY RELAY, MAYDAY RELAY, MAYDAY RELAY", ALL_STATIONS_THREE_TIMES, "THIS IS",
               NAME_THREE_TIMES, "CALL SIGN", SPELLED, "MMSI", "200 014 730", "MAYDAY",
               "vessel in distress", "LAT", "LONG", "(nature)", "PERSONS ON BOARD", "OVER"},
     .never = {"MAYDAY TAMARISK", "WHITE"}},
    {.id = "S08", .request = {.form = SCRIPT_CANCEL}, .dsc = true, .call_sign = true,
     ELEMENTS(ELEMENT_ALL_STATIONS, ELEMENT_NAME, ELEMENT_IDENTITY, ELEMENT_OTHER),
     .words = {ALL_STATIONS_THREE_TIMES, "THIS IS", NAME_THREE_TIMES, "CALL SIGN", SPELLED,
               "MMSI", "200 014 730", "PLEASE CANCEL MY DISTRESS ALERT OF", "UTC"},
     .never = {"MAYDAY"}},
    {.id = "downgrade", .request = {.form = SCRIPT_DOWNGRADE}, .dsc = true, .call_sign = true,
     ELEMENTS(ELEMENT_SIGNAL, ELEMENT_ALL_STATIONS, ELEMENT_NAME, ELEMENT_IDENTITY,
              ELEMENT_NATURE, ELEMENT_ASSISTANCE),
     .words = {"MAYDAY", ALL_STATIONS_THREE_TIMES, "THIS IS", NAME_THREE_TIMES, SPELLED,
               "DANGER IS OVER", "(what has ended)",
               "I NO LONGER REQUIRE IMMEDIATE ASSISTANCE. OVER"},
     .never = {"MAYDAY, MAYDAY", "(time UTC)"}},
    {.id = "receipt", .request = {.form = SCRIPT_RECEIPT}, .dsc = true, .call_sign = true,
     ELEMENTS(ELEMENT_SIGNAL, ELEMENT_NAME, ELEMENT_IDENTITY, ELEMENT_OVER),
     .words = {"MAYDAY", "their name", "THIS IS", "TAMARISK", SPELLED, "RECEIVED MAYDAY"},
     .never = {"MAYDAY, MAYDAY", "TAMARISK, TAMARISK", "OVER", "MMSI"}},
    {.id = "beacon", .request = {.form = SCRIPT_CANCEL_BEACON}, .dsc = true, .call_sign = true,
     ELEMENTS(ELEMENT_ALL_STATIONS, ELEMENT_NAME, ELEMENT_IDENTITY, ELEMENT_BEACON,
              ELEMENT_OTHER, ELEMENT_POSITION, ELEMENT_POSITION, ELEMENT_ASSISTANCE),
     .words = {ALL_STATIONS_THREE_TIMES, "THIS IS", NAME_THREE_TIMES, SPELLED, "IDENTITY",
               "BY MISTAKE", "(time UTC)", "LAT", "LONG", "I REQUIRE NO ASSISTANCE. OVER"},
     .never = {"MAYDAY", "MMSI", "PERSONS"}},
};

static void boat_as(const struct order_case *wanted)
{
    static const struct text_value steps[] = {{.text = "MENU"}};
    boat.radio.dsc.answer = wanted->dsc ? ANSWER_YES : ANSWER_NO;
    boat.radio.call_sign.text = wanted->call_sign ? "QTAB2" : "none";
    boat.radio.urgency_steps = (struct list_value){0};
    if (wanted->urgency)
        boat.radio.urgency_steps = (struct list_value){.items = steps, .count = 1, .given = true};
}

static void each_form_keeps_the_order_of_the_regulations(void **state)
{
    (void)state;
    for (size_t i = 0; i < sizeof order_cases / sizeof order_cases[0]; i++) {
        const struct order_case *wanted = &order_cases[i];
        size_t words = 0;
        boat_as(wanted);
        const struct script *script = made(wanted->request);
        const char *text = script_text(script, arena);
        if (script->count != wanted->element_count)
            fail_msg("%s has %zu lines:\n%s", wanted->id, script->count, text);
        for (size_t line = 0; line < script->count; line++) {
            if (script->lines[line].element != wanted->elements[line])
                fail_msg("%s: line %zu is another element:\n%s", wanted->id, line + 1, text);
            assert_null(script->lines[line].label);
        }
        while (wanted->words[words] != NULL)
            words++;
        in_order(text, wanted->words, words);
        for (size_t n = 0; wanted->never[n] != NULL; n++)
            if (strstr(text, wanted->never[n]) != NULL)
                fail_msg("%s says `%s`:\n%s", wanted->id, wanted->never[n], text);
    }
}

/* What names the boat stands out; what everybody is called does not. */
static void signals_and_names_are_strong_and_all_stations_is_not(void **state)
{
    (void)state;
    for (int form = SCRIPT_MAYDAY; form <= SCRIPT_CANCEL; form++) {
        const struct script *script =
            made((struct script_request){.form = (enum script_form)form});
        for (size_t i = 0; i < script->count; i++)
            for (size_t j = 0; j < script->lines[i].count; j++) {
                const struct script_piece *piece = &script->lines[i].pieces[j];
                if (strstr(piece->text, "ALL STATIONS") != NULL)
                    assert_int_equal(piece->kind, PIECE_WORDS);
                if (script->lines[i].element == ELEMENT_SIGNAL && j == 0)
                    assert_int_equal(piece->kind, PIECE_STRONG);
                if (script->lines[i].element == ELEMENT_NAME)
                    assert_int_equal(piece->kind, j == 0 ? PIECE_WORDS : PIECE_STRONG);
            }
    }
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(every_piece_is_complete),
        TEST(blanks_have_room_for_a_wax_pencil),
        TEST(hemispheres_are_circled_where_both_occur),
        TEST(time_leads_astride_greenwich),
        TEST(natures_are_worded_as_given),
        TEST(nothing_is_invented_about_the_boat),
        TEST(each_form_keeps_the_order_of_the_regulations),
        TEST(signals_and_names_are_strong_and_all_stations_is_not),
    };
    int failed = cmocka_run_group_tests(tests, NULL, NULL);
    return failed != 0;
}
