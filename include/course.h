/* course.h - how far radio and eyes reach, and distance and course between two
 * places on the earth (room: figure). Pure functions. Formulas: the great
 * circle on a round earth, and a horizon of 2.2 sqrt(h) miles, rounded down. */
#ifndef MAYDECK_COURSE_H
#define MAYDECK_COURSE_H

#include <stdbool.h>

/* ---- horizons ---- */

#define RADIO_HORIZON_PRINTED 2.2   /* B14: what is printed, rounded down */
#define RADIO_HORIZON_COVERAGE 2.5  /* as coverage is planned ashore (recalled) */
#define VISIBLE_HORIZON 2.08

/* sqrt(2 * 4/3 * earth's radius * 1 m), in miles: 2.2256. */
double radio_horizon_exact(void);

/* factor * (sqrt(h1) + sqrt(h2)), heights in metres above the water: best case, no
 * land between. With one height 0 the other's own horizon. */
double range_nm(double factor, double own_m, double other_m);

/* ---- distance and bearing ---- */

/* Degrees: north and east positive, latitude within 90, longitude within 180. */
struct geographic { double latitude, longitude; };

struct course {
    double nm;
    double degrees;      /* true, 0 to 360 */
    bool defined;        /* false: the same place, there is no bearing */
};

#define SAME_PLACE_NM 0.01

/* On a sphere of 6371008.8 m: within 0.6 % of the ellipsoid. The great circle's
 * bearing is the one at the start. */
struct course great_circle(struct geographic from, struct geographic to);

/* A constant course: what a card prints. Not across a pole; from one and to one it runs
 * due south or north. */
struct course rhumb_line(struct geographic from, struct geographic to);

/* 0 to 359, for three digits. */
int bearing_rounded(double degrees);

/* N, NNE, NE, ... of sixteen. */
const char *bearing_point(double degrees);

#endif
