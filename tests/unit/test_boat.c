/* test_boat.c - reading a boat file: what it gives, and every way to be wrong. */
#include "boat_case.h"

static void a_whole_boat_is_read(void **state)
{
    (void)state;
    const struct boat *boat = boat_of(
        "boat: {name: Tamarisk, specimen: yes, hull: monohull, rig: sail, loa_m: 12.6, "
        "beam_m: 4.1, draught_m: 2.0, persons_max: 8, flag: QZ, looks: White sailing yacht}\n"
        "radio: {call_sign: QTAB2, mmsi: \"200014730\", dsc: yes, tag: E1, "
        "zone: navigation_station, side: port, hold_s: 5, nature_steps: [menu, down]}\n"
        "equipment:\n"
        "  - {item: fuel_shutoff_diesel, tag: C4, zone: cockpit_locker, side: port, spot: aft face,"
        " how: {shut: across pipe}, inside: [cockpit_locker]}\n"
        "  - {item: engine_extinguisher, tag: F1, zone: navigation_station, agent: powder, kg: 2,"
        " service_due: 2027-04, fits_port: yes}\n"
        "  - {item: seacock, tag: C11, name: engine intake, bore_mm: 38, depth_m: 0.45,"
        " zone: engine_space, side: port, bung_mm: 38, at: [8.40, -0.55]}\n"
        "not_fitted: [emergency_tiller, solar_isolator]\n"
        "retired_tags: [C12]\n"
        "tags_given: [F1, C12, E1]\n");
    expect_errors(0);
    assert_true(sound);
    assert_string_equal(boat->key, "tamarisk");
    assert_false(boat->catamaran);
    assert_int_equal(boat->facts.loa_m.milli, 12600);
    assert_int_equal(boat->facts.specimen.answer, ANSWER_YES);
    assert_int_equal(boat->equipment_count, 4);
    assert_int_equal(boat->engine_space_count, 1);
    assert_int_equal(boat->engine_spaces[0], ZONE_engine_space);
    assert_int_equal(boat->radio.hold_s.milli, 5000);
    assert_int_equal(boat->radio.nature_steps.count, 2);
    assert_int_equal(boat->not_fitted.count, 2);
    assert_int_equal(boat->not_fitted.rows[1].item.value, ITEM_solar_isolator);
    assert_true(boat->not_fitted.rows[1].whole);
    assert_string_equal(boat->retired_tags.items[0].text, "C12");
    assert_int_equal(boat_tag_given(boat, ITEM_CONTROL), 12);
    assert_int_equal(boat_tag_given(boat, ITEM_FIRE), 1);
    assert_int_equal(boat_tag_highest(boat, ITEM_CONTROL), 12);
}

