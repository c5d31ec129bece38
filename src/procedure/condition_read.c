/* condition_read.c - the `when` of a procedure (room: procedure): plain YAML, no
 * formula language. Reads what is asked and whether it can be asked at all;
 * never answers it for a boat. */
#include "condition_reading.h"

#include "condition_keys.h"
#include "text.h"

/* The one condition that all of these come to. */
static const struct condition *conditions_joined(const struct condition_reading *reading,
                                                 const struct gathering *all, struct place place)
{
    if (all->count == 1)
        return all->items[0];
    struct condition *condition = arena_alloc(reading->arena, sizeof *condition);
    condition->kind = CONDITION_ALL;
    condition->place = place;
    condition->children = all->items;
    condition->child_count = all->count;
    return condition;
}

static const struct condition *one_read(const struct condition_reading *reading,
                                        const struct yaml_node *node);

/* The depth limit of the tree bounds how deep this goes. */
static void members_read(const struct condition_reading *reading, const struct yaml_node *list,
                         struct gathering *into)
{
    for (size_t i = 0; i < list->count; i++) {
        const struct condition *member = one_read(reading, list->items[i]);
        into->failed |= member == NULL;
        into->items = arena_grow(reading->arena, into->items, into->count, &into->capacity,
                                 sizeof *into->items);
        into->items[into->count] = member;
        into->count += member != NULL;
    }
}

/* all, any, none: a group of conditions from a list, never from an empty one, of which
 * nobody knows whether it is true. */
static void group_read(const struct condition_reading *reading, const struct yaml_node *node,
                       struct gathering *into, enum condition_kind kind)
{
    struct gathering members = {0};
    if (node->kind != YAML_SEQUENCE || node->count == 0) {
        condition_fail(reading, into, node->place, "write a list: [{...}, {...}]",
                       "all, any and none need a list of conditions");
        return;
    }
    members_read(reading, node, &members);
    into->failed |= members.failed;
    struct condition *group = condition_gather(reading, into, kind, node->place);
    group->children = members.items;
    group->child_count = members.count;
}

static void all_read(const struct condition_reading *reading, const struct yaml_node *node,
                     struct gathering *into)
{
    group_read(reading, node, into, CONDITION_ALL);
}

static void any_read(const struct condition_reading *reading, const struct yaml_node *node,
                     struct gathering *into)
{
    group_read(reading, node, into, CONDITION_ANY);
}

static void none_read(const struct condition_reading *reading, const struct yaml_node *node,
                      struct gathering *into)
{
    group_read(reading, node, into, CONDITION_NONE);
}

/* What stands under it is asked strictly: an unknown answer counts as no. */
static void surely_read(const struct condition_reading *reading, const struct yaml_node *node,
                        struct gathering *into)
{
    const struct condition **child = arena_array(reading->arena, 1, sizeof *child);
    struct condition *condition = condition_gather(reading, into, CONDITION_SURELY, node->place);
    child[0] = one_read(reading, node);
    into->failed |= child[0] == NULL;
    condition->children = child;
    condition->child_count = child[0] == NULL ? 0 : 1;
}

