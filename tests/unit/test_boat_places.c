/* test_boat_places.c - a boat file: zones, sides, positions, spaces, field rules. */
#include "boat_case.h"

static const struct boat *catamaran_gear_of(const char *entry)
{
    return boat_of(text_format(test.arena, CATAMARAN "equipment:\n  - {%s}\n", entry));
}

static void a_side_cannot_contradict_its_zone(void **state)
{
    (void)state;
    const struct boat *boat =
        gear_of("item: hatch, tag: E4, zone: aft_cabin_port, side: starboard");
    expect_errors(1);
    expect_error(3, "aft_cabin_port lies to port, but side says starboard",
                 "take `side` out, or write zone: aft_cabin");
    assert_int_equal(boat->equipment_count, 0);
}

static void catamaran_zones_are_not_on_monohulls(void **state)
{
    (void)state;
    gear_of("item: liferaft, tag: E1, zone: trampoline, inside: [port_hull]");
    expect_errors(2);
    expect_error(3, "trampoline is found on boats with several hulls only",
                 "name a zone of a monohull, or correct the boat's hull");
    expect_error(3, "port_hull is found on boats with several hulls only", NULL);
}

static void a_catamarans_engine_space_needs_a_side(void **state)
{
    (void)state;
    catamaran_gear_of("item: seacock, tag: C1, zone: engine_space");
    expect_errors(1);
    expect_error(3, "engine_space is not one place on a catamaran: say which side",
                 "write engine_space_port or engine_space_starboard");
}

static void a_catamarans_engine_space_with_a_side(void **state)
{
    (void)state;
    const struct boat *boat =
        catamaran_gear_of("item: seacock, tag: C1, zone: engine_space, side: starboard");
    expect_errors(0);
    assert_string_equal(boat->equipment[0].place_zone->key, "engine_space_starboard");
    assert_int_equal(boat->engine_space_count, 2);
    assert_int_equal(boat->engine_spaces[1], ZONE_engine_space_starboard);
}

static void inside_and_space_name_the_side_too(void **state)
{
    (void)state;
    catamaran_gear_of("item: lithium_bank, tag: C1, zone: saloon, space: engine_space, "
                      "inside: [engine_space], serves: [engine_space]");
    expect_errors(3);
    expect_error(3, "engine_space is not one place on a catamaran: say which side", NULL);
    expect_error(3, "this boat has no engine_space",
                 "name the space of an engine of this boat, or correct engines");
}

static void a_place_in_a_hull_needs_the_hull(void **state)
{
    (void)state;
    catamaran_gear_of("item: seacock, tag: C1, zone: forward_heads");
    expect_errors(1);
    expect_error(3, "forward_heads lies in a hull of a catamaran: say which",
                 "write side: port, side: starboard or side: both");
}

static void one_engine_may_be_recorded(void **state)
{
    (void)state;
    const struct boat *boat = boat_of(
        CATAMARAN "engines: [{space: engine_space, fuel: diesel, drive: shaft}]\n"
        "equipment:\n  - {item: seacock, tag: C1, zone: engine_space}\n");
    expect_errors(0);
    assert_int_equal(boat->engine_space_count, 1);
    assert_int_equal(boat->engine_spaces[0], ZONE_engine_space);
}

static void engine_spaces_must_make_sense(void **state)
{
    (void)state;
    boat_of(CATAMARAN "engines:\n  - {space: engine_space}\n  - {space: engine_space_port}\n");
    expect_errors(1);
    expect_error(3, "engine_space stands beside one of its halves", NULL);
    test.problems = problems_new(test.arena);
    boat_of(MONOHULL "engines:\n  - {space: engine_space_port}\n");
    expect_errors(1);
    expect_error(3, "engine_space_port is found on catamarans only", "write engine_space");
    test.problems = problems_new(test.arena);
    boat_of(MONOHULL "engines:\n  - {space: generator_space, drive: shaft}\n");
    expect_errors(1);
    expect_error(3, "generator_space is that of a generator, which drives nothing",
                 "name the engine space that it stands in, or correct its drive");
    test.problems = problems_new(test.arena);
    boat_of(MONOHULL "engines:\n  - {drive: saildrive}\n"
            "  - {space: engine_space, drive: outboard}\n");
    expect_errors(2);
    expect_error(3, "an engine needs its space, unless it is an outboard",
                 "write space: and where it stands, as engine_space; or drive: outboard");
    expect_error(4, "an outboard has no engine space",
                 "take `space` out: an outboard hangs outside; or correct its drive");
}

