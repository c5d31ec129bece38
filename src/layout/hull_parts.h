/* hull_parts.h - outlines of hulls, and nets between them (hull.c). Private to src/layout. */
#ifndef MAYDECK_HULL_PARTS_H
#define MAYDECK_HULL_PARTS_H

#include "layout_room.h"

enum hull_shape { SHAPE_FULL, SHAPE_SLENDER, SHAPE_STRAIGHT };

/* One hull's outline round its own middle line. */
struct outline {
    struct area area;         /* of the whole boat: the hull is as long */
    mpt centre, half, line;   /* x of the middle line, greatest half breadth, line's width */
    enum hull_shape shape;
};

/* The end of a boat that is up on the page. */
enum way_up { BOW_UP, STERN_UP };

/* Draws one hull: down the port side, across the transom, up the starboard side. */
void one_hull_draw(struct pen *pen, const struct outline *outline);

/* How much of a boat's length is drawn, in thousandths from the bow, and which end is up. */
struct hull_range {
    int32_t from, to;
    enum way_up up;
};

/* The same of part of a hull, which fills the height of its area; it is open where it goes
 * on. */
void hull_part_draw(struct pen *pen, const struct outline *outline,
                    const struct hull_range *range);

/* Half the breadth of a hull of that shape, in thousandths of its greatest; `along` in
 * thousandths of its length from the bow. */
int32_t hull_breadth_at(enum hull_shape shape, int32_t along);

/* So many thousandths of a length. */
mpt hull_share(mpt length, int32_t thousandths);

/* The lines of a net over an area. */
void net_lines_draw(struct pen *pen, struct area area);

#endif
