/* fit.c - the largest size of type that fits (room: layout). */
#include "layout_room.h"

mpt size_that_fits(struct size_rule rule, mpt step, bool (*fits)(void *of, mpt size), void *of)
{
    for (mpt size = rule.aim; size > rule.floor; size -= step)
        if (fits(of, size))
            return size;
    return rule.floor;
}

/* A text on one line. */
struct one_line {
    const struct sheet *sheet;
    struct style *style;
    const char *text;
    mpt width;
};

static bool line_fits(void *of, mpt size)
{
    const struct one_line *line = of;
    line->style->size = size;
    return sheet_width(line->sheet, line->style, line->text) <= line->width;
}

mpt style_fit(const struct sheet *sheet, struct style *style, const char *text, mpt width)
{
    struct one_line line = {sheet, style, text, width};
    style->size = size_that_fits(size_rule(sheet->paper, style->role), SIZE_STEP, line_fits,
                                 &line);
    return sheet_width(sheet, style, text);
}
