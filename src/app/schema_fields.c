/* schema_fields.c - tables of fields as definitions of a schema (room: app). What is new in a table
 * is in the schema without more. Knows no field. */
#include "schema.h"

#include "promise.h"

#include <string.h>

/* ---- names of definitions ---- */

/* "an_equipment_item" without its article. */
static const char *name_of_what(const char *what, struct arena *arena)
{
    static const char *const articles[] = {"a ", "an ", "the "};
    struct text_builder name = text_builder_in(arena);
    for (size_t i = 0; i < sizeof articles / sizeof *articles; i++)
        what += text_begins(what, articles[i]) ? strlen(articles[i]) : 0;
    for (; *what != '\0'; what++)
        if (*what != '\'')
            text_add_bytes(&name, *what == ' ' ? "_" : what, 1);
    return name.at;
}

static bool is_name_taken(const struct schema *schema, const char *name)
{
    for (size_t i = 0; i < schema->table_count; i++)
        if (text_equal(schema->table_names[i], name))
            return true;
    return false;
}

const char *schema_table(struct schema *schema, const struct field_table *table)
{
    const char *plain = name_of_what(table->what, schema->arena), *name = plain;
    for (size_t i = 0; i < schema->table_count; i++)
        if (schema->tables[i] == table)
            return schema->table_names[i];
    for (size_t number = 2; is_name_taken(schema, name); number++)
        name = text_format(schema->arena, "%s_%zu", plain, number);
    promise(schema->table_count < SCHEMA_PARTS_MOST);
    schema->tables[schema->table_count] = table;
    return schema->table_names[schema->table_count++] = name;
}

/* ---- one value ---- */

static void length_add(struct schema *schema, const struct schema_form *form)
{
    if (form != NULL && form->most > 0)
        schema_raw(schema, "maxLength", "%d", form->most);
}

static void text_value_add(struct schema *schema, const struct field_table *table,
                           const struct field *field)
{
    const struct schema_form *form = schema_form_of(table, field);
    if (form == NULL || form->pattern == NULL) {
        schema_text(schema, "$ref", "#/$defs/text");
        length_add(schema, form);
        return;
    }
    schema_open(schema, "anyOf", '[');
    schema_open(schema, NULL, '{');
    schema_text(schema, "type", "string");
    schema_text(schema, "pattern", form->pattern);
    schema_raw(schema, "allOf", "[{\"$ref\": \"#/$defs/text\"}]");
    schema_close(schema, '}');
    if (form->number == NULL)
        schema_refer(schema, NULL, "text_as_other");
    else
        schema_raw(schema, NULL, "%s", form->number);
    schema_close(schema, ']');
}

/* A field of one text, as each entry of a list is one; of the same form. */
static void one_of_list_add(struct schema *schema, const char *key,
                            const struct field_table *table, const struct field *field)
{
    schema_open(schema, key, '{');
    if (field->kind == FIELD_CHOICES)
        schema_choice(schema, field->choices, field->key);
    else if (field->kind == FIELD_WORDINGS)
        schema_text(schema, "$ref", "#/$defs/wording");
    else
        text_value_add(schema, table, field);
    schema_close(schema, '}');
}

static void list_add_schema(struct schema *schema, const struct field_table *table,
                            const struct field *field)
{
    schema_text(schema, "type", "array");
    schema_raw(schema, "uniqueItems", "true");
    one_of_list_add(schema, "items", table, field);
}

/* A list, or one alone. */
static void list_or_one_add(struct schema *schema, const struct field_table *table,
                            const struct field *field)
{
    schema_open(schema, "anyOf", '[');
    schema_open(schema, NULL, '{');
    list_add_schema(schema, table, field);
    schema_close(schema, '}');
    one_of_list_add(schema, NULL, table, field);
    schema_close(schema, ']');
}

/* torch, or {seacock: shut}. */
static void paired_one_add(struct schema *schema, const struct field *field)
{
    schema_open(schema, NULL, '{');
    schema_choice(schema, field->choices, field->key);
    schema_close(schema, '}');
    schema_open(schema, NULL, '{');
    schema_text(schema, "type", "object");
    schema_open(schema, "propertyNames", '{');
    schema_choice(schema, field->choices, field->key);
    schema_close(schema, '}');
    schema_open(schema, "additionalProperties", '{');
    schema_choice(schema, field->with, "state");
    schema_close(schema, '}');
    schema_close(schema, '}');
}

