/* proof_bands.c - the safety plan: each tag on the boat and in a list of its side, level with its
 * row, in the order along the boat (room: proof). Rules of G20. It measures the page, and knows
 * of no band but the lines that are drawn. */
#include "proof_plan.h"

#define AT_EDGE MM(0.3)          /* a line that ends so near to a box ends at it */

/* A row of the sheet, as it is to stand on the page. */
struct shown_row {
    const struct plan_row *row;
    const struct page_item *listed;    /* the box of its tag in the first list that has it */
    size_t band;                 /* how many bands begin above that */
};

/* ---- what is drawn ---- */

bool is_hull_line(const struct page_item *item)
{
    return in_plan(item) && item->kind == PAGE_PATH && item->fill == INK_NONE &&
           item->stroke == INK_BLACK;
}

struct area hull_area(const struct proofing *p)
{
    struct area area = {0, 0, 0, 0};
    for (size_t i = 0; i < p->page->count; i++) {
        const struct page_item *item = &p->page->items[i];
        if (is_hull_line(item))
            area = area.width == 0 ? item->area : area_union(area, item->area);
    }
    return area;
}

/* The n-th box with that tag in it, in that block; NULL: there are no more. */
static const struct page_item *tag_box_in(const struct proofing *p, enum block_key block,
                                          const char *tag, size_t n)
{
    for (size_t i = 1; i < p->page->count; i++) {
        const struct page_item *text = &p->page->items[i], *box = text - 1;
        if (in_block(text, block) && is_text(text) && text_equal(text->run->text, tag) &&
            box->kind == PAGE_BOX && box->fill == INK_BLACK &&
            area_within(p->ink[i], box->area) && n-- == 0)
            return box;
    }
    return NULL;
}

size_t tag_boxes_in(const struct proofing *p, enum block_key block, const char *tag)
{
    size_t count = 0;
    while (tag_box_in(p, block, tag, count) != NULL)
        count++;
    return count;
}

static mpt box_middle_x(const struct page_item *box)
{
    return box->area.x + box->area.width / 2;
}

static mpt box_middle_y(const struct page_item *box)
{
    return box->area.y + box->area.height / 2;
}

static bool stands_left(const struct shown_plan *shown, const struct page_item *box)
{
    return box_middle_x(box) < shown->middle;
}

/* ---- each tag once on the boat, once in a list, on its side ---- */

static void list_side_judge(const struct shown_plan *shown, const struct shown_row *row,
                            const struct page_item *box)
{
    enum side side = row->row->marker.side;
    bool left = stands_left(shown, box);
    proof_measured(shown->p, 1);
    if ((side == SIDE_PORT && left == shown->turned) ||
        (side == SIDE_STARBOARD && left != shown->turned))
        proof_found(shown->p, RULE_LIST_SIDE, box, "the row of %s stands on the other side",
                    row->row->marker.tag);
}

static void standing_judge(const struct shown_plan *shown, const struct shown_row *row)
{
    const char *tag = row->row->marker.tag;
    size_t wanted = row->row->marker.side == SIDE_BOTH ? 2 : 1;
    size_t drawn = tag_boxes_in(shown->p, BLOCK_PLAN, tag);
    size_t listed = tag_boxes_in(shown->p, BLOCK_LABELS, tag);
    struct page_item item = {.kind = PAGE_BOX, .origin = row->row->marker.origin};
    proof_measured(shown->p, 2);
    if (drawn != wanted)
        proof_found(shown->p, RULE_LIST_SIDE, &item, "%s stands %zu times on the boat", tag, drawn);
    if (listed != wanted)
        proof_found(shown->p, RULE_LIST_SIDE, &item, "%s stands %zu times in the lists", tag,
                    listed);
    for (size_t i = 0; i < listed; i++)
        list_side_judge(shown, row, tag_box_in(shown->p, BLOCK_LABELS, tag, i));
}

/* ---- a level line from each row to its tag ---- */

static bool is_row_line(const struct page_item *item)
{
    return item->kind == PAGE_LINE && item->part == PART_LEADER && item->stroke == INK_BLACK;
}

static bool x_near(mpt a, mpt b)
{
    return a - b <= AT_EDGE && b - a <= AT_EDGE;
}

/* Does it end at that edge of the box? */
static bool line_ends_at(const struct page_item *line, struct area box, mpt edge)
{
    const struct point *end = x_near(line->from.x, edge) ? &line->from : &line->to;
    return x_near(end->x, edge) && end->y >= box.y && end->y <= FOOT_OF(box);
}

