/* plan.c - the boat beside the steps of a card, in one or two views: outlines, names of her
 * places, the tags of this card at their fixed places (room: layout). Where they stand was
 * found for the whole set (boat_slots.c); nothing is moved here. A tag without a place is an
 * error, never left out in silence. */
#include "boat_slots.h"
#include "plan_spot.h"

#include "measures.h"
#include "text.h"
#include "trait.h"

#include <string.h>

/* A view on the page. */
struct drawn_view {
    struct pen *pen;
    const struct boat_slots *slots;
    const struct plan_view *view;
    int index;
    struct area area;             /* of the boat */
    mpt middle, pitch;            /* x of her middle line; height of a row */
};

static struct style plan_word_style(const struct pen *pen, enum face_role face)
{
    return (struct style){ROLE_PLAN_LABEL, face, size_rule(pen->paper, ROLE_PLAN_LABEL).floor,
                          INK_BLACK};
}

static bool is_in(const struct drawn_view *drawn, const struct fixed_slot *slot)
{
    return slot->view == drawn->index && !slot->without_room;
}

static struct point slot_middle(const struct drawn_view *drawn, const struct fixed_slot *slot)
{
    return (struct point){drawn->middle + slot->x,
                          drawn->area.y + drawn->pitch * slot->row + drawn->pitch / 2};
}

