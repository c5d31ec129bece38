/* page_dump.c - a page as stable text, a line an item (room: draw). Golden tests
 * compare it, so nothing in it depends on addresses, locale or libraries. */
#include "draw.h"

#include "promise.h"

static const char *const page_kind_words[] = {
    [PAGE_TEXT] = "text", [PAGE_BOX] = "box",   [PAGE_ELLIPSE] = "ellipse",
    [PAGE_LINE] = "line", [PAGE_PATH] = "path", [PAGE_SIGN] = "sign",
    [PAGE_VIEW] = "view",
};

static const char *const ink_words[INK_COUNT] = {
    [INK_NONE] = "none", [INK_BLACK] = "black",   [INK_WHITE] = "white",
    [INK_GREY] = "grey", [INK_FIRE] = "fire",     [INK_RESCUE] = "rescue",
    [INK_CONTROL] = "control", [INK_WARNING] = "warning",
};

static const char *const page_role_words[ROLE_COUNT] = {
    [ROLE_TITLE] = "title",           [ROLE_BOAT] = "boat",
    [ROLE_SIGNS] = "signs",           [ROLE_CALL_LINE] = "call_line",
    [ROLE_HEADLINE] = "headline",     [ROLE_ROW] = "row",
    [ROLE_TABLE] = "table",           [ROLE_BOX] = "box",
    [ROLE_CONTACT] = "contact",       [ROLE_SCRIPT] = "script",
    [ROLE_CODE] = "code",             [ROLE_FOOTER] = "footer",
    [ROLE_SOURCE_TAG] = "source_tag", [ROLE_MARK] = "mark",
    [ROLE_PLAN_TAG] = "plan_tag",     [ROLE_PLAN_LABEL] = "plan_label",
    [ROLE_NUMBER] = "number",         [ROLE_BERTH] = "berth",
};

static const char *const face_words[FACE_COUNT] = {
    [FACE_TEXT] = "regular",
    [FACE_BOLD] = "bold",
    [FACE_CODE] = "code",
};

static void dump_quoted_add(struct text_builder *out, const char *text)
{
    text_add(out, "\"");
    for (const char *at = text ? text : ""; *at; at++) {
        unsigned char byte = (unsigned char)*at;
        if (byte == '"' || byte == '\\')
            text_add_format(out, "\\%c", byte);
        else if (byte < 0x20 || byte == 0x7F)
            text_add_format(out, "\\x%02X", (unsigned)byte);
        else
            text_add_bytes(out, at, 1);
    }
    text_add(out, "\"");
}

static void point_add(struct text_builder *out, struct point point)
{
    text_add_format(out, " %d,%d", (int)point.x, (int)point.y);
}

static void inks_add(struct text_builder *out, const struct page_item *item)
{
    promise(item->fill < INK_COUNT && item->stroke < INK_COUNT);
    text_add_format(out, " fill=%s stroke=%s", ink_words[item->fill], ink_words[item->stroke]);
    if (item->stroke != INK_NONE)
        text_add_format(out, " line=%d", (int)item->line_width);
}

static void text_item_add(struct text_builder *out, const struct page_item *item)
{
    const struct run *run = item->run;

    promise(item->role < ROLE_COUNT && item->fill < INK_COUNT);
    text_add_format(out, " role=%s ink=%s baseline=%d", page_role_words[item->role],
                    ink_words[item->fill], (int)item->baseline);
    if (run == NULL) {
        text_add(out, " run=none");
        return;
    }
    text_add_format(out, " face=%s size=%d width=%d ", face_words[run->role], (int)run->size,
                    (int)run->width);
    dump_quoted_add(out, run->text);
}

static void step_add(struct text_builder *out, const struct path_step *step)
{
    switch (step->verb) {
    case PATH_MOVE:
        text_add(out, " M");
        break;
    case PATH_LINE:
        text_add(out, " L");
        break;
    case PATH_CURVE:
        text_add(out, " C");
        point_add(out, step->control[0]);
        point_add(out, step->control[1]);
        break;
    case PATH_CLOSE:
        text_add(out, " Z");
        return;
    }
    point_add(out, step->to);
}

static void path_item_add(struct text_builder *out, const struct page_item *item)
{
    inks_add(out, item);
    for (size_t i = 0; i < item->step_count; i++)
        step_add(out, &item->steps[i]);
}

static void page_item_add(struct text_builder *out, const struct page_item *item)
{
    const struct area *area = &item->area;

    promise(item->kind < sizeof page_kind_words / sizeof page_kind_words[0]);
    text_add_format(out, "%s %s %d,%d %dx%d", page_kind_words[item->kind],
                    block_word(item->block), (int)area->x, (int)area->y,
                    (int)area->width, (int)area->height);
    switch (item->kind) {
    case PAGE_TEXT:
        text_item_add(out, item);
        break;
    case PAGE_BOX:
        inks_add(out, item);
        text_add_format(out, " radius=%d", (int)item->radius);
        break;
    case PAGE_ELLIPSE:
        inks_add(out, item);
        break;
    case PAGE_LINE:
        inks_add(out, item);
        point_add(out, item->from);
        point_add(out, item->to);
        break;
    case PAGE_PATH:
        path_item_add(out, item);
        break;
    case PAGE_VIEW:
        text_add_format(out, " page=%s", item->view->id);
        break;
    case PAGE_SIGN:
        promise(item->sign != SIGN_NONE && item->sign < SIGN_CLASS_COUNT);
        text_add_format(out, " class=%s glyph=%s", sign_class_word(item->sign),
                        item->glyph == SYMBOL_NONE ? "-" : symbol_of(item->glyph)->key);
        break;
    }
    text_add(out, "\n");
}

void page_dump(const struct page *page, struct text_builder *out)
{
    text_add_format(out, "page %s %s %dx%d ", page->id, page->language, (int)page->width,
                    (int)page->height);
    dump_quoted_add(out, page->title);
    text_add(out, "\n");
    for (size_t i = 0; i < page->count; i++)
        page_item_add(out, &page->items[i]);
}
