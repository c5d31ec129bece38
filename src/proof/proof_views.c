/* proof_views.c - the drawings of the boat on a page: which of them a tag stands in, what of the
 * page is the boat, and whether a thing stands at one place on the plans of all cards (room:
 * proof). Rule G20. */
#include "proof_views.h"

#include <stdlib.h>

bool is_boat_line(const struct page_item *item)
{
    return in_plan(item) && item->kind != PAGE_TEXT && item->fill == INK_NONE &&
           item->stroke != INK_NONE && item->part == PART_NONE;
}

bool is_outline(const struct page_item *item)
{
    return is_boat_line(item) && item->stroke == INK_BLACK &&
           (item->kind == PAGE_PATH || item->kind == PAGE_BOX);
}

static bool outline_encloses(const struct proofing *p, const struct page_item *item,
                             struct point point)
{
    if (item->kind == PAGE_BOX)
        return point.x >= item->area.x && point.x <= RIGHT_OF(item->area) &&
               point.y >= item->area.y && point.y <= FOOT_OF(item->area);
    struct outline outline = outline_of(item, p->arena);
    return outline_holds(&outline, point);
}

/* Beams, and the lines of a net. */
static bool is_plan_line(const struct page_item *item)
{
    bool net = in_plan(item) && item->part == PART_NET;
    return item->kind == PAGE_LINE && (is_boat_line(item) || net);
}

/* The bar with the name of a view, over it. */
static bool is_view_head(const struct page_item *item)
{
    return item->kind == PAGE_BOX && item->block == BLOCK_PLAN && item->fill == INK_BLACK &&
           item->stroke == INK_NONE;
}

static size_t view_head_count(const struct proofing *p)
{
    size_t count = 0;
    for (size_t i = 0; i < p->page->count; i++)
        count += is_view_head(&p->page->items[i]) ? 1 : 0;
    return count;
}

/* By the mark in the bar, which is painted next; one drawing alone shows all. */
static enum view_shows head_shows(const struct proofing *p, size_t head)
{
    if (head + 1 >= p->page->count || view_head_count(p) < 2)
        return VIEW_SHOWS_ALL;
    return p->page->items[head + 1].radius > 0 ? VIEW_SHOWS_BELOW : VIEW_SHOWS_DECK;
}

/* A drawing without heads is one view, as wide as the page. */
struct plan_page_view view_of(const struct proofing *p, const struct page_item *tag)
{
    mpt middle = tag->area.x + tag->area.width / 2;
    for (size_t i = 0; i < p->page->count; i++) {
        const struct page_item *head = &p->page->items[i];
        if (is_view_head(head) && tag->block == BLOCK_PLAN && head->area.x <= middle &&
            middle <= RIGHT_OF(head->area))
            return (struct plan_page_view){tag->block, head->area.x, RIGHT_OF(head->area),
                                           head_shows(p, i)};
    }
    return (struct plan_page_view){tag->block, 0, p->page->width, VIEW_SHOWS_ALL};
}

static bool is_in_view(const struct page_item *item, const struct plan_page_view *view)
{
    mpt middle = item->area.x + item->area.width / 2;
    return item->block == view->block && view->left <= middle && middle <= view->right;
}

/* The area of all outlines, or of all lines between them, of one view. */
struct area plan_area(const struct proofing *p, const struct plan_page_view *view,
                             bool (*wanted)(const struct page_item *item))
{
    struct area area = {0, 0, 0, 0};
    for (size_t i = 0; i < p->page->count; i++) {
        const struct page_item *item = &p->page->items[i];
        if (!is_in_view(item, view) || !wanted(item))
            continue;
        area = area.width == 0 && area.height == 0 ? item->area : area_union(area, item->area);
    }
    return area;
}

static bool is_deck_box(const struct page_item *item)
{
    return is_outline(item) && item->kind == PAGE_BOX;
}

/* Between the hulls of a boat that has several: at the height of the beams and of the deck that
 * join them she has something to stand on. */
