/* yardstick.c - what a plain writer takes for pages that are given:
 *
 *   yardstick FOLDER FONTS [FILE]
 *
 * FOLDER holds dumps of pages (KEY-PAGE.dump); the pages of one KEY are one document. All is read,
 * shaped and cut down to its letters first; then documents_write writes one PDF after the other
 * into memory. A counter of instructions is let run in that function alone. Prints how many pages
 * were written, and how many bytes; FILE gets the last document, to be looked at. Ends with 2 when
 * something cannot be read. */
#include "plain.h"

#include <dirent.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#define MEMORY_LIMIT ((size_t)8 * 1024 * 1024 * 1024)

struct plain_page {
    const char *name;              /* of its dump */
    size_t key_length;             /* of the part of it that is the document's */
    const struct page *page;
};

struct plain_set {
    struct arena *arena;
    struct plain_page *pages;      /* by name */
    size_t count, room;
    struct plain_face faces[FACE_COUNT];
    size_t bytes;                  /* of what was written */
};

static int name_compare(const void *left, const void *right)
{
    const struct plain_page *a = left, *b = right;
    return strcmp(a->name, b->name);
}

static bool pages_read(struct plain_set *set, const char *folder, const struct faces *faces)
{
    DIR *list = opendir(folder);
    const struct dirent *entry;
    bool good = list != NULL;

    while (good && (entry = readdir(list)) != NULL) {
        const char *end = strrchr(entry->d_name, '.'), *dash = strrchr(entry->d_name, '-');
        if (end == NULL || dash == NULL || strcmp(end, ".dump") != 0)
            continue;
        set->pages = arena_grow(set->arena, set->pages, set->count, &set->room,
                                sizeof *set->pages);
        struct plain_page *page = &set->pages[set->count++];
        page->name = arena_copy(set->arena, entry->d_name, strlen(entry->d_name));
        page->key_length = (size_t)(dash - entry->d_name);
        page->page = plain_dump_read(text_format(set->arena, "%s/%s", folder, page->name), faces,
                                     set->arena);
        good = page->page != NULL;
    }
    if (list != NULL)
        (void)closedir(list);
    if (good && set->count > 0)
        qsort(set->pages, set->count, sizeof *set->pages, name_compare);
    return good && set->count > 0;
}

static void faces_cut(struct plain_set *set, const struct faces *faces, struct problems *problems)
{
    struct usage *usage = usage_new(faces, set->arena);

    for (size_t i = 0; i < set->count; i++)
        for (size_t k = 0; k < set->pages[i].page->count; k++)
            if (set->pages[i].page->items[k].kind == PAGE_TEXT)
                usage_add(usage, set->pages[i].page->items[k].run);
    for (enum face_role role = 0; role < FACE_COUNT; role++)
        set->faces[role] = plain_face_of(faces, usage, role, set->arena, problems);
}

/* ---- writing: what is counted ---- */

static void plain_fonts_put(HPDF_Doc document, HPDF_Page page, const HPDF_Dict *fonts)
{
    HPDF_Dict resources = HPDF_Dict_GetItem(page, "Resources", HPDF_OCLASS_DICT);
    HPDF_Dict names = HPDF_Dict_New(document->mmgr);

    HPDF_Dict_Add(resources, "Font", names);
    for (enum face_role role = 0; role < FACE_COUNT; role++)
        if (fonts[role] != NULL)
            HPDF_Dict_Add(names, plain_font_key(role), fonts[role]);
}

static void plain_page_draw(HPDF_Doc document, const struct plain_set *set,
                            const struct plain_page *of, const HPDF_Dict *fonts)
{
    const struct page *page = of->page;
    struct canvas canvas = {HPDF_AddPage(document), PALETTE_COLOUR, page->height, set->faces};

    HPDF_Page_SetWidth(canvas.page, points(page->width));
    HPDF_Page_SetHeight(canvas.page, points(page->height));
    plain_fonts_put(document, canvas.page, fonts);
    HPDF_Outline outline = HPDF_CreateOutline(document, NULL, of->name, NULL);
    HPDF_Outline_SetDestination(outline, HPDF_Page_CreateDestination(canvas.page));
    for (size_t i = 0; i < page->count; i++)
        if (page->items[i].kind == PAGE_TEXT)
            plain_text_draw(&canvas, &page->items[i]);
        else if (page->items[i].kind == PAGE_SIGN)
            plain_sign_draw(&canvas, &page->items[i]);
        else
            plain_shape_draw(&canvas, &page->items[i]);
}

