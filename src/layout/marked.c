/* marked.c - a text with **bold** parts on one line (room: layout). */
#include "marked.h"

#include "text.h"
#include "text_known.h"

#include <string.h>

#define MARK "**"

/* The first stretch begins with a length of none. False: the text is at its end. */
static bool stretch_next(struct stretch *stretch)
{
    const char *at = stretch->start + stretch->length;
    for (; text_begins(at, MARK); at += strlen(MARK))
        stretch->bold = !stretch->bold;
    const char *end = strstr(at, MARK);
    *stretch = (struct stretch){.start = at, .bold = stretch->bold,
                                .length = end == NULL ? strlen(at) : (size_t)(end - at)};
    return stretch->length > 0;
}

static const struct style *stretch_style(const struct marked_styles *styles,
                                    const struct stretch *stretch)
{
    return stretch->bold ? &styles->bold : &styles->plain;
}

static mpt stretch_run_width(const struct pen *pen, const struct style *style, const char *text,
                             size_t length)
{
    return run_width(pen->faces, style->face, style->size, text, length, NULL);
}

/* Takes it apart where nobody did. */
static void stretches_find(const struct pen *pen, struct known_text *text)
{
    struct stretch stretch = {.start = text->text};
    size_t room = 0;
    while (stretch_next(&stretch)) {
        text->stretches = arena_grow(texts_arena(pen->texts), text->stretches, text->stretch_count,
                                     &room, sizeof *text->stretches);
        units_forget(stretch.units);
        text->stretches[text->stretch_count++] = stretch;
    }
    text->parted = true;
}

static mpt known_width(const struct pen *pen, const struct marked_styles *styles,
                       struct known_text *text)
{
    mpt width = 0;
    if (!text->parted)
        stretches_find(pen, text);
    for (size_t i = 0; i < text->stretch_count; i++) {
        const struct style *style = stretch_style(styles, &text->stretches[i]);
        width += stretch_width(pen, &text->stretches[i], style->face, style->size);
    }
    return width;
}

mpt marked_width(const struct pen *pen, const struct marked_styles *styles, const char *text)
{
    struct stretch stretch = {.start = text};
    mpt width = 0;
    if (pen->texts != NULL)
        return known_width(pen, styles, text_known(pen->texts, text));
    while (stretch_next(&stretch))
        width += stretch_run_width(pen, stretch_style(styles, &stretch), stretch.start,
                                   stretch.length);
    return width;
}

/* Without the spaces at its ends. */
static void stretch_place(struct pen *pen, const struct style *style, struct stretch stretch,
                          struct point at, struct place origin)
{
    size_t spaces = strspn(stretch.start, " ");
    spaces = spaces > stretch.length ? stretch.length : spaces;
    at.x += stretch_run_width(pen, style, stretch.start, spaces);
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
        at.x += stretch_run_width(pen, style, stretch.start, stretch.length);
    }
    paragraph_end(pen);
    return at.x - from;
}
