/* plan_lead.h - tags that stand away from their true place. Private to src/layout. */
#ifndef MAYDECK_PLAN_LEAD_H
#define MAYDECK_PLAN_LEAD_H

#include "plan_spot.h"

/* Tags as they were placed. */
struct placed_tags {
    const struct hull_view *view;
    const struct marker *markers;
    const struct area *boxes;     /* by marker: where its tag stands */
    const bool *found;            /* by marker: there was room for its tag */
    size_t count;                 /* of markers */
};

/* How the tag at `index` is shown to belong to its place. */

enum lead {
    LEAD_NONE,        /* the tag covers its true place, or that is not drawn */
    LEAD_TOGETHER,    /* a tag of the same place covers it: they stand together there */
    LEAD_DRAWN,       /* a thin line can be drawn to a dot at the true place */
    LEAD_LOST         /* other tags lie on the true place or between, or the line meets that
                       * of a tag before it */
};

/* The lead of the tag at `index`, beside all others. */
enum lead tag_lead(const struct placed_tags *tags, size_t index);
/* Draws the line of a tag whose lead is LEAD_DRAWN, with a dot at its place. */
void tag_lead_draw(struct pen *pen, const struct placed_tags *tags, size_t index);

#endif
