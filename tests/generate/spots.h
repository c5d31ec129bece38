/* spots.h - lists of words for exact places: the short ones, NULL, the long ones, NULL. */
#ifndef MAYDECK_GENERATE_SPOTS_H
#define MAYDECK_GENERATE_SPOTS_H

extern const char *const spots_cockpit[], *const spots_open[], *const spots_locker[],
    *const spots_door[], *const spots_room[], *const spots_galley[], *const spots_berth[],
    *const spots_engine[], *const spots_rail[], *const spots_roof[], *const spots_roof_motor[],
    *const spots_few[], *const spots_none[];

#endif
