/* proof_area.c - areas, outlines and what lies under a thing on a page (room:
 * proof). Geometry only: it knows no rule. */
#include "proof_near.h"

#include "promise.h"

bool area_meets(struct area a, struct area b)
{
    return a.x < RIGHT_OF(b) && b.x < RIGHT_OF(a) && a.y < FOOT_OF(b) && b.y < FOOT_OF(a);
}

bool area_within(struct area inner, struct area outer)
{
    return inner.x >= outer.x && inner.y >= outer.y && RIGHT_OF(inner) <= RIGHT_OF(outer) &&
           FOOT_OF(inner) <= FOOT_OF(outer);
}

struct area area_union(struct area a, struct area b)
{
    mpt x = a.x < b.x ? a.x : b.x, y = a.y < b.y ? a.y : b.y;
    mpt right = RIGHT_OF(a) > RIGHT_OF(b) ? RIGHT_OF(a) : RIGHT_OF(b);
    mpt foot = FOOT_OF(a) > FOOT_OF(b) ? FOOT_OF(a) : FOOT_OF(b);
    return (struct area){x, y, right - x, foot - y};
}

struct area area_between(struct point a, struct point b)
{
    struct area first = {a.x, a.y, 0, 0}, second = {b.x, b.y, 0, 0};
    return area_union(first, second);
}

struct area area_grown(struct area a, mpt by)
{
    return (struct area){a.x - by, a.y - by, a.width + 2 * by, a.height + 2 * by};
}

static mpt greater(mpt a, mpt b)
{
    return a > b ? a : b;
}

mpt area_gap(struct area a, struct area b)
{
    mpt across = greater(b.x - RIGHT_OF(a), a.x - RIGHT_OF(b));
    mpt down = greater(b.y - FOOT_OF(a), a.y - FOOT_OF(b));
    return greater(across, down);
}

/* ---- filled shapes ---- */

/* Does a ray from the point to the right cross the line from a to b? */
static bool ray_crosses(struct point a, struct point b, struct point point)
{
    if ((a.y > point.y) == (b.y > point.y))
        return false;
    return point.x < a.x + (double)(b.x - a.x) * (point.y - a.y) / (double)(b.y - a.y);
}

static bool ellipse_holds(struct point centre, mpt half_x, mpt half_y, struct point point)
{
    double x = half_x > 0 ? (double)(point.x - centre.x) / half_x : 2.0;
    double y = half_y > 0 ? (double)(point.y - centre.y) / half_y : 2.0;
    return x * x + y * y <= 1.0;
}

/* In a box with round corners: only points in a corner's square may be out. */
static bool box_holds(const struct page_item *box, struct point point)
{
    const struct area *area = &box->area;
    mpt shorter = area->width < area->height ? area->width : area->height;
    mpt r = box->radius < shorter / 2 ? box->radius : shorter / 2;
    if (point.x < area->x || point.x > RIGHT_OF(*area) || point.y < area->y ||
        point.y > FOOT_OF(*area))
        return false;
    mpt x = point.x < area->x + r ? area->x + r : RIGHT_OF(*area) - r;
    mpt y = point.y < area->y + r ? area->y + r : FOOT_OF(*area) - r;
    bool side = point.x >= area->x + r && point.x <= RIGHT_OF(*area) - r;
    bool level = point.y >= area->y + r && point.y <= FOOT_OF(*area) - r;
    return side || level || ellipse_holds((struct point){x, y}, r, r, point);
}

/* Crossings of a ray to the right; curves count as their chords. */
static bool in_path(const struct page_item *path, struct point point)
{
    bool inside = false;
    struct point first = {0, 0}, last = first;
    for (size_t i = 0; i <= path->step_count; i++) {
        bool ends = i == path->step_count || path->steps[i].verb == PATH_CLOSE;
        struct point next = ends ? first : path->steps[i].to;
        bool starts = !ends && path->steps[i].verb == PATH_MOVE;
        if (!starts && ray_crosses(last, next, point))
            inside = !inside;
        first = starts ? next : first;
        last = next;
    }
    return inside;
}

