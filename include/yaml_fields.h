/* yaml_fields.h - reading a mapping into a struct by a table (room: yaml).
 *
 * Adding a field to a file is adding a row: reading, checking, the files that `start`
 * writes and the reference of keys follow from it. */
#ifndef MAYDECK_YAML_FIELDS_H
#define MAYDECK_YAML_FIELDS_H

#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

#include "arena.h"
#include "date.h"
#include "problem.h"
#include "yaml_tree.h"

/* Values as read. A field that the file lacks leaves all zero: given false,
 * text NULL, answer ANSWER_NOT_RECORDED. A key with an empty value (`spot:`)
 * counts as not given. One whose value was refused keeps its place alone, so that
 * what is then missing is told where it was refused. */
struct text_in_language { const char *language, *text; struct place place; };
struct text_value {
    const char *text;
    struct place place;
    const struct text_in_language *languages;  /* `text` is the first; ended by a NULL text;
                                                  NULL: not given by language */
};
struct number_value { int64_t milli; const char *text; bool given; struct place place; };
struct date_value { struct date date; const char *text; bool given; struct place place; };
struct list_value { const struct text_value *items; size_t count; bool given; struct place place; };
/* One text, or one for each of the field's choices: `by_choice`, at the value of the choice;
 * NULL where one is given for all. */
struct wordings_value { struct text_value one, *by_choice; struct place place; };
struct node_value { const struct yaml_node *node; struct place place; };
struct pair_value { struct number_value first, second; bool given; struct place place; };

/* A mapping with a table of its own. `key_place` is of its key, also where nothing stands
 * under it. */
struct section_value { bool given; struct place key_place, place; };

/* A list whose entries have a table: `items` is an array of their structs. */
struct entries_value { void *items; size_t count; bool given; struct place place; };

/* One of a field's choices as the value of an enum: 0 where none is given, else `first` +
 * its index in `choices`; and a list of such. Structs with an enum of their own are made by
 * the two macros: `struct item_value CHOICE_OF(enum item_key);` */
#define CHOICE_OF(enumeration) {enumeration value; struct place place;}
#define CHOICES_OF(choice) \
    {const choice *items; size_t count; bool given; struct place place;}
struct choice_value CHOICE_OF(unsigned);
struct choice_list CHOICES_OF(struct choice_value);

/* Choices of which each may be given with another: `with`, 0 where none is. Structs with
 * enums of their own have the same members in the same order. */
struct paired_value {unsigned value, with; struct place place;};
struct paired_list CHOICES_OF(struct paired_value);

/* The words of a value of a field, "" when it is not given. */
#define TEXT_OR_EMPTY(value) ((value).text == NULL ? "" : (value).text)

enum answer { ANSWER_NOT_RECORDED, ANSWER_NO, ANSWER_YES };
struct answer_value { enum answer answer; struct place place; };

enum field_kind {
    FIELD_TEXT,    /* struct text_value: a scalar */
    FIELD_WORDING, /* struct text_value: a scalar, or one for each language: {en: ..., de: ...} */
    FIELD_CHOICE,    /* CHOICE_OF an enum: one of `choices` */
    FIELD_CHOICES,   /* CHOICES_OF such: a sequence of choices, or one; [] is given, empty */
    FIELD_PAIRED,  /* the same of such: [torch, {seacock: shut}]; the second one of `with` */
    FIELD_BY_CHOICE, /* struct wordings_value: a wording, or one by choice: {shut: ...} */
    FIELD_NUMBER,  /* struct number_value: decimal within low..high (thousandths) */
    FIELD_ANSWER,  /* struct answer_value: yes or no, nothing else */
    FIELD_DATE,    /* struct date_value: 2027, 2027-04 or 2027-04-30 */
    FIELD_LIST,    /* struct list_value: a sequence of scalars; [] is given, empty */
    FIELD_WORDINGS, /* the same; each entry may be given by language */
    FIELD_WORDS,   /* struct list_value: the same, or one scalar */
    FIELD_PAIR,    /* struct pair_value: a sequence of two decimals */
    FIELD_SECTION, /* struct section_value: a mapping, read by the table of its part */
    FIELD_ENTRIES, /* struct entries_value: a sequence of mappings, each read by the same */
    FIELD_NODE     /* struct node_value: any node, read by the caller */
};

struct field_table;

/* What stands under the key of a section or of a list of entries. */
struct field_part {
    const struct field_table *table;
    size_t offset;        /* section: of what it fills, in the struct of its key's table */
    size_t size;          /* entries: of the struct of one */
    size_t place;         /* entries: offset of the `struct place` of one */
    size_t refused;       /* entries: offset of a bool of one, for whether something in it is
                             refused; 0: it has none */
    const char *lone;     /* key of what a lone word fills; NULL: none may stand there */
    bool one_or_many;     /* entries: a mapping is a list of one */
};

/* What people write in the place of a choice, in capitals, and what to tell them. */
struct choice_slip { const char *written, *remedy; };

