/* proof_near.h - which things of a page stand near a place, so that a rule on two things looks
 * at few of them. Private to src/proof. */
#ifndef MAYDECK_PROOF_NEAR_H
#define MAYDECK_PROOF_NEAR_H

#include "proof_room.h"

/* Things of the page, by their numbers, in their order. */
struct near_set {
    const uint64_t *words;     /* a bit each */
    size_t count;
};

/* Made once a page. `frames`: by thing, the frame of a tag on a plan, which counts to it. */
struct nearness *nearness_new(const struct page *page, const struct area *ink,
                              const struct page_item *const *frames, struct arena *arena);

/* All whose ink, area or frame is nearer to the area than `within`, and some besides. It stands
 * until the next question. */
struct near_set near_area(const struct proofing *p, struct area area, mpt within);

/* The same of a thing of the page: near to all that counts to it. */
struct near_set near_item(const struct proofing *p, size_t item, mpt within);

/* The first of them that is not before `from`, and the last that is before `end`; false: there is
 * none. */
bool near_next(const struct near_set *set, size_t from, size_t *item);
bool near_before(const struct near_set *set, size_t end, size_t *item);

#endif
