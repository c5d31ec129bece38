/* rounding.c - numbers rounded for print, to the safe side (room: figure). */
#include "figure.h"

#include <math.h>

/* Twelve digits are more than any input has: what is left over is noise. */
#define NOISE 1e-9

/* The step of the second significant figure, in thousandths; at least one. */
static double rounding_step(double milli)
{
    double step = 1.0;
    while (milli >= 100.0 * step)
        step *= 10.0;
    return step;
}

int64_t rounded_up_milli(double value)
{
    double milli = value * 1000.0, step = rounding_step(milli * (1.0 - NOISE));
    if (value <= 0.0)
        return 0;
    return (int64_t)(ceil(milli / step * (1.0 - NOISE)) * step);
}

int64_t rounded_down_milli(double value)
{
    double milli = value * 1000.0, step = rounding_step(milli * (1.0 + NOISE));
    if (value <= 0.0)
        return 0;
    return (int64_t)(floor(milli / step * (1.0 + NOISE)) * step);
}

int64_t nearest_milli(double value)
{
    return (int64_t)llround(value * 1000.0);
}
