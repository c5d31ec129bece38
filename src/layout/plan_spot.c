/* plan_spot.c - the free spot on the drawn boat nearest to where a thing is (room: layout).
 * Takes a box's size, the thing's place and the boxes that stand already; gives where the
 * box can stand. Never draws, never moves what stands. */
#include "plan_spot.h"

#include "measures.h"

/* How far a spot is looked for, in steps of SPOT_STEP: all in all, and within the hull or
 * the bridge deck in which the thing is before another will do. */
#define SEARCH_RINGS 70
#define BODY_RINGS 25

struct style plan_tag_style(mpt size)
{
    return (struct style){ROLE_PLAN_TAG, FACE_BOLD, size, INK_WHITE};
}

static bool overlap(struct area a, struct area b, mpt gap)
{
    return a.x < b.x + b.width + gap && b.x < a.x + a.width + gap &&
           a.y < b.y + b.height + gap && b.y < a.y + a.height + gap;
}

bool free_of(struct area box, const struct area *taken, size_t count, mpt gap)
{
    for (size_t i = 0; i < count; i++)
        if (overlap(box, taken[i], gap))
            return false;
    return true;
}

struct area box_at(struct point centre, mpt width, mpt height)
{
    return (struct area){centre.x - width / 2, centre.y - height / 2, width, height};
}

/* May the box of this marker stand there? On the boat; and what is on a stern platform,
 * which lies behind the hull, may stand behind it as far as the legend leaves room. */
static bool allowed(const struct hull_view *view, const struct marker *marker, struct area box)
{
    mpt stern = view->area.y + view->area.height;
    if (marker->zone->to <= 100 || hull_holds(view, box))
        return hull_holds(view, box);
    return box.y + box.height <= stern + STERN_ROOM && box.x >= view->area.x &&
           box.x + box.width <= view->area.x + view->area.width;
}

/* Is the spot on the side that the thing is on? What is to port stands to port, however
 * full that side is: a tag on the wrong side sends people there. Only where its own place
 * is drawn on the other side may it stand there. */
static bool own_side(const struct hull_view *view, const struct marker *marker,
                     struct point centre)
{
    mpt middle = view->area.x + view->area.width / 2, off = centre.x - middle;
    mpt true_off = hull_point(view, marker).x - middle;
    bool port = marker->side == SIDE_PORT && true_off <= 0;
    bool starboard = marker->side == SIDE_STARBOARD && true_off >= 0;
    return !(port && off > 0) && !(starboard && off < 0);
}

/* What is looked for. */
struct search {
    const struct hull_view *view;
    const struct marker *marker;
    const struct taken *taken;
    int body;                 /* the hull or deck of the true place, see hull_body */
    bool keep_body;           /* a spot in another one will not do */
};

static bool spot_is_free(const struct search *search, struct point centre, struct area box)
{
    return allowed(search->view, search->marker, box) &&
           own_side(search->view, search->marker, centre) &&
           (!search->keep_body || hull_body(search->view, centre) == search->body) &&
           free_of(box, search->taken->areas, search->taken->count, search->taken->gap);
}

/* Looks in rings of growing distance round the true place, the distance being the sum of
 * both ways; in one ring fore and aft before sideways, since a tag that slides along the
 * boat misleads less. The order is fixed, so that pages repeat. */
static bool rings_search(const struct search *search, mpt rings, mpt width, mpt height,
                         struct area *out)
{
    struct point true_place = hull_point(search->view, search->marker);
    for (mpt ring = 0; ring <= rings; ring++)
        for (mpt side = 0; side <= ring; side++) {
            mpt dx = side * SPOT_STEP, dy = (ring - side) * SPOT_STEP;
            const struct point tries[] = {{dx, dy}, {-dx, dy}, {dx, -dy}, {-dx, -dy}};
            for (size_t i = 0; i < 4; i++) {
                struct point centre = {true_place.x + tries[i].x, true_place.y + tries[i].y};
                *out = box_at(centre, width, height);
                if (spot_is_free(search, centre, *out))
                    return true;
            }
        }
    return false;
}

/* What is in a hull stays in it, and what is on the bridge deck there, if there is
 * room not far off. */
bool spot_find(const struct hull_view *view, const struct marker *marker, mpt width, mpt height,
               const struct taken *taken, struct area *out)
{
    struct search search = {view, marker, taken, hull_body(view, hull_point(view, marker)), true};
    if (rings_search(&search, BODY_RINGS, width, height, out))
        return true;
    search.keep_body = false;
    return rings_search(&search, SEARCH_RINGS, width, height, out);
}

static mpt apart_by(mpt a, mpt b)
{
    return a < b ? b - a : a - b;
}

mpt spot_drift(const struct hull_view *view, const struct marker *marker, struct area box)
{
    struct point true_place = hull_point(view, marker);
    return apart_by(true_place.x, box.x + box.width / 2) +
           apart_by(true_place.y, box.y + box.height / 2);
}
