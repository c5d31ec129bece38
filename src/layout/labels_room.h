/* labels_room.h - what the two files that arrange labels share. Private to them. */
#ifndef MAYDECK_LABELS_ROOM_H
#define MAYDECK_LABELS_ROOM_H

#include "assignment.h"
#include "geometry.h"
#include "labels.h"

/* A run of labels that touch, as near to their places as they come together. */
struct run_of_labels { int64_t wish; int64_t count; mpt offset; };

/* The labels while they are being arranged. A port is where a label could stand:
 * first those of the left column from the top, then those of the right. */
struct arranging {
    struct label *labels;
    size_t count;
    const struct label_columns *columns;
    struct arena *arena;
    struct point *ports;
    size_t port_count, left_ports;
    double *raised;            /* by label and port */
    size_t *chosen;            /* by label: its port */
    size_t *order;             /* labels by port */
    struct run_of_labels *runs;  /* room for columns_stack, which runs many times */
    size_t work_done;          /* pairs of labels looked at by labels_improve.c */
};

/* How many labels a column has, and how far they pass its foot; negative: they fit. */
size_t column_count(const struct arranging *arranging, bool right);
mpt column_over(const struct arranging *arranging, bool right);

/* Puts the labels at their heights in the order they have, and the ports there. */
void columns_stack(struct arranging *arranging);

/* Does the leader of the label come nearer than the clearance to the box? */
bool box_near(const struct label *led, struct area box, mpt clearance);

/* Is the label on the other side of the boat than its place, which lies well off the
 * middle line? Never, where that is allowed. */
bool label_astray(const struct arranging *arranging, const struct label *label, bool right);

/* labels_improve.c: moves and swaps labels as long as leaders get less wrong, then
 * shorter. Are they clean in the end? */
bool order_improve(struct arranging *arranging);

/* labels_improve.c: changes the order at random and improves it, several times. */
bool order_shake(struct arranging *arranging);

/* labels_improve.c: each label on the side of its place, in the order of height, as
 * another beginning. false: a column would overflow. */
bool order_by_height(struct arranging *arranging);

#endif
