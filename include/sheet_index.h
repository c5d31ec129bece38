/* sheet_index.h - the two indexes of a set: where that is which saves lives, and which card to
 * take by what one sees, hears or smells first (room: compose). */
#ifndef MAYDECK_SHEET_INDEX_H
#define MAYDECK_SHEET_INDEX_H

#include <stddef.h>

#include "source.h"
#include "symbol.h"
#include "zone.h"

/* Where a kind of gear is that saves lives. */
struct index_spot {
    const char *place;
    const char *const *tags;      /* all there */
    size_t tag_count;
    enum level level;             /* of all of them */
    struct place origin;
};
struct index_entry {
    const char *name;
    const struct index_spot *spots;
    size_t spot_count;
};
struct index_facts {
    const struct index_entry *entries;
    size_t count;
};

/* What one sees, and the card of it. */
struct seen_line {
    const char *text;             /* Smell gas */
    const char *number;           /* of the card: 9, 3P */
    enum symbol_key symbol;       /* of the card */
    struct place origin;
};

/* Lines of one kind, by the number of their card. */
struct seen_group {
    const char *name;             /* FIRE, SMOKE */
    const struct seen_line *lines;
    size_t count;
};

struct seen_facts {
    const char *ask, *take;       /* the heads of the columns of what is seen, and of cards */
    const struct seen_group *groups;   /* none is empty */
    size_t count;
};

#endif