static bool in_item(const struct page_item *item, struct point point)
{
    struct point centre = {item->area.x + item->area.width / 2,
                           item->area.y + item->area.height / 2};
    switch (item->kind) {
    case PAGE_BOX:
        return box_holds(item, point);
    case PAGE_ELLIPSE:
        return ellipse_holds(centre, item->area.width / 2, item->area.height / 2, point);
    case PAGE_PATH:
        return in_path(item, point);
    case PAGE_SIGN:
    case PAGE_TEXT:
    case PAGE_LINE:
    case PAGE_VIEW:
        return false;
    }
    promise_unreached();
}

static bool is_filled(const struct page_item *item)
{
    return item->kind != PAGE_TEXT && item->kind != PAGE_LINE && item->kind != PAGE_SIGN &&
           item->kind != PAGE_VIEW && item->fill != INK_NONE;
}

bool item_covers(const struct page_item *item, struct area area)
{
    mpt right = RIGHT_OF(area), foot = FOOT_OF(area);
    return is_filled(item) && in_item(item, (struct point){area.x, area.y}) &&
           in_item(item, (struct point){right, area.y}) &&
           in_item(item, (struct point){area.x, foot}) &&
           in_item(item, (struct point){right, foot});
}

bool item_touches(const struct page_item *item, struct area area)
{
    return is_filled(item) && area_meets(item->area, area);
}

/* ---- what lies under ---- */

/* The field a class of sign is painted with (draw paints them). */
static enum ink field_of(enum sign_class sign)
{
    static const enum ink fields[SIGN_CLASS_COUNT] = {
        [SIGN_FIRE] = INK_FIRE,       [SIGN_RESCUE] = INK_RESCUE,
        [SIGN_CONTROL] = INK_CONTROL, [SIGN_WARNING] = INK_WARNING,
        [SIGN_PROHIBITION] = INK_WHITE, [SIGN_MANDATORY] = INK_CONTROL};
    promise(sign < SIGN_CLASS_COUNT);
    return fields[sign];
}

/* From the top down, until something covers the whole. A sign has its field and
 * its picture, so it never covers: the picture is black or white. */
void grounds_under(const struct proofing *p, size_t above, struct area area,
                   bool seen[INK_COUNT])
{
    struct near_set near = near_area(p, area, 1);
    for (size_t i = above; near_before(&near, i, &i);) {
        const struct page_item *item = &p->page->items[i];
        if (item->kind == PAGE_SIGN && area_meets(item->area, area)) {
            seen[field_of(item->sign)] = true;
            seen[INK_WHITE] = seen[INK_BLACK] = true;
        }
        if (!item_touches(item, area))
            continue;
        seen[item->fill] = true;
        if (item_covers(item, area))
            return;
    }
    seen[INK_WHITE] = true;
}

/* ---- outlines ---- */

#define PIECES 8

static double along_curve(double a, double b, double c, double d, double t)
{
    double u = 1.0 - t;
    return u * u * u * a + 3.0 * u * u * t * b + 3.0 * u * t * t * c + t * t * t * d;
}

static struct point curve_point(struct point from, const struct path_step *step, double t)
{
    return (struct point){(mpt)along_curve(from.x, step->control[0].x, step->control[1].x,
                                           step->to.x, t),
                          (mpt)along_curve(from.y, step->control[0].y, step->control[1].y,
                                           step->to.y, t)};
}

struct outline outline_of(const struct page_item *path, struct arena *arena)
{
    struct point *corners = arena_array(arena, path->step_count * PIECES + 1, sizeof *corners);
    struct point last = {0, 0};
    size_t count = 0;
    for (size_t i = 0; i < path->step_count; i++) {
        const struct path_step *step = &path->steps[i];
        if (step->verb == PATH_CLOSE)
            continue;
        for (int k = 1; step->verb == PATH_CURVE && k < PIECES; k++)
            corners[count++] = curve_point(last, step, (double)k / PIECES);
        corners[count++] = last = step->to;
    }
    return (struct outline){corners, count};
}

/* A ray to the right crosses the outline an odd number of times. */
bool outline_holds(const struct outline *outline, struct point point)
{
    bool inside = false;
    for (size_t i = 0, j = outline->count - 1; i < outline->count; j = i++) {
        if (ray_crosses(outline->corners[i], outline->corners[j], point))
            inside = !inside;
    }
    return inside;
}
