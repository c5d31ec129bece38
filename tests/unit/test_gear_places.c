/* test_gear_places.c - where gear is worked from, its handle, what it is behind, the way to it
 * and what must be so for it: as read, as judged, and as a row prints it. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "card_fixture.h"
#include "compose/compose_room.h"
#include "text.h"

/* The card of one step on a boat with this gear. */
static const struct sheet *card_of(const char *logic, const char *gear)
{
    const char *const texts[] = {
        case_procedure_text(&test, "smoke", 10, logic,
                            "steps: {stop: {act: \"**STOP.**\"}, use: {act: \"**USE.**\"}}\n"),
        NULL};
    case_procedures(&test, texts);
    case_boat(&test, case_boat_text(&test, CASE_RADIO, gear, ""));
    return case_card(case_compose(&test, false), "smoke");
}

#define STOP_AND_USE(list) \
    "steps: [{id: stop, practice: yes}, {id: use, practice: yes, " list "}]\n"

/* The first row of the second step; "-": there is none. */
static const char *row_of(const char *list, const char *gear)
{
    const struct sheet *card = card_of(
        text_format(test.arena, STOP_AND_USE("%s"), list), gear);
    const struct card_step *step = &sheet_steps(card)->items[1];
    return step->row_count == 0 ? "-" : case_row(&test, &step->rows[0]);
}

static const struct equipment *gear_read(const char *entry)
{
    return case_boat(&test, case_boat_text(&test, CASE_RADIO,
                                           text_format(test.arena, "  - {%s}\n", entry),
                                           ""))->equipment;
}

#define PUMP "item: bilge_pump_electric, tag: C1, zone: bilge"
#define PANEL ", from: {zone: navigation_station, side: port, spot: panel}, how: {on: up}"

static void a_row_prints_where_one_stands(void **state)
{
    (void)state;
    assert_string_equal(row_of("uses: [{bilge_pump_electric: on}]", "  - {" PUMP PANEL "}\n"),
                        "Chart table, PORT, panel | [C1] Electric pump = up: ON");
}

static void a_row_prints_what_it_is_behind(void **state)
{
    (void)state;
    assert_string_equal(
        row_of("uses: [{seacock: shut}]",
               "  - {item: seacock, tag: C1, zone: saloon, side: port, spot: under seat, "
               "behind: two cushions, how: {shut: across}}\n"),
        "Saloon, PORT, under seat, behind two cushions | [C1] Seacock = across: SHUT");
}

#define HAND_PUMP "  - {item: bilge_pump_manual, tag: C1, zone: cockpit, side: port"

/* The rows of that one place, with what stands above them. */
static void expect_condition(const char *list, const char *gear, const char *row,
                             const char *condition)
{
    assert_string_equal(row_of(list, gear), row);
    const struct card_step *step = &sheet_steps(
        case_card(case_compose(&test, false), "smoke"))->items[1];
    assert_int_equal(step->condition_count, condition == NULL ? 0 : 1);
    if (condition != NULL)
        assert_string_equal(step->conditions[0].text, condition);
}

static void the_handle_is_told_before_the_rows(void **state)
{
    (void)state;
    static const struct { const char *gear, *row, *condition; } rows[] = {
        {HAND_PUMP ", how: push in, handle: {zone: cockpit_locker, side: starboard, spot: lid}}\n",
         "Cockpit, PORT | [C1] Hand pump = push in",
         "**C1** handle: Cockpit locker, starboard, lid."},
        {HAND_PUMP ", handle: on its lid}\n", "Cockpit, PORT | [C1] Hand pump",
         "**C1** handle: on its lid."},
        {HAND_PUMP ", handle: {spot: {en: on its lid, de: am Deckel}}}\n",
         "Cockpit, PORT | [C1] Hand pump", "**C1** handle: on its lid."},
        {HAND_PUMP ", handle: }\n", "Cockpit, PORT | [C1] Hand pump", NULL},
    };
    for (size_t i = 0; i < sizeof rows / sizeof *rows; i++)
        expect_condition("uses: [bilge_pump_manual]", rows[i].gear, rows[i].row,
                         rows[i].condition);
}

#define FLAP "  - {item: engine_vent_closure, tag: C1, zone: cockpit, side: port"

