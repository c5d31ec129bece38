/* kinds.h - the kinds of generated boats and what may drive them. */
#ifndef MAYDECK_GENERATE_KINDS_H
#define MAYDECK_GENERATE_KINDS_H

#include "boat_draw.h"

/* A set of engines: what it makes true of the boat, and its lines in the record. */
struct engine_set { uint64_t facts; const char *lines; };

/* A list of sets that ends with one without lines. */
extern const struct engine_set engines_yacht[], engines_small[], engines_catamaran[],
    engines_open[], engines_one[], engines_two[];

struct boat_kind {
    const char *hull, *rig, *looks;
    int shortest_dm, longest_dm;  /* her length over all */
    int beam_share;               /* hundredths of it */
    int knots_most;
    uint64_t facts, perhaps;      /* what all have, and what each may have */
    const struct engine_set *engines;
};

extern const struct boat_kind boat_kinds[];
extern const int boat_kind_count;

#endif
