/* view_draw.h - a view of the boat on its page: where its rows, tags and names are, and the parts
 * of the drawing below its tags. Private to src/layout. */
#ifndef MAYDECK_VIEW_DRAW_H
#define MAYDECK_VIEW_DRAW_H

#include "boat_slots.h"

/* A view on the page. */
struct drawn_view {
    struct pen *pen;
    const struct boat_slots *slots;
    const struct plan_view *view;
    int index;
    struct area area;             /* of the boat */
    mpt middle, pitch;            /* x of her middle line; height of a row */
};

/* How words round the boat and names on her are set. */
struct style view_word_style(const struct pen *pen, enum face_role face);

/* ---- what stands in it ---- */

bool slot_in_view(const struct drawn_view *drawn, const struct fixed_slot *slot);
bool slot_of_card(const struct pen *pen, const struct fixed_slot *slot);
bool slot_is_name(const struct drawn_view *drawn, const struct fixed_slot *slot);

/* Where its middle is. */
struct point slot_middle(const struct drawn_view *drawn, const struct fixed_slot *slot);

/* The box of a tag at that size; the white plate that a name stands on. */
struct area slot_tag_box(const struct drawn_view *drawn, const struct fixed_slot *slot, mpt size);
struct area slot_name_plate(const struct drawn_view *drawn, const struct fixed_slot *slot);

/* From the middle line of a body to its sides, in that row. */
mpt view_row_half(const struct drawn_view *drawn, int body, int row);
mpt view_body_middle(const struct drawn_view *drawn, int body);

/* ---- drawing (view_boat.c, view_hatch.c, view_names.c) ---- */

/* Hulls and decks. */
void view_boat_draw(const struct drawn_view *drawn);

/* What the card hatches, clear of what lies elsewhere; tags will have that size. */
void view_hatches_draw(const struct drawn_view *drawn, mpt tag_size);

/* The mast, names of places, and lines where parts of the boat begin. */
void view_names_draw(const struct drawn_view *drawn);

#endif
