/* view_hatch.c - the space of a view where it burns, leaks or gathers, hatched: row by row, as far
 * as nothing else stands there (room: layout). */
#include "view_draw.h"

#include "measures.h"
#include "plan_tag.h"

/* Slanting lines over an area, from its left edge up to the right. */
static void hatch_draw(struct pen *pen, struct area area)
{
    for (mpt at = HATCH_PITCH; at < area.width + area.height; at += HATCH_PITCH) {
        mpt low = at > area.height ? area.height : at, high = at > area.width ? at - area.width : 0;
        pen_line(pen, (struct point){area.x + at - low, area.y + low},
                 (struct point){area.x + at - high, area.y + high}, INK_GREY, HAIR);
        pen_part(pen, PART_HATCH);
    }
    pen_box(pen, area, INK_NONE, INK_BLACK, BULKHEAD_SMALL, 0);
    pen_part(pen, PART_HATCH);
}

/* Keeps an area clear of a box that stands in it: to that side of it where more is left. */
static void area_clear(struct area *area, struct area box)
{
    mpt right = area->x + area->width, left_of = box.x - PLAN_TAG_GAP - area->x;
    mpt from = box.x + box.width + PLAN_TAG_GAP, right_of = right - from;
    if (free_of(box, area, 1, 0))
        return;
    if (right_of > left_of)
        area->x = from;
    area->width = right_of > left_of ? right_of : left_of;
}

/* Does something that is drawn there lie in the zone? Sets the body that it stands in. */
static bool row_is_of(const struct drawn_view *drawn, enum zone_key zone, int row, int *body)
{
    for (size_t i = 0; i < drawn->slots->count; i++) {
        const struct fixed_slot *slot = &drawn->slots->slots[i];
        bool seen = slot->kind != SLOT_TAG || slot_of_card(drawn->pen, slot);
        if (!slot_in_view(drawn, slot) || !seen || slot->row != row ||
            !zone_within(slot->zone, zone))
            continue;
        *body = slot->body;
        return true;
    }
    return false;
}

/* Clear of tags of the card and of names of other places. */
static void row_clear(const struct drawn_view *drawn, enum zone_key zone, mpt tag_size,
                      struct area *area)
{
    for (size_t i = 0; i < drawn->slots->count; i++) {
        const struct fixed_slot *slot = &drawn->slots->slots[i];
        if (!slot_in_view(drawn, slot) || zone_within(slot->zone, zone))
            continue;
        if (slot_is_name(drawn, slot))
            area_clear(area, slot_name_plate(drawn, slot));
        else if (slot->kind == SLOT_TAG && slot_of_card(drawn->pen, slot))
            area_clear(area, slot_tag_box(drawn, slot, tag_size));
    }
}

/* The side of her that all gear of the zone is drawn on; SIDE_NONE: there is none, or several. */
static enum side zone_side(const struct drawn_view *drawn, enum zone_key zone)
{
    enum side side = SIDE_NONE;
    for (size_t i = 0; i < drawn->slots->count; i++) {
        const struct fixed_slot *slot = &drawn->slots->slots[i];
        if (slot->marker == NULL || !zone_within(slot->zone, zone))
            continue;
        if (side != SIDE_NONE && slot->marker->drawn != side)
            return SIDE_NONE;
        side = slot->marker->drawn;
    }
    return side;
}

/* Of a row across her that side alone. */
static void row_halve(struct area *area, enum side side)
{
    if (side != SIDE_PORT && side != SIDE_STARBOARD)
        return;
    area->width /= 2;
    area->x += side == SIDE_STARBOARD ? area->width : 0;
}

static void zone_hatch(const struct drawn_view *drawn, enum zone_key zone, mpt tag_size)
{
    for (int row = 0; row < drawn->slots->rows; row++) {
        int body;
        if (!row_is_of(drawn, zone, row, &body))
            continue;
        mpt half = view_row_half(drawn, body, row), middle = view_body_middle(drawn, body);
        struct area area = {middle - half, drawn->area.y + row * drawn->pitch, 2 * half,
                            drawn->pitch};
        if (drawn->view->bodies[body].centre == 0)
            row_halve(&area, zone_side(drawn, zone));
        row_clear(drawn, zone, tag_size, &area);
        if (area.width >= HATCH_PITCH)
            hatch_draw(drawn->pen, area);
    }
}

void view_hatches_draw(const struct drawn_view *drawn, mpt tag_size)
{
    const struct plan_facts *plan = sheet_plan(drawn->pen->sheet);
    for (size_t i = 0; i < plan->hatched_count; i++)
        zone_hatch(drawn, plan->hatched[i], tag_size);
}
