/* form_print.h - printing forms, a file a boat (room: app). Private to src/app. */
#ifndef MAYDECK_FORM_PRINT_H
#define MAYDECK_FORM_PRINT_H

#include "job.h"

/* A form that a command prints. */
struct form_kind {
    struct set_kind kind;
    const char *file;              /* what the file is called behind the boat's key: survey */
};

/* Composes, lays out, proofreads and writes the form of each boat of the fleet as
 * BOAT-FILE.pdf in the folder of the options, or with --dump its pages as text; and tells of
 * each file on standard output. What went wrong is in the lists of problems of the fleet. True
 * where composing one told a deficiency: a boat lacks what the form is about. */
bool forms_print(const struct options *options, struct fleet *fleet,
                 const struct form_kind *form);

#endif
