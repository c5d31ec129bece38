/* choices.c - looking up what a field with several names holds (room: record). Never reads
 * a file. */
#include "choices.h"

const struct item_value *item_value_find(const struct item_values *list, enum item_key item)
{
    for (size_t i = 0; i < list->count; i++)
        if (list->items[i].value == item)
            return &list->items[i];
    return NULL;
}
