/* schema_rules.c - what keys of one mapping owe each other, beyond what the rows of its table say
 * (room: app): the same that its reader asks. */
#include "schema.h"

#include "boat.h"
#include "procedure.h"
#include "sheet_kinds.h"

/* ---- what must be there ---- */

/* Keys that need not be there although the row says so: texts that are wanted where the logic has
 * what they are of; and keys that must be there although the row does not say so. */
static const struct need_row { const char *table, *key; enum schema_need need; } key_need_rows[] = {
    {"a file of texts", "seen", KEY_NEED_NOT_BE},
    {"a file of texts", "when_reason", KEY_NEED_NOT_BE},
    {"an approval", "text", KEY_MUST_BE},
    {"a never", "sources", KEY_MUST_BE},
    {"a caution", "sources", KEY_MUST_BE},
};

enum schema_need schema_need_of(const struct field_table *table, const struct field *field)
{
    for (size_t i = 0; i < sizeof key_need_rows / sizeof *key_need_rows; i++)
        if (text_equal(key_need_rows[i].table, table->what) &&
            text_equal(key_need_rows[i].key, field->key))
            return key_need_rows[i].need;
    return field->required && !table->partial ? KEY_MUST_BE : KEY_NEED_NOT_BE;
}

/* ---- rules ---- */

#define GIVEN(key) \
    "{\"required\": [\"" key "\"], \"properties\": {\"" key "\": {\"not\": {\"anyOf\": " \
    "[{\"$ref\": \"#/$defs/empty\"}, {\"const\": []}]}}}}"
#define SAYS_YES(key) \
    "{\"required\": [\"" key "\"], \"properties\": {\"" key "\": {\"enum\": [\"yes\", true]}}}"
#define NOTHING_IN(key) "{\"properties\": {\"" key "\": {\"$ref\": \"#/$defs/empty\"}}}"
#define STANDS_ON_SOMETHING "{\"anyOf\": [" GIVEN("sources") ", " SAYS_YES("practice") "]}"

/* Numbers of a specimen begin with +999, which is no country's, and no others do. */
#define PHONES_ARE(rule) \
    "{\"properties\": {\"base\": {\"properties\": {\"phone_24h\": " rule "}}, \"rescue_centre\": " \
    "{\"properties\": {\"phone\": " rule "}}, \"ashore\": {\"properties\": {\"fire_phone\": " rule \
    "}}}}"
#define NO_COUNTRYS "{\"pattern\": \"^( *\\\\+ *9 *9 *9|$)\"}"
#define SOME_COUNTRYS "{\"not\": {\"type\": \"string\", \"pattern\": \"^ *\\\\+ *9 *9 *9\"}}"
#define SPECIMEN_IS(answers) \
    "\"properties\": {\"base\": {\"type\": \"object\", \"properties\": {\"specimen\": " \
    "{\"enum\": [" answers "]}}"
#define SPECIMEN_PHONES \
    "{\"if\": {\"required\": [\"base\"], " SPECIMEN_IS("\"yes\", true") \
    ", \"required\": [\"specimen\"]}}}, \"then\": " PHONES_ARE(NO_COUNTRYS) \
    "}, {\"if\": {" SPECIMEN_IS("\"no\", false, \"\", null") "}}}, \"then\": " \
    PHONES_ARE(SOME_COUNTRYS) "}"

/* A fixed set has a tag and a place, or neither is told. Of a boat that is like a model the other
 * may stand there. */
#define SET_TOLD(key, other) \
    "{\"properties\": {\"radio\": {\"if\": " GIVEN(key) ", \"then\": " GIVEN(other) "}}}"

/* Of tables that have the key: texts have tables of the same names. */
static const struct { const char *table, *key, *rule; } rule_rows[] = {
    {"a base file", "base", SPECIMEN_PHONES},
    {"a never", "sources", GIVEN("sources")},
    {"a caution", "sources", GIVEN("sources")},
    {"a step", "sources", STANDS_ON_SOMETHING},
    {"a decision", "sources", STANDS_ON_SOMETHING},
    {"the line for a berth or an anchorage", "sources", STANDS_ON_SOMETHING},
};

/* Sheets that are made of the record alone have no group in the index of cards; all others do. */
static void seen_as_rule(struct schema *schema)
{
    const char *words[SHEET_KIND_COUNT];
    size_t count = 0;
    for (unsigned kind = 1; sheet_kind_words[kind - 1] != NULL; kind++)
        if (sheet_source_of(kind) == FROM_RECORD)
            words[count++] = sheet_kind_words[kind - 1];
    schema_open(schema, NULL, '{');
    schema_open(schema, "if", '{');
    schema_raw(schema, "required", "[\"kind\"]");
    schema_open(schema, "properties", '{');
    schema_open(schema, "kind", '{');
    schema_words(schema, "enum", words, count);
    schema_close(schema, '}');
    schema_close(schema, '}');
    schema_close(schema, '}');
    schema_raw(schema, "then", "%s", NOTHING_IN("seen_as"));
    schema_raw(schema, "else", "%s", GIVEN("seen_as"));
    schema_close(schema, '}');
}

/* Opens the list of rules before the first of them. */
static void rule_next(struct schema *schema, size_t *count)
{
    if ((*count)++ == 0)
        schema_open(schema, "allOf", '[');
}

static void rule_if(struct schema *schema, size_t *count, bool (*is)(const struct field_table *),
                    const struct field_table *table, const char *rule)
{
    if (!is(table))
        return;
    rule_next(schema, count);
    schema_raw(schema, NULL, "%s", rule);
}

/* Of a boat that is like no model. */
static bool is_alone_file(const struct field_table *table)
{
    return table == boat_file_fields();
}

void schema_rules(struct schema *schema, const struct field_table *table)
{
    size_t count = 0;
    for (size_t i = 0; i < sizeof rule_rows / sizeof *rule_rows; i++)
        if (text_equal(rule_rows[i].table, table->what) &&
            field_find(table, rule_rows[i].key) != NULL) {
            rule_next(schema, &count);
            schema_raw(schema, NULL, "%s", rule_rows[i].rule);
        }
    rule_if(schema, &count, is_alone_file, table, "{\"properties\": {\"walked\": false}}");
    rule_if(schema, &count, is_alone_file, table, NOTHING_IN("not_here"));
    rule_if(schema, &count, is_alone_file, table, SET_TOLD("tag", "zone"));
    rule_if(schema, &count, is_alone_file, table, SET_TOLD("zone", "tag"));
    rule_if(schema, &count, schema_is_gear, table, "{\"$ref\": \"#/$defs/by_item\"}");
    if (table == procedure_file_fields()) {
        rule_next(schema, &count);
        seen_as_rule(schema);
    }
    if (count > 0)
        schema_close(schema, ']');
}
