/* band_boat.h - the boat of a safety plan, whose length is cut into bands: what is drawn of her,
 * and where on the page each of her hulls lies. Private to src/layout. */
#ifndef MAYDECK_BAND_BOAT_H
#define MAYDECK_BAND_BOAT_H

#include "bands.h"
#include "hull_parts.h"

/* What a tag stands on. */
enum boat_body {
    BODY_MIDDLE,                  /* her hull, or what joins two; of three the middle one */
    BODY_PORT_HULL, BODY_STARBOARD_HULL,
    BODY_PORT_NET, BODY_STARBOARD_NET,    /* between the hulls of a trimaran */
    BODY_PLATFORM,                /* behind her */
    BODY_COUNT
};

/* From one height of the page to a lower one; both 0: nothing is there. */
struct stretch { mpt top, foot; };

/* From one x of the page to one right of it. */
struct span { mpt left, right; };

struct band_boat {
    const struct boat *boat;
    struct area area;             /* of her hulls; as broad as she is */
    struct hull_range range;
    struct stretch net, bridge;   /* between the hulls of a catamaran, or of a trimaran */
    struct stretch platform;
};

/* A band where it stands. */
struct placed_band { const struct band *band; struct stretch at; };

/* The boat in the area, round the bands of the page, which are in order downwards. */
struct band_boat band_boat_make(const struct pen *pen, struct area area,
                                const struct placed_band *bands, size_t count);

enum boat_body body_of(const struct boat *boat, const struct marker *marker);

/* The narrowest span of that body between two heights; false: she has nothing there. */
bool body_span(const struct band_boat *boat, enum boat_body body, struct stretch at,
               struct span *span);

/* ---- what band_draw.c asks ---- */

bool has_three_hulls(const struct boat *boat);

/* Where on the page a place of her length lies, in thousandths from the bow. */
mpt boat_height_of(const struct band_boat *boat, int32_t along);
bool stretch_is_there(const struct stretch *stretch);

/* Between a catamaran's hulls; a hull's outline. */
struct span bridge_span(const struct band_boat *boat);
struct outline body_outline(const struct band_boat *boat, enum boat_body body);

/* ---- band_draw.c ---- */

/* Her outlines, and the lines across where bands begin. */
void band_boat_draw(struct pen *pen, const struct band_boat *boat,
                    const struct placed_band *bands, size_t count);

#endif
