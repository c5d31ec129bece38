/* print_overview.h - all cards of a boat small on one page (room: app). Private to src/app. */
#ifndef MAYDECK_PRINT_OVERVIEW_H
#define MAYDECK_PRINT_OVERVIEW_H

#include "job.h"

/* The page that shows these pages of the boat, on the paper that they stand on; NULL, with
 * problems, where it cannot be made. `wholes` are the sheets that they belong to, and pages of one
 * sheet stand side by side. */
const struct page *overview_page(const struct sheets *sheets, const struct page *const *pages,
                                 const struct sheet *const *wholes, size_t count);

#endif
