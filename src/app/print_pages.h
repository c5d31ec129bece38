/* print_pages.h - the pages of one boat that were asked for, as leaves of a document (room: app).
 * Private to src/app. */
#ifndef MAYDECK_PRINT_PAGES_H
#define MAYDECK_PRINT_PAGES_H

#include "draw.h"
#include "job.h"

/* Pages that were asked for, and the sheet of each. */
struct chosen {
    const struct page **pages;
    const struct sheet **sheets;
    size_t count;
};

/* Of the sheets that were laid out, those that --card asks for. */
struct chosen pages_choose(const struct sheets *sheets);

/* Of the pages from `first` on, how many are of the same sheet. */
size_t chosen_of_sheet(const struct chosen *chosen, size_t first);

/* A document of these pages, under her name and that title. */
struct document chosen_document(const struct sheets *sheets, const struct chosen *chosen,
                                const char *title);

#endif
