/* test_boat.c - reading a boat file: what it gives, and every way to be wrong. */
#include "boat_case.h"

static void a_whole_boat_is_read(void **state)
{
    (void)state;
    const struct boat *boat = boat_of(
        "boat: {name: Tamarisk, specimen: yes, type: monohull, loa_m: 12.6, beam_m: 4.1, "
        "draught_m: 2.0, persons_max: 8, flag: QZ, looks: White sailing yacht}\n"
        "radio: {call_sign: QTAB2, mmsi: \"200014730\", dsc: yes, tag: E1, "
        "zone: navigation_station, side: port, hold_s: 5, nature_steps: [menu, down]}\n"
        "equipment:\n"
        "  - {item: fuel_shutoff_diesel, tag: C4, zone: cockpit_locker, side: port, spot: aft face,"
        " how: across pipe = shut, inside: [cockpit_locker]}\n"
        "  - {item: engine_extinguisher, tag: F1, zone: navigation_station, agent: powder, kg: 2,"
        " service_due: 2027-04, fits_port: yes}\n"
        "  - {item: seacock, tag: C11, name: engine intake, bore_mm: 38, depth_m: 0.45,"
        " zone: engine_space, side: port, bung_mm: 38, at: [8.40, -0.55]}\n"
        "not_fitted: [emergency_tiller, solar_isolator]\n"
        "retired_tags: [C12]\n");
    expect_errors(0);
    assert_true(sound);
    assert_string_equal(boat->key, "tamarisk");
    assert_false(boat->catamaran);
    assert_int_equal(boat->facts.loa_m.milli, 12600);
    assert_int_equal(boat->facts.specimen.answer, ANSWER_YES);
    assert_int_equal(boat->equipment_count, 4);
    assert_int_equal(boat->engine_space_count, 1);
    assert_string_equal(boat->engine_spaces[0], "engine_space");
    assert_int_equal(boat->radio.hold_s.milli, 5000);
    assert_int_equal(boat->radio.nature_steps.count, 2);
    assert_int_equal(boat->not_fitted.count, 2);
    assert_string_equal(boat->retired_tags.items[0].text, "C12");
}

static void gear_knows_its_kind_and_place(void **state)
{
    (void)state;
    const struct boat *boat = gear_of("item: fuel_shutoff_diesel, tag: C4, zone: cockpit_locker, "
                                      "side: port, inside: cockpit_locker, cuts: [], kind: lever");
    expect_errors(0);
    const struct equipment *gear = &boat->equipment[0];
    assert_string_equal(gear->kind->key, "fuel_shutoff_diesel");
    assert_string_equal(gear->place_zone->key, "cockpit_locker_port");
    assert_string_equal(gear->zone.text, "cockpit_locker_port");
    assert_int_equal(gear->place_side, SIDE_PORT);
    assert_int_equal(gear->place.line, 3);
    assert_string_equal(gear->kind_of.text, "lever");
    assert_int_equal(gear->inside.count, 1);
    assert_true(gear->cuts.given);
    assert_int_equal(gear->cuts.count, 0);
    assert_false(gear->serves.given);
    assert_int_equal(gear->from_cockpit.answer, ANSWER_NOT_RECORDED);
}

static void the_zones_side_is_the_gears(void **state)
{
    (void)state;
    const struct boat *boat = gear_of("item: hatch, tag: E4, zone: aft_cabin_starboard");
    expect_errors(0);
    assert_int_equal(boat->equipment[0].place_side, SIDE_STARBOARD);
}

static void a_monohulls_engine_space_stays_one(void **state)
{
    (void)state;
    const struct boat *boat = gear_of("item: seacock, tag: C1, zone: engine_space, side: port");
    expect_errors(0);
    assert_string_equal(boat->equipment[0].place_zone->key, "engine_space");
    assert_int_equal(boat->equipment[0].place_side, SIDE_PORT);
}

