/* fuel.c - fuel aboard, range, and fuel on the water (room: figure). None of it is
 * for a card: the level in the tank is never in the record. */
#include "fire_gas.h"

#include "units.h"

#define UM_PER_M 1e6

double fuel_litres(double tank_l, double level)
{
    return tank_l * level;
}

double fuel_kg(double litres)
{
    return litres * DIESEL_KG_PER_L;
}

double fuel_hours(double litres, double reserve, double burn_lph)
{
    return litres * (1.0 - reserve) / burn_lph;
}

double fuel_range_nm(double hours, double speed_kn)
{
    return hours * speed_kn;
}

double slick_m2(double litres, double film_um)
{
    return litres / LITRES_PER_M3 / (film_um / UM_PER_M);
}

double run_on_min(double downstream_l, double feed_lph)
{
    return MINUTES_PER_HOUR * downstream_l / feed_lph;
}
