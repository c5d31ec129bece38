/* test_brief_differs.c - what the skipper's sheet says of a boat that differs from most: each
 * difference on a boat that has it, and none of it on one that has not. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include "card_fixture.h"
#include "brief_case.h"

/* What makes the difference, and what of it is gone on a boat without. */
struct differs_row {
    enum word word;
    const char *gear, *not_fitted;     /* lists; "": nothing */
    const char *other_gear, *other_not_fitted;
};

#define GEAR(item, more) "  - {item: " item ", tag: @7, zone: cockpit, side: port" more "}\n"
#define LACK(word, item) {WORD_BRIEF_D_##word, "", "  - " item "\n", GEAR(item, ""), ""}
#define FACT(word, item, fact, other) \
    {WORD_BRIEF_D_##word, GEAR(item, ", " fact), "", GEAR(item, ", " other), ""}
#define THERE(word, item, more) \
    {WORD_BRIEF_D_##word, GEAR(item, more), "", "", "  - " item "\n"}

static const struct differs_row by_gear[] = {
    LACK(NO_HANDHELD, "vhf_handheld"), LACK(NO_EPIRB, "personal_beacon\n  - epirb"),
    LACK(NO_RAFT, "liferaft"), LACK(NO_GRAB_BAG, "grab_bag"), LACK(NO_FLARES, "flares"),
    LACK(NO_FIRE_PORT, "fire_port"), LACK(NO_BLANKET, "fire_blanket"),
    LACK(NO_SMOKE_ALARM, "smoke_alarm"), LACK(NO_CO_ALARM, "co_alarm"),
    LACK(NO_GAS_ALARM, "gas_alarm"), LACK(NO_CABIN_VALVE, "lpg_cabin_valve"),
    LACK(NO_BATTERY_SWITCH, "battery_isolator_service"),
    LACK(NO_ELECTRIC_PUMP, "bilge_pump_electric"), LACK(NO_HAND_PUMP, "bilge_pump_manual"),
    LACK(NO_HARNESS, "harness_tether"), LACK(NO_LINE, "heaving_line"),
    LACK(NO_LIFTING, "recovery_sling\n  - recovery_tackle"), LACK(NO_LADDER, "boarding_ladder"),
    LACK(NO_FIRST_AID, "first_aid_kit"), LACK(NO_TILLER, "emergency_tiller"),
    LACK(NO_WINDLASS, "windlass"),
    FACT(HANDHELD_FLAT, "vhf_handheld", "charged: no", "charged: yes"),
    FACT(HANDHELD_BELOW, "vhf_handheld", "from_cockpit: no", "from_cockpit: yes"),
    FACT(JACKETS_BELOW, "lifejacket", "from_cockpit: no", "from_cockpit: yes"),
    FACT(PORT_UNFIT, "engine_extinguisher", "fits_port: no", "fits_port: yes"),
    FACT(FIXED_AUTOMATIC, "fixed_extinguisher", "automatic: yes", "automatic: no"),
    FACT(REMOTE_OPEN, "lpg_remote_switch", "fails_shut: no", "fails_shut: yes"),
    FACT(PUMP_SWITCH, "bilge_pump_electric", "automatic: no", "automatic: yes"),
    FACT(PUMP_SWITCH, "bilge_pump_electric", "how: {on: up}", "automatic: yes"),
    FACT(NO_VALVE, "seacock", "valve: no, name: log", "valve: yes, name: log"),
    FACT(LADDER_DECK, "boarding_ladder", "from_water: no", "from_water: yes"),
    FACT(STOP_CABLE, "engine_stop", "stop: mechanical", "stop: electric"),
    FACT(NEUTRAL, "throttle", "upright: no", "upright: yes"),
    FACT(CHAIN_LOOSE, "anchor_main", "chain_end: loose", "chain_end: cord"),
    FACT(CUTS_RADIO, "battery_isolator_service", "cuts: [vhf_dsc]", "cuts: []"),
    FACT(CUTS_PUMP, "engine_stop", "cuts: [bilge_pump_electric]", "cuts: []"),
    FACT(CUTS_UNKNOWN, "battery_isolator_service", "how: {off: left}", "cuts: []"),
    FACT(CUTS_UNKNOWN, "battery_isolator_engine", "how: {off: left}", "cuts: []"),
    FACT(STIFF, "seacock", "works: stiff, name: log", "works: freely, name: log"),
    FACT(SEIZED, "seacock", "works: seized, name: log", "works: stiff, name: log"),
    FACT(LOCKED, "flares", "locked: yes", "locked: no"),
    FACT(ONLY_WHEN, "windlass", "only_when: [engine_running]", "needs_engine: yes"),
    FACT(FROM, "fuel_shutoff_diesel", "from: {zone: saloon, side: port}",
         "from: {zone: cockpit, side: port}"),
    THERE(GAS_SHUT, "lpg_bottle_valve", ""), THERE(GAS_SHUT, "lpg_remote_switch", ""),
    THERE(GAS_SHUT, "lpg_cabin_valve", ""), THERE(LITHIUM, "lithium_bank", ""),
    THERE(PETROL, "petrol_stowage", ""), THERE(KILL_CORD, "outboard_kill", ""),
};

/* Those that hang on what the boat or her radio is. */
struct whole_row { enum word word; const char *boat, *other; };

#define BOAT(hull) \
    "boat: {name: Tamarisk, specimen: yes, hull: " hull ", rig: sail, loa_m: 12, beam_m: 6, " \
    "persons_max: 8}\n"
#define ENGINE(space, fuel, drive) \
    "engines:\n  - {space: " space ", fuel: " fuel ", drive: " drive "}\n"
#define TWO_ENGINES \
    "engines:\n  - {space: engine_space, fuel: diesel, drive: shaft}\n" \
    "  - {space: engine_space, fuel: diesel, drive: shaft}\n"
#define RADIO(facts) \
    BOAT("monohull") "radio: {tag: E9, call_sign: QTAB2, zone: saloon, side: port" facts "}\n"
#define ONE_ENGINE ENGINE("engine_space", "diesel", "shaft")

static const struct whole_row by_boat[] = {
    {WORD_BRIEF_D_TWO_HULLS, BOAT("catamaran"), BOAT("monohull")},
    {WORD_BRIEF_D_TWO_HULLS, BOAT("trimaran"), BOAT("monohull")},
    {WORD_BRIEF_D_TWO_ENGINES, BOAT("monohull") TWO_ENGINES, BOAT("monohull") ONE_ENGINE},
    {WORD_BRIEF_D_PETROL_ENGINE, BOAT("monohull") ENGINE("engine_space", "petrol", "shaft"),
     BOAT("monohull") ONE_ENGINE},
    {WORD_BRIEF_D_ELECTRIC_DRIVE, BOAT("monohull") ENGINE("engine_space", "electric", "pod"),
     BOAT("monohull") ONE_ENGINE},
    {WORD_BRIEF_D_GENERATOR, BOAT("monohull") ENGINE("generator_space", "diesel", "generator"),
     BOAT("monohull") ONE_ENGINE},
    {WORD_BRIEF_D_NO_FIXED_RADIO, BOAT("monohull") "not_fitted:\n  - vhf_dsc\n", RADIO("")},
    {WORD_BRIEF_D_NO_RED_KEY, RADIO(", dsc: no"), RADIO(", dsc: yes")},
    {WORD_BRIEF_D_KEY_NOT_SET, RADIO(", dsc: yes, mmsi_programmed: no"),
     RADIO(", dsc: yes, mmsi_programmed: yes")},
    {WORD_BRIEF_D_KEY_UNKNOWN, RADIO(", dsc: yes"), RADIO(", dsc: yes, mmsi_programmed: yes")},
    {WORD_BRIEF_D_KEY_UNKNOWN, RADIO(""), RADIO(", dsc: no")},
    {WORD_BRIEF_D_NO_POSITION, RADIO(", dsc: yes"), RADIO(", dsc: yes, gnss: yes")},
    {WORD_BRIEF_D_SECOND_SET, RADIO(", second_station: {zone: cockpit}"), RADIO("")},
};

/* The first words of the text of a difference, up to what is filled in, without marks. */
static const char *first_words(enum word word)
{
    const char *text = text_plain(test.arena, word_text(word));
    if (text[0] == '{')
        text = strchr(text, '}') + 1;
    size_t length = strcspn(text, "{");
    return arena_copy(test.arena, text, length);
}

static bool differs(const char *boat, enum word word)
{
    case_boat(&test, boat);
    hire_begin();
    const char *words = first_words(word);
    return lines_with(form_section_of(brief_form(), WORD_BRIEF_DIFFERS), words) > 0;
}

/* "**{gear}: {fact}.** {place}." has no words of its own but what is filled in. */
static bool is_only_when(enum word word, const char *boat)
{
    case_boat(&test, boat);
    hire_begin();
    return word == WORD_BRIEF_D_ONLY_WHEN &&
           lines_with(form_section_of(brief_form(), WORD_BRIEF_DIFFERS),
                      ": only with engine running. Cockpit") > 0;
}

static bool has_difference(const char *boat, enum word word)
{
    return word == WORD_BRIEF_D_ONLY_WHEN ? is_only_when(word, boat) : differs(boat, word);
}

static void pair_check(enum word word, const char *boat, const char *other)
{
    if (!has_difference(boat, word))
        fail_msg("not told: %s, of\n%s", word_text(word), boat);
    if (has_difference(other, word))
        fail_msg("told: %s, of\n%s", word_text(word), other);
}

/* The entry with the letter of its item's tags for each @. */
static const char *tag_lettered(const char *entry)
{
    char *own = arena_copy(test.arena, entry, strlen(entry));
    const char *item = strstr(own, "item: ");
    for (char *at = own; item != NULL && *at != '\0'; at++)
        if (*at == '@')
            *at = (char)item_find(arena_copy(test.arena, item + 6,
                                             strcspn(item + 6, ",")))->class;
    return own;
}

/* A list that is empty has no section. */
static const char *differing_boat(const char *gear, const char *not_fitted)
{
    return case_boat_text(&test, CASE_RADIO,
                          text_format(test.arena, "%s  - {item: knife, tag: E1, zone: cockpit, "
                                                  "side: starboard}\n", tag_lettered(gear)),
                          not_fitted);
}

static void each_difference_is_told_of_boats_that_have_it(void **state)
{
    (void)state;
    for (size_t i = 0; i < sizeof by_gear / sizeof *by_gear; i++) {
        const struct differs_row *row = &by_gear[i];
        const char *other = row->other_gear;
        if (strstr(other, "\n  - ") != NULL && strstr(other, "\n  - {") == NULL)
            other = "";           /* two kinds are not fitted: the other boat records neither */
        pair_check(row->word, differing_boat(row->gear, row->not_fitted),
                   differing_boat(other, row->other_not_fitted));
    }
    for (size_t i = 0; i < sizeof by_boat / sizeof *by_boat; i++)
        pair_check(by_boat[i].word, by_boat[i].boat, by_boat[i].other);
}

static const char *const keys[WORD_COUNT] = {
#define KEY(name, key, shape, blanks) [WORD_##name] = #key,
    BRIEF_WORD_LIST(KEY)
#undef KEY
};

static bool is_tried(enum word word)
{
    for (size_t i = 0; i < sizeof by_gear / sizeof *by_gear; i++)
        if (by_gear[i].word == word)
            return true;
    for (size_t i = 0; i < sizeof by_boat / sizeof *by_boat; i++)
        if (by_boat[i].word == word)
            return true;
    return false;
}

static void every_difference_is_tried(void **state)
{
    (void)state;
    size_t count = 0;
    for (enum word word = 0; word < WORD_COUNT; word++) {
        if (keys[word] == NULL || strncmp(keys[word], "brief_d_", 8) != 0)
            continue;
        count++;
        if (!is_tried(word))
            fail_msg("no boat here has it: %s", keys[word]);
    }
    assert_true(count > 50);
}

static void a_boat_with_an_outboard_has_no_hatch_to_keep_shut(void **state)
{
    (void)state;
    case_boat(&test, "tests/islands/boats/sundew.yaml");
    hire_begin();
    const struct form_section *section = form_section_of(brief_form(), WORD_BRIEF_DIFFERS);
    assert_int_equal(lines_with(section, "No fire port"), 0);
    assert_int_equal(lines_with(section, "No raft. Say now how all get off the boat without one. "
                                         "Card 12."), 1);
}

static void limits_stand_first_and_an_unrecorded_draught_is_told(void **state)
{
    (void)state;
    hire_begin();
    case_boat(&test, BOAT("monohull"));
    const struct form_section *section = form_section_of(brief_form(), WORD_BRIEF_DIFFERS);
    assert_string_equal(form_line_said(&section->lines[0], 2),
                        "|Draught not recorded: ask the base. Length 12 m, at most 8 people.");
    case_boat(&test, "tests/fleet/boats/bramble.yaml");
    section = form_section_of(brief_form(), WORD_BRIEF_DIFFERS);
    assert_string_equal(form_line_said(&section->lines[0], 2),
                        "|Draught 1.7 m, length 10.0 m, at most 5 people.");
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(each_difference_is_told_of_boats_that_have_it),
        TEST(every_difference_is_tried),
        TEST(a_boat_with_an_outboard_has_no_hatch_to_keep_shut),
        TEST(limits_stand_first_and_an_unrecorded_draught_is_told),
    };
    return cmocka_run_group_tests(tests, NULL, NULL) != 0;
}
