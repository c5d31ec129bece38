/* record.h - what the files of this room share. Private to src/record. */
#ifndef MAYDECK_RECORD_H
#define MAYDECK_RECORD_H

#include "boat.h"
#include "procedure.h"

/* The keys of the two registers as constants, NULL-ended: choices of fields. */
extern const char *const item_key_list[];
extern const char *const zone_key_list[];
extern const char *const space_key_list[];   /* the zones, and own_box: a box of its own */

/* One row of a field table: the key is the member's name (ROW) or another. */
#define KEYED(record, name, member, field_kind, ...) \
    {.key = (name), .kind = (field_kind), .offset = offsetof(record, member), __VA_ARGS__}
#define ROW(record, member, field_kind, ...) \
    KEYED(record, #member, member, field_kind, __VA_ARGS__)
#define TABLE(called, rows) \
    {.what = (called), .fields = (rows), .count = sizeof(rows) / sizeof((rows)[0])}
/* One of a procedure's logic, where texts are often written. */
#define LOGIC_TABLE(called, rows) \
    {.what = (called), .fields = (rows), .count = sizeof(rows) / sizeof((rows)[0]), \
     .strays = text_keys}

/* ---- reading.c ---- */

/* Errors so far: a reader compares before and after to know whether its own
 * input was sound. */
size_t errors_so_far(const struct problems *problems);

/* Reads a mapping by its table and refuses stray spaces and line breaks in its
 * texts. A node of NULL (a section left out) is nothing wrong. */
void section_read(const struct yaml_node *node, const struct field_table *table, void *record,
                  struct arena *arena, struct problems *problems);

/* The same for what a base writes itself: texts without markup and placeholders. */
void plain_section_read(const struct yaml_node *node, const struct field_table *table,
                        void *record, struct arena *arena, struct problems *problems);

/* How many entries a list has; an error and 0 where it is no list. */
size_t entries_count(const struct node_value *list, const char *key, struct problems *problems);

/* The place of an entry for messages: that of the value if it has one. */
struct place place_or(struct place first, struct place otherwise);

/* What is wrong with the **bold** parts of a text, or NULL. */
const char *bold_fault(const char *text);

bool list_holds(const struct list_value *list, const char *word);

/* The nearest known word as a remedy, or `otherwise`. `known` is NULL-ended. */
const char *nearest_remedy(const char *word, const char *const *known, const char *otherwise,
                           struct arena *arena);

/* ---- placeholder.c ---- */

/* What of a text stands where a fact is yet to be written, such as tbd: the text itself
 * or words in it; NULL: nothing. `any_word`: it is a name or code, which can be "X". */
const char *placeholder_in(const char *text, bool any_word, struct arena *arena);

/* ---- voice_words.c ---- */

/* Tells signal words that are written by ear or in another alphabet, PENTAFIVE, and
 * channel 70 where somebody is told to talk: in all texts of a tree. */
void voice_words_check(const struct yaml_node *node, struct arena *arena,
                       struct problems *problems);

/* Tells what a call cannot hold: any letter besides those of English. */
void english_check(const char *key, const struct text_value *value, struct problems *problems);

/* ---- boat_fields.c ---- */

const struct field_table *mounted_fields(void);
const struct field_table *absence_fields(void);
const struct field_table *silence_fields(void);

/* ---- base_read.c ---- */

/* A section of base.yaml, for those who write one. `list`: of entries. */
struct base_section {
    const char *key, *about;
    const struct field_table *fields;
    bool list;
};
const struct base_section *base_section_at(size_t index);   /* NULL past the end */

/* ---- base_places.c ---- */

/* Reads the texts of positions and of the variation into numbers. What is wrong with
 * one, or lies outside the cruising area's hemispheres, is an error, and the number
 * stays not given. The cruising area must have been read. */
void base_places_settle(struct base_record *base, struct problems *problems);
void shelter_settle(const struct base_record *base, struct shelter *shelter,
                    struct problems *problems);

/* ---- boat_*.c ---- */

/* One boat as it is being read: all entries, also those that cannot be used. */
struct boat_reading {
    struct boat *boat;
    struct equipment *gear;
    size_t gear_count;
    struct arena *arena;
    struct problems *problems;
};

/* Looks up kinds and zones, settles sides and positions, and tells what cannot
 * be. An entry whose place cannot be used has no place_zone afterwards. */
void places_settle(struct boat_reading *reading);

/* Positions given as `at: [x, y]`. */
void position_settle(struct boat_reading *reading, struct equipment *gear);

/* Is it one of the boat's engine spaces? Tells those that she does not have. */
bool boat_has_space(const struct boat *boat, const char *key);
void spaces_exist(const struct boat_reading *reading, const struct list_value *serves);

/* Tells tags that are missing, of the wrong form, used twice or retired. */
void tags_check(struct boat_reading *reading);

/* Tells gear that stands twice in one place. */
void doubles_check(struct boat_reading *reading);

/* Reads `not_fitted`; tells what is both fitted and not fitted, or said twice. */
void absences_read(struct boat_reading *reading, const struct node_value *list);
void absences_check(const struct boat_reading *reading);

/* Are the two entries of one kind, with nothing in their places that parts them? */
bool equipment_same_place(const struct equipment *a, const struct equipment *b);

/* ---- procedure_*.c ---- */

/* One procedure as it is being read. */
struct procedure_reading {
    const struct procedure_files *files;
    struct procedure *procedure;
    const struct authorities *authorities;
    struct text_value *names;      /* {names} in texts, each at the place of its text */
    size_t name_count, name_room;
    struct arena *arena;
    struct problems *problems;
};

/* What the words of a place need to stand on. */
enum footing {
    FOOTING_STEP,     /* sources, or practice */
    FOOTING_WARNING   /* sources, all VA or VB, one of them current */
};

void basis_check(const struct procedure_reading *reading, const struct basis *basis,
                 enum footing footing, struct place place, const char *what);

/* Checks that need the whole procedure: numbers of things, names of steps. */
void procedure_check(const struct procedure_reading *reading);

/* The condition under a key, NULL where the key was left out. */
const struct condition *when_read(const struct procedure_reading *reading,
                                  const struct node_value *node);

#endif
