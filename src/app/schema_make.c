/* schema_make.c - the schema of each kind of file that people write (room: app), by the table that
 * it is read by. */
#include "schema.h"

#include "base.h"
#include "boat.h"
#include "procedure.h"
#include "promise.h"
#include "words.h"

#define DIALECT "https://json-schema.org/draft/2020-12/schema"

const char *const schema_topic_words[] = {SCHEMA_TOPIC_LIST(CHOICE_WORD) NULL};

static const struct schema_row {
    const char *title;
    const struct field_table *(*table)(void);
    enum schema_texts texts;
} schema_rows[SCHEMA_TOPIC_COUNT] = {
    [SCHEMA_BASE] = {"base.yaml: the record of a base", base_file_fields, TEXTS_PLAIN},
    [SCHEMA_BOAT] = {"boats/BOAT.yaml: the record of a boat", boat_file_fields, TEXTS_PLAIN},
    [SCHEMA_MODEL] = {"models/MODEL.yaml: what sister ships share", model_file_fields,
                      TEXTS_PLAIN},
    [SCHEMA_PROCEDURE] = {"procedures/NAME.yaml: the logic of a card", procedure_file_fields,
                          TEXTS_MARKED},
    [SCHEMA_TEXTS] = {"procedures/words/LANGUAGE/NAME.yaml: the texts of a card",
                      procedure_text_fields, TEXTS_MARKED},
    [SCHEMA_SOURCES] = {"procedures/sources.yaml: what cards stand on", authority_file_fields,
                        TEXTS_MARKED},
    [SCHEMA_WORDS] = {"procedures/words/LANGUAGE/words.yaml: the words of a language",
                      words_file_fields, TEXTS_MARKED},
};

static void schema_head_add(struct schema *schema, enum schema_topic topic)
{
    schema_text(schema, "$schema", DIALECT);
    schema_text(schema, "title", schema_rows[topic].title);
    schema_text(schema, "$comment",
                text_format(schema->arena, "maydeck schema %s, version " MAYDECK_VERSION,
                            schema_topic_words[topic - 1]));
}

/* A boat that says which model she is like need not repeat what stands there. */
static void boat_or_sister(struct schema *schema)
{
    schema_raw(schema, "if",
               "{\"type\": \"object\", \"required\": [\"like\"], \"properties\": {\"like\": "
               "{\"not\": {\"$ref\": \"#/$defs/empty\"}}}}");
    schema_refer(schema, "then", schema_table(schema, sister_file_fields()));
    schema_refer(schema, "else", schema_table(schema, boat_file_fields()));
}

static void definitions_add(struct schema *schema, enum schema_topic topic)
{
    schema_open(schema, "$defs", '{');
    schema_kinds_define(schema);
    if (topic == SCHEMA_BOAT || topic == SCHEMA_MODEL)
        schema_gear_define(schema);
    if (topic == SCHEMA_PROCEDURE)
        schema_conditions_define(schema);
    schema_tables_define(schema);
    schema_choices_define(schema);
    schema_close(schema, '}');
}

const char *schema_make(enum schema_topic topic, const struct known_names *known,
                        struct arena *arena)
{
    const struct schema_row *row = &schema_rows[topic];
    struct text_builder out = text_builder_in(arena);
    struct schema schema = {.out = &out, .arena = arena, .known = known, .texts = row->texts};
    promise(row->table != NULL);
    schema_open(&schema, NULL, '{');
    schema_head_add(&schema, topic);
    if (topic == SCHEMA_BOAT)
        boat_or_sister(&schema);
    else
        schema_text(&schema, "$ref", text_format(arena, "#/$defs/%s",
                                                 schema_table(&schema, row->table())));
    if (topic == SCHEMA_WORDS)
        schema_plurals(&schema);
    definitions_add(&schema, topic);
    schema_close(&schema, '}');
    text_add(&out, "\n");
    return out.at;
}