/* The saved document, as a caller has it who writes it to a file. */
static bool document_save(HPDF_Doc document, struct plain_set *set, const char *to)
{
    if (HPDF_GetError(document) != HPDF_OK || HPDF_SaveToStream(document) != HPDF_OK)
        return false;
    HPDF_UINT32 size = HPDF_GetStreamSize(document);
    HPDF_BYTE *at = malloc(size);
    bool good = at != NULL && HPDF_ResetStream(document) == HPDF_OK &&
                HPDF_ReadFromStream(document, at, &size) == HPDF_OK;
    set->bytes += size;
    FILE *file = good && to != NULL ? fopen(to, "wb") : NULL;
    if (file != NULL) {
        good = fwrite(at, 1, size, file) == size;
        good = fclose(file) == 0 && good;
    }
    free(at);
    return good;
}

static bool document_write(struct plain_set *set, size_t from, size_t count, const char *to)
{
    HPDF_Doc document = HPDF_New(NULL, NULL);
    HPDF_Dict fonts[FACE_COUNT] = {NULL};

    if (document == NULL)
        return false;
    HPDF_SetCompressionMode(document, HPDF_COMP_ALL);
    HPDF_SetInfoAttr(document, HPDF_INFO_TITLE, set->pages[from].name);
    for (enum face_role role = 0; role < FACE_COUNT; role++)
        if (set->faces[role].name != NULL)
            fonts[role] = plain_font_add(document, &set->faces[role]);
    for (size_t i = from; i < from + count; i++)
        plain_page_draw(document, set, &set->pages[i], fonts);
    bool saved = document_save(document, set, to);
    HPDF_Free(document);
    return saved;
}

static bool same_document(const struct plain_page *a, const struct plain_page *b)
{
    return a->key_length == b->key_length && strncmp(a->name, b->name, a->key_length) == 0;
}

/* Has a name that nothing else has: by it the counter is told where to count. `to`: a file for
 * the last document; NULL: none. */
bool documents_write(struct plain_set *set, const char *to);
__attribute__((noinline)) bool documents_write(struct plain_set *set, const char *to)
{
    bool good = true;

    for (size_t i = 0, count; good && i < set->count; i += count) {
        for (count = 1; i + count < set->count &&
                        same_document(&set->pages[i], &set->pages[i + count]); count++)
            continue;
        good = document_write(set, i, count, to);
    }
    return good;
}

/* Reads all pages and writes them. False, told, where that fails. */
static bool yardstick_run(struct plain_set *set, struct faces *faces, char **words,
                          struct problems *problems)
{
    if (!pages_read(set, words[1], faces)) {
        fprintf(stderr, "yardstick: no pages in %s\n", words[1]);
        return false;
    }
    faces_cut(set, faces, problems);
    if (documents_write(set, words[3])) {
        printf("%zu pages, %zu bytes\n", set->count, set->bytes);
        return true;
    }
    fprintf(stderr, "yardstick: libharu failed\n");
    return false;
}

int main(int count, char **words)
{
    if (count < 3 || count > 4) {
        fprintf(stderr, "yardstick: use: yardstick FOLDER FONTS [FILE]\n");
        return 2;
    }
    struct plain_set set = {.arena = arena_new(MEMORY_LIMIT)};
    struct problems *problems = problems_new(set.arena);
    struct faces *faces = faces_open(words[2], set.arena, problems);
    if (faces == NULL)
        fprintf(stderr, "yardstick: no faces in %s\n", words[2]);
    bool good = faces != NULL && yardstick_run(&set, faces, words, problems);
    faces_close(faces);
    arena_free(set.arena);
    return good ? 0 : 2;
}
