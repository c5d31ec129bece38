/* hull.c - the boat's outline from length and beam, bow up (room: layout).
 * Not to scale across: the hull is drawn wide enough for its tags. */
#include "layout_room.h"

#include "measures.h"

/* On a page of its own as walls and outlines of an escape plan (ISO 23601); beside the
 * steps a third as large. */
static mpt outline_width(const struct hull_view *view)
{
    return view->large ? OUTLINE_LARGE : OUTLINE_SMALL;
}

static mpt bulkhead_width(const struct hull_view *view)
{
    return view->large ? BULKHEAD_LARGE : BULKHEAD_SMALL;
}

#define STATIONS 11

/* Half breadths at eleven stations from bow to transom: a full modern hull, and a
 * catamaran's, slender, its sides nearly parallel. Neighbours of the greatest are
 * equal, so that nothing is broader between stations. */
static const int32_t stations[2][STATIONS] = {
    {0, 375, 615, 785, 895, 960, 990, 1000, 990, 955, 890},
    {0, 480, 740, 890, 965, 993, 1000, 993, 980, 950, 880}};

/* The line goes on beyond its ends as it came. */
static int32_t station(bool slender, int32_t at)
{
    const int32_t *row = stations[slender ? 1 : 0];
    if (at < 0)
        return -row[1];
    if (at >= STATIONS)
        return 2 * row[STATIONS - 1] - row[STATIONS - 2];
    return row[at];
}

/* Between stations a cubic through them (Catmull and Rom 1974): the very curve that
 * is drawn. */
static int32_t breadth_at(bool slender, int32_t along)
{
    int32_t last = STATIONS - 1;
    if (along <= 0)
        return 0;
    if (along >= 1000)
        return station(slender, last);
    int32_t at = along * last / 1000;
    int64_t t = along * last - at * 1000, unit = 1000;
    int64_t p0 = station(slender, at - 1), p1 = station(slender, at);
    int64_t p2 = station(slender, at + 1), p3 = station(slender, at + 2);
    int64_t first = p2 - p0, second = 2 * p0 - 5 * p1 + 4 * p2 - p3;
    int64_t third = 3 * (p1 - p2) + p3 - p0, cube = unit * unit * unit;
    int64_t twice = 2 * p1 * cube + first * t * unit * unit + second * t * t * unit +
                    third * t * t * t;
    return (int32_t)(twice / (2 * cube));
}

int32_t hull_half_breadth(int32_t along)
{
    return breadth_at(false, along);
}

#define HULL_CENTRE 740   /* of a catamaran's hull, thousandths of the half beam */
#define HULL_HALF 250

static mpt scaled(mpt length, int32_t thousandths)
{
    return (mpt)((int64_t)length * thousandths / 1000);
}

struct hull_view hull_view_in(const struct boat *boat, struct area area, int widening)
{
    struct hull_view view = {.catamaran = boat->catamaran,
                             .loa_mm = (int32_t)boat->facts.loa_m.milli,
                             .beam_mm = (int32_t)boat->facts.beam_m.milli};
    int64_t width = (int64_t)area.height * view.beam_mm / view.loa_mm;
    width = width * widening / 100;
    if (width > area.width)
        width = area.width;
    view.area = (struct area){area.x + (area.width - (mpt)width) / 2, area.y, (mpt)width,
                              area.height};
    return view;
}

/* ---- outlines ---- */

static struct path_step move_to(mpt x, mpt y)
{
    return (struct path_step){.verb = PATH_MOVE, .to = {x, y}};
}

static struct path_step line_to(mpt x, mpt y)
{
    return (struct path_step){.verb = PATH_LINE, .to = {x, y}};
}

/* One hull's outline round its own centre line, given by its half breadth. */
struct outline { struct area area; mpt centre, half, line; bool slender; };

static mpt outline_y(const struct outline *outline, int32_t thirds)
{
    return outline->area.y + (mpt)((int64_t)outline->area.height * thirds / (3 * (STATIONS - 1)));
}

/* The curve between two stations; `side` is -1 to port, 1 to starboard, `step` 1
 * aft, -1 forward. */
static struct path_step curve_to(const struct outline *outline, int32_t from, int32_t step,
                                 int32_t side)
{
    int32_t to = from + step, before = from - step, after = to + step;
    bool slender = outline->slender;
    int32_t lean_from = station(slender, to) - station(slender, before);
    int32_t lean_to = station(slender, after) - station(slender, from);
    int32_t first = station(slender, from) + lean_from / 6;
    int32_t second = station(slender, to) - lean_to / 6;
    mpt half = outline->half * side;
    return (struct path_step){
        .verb = PATH_CURVE,
        .control = {{outline->centre + scaled(half, first), outline_y(outline, 3 * from + step)},
                    {outline->centre + scaled(half, second), outline_y(outline, 3 * to - step)}},
        .to = {outline->centre + scaled(half, station(slender, to)),
               outline_y(outline, 3 * to)}};
}

