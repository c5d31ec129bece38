/* test_course.c - horizons, distance and bearing, and rounding for print:
 * reckoned vectors. */
#include "figure_case.h"

#include <string.h>

#include "course.h"
#include "figure.h"

static void ranges_agree(void **state)
{
    static const struct { double own, other, exact, printed, coverage; } rows[] = {
        {18, 100, 31.70, 31.33, 35.61}, {18, 18, 18.88, 18.67, 21.21},
        {2, 100, 25.40, 25.11, 28.54},
        {1, 100, 24.48, 24.20, 27.50}, {1, 25, 13.35, 13.20, 15.00}, {1, 1, 4.451, 4.400, 5.000},
        {1, 300, 40.77, 40.31, 45.80}, {18, 25, 20.57, 20.33, 23.11}};
    (void)state;
    for (size_t i = 0; i < ROWS(rows); i++) {
        assert_four_digits("exact", i, rows[i].exact,
                           range_nm(radio_horizon_exact(), rows[i].own, rows[i].other));
        assert_four_digits("printed", i, rows[i].printed,
                           range_nm(RADIO_HORIZON_PRINTED, rows[i].own, rows[i].other));
        assert_four_digits("coverage", i, rows[i].coverage,
                           range_nm(RADIO_HORIZON_COVERAGE, rows[i].own, rows[i].other));
    }
}

/* R05, R06: A1 reckoned with an aerial of 4 m, and heights in feet. */
static void vectors_of_range_agree(void **state)
{
    (void)state;
    assert_true(fabs(range_nm(RADIO_HORIZON_COVERAGE, 4, 100) - 30.0) < 1e-9);
    assert_true(fabs(range_nm(RADIO_HORIZON_PRINTED, 60 * 0.3048, 0) - 9.5) < 0.15);
    assert_true(fabs(range_nm(radio_horizon_exact(), 60 * 0.3048, 0) - 9.5) < 0.05);
}

static void horizons_agree(void **state)
{
    static const struct { double height, radio, visible; } rows[] = {
        {0.5, 1.574, 1.471}, {1, 2.226, 2.080}, {2, 3.147, 2.942}, {4, 4.451, 4.160},
        {10, 7.038, 6.578}, {15, 8.620, 8.056}, {18, 9.442, 8.825}, {22, 10.44, 9.756},
        {50, 15.74, 14.71}, {100, 22.26, 20.80}, {200, 31.47, 29.42}};
    (void)state;
    for (size_t i = 0; i < ROWS(rows); i++) {
        assert_four_digits("radio", i, rows[i].radio,
                           range_nm(radio_horizon_exact(), rows[i].height, 0));
        assert_four_digits("visible", i, rows[i].visible,
                           range_nm(VISIBLE_HORIZON, rows[i].height, 0));
    }
    /* light bends less than radio: an earth of 7/6 of its radius */
    assert_four_digits("of light", 0, 2.082, radio_horizon_exact() * sqrt(7.0 / 8.0));
    assert_four_digits("eye and head", 0, 4.329, range_nm(VISIBLE_HORIZON, 2.5, 0.25));
}

static void what_is_printed_is_less_than_the_range(void **state)
{
    (void)state;
    for (double height = 0.5; height < 60; height += 0.5) {
        double printed = (double)rounded_down_milli(range_nm(RADIO_HORIZON_PRINTED, height, 0));
        assert_true(printed / 1000.0 < range_nm(radio_horizon_exact(), height, 0));
    }
}

/* ---- distance and bearing ---- */

static const struct {
    struct geographic from, to;
    double gc_nm, gc_degrees, rhumb_nm, rhumb_degrees, geodesic_nm;
} courses[] = {
    {{43.5, 16.4}, {43.173, 16.441}, 19.71, 174.8, 19.71, 174.8, 19.70},
    {{37.94, 23.64}, {37.06, 25.15}, 89.24, 125.8, 89.25, 126.3, 89.32},
    {{-18.1, 178.9}, {-17.5, -179.5}, 98.30, 68.75, 98.30, 68.50, 98.36},
    {{58.0, -5.5}, {58.0, -7.5}, 63.63, 270.8, 63.63, 270.0, 63.86},
    {{10.0, -61.0}, {14.0, -61.0}, 240.2, 0, 240.2, 0, 238.9},
};

static void distance_and_bearing_agree(void **state)
{
    (void)state;
    for (size_t i = 0; i < ROWS(courses); i++) {
        struct course gc = great_circle(courses[i].from, courses[i].to);
        struct course rhumb = rhumb_line(courses[i].from, courses[i].to);
        assert_true(gc.defined && rhumb.defined);
        assert_four_digits("great circle", i, courses[i].gc_nm, gc.nm);
        assert_four_digits("its bearing", i, courses[i].gc_degrees, gc.degrees);
        assert_four_digits("rhumb line", i, courses[i].rhumb_nm, rhumb.nm);
        assert_four_digits("its course", i, courses[i].rhumb_degrees, rhumb.degrees);
    }
}

static void the_sphere_errs_by_six_thousandths_at_most(void **state)
{
    (void)state;
    for (size_t i = 0; i < ROWS(courses); i++) {
        double error = great_circle(courses[i].from, courses[i].to).nm / courses[i].geodesic_nm;
        assert_true(fabs(error - 1.0) < 0.006);
    }
}

