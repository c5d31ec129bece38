/* test_compose_rows.c - the lines under a step: names, places, gear that shares a
 * row. The table of openings: test_compose_table.c. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "card_fixture.h"
#include "compose/compose_room.h"
#include "text.h"

#define USE(list) "steps: [{id: use, sources: [S5], " list "}]\n"
#define USE_TEXTS "steps: {use: {act: \"**USE.**\"}}\n"

/* The one step of a card on a boat with this gear. */
static const struct card_step *step_with(const char *step, const char *boat)
{
    const char *const texts[] = {case_procedure_text(&test, "smoke", 10, step, USE_TEXTS), NULL};
    case_procedures(&test, texts);
    case_boat(&test, boat);
    const struct sheet *card = case_card(case_compose(&test, false), "smoke");
    assert_false(card->held);
    return &sheet_steps(card)->items[0];
}

static const struct card_step *monohull_step(const char *step, const char *gear)
{
    return step_with(step, case_boat_text(&test, CASE_RADIO, gear, "  - knife\n"));
}

static const struct card_step *two_engine_step(const char *step, const char *gear)
{
    return step_with(step, text_format(
        test.arena, "boat: {name: Samphire, specimen: yes, hull: catamaran, rig: sail, loa_m: 13, "
        "beam_m: 7, persons_max: 8}\n%sequipment:\n%s", "radio: {call_sign: QSMP4}\n", gear));
}

/* "[C1][C2] name | where" */
static const char *row_text(const struct card_row *row)
{
    struct text_builder out = text_builder_in(test.arena);
    for (size_t i = 0; i < row->tag_count; i++)
        text_add_format(&out, "[%s]", row->tags[i]);
    text_add_format(&out, " %s | %s", row->name, row->where);
    return out.at;
}

static void expect_rows(const struct card_step *step, const char *const *rows)
{
    size_t count = 0;
    for (; rows[count] != NULL; count++) {
        assert_true(count < step->row_count);
        assert_string_equal(row_text(&step->rows[count]), rows[count]);
    }
    assert_int_equal(step->row_count, count);
}

#define EXPECT_ROWS(step, ...) expect_rows(step, (const char *const[]){__VA_ARGS__, NULL})

/* ---- what one row says ---- */

static void a_row_says_what_where_and_how(void **state)
{
    (void)state;
    EXPECT_ROWS(monohull_step(USE("uses: [engine_stop, liferaft, lifejacket, fire_extinguisher]"),
                              "  - {item: engine_stop, tag: C1, zone: cockpit, side: port, "
                              "spot: by the wheel, how: hold STOP}\n"
                              "  - {item: liferaft, tag: E1, zone: coachroof, persons: 8}\n"
                              "  - {item: lifejacket, tag: E2, zone: saloon, count: 8}\n"
                              "  - {item: fire_extinguisher, tag: F1, zone: galley, kg: 2, "
                              "name: Foam bottle, side: centre}\n"),
                "[C1] Engine stop | Cockpit, port, by the wheel: hold STOP",
                "[E1] Raft, 8 persons | Cabin roof", "[E2] 8 lifejackets | Saloon",
                "[F1] Foam bottle, 2 kg | Galley, centre");
}

static void rows_come_in_the_order_of_the_step_then_of_the_record(void **state)
{
    (void)state;
    EXPECT_ROWS(monohull_step(USE("uses: [torch, flares]"),
                              "  - {item: flares, tag: E1, zone: saloon}\n"
                              "  - {item: torch, tag: C2, zone: galley}\n"
                              "  - {item: torch, tag: C1, zone: saloon}\n"),
                "[C2] Torch | Galley", "[C1] Torch | Saloon", "[E1] Flares | Saloon");
}

