/* band_boat.c - the boat of a safety plan from above: where on the page her hulls lie, what joins
 * them, and the platform behind her (room: layout). A schema: along her length the
 * bands have the height that their lists need; across she is as broad as her tags need. */
#include "band_boat.h"

#include "measures.h"
#include "trait.h"

/* Thousandths of half the beam: the middle line of a hull, and half its breadth. */
struct body_place { int32_t centre, half; enum hull_shape shape; };

static const struct body_place monohull = {0, 1000, SHAPE_FULL};
static const struct body_place of_catamaran = {740, 250, SHAPE_SLENDER};
static const struct body_place middle_of_three = {0, 560, SHAPE_FULL};
static const struct body_place float_of_three = {880, 120, SHAPE_SLENDER};

/* A catamaran's bridge deck reaches from hull to hull; a platform is narrower than she is. */
#define BRIDGE_HALF 490
#define PLATFORM_HALF 700

/* A page of the bow shows no less of her: drawn larger, her bow has no room for tags. */
#define BOW_SHOWN 450

/* Of her length, where nothing that is recorded tells otherwise: the net ahead of the bridge
 * deck, that deck, and the two beams of a trimaran. */
#define NET_FROM 130
#define BRIDGE_FROM 340
#define BRIDGE_TO 930
#define BEAM_FROM 330
#define BEAM_TO 680

bool has_three_hulls(const struct boat *boat)
{
    return boat->facts.hull.value == HULL_TRIMARAN;
}

static mpt beam_middle(const struct band_boat *boat)
{
    return boat->area.x + boat->area.width / 2;
}

/* ---- what stands on what ---- */

static bool is_sided(enum side side)
{
    return side == SIDE_PORT || side == SIDE_STARBOARD || side == SIDE_BOTH;
}

enum boat_body body_of(const struct boat *boat, const struct marker *marker)
{
    const struct zone *zone = marker->zone;
    enum side side = marker->side;
    if (zone->to > 100)
        return BODY_PLATFORM;
    if (!is_sided(side))
        return BODY_MIDDLE;
    if ((boat->catamaran && zone->in_hulls) ||
        (has_three_hulls(boat) && zone->multihull_only && zone->in_hulls))
        return side == SIDE_PORT ? BODY_PORT_HULL : BODY_STARBOARD_HULL;
    if (has_three_hulls(boat) && zone->id == ZONE_trampoline)
        return side == SIDE_PORT ? BODY_PORT_NET : BODY_STARBOARD_NET;
    return BODY_MIDDLE;
}

/* ---- heights ---- */

/* Where on the page a place of her length lies. */
mpt boat_height_of(const struct band_boat *boat, int32_t along)
{
    const struct hull_range *range = &boat->range;
    int32_t at = along < range->from ? range->from : along > range->to ? range->to : along;
    mpt down = (mpt)((int64_t)boat->area.height * (at - range->from) / (range->to - range->from));
    return range->up == STERN_UP ? boat->area.y + boat->area.height - down : boat->area.y + down;
}

static int32_t along_at(const struct band_boat *boat, mpt y)
{
    const struct hull_range *range = &boat->range;
    mpt down = range->up == STERN_UP ? boat->area.y + boat->area.height - y : y - boat->area.y;
    return range->from + (int32_t)((int64_t)down * (range->to - range->from) / boat->area.height);
}

static struct stretch stretch_of(const struct band_boat *boat, int32_t from, int32_t to)
{
    mpt first = boat_height_of(boat, from), last = boat_height_of(boat, to);
    return first < last ? (struct stretch){first, last} : (struct stretch){last, first};
}

bool stretch_is_there(const struct stretch *stretch)
{
    return stretch->foot > stretch->top;
}

static void stretch_over(struct stretch *stretch, const struct stretch *other)
{
    if (!stretch_is_there(stretch)) {
        *stretch = *other;
        return;
    }
    stretch->top = other->top < stretch->top ? other->top : stretch->top;
    stretch->foot = other->foot > stretch->foot ? other->foot : stretch->foot;
}

/* ---- what joins the hulls ---- */

/* Is it on the net between the bows, or on the deck behind it? */
static bool lies_forward(const struct marker *marker)
{
    return marker->zone->from + marker->zone->to < 2 * BRIDGE_FROM / 10;
}

