/* procedure_texts.h - what the readers of a procedure's parts share to get their texts from
 * each language's file. Private to src/procedure. */
#ifndef MAYDECK_PROCEDURE_TEXTS_H
#define MAYDECK_PROCEDURE_TEXTS_H

#include "procedure_fields.h"

/* What stands in one place of the texts, by number of language: NULL where the file has
 * nothing there that can be read, which has been told. `nodes` NULL: nothing is wanted. */
struct texts_at {
    const struct yaml_node **nodes;
};

/* Whether {id} may stand in a text for the number of a step or of another card; and for a fact of
 * the base besides. */
enum naming { NAMES_NOTHING, NAMES_STEPS_AND_CARDS, NAMES_BASE_TOO };

/* A key that the logic wants in a mapping of texts, and where its value goes: one of
 * `text`, `list` and `inside`, or nowhere where it must be `same`. */
struct wanted_text {
    struct field field;          /* its offset is not used */
    enum naming naming;
    const char *same;
    struct text_value *text;
    struct list_value *list;
    struct texts_at *inside;
};

/* Reads the mapping in each language. Told as errors: keys that are not wanted (with the
 * nearest that is), required ones that are missing, texts given in one language alone or
 * with other {names}. `what` is the mapping in messages: "a step". */
void texts_read(struct procedure_reading *reading, const struct texts_at *at, const char *what,
                const struct wanted_text *rows, size_t count);

/* Rows for what must stand under an id of the logic: a text, or a mapping of texts. */
struct wanted_text text_by_id(const struct procedure_reading *reading,
                              const struct text_value *id, struct text_value *into);
struct wanted_text texts_under_id(const struct procedure_reading *reading,
                                  const struct text_value *id, struct texts_at *inside);

/* Rows for a text under a key of its own; in the second numbers may be filled in. */
struct wanted_text text_under(const struct field *row, struct text_value *into);
struct wanted_text filled_text_under(const struct field *row, struct text_value *into);

/* A row for a mapping that must be there since the logic has such ids. */
struct wanted_text texts_under(const struct field *row, struct texts_at *inside);

/* Rows while they are gathered. */
struct wanted_list {
    struct wanted_text *rows;
    size_t count, room;
};
void want(const struct procedure_reading *reading, struct wanted_list *list,
          struct wanted_text wanted);

/* The whole files, each read as a tree. */
struct texts_at text_files_open(struct procedure_reading *reading);

/* ---- procedure_content.c ---- */

/* Keep the sums of what the files say. */
void logic_sum_take(struct procedure_reading *reading, const struct yaml_node *root);
void text_sums_take(struct procedure_reading *reading, const struct texts_at *roots);

/* Keys of the logic: what to tell who writes them among the texts. */
extern const struct stray_key logic_keys[];

/* ---- procedure_steps.c, procedure_boxes.c ---- */

/* What stands in the texts for words of which one is taken: one text where the logic has
 * one only, else texts by id. */
struct said_texts {
    enum naming naming;
    struct text_value one;
    struct texts_at several;
};
struct wanted_text said_wanted(const struct field *row, const struct entries_value *logic,
                               struct said_texts *into);

/* Each takes over its part of the logic as it was read, with its texts. */
void steps_read(struct procedure_reading *reading, const struct entries_value *list,
                const struct texts_at *texts);
void decision_read(struct procedure_reading *reading, const struct procedure_logic *logic,
                   const struct texts_at *texts);
void more_signs_read(struct procedure_reading *reading, const struct entries_value *list,
                     const struct said_texts *texts);
void call_when_read(struct procedure_reading *reading, const struct entries_value *list,
                    const struct said_texts *texts);
void berth_read(struct procedure_reading *reading, const struct entries_value *list,
                const struct said_texts *texts);
void anchor_read(struct procedure_reading *reading, const struct entries_value *list,
                 const struct said_texts *texts);
void nevers_read(struct procedure_reading *reading, const struct entries_value *list,
                 const struct texts_at *texts);
void cautions_read(struct procedure_reading *reading, const struct entries_value *list,
                   const struct texts_at *texts);
void calls_read(struct procedure_reading *reading, const struct entries_value *list,
                const struct texts_at *texts);

/* Tells ids of the list under `key` that are no plain names, and those that stand twice. */
void ids_check(const struct procedure_reading *reading, const struct text_value *const *ids,
               size_t count, const char *key);

/* ---- procedure_seen.c: what one sees, hears or smells first ---- */

/* Does the index of cards name its card by that? */
bool is_seen_first(const struct procedure *procedure);

/* Tells a group that is missing or too many, and a card that is both core and made only where it
 * is asked for. The logic must have been read; of the other, the texts too. */
void seen_as_check(const struct procedure_reading *reading);
void seen_check(const struct procedure_reading *reading);

/* Tells entries that two cards of the set have in one language. */
void seen_alone_check(const struct procedure_set *set, struct arena *arena,
                      struct problems *problems);

/* ---- procedure_names.c ---- */

/* Keeps the {names} in a text of the first language until all steps are known; tells
 * braces that are no names, and names where nothing is filled in. */
void names_note(struct procedure_reading *reading, const struct wanted_text *row,
                const struct text_value *text);

/* Tells names that one of two languages has and the other has not. */
void names_compare(struct procedure_reading *reading, const struct wanted_text *row,
                   const struct text_value *first, const struct text_value *other);

/* Of the names kept, those that are no step of the procedure must be cards: they go into
 * procedure.leads. */
void names_settle(struct procedure_reading *reading);

#endif
