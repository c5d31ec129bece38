/* choices.h - fields that hold one of a list of names, or several (room: record): each as
 * a value of its own enum, 0 for none, with its place in the file. Read by tables of
 * fields (yaml_fields.h). */
#ifndef MAYDECK_CHOICES_H
#define MAYDECK_CHOICES_H

#include "item.h"
#include "yaml_fields.h"

/* ---- names of the registers ---- */

struct item_value CHOICE_OF(enum item_key);
struct item_values CHOICES_OF(struct item_value);
struct zone_value CHOICE_OF(enum zone_key);
struct zone_values CHOICES_OF(struct zone_value);

/* The entry of the list that names the item or zone; NULL: none does. */
const struct item_value *item_value_find(const struct item_values *list, enum item_key item);
const struct zone_value *zone_value_find(const struct zone_values *list, enum zone_key zone);

/* ---- places ---- */

struct side_value CHOICE_OF(enum side);
struct air_value CHOICE_OF(enum air_space);

/* Which way a reader of the hung card looks. */
#define FACING_LIST(X) \
    X(FACING_BOW, "bow") X(FACING_STERN, "stern") X(FACING_PORT, "port") \
    X(FACING_STARBOARD, "starboard")
enum facing { FACING_NONE, FACING_LIST(CHOICE_NAME) FACING_COUNT };
extern const char *const facing_words[];   /* NULL-ended, each at its value less one */
struct facing_value CHOICE_OF(enum facing);


#endif
