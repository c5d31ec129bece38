/* pseudo_case.h - a second language for the tests of composed cards: qps, made from English by
 * tests/pseudo.awk, letter for letter as long. */
#ifndef MAYDECK_PSEUDO_CASE_H
#define MAYDECK_PSEUDO_CASE_H

#include "card_case.h"

/* The words of qps; the case keeps those of English. */
const struct words *pseudo_words(struct card_case *card_case);

/* The case's procedures become the program's own with their texts in English and qps. */
void pseudo_procedures(struct card_case *card_case);

/* The case's boat becomes that of the file, the texts of her record in English and qps. */
void pseudo_boat(struct card_case *card_case, const char *file);

#endif
