/* words_room.h - what the files of the room words share. Private to src/words. */
#ifndef MAYDECK_WORDS_ROOM_H
#define MAYDECK_WORDS_ROOM_H

#include <stdbool.h>
#include <stddef.h>

#include "end_state.h"
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

/* A rule as the file has it. */
struct rule_lists {
    struct list_value is, ends, not_;
};
struct plural_entry {
    struct section_value section;
    struct rule_lists lists;
};

/* The rules that a language's file has, understood; what is wrong is told at its place. */
void plural_rules_settle(const struct plural_entry entries[PLURAL_COUNT],
                         struct plural_rule rules[PLURAL_COUNT], struct arena *arena,
                         struct problems *problems);

enum plural plural_of(const struct plural_rule rules[PLURAL_COUNT], uint64_t count);

/* Is the form for one single number, so that its text need not say which? */
bool plural_is_single(const struct plural_rule *rule);

/* ---- words_known.c ---- */

/* Other names of a key of a base's files, or of a word that may stand in them. */
struct synonym_entry {
    struct text_value key;
    struct list_value names;
    struct place place;
};

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
    struct text_value states[STATE_COUNT];
    struct list_value sets[WORD_SET_COUNT];
    struct number_value longer;
    struct list_value item_synonyms[ITEM_COUNT], zone_synonyms[ZONE_COUNT];
    struct entries_value key_synonyms, choice_synonyms;    /* of struct synonym_entry */
    const char *sum;
};

/* ---- words_fields.c ---- */

/* A file of words as its tables read it. What forms there are is known once the rules of
 * plurals are: until then words and names of items stay as they are in the file. */
struct words_file {
    struct words words;
    struct section_value plurals, item_section, zones, states, reading, proof, synonyms;
    struct section_value synonym_items, synonym_zones;
    struct plural_entry rules[PLURAL_COUNT];
    struct node_value word_texts;
    struct node_value items[ITEM_COUNT];
};

/* Of the texts of a word by its number, the joints of a list, the section words, and the
 * names of an item. Those with forms list every form that any language has. */
extern const struct field_table form_table, joint_table, word_table, item_name_table;

/* The table's rows without those of forms that the language has not, and the others needed:
 * `rows` has room for all; gives how many there are. The forms are the last rows of the table,
 * in the order of enum plural. */
size_t rows_of_language(const struct words *words, const struct field_table *table,
                        struct field *rows);

/* ---- words_texts.c ---- */

/* Reads the section `words` by the shapes of WORD_LIST; needs the rules of plurals. */
void word_texts_read(struct words *words, const struct yaml_node *node, struct arena *arena,
                     struct problems *problems);

#endif