/* Down the port side, across the transom, up the starboard side. */
static void one_hull_draw(struct pen *pen, const struct outline *outline)
{
    struct path_step *steps = arena_array(pen->arena, 2 * STATIONS + 4, sizeof *steps);
    int32_t last = STATIONS - 1;
    size_t count = 0;
    steps[count++] = move_to(outline->centre, outline->area.y);
    for (int32_t i = 0; i < last; i++)
        steps[count++] = curve_to(outline, i, 1, -1);
    steps[count++] = line_to(outline->centre +
                                 scaled(outline->half, station(outline->slender, last)),
                             outline_y(outline, 3 * last));
    for (int32_t i = last; i > 0; i--)
        steps[count++] = curve_to(outline, i, -1, 1);
    steps[count++] = (struct path_step){.verb = PATH_CLOSE};
    pen_path(pen, steps, count, INK_NONE, INK_BLACK, outline->line);
}

static mpt deck_y(const struct hull_view *view, int32_t along)
{
    return view->area.y + scaled(view->area.height, along);
}

static mpt centre_x(const struct hull_view *view)
{
    return view->area.x + view->area.width / 2;
}

static void line_across(struct pen *pen, const struct hull_view *view, int32_t along,
                        mpt half)
{
    mpt y = deck_y(view, along), x = centre_x(view);
    pen_line(pen, (struct point){x - half, y}, (struct point){x + half, y}, INK_GREY,
             bulkhead_width(view));
}

/* Where bulkheads stand; ahead of the cockpit on a plan of the whole boat. */
static void bulkheads_draw(struct pen *pen, const struct hull_view *view)
{
    static const int32_t bulkheads[] = {120, 360, 640, 920};
    for (size_t i = 0; i < sizeof bulkheads / sizeof *bulkheads; i++)
        line_across(pen, view, bulkheads[i],
                    scaled(view->area.width / 2, hull_half_breadth(bulkheads[i])) -
                        outline_width(view));
}

static void grey_box(struct pen *pen, const struct hull_view *view, int32_t from, int32_t to,
                     int32_t half_share, mpt radius)
{
    mpt half = scaled(view->area.width / 2, half_share), x = centre_x(view);
    pen_box(pen, (struct area){x - half, deck_y(view, from), 2 * half,
                               deck_y(view, to) - deck_y(view, from)},
            INK_NONE, INK_GREY, bulkhead_width(view), radius);
}

/* Cabin roof with the companionway, cockpit with its seats, anchor locker. */
static void deck_draw(struct pen *pen, const struct hull_view *view)
{
    mpt whole = view->area.width;
    grey_box(pen, view, 270, 640, 560, scaled(whole, 160));
    grey_box(pen, view, 575, 640, 190, HATCH_CORNER);
    grey_box(pen, view, 660, 950, 600, scaled(whole, 50));
    grey_box(pen, view, 690, 950, 260, HATCH_CORNER);
    line_across(pen, view, 100, scaled(whole / 2, hull_half_breadth(100)) -
                                 outline_width(view));
}

static void monohull_draw(struct pen *pen, const struct hull_view *view)
{
    mpt x = centre_x(view), y = deck_y(view, 400);
    struct outline outline = {view->area, x, view->area.width / 2, outline_width(view), false};
    if (view->part == PLAN_PART_DECK)
        deck_draw(pen, view);
    else
        bulkheads_draw(pen, view);
    one_hull_draw(pen, &outline);
    pen_ellipse(pen, (struct area){x - HALF_MAST, y - HALF_MAST, MAST, MAST}, INK_GREY);
}

static void net_line(struct pen *pen, struct point from, struct point to)
{
    pen_line(pen, from, to, INK_GREY, HAIR);
    pen_part(pen, PART_NET);
}

/* The net between the bows: light lines crossing. */
static void net_draw(struct pen *pen, const struct hull_view *view, mpt left, mpt right)
{
    mpt top = deck_y(view, 130), bottom = deck_y(view, 340), pitch = NET_PITCH;
    for (mpt x = left + pitch; x < right; x += pitch)
        net_line(pen, (struct point){x, top}, (struct point){x, bottom});
    for (mpt y = top + pitch; y < bottom; y += pitch)
        net_line(pen, (struct point){left, y}, (struct point){right, y});
    pen_line(pen, (struct point){left, top}, (struct point){right, top}, INK_BLACK,
             outline_width(view));
}

