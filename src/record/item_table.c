/* item_table.c - looking up the register of gear (room: record). The rows are
 * in item_list.h. Never says where a thing is: that is the boat's to record. */
#include "item.h"

#include "promise.h"
#include "record.h"
#include "text.h"

#define ITEM_ROW(key_, class_, symbol_, usual_zone_, by_engine_, record_) \
    [ITEM_##key_] = {.item = ITEM_##key_, .key = #key_, .class = ITEM_##class_, \
                     .symbol = SYMBOL_##symbol_, .usual_zone = ZONE_##usual_zone_, \
                     .by_engine = (by_engine_), .record = (record_)},
static const struct item_kind items[ITEM_COUNT] = {ITEM_LIST(ITEM_ROW)};
#undef ITEM_ROW

#define ITEM_SIGN(key_, class_, symbol_, ...) \
    _Static_assert(SYMBOL_##symbol_ != SYMBOL_NONE, "a sign for each item");
ITEM_LIST(ITEM_SIGN)
#undef ITEM_SIGN

#define ITEM_KEY(name, ...) #name,
const char *const item_key_list[] = {ITEM_LIST(ITEM_KEY) NULL};
#undef ITEM_KEY

#define LIFE_SAVING_KEY(name) ITEM_##name,
const enum item_key life_saving_items[] = {LIFE_SAVING_LIST(LIFE_SAVING_KEY) ITEM_NONE};
#undef LIFE_SAVING_KEY

_Static_assert(sizeof item_key_list / sizeof *item_key_list == ITEM_COUNT,
               "a key for each item, and the NULL that ends them");

const struct item_kind *item_kind_of(enum item_key item)
{
    promise(item < ITEM_COUNT);
    return item == ITEM_NONE ? NULL : &items[item];
}

const char *item_word(enum item_key item)
{
    promise(item < ITEM_COUNT);
    return item == ITEM_NONE ? "" : items[item].key;
}

bool item_among(const enum item_key *among, enum item_key item)
{
    for (; *among != ITEM_NONE; among++)
        if (*among == item)
            return true;
    return false;
}

const struct item_kind *item_find(const char *key)
{
    for (enum item_key item = ITEM_NONE + 1; key != NULL && item < ITEM_COUNT; item++)
        if (text_equal(items[item].key, key))
            return &items[item];
    return NULL;
}
