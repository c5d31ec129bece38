/* names.h - lists of names, such as boats, cards and files (room: app). Private to
 * src/app. */
#ifndef MAYDECK_NAMES_H
#define MAYDECK_NAMES_H

#include <stdbool.h>
#include <stddef.h>

#include "arena.h"
#include "text.h"

struct names {
    const char **at;
    size_t count, room;
    const char **slots;      /* the same hashed, once there are many; never looked at by others */
    size_t slot_count, slotted;
};

/* Adds a copy. */
void names_add(struct names *names, const char *name, struct arena *arena);
bool names_hold(const struct names *names, const char *name);

/* In the order of their bytes. */
void names_sort(struct names *names);

/* How to mend a name that is none of these: those that it may stand for, else all of them behind
 * `head`, with commas between. */
const char *names_remedy(const struct names *names, const char *name, const char *head,
                         struct arena *arena);

#endif
