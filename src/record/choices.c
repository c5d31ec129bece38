/* choices.c - the words of choices, and looking up what a field with several holds (room:
 * record). Never reads a file. */
#include "choices.h"

const char *const facing_words[] = {FACING_LIST(CHOICE_WORD) NULL};

const struct item_value *item_value_find(const struct item_values *list, enum item_key item)
{
    for (size_t i = 0; i < list->count; i++)
        if (list->items[i].value == item)
            return &list->items[i];
    return NULL;
}

const struct zone_value *zone_value_find(const struct zone_values *list, enum zone_key zone)
{
    for (size_t i = 0; i < list->count; i++)
        if (list->items[i].value == zone)
            return &list->items[i];
    return NULL;
}
