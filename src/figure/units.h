/* units.h - constants of nature and of measure that the files of this room share.
 * Private to src/figure. */
#ifndef MAYDECK_FIGURE_UNITS_H
#define MAYDECK_FIGURE_UNITS_H

#define PI 3.14159265358979323846
#define RADIANS_PER_DEGREE (PI / 180.0)
#define GRAVITY_MPS2 9.80665
#define SECONDS_PER_MINUTE 60.0
#define MINUTES_PER_HOUR 60.0
#define LITRES_PER_M3 1000.0
#define METRES_PER_NM 1852.0
#define MPS_PER_KN (METRES_PER_NM / 3600.0)
#define SEA_WATER_KGPM3 1025.0
#define EARTH_RADIUS_M 6371008.8   /* mean radius of the WGS84 ellipsoid */

#endif
