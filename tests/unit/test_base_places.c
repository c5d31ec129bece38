/* test_base_places.c - the positions and the variation of base.yaml as numbers, and
 * what is told of those that are wrong. */
#include "record_test.h"

#include "boat.h"

static bool sound;

#define BASE "base: {name: Quay, phone_24h: +44 20 7946 0000, position: \"%s\"}\n" \
    "rescue_centre: {name: Centre, channel: \"06\"}\n"
#define NORTH_EAST "cruising_area: {latitude: north, longitude: east%s}\n"

static const struct base_record *base_of(const char *position, const char *area,
                                         const char *rest)
{
    const char *head = text_format(test.arena, BASE, position);
    const char *text = text_format(test.arena, "%s%s%s", head, area, rest);
    return base_read(file_of("base.yaml", text), test.arena, test.problems, &sound);
}

static const char *area_with(const char *more)
{
    return text_format(test.arena, NORTH_EAST, more);
}

static void what_is_recorded_is_read(void **state)
{
    (void)state;
    const struct base_record *base = base_of(
        "43 30.488 N 016 26.411 E", area_with(", variation: 4.5 W, variation_on: 2026-01"),
        "shelters:\n"
        "  - {name: One, position: 43 28.35 N 016 26.1 E}\n"
        "  - {name: Two, position: \"43.5, 16.4\"}\n");
    expect_errors(0);
    assert_true(sound);
    assert_true(base->berths_given);
    assert_true(base->berths.latitude_e7 == 435081333);
    assert_true(base->berths.longitude_e7 == 164401833);
    assert_true(base->variation_given);
    assert_int_equal(base->variation_tenths, -45);
    assert_int_equal(base->shelter_count, 2);
    assert_true(base->shelters[0].at_given && base->shelters[1].at_given);
    assert_true(base->shelters[0].at.latitude_e7 == 434725000);
    assert_true(base->shelters[1].at.longitude_e7 == 164000000);
}

static void what_is_not_recorded_is_not_given(void **state)
{
    (void)state;
    const struct base_record *base = base_read(
        file_of("base.yaml", "base: {name: Quay, phone_24h: +44 20 7946 0000}\n"
                             "rescue_centre: {name: Centre, channel: \"06\"}\n"
                             "cruising_area: {latitude: north, longitude: east}\n"),
        test.arena, test.problems, &sound);
    expect_errors(0);
    assert_false(base->berths_given);
    assert_false(base->variation_given);
    assert_int_equal(base->shelter_count, 0);
}

static void a_wrong_position_is_told_with_its_place(void **state)
{
    (void)state;
    const struct base_record *base = base_of("43 60.0 N 016 26.1 E", area_with(""), "");
    expect_errors(1);
    expect_error(1, "position `43 60.0 N 016 26.1 E` has 60 minutes or more (character 4)",
                 "read it anew: are they minutes, or decimals of a degree (43.4725)?");
    assert_false(sound);
    assert_false(base->berths_given);
    test.problems = problems_new(test.arena);
    base_of("156600", area_with(""), "");
    expect_errors(1);
    expect_error_with(1, "position `156600` is one large number", "in quotes");
    test.problems = problems_new(test.arena);
    base_of("43 28.35 016 26.1", area_with(""), "");
    expect_errors(1);
    expect_error_with(1, "lacks N, S, E or W (character 1)", "write the letter with both");
}

/* A slip of one letter would put the harbour on the other side of the world. */
static void the_cruising_area_s_hemispheres_hold(void **state)
{
    (void)state;
    const struct base_record *base = base_of(
        "43 28.35 S 016 26.1 W", area_with(""),
        "shelters: [{name: One, position: 43 28.35 N 016 26.1 W}]\n");
    expect_errors(3);
    expect_error(1, "position `43 28.35 S 016 26.1 W` lies south, but the cruising area is north",
                 "correct its letter, or write `both` there if the boats sail on both sides");
    expect_error(1, "position `43 28.35 S 016 26.1 W` lies west, but the cruising area is east",
                 NULL);
    expect_error(4, "position `43 28.35 N 016 26.1 W` lies west, but the cruising area is east",
                 NULL);
    assert_false(base->berths_given);
    assert_false(base->shelters[0].at_given);
    test.problems = problems_new(test.arena);
    base_of("43 28.35 S 016 26.1 W", "cruising_area: {latitude: both, longitude: west}\n", "");
    expect_errors(0);
    base_of("0 N 0 E", "cruising_area: {latitude: south, longitude: west}\n", "");
    expect_errors(0);
}

static void a_variation_has_a_letter(void **state)
{
    (void)state;
    static const char *const wrong[] = {"4", "-4", "4 N", "4 EAST", "E", "4.55 E"};
    for (size_t i = 0; i < sizeof wrong / sizeof wrong[0]; i++) {
        test.problems = problems_new(test.arena);
        const char *more = text_format(test.arena, ", variation: %s", wrong[i]);
        const struct base_record *base = base_of("43.5 16.4", area_with(more), "");
        expect_errors(1);
        expect_error(3, text_format(test.arena, "variation `%s` cannot be read", wrong[i]),
                     "write degrees and E or W from the chart, such as 4 E, 4.5 W or 4°30'W");
        assert_false(base->variation_given);
        assert_false(sound);
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(what_is_recorded_is_read),
        TEST(what_is_not_recorded_is_not_given),
        TEST(a_wrong_position_is_told_with_its_place),
        TEST(the_cruising_area_s_hemispheres_hold),
        TEST(a_variation_has_a_letter),
    };
    return cmocka_run_group_tests_name("base_places", tests, NULL, NULL) != 0;
}
