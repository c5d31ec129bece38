/* plan_spot.h - free spots on the drawn boat. Private to src/layout. */
#ifndef MAYDECK_PLAN_SPOT_H
#define MAYDECK_PLAN_SPOT_H

#include "layout_room.h"

/* How the letters of a tag on a plan are set: white and bold, on the tag's black box. */
struct style plan_tag_style(mpt size);

/* Boxes that others must not touch, nor come nearer to than the gap. */
struct taken {
    struct area *areas;
    size_t count;
    mpt gap;
};

bool free_of(struct area box, const struct area *taken, size_t count, mpt gap);
struct area box_at(struct point centre, mpt width, mpt height);

/* The free spot for a box of that size nearest to the marker's true place, on the
 * boat; what stands on a stern platform may lie behind it. false: there is none. */
bool spot_find(const struct hull_view *view, const struct marker *marker, mpt width, mpt height,
               const struct taken *taken, struct area *out);

/* From the middle of the box to the marker's true place, along both axes. */
mpt spot_drift(const struct hull_view *view, const struct marker *marker, struct area box);

#endif
