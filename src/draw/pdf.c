/* pdf.c - a document of laid-out pages as one PDF (room: draw). Libharu's handle
 * lives and dies in document_write, which has one exit; no clock, locale or
 * machine can reach the bytes. */
#include <string.h>

#include "pdf_private.h"
#include "promise.h"

/* The first error libharu told: the ones after it only follow from it. */
struct pdf_failure {
    HPDF_STATUS error;
    HPDF_STATUS detail;
};

/* What goes into the document, made before libharu is asked for anything. */
struct pdf_input {
    const struct document *document;
    const struct faces *faces;
    struct subset subsets[FACE_COUNT];
    uint16_t spaces[FACE_COUNT];   /* the number of a space in each face */
    bool used[FACE_COUNT];
    struct arena *arena;
};

/* A document while its pages are drawn. */
struct writing {
    struct pdf_file *file;
    const struct pdf_face *faces;
    HPDF_Dict fonts;               /* for the resources of pages */
    struct pdf_forms *forms;
    struct content content;        /* of one page after the other */
    struct tree *tree;
};


static void failure_keep(HPDF_STATUS error, HPDF_STATUS detail, void *context)
{
    struct pdf_failure *failure = context;

    if (failure->error == HPDF_OK) {
        failure->error = error;
        failure->detail = detail;
    }
}

static bool pages_check(const struct document *document, struct problems *problems)
{
    bool good = document->count > 0;

    if (!good)
        problem_add(problems, SEVERITY_FAILURE, (struct place){0}, NULL,
                    "a document without pages was to be written");
    for (size_t i = 0; i < document->count; i++)
        good = page_check(document->pages[i], problems) && good;
    return good;
}

/* A page that is seen on another shows no other itself: page_check holds it to that. */
static void page_use(struct usage *usage, const struct page *page)
{
    for (size_t i = 0; i < page->count; i++) {
        if (page->items[i].kind == PAGE_TEXT)
            usage_add(usage, page->items[i].run);
        if (page->items[i].kind == PAGE_VIEW)
            page_use(usage, page->items[i].view);
    }
}

/* Spaces stand between texts: see text_draw. */
static uint16_t space_use(const struct pdf_input *input, struct usage *usage, enum face_role role)
{
    struct run space;
    uint32_t missing;

    promise(run_shape(input->faces, role, MPT_PER_POINT, " ", 1, input->arena, &space, &missing));
    usage_add(usage, &space);
    return space.glyphs[0].id;
}

/* One subset a face for the text of all pages. */
static bool subsets_make(struct pdf_input *input, struct problems *problems)
{
    struct usage *usage = usage_new(input->faces, input->arena);

    for (size_t i = 0; i < input->document->count; i++)
        page_use(usage, input->document->pages[i]);
    for (size_t i = 0; i < FACE_COUNT; i++) {
        enum face_role role = (enum face_role)i;
        input->used[i] = usage_any(usage, role);
        if (input->used[i])
            input->spaces[i] = space_use(input, usage, role);
        if (input->used[i] && !subset_make(input->faces, usage, role, input->arena,
                                           &input->subsets[i], problems))
            return false;
    }
    return true;
}

static bool faces_embed(struct pdf_file *file, const struct pdf_input *input,
                        struct pdf_face faces[FACE_COUNT])
{
    for (size_t i = 0; i < FACE_COUNT; i++) {
        enum face_role role = (enum face_role)i;
        if (!input->used[i])
            continue;
        faces[i].subset = input->subsets[i];
        faces[i].metrics = face_metrics(input->faces, role);
        faces[i].space = input->spaces[i];
        faces[i].font = font_embed(file, &faces[i].subset, faces[i].metrics,
                                   face_postscript_name(input->faces, role));
        if (faces[i].font == NULL)
            return false;
    }
    return true;
}

/* The faces by the names that pages call them by. */
static HPDF_Dict fonts_dictionary(HPDF_Doc document, const struct pdf_face *faces)
{
    HPDF_Dict fonts = dictionary_new(document);

    for (size_t i = 0; fonts != NULL && i < FACE_COUNT; i++)
        if (faces[i].font != NULL)
            HPDF_Dict_Add(fonts, font_key((enum face_role)i), faces[i].font);
    return fonts;
}

