/* print_overview.c - all cards of a boat small on one page: composed, laid out and proofread as
 * every sheet is (room: app). */
#include "print_overview.h"

#include "layout.h"

static const struct views_facts *views_of(const struct sheets *sheets,
                                          const struct page *const *pages,
                                          const struct sheet *const *wholes, size_t count)
{
    struct arena *arena = sheets->boat->arena;
    struct form_view *items = arena_array(arena, count, sizeof *items);
    struct views_facts *views = arena_alloc(arena, sizeof *views);
    for (size_t i = 0; i < count; i++) {
        bool first = i == 0 || wholes[i - 1] != wholes[i];
        items[i] = (struct form_view){
            .page = pages[i],
            .number = text_format(arena, "%s%s", wholes[i]->number, pages[i]->sheet->page),
            .code = first ? sheet_footer(wholes[i])->code : ""};
    }
    *views = (struct views_facts){items, count};
    return views;
}

const struct page *overview_page(const struct sheets *sheets, const struct page *const *pages,
                                 const struct sheet *const *wholes, size_t count)
{
    const struct job *job = sheets->boat->job;
    struct arena *arena = sheets->boat->arena;
    struct problems *problems = sheets->boat->problems;
    const struct views_facts *views = views_of(sheets, pages, wholes, count);
    const struct sheet_set *set = overview_compose(&sheets->input, views, arena, problems);
    const struct layout_input layout = {set, job->fleet->faces, &job->papers[sheets->part.paper],
                                        false};
    struct laid_set laid = layout_set(&layout, arena, problems);
    const struct page *page = laid.sheets[0].pages[0];
    const struct proof_report *reports = proof_set(&laid, job->fleet->faces, arena);
    if (page == NULL || reports[0].errors == 0)
        return page;
    struct text_builder told = text_builder_in(arena);
    proof_print(&reports[0], sheets->boat->key, set->sheets[0]->name, &told);
    problem_add(problems, SEVERITY_ERROR, (struct place){0}, told.at,
                "%s: the page of all cards breaks a page rule", sheets->boat->key);
    return NULL;
}
