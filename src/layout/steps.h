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

struct laid_headline;
struct step_body;
struct laid_step {
    const struct card_step *step;
    const struct laid_headline *headline;
    const struct step_body *body;     /* all below it but the rows */
    const struct laid_row *const *rows;
};

#endif
