/* level.c - how soon water reaches a level (room: figure). Never reckons to
 * sinking: that needs hydrostatics, trim and downflooding, which no record has. */
#include "flooding.h"

#include <math.h>

#include "units.h"

/* While the hole is free above the water inside, sinking deepens it; once it is
 * covered, the water inside presses back. In each phase the head is a + b V. */
struct phase {
    double head_m;       /* a */
    double head_per_m3;  /* b */
    double from_m3, to_m3;
};

/* Nearly no change of head over the phase: the closed form would divide by 0. */
#define SLOPE_LEAST 1e-9

static double speed_factor(const struct flooding *flooding)
{
    double bore_m = flooding->bore_mm / 1000.0;
    return flooding->coefficient * PI / 4.0 * bore_m * bore_m * sqrt(2.0 * GRAVITY_MPS2);
}

/* Seconds of one phase; false: the pumps hold at one of its ends. */
static bool phase_seconds(const struct flooding *flooding, const struct phase *phase,
                          double *seconds)
{
    double k = speed_factor(flooding), b = phase->head_per_m3;
    double pumps_m3ps = flooding->pumps_lpm / (LITRES_PER_M3 * SECONDS_PER_MINUTE);
    double from = phase->head_m + b * phase->from_m3, to = phase->head_m + b * phase->to_m3;
    if (from <= 0.0 || to <= 0.0)
        return false;
    double u1 = sqrt(from), u2 = sqrt(to);
    double net1 = k * u1 - pumps_m3ps, net2 = k * u2 - pumps_m3ps;
    if (net1 <= 0.0 || net2 <= 0.0)
        return false;
    if (fabs(b) < SLOPE_LEAST)
        *seconds = (phase->to_m3 - phase->from_m3) / net1;
    else
        *seconds = 2.0 / (b * k) * (u2 - u1 + pumps_m3ps / k * log(net2 / net1));
    return true;
}

static double inverse_or_none(double area_m2)
{
    return area_m2 > 0.0 ? 1.0 / area_m2 : 0.0;
}

/* The phases that filling to `volume_m3` goes through; how many. */
static size_t phases_of(const struct flooding *flooding, double volume_m3, struct phase out[2])
{
    double settling = inverse_or_none(flooding->waterplane_m2);
    double covered_m3 = flooding->inside_m2 > 0.0
                            ? flooding->inside_m2 * flooding->hole_height_m
                            : volume_m3;
    if (covered_m3 >= volume_m3) {
        out[0] = (struct phase){flooding->depth_m, settling, 0.0, volume_m3};
        return 1;
    }
    out[0] = (struct phase){flooding->depth_m, settling, 0.0, covered_m3};
    out[1] = (struct phase){flooding->depth_m + flooding->hole_height_m,
                            settling - inverse_or_none(flooding->inside_m2), covered_m3,
                            volume_m3};
    return 2;
}

bool time_to_level_min(const struct flooding *flooding, double litres, double *minutes)
{
    struct phase phases[2];
    size_t count = phases_of(flooding, litres / LITRES_PER_M3, phases);
    *minutes = 0.0;
    for (size_t i = 0; i < count; i++) {
        double seconds = 0.0;
        if (!phase_seconds(flooding, &phases[i], &seconds))
            return false;
        *minutes += seconds / SECONDS_PER_MINUTE;
    }
    return true;
}

bool time_to_level_printed_min(const struct flooding *flooding, double litres, int *minutes)
{
    struct flooding doubled = *flooding;
    double exact = 0.0;
    doubled.coefficient = 2.0 * flooding->coefficient;
    if (!time_to_level_min(&doubled, litres, &exact) || exact > LEVEL_PRINTED_MOST_MIN)
        return false;
    *minutes = exact < 1.0 ? 1 : (int)floor(exact);
    return true;
}

double waterplane_m2(double lwl_m, double bwl_m, double coefficient)
{
    return lwl_m * bwl_m * coefficient;
}

double immersion_kg_per_cm(double waterplane)
{
    return waterplane * SEA_WATER_KGPM3 / 100.0;
}

double sinkage_cm(double litres, double waterplane)
{
    return litres / LITRES_PER_M3 / waterplane * 100.0;
}
