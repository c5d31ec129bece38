/* bands.h - the places of a safety plan as bands across the boat: what lies abreast, with the
 * list of each side of the page. Private to src/layout. */
#ifndef MAYDECK_BANDS_H
#define MAYDECK_BANDS_H

#include "hull_parts.h"

/* Beside the boat, as they stand on the page. */
enum list_side { LIST_LEFT, LIST_RIGHT, LIST_COUNT };

/* A line of a list. */
struct band_row {
    const struct plan_place *place;
    const struct plan_row *row;
    bool headed;                  /* the name of its place stands over it */
};

struct band_list {
    struct band_row *rows;
    size_t count;
};

/* One zone, or two of which one is only to port and the other only to starboard. */
struct band {
    const struct plan_place *places;   /* all that are in it */
    size_t place_count;
    struct band_list lists[LIST_COUNT];
};

struct bands {
    struct band *at;
    size_t count;
};

/* Which end of the boat is up: the stern for a reader who faces aft. */
enum way_up plan_way_up(const struct places_facts *plan);

/* The bands of the places, which are in their order from the bow aft, in the order of the
 * page: from the bow aft, or from the stern forward where that is up. What is to port or to
 * starboard stands in the list of its side, what is to both in both, and what is amidships in
 * the shorter one. */
struct bands bands_of(const struct plan_place *places, size_t count, enum way_up up,
                      struct arena *arena);

/* How many lines the longer list of a band has, names of places among them. */
size_t band_lines(const struct band *band);

#endif
