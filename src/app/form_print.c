/* form_print.c - forms as files: each boat's pages, or none of them, in one PDF (room: app). */
#include "form_print.h"

#include "draw.h"

#include <stdio.h>

struct form_printing {
    const struct options *options;
    struct fleet *fleet;
    const struct form_kind *form;
    bool lacking;                  /* a form told what its boat lacks */
};

/* NULL: a page could not be made, and so there is no form. */
static const struct page *const *form_pages(const struct sheets *sheets)
{
    if (sheets->page_count == 0)
        return NULL;
    const struct page **pages = arena_array(sheets->boat->arena, sheets->page_count + 1,
                                            sizeof *pages);
    for (size_t i = 0; i < sheets->page_count; i++) {
        pages[i] = sheets->pages[i].page;
        if (pages[i] == NULL)
            return NULL;
    }
    return pages;
}

static void form_dump(const struct form_printing *printing, const struct sheets *sheets,
                      const struct page *const *pages)
{
    const struct boat_job *boat = sheets->boat;
    for (size_t i = 0; i < sheets->page_count; i++) {
        struct text_builder out = text_builder_in(boat->arena);
        page_dump(pages[i], &out);
        file_put(printing->options->output,
                 text_format(boat->arena, "%s-%s%s.dump", boat->key, pages[i]->id,
                             sheets_ending(sheets)),
                 (struct bytes){(const unsigned char *)out.at, out.length}, boat->arena,
                 boat->problems);
    }
}

static void form_write(const struct form_printing *printing, const struct sheets *sheets,
                       const struct page *const *pages)
{
    const struct boat_job *boat = sheets->boat;
    const struct words *words = sheets->input.words;
    const struct document document = {
        .title = words_fill(words, boat->arena, WORD_DOCUMENT_TITLE, "boat",
                            TEXT_OR_EMPTY(boat->boat->facts.name), "what",
                            words_get(words, printing->form->kind.title), NULL),
        .subject = TEXT_OR_EMPTY(printing->fleet->base->name), .language = words_language(words),
        .pages = pages, .count = sheets->page_count};
    const char *name = text_format(boat->arena, "%s-%s%s.pdf", boat->key, printing->form->file,
                                   sheets_ending(sheets));
    struct bytes bytes;
    if (pdf_make(&document, printing->fleet->faces, boat->arena, &bytes, boat->problems) &&
        file_put(printing->options->output, name, bytes, boat->arena, boat->problems))
        printf("%s/%s: %zu page%s\n", printing->options->output, name, sheets->page_count,
               sheets->page_count == 1 ? "" : "s");
}

static void form_sheets_print(void *run, struct sheets *sheets)
{
    struct form_printing *printing = run;
    const struct page *const *pages = form_pages(sheets);
    printing->lacking = printing->lacking ||
                        problems_reach(sheets->problems, SEVERITY_DEFICIENCY);
    if (pages == NULL)
        return;
    if (printing->options->dump)
        form_dump(printing, sheets, pages);
    else
        form_write(printing, sheets, pages);
}

bool forms_print(const struct options *options, struct fleet *fleet,
                 const struct form_kind *form)
{
    static const struct job_use use = {.last = STEP_PROVE, .sheets = form_sheets_print};
    struct form_printing printing = {options, fleet, form, false};
    struct job job = job_of_kind(options, fleet, &form->kind);
    if (!folder_ready(options->output, fleet->arena, fleet->problems))
        return false;
    folder_sweep(options->output, fleet->arena);
    job_run(&job, &use, &printing);
    return printing.lacking;
}
