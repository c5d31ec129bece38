/* form_print.h - printing forms, a file a boat (room: app). Private to src/app. */
#ifndef MAYDECK_FORM_PRINT_H
#define MAYDECK_FORM_PRINT_H

#include "job.h"

/* A form that a command prints. */
struct form_kind {
    struct set_kind kind;
    const char *file;              /* what the file is called behind the boat's key: survey */
    enum walk_rule walk;           /* of boats that are like a model */
    const struct paper *paper;     /* NULL: that of options and base */
};

/* Composes, lays out, proofreads and writes the form of each boat of the fleet as
 * BOAT-FILE.pdf, or BOAT-FILE.LANG.PAPER.pdf where these are not the base's, in the folder of
 * the options, or with --dump its pages as text; and tells of each file on standard output. What
 * went wrong is in the lists of problems of the fleet. True where composing one told a
 * deficiency: a boat lacks what the form is about. */
bool forms_print(const struct options *options, struct fleet *fleet,
                 const struct form_kind *form);

/* The same of that boat alone, who has no file in the base. */
void form_print_one(const struct options *options, struct fleet *fleet,
                    const struct form_kind *form, const struct boat *boat);

/* Is the paper that was asked for large enough for forms? False, with a problem, where it is
 * not. Where none was asked for and the base's is too small, they are printed on A4. */
bool form_paper_sound(const struct options *options, const struct fleet *fleet);

#endif
