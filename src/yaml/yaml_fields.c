/* yaml_fields.c - reading a mapping into a struct by a table (room: yaml). Goes
 * over the keys that are there, then over those that should be. Never knows
 * what a field means. */
#include "yaml_fields.h"

#include <string.h>

#include "text.h"
#include "yaml_value.h"

#define LINE_LIMIT 80
#define SHOWN_LIMIT 60

void field_error(struct field_reading *reading, struct place place, const char *remedy,
                 const char *format, ...)
{
    va_list list;

    va_start(list, format);
    char *what = text_format_list(reading->arena, format, list);
    va_end(list);
    problem_add(reading->problems, SEVERITY_ERROR, place, remedy, "%s", what);
    reading->wrong = true;
}

const char *text_shown(struct arena *arena, const char *text)
{
    size_t end = 0;
    size_t count = 0;

    for (; text[end] != '\0' && count < SHOWN_LIMIT; count++)
        do
            end++;
        while (((unsigned char)text[end] & 0xC0) == 0x80);
    return text_format(arena, "\"%.*s%s\"", (int)end, text, text[end] == '\0' ? "" : "...");
}

const char *words_joined(struct arena *arena, const char *start, const char *const *words,
                         size_t count)
{
    struct text_builder list = text_builder_in(arena);
    size_t line_start = 0;

    text_add(&list, start);
    for (size_t i = 0; i < count; i++) {
        if (list.length - line_start + strlen(words[i]) > LINE_LIMIT) {
            text_add(&list, "\n");
            line_start = list.length;
        } else {
            text_add(&list, " ");
        }
        text_add_format(&list, "%s%s", words[i], i + 1 < count ? "," : "");
    }
    return list.at;
}

struct place field_place(const struct field *field, const void *record)
{
    const void *place = (const char *)record + field->offset + value_place_offset(field->kind);
    return *(const struct place *)place;
}

static struct place *value_place(void *record, const struct field *field)
{
    void *place = (char *)record + field->offset + value_place_offset(field->kind);
    return place;
}

const struct field *field_find(const struct field_table *table, const char *key)
{
    for (size_t i = 0; i < table->count; i++)
        if (text_equal(table->fields[i].key, key))
            return &table->fields[i];
    return NULL;
}

/* Ended by NULL. */
static const char *const *table_keys(const struct field_table *table, struct arena *arena)
{
    const char **keys = arena_array(arena, table->count + 1, sizeof *keys);

    for (size_t i = 0; i < table->count; i++)
        keys[i] = table->fields[i].key;
    return keys;
}

static const char *stray_remedy(const struct field_table *table, const char *key)
{
    const struct stray_key *stray = table->strays;

    while (stray != NULL && stray->key != NULL && strcmp(stray->key, key) != 0)
        stray++;
    return stray == NULL ? NULL : stray->remedy;
}

/* In {say: Stop, then wait: } the comma ends the text, and "then wait" is a key
 * without a value. (Without its colon the tree's reader refuses it.) */
static const char *unknown_key_remedy(struct field_reading *reading, const struct yaml_pair *pair)
{
    const struct field_table *table = reading->table;
    const char *const *keys = table_keys(table, reading->arena);
    const char *meant = known_remedy(reading->arena, problems_known(reading->problems),
                                     pair->key, keys, NULL);
    const struct yaml_node *value = pair->value;
    const char *stray = stray_remedy(table, pair->key);

    if (stray != NULL)
        return stray;
    if (meant != NULL)
        return meant;
    if (value->kind == YAML_SCALAR && !value->quoted && text_empty(value->text))
        return text_format(reading->arena,
                           "if %s belongs to the text before it, put that text in quotes",
                           text_shown(reading->arena, pair->key));
    const char *start = text_format(reading->arena, "keys of %s:", table->what);
    return words_joined(reading->arena, start, keys, table->count);
}

static void unknown_key_tell(struct field_reading *reading, const struct yaml_pair *pair)
{
    const struct field_table *table = reading->table;

    field_error(reading, pair->key_place, unknown_key_remedy(reading, pair), "%s has no key %s",
                table->what, text_shown(reading->arena, pair->key));
}

