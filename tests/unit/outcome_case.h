/* outcome_case.h - all that follows from a boat's record: what `check` tells of it, and what her
 * cards say. */
#ifndef MAYDECK_OUTCOME_CASE_H
#define MAYDECK_OUTCOME_CASE_H

#include "card_case.h"
#include "said_lines.h"

struct outcome {
    bool sound;                       /* else she has no cards */
    struct all_said said;
    const struct problem *problems;
    size_t count;
};

/* Of a boat's file, with the base, the words and the procedures of the case; in its arena. */
struct outcome outcome_of(struct card_case *card_case, const char *text);

/* Does it tell, of that severity or worse, a problem with one of these names in it which the other
 * does not tell? A name of NULL is none. */
bool outcome_tells(const struct outcome *outcome, const struct outcome *other,
                   enum severity least, const char *const names[3]);

/* The problems that the other does not tell, a line each on standard output. */
void outcome_print_new(const struct outcome *outcome, const struct outcome *other);

#endif
