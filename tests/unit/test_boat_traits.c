/* test_boat_traits.c - what a boat is, from her record: yes, no, or not recorded. */
#include "boat_case.h"

#include "trait.h"

static enum answer recorded_of(const char *more, enum trait trait)
{
    const struct boat *boat = boat_of(more);
    assert_non_null(boat);
    return boat_trait(boat, trait, ZONE_NONE).recorded;
}

#define OPEN_BOAT(rest) \
    "boat: {name: Tern, hull: monohull, rig: motor, loa_m: 6.4, beam_m: 2.4, persons_max: 6, " \
    rest "}\n"

static void a_boat_without_rooms_is_open(void **state)
{
    (void)state;
    assert_int_equal(recorded_of(OPEN_BOAT("rooms: []"), TRAIT_CABIN), ANSWER_NO);
    assert_int_equal(recorded_of(OPEN_BOAT("rooms: [forward_cabin]"), TRAIT_CABIN), ANSWER_YES);
    assert_int_equal(recorded_of(OPEN_BOAT("draught_m: 0.5"), TRAIT_CABIN), ANSWER_NOT_RECORDED);
    assert_true(boat_is(boat_of(OPEN_BOAT("draught_m: 0.5")), TRAIT_CABIN, ZONE_NONE));
}

#define MOTORS(rows) MONOHULL "engines: [" rows "]\n"

static void engines_tell_what_is_burned(void **state)
{
    (void)state;
    static const struct { const char *rows; enum trait trait; enum answer is; } cases[] = {
        {"{fuel: petrol, drive: outboard}", TRAIT_PETROL, ANSWER_YES},
        {"{fuel: petrol, drive: outboard}", TRAIT_PETROL_TANK, ANSWER_NO},
        {"{fuel: petrol, drive: outboard}", TRAIT_DIESEL, ANSWER_NO},
        {"{space: engine_space, fuel: electric, drive: pod}", TRAIT_ELECTRIC, ANSWER_YES},
        {"{space: engine_space, fuel: electric, drive: pod}", TRAIT_DIESEL, ANSWER_NO},
        {"{space: engine_space, fuel: diesel, drive: generator}", TRAIT_GENERATOR, ANSWER_YES},
        {"{space: engine_space, fuel: diesel, drive: generator}", TRAIT_TWO_ENGINES, ANSWER_NO},
        {"", TRAIT_GENERATOR, ANSWER_NO},
        {"", TRAIT_ENGINE, ANSWER_NO},
        {"{space: engine_space, fuel: diesel, drive: generator}", TRAIT_ENGINE, ANSWER_NO},
        {"{fuel: petrol, drive: outboard}", TRAIT_ENGINE, ANSWER_YES},
        {"{space: engine_space, fuel: petrol, drive: jet}", TRAIT_JET, ANSWER_YES},
        {"{space: engine_space, fuel: petrol, drive: shaft}", TRAIT_JET, ANSWER_NO},
        {"{space: engine_space, fuel: diesel, drive: generator}", TRAIT_GENERATOR_ALONE,
         ANSWER_YES},
        {"{space: engine_space, fuel: electric, drive: pod}, "
         "{space: engine_space, fuel: petrol, drive: generator}", TRAIT_GENERATOR_ALONE,
         ANSWER_YES},
        {"{space: engine_space, fuel: diesel, drive: shaft}, "
         "{space: engine_space, fuel: diesel, drive: generator}", TRAIT_GENERATOR_ALONE,
         ANSWER_NO},
        {"{space: engine_space, fuel: diesel, drive: shaft}", TRAIT_GENERATOR_ALONE, ANSWER_NO},
    };
    for (size_t i = 0; i < sizeof cases / sizeof cases[0]; i++) {
        const char *text = text_format(test.arena, MOTORS("%s"), cases[i].rows);
        assert_int_equal(recorded_of(text, cases[i].trait), cases[i].is);
    }
    assert_int_equal(recorded_of(MONOHULL, TRAIT_GENERATOR), ANSWER_NOT_RECORDED);
}

/* Another engine to go on with stands elsewhere: two in one space stop together. */
static void another_engine_is_in_another_space(void **state)
{
    (void)state;
    static const struct { const char *text; enum answer is; } cases[] = {
        {MOTORS("{space: engine_space, fuel: diesel, drive: shaft}, "
                "{space: engine_space, fuel: diesel, drive: shaft}"), ANSWER_NO},
        {MOTORS("{space: engine_space, fuel: diesel, drive: shaft}, "
                "{fuel: petrol, drive: outboard}"), ANSWER_YES},
        {MONOHULL, ANSWER_NO},
    };
    for (size_t i = 0; i < sizeof cases / sizeof cases[0]; i++)
        assert_int_equal(boat_trait(boat_of(cases[i].text), TRAIT_OTHER_ENGINE,
                                    ZONE_engine_space).recorded, cases[i].is);
}

#define DINGHY(facts) "  - {item: dinghy, zone: foredeck" facts "}\n"

