/* template.c - the templates of all sheets, and how they are laid on a paper (room:
 * layout). Each row cuts one area off what the rows before it have left. */
#include "template.h"

#include "promise.h"

#define AREA_ROWS(list) ((int)(sizeof(list) / sizeof *(list)))
#define WAYS_MOST 3

/* Shares are millionths of the width or height of what they are a share of. */
#define MILLIONTHS_OF_ALL 1000000

enum cut {
    CUT_HEAD, CUT_FOOT, CUT_LEFT, CUT_RIGHT,   /* off that edge */
    CUT_NOTHING                                /* the area is all that is left, and it stays */
};

/* When an area is there. Else its gap is not either. */
enum there { ALWAYS, WHERE_NEEDED, UNLESS_YIELDED, WHERE_YIELDED };

/* Does the least that an area is grow with the type in it, or is it less where titles are
 * smaller? See `grown` and `title_share`. */
enum growth { STAYS, GROWS, AS_TITLES };

/* Across the cut an area is the largest of its least, its share of the safe area and what
 * is needed. */
struct area_row {
    enum page_area area;
    enum cut cut;
    enum there there;
    enum growth growth;
    mpt least;
    mpt gap;                  /* to what is left */
    int share[WAYS_MOST];     /* one a way */
};

/* Strips beside the hole. */
#define STRIP_HEIGHT MM(5.2)
#define STRIP_ABOVE MM(1.8)

/* What stands at the same place on every page of a set. */
#define TITLE_ROWS \
    {AREA_BAND, CUT_HEAD, ALWAYS, AS_TITLES, MM(17.5), MM(0.6), {0}}, \
    {AREA_STRIPE, CUT_HEAD, ALWAYS, STAYS, MM(1.5), MM(0.45), {0}}

#define WHEN_ROWS \
    {AREA_WHEN, CUT_HEAD, ALWAYS, STAYS, 0, MM(0.45), {0}}, \
    {AREA_BERTH, CUT_HEAD, WHERE_NEEDED, STAYS, 0, MM(0.45), {0}}, \
    {AREA_CALL_LINE, CUT_HEAD, ALWAYS, GROWS, MM(6.3), MM(1), {0}}

#define MEASURE_ROW {AREA_MEASURE, CUT_FOOT, ALWAYS, STAYS, MM(2.6), MM(0.2), {0}}

#define HEAD_ROWS TITLE_ROWS, WHEN_ROWS, MEASURE_ROW

#define CALL_ROWS \
    {AREA_FOOTER, CUT_FOOT, ALWAYS, STAYS, MM(6.8), MM(0.45), {0}}, \
    {AREA_PANEL, CUT_FOOT, ALWAYS, STAYS, 0, 0, {0}}, \
    {AREA_CONTACT, CUT_FOOT, UNLESS_YIELDED, GROWS, MM(6.55), MM(0.7), {0}}, \
    {AREA_NONE, CUT_FOOT, WHERE_YIELDED, STAYS, MM(0.7), 0, {0}}, \
    {AREA_BODY, CUT_NOTHING, ALWAYS, STAYS, 0, 0, {0}}

/* The right column is as wide as two views of the boat. */
static const struct area_row card_rows[] = {
    HEAD_ROWS, CALL_ROWS,
    {AREA_RIGHT, CUT_RIGHT, ALWAYS, STAYS, MM(67), MM(2.5), {0}},
    {AREA_LEFT, CUT_NOTHING, ALWAYS, STAYS, 0, 0, {0}}};

/* A leaf of two sides: what to do on its front; what helps to decide, where things are and what
 * to say on its back, which has the line of 100 mm. */
static const struct area_row card_front_rows[] = {
    TITLE_ROWS, WHEN_ROWS,
    {AREA_FOOTER, CUT_FOOT, ALWAYS, STAYS, MM(6.8), MM(0.45), {0}},
    {AREA_LEFT, CUT_NOTHING, ALWAYS, STAYS, 0, 0, {0}}};

static const struct area_row card_back_rows[] = {
    TITLE_ROWS, MEASURE_ROW, CALL_ROWS,
    {AREA_RIGHT, CUT_RIGHT, ALWAYS, STAYS, MM(68), MM(2), {0}},
    {AREA_LEFT, CUT_NOTHING, ALWAYS, STAYS, 0, 0, {0}}};

