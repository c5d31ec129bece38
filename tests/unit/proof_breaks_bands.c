/* proof_breaks_bands.c - safety plans that lead to the wrong row, list a tag on the wrong side or
 * not at all, stand out of order or the wrong way up, or have a false index: see proof_case.h. */
#include <string.h>

#include "proof_case.h"

#define COUNT_OF(list) (sizeof list / sizeof *(list))

/* The text that says so, in that block. */
static struct page_item *text_in(struct proof_try *try, enum block_key block, const char *words)
{
    for (size_t i = 0; i < try->page.count; i++) {
        struct page_item *item = &try->items[i];
        if (item->kind == PAGE_TEXT && item->block == block &&
            strcmp(item->run->text, words) == 0)
            return item;
    }
    return try_text(try, block, ROLE_COUNT, 0);
}

/* A tag and the box before it. */
static void box_move(struct page_item *tag, mpt right, mpt down)
{
    item_move(tag, right, down);
    item_move(tag - 1, right, down);
}

static void box_take(struct proof_try *try, struct page_item *tag)
{
    struct page_item *box = tag - 1;
    item_remove(try, tag);
    item_remove(try, box);
}

/* ---- once on the boat, once in a list, on its side ---- */

static void row_on_the_other_side(struct proof_try *try, bool broken)
{
    struct page_item *tag = text_in(try, BLOCK_LABELS, "E3");
    if (broken)
        box_move(tag, tag->area.x > try->page.width / 2 ? -MM(124) : MM(124), 0);
}

static void row_lost(struct proof_try *try, bool broken)
{
    if (broken)
        box_take(try, text_in(try, BLOCK_LABELS, "E3"));
}

static void tag_of_row_lost(struct proof_try *try, bool broken)
{
    if (broken)
        box_take(try, text_in(try, BLOCK_PLAN, "E3"));
}

static void row_twice(struct proof_try *try, bool broken)
{
    if (broken)
        item_say(try, text_in(try, BLOCK_LABELS, "E4"), "E3");
}

/* ---- lines ---- */

static struct page_item *line_of_row(struct proof_try *try, const char *tag)
{
    const struct page_item *box = text_in(try, BLOCK_PLAN, tag) - 1;
    mpt middle = box->area.y + box->area.height / 2;
    for (size_t i = 0; i < try->page.count; i++) {
        struct page_item *item = &try->items[i];
        bool near = item->to.x >= box->area.x - 1 &&
                    item->to.x <= box->area.x + box->area.width + 1;
        if (item->kind == PAGE_LINE && item->part == PART_LEADER && item->stroke == INK_BLACK &&
            near && item->to.y >= middle - MM(0.2) && item->to.y <= middle + MM(0.2))
            return item;
    }
    return try_thing(try, BLOCK_LEADERS, PAGE_LINE, try->page.count);
}

static void line_slanting(struct proof_try *try, bool broken)
{
    line_of_row(try, "E3")->from.y += broken ? MM(1) : 0;
}

static void line_to_the_next_row(struct proof_try *try, bool broken)
{
    struct page_item *line = line_of_row(try, "E3");
    mpt down = text_in(try, BLOCK_LABELS, "E4")->area.y - text_in(try, BLOCK_LABELS, "E3")->area.y;
    line->from.y += broken ? down : 0;
    line->to.y = line->from.y;
}

static void line_short_of_its_tag(struct proof_try *try, bool broken)
{
    struct page_item *line = line_of_row(try, "E3");
    line->to.x += (line->to.x > line->from.x ? -1 : 1) * (broken ? MM(0.5) : MM(0.2));
}

static void line_gone(struct proof_try *try, bool broken)
{
    if (broken)
        item_remove(try, line_of_row(try, "E3"));
}

/* The ring stays, and nothing tells what it is. */
static void here_not_led(struct proof_try *try, bool broken)
{
    struct page_item *words = try_saying(try, "YOU ARE HERE");
    for (size_t i = 0; broken && i < try->page.count; i++) {
        struct page_item *item = &try->items[i];
        if (item->part == PART_LEADER && item->from.y > words->area.y &&
            item->from.y < words->area.y + MM(12))
            item->stroke = INK_WHITE;
    }
}

/* ---- order ---- */

