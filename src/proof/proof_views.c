/* proof_views.c - the boat beside the steps in one or more views: which view a tag stands in, its
 * shape by its level, that no mark is without words, and that a tag stands at one place on every
 * card of a boat (room: proof). Rules G20, G22. Measures the page; knows no slots. */
#include "proof_plan.h"

#define AWAY_MOST 5              /* thousandths of her length or of half the view: rounding */

/* ---- the boat's lines ---- */

bool is_boat_line(const struct page_item *item)
{
    return in_plan(item) && item->kind != PAGE_TEXT && item->fill == INK_NONE &&
           item->stroke != INK_NONE && item->part == PART_NONE;
}

bool is_boat_outline(const struct page_item *item)
{
    return is_boat_line(item) && item->stroke == INK_BLACK &&
           (item->kind == PAGE_PATH || item->kind == PAGE_BOX);
}

/* ---- views ---- */

/* The bar with the name of a view, over it. */
static bool is_view_head(const struct page_item *item)
{
    return item->kind == PAGE_BOX && item->block == BLOCK_PLAN && item->fill == INK_BLACK &&
           item->stroke == INK_NONE;
}

struct shown_view plan_view_of(const struct proofing *p, const struct page_item *tag)
{
    mpt middle = tag->area.x + tag->area.width / 2;
    int index = 0;
    for (size_t i = 0; i < p->page->count; i++) {
        const struct page_item *head = &p->page->items[i];
        if (tag->block != BLOCK_PLAN || !is_view_head(head))
            continue;
        if (head->area.x <= middle && middle <= RIGHT_OF(head->area))
            return (struct shown_view){tag->block, index, head->area.x, RIGHT_OF(head->area)};
        index++;
    }
    return (struct shown_view){tag->block, 0, 0, p->page->width};
}

bool plan_view_has(const struct shown_view *view, const struct page_item *item)
{
    mpt middle = item->area.x + item->area.width / 2;
    return item->block == view->block && view->left <= middle && middle <= view->right;
}

/* ---- markers ---- */

static const struct marker *marker_of_row(const struct places_facts *plan, const char *tag)
{
    for (size_t i = 0; i < plan->count; i++)
        for (size_t r = 0; r < plan->places[i].row_count; r++)
            if (text_equal(plan->places[i].rows[r].marker.tag, tag))
                return &plan->places[i].rows[r].marker;
    return NULL;
}

const struct marker *plan_marker_of(const struct sheet *sheet, const char *tag)
{
    const struct plan_facts *plan = sheet_plan(sheet);
    for (size_t i = 0; i < plan->marker_count; i++)
        if (text_equal(plan->markers[i].tag, tag))
            return &plan->markers[i];
    return marker_of_row(sheet_places(sheet), tag);
}

/* ---- levels ---- */

/* Its ends are half circles, or nearly. */
static bool is_round(const struct page_item *frame)
{
    return frame->radius * 5 >= frame->area.height * 2;
}

/* What the mark beside the name of a view says, which is painted next: a view alone, or one that
 * has no name, shows all. */
enum view_shows { VIEW_SHOWS_ALL, VIEW_SHOWS_BELOW, VIEW_SHOWS_DECK };

static enum view_shows view_shows(const struct proofing *p, const struct shown_view *view)
{
    enum view_shows shows = VIEW_SHOWS_ALL;
    size_t heads = 0;
    for (size_t i = 0; i + 1 < p->page->count; i++) {
        const struct page_item *head = &p->page->items[i];
        if (!is_view_head(head))
            continue;
        heads++;
        if (head->area.x == view->left)
            shows = head[1].radius > 0 ? VIEW_SHOWS_BELOW : VIEW_SHOWS_DECK;
    }
    return heads > 1 ? shows : VIEW_SHOWS_ALL;
}

/* A catamaran's saloon is drawn beside her deck. */
static bool is_of_other_level(const struct proofing *p, const struct page_item *tag,
                              enum level level)
{
    struct shown_view view = plan_view_of(p, tag);
    enum view_shows shows = view_shows(p, &view);
    if (level != LEVEL_BELOW)
        return shows == VIEW_SHOWS_BELOW;
    return shows == VIEW_SHOWS_DECK && !p->sheet->boat->catamaran;
}

