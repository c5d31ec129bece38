/* schema_gear.c - what follows from the item of an entry of equipment, as a schema (room: app): the
 * letter of its tag, the fields that are facts of such gear, the states that its handling is told
 * by. Never says what gear a boat has. */
#include "schema.h"

#include "boat.h"
#include "item_states.h"

bool schema_is_gear(const struct field_table *table)
{
    const struct field_table *gear = equipment_fields();
    for (size_t i = 0; i < gear->count; i++)
        if (i >= table->count || !text_equal(table->fields[i].key, gear->fields[i].key))
            return false;
    return true;
}

/* Items that have something in common. */
struct item_group {
    const char *words[ITEM_COUNT];
    size_t count;
};

/* {"if": {the item is of the group}, "then": {"properties": { ...: what is told up to the
 * second. */
static void rule_begin(struct schema *schema, const struct item_group *group)
{
    schema_open(schema, NULL, '{');
    schema_open(schema, "if", '{');
    schema_raw(schema, "required", "[\"%s\"]", gear_field_word(GEAR_item));
    schema_open(schema, "properties", '{');
    schema_open(schema, gear_field_word(GEAR_item), '{');
    schema_words(schema, "enum", group->words, group->count);
    schema_close(schema, '}');
    schema_close(schema, '}');
    schema_close(schema, '}');
    schema_open(schema, "then", '{');
    schema_open(schema, "properties", '{');
}

static void rule_end(struct schema *schema)
{
    schema_close(schema, '}');
    schema_close(schema, '}');
    schema_close(schema, '}');
}

/* ---- fields ---- */

/* {"if": {it has the field, and is none of those that may}, "then": it may not}. */
static void field_rule_add(struct schema *schema, enum gear_field field)
{
    const char *key = gear_field_word(field), *item_key = gear_field_word(GEAR_item);
    struct item_group group = {.count = 0};
    for (enum item_key item = ITEM_NONE + 1; item < ITEM_COUNT; item++)
        if (item_field(item, field) != BELONGS_NOT)
            group.words[group.count++] = item_word(item);
    schema_open(schema, NULL, '{');
    schema_open(schema, "if", '{');
    schema_raw(schema, "required", "[\"%s\", \"%s\"]", key, item_key);
    schema_open(schema, "properties", '{');
    schema_raw(schema, key, "{\"not\": {\"$ref\": \"#/$defs/empty\"}}");
    schema_open(schema, item_key, '{');
    schema_choice(schema, item_key_list, item_key);
    schema_open(schema, "not", '{');
    schema_words(schema, "enum", group.words, group.count);
    schema_close(schema, '}');
    schema_close(schema, '}');
    schema_close(schema, '}');
    schema_close(schema, '}');
    schema_raw(schema, "then", "{\"properties\": {\"%s\": false}}", key);
    schema_close(schema, '}');
}

/* ---- tags ---- */

static void tag_rule_add(struct schema *schema, enum item_class class)
{
    struct item_group group = {.count = 0};
    for (enum item_key item = ITEM_NONE + 1; item < ITEM_COUNT; item++)
        if (item_kind_of(item)->class == class)
            group.words[group.count++] = item_word(item);
    rule_begin(schema, &group);
    schema_raw(schema, gear_field_word(GEAR_tag), "{\"pattern\": \"^%c[1-9][0-9]?$\"}",
               (char)class);
    rule_end(schema);
}

/* ---- states ---- */

static bool is_told_by(enum item_key item, enum end_state state)
{
    return item_state_field(item, state) == GEAR_how;
}

static bool is_handled_alike(enum item_key one, enum item_key other)
{
    for (enum end_state state = STATE_ANY + 1; state < STATE_COUNT; state++)
        if (is_told_by(one, state) != is_told_by(other, state))
            return false;
    return item_is_contrary(one) == item_is_contrary(other);
}

/* One text is the handling of gear without contrary states alone. */
static void how_add(struct schema *schema, enum item_key item)
{
    schema_open(schema, gear_field_word(GEAR_how), '{');
    if (item_is_contrary(item)) {
        schema_raw(schema, "anyOf",
                   "[{\"type\": \"object\"}, {\"$ref\": \"#/$defs/empty\"}]");
        schema_keys(schema, end_state_words);
    }
    schema_open(schema, "properties", '{');
    for (enum end_state state = STATE_ANY + 1; state < STATE_COUNT; state++)
        if (!is_told_by(item, state))
            schema_refer(schema, end_state_words[state - 1], "not_hers");
    schema_close(schema, '}');
    schema_close(schema, '}');
}

/* One rule for all items of the same states, at the first of them. */
static void states_rule_add(struct schema *schema, enum item_key item)
{
    struct item_group group = {.count = 0};
    for (enum item_key before = ITEM_NONE + 1; before < item; before++)
        if (is_handled_alike(before, item))
            return;
    for (enum item_key like = item; like < ITEM_COUNT; like++)
        if (is_handled_alike(like, item))
            group.words[group.count++] = item_word(like);
    rule_begin(schema, &group);
    how_add(schema, item);
    rule_end(schema);
}

/* ---- all of them ---- */

/* Every piece has a tag, and the fixed radio has a section of its own. */
static void each_entry_add(struct schema *schema)
{
    schema_open(schema, NULL, '{');
    schema_raw(schema, "required", "[\"%s\"]", gear_field_word(GEAR_tag));
    schema_open(schema, "properties", '{');
    schema_raw(schema, gear_field_word(GEAR_tag), "{\"not\": {\"$ref\": \"#/$defs/empty\"}}");
    schema_raw(schema, gear_field_word(GEAR_item),
               "{\"not\": {\"const\": \"%s\"}, \"errorMessage\": \"the fixed radio is recorded "
               "under radio, not in equipment\"}", item_word(ITEM_vhf_dsc));
    schema_close(schema, '}');
    schema_close(schema, '}');
}

void schema_gear_define(struct schema *schema)
{
    static const enum item_class classes[] = {ITEM_FIRE, ITEM_RESCUE, ITEM_CONTROL};
    schema_raw(schema, "not_hers",
               "{\"not\": {\"not\": {\"enum\": [\"\", null]}}, \"errorMessage\": "
               "\"does not belong to this gear\"}");
    schema_open(schema, "by_item", '{');
    schema_open(schema, "allOf", '[');
    each_entry_add(schema);
    for (size_t i = 0; i < sizeof classes / sizeof *classes; i++)
        tag_rule_add(schema, classes[i]);
    for (enum gear_field field = GEAR_FIELD_NONE + 1; field < GEAR_FIELD_COUNT; field++)
        if (!field_is_general(field))
            field_rule_add(schema, field);
    for (enum item_key item = ITEM_NONE + 1; item < ITEM_COUNT; item++)
        states_rule_add(schema, item);
    schema_close(schema, ']');
    schema_close(schema, '}');
}
