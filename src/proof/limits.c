/* limits.c - floors, aims and margins that every page must keep (room: proof). They
 * stand here a second time on purpose: a slip in the sizes a page is laid out by must
 * not be judged by the same slip. */
#include "limits.h"

#include "promise.h"

#define POINTS_OF(points) ((mpt)((points) * MPT_PER_POINT))

#define HOLE_CLEAR MM(7.5)       /* from the middle of a punched hole */
#define HOLE_REACH MM(8)         /* from the middle of one into the page */
#define CUT_CLEAR MM(5)          /* from where a sheet is cut */
#define MARK_CLEAR MM(5)         /* above what tells only what kind of copy this is */
#define READ_AT 500              /* mm: what the table below holds for */
#define TITLE_READ_AT 1600       /* mm: the same of titles */

/* Floors and aims in points at 0.5 m: CAP 676 for what is read at arm's length, ISO 23601 for
 * the plan. What no size in points tells is asked for in millimetres beside it. */
static const struct role_limit role_limits[ROLE_COUNT] = {
    [ROLE_TITLE] = {"title", TIER_TITLE, POINTS_OF(32), POINTS_OF(40), 8.0, 1600, 0, true},
    [ROLE_BOAT] = {"boat and number", TIER_TEXT, POINTS_OF(12), POINTS_OF(16), 0, 0, 500, true},
    [ROLE_SIGNS] = {"signs", TIER_TEXT, POINTS_OF(12), POINTS_OF(14), 0, 0, 500, true},
    [ROLE_BERTH] = {"berth line", TIER_TEXT, POINTS_OF(12), POINTS_OF(14), 0, 0, 500, true},
    [ROLE_CALL_LINE] = {"call line", TIER_TEXT, POINTS_OF(12), POINTS_OF(14), 0, 0, 500, true},
    [ROLE_HEADLINE] = {"headline", TIER_HEADLINE, POINTS_OF(16), POINTS_OF(20), 0, 800, 0, false},
    [ROLE_ROW] = {"row", TIER_TEXT, POINTS_OF(12), POINTS_OF(14), 0, 0, 500, true},
    [ROLE_TABLE] = {"table", TIER_TEXT, POINTS_OF(12), POINTS_OF(13), 0, 0, 500, true},
    [ROLE_BOX] = {"box", TIER_TEXT, POINTS_OF(12), POINTS_OF(14), 0, 0, 500, false},
    [ROLE_CONTACT] = {"contact line", TIER_TEXT, POINTS_OF(12), POINTS_OF(14), 0, 0, 500, true},
    [ROLE_SCRIPT] = {"call", TIER_TEXT, POINTS_OF(12), POINTS_OF(13.5), 0, 0, 500, true},
    [ROLE_CODE] = {"code", TIER_SMALL, POINTS_OF(8), POINTS_OF(8), 2.0, 0, 0, true},
    [ROLE_FOOTER] = {"footer", TIER_SMALL, POINTS_OF(8), POINTS_OF(8), 2.0, 0, 0, true},
    [ROLE_SOURCE_TAG] = {"source", TIER_SMALL, POINTS_OF(8), POINTS_OF(8), 2.0, 0, 0, true},
    [ROLE_MARK] = {"strip", TIER_SMALL, POINTS_OF(9), POINTS_OF(9), 2.0, 0, 0, true},
    [ROLE_PLAN_TAG] = {"tag on the plan", TIER_SMALL, POINTS_OF(9), POINTS_OF(10), 2.0, 0, 0, true},
    [ROLE_PLAN_LABEL] = {"name on the plan", TIER_SMALL, POINTS_OF(9), POINTS_OF(9), 2.0, 0, 0,
                         true},
    [ROLE_NUMBER] = {"number", TIER_TEXT, POINTS_OF(14), POINTS_OF(18), 0, 500, 0, true},
};

