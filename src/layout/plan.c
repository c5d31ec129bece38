/* plan.c - the boat beside the steps of a card, in one or two views: outlines, names of her
 * places, the tags of this card at their fixed places (room: layout). Where they stand was
 * found for the whole set (boat_slots.c); nothing is moved here. A tag without a place is an
 * error, never left out in silence. */
#include "plan_tag.h"
#include "view_draw.h"

#include "measures.h"
#include "text.h"
#include "trait.h"

#include <string.h>

/* ---- tags ---- */

static void tag_draw(const struct drawn_view *drawn, const struct fixed_slot *slot, mpt size)
{
    struct pen *pen = drawn->pen;
    struct style style = plan_tag_style(size);
    struct area box = slot_tag_box(drawn, slot, size);
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
        if (slot_in_view(drawn, slot) && slot->kind == SLOT_TAG && slot_of_card(drawn->pen, slot))
            tag_draw(drawn, slot, size);
    }
}

/* With its rim. */
static bool is_within_view(const struct drawn_view *drawn, struct area box)
{
    mpt left = drawn->area.x, right = left + drawn->area.width;
    return box.x - TAG_RIM / 2 >= left && box.x + box.width + TAG_RIM / 2 <= right;
}

/* Do all tags of the card stand clear of each other and of names at that size? */
static bool view_holds(const struct drawn_view *drawn, mpt size)
{
    const struct boat_slots *slots = drawn->slots;
    struct area *boxes = arena_array(drawn->pen->arena, slots->count, sizeof *boxes);
    size_t count = 0;
    for (size_t i = 0; i < slots->count; i++)
        if (slot_is_name(drawn, &slots->slots[i]))
            boxes[count++] = slot_name_plate(drawn, &slots->slots[i]);
    for (size_t i = 0; i < slots->count; i++) {
        const struct fixed_slot *slot = &slots->slots[i];
        if (!slot_in_view(drawn, slot) || slot->kind != SLOT_TAG || !slot_of_card(drawn->pen, slot))
            continue;
        boxes[count] = slot_tag_box(drawn, slot, size);
        if (!free_of(boxes[count], boxes, count, PLAN_TAG_APART) ||
            !is_within_view(drawn, boxes[count]))
            return false;
        count++;
    }
    return true;
}

/* ---- words round the boat ---- */

static void boat_word_place(struct pen *pen, enum face_role face, mpt x, mpt baseline,
                       enum plan_word word)
{
    struct style style = view_word_style(pen, face);
    const char *text = sheet_plan(pen->sheet)->words[word];
    pen_text(pen, &style, x, baseline, text, strlen(text), pen->sheet->origin);
}

static mpt boat_word_width(const struct pen *pen, enum face_role face, enum plan_word word)
{
    struct style style = view_word_style(pen, face);
    return pen_width(pen, &style, sheet_plan(pen->sheet)->words[word]);
}

/* What the view shows, white on black, behind the mark of its tags. */
static void view_head_place(const struct drawn_view *drawn, struct area bar)
{
    struct pen *pen = drawn->pen;
    struct style style = view_word_style(pen, FACE_BOLD);
    const char *text = sheet_plan(pen->sheet)->words[drawn->view->head];
    mpt mark = PLAN_MARK, width = mark + PLAN_MARK_GAP;
    style.ink = INK_WHITE;
    style.size = VIEW_HEAD_SIZE;
    while (style.size > size_rule(pen->paper, ROLE_PLAN_LABEL).floor &&
           width + pen_width(pen, &style, text) > bar.width - 2 * PLAN_MARK_GAP)
        style.size -= SIZE_STEP;
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
    mpt bold = boat_word_width(pen, FACE_BOLD, word), light = boat_word_width(pen, FACE_TEXT, hint);
    mpt beside = below > 0 ? 0 : WORD_HINT_GAP;
    bool port = word == PLAN_PORT;
    boat_word_place(pen, FACE_BOLD, port ? at.x : at.x - bold, at.y, word);
    mpt from = below > 0 ? 0 : bold + beside;
    boat_word_place(pen, FACE_TEXT, port ? at.x + from : at.x - from - light, at.y + below, hint);
}

/* PORT, left at the left of the bow, STARB'D, right at the right, BOW between two bows; above
 * several hulls all on one line. */
static void corner_words_place(struct pen *pen, struct area area)
{
    mpt size = size_rule(pen->paper, ROLE_PLAN_LABEL).floor;
    mpt line = line_pitch(ROLE_PLAN_LABEL, size);
    mpt first = baseline_in(area.y, line, size);
    mpt below = pen->slots->views.words_above ? 0 : line;
    hinted_place(pen, (struct point){area.x, first}, PLAN_PORT, below);
    hinted_place(pen, (struct point){area.x + area.width, first}, PLAN_STARBOARD, below);
    if (pen->slots->views.count > 1)
        boat_word_place(pen, FACE_BOLD,
                   area.x + (area.width - boat_word_width(pen, FACE_BOLD, PLAN_BOW)) / 2,
                   first + below, PLAN_BOW);
}

/* ---- all ---- */

static void not_placed_tell(struct pen *pen, const struct marker *marker)
{
    pen->failed = true;
    problem_add(pen->problems, SEVERITY_ERROR, marker->origin,
                "enter gear of one kind at one place as one, with `count`, or record a nearer "
                "zone, or the side, of what lies there",
                "%s: no room on the plan for the tag %s in %s", pen->sheet->name, marker->tag,
                marker->zone->key);
}

static void without_room_tell(struct pen *pen)
{
    for (size_t i = 0; i < pen->slots->count; i++) {
        const struct fixed_slot *slot = &pen->slots->slots[i];
        if (slot->without_room && slot->kind == SLOT_TAG && slot_of_card(pen, slot))
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
        view_boat_draw(&drawn);
        view_hatches_draw(&drawn, size);
        view_names_draw(&drawn);
        view_tags_draw(&drawn, size);
    }
    corner_words_place(pen, (struct area){area.x, area.y + VIEW_HEAD_HEIGHT + PLAN_WORDS_CLEAR,
                                          area.width, area.height});
}
