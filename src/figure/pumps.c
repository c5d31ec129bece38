/* pumps.c - what pumps really move, and which holes beat them (room: figure).
 * Never says that pumps cope: that would reassure on a guess. */
#include "flooding.h"

#include <math.h>

#include "units.h"

#define US_GALLON_L 3.785411784
#define IMPERIAL_GALLON_L 4.54609

double pump_effective_lpm(double rated_lpm, double factor)
{
    return rated_lpm * factor;
}

double us_gallons_per_hour_lpm(double gallons_per_hour)
{
    return gallons_per_hour * US_GALLON_L / MINUTES_PER_HOUR;
}

double imperial_gallons_per_hour_lpm(double gallons_per_hour)
{
    return gallons_per_hour * IMPERIAL_GALLON_L / MINUTES_PER_HOUR;
}

double bucket_lpm(double litres, double seconds)
{
    return SECONDS_PER_MINUTE * litres / seconds;
}

double hand_pump_lpm(double stroke_l, double strokes_per_minute, double fill)
{
    return stroke_l * strokes_per_minute * fill;
}

double pump_hydraulic_w(double flow_lpm, double lift_m)
{
    double flow_m3ps = flow_lpm / (LITRES_PER_M3 * SECONDS_PER_MINUTE);
    return SEA_WATER_KGPM3 * GRAVITY_MPS2 * flow_m3ps * lift_m;
}

double largest_hole_mm(double pumps_lpm, double depth_m, double coefficient)
{
    /* Flow grows with the square of the bore: what a hole of 1 mm lets in is the unit. */
    double unit_lpm = inflow_lpm(1.0, depth_m, coefficient);
    return unit_lpm <= 0.0 ? 0.0 : sqrt(pumps_lpm / unit_lpm);
}

enum pump_band pump_band(double inflow, double pumps)
{
    if (inflow <= 0.0)
        return BAND_BELOW;
    if (inflow >= pumps)
        return BAND_BEATS;
    return 2.0 * inflow >= pumps ? BAND_MAY_BEAT : BAND_BELOW;
}