static const struct {
    const char *key;
    void (*read)(const struct condition_reading *reading, const struct yaml_node *node,
                 struct gathering *into);
    const char *about;
    enum condition_takes takes;
    const char *const *choices;
} condition_keys[] = {
    {"fitted", fitted_read, "{fitted: liferaft}: she has it; of a list, all of them",
     TAKES_WORDS, item_key_list},
    {"not_fitted", not_fitted_read, "{not_fitted: [epirb, sart]}: recorded that she has none",
     TAKES_WORDS, item_key_list},
    {"inside", inside_read, "{inside: {fuel_shutoff_diesel: [engine_space]}}: all in those zones",
     TAKES_ITEM_WORDS, zone_key_list},
    {"is", is_read, "{is: {engine_stop: {stop: mechanical}}}: one has that in its record",
     TAKES_ITEM_FIELDS, NULL},
    {"cuts", cuts_read, "{cuts: {battery_isolator_engine: vhf_dsc}}: one takes its "
                        "current; not recorded counts as yes",
     TAKES_ITEM_CUTS, item_key_list},
    {"reach", reach_read, "{reach: {epirb: deck}}: one is reached from open_deck, deck (a locker "
                          "too) or companionway; not recorded counts as no",
     TAKES_ITEM_WORD, reach_words},
    {"beyond", beyond_read, "{beyond: {epirb: deck}}: one is not",
     TAKES_ITEM_WORD, reach_words},
    {"boat", boat_type_read, "{boat: gas}: what she is: monohull, catamaran, trimaran, sail; what "
                             "she has: cooking, gas, dsc, diesel, petrol, petrol_tank, electric, "
                             "outboard, generator, two_engines; of a card of one engine space, "
                             "what is there; of a list, all of them",
     TAKES_WORDS, trait_words},
    {"breaths", breaths_read, "{breaths: 5}: so many first breaths for a drowned person, as her "
                              "base records; not recorded is neither",
     TAKES_WORD, breaths_words},
    {"sting", sting_read, "{sting: vinegar}: what is poured on a sting, as her base records: "
                          "sea_water, vinegar or both; not recorded is none of them",
     TAKES_WORD, sting_words},
    {"tide", tide_read, "{tide: none}: how far the water rises and falls, as her base records: "
                        "none, small or large; not recorded is none of them",
     TAKES_WORD, tide_words},
    {"surely", surely_read, "{surely: {...}}: recorded so; what is not known counts as no and "
                            "holds no card: the next case must be the safe one",
     TAKES_CONDITION, NULL},
    {"all", all_read, "{all: [{...}, {...}]}: so do several keys of one mapping",
     TAKES_CONDITIONS, NULL},
    {"any", any_read, "{any: [{...}, {...}]}: one of them, or more",
     TAKES_CONDITIONS, NULL},
    {"none", none_read, "{none: [{...}, {...}]}: not one of them",
     TAKES_CONDITIONS, NULL},
};

enum { CONDITION_KEY_COUNT = sizeof condition_keys / sizeof condition_keys[0] };

/* A key that no condition has, with the nearest one that exists. */
static void unknown_tell(const struct condition_reading *reading, const struct yaml_pair *pair,
                         struct gathering *into)
{
    const char *names[CONDITION_KEY_COUNT];
    for (size_t i = 0; i < CONDITION_KEY_COUNT; i++)
        names[i] = condition_keys[i].key;
    condition_fail(reading, into, pair->key_place,
                   text_nearest_remedy(reading->arena, pair->key, names, CONDITION_KEY_COUNT,
                                       "a condition knows fitted, not_fitted, inside, is, cuts, "
                                       "reach, beyond, boat, breaths, sting, tide, surely, all, "
                                       "any and none"),
                   text_format(reading->arena, "%s is not a condition", pair->key));
}

/* One key and its value; what it asks is added to those gathered so far. */
static void pair_read(const struct condition_reading *reading, const struct yaml_pair *pair,
                      struct gathering *into)
{
    for (size_t i = 0; i < CONDITION_KEY_COUNT; i++)
        if (text_equal(pair->key, condition_keys[i].key)) {
            condition_keys[i].read(reading, pair->value, into);
            return;
        }
    unknown_tell(reading, pair, into);
}

/* A mapping asks all of its keys, a list all of its members; NULL where something in it
 * is wrong. */
static const struct condition *one_read(const struct condition_reading *reading,
                                        const struct yaml_node *node)
{
    struct gathering all = {0};
    if (node->kind == YAML_SEQUENCE)
        members_read(reading, node, &all);
    for (size_t i = 0; node->kind == YAML_MAPPING && i < node->count; i++)
        pair_read(reading, &node->pairs[i], &all);
    if (all.count == 0 && !all.failed)
        condition_fail(reading, &all, node->place, "write a condition such as {fitted: liferaft}",
                       "a condition is expected here");
    return all.failed ? NULL : conditions_joined(reading, &all, node->place);
}

const char *condition_key_at(size_t index)
{
    return index < CONDITION_KEY_COUNT ? condition_keys[index].key : NULL;
}

const char *condition_about_at(size_t index)
{
    return index < CONDITION_KEY_COUNT ? condition_keys[index].about : NULL;
}

struct condition_key condition_key_row(size_t index)
{
    if (index >= CONDITION_KEY_COUNT)
        return (struct condition_key){0};
    return (struct condition_key){condition_keys[index].key, condition_keys[index].about,
                                  condition_keys[index].takes, condition_keys[index].choices};
}

/* The `when` of a procedure or a case. NULL, and problems told, where it cannot be
 * asked. */
const struct condition *condition_read(const struct yaml_node *node, struct arena *arena,
                                       struct problems *problems)
{
    struct condition_reading reading = {.arena = arena, .problems = problems};
    return one_read(&reading, node);
}
