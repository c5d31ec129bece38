/* test_zone.c - the zones of a boat: families, sides, where they lie. */
#include "record_test.h"

#include "item.h"

static void keys_are_unique_and_found(void **state)
{
    (void)state;
    size_t count = 0;
    for (; zone_at(count) != NULL; count++) {
        assert_ptr_equal(zone_find(zone_at(count)->key), zone_at(count));
        assert_string_equal(zone_key_list[count], zone_at(count)->key);
    }
    assert_null(zone_key_list[count]);
    assert_true(count > 40);
    assert_null(zone_find("cokpit"));
    assert_null(zone_find(NULL));
}

static void every_family_is_a_zone_without_gaps(void **state)
{
    (void)state;
    for (size_t i = 0; zone_at(i) != NULL; i++) {
        const struct zone *zone = zone_at(i);
        const struct zone *family = zone_find(zone->family);
        assert_non_null(family);
        assert_string_equal(family->family, family->key);
        assert_true(zone->from >= 0 && zone->from < zone->to && zone->to <= 105);
    }
}

/* A row of a family is the family's key, an underscore and its side. */
static void rows_of_a_family_lie_to_the_side_they_name(void **state)
{
    (void)state;
    size_t rows = 0;
    for (size_t i = 0; zone_at(i) != NULL; i++) {
        const struct zone *zone = zone_at(i);
        if (strcmp(zone->key, zone->family) == 0)
            continue;
        rows++;
        assert_string_equal(zone->key, text_format(test.arena, "%s_%s", zone->family,
                                                   side_word(zone->side)));
        assert_int_equal(zone_find(zone->family)->side, SIDE_NONE);
    }
    assert_int_equal(rows, 12);
}

static void zones_know_what_they_lie_within(void **state)
{
    (void)state;
    const struct zone *port = zone_find("engine_space_port");
    assert_true(zone_within(port, "engine_space"));
    assert_true(zone_within(port, "engine_space_port"));
    assert_false(zone_within(port, "engine_space_starboard"));
    assert_false(zone_within(zone_find("engine_space"), "engine_space_port"));
    assert_false(zone_within(NULL, "engine_space"));
    assert_false(zone_within(port, NULL));
}

static void catamarans_and_landmarks(void **state)
{
    (void)state;
    assert_true(zone_find("trampoline")->catamaran_only);
    assert_true(zone_find("engine_space_starboard")->catamaran_only);
    assert_false(zone_find("engine_space")->catamaran_only);
    assert_true(zone_find("aft_cabin_port")->in_hulls);
    assert_false(zone_find("bridgedeck")->in_hulls);
    assert_true(zone_find("aft_cabin_port")->drawn);
    assert_false(zone_find("navigation_station")->drawn);
    assert_int_equal(zone_find("bathing_platform")->to, 105);
    assert_int_equal(zone_find("cockpit")->level, LEVEL_DECK);
    assert_int_equal(zone_find("saloon")->level, LEVEL_BELOW);
    assert_int_equal(zone_find("flybridge")->level, LEVEL_TOP);
}

static void sides_have_words(void **state)
{
    (void)state;
    static const enum side sides[] = {SIDE_PORT, SIDE_STARBOARD, SIDE_CENTRE, SIDE_BOTH};
    for (size_t i = 0; i < 4; i++)
        assert_int_equal(side_from(side_word(sides[i])), sides[i]);
    assert_string_equal(side_word(SIDE_NONE), "");
    assert_string_equal(side_word(SIDE_STARBOARD), "starboard");
    assert_int_equal(side_from("left"), SIDE_NONE);
    assert_int_equal(side_from(""), SIDE_NONE);
    assert_int_equal(side_from(NULL), SIDE_NONE);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(keys_are_unique_and_found),
        TEST(every_family_is_a_zone_without_gaps),
        TEST(rows_of_a_family_lie_to_the_side_they_name),
        TEST(zones_know_what_they_lie_within),
        TEST(catamarans_and_landmarks),
        TEST(sides_have_words),
    };
    int failed = cmocka_run_group_tests_name("zone", tests, NULL, NULL);
    return failed != 0;
}
