/* marked.c - a text with **bold** parts on one line (room: layout). */
#include "marked.h"

#include "text.h"

#include <string.h>

#define MARK "**"

/* A stretch of one weight, with the spaces at its ends. */
struct stretch {
    const char *start;
    size_t length;
    bool bold;
};

/* The first stretch begins with a length of none. False: the text is at its end. */
static bool stretch_next(struct stretch *stretch)
{
    const char *at = stretch->start + stretch->length;
    for (; text_begins(at, MARK); at += strlen(MARK))
        stretch->bold = !stretch->bold;
    const char *end = strstr(at, MARK);
    *stretch = (struct stretch){at, end == NULL ? strlen(at) : (size_t)(end - at), stretch->bold};
    return stretch->length > 0;
}

static const struct style *stretch_style(const struct marked_styles *styles,
                                    const struct stretch *stretch)
{
    return stretch->bold ? &styles->bold : &styles->plain;
}

static mpt stretch_width(const struct pen *pen, const struct style *style, const char *text,
                         size_t length)
{
    return run_width(pen->faces, style->face, style->size, text, length, NULL);
}

mpt marked_width(const struct pen *pen, const struct marked_styles *styles, const char *text)
{
    struct stretch stretch = {.start = text};
    mpt width = 0;
    while (stretch_next(&stretch))
        width += stretch_width(pen, stretch_style(styles, &stretch), stretch.start, stretch.length);
    return width;
}

/* Without the spaces at its ends. */
static void stretch_place(struct pen *pen, const struct style *style, struct stretch stretch,
                          struct point at, struct place origin)
{
    size_t spaces = strspn(stretch.start, " ");
    spaces = spaces > stretch.length ? stretch.length : spaces;
    at.x += stretch_width(pen, style, stretch.start, spaces);
    stretch.start += spaces;
    stretch.length -= spaces;
    while (stretch.length > 0 && stretch.start[stretch.length - 1] == ' ')
        stretch.length--;
    pen_text(pen, style, at.x, at.y, stretch.start, stretch.length, origin);
}

/* Does a space stand before it, or at its start? A mark stands before all but the first. */
static bool is_behind_space(const struct stretch *stretch, const char *text)
{
    const char *before = stretch->start - strlen(MARK);
    return *stretch->start == ' ' || before <= text || before[-1] == ' ';
}

mpt marked_place(struct pen *pen, const struct marked_styles *styles, const char *text,
                 struct point at, struct place origin)
{
    struct stretch stretch = {.start = text};
    mpt from = at.x;
    paragraph_begin(pen);
    while (stretch_next(&stretch)) {
        const struct style *style = stretch_style(styles, &stretch);
        bool joined = stretch.start > text && !is_behind_space(&stretch, text);
        stretch_place(pen, style, stretch, at, origin);
        if (joined)
            pen_joined(pen);
        at.x += stretch_width(pen, style, stretch.start, stretch.length);
    }
    paragraph_end(pen);
    return at.x - from;
}
