/* proof_place.c - where things stand: inside the paper's safe area, apart from each
 * other, whole (room: proof). Rules G1 to G3. */
#include "geometry.h"
#include "limits.h"
#include "proof_near.h"
#include "utf8.h"

#include <string.h>

#define CORNER_RADIUS MM(5)
#define CORNER_CLEAR MM(3)
#define APART MM(1)
#define STACKED MM(0.5)
#define SIGN_APART MM(0.5)
#define MARKERS_APART MM(0.3)
#define EDGE_CLEAR MM(0.1)
#define WORD_SPACE 15          /* hundredths of the size */

static const char *apart_words(const struct proofing *p, mpt gap)
{
    return gap < 0 ? text_format(p->arena, "%s mm over", mm_words(p->arena, -gap))
                   : text_format(p->arena, "%s mm from", mm_words(p->arena, gap));
}

static const char *item_named(const struct proofing *p, const struct page_item *item)
{
    if (is_text(item))
        return text_format(p->arena, "\"%s\"", item->run->text);
    return item->kind == PAGE_SIGN ? text_format(p->arena, "the sign %s",
                                                 sign_named(item, "frame"))
                                   : "a line or box";
}

/* ---- G1 ---- */

static void safe_area_judge(struct proofing *p, size_t i)
{
    const struct page_item *item = &p->page->items[i];
    bool mark = in_block(item, BLOCK_MARK) || in_block(item, BLOCK_UNAPPROVED);
    struct area safe = mark ? marks_area(p->page) : safe_area(p->page);
    struct area area = is_text(item) ? p->ink[i] : item->area;
    mpt out = safe.x - area.x, right = RIGHT_OF(area) - RIGHT_OF(safe);
    mpt head = safe.y - area.y, foot = FOOT_OF(area) - FOOT_OF(safe);
    out = right > out ? right : out;
    out = head > out ? head : out;
    out = foot > out ? foot : out;
    if (out > 0)
        proof_found(p, RULE_SAFE_AREA, item, "%s mm outside", mm_words(p->arena, out));
}

/* The point of an area nearest to another point. */
static struct point nearest_point(struct area area, struct point to)
{
    mpt x = to.x < area.x ? area.x : to.x > RIGHT_OF(area) ? RIGHT_OF(area) : to.x;
    mpt y = to.y < area.y ? area.y : to.y > FOOT_OF(area) ? FOOT_OF(area) : to.y;
    return (struct point){x, y};
}

static int64_t distance_squared(struct point a, struct point b)
{
    int64_t x = (int64_t)a.x - b.x, y = (int64_t)a.y - b.y;
    return x * x + y * y;
}

static void hole_judge(struct proofing *p, size_t i)
{
    struct area hole = punched_area(p->page);
    mpt radius = hole.width / 2;
    struct point centre = {hole.x + radius, hole.y + radius};
    int64_t reach = (int64_t)radius * radius;
    if (distance_squared(nearest_point(p->ink[i], centre), centre) < reach)
        proof_found(p, RULE_HOLE, &p->page->items[i], "in the circle of the hole");
}

/* The corner of the area that is deepest in the paper's corner, against the arc
 * that keeps 3 mm from the cut. */
static void corners_judge(struct proofing *p, size_t i)
{
    struct area ink = p->ink[i];
    mpt r = CORNER_RADIUS, clear = CORNER_RADIUS - CORNER_CLEAR;
    for (int corner = 0; corner < 4; corner++) {
        bool right = corner % 2 == 1, foot = corner / 2 == 1;
        struct point centre = {right ? p->page->width - r : r, foot ? p->page->height - r : r};
        struct point deep = {right ? RIGHT_OF(ink) : ink.x, foot ? FOOT_OF(ink) : ink.y};
        bool past_x = right ? deep.x > centre.x : deep.x < centre.x;
        bool past_y = foot ? deep.y > centre.y : deep.y < centre.y;
        if (past_x && past_y && distance_squared(deep, centre) > (int64_t)clear * clear)
            proof_found(p, RULE_CORNERS, &p->page->items[i], "in a corner of the paper");
    }
}

/* ---- G2 ---- */

static bool one_line(const struct page_item *a, const struct page_item *b)
{
    return a->baseline == b->baseline && a->block == b->block;
}

static bool one_paragraph(const struct page_item *a, const struct page_item *b)
{
    return a->paragraph != 0 && a->paragraph == b->paragraph;
}

static bool begins_with_mark(const char *text)
{
    size_t at = 0;
    uint32_t code_point = 0;
    return utf8_next(text, strlen(text), &at, &code_point) && utf8_leans_back(code_point);
}