static void paired_add_schema(struct schema *schema, const struct field *field)
{
    schema_open(schema, "anyOf", '[');
    schema_open(schema, NULL, '{');
    schema_text(schema, "type", "array");
    schema_raw(schema, "uniqueItems", "true");
    schema_open(schema, "items", '{');
    schema_open(schema, "anyOf", '[');
    paired_one_add(schema, field);
    schema_close(schema, ']');
    schema_close(schema, '}');
    schema_close(schema, '}');
    paired_one_add(schema, field);
    schema_close(schema, ']');
}

/* A wording, or one for each choice. Words of choices may look like codes of languages. */
static void by_choice_add(struct schema *schema, const struct field *field)
{
    schema_open(schema, "anyOf", '[');
    schema_open(schema, NULL, '{');
    schema_text(schema, "type", "object");
    schema_raw(schema, "minProperties", "1");
    schema_keys(schema, field->choices);
    schema_open(schema, "properties", '{');
    for (size_t i = 0; field->choices[i] != NULL; i++)
        schema_raw(schema, field->choices[i],
                   "{\"anyOf\": [{\"$ref\": \"#/$defs/wording\"}, {\"$ref\": \"#/$defs/empty\"}]}");
    schema_close(schema, '}');
    schema_close(schema, '}');
    schema_open(schema, NULL, '{');
    schema_text(schema, "$ref", "#/$defs/wording");
    schema_open(schema, "propertyNames", '{');
    schema_open(schema, "not", '{');
    schema_words(schema, "enum", field->choices, text_list_length(field->choices));
    schema_close(schema, '}');
    schema_close(schema, '}');
    schema_close(schema, '}');
    schema_close(schema, ']');
}

/* ---- parts ---- */

/* One mapping of the part, or the word that may stand for it. */
static void part_one_add(struct schema *schema, const struct field_part *part)
{
    const char *name = schema_table(schema, part->table);
    const struct field *lone = part->lone == NULL ? NULL : field_find(part->table, part->lone);
    if (lone == NULL) {
        schema_text(schema, "$ref", text_format(schema->arena, "#/$defs/%s", name));
        return;
    }
    schema_open(schema, "anyOf", '[');
    schema_refer(schema, NULL, name);
    schema_open(schema, NULL, '{');
    schema_value(schema, part->table, lone);
    schema_close(schema, '}');
    schema_close(schema, ']');
}

static void entries_list_add(struct schema *schema, const struct field_part *part)
{
    schema_text(schema, "type", "array");
    schema_open(schema, "items", '{');
    part_one_add(schema, part);
    schema_close(schema, '}');
}

static void entries_add_schema(struct schema *schema, const struct field_part *part)
{
    if (!part->one_or_many) {
        entries_list_add(schema, part);
        return;
    }
    schema_open(schema, "anyOf", '[');
    schema_open(schema, NULL, '{');
    part_one_add(schema, part);
    schema_close(schema, '}');
    schema_open(schema, NULL, '{');
    entries_list_add(schema, part);
    schema_close(schema, '}');
    schema_close(schema, ']');
}

static void node_add(struct schema *schema, const struct field *field)
{
    if (field->part == NULL)
        schema_text(schema, "$ref", "#/$defs/condition");
    else
        part_one_add(schema, field->part);
}

void schema_value(struct schema *schema, const struct field_table *table,
                  const struct field *field)
{
    switch (field->kind) {
    case FIELD_TEXT: text_value_add(schema, table, field); break;
    case FIELD_WORDING:
        schema_text(schema, "$ref", "#/$defs/wording");
        length_add(schema, schema_form_of(table, field));
        break;
    case FIELD_CHOICE: schema_choice(schema, field->choices, field->key); break;
    case FIELD_CHOICES: case FIELD_WORDS: list_or_one_add(schema, table, field); break;
    case FIELD_PAIRED: paired_add_schema(schema, field); break;
    case FIELD_BY_CHOICE: by_choice_add(schema, field); break;
    case FIELD_NUMBER: schema_number(schema, field); break;
    case FIELD_ANSWER: schema_text(schema, "$ref", "#/$defs/answer"); break;
    case FIELD_DATE: schema_text(schema, "$ref", "#/$defs/date"); break;
    case FIELD_LIST: case FIELD_WORDINGS: list_add_schema(schema, table, field); break;
    case FIELD_PAIR:
        schema_text(schema, "type", "array");
        schema_raw(schema, "minItems", "2");
        schema_raw(schema, "maxItems", "2");
        schema_refer(schema, "items", "decimal");
        break;
    case FIELD_SECTION: part_one_add(schema, field->part); break;
    case FIELD_ENTRIES: entries_add_schema(schema, field->part); break;
    case FIELD_NODE: node_add(schema, field); break;
    }
}

