/* hull.c - the boat from above, bow up: her outline from length and beam, and where on it
 * a thing lies (room: layout). Takes the boat's length, beam and kind and the area to draw
 * in; gives lines on the page, and points and answers about boxes in the page's own
 * thousandths of a point. Not to scale across: the hull is drawn wide enough for its
 * tags. Never places a tag.
 *
 * `along` and `out` are thousandths throughout: of the boat's length from the bow, and of
 * half her beam from the middle line. */
#include "layout_room.h"

#include "measures.h"

/* The outline of a plan that has a page of its own is as thick as the walls of an escape
 * plan (ISO 23601); a plan beside the steps is a third as large, and so is its line. */
static mpt outline_width(const struct hull_view *view)
{
    return view->large ? OUTLINE_LARGE : OUTLINE_SMALL;
}

static mpt bulkhead_width(const struct hull_view *view)
{
    return view->large ? BULKHEAD_LARGE : BULKHEAD_SMALL;
}

#define STATIONS 11

enum hull_shape { SHAPE_FULL, SHAPE_SLENDER };

/* Half breadths at eleven stations from bow to transom, drawn by hand: of a full modern
 * hull, and of a catamaran's, which is slender, its sides nearly parallel. The neighbours
 * of the greatest are equal, so that the curve is nowhere broader between stations. */
static const int32_t stations[][STATIONS] = {
    [SHAPE_FULL] = {0, 375, 615, 785, 895, 960, 990, 1000, 990, 955, 890},
    [SHAPE_SLENDER] = {0, 480, 740, 890, 965, 993, 1000, 993, 980, 950, 880}};

/* The half breadth at a station. The curve needs one station more than there are at
 * either end: there the line goes on as it came. */
static int32_t station(enum hull_shape shape, int32_t at)
{
    const int32_t *row = stations[shape];
    if (at < 0)
        return -row[1];
    if (at >= STATIONS)
        return 2 * row[STATIONS - 1] - row[STATIONS - 2];
    return row[at];
}

/* The half breadth anywhere: between stations a cubic through them (Catmull and Rom 1974),
 * the very curve that is drawn, so that what counts as on the boat lies within her line.
 * In integers: `unit` stands for 1, `t` for the share of the way behind station `at`. */
static int32_t breadth_at(enum hull_shape shape, int32_t along)
{
    int32_t last = STATIONS - 1;
    if (along <= 0)
        return 0;
    if (along >= 1000)
        return station(shape, last);
    int32_t at = along * last / 1000;
    int64_t t = along * last - at * 1000, unit = 1000;
    int64_t p0 = station(shape, at - 1), p1 = station(shape, at);
    int64_t p2 = station(shape, at + 1), p3 = station(shape, at + 2);
    int64_t first = p2 - p0, second = 2 * p0 - 5 * p1 + 4 * p2 - p3;
    int64_t third = 3 * (p1 - p2) + p3 - p0, cube = unit * unit * unit;
    int64_t twice = 2 * p1 * cube + first * t * unit * unit + second * t * t * unit +
                    third * t * t * t;
    return (int32_t)(twice / (2 * cube));
}

int32_t hull_half_breadth(int32_t along)
{
    return breadth_at(SHAPE_FULL, along);
}

/* A catamaran's hull: how far its own middle line lies out, and its half breadth there. */
#define HULL_CENTRE 740
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

/* One hull's outline round its own middle line. */
struct outline {
    struct area area;         /* of the whole boat: the hull is as long */
    mpt centre, half, line;   /* x of the middle line, greatest half breadth, line's width */
    enum hull_shape shape;
};

/* The y of a third of the way between stations: station 2 is at 6 thirds. */
static mpt outline_y(const struct outline *outline, int32_t thirds)
{
    return outline->area.y + (mpt)((int64_t)outline->area.height * thirds / (3 * (STATIONS - 1)));
}

/* The curve from station `from` to the next, as the handles of a Bezier curve, which stand
 * at a third of the way: the same cubic as in breadth_at. `side` is -1 to port, 1 to
 * starboard; `step` is 1 aft, -1 forward. */
static struct path_step curve_to(const struct outline *outline, int32_t from, int32_t step,
                                 int32_t side)
{
    int32_t to = from + step, before = from - step, after = to + step;
    enum hull_shape shape = outline->shape;
    int32_t lean_from = station(shape, to) - station(shape, before);
    int32_t lean_to = station(shape, after) - station(shape, from);
    int32_t first = station(shape, from) + lean_from / 6;
    int32_t second = station(shape, to) - lean_to / 6;
    mpt half = outline->half * side;
    return (struct path_step){
        .verb = PATH_CURVE,
        .control = {{outline->centre + scaled(half, first), outline_y(outline, 3 * from + step)},
                    {outline->centre + scaled(half, second), outline_y(outline, 3 * to - step)}},
        .to = {outline->centre + scaled(half, station(shape, to)),
               outline_y(outline, 3 * to)}};
}

