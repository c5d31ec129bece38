/* test_fire_gas.c - agents, cooking gas and fuel: reckoned vectors. */
#include "figure_case.h"

#include "fire_gas.h"

static void a_charge_lasts_so_long(void **state)
{
    static const struct { double kg, flow, s; } rows[] = {
        {1, 0.12, 8.333}, {2, 0.18, 11.11}, {6, 0.45, 13.33}, {2, 0.25, 8.000}};
    static const struct { double charge; int s; } least[] = {
        {1, 6}, {2, 6}, {3, 6}, {6, 9}, {9, 12}, {12, 15}, {3.1, 9}, {10.1, 15}};
    (void)state;
    for (size_t i = 0; i < ROWS(rows); i++)
        assert_four_digits("discharge", i, rows[i].s, discharge_s(rows[i].kg, rows[i].flow));
    for (size_t i = 0; i < ROWS(least); i++)
        assert_int_equal(discharge_least_s(least[i].charge), least[i].s);
}

static void agent_for_an_engine_space_agrees(void **state)
{
    static const struct { double space, celsius, specific, kg; } hfc[] = {
        {1, 20, 0.1372, 0.7211}, {2.5, 0, 0.1269, 1.948}, {4, 0, 0.1269, 3.117},
        {1.5, -10, 0.1218, 1.218}};
    static const struct { double space, celsius, specific, kg; } fk[] = {
        {1, 20, 0.07188, 0.8723}, {2.5, 0, 0.06640, 2.361}, {4, 0, 0.06640, 3.777}};
    (void)state;
    for (size_t i = 0; i < ROWS(hfc); i++) {
        double specific = hfc227ea_m3_per_kg(hfc[i].celsius);
        assert_four_digits("HFC volume", i, hfc[i].specific, specific);
        assert_four_digits("HFC", i, hfc[i].kg, halocarbon_kg(hfc[i].space, specific, 9));
    }
    for (size_t i = 0; i < ROWS(fk); i++) {
        double specific = fk5112_m3_per_kg(fk[i].celsius);
        assert_four_digits("FK volume", i, fk[i].specific, specific);
        assert_four_digits("FK", i, fk[i].kg, halocarbon_kg(fk[i].space, specific, 5.9));
    }
    assert_four_digits("CO2", 0, 0.7143, co2_engine_space_kg(1));
    assert_four_digits("CO2", 1, 1.786, co2_engine_space_kg(2.5));
    assert_four_digits("CO2", 2, 2.857, co2_engine_space_kg(4));
    assert_four_digits("aerosol", 0, 0.08, aerosol_kg(1, 80));
    assert_four_digits("aerosol", 1, 0.2, aerosol_kg(2.5, 80));
    assert_four_digits("aerosol", 2, 0.4, aerosol_kg(4, 100));
}

/* ---- least outfit ---- */

static void the_least_outfit_of_the_united_states_agrees(void **state)
{
    enum us_system none = US_NO_FIXED_SYSTEM, with = US_FIXED_SYSTEM;
    const struct { double loa_m, feet; enum us_system system; int count, beside; } rows[] = {
        {7.5, 24.61, none, 1, -1}, {10.0, 32.81, none, 2, 0}, {12.2, 40.03, none, 3, 1},
        {14.0, 45.93, with, 2, 0}, {7.894, 25.90, none, 1, -1},
        /* the rule's other cells, and its edges */
        {7.5, 24.61, with, 0, -1}, {10.0, 32.81, with, 1, -1}, {14.0, 45.93, none, 3, 1},
        {7.9248, 26.00, none, 2, 0}, {12.192, 40.00, none, 3, 1}, {19.812, 65.00, with, 2, 0}};
    struct us_outfit outfit = {7, 7};
    (void)state;
    assert_false(us_outfit_least(19.9, US_FIXED_SYSTEM, &outfit));
    assert_int_equal(outfit.count_5b, 7);
    for (size_t i = 0; i < ROWS(rows); i++) {
        assert_four_digits("feet", i, rows[i].feet, rows[i].loa_m / 0.3048);
        assert_true(us_outfit_least(rows[i].loa_m, rows[i].system, &outfit));
        assert_int_equal(outfit.count_5b, rows[i].count);
        assert_int_equal(outfit.beside_20b, rows[i].beside);
    }
}

