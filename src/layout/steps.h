/* steps.h - the steps of a card and their parts, laid out at a size and placed as they were
 * laid out. Private to src/layout. */
#ifndef MAYDECK_STEPS_H
#define MAYDECK_STEPS_H

#include "rows.h"

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
    mpt second_lines;             /* how much higher rows of two lines make it */
};

#endif
