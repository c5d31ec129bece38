/* proof_plan.c - the plan: tags on the boat, on their side, those of the card and no
 * others; leaders; strength of lines (room: proof). Rules G20, G21. */
#include "geometry.h"
#include "proof_plan.h"

#include <string.h>

#define TOUCH 4                  /* a tag may reach over the outline by a quarter of itself */
#define LEADER_CLEAR MM(0.5)     /* from the middle of a leader to a foreign tag */

/* From names and tags to places; not their halos. */
static bool is_leader(const struct page_item *item)
{
    return item->kind == PAGE_LINE && item->stroke != INK_WHITE && item->part == PART_LEADER;
}

static bool has_plan(const struct proofing *p)
{
    for (size_t i = 0; i < p->page->count; i++)
        if (is_boat_outline(&p->page->items[i]))
            return true;
    return false;
}

/* On a safety plan each tag stands level with its row. */
static bool has_places(const struct sheet *sheet)
{
    return sheet_block(sheet, BLOCK_LABELS) != NULL;
}

/* ---- inside ---- */

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

/* The area of all outlines, or of all lines between them, of one view. */
static struct area plan_area(const struct proofing *p, const struct shown_view *view,
                             bool (*wanted)(const struct page_item *item))
{
    struct area area = {0, 0, 0, 0};
    for (size_t i = 0; i < p->page->count; i++) {
        const struct page_item *item = &p->page->items[i];
        if (!plan_view_has(view, item) || !wanted(item))
            continue;
        area = area.width == 0 && area.height == 0 ? item->area : area_union(area, item->area);
    }
    return area;
}

static bool is_deck_box(const struct page_item *item)
{
    return is_boat_outline(item) && item->kind == PAGE_BOX;
}

struct middles { mpt left, right; };

/* From the middle line of her outermost hull on the left to that of the one on the right. */
static struct middles between_middles(const struct proofing *p, const struct shown_view *view)
{
    struct middles span = {INT32_MAX, INT32_MIN};
    for (size_t i = 0; i < p->page->count; i++) {
        const struct page_item *item = &p->page->items[i];
        if (!is_boat_outline(item) || is_deck_box(item) || !plan_view_has(view, item))
            continue;
        mpt middle = item->area.x + item->area.width / 2;
        span.left = middle < span.left ? middle : span.left;
        span.right = middle > span.right ? middle : span.right;
    }
    return span;
}

/* Between the hulls of a boat that has several: at the height of the beams, of the net and of the
 * deck that join them she has something to stand on. */
static bool between_hulls(const struct proofing *p, const struct shown_view *view,
                          struct point point)
{
    const struct boat *boat = p->sheet->boat;
    struct area lines = plan_area(p, view, is_plan_line);
    struct area deck = plan_area(p, view, is_deck_box);
    struct area joined = lines.width == 0 ? deck : deck.width == 0 ? lines
                                                                   : area_union(lines, deck);
    struct middles hulls = between_middles(p, view);
    return (boat->catamaran || boat->facts.hull.value == HULL_TRIMARAN) &&
           point.x >= hulls.left && point.x <= hulls.right &&
           point.y >= joined.y && point.y <= FOOT_OF(joined);
}

static bool on_boat(const struct proofing *p, const struct shown_view *view, struct point point)
{
    for (size_t i = 0; i < p->page->count; i++) {
        const struct page_item *item = &p->page->items[i];
        if (is_boat_outline(item) && plan_view_has(view, item) && outline_encloses(p, item, point))
            return true;
    }
    return between_hulls(p, view, point);
}

static void inside_judge(struct proofing *p, const struct page_item *tag,
                         const struct page_item *frame)
{
    struct area box = frame->area;
    mpt in_x = box.width / TOUCH, in_y = box.height / TOUCH;
    mpt left = box.x + in_x, right = RIGHT_OF(box) - in_x;
    mpt head = box.y + in_y, foot = FOOT_OF(box) - in_y;
    const struct point corners[] = {{left, head}, {right, head}, {left, foot}, {right, foot}};
    struct shown_view view = plan_view_of(p, tag);
    for (size_t i = 0; i < sizeof corners / sizeof *corners; i++)
        if (!on_boat(p, &view, corners[i])) {
            proof_found(p, RULE_MARKERS_INSIDE, tag, "stands off the boat");
            return;
        }
}

