/* condition_atoms.c - what may be asked of a boat's gear, key by key (room:
 * procedure). Never joins conditions: condition_read.c does. */
#include "condition_reading.h"

#include "boat.h"
#include "number.h"
#include "text.h"

const char *const reach_words[] = {REACH_LIST(CHOICE_WORD) NULL};

void condition_fail(const struct condition_reading *reading, struct gathering *into,
                    struct place place, const char *remedy, const char *what)
{
    problem_add(reading->problems, SEVERITY_ERROR, place, remedy, "%s", what);
    into->failed = true;
}

struct condition *condition_gather(const struct condition_reading *reading,
                                   struct gathering *into, enum condition_kind kind,
                                   struct place place)
{
    struct condition *condition = arena_alloc(reading->arena, sizeof *condition);
    into->items = arena_grow(reading->arena, into->items, into->count, &into->capacity,
                             sizeof *into->items);
    condition->kind = kind;
    condition->place = place;
    into->items[into->count++] = condition;
    return condition;
}

/* ---- words ---- */

/* 1 + its index among the known words: the value of an enum that they name; else 0, with
 * an error. */
static unsigned known_word(const struct condition_reading *reading, struct gathering *into,
                           const char *word, struct place place, const char *const *known,
                           const char *what)
{
    unsigned value = choice_find(known, word);
    if (value > 0)
        return value;
    problem_add(reading->problems, SEVERITY_ERROR, place,
                text_nearest_remedy(reading->arena, word, known, text_list_length(known),
                                    "see the reference of keys"),
                "%s is not a known %s", word, what);
    into->failed = true;
    return 0;
}

/* The same of a node, which must be one word and not a list or a mapping. */
static unsigned known_scalar(const struct condition_reading *reading, struct gathering *into,
                             const struct yaml_node *node, const char *const *known,
                             const char *what)
{
    if (node->kind == YAML_SCALAR)
        return known_word(reading, into, node->text, node->place, known, what);
    condition_fail(reading, into, node->place, "write one word",
                   text_format(reading->arena, "expected one %s, not %s", what,
                               yaml_kind_word(node)));
    return 0;
}

/* The item that a pair's key names. */
static enum item_key item_of(const struct condition_reading *reading, struct gathering *into,
                             const struct yaml_pair *pair)
{
    return known_word(reading, into, pair->key, pair->key_place, item_key_list, "item");
}

/* A scalar is a list of one. NULL and *count 0 for an empty list, with an error. */
static const struct yaml_node *const *as_list(const struct condition_reading *reading,
                                              struct gathering *into,
                                              const struct yaml_node *const *node, size_t *count)
{
    *count = (*node)->kind == YAML_SEQUENCE ? (*node)->count : 1;
    if (*count == 0)
        condition_fail(reading, into, (*node)->place, "name at least one, or take the key out",
                       "the list is empty");
    return (*node)->kind == YAML_SEQUENCE ? (*node)->items : node;
}

/* Tells how it is to be written where it is none, or an empty one. */
static bool is_mapping(const struct condition_reading *reading, struct gathering *into,
                       const struct yaml_node *node, const char *shape)
{
    if (node->kind == YAML_MAPPING && node->count > 0)
        return true;
    condition_fail(reading, into, node->place, shape,
                   text_format(reading->arena, "expected a mapping, not %s",
                               node->kind == YAML_MAPPING ? "an empty one" : yaml_kind_word(node)));
    return false;
}

/* ---- fitted, not_fitted, boat, breaths, sting, tide ---- */

/* One condition an item: a list is asked as "all of them". */
static void condition_items_read(const struct condition_reading *reading,
                                 const struct yaml_node *node,
                                 struct gathering *into, enum condition_kind kind)
{
    size_t count = 0;
    const struct yaml_node *const *items = as_list(reading, into, &node, &count);
    for (size_t i = 0; i < count; i++) {
        enum item_key item = known_scalar(reading, into, items[i], item_key_list, "item");
        if (item != ITEM_NONE)
            condition_gather(reading, into, kind, items[i]->place)->item = item;
    }
}

void fitted_read(const struct condition_reading *reading, const struct yaml_node *node,
                        struct gathering *into)
{
    condition_items_read(reading, node, into, CONDITION_FITTED);
}

void not_fitted_read(const struct condition_reading *reading,
                            const struct yaml_node *node, struct gathering *into)
{
    condition_items_read(reading, node, into, CONDITION_NOT_FITTED);
}

