/* proof_plan.h - what the rules on plans of the boat share. Private to src/proof. */
#ifndef MAYDECK_PROOF_PLAN_H
#define MAYDECK_PROOF_PLAN_H

#include "proof_room.h"

/* A page as a plan. */
struct shown_plan {
    struct proofing *p;
    const struct places_facts *plan;
    mpt middle;                  /* x of the boat's middle line */
    bool turned;                 /* its reader looks aft */
};

/* Is it an outline of her; and all that they take up. */
bool is_hull_line(const struct page_item *item);
struct area hull_area(const struct proofing *p);

/* How many boxes with that tag in them there are in that block. */
size_t tag_boxes_in(const struct proofing *p, enum block_key block, const char *tag);

/* ---- proof_views.c ---- */

/* The boat's own lines, strong ones round her and light ones inside; those round her. */
bool is_boat_line(const struct page_item *item);
bool is_boat_outline(const struct page_item *item);

/* The boat may be drawn more than once in a block, side by side: what is below, what is on deck.
 * A view is the column of the page that a tag stands in; a drawing without heads is one view, as
 * wide as the page. */
struct shown_view {
    enum block_key block;
    int index;
    mpt left, right;
};
struct shown_view plan_view_of(const struct proofing *p, const struct page_item *tag);
bool plan_view_has(const struct shown_view *view, const struct page_item *item);

/* Whose tag it is on a page of that sheet; NULL: nobody's. */
const struct marker *plan_marker_of(const struct sheet *sheet, const char *tag);

/* ---- proof_turned.c ---- */

void turned_judge(const struct shown_plan *shown);

/* Each tag of the index; and that a row's is in it where it must be. */
void index_judge(const struct shown_plan *shown);
void indexed_judge(const struct shown_plan *shown, const struct plan_row *row);

#endif