/* What all pages share. */
static void page_resources_add(const struct writing *writing, HPDF_Page page)
{
    HPDF_Dict resources = HPDF_Dict_GetItem(page, "Resources", HPDF_OCLASS_DICT);

    if (resources == NULL || writing->fonts == NULL || forms_dictionary(writing->forms) == NULL)
        return;
    HPDF_Dict_Add(resources, "Font", writing->fonts);
    HPDF_Dict_Add(resources, "XObject", forms_dictionary(writing->forms));
}

/* The box that is left of a sheet that is cut. */
static void page_trim_add(HPDF_Doc document, const struct canvas *canvas, const struct page *page)
{
    const mpt corners[] = {page->trim, page->trim, page->width - page->trim,
                           page->height - page->trim};
    HPDF_Array box = page->trim > 0 ? HPDF_Array_New(document->mmgr) : NULL;

    if (box == NULL)
        return;
    for (size_t i = 0; i < sizeof corners / sizeof *corners; i++)
        HPDF_Array_AddReal(box, points(corners[i]));
    HPDF_Dict_Add(canvas->page, "TrimBox", box);
}

/* The destination shows the whole page. */
static void page_outline_add(HPDF_Doc document, HPDF_Page page, const char *title,
                             struct arena *arena)
{
    HPDF_Outline outline = HPDF_CreateOutline(document, NULL, "", NULL);
    HPDF_Destination destination = HPDF_Page_CreateDestination(page);

    if (outline == NULL || destination == NULL)
        return;
    HPDF_Destination_SetFit(destination);
    HPDF_Outline_SetDestination(outline, destination);
    HPDF_Dict_Add(outline, "Title", text_string(document, title, arena));
}

static bool ends_with_space(const struct page_item *item)
{
    size_t length = strlen(item->run->text);

    return length > 0 && item->run->text[length - 1] == ' ';
}

/* What follows a text: nothing where the next one, or itself, says that no space is needed. */
static enum text_end end_of_text(const struct page *page, size_t index)
{
    const struct page_item *item = &page->items[index], *next = item + 1;
    bool followed = index + 1 < page->count && next->kind == PAGE_TEXT;
    bool joined = followed && (next->joined || next->run->text[0] == ' ');

    return joined || ends_with_space(item) ? TEXT_JOINED : TEXT_SPACED;
}

static void item_draw(const struct canvas *canvas, const struct page *page, size_t index);

/* The other page's items as decoration, drawn where its lower left corner comes to lie. */
static void view_draw(const struct canvas *canvas, const struct page_item *item)
{
    const struct page *page = item->view;
    struct page_item *items = arena_array(canvas->arena, page->count, sizeof *items);
    struct page picture = *page;
    struct canvas inner = *canvas;
    int64_t scale = ((int64_t)item->area.width * MICRO + page->width / 2) / page->width;
    struct pen_state before = canvas->content->state;

    for (size_t i = 0; i < page->count; i++) {
        items[i] = page->items[i];
        items[i].reading = 0;
    }
    picture.items = items;
    inner.palette = page->palette;
    inner.height = page->height;
    tags_end(canvas);
    content_add(canvas->content, "q ");
    content_micro_add(canvas->content, scale);
    content_add(canvas->content, "0 0 ");
    content_micro_add(canvas->content, scale);
    content_milli_add(canvas->content, item->area.x);
    content_milli_add(canvas->content,
                      (int64_t)canvas->height - item->area.y - item->area.height);
    content_add(canvas->content, "cm\n");
    for (size_t i = 0; i < picture.count; i++)
        item_draw(&inner, &picture, i);
    tags_end(canvas);
    content_add(canvas->content, "Q\n");
    canvas->content->state = before;
}

static void item_draw(const struct canvas *canvas, const struct page *page, size_t index)
{
    const struct page_item *item = &page->items[index];

    if (item->kind != PAGE_TEXT)
        tags_go_to(canvas, item->reading);
    switch (item->kind) {
    case PAGE_TEXT:
        text_draw(canvas, item, end_of_text(page, index));
        break;
    case PAGE_SIGN:
        sign_draw(canvas, item);
        break;
    case PAGE_VIEW:
        view_draw(canvas, item);
        break;
    case PAGE_BOX:
    case PAGE_ELLIPSE:
    case PAGE_LINE:
    case PAGE_PATH:
        shape_draw(canvas, item);
        break;
    }
}

