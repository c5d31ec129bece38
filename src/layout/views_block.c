/* views_block.c - pages of other sheets, small, in rows and columns: as large as all of them have
 * room for, each with its number and check code below (room: layout). */
#include "views.h"

#include "measures.h"

#include <string.h>

#define VIEW_COLUMNS_MOST 12

static struct style view_style(const struct pen *pen, enum page_role role, enum face_role face)
{
    return (struct style){role, face, size_rule(pen->paper, role).floor, INK_BLACK};
}

/* Of the words below a view. */
static mpt view_words_height(const struct pen *pen)
{
    return line_pitch(ROLE_CODE, size_rule(pen->paper, ROLE_CODE).floor) + VIEW_WORDS_GAP;
}

/* Number, gap and code. */
static mpt view_words_width(const struct pen *pen, const struct form_view *view)
{
    struct style number = view_style(pen, ROLE_SOURCE_TAG, FACE_BOLD);
    struct style code = view_style(pen, ROLE_CODE, FACE_CODE);
    return pen_width(pen, &number, view->number) + VIEW_CODE_GAP +
           pen_width(pen, &code, view->code);
}

static mpt widest_words(const struct pen *pen, const struct views_facts *views)
{
    mpt widest = 0;
    for (size_t i = 0; i < views->count; i++) {
        mpt own = view_words_width(pen, &views->items[i]);
        widest = own > widest ? own : widest;
    }
    return widest;
}

static mpt tallest_of(const struct views_facts *views, mpt width)
{
    mpt tallest = 0;
    for (size_t i = 0; i < views->count; i++) {
        const struct page *page = views->items[i].page;
        mpt own = (mpt)((int64_t)width * page->height / page->width);
        tallest = own > tallest ? own : tallest;
    }
    return tallest;
}

bool views_lay(const struct pen *pen, struct area area, struct laid_views *laid)
{
    const struct views_facts *views = sheet_views(pen->sheet);
    mpt least = widest_words(pen, views);
    *laid = (struct laid_views){.views = views};
    for (size_t columns = 1; columns <= VIEW_COLUMNS_MOST; columns++) {
        size_t rows = (views->count + columns - 1) / columns;
        mpt width = (area.width - (mpt)(columns - 1) * VIEW_GAP) / (mpt)columns;
        mpt pitch = tallest_of(views, width) + view_words_height(pen) + VIEW_GAP;
        if (width < least)
            break;
        if ((mpt)rows * pitch - VIEW_GAP <= area.height) {
            *laid = (struct laid_views){views, columns, width, pitch};
            return true;
        }
    }
    return false;
}

static void view_words_place(struct pen *pen, const struct form_view *view, mpt x, mpt top)
{
    struct style number = view_style(pen, ROLE_SOURCE_TAG, FACE_BOLD);
    struct style code = view_style(pen, ROLE_CODE, FACE_CODE);
    mpt base = baseline_in(top, view_words_height(pen), number.size);
    size_t outer = reading_begin(pen, READING_LINE);
    x += pen_text(pen, &number, x, base, view->number, strlen(view->number),
                  pen->sheet->origin) + VIEW_CODE_GAP;
    if (!text_empty(view->code))
        pen_text(pen, &code, x, base, view->code, strlen(view->code), pen->sheet->origin);
    reading_end(pen, outer);
}

void views_place(struct pen *pen, const struct laid_views *laid, struct point corner)
{
    pen->block = BLOCK_VIEWS;
    for (size_t i = 0; i < laid->views->count; i++) {
        const struct form_view *view = &laid->views->items[i];
        struct point at = {corner.x + (mpt)(i % laid->columns) * (laid->width + VIEW_GAP),
                           corner.y + (mpt)(i / laid->columns) * laid->pitch};
        mpt high = (mpt)((int64_t)laid->width * view->page->height / view->page->width);
        size_t outer = reading_skip(pen);
        pen_view(pen, at, laid->width, view->page);
        pen_box(pen, (struct area){at.x, at.y, laid->width, high}, INK_NONE, INK_BLACK, HAIR, 0);
        reading_end(pen, outer);
        view_words_place(pen, view, at.x, at.y + high);
    }
}