struct field {
    const char *key;
    enum field_kind kind;
    bool required;
    size_t offset;               /* offsetof the value in the struct */
    const char *const *choices;  /* of the kinds with choices: NULL-ended */
    const char *const *with;     /* FIELD_PAIRED: words of the second; NULL-ended */
    unsigned first;              /* value of the first choice; 0: 1 */
    const struct choice_slip *slips; /* the same: ended by a row of NULL, or NULL */
    bool any_word;               /* texts: names and codes, where "X" or "Open" can be true */
    int64_t low, high;           /* FIELD_NUMBER; both 0: any */
    bool whole;                  /* FIELD_NUMBER: of people or things, no part of one */
    const struct field_part *part; /* FIELD_SECTION, FIELD_ENTRIES */
    bool own;                    /* of one thing alone: no table for many takes it */
    unsigned readers;            /* where its value is read: bits of whoever made the table */
    const char *about;           /* one line for messages and the reference */
};

/* A key that people write here and that belongs elsewhere, and what to tell them. */
struct stray_key { const char *key, *remedy; };

struct field_table {
    const char *what;            /* "a boat", "an equipment item": for messages */
    const struct field *fields;
    size_t count;
    const struct stray_key *strays;  /* ended by a row of NULL, or NULL */
    bool partial;                /* what is missing may stand elsewhere: fields_missing_tell */
    const char *own_remedy;      /* a table for many: what to do with a field that is `own`,
                                    which is an error there; NULL: it takes all */
};

/* Reads `mapping` into `record` (already zeroed), with all sections and entries in it.
 * Every wrong field is told:
 * not a mapping, unknown key (with the nearest known one, which then is not missing but
 * has the place of that key; else the list), key
 * missing, wrong kind, not a number / out of range, not a choice (nearest), a
 * word twice in a list. Texts that hold a line break or only spaces, and ~ and
 * null without quotes, are wrong too. True when nothing was wrong. */
bool fields_read(const struct yaml_node *mapping, const struct field_table *table,
                 void *record, struct arena *arena, struct problems *problems);

/* Tells the fields that are required and neither given nor refused. True when there are none. */
bool fields_missing_tell(const struct field_table *table, const void *record, struct place place,
                         struct arena *arena, struct problems *problems);

/* Which fields of a record are filled from another: all, or those that are one thing's own. */
enum fields_filled { FIELDS_ALL, FIELDS_OWN };

/* Fills fields of the record that are neither given nor refused with what the other gives,
 * place and all. A section that the record has is left as it is, with all in it. */
void fields_fill(const struct field_table *table, void *record, const void *from,
                 enum fields_filled which);

/* Would it fill any? */
bool fields_lack(const struct field_table *table, const void *record, const void *from);

/* Takes the value of a field out of a record, with all in it: as if the file had not given
 * it. What was worked out of it before stays. */
void field_clear(const struct field *field, void *record);

/* The value of a text, choice, number, answer or date field as text, as
 * written in the file; NULL when not given, "yes"/"no" for answers. For lists
 * the words joined by a space. */
const char *field_text(const struct field *field, const void *record, struct arena *arena);

/* The value of a choice or an answer, as that of its enum; 0: not given. */
unsigned field_choice(const struct field *field, const void *record);

/* Is the word among those that a FIELD_CHOICES holds? False too where none is given. */
bool field_chooses(const struct field *field, const void *record, const char *word);

/* Where the value stands in the file, also one that was refused; line 0: nowhere. */
struct place field_place(const struct field *field, const void *record);

/* The text in that language; where it is not given in it, the first it is given in. */
const char *text_for(const struct text_value *value, const char *language);

/* How many texts the value of a FIELD_BY_CHOICE has room for, and each of them. */
size_t wordings_count(const struct field *field, const struct wordings_value *value);
struct text_value *wordings_at(struct wordings_value *value, size_t index);

/* Where that text stands. */
struct place text_place_for(const struct text_value *value, const char *language);

/* Does the text look like the code of a language: en, fil, pt-BR? */
bool language_code_sound(const char *code);

/* The text in quotes for a message, cut with "..." after 60 characters. */
const char *text_shown(struct arena *arena, const char *text);

const struct field *field_find(const struct field_table *table, const char *key);

/* Calls `visit` for each value of a record that was read by the table, a section or list of
 * entries before those in it. */
typedef void value_visit(const struct field *field, void *value, void *context);
void field_values_visit(const struct field_table *table, void *record, value_visit *visit,
                        void *context);

/* A key that a file may have: its row, the table that the row is in, and the section or list
 * of entries around it (NULL: it stands at the top). A key in braces, {id}, stands for all
 * that are such names, in tables that describe what other rows read. */
struct field_path {
    const struct field *field;
    const struct field_table *table;
    const struct field_path *outer;
};

/* Calls `visit` for each row of a table, a section or list of entries before those in it. A
 * path lives as long as the call. */
typedef void path_visit(const struct field_path *path, void *context);
void fields_walk(const struct field_table *table, path_visit *visit, void *context);

/* "equipment/item": the keys of a path. */
const char *field_path_text(const struct field_path *path, struct arena *arena);

/* "text", "list of entries", ...: for references and tests. */
const char *field_kind_word(enum field_kind kind);

#endif
