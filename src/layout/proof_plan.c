/* proof_plan.c - the plan: tags on the boat, on their side, those of the card and no
 * others; leaders; strength of lines (room: layout). Rules G20, G21. */
#include "proof_room.h"

#include <string.h>

#define OUTLINE_LEAST MM(0.9)
#define OUTLINE_LEAST_LARGE MM(1.6)
#define LARGE_PLAN "safety_plan"
#define TOUCH 4                  /* a tag may reach over the outline by a quarter of itself */

static bool is_marker(const struct page_item *item)
{
    return is_text(item) && item->role == ROLE_PLAN_TAG && in_plan(item);
}

/* The boat's outline: lines of a plan that enclose something. */
static bool is_outline(const struct page_item *item)
{
    return in_plan(item) && item->fill == INK_NONE && item->stroke != INK_NONE &&
           (item->kind == PAGE_PATH || item->kind == PAGE_BOX) && item->part != PART_LEADER;
}

/* Lines from names to places, marked so or in a block of their own; not their halos. */
static bool is_leader(const struct page_item *item)
{
    return item->kind == PAGE_LINE && item->stroke != INK_WHITE &&
           (item->part == PART_LEADER || in_block(item, "leaders"));
}

static bool has_plan(const struct proofing *p)
{
    for (size_t i = 0; i < p->page->count; i++)
        if (is_outline(&p->page->items[i]))
            return true;
    return false;
}

static const struct page_item *frame_of(const struct proofing *p, size_t text)
{
    for (size_t i = text; i-- > 0;)
        if (p->page->items[i].kind == PAGE_BOX && item_covers(&p->page->items[i], p->ink[text]))
            return &p->page->items[i];
    return NULL;
}

static const struct marker *marker_of(const struct card *card, const char *tag)
{
    for (size_t i = 0; i < card->marker_count; i++)
        if (text_equal(card->markers[i].tag, tag))
            return &card->markers[i];
    return NULL;
}

/* ---- inside ---- */

static bool outline_encloses(const struct proofing *p, const struct page_item *item,
                             struct point point)
{
    if (item->kind == PAGE_BOX)
        return point.x >= item->area.x && point.x <= AREA_RIGHT(item->area) &&
               point.y >= item->area.y && point.y <= AREA_FOOT(item->area);
    struct outline outline = outline_of(item, p->arena);
    return outline_holds(&outline, point);
}

/* All outlines of one plan block, and the lines between them. */
static struct area plan_area(const struct proofing *p, const char *block, bool lines)
{
    struct area area = {0, 0, 0, 0};
    for (size_t i = 0; i < p->page->count; i++) {
        const struct page_item *item = &p->page->items[i];
        bool line = lines && item->kind == PAGE_LINE && item->part == PART_NONE;
        if (!text_equal(item->block, block) || (!line && (lines || !is_outline(item))))
            continue;
        area = area.width == 0 && area.height == 0 ? item->area : area_union(area, item->area);
    }
    return area;
}

/* Between the hulls of a catamaran, from the net to the after beam: where she has
 * lines or the bridge deck's box on that height, she has something to stand on. */
static bool between_hulls(const struct proofing *p, const char *block, struct point point)
{
    struct area hulls = plan_area(p, block, false), lines = plan_area(p, block, true);
    mpt foot = AREA_FOOT(lines);
    for (size_t i = 0; i < p->page->count; i++)
        if (is_outline(&p->page->items[i]) && p->page->items[i].kind == PAGE_BOX &&
            AREA_FOOT(p->page->items[i].area) > foot)
            foot = AREA_FOOT(p->page->items[i].area);
    mpt eighth = hulls.width / 8;
    return p->card->boat_record->catamaran && point.x >= hulls.x + eighth &&
           point.x <= AREA_RIGHT(hulls) - eighth && point.y >= lines.y && point.y <= foot;
}

static bool on_boat(const struct proofing *p, const char *block, struct point point)
{
    for (size_t i = 0; i < p->page->count; i++) {
        const struct page_item *item = &p->page->items[i];
        if (is_outline(item) && text_equal(item->block, block) &&
            outline_encloses(p, item, point))
            return true;
    }
    return between_hulls(p, block, point);
}

static void inside_judge(struct proofing *p, const struct page_item *tag,
                         const struct page_item *frame)
{
    struct area box = frame->area;
    mpt in_x = box.width / TOUCH, in_y = box.height / TOUCH;
    mpt left = box.x + in_x, right = AREA_RIGHT(box) - in_x;
    mpt head = box.y + in_y, foot = AREA_FOOT(box) - in_y;
    const struct point corners[] = {{left, head}, {right, head}, {left, foot}, {right, foot}};
    for (size_t i = 0; i < sizeof corners / sizeof *corners; i++)
        if (!on_boat(p, tag->block, corners[i])) {
            proof_found(p, RULE_MARKERS_INSIDE, tag, "stands off the boat");
            return;
        }
}

static void side_judge(struct proofing *p, const struct page_item *tag,
                       const struct page_item *frame, enum side side)
{
    struct area boat = plan_area(p, tag->block, false);
    mpt off = frame->area.x + frame->area.width / 2 - (boat.x + boat.width / 2);
    if ((side == SIDE_PORT && off > 0) || (side == SIDE_STARBOARD && off < 0))
        proof_found(p, RULE_MARKER_SIDE, tag, "%s mm on the other side",
                    mm_words(p->arena, off < 0 ? -off : off));
}

