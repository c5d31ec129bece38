/* steps.h - what the files of the steps share. Private to src/layout. */
#ifndef MAYDECK_STEPS_H
#define MAYDECK_STEPS_H

#include "layout_room.h"

#define INDENT MM(10.4)
#define SIGN_SIDE MM(7)
#define SIGN_AT MM(1.2)        /* signs stand below the number, tags below the headline */

/* steps_block.c */

struct style row_style(enum face_role face, mpt size);

/* A tag in its black box: how wide the box must be, and the tag centred in one of that
 * width. */
mpt row_tag_width(const struct pen *pen, const char *tag, mpt size);
void row_tag_place(struct pen *pen, const char *tag, mpt size, mpt x, mpt top, mpt height,
               mpt width, struct place origin);

/* Tells of a line of the steps how far it is too long, and how many letters that is.
 * False: it is not. */
bool too_long_tell(struct pen *pen, struct place origin, mpt over, mpt size);

/* table_block.c: the openings of a step in two columns, `width` beside the indent */

/* 0 for a step without a table. */
mpt table_height(const struct pen *pen, const struct card_step *step, mpt row_size,
                 mpt width);

/* How far the widest cell passes its column (below 0: it does not), and whose it is. */
mpt table_excess(const struct pen *pen, const struct card_step *step, mpt row_size,
                 mpt width, struct place *at);

/* Each cell that is too long is told. False: none is. */
bool table_tell(struct pen *pen, const struct card_step *step, mpt row_size, mpt width);
void table_place(struct pen *pen, const struct card_step *step, mpt row_size, mpt x,
                 mpt top, mpt width);

#endif
