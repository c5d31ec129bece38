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

static void expect_rows(const struct card_step *step, const char *const *rows)
{
    size_t count = 0;
    for (; rows[count] != NULL; count++) {
        assert_true(count < step->row_count);
        assert_string_equal(case_row(&test, &step->rows[count]), rows[count]);
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
                "Cockpit, PORT, by the wheel | [C1] Engine stop = hold STOP",
                "Cabin roof | [E1] Raft, 8 persons", "Saloon | [E2] 8 lifejackets",
                "Galley, CENTRE | [F1] Foam bottle, 2 kg");
}

static void rows_come_in_the_order_of_the_step_then_of_the_record(void **state)
{
    (void)state;
    EXPECT_ROWS(monohull_step(USE("uses: [torch, flares]"),
                              "  - {item: flares, tag: E1, zone: saloon}\n"
                              "  - {item: torch, tag: C2, zone: galley}\n"
                              "  - {item: torch, tag: C1, zone: saloon}\n"),
                "Galley | [C2] Torch", "Saloon | [C1] Torch [E1] Flares");
}

/* A control inside the burning space is not to be fetched. */
static void what_is_inside_the_burning_space_says_so(void **state)
{
    (void)state;
    const char *const texts[] = {
        case_procedure_text(&test, "smoke", 10,
                            USE("uses: [{fuel_shutoff_diesel: shut}, fire_port]")
                            "per: engine_space\n", USE_TEXTS), NULL};
    case_procedures(&test, texts);
    case_boat(&test, case_boat_text(
        &test, CASE_RADIO,
        "  - {item: fuel_shutoff_diesel, tag: C1, zone: saloon, how: {shut: across}, "
        "inside: [engine_space]}\n"
        "  - {item: fuel_shutoff_diesel, tag: C2, zone: galley, how: {shut: across}, inside: []}\n"
        "  - {item: fire_port, tag: F1, zone: engine_space, how: push in}\n", ""));
    const struct sheet *card = case_card(case_compose(&test, false), "smoke");
    EXPECT_ROWS(&sheet_steps(card)->items[0], "Saloon | [C1] Fuel valve = inside: DON’T TOUCH",
                "Galley | [C2] Fuel valve = across: SHUT",
                "Engine space | [F1] Fire port = push in");
}

/* ---- gear of one place ---- */

#define AT(tag, place) "  - {item: torch, tag: " tag ", zone: cockpit" place "}\n"

/* Zone, side and level tell places apart; the spot where it is one stands with the place, else
 * with each piece. */
static void gear_of_one_place_is_one_row(void **state)
{
    (void)state;
    EXPECT_ROWS(monohull_step(USE("uses: [torch, flares]"),
                              AT("C1", ", side: port, spot: hook, name: Lamp")
                              AT("C2", ", side: starboard, spot: hook")
                              "  - {item: flares, tag: E1, zone: cockpit, side: port, spot: box}\n"
                              "  - {item: flares, tag: E2, zone: saloon}\n"),
                "Cockpit, PORT | [C1] Lamp, hook [E1] Flares, box",
                "Cockpit, STARBOARD, hook | [C2] Torch", "Saloon | [E2] Flares");
    EXPECT_ROWS(monohull_step(USE("uses: [torch, flares]"),
                              AT("C1", ", side: port, spot: hook")
                              "  - {item: flares, tag: E1, zone: cockpit, side: port, "
                              "spot: hook}\n"),
                "Cockpit, PORT, hook | [C1] Torch [E1] Flares");
    EXPECT_ROWS(monohull_step(USE("uses: [torch]"),
                              AT("C1", ", side: both") AT("C2", "")
                              "  - {item: torch, tag: C3, zone: lazarette}\n"
                              "  - {item: torch, tag: C4, zone: lazarette, below: yes, "
                              "spot: low}\n"),
                "Cockpit, BOTH SIDES | [C1] Torch", "Cockpit | [C2] Torch",
                "Aft locker | [C3] Torch", "Aft locker, low | [C4] Torch");
}

/* ---- gear that shares a name ---- */

#define STOPS(tag, serves) \
    "  - {item: engine_stop, tag: " tag ", zone: cockpit, side: port, how: hold STOP" serves "}\n"
