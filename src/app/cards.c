/* cards.c - a boat's cards from record to page: where figures make a card too long
 * for its page, they yield; where gear makes a safety plan too full for one, it has
 * more (room: app). Never takes away anything but figures. */
#include "app.h"

/* Problems of the try that is kept; those of the others are forgotten. */
static void problems_pass_on(struct problems *from, struct problems *to)
{
    size_t count;
    const struct problem *list = problems_sorted(from, &count);
    for (size_t i = 0; i < count; i++)
        problem_add_check(to, list[i].check, list[i].severity, list[i].place, list[i].remedy,
                          "%s", list[i].what);
}

/* What the last try found full, and what is to be tried next; the figures' limits are as
 * many as cards. */
struct trying {
    const bool *full;
    struct set_limits limits;
    struct figure_limit *figures;
};

static struct figure_limit *limit_of(struct trying *trying, const char *card)
{
    for (size_t i = 0; i < trying->limits.figure_count; i++)
        if (text_equal(trying->figures[i].card, card))
            return &trying->figures[i];
    return NULL;
}

/* False: it carries none any more. */
static bool figures_lower(struct trying *trying, const struct card *card)
{
    struct figure_limit *limit = limit_of(trying, card->key);
    if (limit != NULL && limit->most == 0)
        return false;
    if (limit == NULL)
        limit = &trying->figures[trying->limits.figure_count++];
    *limit = (struct figure_limit){card->key,
                                   card->figure_count > 0 ? card->figure_count - 1 : 0};
    return true;
}

/* One page more than it had. False: it has as many as it may, or fewer than it was to
 * have, because it cannot be cut again. */
static bool plan_spread(struct trying *trying, const struct safety_plan *plan)
{
    int *pages = &trying->limits.plan_pages[plan->part];
    if (plan->of >= PLAN_PAGES_MOST || plan->of < *pages)
        return false;
    *pages = plan->of + 1;
    return true;
}

/* Lowers what full cards may carry. False: there is nothing to lower. */
static bool limits_lower(const struct card_set *set, struct trying *trying)
{
    bool lowered = false;
    for (size_t i = 0; i < set->count; i++)
        if (trying->full[i])
            lowered |= set->cards[i]->safety != NULL ? plan_spread(trying, set->cards[i]->safety)
                                                     : figures_lower(trying, set->cards[i]);
    return lowered;
}

static void cards_try(const struct fleet *fleet, const struct compose_input *input,
                      struct trying *trying, struct problems *problems, struct boat_work *work)
{
    problems_about(problems, work->key, "cards");
    work->set = compose_set_limited(input, &trying->limits, fleet->arena, problems);
    bool *full = arena_array(fleet->arena, work->set->count, sizeof *full);
    struct layout_input layout = {work->set, fleet->faces, input->draft, full};
    problems_about(problems, work->key, "page");
    work->pages = layout_set(&layout, fleet->arena, problems);
    trying->full = full;
}

void cards_make(const struct fleet *fleet, const struct compose_input *input,
                struct boat_work *work)
{
    struct problems *problems = problems_new(fleet->arena);
    struct trying trying = {.full = NULL};
    problems_about(fleet->problems, work->key, "cards");
    cards_try(fleet, input, &trying, problems, work);
    trying.figures = arena_array(fleet->arena, work->set->count, sizeof *trying.figures);
    trying.limits.figures = trying.figures;
    while (limits_lower(work->set, &trying)) {
        problems = problems_new(fleet->arena);
        cards_try(fleet, input, &trying, problems, work);
    }
    problems_pass_on(problems, fleet->problems);
}