static void joined_by(struct band_boat *boat, const struct placed_band *placed,
                      const struct marker *marker)
{
    enum boat_body body = body_of(boat->boat, marker);
    bool net = body == BODY_PORT_NET || body == BODY_STARBOARD_NET;
    if (boat->boat->catamaran && body == BODY_MIDDLE)
        stretch_over(lies_forward(marker) ? &boat->net : &boat->bridge, &placed->at);
    else if (net)
        stretch_over(&boat->bridge, &placed->at);
}

/* The same with the other end of the boat up. */
static struct stretch mirrored(const struct band_boat *boat, struct stretch stretch)
{
    mpt sum = 2 * boat->area.y + boat->area.height;
    if (boat->range.up == BOW_UP || !stretch_is_there(&stretch))
        return stretch;
    return (struct stretch){sum - stretch.foot, sum - stretch.top};
}

/* The deck begins where the net ends: where most boats have it, but what lies on either of them
 * lies on it here. Both as if the bow were up. */
static void net_meets_bridge(const struct band_boat *boat, struct stretch *net,
                             struct stretch *bridge)
{
    struct stretch usual_net = mirrored(boat, stretch_of(boat, NET_FROM, BRIDGE_FROM));
    struct stretch usual = mirrored(boat, stretch_of(boat, BRIDGE_FROM, BRIDGE_TO));
    mpt edge = usual.top;
    if (stretch_is_there(bridge) && bridge->top < edge)
        edge = bridge->top;
    if (stretch_is_there(net) && net->foot > edge)
        edge = net->foot;
    net->top = stretch_is_there(net) && net->top < usual_net.top ? net->top : usual_net.top;
    net->foot = edge;
    if (!stretch_is_there(bridge) || bridge->foot < usual.foot)
        bridge->foot = usual.foot;
    bridge->top = edge;
}

/* A boat without sails has no net: what lies there is deck. */
static void catamaran_join(struct band_boat *boat)
{
    struct stretch net = mirrored(boat, boat->net), bridge = mirrored(boat, boat->bridge);
    if (!boat_is(boat->boat, TRAIT_SAIL, ZONE_NONE)) {
        if (stretch_is_there(&net))
            stretch_over(&bridge, &net);
        net = (struct stretch){0, 0};
    }
    net_meets_bridge(boat, &net, &bridge);
    if (!boat_is(boat->boat, TRAIT_SAIL, ZONE_NONE) || net.foot <= net.top)
        net = (struct stretch){0, 0};
    boat->net = mirrored(boat, net);
    boat->bridge = mirrored(boat, bridge);
}

static void hulls_join(struct band_boat *boat, const struct placed_band *bands, size_t count)
{
    for (size_t b = 0; b < count; b++)
        for (size_t i = 0; i < bands[b].band->place_count; i++)
            joined_by(boat, &bands[b], &bands[b].band->places[i].marker);
    if (boat->boat->catamaran)
        catamaran_join(boat);
    if (has_three_hulls(boat->boat)) {
        struct stretch beams = stretch_of(boat, BEAM_FROM, BEAM_TO);
        if (stretch_is_there(&beams))
            stretch_over(&boat->bridge, &beams);
    }
}

/* ---- the boat ---- */

static bool is_platform(const struct band *band)
{
    for (size_t i = 0; i < band->place_count; i++)
        if (band->places[i].marker.zone->to <= 100)
            return false;
    return true;
}

/* What lies behind her has its band behind her transom. */
static void platform_cut(struct band_boat *boat, const struct placed_band *bands, size_t count)
{
    const struct placed_band *last = boat->range.up == STERN_UP ? &bands[0] : &bands[count - 1];
    if (!is_platform(last->band))
        return;
    boat->platform = last->at;
    mpt height = last->at.foot - last->at.top;
    boat->area.height -= height;
    boat->area.y += boat->range.up == STERN_UP ? height : 0;
}

struct band_boat band_boat_make(const struct pen *pen, struct area area,
                                const struct placed_band *bands, size_t count)
{
    const struct places_facts *plan = sheet_places(pen->sheet);
    bool bow_alone = plan->from == 0 && plan->to < BOW_SHOWN;
    struct band_boat boat = {.boat = pen->sheet->boat, .area = area,
                             .range = {plan->from, bow_alone ? BOW_SHOWN : plan->to,
                                       plan_way_up(plan)}};
    if (count > 1)
        platform_cut(&boat, bands, count);
    hulls_join(&boat, bands, count);
    return boat;
}

