/* words_room.h - what the files of the room words share. Private to src/words. */
#ifndef MAYDECK_WORDS_ROOM_H
#define MAYDECK_WORDS_ROOM_H

#include <stdbool.h>
#include <stddef.h>

#include "item.h"
#include "reading.h"
#include "words.h"
#include "zone.h"

/* ---- words_plural.c ---- */

/* Numbers from `low` to `high`, or numbers that end so: in their last `digits` digits
 * (0: the whole number is meant). */
struct number_range {
    uint64_t low, high;
    size_t digits;
};

struct number_ranges {
    const struct number_range *at;
    size_t count;
};

/* The rule of one form: the number is one of `is` or ends as `ends`, and not as `not_`. */
struct plural_rule {
    bool given;
    struct number_ranges is, ends, not_;
};

/* Reads the rules of a language; what is wrong is told at its place. */
void plural_rules_read(const struct yaml_node *node, struct plural_rule rules[PLURAL_COUNT],
                       struct arena *arena, struct problems *problems);

enum plural plural_of(const struct plural_rule rules[PLURAL_COUNT], uint64_t count);

/* Is the form for one single number, so that its text need not say which? */
bool plural_is_single(const struct plural_rule *rule);

/* ---- words_read.c ---- */

/* `name`: what a piece is called that stands alone, where that is not its first form. */
struct item_words {
    struct text_value name;
    struct text_value forms[PLURAL_COUNT];
};

/* The joints of a list, for which the places of the forms are used. */
enum joint { JOINT_TWO, JOINT_MANY, JOINT_LAST, JOINT_COUNT };

/* The text of a word by form of its number or by joint of its list; where the file has one
 * text for all, `only`. */
struct word_texts {
    struct text_value only;
    struct text_value forms[PLURAL_COUNT];
};

struct words {
    struct text_value language, name;
    struct plural_rule plurals[PLURAL_COUNT];
    struct word_texts texts[WORD_COUNT];
    struct item_words items[ITEM_COUNT];
    struct text_value zones[ZONE_COUNT];
    struct list_value sets[WORD_SET_COUNT];
};

/* One row for each form that the language has, in the order of enum plural: `rows` has room
 * for all; gives how many there are. Each value lies in an array of PLURAL_COUNT texts that
 * begins at `offset` of the record. */
size_t form_rows_make(const struct words *words, size_t offset, struct field *rows);

/* ---- words_sets.c ---- */

/* Reads the sections of sets; `proof` may be NULL: left out. */
void word_sets_read(struct words *words, const struct yaml_node *reading,
                    const struct yaml_node *proof, struct arena *arena,
                    struct problems *problems);

/* ---- words_texts.c ---- */

/* Reads the section `words` by the shapes of WORD_LIST; needs the rules of plurals. */
void word_texts_read(struct words *words, const struct yaml_node *node, struct arena *arena,
                     struct problems *problems);

#endif
