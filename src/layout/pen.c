/* pen.c - placing things on a page being made (room: layout). */
#include "text_known.h"

#include "measures.h"

#include <string.h>

static struct page_item *item_add(struct pen *pen, enum page_kind kind, struct area area)
{
    struct arena *arena = pen->growing != NULL ? pen->growing : pen->arena;
    pen->items = arena_grow(arena, pen->items, pen->count, &pen->room,
                            sizeof *pen->items);
    struct page_item *item = &pen->items[pen->count++];
    *item = (struct page_item){.kind = kind, .area = area, .block = pen->block,
                                .paragraph = pen->paragraph};
    if (kind != PAGE_TEXT)
        reading_shape(pen, item);
    return item;
}

static void missing_glyph(struct pen *pen, const char *text, uint32_t code_point,
                          struct place origin)
{
    pen->failed = true;
    problem_add(pen->problems, SEVERITY_ERROR, origin,
                "write it with letters that the card's face has",
                "%s: the face has no letter U+%04X, needed in \"%s\"", pen->sheet->name,
                (unsigned)code_point, text);
}

mpt pen_text(struct pen *pen, const struct style *style, mpt x, mpt baseline,
             const char *text, size_t length, struct place origin)
{
    struct run *run = arena_alloc(pen->arena, sizeof *run);
    uint32_t missing = 0;
    if (length == 0)
        return 0;
    if (!run_shape(pen->faces, style->face, style->size, text, length, pen->arena, run,
                   &missing)) {
        missing_glyph(pen, arena_copy(pen->arena, text, length), missing, origin);
        return 0;
    }
    struct area area = {x, baseline - em_share(style->size, EM_ASCENT), run->width,
                        em_share(style->size, EM_LINE)};
    struct page_item *item = item_add(pen, PAGE_TEXT, area);
    item->fill = style->ink;
    item->run = run;
    item->baseline = baseline;
    item->role = style->role;
    item->origin = origin;
    reading_text(pen, item);
    return run->width;
}

mpt pen_width(const struct pen *pen, const struct style *style, const char *text)
{
    if (pen->texts != NULL)
        return text_width(pen, text_known(pen->texts, text), style->face, style->size);
    return run_width(pen->faces, style->face, style->size, text, strlen(text), NULL);
}

void pen_box(struct pen *pen, struct area area, enum ink fill, enum ink stroke,
             mpt line_width, mpt radius)
{
    struct page_item *item = item_add(pen, PAGE_BOX, area);
    item->fill = fill;
    item->stroke = stroke;
    item->line_width = line_width;
    item->radius = radius;
}

void pen_ellipse(struct pen *pen, struct area area, enum ink fill)
{
    item_add(pen, PAGE_ELLIPSE, area)->fill = fill;
}

void pen_line(struct pen *pen, struct point from, struct point to, enum ink ink, mpt width)
{
    mpt left = from.x < to.x ? from.x : to.x, top = from.y < to.y ? from.y : to.y;
    mpt right = from.x > to.x ? from.x : to.x, bottom = from.y > to.y ? from.y : to.y;
    struct page_item *item = item_add(pen, PAGE_LINE,
                                      (struct area){left, top, right - left, bottom - top});
    item->from = from;
    item->to = to;
    item->stroke = ink;
    item->line_width = width;
}

void pen_path(struct pen *pen, const struct path_step *steps, size_t count, enum ink fill,
              enum ink stroke, mpt line_width)
{
    struct point low = steps[0].to, high = steps[0].to;
    for (size_t i = 0; i < count; i++) {
        if (steps[i].verb == PATH_CLOSE)
            continue;
        low.x = steps[i].to.x < low.x ? steps[i].to.x : low.x;
        low.y = steps[i].to.y < low.y ? steps[i].to.y : low.y;
        high.x = steps[i].to.x > high.x ? steps[i].to.x : high.x;
        high.y = steps[i].to.y > high.y ? steps[i].to.y : high.y;
    }
    struct page_item *item = item_add(pen, PAGE_PATH,
                                      (struct area){low.x, low.y, high.x - low.x, high.y - low.y});
    item->steps = steps;
    item->step_count = count;
    item->fill = fill;
    item->stroke = stroke;
    item->line_width = line_width;
}

void pen_sign(struct pen *pen, struct area area, enum sign_class sign,
              enum symbol_key glyph, struct place origin)
{
    struct page_item *item = item_add(pen, PAGE_SIGN, area);
    item->sign = sign;
    item->glyph = glyph;
    item->origin = origin;
}

void pen_view(struct pen *pen, struct point corner, mpt width, const struct page *view)
{
    struct area area = {corner.x, corner.y, width,
                        (mpt)((int64_t)width * view->height / view->width)};
    struct page_item *item = item_add(pen, PAGE_VIEW, area);
    item->view = view;
}

void pen_symbol(struct pen *pen, struct area area, enum symbol_key symbol, struct place origin)
{
    pen_sign(pen, area, symbol_of(symbol)->sign, symbol, origin);
}

void pen_part(struct pen *pen, enum page_part part)
{
    if (pen->count == 0)
        return;
    pen->items[pen->count - 1].part = part;
    if (part == PART_BLANK)
        reading_blank(pen, &pen->items[pen->count - 1]);
}

void pen_joined(struct pen *pen)
{
    if (pen->count > 0)
        pen->items[pen->count - 1].joined = true;
}

struct run_ink pen_ink(const struct pen *pen, const struct style *style, const char *text,
                       size_t length)
{
    struct run run;
    uint32_t missing = 0;
    if (!run_shape(pen->faces, style->face, style->size, text, length, pen->arena, &run, &missing))
        return (struct run_ink){.left = 0};
    return run_ink(pen->faces, &run);
}

mpt baseline_in(mpt top, mpt height, mpt size)
{
    return top + (height + em_share(size, EM_CAPITALS)) / 2;
}

const char *mm_text(struct arena *arena, mpt length)
{
    int64_t tenths = ((int64_t)length * 10000 + 2834644) / 2834645;
    tenths = tenths < 1 ? 1 : tenths;
    return text_format(arena, "%lld.%lld", (long long)(tenths / 10), (long long)(tenths % 10));
}

const struct plan_facts *pen_plan(const struct pen *pen)
{
    return sheet_plan(pen->whole != NULL ? pen->whole : pen->sheet);
}

static int64_t paper_area(const struct paper *paper)
{
    return (int64_t)paper->width * paper->height;
}

/* What is too long on this paper may have room on the one with most of it. */
static const char *paper_remedy(const struct pen *pen, const char *remedy)
{
    const struct paper *most = pen->paper;
    for (enum paper_key key = PAPER_NONE + 1; key < PAPER_COUNT; key++)
        most = paper_area(paper_of(key)) > paper_area(most) ? paper_of(key) : most;
    if (most == pen->paper)
        return remedy;
    return text_format(pen->arena, "%s\nor print this card on larger paper: --paper %s", remedy,
                       most->key);
}

void pen_too_long(struct pen *pen, struct place origin, mpt excess, const char *remedy,
                  const char *what)
{
    pen->failed = true;
    problem_add(pen->problems, SEVERITY_ERROR, origin, paper_remedy(pen, remedy),
                "%s (%s): %s is %s mm too long at the smallest size allowed",
                pen->sheet->name, pen->sheet->language, what, mm_text(pen->arena, excess));
}
