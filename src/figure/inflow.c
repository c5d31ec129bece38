/* inflow.c - water through a hole, and which opening lets in the most (room:
 * figure). Knows no boat: numbers in, numbers out. */
#include "flooding.h"

#include <math.h>

#include "units.h"

/* Torricelli: the flow through a hole from the height of water over it, times a
 * coefficient of discharge. */
double inflow_lpm(double bore_mm, double depth_m, double coefficient)
{
    double bore_m = bore_mm / 1000.0;
    if (depth_m <= 0.0)
        return 0.0;
    return LITRES_PER_M3 * SECONDS_PER_MINUTE * coefficient * PI / 4.0 * bore_m * bore_m *
           sqrt(2.0 * GRAVITY_MPS2 * depth_m);
}

/* The losses of entry, valve and hose add up under the root. */
double fitting_coefficient(double entry_loss, double valve_loss, double friction,
                           double length_m, double bore_m)
{
    return 1.0 / sqrt(1.0 + entry_loss + valve_loss + friction * length_m / bore_m);
}

/* A ring, such as a shaft tube with its shaft in it, as one round hole of the same area. */
double annulus_equivalent_mm(double outer_mm, double inner_mm)
{
    return sqrt(outer_mm * outer_mm - inner_mm * inner_mm);
}

double crack_equivalent_mm(double length_mm, double width_mm)
{
    return sqrt(4.0 * length_mm * width_mm / PI);
}

double holes_equivalent_mm(const double *bores_mm, size_t count)
{
    double squares = 0.0;
    for (size_t i = 0; i < count; i++)
        squares += bores_mm[i] * bores_mm[i];
    return sqrt(squares);
}

double depth_heeled_m(double depth_m, double offset_low_m, double heel_degrees)
{
    double heel = heel_degrees * RADIANS_PER_DEGREE;
    return depth_m * cos(heel) + offset_low_m * sin(heel);
}

/* The height of water whose pressure a boat's own speed makes. */
double head_of_speed_m(double speed_kn)
{
    double speed_mps = speed_kn * MPS_PER_KN;
    return speed_mps * speed_mps / (2.0 * GRAVITY_MPS2);
}

double inflow_ratio(double depth_m, double upright_depth_m)
{
    if (depth_m <= 0.0 || upright_depth_m <= 0.0)
        return 0.0;
    return sqrt(depth_m / upright_depth_m);
}

/* ---- order ---- */

static double weight_of(const struct ranked_opening *opening)
{
    if (opening->depth_m <= 0.0)
        return 0.0;
    return opening->bore_mm * opening->bore_mm * sqrt(opening->depth_m);
}

/* Most first; equals keep their order, so that a card does not change with the sort. */
static void openings_sort(struct ranked_opening *openings, size_t count)
{
    for (size_t i = 1; i < count; i++) {
        struct ranked_opening moved = openings[i];
        size_t at = i;
        for (; at > 0 && weight_of(&openings[at - 1]) < weight_of(&moved); at--)
            openings[at] = openings[at - 1];
        openings[at] = moved;
    }
}

/* Openings whose order the spread of the coefficients could turn are one group: the
 * first of a group is the one with the most. */
void openings_rank(struct ranked_opening *openings, size_t count)
{
    size_t group = 0, first = 0;
    openings_sort(openings, count);
    for (size_t i = 0; i < count; i++) {
        double own = weight_of(&openings[i]), most = weight_of(&openings[first]);
        bool dry = own <= 0.0 && most > 0.0;
        if (dry || own * (CD_MOST / CD_LEAST) < most) {
            group++;
            first = i;
        }
        openings[i].group = group;
    }
}