#define PORT ", serves: [engine_space_port]"
#define STARBOARD ", serves: [engine_space_starboard]"
#define BOTH ", serves: [engine_space_port, engine_space_starboard]"

static void equal_neighbours_share_a_name(void **state)
{
    (void)state;
    EXPECT_ROWS(two_engine_step(USE("uses: [engine_stop]"),
                                STOPS("C1", PORT) STOPS("C2", STARBOARD)),
                "Cockpit, PORT | [C1][C2] 2 engine stops = hold STOP");
    EXPECT_ROWS(two_engine_step(USE("uses: [engine_stop]"),
                                STOPS("C1", PORT) STOPS("C2", STARBOARD) STOPS("C3", BOTH)
                                STOPS("C4", "")),
                "Cockpit, PORT | [C1][C2][C3] 3 engine stops = hold STOP "
                "[C4] Engine stop = hold STOP");
}

static void unlike_neighbours_keep_their_names(void **state)
{
    (void)state;
    EXPECT_ROWS(two_engine_step(USE("uses: [engine_stop]"),
                                STOPS("C1", PORT)
                                "  - {item: engine_stop, tag: C2, zone: cockpit, side: port, "
                                "how: pull" BOTH "}\n" STOPS("C3", STARBOARD)),
                "Cockpit, PORT | [C1] Engine stop = hold STOP [C2] Engine stop = pull "
                "[C3] Engine stop = hold STOP");
    EXPECT_ROWS(two_engine_step(USE("uses: [engine_stop]"),
                                STOPS("C1", PORT ", count: 2") STOPS("C2", STARBOARD)),
                "Cockpit, PORT | [C1] 2 engine stops = hold STOP [C2] Engine stop = hold STOP");
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
                    "Saloon | [F1] Extinguisher", "Forward cabin | [F2] Extinguisher",
                    "Saloon, PORT, by the door | [F3] Extinguisher");
    EXPECT_ROWS(monohull_step(
                    USE("also: [fire_extinguisher]"),
                    "  - {item: fire_extinguisher, tag: F1, zone: cockpit_locker, side: port}\n"
                    "  - {item: fire_extinguisher, tag: F2, zone: cockpit_locker, "
                    "side: starboard}\n"),
                "Cockpit locker, PORT | [F1] Extinguisher",
                "Cockpit locker, STARBOARD | [F2] Extinguisher");
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
                "Cockpit | [C1] Torch");
    EXPECT_ROWS(monohull_step(USE("also: [torch], within: deck"), TORCHES),
                "Cockpit | [C1] Torch", "Cockpit locker | [C2] Torch");
    EXPECT_ROWS(monohull_step(USE("uses: [torch], within: companionway"), TORCHES),
                "Cockpit | [C1] Torch", "Cockpit locker | [C2] Torch",
                "Companionway | [C3] Torch");
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

/* Nobody is sent to it: it is for those who are there. */
static void a_hatch_is_shown_to_those_below(void **state)
{
    (void)state;
    const char *const texts[] = {
        case_procedure_text(&test, "smoke", 10, USE("also: [torch, {hatch: open}], within: deck"),
                            "steps: {use: {act: \"**USE.**\"}}\n"
                            "rows_below: Outside the smoke.\n"), NULL};
    case_procedures(&test, texts);
    case_boat(&test, case_boat_text(&test, CASE_RADIO,
                                    "  - {item: torch, tag: C4, zone: saloon}\n"
                                    "  - {item: hatch, tag: E12, zone: forward_cabin, "
                                    "how: {open: push, shut: pull}}\n", ""));
    const struct card_step *step =
        &sheet_steps(case_card(case_compose(&test, false), "smoke"))->items[0];
    EXPECT_ROWS(step, "Forward cabin | [E12] Hatch = push: OPEN");
    assert_int_equal(step->lethal_count, 0);
}

/* ---- the state that is wanted ---- */

#define PUMP(how) "  - {item: bilge_pump_electric, tag: C1, zone: saloon, how: " how "}\n"

