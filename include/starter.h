/* starter.h - new files and entries to be filled in (room: record). All of it follows
 * from what is asked for, the register and the field tables: nothing of a boat is ever
 * filled in. */
#ifndef MAYDECK_STARTER_H
#define MAYDECK_STARTER_H

#include <stddef.h>

#include "arena.h"
#include "boat.h"
#include "item_fields.h"
#include "known_names.h"

/* An item that a record is asked for, and which fields of it. */
struct asked_item {
    const struct item_kind *kind;
    const struct zone *usual;             /* where most boats of the type have it */
    const enum gear_field *facts;         /* besides place and handling, in table order */
    size_t fact_count;
};

struct asked_list {
    const struct asked_item *rows;
    size_t count;
};

/* The line to fill in: - {item: ..., tag: C4, zone: , side: , spot: , how: , ...}; for
 * the fixed radio a remark on what to add to its own section. */
const char *starter_entry(const struct asked_item *asked, const char *tag, struct arena *arena);

/* The same for one engine: with serves: [space] filled in. ZONE_NONE: for the boat. */
const char *starter_entry_for(const struct asked_item *asked, const char *tag,
                              enum zone_key space, struct arena *arena);

/* A tag to propose for each of the list, after those that the record uses and those
 * proposed for the items in `told`. */
const char *const *starter_tags(const struct asked_list *asked, const struct boat *boat,
                                const enum item_key *told, size_t told_count,
                                struct arena *arena);

/* Whole files. They can be read as they are: what is missing is told. Beside the keys of gear
 * and zones stands what cards call them, as far as `known` knows it. */
const char *starter_base(struct arena *arena);
const char *starter_boat(const struct asked_list *asked, enum hull hull,
                         const struct known_names *known, struct arena *arena);

/* A boat that is like the model: its name, what is to be filled in of the walk round her, and
 * her own identities and dates by the tags of the model's gear. */
const char *starter_sister(const struct asked_list *asked, const struct model *model,
                           const struct known_names *known, struct arena *arena);

/* Items of the register that the record mentions, as fitted or not fitted. */
size_t boat_items_mentioned(const struct boat *boat);

#endif
