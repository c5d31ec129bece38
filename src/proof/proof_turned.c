/* proof_turned.c - is a safety plan turned as its reader looks, and its index true (room: proof)?
 * Rules of G20. */
#include "item.h"
#include "proof_plan.h"

#define INDEXED 6                /* so many kinds of gear the index never leaves out */

/* ---- turned to its reader ---- */

static const struct page_item *plan_head_word(const struct shown_plan *shown, enum plan_word word)
{
    const struct proofing *p = shown->p;
    for (size_t i = 0; i < p->page->count; i++)
        if (in_plan(&p->page->items[i]) && is_text(&p->page->items[i]) &&
            p->page->items[i].role == ROLE_ROW &&
            text_equal(p->page->items[i].run->text, sheet_plan(p->sheet)->words[word]))
            return &p->page->items[i];
    return NULL;
}

/* How broad her outline is within that area. */
static mpt breadth_in(const struct shown_plan *shown, struct area near)
{
    mpt left = RIGHT_OF(near), right = near.x;
    for (size_t i = 0; i < shown->p->page->count; i++) {
        if (!is_hull_line(&shown->p->page->items[i]))
            continue;
        struct outline outline = outline_of(&shown->p->page->items[i], shown->p->arena);
        for (size_t c = 0; c < outline.count; c++) {
            struct point at = outline.corners[c];
            if (at.y < near.y || at.y > FOOT_OF(near))
                continue;
            left = at.x < left ? at.x : left;
            right = at.x > right ? at.x : right;
        }
    }
    return right - left;
}

void turned_judge(const struct shown_plan *shown)
{
    struct proofing *p = shown->p;
    const struct page_item *port = plan_head_word(shown, PLAN_PORT);
    const struct page_item *starboard = plan_head_word(shown, PLAN_STARBOARD);
    const struct page_item *up = plan_head_word(shown, shown->turned ? PLAN_STERN : PLAN_BOW);
    struct area hull = hull_area(p);
    proof_measured(p, 3);
    if (port == NULL || starboard == NULL ||
        (port->area.x < starboard->area.x) == shown->turned)
        proof_found(p, RULE_TURNED, port, "port and starboard are not on its reader's hands");
    if (up == NULL || up->area.y > hull.y)
        proof_found(p, RULE_TURNED, up, "the end that its reader looks to is not named over it");
    struct area head = {hull.x, hull.y, hull.width, hull.height / 20}, foot = head;
    foot.y = FOOT_OF(hull) - foot.height;
    bool has_bow = shown->plan->from == 0;
    if (has_bow && (breadth_in(shown, head) < breadth_in(shown, foot)) == shown->turned)
        proof_found(p, RULE_TURNED, NULL, "her bow is at the wrong end");
}

/* ---- the index ---- */

static const struct plan_place *place_of_tag(const struct places_facts *plan, const char *tag)
{
    for (size_t i = 0; i < plan->count; i++)
        for (size_t r = 0; r < plan->places[i].row_count; r++)
            if (text_equal(plan->places[i].rows[r].marker.tag, tag))
                return &plan->places[i];
    return NULL;
}

/* The words behind a tag of the index that are no tag: its place. */
static const struct page_item *index_place_of(const struct proofing *p, size_t tag)
{
    for (size_t i = tag + 1; i < p->page->count && in_block(&p->page->items[i], BLOCK_INDEX); i++)
        if (is_text(&p->page->items[i]) && p->page->items[i].fill != INK_WHITE)
            return &p->page->items[i];
    return NULL;
}

static void index_tag_judge(const struct shown_plan *shown, size_t i)
{
    const struct page_item *tag = &shown->p->page->items[i];
    const struct plan_place *place = place_of_tag(shown->plan, tag->run->text);
    const struct page_item *said = index_place_of(shown->p, i);
    proof_measured(shown->p, 1);
    if (place != NULL && (said == NULL || !text_equal(said->run->text, place->title)))
        proof_found(shown->p, RULE_INDEX, tag, "it is at \"%s\"", place->title);
}

static bool saves_lives(enum item_key item)
{
    for (size_t i = 0; i < INDEXED; i++)
        if (life_saving_items[i] == item)
            return true;
    return false;
}

void indexed_judge(const struct shown_plan *shown, const struct plan_row *row)
{
    struct page_item item = {.kind = PAGE_BOX, .origin = row->marker.origin};
    if (!saves_lives(row->kind->item))
        return;
    proof_measured(shown->p, 1);
    if (tag_boxes_in(shown->p, BLOCK_INDEX, row->marker.tag) != 1)
        proof_found(shown->p, RULE_INDEX, &item, "%s stands not once in it",
                    row->marker.tag);
}

void index_judge(const struct shown_plan *shown)
{
    const struct page *page = shown->p->page;
    for (size_t i = 0; i < page->count; i++)
        if (in_block(&page->items[i], BLOCK_INDEX) && is_text(&page->items[i]) &&
            page->items[i].fill == INK_WHITE)
            index_tag_judge(shown, i);
}
