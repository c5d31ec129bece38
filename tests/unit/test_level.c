/* test_level.c - time to a level: the closed form against the vectors and against an
 * own integration, and what of it may be printed. */
#include "figure_case.h"

#include "flooding.h"

static const struct {
    double litres, bore_mm, depth_m, waterplane, inside, hole, cd, pumps;
    double inflow, minutes, constant;   /* minutes < 0: never */
} rows[] = {
    {600, 38, 0.5, 24, 12, 0.1, 0.8, 0, 170.5, 3.477, 3.520},
    {2400, 38, 0.5, 24, 12, 0.1, 0.8, 0, 170.5, 13.74, 14.08},
    {2400, 38, 0.5, 24, 12, 0.1, 0.8, 60, 170.5, 20.94, 21.72},
    {6000, 50, 0.4, 24, 12, 0.15, 0.62, 100, 204.6, 58.19, 57.37},
    {1500, 25, 0.3, 18, 9, 0.05, 0.62, 40, 44.29, 384.9, 349.3},
    {1000, 19, 0.5, 24, 12, 0.1, 0.62, 40, 33.03, -1, -1},
};

static struct flooding flooding_of(size_t row)
{
    return (struct flooding){rows[row].bore_mm, rows[row].depth_m, rows[row].cd,
                             rows[row].waterplane, rows[row].inside, rows[row].hole,
                             rows[row].pumps};
}

static void the_closed_form_agrees_with_the_vectors(void **state)
{
    (void)state;
    for (size_t i = 0; i < ROWS(rows); i++) {
        struct flooding flooding = flooding_of(i);
        double minutes = 0.0;
        bool filled = time_to_level_min(&flooding, rows[i].litres, &minutes);
        assert_int_equal(filled, rows[i].minutes > 0);
        if (filled)
            assert_four_digits("minutes", i, rows[i].minutes, minutes);
        assert_four_digits("inflow", i, rows[i].inflow,
                           inflow_lpm(rows[i].bore_mm, rows[i].depth_m, rows[i].cd));
    }
}

/* Neither area known: constant head. */
static void without_areas_the_head_stays(void **state)
{
    (void)state;
    for (size_t i = 0; i < ROWS(rows); i++) {
        struct flooding flooding = flooding_of(i);
        double minutes = 0.0;
        flooding.waterplane_m2 = flooding.inside_m2 = 0.0;
        bool filled = time_to_level_min(&flooding, rows[i].litres, &minutes);
        assert_int_equal(filled, rows[i].constant > 0);
        if (filled)
            assert_four_digits("constant head", i, rows[i].constant, minutes);
    }
}

/* As a share of the true time: 9 % short to 4 % long in these vectors. */
static void a_constant_head_errs_within_known_bounds(void **state)
{
    (void)state;
    for (size_t i = 0; i < ROWS(rows); i++)
        if (rows[i].minutes > 0) {
            double error = rows[i].constant / rows[i].minutes - 1.0;
            assert_true(error > -0.095 && error < 0.04);
        }
}

/* m3 a second at a volume inside. */
static double rate(const struct flooding *flooding, double volume)
{
    double covered = volume / flooding->inside_m2 - flooding->hole_height_m;
    double head = flooding->depth_m + volume / flooding->waterplane_m2 -
                  (covered > 0.0 ? covered : 0.0);
    return (inflow_lpm(flooding->bore_mm, head, flooding->coefficient) - flooding->pumps_lpm) /
           60000.0;
}

/* Runge-Kutta of the fourth order, 0.05 s a step; the last step in proportion. */
static double integrated_min(const struct flooding *flooding, double litres)
{
    const double step = 0.05, goal = litres / 1000.0;
    double volume = 0.0, seconds = 0.0;
    while (volume < goal && seconds < 1e6) {
        double k1 = rate(flooding, volume), k2 = rate(flooding, volume + step / 2 * k1);
        double k3 = rate(flooding, volume + step / 2 * k2), k4 = rate(flooding, volume + step * k3);
        double gain = step / 6 * (k1 + 2 * k2 + 2 * k3 + k4);
        if (volume + gain >= goal)
            return (seconds + step * (goal - volume) / gain) / 60.0;
        volume += gain;
        seconds += step;
    }
    return INFINITY;
}

static void an_integration_gives_the_same(void **state)
{
    (void)state;
    for (size_t i = 0; i < ROWS(rows); i++) {
        struct flooding flooding = flooding_of(i);
        if (rows[i].minutes > 0)
            assert_four_digits("Runge-Kutta", i, rows[i].minutes,
                               integrated_min(&flooding, rows[i].litres));
    }
}

/* ---- what is printed ---- */