static void the_radio_is_the_last_gear(void **state)
{
    (void)state;
    const struct boat *boat = boat_of(
        MONOHULL "radio: {zone: navigation_station, side: port, tag: E1, dsc: no}\n"
                 "equipment:\n  - {item: torch, tag: C1, zone: cockpit}\n");
    expect_errors(0);
    const struct equipment *radio = &boat->equipment[1];
    assert_int_equal(boat->equipment_count, 2);
    assert_string_equal(radio->kind->key, "vhf_dsc");
    assert_string_equal(radio->item.text, "vhf_dsc");
    assert_string_equal(radio->tag.text, "E1");
    assert_string_equal(radio->place_zone->key, "navigation_station");
    assert_int_equal(radio->dsc.answer, ANSWER_NO);
    assert_int_equal(radio->from_cockpit.answer, ANSWER_NOT_RECORDED);
    assert_int_equal(radio->place.line, 2);
    assert_int_equal(boat_fitted(boat, "vhf_dsc"), ANSWER_YES);
}

static void the_radio_needs_its_tag(void **state)
{
    (void)state;
    boat_of(MONOHULL "radio: {zone: navigation_station}\n");
    expect_errors(1);
    expect_error(2, "item vhf_dsc has no tag",
                 "the next free one, here and on the gear itself: tag: E1");
}

static void a_radio_tag_needs_a_zone(void **state)
{
    (void)state;
    boat_of(MONOHULL "radio: {tag: E1}\n");
    expect_error(2, "radio has a tag but no zone", "record where the set is: zone, side, spot");
}

static void the_radio_has_a_section_of_its_own(void **state)
{
    (void)state;
    const struct boat *boat = gear_of("item: vhf_dsc, tag: E1, zone: navigation_station");
    expect_errors(1);
    expect_error(3, "the fixed radio is recorded under radio, not in equipment",
                 "move its zone, side, spot and tag to `radio:`");
    assert_int_equal(boat->equipment_count, 0);
}

static void no_radio_may_be_declared_not_fitted(void **state)
{
    (void)state;
    const struct boat *boat = boat_of(MONOHULL "not_fitted: [vhf_dsc]\n");
    expect_errors(0);
    assert_int_equal(boat_fitted(boat, "vhf_dsc"), ANSWER_NO);
    assert_int_equal(boat_fitted(boat, "liferaft"), ANSWER_NOT_RECORDED);
}

static void a_radio_cannot_be_there_and_not(void **state)
{
    (void)state;
    boat_of(MONOHULL "radio: {zone: cockpit, tag: E1}\nnot_fitted: [vhf_dsc]\n");
    expect_error(3, "vhf_dsc is in not_fitted, but it is recorded on line 2",
                 "keep the one that is true");
}

static void fitted_and_not_fitted_contradict(void **state)
{
    (void)state;
    boat_of(MONOHULL "equipment:\n  - {item: torch, tag: C1, zone: cockpit}\n"
                     "not_fitted: [knife, torch]\n");
    expect_errors(1);
    expect_error(4, "torch is in not_fitted, but it is recorded on line 3",
                 "keep the one that is true");
    assert_false(sound);
}

/* ---- tags ---- */

static void missing_tags_get_distinct_proposals(void **state)
{
    (void)state;
    const struct boat *boat = boat_of(
        MONOHULL "equipment:\n  - {item: torch, zone: cockpit}\n"
                 "  - {item: cooker, zone: galley}\n"
                 "  - {item: bolt_cutters, zone: cockpit, tag: C4}\n"
                 "  - {item: fire_blanket, zone: galley}\n"
                 "retired_tags: [C6, F2]\n");
    expect_errors(3);
    expect_error(3, "item torch has no tag",
                 "the next free one, here and on the gear itself: tag: C7");
    expect_error(4, "item cooker has no tag",
                 "the next free one, here and on the gear itself: tag: C8");
    expect_error(6, "item fire_blanket has no tag",
                 "the next free one, here and on the gear itself: tag: F3");
    assert_null(boat->equipment[0].tag.text);
    assert_string_equal(boat_free_tag(boat, ITEM_CONTROL, test.arena), "C7");
    assert_string_equal(boat_free_tag(boat, ITEM_RESCUE, test.arena), "E1");
}

