/* boat_lockers.c - which gear lies in one locker with what (room: record): gas and vapour
 * gather there, and a battery burns there. */
#include "item.h"
#include "record.h"
#include "text.h"

/* One locker that is opened for a piece of gear. */
struct opened {
    enum zone_key family;    /* none: it is no locker */
    enum side side;
};

static struct opened opened_by(enum zone_key key, enum side side)
{
    const struct zone *zone = zone_of(key);
    if (zone == NULL || !zone->locker)
        return (struct opened){0};
    return (struct opened){zone->family, zone->side != SIDE_NONE ? zone->side : side};
}

/* The place it is worked from, then what it is inside of, then the space it is recorded to be
 * in, then the place of its handle; a piece in a locker of its place's side. False after the
 * last. */
static bool opened_at(const struct equipment *gear, size_t index, struct opened *opened)
{
    if (index == 0)
        *opened = worked_zone(gear) == NULL
                      ? (struct opened){0}
                      : opened_by(worked_zone(gear)->id, worked_side(gear));
    else if (index <= gear->inside.count)
        *opened = opened_by(gear->inside.items[index - 1].value, SIDE_NONE);
    else if (index == gear->inside.count + 1)
        *opened = opened_by(air_zone(gear->space.value), SIDE_NONE);
    else if (index == gear->inside.count + 2)
        *opened = opened_by(gear->handle.zone.value, gear->handle.place_side);
    else
        return false;
    return true;
}

static bool are_one(struct opened a, struct opened b)
{
    return a.family != ZONE_NONE && a.family == b.family &&
           (a.side == b.side || a.side == SIDE_NONE || b.side == SIDE_NONE);
}

bool gear_shares_locker(const struct equipment *a, const struct equipment *b)
{
    struct opened first, second;
    for (size_t i = 0; a != b && opened_at(a, i, &first); i++)
        for (size_t j = 0; opened_at(b, j, &second); j++)
            if (are_one(first, second))
                return true;
    return false;
}
