/* item_table.c - looking up the register of gear (room: record). The rows are
 * in item_list.h. Never says where a thing is: that is the boat's to record. */
#include "item.h"

#include "item_list.h"
#include "record.h"
#include "text.h"

#define ITEM_ROW(name, letter, sign, usually, engine, remember) \
    {.key = #name, .class = ITEM_##letter, .symbol = (sign), .usual_zone = #usually, \
     .by_engine = (engine), .record = (remember)},
static const struct item_kind items[] = {ITEM_LIST(ITEM_ROW)};
#undef ITEM_ROW

#define ITEM_KEY(name, letter, sign, usually, engine, remember) #name,
const char *const item_key_list[] = {ITEM_LIST(ITEM_KEY) NULL};
#undef ITEM_KEY

size_t item_count(void)
{
    return sizeof items / sizeof items[0];
}

const struct item_kind *item_at(size_t index)
{
    return index < item_count() ? &items[index] : NULL;
}

const struct item_kind *item_find(const char *key)
{
    for (size_t i = 0; key != NULL && i < item_count(); i++)
        if (text_equal(items[i].key, key))
            return &items[i];
    return NULL;
}
