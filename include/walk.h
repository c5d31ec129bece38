/* walk.h - in which order one goes through a boat: the deck from stern to bow, then below from the
 * companionway forward, then aft (room: record). */
#ifndef MAYDECK_WALK_H
#define MAYDECK_WALK_H

#include "choices.h"
#include "zone.h"

/* A place on the way. The side may be none; then it does not matter. */
struct walk_stop {
    const struct zone *zone;
    enum side side;
};

/* Negative, zero or positive as one comes to `a` before, with or after `b`: zero for one zone,
 * whatever the sides. A hull of a catamaran whose side is given is gone through as a whole,
 * after what lies between the hulls. */
int walk_compare(enum hull hull, const struct walk_stop *a, const struct walk_stop *b);

#endif