static void the_same_place_has_no_bearing(void **state)
{
    struct geographic place = {18.45, -64.6}, beside = {18.4501, -64.6};
    (void)state;
    assert_false(great_circle(place, place).defined);
    assert_false(rhumb_line(place, place).defined);
    assert_false(rhumb_line(place, beside).defined);
    assert_true(great_circle(place, place).nm < 1e-9);
}

static void there_and_back_is_as_far_and_opposite(void **state)
{
    (void)state;
    for (size_t i = 0; i < ROWS(courses); i++) {
        struct course there = rhumb_line(courses[i].from, courses[i].to);
        struct course back = rhumb_line(courses[i].to, courses[i].from);
        assert_true(fabs(there.nm - back.nm) < 0.05);
        assert_true(fabs(fabs(there.degrees - back.degrees) - 180.0) < 1e-6);
        /* the great circle is never longer */
        assert_true(great_circle(courses[i].from, courses[i].to).nm < there.nm + 1e-6);
    }
}

/* One degree of latitude is 60.041 miles of this sphere, from the pole as from elsewhere. */
static void courses_at_a_pole_are_due_north_or_south(void **state)
{
    static const struct { struct geographic from, to; double nm, degrees; } rows[] = {
        {{90, 0}, {89, 10}, 60.04, 180}, {{89, 10}, {90, -170}, 60.04, 0},
        {{-90, 0}, {-89, 10}, 60.04, 0}, {{-89, 170}, {-90, -10}, 60.04, 180},
        {{90, 0}, {-90, 10}, 10810, 180}, {{-90, 0}, {90, -120}, 10810, 0}};
    (void)state;
    for (size_t i = 0; i < ROWS(rows); i++) {
        struct course course = rhumb_line(rows[i].from, rows[i].to);
        assert_true(course.defined);
        assert_four_digits("miles", i, rows[i].nm, course.nm);
        assert_four_digits("degrees", i, rows[i].degrees, course.degrees);
    }
    for (double pole = -90; pole <= 90; pole += 180) {
        struct geographic one = {pole, 0}, same = {pole, 120};
        assert_false(rhumb_line(one, same).defined);
        assert_true(rhumb_line(one, same).nm < 1e-6);
        assert_false(great_circle(one, same).defined);
    }
}

/* Half round the earth, where rounding may pass the largest sine. */
static void the_other_side_of_the_earth_is_at_a_distance(void **state)
{
    (void)state;
    for (double latitude = -90; latitude <= 90; latitude += 7.5)
        for (double longitude = -180; longitude <= 0; longitude += 12.3) {
            struct geographic from = {latitude, longitude}, to = {-latitude, longitude + 180};
            assert_true(fabs(great_circle(from, to).nm - 10807.297) < 0.01);
        }
}

static void bearings_are_named(void **state)
{
    static const struct { double degrees; int rounded; const char *point; } rows[] = {
        {0, 0, "N"}, {11.25, 11, "NNE"}, {174.8, 175, "S"}, {359.6, 0, "N"}, {348.7, 349, "NNW"},
        {270.8, 271, "W"}};
    (void)state;
    for (size_t i = 0; i < ROWS(rows); i++) {
        assert_int_equal(bearing_rounded(rows[i].degrees), rows[i].rounded);
        assert_string_equal(bearing_point(rows[i].degrees), rows[i].point);
    }
}

/* ---- rounding ---- */

static void numbers_round_to_the_safe_side(void **state)
{
    static const struct { double value; int64_t up, down; } rows[] = {
        {132.0, 140000, 130000}, {42.86, 43000, 42000}, {9.333, 9400, 9300}, {7, 7000, 7000},
        {99.1, 100000, 99000}, {100, 100000, 100000}, {101, 110000, 100000}, {0.5362, 540, 530},
        {140.0000000001, 140000, 140000}, {29.999999999999, 30000, 30000}, {2045, 2100000, 2000000},
        {0, 0, 0}, {-3, 0, 0}, {0.0004, 1, 0}};
    (void)state;
    for (size_t i = 0; i < ROWS(rows); i++) {
        assert_int_equal(rounded_up_milli(rows[i].value), rows[i].up);
        assert_int_equal(rounded_down_milli(rows[i].value), rows[i].down);
    }
    assert_int_equal(nearest_milli(1.23456), 1235);
    assert_int_equal(nearest_milli(-1.5), -1500);
}

static void rounding_never_passes_the_value(void **state)
{
    (void)state;
    for (double value = 0.011; value < 1e7; value *= 1.0137) {
        double up = (double)rounded_up_milli(value) / 1000.0;
        double down = (double)rounded_down_milli(value) / 1000.0;
        assert_true(up >= value * (1.0 - 1e-8) && up <= value * 1.1 + 0.001);
        assert_true(down <= value * (1.0 + 1e-8) && down >= value * 0.9 - 0.001);
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(ranges_agree),
        cmocka_unit_test(vectors_of_range_agree),
        cmocka_unit_test(horizons_agree),
        cmocka_unit_test(what_is_printed_is_less_than_the_range),
        cmocka_unit_test(distance_and_bearing_agree),
        cmocka_unit_test(the_sphere_errs_by_six_thousandths_at_most),
        cmocka_unit_test(the_same_place_has_no_bearing),
        cmocka_unit_test(there_and_back_is_as_far_and_opposite),
        cmocka_unit_test(courses_at_a_pole_are_due_north_or_south),
        cmocka_unit_test(the_other_side_of_the_earth_is_at_a_distance),
        cmocka_unit_test(bearings_are_named),
        cmocka_unit_test(numbers_round_to_the_safe_side),
        cmocka_unit_test(rounding_never_passes_the_value),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
