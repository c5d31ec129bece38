/* procedure_texts.h - what the readers of a procedure's parts share to get their texts from
 * each language's file. Private to src/procedure. */
#ifndef MAYDECK_PROCEDURE_TEXTS_H
#define MAYDECK_PROCEDURE_TEXTS_H

#include "procedure_room.h"

/* What stands in one place of the texts, by number of language: NULL where the file has
 * nothing there that can be read, which has been told. `nodes` NULL: nothing is wanted. */
struct texts_at {
    const struct yaml_node **nodes;
};

/* Whether {id} may stand in a text for the number of a step or of another card. */
enum naming { NAMES_NOTHING, NAMES_STEPS_AND_CARDS };

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

/* Keys that belong into the logic, and keys that belong into the texts: what to tell who
 * writes them into the other file. */
extern const struct stray_key logic_keys[];
extern const struct stray_key text_keys[];

/* A table of the logic, where texts are often written. */
#define LOGIC_TABLE(called, rows) \
    {.what = (called), .fields = (rows), .count = sizeof(rows) / sizeof((rows)[0]), \
     .strays = text_keys}

/* ---- the parts of the logic, as their tables read them ---- */

/* A `when` is read by condition_read.c: any, all and none hold conditions again, and what
 * stands under `inside` or `is` depends on the gear named there. No table can say that. */
struct step_entry {
    struct procedure_step step;
    struct node_value when;
    struct entries_value cases;
    struct place place;
    struct step_case *case_list;     /* the cases of `step`, which can still be written to */
    struct texts_at texts;
};

struct decision_entry {
    struct decision decision;
    struct section_value section;
    struct entries_value yes, no;
};

struct said_entry {
    struct said said;
    struct node_value when;
    struct place place;
};

struct warning_entry {
    struct warning warning;
    struct node_value when;
    struct place place;
};

struct call_entry {
    struct procedure_call call;
    struct node_value when;
    struct place place;
};

extern const struct field_table step_table, decision_table, call_when_table, never_table,
    caution_table, call_table;

/* ---- procedure_steps.c, procedure_boxes.c ---- */

/* What stands in the texts for words of which one is taken: one text where the logic has
 * one only, else texts by id. */
struct said_texts {
    struct text_value one;
    struct texts_at several;
};
struct wanted_text said_wanted(const struct field *row, const struct entries_value *logic,
                               struct said_texts *into);

/* Each takes its part of the logic into the procedure, with its texts. */
void steps_take(struct procedure_reading *reading, const struct entries_value *steps,
                const struct texts_at *texts);
void decision_take(struct procedure_reading *reading, const struct decision_entry *entry,
                   const struct texts_at *texts);
void call_when_take(struct procedure_reading *reading, const struct entries_value *lines,
                    const struct said_texts *texts);
void nevers_take(struct procedure_reading *reading, const struct entries_value *nevers,
                 const struct texts_at *texts);
void cautions_take(struct procedure_reading *reading, const struct entries_value *cautions,
                   const struct texts_at *texts);
void calls_take(struct procedure_reading *reading, const struct entries_value *calls,
                const struct texts_at *texts);

/* Tells ids of the list under `key` that are no plain names, and those that stand twice. */
void ids_check(const struct procedure_reading *reading, const struct text_value *const *ids,
               size_t count, const char *key);

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
