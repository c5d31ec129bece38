/* pdf_check.c - looks at a page before it is drawn (room: draw). What would come
 * out blank, beside the paper or against its meaning is refused here; nothing is
 * ever mended, since that would be deciding. */
#include "pdf_private.h"

/* The largest page PDF 1.7 knows, in points. */
#define LENGTH_LIMIT (14400 * MPT_PER_POINT)
#define PAGE_SMALLEST (3 * MPT_PER_POINT)
#define TEXT_LARGEST (600 * MPT_PER_POINT)

/* Says what is wrong with an item of a page; always false. */
static bool item_refuse(const struct page *page, const struct page_item *item, const char *what,
                        struct problems *problems)
{
    problem_add(problems, SEVERITY_FAILURE, item->origin, NULL,
                "card %s, block %s: %s", page->id, block_word(item->block), what);
    return false;
}

static bool within_limit(mpt length)
{
    return length >= -LENGTH_LIMIT && length <= LENGTH_LIMIT;
}

static bool point_good(struct point point)
{
    return within_limit(point.x) && within_limit(point.y);
}

static bool area_good(const struct area *area)
{
    return within_limit(area->x) && within_limit(area->y) && area->width >= 0 &&
           area->height >= 0 && within_limit(area->width) && within_limit(area->height);
}

static bool steps_good(const struct page_item *item)
{
    for (size_t i = 0; i < item->step_count; i++) {
        const struct path_step *step = &item->steps[i];
        if (step->verb != PATH_CLOSE && !point_good(step->to))
            return false;
        if (step->verb == PATH_CURVE && !(point_good(step->control[0]) &&
                                          point_good(step->control[1])))
            return false;
    }
    return item->step_count == 0 || item->steps[0].verb == PATH_MOVE;
}

static bool text_good(const struct page *page, const struct page_item *item,
                      struct problems *problems)
{
    const struct run *run = item->run;

    if (run == NULL || run->size <= 0 || run->size > TEXT_LARGEST || !within_limit(item->baseline))
        return item_refuse(page, item, "a text without a run, size or place", problems);
    if (item->fill == INK_NONE)
        return item_refuse(page, item, "a text without ink", problems);
    return true;
}

static bool sign_good(const struct page *page, const struct page_item *item,
                      struct problems *problems)
{
    const struct symbol *symbol;

    if (item->area.width < SIGN_SMALLEST || item->area.height < SIGN_SMALLEST)
        return item_refuse(page, item, "a sign smaller than 7 mm", problems);
    if (item->sign == SIGN_NONE || item->sign >= SIGN_CLASS_COUNT)
        return item_refuse(page, item, "a sign of no class", problems);
    if (item->glyph >= SYMBOL_COUNT)
        return item_refuse(page, item, "a sign that does not exist", problems);
    if (item->glyph == SYMBOL_NONE)
        return true;
    symbol = symbol_of(item->glyph);
    if (symbol->sign != item->sign) {
        problem_add(problems, SEVERITY_FAILURE, item->origin, NULL,
                    "card %s: the sign %s would stand in the frame of another class", page->id,
                    symbol->key);
        return false;
    }
    return true;
}

static bool stroke_good(const struct page *page, const struct page_item *item,
                        struct problems *problems)
{
    if (item->stroke != INK_NONE && (item->line_width <= 0 || !within_limit(item->line_width)))
        return item_refuse(page, item, "a line without width", problems);
    if (item->kind == PAGE_LINE && item->stroke == INK_NONE)
        return item_refuse(page, item, "a line without ink", problems);
    return true;
}

static bool item_check(const struct page *page, const struct page_item *item,
                       struct problems *problems);

/* A page that was checked as it stands alone, in the shape that it has there, and no view in it. */
static bool view_good(const struct page *page, const struct page_item *item,
                      struct problems *problems)
{
    const struct page *view = item->view;
    if (view == NULL || view->width <= 0 || item->area.width <= 0 ||
        item->area.height !=
            (mpt)((int64_t)item->area.width * view->height / view->width))
        return item_refuse(page, item, "a view of no page, or out of shape", problems);
    for (size_t i = 0; i < view->count; i++)
        if (view->items[i].kind == PAGE_VIEW || !item_check(view, &view->items[i], problems))
            return item_refuse(page, item, "a view of what cannot be drawn", problems);
    return true;
}

static bool item_check(const struct page *page, const struct page_item *item,
                       struct problems *problems)
{
    if (item->fill >= INK_COUNT || item->stroke >= INK_COUNT)
        return item_refuse(page, item, "an ink that does not exist", problems);
    if (!area_good(&item->area) || !point_good(item->from) || !point_good(item->to) ||
        !within_limit(item->radius) || item->radius < 0)
        return item_refuse(page, item, "a place off any paper", problems);
    switch (item->kind) {
    case PAGE_TEXT:
        return text_good(page, item, problems);
    case PAGE_SIGN:
        return sign_good(page, item, problems);
    case PAGE_VIEW:
        return view_good(page, item, problems);
    case PAGE_PATH:
        if (!steps_good(item))
            return item_refuse(page, item, "a path that does not begin on the paper", problems);
        return stroke_good(page, item, problems);
    case PAGE_BOX:
    case PAGE_ELLIPSE:
    case PAGE_LINE:
        return stroke_good(page, item, problems);
    }
    return item_refuse(page, item, "an item of unknown kind", problems);
}

bool page_check(const struct page *page, struct problems *problems)
{
    bool good = page->width >= PAGE_SMALLEST && page->width <= LENGTH_LIMIT &&
                page->height >= PAGE_SMALLEST && page->height <= LENGTH_LIMIT;

    if (!good)
        problem_add(problems, SEVERITY_FAILURE, (struct place){0}, NULL,
                    "card %s: a page of %d x %d thousandths of a point cannot be printed",
                    page->id, (int)page->width, (int)page->height);
    for (size_t i = 0; i < page->count; i++)
        good = item_check(page, &page->items[i], problems) && good;
    return good;
}