/* A control inside the burning space is not to be fetched. */
static void what_is_inside_the_burning_space_says_so(void **state)
{
    (void)state;
    const char *const texts[] = {
        case_procedure_text(&test, "smoke", 10, USE("uses: [fuel_shutoff_diesel, fire_port]")
                            "per: engine_space\n", USE_TEXTS), NULL};
    case_procedures(&test, texts);
    case_boat(&test, case_boat_text(
        &test, CASE_RADIO,
        "  - {item: fuel_shutoff_diesel, tag: C1, zone: saloon, how: across = shut, "
        "inside: [engine_space]}\n"
        "  - {item: fuel_shutoff_diesel, tag: C2, zone: galley, how: across = shut, inside: []}\n"
        "  - {item: fire_port, tag: F1, zone: engine_space, how: push in}\n", ""));
    const struct sheet *card = case_card(case_compose(&test, false), "smoke");
    EXPECT_ROWS(&sheet_steps(card)->items[0], "[C1] Fuel valve | Saloon: inside: leave it",
                "[C2] Fuel valve | Galley: across = shut",
                "[F1] Fire port | Engine space: push in");
}

/* ---- gear that shares a row ---- */

#define STOPS(tag, serves) \
    "  - {item: engine_stop, tag: " tag ", zone: cockpit, side: port, how: hold STOP" serves "}\n"
#define PORT ", serves: [engine_space_port]"
#define STARBOARD ", serves: [engine_space_starboard]"
#define BOTH ", serves: [engine_space_port, engine_space_starboard]"

static void equal_neighbours_share_a_row(void **state)
{
    (void)state;
    EXPECT_ROWS(two_engine_step(USE("uses: [engine_stop]"),
                                STOPS("C1", PORT) STOPS("C2", STARBOARD)),
                "[C1][C2] 2 engine stops | Cockpit, port: hold STOP");
    EXPECT_ROWS(two_engine_step(USE("uses: [engine_stop]"),
                                STOPS("C1", PORT) STOPS("C2", STARBOARD) STOPS("C3", BOTH)
                                STOPS("C4", "")),
                "[C1][C2][C3] 3 engine stops | Cockpit, port: hold STOP",
                "[C4] Engine stop | Cockpit, port: hold STOP");
}

static void unlike_neighbours_keep_their_rows(void **state)
{
    (void)state;
    EXPECT_ROWS(two_engine_step(USE("uses: [engine_stop]"),
                                STOPS("C1", PORT)
                                "  - {item: engine_stop, tag: C2, zone: cockpit, side: port, "
                                "how: pull" BOTH "}\n" STOPS("C3", STARBOARD)),
                "[C1] Engine stop | Cockpit, port: hold STOP",
                "[C2] Engine stop | Cockpit, port: pull",
                "[C3] Engine stop | Cockpit, port: hold STOP");
    EXPECT_ROWS(two_engine_step(USE("uses: [engine_stop]"),
                                STOPS("C1", PORT ", count: 2") STOPS("C2", STARBOARD)),
                "[C1] 2 engine stops | Cockpit, port: hold STOP",
                "[C2] Engine stop | Cockpit, port: hold STOP");
}

#define EXTINGUISHER(tag, zone) "  - {item: fire_extinguisher, tag: " tag ", zone: " zone "}\n"

/* Each piece keeps its side, spot and handling: two lockers are two places. */
static void gear_that_only_helps_has_rows_like_other_gear(void **state)
{
    (void)state;
    const char *gear = EXTINGUISHER("F1", "saloon") EXTINGUISHER("F2", "forward_cabin")
        "  - {item: fire_extinguisher, tag: F3, zone: saloon, side: port, spot: by the door}\n";
    static const char *const keys[] = {"uses", "also"};
    for (size_t i = 0; i < 2; i++)
        EXPECT_ROWS(monohull_step(text_format(test.arena, USE("%s: [fire_extinguisher]"), keys[i]),
                                  gear),
                    "[F1] Extinguisher | Saloon", "[F2] Extinguisher | Forward cabin",
                    "[F3] Extinguisher | Saloon, port, by the door");
    EXPECT_ROWS(monohull_step(
                    USE("also: [fire_extinguisher]"),
                    "  - {item: fire_extinguisher, tag: F1, zone: cockpit_locker, side: port}\n"
                    "  - {item: fire_extinguisher, tag: F2, zone: cockpit_locker, "
                    "side: starboard}\n"),
                "[F1] Extinguisher | Cockpit locker, port",
                "[F2] Extinguisher | Cockpit locker, starboard");
}

/* ---- how far one goes for it ---- */

