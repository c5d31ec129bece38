/* fire_gas.h - extinguishing agents, cooking gas and fuel (room: figure).
 * Pure functions. */
#ifndef MAYDECK_FIRE_GAS_H
#define MAYDECK_FIRE_GAS_H

#include <stdbool.h>

#include "choices.h"

/* ---- extinguishers and engine-space systems ---- */

/* How long a charge lasts, m / flow, at a steady flow. The label or the maker's figure
 * comes first. */
double discharge_s(double charge_kg, double flow_kgps);

/* The least effective discharge of EN 3-7 for a charge in kg or litres (recalled,
 * to be checked against the standard before it is printed). */
int discharge_least_s(double charge);

/* Cubic metres a kilogram of the agent's vapour fills at a temperature: a straight line,
 * recalled, between about -20 and 40 degrees. Take the lowest that is expected. */
double hfc227ea_m3_per_kg(double celsius);
double fk5112_m3_per_kg(double celsius);

/* m = (V / S) C / (100 - C), C the share in percent by design, V net with the bilge
 * (MSC/Circ.848). */
double halocarbon_kg(double space_m3, double vapour_m3_per_kg, double percent);

/* Carbon dioxide for an engine space, 0.40 V / 0.56: deadly to anyone inside. */
double co2_engine_space_kg(double space_m3);

/* Condensed aerosol: the density is the label's. */
double aerosol_kg(double space_m3, double label_g_per_m3);

/* ---- least outfit ---- */

/* Portable extinguishers that 33 CFR 175.320 asks of a boat of the United States, as
 * ratings of 5-B: so many of them, or `beside_20b` of them beside one of 20-B. A 10-B
 * counts as one 5-B. Another flag has another list. */
struct us_outfit {
    int count_5b;
    int beside_20b;            /* -1: there is no such way */
};

enum us_system { US_NO_FIXED_SYSTEM, US_FIXED_SYSTEM };

/* For a boat with a closed engine or cabins, without or with a fixed system. False: she
 * is longer than the 65 feet that it covers. */
bool us_outfit_least(double loa_m, enum us_system system, struct us_outfit *outfit);

/* ---- cooking gas ---- */

#define GAS_USUAL_CELSIUS 15.0

/* The least share in air that explodes, in percent: the handbook's. */
double gas_limit_percent(enum gas gas);

/* The lower values that detectors are set by (recalled from the IEC's list). */
double gas_limit_detector_percent(enum gas gas);

/* V = m R T / (M p) as an ideal gas: 2 to 4 % more than real, the safe side. */
double gas_vapour_m3(enum gas gas, double kilograms, double celsius);

/* Times as heavy as air at the same temperature. */
double gas_weight_in_air(enum gas gas);

/* Air that so much vapour makes explosive when evenly mixed, V / limit. Gas lies low, so
 * a bilge is explosive long before. */
double gas_mixture_m3(double vapour_m3, double limit_percent);

/* How many times that mixture fills a space. */
double gas_times_space(double mixture_m3, double space_m3);

/* Grams that bring a space to the limit at 15 degrees, V * limit * density, if all of it
 * stays there. Less is no safe amount. */
double gas_limit_g(enum gas gas, double space_m3, double limit_percent);

/* Grams a minute from an unlit burner, 60 P / heating value (46.34 and 45.74 kJ/g), and
 * minutes until `grams` have come out. */
double burner_g_per_min(enum gas gas, double burner_kw);
double burner_min(enum gas gas, double burner_kw, double grams);

/* Grams in the space when a detector set to a share of the limit sounds. */
double detector_g(enum gas gas, double space_m3, double limit_percent, double alarm_percent);

/* ---- fuel ---- */

#define DIESEL_KG_PER_L 0.84

/* Tank times level; L (1 - reserve) / burn; hours times knots. */
double fuel_litres(double tank_l, double level);
double fuel_kg(double litres);
double fuel_hours(double litres, double reserve, double burn_lph);
double fuel_range_nm(double hours, double speed_kn);

/* The area that litres cover as a film of so many micrometres. */
double slick_m2(double litres, double film_um);

/* Minutes an engine runs on what is behind the shut valve. The feed flow holds what
 * returns to the tank, so this lies anywhere from 1 to 40: never printed. */
double run_on_min(double downstream_l, double feed_lph);

#endif