static void a_row_says_the_state_of_its_step_alone(void **state)
{
    (void)state;
    static const char both[] = PUMP("{on: both up, off: both down}");
    EXPECT_ROWS(monohull_step(USE("uses: [{bilge_pump_electric: \"on\"}]"), both),
                "Saloon | [C1] Electric pump = both up: ON");
    EXPECT_ROWS(monohull_step(USE("uses: [{bilge_pump_electric: off}]"), both),
                "Saloon | [C1] Electric pump = both down: OFF");
    EXPECT_ROWS(monohull_step(USE("uses: [{bilge_pump_electric: leave}]"), both),
                "Saloon | [C1] Electric pump = DON’T TOUCH");
}

static void handling_that_is_lacking_is_told(void **state)
{
    (void)state;
    static const char told[] =
        "how of C1 does not tell how it comes to be off: cards print the state alone";
    EXPECT_ROWS(monohull_step(USE("uses: [{bilge_pump_electric: on}]"), PUMP("{on: up}")),
                "Saloon | [C1] Electric pump = up: ON");
    assert_null(case_problem(&test, told));
    EXPECT_ROWS(monohull_step(USE("uses: [{bilge_pump_electric: off}]"), PUMP("{on: up}")),
                "Saloon | [C1] Electric pump = OFF");
    assert_non_null(case_problem(&test, told));
    assert_int_equal(case_problem(&test, told)->severity, SEVERITY_NOTE);
    assert_non_null(strstr(case_problem(&test, told)->remedy, "how: {off: ...}"));
}

/* A check tells where nothing at all is recorded of gear that a hand works. */
static void handling_of_no_state_is_told_by_the_check_alone(void **state)
{
    (void)state;
    EXPECT_ROWS(monohull_step(USE("uses: [{bilge_pump_electric: off}]"), PUMP("")),
                "Saloon | [C1] Electric pump = OFF");
    assert_null(case_problem(&test, "how of C1 does not tell how it comes to be off: cards "
                                    "print the state alone"));
}

static void a_state_may_be_told_by_another_field_than_how(void **state)
{
    (void)state;
    static const char raft[] = "  - {item: liferaft, tag: E1, zone: coachroof, how: pull, "
                               "painter: ring aft, release: hook}\n";
    EXPECT_ROWS(monohull_step(USE("uses: [{liferaft: tied}]"), raft),
                "Cabin roof | [E1] Raft = ring aft: TIED");
    EXPECT_ROWS(monohull_step(USE("uses: [{liferaft: release}]"), raft),
                "Cabin roof | [E1] Raft = hook: RELEASE");
    EXPECT_ROWS(monohull_step(USE("uses: [{liferaft: pull}]"), raft),
                "Cabin roof | [E1] Raft = pull: PULL");
    EXPECT_ROWS(monohull_step(USE("uses: [liferaft]"), raft), "Cabin roof | [E1] Raft = pull");
    EXPECT_ROWS(monohull_step(USE("uses: [{liferaft: cut}]"), raft),
                "Cabin roof | [E1] Raft = CUT");
}

static void gear_that_only_helps_may_be_lacking(void **state)
{
    (void)state;
    EXPECT_ROWS(monohull_step(USE("also: [knife, torch]"),
                              "  - {item: torch, tag: C1, zone: saloon}\n"),
                "Saloon | [C1] Torch");
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
        TEST(gear_of_one_place_is_one_row),
        TEST(equal_neighbours_share_a_name),
        TEST(unlike_neighbours_keep_their_names),
        TEST(gear_that_only_helps_has_rows_like_other_gear),
        TEST(gear_that_lies_too_far_is_not_offered),
        TEST(a_line_stands_over_rows_below),
        TEST(a_hatch_is_shown_to_those_below),
        TEST(a_row_says_the_state_of_its_step_alone),
        TEST(handling_of_no_state_is_told_by_the_check_alone),
        TEST(handling_that_is_lacking_is_told),
        TEST(a_state_may_be_told_by_another_field_than_how),
        TEST(gear_that_only_helps_may_be_lacking),
        TEST(every_tag_of_a_row_is_on_the_plan_once),
    };
    int failed = cmocka_run_group_tests(tests, NULL, NULL);
    return failed != 0;
}
