/* print_boat.h - the printing of one boat, in whatever process does it (room: app). Private to
 * src/app. */
#ifndef MAYDECK_PRINT_BOAT_H
#define MAYDECK_PRINT_BOAT_H

#include "job.h"
#include "print_drafts.h"
#include "print_made.h"
#include "printed.h"

/* Rows of the list of the folder, those of each boat side by side in their order. */
struct printed_by_boat {
    const struct printed_list *list;   /* NULL: nothing is written there */
    const struct printed_row **rows;
    size_t count;
};

/* Hexadecimal digits of the name of a run. */
#define PRINT_RUN_NAME 16

/* What all boats of a run share; nothing changes it while boats are printed. */
struct print_run {
    const struct options *options;
    const struct fleet *fleet;
    const struct job *job;
    bool registered;               /* there is a register */
    char id[PRINT_RUN_NAME + 1];   /* of the run, in the list of the folder */
    struct printed_by_boat listed; /* what lies in the folder by its list */
    struct print_drafts *drafts;   /* what waits in this process */
};

/* Prints the boat of that index: the work of many_use. What is made of her goes into `out`, as
 * print_made_pack writes it. */
void boat_print(const struct print_run *run, size_t index, struct text_builder *out);

#endif