/* ---- spans ---- */

static struct body_place place_of_body(const struct boat *boat, enum boat_body body)
{
    if (!boat->catamaran && !has_three_hulls(boat))
        return monohull;
    if (body == BODY_PORT_HULL || body == BODY_STARBOARD_HULL)
        return boat->catamaran ? of_catamaran : float_of_three;
    return middle_of_three;
}

static int32_t breadth_within(const struct band_boat *boat, const struct body_place *place,
                              struct stretch at)
{
    int32_t first = along_at(boat, at.top), last = along_at(boat, at.foot);
    if (first < 0 || last < 0 || first > 1000 || last > 1000)
        return 0;
    int32_t upper = hull_breadth_at(place->shape, first);
    int32_t lower = hull_breadth_at(place->shape, last);
    return upper < lower ? upper : lower;
}

static struct span span_round(mpt centre, mpt half)
{
    return (struct span){centre - half, centre + half};
}

/* On which side of the page starboard is: 1 the right. */
static mpt starboard_sign(const struct band_boat *boat)
{
    return boat->range.up == STERN_UP ? -1 : 1;
}

static bool hull_span(const struct band_boat *boat, enum boat_body body, struct stretch at,
                      struct span *span)
{
    struct body_place place = place_of_body(boat->boat, body);
    mpt half = boat->area.width / 2, sign = starboard_sign(boat);
    mpt own = hull_share(hull_share(half, place.half), breadth_within(boat, &place, at));
    mpt off = body == BODY_MIDDLE ? 0 : hull_share(half, place.centre);
    *span = span_round(beam_middle(boat) + (body == BODY_PORT_HULL ? -sign : sign) * off, own);
    return own > 0;
}

static bool stretch_holds(const struct stretch *stretch, struct stretch at)
{
    return at.top >= stretch->top && at.foot <= stretch->foot;
}

/* Beside the middle hull of a trimaran. */
static bool net_span(const struct band_boat *boat, enum boat_body body, struct stretch at,
                     struct span *span)
{
    struct span middle, hull;
    enum boat_body outer = body == BODY_PORT_NET ? BODY_PORT_HULL : BODY_STARBOARD_HULL;
    if (!hull_span(boat, BODY_MIDDLE, at, &middle) || !hull_span(boat, outer, at, &hull))
        return false;
    *span = hull.left > middle.right ? (struct span){middle.right, hull.left}
                                     : (struct span){hull.right, middle.left};
    return stretch_holds(&boat->bridge, at);
}

struct span bridge_span(const struct band_boat *boat)
{
    return span_round(beam_middle(boat), hull_share(boat->area.width / 2, BRIDGE_HALF));
}

bool body_span(const struct band_boat *boat, enum boat_body body, struct stretch at,
               struct span *span)
{
    mpt half = boat->area.width / 2, middle = beam_middle(boat);
    switch (body) {
    case BODY_PLATFORM:
        *span = span_round(middle, hull_share(half, PLATFORM_HALF));
        return stretch_is_there(&boat->platform);
    case BODY_PORT_NET:
    case BODY_STARBOARD_NET:
        return net_span(boat, body, at, span);
    case BODY_MIDDLE:
        if (!boat->boat->catamaran)
            return hull_span(boat, body, at, span);
        *span = bridge_span(boat);
        return stretch_holds(&boat->bridge, at) || stretch_holds(&boat->net, at);
    case BODY_PORT_HULL:
    case BODY_STARBOARD_HULL:
    case BODY_COUNT:
        break;
    }
    return hull_span(boat, body, at, span);
}

struct outline body_outline(const struct band_boat *boat, enum boat_body body)
{
    struct body_place place = place_of_body(boat->boat, body);
    mpt half = boat->area.width / 2;
    mpt off = body == BODY_MIDDLE ? 0 : hull_share(half, place.centre);
    return (struct outline){boat->area, beam_middle(boat) + (body == BODY_PORT_HULL ? -off : off),
                            hull_share(half, place.half), OUTLINE_LARGE, place.shape};
}