/* From beside the row's box to the edge of the tag that is towards it. */
static bool line_leads(const struct page_item *line, const struct page_item *row,
                       const struct page_item *tag)
{
    bool left = box_middle_x(row) < box_middle_x(tag);
    bool rightwards = line->from.x < line->to.x;
    mpt start = rightwards == left ? line->from.x : line->to.x;
    bool from_row = left ? start > RIGHT_OF(row->area) : start < row->area.x;
    return line->from.y == line->to.y && from_row &&
           line_ends_at(line, tag->area, left ? tag->area.x : RIGHT_OF(tag->area)) &&
           line->from.y >= row->area.y && line->from.y <= FOOT_OF(row->area);
}

static void led_judge(const struct shown_plan *shown, const struct page_item *row,
                      const struct page_item *tag, const char *words)
{
    const struct page *page = shown->p->page;
    size_t led = 0;
    for (size_t i = 0; i < page->count; i++)
        led += is_row_line(&page->items[i]) && line_leads(&page->items[i], row, tag);
    proof_measured(shown->p, 1);
    if (led != 1)
        proof_found(shown->p, RULE_LEADER_LEVEL, row, "%zu level lines lead from %s to its tag",
                    led, words);
}

/* The box of the tag on the boat that belongs to a box in a list: of two, that of its side. */
static const struct page_item *tag_of_list_box(const struct shown_plan *shown, const char *tag,
                                               const struct page_item *row)
{
    const struct page_item *first = tag_box_in(shown->p, BLOCK_PLAN, tag, 0);
    const struct page_item *second = tag_box_in(shown->p, BLOCK_PLAN, tag, 1);
    if (second != NULL && stands_left(shown, second) == stands_left(shown, row))
        return second;
    return first;
}

static void lines_judge(const struct shown_plan *shown, const struct shown_row *row)
{
    const char *tag = row->row->marker.tag;
    const struct page_item *box;
    for (size_t i = 0; (box = tag_box_in(shown->p, BLOCK_LABELS, tag, i)) != NULL; i++) {
        const struct page_item *on_boat = tag_of_list_box(shown, tag, box);
        if (on_boat != NULL)
            led_judge(shown, box, on_boat, tag);
    }
}

/* ---- where the cards hang ---- */

static const struct page_item *here_ring(const struct proofing *p)
{
    for (size_t i = 0; i < p->page->count; i++) {
        const struct page_item *item = &p->page->items[i];
        if (in_plan(item) && item->kind == PAGE_BOX && item->fill == INK_WHITE &&
            item->stroke == INK_BLACK && item->radius > 0 && item->line_width >= MM(1))
            return item;
    }
    return NULL;
}

static void here_judge(const struct shown_plan *shown, const struct shown_row *row)
{
    struct page_item item = {.kind = PAGE_BOX, .origin = row->row->marker.origin};
    const struct page_item *ring = here_ring(shown->p);
    size_t lines = 0;
    for (size_t i = 0; ring != NULL && i < shown->p->page->count; i++) {
        const struct page_item *line = &shown->p->page->items[i];
        lines += is_row_line(line) && line->from.y == line->to.y &&
                 line->from.y >= ring->area.y && line->from.y <= FOOT_OF(ring->area) &&
                 (line->to.x <= ring->area.x || line->to.x >= RIGHT_OF(ring->area));
    }
    proof_measured(shown->p, 1);
    if (lines == 0)
        proof_found(shown->p, RULE_LEADER_LEVEL, &item,
                    "no level line leads to where the cards hang");
}

/* ---- the order along the boat ---- */

/* From where to where a zone is on this boat, in millimetres from the bow: what was measured in
 * it counts before where most boats have it. */
struct zone_extent { int64_t from, to; };

static struct zone_extent extent_of(const struct shown_plan *shown, const struct zone *zone)
{
    const struct zone *family = zone_of(zone->family);
    int64_t loa = shown->p->sheet->boat->facts.loa_m.milli;
    struct zone_extent reach = {family->from * loa / 100, family->to * loa / 100};
    bool measured = false;
    for (size_t i = 0; i < shown->p->sheet->boat->equipment_count; i++) {
        const struct equipment *gear = &shown->p->sheet->boat->equipment[i];
        if (gear->place_zone->family != zone->family || !gear->at.given)
            continue;
        int64_t x = gear->at.first.milli;
        reach.from = !measured || x < reach.from ? x : reach.from;
        reach.to = !measured || x > reach.to ? x : reach.to;
        measured = true;
    }
    return reach;
}

