/* zone_table.c - looking up the zones of a boat, and the words for sides (room:
 * record). The rows are in zone_list.h. Never draws: the plan does. */
#include "zone.h"

#include "promise.h"
#include "text.h"

#define HAS(traits, trait) (((traits) & (trait)) != 0)
#define ZONE_ROW(key_, family_, side_, from_, to_, level_, traits) \
    [ZONE_##key_] = {.id = ZONE_##key_, .key = #key_, .family = ZONE_##family_, \
                     .side = SIDE_##side_, .from = (from_), .to = (to_), \
                     .level = LEVEL_##level_, \
                     .catamaran_only = HAS(traits, CATAMARAN_ONLY), \
                     .multihull_only = HAS(traits, MULTIHULL_ONLY), \
                     .in_hulls = HAS(traits, IN_HULLS), .drawn = HAS(traits, DRAWN), \
                     .locker = HAS(traits, LOCKER), .narrow = HAS(traits, NARROW), \
                     .lived_in = HAS(traits, LIVED_IN), .room = HAS(traits, ROOM), \
                     .at_door = HAS(traits, AT_DOOR)},
static const struct zone zones[ZONE_COUNT] = {ZONE_LIST(ZONE_ROW)};
#undef ZONE_ROW
#undef HAS

#define ZONE_KEY(name, ...) #name,
const char *const zone_key_list[] = {ZONE_LIST(ZONE_KEY) NULL};
const char *const air_space_words[] = {"own_box", ZONE_LIST(ZONE_KEY) NULL};
#undef ZONE_KEY

const char *const side_words[] = {SIDE_LIST(CHOICE_WORD) NULL};

_Static_assert(sizeof zone_key_list / sizeof *zone_key_list == ZONE_COUNT,
               "a key for each zone, and the NULL that ends them");
_Static_assert(sizeof air_space_words / sizeof *air_space_words == AIR_COUNT,
               "a word for each air space: its own box, then the zones");
_Static_assert(sizeof side_words / sizeof *side_words == SIDE_COUNT, "a word for each side");

const struct zone *zone_of(enum zone_key zone)
{
    promise(zone < ZONE_COUNT);
    return zone == ZONE_NONE ? NULL : &zones[zone];
}

const struct zone *zone_find(const char *key)
{
    for (enum zone_key zone = ZONE_NONE + 1; key != NULL && zone < ZONE_COUNT; zone++)
        if (text_equal(zones[zone].key, key))
            return &zones[zone];
    return NULL;
}

const char *zone_word(enum zone_key zone)
{
    promise(zone < ZONE_COUNT);
    return zone == ZONE_NONE ? "" : zones[zone].key;
}

bool zone_within(const struct zone *zone, enum zone_key wanted)
{
    return zone != NULL && wanted != ZONE_NONE &&
           (zone->id == wanted || zone->family == wanted);
}

bool zone_in_space(const struct zone *zone, enum zone_key space)
{
    return zone_within(zone, space) && (zone->id == space || zone->side != SIDE_NONE);
}

enum zone_key air_zone(enum air_space space)
{
    return space > AIR_OWN_BOX ? (enum zone_key)(space - AIR_OWN_BOX) : ZONE_NONE;
}

const char *side_word(enum side side)
{
    promise(side < SIDE_COUNT);
    return side == SIDE_NONE ? "" : side_words[side - 1];
}
