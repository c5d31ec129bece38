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

/* The breadths that the curve at a station is drawn by, of the part abaft station `at`, and how
 * far behind it, of 1000. */
struct curve { int64_t p0, p1, p2, p3, t; };

static struct curve curve_at(enum hull_shape shape, int32_t along)
{
    int32_t last = STATIONS - 1, at = along >= 1000 ? last - 1 : along * last / 1000;
    return (struct curve){station(shape, at - 1), station(shape, at), station(shape, at + 1),
                          station(shape, at + 2), along * last - at * 1000};
}

/* The half breadth anywhere: between stations a cubic through them (Catmull and Rom 1974),
 * the very curve that is drawn, so that what counts as on the boat lies within her line.
 * In integers: `unit` stands for 1, `t` for the share of the way behind a station. */
int32_t hull_breadth_at(enum hull_shape shape, int32_t along)
{
    if (along <= 0)
        return 0;
    struct curve c = curve_at(shape, along < 1000 ? along : 1000);
    int64_t unit = 1000, cube = unit * unit * unit;
    int64_t first = c.p2 - c.p0, second = 2 * c.p0 - 5 * c.p1 + 4 * c.p2 - c.p3;
    int64_t third = 3 * (c.p1 - c.p2) + c.p3 - c.p0;
    int64_t twice = 2 * c.p1 * cube + first * c.t * unit * unit + second * c.t * c.t * unit +
                    third * c.t * c.t * c.t;
    return (int32_t)(twice / (2 * cube));
}

/* How much broader she grows there over the length of two stations. */
static int32_t hull_lean_at(enum hull_shape shape, int32_t along)
{
    struct curve c = curve_at(shape, along);
    int64_t unit = 1000, square = unit * unit;
    int64_t first = c.p2 - c.p0, second = 2 * c.p0 - 5 * c.p1 + 4 * c.p2 - c.p3;
    int64_t third = 3 * (c.p1 - c.p2) + c.p3 - c.p0;
    return (int32_t)((first * square + 2 * second * c.t * unit + 3 * third * c.t * c.t) / square);
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

/* Part of a hull being drawn; `side` is -1 to port, 1 to starboard. */
struct hull_side {
    const struct outline *outline;
    const struct hull_range *range;
    int32_t side;
};

/* The y of so many thirds of a thousandth. */
static mpt thirds_y(const struct hull_side *hull, int32_t thirds)
{
    struct area area = hull->outline->area;
    int32_t length = hull->range->to - hull->range->from;
    mpt down = (mpt)((int64_t)area.height * (thirds - 3 * hull->range->from) / (3 * length));
    return hull->range->up == STERN_UP ? area.y + area.height - down : area.y + down;
}

static struct point side_point(const struct hull_side *hull, int32_t thirds, int32_t breadth)
{
    return (struct point){hull->outline->centre +
                              hull_share(hull->outline->half * hull->side, breadth),
                          thirds_y(hull, thirds)};
}

static struct point side_end(const struct hull_side *hull, int32_t along)
{
    int32_t breadth = along == 0 ? 0 : hull_breadth_at(hull->outline->shape, along);
    return side_point(hull, 3 * along, breadth);
}

/* The curve between two places of one station, as the handles of a Bezier curve, which stand
 * at a third of the way: the same cubic as in hull_breadth_at. */
static struct path_step curve_to(const struct hull_side *hull, int32_t from, int32_t to)
{
    enum hull_shape shape = hull->outline->shape;
    int32_t first = hull_breadth_at(shape, from) +
                    hull_lean_at(shape, from) * (to - from) / (6 * 100);
    int32_t second = hull_breadth_at(shape, to) - hull_lean_at(shape, to) * (to - from) / (6 * 100);
    return (struct path_step){.verb = PATH_CURVE,
                              .control = {side_point(hull, 2 * from + to, first),
                                          side_point(hull, from + 2 * to, second)},
                              .to = side_end(hull, to)};
}

/* From one end of the range to the other, a curve a station. */
static size_t side_curves(const struct hull_side *hull, int32_t from, int32_t to,
                          struct path_step *steps)
{
    size_t count = 0;
    for (int32_t at = from; at != to; count++) {
        int32_t next = from < to ? (at / 100 + 1) * 100 : (at - 1) / 100 * 100;
        next = (from < to) == (next < to) ? next : to;
        steps[count] = curve_to(hull, at, next);
        at = next;
    }
    return count;
}

/* Down the port side, across the transom and up the starboard side; where the stern is cut off,
 * up the port side, round the bow and down again. */
void hull_part_draw(struct pen *pen, const struct outline *outline,
                    const struct hull_range *range)
{
    struct hull_side port = {outline, range, -1}, starboard = {outline, range, 1};
    struct path_step *steps = arena_array(pen->arena, 2 * STATIONS + 4, sizeof *steps);
    bool round_the_bow = range->from == 0 && range->to < 1000;
    int32_t first = round_the_bow ? range->to : range->from;
    int32_t last = round_the_bow ? range->from : range->to;
    size_t count = 0;
    steps[count++] = (struct path_step){.verb = PATH_MOVE, .to = side_end(&port, first)};
    count += side_curves(&port, first, last, steps + count);
    if (last != 0)
        steps[count++] = (struct path_step){.verb = last == 1000 ? PATH_LINE : PATH_MOVE,
                                            .to = side_end(&starboard, last)};
    count += side_curves(&starboard, last, first, steps + count);
    if (range->from == 0 && range->to == 1000)
        steps[count++] = (struct path_step){.verb = PATH_CLOSE};
    pen_path(pen, steps, count, INK_NONE, INK_BLACK, outline->line);
}

void one_hull_draw(struct pen *pen, const struct outline *outline)
{
    hull_part_draw(pen, outline, &(struct hull_range){0, 1000, BOW_UP});
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
             BULKHEAD_SMALL);
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
                        OUTLINE_SMALL);
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
                              OUTLINE_SMALL, SHAPE_FULL};
    if (view->cabin)
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
    mpt line = OUTLINE_SMALL;
    return corners_hold(view, (struct area){box.x - line, box.y, box.width + 2 * line,
                                            box.height});
}
