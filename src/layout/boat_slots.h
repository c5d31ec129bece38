/* boat_slots.h - the fixed places of a boat's tags and names on her views: found once for all
 * cards of a set, so that a thing stands at one place on every card. Private to src/layout. */
#ifndef MAYDECK_BOAT_SLOTS_H
#define MAYDECK_BOAT_SLOTS_H

#include "pages.h"
#include "plan_views.h"

/* Rows that a view is cut into from bow to stern. */
#define VIEW_ROWS_LEAST 14
#define VIEW_ROWS_MOST 18
#define VIEW_ROWS_CROWDED 24     /* of a boat whose tags have no room in those */

/* Where one tag, or one line of a name, stands. */
struct fixed_slot {
    const char *text;
    const struct marker *marker;  /* NULL: a name */
    const struct zone *zone;      /* whose tag or name it is */
    enum slot_kind kind;
    bool lesser;                  /* a name that goes where the tags need its row */
    int view, body, row;
    mpt x;                        /* of its middle, from the middle of its view */
    bool without_room;            /* none was found in its body */
};

struct boat_slots {
    struct plan_views views;
    int rows;
    const struct fixed_slot *slots;    /* tags, names and the mast */
    size_t count;
};

/* Of all sheets of a set that have a plan beside steps. */
struct boat_slots boat_slots_find(const struct sheet_set *set, const struct pen *pen);

/* The plan beside the steps has what other blocks of its column leave. */
struct plan_heights {
    mpt floor;           /* less has no room for its rows of tags */
    mpt aim;             /* up to here type that is read larger goes before it */
    mpt gap;             /* to the blocks below it */
};
struct plan_heights plan_heights(const struct pen *pen);

/* From the upper edge of a plan to the bow: the heads of its views, and words above her. */
mpt views_begin(const struct plan_views *views);

#endif
