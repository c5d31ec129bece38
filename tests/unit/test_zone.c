/* test_zone.c - the zones of a boat: families, sides, where they lie. */
#include "record_test.h"

#include "zone.h"

static void keys_are_unique_and_found(void **state)
{
    (void)state;
    for (enum zone_key key = ZONE_NONE + 1; key < ZONE_COUNT; key++) {
        const struct zone *zone = zone_of(key);
        assert_int_equal(zone->id, key);
        assert_ptr_equal(zone_find(zone->key), zone);
        assert_string_equal(zone_word(key), zone->key);
        assert_string_equal(zone_key_list[key - 1], zone->key);
    }
    assert_null(zone_key_list[ZONE_COUNT - 1]);
    assert_string_equal(zone_word(ZONE_NONE), "");
    assert_null(zone_of(ZONE_NONE));
    assert_null(zone_find("cokpit"));
    assert_null(zone_find(NULL));
}

static void every_family_is_a_zone_without_gaps(void **state)
{
    (void)state;
    for (enum zone_key key = ZONE_NONE + 1; key < ZONE_COUNT; key++) {
        const struct zone *zone = zone_of(key);
        assert_int_equal(zone_of(zone->family)->family, zone->family);
        assert_true(zone->from >= 0 && zone->from < zone->to && zone->to <= 105);
    }
}

/* A row of a family is the family's key, an underscore and its side; but of a generator's space,
 * which is an engine's that lies on no side of another. */
static void rows_of_a_family_lie_to_the_side_they_name(void **state)
{
    (void)state;
    size_t rows = 0;
    for (enum zone_key key = ZONE_NONE + 1; key < ZONE_COUNT; key++) {
        const struct zone *zone = zone_of(key);
        if (zone->family == key || key == ZONE_generator_space)
            continue;
        rows++;
        assert_string_equal(zone->key, text_format(test.arena, "%s_%s", zone_word(zone->family),
                                                   side_word(zone->side)));
        assert_int_equal(zone_of(zone->family)->side, SIDE_NONE);
    }
    assert_true(rows > 0);
}

static void zones_know_what_they_lie_within(void **state)
{
    (void)state;
    const struct zone *port = zone_of(ZONE_engine_space_port);
    assert_true(zone_within(port, ZONE_engine_space));
    assert_true(zone_within(port, ZONE_engine_space_port));
    assert_false(zone_within(port, ZONE_engine_space_starboard));
    assert_false(zone_within(zone_of(ZONE_engine_space), ZONE_engine_space_port));
    assert_false(zone_within(NULL, ZONE_engine_space));
    assert_false(zone_within(port, ZONE_NONE));
}

/* The halves of a boat's engine spaces lie in the whole, the generator's space beside it. */
static void a_generators_space_is_no_part_of_the_engines(void **state)
{
    (void)state;
    const struct zone *generator = zone_of(ZONE_generator_space);
    assert_true(zone_within(generator, ZONE_engine_space));
    assert_false(zone_in_space(generator, ZONE_engine_space));
    assert_true(zone_in_space(generator, ZONE_generator_space));
    assert_true(zone_in_space(zone_of(ZONE_engine_space_port), ZONE_engine_space));
    assert_true(zone_in_space(zone_of(ZONE_engine_space), ZONE_engine_space));
    assert_false(zone_in_space(NULL, ZONE_engine_space));
}

static void catamarans_and_landmarks(void **state)
{
    (void)state;
    assert_true(zone_of(ZONE_trampoline)->multihull_only);
    assert_true(zone_of(ZONE_engine_space_starboard)->catamaran_only);
    assert_false(zone_of(ZONE_engine_space)->catamaran_only);
    assert_true(zone_of(ZONE_aft_cabin_port)->in_hulls);
    assert_false(zone_of(ZONE_bridgedeck)->in_hulls);
    assert_true(zone_of(ZONE_aft_cabin_port)->drawn);
    assert_false(zone_of(ZONE_navigation_station)->drawn);
    assert_int_equal(zone_of(ZONE_bathing_platform)->to, 105);
    assert_int_equal(zone_of(ZONE_cockpit)->level, LEVEL_DECK);
    assert_int_equal(zone_of(ZONE_saloon)->level, LEVEL_BELOW);
    assert_int_equal(zone_of(ZONE_flybridge)->level, LEVEL_TOP);
}

static void zones_have_the_traits_of_their_rows(void **state)
{
    (void)state;
    assert_true(zone_of(ZONE_anchor_locker)->locker);
    assert_true(zone_of(ZONE_anchor_locker)->narrow);
    assert_false(zone_of(ZONE_anchor_locker)->lived_in);
    assert_false(zone_of(ZONE_engine_space_port)->narrow);     /* it has a side */
    assert_true(zone_of(ZONE_aft_cabin_port)->lived_in);
    assert_false(zone_of(ZONE_engine_space)->lived_in);
    assert_false(zone_of(ZONE_coachroof)->drawn);
}

/* Nobody sleeps in a locker or on deck. */
static void lived_in_is_below(void **state)
{
    (void)state;
    for (enum zone_key key = ZONE_NONE + 1; key < ZONE_COUNT; key++)
        if (zone_of(key)->lived_in) {
            assert_int_equal(zone_of(key)->level, LEVEL_BELOW);
            assert_false(zone_of(key)->locker || zone_of(key)->narrow);
        }
}

static void sides_have_words(void **state)
{
    (void)state;
    assert_string_equal(side_word(SIDE_NONE), "");
    assert_string_equal(side_word(SIDE_PORT), "port");
    assert_string_equal(side_word(SIDE_STARBOARD), "starboard");
    assert_string_equal(side_word(SIDE_BOTH), "both");
    assert_null(side_words[SIDE_COUNT - 1]);
}

/* The values of a battery's space past that of its own box are those of the zones. */
static void air_is_shared_with_a_zone_or_none(void **state)
{
    (void)state;
    assert_int_equal(air_zone(AIR_NONE), ZONE_NONE);
    assert_int_equal(air_zone(AIR_OWN_BOX), ZONE_NONE);
    assert_string_equal(air_space_words[AIR_OWN_BOX - 1], "own_box");
    for (unsigned air = AIR_OWN_BOX + 1; air < AIR_COUNT; air++)
        assert_string_equal(zone_word(air_zone(air)), air_space_words[air - 1]);
    assert_null(air_space_words[AIR_COUNT - 1]);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(keys_are_unique_and_found),
        TEST(every_family_is_a_zone_without_gaps),
        TEST(rows_of_a_family_lie_to_the_side_they_name),
        TEST(zones_know_what_they_lie_within),
        TEST(a_generators_space_is_no_part_of_the_engines),
        TEST(catamarans_and_landmarks),
        TEST(zones_have_the_traits_of_their_rows),
        TEST(lived_in_is_below),
        TEST(sides_have_words),
        TEST(air_is_shared_with_a_zone_or_none),
    };
    int failed = cmocka_run_group_tests_name("zone", tests, NULL, NULL);
    return failed != 0;
}
