/* words_room.h - what the files of the room words share. Private to src/words. */
#ifndef MAYDECK_WORDS_ROOM_H
#define MAYDECK_WORDS_ROOM_H

#include <stdbool.h>
#include <stddef.h>

#include "item_list.h"
#include "reading.h"
#include "words.h"
#include "zone_list.h"

#define COUNT_ONE(...) +1
enum { ITEM_TOTAL = 0 ITEM_LIST(COUNT_ONE), ZONE_TOTAL = 0 ZONE_LIST(COUNT_ONE) };
#undef COUNT_ONE

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

/* ---- words_read.c ---- */

/* `name`: what a piece is called that stands alone, where that is not its first form. */
struct item_words {
    struct text_value name;
    struct text_value forms[PLURAL_COUNT];
};

struct words {
    struct text_value language, name;
    struct plural_rule plurals[PLURAL_COUNT];
    struct text_value texts[WORD_COUNT];
    struct item_words items[ITEM_TOTAL];
    struct text_value zones[ZONE_TOTAL];
};

/* Length of a {name} at the start of `text`, braces included; 0 if there is none. */
size_t blank_length(const char *text);

#endif
