/* hull.c - the boat's outline from length and beam, bow up (room: layout).
 * Not to scale across: the hull is drawn wide enough for its tags. */
#include "layout_room.h"

#define OUTLINE MM(1.0)
#define BULKHEAD MM(0.5)

/* Half breadth at eleven stations from bow to transom: a full modern hull. */
int32_t hull_half_breadth(int32_t along)
{
    static const int32_t stations[] = {0, 330, 560, 730, 850, 935, 980, 1000, 990, 950, 880};
    int32_t last = (int32_t)(sizeof stations / sizeof *stations) - 1;
    if (along <= 0)
        return 0;
    if (along >= 1000)
        return stations[last];
    int32_t at = along * last / 1000, rest = along * last - at * 1000;
    return stations[at] + (stations[at + 1] - stations[at]) * rest / 1000;
}

/* A catamaran's hull is slender, and fuller forward for its length. */
#define HULL_CENTRE 740   /* thousandths of the half beam */
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

/* One hull's outline round its own centre line: stations down the port side,
 * across the transom, up the starboard side, smoothed by curves. */
static void one_hull_draw(struct sheet *sheet, struct area area, mpt centre, mpt half)
{
    enum { STATIONS = 20 };
    struct path_step *steps = arena_array(sheet->arena, 2 * STATIONS + 4, sizeof *steps);
    size_t count = 0;
    steps[count++] = move_to(centre, area.y);
    for (int32_t i = 1; i <= STATIONS; i++)
        steps[count++] = line_to(centre - scaled(half, hull_half_breadth(i * 1000 / STATIONS)),
                                 area.y + area.height * i / STATIONS);
    for (int32_t i = STATIONS; i >= 1; i--)
        steps[count++] = line_to(centre + scaled(half, hull_half_breadth(i * 1000 / STATIONS)),
                                 area.y + area.height * i / STATIONS);
    steps[count++] = (struct path_step){.verb = PATH_CLOSE};
    sheet_path(sheet, steps, count, INK_NONE, INK_BLACK, OUTLINE);
}

static mpt deck_y(const struct hull_view *view, int32_t along)
{
    return view->area.y + scaled(view->area.height, along);
}

static mpt centre_x(const struct hull_view *view)
{
    return view->area.x + view->area.width / 2;
}

/* A light line across a hull where a bulkhead stands. */
static void bulkhead_draw(struct sheet *sheet, const struct hull_view *view, int32_t along)
{
    mpt half = scaled(view->area.width / 2, hull_half_breadth(along)) - OUTLINE;
    mpt y = deck_y(view, along), x = centre_x(view);
    sheet_line(sheet, (struct point){x - half, y}, (struct point){x + half, y}, INK_GREY,
               BULKHEAD);
}

static void monohull_draw(struct sheet *sheet, const struct hull_view *view)
{
    static const int32_t bulkheads[] = {120, 360, 640, 920};
    mpt x = centre_x(view), y = deck_y(view, 400);
    for (size_t i = 0; i < sizeof bulkheads / sizeof *bulkheads; i++)
        bulkhead_draw(sheet, view, bulkheads[i]);
    one_hull_draw(sheet, view->area, x, view->area.width / 2);
    sheet_ellipse(sheet, (struct area){x - MM(0.8), y - MM(0.8), MM(1.6), MM(1.6)}, INK_GREY);
}

/* The net between the bows: light lines crossing. */
static void net_draw(struct sheet *sheet, const struct hull_view *view, mpt left, mpt right)
{
    mpt top = deck_y(view, 130), bottom = deck_y(view, 340), pitch = MM(3.2);
    for (mpt x = left + pitch; x < right; x += pitch)
        sheet_line(sheet, (struct point){x, top}, (struct point){x, bottom}, INK_GREY, MM(0.35));
    for (mpt y = top + pitch; y < bottom; y += pitch)
        sheet_line(sheet, (struct point){left, y}, (struct point){right, y}, INK_GREY, MM(0.35));
    sheet_line(sheet, (struct point){left, top}, (struct point){right, top}, INK_BLACK, OUTLINE);
}

static void catamaran_draw(struct sheet *sheet, const struct hull_view *view)
{
    mpt x = centre_x(view), half = view->area.width / 2;
    mpt centre = scaled(half, HULL_CENTRE), own = scaled(half, HULL_HALF);
    mpt left = x - centre + own, right = x + centre - own;
    struct area bridge = {left, deck_y(view, 340), right - left,
                          deck_y(view, 930) - deck_y(view, 340)};
    net_draw(sheet, view, left, right);
    one_hull_draw(sheet, view->area, x - centre, own);
    one_hull_draw(sheet, view->area, x + centre, own);
    sheet_box(sheet, bridge, INK_NONE, INK_BLACK, OUTLINE, MM(1.5));
    sheet_line(sheet, (struct point){left, deck_y(view, 690)},
               (struct point){right, deck_y(view, 690)}, INK_GREY, BULKHEAD);
    sheet_ellipse(sheet, (struct area){x - MM(0.8), deck_y(view, 400), MM(1.6), MM(1.6)},
                  INK_GREY);
}

void hull_draw(struct sheet *sheet, const struct hull_view *view)
{
    sheet->block = "plan";
    if (view->catamaran)
        catamaran_draw(sheet, view);
    else
        monohull_draw(sheet, view);
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
    mpt own = scaled(scaled(half, HULL_HALF), hull_half_breadth(along));
    mpt out = off < 0 ? -off : off;
    if (along < 0 || along > 1000)
        return false;
    if (out >= centre - own && out <= centre + own)
        return true;
    return along >= 130 && along <= 930 && out <= centre;
}

static bool corners_hold(const struct hull_view *view, struct area box)
{
    bool (*on)(const struct hull_view *, mpt, mpt) = view->catamaran ? on_catamaran : on_monohull;
    mpt right = box.x + box.width, bottom = box.y + box.height;
    return on(view, box.x, box.y) && on(view, right, box.y) && on(view, box.x, bottom) &&
           on(view, right, bottom);
}

/* Drawn in a little: a tag may touch the outline. */
bool hull_holds(const struct hull_view *view, struct area box)
{
    mpt in_x = box.width / 5, in_y = box.height / 5;
    return corners_hold(view, (struct area){box.x + in_x, box.y + in_y, box.width - 2 * in_x,
                                            box.height - 2 * in_y});
}

bool hull_encloses(const struct hull_view *view, struct area box)
{
    return corners_hold(view, (struct area){box.x - OUTLINE, box.y, box.width + 2 * OUTLINE,
                                            box.height});
}
