/* places.h - where on a generated boat a thing can be. */
#ifndef MAYDECK_GENERATE_PLACES_H
#define MAYDECK_GENERATE_PLACES_H

#include "boat_draw.h"

/* How the side of a place is told. */
enum side_form {
    SIDE_FORM_NONE,               /* the zone lies in the middle, or all across */
    SIDE_FORM_EITHER,             /* port or starboard */
    SIDE_FORM_ANY,                /* port, starboard, centre */
    SIDE_FORM_ROOM,               /* a room on one side of this boat */
    SIDE_FORM_ZONE                /* part of the zone's key: aft_cabin_port */
};

struct place_row {
    enum role role;
    const char *zone;
    uint64_t needs, never;        /* facts of the boat */
    enum side_form form;
    const char *const *spots;     /* short ones, then NULL, then long ones, then NULL */
};

/* A place as drawn for one piece of gear. */
struct place_drawn {
    const struct place_row *row;
    enum hand hand;
    const char *spot;             /* NULL: none */
};

bool boat_has(const struct boat_draw *boat, uint64_t needs, uint64_t never);

/* One of the places of these roles. False: the boat has none of them. */
bool place_draw(struct boat_draw *boat, uint32_t roles, struct place_drawn *place);

/* The same part of the boat on a certain side, if it has sides. */
void place_to_hand(struct place_drawn *place, enum hand hand);

/* "zone: cockpit, side: port, spot: ...", with `between` between the three. */
void place_write(const struct boat_draw *boat, const struct place_drawn *place,
                 const char *between);

/* Can a hand get what is there without going below? Else one goes into the room. */
bool place_at_hand(const struct place_drawn *place);
bool place_below(const struct place_drawn *place);

/* "at: [x, y]" of a point within the place. */
void place_point_write(struct boat_draw *boat, const struct place_drawn *place);

#endif
