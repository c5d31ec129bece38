/* printed_put.h - PDFs into a folder that a run has for itself, each with its row in the list
 * there. Private to src/app. */
#ifndef MAYDECK_PRINTED_PUT_H
#define MAYDECK_PRINTED_PUT_H

#include "drafts.h"
#include "job.h"
#include "printed_file.h"

/* A run that prints into a folder. */
struct printed_run {
    struct printed_file list;
    char id[UNFORETOLD_TEXT];      /* of the run, in each of its rows */
    int hold;                      /* of the folder */
};

/* Claims the folder, which must be there, and opens its list. False, told: nothing is to be
 * printed. */
bool printed_run_begin(const char *folder, struct arena *arena, struct problems *problems,
                       struct printed_run *out);

/* SHA-256 of the boat's file; NULL: she has none, or it was not read. */
const char *record_sum(const struct boat_job *boat);

/* What the list says of a file with pages of that boat, but for its sum, bytes and cards. */
struct printed_row printed_row_of(const struct printed_run *run, const struct sheets *sheets,
                                  const char *name);

/* Puts one file with its row. False, told: it is as it was before. */
bool printed_put(struct printed_run *run, struct printed_row row, struct bytes bytes,
                 struct arena *arena, struct problems *problems);

/* Ends the list and lets others print. */
void printed_run_end(struct printed_run *run, struct problems *problems);

#endif