/* A11: the errors near balance are far more than a factor of two. */
static void twice_the_inflow_shortens_by_more_than_half(void **state)
{
    (void)state;
    double minutes = 0.0;
    struct flooding near_balance = flooding_of(4), pumped = flooding_of(2);
    near_balance.coefficient *= 2;
    pumped.coefficient *= 2;
    assert_true(time_to_level_min(&near_balance, 1500, &minutes));
    assert_true(fabs(minutes - 30.9) < 0.05);
    assert_true(time_to_level_min(&pumped, 2400, &minutes));
    assert_true(fabs(minutes - 8.30) < 0.005);
}

static void only_fifteen_minutes_are_printed_rounded_down(void **state)
{
    /* by vector: minutes printed; 0: nothing */
    static const int printed[] = {1, 6, 8, 0, 0, 0};
    (void)state;
    for (size_t i = 0; i < ROWS(rows); i++) {
        struct flooding flooding = flooding_of(i);
        int minutes = 0;
        double exact = 0.0;
        bool given = time_to_level_printed_min(&flooding, rows[i].litres, &minutes);
        assert_int_equal(given, printed[i] > 0);
        if (!given)
            continue;
        assert_int_equal(minutes, printed[i]);
        assert_true(time_to_level_min(&flooding, rows[i].litres, &exact));
        assert_true((double)minutes < exact);
    }
}

static void less_than_a_minute_says_one(void **state)
{
    (void)state;
    struct flooding flooding = flooding_of(0);
    int minutes = 0;
    assert_true(time_to_level_printed_min(&flooding, 50, &minutes));
    assert_int_equal(minutes, 1);
}

/* Not knowing what would slow the water down never makes the time longer. */
static void what_is_not_known_shortens_the_time(void **state)
{
    (void)state;
    for (size_t i = 0; i < 5; i++) {
        struct flooding flooding = flooding_of(i), less = flooding;
        double known = 0.0, unknown = 0.0;
        less.inside_m2 = 0.0;
        assert_true(time_to_level_min(&flooding, rows[i].litres, &known));
        assert_true(time_to_level_min(&less, rows[i].litres, &unknown));
        assert_true(unknown <= known + 1e-9);
    }
}

static void above_the_water_nothing_fills(void **state)
{
    (void)state;
    double minutes = 0.0;
    struct flooding flooding = flooding_of(0);
    flooding.depth_m = 0.0;
    assert_false(time_to_level_min(&flooding, 600, &minutes));
}

/* ---- settling ---- */

static void waterplanes_agree(void **state)
{
    static const struct { double lwl, bwl, cwp, area, kg, cm; } hulls[] = {
        {10.5, 3.4, 0.68, 24.28, 248.8, 4.119}, {8.5, 2.8, 0.67, 15.95, 163.4, 6.271},
        {12.5, 3.9, 0.69, 33.64, 344.8, 2.973}, {13.0, 1.6, 0.75, 15.60, 159.9, 6.410}};
    (void)state;
    for (size_t i = 0; i < ROWS(hulls); i++) {
        double area = waterplane_m2(hulls[i].lwl, hulls[i].bwl, hulls[i].cwp);
        assert_four_digits("waterplane", i, hulls[i].area, area);
        assert_four_digits("kg per cm", i, hulls[i].kg, immersion_kg_per_cm(area));
        assert_four_digits("sinkage", i, hulls[i].cm, sinkage_cm(1000, area));
    }
}

/* The equilibrium of the formula, which is no evidence that a boat floats. */
static void the_closed_form_stops_before_its_equilibrium(void **state)
{
    (void)state;
    struct flooding flooding = {38, 0.5, 0.8, 24, 12, 0.1, 0};
    double minutes = 0.0;
    assert_true(time_to_level_min(&flooding, 14390, &minutes));
    assert_false(time_to_level_min(&flooding, 14410, &minutes));
    assert_four_digits("sinkage", 0, 60.0, sinkage_cm(14400, 24));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(the_closed_form_agrees_with_the_vectors),
        cmocka_unit_test(without_areas_the_head_stays),
        cmocka_unit_test(a_constant_head_errs_within_known_bounds),
        cmocka_unit_test(an_integration_gives_the_same),
        cmocka_unit_test(twice_the_inflow_shortens_by_more_than_half),
        cmocka_unit_test(only_fifteen_minutes_are_printed_rounded_down),
        cmocka_unit_test(less_than_a_minute_says_one),
        cmocka_unit_test(what_is_not_known_shortens_the_time),
        cmocka_unit_test(above_the_water_nothing_fills),
        cmocka_unit_test(waterplanes_agree),
        cmocka_unit_test(the_closed_form_stops_before_its_equilibrium),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