#define TORCHES \
    "  - {item: torch, tag: C1, zone: cockpit}\n" \
    "  - {item: torch, tag: C2, zone: cockpit_locker}\n" \
    "  - {item: torch, tag: C3, zone: companionway, from_cockpit: yes}\n" \
    "  - {item: torch, tag: C4, zone: saloon}\n" \
    "  - {item: torch, tag: C5, zone: foredeck, from_cockpit: no}\n" \
    "  - {item: torch, tag: C6, zone: lazarette, below: yes}\n"

static void gear_that_lies_too_far_is_not_offered(void **state)
{
    (void)state;
    EXPECT_ROWS(monohull_step(USE("also: [torch], within: open_deck"), TORCHES),
                "[C1] Torch | Cockpit");
    EXPECT_ROWS(monohull_step(USE("also: [torch], within: deck"), TORCHES),
                "[C1] Torch | Cockpit", "[C2] Torch | Cockpit locker");
    EXPECT_ROWS(monohull_step(USE("uses: [torch], within: companionway"), TORCHES),
                "[C1] Torch | Cockpit", "[C2] Torch | Cockpit locker",
                "[C3] Torch | Companionway");
}

static void a_line_stands_over_rows_below(void **state)
{
    (void)state;
    const char *const texts[] = {
        case_procedure_text(&test, "smoke", 10, USE("also: [torch], lethal: [quick]"),
                            "steps: {use: {act: \"**USE.**\", lethal: {quick: Be quick.}}}\n"
                            "rows_below: Outside the smoke.\n"), NULL};
    case_procedures(&test, texts);
    case_boat(&test, case_boat_text(&test, CASE_RADIO, TORCHES, ""));
    const struct card_step *step =
        &sheet_steps(case_card(case_compose(&test, false), "smoke"))->items[0];
    assert_int_equal(step->lethal_count, 2);
    assert_string_equal(step->lethal[0].text, "Outside the smoke.");
    assert_string_equal(step->lethal[1].text, "Be quick.");
    case_boat(&test, case_boat_text(&test, CASE_RADIO,
                                    "  - {item: torch, tag: C1, zone: cockpit_locker}\n", ""));
    step = &sheet_steps(case_card(case_compose(&test, false), "smoke"))->items[0];
    assert_int_equal(step->lethal_count, 1);
}

/* ---- the state that is wanted ---- */

static void a_row_never_says_the_contrary_of_its_step(void **state)
{
    (void)state;
    static const struct { const char *how, *on, *off; } cases[] = {
        {"up = on", "up = on", NULL},
        {"both up = on", "both up = on", NULL},
        {"light on = open", "light on = open", NULL},
        {"on = up", "on = up", NULL},
        {"pull to open", "pull to open", NULL},
        {"opens anticlockwise", "opens anticlockwise", NULL},
        {"across pipe = shut", NULL, "across pipe = shut"},
        {"hold STOP P", NULL, "hold STOP P"},
        {"slide to ON", "slide to ON", NULL},
        {"up = on, down = off", "up = on", "down = off"},
        {"lift flap, up = on; down = off", "lift flap, up = on", "lift flap, down = off"},
        {"light on = open, light off = shut", "light on = open", "light off = shut"},
        {"pull hard", "pull hard", "pull hard"},
        {"lever on the left = off", NULL, "lever on the left = off"},
        {"press ON/OFF", "press ON/OFF", "press ON/OFF"},
        {"push on the lid", "push on the lid", "push on the lid"},
        {"lift off its hook", "lift off its hook", "lift off its hook"},
        {"switch to ON position", "switch to ON position", NULL},
        {"press OFF to silence", NULL, "press OFF to silence"},
        {"along = flows", "along = flows", NULL},
        {"up = on: connect the lead", "up = on: connect the lead", NULL},
        {"disconnect the red lead", NULL, "disconnect the red lead"},
    };
    for (size_t i = 0; i < sizeof cases / sizeof *cases; i++) {
        const char *on = words_handling(test.words, cases[i].how, HANDLED_ON, test.arena);
        const char *off = words_handling(test.words, cases[i].how, HANDLED_OFF,
                                         test.arena);
        if (!text_equal(on, cases[i].on) || !text_equal(off, cases[i].off))
            fail_msg("%s: on %s, off %s", cases[i].how, on == NULL ? "-" : on,
                     off == NULL ? "-" : off);
    }
}

