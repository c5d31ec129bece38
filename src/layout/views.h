/* views.h - pages of other sheets, small, on a page of a form. Private to src/layout. */
#ifndef MAYDECK_VIEWS_H
#define MAYDECK_VIEWS_H

#include "pages.h"

struct laid_views {
    const struct views_facts *views;
    size_t columns;
    mpt width, pitch;             /* of a view; from row to row */
};

/* As large as the area has room for all of them. False: it has none, since what stands below a
 * view must be read. */
bool views_lay(const struct pen *pen, struct area area, struct laid_views *laid);
void views_place(struct pen *pen, const struct laid_views *laid, struct point corner);

#endif
