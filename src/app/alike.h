/* alike.h - which of many texts are equal (room: app). Private to src/app. */
#ifndef MAYDECK_ALIKE_H
#define MAYDECK_ALIKE_H

#include <stddef.h>

#include "arena.h"

/* Equal texts as chains, each in the order of its indices. */
struct alike {
    size_t count;
    const size_t *first;       /* of each text, the index of the first that is equal to it */
    const size_t *next;        /* the next one after it; `count`: none */
    const size_t *size;        /* at the first of a chain: how many there are */
};

/* In time that grows as their number does. A NULL is equal to none. */
struct alike alike_of(const char *const *texts, size_t count, struct arena *arena);

#endif
