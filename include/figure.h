/* figure.h - numbers rounded for print (room: figure). */
#ifndef MAYDECK_FIGURE_H
#define MAYDECK_FIGURE_H

#include <stdint.h>

/* Two significant figures in thousandths, to the safe side: up for inflow and gas,
 * down for time, pump rate and range. 132.05 up gives 140000, 42.86 down 42000, 9.33
 * down 9300. Up to 1e12; below 0.01 whole thousandths. What misses a whole step by
 * less than a part in 1e9 counts as that step. */
int64_t rounded_up_milli(double value);
int64_t rounded_down_milli(double value);

/* To the nearest thousandth. */
int64_t nearest_milli(double value);

#endif
