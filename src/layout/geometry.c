/* geometry.c - lengths, segments and boxes on a page (room: layout). Pure geometry:
 * it knows no item of a page, and never draws. */
#include "geometry.h"

#include <float.h>
#include <math.h>
#include <stdint.h>

double length_between(struct point a, struct point b)
{
    return hypot((double)(a.x - b.x), (double)(a.y - b.y));
}

/* Which way one turns at `b` on the way from `a` by `b` to `c`: 1, -1, or 0 for straight
 * on. */
static int64_t turn(struct point a, struct point b, struct point c)
{
    int64_t cross = (int64_t)(b.x - a.x) * (c.y - a.y) - (int64_t)(b.y - a.y) * (c.x - a.x);
    return (cross > 0) - (cross < 0);
}

/* Of three points on one line: does `c` lie between `a` and `b`? */
static bool within(struct point a, struct point b, struct point c)
{
    return c.x >= (a.x < b.x ? a.x : b.x) && c.x <= (a.x > b.x ? a.x : b.x) &&
           c.y >= (a.y < b.y ? a.y : b.y) && c.y <= (a.y > b.y ? a.y : b.y);
}

/* Both ends of the one beyond both of the other: most pairs are told apart by this. */
static bool lies_apart(mpt a, mpt b, mpt c, mpt d)
{
    return (a < c && a < d && b < c && b < d) || (a > c && a > d && b > c && b > d);
}

/* They cross where the ends of each lie on both sides of the other; else one's end may
 * lie on the other. */
bool segments_meet(struct point a, struct point b, struct point c, struct point d)
{
    if (lies_apart(a.x, b.x, c.x, d.x) || lies_apart(a.y, b.y, c.y, d.y))
        return false;
    int64_t abc = turn(a, b, c), abd = turn(a, b, d), cda = turn(c, d, a), cdb = turn(c, d, b);
    if (abc != abd && cda != cdb)
        return true;
    return (abc == 0 && within(a, b, c)) || (abd == 0 && within(a, b, d)) ||
           (cda == 0 && within(c, d, a)) || (cdb == 0 && within(c, d, b));
}

/* To the foot of the perpendicular, or to the nearer end where that falls outside. */
static double point_to_segment(struct point p, struct point a, struct point b)
{
    double dx = (double)(b.x - a.x), dy = (double)(b.y - a.y), square = dx * dx + dy * dy;
    double t = square > 0 ? ((double)(p.x - a.x) * dx + (double)(p.y - a.y) * dy) / square : 0;
    t = t < 0 ? 0 : t > 1 ? 1 : t;
    return hypot((double)(p.x - a.x) - t * dx, (double)(p.y - a.y) - t * dy);
}

static bool in_box(struct point p, struct area box)
{
    return p.x >= box.x && p.x <= box.x + box.width && p.y >= box.y && p.y <= box.y + box.height;
}

/* Nothing within or across; else the least of the distances between ends and corners and
 * the other's edges. */
double segment_to_box(struct point a, struct point b, struct area box)
{
    struct point corners[] = {{box.x, box.y},
                              {box.x + box.width, box.y},
                              {box.x + box.width, box.y + box.height},
                              {box.x, box.y + box.height}};
    double least = DBL_MAX;
    if (in_box(a, box) || in_box(b, box))
        return 0;
    for (size_t i = 0; i < 4; i++) {
        struct point next = corners[(i + 1) % 4];
        if (segments_meet(a, b, corners[i], next))
            return 0;
        least = fmin(least, point_to_segment(corners[i], a, b));
        least = fmin(least, fmin(point_to_segment(a, corners[i], next),
                                 point_to_segment(b, corners[i], next)));
    }
    return least;
}
