/* yaml_value.h - reading the value of one field (private to the room yaml). */
#ifndef MAYDECK_YAML_VALUE_H
#define MAYDECK_YAML_VALUE_H

#include <stdbool.h>
#include <stddef.h>

#include "yaml_fields.h"

/* One table being read. `wrong` once anything was told. */
struct field_reading {
    const struct field_table *table;
    struct arena *arena;
    struct problems *problems;
    bool wrong;
};

/* Reads a value that is not empty into its place in the record. */
void value_read(struct field_reading *reading, const struct field *field,
                const struct yaml_node *node, void *value);

/* yaml_part.c: the kinds that hold several values. */
void pair_value_read(struct field_reading *reading, const struct field *field,
                     const struct yaml_node *node, void *value);
void section_value_read(struct field_reading *reading, const struct field *field,
                        const struct yaml_node *node, void *value);
void entries_value_read(struct field_reading *reading, const struct field *field,
                        const struct yaml_node *node, void *value);

/* Is the entry of a list a text that may stand there? */
bool entry_sound(struct field_reading *reading, const struct field *field,
                 const struct yaml_node *node);

/* Is it a text that can be printed in a line? `name`: what messages call it. */
bool scalar_sound(struct field_reading *reading, const char *name, const struct yaml_node *node);

/* yaml_wording.c: a text, or one for each language; what is wrong leaves *out alone. A list
 * of such: entries that are wrong are told and left out. */
void wording_read(struct field_reading *reading, const char *name, const struct yaml_node *node,
                  struct text_value *out);
void wordings_read(struct field_reading *reading, const struct field *field,
                   const struct yaml_node *node, struct list_value *list);

/* yaml_by_choice.c: a text for each choice, and choices that are given with another; both as
 * text again, NULL where nothing is given. */
void wordings_by_choice_read(struct field_reading *reading, const struct field *field,
                             const struct yaml_node *node, void *value);
void paired_choices_read(struct field_reading *reading, const struct field *field,
                         const struct yaml_node *node, void *value);
const char *wordings_text(const struct field *field, const struct wordings_value *value,
                          struct arena *arena);
const char *paired_text(const struct field *field, const void *list, struct arena *arena);

/* The value that the first of the field's choices has; each next one has one more. */
unsigned choice_first(const struct field *field);

/* Where each kind of value keeps its place, from its first byte. */
size_t value_place_offset(enum field_kind kind);

void field_error(struct field_reading *reading, struct place place, const char *remedy,
                 const char *format, ...) __attribute__((format(printf, 4, 5)));

/* The words with commas between them, on lines that are not too long. */
const char *words_joined(struct arena *arena, const char *start, const char *const *words,
                         size_t count);

/* ~ or null: what YAML elsewhere takes for nothing. */
bool text_stands_for_nothing(const char *text);

/* How to put a value right that is not what the field wants. */
const char *number_remedy(struct arena *arena, const struct field *field, const char *text);
const char *comma_remedy(struct arena *arena, const char *text);   /* two numbers, a comma */
const char *answer_remedy(struct arena *arena, const char *text);

#endif
