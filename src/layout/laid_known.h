/* laid_known.h - parts of a card that were laid out before at a size and a width: fitting comes
 * back to them with each size of the panel, and when a set is tried again. Private to
 * src/layout. */
#ifndef MAYDECK_LAID_KNOWN_H
#define MAYDECK_LAID_KNOWN_H

#include "layout_room.h"

enum laid_part { LAID_HEADLINES, LAID_STEPS, LAID_BOXES, LAID_PHRASES, LAID_SCRIPT_LINES };

/* What a laid part hangs on, beside the paper and the plan of the set. */
struct laid_key {
    enum laid_part part;
    const void *of;           /* its facts, or its sheet: they stand as long as the set */
    int way;                  /* in which it is laid out */
    mpt size, width;
    const struct words *words;
};

struct known_parts;
struct known_parts *parts_begin(struct arena *arena);

/* Where the part is kept: NULL stands there until the caller puts it there. */
void **part_known(struct known_parts *known, const struct laid_key *key);

/* Each part that is kept was laid out once: so many were. */
size_t parts_count(const struct known_parts *known);

#endif