/* A list is asked as "all of them". */
void boat_type_read(const struct condition_reading *reading, const struct yaml_node *node,
                           struct gathering *into)
{
    size_t count = 0;
    const struct yaml_node *const *nodes = as_list(reading, into, &node, &count);
    for (size_t i = 0; i < count; i++) {
        enum trait trait = known_scalar(reading, into, nodes[i], trait_words, "kind of boat");
        if (trait != TRAIT_NONE)
            condition_gather(reading, into, CONDITION_BOAT, nodes[i]->place)->trait = trait;
    }
}

void breaths_read(const struct condition_reading *reading, const struct yaml_node *node,
                  struct gathering *into)
{
    enum breaths breaths = known_scalar(reading, into, node, breaths_words, "number of breaths");
    if (breaths != BREATHS_NONE)
        condition_gather(reading, into, CONDITION_BREATHS, node->place)->breaths = breaths;
}

void sting_read(const struct condition_reading *reading, const struct yaml_node *node,
                struct gathering *into)
{
    enum sting sting = known_scalar(reading, into, node, sting_words, "remedy for a sting");
    if (sting != STING_NONE)
        condition_gather(reading, into, CONDITION_STING, node->place)->sting = sting;
}

void tide_read(const struct condition_reading *reading, const struct yaml_node *node,
               struct gathering *into)
{
    enum tide tide = known_scalar(reading, into, node, tide_words, "tide");
    if (tide != TIDE_UNSAID)
        condition_gather(reading, into, CONDITION_TIDE, node->place)->tide = tide;
}

/* ---- inside, cuts, reach, is ---- */

/* The zones that a piece of gear must lie in; unknown ones are told and make the whole
 * fail. */
static void zones_read(const struct condition_reading *reading, const struct yaml_node *node,
                       struct gathering *into, struct condition *condition)
{
    const struct yaml_node *const *nodes = as_list(reading, into, &node, &condition->zone_count);
    enum zone_key *zones = arena_array(reading->arena, condition->zone_count, sizeof *zones);
    for (size_t i = 0; i < condition->zone_count; i++)
        zones[i] = known_scalar(reading, into, nodes[i], zone_key_list, "zone");
    condition->zones = zones;
}

/* Items with the zones each must lie in: a condition an item. */
void inside_read(const struct condition_reading *reading, const struct yaml_node *node,
                        struct gathering *into)
{
    if (!is_mapping(reading, into, node, "write inside: {item: [zones]}"))
        return;
    for (size_t i = 0; i < node->count; i++) {
        const struct yaml_pair *pair = &node->pairs[i];
        enum item_key item = item_of(reading, into, pair);
        struct condition *condition =
            condition_gather(reading, into, CONDITION_INSIDE, pair->key_place);
        condition->item = item;
        zones_read(reading, pair->value, into, condition);
    }
}

/* Has such gear the field? Else a case that asks for it would never come. */
static bool own_field(const struct condition_reading *reading, enum item_key item,
                      enum gear_field field, struct place place, struct gathering *into)
{
    if (item == ITEM_NONE || item_field(item, field) != BELONGS_NOT)
        return true;
    problem_add(reading->problems, SEVERITY_ERROR, place,
                item_field_remedy(item, field, reading->arena), "%s does not belong to %s",
                gear_field_word(field), item_word(item));
    into->failed = true;
    return false;
}

/* Items with the item whose current each cuts: a condition a pair. */
void cuts_read(const struct condition_reading *reading, const struct yaml_node *node,
                      struct gathering *into)
{
    if (!is_mapping(reading, into, node, "write cuts: {item: other item}"))
        return;
    for (size_t i = 0; i < node->count; i++) {
        const struct yaml_pair *pair = &node->pairs[i];
        enum item_key item = item_of(reading, into, pair);
        own_field(reading, item, GEAR_cuts, pair->key_place, into);
        enum item_key other = known_scalar(reading, into, pair->value, item_key_list, "item");
        struct condition *condition =
            condition_gather(reading, into, CONDITION_CUTS, pair->key_place);
        condition->item = item;
        condition->other = other;
    }
}

/* reach and beyond are written alike: items with how far one goes for each. */
static void distance_read(const struct condition_reading *reading, const struct yaml_node *node,
                          enum condition_kind kind, struct gathering *into)
{
    if (!is_mapping(reading, into, node, "write it as {item: deck}"))
        return;
    for (size_t i = 0; i < node->count; i++) {
        const struct yaml_pair *pair = &node->pairs[i];
        enum item_key item = item_of(reading, into, pair);
        enum reach reach = known_scalar(reading, into, pair->value, reach_words, "reach");
        struct condition *condition =
            condition_gather(reading, into, kind, pair->key_place);
        condition->item = item;
        condition->reach = reach;
    }
}

void reach_read(const struct condition_reading *reading, const struct yaml_node *node,
                struct gathering *into)
{
    distance_read(reading, node, CONDITION_REACH, into);
}

