/* findings.h - what a check found, told so that it can be read for a whole fleet: what many
 * boats share once, with their names (room: app). Private to src/app. */
#ifndef MAYDECK_FINDINGS_H
#define MAYDECK_FINDINGS_H

#include "fleet.h"

/* ---- finding_words.c ---- */

/* A message parted into what all findings of its kind say and what is one finding's own: tags,
 * numbers and dates, words in quotes or brackets. */
struct finding_words {
    const char *common;        /* with one sign in the place of each piece of its own */
    struct names own;          /* these pieces in order; "F2, E1" is one */
};

struct finding_words finding_words_of(const char *text, struct arena *arena);

/* The pieces of `words` that are not those of `first`, which has the same common words:
 * "F2; 2027-04". "" where all are the same. */
const char *finding_own_words(const struct finding_words *first,
                              const struct finding_words *words, struct arena *arena);

/* ---- finding_groups.c ---- */

struct finding {
    const struct problem *problem;
    struct finding_words words;
    const char *key;           /* equal for findings that are told together */
    size_t index;              /* in the order of files and lines */
};

/* Findings that say the same of several places or boats, in the order of files and lines. */
struct finding_group {
    const struct finding *members;
    size_t count;
    struct names boats;        /* keys of the boats that have it, each once */
};

/* ALONE: each finding is a group. ALIKE: those of one check, severity, words and remedy are
 * one, but for what is their own; of errors only what is the same to the letter. */
enum finding_grouping { FINDINGS_ALONE, FINDINGS_ALIKE };

struct finding_groups {
    enum finding_grouping grouping;
    struct finding_group *at;
    size_t count;
};

/* Groups of all problems but refusals and failures: the gravest first; of one severity what
 * several boats share first, then by file, line and column. */
struct finding_groups finding_groups_of(const struct problems *problems,
                                        enum finding_grouping grouping, struct arena *arena);

/* "all 40 boats", or "all 8 like sloop, tern": where all boats that were asked for are among
 * these, or all that are like a model, they are told by their number. */
const char *boats_words(const struct fleet *fleet, const struct names *boats);

/* ---- finding_print.c ---- */

/* Adds all groups: the first finding of each with its line and remedy, then the places of the
 * others. Groups of like findings that have a subject, one check and the same boats are told
 * as one. */
void findings_print(const struct fleet *fleet, const struct finding_groups *groups,
                    struct text_builder *out);

/* ---- line_fill.c: texts with commas between, in lines of at most 100 characters ---- */

struct line_fill {
    struct text_builder *out;
    int indent;                /* of the second line and those after it */
    size_t column;
    size_t count;              /* texts so far */
};

/* Begins with the head, which ends with a space. */
struct line_fill line_fill_begin(struct text_builder *out, int indent, const char *head);

/* A text that would reach beyond the line begins the next one. */
void line_fill_add(struct line_fill *fill, const char *text);

void line_fill_end(struct line_fill *fill);

#endif
