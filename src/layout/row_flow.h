/* row_flow.h - the words of a row as they run over its lines: measured, or placed by the very
 * same walk. Private to src/layout. */
#ifndef MAYDECK_ROW_FLOW_H
#define MAYDECK_ROW_FLOW_H

#include "rows.h"

struct row_flow {
    const struct pen *pen;
    struct pen *on;               /* where words are placed; NULL: they are only measured */
    const struct row_setting *setting;
    enum row_form form;
    mpt left, right;              /* between which its words stand */
    mpt top;                      /* of the line being filled; */
    mpt pitch, baseline;          /* its height, and where its words stand */
    mpt x;                        /* where the next word comes */
    size_t place_lines, item_lines;
    mpt over;                     /* how far the longest line passes `right`, */
    struct place over_at;         /* and whose words end it */
};

/* Runs through the words of the row, from the top of its first line; a row on one line is as
 * high as `height`. */
void row_flow_run(struct row_flow *flow, const struct card_row *row, struct point from,
                  mpt height);

#endif
