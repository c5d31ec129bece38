/* view_boat.c - the hulls and decks of a view, and where its rows are on the page (room: layout).
 * A schema: the deck between two hulls begins where what stands on it begins. */
#include "view_draw.h"

#include "measures.h"
#include "plan_tag.h"
#include "text.h"
#include "trait.h"

/* ---- what stands in it ---- */

struct style view_word_style(const struct pen *pen, enum face_role face)
{
    return (struct style){ROLE_PLAN_LABEL, face, size_rule(pen->paper, ROLE_PLAN_LABEL).floor,
                          INK_BLACK};
}

bool slot_in_view(const struct drawn_view *drawn, const struct fixed_slot *slot)
{
    return slot->view == drawn->index && !slot->without_room;
}

bool slot_of_card(const struct pen *pen, const struct fixed_slot *slot)
{
    const struct plan_facts *plan = sheet_plan(pen->sheet);
    for (size_t i = 0; i < plan->marker_count && slot->marker != NULL; i++)
        if (text_equal(plan->markers[i].tag, slot->text))
            return true;
    return false;
}

/* A name of no room of hers stands on the cards that have a tag there. */
static bool is_named_by_card(const struct pen *pen, const struct fixed_slot *slot)
{
    const struct plan_facts *plan = sheet_plan(pen->sheet);
    for (size_t i = 0; i < plan->marker_count; i++)
        if (plan->markers[i].zone->family == slot->zone->family)
            return true;
    for (size_t i = 0; i < plan->landmark_count; i++)
        if (plan->landmarks[i].zone->family == slot->zone->family)
            return true;
    return false;
}

bool slot_is_name(const struct drawn_view *drawn, const struct fixed_slot *slot)
{
    return slot_in_view(drawn, slot) && slot->kind != SLOT_TAG && slot->text[0] != '\0' &&
           is_named_by_card(drawn->pen, slot);
}

struct point slot_middle(const struct drawn_view *drawn, const struct fixed_slot *slot)
{
    return (struct point){drawn->middle + slot->x,
                          drawn->area.y + drawn->pitch * slot->row + drawn->pitch / 2};
}

struct area slot_tag_box(const struct drawn_view *drawn, const struct fixed_slot *slot, mpt size)
{
    struct style style = plan_tag_style(size);
    mpt pad = slot->marker->level == LEVEL_BELOW ? PLAN_TAG_PADS_ROUND : PLAN_TAG_PADS;
    return box_at(slot_middle(drawn, slot), pen_width(drawn->pen, &style, slot->text) + pad,
                  em_share(size, EM_PLAN_TAG_BOX));
}

struct area slot_name_plate(const struct drawn_view *drawn, const struct fixed_slot *slot)
{
    struct style style = view_word_style(drawn->pen, FACE_TEXT);
    mpt width = pen_width(drawn->pen, &style, slot->text);
    return box_at(slot_middle(drawn, slot), width + 2 * ZONE_NAME_GAP, style.size);
}

mpt view_body_middle(const struct drawn_view *drawn, int body)
{
    return drawn->middle + hull_share(drawn->slots->views.width / 2,
                                      drawn->view->bodies[body].centre);
}

mpt view_row_half(const struct drawn_view *drawn, int body, int row)
{
    const struct plan_views *views = &drawn->slots->views;
    const struct view_body *of = &drawn->view->bodies[body];
    mpt upper = body_half(views, of, row * 1000 / drawn->slots->rows);
    mpt lower = body_half(views, of, (row + 1) * 1000 / drawn->slots->rows);
    return (upper < lower ? upper : lower) - OUTLINE_SMALL;
}

/* ---- outlines ---- */

static struct outline outline_of(const struct drawn_view *drawn, const struct view_body *body)
{
    mpt half = drawn->slots->views.width / 2;
    return (struct outline){drawn->area, drawn->middle + hull_share(half, body->centre),
                            hull_share(half, body->half) - OUTLINE_SMALL / 2, OUTLINE_SMALL,
                            body->shape};
}

static mpt view_y(const struct drawn_view *drawn, int32_t along)
{
    return drawn->area.y + hull_share(drawn->area.height, along);
}

/* The first row in which something stands that lies abaft the net. */
static int deck_row(const struct drawn_view *drawn, const struct view_body *body)
{
    int first = drawn->slots->rows * BRIDGE_BEGINS / 1000;
    for (size_t i = 0; i < drawn->slots->count; i++) {
        const struct fixed_slot *slot = &drawn->slots->slots[i];
        bool abaft = (slot->zone->from + slot->zone->to) * 5 > BRIDGE_BEGINS;
        if (slot_in_view(drawn, slot) && &drawn->view->bodies[slot->body] == body && abaft &&
            slot->row < first)
            first = slot->row;
    }
    return first;
}

/* The net between the bows of a boat with sails, and the deck behind it; without sails the deck
 * begins where a net would. */
static void bridge_draw(const struct drawn_view *drawn, const struct view_body *body)
{
    struct pen *pen = drawn->pen;
    mpt half = hull_share(drawn->slots->views.width / 2, body->half);
    mpt left = drawn->middle - half, right = drawn->middle + half;
    bool sails = boat_is(pen->sheet->boat, TRAIT_SAIL, ZONE_NONE);
    mpt top = view_y(drawn, body->first), deck = top;
    mpt bottom = view_y(drawn, body->last);
    if (sails) {
        deck = drawn->area.y + deck_row(drawn, body) * drawn->pitch;
        net_lines_draw(pen, (struct area){left, top, right - left, deck - top});
        pen_line(pen, (struct point){left, top}, (struct point){right, top}, INK_BLACK,
                 OUTLINE_SMALL);
    }
    pen_box(pen, (struct area){left, deck, right - left, bottom - deck}, INK_NONE, INK_BLACK,
            OUTLINE_SMALL, BAND_CORNER);
}

void view_boat_draw(const struct drawn_view *drawn)
{
    for (int i = 0; i < drawn->view->body_count; i++) {
        const struct view_body *body = &drawn->view->bodies[i];
        struct outline outline = outline_of(drawn, body);
        if (body->shape == SHAPE_STRAIGHT)
            bridge_draw(drawn, body);
        else
            one_hull_draw(drawn->pen, &outline);
    }
}
