/* proofread.c - a boat's pages before they are drawn: one that breaks a page rule is
 * held (room: app). It judges nothing and changes no page. */
#include "job.h"

/* Words without a line of their own are the boat's as a whole. */
static struct place finding_place(const struct sheet *sheet, const struct proof_finding *finding)
{
    return finding->origin.line > 0 ? finding->origin : sheet->boat->facts.name.place;
}

static void errors_add(const struct sheets *sheets, const struct sheet_page *page)
{
    const struct sheet *sheet = page->page->sheet;
    for (size_t i = 0; i < page->report.count; i++) {
        const struct proof_finding *finding = &page->report.findings[i];
        const struct proof_rule *rule = proof_rule(finding->rule);
        if (rule->severity == PROOF_ERROR)
            problem_add(sheets->boat->problems, SEVERITY_ERROR, finding_place(sheet, finding),
                        rule->remedy, "%s (%s): %s: %s: %s; limit: %s", sheet->name,
                        sheet->language, rule->id, rule->sentence, finding->measured, rule->limit);
    }
}

/* A card of several pages is printed with all of them or not at all; each page of the safety plan
 * stands by itself. */
static void others_hold(struct sheets *sheets, const struct sheet *sheet)
{
    for (size_t i = 0; i < sheets->page_count; i++)
        if (sheets->pages[i].sheet == sheet && sheet_source_of(sheet->kind) != FROM_RECORD)
            sheets->pages[i].page = NULL;
}

void sheets_prove(struct sheets *sheets)
{
    struct boat_job *boat = sheets->boat;
    problems_about(boat->problems, boat->key, "page");
    const struct proof_report *reports = proof_set(&sheets->laid, boat->job->fleet->faces,
                                                   boat->arena);
    for (size_t i = 0; i < sheets->page_count; i++) {
        struct sheet_page *page = &sheets->pages[i];
        page->report = reports[i];
        if (page->page != NULL && page->report.errors > 0)
            errors_add(sheets, page);
    }
    for (size_t i = 0; i < sheets->page_count; i++)
        if (sheets->pages[i].report.errors > 0) {
            sheets->pages[i].page = NULL;
            others_hold(sheets, sheets->pages[i].sheet);
        }
    problems_about(boat->problems, boat->key, "run");
}

void audit_add(const struct sheets *sheets, struct text_builder *out)
{
    for (size_t i = 0; i < sheets->page_count; i++) {
        const struct sheet_page *page = &sheets->pages[i];
        if (page->report.measured > 0 && card_wanted(sheets->boat->job->options, page->sheet))
            proof_print(&page->report, sheets->boat->key, page->id, out);
    }
}