void beyond_read(const struct condition_reading *reading, const struct yaml_node *node,
                 struct gathering *into)
{
    distance_read(reading, node, CONDITION_BEYOND, into);
}

/* The remedy for a field that gear does not have: the nearest that it has. */
static const char *field_nearest(const struct condition_reading *reading, const char *key)
{
    const struct field_table *table = equipment_fields();
    const char **keys = arena_array(reading->arena, table->count, sizeof *keys);
    for (size_t i = 0; i < table->count; i++)
        keys[i] = table->fields[i].key;
    return text_nearest_remedy(reading->arena, key, keys, table->count,
                               "name a field that gear has in a boat file");
}

/* Can this field ever hold this value? One that it cannot would be a case that
 * never comes. */
static bool value_fits(const struct condition_reading *reading, struct gathering *into,
                       const struct field *field, const struct yaml_node *value)
{
    static const char *const answers[] = {"yes", "no", NULL};
    int64_t milli;
    switch (field->kind) {
    case FIELD_CHOICE:
        return known_scalar(reading, into, value, field->choices, field->key) > 0;
    case FIELD_ANSWER:
        return known_scalar(reading, into, value, answers, "answer") > 0;
    case FIELD_NUMBER:
        if (value->kind == YAML_SCALAR && number_parse_milli(value->text, &milli))
            return true;
        condition_fail(reading, into, value->place, "write a number",
                       text_format(reading->arena, "%s needs a number", field->key));
        return false;
    case FIELD_TEXT:
        if (value->kind == YAML_SCALAR && !text_empty(value->text))
            return true;
        condition_fail(reading, into, value->place, "write one value",
                       text_format(reading->arena, "%s needs one value", field->key));
        return false;
    case FIELD_WORDING: case FIELD_WORDINGS:
        condition_fail(reading, into, value->place, "ask about a field with choices",
                       text_format(reading->arena, "%s is written in words of any language: `is` "
                                   "cannot ask about it", field->key));
        return false;
    case FIELD_CHOICES:
        if (field->choices != zone_key_list && field->choices != item_key_list)
            return known_scalar(reading, into, value, field->choices, field->key) > 0;
        break;
    case FIELD_DATE: case FIELD_LIST: case FIELD_WORDS: case FIELD_PAIR:
    case FIELD_PAIRED: case FIELD_BY_CHOICE:
    case FIELD_SECTION: case FIELD_ENTRIES: case FIELD_NODE:
        break;
    }
    condition_fail(reading, into, value->place,
                   "`inside` and `cuts` ask about places and currents",
                   text_format(reading->arena, "`is` cannot ask about %s", field->key));
    return false;
}

/* The field a pair's key names, where gear of this kind has it; else told, and none. */
static enum gear_field field_asked(const struct condition_reading *reading, enum item_key item,
                                   const struct yaml_pair *pair, struct gathering *into)
{
    enum gear_field field = gear_field_find(pair->key);
    if (field != GEAR_FIELD_NONE)
        return own_field(reading, item, field, pair->key_place, into) ? field : GEAR_FIELD_NONE;
    problem_add(reading->problems, SEVERITY_ERROR, pair->key_place,
                field_nearest(reading, pair->key), "%s is not a field of gear", pair->key);
    into->failed = true;
    return GEAR_FIELD_NONE;
}

/* One field of one item, with the value it must have, kept as it is written. */
static void field_value_read(const struct condition_reading *reading, enum item_key item,
                             const struct yaml_pair *pair, struct gathering *into)
{
    enum gear_field field = field_asked(reading, item, pair, into);
    if (field == GEAR_FIELD_NONE ||
        !value_fits(reading, into, gear_field_row(field), pair->value))
        return;
    struct condition *condition = condition_gather(reading, into, CONDITION_IS, pair->key_place);
    condition->item = item;
    condition->field = field;
    condition->value = pair->value->text;
}

/* Items with fields with values, such as {engine_stop: {stop: mechanical}}: a condition
 * a field. */
void is_read(const struct condition_reading *reading, const struct yaml_node *node,
                    struct gathering *into)
{
    static const char shape[] = "write is: {item: {field: value}}";
    if (!is_mapping(reading, into, node, shape))
        return;
    for (size_t i = 0; i < node->count; i++) {
        const struct yaml_pair *pair = &node->pairs[i];
        enum item_key item = item_of(reading, into, pair);
        if (!is_mapping(reading, into, pair->value, shape))
            continue;
        for (size_t k = 0; k < pair->value->count; k++)
            field_value_read(reading, item, &pair->value->pairs[k], into);
    }
}