static const struct area_row card_call_rows[] = {TITLE_ROWS, MEASURE_ROW, CALL_ROWS};

/* The call right across the body, and below it two columns: wider left ones take names that are
 * long to spell. */
static const struct area_row distress_rows[] = {
    HEAD_ROWS,
    {AREA_FOOTER, CUT_FOOT, ALWAYS, STAYS, MM(6.8), MM(0.45), {0}},
    {AREA_CONTACT, CUT_FOOT, ALWAYS, GROWS, MM(6.55), MM(1), {0}},
    {AREA_BODY, CUT_NOTHING, ALWAYS, STAYS, 0, 0, {0}},
    {AREA_LEFT, CUT_LEFT, ALWAYS, STAYS, 0, MM(2), {452632, 499999, 552632}},
    {AREA_RIGHT, CUT_NOTHING, ALWAYS, STAYS, 0, 0, {0}}};

/* No call panel. Lists on both sides of the boat, and what saves lives at the foot. */
static const struct area_row safety_plan_rows[] = {
    HEAD_ROWS,
    {AREA_FOOTER, CUT_FOOT, ALWAYS, STAYS, MM(6.8), MM(1), {0}},
    {AREA_BODY, CUT_NOTHING, ALWAYS, STAYS, 0, 0, {0}},
    {AREA_SOURCES, CUT_FOOT, WHERE_NEEDED, STAYS, 0, MM(1), {0}},
    {AREA_INDEX, CUT_FOOT, WHERE_NEEDED, STAYS, 0, MM(0.4), {0}},
    {AREA_LEGEND, CUT_FOOT, ALWAYS, GROWS, MM(7.4), MM(1), {0}},
    {AREA_PLAN_HEAD, CUT_HEAD, ALWAYS, GROWS, MM(5.4), MM(0.4), {0}},
    {AREA_LEFT, CUT_LEFT, ALWAYS, STAYS, 0, MM(3.5), {347370}},
    {AREA_RIGHT, CUT_RIGHT, ALWAYS, STAYS, 0, MM(3.5), {347370}},
    {AREA_MIDDLE, CUT_NOTHING, ALWAYS, STAYS, 0, 0, {0}}};

/* Nothing but the index of cards. */
static const struct area_row index_rows[] = {
    HEAD_ROWS,
    {AREA_FOOTER, CUT_FOOT, ALWAYS, STAYS, MM(6.8), MM(1), {0}},
    {AREA_BODY, CUT_NOTHING, ALWAYS, STAYS, 0, 0, {0}}};

/* A form has no stripe and no line that says when to call. */
static const struct area_row form_areas[] = {
    {AREA_BAND, CUT_HEAD, ALWAYS, AS_TITLES, MM(17.5), MM(1.2), {0}},
    {AREA_WHEN, CUT_HEAD, ALWAYS, STAYS, 0, MM(1.2), {0}},
    MEASURE_ROW,
    {AREA_FOOTER, CUT_FOOT, ALWAYS, STAYS, MM(6.8), MM(1), {0}},
    {AREA_BODY, CUT_NOTHING, ALWAYS, STAYS, 0, 0, {0}}};

static const struct template {
    const struct area_row *rows;
    int count;
    int ways;
} templates[TEMPLATE_COUNT] = {
#define TEMPLATE_AREAS(name, rows, ways, ...) [TEMPLATE_##name] = {rows, AREA_ROWS(rows), ways},
    TEMPLATE_LIST(TEMPLATE_AREAS)
#undef TEMPLATE_AREAS
};

int template_ways(enum template_key key)
{
    promise(key < TEMPLATE_COUNT);
    return templates[key].ways;
}

static mpt share_of(mpt length, int millionths)
{
    return (mpt)((int64_t)length * millionths / MILLIONTHS_OF_ALL);
}

static bool is_there(const struct area_row *row, const struct page_needs *needs)
{
    switch (row->there) {
    case ALWAYS:
        return true;
    case WHERE_NEEDED:
        return row->area < AREA_COUNT && needs->height[row->area] > 0;
    case UNLESS_YIELDED:
        return !needs->contact_yielded;
    case WHERE_YIELDED:
        return needs->contact_yielded;
    }
    promise_unreached();
}

