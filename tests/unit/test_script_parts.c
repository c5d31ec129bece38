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
    base.latitude.text = "north";
    base.longitude.text = "east";
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

static void every_piece_is_complete(void **state) {
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
                assert_int_equal(piece->width_mm >= 17, piece->kind == PIECE_BLANK);
            }
        }
    }
}

static void blanks_have_room_for_a_wax_pencil(void **state) {
    (void)state;
    static const struct { const char *name; int width_mm; } expected[] = {
        {"latitude degrees", 17}, {"latitude minutes", 34}, {"longitude degrees", 25},
        {"longitude minutes", 34}, {"time UTC", 34}, {"nature", 60}, {"persons", 17}};
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

static void hemispheres_are_circled_where_both_occur(void **state) {
    (void)state;
    struct script_request request = {.form = SCRIPT_MAYDAY};
    base.latitude.text = "both";
    base.longitude.text = NULL;
    IN_ORDER(said(request), "MINUTES NORTH / SOUTH\n", "MINUTES EAST / WEST AT");
    base.latitude.text = "south";
    base.longitude.text = "west";
    IN_ORDER(said(request), "MINUTES SOUTH\n", "MINUTES WEST AT");
    const struct script *script = script_make(&request, &boat, NULL, arena, problems);
    assert_non_null(script);
    IN_ORDER(script_text(script, arena), "NORTH / SOUTH", "EAST / WEST");
}

static void natures_are_worded_as_given(void **state) {
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
             "UTC\nI ____ (nature)\nI REQUIRE IMMEDIATE ASSISTANCE.\n____");
}

static void nothing_is_invented_about_the_boat(void **state) {
    (void)state;
    struct script_request request = {.form = SCRIPT_MAYDAY};
    boat.facts.looks.text = NULL;
    IN_ORDER(said(request), "PERSONS ON BOARD. LENGTH 12.6 METRES. OVER\n");
    boat.facts.loa_m.given = false;
    IN_ORDER(said(request), "PERSONS ON BOARD. OVER\n");
    boat.facts.looks.text = "Blue hull";
    IN_ORDER(said(request), "PERSONS ON BOARD. BLUE HULL. OVER\n");
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void) {
    const struct CMUnitTest tests[] = {
        TEST(every_piece_is_complete),
        TEST(blanks_have_room_for_a_wax_pencil),
        TEST(hemispheres_are_circled_where_both_occur),
        TEST(natures_are_worded_as_given),
        TEST(nothing_is_invented_about_the_boat),
    };
    int failed = cmocka_run_group_tests(tests, NULL, NULL);
    return failed != 0;
}
