/* proof_views.h - the drawings of the boat on a page, for the rules on plans. Private to
 * src/proof. */
#ifndef MAYDECK_PROOF_VIEWS_H
#define MAYDECK_PROOF_VIEWS_H

#include "proof_room.h"

/* What the mark beside the name of a drawing says: tags of which level stand in it. */
enum view_shows { VIEW_SHOWS_ALL, VIEW_SHOWS_BELOW, VIEW_SHOWS_DECK };

/* The boat may be drawn more than once in a block, side by side: what is below, what is on deck.
 * A view is the column of the page that a tag stands in. */
struct plan_page_view {
    enum block_key block;
    mpt left, right;
    enum view_shows shows;
};
struct plan_page_view view_of(const struct proofing *p, const struct page_item *tag);

/* The boat's own lines, strong ones round her and light ones inside; and the strong ones. */
bool is_boat_line(const struct page_item *item);
bool is_outline(const struct page_item *item);

/* The area of all that is wanted of one view; of no size where there is nothing. */
struct area plan_area(const struct proofing *p, const struct plan_page_view *view,
                      bool (*wanted)(const struct page_item *item));

/* Is the point on the boat, as that view draws her? */
bool on_boat(const struct proofing *p, const struct plan_page_view *view, struct point point);

/* Each tag stands at one place on the plans of all cards. */
void slots_judge(struct proofing *const *all, size_t count);

#endif