static void gear_stands_once_in_a_place(void **state)
{
    (void)state;
    boat_of(MONOHULL "equipment:\n"
                     "  - {item: seacock, tag: C1, zone: cockpit_locker, side: port}\n"
                     "  - {item: seacock, tag: C2, zone: cockpit_locker_port}\n"
                     "  - {item: seacock, tag: C3, zone: cockpit_locker_port, name: drain}\n"
                     "  - {item: seacock, tag: C4, zone: cockpit_locker_port, spot: aft}\n");
    expect_errors(1);
    expect_error(4, "seacock stands in the same place twice (first on line 3)",
                 "take one out, tell them apart by `spot` or `name`, or write `count`");
}

static void one_panel_may_stop_two_engines(void **state)
{
    (void)state;
    boat_of(CATAMARAN
            "equipment:\n"
            "  - {item: engine_stop, tag: C1, zone: cockpit, serves: engine_space_port}\n"
            "  - {item: engine_stop, tag: C2, zone: cockpit, serves: [engine_space_starboard]}\n");
    expect_errors(0);
}

static void a_battery_may_stand_in_its_own_box(void **state)
{
    (void)state;
    const struct boat *boat = gear_of("item: lithium_bank, tag: C1, zone: saloon, space: own_box");
    expect_errors(0);
    assert_int_equal(boat->equipment[0].space.value, AIR_OWN_BOX);
}

static void an_outboard_boat_has_no_engine_space(void **state)
{
    (void)state;
    const struct boat *boat = boat_of(MONOHULL "engines: [{fuel: petrol, drive: outboard}]\n");
    expect_errors(0);
    assert_int_equal(boat->engine_space_count, 0);
    boat = boat_of(MONOHULL "engines: []\n");
    expect_errors(0);
    assert_int_equal(boat->engine_space_count, 0);
}

static void lists_of_something_else_are_told_once(void **state)
{
    (void)state;
    boat_of(MONOHULL "equipment:\n  - {tag: C1}\n  - torch\n"
                     "not_fitted: [{torch: no}]\nretired_tags: [[C2]]\n");
    assert_false(sound);
    expect_errors(7);
    expect_error_with(5, "not_fitted", "torch");
    expect_error_with(5, "not_fitted", "serves");
    expect_error_with(6, "retired_tags", "list");
}

static void positions_are_metres(void **state)
{
    (void)state;
    const struct boat *boat =
        gear_of("item: torch, tag: C1, zone: galley, side: port, at: [7.15, -1.2]");
    expect_errors(0);
    assert_true(boat->equipment[0].at.given);
    assert_int_equal(boat->equipment[0].at.first.milli, 7150);
    assert_int_equal(boat->equipment[0].at.second.milli, -1200);
}

static void wrong_positions_are_told(void **state)
{
    (void)state;
    static const struct { const char *at, *what; } rows[] = {
        {"[7.155, -1]", "at must be two numbers with at most two decimals"},
        {"[seven, -1]", "\"at\" must be a list of two numbers"},
        {"[7]", "\"at\" must be a list of two numbers"},
        {"7.1", "\"at\" must be a list of two numbers"},
        {"[13.9, 0]", "at lies outside the boat"},
        {"[-0.1, 0]", "at lies outside the boat"},
        {"[7, -2.1]", "at lies outside the boat"},
        {"[7, 1]", "at lies on the other side of the boat than `side` or `zone` says"},
    };
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
        test.problems = problems_new(test.arena);
        const struct boat *boat =
            gear_of(text_format(test.arena, "item: torch, tag: C1, zone: galley, side: port, "
                                            "at: %s", rows[i].at));
        expect_errors(1);
        expect_error(3, rows[i].what, NULL);
        assert_false(boat->equipment[0].at.given);
    }
}

/* ---- fields ---- */

static void mistyped_words_get_the_nearest(void **state)
{
    (void)state;
    const struct boat *boat = boat_of(
        MONOHULL "equipment:\n"
                 "  - {item: lifraft, tag: E1, zone: cockpit}\n"
                 "  - {item: torch, tag: C1, zone: cokpit}\n"
                 "  - {item: knife, tag: E2, zone: cockpit, sied: port}\n"
                 "  - {item: knife, tag: E3, zone: galley, inside: [galey]}\n"
                 "  - {item: engine_stop, tag: C2, zone: cockpit, stop: mechanicl}\n"
                 "not_fitted: [solar_isolater]\n");
    expect_errors(6);
    expect_error_with(3, "lifraft", "liferaft");
    expect_error_with(4, "cokpit", "cockpit");
    expect_error_with(5, "sied", "side");
    expect_error_with(6, "galey", "galley");
    expect_error_with(7, "mechanicl", "mechanical");
    expect_error_with(8, "solar_isolater", "solar_isolator");
    assert_int_equal(boat->equipment_count, 3);
    assert_false(sound);
}

