/* line_fill.c - texts with commas between, filled into lines (room: app). A text is never
 * broken, however long it is. */
#include "findings.h"

enum { FILL_COLUMNS = 100 };

static size_t fill_width(const char *text)
{
    long width = text_code_points(text);
    return width < 0 ? 0 : (size_t)width;
}

struct line_fill line_fill_begin(struct text_builder *out, int indent, const char *head)
{
    text_add(out, head);
    return (struct line_fill){.out = out, .indent = indent, .column = fill_width(head)};
}

void line_fill_add(struct line_fill *fill, const char *text)
{
    size_t width = fill_width(text);
    if (fill->count > 0) {
        bool room = fill->column + width + 3 <= FILL_COLUMNS;
        text_add(fill->out, room ? ", " : ",\n");
        if (!room)
            text_add_format(fill->out, "%*s", fill->indent, "");
        fill->column = room ? fill->column + 2 : (size_t)fill->indent;
    }
    text_add(fill->out, text);
    fill->column += width;
    fill->count++;
}

void line_fill_end(struct line_fill *fill)
{
    text_add(fill->out, "\n");
}
