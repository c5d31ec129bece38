/* test_fire_rating.c - ratings of extinguishers, the test fires behind them, and
 * carbon dioxide in cabins. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <math.h>

#include "capacity.h"

static struct fire_rating rating_of(const char *string)
{
    struct fire_rating rating = {0};
    if (fire_rating_parse(string, &rating) != RATING_READ)
        fail_msg("\"%s\" was not read", string);
    return rating;
}

static const struct {
    const char *string;
    struct fire_rating rating;
} ratings[] = {
    {"en 13A 70B", {RATING_SYSTEM_EN, 13, 70, 0, false, false, false}},
    {"en 34B", {RATING_SYSTEM_EN, 0, 34, 0, false, false, false}},
    {"us 10-B:C", {RATING_SYSTEM_US, 0, 10, 0, true, false, false}},
    {"us 1-A:10-B:C", {RATING_SYSTEM_US, 1, 10, 0, true, false, false}},
    {"en 5A 34B C", {RATING_SYSTEM_EN, 5, 34, 0, true, false, false}},
    {"EN 233B", {RATING_SYSTEM_EN, 0, 233, 0, false, false, false}},
    {"en 8A 25F", {RATING_SYSTEM_EN, 8, 0, 25, false, false, false}},
    {"en D", {RATING_SYSTEM_EN, 0, 0, 0, false, true, false}},
    {"US 5-B", {RATING_SYSTEM_US, 0, 5, 0, false, false, false}},
    {"us 2-A:K", {RATING_SYSTEM_US, 2, 0, 0, false, false, true}},
    {"en 70B 13A", {RATING_SYSTEM_EN, 13, 70, 0, false, false, false}},
    {"en 999A", {RATING_SYSTEM_EN, 999, 0, 0, false, false, false}},
};

static void ratings_are_read_class_by_class(void **state)
{
    (void)state;
    for (size_t i = 0; i < sizeof ratings / sizeof ratings[0]; i++) {
        struct fire_rating found = rating_of(ratings[i].string);
        assert_int_equal(found.system, ratings[i].rating.system);
        assert_int_equal(found.a, ratings[i].rating.a);
        assert_int_equal(found.b, ratings[i].rating.b);
        assert_int_equal(found.f, ratings[i].rating.f);
        assert_int_equal(found.c, ratings[i].rating.c);
        assert_int_equal(found.d, ratings[i].rating.d);
        assert_int_equal(found.k, ratings[i].rating.k);
    }
}

static void a_rating_without_its_system_is_refused(void **state)
{
    (void)state;
    static const char *const bare[] = {"34B", "13A 70B", "5A 34B C", "10-B:C", "1-A:10-B:C",
                                       "5-B", "25F", "2-A:K"};
    static const char *const wrong[] = {
        "", "en", "en ", "us ", "en  34B", " en 34B", "en 34B ", "en 34B  C", "en 34-B",
        "en 34b", "en B34", "en 034B", "en 0B", "en 1000B", "en 9999999999B",
        "en 34", "en 34B 34B", "en 13A:70B",
        "en 34B 10-B", "en K", "en C C", "en 34B,C", "us 10B:C", "us 10-B C", "us 10-B:",
        "us :C", "us 10-", "us -B", "us 10-B:10-B", "us 5-F", "us 10-B:5-C", "uk 34B", "En 34B",
        "en34B", "powder", "13A 10-B", "en 13A 70B us 10-B", "en 13A\t70B"};
    struct fire_rating untouched = {.system = RATING_SYSTEM_US, .a = 7};
    for (size_t i = 0; i < sizeof bare / sizeof bare[0]; i++)
        assert_int_equal(fire_rating_parse(bare[i], &untouched), RATING_WITHOUT_SYSTEM);
    for (size_t i = 0; i < sizeof wrong / sizeof wrong[0]; i++)
        if (fire_rating_parse(wrong[i], &untouched) != RATING_WRONG)
            fail_msg("\"%s\" is no rating", wrong[i]);
    assert_int_equal(untouched.a, 7);
    assert_int_equal(untouched.b, 0);
}

static enum rating_order order_of(const char *one, const char *other, char class)
{
    struct fire_rating a = rating_of(one);
    struct fire_rating b = rating_of(other);
    return fire_rating_compare(&a, &b, class);
}

static void ratings_of_two_systems_are_never_compared(void **state)
{
    (void)state;
    for (size_t i = 0; i < sizeof ratings / sizeof ratings[0]; i++) {
        for (size_t j = 0; j < sizeof ratings / sizeof ratings[0]; j++) {
            bool same = ratings[i].rating.system == ratings[j].rating.system;
            for (const char *class = "ABF"; *class != '\0'; class++)
                assert_int_equal(order_of(ratings[i].string, ratings[j].string, *class) !=
                                 RATING_NOT_COMPARABLE, same);
        }
    }
    assert_int_equal(order_of("en 34B", "us 34-B", 'B'), RATING_NOT_COMPARABLE);
}

static void within_a_system_the_numbers_of_a_class_are_compared(void **state)
{
    (void)state;
    assert_int_equal(order_of("en 13A 70B", "en 5A 34B", 'A'), RATING_MORE);
    assert_int_equal(order_of("en 13A 34B", "en 5A 70B", 'B'), RATING_LESS);
    assert_int_equal(order_of("en 13A 34B", "en 34B", 'B'), RATING_EQUAL);
    assert_int_equal(order_of("en 34B", "en 5A", 'A'), RATING_LESS);
    assert_int_equal(order_of("us 10-B:C", "us 5-B", 'B'), RATING_MORE);
    assert_int_equal(order_of("en 5F", "en 25F", 'F'), RATING_LESS);
    assert_int_equal(order_of("en 34B C", "en 34B C", 'C'), RATING_NOT_COMPARABLE);
}

/* Equal to four significant figures, as the tables are. */
static void expect_figure(double found, double expected)
{
    double unit = pow(10.0, floor(log10(expected)) - 3.0);
    if (!(fabs(found - expected) <= 0.5001 * unit))
        fail_msg("%.6g, not %.4g", found, expected);
}

