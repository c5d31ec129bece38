/* zone.h - the zones of a boat: where each lies, and the sides (room: record). Adding a
 * zone is adding a row to zone_list.h. */
#ifndef MAYDECK_ZONE_H
#define MAYDECK_ZONE_H

#include <stdbool.h>
#include <stddef.h>

#include "choice.h"
#include "zone_list.h"

/* Every zone, in the order of the table. */
enum zone_key {
    ZONE_NONE,               /* no zone is given */
#define ZONE_ENUM(key, ...) ZONE_##key,
    ZONE_LIST(ZONE_ENUM)
#undef ZONE_ENUM
    ZONE_COUNT               /* one more than there are zones: the size of a table by zone */
};

/* What is true of a zone; members of struct zone tell each. */
enum zone_trait {
    NO_TRAIT,
    CATAMARAN_ONLY = 1,
    IN_HULLS = 1 << 1,
    DRAWN = 1 << 2,
    LOCKER = 1 << 3,
    NARROW = 1 << 4,
    LIVED_IN = 1 << 5,
    MULTIHULL_ONLY = 1 << 6,
    ROOM = 1 << 7,
    AT_DOOR = 1 << 8
};

enum level { LEVEL_BELOW, LEVEL_DECK, LEVEL_TOP };

#define SIDE_LIST(X) \
    X(SIDE_PORT, "port") X(SIDE_STARBOARD, "starboard") X(SIDE_CENTRE, "centre") \
    X(SIDE_BOTH, "both")
enum side { SIDE_NONE, SIDE_LIST(CHOICE_NAME) SIDE_COUNT };

/* One zone: where it lies as hundredths of the hull's length from the bow, and
 * across. */
struct zone {
    enum zone_key id;
    const char *key;         /* aft_cabin_port: its name in files */
    enum zone_key family;    /* aft_cabin: words and `inside` know it by this too */
    enum side side;          /* SIDE_NONE: the item tells */
    int from, to;            /* 0 the bow, 100 the transom; 105 a platform behind it */
    enum level level;
    bool catamaran_only, multihull_only;    /* what other boats have not */
    bool in_hulls;           /* catamaran: lies in a hull, not on the bridgedeck */
    bool drawn;              /* named on the plan as a landmark */
    bool locker;             /* one reaches into it: what is heavier than air lies there */
    bool narrow;             /* at or across the middle line: no side is asked for */
    bool lived_in;           /* people sleep and sit there, or it opens into where they do */
    bool room;               /* boats have it or not: see `rooms` of a boat */
    bool at_door;            /* a hand may get into it from the cockpit, through the door */
};

const struct zone *zone_of(enum zone_key zone);    /* NULL for ZONE_NONE */
const struct zone *zone_find(const char *key);     /* NULL: no such zone */
const char *zone_word(enum zone_key zone);         /* its key; "" for ZONE_NONE */

/* The keys, NULL-ended, each at its value less one: the choices of a field. */
extern const char *const zone_key_list[];

/* True when `zone` is `wanted` itself or belongs to that family; false for no zone. */
bool zone_within(const struct zone *zone, enum zone_key wanted);

/* The same of an engine space that a boat has: the generator's is no part of the engine's. */
bool zone_in_space(const struct zone *zone, enum zone_key space);

extern const char *const side_words[];   /* NULL-ended, each at its value less one */
const char *side_word(enum side side);   /* port, starboard, centre, both; "" for none */

/* What a battery shares its air with: a box of its own, or a zone. The values of the
 * zones are those of enum zone_key past AIR_OWN_BOX. */
enum air_space { AIR_NONE, AIR_OWN_BOX, AIR_COUNT = AIR_OWN_BOX + ZONE_COUNT };
extern const char *const air_space_words[];        /* NULL-ended, each at its value less one */
enum zone_key air_zone(enum air_space space);      /* ZONE_NONE where it is no zone */

#endif
