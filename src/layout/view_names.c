/* view_names.c - the names of places on a view, its mast, and lines where parts of the boat begin
 * (room: layout). */
#include "view_draw.h"

#include "measures.h"
#include "plan_tag.h"

#include <string.h>

static void name_draw(const struct drawn_view *drawn, const struct fixed_slot *slot)
{
    struct pen *pen = drawn->pen;
    struct style style = view_word_style(pen, FACE_TEXT);
    struct point middle = slot_middle(drawn, slot);
    mpt width = pen_width(pen, &style, slot->text);
    struct area plate = slot_name_plate(drawn, slot);
    pen_text(pen, &style, middle.x - width / 2, plate.y + em_share(plate.height, EM_NAME_BASELINE),
             slot->text, strlen(slot->text), pen->sheet->origin);
}

/* Does all that stands ahead of the name lie ahead of its place, or nearly? */
static bool begins_a_part(const struct drawn_view *drawn, const struct fixed_slot *name)
{
    bool any = false;
    for (size_t i = 0; i < drawn->slots->count; i++) {
        const struct fixed_slot *slot = &drawn->slots->slots[i];
        if (!slot_in_view(drawn, slot) || slot->body != name->body || slot->row >= name->row)
            continue;
        if (slot->zone->to > name->zone->from + PART_SLACK)
            return false;
        any = true;
    }
    return any;
}

/* A light line across the hull where a part of the boat begins. */
static void part_line_draw(const struct drawn_view *drawn, const struct fixed_slot *name)
{
    mpt half = view_row_half(drawn, name->body, name->row);
    mpt y = drawn->area.y + name->row * drawn->pitch;
    mpt middle = view_body_middle(drawn, name->body);
    if (name->kind == SLOT_NAME && half > 0 && begins_a_part(drawn, name))
        pen_line(drawn->pen, (struct point){middle - half, y}, (struct point){middle + half, y},
                 INK_GREY, BULKHEAD_SMALL);
}

void view_names_draw(const struct drawn_view *drawn)
{
    for (size_t i = 0; i < drawn->slots->count; i++) {
        const struct fixed_slot *slot = &drawn->slots->slots[i];
        if (!slot_in_view(drawn, slot) || slot->kind == SLOT_TAG)
            continue;
        if (slot->kind == SLOT_MARK)
            pen_ellipse(drawn->pen, box_at(slot_middle(drawn, slot), MAST, MAST), INK_GREY);
        else if (slot_is_name(drawn, slot))
            part_line_draw(drawn, slot);
    }
    for (size_t i = 0; i < drawn->slots->count; i++) {
        const struct fixed_slot *slot = &drawn->slots->slots[i];
        if (slot_is_name(drawn, slot))
            pen_box(drawn->pen, slot_name_plate(drawn, slot), INK_WHITE, INK_NONE, 0, 0);
    }
    for (size_t i = 0; i < drawn->slots->count; i++)
        if (slot_is_name(drawn, &drawn->slots->slots[i]))
            name_draw(drawn, &drawn->slots->slots[i]);
}
