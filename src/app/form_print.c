/* form_print.c - forms as files: each boat's pages, or none of them, in one PDF (room: app). */
#include "form_print.h"

#include "draw.h"
#include "printed_put.h"
#include "stop.h"
#include "told.h"

#include <string.h>

struct form_printing {
    const struct options *options;
    struct fleet *fleet;
    const struct form_kind *form;
    struct printed_run run;        /* not begun where pages are dumped as text */
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

/* ---- paper ---- */

/* Lines to write upon need the width of A4. */
#define FORM_WIDTH_LEAST MM(200)

static bool paper_too_narrow(enum paper_key key)
{
    return paper_of(key)->width < FORM_WIDTH_LEAST;
}

static enum paper_key form_base_paper(const struct fleet *fleet)
{
    return paper_too_narrow(base_paper(fleet)) ? PAPER_A4 : base_paper(fleet);
}

bool form_paper_sound(const struct options *options, const struct fleet *fleet)
{
    enum paper_key key = (enum paper_key)options->paper;
    if (key == PAPER_NONE || !paper_too_narrow(key))
        return true;
    problem_add(fleet->problems, SEVERITY_USE, NO_PLACE,
                "write --paper a4 or --paper letter",
                "--paper %s is too narrow for a sheet to write upon", paper_of(key)->key);
    return false;
}

/* Stickers stand on the paper of the base whatever it is. */
static const char *form_ending(const struct form_printing *printing, const struct sheets *sheets)
{
    return sheets_ending(sheets, printing->form->paper != NULL
                                     ? base_paper(printing->fleet)
                                     : form_base_paper(printing->fleet));
}

/* ---- files ---- */

static void form_dump(const struct form_printing *printing, const struct sheets *sheets,
                      const struct page *const *pages)
{
    const struct boat_job *boat = sheets->boat;
    for (size_t i = 0; i < sheets->page_count; i++) {
        struct text_builder out = text_builder_in(boat->arena);
        page_dump(pages[i], &out);
        file_put(printing->options->output,
                 text_format(boat->arena, "%s-%s%s.dump", boat->key, pages[i]->id,
                             form_ending(printing, sheets)),
                 (struct bytes){(const unsigned char *)out.at, out.length}, boat->arena,
                 boat->problems);
    }
}

/* Has the base a boat called as this file would be, such as tamarisk-survey? Her cards would be
 * written over. */
static bool form_name_taken(const struct form_printing *printing, const struct boat_job *boat,
                            const char *name)
{
    const char *other = arena_copy(boat->arena, name, strlen(name) - strlen(".pdf"));
    if (!names_hold(&printing->fleet->base_keys, other))
        return false;
    problem_add(boat->problems, SEVERITY_ERROR, NO_PLACE, "give that boat's file another name",
                "%s would be the file of this sheet and of the boat %s", name, other);
    return true;
}

static void form_write(struct form_printing *printing, const struct sheets *sheets,
                       const struct page *const *pages)
{
    const struct boat_job *boat = sheets->boat;
    const struct words *words = sheets->input.words;
    const struct document document = {
        .title = words_fill(words, boat->arena, WORD_DOCUMENT_TITLE, "boat",
                            TEXT_OR_EMPTY(boat->boat->facts.name), "what",
                            words_get(words, printing->form->kind.title), NULL),
        .subject = printing->fleet->base == NULL ? "" : TEXT_OR_EMPTY(printing->fleet->base->name),
        .language = words_language(words),
        .pages = pages, .count = sheets->page_count};
    const char *name = text_format(boat->arena, "%s-%s%s.pdf", boat->key, printing->form->file,
                                   form_ending(printing, sheets));
    struct bytes bytes;
    if (!form_name_taken(printing, boat, name) &&
        pdf_make(&document, printing->fleet->faces, boat->arena, &bytes, boat->problems) &&
        printed_put(&printing->run, printed_row_of(&printing->run, sheets, name), bytes,
                    boat->arena, boat->problems))
        told_lines("%s/%s: %zu page%s\n", printing->options->output, name, sheets->page_count,
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

/* What the job is made by: the same options with the paper of forms. */
static struct options form_options(const struct options *options, const struct fleet *fleet)
{
    struct options own = *options;
    if (own.paper == PAPER_NONE)
        own.paper = form_base_paper(fleet);
    return own;
}

static bool forms_begin(struct form_printing *printing)
{
    const struct fleet *fleet = printing->fleet;
    return printing->options->dump ||
           printed_run_begin(printing->options->output, fleet->arena, fleet->problems,
                             &printing->run);
}

static void forms_end(struct form_printing *printing)
{
    if (!printing->options->dump)
        printed_run_end(&printing->run, printing->fleet->problems);
}

/* The boats that a signal left without a form. */
static void forms_left_tell(const struct fleet *fleet, size_t done)
{
    struct names remaining = {0};
    for (size_t i = done; i < fleet->boat_count; i++)
        names_add(&remaining, fleet->boats[i].key, fleet->arena);
    stop_tell(done, &remaining, fleet->arena, fleet->problems);
}

bool forms_print(const struct options *options, struct fleet *fleet,
                 const struct form_kind *form)
{
    static const struct job_use use = {.last = STEP_PROVE, .sheets = form_sheets_print};
    struct options own = form_options(options, fleet);
    struct form_printing printing = {.options = &own, .fleet = fleet, .form = form};
    struct job job = job_of_kind(&own, fleet, &form->kind);
    stop_await();
    if (!folder_ready(own.output, fleet->arena, fleet->problems) || !forms_begin(&printing))
        return false;
    if (form->paper != NULL)
        job.papers[0] = *form->paper;
    job.walk = form->walk;
    forms_left_tell(fleet, job_run(&job, &use, &printing));
    forms_end(&printing);
    return printing.lacking;
}

void form_print_one(const struct options *options, struct fleet *fleet,
                    const struct form_kind *form, const struct boat *boat)
{
    struct options own = form_options(options, fleet);
    struct form_printing printing = {.options = &own, .fleet = fleet, .form = form};
    struct job job = job_of_kind(&own, fleet, &form->kind);
    struct boat_job alone = {.job = &job, .key = boat->key, .arena = fleet->arena,
                             .problems = fleet->problems, .boat = boat, .sound = true};
    if (!forms_begin(&printing))
        return;
    for (size_t i = 0; i < job_part_count(&job); i++) {
        struct sheets sheets = sheets_compose(&alone, job_part_at(&job, i));
        sheets_lay(&sheets);
        sheets_tell(&sheets);
        sheets_prove(&sheets);
        form_sheets_print(&printing, &sheets);
    }
    forms_end(&printing);
}