static void catamaran_draw(struct pen *pen, const struct hull_view *view)
{
    mpt x = centre_x(view), half = view->area.width / 2;
    mpt centre = scaled(half, HULL_CENTRE), own = scaled(half, HULL_HALF);
    mpt left = x - centre + own, right = x + centre - own;
    struct area bridge = {left, deck_y(view, 340), right - left,
                          deck_y(view, 930) - deck_y(view, 340)};
    net_draw(pen, view, left, right);
    for (int side = -1; side <= 1; side += 2) {
        struct outline outline = {view->area, x + side * centre, own, outline_width(view), true};
        one_hull_draw(pen, &outline);
    }
    pen_box(pen, bridge, INK_NONE, INK_BLACK, outline_width(view), BAND_CORNER);
    pen_line(pen, (struct point){left, deck_y(view, 690)},
             (struct point){right, deck_y(view, 690)}, INK_GREY, bulkhead_width(view));
    pen_ellipse(pen, (struct area){x - HALF_MAST, deck_y(view, 400), MAST, MAST},
                INK_GREY);
}

void hull_draw(struct pen *pen, const struct hull_view *view)
{
    pen->block = BLOCK_PLAN;
    if (view->catamaran)
        catamaran_draw(pen, view);
    else
        monohull_draw(pen, view);
}

/* ---- where things are ---- */

/* Out to the side in thousandths of the half beam; a zone's place keeps its
 * share of the local breadth, so that it stays on a boat that narrows. */
static mpt across(const struct hull_view *view, const struct marker *marker, int32_t along)
{
    int32_t half_mm = view->beam_mm / 2;
    int32_t out = half_mm == 0 ? 0 : (int32_t)((int64_t)marker->y_mm * 1000 / half_mm);
    mpt half = view->area.width / 2;
    if (marker->exact || view->catamaran)
        return scaled(half, out);
    int32_t local = hull_half_breadth(along < 60 ? 60 : along);
    return scaled(scaled(half, local), out);
}

struct point hull_point(const struct hull_view *view, const struct marker *marker)
{
    int32_t along = (int32_t)((int64_t)marker->x_mm * 1000 / view->loa_mm);
    return (struct point){centre_x(view) + across(view, marker, along), deck_y(view, along)};
}

static bool on_monohull(const struct hull_view *view, mpt x, mpt y)
{
    int32_t along = (int32_t)((int64_t)(y - view->area.y) * 1000 / view->area.height);
    mpt half = scaled(view->area.width / 2, hull_half_breadth(along));
    mpt off = x - centre_x(view);
    return along >= 0 && along <= 1000 && off >= -half && off <= half;
}

static bool on_catamaran(const struct hull_view *view, mpt x, mpt y)
{
    int32_t along = (int32_t)((int64_t)(y - view->area.y) * 1000 / view->area.height);
    mpt half = view->area.width / 2, off = x - centre_x(view);
    mpt centre = scaled(half, HULL_CENTRE);
    mpt own = scaled(scaled(half, HULL_HALF), breadth_at(true, along));
    mpt out = off < 0 ? -off : off;
    if (along < 0 || along > 1000)
        return false;
    if (out >= centre - own && out <= centre + own)
        return true;
    return along >= 130 && along <= 930 && out <= centre;
}

int hull_body(const struct hull_view *view, struct point point)
{
    mpt half = view->area.width / 2, off = point.x - centre_x(view);
    mpt inner = scaled(half, HULL_CENTRE - HULL_HALF);
    if (!view->catamaran || (off > -inner && off < inner))
        return 0;
    return off < 0 ? -1 : 1;
}

static bool corners_hold(const struct hull_view *view, struct area box)
{
    bool (*on)(const struct hull_view *, mpt, mpt) = view->catamaran ? on_catamaran : on_monohull;
    mpt right = box.x + box.width, bottom = box.y + box.height;
    return on(view, box.x, box.y) && on(view, right, box.y) && on(view, box.x, bottom) &&
           on(view, right, bottom);
}

static mpt lesser(mpt a, mpt b)
{
    return a < b ? a : b;
}

/* Drawn in a little: a tag may touch the outline. Of a group of them the tag in the
 * corner must not lie off the boat. */
bool hull_holds(const struct hull_view *view, struct area box)
{
    mpt in_x = lesser(box.width / 5, TAG_OVER_X), in_y = lesser(box.height / 5, TAG_OVER_Y);
    return corners_hold(view, (struct area){box.x + in_x, box.y + in_y, box.width - 2 * in_x,
                                            box.height - 2 * in_y});
}

bool hull_encloses(const struct hull_view *view, struct area box)
{
    mpt line = outline_width(view);
    return corners_hold(view, (struct area){box.x - line, box.y, box.width + 2 * line,
                                            box.height});
}
