/* band_draw.c - the boat of a safety plan on the page: her outlines, what joins her hulls, and
 * lines across where bands begin (room: layout). Where all of it lies, band_boat.c tells. */
#include "band_boat.h"

#include "measures.h"

static void outline_draw(struct pen *pen, const struct band_boat *boat, enum boat_body body)
{
    struct outline outline = body_outline(boat, body);
    hull_part_draw(pen, &outline, &boat->range);
}

static void net_draw_over(struct pen *pen, struct span span, struct stretch at)
{
    for (mpt x = span.left + NET_PITCH; x < span.right; x += NET_PITCH) {
        pen_line(pen, (struct point){x, at.top}, (struct point){x, at.foot}, INK_GREY, HAIR);
        pen_part(pen, PART_NET);
    }
    for (mpt y = at.top; y < at.foot; y += NET_PITCH) {
        pen_line(pen, (struct point){span.left, y}, (struct point){span.right, y}, INK_GREY,
                 HAIR);
        pen_part(pen, PART_NET);
    }
}

/* Is that end of a deck where the page cuts her off? */
static bool ends_at_cut(const struct band_boat *boat, mpt y)
{
    const struct hull_range *range = &boat->range;
    mpt bow = boat_height_of(boat, range->from), stern = boat_height_of(boat, range->to);
    return (range->from > 0 && y == bow) || (range->to < 1000 && y == stern);
}

/* A deck from above, open at the end where it goes on. */
static void open_deck_draw(struct pen *pen, const struct band_boat *boat, struct span span,
                           struct stretch at)
{
    bool open_top = ends_at_cut(boat, at.top), open_foot = ends_at_cut(boat, at.foot);
    mpt first = open_foot ? at.foot : at.top, last = open_foot ? at.top : at.foot;
    struct path_step *steps = arena_array(pen->arena, 5, sizeof *steps);
    steps[0] = (struct path_step){.verb = PATH_MOVE, .to = {span.left, first}};
    steps[1] = (struct path_step){.verb = PATH_LINE, .to = {span.left, last}};
    steps[2] = (struct path_step){.verb = open_top && open_foot ? PATH_MOVE : PATH_LINE,
                                  .to = {span.right, last}};
    steps[3] = (struct path_step){.verb = PATH_LINE, .to = {span.right, first}};
    steps[4] = (struct path_step){.verb = PATH_CLOSE};
    pen_path(pen, steps, open_top || open_foot ? 4 : 5, INK_NONE, INK_BLACK, OUTLINE_LARGE);
}

static void bridge_draw_between(struct pen *pen, const struct band_boat *boat)
{
    struct span span = bridge_span(boat);
    if (stretch_is_there(&boat->net)) {
        mpt beam = boat->range.up == STERN_UP ? boat->net.foot : boat->net.top;
        net_draw_over(pen, span, boat->net);
        pen_line(pen, (struct point){span.left, beam}, (struct point){span.right, beam},
                 INK_BLACK, OUTLINE_LARGE);
    }
    if (stretch_is_there(&boat->bridge))
        open_deck_draw(pen, boat, span, boat->bridge);
}

/* From the middle hull to a float on either side. */
static void beam_draw_at(struct pen *pen, const struct band_boat *boat, mpt y)
{
    struct span middle, outer;
    static const enum boat_body floats[] = {BODY_PORT_HULL, BODY_STARBOARD_HULL};
    for (size_t i = 0; i < 2; i++) {
        if (!body_span(boat, BODY_MIDDLE, (struct stretch){y, y}, &middle) ||
            !body_span(boat, floats[i], (struct stretch){y, y}, &outer))
            continue;
        bool right = outer.left > middle.right;
        pen_line(pen, (struct point){right ? middle.right : middle.left, y},
                 (struct point){right ? outer.left : outer.right, y}, INK_BLACK, OUTLINE_LARGE);
    }
}

static void hulls_draw(struct pen *pen, const struct band_boat *boat)
{
    if (boat->boat->catamaran)
        bridge_draw_between(pen, boat);
    else
        outline_draw(pen, boat, BODY_MIDDLE);
    if (has_three_hulls(boat->boat) && stretch_is_there(&boat->bridge)) {
        beam_draw_at(pen, boat, boat->bridge.top);
        beam_draw_at(pen, boat, boat->bridge.foot);
    }
    if (boat->boat->catamaran || has_three_hulls(boat->boat)) {
        outline_draw(pen, boat, BODY_PORT_HULL);
        outline_draw(pen, boat, BODY_STARBOARD_HULL);
    }
}

/* A light line across each of her bodies that reaches there. */
static void band_line_draw(struct pen *pen, const struct band_boat *boat, mpt y)
{
    mpt half = BULKHEAD_LARGE / 2, clear = OUTLINE_LARGE / 2;
    for (enum boat_body body = BODY_MIDDLE; body <= BODY_STARBOARD_HULL; body++) {
        struct span span;
        bool alone = !boat->boat->catamaran && !has_three_hulls(boat->boat);
        if ((alone && body != BODY_MIDDLE) ||
            !body_span(boat, body, (struct stretch){y - half, y + half}, &span) ||
            span.right - span.left <= 2 * clear)
            continue;
        pen_line(pen, (struct point){span.left + clear, y},
                 (struct point){span.right - clear, y}, INK_GREY, BULKHEAD_LARGE);
        pen_part(pen, PART_BAND);
    }
}

void band_boat_draw(struct pen *pen, const struct band_boat *boat,
                    const struct placed_band *bands, size_t count)
{
    struct span span;
    pen->block = BLOCK_PLAN;
    hulls_draw(pen, boat);
    if (body_span(boat, BODY_PLATFORM, boat->platform, &span) && stretch_is_there(&boat->platform))
        open_deck_draw(pen, boat, span, boat->platform);
    for (size_t i = 0; i < count; i++)
        band_line_draw(pen, boat, bands[i].at.top);
}
