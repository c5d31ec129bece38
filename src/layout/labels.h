/* labels.h - labels in two columns beside the plan, each led to the place that it speaks
 * of (private to src/layout). Lengths in thousandths of a point. */
#ifndef MAYDECK_LABELS_H
#define MAYDECK_LABELS_H

#include <stdbool.h>
#include <stddef.h>

#include "arena.h"
#include "page.h"

enum label_side { LABEL_LEFT, LABEL_RIGHT };

/* A label. The caller gives the first four members, labels_arrange finds the others. */
struct label {
    struct area box;              /* on the plan: the tag or mark that the label speaks of */
    mpt height;                   /* of the label */
    mpt drop, foot;               /* a leader may arrive from `drop` to `foot` below its top */
    enum label_side side;         /* the column it stands in */
    mpt top;                      /* y of its upper edge */
    struct point from, to;        /* its leader: from the rim of the box to the column */
};

/* The two columns and what holds in them. A leader arrives at the edge of a column that is
 * towards the plan. */
struct label_columns {
    struct area left, right;
    mpt gap;                      /* least space between two labels of a column */
    mpt clearance;                /* least space between a leader and a foreign box */
    bool own_side;                /* a place well to one side of the boat is led to that
                                     side only */
};

/* How labels_arrange ended, the better first. */
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
