/* choices.c - the words of choices, and looking up what a field with several holds (room:
 * record). Never reads a file. */
#include "choices.h"

/* The words of both lists stand for the same values. */
#define CHOICE_PLACED(name, word) [name - 1] = word,

const char *const hull_words[] = {HULL_LIST(CHOICE_WORD) NULL};
const char *const rig_words[] = {RIG_LIST(CHOICE_WORD) NULL};
const char *const fuel_words[] = {FUEL_LIST(CHOICE_WORD) NULL};
const char *const drive_words[] = {DRIVE_LIST(CHOICE_WORD) NULL};
const char *const drain_words[] = {DRAIN_LIST(CHOICE_WORD) NULL};
const char *const agent_words[] = {AGENT_LIST(CHOICE_WORD) NULL};
const char *const valve_words[] = {VALVE_LIST(CHOICE_WORD) NULL};
const char *const stop_words[] = {STOP_LIST(CHOICE_WORD) NULL};
const char *const opening_words[] = {OPENING_LIST(CHOICE_WORD) NULL};
const char *const works_words[] = {WORKS_LIST(CHOICE_WORD) NULL};
const char *const feed_words[] = {FEED_LIST(CHOICE_WORD) NULL};
const char *const gas_words[] = {GAS_LIST(CHOICE_WORD) NULL};
const char *const wearer_words[] = {WEARER_LIST(CHOICE_WORD) NULL};
const char *const only_when_words[] = {ONLY_WHEN_LIST(CHOICE_WORD) NULL};
const char *const lanyard_words[] = {LANYARD_LIST(CHOICE_WORD) NULL};
const char *const drives_words[] = {DRIVES_LIST(CHOICE_WORD) NULL};
const char *const chain_end_words[] = {CHAIN_END_LIST(CHOICE_WORD) NULL};
const char *const kit_words[] = {KIT_LIST(CHOICE_WORD) NULL};
const char *const latitude_words[] = {LATITUDE_LIST(CHOICE_PLACED) [HEMISPHERE_BOTH] = NULL};
const char *const longitude_words[] = {LONGITUDE_LIST(CHOICE_PLACED) [HEMISPHERE_BOTH] = NULL};
const char *const sea_area_words[] = {SEA_AREA_LIST(CHOICE_WORD) NULL};
const char *const breaths_words[] = {BREATHS_LIST(CHOICE_WORD) NULL};
const char *const sting_words[] = {STING_LIST(CHOICE_WORD) NULL};
const char *const tide_words[] = {TIDE_LIST(CHOICE_WORD) NULL};
const char *const beacon_cancel_words[] = {BEACON_CANCEL_LIST(CHOICE_WORD) NULL};
const char *const nature_words[] = {NATURE_LIST(CHOICE_WORD) NULL};
const char *const facing_words[] = {FACING_LIST(CHOICE_WORD) NULL};

#define PAPER_WORD(name, key, ...) key,
const char *const paper_words[] = {PAPER_LIST(PAPER_WORD) NULL};

/* A word for each value but the first, which stands for none, and the NULL that ends them. */
#define WORDS_CHECK(words, count) \
    _Static_assert(sizeof words / sizeof *words == (count), "a word for each value")
WORDS_CHECK(hull_words, HULL_COUNT);
WORDS_CHECK(rig_words, RIG_COUNT);
WORDS_CHECK(fuel_words, FUEL_COUNT);
WORDS_CHECK(drive_words, DRIVE_COUNT);
WORDS_CHECK(drain_words, DRAIN_COUNT);
WORDS_CHECK(agent_words, AGENT_COUNT);
WORDS_CHECK(valve_words, VALVE_COUNT);
WORDS_CHECK(stop_words, STOP_COUNT);
WORDS_CHECK(feed_words, FEED_COUNT);
WORDS_CHECK(gas_words, GAS_COUNT);
WORDS_CHECK(wearer_words, WEARER_COUNT);
WORDS_CHECK(lanyard_words, LANYARD_COUNT);
WORDS_CHECK(drives_words, DRIVES_COUNT);
WORDS_CHECK(chain_end_words, CHAIN_END_COUNT);
WORDS_CHECK(kit_words, KIT_COUNT);
WORDS_CHECK(sting_words, STING_COUNT);
WORDS_CHECK(tide_words, TIDE_COUNT);
WORDS_CHECK(sea_area_words, SEA_AREA_COUNT);
WORDS_CHECK(breaths_words, BREATHS_COUNT);
WORDS_CHECK(beacon_cancel_words, BEACON_CANCEL_COUNT);
WORDS_CHECK(nature_words, NATURE_COUNT);
WORDS_CHECK(facing_words, FACING_COUNT);
WORDS_CHECK(paper_words, PAPER_COUNT);
#undef WORDS_CHECK

bool hull_has_zone(enum hull hull, const struct zone *zone)
{
    if (zone->catamaran_only)
        return hull != HULL_MONOHULL && hull != HULL_TRIMARAN;
    return !zone->multihull_only || hull != HULL_MONOHULL;
}

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