static void handling_that_is_lacking_is_told(void **state)
{
    (void)state;
    static const char gear[] =
        "  - {item: bilge_pump_electric, tag: C1, zone: saloon, how: up = on}\n";
    EXPECT_ROWS(monohull_step(USE("uses: [bilge_pump_electric], state: \"on\""), gear),
                "[C1] Electric pump | Saloon: up = on");
    assert_null(case_problem(&test, "how of C1 does not tell how it is turned off or shut: 10 "
                                    "SMOKE CARD prints no handling for it"));
    EXPECT_ROWS(monohull_step(USE("uses: [bilge_pump_electric], state: \"off\""), gear),
                "[C1] Electric pump | Saloon");
    const struct problem *told = case_problem(
        &test, "how of C1 does not tell how it is turned off or shut: 10 SMOKE CARD prints no "
               "handling for it");
    assert_non_null(told);
    assert_int_equal(told->severity, SEVERITY_DEFICIENCY);
    assert_non_null(strstr(told->remedy, "up = on, down = off"));
}

static void a_step_may_show_another_field_than_how(void **state)
{
    (void)state;
    static const char raft[] = "  - {item: liferaft, tag: E1, zone: coachroof, how: pull, "
                               "painter: ring aft, release: slip hook}\n";
    EXPECT_ROWS(monohull_step(USE("uses: [liferaft], shows: painter"), raft),
                "[E1] Raft | Cabin roof: ring aft");
    EXPECT_ROWS(monohull_step(USE("uses: [liferaft], shows: release"), raft),
                "[E1] Raft | Cabin roof: slip hook");
    EXPECT_ROWS(monohull_step(USE("uses: [liferaft], shows: handle"), raft),
                "[E1] Raft | Cabin roof");
}

static void gear_that_only_helps_may_be_lacking(void **state)
{
    (void)state;
    EXPECT_ROWS(monohull_step(USE("also: [knife, torch]"),
                              "  - {item: torch, tag: C1, zone: saloon}\n"),
                "[C1] Torch | Saloon");
}

static void every_tag_of_a_row_is_on_the_plan_once(void **state)
{
    (void)state;
    (void)monohull_step(USE("uses: [torch], also: [fire_extinguisher, torch]"),
                        "  - {item: torch, tag: C1, zone: saloon, at: [5.5, -0.25]}\n"
                        EXTINGUISHER("F1", "saloon") EXTINGUISHER("F2", "forward_cabin"));
    const struct sheet *card = case_card(case_compose(&test, false), "smoke");
    const struct plan_facts *plan = sheet_plan(card);
    static const char *const tags[] = {"C1", "F1", "F2"};
    assert_int_equal(plan->marker_count, 3);
    for (size_t i = 0; i < 3; i++)
        assert_string_equal(plan->markers[i].tag, tags[i]);
    assert_true(plan->markers[0].exact);
    assert_int_equal(plan->markers[0].x_mm, 5500);
    assert_int_equal(plan->markers[0].y_mm, -250);
    assert_false(plan->markers[1].exact);
    assert_int_equal(plan->markers[1].x_mm, 12000 * (35 + 55) / 200);
    assert_int_equal(plan->markers[1].level, LEVEL_BELOW);
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(a_row_says_what_where_and_how),
        TEST(rows_come_in_the_order_of_the_step_then_of_the_record),
        TEST(what_is_inside_the_burning_space_says_so),
        TEST(equal_neighbours_share_a_row),
        TEST(unlike_neighbours_keep_their_rows),
        TEST(gear_that_only_helps_has_rows_like_other_gear),
        TEST(gear_that_lies_too_far_is_not_offered),
        TEST(a_line_stands_over_rows_below),
        TEST(a_row_never_says_the_contrary_of_its_step),
        TEST(handling_that_is_lacking_is_told),
        TEST(a_step_may_show_another_field_than_how),
        TEST(gear_that_only_helps_may_be_lacking),
        TEST(every_tag_of_a_row_is_on_the_plan_once),
    };
    int failed = cmocka_run_group_tests(tests, NULL, NULL);
    return failed != 0;
}
