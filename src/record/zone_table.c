/* zone_table.c - looking up the zones of a boat, and the words for sides (room:
 * record). The rows are in zone_list.h. Never draws: the plan does. */
#include "item.h"

#include "record.h"
#include "text.h"
#include "zone_list.h"

#define ZONE_ROW(name, kin, lies, first, last, height, cat, hulls, landmark, closed) \
    {.key = #name, .family = #kin, .side = SIDE_##lies, .from = (first), .to = (last), \
     .level = LEVEL_##height, .catamaran_only = (cat), .in_hulls = (hulls), .drawn = (landmark), \
     .locker = (closed)},
static const struct zone zones[] = {ZONE_LIST(ZONE_ROW)};
#undef ZONE_ROW

#define ZONE_KEY(name, kin, lies, first, last, height, cat, hulls, landmark, closed) #name,
const char *const zone_key_list[] = {ZONE_LIST(ZONE_KEY) NULL};
const char *const space_key_list[] = {"own_box", ZONE_LIST(ZONE_KEY) NULL};
#undef ZONE_KEY

static const char *const side_words[] = {
    [SIDE_NONE] = "",
    [SIDE_PORT] = "port",
    [SIDE_STARBOARD] = "starboard",
    [SIDE_CENTRE] = "centre",
    [SIDE_BOTH] = "both",
};

const struct zone *zone_at(size_t index)
{
    return index < sizeof zones / sizeof zones[0] ? &zones[index] : NULL;
}

const struct zone *zone_find(const char *key)
{
    for (size_t i = 0; key != NULL && zone_at(i) != NULL; i++)
        if (text_equal(zones[i].key, key))
            return &zones[i];
    return NULL;
}

bool zone_within(const struct zone *zone, const char *wanted)
{
    return zone != NULL && wanted != NULL &&
           (text_equal(zone->key, wanted) || text_equal(zone->family, wanted));
}

const char *side_word(enum side side)
{
    return side_words[side];
}

enum side side_from(const char *word)
{
    for (int side = SIDE_PORT; side <= SIDE_BOTH; side++)
        if (text_equal(word, side_words[side]))
            return (enum side)side;
    return SIDE_NONE;
}
