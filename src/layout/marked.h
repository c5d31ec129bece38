/* marked.h - a text with **bold** parts on one line, where regular and bold words may differ in
 * size. Private to src/layout. */
#ifndef MAYDECK_MARKED_H
#define MAYDECK_MARKED_H

#include "layout_room.h"

struct marked_styles { struct style plain, bold; };

mpt marked_width(const struct pen *pen, const struct marked_styles *styles, const char *text);

/* Places it as one paragraph from that point of the base line on; gives its width. */
mpt marked_place(struct pen *pen, const struct marked_styles *styles, const char *text,
                 struct point at, struct place origin);

#endif
