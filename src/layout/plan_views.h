/* plan_views.h - the drawings of a boat beside the steps of a card: which there are for her
 * kind, which hulls and decks each shows, and where a thing stands on them. Private to
 * src/layout. */
#ifndef MAYDECK_PLAN_VIEWS_H
#define MAYDECK_PLAN_VIEWS_H

#include "hull_parts.h"
#include "slots.h"

#define VIEW_BODIES_MOST 3
#define VIEWS_MOST 2

/* A hull or deck in a view. Lengths across are thousandths of half the view's width, those
 * along of the boat's length. */
struct view_body {
    int32_t centre, half;
    enum hull_shape shape;
    int32_t first, last;      /* where it begins and ends */
};

struct plan_view {
    enum plan_word head;      /* what it shows: ON DECK */
    bool round;               /* its tags are round, as what is below */
    int body_count;
    struct view_body bodies[VIEW_BODIES_MOST];
};

/* The views of a kind of boat, from left to right. */
struct plan_views {
    const struct plan_view *views;
    int count;
    mpt width;                /* of each */
    bool words_above;         /* PORT and STARB'D stand above the boat: beside a single bow they
                                 have room */
};
struct plan_views plan_views_of(const struct boat *boat);

/* Where a thing of that zone, side and level stands: view, body and queue. What stands on both
 * sides is asked for one side after the other. */
struct view_place { int view, body; enum slot_queue queue; };
struct view_place view_place_of(const struct boat *boat, const struct zone *zone, enum side side,
                                enum level level);

/* Half the breadth of the body at `along`, within its lines; 0 where there is none of it. */
mpt body_half(const struct plan_views *views, const struct view_body *body, int32_t along);

#endif
