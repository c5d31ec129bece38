/* fitting.c - composed sheets onto pages: where figures make a card too long for its page,
 * they yield; where gear makes a safety plan too full for one, it has more (room: app).
 * Never takes away anything but figures. */
#include "job.h"
#include "layout.h"

/* What the last try found full, and what is to be tried next; the figures' limits are as
 * many as cards. */
struct trying {
    const bool *full;
    struct set_limits limits;
    struct figure_limit *figures;
};

static struct figure_limit *limit_of(struct trying *trying, const char *sheet)
{
    for (size_t i = 0; i < trying->limits.figure_count; i++)
        if (text_equal(trying->figures[i].card, sheet))
            return &trying->figures[i];
    return NULL;
}

/* False: it carries none any more. */
static bool figures_lower(struct trying *trying, const struct sheet *sheet)
{
    struct figure_limit *limit = limit_of(trying, sheet->id);
    if (limit != NULL && limit->most == 0)
        return false;
    if (limit == NULL)
        limit = &trying->figures[trying->limits.figure_count++];
    size_t shown = sheet_steps(sheet)->shown_count;
    *limit = (struct figure_limit){sheet->id, shown > 0 ? shown - 1 : 0};
    return true;
}

/* One page more than it had. False: it has as many as it may, or fewer than it was to
 * have, because it cannot be cut again. */
static bool plan_spread(struct trying *trying, const struct places_facts *plan)
{
    int *pages = &trying->limits.plan_pages[plan->part];
    if (plan->of >= PLAN_PAGES_MOST || plan->of < *pages)
        return false;
    *pages = plan->of + 1;
    return true;
}

/* Lowers what full cards may carry. False: there is nothing to lower. */
static bool limits_lower(const struct sheet_set *set, struct trying *trying)
{
    bool lowered = false;
    for (size_t i = 0; i < set->count; i++)
        if (trying->full[i])
            lowered |= sheet_block(set->sheets[i], BLOCK_LABELS) != NULL
                           ? plan_spread(trying, sheet_places(set->sheets[i]))
                           : figures_lower(trying, set->sheets[i]);
    return lowered;
}

static void pages_try(struct sheets *sheets, struct trying *trying)
{
    struct arena *arena = sheets->boat->arena;
    bool *full = arena_array(arena, sheets->set->count, sizeof *full);
    const struct job *job = sheets->boat->job;
    struct layout_input layout = {sheets->set, job->fleet->faces,
                                  paper_of(job->papers[sheets->part.paper]),
                                  sheets->input.draft, full};
    problems_about(sheets->problems, sheets->boat->key, "page");
    sheets->pages = layout_set(&layout, arena, sheets->problems);
    trying->full = full;
}

void sheets_lay(struct sheets *sheets)
{
    struct trying trying = {.figures = arena_array(sheets->boat->arena, sheets->set->count,
                                                   sizeof *trying.figures)};
    trying.limits.figures = trying.figures;
    pages_try(sheets, &trying);
    while (limits_lower(sheets->set, &trying)) {
        sheets_compose_within(sheets, &trying.limits);
        pages_try(sheets, &trying);
    }
}