/* Is the first surely farther forward than the second? */
static bool is_forward_of(const struct shown_plan *shown, const struct plan_row *a,
                          const struct plan_row *b)
{
    if (a->marker.zone->family == b->marker.zone->family)
        return a->marker.exact && b->marker.exact && a->marker.x_mm < b->marker.x_mm &&
               a->marker.side == b->marker.side;
    struct zone_extent first = extent_of(shown, a->marker.zone);
    struct zone_extent second = extent_of(shown, b->marker.zone);
    return first.to <= second.from && first.from < second.from;
}

/* How many bands begin above that height. */
static size_t band_at(const struct proofing *p, mpt y)
{
    size_t bands = 0;
    for (size_t i = 0; i < p->page->count; i++) {
        const struct page_item *item = &p->page->items[i];
        bool again = false;
        for (size_t j = 0; j < i && item->part == PART_BAND; j++)
            again = again || (p->page->items[j].part == PART_BAND &&
                              p->page->items[j].from.y == item->from.y);
        bands += item->part == PART_BAND && !again && item->from.y < y;
    }
    return bands;
}

/* In one list the one stands over the other; across the boat at least in no later band. */
static bool in_order(const struct shown_plan *shown, const struct shown_row *forward,
                     const struct shown_row *aft)
{
    mpt first = box_middle_y(forward->listed), second = box_middle_y(aft->listed);
    if (stands_left(shown, forward->listed) == stands_left(shown, aft->listed))
        return shown->turned ? first > second : first < second;
    return shown->turned ? forward->band >= aft->band : forward->band <= aft->band;
}

static void order_of_two(const struct shown_plan *shown, const struct shown_row *a,
                         const struct shown_row *b)
{
    if (a->listed == NULL || b->listed == NULL || !is_forward_of(shown, a->row, b->row))
        return;
    proof_measured(shown->p, 1);
    if (!in_order(shown, a, b))
        proof_found(shown->p, RULE_BANDS_ORDER, a->listed,
                    "%s, farther forward, stands abaft %s", a->row->marker.tag,
                    b->row->marker.tag);
}

/* ---- all ---- */

static struct shown_row row_shown(const struct proofing *p, const struct plan_row *row)
{
    struct shown_row shown = {.row = row};
    if (row->kind != NULL)
        shown.listed = tag_box_in(p, BLOCK_LABELS, row->marker.tag, 0);
    if (shown.listed != NULL)
        shown.band = band_at(p, box_middle_y(shown.listed));
    return shown;
}

static size_t rows_shown(const struct proofing *p, const struct places_facts *plan,
                         struct shown_row **rows)
{
    size_t count = 0;
    for (size_t i = 0; i < plan->count; i++)
        count += plan->places[i].row_count;
    *rows = arena_array(p->arena, count + 1, sizeof **rows);
    count = 0;
    for (size_t i = 0; i < plan->count; i++)
        for (size_t r = 0; r < plan->places[i].row_count; r++)
            (*rows)[count++] = row_shown(p, &plan->places[i].rows[r]);
    return count;
}

static void shown_row_judge(const struct shown_plan *shown, const struct shown_row *rows,
                            size_t count, size_t index)
{
    if (rows[index].row->kind == NULL) {
        here_judge(shown, &rows[index]);
        return;
    }
    standing_judge(shown, &rows[index]);
    lines_judge(shown, &rows[index]);
    indexed_judge(shown, rows[index].row);
    for (size_t i = 0; i < count; i++)
        if (rows[i].row->kind != NULL)
            order_of_two(shown, &rows[index], &rows[i]);
}

void proof_bands(struct proofing *p)
{
    const struct places_facts *plan = sheet_places(p->sheet);
    struct area hull = hull_area(p);
    struct shown_plan shown = {p, plan, hull.x + hull.width / 2, plan->facing == FACING_STERN};
    struct shown_row *rows;
    if (sheet_block(p->sheet, BLOCK_LABELS) == NULL)
        return;
    size_t count = rows_shown(p, plan, &rows);
    for (size_t i = 0; i < count; i++)
        shown_row_judge(&shown, rows, count, i);
    index_judge(&shown);
    turned_judge(&shown);
}
