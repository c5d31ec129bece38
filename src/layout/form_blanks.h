/* form_blanks.h - what a form asks below the cells of a line: words, boxes to tick and lines to
 * write upon, one behind the other. Private to src/layout. */
#ifndef MAYDECK_FORM_BLANKS_H
#define MAYDECK_FORM_BLANKS_H

#include "layout_room.h"

/* A part of what is asked: words, a box before them or a line behind them. */
struct laid_blank {
    struct paragraph words;       /* on one line; none: a line alone */
    enum laid_blank_box { BLANK_NO_BOX, BLANK_BOX } box;
    mpt room;                     /* of the line behind the words; 0: there is none */
    mpt x;                        /* from the left edge; */
    mpt y, tall;                  /* of its row below the cells; of parts beside the words none
                                     counts */
    mpt width;
};

/* Where they may stand: below the cells, and in a cell beside its words. */
struct blank_space {
    mpt width;                    /* below; */
    mpt beside;                   /* 0: there is none beside */
};

struct laid_blanks {
    struct laid_blank *parts;
    size_t count;
    size_t beside;                /* so many of the first stand beside the words, at the right */
    mpt height;                   /* of the others */
    mpt over;                     /* how far the widest passes the width; <= 0: none does */
};

/* Of a line of a form in that style. */
struct laid_blanks blanks_lay(const struct pen *pen, const struct style *style,
                              const struct form_line *line, struct blank_space space);

/* The upper left corners of both, and how high the cells are. */
struct blank_corners {
    struct point beside, below;
    mpt cells;
};
void blanks_place(struct pen *pen, const struct laid_blanks *laid,
                  const struct blank_corners *corners);

/* A box to tick in the middle of an area. */
void form_tick_place(struct pen *pen, struct area area);

#endif
