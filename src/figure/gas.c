/* gas.c - cooking gas: what a bottle fills, and what a bilge needs to explode
 * (room: figure). Never gives a quantity below which air is safe. */
#include "fire_gas.h"

#include "units.h"

#define GAS_CONSTANT 8.314462618     /* J / (mol K) */
#define PRESSURE_PA 101325.0
#define KELVIN_AT_0_CELSIUS 273.15
#define AIR_G_PER_MOL 28.964

static const struct {
    double g_per_mol, limit_percent, detector_percent, heat_kj_per_g;
} cooking_gases[] = {
    [GAS_PROPANE] = {44.097, 2.1, 1.7, 46.34},
    [GAS_BUTANE] = {58.123, 1.8, 1.4, 45.74},
};

double gas_limit_percent(enum gas gas)
{
    return cooking_gases[gas].limit_percent;
}

double gas_limit_detector_percent(enum gas gas)
{
    return cooking_gases[gas].detector_percent;
}

double gas_vapour_m3(enum gas gas, double kilograms, double celsius)
{
    double moles = kilograms * 1000.0 / cooking_gases[gas].g_per_mol;
    return moles * GAS_CONSTANT * (celsius + KELVIN_AT_0_CELSIUS) / PRESSURE_PA;
}

double gas_weight_in_air(enum gas gas)
{
    return cooking_gases[gas].g_per_mol / AIR_G_PER_MOL;
}

double gas_mixture_m3(double vapour_m3, double limit_percent)
{
    return vapour_m3 * 100.0 / limit_percent;
}

double gas_times_space(double mixture_m3, double space_m3)
{
    return mixture_m3 / space_m3;
}

double gas_limit_g(enum gas gas, double space_m3, double limit_percent)
{
    double gas_m3 = space_m3 * limit_percent / 100.0;
    return 1000.0 * gas_m3 / gas_vapour_m3(gas, 1.0, GAS_USUAL_CELSIUS);
}

double burner_g_per_min(enum gas gas, double burner_kw)
{
    return SECONDS_PER_MINUTE * burner_kw / cooking_gases[gas].heat_kj_per_g;
}

double burner_min(enum gas gas, double burner_kw, double grams)
{
    return grams / burner_g_per_min(gas, burner_kw);
}

double detector_g(enum gas gas, double space_m3, double limit_percent, double alarm_percent)
{
    return gas_limit_g(gas, space_m3, limit_percent) * alarm_percent / 100.0;
}
