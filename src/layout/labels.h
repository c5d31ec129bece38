/* labels.h - labels in two columns beside the plan, each led to its place.
 * Private to src/layout. */
#ifndef MAYDECK_LABELS_H
#define MAYDECK_LABELS_H

#include <stdbool.h>
#include <stddef.h>

#include "arena.h"
#include "page.h"

/* A label of some height and the box on the plan that it speaks of. */
struct label {
    struct area box;              /* given */
    mpt height;                   /* given */
    mpt drop, foot;               /* given: a leader may arrive from `drop` to `foot` below
                                     its top */
    bool right;                   /* found: in the right column */
    mpt top;                      /* found */
    struct point from, to;        /* found: the leader, from the rim of the box */
};

/* left and right: the columns; a leader arrives at their edge towards the plan. */
struct label_columns {
    struct area left, right;
    mpt gap;                      /* least space between two labels */
    mpt clearance;                /* least space between a leader and a foreign box */
    bool own_side;                /* what lies well to one side is led to that side only */
};

/* The better first. */
enum labels_found {
    LABELS_LED,       /* leaders that cross nothing */
    LABELS_KEYED,     /* all labels have their place, but no leaders are possible: the
                         tags on the plan are the key */
    LABELS_NO_ROOM    /* they do not fit: *over tells by how much */
};

/* Gives each label its column and place, in the order of the places on the plan,
 * so that the leaders are as short as can be, do not cross and keep clear of
 * other boxes (least total length; else the pair's cost is raised, at most 20
 * times). */
enum labels_found labels_arrange(struct label *labels, size_t count,
                                 const struct label_columns *columns, struct arena *arena,
                                 mpt *over);

/* No two leaders meet, none comes nearer than the clearance to a foreign box. */
bool labels_clean(const struct label *labels, size_t count, mpt clearance);

#endif
