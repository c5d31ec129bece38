/* whole_case.h - records in which every field is given, made from the tables of fields: a new
 * field, item or section is in them by itself. The values are of the field's kind; those that
 * must have a form of their own are named in whole_case.c. */
#ifndef MAYDECK_WHOLE_CASE_H
#define MAYDECK_WHOLE_CASE_H

#include "boat.h"
#include "item_fields.h"

/* Which fields an entry of gear is given. */
enum whole_fields {
    WHOLE_ASKED,      /* as `start` asks for them: what a card or check has a use for */
    WHOLE_ALL,        /* every one that it may have */
    WHOLE_SHARED      /* what sister ships may share, and the day of its change: for a model */
};

struct whole_kind {
    enum hull hull;
    enum whole_fields fields;
};

/* All sections of a boat's file but its gear, in lines that end with "equipment:"; with all
 * engines that such a boat can have. */
const char *whole_head(const struct whole_kind *kind, struct arena *arena);

/* The entry of that gear, a line; "" for gear that is none of such a boat's. */
const char *whole_entry(const struct whole_kind *kind, enum item_key item, struct arena *arena);

/* Does an entry of WHOLE_ASKED give that field of the item? */
bool whole_asks(enum item_key item, enum gear_field field);

/* Its tag. */
const char *whole_tag(enum item_key item, struct arena *arena);

/* The head, and an entry of each item: the file of a boat, or of a model. */
const char *whole_boat(const struct whole_kind *kind, struct arena *arena);

/* A base's file of every section and field. */
const char *whole_base(struct arena *arena);

#endif