static mpt least_of(const struct area_row *row, const struct paper *paper)
{
    switch (row->growth) {
    case STAYS:
        return row->least;
    case GROWS:
        return grown(paper, row->least);
    case AS_TITLES:
        return title_share(paper, row->least);
    }
    promise_unreached();
}

/* The area's height, or its width where it is cut off at a side. */
static mpt depth_of(const struct area_row *row, const struct page_needs *needs,
                    const struct frame *frame)
{
    struct area safe = frame->safe;
    mpt least = least_of(row, frame->paper);
    bool side = row->cut == CUT_LEFT || row->cut == CUT_RIGHT;
    mpt share = share_of(side ? safe.width : safe.height, row->share[needs->way]);
    mpt needed = side || row->area >= AREA_COUNT ? 0 : needs->height[row->area];
    mpt depth = least > share ? least : share;
    return depth > needed ? depth : needed;
}

/* Cuts an area off the rest, and the gap behind it. */
static struct area area_cut(struct area *rest, enum cut cut, mpt depth, mpt gap)
{
    struct area area = *rest;
    switch (cut) {
    case CUT_HEAD:
        area.height = depth;
        rest->y += depth + gap;
        rest->height -= depth + gap;
        break;
    case CUT_FOOT:
        area.y += rest->height - depth;
        area.height = depth;
        rest->height -= depth + gap;
        break;
    case CUT_LEFT:
        area.width = depth;
        rest->x += depth + gap;
        rest->width -= depth + gap;
        break;
    case CUT_RIGHT:
        area.x += rest->width - depth;
        area.width = depth;
        rest->width -= depth + gap;
        break;
    case CUT_NOTHING:
        break;
    }
    return area;
}

static struct area safe_area_of(const struct paper *paper)
{
    mpt gutters = paper->sides == TWO_SIDES ? 2 * paper->gutter : paper->gutter;
    return (struct area){paper->side + paper->gutter, paper->head,
                         paper->width - 2 * paper->side - gutters,
                         paper->height - paper->head - paper->foot};
}

mpt safe_width(const struct paper *paper)
{
    return safe_area_of(paper).width;
}

/* The marks stand in the margin at the head, on both sides of the hole. */
static void strips_cut(struct frame *frame)
{
    const struct paper *paper = frame->paper;
    bool punched = paper->punch_down > 0;
    mpt clear = paper->punch_clear / 2;
    mpt middle = punched ? paper->width / 2 : frame->safe.x + frame->safe.width / 2;
    mpt top = punched ? paper->punch_down - STRIP_ABOVE
                      : paper->head - STRIP_HEIGHT - STRIP_ABOVE;
    struct area left = {frame->safe.x, top, 0, STRIP_HEIGHT};
    left.width = middle - clear - left.x;
    frame->at[AREA_STRIP_LEFT] = left;
    left.x = middle + clear;
    frame->at[AREA_STRIP_RIGHT] = left;
}

struct frame frame_make(const struct paper *paper, enum template_key key,
                        const struct page_needs *needs)
{
    promise(key < TEMPLATE_COUNT && needs->way < templates[key].ways);
    struct frame frame = {.paper = paper, .safe = safe_area_of(paper)};
    struct area rest = frame.safe;
    strips_cut(&frame);
    for (int i = 0; i < templates[key].count; i++) {
        const struct area_row *row = &templates[key].rows[i];
        if (!is_there(row, needs))
            continue;
        struct area area = area_cut(&rest, row->cut, depth_of(row, needs, &frame), row->gap);
        if (row->area < AREA_COUNT)
            frame.at[row->area] = area;
    }
    return frame;
}

/* ---- parts of an area ---- */

static const int area_parts[] = {
    [PART_OF_BAND_BOAT] = 315790, [PART_OF_BAND_NAME] = 476190, [PART_OF_BAND_NUMBER] = 761905,
    [PART_OF_FOOTER_LEFT] = 560000};

mpt part_of(enum area_part part, mpt length)
{
    promise((size_t)part < sizeof area_parts / sizeof *area_parts);
    return share_of(length, area_parts[part]);
}
