/* agent.c - how long extinguishers last, and agent for an engine space (room:
 * figure). Never infers a throw or a class from a size. */
#include "fire_gas.h"

double discharge_s(double charge_kg, double flow_kgps)
{
    return charge_kg / flow_kgps;
}

int discharge_least_s(double charge)
{
    static const struct { double up_to; int seconds; } steps[] = {{3.0, 6}, {6.0, 9}, {10.0, 12}};
    for (unsigned int i = 0; i < sizeof steps / sizeof *steps; i++)
        if (charge <= steps[i].up_to)
            return steps[i].seconds;
    return 15;
}

double hfc227ea_m3_per_kg(double celsius)
{
    return 0.1269 + 0.000513 * celsius;
}

double fk5112_m3_per_kg(double celsius)
{
    return 0.0664 + 0.000274 * celsius;
}

double halocarbon_kg(double space_m3, double vapour_m3_per_kg, double percent)
{
    return space_m3 / vapour_m3_per_kg * percent / (100.0 - percent);
}

double co2_engine_space_kg(double space_m3)
{
    return 0.40 * space_m3 / 0.56;
}

double aerosol_kg(double space_m3, double label_g_per_m3)
{
    return space_m3 * label_g_per_m3 / 1000.0;
}
