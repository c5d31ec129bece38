/* walk_order.c - the order of a walk through a boat, by where zones lie (room: record). It knows
 * no gear. */
#include "walk.h"

static int zone_along(const struct zone *zone)
{
    return zone->from + zone->to;
}

/* Parts of the walk, one behind the other. */
enum leg { LEG_DECK, LEG_FORWARD, LEG_AFT, LEG_PORT, LEG_STARBOARD };

/* One goes down amidships: the port hull is gone through from the bow aft, the other forward. */
static enum leg leg_of(enum hull hull, const struct walk_stop *stop)
{
    const struct zone *zone = stop->zone;
    bool one_hull = stop->side == SIDE_PORT || stop->side == SIDE_STARBOARD;
    if (zone->level != LEVEL_BELOW)
        return LEG_DECK;
    if (hull == HULL_CATAMARAN && zone->in_hulls && one_hull)
        return stop->side == SIDE_PORT ? LEG_PORT : LEG_STARBOARD;
    return zone_along(zone) <= zone_along(zone_of(ZONE_companionway)) ? LEG_FORWARD : LEG_AFT;
}

static bool goes_aft(enum leg leg)
{
    return leg == LEG_AFT || leg == LEG_PORT;
}

int walk_compare(enum hull hull, const struct walk_stop *a, const struct walk_stop *b)
{
    enum leg leg = leg_of(hull, a);
    int along = zone_along(b->zone) - zone_along(a->zone);
    if (leg != leg_of(hull, b))
        return (int)leg - (int)leg_of(hull, b);
    if (along != 0)
        return goes_aft(leg) ? -along : along;
    return (int)a->zone->id - (int)b->zone->id;
}
