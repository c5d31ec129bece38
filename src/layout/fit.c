/* fit.c - the largest size of type that fits (room: layout). */
#include "layout_room.h"

mpt size_that_fits(struct size_rule rule, mpt step, bool (*fits)(void *of, mpt size), void *of)
{
    for (mpt size = rule.aim; size > rule.floor; size -= step)
        if (fits(of, size))
            return size;
    return rule.floor;
}

mpt size_largest(struct size_rule rule, mpt step, bool (*fits)(void *of, mpt size), void *of)
{
    mpt low = 0, high = (rule.aim - rule.floor) / step + 1;
    while (high - low > 1) {
        mpt middle = (low + high) / 2;
        if (fits(of, rule.floor + middle * step))
            low = middle;
        else
            high = middle;
    }
    return rule.floor + low * step;
}

/* A text on one line. */
struct one_line {
    const struct pen *pen;
    struct style *style;
    const char *text;
    mpt width;
};

static bool line_fits(void *of, mpt size)
{
    const struct one_line *line = of;
    line->style->size = size;
    return pen_width(line->pen, line->style, line->text) <= line->width;
}

mpt style_fit(const struct pen *pen, struct style *style, const char *text, mpt width)
{
    struct one_line line = {pen, style, text, width};
    style->size = size_that_fits(size_rule(pen->paper, style->role), SIZE_STEP, line_fits,
                                 &line);
    return pen_width(pen, style, text);
}