static void what_must_be_so_is_told_before_the_rows(void **state)
{
    (void)state;
    static const char shut[] = "uses: [{engine_vent_closure: shut}]";
    expect_condition(shut, FLAP ", only_when: [engine_running, platform_up]}\n",
                     "Cockpit, PORT | [C1] Vent flap = SHUT",
                     "**C1** only with engine running, platform up.");
    expect_condition(shut, FLAP ", how: {shut: push}, only_when: platform_down}\n",
                     "Cockpit, PORT | [C1] Vent flap = push: SHUT",
                     "**C1** only with platform down.");
}

static void a_step_after_the_stop_is_told_of(void **state)
{
    (void)state;
    static const char told[] = "C1 works only with the engine running: 10 SMOKE CARD stops that "
                               "before";
    static const char gear[] = FLAP ", only_when: engine_running}\n"
                               "  - {item: engine_stop, tag: C2, zone: cockpit}\n";
    card_of("steps: [{id: stop, practice: yes, uses: engine_stop}, {id: use, practice: yes, "
            "uses: [{engine_vent_closure: shut}]}]\n", gear);
    assert_non_null(case_problem(&test, told));
    card_of("steps: [{id: use, practice: yes, uses: [{engine_vent_closure: shut}]}, {id: stop, "
            "practice: yes, uses: engine_stop}]\n", gear);
    assert_null(case_problem(&test, told));
}

/* ---- reach ---- */

static void reach_is_judged_where_one_stands(void **state)
{
    (void)state;
    static const struct { const char *entry; enum reach reach; } rows[] = {
        {PUMP, REACH_BELOW},
        {PUMP ", from: {zone: cockpit}", REACH_OPEN_DECK},
        {PUMP ", from: {zone: cockpit}, below: yes", REACH_OPEN_DECK},
        {PUMP ", from: {zone: cockpit_locker, side: port}", REACH_DECK},
        {PUMP ", from: {zone: saloon}", REACH_BELOW},
        {PUMP ", from: {zone: saloon}, from_cockpit: yes", REACH_COMPANIONWAY},
        {PUMP ", from: {zone: cockpit}, from_cockpit: no", REACH_BELOW},
        {PUMP ", from: {zone: cockpit}, inside: [saloon]", REACH_BELOW},
        {PUMP ", from: {zone: cockpit}, past: [galley]", REACH_BELOW},
        {PUMP ", from: {zone: cockpit}, past: [cockpit_locker]", REACH_OPEN_DECK},
        {PUMP ", from: {zone: cockpit}, inside: [cockpit_locker]", REACH_DECK},
    };
    for (size_t i = 0; i < sizeof rows / sizeof *rows; i++)
        if (gear_reach(gear_read(rows[i].entry)) != rows[i].reach)
            fail_msg("%s", rows[i].entry);
}

/* A pump is no nearer than its handle. */
static void a_handle_is_fetched_first(void **state)
{
    (void)state;
    static const struct { const char *rest; enum reach reach; } rows[] = {
        {", handle: on a hook", REACH_OPEN_DECK},
        {", handle: {zone: pushpit}", REACH_OPEN_DECK},
        {", handle: {zone: cockpit_locker, side: port}", REACH_DECK},
        {", handle: {zone: saloon}", REACH_BELOW},
        {", handle: {zone: saloon}, from_cockpit: yes", REACH_COMPANIONWAY},
        {", handle: {zone: companionway}, from_cockpit: yes", REACH_COMPANIONWAY},
        {", handle: {zone: forepeak}, from_cockpit: yes", REACH_BELOW},
        {", handle: {zone: bilge}, from_cockpit: yes", REACH_BELOW},
    };
    for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
        const char *entry = text_format(
            test.arena, "item: bilge_pump_manual, tag: C1, zone: cockpit%s", rows[i].rest);
        if (gear_reach(gear_read(entry)) != rows[i].reach)
            fail_msg("%s", entry);
    }
}

#define VALVE(rest) \
    "  - {item: fuel_shutoff_diesel, tag: C1, zone: engine_space, how: {shut: pull}" rest "}\n"

/* A valve in the burning space that is worked by a pull outside is worked there; one that is
 * outside but reached past it is left. */