static bool between_hulls(const struct proofing *p, const struct plan_page_view *view,
                          struct point point)
{
    const struct boat *boat = p->sheet->boat;
    struct area hulls = plan_area(p, view, is_outline);
    struct area lines = plan_area(p, view, is_plan_line);
    struct area deck = plan_area(p, view, is_deck_box);
    struct area joined = lines.width == 0 ? deck : deck.width == 0 ? lines
                                                                   : area_union(lines, deck);
    mpt eighth = hulls.width / 8;
    return (boat->catamaran || boat->facts.hull.value == HULL_TRIMARAN) &&
           point.x >= hulls.x + eighth && point.x <= RIGHT_OF(hulls) - eighth &&
           point.y >= joined.y && point.y <= FOOT_OF(joined);
}

bool on_boat(const struct proofing *p, const struct plan_page_view *view, struct point point)
{
    for (size_t i = 0; i < p->page->count; i++) {
        const struct page_item *item = &p->page->items[i];
        if (is_outline(item) && is_in_view(item, view) && outline_encloses(p, item, point))
            return true;
    }
    return between_hulls(p, view, point);
}

/* ---- one place on all cards ---- */

#define SLOT_SLACK MM(0.5)       /* across */
#define SLOT_SLACK_ALONG 5       /* thousandths of the boat's length as it is drawn */

/* Where a tag stands: x from the left of its drawing, y in thousandths of the boat from her bow. */
struct tag_place {
    const char *tag, *page;
    mpt left, x;
    int32_t along;
};
struct tag_places { struct tag_place *at; size_t count, room; };

static struct tag_place tag_place_of(const struct proofing *p, const struct page_item *tag)
{
    struct plan_page_view view = view_of(p, tag);
    struct area boat = plan_area(p, &view, is_outline);
    int64_t down = tag->area.y + tag->area.height / 2 - boat.y;
    return (struct tag_place){tag->run->text, p->page->id, view.left,
                              tag->area.x + tag->area.width / 2 - view.left,
                              boat.height > 0 ? (int32_t)(down * 1000 / boat.height) : 0};
}

static bool is_one_place(const struct tag_place *a, const struct tag_place *b)
{
    return abs(a->left - b->left) <= SLOT_SLACK && abs(a->x - b->x) <= SLOT_SLACK &&
           abs(a->along - b->along) <= SLOT_SLACK_ALONG;
}

/* A page that has it already; NULL: this is the first. What is on both sides has two places. */
static const char *tag_page_known(const struct tag_places *places, const struct tag_place *own,
                                  bool *kept)
{
    const char *page = NULL;
    *kept = false;
    for (size_t i = 0; i < places->count; i++) {
        if (!text_equal(places->at[i].tag, own->tag) || text_equal(places->at[i].page, own->page))
            continue;
        page = places->at[i].page;
        *kept = *kept || is_one_place(&places->at[i], own);
    }
    return page;
}

static void slot_judge(struct proofing *p, struct tag_places *places, const struct page_item *tag)
{
    struct tag_place own = tag_place_of(p, tag);
    bool kept;
    const char *page = tag_page_known(places, &own, &kept);
    proof_measured(p, 1);
    if (page != NULL) {
        if (!kept)
            proof_found(p, RULE_MARKER_SLOT, tag, "stands elsewhere than on %s", page);
        return;
    }
    places->at = arena_grow(p->arena, places->at, places->count, &places->room,
                            sizeof *places->at);
    places->at[places->count++] = own;
}

void slots_judge(struct proofing *const *all, size_t count)
{
    struct tag_places places = {0};
    for (size_t i = 0; i < count; i++)
        for (size_t n = 0; n < all[i]->page->count && view_head_count(all[i]) > 0; n++)
            if (is_plan_tag(&all[i]->page->items[n]))
                slot_judge(all[i], &places, &all[i]->page->items[n]);
}