/* ---- a key and its table ---- */

/* May the key stand there without a value, as one that is yet to be filled in? */
static bool may_be_empty(const struct field_table *table, const struct field *field)
{
    return (!field->required || table->partial) &&
           (field->kind != FIELD_NODE || field->part != NULL);
}

void schema_field(struct schema *schema, const struct field_table *table,
                  const struct field *field)
{
    const char *example = schema_example(table, field, schema->arena);
    schema_open(schema, field->key, '{');
    if (!text_empty(field->about))
        schema_text(schema, "description", field->about);
    if (example != NULL)
        schema_raw(schema, "examples", "[%s]", example);
    if (may_be_empty(table, field)) {
        schema_open(schema, "anyOf", '[');
        schema_open(schema, NULL, '{');
        schema_value(schema, table, field);
        schema_close(schema, '}');
        schema_refer(schema, NULL, "empty");
        schema_close(schema, ']');
    } else {
        schema_value(schema, table, field);
    }
    schema_close(schema, '}');
}

/* Does the key stand for all that are names? */
static bool is_any_id(const struct field *field)
{
    return field->key[0] == '{';
}

/* Keys that are needed, of one sort; ended by NULL. */
enum key_sort { KEYS_PLAIN, KEYS_TAKEN_FOR_ANSWERS };

static const char *const *needed_keys(const struct schema *schema,
                                      const struct field_table *table, enum key_sort sort)
{
    const char **keys = arena_array(schema->arena, table->count + 1, sizeof *keys);
    size_t count = 0;
    for (size_t i = 0; !table->partial && i < table->count; i++) {
        const struct field *field = &table->fields[i];
        bool plain = !schema_taken_for_answer(field->key);
        if (schema_need_of(table, field) == KEY_MUST_BE && plain == (sort == KEYS_PLAIN))
            keys[count++] = field->key;
    }
    return keys;
}

static void required_add(struct schema *schema, const char *const *keys)
{
    if (keys[0] != NULL)
        schema_words(schema, "required", keys, text_list_length(keys));
}

/* Of a table with keys that some parsers take for true and false, as yes and no: such a key is then
 * no text, and is not missing. To an editor each key is a text. */
static void odd_keys_add(struct schema *schema, const struct field_table *table)
{
    const char **keys = arena_array(schema->arena, table->count + 1, sizeof *keys);
    for (size_t i = 0; i < table->count; i++)
        keys[i] = table->fields[i].key;
    schema_keys(schema, keys);
    schema_raw(schema, "if", "{\"propertyNames\": {\"type\": \"string\"}}");
    schema_open(schema, "then", '{');
    required_add(schema, needed_keys(schema, table, KEYS_TAKEN_FOR_ANSWERS));
    schema_close(schema, '}');
}

static bool has_odd_keys(const struct field_table *table)
{
    for (size_t i = 0; i < table->count; i++)
        if (schema_taken_for_answer(table->fields[i].key))
            return true;
    return false;
}

static void ids_add(struct schema *schema, const struct field_table *table)
{
    schema_raw(schema, "propertyNames", "{\"pattern\": \"^[a-z][a-z0-9_]*$\"}");
    schema_open(schema, "additionalProperties", '{');
    schema_value(schema, table, &table->fields[0]);
    schema_close(schema, '}');
}

static void keys_add_schema(struct schema *schema, const struct field_table *table)
{
    required_add(schema, needed_keys(schema, table, KEYS_PLAIN));
    if (has_odd_keys(table))
        odd_keys_add(schema, table);
    else
        schema_raw(schema, "additionalProperties", "false");
    schema_open(schema, "properties", '{');
    for (size_t i = 0; i < table->count; i++)
        if (!table->fields[i].own || table->own_remedy == NULL)
            schema_field(schema, table, &table->fields[i]);
    schema_close(schema, '}');
    schema_rules(schema, table);
}

static void table_define(struct schema *schema, const char *name,
                         const struct field_table *table)
{
    schema_open(schema, name, '{');
    schema_text(schema, "$comment", table->what);
    schema_text(schema, "type", "object");
    if (table->count == 1 && is_any_id(&table->fields[0]))
        ids_add(schema, table);
    else
        keys_add_schema(schema, table);
    schema_close(schema, '}');
}

void schema_tables_define(struct schema *schema)
{
    for (size_t i = 0; i < schema->table_count; i++)
        table_define(schema, schema->table_names[i], schema->tables[i]);
}