/* Both rows change places, with their tags on the boat and the lines between. */
static void rows_change(struct proof_try *try, const char *one, const char *other, bool broken)
{
    struct page_item *first = text_in(try, BLOCK_LABELS, one);
    struct page_item *second = text_in(try, BLOCK_LABELS, other);
    mpt down = second->area.y - first->area.y;
    if (!broken)
        return;
    box_move(first, 0, down);
    box_move(second, 0, -down);
}

static void pushpit_ahead_of_the_locker(struct proof_try *try, bool broken)
{
    rows_change(try, "E3", "E10", broken);
}

static void bow_in_the_band_of_the_cockpit(struct proof_try *try, bool broken)
{
    rows_change(try, "C9", "C16", broken);
}

/* ---- turned ---- */

static void hands_changed(struct proof_try *try, bool broken)
{
    struct page_item *port = text_in(try, BLOCK_PLAN, "PORT");
    struct page_item *starboard = text_in(try, BLOCK_PLAN, "STARB’D");
    if (!broken)
        return;
    item_say(try, port, "STARB’D");
    item_say(try, starboard, "PORT");
}

static void wrong_end_named(struct proof_try *try, bool broken)
{
    item_say(try, text_in(try, BLOCK_PLAN, "BOW"), broken ? "STERN" : "BOW");
}

static void bow_at_the_foot(struct proof_try *try, bool broken)
{
    for (size_t i = 0; broken && i < try->page.count; i++) {
        struct page_item *hull = &try->items[i];
        if (hull->kind != PAGE_PATH || hull->fill != INK_NONE || hull->block != BLOCK_PLAN)
            continue;
        struct path_step *steps = arena_array(try->arena, hull->step_count, sizeof *steps);
        mpt sum = 2 * hull->area.y + hull->area.height;
        memcpy(steps, hull->steps, hull->step_count * sizeof *steps);
        for (size_t s = 0; s < hull->step_count; s++) {
            steps[s].to.y = sum - steps[s].to.y;
            steps[s].control[0].y = sum - steps[s].control[0].y;
            steps[s].control[1].y = sum - steps[s].control[1].y;
        }
        hull->steps = steps;
    }
}

/* ---- the index ---- */

static void index_names_another_place(struct proof_try *try, bool broken)
{
    struct page_item *tag = text_in(try, BLOCK_INDEX, "E3");
    struct page_item *place = tag + 1;
    item_say(try, place, broken ? "Bilge" : place->run->text);
}

static void index_lacks_a_piece(struct proof_try *try, bool broken)
{
    if (broken)
        box_take(try, text_in(try, BLOCK_INDEX, "E3"));
}

/* ---- all ---- */

static const struct proof_break rows[] = {
    {RULE_LIST_SIDE, "other side", "bramble safety_plan_2", row_on_the_other_side},
    {RULE_LIST_SIDE, "row lost", "bramble safety_plan_2", row_lost},
    {RULE_LIST_SIDE, "tag lost", "bramble safety_plan_2", tag_of_row_lost},
    {RULE_LIST_SIDE, "row twice", "bramble safety_plan_2", row_twice},
    {RULE_LEADER_LEVEL, "slanting", "bramble safety_plan_2", line_slanting},
    {RULE_LEADER_LEVEL, "next row", "bramble safety_plan_2", line_to_the_next_row},
    {RULE_LEADER_LEVEL, "short", "bramble safety_plan_2", line_short_of_its_tag},
    {RULE_LEADER_LEVEL, "gone", "bramble safety_plan_2", line_gone},
    {RULE_LEADER_LEVEL, "here", "samphire safety_plan", here_not_led},
    {RULE_BANDS_ORDER, "in a list", "bramble safety_plan_2", pushpit_ahead_of_the_locker},
    {RULE_BANDS_ORDER, "band", "bramble safety_plan", bow_in_the_band_of_the_cockpit},
    {RULE_TURNED, "hands", "bramble safety_plan", hands_changed},
    {RULE_TURNED, "end named", "bramble safety_plan", wrong_end_named},
    {RULE_TURNED, "hull", "bramble safety_plan", bow_at_the_foot},
    {RULE_INDEX, "another place", "bramble safety_plan_2", index_names_another_place},
    {RULE_INDEX, "lacks a piece", "bramble safety_plan_2", index_lacks_a_piece},
};

const struct proof_breaks breaks_bands = {rows, COUNT_OF(rows)};
