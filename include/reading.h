/* reading.h - what readers of YAML files do alike (room: record): rows of field tables,
 * sections read by their table, and texts that must be sound. */
#ifndef MAYDECK_READING_H
#define MAYDECK_READING_H

#include <stdbool.h>
#include <stddef.h>

#include "arena.h"
#include "problem.h"
#include "yaml_fields.h"

/* One row of a field table: the key is the member's name (ROW) or another. */
#define KEYED(record, name, member, field_kind, ...) \
    {.key = (name), .kind = (field_kind), .offset = offsetof(record, member), __VA_ARGS__}
#define ROW(record, member, field_kind, ...) \
    KEYED(record, #member, member, field_kind, __VA_ARGS__)
/* What stands under the key of a FIELD_SECTION: `filled` is the member of `record` that the
 * table fills, or the table fills the same struct; of FIELD_ENTRIES: `entry` is the struct of
 * one, with its `place`. The rest are further members of struct field_part, `.table` at
 * least. */
#define SECTION_OF(record, filled, ...) \
    .part = &(const struct field_part){.offset = offsetof(record, filled), __VA_ARGS__}
#define SECTION_WITHIN(...) .part = &(const struct field_part){__VA_ARGS__}
#define ENTRIES_OF(entry, ...) \
    .part = &(const struct field_part){ \
        .size = sizeof(entry), .place = offsetof(entry, place), __VA_ARGS__}
#define TABLE(called, rows) \
    {.what = (called), .fields = (rows), .count = sizeof(rows) / sizeof((rows)[0])}

/* Reads a mapping by its table, with all sections and entries in it, and refuses stray
 * spaces and line breaks in its texts. A node of NULL (a section left out) is nothing
 * wrong. */
void section_read(const struct yaml_node *node, const struct field_table *table, void *record,
                  struct arena *arena, struct problems *problems);

/* The same for what a base writes itself: texts without markup and placeholders. */
void plain_section_read(const struct yaml_node *node, const struct field_table *table,
                        void *record, struct arena *arena, struct problems *problems);

/* The texts of a value one by one, from *index 0 on: its own, or that of each language it is
 * given in. False where there is no more. */
bool text_next(const struct text_value *value, size_t *index, struct text_value *one);

/* The place of an entry for messages: that of the value if it has one. */
struct place place_or(struct place first, struct place otherwise);

/* What is wrong with the **bold** parts of a text, or NULL. */
const char *bold_fault(const char *text);

bool list_holds(const struct list_value *list, const char *word);

/* Tells signal words that are written by ear or in another alphabet, PENTAFIVE, and
 * channel 70 where somebody is told to talk: in all texts of a tree but those of keys that
 * are spared, such as warnings (NULL: none is). */
void voice_words_check(const struct yaml_node *node, bool (*is_spared)(const char *key),
                       struct arena *arena, struct problems *problems);

/* The same of one value, in each language that it is given in. */
void voice_text_check(const struct text_value *value, struct arena *arena,
                      struct problems *problems);

/* Tells what a call cannot hold: any letter besides those of English. */
void english_check(const char *key, const struct text_value *value, struct problems *problems);

#endif
