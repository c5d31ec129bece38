/* procedure_room.h - what the files that read procedures share. Private to
 * src/procedure. */
#ifndef MAYDECK_PROCEDURE_ROOM_H
#define MAYDECK_PROCEDURE_ROOM_H

#include "item.h"
#include "procedure.h"
#include "reading.h"

/* One procedure as it is being read. */
struct procedure_reading {
    const struct procedure_files *files;
    struct procedure *procedure;
    const struct authorities *authorities;
    struct text_value *names;      /* {names} in texts, each at the place of its text */
    size_t name_count, name_room;
    struct arena *arena;
    struct problems *problems;
};

/* What the words of a place need to stand on. */
enum footing {
    FOOTING_STEP,     /* sources, or practice */
    FOOTING_WARNING   /* sources, all VA or VB, one of them current */
};

void basis_check(const struct procedure_reading *reading, const struct basis *basis,
                 enum footing footing, struct place place, const char *what);

/* Checks that need the whole procedure: numbers of things, names of steps. */
void procedure_check(const struct procedure_reading *reading);

/* The condition under a key, NULL where the key was left out. */
const struct condition *when_read(const struct procedure_reading *reading,
                                  const struct node_value *node);

#endif
