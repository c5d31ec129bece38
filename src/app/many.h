/* many.h - one kind of work on many things, by several processes at once; what came of each is
 * taken in order (room: app). Private to src/app. */
#ifndef MAYDECK_MANY_H
#define MAYDECK_MANY_H

#include <stdbool.h>
#include <stddef.h>

#include "packet.h"

/* What came of the work on one thing. */
struct many_result {
    struct packet packet;      /* what `work` wrote */
    const char *lost;          /* NULL; else the work was not done to its end: how it ended */
    struct arena *arena;       /* lives until `take` returns */
};

struct many_use {
    /* Works on the thing of that index. May run in a process of its own, whose memory dies with
     * it: only what is written into `out` is known afterwards, and what it did to files. */
    void (*work)(void *context, size_t index, struct text_builder *out);

    /* In this process, in the order of the indices. False: no work is begun any more. */
    bool (*take)(void *context, size_t index, struct many_result *result);
};

/* How many processors this machine has for the run: 1 or more. */
unsigned many_processors(void);

/* Works on things 0 to count - 1 in `processes` processes; in this one where that is 1, or where
 * no other can be begun. A process that ends in the middle loses the thing it was at, which is
 * told to `take`; the others go on. */
void many_run(const struct many_use *use, void *context, size_t count, unsigned processes);

#endif
