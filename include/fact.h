/* fact.h - every fact of a block, in order (room: compose). */
#ifndef MAYDECK_FACT_H
#define MAYDECK_FACT_H

#include "arena.h"
#include "sheet.h"

enum fact_kind {
    FACT_PRINTED,     /* words that stand on the page, and are in the check code */
    FACT_SHOWN,       /* the same, but they hang on the page's room or on the day: in no code */
    FACT_CITED,       /* a source: in the code, and on the page or, where that has no room, on
                         the safety plan */
    FACT_KNOWN        /* in the code, and not on the page in these words */
};

struct fact {
    enum fact_kind kind;
    const char *name;             /* what it is: headline, tag, place */
    const char *text;             /* never NULL */
    bool joined;                  /* it stands directly behind the fact before it */
    struct place origin;          /* line 0: that of its block */
};

/* Gives each fact to `visit`, in the order in which they are read; `of` is for the visitor.
 * Whoever needs all that a sheet says asks here: what is new in a block then is in the check
 * code, in dumps and before the proofreader at once. A fact lives until `visit` returns, its
 * text as long as `arena` or the sheet. */
void block_visit(const struct block *block, struct arena *arena,
                 void (*visit)(void *of, const struct fact *fact), void *of);

#endif
