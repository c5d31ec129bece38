/* plan_tag.h - tags on drawings of the boat. Private to src/layout. */
#ifndef MAYDECK_PLAN_TAG_H
#define MAYDECK_PLAN_TAG_H

#include "layout_room.h"

/* How the letters of a tag on a plan are set: white and bold, on the tag's black box. */
struct style plan_tag_style(mpt size);

/* Is the box so far from all of these? */
bool free_of(struct area box, const struct area *taken, size_t count, mpt gap);
struct area box_at(struct point centre, mpt width, mpt height);

#endif
