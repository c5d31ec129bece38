/* choice.h - an enum and its words from one list, so that neither can lack what the other
 * has (room: base).
 *
 *     #define COLOUR_LIST(X) X(COLOUR_RED, "red") X(COLOUR_BLUE, "blue")
 *     enum colour { COLOUR_NONE, COLOUR_LIST(CHOICE_NAME) COLOUR_COUNT };
 *     const char *const colour_words[] = {COLOUR_LIST(CHOICE_WORD) NULL};
 *
 * The word of a value stands at the value less one. */
#ifndef MAYDECK_CHOICE_H
#define MAYDECK_CHOICE_H

#include <stddef.h>

#define CHOICE_NAME(name, word) name,
#define CHOICE_WORD(name, word) word,

/* The value of that word; 0: it is none of them. `words` ends with NULL. */
unsigned choice_find(const char *const *words, const char *word);

/* The word of a value; NULL for 0. */
const char *choice_word(const char *const *words, unsigned value);

#endif
