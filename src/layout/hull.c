/* hull.c - the boat from above, bow up: her outline from length and beam, and where on it
 * a thing lies (room: layout). Takes the boat's length, beam and kind and the area to draw
 * in; gives lines on the page, and points and answers about boxes in the page's own
 * thousandths of a point. Not to scale across: the hull is drawn wide enough for its
 * tags. Never places a tag.
 *
 * `along` and `out` are thousandths throughout: of the boat's length from the bow, and of
 * half her beam from the middle line. */
#include "hull_parts.h"

#include "measures.h"
#include "trait.h"

/* The outline of a plan that has a page of its own is as thick as the walls of an escape
 * plan (ISO 23601); a plan beside the steps is a third as large, and so is its line. */
mpt hull_outline_width(const struct hull_view *view)
{
    return view->large ? OUTLINE_LARGE : OUTLINE_SMALL;
}

mpt hull_bulkhead_width(const struct hull_view *view)
{
    return view->large ? BULKHEAD_LARGE : BULKHEAD_SMALL;
}

#define STATIONS 11

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
int32_t hull_breadth_at(enum hull_shape shape, int32_t along)
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
    return hull_breadth_at(SHAPE_FULL, along);
}

mpt hull_share(mpt length, int32_t thousandths)
{
    return (mpt)((int64_t)length * thousandths / 1000);
}

struct hull_view hull_view_in(const struct boat *boat, struct area area, int widening)
{
    struct hull_view view = {.catamaran = boat->catamaran,
                             .trimaran = boat->facts.hull.value == HULL_TRIMARAN,
                             .mast = boat_is(boat, TRAIT_SAIL, ZONE_NONE),
                             .cabin = boat_has_cabin(boat),
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
        .control = {{outline->centre + hull_share(half, first),
                     outline_y(outline, 3 * from + step)},
                    {outline->centre + hull_share(half, second),
                     outline_y(outline, 3 * to - step)}},
        .to = {outline->centre + hull_share(half, station(shape, to)),
               outline_y(outline, 3 * to)}};
}

/* Draws one hull: down the port side, across the transom, up the starboard side. */
void one_hull_draw(struct pen *pen, const struct outline *outline)
{
    struct path_step *steps = arena_array(pen->arena, 2 * STATIONS + 4, sizeof *steps);
    int32_t last = STATIONS - 1;
    size_t count = 0;
    steps[count++] = move_to(outline->centre, outline->area.y);
    for (int32_t i = 0; i < last; i++)
        steps[count++] = curve_to(outline, i, 1, -1);
    steps[count++] = line_to(outline->centre +
                                 hull_share(outline->half, station(outline->shape, last)),
                             outline_y(outline, 3 * last));
    for (int32_t i = last; i > 0; i--)
        steps[count++] = curve_to(outline, i, -1, 1);
    steps[count++] = (struct path_step){.verb = PATH_CLOSE};
    pen_path(pen, steps, count, INK_NONE, INK_BLACK, outline->line);
}

mpt hull_y(const struct hull_view *view, int32_t along)
{
    return view->area.y + hull_share(view->area.height, along);
}

mpt hull_middle(const struct hull_view *view)
{
    return view->area.x + view->area.width / 2;
}

/* A light line across the boat, `half` to either side of the middle line. */
static void line_across(struct pen *pen, const struct hull_view *view, int32_t along,
                        mpt half)
{
    mpt y = hull_y(view, along), x = hull_middle(view);
    pen_line(pen, (struct point){x - half, y}, (struct point){x + half, y}, INK_GREY,
             hull_bulkhead_width(view));
}

/* Draws bulkheads where most boats of this kind have them: behind the anchor, ahead of the
 * saloon, ahead of the cockpit, ahead of the steering gear. They part the plan for the
 * eye; no tag is placed by them. */
