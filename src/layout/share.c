/* share.c - what all sheets of a set share, so that the same blocks stand at the same place
 * on every page: the heights of the title band, of the signs, of the line for a berth and of the
 * bar that says when to call (room: layout). */
#include "call.h"
#include "pages.h"

struct sharing {
    const struct page_list *list;
    struct pen pen;              /* of a trial, without a sheet */
    struct shared shared;
};

static struct pen sharing_pen(const struct sharing *sharing, size_t index)
{
    struct pen pen = sharing->pen;
    pen.sheet = sharing->list->sheets[index];
    return pen;
}

static mpt signs_measure(const struct sharing *sharing, mpt size)
{
    mpt height = 0;
    for (size_t i = 0; i < sharing->list->count; i++) {
        struct pen pen = sharing_pen(sharing, i);
        struct paragraph when = when_lay(&pen, size, safe_width(pen.paper));
        mpt own = paragraph_height(&when);
        height = own > height ? own : height;
    }
    return height;
}

static bool signs_take_one_line(void *of, mpt size)
{
    return signs_measure(of, size) <= line_pitch(ROLE_SIGNS, size);
}

static struct size_rule head_rule(const struct sharing *sharing, enum page_role role)
{
    struct size_rule rule = size_rule(sharing->pen.paper, role);
    if (sharing->list->lines == HEAD_LINES_LEAST)
        rule.aim = rule.floor;
    return rule;
}

/* One line for all if the floor allows it, else two. */
static void signs_fit(struct sharing *sharing)
{
    mpt size = size_that_fits(head_rule(sharing, ROLE_SIGNS), SIZE_STEP, signs_take_one_line,
                              sharing);
    sharing->shared.sizes.when = size;
    sharing->shared.needs.height[AREA_WHEN] = signs_measure(sharing, size);
}

/* Of the sheet that needs most. */
static size_t berth_lines_most(const struct sharing *sharing, mpt size)
{
    size_t most = 0;
    for (size_t i = 0; i < sharing->list->count; i++) {
        struct pen pen = sharing_pen(sharing, i);
        size_t own = berth_lines(&pen, size);
        most = own > most ? own : most;
    }
    return most;
}

struct berth_trying { const struct sharing *sharing; size_t lines; };

static bool berth_takes_no_more(void *of, mpt size)
{
    const struct berth_trying *trying = of;
    return berth_lines_most(trying->sharing, size) <= trying->lines;
}

/* As few lines as the floor allows, in the largest size that takes no more. */
static void berth_fit(struct sharing *sharing)
{
    struct size_rule rule = head_rule(sharing, ROLE_BERTH);
    struct berth_trying trying = {sharing, berth_lines_most(sharing, rule.floor)};
    mpt size = size_that_fits(rule, SIZE_STEP, berth_takes_no_more, &trying);
    sharing->shared.sizes.berth = size;
    sharing->shared.needs.height[AREA_BERTH] =
        (mpt)trying.lines * line_pitch(ROLE_BERTH, size);
}

static void need_raise(struct sharing *sharing, enum page_area area, mpt height)
{
    mpt *own = &sharing->shared.needs.height[area];
    *own = height > *own ? height : *own;
}

/* One title on two lines makes all bands so tall, and one text of who calls on several lines all
 * bars. */
static void bands_fit(struct sharing *sharing)
{
    for (size_t i = 0; i < sharing->list->count; i++) {
        struct pen trial = sharing_pen(sharing, i);
        need_raise(sharing, AREA_BAND, band_height_least(&trial));
        need_raise(sharing, AREA_CALL_LINE, call_line_height(&trial));
    }
}

struct shared shared_find(const struct page_list *list, const struct pen *trial)
{
    struct sharing sharing = {.list = list, .pen = *trial};
    bands_fit(&sharing);
    signs_fit(&sharing);
    berth_fit(&sharing);
    return sharing.shared;
}

struct page_needs page_needs_of(const struct pen *trial, const struct page_needs *shared)
{
    struct page_needs needs = *shared;
    if (sheet_block(trial->sheet, BLOCK_BERTH) == NULL &&
        sheet_block(trial->sheet, BLOCK_ANCHOR) == NULL)
        needs.height[AREA_BERTH] = 0;
    needs.height[AREA_FOOTER] = footer_height(trial);
    needs.height[AREA_CONTACT] = contact_height(trial);
    return needs;
}