static void numbers_keep_their_range(void **state)
{
    (void)state;
    boat_of("boat: {name: A, hull: monohull, rig: sail, loa_m: 3.9, beam_m: 4, persons_max: 31}\n"
            "equipment:\n"
            "  - {item: seacock, tag: C1, zone: galley, bore_mm: 201, depth_m: 3.5, bung_mm: 4}\n"
            "  - {item: fire_extinguisher, tag: F1, zone: galley, kg: 61}\n"
            "  - {item: lifejacket, tag: E1, zone: galley, kg_low: 60, kg_high: 40}\n");
    expect_errors(7);
    expect_error_with(1, "loa_m", "3.9");
    expect_error_with(1, "persons_max", "31");
    expect_error_with(3, "bore_mm", "201");
    expect_error_with(4, "kg", "61");
    expect_error(5, "kg_low 60 is more than kg_high 40",
                 "kg_low is the lightest wearer, kg_high the heaviest");
}

static void what_is_required_is_asked_for(void **state)
{
    (void)state;
    assert_non_null(boat_of("boat: {flag: QZ}\nequipment:\n  - {tag: C1}\n"));
    assert_false(sound);
    expect_errors(8);
    expect_error_with(1, "name", "boat");
    expect_error_with(1, "rig", "boat");
    expect_error_with(1, "persons_max", "boat");
    expect_error_with(3, "item", "equipment");
    expect_error_with(3, "zone", "equipment");
}

static void names_are_clean_and_short(void **state)
{
    (void)state;
    boat_of("boat: {name: \"Tamarisk \", hull: monohull, rig: sail, loa_m: 12, "
            "beam_m: 4, persons_max: 8}\n"
            "equipment:\n"
            "  - {item: seacock, tag: C1, zone: galley, name: \"sink  drain\", spot: \" left\"}\n"
            "  - {item: seacock, tag: C2, zone: galley, "
            "name: a name that is much longer than it may be}\n");
    expect_errors(4);
    expect_error(1, "name ends with a space",
                 "write the words with single spaces between them, on one line");
    expect_error(3, "name holds two spaces in a row", NULL);
    expect_error(3, "spot begins with a space", NULL);
    expect_error(4, "name is 41 characters long, at most 34 fit",
                 "shorten it: a card never cuts a name");
}

static void a_file_without_a_boat_is_none(void **state)
{
    (void)state;
    static const char *const files[] = {"equipment: []\n", "boat: Tamarisk\n", "- boat\n",
                                        "boat: {name: [}\n"};
    for (size_t i = 0; i < sizeof files / sizeof files[0]; i++) {
        test.problems = problems_new(test.arena);
        sound = true;
        assert_null(boat_of(files[i]));
        assert_false(sound);
        assert_true(problems_count(test.problems, SEVERITY_ERROR) > 0);
    }
}

static void equipment_is_a_list(void **state)
{
    (void)state;
    boat_of(MONOHULL "equipment: {item: torch}\n");
    expect_errors(1);
    expect_error(2, "\"equipment\" must be a list, not a mapping",
                 "begin each entry on a line of its own with a hyphen");
}

static void every_field_has_words_about_it(void **state)
{
    (void)state;
    const struct field_table *tables[] = {equipment_fields(), boat_fields(), radio_fields()};
    for (size_t i = 0; i < 3; i++)
        for (size_t k = 0; k < tables[i]->count; k++) {
            assert_false(text_empty(tables[i]->fields[k].about));
            assert_ptr_equal(field_find(tables[i], tables[i]->fields[k].key),
                             &tables[i]->fields[k]);
        }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(a_side_cannot_contradict_its_zone),
        TEST(catamaran_zones_are_not_on_monohulls),
        TEST(a_catamarans_engine_space_needs_a_side),
        TEST(a_catamarans_engine_space_with_a_side),
        TEST(inside_and_space_name_the_side_too),
        TEST(a_place_in_a_hull_needs_the_hull),
        TEST(one_engine_may_be_recorded),
        TEST(engine_spaces_must_make_sense),
        TEST(gear_stands_once_in_a_place),
        TEST(one_panel_may_stop_two_engines),
        TEST(a_battery_may_stand_in_its_own_box),
        TEST(an_outboard_boat_has_no_engine_space),
        TEST(lists_of_something_else_are_told_once),
        TEST(positions_are_metres),
        TEST(wrong_positions_are_told),
        TEST(mistyped_words_get_the_nearest),
        TEST(numbers_keep_their_range),
        TEST(what_is_required_is_asked_for),
        TEST(names_are_clean_and_short),
        TEST(a_file_without_a_boat_is_none),
        TEST(equipment_is_a_list),
        TEST(every_field_has_words_about_it),
    };
    int failed = cmocka_run_group_tests_name("boat", tests, NULL, NULL);
    return failed != 0;
}
