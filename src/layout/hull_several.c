/* hull_several.c - boats with two or three hulls from above: what is drawn, and what counts as
 * on the boat (room: layout). */
#include "hull_parts.h"

#include "measures.h"

/* A catamaran's hull: how far its own middle line lies out, and its half breadth there. */
#define HULL_CENTRE 740
#define HULL_HALF 250

/* A trimaran: half the breadth of her middle hull, drawn wide enough for tags, and the same
 * of a float as of a catamaran's hull. */
#define MIDDLE_HALF 560
#define FLOAT_CENTRE 890
#define FLOAT_HALF 105
#define FORWARD_BEAM 330
#define AFTER_BEAM 680

static void net_line(struct pen *pen, struct point from, struct point to)
{
    pen_line(pen, from, to, INK_GREY, HAIR);
    pen_part(pen, PART_NET);
}

/* Draws the net between a catamaran's bows as light lines crossing, from the forward beam
 * to the bridge deck; the beam is a strong line. */
static void net_draw(struct pen *pen, const struct hull_view *view, mpt left, mpt right)
{
    mpt top = hull_y(view, 130), bottom = hull_y(view, 340), pitch = NET_PITCH;
    for (mpt x = left + pitch; x < right; x += pitch)
        net_line(pen, (struct point){x, top}, (struct point){x, bottom});
    for (mpt y = top + pitch; y < bottom; y += pitch)
        net_line(pen, (struct point){left, y}, (struct point){right, y});
    pen_line(pen, (struct point){left, top}, (struct point){right, top}, INK_BLACK,
             hull_outline_width(view));
}

/* A line across the bridge deck. */
static void bulkhead_draw(struct pen *pen, const struct hull_view *view, struct area bridge,
                          int32_t along)
{
    pen_line(pen, (struct point){bridge.x, hull_y(view, along)},
             (struct point){bridge.x + bridge.width, hull_y(view, along)}, INK_GREY,
             hull_bulkhead_width(view));
}

/* Draws both hulls, the bridge deck between them, the line that parts saloon and cockpit, and
 * the mast with the net ahead of the deck; without sails the deck begins where a net would. */
void catamaran_draw(struct pen *pen, const struct hull_view *view)
{
    mpt x = hull_middle(view), half = view->area.width / 2;
    mpt centre = hull_share(half, HULL_CENTRE), own = hull_share(half, HULL_HALF);
    mpt left = x - centre + own, right = x + centre - own;
    mpt head = hull_y(view, view->mast ? 340 : 130);
    struct area bridge = {left, head, right - left, hull_y(view, 930) - head};
    if (view->mast)
        net_draw(pen, view, left, right);
    for (int side = -1; side <= 1; side += 2) {
        struct outline outline = {view->area, x + side * centre, own, hull_outline_width(view),
                                  SHAPE_SLENDER};
        one_hull_draw(pen, &outline);
    }
    pen_box(pen, bridge, INK_NONE, INK_BLACK, hull_outline_width(view), BAND_CORNER);
    if (!view->mast)
        bulkhead_draw(pen, view, bridge, 340);
    bulkhead_draw(pen, view, bridge, 690);
    hull_mast_draw(pen, view, hull_y(view, 400));
}

/* From the middle hull to a float, on one side: -1 port, 1 starboard. */
static void beam_draw(struct pen *pen, const struct hull_view *view, int side, int32_t along)
{
    mpt x = hull_middle(view), y = hull_y(view, along), half = view->area.width / 2;
    mpt inner = hull_share(hull_share(half, MIDDLE_HALF), hull_breadth_at(SHAPE_FULL, along));
    mpt outer = hull_share(half, FLOAT_CENTRE - FLOAT_HALF);
    pen_line(pen, (struct point){x + side * inner, y}, (struct point){x + side * outer, y},
             INK_BLACK, hull_outline_width(view));
}

/* Draws three hulls, the two beams that join them, and the mast. */
void trimaran_draw(struct pen *pen, const struct hull_view *view)
{
    mpt x = hull_middle(view), half = view->area.width / 2, line = hull_outline_width(view);
    struct outline middle = {view->area, x, hull_share(half, MIDDLE_HALF), line, SHAPE_FULL};
    for (int side = -1; side <= 1; side += 2) {
        struct outline outer = {view->area, x + side * hull_share(half, FLOAT_CENTRE),
                                hull_share(half, FLOAT_HALF), line, SHAPE_SLENDER};
        one_hull_draw(pen, &outer);
        beam_draw(pen, view, side, FORWARD_BEAM);
        beam_draw(pen, view, side, AFTER_BEAM);
    }
    one_hull_draw(pen, &middle);
    hull_mast_draw(pen, view, hull_y(view, 400) - HALF_MAST);
}

/* ---- where things are ---- */

/* The same of a catamaran: in a hull, or between the hulls from the forward beam to the
 * after end of the bridge deck. */
bool on_catamaran(const struct hull_view *view, mpt x, mpt y)
{
    int32_t along = (int32_t)((int64_t)(y - view->area.y) * 1000 / view->area.height);
    mpt half = view->area.width / 2, off = x - hull_middle(view);
    mpt centre = hull_share(half, HULL_CENTRE);
    mpt own = hull_share(hull_share(half, HULL_HALF), hull_breadth_at(SHAPE_SLENDER, along));
    mpt out = off < 0 ? -off : off;
    if (along < 0 || along > 1000)
        return false;
    if (out >= centre - own && out <= centre + own)
        return true;
    return along >= 130 && along <= 930 && out <= centre;
}

/* The same of a trimaran: in one of the hulls, or between them from beam to beam. */
bool on_trimaran(const struct hull_view *view, mpt x, mpt y)
{
    int32_t along = (int32_t)((int64_t)(y - view->area.y) * 1000 / view->area.height);
    mpt half = view->area.width / 2, off = x - hull_middle(view), out = off < 0 ? -off : off;
    mpt middle = hull_share(hull_share(half, MIDDLE_HALF), hull_breadth_at(SHAPE_FULL, along));
    mpt own = hull_share(hull_share(half, FLOAT_HALF), hull_breadth_at(SHAPE_SLENDER, along));
    mpt centre = hull_share(half, FLOAT_CENTRE);
    if (along < 0 || along > 1000)
        return false;
    if (out <= middle || (out >= centre - own && out <= centre + own))
        return true;
    return along >= FORWARD_BEAM && along <= AFTER_BEAM && out <= centre;
}

int32_t trimaran_out(int32_t out, int32_t local)
{
    int32_t far = FLOAT_CENTRE - FLOAT_HALF;
    if (out > far || out < -far)
        return out;
    return (int32_t)((int64_t)out * local / 1000 * MIDDLE_HALF / 1000);
}

int hull_body(const struct hull_view *view, struct point point)
{
    mpt half = view->area.width / 2, off = point.x - hull_middle(view);
    mpt inner = hull_share(half, HULL_CENTRE - HULL_HALF);
    if (view->trimaran)
        inner = hull_share(half, FLOAT_CENTRE - FLOAT_HALF);
    if ((!view->catamaran && !view->trimaran) || (off > -inner && off < inner))
        return 0;
    return off < 0 ? -1 : 1;
}
