/* geometry.h - lengths, segments and boxes on a page (room: layout): pure
 * geometry, for what lays pages out and for what judges them. All lengths are
 * thousandths of a point; nothing here can fail. */
#ifndef MAYDECK_GEOMETRY_H
#define MAYDECK_GEOMETRY_H

#include <stdbool.h>

#include "page.h"

/* True lengths, in thousandths of a point. */
double length_between(struct point a, struct point b);

/* Do the two segments have a point in common? Ends that only touch count. */
bool segments_meet(struct point a, struct point b, struct point c, struct point d);

/* Least distance from the segment to the box, 0 where they meet. */
double segment_to_box(struct point a, struct point b, struct area box);

#endif