static void the_way_counts_as_inside_what_burns(void **state)
{
    (void)state;
    static const struct { const char *gear, *row; } rows[] = {
        {VALVE(", inside: []"), "Engine space | [C1] Fuel valve = inside: DON’T TOUCH"},
        {VALVE(", from: {zone: cockpit}, inside: []"), "Cockpit | [C1] Fuel valve = pull: SHUT"},
        {VALVE(", from: {zone: cockpit}, past: [engine_space]"),
         "Cockpit | [C1] Fuel valve = inside: DON’T TOUCH"},
        {"  - {item: fuel_shutoff_diesel, tag: C1, zone: saloon, how: {shut: pull}, "
         "inside: [], past: [engine_space], handle: on it, only_when: engine_stopped}\n",
         "Saloon | [C1] Fuel valve = inside: DON’T TOUCH"},
    };
    for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
        const struct sheet *card = card_of(
            "per: engine_space\n" STOP_AND_USE("uses: [{fuel_shutoff_diesel: shut}]"),
            rows[i].gear);
        assert_string_equal(case_row(&test, &sheet_steps(card)->items[1].rows[0]), rows[i].row);
        assert_int_equal(sheet_steps(card)->items[1].condition_count, 0);
    }
}

/* Gear worked from a locker is reached for there, wherever it is itself. */
static void lockers_are_those_one_reaches_into(void **state)
{
    (void)state;
    const struct boat *boat = case_boat(&test, case_boat_text(
        &test, CASE_RADIO,
        "  - {item: lpg_bottle_valve, tag: C1, zone: cockpit_locker, side: port}\n"
        "  - {item: bilge_pump_manual, tag: C2, zone: bilge, from: {zone: cockpit_locker, "
        "side: port}}\n"
        "  - {item: bucket_lanyard, tag: C3, zone: cockpit_locker, side: port, from: {zone: "
        "cockpit}}\n"
        "  - {item: bilge_pump_manual, tag: C4, zone: cockpit, handle: {zone: cockpit_locker, "
        "side: port}}\n"
        "  - {item: bilge_pump_manual, tag: C5, zone: cockpit, spot: aft, handle: {zone: "
        "cockpit_locker, side: starboard}}\n", ""));
    static const bool shares[] = {false, true, false, true, false};
    for (size_t i = 1; i < sizeof shares / sizeof *shares; i++)
        assert_int_equal(gear_shares_locker(&boat->equipment[0], &boat->equipment[i]), shares[i]);
}

/* ---- the plans ---- */

/* A card's tag stands where one goes; the safety plan's where the piece is. */
static void a_tag_stands_where_its_row_says(void **state)
{
    (void)state;
    const struct sheet *card = card_of(STOP_AND_USE("uses: [{bilge_pump_electric: on}]"),
                                       "  - {" PUMP PANEL "}\n");
    assert_ptr_equal(sheet_plan(card)->markers[0].zone, zone_of(ZONE_navigation_station));
    assert_int_equal(sheet_plan(card)->markers[0].side, SIDE_PORT);
    assert_ptr_equal(marker_of(test.boat, &test.boat->equipment[0]).zone, zone_of(ZONE_bilge));
}

static void places_that_contradict_are_refused(void **state)
{
    (void)state;
    bool sound = true;
    static const char text[] =
        "boat: {name: Alder, hull: monohull, rig: sail, loa_m: 10, beam_m: 3, persons_max: 4}\n"
        "equipment:\n"
        "  - {item: torch, tag: C1, zone: saloon, from: {zone: cockpit_locker_port, "
        "side: starboard}}\n"
        "  - {item: torch, tag: C2, zone: galley, from: {side: port}}\n"
        "  - {item: torch, tag: C3, zone: mast, from: {zone: bridgedeck}}\n"
        "  - {item: torch, tag: C4, zone: bilge, past: [bridgedeck], only_when: [engine_on]}\n"
        "  - {item: torch, tag: C5, zone: cockpit, handle: on a hook}\n";
    struct problems *problems = problems_new(test.arena);
    boat_read(source_from(test.arena, "alder.yaml", text, strlen(text)), "alder", test.arena,
              problems, &sound);
    assert_false(sound);
    assert_int_equal(problems_count(problems, SEVERITY_ERROR), 6);
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(a_row_prints_where_one_stands),
        TEST(a_row_prints_what_it_is_behind),
        TEST(the_handle_is_told_before_the_rows),
        TEST(what_must_be_so_is_told_before_the_rows),
        TEST(a_step_after_the_stop_is_told_of),
        TEST(reach_is_judged_where_one_stands),
        TEST(a_handle_is_fetched_first),
        TEST(the_way_counts_as_inside_what_burns),
        TEST(lockers_are_those_one_reaches_into),
        TEST(a_tag_stands_where_its_row_says),
        TEST(places_that_contradict_are_refused),
    };
    int failed = cmocka_run_group_tests_name("gear_places", tests, NULL, NULL);
    return failed != 0;
}
