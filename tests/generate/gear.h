/* gear.h - the gear a generated boat may have, one row a kind and use of it. */
#ifndef MAYDECK_GENERATE_GEAR_H
#define MAYDECK_GENERATE_GEAR_H

#include "boat_draw.h"

/* What else is true of a row. */
enum gear_trait {
    EACH_SPACE = 1,               /* one for each engine space, with `serves` */
    EACH_SIDE = 2,                /* on a boat with two hulls one on each side */
    REACHED = 4,                  /* whether a hand gets it from the cockpit is recorded */
    INVERTED = 8,                 /* whether it is reached in a capsized boat, too */
    OPENED = 16,                  /* `inside` tells the space that is opened for it */
    ALIKE = 32                    /* most of them on one boat are worked in one way */
};

struct gear_row {
    const char *item;
    char letter;                  /* of its tag */
    uint64_t needs, never;        /* facts of the boat */
    int share, doubled;           /* of a hundred boats so many have it; of these, two of it */
    uint32_t roles;               /* where it is */
    const char *hows[4];          /* how it is worked, one of these; NULL: nothing is said */
    const char *names[4];         /* its own name, one of these, or none */
    const char *fields;           /* the rest, with {words} that are filled in */
    int traits;                   /* enum gear_trait */
    uint32_t worked;              /* where it is worked, if not where it is; 0: there */
};

extern const struct gear_row gear_rows[];
extern const int gear_row_count;

/* The openings in her hull: rows of the same kind. */
extern const struct gear_row opening_rows[];
extern const int opening_row_count;

#endif