/* ---- gas ---- */

static void gas_volumes_agree(void **state)
{
    static const struct { enum gas gas; double kg, vapour, mixture, by_detectors; } rows[] = {
        {GAS_PROPANE, 1, 0.5362, 25.53, 31.54}, {GAS_BUTANE, 1, 0.4068, 22.60, 29.06},
        {GAS_BUTANE, 2.75, 1.119, 62.15, 79.91}, {GAS_PROPANE, 5, 2.681, 127.7, 157.7},
        {GAS_PROPANE, 6, 3.217, 153.2, 189.2}, {GAS_BUTANE, 3, 1.220, 67.80, 87.17}};
    (void)state;
    for (size_t i = 0; i < ROWS(rows); i++) {
        enum gas gas = rows[i].gas;
        double vapour = gas_vapour_m3(gas, rows[i].kg, GAS_USUAL_CELSIUS);
        assert_four_digits("vapour", i, rows[i].vapour, vapour);
        assert_four_digits("mixture", i, rows[i].mixture,
                           gas_mixture_m3(vapour, gas_limit_percent(gas)));
        assert_four_digits("by detectors' limit", i, rows[i].by_detectors,
                           gas_mixture_m3(vapour, gas_limit_detector_percent(gas)));
    }
}

static double times(enum gas gas, double kg, double interior_m3)
{
    double vapour = gas_vapour_m3(gas, kg, GAS_USUAL_CELSIUS);
    return gas_times_space(gas_mixture_m3(vapour, gas_limit_percent(gas)), interior_m3);
}

static void a_bottle_fills_the_boat_so_often(void **state)
{
    (void)state;
    assert_four_digits("times", 0, 2.072, times(GAS_BUTANE, 2.75, 30));
    assert_four_digits("times", 1, 3.648, times(GAS_PROPANE, 5, 35));
    assert_four_digits("times", 2, 6.128, times(GAS_PROPANE, 6, 25));
    assert_four_digits("times", 3, 1.507, times(GAS_BUTANE, 3, 45));
}

static void gas_is_heavier_than_air(void **state)
{
    (void)state;
    assert_four_digits("propane", 0, 1.522, gas_weight_in_air(GAS_PROPANE));
    assert_four_digits("butane", 0, 2.007, gas_weight_in_air(GAS_BUTANE));
}

/* An ideal gas takes more room than a real one: the safe side. */
static void volumes_err_on_the_safe_side(void **state)
{
    double propane = gas_vapour_m3(GAS_PROPANE, 1, 15) / 0.5263;
    double butane = gas_vapour_m3(GAS_BUTANE, 1, 15) / 0.3930;
    (void)state;
    assert_true(propane > 1.01 && propane < 1.045);
    assert_true(butane > 1.01 && butane < 1.045);
    assert_true(fabs(gas_vapour_m3(GAS_PROPANE, 1, 20) / 0.553 - 1.0) < 0.02);
    assert_true(fabs(gas_vapour_m3(GAS_BUTANE, 1, 20) / 0.395 - 1.0) < 0.05);
}

static void grams_to_the_limit_and_the_unlit_burner_agree(void **state)
{
    static const struct { enum gas gas; double space, percent, grams, rate, minutes; } rows[] = {
        {GAS_PROPANE, 1, 2.1, 39.16, 2.590, 15.12}, {GAS_PROPANE, 1, 1.7, 31.70, 2.590, 12.24},
        {GAS_BUTANE, 1, 1.8, 44.25, 2.624, 16.87}, {GAS_BUTANE, 30, 1.8, 1327, 2.624, 506.0},
        {GAS_PROPANE, 30, 2.1, 1175, 2.590, 453.7}, {GAS_PROPANE, 0.2, 2.1, 7.833, 2.590, 3.025}};
    (void)state;
    for (size_t i = 0; i < ROWS(rows); i++) {
        double grams = gas_limit_g(rows[i].gas, rows[i].space, rows[i].percent);
        assert_four_digits("grams", i, rows[i].grams, grams);
        assert_four_digits("rate", i, rows[i].rate, burner_g_per_min(rows[i].gas, 2));
        assert_four_digits("minutes", i, rows[i].minutes, burner_min(rows[i].gas, 2, grams));
    }
}

