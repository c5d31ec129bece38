/* check_rest.h - what else to record: items that cards ask for and that neither the record nor a
 * message mentions (room: app). Private to src/app. */
#ifndef MAYDECK_CHECK_REST_H
#define MAYDECK_CHECK_REST_H

#include "job.h"

/* Of one boat; in the arena of the fleet. */
struct rest_row {
    const char *boat;
    struct names items;            /* in walking order; none: all is told */
    const char *lines;             /* to paste, a comment for each zone and item */
};

struct rest_row rest_row_of(const struct sheets *sheets);

/* Of one boat the lines to paste; of several the items, once for those that lack the same. */
void rest_rows_print(const struct fleet *fleet, const struct rest_row *rows, size_t count,
                     struct text_builder *out);

/* ---- check_differs.c ---- */

/* Opens each boat, and prints how those of each model differ from it: a line a difference,
 * with the boats that have it. */
void boats_differ_print(const struct options *options, const struct fleet *fleet);

#endif
