/* steps_parts.h - the parts of the steps of a card, each laid out once for what it hangs on: the
 * size of headlines, or that of rows. Private to src/layout. */
#ifndef MAYDECK_STEPS_PARTS_H
#define MAYDECK_STEPS_PARTS_H

#include "steps.h"

struct laid_headline {
    struct marked_styles styles;      /* of its words, on one line */
    struct paragraph lines;           /* on two, where that is too long at the floor; else empty */
    mpt excess;
};

/* The parts of a step that hang on the size of its rows alone; rows as they are asked for. */
struct step_body {
    struct paragraph notes;           /* what kills there, and what must be so; above the rows */
    struct laid_table table;
    struct laid_figures figures;
    struct laid_row *rows[ROW_FORM_COUNT];    /* by form: one not laid out has no row */
};

struct steps_bodies {
    struct row_setting setting;
    struct step_body *steps;
};

/* Of the sheet, in a column of that width; headlines in what of it is behind the disc. */
const struct laid_headline *headlines_of(const struct pen *pen, mpt size, mpt width);
const struct steps_bodies *bodies_of(const struct pen *pen, mpt size, mpt width);

/* A row of the step in that form. */
const struct laid_row *row_in_form(const struct pen *pen, const struct steps_bodies *bodies,
                                   const struct card_step *step, size_t index,
                                   enum row_form form);

#endif
