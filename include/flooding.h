/* flooding.h - water through holes, what pumps move, time to a level (room: figure).
 *
 * Pure functions. Formulas: Torricelli's law with a coefficient of discharge, and
 * its integral over a filling bilge. All hold for a stopped, upright boat and a hole that
 * is free and fully under water; real flow may be half or double. */
#ifndef MAYDECK_FLOODING_H
#define MAYDECK_FLOODING_H

#include <stdbool.h>
#include <stddef.h>

/* ---- inflow ---- */

#define CD_HOLED_SKIN 0.62     /* a clean hole in a thin skin */
#define CD_OPEN_FITTING 0.80   /* a through-hull with its hose off */
#define CD_LEAST 0.53          /* the spread between fittings (B11): a long hose... */
#define CD_MOST 0.91           /* ...and a wide, smooth fitting */

/* Q = Cd * (pi/4) * d^2 * sqrt(2 g h), in litres a minute; 0 where the hole is not
 * below the water. */
double inflow_lpm(double bore_mm, double depth_m, double coefficient);

/* Cd = 1 / sqrt(1 + K_in + K_valve + f L / D). */
double fitting_coefficient(double entry_loss, double valve_loss, double friction,
                           double length_m, double bore_m);

/* The round hole with the same area. */
double annulus_equivalent_mm(double outer_mm, double inner_mm);
double crack_equivalent_mm(double length_mm, double width_mm);
double holes_equivalent_mm(const double *bores_mm, size_t count);

/* Depth when heeled: h cos(heel) + y sin(heel), y positive toward the low side;
 * negative: out of the water. */
double depth_heeled_m(double depth_m, double offset_low_m, double heel_degrees);

/* The head that the boat's own way adds at an opening that faces forward. */
double head_of_speed_m(double speed_kn);

/* Flow at one depth over flow at another: sqrt(h'/h), 0 above the water. */
double inflow_ratio(double depth_m, double upright_depth_m);

/* ---- order of openings (1.2, B11) ---- */

struct ranked_opening {
    double bore_mm, depth_m;
    size_t index;              /* the caller's own number of it */
    size_t group;              /* set by the ranking: 0 the worst */
};

/* Sorts by d^2 * sqrt(h), most water first; what is equal keeps its order. A group
 * is all that may be the worst of those not yet in one: each is nearer to the
 * group's first than the spread of the coefficient (CD_MOST / CD_LEAST), so within
 * a group no order may be shown. Openings above the water come last, in a group of
 * their own. Any units will do, if they are the same for all. */
void openings_rank(struct ranked_opening *openings, size_t count);

/* ---- pumps ---- */

#define PUMP_FACTOR 0.5        /* of the label, for a pump that nobody has measured */
#define HAND_STROKES_PER_MINUTE 30.0
#define HAND_FILL 0.8          /* share of the stroke that is water */

double pump_effective_lpm(double rated_lpm, double factor);
double us_gallons_per_hour_lpm(double gallons_per_hour);
double imperial_gallons_per_hour_lpm(double gallons_per_hour);

/* A bucket filled at the outlet. */
double bucket_lpm(double litres, double seconds);

double hand_pump_lpm(double stroke_l, double strokes_per_minute, double fill);

/* Work done on the water: rho g Q H, rho 1025 kg/m3. */
double pump_hydraulic_w(double flow_lpm, double lift_m);

/* ---- openings and pumps ---- */

/* The hole whose inflow equals the pumps; 0 where depth or coefficient is not
 * above 0. */
double largest_hole_mm(double pumps_lpm, double depth_m, double coefficient);

/* Bands that allow for an inflow wrong by a factor of two. */
enum pump_band {
    BAND_BEATS,      /* inflow at or over what the pumps move */
    BAND_MAY_BEAT,   /* half of it or more: about all the pumps can move at best */
    BAND_BELOW       /* nothing may be said: it would reassure */
};
enum pump_band pump_band(double inflow, double pumps);

/* ---- time to a level (1.5, A11) ---- */

struct flooding {
    double bore_mm, depth_m, coefficient;
    double waterplane_m2;      /* not above 0: not known, the boat does not settle */
    double inside_m2;          /* free surface inside times permeability; not above 0:
                                  not known, the water inside never covers the hole */
    double hole_height_m;      /* of the hole above the bottom of the bilge */
    double pumps_lpm;
};

/* Minutes until so much water is inside, in closed form for a box-shaped bilge
 * without trim. False: the pumps hold, there is no time. */
bool time_to_level_min(const struct flooding *flooding, double litres, double *minutes);

#define LEVEL_PRINTED_MOST_MIN 15

/* What may be printed as "under N minutes": with twice the inflow, rounded down, at
 * least 1. False: more than LEVEL_PRINTED_MOST_MIN, so nothing may be printed. */
bool time_to_level_printed_min(const struct flooding *flooding, double litres, int *minutes);

#define WATERPLANE_MONOHULL 0.65      /* the lower end of 0.65 to 0.70: settles more */
#define WATERPLANE_HULL 0.75          /* one hull of a catamaran */

double waterplane_m2(double lwl_m, double bwl_m, double coefficient);
double immersion_kg_per_cm(double waterplane);
double sinkage_cm(double litres, double waterplane);

#endif
