/* zone_names.h - names of zones on a plan. Private to src/layout. */
#ifndef MAYDECK_ZONE_NAMES_H
#define MAYDECK_ZONE_NAMES_H

#include "plan_spot.h"

/* Names the card's zones where there is room: not on a tag, nor on what was drawn inside the
 * outline, which are the pen's items from `drawn_from` on. A name without room is left out: it
 * is no instruction. */
void zone_names_place(struct pen *pen, const struct hull_view *view, const struct taken *tags,
                      size_t drawn_from);

#endif
