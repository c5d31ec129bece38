/* labels_room.h - what labels.c and labels_improve.c share: labels while they are being
 * arranged. Private to these two. */
#ifndef MAYDECK_LABELS_ROOM_H
#define MAYDECK_LABELS_ROOM_H

#include "assignment.h"
#include "geometry.h"
#include "labels.h"

/* A run of labels of one column that touch: `wish` is the sum of the tops they wish for,
 * `count` how many they are, so that wish / count is where the run goes. */
struct run_of_labels { int64_t wish; int64_t count; };

/* The labels while they are being arranged. A port is a point where a leader can arrive,
 * one a label's place: first those of the left column from the top, then those of the
 * right. Labels keep their numbers; what changes is the port of each. */
struct arranging {
    struct label *labels;
    size_t count;
    const struct label_columns *columns;
    struct arena *arena;
    struct point *ports;
    size_t port_count;
    size_t left_ports;         /* those of the left column: ports[0] to here */
    double *raised;            /* by label and port: what the pair costs beyond its length */
    size_t *chosen;            /* by label: the number of its port */
    size_t *order;             /* the labels by port */
    struct run_of_labels *runs;  /* room for columns_stack, which runs many times */
    size_t work_done;          /* pairs of labels that labels_improve.c has looked at */
};

/* How many labels a column has, and how far they pass its foot; negative: they fit. */
size_t column_count(const struct arranging *arranging, enum label_side side);
mpt column_over(const struct arranging *arranging, enum label_side side);

/* Are the labels of a column, of either, too high for it? */
bool columns_overflow(const struct arranging *arranging);

/* Gives the labels tops in the order that they have, draws each leader, and moves the
 * ports to where the leaders arrive. */
void columns_stack(struct arranging *arranging);

/* Does the leader of the label come nearer than the clearance to the box? */
bool box_near(const struct label *led, struct area box, mpt clearance);

/* Would the label be astray in that column: on the other side of the boat than its place,
 * which lies well off her middle line? Where the columns do not ask for own sides no
 * label is. */
bool label_astray(const struct arranging *arranging, const struct label *label,
                  enum label_side side);

/* labels_improve.c: moves and swaps labels as long as fewer leaders are wrong, then as
 * long as they get shorter. True: none is wrong in the end. */
bool order_improve(struct arranging *arranging);

/* labels_improve.c: puts some labels elsewhere and improves what comes of it, several
 * times, until no leader is wrong. False: none of these beginnings led there. */
bool order_shake(struct arranging *arranging);

/* labels_improve.c: puts each label on the side of its place and in the order of height,
 * as another beginning than least length. False: a column would overflow. */
bool order_by_height(struct arranging *arranging);

#endif