/* How far from the edges of a paper things must stay: printers take 4.3 mm, a laminated edge 3;
 * what hangs on a bulkhead is handled at its edges besides. The first that the paper is as wide
 * as. */
static const struct edges { mpt width, side, foot; } edges_of_papers[] = {
    {MM(180), MM(10), MM(8)}, {0, MM(8), MM(7)}};

/* Labels are not laminated. */
static const struct edges edges_of_labels = {0, MM(5), MM(5)};

static const struct edges *edges_of(const struct page *page)
{
    const struct edges *edges = edges_of_papers;
    if (page->paper->labels.width > 0)
        return &edges_of_labels;
    while (page->width < edges->width)
        edges++;
    return edges;
}

/* What is read in an emergency from as far off as the paper hangs grows with that, and a title
 * with how far off it tells the card; small print is looked up with the card in hand. */
static bool grows(const struct role_limit *limit)
{
    return limit->tier == TIER_HEADLINE || limit->tier == TIER_TEXT;
}

static mpt size_read_at(mpt size, int64_t distance, int held_for)
{
    mpt grown = (mpt)(size * distance / held_for), least = POINTS_OF(8);
    return grown < least ? least : grown;
}

static struct role_limit title_limit(struct role_limit limit, int distance)
{
    limit.floor = size_read_at(limit.floor, distance, TITLE_READ_AT);
    limit.aim = size_read_at(limit.aim, distance, TITLE_READ_AT);
    limit.capital_mm = limit.capital_mm * distance / TITLE_READ_AT;
    limit.capitals_read_mm = limit.capitals_read_mm * distance / TITLE_READ_AT;
    return limit;
}

struct role_limit role_limit(const struct paper *paper, enum page_role role)
{
    promise(role < ROLE_COUNT && role_limits[role].floor > 0 && paper->reading_mm > 0);
    struct role_limit limit = role_limits[role];
    if (limit.tier == TIER_TITLE)
        return title_limit(limit, paper->title_mm);
    if (!grows(&limit))
        return limit;
    limit.floor = size_read_at(limit.floor, paper->reading_mm, READ_AT);
    limit.aim = size_read_at(limit.aim, paper->reading_mm, READ_AT);
    limit.capitals_read_mm = limit.capitals_read_mm * paper->reading_mm / READ_AT;
    limit.small_read_mm = limit.small_read_mm * paper->reading_mm / READ_AT;
    return limit;
}

static mpt at_least(mpt length, mpt least)
{
    return length > least ? length : least;
}

/* What is cut off counts from its cut: lamination takes its edge from there. */
struct area safe_area(const struct page *page)
{
    const struct edges *edges = edges_of(page);
    const struct paper *paper = page->paper;
    mpt side = at_least(edges->side, paper->trim + CUT_CLEAR);
    mpt foot = at_least(edges->foot, paper->trim + CUT_CLEAR);
    mpt head = paper->punch_down > 0 ? paper->punch_down + HOLE_REACH : edges->side + paper->trim;
    mpt left = paper->punch_in > 0 ? at_least(side, paper->punch_in + HOLE_REACH) : side;
    mpt right = paper->sides == TWO_SIDES ? left : side;    /* the back has the hole there */
    return (struct area){left, head, page->width - left - right, page->height - head - foot};
}

struct area marks_area(const struct page *page)
{
    struct area area = safe_area(page);
    mpt top = page->paper->trim + MARK_CLEAR;
    area.height += area.y - top;
    area.y = top;
    return area;
}

struct area punched_area(const struct page *page)
{
    mpt down = page->paper->punch_down, in = page->paper->punch_in;
    mpt reach = down > 0 || in > 0 ? HOLE_CLEAR : 0;
    struct point middle = {in > 0 ? in : page->width / 2, in > 0 ? page->height / 2 : down};
    return (struct area){middle.x - reach, middle.y - reach, 2 * reach, 2 * reach};
}
