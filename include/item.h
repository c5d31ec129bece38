/* item.h - the register: every kind of gear a boat file may name (room: record). One
 * table; symbols, tags, the plan and the checks follow from it. Adding a kind of gear is
 * adding a row to item_list.h. */
#ifndef MAYDECK_ITEM_H
#define MAYDECK_ITEM_H

#include <stdbool.h>
#include <stddef.h>

#include "item_list.h"
#include "symbol.h"
#include "zone.h"

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
    enum symbol_key symbol;  /* of its class; never SYMBOL_NONE */
    enum zone_key usual_zone; /* where most boats have it: orders lists, says nothing of a boat */
    bool by_engine;          /* with two engine spaces each item must say which it serves */
    const char *record;      /* what to record besides the place, for people */
};

/* Tags by letter and number, as strcmp tells: E4 before E10. Either may be "". (tag_order.c) */
int tag_compare(const char *a, const char *b);

const struct item_kind *item_find(const char *key);          /* NULL: no such kind */
const struct item_kind *item_kind_of(enum item_key item);    /* NULL for ITEM_NONE */
const char *item_word(enum item_key item);                   /* its key; "" for ITEM_NONE */

/* The keys, NULL-ended, each at its value less one: the choices of a field. */
extern const char *const item_key_list[];

/* Those of LIFE_SAVING_LIST, ITEM_NONE behind the last. */
extern const enum item_key life_saving_items[];

/* Is the item among these, of which the last is followed by ITEM_NONE? */
bool item_among(const enum item_key *among, enum item_key item);

#endif