/* Draws one hull: down the port side, across the transom, up the starboard side. */
static void one_hull_draw(struct pen *pen, const struct outline *outline)
{
    struct path_step *steps = arena_array(pen->arena, 2 * STATIONS + 4, sizeof *steps);
    int32_t last = STATIONS - 1;
    size_t count = 0;
    steps[count++] = move_to(outline->centre, outline->area.y);
    for (int32_t i = 0; i < last; i++)
        steps[count++] = curve_to(outline, i, 1, -1);
    steps[count++] = line_to(outline->centre +
                                 scaled(outline->half, station(outline->shape, last)),
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

/* A light line across the boat, `half` to either side of the middle line. */
static void line_across(struct pen *pen, const struct hull_view *view, int32_t along,
                        mpt half)
{
    mpt y = deck_y(view, along), x = centre_x(view);
    pen_line(pen, (struct point){x - half, y}, (struct point){x + half, y}, INK_GREY,
             bulkhead_width(view));
}

/* Draws bulkheads where most boats of this kind have them: behind the anchor, ahead of the
 * saloon, ahead of the cockpit, ahead of the steering gear. They part the plan for the
 * eye; no tag is placed by them. */
static void bulkheads_draw(struct pen *pen, const struct hull_view *view)
{
    static const int32_t bulkheads[] = {120, 360, 640, 920};
    for (size_t i = 0; i < sizeof bulkheads / sizeof *bulkheads; i++)
        line_across(pen, view, bulkheads[i],
                    scaled(view->area.width / 2, hull_half_breadth(bulkheads[i])) -
                        outline_width(view));
}

/* A light box on the middle line, between two distances from the bow. */
static void grey_box(struct pen *pen, const struct hull_view *view, int32_t from, int32_t to,
                     int32_t half_share, mpt radius)
{
    mpt half = scaled(view->area.width / 2, half_share), x = centre_x(view);
    pen_box(pen, (struct area){x - half, deck_y(view, from), 2 * half,
                               deck_y(view, to) - deck_y(view, from)},
            INK_NONE, INK_GREY, bulkhead_width(view), radius);
}

/* Draws the deck of a boat with one hull: the cabin roof with the companionway, the cockpit
 * with its seats, the lid of the anchor locker. */
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
    struct outline outline = {view->area, x, view->area.width / 2, outline_width(view),
                              SHAPE_FULL};
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

/* Draws the net between a catamaran's bows as light lines crossing, from the forward beam
 * to the bridge deck; the beam is a strong line. */
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

/* Draws both hulls, the bridge deck between them, the net ahead of it, the line that parts
 * saloon and cockpit, and the mast. */
static void catamaran_draw(struct pen *pen, const struct hull_view *view)
{
    mpt x = centre_x(view), half = view->area.width / 2;
    mpt centre = scaled(half, HULL_CENTRE), own = scaled(half, HULL_HALF);
    mpt left = x - centre + own, right = x + centre - own;
    struct area bridge = {left, deck_y(view, 340), right - left,
                          deck_y(view, 930) - deck_y(view, 340)};
    net_draw(pen, view, left, right);
    for (int side = -1; side <= 1; side += 2) {
        struct outline outline = {view->area, x + side * centre, own, outline_width(view),
                                  SHAPE_SLENDER};
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

/* How far from the middle line a marker stands. A place that was measured stands where it
 * was measured; that of a zone keeps its share of the breadth there, so that it stays on
 * a boat that narrows. Near the bow the breadth of 60 thousandths aft counts: farther
 * forward all would come down to the middle line. */
static mpt marker_across(const struct hull_view *view, const struct marker *marker, int32_t along)
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
    return (struct point){centre_x(view) + marker_across(view, marker, along),
                          deck_y(view, along)};
}

/* Is the point of the page on the boat? */
static bool on_monohull(const struct hull_view *view, mpt x, mpt y)
{
    int32_t along = (int32_t)((int64_t)(y - view->area.y) * 1000 / view->area.height);
    mpt half = scaled(view->area.width / 2, hull_half_breadth(along));
    mpt off = x - centre_x(view);
    return along >= 0 && along <= 1000 && off >= -half && off <= half;
}

/* The same of a catamaran: in a hull, or between the hulls from the forward beam to the
 * after end of the bridge deck. */
static bool on_catamaran(const struct hull_view *view, mpt x, mpt y)
{
    int32_t along = (int32_t)((int64_t)(y - view->area.y) * 1000 / view->area.height);
    mpt half = view->area.width / 2, off = x - centre_x(view);
    mpt centre = scaled(half, HULL_CENTRE);
    mpt own = scaled(scaled(half, HULL_HALF), breadth_at(SHAPE_SLENDER, along));
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

/* A tag may touch the outline: its box is taken a little smaller, by a fifth at most. Of a
 * large box, which stands for a group of tags, no more is taken off than a tag could
 * spare, so that the one in its corner does not lie off the boat. */
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