/* Who may be left behind if it is too small: not known is no. */
static void a_dinghy_holds_all_or_nobody_is_sent(void **state)
{
    (void)state;
    static const struct { const char *text; enum answer is; } cases[] = {
        {MONOHULL "equipment:\n" DINGHY(", persons: 8"), ANSWER_YES},
        {MONOHULL "equipment:\n" DINGHY(", persons: 9"), ANSWER_YES},
        {MONOHULL "equipment:\n" DINGHY(", persons: 7"), ANSWER_NO},
        {MONOHULL "equipment:\n" DINGHY(""), ANSWER_NOT_RECORDED},
        /* two of four places are not launched as one of eight */
        {MONOHULL "equipment:\n" DINGHY(", persons: 4") DINGHY(", persons: 4"), ANSWER_NO},
        {MONOHULL "equipment:\n" DINGHY(", persons: 4") DINGHY(""), ANSWER_NOT_RECORDED},
        {MONOHULL "equipment:\n" DINGHY("") DINGHY(", persons: 8"), ANSWER_YES},
        {MONOHULL "not_fitted: [dinghy]\n", ANSWER_NO},
        {MONOHULL, ANSWER_NOT_RECORDED},
    };
    for (size_t i = 0; i < sizeof cases / sizeof cases[0]; i++) {
        assert_int_equal(recorded_of(cases[i].text, TRAIT_DINGHY_FOR_ALL), cases[i].is);
        assert_int_equal(boat_is(boat_of(cases[i].text), TRAIT_DINGHY_FOR_ALL, ZONE_NONE),
                         cases[i].is == ANSWER_YES);
    }
}

#define MAST(facts) OPEN_BOAT(facts) "equipment:\n"
#define CUTTERS(facts) "  - {item: bolt_cutters, zone: lazarette" facts "}\n"
#define WIRE "thickest_wire_mm: 10"

/* A mast that hangs on one wire alongside holes the hull: not known is no. */
static void cutters_fit_where_both_are_measured(void **state)
{
    (void)state;
    static const struct { const char *text; enum answer is; } cases[] = {
        {MAST(WIRE) CUTTERS(", cuts_mm: 10"), ANSWER_YES},
        {MAST(WIRE) CUTTERS(", cuts_mm: 9.9"), ANSWER_NO},
        {MAST(WIRE) CUTTERS(", cuts_mm: 8") CUTTERS(", cuts_mm: 12"), ANSWER_YES},
        {MAST(WIRE) CUTTERS(", cuts_mm: 8") CUTTERS(""), ANSWER_NOT_RECORDED},
        {MAST(WIRE) CUTTERS(""), ANSWER_NOT_RECORDED},
        {MAST("draught_m: 1.5") CUTTERS(", cuts_mm: 12"), ANSWER_NOT_RECORDED},
        {OPEN_BOAT(WIRE) "not_fitted: [bolt_cutters]\n", ANSWER_NO},
        {OPEN_BOAT(WIRE), ANSWER_NOT_RECORDED},
    };
    for (size_t i = 0; i < sizeof cases / sizeof cases[0]; i++) {
        assert_int_equal(recorded_of(cases[i].text, TRAIT_CUTTERS_FIT), cases[i].is);
        assert_int_equal(boat_is(boat_of(cases[i].text), TRAIT_CUTTERS_FIT, ZONE_NONE),
                         cases[i].is == ANSWER_YES);
    }
}

static void what_words_name_is_recorded_or_not(void **state)
{
    (void)state;
    assert_int_equal(recorded_of(OPEN_BOAT("draught_m: 0.5"), TRAIT_DRAUGHT), ANSWER_YES);
    assert_int_equal(recorded_of(OPEN_BOAT(WIRE), TRAIT_DRAUGHT), ANSWER_NO);
    assert_int_equal(recorded_of(OPEN_BOAT("lay_down_place: cockpit floor"), TRAIT_LAY_DOWN),
                     ANSWER_YES);
    assert_int_equal(recorded_of(OPEN_BOAT(WIRE), TRAIT_LAY_DOWN), ANSWER_NO);
}

/* A boat that has neither sails nor engines needs not say that she has no sheet and no lever. */
static void gear_goes_with_sails_and_engines(void **state)
{
    (void)state;
    const struct boat *motor = boat_of(OPEN_BOAT("rooms: []") "engines: []\n");
    assert_int_equal(boat_fitted(motor, ITEM_sail_rope), ANSWER_NO);
    assert_int_equal(boat_fitted(motor, ITEM_front_sail_roller), ANSWER_NO);
    assert_int_equal(boat_fitted(motor, ITEM_mainsail_down), ANSWER_NO);
    assert_int_equal(boat_fitted(motor, ITEM_throttle), ANSWER_NO);
    assert_int_equal(boat_fitted(motor, ITEM_engine_start), ANSWER_NO);
    const struct boat *sailing =
        boat_of(MOTORS("{space: engine_space, fuel: diesel, drive: shaft}"));
    assert_int_equal(boat_fitted(sailing, ITEM_sail_rope), ANSWER_NOT_RECORDED);
    assert_int_equal(boat_fitted(sailing, ITEM_throttle), ANSWER_NOT_RECORDED);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(a_boat_without_rooms_is_open),
        TEST(engines_tell_what_is_burned),
        TEST(another_engine_is_in_another_space),
        TEST(a_dinghy_holds_all_or_nobody_is_sent),
        TEST(cutters_fit_where_both_are_measured),
        TEST(what_words_name_is_recorded_or_not),
        TEST(gear_goes_with_sails_and_engines),
    };
    int failed = cmocka_run_group_tests_name("boat_traits", tests, NULL, NULL);
    return failed != 0;
}