static void a_gap_is_used_only_when_99_is_taken(void **state)
{
    (void)state;
    const struct boat *boat = boat_of(
        MONOHULL "equipment:\n  - {item: torch, zone: cockpit, tag: C1}\n"
                 "  - {item: cooker, zone: galley, tag: C3}\nretired_tags: [C99]\n");
    expect_errors(0);
    assert_string_equal(boat_free_tag(boat, ITEM_CONTROL, test.arena), "C2");
}

static void tags_have_one_form(void **state)
{
    (void)state;
    static const char *const wrong[] = {"C04", "C0", "C100", "c4", "X4", "C", "4", "C4a", "CC4"};
    for (size_t i = 0; i < sizeof wrong / sizeof wrong[0]; i++) {
        test.problems = problems_new(test.arena);
        gear_of(text_format(test.arena, "item: torch, zone: cockpit, tag: %s", wrong[i]));
        expect_errors(1);
        expect_error(3, text_format(test.arena, "%s is not a tag", wrong[i]),
                     "a tag is F, E or C and a number from 1 to 99 without a zero before it, "
                     "such as C4");
    }
}

static void the_letter_is_the_class(void **state)
{
    (void)state;
    gear_of("item: fire_extinguisher, tag: C4, zone: galley");
    expect_errors(1);
    expect_error(3, "tag C4 has the wrong letter: tags of fire_extinguisher begin with F",
                 "the next free one, here and on the gear itself: tag: F1");
}

static void a_tag_is_used_once(void **state)
{
    (void)state;
    boat_of(MONOHULL "radio: {zone: cockpit, tag: E2}\n"
                     "equipment:\n  - {item: knife, tag: E2, zone: cockpit}\n"
                     "  - {item: torch, tag: C1, zone: cockpit}\n"
                     "  - {item: cooker, tag: C1, zone: galley}\n");
    expect_errors(2);
    expect_error(6, "tag C1 is already that of torch (line 5)",
                 "the next free one, here and on the gear itself: tag: C2");
    expect_error(2, "tag E2 is already that of knife (line 4)", NULL);
}

static void retired_tags_stay_retired(void **state)
{
    (void)state;
    boat_of(MONOHULL "equipment:\n  - {item: torch, tag: C1, zone: cockpit}\n"
                     "retired_tags: [C1, C01]\n");
    expect_errors(2);
    expect_error(3, "tag C1 is retired: it stood on gear that is gone",
                 "the next free one, here and on the gear itself: tag: C2");
    expect_error(4, "retired_tags: C01 is not a tag", NULL);
}

/* ---- places ---- */

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(a_whole_boat_is_read),
        TEST(gear_knows_its_kind_and_place),
        TEST(the_zones_side_is_the_gears),
        TEST(a_monohulls_engine_space_stays_one),
        TEST(the_radio_is_the_last_gear),
        TEST(the_radio_needs_its_tag),
        TEST(a_radio_tag_needs_a_zone),
        TEST(the_radio_has_a_section_of_its_own),
        TEST(no_radio_may_be_declared_not_fitted),
        TEST(a_radio_cannot_be_there_and_not),
        TEST(fitted_and_not_fitted_contradict),
        TEST(missing_tags_get_distinct_proposals),
        TEST(a_gap_is_used_only_when_99_is_taken),
        TEST(tags_have_one_form),
        TEST(the_letter_is_the_class),
        TEST(a_tag_is_used_once),
        TEST(retired_tags_stay_retired),
    };
    int failed = cmocka_run_group_tests_name("boat", tests, NULL, NULL);
    return failed != 0;
}
