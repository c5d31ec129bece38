/* plan_views.c - the drawings of each kind of boat beside the steps of a card, as rows of hulls
 * and decks (room: layout). Schemata, not lines of a ship: where things are, and on which
 * side. */
#include "plan_views.h"

#include "measures.h"
#include "promise.h"

#define COUNT_OF_VIEWS(list) ((int)(sizeof(list) / sizeof *(list)))

#define WHOLE_LENGTH 0, 1000
#define ONE_HULL {0, 1000, SHAPE_FULL, WHOLE_LENGTH}
#define HULL_AT(centre, half) {centre, half, SHAPE_SLENDER, WHOLE_LENGTH}

static const struct plan_view cabin_views[] = {
    {PLAN_HEAD_BELOW, true, 1, {ONE_HULL}},
    {PLAN_HEAD_DECK, false, 1, {ONE_HULL}}};

/* An open boat has one level. */
static const struct plan_view open_views[] = {{PLAN_HEAD_WHOLE, false, 1, {ONE_HULL}}};

/* Of a catamaran the saloon lies beside the deck, not below it. */
enum { BRIDGE_BODY, PORT_BODY, STARBOARD_BODY };
static const struct plan_view catamaran_views[] = {
    {PLAN_HEAD_HULLS, true, 2, {HULL_AT(-534, 466), HULL_AT(534, 466)}},
    {PLAN_HEAD_DECK_SALOON, false, 3,
     {[BRIDGE_BODY] = {0, 600, SHAPE_STRAIGHT, 130, 930},
      [PORT_BODY] = HULL_AT(-795, 205), [STARBOARD_BODY] = HULL_AT(795, 205)}}};
#define HULLS_VIEW 0
#define BRIDGE_VIEW 1

#define THREE_HULLS {[BRIDGE_BODY] = {0, 580, SHAPE_FULL, WHOLE_LENGTH}, \
                     [PORT_BODY] = HULL_AT(-840, 160), [STARBOARD_BODY] = HULL_AT(840, 160)}
static const struct plan_view trimaran_views[] = {{PLAN_HEAD_BELOW, true, 3, THREE_HULLS},
                                                  {PLAN_HEAD_DECK, false, 3, THREE_HULLS}};

#define VIEWS_OF(list, width, above) (struct plan_views){list, COUNT_OF_VIEWS(list), width, above}

struct plan_views plan_views_of(const struct boat *boat)
{
    if (boat->facts.hull.value == HULL_CATAMARAN)
        return VIEWS_OF(catamaran_views, PLAN_VIEW_SEVERAL_WIDTH, true);
    if (boat->facts.hull.value == HULL_TRIMARAN)
        return VIEWS_OF(trimaran_views, PLAN_VIEW_SEVERAL_WIDTH, true);
    if (!boat_has_cabin(boat))
        return VIEWS_OF(open_views, PLAN_VIEW_ALONE_WIDTH, false);
    return VIEWS_OF(cabin_views, PLAN_VIEW_WIDTH, false);
}

static enum slot_queue queue_of(enum side side)
{
    if (side == SIDE_PORT)
        return QUEUE_PORT;
    return side == SIDE_STARBOARD ? QUEUE_STARBOARD : QUEUE_MIDDLE;
}

static struct view_place on_level(const struct plan_views *views, enum level level,
                                  struct view_place place)
{
    place.view = level == LEVEL_BELOW || views->count == 1 ? 0 : 1;
    return place;
}

/* In a hull, or on its side deck; what has no side lies between the hulls. */
static struct view_place on_catamaran_place(const struct zone *zone, enum side side,
                                            enum level level)
{
    bool sided = side == SIDE_PORT || side == SIDE_STARBOARD;
    if (!zone->in_hulls || !sided)
        return (struct view_place){BRIDGE_VIEW, BRIDGE_BODY, queue_of(side)};
    if (level == LEVEL_BELOW)
        return (struct view_place){HULLS_VIEW, side == SIDE_PORT ? 0 : 1, QUEUE_MIDDLE};
    return (struct view_place){BRIDGE_VIEW, side == SIDE_PORT ? PORT_BODY : STARBOARD_BODY,
                               QUEUE_MIDDLE};
}

struct view_place view_place_of(const struct boat *boat, const struct zone *zone, enum side side,
                                enum level level)
{
    struct plan_views views = plan_views_of(boat);
    enum side own = side == SIDE_NONE ? zone->side : side;
    bool outer = zone->multihull_only && (own == SIDE_PORT || own == SIDE_STARBOARD);
    if (boat->facts.hull.value == HULL_CATAMARAN)
        return on_catamaran_place(zone, own, level);
    if (boat->facts.hull.value == HULL_TRIMARAN && outer)
        return on_level(&views, level,
                        (struct view_place){0, own == SIDE_PORT ? PORT_BODY : STARBOARD_BODY,
                                            QUEUE_MIDDLE});
    return on_level(&views, level, (struct view_place){0, 0, queue_of(own)});
}

mpt body_half(const struct plan_views *views, const struct view_body *body, int32_t along)
{
    mpt half = hull_share(views->width / 2, body->half);
    if (along < body->first || along > body->last)
        return 0;
    if (body->shape != SHAPE_STRAIGHT)
        half = hull_share(half, hull_breadth_at(body->shape, along));
    return half;
}