static void page_draw(struct writing *writing, const struct page *page)
{
    struct page_tags tags = {.page = page};
    struct canvas canvas = {.page = HPDF_AddPage(writing->file->document),
                            .content = &writing->content,
                            .palette = page->palette, .height = page->height,
                            .faces = writing->faces, .forms = writing->forms, .tags = &tags,
                            .arena = writing->file->arena};

    if (canvas.page == NULL)
        return;
    HPDF_Page_SetWidth(canvas.page, points(page->width));
    HPDF_Page_SetHeight(canvas.page, points(page->height));
    page_trim_add(writing->file->document, &canvas, page);
    page_resources_add(writing, canvas.page);
    if (page->count > 0)
        page_outline_add(writing->file->document, canvas.page, page->title,
                         writing->file->arena);
    content_page_begin(canvas.content);
    for (size_t i = 0; i < page->count; i++)
        item_draw(&canvas, page, i);
    tags_end(&canvas);
    stream_fill(writing->file, ((HPDF_PageAttr)canvas.page->attr)->contents,
                (const unsigned char *)canvas.content->at, canvas.content->length);
    tree_page_add(writing->tree, &canvas);
}

static void document_fill(HPDF_Doc document, const struct pdf_input *input)
{
    struct pdf_face faces[FACE_COUNT] = {{0}};
    struct pdf_file *file = arena_alloc(input->arena, sizeof *file);

    file_begin(file, document, input->arena);
    facts_add(document, input->document, input->arena);
    colours_add(file);
    if (!faces_embed(file, input, faces))
        return;
    struct writing writing = {.file = file, .faces = faces,
                              .fonts = fonts_dictionary(document, faces),
                              .forms = forms_new(file), .content = content_in(input->arena),
                              .tree = tree_begin(document, input->document->language,
                                                 input->arena)};
    for (size_t i = 0; i < input->document->count; i++)
        page_draw(&writing, input->document->pages[i]);
    tree_end(writing.tree);
    identity_reserve(document);
    document->pdf_version = HPDF_VER_17;
}

/* The saved document copied out of libharu's memory. */
static bool stream_take(HPDF_Doc document, struct arena *arena, unsigned char **at,
                        size_t *length)
{
    HPDF_UINT32 size = HPDF_GetStreamSize(document);

    *at = arena_alloc(arena, size);
    *length = size;
    return size > 0 && HPDF_ResetStream(document) == HPDF_OK &&
           HPDF_ReadFromStream(document, *at, &size) == HPDF_OK && size == *length;
}

/* Libharu calls the handler for its page functions only: what went wrong with an
 * object is kept in the document. */
static void error_look(HPDF_Doc document, struct pdf_failure *failure)
{
    failure_keep(HPDF_GetError(document), HPDF_GetErrorDetail(document), failure);
}

static bool document_write(const struct pdf_input *input, unsigned char **at, size_t *length,
                           struct problems *problems)
{
    struct pdf_failure failure = {HPDF_OK, 0};
    HPDF_Doc document = HPDF_New(failure_keep, &failure);
    bool written = false;

    if (document != NULL) {
        document_fill(document, input);
        error_look(document, &failure);
        if (failure.error == HPDF_OK && HPDF_SaveToStream(document) == HPDF_OK)
            written = stream_take(document, input->arena, at, length);
        error_look(document, &failure);
        written = written && failure.error == HPDF_OK;
        HPDF_Free(document);
    }
    if (!written)
        problem_add(problems, SEVERITY_FAILURE, (struct place){0}, NULL,
                    "the PDF library failed with error 0x%04lX, detail %lu",
                    (unsigned long)failure.error, (unsigned long)failure.detail);
    return written;
}

bool pdf_make(const struct document *document, const struct faces *faces, struct arena *arena,
              struct bytes *out, struct problems *problems)
{
    struct pdf_input input = {.document = document, .faces = faces, .arena = arena};
    unsigned char *at = NULL;
    size_t length = 0;

    if (!pages_check(document, problems) || !subsets_make(&input, problems) ||
        !document_write(&input, &at, &length, problems) || !identity_put(at, length, problems))
        return false;
    *out = (struct bytes){at, length};
    return true;
}