static void marker_judge(struct proofing *p, size_t i)
{
    const struct page_item *tag = &p->page->items[i], *frame = frame_of(p, i);
    const struct marker *marker = marker_of(p->card, tag->run->text);
    proof_measured(p, 3);
    if (frame == NULL)
        proof_found(p, RULE_MARKERS_ROWS, tag, "has no frame");
    if (marker == NULL)
        proof_found(p, RULE_MARKERS_ROWS, tag, "is no tag of the card");
    if (frame == NULL || marker == NULL)
        return;
    if (marker->zone == NULL || marker->zone->to <= 100)
        inside_judge(p, tag, frame);
    side_judge(p, tag, frame, marker->side);
}

/* ---- tags and words ---- */

static bool letter_or_digit(char sign)
{
    return (sign >= '0' && sign <= '9') || (sign >= 'A' && sign <= 'Z') ||
           (sign >= 'a' && sign <= 'z');
}

static bool holds_tag(const char *text, const char *tag)
{
    size_t length = strlen(tag);
    for (const char *at = strstr(text, tag); at != NULL; at = strstr(at + 1, tag))
        if ((at == text || !letter_or_digit(at[-1])) && !letter_or_digit(at[length]))
            return true;
    return false;
}

static size_t tag_count(const struct proofing *p, const char *tag, bool on_plan)
{
    size_t count = 0;
    for (size_t i = 0; i < p->page->count; i++) {
        const struct page_item *item = &p->page->items[i];
        if (on_plan)
            count += is_marker(item) && text_equal(item->run->text, tag) ? 1 : 0;
        else
            count += is_text(item) && !is_marker(item) && holds_tag(item->run->text, tag) ? 1 : 0;
    }
    return count;
}

static void rows_judge(struct proofing *p)
{
    for (size_t i = 0; i < p->card->marker_count; i++) {
        const char *tag = p->card->markers[i].tag;
        size_t drawn = tag_count(p, tag, true);
        proof_measured(p, 2);
        bool large = text_equal(p->card->key, LARGE_PLAN);
        if (drawn != 1 && !(large && drawn == 0 && tag_count(p, tag, false) > 0))
            proof_found(p, RULE_MARKERS_ROWS, NULL, "%s stands %zu times on the plan", tag,
                        drawn);
        else if (tag_count(p, tag, false) == 0)
            proof_found(p, RULE_MARKERS_ROWS, NULL, "%s stands on the plan, but in no words",
                        tag);
    }
}

/* ---- leaders ---- */

static int64_t turn(struct point a, struct point b, struct point c)
{
    return (int64_t)(b.x - a.x) * (c.y - a.y) - (int64_t)(b.y - a.y) * (c.x - a.x);
}

static bool opposite(int64_t a, int64_t b)
{
    return (a > 0 && b < 0) || (a < 0 && b > 0);
}

static bool lines_cross(struct point a, struct point b, struct point c, struct point d)
{
    return opposite(turn(a, b, c), turn(a, b, d)) && opposite(turn(c, d, a), turn(c, d, b));
}

static bool line_hits(const struct page_item *line, struct area box)
{
    struct point head = {box.x, box.y}, foot = {AREA_RIGHT(box), AREA_FOOT(box)};
    struct point right = {foot.x, head.y}, left = {head.x, foot.y};
    return lines_cross(line->from, line->to, head, foot) ||
           lines_cross(line->from, line->to, right, left);
}

/* A leader ends at its own name and tag, inside or at their edge. */
static bool ends_at(const struct page_item *line, struct area box)
{
    struct area near = area_grown(box, MM(1));
    struct area from = {line->from.x, line->from.y, 1, 1}, to = {line->to.x, line->to.y, 1, 1};
    return area_meets(near, from) || area_meets(near, to);
}

static void leader_judge(struct proofing *p, size_t i)
{
    const struct page_item *leader = &p->page->items[i];
    for (size_t j = 0; j < p->page->count; j++) {
        const struct page_item *other = &p->page->items[j];
        bool crosses = j < i && is_leader(other) &&
                       lines_cross(leader->from, leader->to, other->from, other->to);
        bool hits = is_text(other) && in_plan(other) && line_hits(leader, p->ink[j]) &&
                    !ends_at(leader, p->ink[j]);
        proof_measured(p, 1);
        if (crosses)
            proof_found(p, RULE_LEADERS, leader, "crosses another leader");
        if (hits)
            proof_found(p, RULE_LEADERS, leader, "runs through \"%s\"", other->run->text);
    }
}

/* ---- all ---- */

static void outline_judge(struct proofing *p, const struct page_item *item)
{
    mpt least = text_equal(p->card->key, LARGE_PLAN) ? OUTLINE_LEAST_LARGE : OUTLINE_LEAST;
    proof_measured(p, 1);
    if (item->line_width < least)
        proof_found(p, RULE_PLAN_LINES, item, "outline of %s mm",
                    mm_words(p->arena, item->line_width));
}

void proof_plan(struct proofing *p)
{
    if (!has_plan(p))
        return;
    for (size_t i = 0; i < p->page->count; i++) {
        const struct page_item *item = &p->page->items[i];
        if (is_marker(item))
            marker_judge(p, i);
        if (is_leader(item))
            leader_judge(p, i);
        if (is_outline(item))
            outline_judge(p, item);
    }
    rows_judge(p);
}
