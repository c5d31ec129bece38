/* course.c - how far radio and eyes reach, and distance and course between two
 * places (room: figure). Knows no land: a straight line may cross it. */
#include "course.h"

#include <math.h>

#include "units.h"

#define RADIO_BENDING (4.0 / 3.0)    /* of the earth's radius */
#define PARALLEL_LEAST 1e-12         /* below this a rhumb line runs along a parallel */
#define POLE_LEAST 1e-11             /* nearer to it than this a place is the pole */

double radio_horizon_exact(void)
{
    return sqrt(2.0 * RADIO_BENDING * EARTH_RADIUS_M) / METRES_PER_NM;
}

double range_nm(double factor, double own_m, double other_m)
{
    return factor * (sqrt(own_m) + sqrt(other_m));
}

/* ---- distance and bearing ---- */

static double degrees_in_circle(double radians)
{
    double degrees = fmod(radians / RADIANS_PER_DEGREE, 360.0);
    return degrees < 0.0 ? degrees + 360.0 : degrees;
}

static struct course course_of(double angle, double direction)
{
    double nm = angle * EARTH_RADIUS_M / METRES_PER_NM;
    return (struct course){.nm = nm, .degrees = degrees_in_circle(direction),
                           .defined = nm >= SAME_PLACE_NM};
}

struct course great_circle(struct geographic from, struct geographic to)
{
    double south = from.latitude * RADIANS_PER_DEGREE, north = to.latitude * RADIANS_PER_DEGREE;
    double east = (to.longitude - from.longitude) * RADIANS_PER_DEGREE;
    double half_north = sin((north - south) / 2.0), half_east = sin(east / 2.0);
    double a = half_north * half_north + cos(south) * cos(north) * half_east * half_east;
    double angle = 2.0 * atan2(sqrt(a), sqrt(fmax(0.0, 1.0 - a)));
    double direction = atan2(sin(east) * cos(north),
                             cos(south) * sin(north) - sin(south) * cos(north) * cos(east));
    return course_of(angle, direction);
}

/* A pole is infinitely far up the chart: courses from and to it are due south or north. */
static double mercator(double latitude)
{
    if (PI / 2.0 - fabs(latitude) < POLE_LEAST)
        return copysign((double)INFINITY, latitude);
    return log(tan(PI / 4.0 + latitude / 2.0));
}

static double stretched_between(double south, double north)
{
    return fabs(north - south) < PARALLEL_LEAST ? 0.0 : mercator(north) - mercator(south);
}

/* The shorter way round. */
static double wrapped(double radians)
{
    if (radians > PI)
        return radians - 2.0 * PI;
    return radians < -PI ? radians + 2.0 * PI : radians;
}

struct course rhumb_line(struct geographic from, struct geographic to)
{
    double south = from.latitude * RADIANS_PER_DEGREE, north = to.latitude * RADIANS_PER_DEGREE;
    double east = wrapped((to.longitude - from.longitude) * RADIANS_PER_DEGREE);
    double stretched = stretched_between(south, north);
    double narrowing = fabs(stretched) < PARALLEL_LEAST ? cos(south)
                                                        : (north - south) / stretched;
    double angle = hypot(north - south, narrowing * east);
    return course_of(angle, atan2(east, stretched));
}

int bearing_rounded(double degrees)
{
    return (int)floor(degrees + 0.5) % 360;
}

const char *bearing_point(double degrees)
{
    static const char *const points[] = {"N", "NNE", "NE", "ENE", "E", "ESE", "SE", "SSE",
                                         "S", "SSW", "SW", "WSW", "W", "WNW", "NW", "NNW"};
    return points[(int)floor(degrees / 22.5 + 0.5) % 16];
}