static void gear_knows_its_kind_and_place(void **state)
{
    (void)state;
    const struct boat *boat = gear_of("item: fuel_shutoff_diesel, tag: C4, zone: cockpit_locker, "
                                      "side: port, inside: cockpit_locker, kind: lever");
    expect_errors(0);
    const struct equipment *gear = &boat->equipment[0];
    assert_string_equal(gear->kind->key, "fuel_shutoff_diesel");
    assert_string_equal(gear->place_zone->key, "cockpit_locker_port");
    assert_int_equal(gear->zone.value, ZONE_cockpit_locker_port);
    assert_int_equal(gear->place_side, SIDE_PORT);
    assert_int_equal(gear->place.line, 3);
    assert_int_equal(gear->kind_of.value, VALVE_LEVER);
    assert_int_equal(gear->inside.count, 1);
    assert_false(gear->cuts.given);
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
    assert_int_equal(radio->item.value, ITEM_vhf_dsc);
    assert_string_equal(radio->tag.text, "E1");
    assert_string_equal(radio->place_zone->key, "navigation_station");
    assert_int_equal(radio->dsc.answer, ANSWER_NO);
    assert_int_equal(radio->from_cockpit.answer, ANSWER_NOT_RECORDED);
    assert_int_equal(radio->place.line, 2);
    assert_int_equal(boat_fitted(boat, ITEM_vhf_dsc), ANSWER_YES);
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
    assert_int_equal(boat_fitted(boat, ITEM_vhf_dsc), ANSWER_NO);
    assert_int_equal(boat_fitted(boat, ITEM_liferaft), ANSWER_NOT_RECORDED);
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
    static const struct { const char *wrong, *meant; } rows[] = {
        {"C04", "C4"}, {"c4", "C4"}, {"C 4", "C4"}, {"C-4", "C4"}, {"C0", NULL}, {"C100", NULL},
        {"X4", NULL},  {"C", NULL},  {"4", NULL},   {"C4a", NULL}, {"CC4", NULL}};
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
        const char *meant = rows[i].meant;
        test.problems = problems_new(test.arena);
        gear_of(text_format(test.arena, "item: torch, zone: cockpit, tag: %s", rows[i].wrong));
        expect_errors(1);
        expect_error(3, text_format(test.arena, "%s is not a tag", rows[i].wrong),
                     meant != NULL ? text_format(test.arena, "write %s", meant)
                                   : "a tag is F, E or C and a number from 1 to 99 without a zero "
                                     "before it, such as C4");
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

/* ---- tags that fell out ---- */

#define TORCH(tag) "  - {item: torch, tag: " tag ", zone: cockpit, spot: at " tag "}\n"

static void gaps_between_tags_are_seen(void **state)
{
    (void)state;
    const struct boat *boat = boat_of(
        MONOHULL "equipment:\n" TORCH("C1") TORCH("C9") TORCH("C4")
                 "retired_tags: [C6]\ntags_given: [C12, F2]\n");
    expect_errors(0);
    struct tags_lost lost = boat_tags_lost(boat, ITEM_CONTROL, test.arena);
    assert_int_equal(lost.count, 8);
    assert_string_equal(lost.words, "C2, C3, C5, C7, C8, C10 to C12");
    assert_int_equal(lost.near->place.line, 3);
    lost = boat_tags_lost(boat, ITEM_FIRE, test.arena);
    assert_string_equal(lost.words, "F1, F2");
    assert_null(lost.near);
    assert_int_equal(boat_tags_lost(boat, ITEM_RESCUE, test.arena).count, 0);
    assert_string_equal(boat_free_tag(boat, ITEM_CONTROL, test.arena), "C13");
    assert_string_equal(boat_free_tag(boat, ITEM_FIRE, test.arena), "F3");
}

static void tags_without_a_gap_are_whole(void **state)
{
    (void)state;
    const struct boat *boat = boat_of(
        MONOHULL "radio: {zone: cockpit, tag: E1}\nequipment:\n" TORCH("C2") TORCH("C1")
                 "tags_given: [E1, C2]\n");
    expect_errors(0);
    assert_int_equal(boat_tags_lost(boat, ITEM_CONTROL, test.arena).count, 0);
    assert_int_equal(boat_tags_lost(boat, ITEM_RESCUE, test.arena).count, 0);
    assert_int_equal(boat_tag_highest(boat, ITEM_RESCUE), 1);
    assert_int_equal(boat_tag_highest(boat, ITEM_FIRE), 0);
}

/* While a tag could not be read, it may be the one that seems to be missing. */
static void unread_tags_are_not_missing(void **state)
{
    (void)state;
    static const char *const files[] = {
        "equipment:\n" TORCH("C1") TORCH("C03") TORCH("C4"),
        "equipment:\n" TORCH("C1") "  - {item: torch, zone: galley}\n" TORCH("C3"),
        "equipment:\n" TORCH("C1") "  - {item: torhc, tag: C2, zone: galley}\n" TORCH("C3"),
        "equipment:\n" TORCH("C1") TORCH("C3") "retired_tag: [C2]\n",
        "equipment:\n" TORCH("C1") TORCH("C3") "retired_tags: [C02]\n",
        "radoi: {zone: cockpit, tag: E1}\nequipment:\n" TORCH("C1") TORCH("C3"),
        "radio: {tag: E1}\nequipment:\n" TORCH("C1") TORCH("C3")};
    for (size_t i = 0; i < sizeof files / sizeof files[0]; i++) {
        test.problems = problems_new(test.arena);
        const struct boat *boat = boat_of(text_format(test.arena, MONOHULL "%s", files[i]));
        assert_false(sound);
        assert_int_equal(boat_tags_lost(boat, ITEM_CONTROL, test.arena).count, 0);
    }
}

static void the_last_tags_given_are_tags(void **state)
{
    (void)state;
    boat_of(MONOHULL "tags_given: [C7, c8, C9, F2]\n");
    expect_errors(2);
    expect_error(2, "tags_given: c8 is not a tag",
                 "write the last tag of each letter, such as [F9, E18, C46]");
    expect_error(2, "tags_given names two tags of the letter C", NULL);
}

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
        TEST(gaps_between_tags_are_seen),
        TEST(tags_without_a_gap_are_whole),
        TEST(unread_tags_are_not_missing),
        TEST(the_last_tags_given_are_tags),
    };
    int failed = cmocka_run_group_tests_name("boat", tests, NULL, NULL);
    return failed != 0;
}
