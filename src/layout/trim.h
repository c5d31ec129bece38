/* trim.h - a sheet as it stands where not all of it has room. Private to src/layout. */
#ifndef MAYDECK_TRIM_H
#define MAYDECK_TRIM_H

#include "page.h"
#include "sheet.h"

struct trim {
    int least[BLOCK_COUNT];       /* what yields as much as this of a block, or more, is gone */
    /* Has the figure a place at all? NULL: all have. */
    bool (*stands)(void *of, const struct card_figure *figure);
    void *of;
};

/* With which nothing yields. */
struct trim trim_nothing(void);

/* The sheet without what yields. The blocks of the whole stay as they are. */
const struct sheet *sheet_trimmed(const struct sheet *whole, const struct trim *trim,
                                  struct arena *arena);

/* What goes next: the highest of what yields in it; YIELDS_NEVER: nothing does any more. */
int yields_highest(const struct sheet *sheet);

/* What the sheet lacks that was trimmed so, in the order of the whole; gives how many. */
size_t yielded_list(const struct sheet *whole, const struct trim *trim, struct arena *arena,
                    const struct yielded **list);

#endif