static void grams_at_the_alarm_agree(void **state)
{
    static const struct { enum gas gas; double space, alarm, grams; } rows[] = {
        {GAS_PROPANE, 1, 10, 3.916}, {GAS_PROPANE, 1, 20, 7.833}, {GAS_BUTANE, 1, 20, 8.849},
        {GAS_PROPANE, 0.3, 20, 1.902}};
    (void)state;
    /* The last row reckons by the detectors' own limit. */
    for (size_t i = 0; i < ROWS(rows); i++) {
        double limit = i == 3 ? gas_limit_detector_percent(rows[i].gas)
                              : gas_limit_percent(rows[i].gas);
        assert_four_digits("alarm", i, rows[i].grams,
                           detector_g(rows[i].gas, rows[i].space, limit, rows[i].alarm));
    }
}

/* ---- fuel ---- */

static void fuel_and_range_agree(void **state)
{
    static const struct { double tank, level, l, kg, burn, reserve, hours, kn, nm; } rows[] = {
        {200, 0.75, 150.0, 126.0, 3.5, 0.2, 34.29, 6, 205.7},
        {130, 0.5, 65.00, 54.60, 2.5, 0.2, 20.80, 5.5, 114.4},
        {90, 1.0, 90.00, 75.60, 1.8, 0.1, 45.00, 5, 225.0},
        {400, 0.25, 100.0, 84.00, 6, 0.25, 12.50, 7, 87.50}};
    (void)state;
    for (size_t i = 0; i < ROWS(rows); i++) {
        double litres = fuel_litres(rows[i].tank, rows[i].level);
        double hours = fuel_hours(litres, rows[i].reserve, rows[i].burn);
        assert_four_digits("litres", i, rows[i].l, litres);
        assert_four_digits("kg", i, rows[i].kg, fuel_kg(litres));
        assert_four_digits("hours", i, rows[i].hours, hours);
        assert_four_digits("nm", i, rows[i].nm, fuel_range_nm(hours, rows[i].kn));
    }
}

static void slicks_and_running_on_agree(void **state)
{
    static const struct { double litres, film, m2; } slicks[] = {
        {1, 0.3, 3333}, {1, 5, 200.0}, {10, 0.3, 33330}, {50, 5, 10000}, {1, 0.04, 25000}};
    static const struct { double litres, flow, minutes; } rows[] = {
        {0.3, 1.0, 18.00}, {0.5, 3.0, 10.00}, {0.8, 20, 2.400}, {1.2, 2.0, 36.00}};
    (void)state;
    for (size_t i = 0; i < ROWS(slicks); i++)
        assert_four_digits("slick", i, slicks[i].m2, slick_m2(slicks[i].litres, slicks[i].film));
    for (size_t i = 0; i < ROWS(rows); i++)
        assert_four_digits("run on", i, rows[i].minutes,
                           run_on_min(rows[i].litres, rows[i].flow));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(a_charge_lasts_so_long),
        cmocka_unit_test(agent_for_an_engine_space_agrees),
        cmocka_unit_test(the_least_outfit_of_the_united_states_agrees),
        cmocka_unit_test(gas_volumes_agree),
        cmocka_unit_test(a_bottle_fills_the_boat_so_often),
        cmocka_unit_test(gas_is_heavier_than_air),
        cmocka_unit_test(volumes_err_on_the_safe_side),
        cmocka_unit_test(grams_to_the_limit_and_the_unlit_burner_agree),
        cmocka_unit_test(grams_at_the_alarm_agree),
        cmocka_unit_test(fuel_and_range_agree),
        cmocka_unit_test(slicks_and_running_on_agree),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
