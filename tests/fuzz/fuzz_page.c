/* fuzz_page.c - any bytes as a boat's file: some of her sheets are laid out and proofread, and
 * what passes is a whole PDF. */
#include "fuzz.h"

#include "draw.h"
#include "layout.h"
#include "page.h"
#include "paper.h"
#include "proof.h"
#include "text.h"

enum { SHEETS_MOST = 2, PAGES_MOST = 64 };

static void page_open_own(void)
{
    own_open(OWN_TEXTS | OWN_BOATS | OWN_FACES);
}

/* Neighbours of the set, so that one input does not take the time of all her sheets. */
static struct sheet_set some_sheets(const struct fuzz *fuzz, const struct sheet_set *set)
{
    struct sheet_set some = *set;
    some.count = set->count < SHEETS_MOST ? set->count : SHEETS_MOST;
    some.sheets += fuzz_choice(fuzz, set->count - some.count + 1);
    return some;
}

static void report_check(const struct fuzz *fuzz, const struct page *page,
                         const struct proof_report *report)
{
    struct text_builder out = text_builder_in(fuzz->arena);
    CHECK(report->measured > 0 && report->count >= report->errors + report->notes);
    proof_print(report, "any", page->id, &out);
    CHECK(text_is_shown(out.at));
}

/* The pages that the proofreader lets pass. A sheet that is not held has all its pages, or it was
 * told why not. */
static size_t pages_take(const struct fuzz *fuzz, const struct laid_set *laid,
                         const struct page **pages)
{
    const struct proof_report *report = proof_set(laid, own.faces, fuzz->arena);
    size_t count = 0;
    for (size_t i = 0; i < laid->count; i++)
        for (size_t p = 0; p < laid->sheets[i].page_count; p++, report++) {
            const struct page *page = laid->sheets[i].pages[p];
            CHECK(page != NULL || laid->sheets[i].sheet->held ||
                  problems_reach(fuzz->problems, SEVERITY_HELD));
            if (page == NULL)
                continue;
            report_check(fuzz, page, report);
            if (report->errors == 0 && count < PAGES_MOST)
                pages[count++] = page;
        }
    return count;
}

static void pdf_check_whole(const struct fuzz *fuzz, const struct page *const *pages, size_t count)
{
    const struct document document = {.title = "any", .subject = "any", .language = "en",
                                      .pages = pages, .count = count};
    struct bytes bytes = {NULL, 0};
    if (count == 0)
        return;
    CHECK(pdf_make(&document, own.faces, fuzz->arena, &bytes, fuzz->problems));
    CHECK(pdf_fault(bytes.at, bytes.length) == NULL);
}

static void page_one(struct fuzz *fuzz)
{
    bool sound = false;
    const struct page *pages[PAGES_MOST];
    const struct boat *boat = boat_read(fuzz_source(fuzz, "any.yaml"), "any", fuzz->arena,
                                        fuzz->problems, &sound);
    if (boat == NULL || !sound)
        return;
    struct compose_input input = own_input(boat);
    input.draft = fuzz_choice(fuzz, 2) == 0;
    const struct sheet_set *set = boat_use(fuzz, &input);
    if (set == NULL)
        return;
    struct sheet_set some = some_sheets(fuzz, set);
    struct paper paper = *paper_of((enum paper_key)(PAPER_NONE + 1 +
                                                    fuzz_choice(fuzz, PAPER_COUNT - 1)));
    struct layout_input layout = {&some, own.faces, &paper, input.draft};
    struct laid_set laid = layout_set(&layout, fuzz->arena, fuzz->problems);
    problems_check(fuzz);
    pdf_check_whole(fuzz, pages, pages_take(fuzz, &laid, pages));
}

const struct harness harness = {page_open_own, page_one, true};
