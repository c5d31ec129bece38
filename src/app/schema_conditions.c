/* schema_conditions.c - what may stand under `when` of a procedure, as a schema (room: app), from
 * the keys by which conditions are read. */
#include "schema.h"

#include "boat.h"
#include "condition_keys.h"
#include "item_fields.h"
#include "zone.h"

/* ---- what a piece has in its record ---- */

static bool can_be_asked(const struct field *field)
{
    return field->kind == FIELD_CHOICE || field->kind == FIELD_ANSWER ||
           field->kind == FIELD_NUMBER || field->kind == FIELD_TEXT ||
           (field->kind == FIELD_CHOICES && field->choices != zone_key_list &&
            field->choices != item_key_list);
}

static void asked_add(struct schema *schema, const struct field *field)
{
    schema_open(schema, field->key, '{');
    if (!text_empty(field->about))
        schema_text(schema, "description", field->about);
    if (field->kind == FIELD_ANSWER)
        schema_text(schema, "$ref", "#/$defs/answer");
    else if (field->kind == FIELD_NUMBER)
        schema_text(schema, "$ref", "#/$defs/decimal");
    else if (field->kind == FIELD_TEXT)
        schema_text(schema, "$ref", "#/$defs/text");
    else
        schema_choice(schema, field->choices, field->key);
    schema_close(schema, '}');
}

/* Of all items but those that have it: "^(?!(epirb|sart)$)". */
static const char *others_pattern(enum gear_field field, struct arena *arena)
{
    struct text_builder out = text_builder_in(arena);
    for (enum item_key item = ITEM_NONE + 1; item < ITEM_COUNT; item++)
        if (item_field(item, field) != BELONGS_NOT)
            text_add_format(&out, "%s%s", out.length == 0 ? "^(?!(" : "|", item_word(item));
    text_add(&out, out.length == 0 ? "" : ")$)");
    return out.at;
}

static void item_fields_define(struct schema *schema)
{
    const struct field_table *gear = equipment_fields();
    schema_open(schema, "asked_of_item", '{');
    schema_text(schema, "type", "object");
    schema_raw(schema, "minProperties", "1");
    schema_raw(schema, "additionalProperties", "false");
    schema_open(schema, "properties", '{');
    for (size_t i = 0; i < gear->count; i++)
        if (can_be_asked(&gear->fields[i]))
            asked_add(schema, &gear->fields[i]);
    schema_close(schema, '}');
    schema_close(schema, '}');
}

/* ---- what stands under a key ---- */

static void items_of_add(struct schema *schema)
{
    schema_text(schema, "type", "object");
    schema_raw(schema, "minProperties", "1");
    schema_open(schema, "propertyNames", '{');
    schema_choice(schema, item_key_list, gear_field_word(GEAR_item));
    schema_close(schema, '}');
}

static void item_fields_add(struct schema *schema)
{
    items_of_add(schema);
    schema_refer(schema, "additionalProperties", "asked_of_item");
    schema_open(schema, "patternProperties", '{');
    for (enum gear_field field = GEAR_FIELD_NONE + 1; field < GEAR_FIELD_COUNT; field++)
        if (!field_is_general(field) && can_be_asked(gear_field_row(field)))
            schema_raw(schema, others_pattern(field, schema->arena),
                       "{\"$ref\": \"#/$defs/asked_of_item\", \"properties\": {\"%s\": false}}",
                       gear_field_word(field));
    schema_close(schema, '}');
}

/* A word, or a list of at least one. */
static void word_or_words_add(struct schema *schema, const struct condition_key *key)
{
    schema_open(schema, "anyOf", '[');
    schema_open(schema, NULL, '{');
    schema_choice(schema, key->choices, key->key);
    schema_close(schema, '}');
    schema_open(schema, NULL, '{');
    schema_text(schema, "type", "array");
    schema_raw(schema, "minItems", "1");
    schema_open(schema, "items", '{');
    schema_choice(schema, key->choices, key->key);
    schema_close(schema, '}');
    schema_close(schema, '}');
    schema_close(schema, ']');
}

static void item_words_add(struct schema *schema, const struct condition_key *key)
{
    items_of_add(schema);
    schema_open(schema, "additionalProperties", '{');
    if (key->takes == TAKES_ITEM_WORDS)
        word_or_words_add(schema, key);
    else
        schema_choice(schema, key->choices, key->key);
    schema_close(schema, '}');
}

/* The currents of gear that cuts any. */
static void item_cuts_add(struct schema *schema, const struct condition_key *key)
{
    const char *words[ITEM_COUNT];
    size_t count = 0;
    for (enum item_key item = ITEM_NONE + 1; item < ITEM_COUNT; item++)
        if (item_field(item, GEAR_cuts) != BELONGS_NOT)
            words[count++] = item_word(item);
    schema_text(schema, "type", "object");
    schema_raw(schema, "minProperties", "1");
    schema_open(schema, "propertyNames", '{');
    schema_words(schema, "enum", words, count);
    schema_close(schema, '}');
    schema_open(schema, "additionalProperties", '{');
    schema_choice(schema, key->choices, key->key);
    schema_close(schema, '}');
}

static void condition_value_add(struct schema *schema, const struct condition_key *key)
{
    switch (key->takes) {
    case TAKES_WORD: schema_choice(schema, key->choices, key->key); break;
    case TAKES_WORDS: word_or_words_add(schema, key); break;
    case TAKES_ITEM_WORD: case TAKES_ITEM_WORDS: item_words_add(schema, key); break;
    case TAKES_ITEM_CUTS: item_cuts_add(schema, key); break;
    case TAKES_ITEM_FIELDS: item_fields_add(schema); break;
    case TAKES_CONDITION: schema_text(schema, "$ref", "#/$defs/condition"); break;
    case TAKES_CONDITIONS:
        schema_text(schema, "type", "array");
        schema_raw(schema, "minItems", "1");
        schema_refer(schema, "items", "condition");
        break;
    }
}

static void condition_keys_add(struct schema *schema)
{
    struct condition_key key;
    schema_open(schema, NULL, '{');
    schema_text(schema, "type", "object");
    schema_raw(schema, "minProperties", "1");
    schema_raw(schema, "additionalProperties", "false");
    schema_open(schema, "properties", '{');
    for (size_t i = 0; (key = condition_key_row(i)).key != NULL; i++) {
        schema_open(schema, key.key, '{');
        schema_text(schema, "description", key.about);
        condition_value_add(schema, &key);
        schema_close(schema, '}');
    }
    schema_close(schema, '}');
    schema_close(schema, '}');
}

void schema_conditions_define(struct schema *schema)
{
    item_fields_define(schema);
    schema_open(schema, "condition", '{');
    schema_open(schema, "anyOf", '[');
    condition_keys_add(schema);
    schema_raw(schema, NULL, "{\"type\": \"array\", \"minItems\": 1, \"items\": "
                             "{\"$ref\": \"#/$defs/condition\"}}");
    schema_close(schema, ']');
    schema_close(schema, '}');
}
