/* steps.h - the steps of a card and their parts, laid out at a size and placed as they were
 * laid out. Private to src/layout. */
#ifndef MAYDECK_STEPS_H
#define MAYDECK_STEPS_H

#include "marked.h"
#include "rows.h"

/* ---- table_block.c: the openings of a step in two columns, beside the indent ---- */

struct laid_openings;

struct laid_table {
    const struct card_step *step;
    struct row_setting setting;   /* of a column */
    mpt height;                   /* 0: the step has no table */
    mpt excess;                   /* how far the widest line passes its column; <= 0: none
                                     does */
    struct place excess_at;       /* what that line is about */
    const struct laid_openings *parts;
    size_t count;
};
struct laid_table table_lay(const struct pen *pen, const struct card_step *step, mpt row_size,
                            mpt width);

/* Each line that is too long is told. False: none is. */
bool table_tell(struct pen *pen, const struct laid_table *laid);
void table_place(struct pen *pen, const struct laid_table *laid, mpt x, mpt top);

/* From the left edge of the column to headlines, notes and tables, behind the disc. */
mpt step_indent(const struct pen *pen);

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

/* A row of more pieces is never on one line. */
#define ON_ONE_LINE_MOST 2

/* ---- steps_cuts.c ---- */

/* What makes the steps so much lower: words to be shortened, and where the first stand; NULL:
 * that does not make enough room. */
struct steps_cuts { const char *words; struct place origin; };
struct steps_cuts steps_cuts_find(const struct pen *pen, const struct laid_steps *steps,
                                  mpt over);

/* ---- a step ---- */

struct laid_step {
    const struct card_step *step;
    struct marked_styles headline;    /* of its words, on one line */
    struct paragraph headline_lines;  /* on two, where that is too long at the floor; else empty */
    struct paragraph notes;           /* what kills there, and what must be so; above the rows */
    const struct laid_row *rows;
    struct laid_table table;
    struct laid_figures figures;
    mpt second_lines;             /* how much higher rows of two lines make it */
};

#endif
