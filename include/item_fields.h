/* item_fields.h - which facts belong to which gear: the one table item x field (room:
 * record). Reading, `start` and the checks of what is not recorded go by it. Its rows are
 * in gear_field_list.h. */
#ifndef MAYDECK_ITEM_FIELDS_H
#define MAYDECK_ITEM_FIELDS_H

#include "gear_field_list.h"
#include "item.h"
#include "yaml_fields.h"

/* Every field of an entry of equipment, in the order of the table. */
enum gear_field {
    GEAR_FIELD_NONE,         /* no field is given */
#define GEAR_FIELD_ENUM(key, ...) GEAR_##key,
    GEAR_FIELD_LIST(GEAR_FIELD_ENUM)
#undef GEAR_FIELD_ENUM
    GEAR_FIELD_COUNT         /* one more than there are fields: the size of a table by field */
};

/* How a field belongs to an item, from not at all. */
enum belonging {
    BELONGS_NOT,             /* an error on its entry */
    BELONGS_MAY,             /* a fact of such gear, and kept */
    BELONGS_ASKED,           /* cards, figures or checks have a use for it: `start` asks for it */
    BELONGS_MUST             /* the same, and `check` tells where it is missing */
};
enum belonging item_field(enum item_key item, enum gear_field field);

/* May every entry have it, whatever it is of? */
bool field_is_general(enum gear_field field);

/* The row of a field; NULL for GEAR_FIELD_NONE. */
const struct field *gear_field_row(enum gear_field field);

/* Its key in a boat file, "" for GEAR_FIELD_NONE; and the field of that key,
 * GEAR_FIELD_NONE where there is none. */
const char *gear_field_word(enum gear_field field);
enum gear_field gear_field_find(const char *key);

/* What to do about a field that does not belong to the item: the nearest that does, else
 * the items that it belongs to. */
const char *item_field_remedy(enum item_key item, enum gear_field field, struct arena *arena);

#endif