static bool ends_with_mark(const char *text)
{
    size_t at = 0;
    uint32_t code_point = 0;
    while (utf8_next(text, strlen(text), &at, &code_point))
        continue;
    return utf8_leans_on(code_point);
}

static bool mark_joins(const struct page_item *before, const struct page_item *behind)
{
    return RIGHT_OF(before->area) == behind->area.x &&
           (ends_with_mark(before->run->text) || begins_with_mark(behind->run->text));
}

/* A word and a mark at it, set one by one since one of them is bold: no space stands between. */
static bool one_word(const struct page_item *a, const struct page_item *b)
{
    return one_line(a, b) && one_paragraph(a, b) && (mark_joins(a, b) || mark_joins(b, a));
}

/* How far two texts must be from each other. */
static mpt texts_limit(const struct page_item *a, const struct page_item *b, struct area first,
                       struct area second)
{
    bool level = first.y < FOOT_OF(second) && second.y < FOOT_OF(first);
    if (one_word(a, b))
        return 0;
    if (one_line(a, b)) {
        mpt size = a->run->size < b->run->size ? a->run->size : b->run->size;
        return size * WORD_SPACE / 100;
    }
    if (one_paragraph(a, b))
        return 0;
    if (in_plan(a) && in_plan(b))
        return MARKERS_APART;
    return level ? APART : STACKED;
}

static void two_texts_judge(struct proofing *p, size_t i, size_t j)
{
    const struct page_item *a = &p->page->items[i], *b = &p->page->items[j];
    mpt gap = area_gap(p->ink[i], p->ink[j]);
    if (gap < texts_limit(a, b, p->ink[i], p->ink[j]))
        proof_found(p, RULE_TEXT_OVER_TEXT, b, "%s %s", apart_words(p, gap), item_named(p, a));
}

static void text_sign_judge(struct proofing *p, size_t text, size_t sign)
{
    const struct page_item *words = &p->page->items[text], *frame = &p->page->items[sign];
    mpt gap = area_gap(p->ink[text], frame->area);
    if (gap < SIGN_APART)
        proof_found(p, RULE_TEXT_OVER_SIGN, words, "%s %s", apart_words(p, gap),
                    item_named(p, frame));
}

static void pair_judge(struct proofing *p, size_t i, size_t j)
{
    const struct page_item *a = &p->page->items[i], *b = &p->page->items[j];
    if (is_text(a) && is_text(b))
        two_texts_judge(p, i, j);
    else if (is_text(a) && b->kind == PAGE_SIGN)
        text_sign_judge(p, i, j);
    else if (a->kind == PAGE_SIGN && is_text(b))
        text_sign_judge(p, j, i);
    else if (a->kind == PAGE_SIGN && b->kind == PAGE_SIGN && area_gap(a->area, b->area) < 0)
        proof_found(p, RULE_SIGN_OVER_SIGN, b, "%s %s",
                    apart_words(p, area_gap(a->area, b->area)), item_named(p, a));
}

/* A white rim is paper. */
static struct area black_of(const struct page_item *frame)
{
    return frame->stroke == INK_WHITE ? area_grown(frame->area, -frame->line_width / 2)
                                      : frame->area;
}

static void markers_judge(struct proofing *p, size_t i, size_t j)
{
    const struct page_item *a = plan_tag_frame(p, i), *b = plan_tag_frame(p, j);
    if (a == NULL || b == NULL)
        return;
    mpt gap = area_gap(black_of(a), black_of(b));
    if (gap < MARKERS_APART)
        proof_found(p, RULE_MARKERS_APART, &p->page->items[j], "%s %s", apart_words(p, gap),
                    item_named(p, &p->page->items[i]));
}

/* ---- G3 ---- */

/* At least so much where it is clear. Negative: some of the text is on the edge or beyond it.
 * A white rim is no edge: what it parts from the ground begins inside it. */
static mpt clear_of_edge(const struct page_item *shape, struct area ink)
{
    bool rim = shape->stroke == INK_NONE || (shape->stroke == INK_WHITE && shape->kind == PAGE_BOX);
    mpt half = rim ? 0 : shape->line_width / 2;
    if (shape->kind == PAGE_LINE) {
        mpt apart = area_gap(ink, area_between(shape->from, shape->to)) - half;
        return apart >= EDGE_CLEAR
                   ? apart
                   : (mpt)segment_to_box(shape->from, shape->to, ink) - half;
    }
    mpt outside = area_gap(ink, area_grown(shape->area, half));
    struct area inner = area_grown(shape->area, -half);
    mpt left = ink.x - inner.x, right = RIGHT_OF(inner) - RIGHT_OF(ink);
    mpt head = ink.y - inner.y, foot = FOOT_OF(inner) - FOOT_OF(ink);
    mpt inside = left < right ? left : right;
    inside = head < inside ? head : inside;
    inside = foot < inside ? foot : inside;
    return outside > inside ? outside : inside;
}

