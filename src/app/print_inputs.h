/* print_inputs.h - what the pages of a boat are made of, as one sum, and whether her files of an
 * earlier run stand for what this one would print (room: app). Private to src/app. */
#ifndef MAYDECK_PRINT_INPUTS_H
#define MAYDECK_PRINT_INPUTS_H

#include "print_boat.h"

struct printed_by_boat printed_by_boat(const struct printed_list *list, struct arena *arena);

/* SHA-256 of all that the pages of the boat follow from: the program and its libraries, its texts
 * and faces, the base's files, hers, the options and the date. Of a boat whose file was read. */
const char *inputs_sum(const struct print_run *run, const struct boat_job *boat);

/* Gives the run its name in the list of the folder: by all that its files follow from, so that a
 * run that is done again has the same name and writes the same list. */
void run_name(struct print_run *run);

/* Do the files of a whole earlier run still stand that was made of the same? Then `made` tells so,
 * and the boat need not be printed. Never with --again, nor where something keeps a card of hers
 * from being printed: that is told by each run. */
bool files_stand(const struct print_run *run, struct boat_job *boat, struct print_made *made);

#endif