static void bulkheads_draw(struct pen *pen, const struct hull_view *view)
{
    static const int32_t bulkheads[] = {120, 360, 640, 920};
    for (size_t i = 0; i < sizeof bulkheads / sizeof *bulkheads; i++)
        line_across(pen, view, bulkheads[i],
                    hull_share(view->area.width / 2, hull_half_breadth(bulkheads[i])) -
                        hull_outline_width(view));
}

/* A light box on the middle line, between two distances from the bow. */
static void grey_box(struct pen *pen, const struct hull_view *view, int32_t from, int32_t to,
                     int32_t half_share, mpt radius)
{
    mpt half = hull_share(view->area.width / 2, half_share), x = hull_middle(view);
    pen_box(pen, (struct area){x - half, hull_y(view, from), 2 * half,
                               hull_y(view, to) - hull_y(view, from)},
            INK_NONE, INK_GREY, hull_bulkhead_width(view), radius);
}

/* Draws the deck of a boat with one hull: the cabin roof with the companionway, the cockpit
 * with its seats, the lid of the anchor locker. */
static void deck_draw(struct pen *pen, const struct hull_view *view)
{
    mpt whole = view->area.width;
    grey_box(pen, view, 270, 640, 560, hull_share(whole, 160));
    grey_box(pen, view, 575, 640, 190, HATCH_CORNER);
    grey_box(pen, view, 660, 950, 600, hull_share(whole, 50));
    grey_box(pen, view, 690, 950, 260, HATCH_CORNER);
    line_across(pen, view, 100, hull_share(whole / 2, hull_half_breadth(100)) -
                                 hull_outline_width(view));
}

void hull_mast_draw(struct pen *pen, const struct hull_view *view, mpt top)
{
    if (view->mast)
        pen_ellipse(pen, (struct area){hull_middle(view) - HALF_MAST, top, MAST, MAST}, INK_GREY);
}

/* An open boat has neither cabin roof nor bulkheads. */
static void monohull_draw(struct pen *pen, const struct hull_view *view)
{
    struct outline outline = {view->area, hull_middle(view), view->area.width / 2,
                              hull_outline_width(view), SHAPE_FULL};
    if (view->cabin && view->part == PLAN_PART_DECK)
        deck_draw(pen, view);
    else if (view->cabin)
        bulkheads_draw(pen, view);
    one_hull_draw(pen, &outline);
    hull_mast_draw(pen, view, hull_y(view, 400) - HALF_MAST);
}

void hull_draw(struct pen *pen, const struct hull_view *view)
{
    pen->block = BLOCK_PLAN;
    if (view->catamaran)
        catamaran_draw(pen, view);
    else if (view->trimaran)
        trimaran_draw(pen, view);
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
        return hull_share(half, out);
    int32_t local = hull_half_breadth(along < 60 ? 60 : along);
    if (view->trimaran)
        return hull_share(half, trimaran_out(out, local));
    return hull_share(hull_share(half, local), out);
}

struct point hull_point(const struct hull_view *view, const struct marker *marker)
{
    int32_t along = (int32_t)((int64_t)marker->x_mm * 1000 / view->loa_mm);
    return (struct point){hull_middle(view) + marker_across(view, marker, along),
                          hull_y(view, along)};
}

/* Is the point of the page on the boat? */
static bool on_monohull(const struct hull_view *view, mpt x, mpt y)
{
    int32_t along = (int32_t)((int64_t)(y - view->area.y) * 1000 / view->area.height);
    mpt half = hull_share(view->area.width / 2, hull_half_breadth(along));
    mpt off = x - hull_middle(view);
    return along >= 0 && along <= 1000 && off >= -half && off <= half;
}

static bool corners_hold(const struct hull_view *view, struct area box)
{
    bool (*on)(const struct hull_view *, mpt, mpt) = view->catamaran  ? on_catamaran
                                                     : view->trimaran ? on_trimaran
                                                                      : on_monohull;
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
    mpt line = hull_outline_width(view);
    return corners_hold(view, (struct area){box.x - line, box.y, box.width + 2 * line,
                                            box.height});
}