/* Painted over by what the words stand on: not to be seen. */
static bool edge_hidden(const struct proofing *p, size_t text, size_t shape)
{
    for (size_t i = shape + 1; i < text; i++)
        if (item_covers(&p->page->items[i], p->ink[text]))
            return true;
    return false;
}

static void edge_judge(struct proofing *p, size_t text, size_t shape)
{
    const struct page_item *words = &p->page->items[text], *edge = &p->page->items[shape];
    bool drawn = edge->kind == PAGE_LINE || edge->kind == PAGE_BOX || edge->kind == PAGE_ELLIPSE;
    bool halo = edge->kind == PAGE_LINE && edge->stroke == INK_WHITE && shape < text;
    bool own_lines = in_plan(words) && in_plan(edge) && edge->part != PART_LEADER &&
                     (words->role != ROLE_PLAN_TAG || edge->fill == INK_NONE);
    if (!drawn || halo || own_lines)
        return;
    mpt clear = clear_of_edge(edge, p->ink[text]);
    if (clear < EDGE_CLEAR && !edge_hidden(p, text, shape))
        proof_found(p, RULE_EDGE_CROSSED, words, "%s the edge of a line or box",
                    apart_words(p, clear));
}

/* Names stand round a plan with lines to it: their block is all of the page. The plan
 * itself is painted in two goes, under the lines and over them. */
static bool round_a_plan(const struct proof_block *a, const struct proof_block *b)
{
    return a->key == BLOCK_LABELS || b->key == BLOCK_LABELS || a->key == BLOCK_LEADERS ||
           b->key == BLOCK_LEADERS || a->key == b->key;
}

/* Marks of a cut are of no block, and stand round all of them. */
static bool round_the_page(const struct proof_block *a, const struct proof_block *b)
{
    return a->key == BLOCK_NONE || b->key == BLOCK_NONE;
}

static void blocks_judge(struct proofing *p)
{
    for (size_t i = 0; i < p->block_count; i++)
        for (size_t j = i + 1; j < p->block_count; j++) {
            const struct proof_block *a = &p->blocks[i], *b = &p->blocks[j];
            proof_measured(p, 1);
            if (area_meets(a->area, b->area) && !round_a_plan(a, b) && !round_the_page(a, b))
                proof_found(p, RULE_BLOCKS_APART, &p->page->items[b->first],
                            "%s the block \"%s\"", apart_words(p, area_gap(a->area, b->area)),
                            block_word(a->key));
        }
}

/* ---- all ---- */

/* Nothing is asked of two things that are farther from each other. */
static mpt pairs_reach(const struct proofing *p)
{
    mpt reach = APART;
    for (size_t i = 0; i < p->page->count; i++) {
        const struct page_item *item = &p->page->items[i];
        mpt space = is_text(item) ? item->run->size * WORD_SPACE / 100 : 0;
        reach = space > reach ? space : reach;
    }
    return reach + 1;
}

static void pairs_judge(struct proofing *p)
{
    mpt reach = pairs_reach(p);
    size_t texts = 0;
    for (size_t j = 0; j < p->page->count; j++) {
        const struct page_item *b = &p->page->items[j];
        struct near_set near = near_item(p, j, reach);
        for (size_t i = 0; near_next(&near, i, &i); i++) {
            const struct page_item *a = &p->page->items[i];
            if (i < j)
                pair_judge(p, i, j);
            if (i < j && is_plan_tag(a) && is_plan_tag(b))
                markers_judge(p, i, j);
            if (i != j && is_text(b) && !is_text(a))
                edge_judge(p, j, i);
        }
        proof_measured(p, is_text(b) ? texts++ : 0);
    }
}

void proof_places(struct proofing *p)
{
    for (size_t i = 0; i < p->page->count; i++) {
        if (p->page->items[i].part == PART_CUT)
            continue;
        proof_measured(p, 3);
        safe_area_judge(p, i);
        hole_judge(p, i);
        corners_judge(p, i);
    }
    pairs_judge(p);
    blocks_judge(p);
}