/* A field that a misspelt key was meant for is not missing: it takes the place of the
 * key, as that of a value that was refused, so that nobody tells of it again. */
static void misspelt_place(const struct field_reading *reading, const struct yaml_node *mapping,
                           const struct yaml_pair *pair, void *record)
{
    const struct field_table *table = reading->table;
    const char *const *keys = table_keys(table, reading->arena);
    const char *meant = known_key(reading->arena, problems_known(reading->problems), pair->key,
                                  keys);
    const struct field *field = meant == NULL ? NULL : field_find(table, meant);

    if (field == NULL || yaml_get(mapping, field->key) != NULL)
        return;
    *value_place(record, field) = pair->key_place;
}

static void *field_value(void *record, const struct field *field)
{
    return (char *)record + field->offset;
}

/* What to do about the line of a field, such as "add": one that stands there empty is filled in,
 * since a second line would be told as the same key twice. */
static const char *line_remedy(struct field_reading *reading, const struct field *field,
                               const char *act)
{
    if (text_empty(field->about))
        return text_format(reading->arena, "%s \"%s: ...\"", act, field->key);
    return text_format(reading->arena, "%s \"%s: ...\" (%s)", act, field->key, field->about);
}

static bool node_empty(const struct yaml_node *node)
{
    return node->kind == YAML_SCALAR && text_empty(node->text);
}

static void field_pair_read(struct field_reading *reading, const struct yaml_node *mapping,
                            const struct yaml_pair *pair, void *record)
{
    const struct field *field = field_find(reading->table, pair->key);

    if (field == NULL) {
        unknown_key_tell(reading, pair);
        misspelt_place(reading, mapping, pair, record);
        return;
    }
    if (field->kind == FIELD_SECTION)
        ((struct section_value *)field_value(record, field))->key_place = pair->key_place;
    if (field->own && reading->table->own_remedy != NULL)
        field_error(reading, pair->key_place, reading->table->own_remedy,
                    "%s cannot hold %s", reading->table->what, field->key);
    else if (!node_empty(pair->value))
        value_read(reading, field, pair->value, field_value(record, field));
    else if (field->required && !reading->table->partial)
        field_error(reading, pair->key_place, line_remedy(reading, field, "fill in"),
                    "\"%s\" has no value", field->key);
}

/* A key that is there without a value was told. NULL: the record was filled from several. */
static bool is_missing(const struct field *field, const struct yaml_node *mapping,
                       const void *record)
{
    return field->required && field_place(field, record).line == 0 &&
           (mapping == NULL || yaml_get(mapping, field->key) == NULL);
}

static void missing_tell(struct field_reading *reading, const struct yaml_node *mapping,
                         const void *record, struct place place)
{
    const struct field_table *table = reading->table;

    for (size_t i = 0; i < table->count; i++) {
        const struct field *field = &table->fields[i];
        if (is_missing(field, mapping, record))
            field_error(reading, place, line_remedy(reading, field, "add"),
                        "%s needs the key \"%s\"", table->what, field->key);
    }
}

bool fields_missing_tell(const struct field_table *table, const void *record, struct place place,
                         struct arena *arena, struct problems *problems)
{
    struct field_reading reading = {.table = table, .arena = arena, .problems = problems};

    missing_tell(&reading, NULL, record, place);
    return !reading.wrong;
}

bool fields_read(const struct yaml_node *mapping, const struct field_table *table,
                 void *record, struct arena *arena, struct problems *problems)
{
    struct field_reading reading = {.table = table, .arena = arena, .problems = problems};

    if (mapping->kind != YAML_MAPPING) {
        field_error(&reading, mapping->place,
                    "write its keys in lines of their own, or in one line as {key: value}",
                    "%s must be a mapping, not %s", table->what,
                    node_empty(mapping) ? "empty" : yaml_kind_word(mapping));
        return false;
    }
    for (size_t i = 0; i < mapping->count; i++)
        field_pair_read(&reading, mapping, &mapping->pairs[i], record);
    if (!table->partial)
        missing_tell(&reading, mapping, record, mapping->place);
    return !reading.wrong;
}