/* The last column turns the pan's area into square feet: a
 * length's change of unit, no change of rating. */
static void european_test_fires_have_their_size(void **state)
{
    (void)state;
    static const struct {
        int b;
        double litres, fuel_litres, area_m2, diameter_m, square_feet;
    } fires[] = {
        {13, 13, 8.667, 0.4084, 0.7211, 4.396},
        {21, 21, 14.00, 0.6597, 0.9165, 7.101},
        {34, 34, 22.67, 1.068, 1.166, 11.50},
        {55, 55, 36.67, 1.728, 1.483, 18.60},
        {70, 70, 46.67, 2.199, 1.673, 23.67},
        {89, 89, 59.33, 2.796, 1.887, 30.10},
        {113, 113, 75.33, 3.550, 2.126, 38.21},
        {144, 144, 96.00, 4.524, 2.400, 48.69},
        {183, 183, 122.0, 5.749, 2.706, 61.88},
        {233, 233, 155.3, 7.320, 3.053, 78.79},
    };
    for (size_t i = 0; i < sizeof fires / sizeof fires[0]; i++) {
        expect_figure(en_fire_litres(fires[i].b), fires[i].litres);
        expect_figure(en_fire_fuel_litres(fires[i].b), fires[i].fuel_litres);
        expect_figure(en_fire_area_m2(fires[i].b), fires[i].area_m2);
        expect_figure(en_fire_diameter_m(fires[i].b), fires[i].diameter_m);
        expect_figure(en_fire_area_m2(fires[i].b) / us_fire_area_m2(1), fires[i].square_feet);
    }
}

static void american_test_fires_have_their_area(void **state)
{
    (void)state;
    static const struct {
        int b;
        double area_m2;
    } fires[] = {{5, 0.4645}, {10, 0.9290}, {20, 1.858}, {40, 3.716}};
    for (size_t i = 0; i < sizeof fires / sizeof fires[0]; i++)
        expect_figure(us_fire_area_m2(fires[i].b), fires[i].area_m2);
}

/* ---- carbon dioxide ---- */

static void the_share_of_carbon_dioxide_is_found(void **state)
{
    (void)state;
    static const struct {
        int64_t kg, m3;
        double percent, floor_m2;
        bool too_high;
    } cases[] = {
        {2, 15, 6.948, 11.00, true},
        {2, 30, 3.599, 11.00, true},
        {5, 30, 8.537, 27.50, true},
        {2, 8, 12.28, 11.00, true},
        {2, 36, 3.017, 11.00, true},   /* "36 m3" is rounded: 36.21 */
        {2, 37, 2.938, 11.00, false},
    };
    for (size_t i = 0; i < sizeof cases / sizeof cases[0]; i++) {
        expect_figure(co2_share_percent(cases[i].kg * 1000, cases[i].m3 * 1000),
                      cases[i].percent);
        expect_figure(co2_floor_needed_m2(cases[i].kg * 1000), cases[i].floor_m2);
        assert_int_equal(co2_share_too_high(cases[i].kg * 1000, cases[i].m3 * 1000),
                         cases[i].too_high);
    }
    expect_figure(co2_space_needed_m3(2000, 3.0), 36.21);
    expect_figure(co2_space_needed_m3(2000, 4.0), 26.88);
}

/* 3 kg in 54.32 m3 is 3 per cent to the last digit. */
static void the_limit_itself_is_not_too_high(void **state)
{
    (void)state;
    assert_false(co2_share_too_high(3000, 54320));
    assert_true(co2_share_too_high(3000, 54319));
    assert_true(co2_share_too_high(3001, 54320));
    assert_true(co2_share_too_high(1, 0));
    assert_false(co2_share_too_high(0, 1000));
    expect_figure(co2_share_percent(1000, 0), 100.0);
}

static void more_gas_or_less_space_is_a_greater_share(void **state)
{
    (void)state;
    for (int64_t kg = 100; kg <= 6000; kg += 100) {
        for (int64_t m3 = 1000; m3 <= 90000; m3 += 1000) {
            double share = co2_share_percent(kg, m3);
            assert_true(share > 0.0 && share < 100.0);
            assert_true(share < co2_share_percent(kg + 1, m3));
            assert_true(share > co2_share_percent(kg, m3 + 1));
            if (fabs(share - 3.0) > 1e-9)
                assert_int_equal(co2_share_too_high(kg, m3), share > 3.0);
            assert_true(fabs(co2_space_needed_m3(kg, share) * 1000.0 - (double)m3) < 0.001);
        }
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(ratings_are_read_class_by_class),
        cmocka_unit_test(a_rating_without_its_system_is_refused),
        cmocka_unit_test(ratings_of_two_systems_are_never_compared),
        cmocka_unit_test(within_a_system_the_numbers_of_a_class_are_compared),
        cmocka_unit_test(european_test_fires_have_their_size),
        cmocka_unit_test(american_test_fires_have_their_area),
        cmocka_unit_test(the_share_of_carbon_dioxide_is_found),
        cmocka_unit_test(the_limit_itself_is_not_too_high),
        cmocka_unit_test(more_gas_or_less_space_is_a_greater_share),
    };

    return cmocka_run_group_tests_name("fire_rating", tests, NULL, NULL) != 0;
}
