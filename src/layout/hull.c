/* hull.c - the outline of a hull from above, whole or a part of it, and a net between hulls (room:
 * layout). Not to scale across: a hull is drawn wide enough for its tags. Never places a tag.
 *
 * `along` is thousandths of the boat's length from the bow throughout. */
#include "hull_parts.h"

#include "measures.h"

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

mpt hull_share(mpt length, int32_t thousandths)
{
    return (mpt)((int64_t)length * thousandths / 1000);
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

/* ---- a net ---- */

static void net_line(struct pen *pen, struct point from, struct point to)
{
    pen_line(pen, from, to, INK_GREY, HAIR);
    pen_part(pen, PART_NET);
}

void net_lines_draw(struct pen *pen, struct area area)
{
    mpt right = area.x + area.width, bottom = area.y + area.height;
    for (mpt x = area.x + NET_PITCH; x < right; x += NET_PITCH)
        net_line(pen, (struct point){x, area.y}, (struct point){x, bottom});
    for (mpt y = area.y + NET_PITCH; y < bottom; y += NET_PITCH)
        net_line(pen, (struct point){area.x, y}, (struct point){right, y});
}
