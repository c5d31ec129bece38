/* sheet.c - placing things on a page being made (room: layout). */
#include "layout_room.h"

#include <string.h>

static struct page_item *item_add(struct sheet *sheet, enum page_kind kind, struct area area)
{
    sheet->items = arena_grow(sheet->arena, sheet->items, sheet->count, &sheet->room,
                              sizeof *sheet->items);
    struct page_item *item = &sheet->items[sheet->count++];
    *item = (struct page_item){.kind = kind, .area = area, .block = sheet->block,
                                .paragraph = sheet->paragraph};
    return item;
}

static void missing_glyph(struct sheet *sheet, const char *text, uint32_t code_point,
                          struct place origin)
{
    sheet->failed = true;
    problem_add(sheet->problems, SEVERITY_ERROR, origin,
                "write it with letters that the card's face has",
                "%s: the face has no letter U+%04X, needed in \"%s\"", sheet->card->name,
                (unsigned)code_point, text);
}

mpt sheet_text(struct sheet *sheet, const struct style *style, mpt x, mpt baseline,
               const char *text, size_t length, struct place origin)
{
    struct run *run = arena_alloc(sheet->arena, sizeof *run);
    uint32_t missing = 0;
    if (length == 0)
        return 0;
    if (!run_shape(sheet->faces, style->face, style->size, text, length, sheet->arena, run,
                   &missing)) {
        missing_glyph(sheet, arena_copy(sheet->arena, text, length), missing, origin);
        return 0;
    }
    struct area area = {x, baseline - style->size * 74 / 100, run->width, style->size * 95 / 100};
    struct page_item *item = item_add(sheet, PAGE_TEXT, area);
    item->fill = style->ink;
    item->run = run;
    item->baseline = baseline;
    item->role = style->role;
    item->origin = origin;
    return run->width;
}

mpt sheet_width(const struct sheet *sheet, const struct style *style, const char *text)
{
    return run_width(sheet->faces, style->face, style->size, text, strlen(text), NULL);
}

void sheet_box(struct sheet *sheet, struct area area, enum ink fill, enum ink stroke,
               mpt line_width, mpt radius)
{
    struct page_item *item = item_add(sheet, PAGE_BOX, area);
    item->fill = fill;
    item->stroke = stroke;
    item->line_width = line_width;
    item->radius = radius;
}

void sheet_ellipse(struct sheet *sheet, struct area area, enum ink fill)
{
    item_add(sheet, PAGE_ELLIPSE, area)->fill = fill;
}

void sheet_line(struct sheet *sheet, struct point from, struct point to, enum ink ink, mpt width)
{
    mpt left = from.x < to.x ? from.x : to.x, top = from.y < to.y ? from.y : to.y;
    mpt right = from.x > to.x ? from.x : to.x, bottom = from.y > to.y ? from.y : to.y;
    struct page_item *item = item_add(sheet, PAGE_LINE,
                                      (struct area){left, top, right - left, bottom - top});
    item->from = from;
    item->to = to;
    item->stroke = ink;
    item->line_width = width;
}

void sheet_path(struct sheet *sheet, const struct path_step *steps, size_t count, enum ink fill,
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
    struct page_item *item = item_add(sheet, PAGE_PATH,
                                      (struct area){low.x, low.y, high.x - low.x, high.y - low.y});
    item->steps = steps;
    item->step_count = count;
    item->fill = fill;
    item->stroke = stroke;
    item->line_width = line_width;
}

void sheet_sign(struct sheet *sheet, struct area area, enum sign_class sign,
                enum symbol_key glyph, struct place origin)
{
    struct page_item *item = item_add(sheet, PAGE_SIGN, area);
    item->sign = sign;
    item->glyph = glyph;
    item->origin = origin;
}

void sheet_part(struct sheet *sheet, enum page_part part)
{
    if (sheet->count > 0)
        sheet->items[sheet->count - 1].part = part;
}

mpt baseline_in(mpt top, mpt height, mpt size)
{
    return top + (height + size * 711 / 1000) / 2;
}

const char *mm_text(struct arena *arena, mpt length)
{
    int64_t tenths = ((int64_t)length * 10000 + 2834644) / 2834645;
    tenths = tenths < 1 ? 1 : tenths;
    return text_format(arena, "%lld.%lld", (long long)(tenths / 10), (long long)(tenths % 10));
}

void sheet_too_long(struct sheet *sheet, struct place origin, mpt excess, const char *remedy,
                    const char *what)
{
    sheet->failed = true;
    problem_add(sheet->problems, SEVERITY_ERROR, origin, remedy,
                "%s (%s): %s is %s mm too long at the smallest size allowed",
                sheet->card->name, sheet->card->language, what, mm_text(sheet->arena, excess));
}
