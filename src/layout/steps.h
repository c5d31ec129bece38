/* steps.h - the steps of a card and their parts, laid out at a size and placed as they were
 * laid out. Private to src/layout. */
#ifndef MAYDECK_STEPS_H
#define MAYDECK_STEPS_H

#include "layout_room.h"

/* ---- steps_block.c: see steps_lay in layout_room.h ---- */

struct style row_style(enum face_role face, mpt size);

/* Of the words of a step, behind its number and the signs. */
mpt step_indent(const struct pen *pen);

/* Of a sign below the number of its step, `x` being the column's left edge. */
struct area step_sign_area(const struct pen *pen, mpt x, mpt top);

/* A tag in its black box: how wide the box must be, and the tag centred in the box, whose
 * height it takes from its line `area` where that is lower. */
mpt row_tag_width(const struct pen *pen, const char *tag, mpt size);
void row_tag_place(struct pen *pen, const char *tag, mpt size, struct area area,
                   struct place origin);

/* Tells of a line of the steps how far it is too long, and how many letters that is.
 * False: it is not. */
bool too_long_tell(struct pen *pen, struct place origin, mpt over, mpt size);

/* ---- table_block.c: the openings of a step in two columns, beside the indent ---- */

struct laid_table {
    const struct card_step *step;
    mpt size;                     /* of its type */
    mpt width, height;            /* no height: the step has no table */
    mpt tag;                      /* width of the boxes of its tags */
    mpt excess;                   /* how far the widest cell passes its column; <= 0: it
                                     does not */
    struct place excess_at;       /* whose cell that is */
    const struct laid_line *lines;
};
struct laid_table table_lay(const struct pen *pen, const struct card_step *step, mpt row_size,
                            mpt width);

/* Each cell that is too long is told. False: none is. */
bool table_tell(struct pen *pen, const struct laid_table *laid);
void table_place(struct pen *pen, const struct laid_table *laid, mpt x, mpt top);

/* ---- steps_budget.c ---- */

/* A card has no more rows. */
#define CARD_ROWS_MOST 14

/* Those of all steps. */
size_t steps_rows(const struct steps_facts *steps);

/* ---- figure_block.c ---- */

/* Has the figure room on the lines that a figure may have, in that width? */
bool figure_fits(const struct pen *pen, const struct card_figure *figure, mpt width);

struct laid_figures {
    struct paragraph *figures;
    size_t count;
    mpt height;
};
struct laid_figures figures_lay(const struct pen *pen, const struct card_step *step,
                                mpt row_size, mpt width);
void figures_place(struct pen *pen, const struct laid_figures *laid, mpt x, mpt top);

/* ---- a step ---- */

struct laid_step {
    const struct card_step *step;
    struct paragraph headline;    /* on one line */
    struct paragraph lethal;      /* what kills there; empty where nothing does */
    struct laid_table table;
    struct laid_figures figures;
};

#endif
