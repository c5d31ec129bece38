/* slots_gather.h - what stands on the views of a boat, before it has its places: every tag of any
 * card of a set, the names of her places, her mast. Private to src/layout. */
#ifndef MAYDECK_SLOTS_GATHER_H
#define MAYDECK_SLOTS_GATHER_H

#include "boat_slots.h"

struct gathering {
    const struct pen *pen;
    const struct boat *boat;
    struct plan_views views;
    struct fixed_slot *slots;
    struct slot_item *items;      /* one a slot */
    int rows;                     /* that views are cut into */
    uint64_t *own_cards, *cards;  /* one a slot: the cards that show it; and all of its place */
    size_t *leader;               /* one a slot: whose place it has */
    bool *dropped;                /* one a slot: a tag for which nothing makes room */
    size_t count, slot_room, item_room;
};

/* Of all sheets of the set that have a plan beside steps; rows, shared places and leaders are
 * still to be found. */
struct gathering slots_gather(const struct sheet_set *set, const struct pen *pen);

#endif
