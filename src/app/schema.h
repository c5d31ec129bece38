/* schema.h - the JSON Schemas of the files that people write, made from the tables by which these
 * files are read: what the files that make them share. Private to src/app. */
#ifndef MAYDECK_SCHEMA_H
#define MAYDECK_SCHEMA_H

#include <stddef.h>
#include <stdint.h>

#include "app.h"
#include "known_names.h"
#include "text.h"
#include "yaml_fields.h"

/* How texts of the file are judged: as they are printed, or with **bold** and {names}. */
enum schema_texts { TEXTS_PLAIN, TEXTS_MARKED };

enum { SCHEMA_PARTS_MOST = 96 };

/* A schema while it is written. What is used more than once, or is long, is a definition of its
 * own: `tables` and `choices`, each written once behind the whole. */
struct schema {
    struct text_builder *out;
    struct arena *arena;
    const struct known_names *known;       /* what cards call the keys */
    enum schema_texts texts;
    int depth;
    bool begun;                            /* something stands at this depth */
    const struct field_table *tables[SCHEMA_PARTS_MOST];
    const char *table_names[SCHEMA_PARTS_MOST];
    size_t table_count;
    const char *const *choices[SCHEMA_PARTS_MOST];
    const char *choice_names[SCHEMA_PARTS_MOST];
    size_t choice_count;
};

/* ---- schema_write.c: JSON, member by member ---- */

/* `key` NULL: within an array. `bracket` is { or [; what is opened is closed by the second. */
void schema_open(struct schema *schema, const char *key, char bracket);
void schema_close(struct schema *schema, char bracket);

/* A text; JSON as it is given; a list of texts on one line. */
void schema_text(struct schema *schema, const char *key, const char *text);
void schema_raw(struct schema *schema, const char *key, const char *format, ...)
    __attribute__((format(printf, 3, 4)));
void schema_words(struct schema *schema, const char *key, const char *const *words, size_t count);

/* {"$ref": "#/$defs/NAME"} */
void schema_refer(struct schema *schema, const char *key, const char *name);

/* ---- schema_values.c: single values ---- */

/* Definitions that each schema has: empty, text, wording, date, answer and the like. */
void schema_kinds_define(struct schema *schema);

/* Members that say what a number of that field may be. */
void schema_number(struct schema *schema, const struct field *field);

/* Members that say that it is one of these words. */
void schema_choice(struct schema *schema, const char *const *choices, const char *name);

/* The member that says it of all keys of an object, which some parsers take for true or false, as
 * on and off; and whether a key is such a word. */
void schema_keys(struct schema *schema, const char *const *choices);
bool schema_taken_for_answer(const char *word);

/* Writes the lists of words that were referred to. */
void schema_choices_define(struct schema *schema);

/* ---- schema_range.c ---- */

/* The pattern of texts that are numbers, of so many thousandths at least and at most, as the
 * reader takes them; both 0: any. */
const char *schema_range(const struct field *field, struct arena *arena);

/* ---- schema_forms.c: texts of a form ---- */

/* `pattern` NULL: any text, of `most` characters. `number`: what may stand there of what the
 * parsers of editors take for a number, as JSON; NULL: anything. */
struct schema_form {
    const char *table, *key, *pattern, *number;
    int most;                        /* 0: any length */
};

/* The form of the texts of a field; NULL: they may be any. */
const struct schema_form *schema_form_of(const struct field_table *table,
                                         const struct field *field);

/* A value that may stand there, as JSON; NULL: none is known. */
const char *schema_example(const struct field_table *table, const struct field *field,
                           struct arena *arena);

/* ---- schema_fields.c: tables ---- */

/* The name of the definition of a mapping that is read by the table. */
const char *schema_table(struct schema *schema, const struct field_table *table);

/* What may stand under the field's key, as a member of that name. */
void schema_field(struct schema *schema, const struct field_table *table,
                  const struct field *field);

/* The same as members of what is open: the value alone, that it is given. */
void schema_value(struct schema *schema, const struct field_table *table,
                  const struct field *field);

/* Writes the definitions of all tables that were referred to, and of those that these refer to. */
void schema_tables_define(struct schema *schema);

/* ---- schema_rules.c ---- */

/* Must it be there, whatever else is? */
enum schema_need { KEY_NEED_NOT_BE, KEY_MUST_BE };
enum schema_need schema_need_of(const struct field_table *table, const struct field *field);

/* What several keys of a mapping owe each other, where its table has such rules. */
void schema_rules(struct schema *schema, const struct field_table *table);

/* ---- schema_gear.c ---- */

/* Is it one of the tables by which entries of equipment are read? */
bool schema_is_gear(const struct field_table *table);

/* Defines what follows from the item of an entry: its tag, its fields, its states. */
void schema_gear_define(struct schema *schema);

/* ---- schema_conditions.c ---- */

/* Definitions of what may stand under `when`. */
void schema_conditions_define(struct schema *schema);

/* ---- schema_words.c ---- */

/* What follows from the forms of numbers that a language has. */
void schema_plurals(struct schema *schema);

/* ---- schema_make.c ---- */

/* What stands in each, by which this program knows its own. */
#define SCHEMA_MARK "\"$comment\": \"maydeck schema "

/* The whole schema of one kind of file, in the arena. Not of SCHEMA_CHECK. */
const char *schema_make(enum schema_topic topic, const struct known_names *known,
                        struct arena *arena);

#endif