static void side_judge(struct proofing *p, const struct page_item *tag,
                       const struct page_item *frame, enum side side)
{
    struct shown_view view = plan_view_of(p, tag);
    struct area boat = plan_area(p, &view, is_boat_outline);
    mpt off = frame->area.x + frame->area.width / 2 - (boat.x + boat.width / 2);
    if (sheet_places(p->sheet)->facing == FACING_STERN)
        off = -off;                       /* its reader looks aft: the stern is up */
    if ((side == SIDE_PORT && off > 0) || (side == SIDE_STARBOARD && off < 0))
        proof_found(p, RULE_MARKER_SIDE, tag, "%s mm on the other side",
                    mm_words(p->arena, off < 0 ? -off : off));
}

/* Where the frame stands, against where its marker belongs. */
static void frame_judge(struct proofing *p, const struct page_item *tag,
                        const struct page_item *frame, const struct marker *marker)
{
    proof_measured(p, 2);
    if (marker->zone == NULL || marker->zone->to <= 100)
        inside_judge(p, tag, frame);
    side_judge(p, tag, frame, marker->side);
}

static void marker_judge(struct proofing *p, size_t i)
{
    const struct page_item *tag = &p->page->items[i], *frame = plan_tag_frame(p, i);
    const struct marker *marker = plan_marker_of(p->sheet, tag->run->text);
    proof_measured(p, 1);
    if (frame == NULL)
        proof_found(p, RULE_MARKERS_ROWS, tag, "has no frame");
    if (marker == NULL)
        proof_found(p, RULE_MARKERS_ROWS, tag, "is no tag of the card");
    if (frame != NULL && marker != NULL)
        frame_judge(p, tag, frame, marker);
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

static size_t tag_count_on_plan(const struct proofing *p, const char *tag)
{
    size_t count = 0;
    for (size_t i = 0; i < p->page->count; i++) {
        const struct page_item *item = &p->page->items[i];
        count += is_plan_tag(item) && text_equal(item->run->text, tag) ? 1 : 0;
    }
    return count;
}

static size_t tag_count_on_page(const struct proofing *p, const char *tag)
{
    size_t count = 0;
    for (size_t i = 0; i < p->page->count; i++) {
        const struct page_item *item = &p->page->items[i];
        count += is_text(item) && !is_plan_tag(item) && holds_tag(item->run->text, tag) ? 1 : 0;
    }
    return count;
}

/* Of the tags so named, how many stand to port of the middle of the boat, and how many not. */
struct sides_count { size_t port, starboard; };

static struct sides_count tag_sides(const struct proofing *p, const char *tag)
{
    struct sides_count sides = {0, 0};
    for (size_t i = 0; i < p->page->count; i++) {
        const struct page_item *item = &p->page->items[i];
        if (!is_plan_tag(item) || !text_equal(item->run->text, tag))
            continue;
        struct shown_view view = plan_view_of(p, item);
        struct area boat = plan_area(p, &view, is_boat_outline);
        bool port = 2 * item->area.x + item->area.width < 2 * boat.x + boat.width;
        *(port ? &sides.port : &sides.starboard) += 1;
    }
    return sides;
}

/* On any page of the card: its rows may stand on the other side of the leaf. */
static size_t tag_count_in_words(const struct proofing *p, const char *tag)
{
    size_t count = p->page_count == 0 ? tag_count_on_page(p, tag) : 0;
    for (size_t i = 0; i < p->page_count; i++)
        count += tag_count_on_page(p->pages[i], tag);
    return count;
}

/* What is on both sides stands on both. */
static void both_sides_judge(struct proofing *p, const char *tag)
{
    struct sides_count sides = tag_sides(p, tag);
    proof_measured(p, 1);
    if (sides.port != 1 || sides.starboard != 1)
        proof_found(p, RULE_MARKER_SIDE, NULL, "%s stands twice on one side", tag);
}

static void tag_told(struct proofing *p, const struct marker *marker)
{
    const char *tag = marker->tag;
    size_t drawn = tag_count_on_plan(p, tag), wanted = marker->drawn == SIDE_BOTH ? 2 : 1;
    proof_measured(p, 2);
    if (drawn != wanted)
        proof_found(p, RULE_MARKERS_ROWS, NULL, "%s stands %zu times on the plan", tag, drawn);
    else if (tag_count_in_words(p, tag) == 0)
        proof_found(p, RULE_MARKERS_ROWS, NULL, "%s stands on the plan, but in no words", tag);
    else if (wanted == 2)
        both_sides_judge(p, tag);
}

static void rows_judge(struct proofing *p)
{
    const struct plan_facts *plan = sheet_plan(p->sheet);
    for (size_t i = 0; i < plan->marker_count && !has_places(p->sheet); i++)
        tag_told(p, &plan->markers[i]);
}

/* Does a line from that place end at the box? */
static bool ends_in(const struct page_item *leader, struct area box)
{
    struct area near = area_grown(box, MM(0.2));
    struct area from = {leader->from.x, leader->from.y, 1, 1};
    struct area to = {leader->to.x, leader->to.y, 1, 1};
    return area_meets(near, from) || area_meets(near, to);
}

/* ---- leaders ---- */

/* Is the box the tag that the leader belongs to, or one of a group that it belongs to? */
static bool own_tag(const struct proofing *p, const struct page_item *leader, struct area box)
{
    for (size_t i = 0; i < p->page->count; i++) {
        const struct page_item *item = &p->page->items[i];
        if (item->kind == PAGE_BOX && item->fill != INK_NONE && in_plan(item) &&
            area_within(box, item->area) && ends_in(leader, item->area))
            return true;
    }
    return false;
}

static void leader_tag_judge(struct proofing *p, const struct page_item *leader,
                             const struct page_item *tag)
{
    mpt clear = (mpt)segment_to_box(leader->from, leader->to, tag->area);
    proof_measured(p, 1);
    if (clear < LEADER_CLEAR && !own_tag(p, leader, tag->area))
        proof_found(p, RULE_LEADERS, leader, "%s mm from the tag at %s, %s mm",
                    mm_words(p->arena, clear), mm_words(p->arena, tag->area.x),
                    mm_words(p->arena, tag->area.y));
}

/* One may end on another: two names, or two tags, of one place. */
static bool leaders_cross(const struct page_item *a, const struct page_item *b)
{
    bool share = (a->from.x == b->from.x && a->from.y == b->from.y) ||
                 (a->to.x == b->to.x && a->to.y == b->to.y);
    return !share && segments_meet(a->from, a->to, b->from, b->to);
}

static void leader_judge(struct proofing *p, size_t i)
{
    const struct page_item *leader = &p->page->items[i];
    for (size_t j = 0; j < p->page->count; j++) {
        const struct page_item *other = &p->page->items[j];
        if (other->kind == PAGE_BOX && other->fill == INK_BLACK && in_plan(other))
            leader_tag_judge(p, leader, other);
        if (j >= i || !is_leader(other))
            continue;
        proof_measured(p, 1);
        if (leaders_cross(leader, other))
            proof_found(p, RULE_LEADERS, leader, "crosses another leader");
    }
}

/* ---- lines and head ---- */

static mpt capital_height(const struct proofing *p, const struct run *run)
{
    const struct face_metrics *metrics = face_metrics(p->faces, run->role);
    return (mpt)((int64_t)run->size * metrics->cap_height / metrics->units_per_em);
}

/* The head of an escape plan: 7 % of the shorter side, its letters 60 % of that. */
static void header_judge(struct proofing *p)
{
    mpt shorter = p->page->width < p->page->height ? p->page->width : p->page->height;
    mpt least = shorter * 7 / 100, letters = least * 60 / 100;
    for (size_t i = 0; i < p->page->count; i++) {
        const struct page_item *item = &p->page->items[i];
        mpt tall = is_text(item) ? capital_height(p, item->run) : item->area.height;
        bool band = item->kind == PAGE_BOX && item->fill == INK_BLACK &&
                    in_block(item, BLOCK_TITLE);
        bool title = is_text(item) && item->role == ROLE_TITLE;
        if (!band && !title)
            continue;
        proof_measured(p, 1);
        if (tall < (title ? letters : least) && (band || item->paragraph == 0))
            proof_found(p, RULE_PLAN_HEADER, item, "%s mm high", mm_words(p->arena, tall));
    }
}

static void strength_judge(struct proofing *p, const struct page_item *line)
{
    bool large = page_rules_of(p->sheet->kind) == RULES_ESCAPE_PLAN;
    mpt least = is_boat_outline(line) ? (large ? MM(1.6) : MM(0.9)) : large ? MM(0.6) : MM(0.35);
    proof_measured(p, 1);
    if (line->line_width < least)
        proof_found(p, RULE_PLAN_LINES, line, "%s of %s mm",
                    is_boat_outline(line) ? "outline" : "line inside",
                    mm_words(p->arena, line->line_width));
}

void proof_plan(struct proofing *p)
{
    if (!has_plan(p))
        return;
    for (size_t i = 0; i < p->page->count; i++) {
        const struct page_item *item = &p->page->items[i];
        if (is_plan_tag(item))
            marker_judge(p, i);
        if (is_leader(item))
            leader_judge(p, i);
        if (is_boat_line(item) || item->part == PART_BAND)
            strength_judge(p, item);
    }
    rows_judge(p);
    if (page_rules_of(p->sheet->kind) == RULES_ESCAPE_PLAN)
        header_judge(p);
}