static bool is_of_card(const struct pen *pen, const struct fixed_slot *slot)
{
    const struct plan_facts *plan = sheet_plan(pen->sheet);
    for (size_t i = 0; i < plan->marker_count && slot->marker != NULL; i++)
        if (text_equal(plan->markers[i].tag, slot->text))
            return true;
    return false;
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

/* The net between the bows of a boat with sails, and the deck behind it; without sails the deck
 * begins where a net would. */
static void bridge_draw(const struct drawn_view *drawn, const struct view_body *body)
{
    struct pen *pen = drawn->pen;
    mpt half = hull_share(drawn->slots->views.width / 2, body->half);
    mpt left = drawn->middle - half, right = drawn->middle + half;
    bool sails = boat_is(pen->sheet->boat, TRAIT_SAIL, ZONE_NONE);
    mpt top = view_y(drawn, body->first), deck = sails ? view_y(drawn, BRIDGE_BEGINS) : top;
    mpt bottom = view_y(drawn, body->last);
    if (sails) {
        net_lines_draw(pen, (struct area){left, top, right - left, deck - top});
        pen_line(pen, (struct point){left, top}, (struct point){right, top}, INK_BLACK,
                 OUTLINE_SMALL);
    }
    pen_box(pen, (struct area){left, deck, right - left, bottom - deck}, INK_NONE, INK_BLACK,
            OUTLINE_SMALL, BAND_CORNER);
}

static void bodies_draw(const struct drawn_view *drawn)
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

static struct area tag_box(const struct drawn_view *drawn, const struct fixed_slot *slot, mpt size)
{
    struct style style = plan_tag_style(size);
    mpt pad = slot->marker->level == LEVEL_BELOW ? PLAN_TAG_PADS_ROUND : PLAN_TAG_PADS;
    return box_at(slot_middle(drawn, slot), pen_width(drawn->pen, &style, slot->text) + pad,
                  em_share(size, EM_PLAN_TAG_BOX));
}

/* ---- the space where it burns, leaks or gathers ---- */

struct rows { int first, last, body; };

/* The rows of what is drawn in that space; false: nothing of it stands in this view. */
static bool space_rows(const struct drawn_view *drawn, enum zone_key space, struct rows *rows)
{
    bool found = false;
    for (size_t i = 0; i < drawn->slots->count; i++) {
        const struct fixed_slot *slot = &drawn->slots->slots[i];
        bool seen = slot->kind != SLOT_TAG || is_of_card(drawn->pen, slot);
        if (!is_in(drawn, slot) || !seen || !zone_within(slot->zone, space))
            continue;
        rows->first = found && rows->first < slot->row ? rows->first : slot->row;
        rows->last = found && rows->last > slot->row ? rows->last : slot->row;
        rows->body = slot->body;
        found = true;
    }
    return found;
}

static mpt rows_half(const struct drawn_view *drawn, const struct rows *rows)
{
    const struct view_body *body = &drawn->view->bodies[rows->body];
    int32_t upper = rows->first * 1000 / drawn->slots->rows, lower = (rows->last + 1) * 1000 / drawn->slots->rows;
    mpt first = body_half(&drawn->slots->views, body, upper);
    mpt last = body_half(&drawn->slots->views, body, lower > 1000 ? 1000 : lower);
    return (first < last ? first : last) - OUTLINE_SMALL;
}

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

/* What stands in its rows and does not lie in the space is left out. */
static void space_draw(const struct drawn_view *drawn, mpt size)
{
    enum zone_key space = drawn->pen->sheet->space;
    struct rows rows;
    if (space == ZONE_NONE || !space_rows(drawn, space, &rows))
        return;
    const struct view_body *body = &drawn->view->bodies[rows.body];
    mpt half = rows_half(drawn, &rows);
    mpt centre = drawn->middle + hull_share(drawn->slots->views.width / 2, body->centre);
    struct area area = {centre - half, drawn->area.y + rows.first * drawn->pitch, 2 * half,
                        (rows.last + 1 - rows.first) * drawn->pitch};
    for (size_t i = 0; i < drawn->slots->count; i++) {
        const struct fixed_slot *slot = &drawn->slots->slots[i];
        if (is_in(drawn, slot) && slot->kind == SLOT_TAG && is_of_card(drawn->pen, slot) &&
            !zone_within(slot->zone, space))
            area_clear(&area, tag_box(drawn, slot, size));
    }
    hatch_draw(drawn->pen, area);
}

/* ---- names and the mast ---- */

static bool is_drawn_name(const struct drawn_view *drawn, const struct fixed_slot *slot)
{
    return is_in(drawn, slot) && slot->kind != SLOT_TAG && slot->text[0] != '\0';
}

static struct area name_plate(const struct drawn_view *drawn, const struct fixed_slot *slot)
{
    struct style style = plan_word_style(drawn->pen, FACE_TEXT);
    mpt width = pen_width(drawn->pen, &style, slot->text);
    return box_at(slot_middle(drawn, slot), width + 2 * ZONE_NAME_GAP, style.size);
}

static void name_draw(const struct drawn_view *drawn, const struct fixed_slot *slot)
{
    struct pen *pen = drawn->pen;
    struct style style = plan_word_style(pen, FACE_TEXT);
    struct point middle = slot_middle(drawn, slot);
    mpt width = pen_width(pen, &style, slot->text);
    struct area plate = name_plate(drawn, slot);
    pen_text(pen, &style, middle.x - width / 2, plate.y + em_share(plate.height, EM_NAME_BASELINE),
             slot->text, strlen(slot->text), pen->sheet->origin);
}

/* Does all that stands ahead of the name lie ahead of its place, or nearly? */
static bool begins_a_part(const struct drawn_view *drawn, const struct fixed_slot *name)
{
    bool any = false;
    for (size_t i = 0; i < drawn->slots->count; i++) {
        const struct fixed_slot *slot = &drawn->slots->slots[i];
        if (!is_in(drawn, slot) || slot->body != name->body || slot->row >= name->row)
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
    const struct view_body *body = &drawn->view->bodies[name->body];
    struct rows rows = {name->row, name->row, name->body};
    mpt half = rows_half(drawn, &rows), y = drawn->area.y + name->row * drawn->pitch;
    mpt centre = drawn->middle + hull_share(drawn->slots->views.width / 2, body->centre);
    if (name->kind == SLOT_NAME && half > 0 && begins_a_part(drawn, name))
        pen_line(drawn->pen, (struct point){centre - half, y}, (struct point){centre + half, y},
                 INK_GREY, BULKHEAD_SMALL);
}

static void names_draw(const struct drawn_view *drawn)
{
    for (size_t i = 0; i < drawn->slots->count; i++) {
        const struct fixed_slot *slot = &drawn->slots->slots[i];
        if (!is_in(drawn, slot) || slot->kind == SLOT_TAG)
            continue;
        if (slot->kind == SLOT_MARK)
            pen_ellipse(drawn->pen, box_at(slot_middle(drawn, slot), MAST, MAST), INK_GREY);
        else
            part_line_draw(drawn, slot);
    }
    for (size_t i = 0; i < drawn->slots->count; i++)
        if (is_drawn_name(drawn, &drawn->slots->slots[i]))
            pen_box(drawn->pen, name_plate(drawn, &drawn->slots->slots[i]), INK_WHITE, INK_NONE, 0,
                    0);
    for (size_t i = 0; i < drawn->slots->count; i++)
        if (is_drawn_name(drawn, &drawn->slots->slots[i]))
            name_draw(drawn, &drawn->slots->slots[i]);
}

/* ---- tags ---- */

static void tag_draw(const struct drawn_view *drawn, const struct fixed_slot *slot, mpt size)
{
    struct pen *pen = drawn->pen;
    struct style style = plan_tag_style(size);
    struct area box = tag_box(drawn, slot, size);
    mpt width = pen_width(pen, &style, slot->text);
    pen_box(pen, box, INK_BLACK, INK_WHITE, TAG_RIM,
            slot->marker->level == LEVEL_BELOW ? box.height / 2 : 0);
    pen_text(pen, &style, box.x + (box.width - width) / 2,
             baseline_in(box.y, box.height, size), slot->text, strlen(slot->text),
             slot->marker->origin);
}

static void view_tags_draw(const struct drawn_view *drawn, mpt size)
{
    for (size_t i = 0; i < drawn->slots->count; i++) {
        const struct fixed_slot *slot = &drawn->slots->slots[i];
        if (is_in(drawn, slot) && slot->kind == SLOT_TAG && is_of_card(drawn->pen, slot))
            tag_draw(drawn, slot, size);
    }
}

/* Do all tags of the card stand clear of each other and of names at that size? */
static bool view_holds(const struct drawn_view *drawn, mpt size)
{
    const struct boat_slots *slots = drawn->slots;
    struct area *boxes = arena_array(drawn->pen->arena, slots->count, sizeof *boxes);
    size_t count = 0;
    for (size_t i = 0; i < slots->count; i++)
        if (is_drawn_name(drawn, &slots->slots[i]))
            boxes[count++] = name_plate(drawn, &slots->slots[i]);
    for (size_t i = 0; i < slots->count; i++) {
        const struct fixed_slot *slot = &slots->slots[i];
        if (!is_in(drawn, slot) || slot->kind != SLOT_TAG || !is_of_card(drawn->pen, slot))
            continue;
        boxes[count] = tag_box(drawn, slot, size);
        if (!free_of(boxes[count], boxes, count, PLAN_TAG_APART))
            return false;
        count++;
    }
    return true;
}

/* ---- words round the boat ---- */

static void word_place(struct pen *pen, enum face_role face, mpt x, mpt baseline,
                       enum plan_word word)
{
    struct style style = plan_word_style(pen, face);
    const char *text = sheet_plan(pen->sheet)->words[word];
    pen_text(pen, &style, x, baseline, text, strlen(text), pen->sheet->origin);
}

static mpt word_width(const struct pen *pen, enum face_role face, enum plan_word word)
{
    struct style style = plan_word_style(pen, face);
    return pen_width(pen, &style, sheet_plan(pen->sheet)->words[word]);
}

/* What the view shows, white on black, behind the mark of its tags. */
static void view_head_place(const struct drawn_view *drawn, struct area bar)
{
    struct pen *pen = drawn->pen;
    struct style style = plan_word_style(pen, FACE_BOLD);
    const char *text = sheet_plan(pen->sheet)->words[drawn->view->head];
    mpt mark = PLAN_MARK, width = mark + PLAN_MARK_GAP;
    style.ink = INK_WHITE;
    style.size = VIEW_HEAD_SIZE;
    width += pen_width(pen, &style, text);
    mpt x = bar.x + (bar.width - width) / 2;
    pen_box(pen, bar, INK_BLACK, INK_NONE, 0, BAND_CORNER);
    pen_box(pen, (struct area){x, bar.y + (bar.height - mark) / 2, mark, mark}, INK_WHITE,
            INK_NONE, 0, drawn->view->round ? mark / 2 : 0);
    pen_text(pen, &style, x + mark + PLAN_MARK_GAP, baseline_in(bar.y, bar.height, style.size),
             text, strlen(text), pen->sheet->origin);
}

/* A word in bold and one that hints at it, from `x` on or up to it; the hint is so far below. */
static void hinted_place(struct pen *pen, struct point at, enum plan_word word, mpt below)
{
    enum plan_word hint = word == PLAN_PORT ? PLAN_PORT_HINT : PLAN_STARBOARD_HINT;
    mpt bold = word_width(pen, FACE_BOLD, word), light = word_width(pen, FACE_TEXT, hint);
    mpt beside = below > 0 ? 0 : WORD_HINT_GAP;
    bool port = word == PLAN_PORT;
    word_place(pen, FACE_BOLD, port ? at.x : at.x - bold, at.y, word);
    mpt from = below > 0 ? 0 : bold + beside;
    word_place(pen, FACE_TEXT, port ? at.x + from : at.x - from - light, at.y + below, hint);
}

/* PORT, left at the left of the bow, STARB'D, right at the right, BOW between two bows; above
 * several hulls all on one line. */
static void corner_words_place(struct pen *pen, struct area area)
{
    mpt size = size_rule(pen->paper, ROLE_PLAN_LABEL).floor, line = line_pitch(ROLE_PLAN_LABEL, size);
    mpt first = baseline_in(area.y, line, size);
    mpt below = pen->slots->views.words_above ? 0 : line;
    hinted_place(pen, (struct point){area.x, first}, PLAN_PORT, below);
    hinted_place(pen, (struct point){area.x + area.width, first}, PLAN_STARBOARD, below);
    if (pen->slots->views.count > 1)
        word_place(pen, FACE_BOLD,
                   area.x + (area.width - word_width(pen, FACE_BOLD, PLAN_BOW)) / 2,
                   first + below, PLAN_BOW);
}

/* ---- all ---- */

static void not_placed_tell(struct pen *pen, const struct marker *marker)
{
    pen->failed = true;
    problem_add(pen->problems, SEVERITY_ERROR, marker->origin,
                "record a nearer zone, or the side, of what lies there",
                "%s: no room on the plan for the tag %s in %s", pen->sheet->name, marker->tag,
                marker->zone->key);
}

static void without_room_tell(struct pen *pen)
{
    for (size_t i = 0; i < pen->slots->count; i++) {
        const struct fixed_slot *slot = &pen->slots->slots[i];
        if (slot->without_room && slot->kind == SLOT_TAG && is_of_card(pen, slot))
            not_placed_tell(pen, slot->marker);
    }
}

static struct drawn_view view_in(struct pen *pen, int index, struct area area)
{
    const struct plan_views *views = &pen->slots->views;
    mpt spare = area.width - views->width;
    mpt left = area.x + (views->count == 1 ? spare / 2 : index * spare / (views->count - 1));
    mpt top = area.y + views_begin(views);
    mpt height = area.y + area.height - OUTLINE_SMALL / 2 - top;
    return (struct drawn_view){
        .pen = pen, .slots = pen->slots, .view = &views->views[index], .index = index,
        .area = {left, top, views->width, height},
        .middle = left + views->width / 2, .pitch = height / pen->slots->rows};
}

static mpt tag_size_in(struct pen *pen, struct area area)
{
    struct size_rule rule = size_rule(pen->paper, ROLE_PLAN_TAG);
    for (mpt size = rule.aim; size > rule.floor; size -= SIZE_STEP) {
        bool holds = true;
        for (int i = 0; i < pen->slots->views.count && holds; i++) {
            struct drawn_view drawn = view_in(pen, i, area);
            holds = view_holds(&drawn, size);
        }
        if (holds)
            return size;
    }
    return rule.floor;
}

void plan_place(struct pen *pen, struct area area)
{
    mpt size = tag_size_in(pen, area);
    pen->block = BLOCK_PLAN;
    without_room_tell(pen);
    for (int i = 0; i < pen->slots->views.count; i++) {
        struct drawn_view drawn = view_in(pen, i, area);
        view_head_place(&drawn, (struct area){drawn.area.x, area.y, drawn.area.width,
                                              VIEW_HEAD_HEIGHT});
        bodies_draw(&drawn);
        space_draw(&drawn, size);
        names_draw(&drawn);
        view_tags_draw(&drawn, size);
    }
    corner_words_place(pen, (struct area){area.x, area.y + VIEW_HEAD_HEIGHT + PLAN_WORDS_CLEAR,
                                          area.width, area.height});
}