static void level_judge(struct proofing *p, size_t i)
{
    const struct page_item *tag = &p->page->items[i], *frame = plan_tag_frame(p, i);
    const struct marker *marker = plan_marker_of(p->sheet, tag->run->text);
    if (frame == NULL || marker == NULL)
        return;
    proof_measured(p, 1);
    if (is_round(frame) != (marker->level == LEVEL_BELOW))
        proof_found(p, RULE_MARKER_LEVEL, tag, "is %s", is_round(frame) ? "round" : "square");
    else if (is_of_other_level(p, tag, marker->level))
        proof_found(p, RULE_MARKER_LEVEL, tag, "stands in the view of the other level");
}

/* ---- marks without words ---- */

static bool words_within(const struct proofing *p, const struct page_item *mark)
{
    for (size_t i = 0; i < p->page->count; i++)
        if (is_text(&p->page->items[i]) && area_within(p->ink[i], mark->area))
            return true;
    return false;
}

static void mark_judge(struct proofing *p, const struct page_item *mark)
{
    bool black = mark->fill == INK_BLACK && (mark->kind == PAGE_BOX || mark->kind == PAGE_ELLIPSE);
    if (!black || mark->block != BLOCK_PLAN || sheet_block(p->sheet, BLOCK_LABELS) != NULL)
        return;
    proof_measured(p, 1);
    if (!words_within(p, mark))
        proof_found(p, RULE_MARK_NAMED, mark, "no words in it");
}

void proof_views(struct proofing *p)
{
    for (size_t i = 0; i < p->page->count; i++) {
        if (is_plan_tag(&p->page->items[i]))
            level_judge(p, i);
        mark_judge(p, &p->page->items[i]);
    }
}

/* ---- one place on all cards ---- */

/* Where a tag stands: view, and thousandths of half the view off its middle and of the boat's
 * length from the bow. */
struct stand {
    const char *tag, *page;
    int view;
    int32_t off, along;
};
struct stand_list { struct stand *at; size_t count, room; };

static struct area view_boat(const struct proofing *p, const struct shown_view *view)
{
    struct area boat = {0, 0, 0, 0};
    for (size_t i = 0; i < p->page->count; i++) {
        const struct page_item *item = &p->page->items[i];
        if (is_boat_outline(item) && plan_view_has(view, item))
            boat = boat.width == 0 ? item->area : area_union(boat, item->area);
    }
    return boat;
}

static struct stand tag_standing(const struct proofing *p, size_t i)
{
    const struct page_item *tag = &p->page->items[i], *frame = plan_tag_frame(p, i);
    struct shown_view view = plan_view_of(p, tag);
    struct area boat = view_boat(p, &view);
    int64_t x = 2 * (int64_t)frame->area.x + frame->area.width - view.left - view.right;
    int64_t y = 2 * (int64_t)(frame->area.y - boat.y) + frame->area.height;
    return (struct stand){tag->run->text, p->page->id, view.index,
                          (int32_t)(x * 1000 / (view.right - view.left)),
                          boat.height == 0 ? 0 : (int32_t)(y * 500 / boat.height)};
}

static int32_t thousandths_apart(int32_t a, int32_t b)
{
    return a > b ? a - b : b - a;
}

static bool is_same_place(const struct stand *a, const struct stand *b)
{
    return a->view == b->view && thousandths_apart(a->off, b->off) <= AWAY_MOST &&
           thousandths_apart(a->along, b->along) <= AWAY_MOST;
}

/* What is on both sides has two places on a page: the first card that shows it tells them. */
static void stand_judge(struct proofing *p, struct stand_list *known, size_t i)
{
    struct stand own = tag_standing(p, i);
    const struct stand *other = NULL;
    for (size_t k = 0; k < known->count; k++) {
        const struct stand *at = &known->at[k];
        if (!text_equal(at->tag, own.tag))
            continue;
        if (is_same_place(at, &own))
            return;
        other = text_equal(at->page, own.page) ? other : at;
    }
    if (other != NULL)
        proof_found(p, RULE_PLAN_SAME, &p->page->items[i],
                    "%d and %d thousandths away from where %s has it",
                    (int)thousandths_apart(own.off, other->off),
                    (int)thousandths_apart(own.along, other->along), other->page);
    known->at = arena_grow(p->arena, known->at, known->count, &known->room, sizeof *known->at);
    known->at[known->count++] = own;
}

void proof_views_together(struct proofing *const *all, size_t count)
{
    struct stand_list known = {0};
    for (size_t page = 0; page < count; page++) {
        struct proofing *p = all[page];
        if (sheet_steps(p->sheet)->count == 0)
            continue;
        for (size_t i = 0; i < p->page->count; i++)
            if (is_plan_tag(&p->page->items[i]) && plan_tag_frame(p, i) != NULL) {
                proof_measured(p, 1);
                stand_judge(p, &known, i);
            }
    }
}
