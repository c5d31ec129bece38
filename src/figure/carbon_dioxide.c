/* carbon_dioxide.c - what a portable carbon dioxide extinguisher does to the air
 * of the cabins (room: figure). A warning for the base; never a figure for a crew. */
#include "capacity.h"

/* One kilogram of the gas fills 0.56 m3. */
static const double m3_a_kg = 0.56;

double co2_share_percent(int64_t kg_milli, int64_t space_m3_milli)
{
    double gas = (double)kg_milli * m3_a_kg;
    if (space_m3_milli <= 0)
        return 100.0;
    return 100.0 * gas / ((double)space_m3_milli + gas);
}

/* gas / (space + gas) > limit / 100, with whole numbers: gas is 56/100 of kg. */
bool co2_share_too_high(int64_t kg_milli, int64_t space_m3_milli)
{
    if (space_m3_milli <= 0)
        return true;
    return kg_milli * 56 * (100 - CO2_PERCENT_MOST) > space_m3_milli * 100 * CO2_PERCENT_MOST;
}

double co2_space_needed_m3(int64_t kg_milli, double percent)
{
    return (double)kg_milli / 1000.0 * m3_a_kg * (100.0 - percent) / percent;
}

double co2_floor_needed_m2(int64_t kg_milli)
{
    return (double)kg_milli / 1000.0 * 5.5;
}
