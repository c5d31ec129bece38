/* item.h - the register: every kind of gear a boat file may name, and the zones
 * of a boat (room: record). One table each; symbols, tags, the plan and the
 * checks follow from them. Adding a kind of gear is adding a row. */
#ifndef MAYDECK_ITEM_H
#define MAYDECK_ITEM_H

#include <stdbool.h>
#include <stddef.h>

#include "item_list.h"
#include "symbol.h"

/* Every kind of gear, in the order of the register. */
enum item_key {
    ITEM_NONE,               /* no kind is given */
#define ITEM_ENUM(key, ...) ITEM_##key,
    ITEM_LIST(ITEM_ENUM)
#undef ITEM_ENUM
    ITEM_COUNT               /* one more than there are kinds: the size of a table by kind */
};

/* The class of an item: the letter its tags begin with. */
enum item_class {
    ITEM_FIRE = 'F',
    ITEM_RESCUE = 'E',
    ITEM_CONTROL = 'C'
};

struct item_kind {
    enum item_key item;
    const char *key;         /* fuel_shutoff_diesel: its name in files */
    enum item_class class;
    enum symbol_key symbol;  /* SYMBOL_NONE: the class frame with the tag */
    const char *usual_zone;  /* where most boats have it: orders lists, says nothing of a boat */
    bool by_engine;          /* with two engine spaces each item must say which it serves */
    const char *record;      /* what to record besides the place, for people */
};

const struct item_kind *item_find(const char *key);          /* NULL: no such kind */
const struct item_kind *item_kind_of(enum item_key item);    /* NULL for ITEM_NONE */
const char *item_word(enum item_key item);                   /* its key; "" for ITEM_NONE */

/* The keys, NULL-ended, each at its value less one: the choices of a field. */
extern const char *const item_key_list[];

/* Is the item among these, of which the last is followed by ITEM_NONE? */
bool item_among(const enum item_key *among, enum item_key item);

enum level { LEVEL_BELOW, LEVEL_DECK, LEVEL_TOP };

enum side { SIDE_NONE, SIDE_PORT, SIDE_STARBOARD, SIDE_CENTRE, SIDE_BOTH };

/* One zone: where it lies as hundredths of the hull's length from the bow, and
 * across. */
struct zone {
    const char *key;         /* aft_cabin_port */
    const char *family;      /* aft_cabin: words and `inside` know it by this too */
    enum side side;          /* SIDE_NONE: the item tells */
    int from, to;            /* 0 the bow, 100 the transom; 105 a platform behind it */
    enum level level;
    bool catamaran_only;
    bool in_hulls;           /* catamaran: lies in a hull, not on the bridgedeck */
    bool drawn;              /* named on the plan as a landmark */
    bool locker;             /* one reaches into it: what is heavier than air lies there */
};

const struct zone *zone_find(const char *key);
const struct zone *zone_at(size_t index);
extern const char *const zone_key_list[];   /* NULL-ended, in table order */

/* True when `zone` is `wanted` itself or belongs to that family. */
bool zone_within(const struct zone *zone, const char *wanted);

const char *side_word(enum side side);   /* port, starboard, centre, both; "" for none */
enum side side_from(const char *word);

#endif
