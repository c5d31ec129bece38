/* choices.h - fields that hold one of a list of names, or several (room: record): each as
 * a value of its own enum, 0 for none, with its place in the file. Read by tables of
 * fields (yaml_fields.h). */
#ifndef MAYDECK_CHOICES_H
#define MAYDECK_CHOICES_H

#include "item.h"
#include "yaml_fields.h"

struct item_value CHOICE_OF(enum item_key);
struct item_values CHOICES_OF(struct item_value);

/* The entry of the list that names the item; NULL: none does. */
const struct item_value *item_value_find(const struct item_values *list, enum item_key item);

#endif
