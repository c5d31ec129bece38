/* hull_parts.h - what the drawings of boats with one hull and with several share. Private to
 * src/layout/hull*.c. */
#ifndef MAYDECK_HULL_PARTS_H
#define MAYDECK_HULL_PARTS_H

#include "layout_room.h"

enum hull_shape { SHAPE_FULL, SHAPE_SLENDER };

/* One hull's outline round its own middle line. */
struct outline {
    struct area area;         /* of the whole boat: the hull is as long */
    mpt centre, half, line;   /* x of the middle line, greatest half breadth, line's width */
    enum hull_shape shape;
};

/* Draws one hull: down the port side, across the transom, up the starboard side. */
void one_hull_draw(struct pen *pen, const struct outline *outline);

/* Half the breadth of a hull of that shape, in thousandths of its greatest; `along` in
 * thousandths of its length from the bow. */
int32_t hull_breadth_at(enum hull_shape shape, int32_t along);

/* So many thousandths of a length. */
mpt hull_share(mpt length, int32_t thousandths);

/* Where on the page: so far aft; the middle line. */
mpt hull_y(const struct hull_view *view, int32_t along);
mpt hull_middle(const struct hull_view *view);

mpt hull_outline_width(const struct hull_view *view);
mpt hull_bulkhead_width(const struct hull_view *view);

/* The mast, from `top` down, on a boat that has one. */
void hull_mast_draw(struct pen *pen, const struct hull_view *view, mpt top);

/* ---- hull_several.c ---- */

void catamaran_draw(struct pen *pen, const struct hull_view *view);
void trimaran_draw(struct pen *pen, const struct hull_view *view);

/* Is the point of the page on the boat? */
bool on_catamaran(const struct hull_view *view, mpt x, mpt y);
bool on_trimaran(const struct hull_view *view, mpt x, mpt y);

/* How far out a marker of a trimaran stands that its zone places at `out`, all in
 * thousandths of half her beam; `local`: of her middle hull there. */
int32_t trimaran_out(int32_t out, int32_t local);

#endif
