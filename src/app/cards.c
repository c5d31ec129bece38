/* cards.c - a boat's cards from record to page: where figures make a card too long
 * for its page, they yield (room: app). Never takes away anything but figures. */
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

static struct figure_limit *limit_of(struct figure_limit *limits, size_t count, const char *card)
{
    for (size_t i = 0; i < count; i++)
        if (text_equal(limits[i].card, card))
            return &limits[i];
    return NULL;
}

/* Lowers what the cards without a page may carry. False: there is nothing to lower. */
static bool limits_lower(const struct boat_work *work, bool draft, struct figure_limit *limits,
                         size_t *count)
{
    bool lowered = false;
    for (size_t i = 0; i < work->set->count; i++) {
        const struct card *card = work->set->cards[i];
        struct figure_limit *limit = limit_of(limits, *count, card->key);
        if (work->pages[i] != NULL || (card->held && !draft) || (limit && limit->most == 0))
            continue;
        if (limit == NULL)
            limit = &limits[(*count)++];
        *limit = (struct figure_limit){card->key,
                                       card->figure_count > 0 ? card->figure_count - 1 : 0};
        lowered = true;
    }
    return lowered;
}

static void cards_try(const struct fleet *fleet, const struct compose_input *input,
                      const struct figure_limit *limits, size_t limit_count,
                      struct problems *problems, struct boat_work *work)
{
    problems_about(problems, work->key, "cards");
    work->set = compose_set_limited(input, limits, limit_count, fleet->arena, problems);
    struct layout_input layout = {work->set, fleet->faces, input->draft};
    problems_about(problems, work->key, "page");
    work->pages = layout_set(&layout, fleet->arena, problems);
}

void cards_make(const struct fleet *fleet, const struct compose_input *input,
                struct boat_work *work)
{
    struct problems *problems = problems_new(fleet->arena);
    size_t count = 0;
    problems_about(fleet->problems, work->key, "cards");
    cards_try(fleet, input, NULL, 0, problems, work);
    struct figure_limit *limits = arena_array(fleet->arena, work->set->count, sizeof *limits);
    while (limits_lower(work, input->draft, limits, &count)) {
        problems = problems_new(fleet->arena);
        cards_try(fleet, input, limits, count, problems, work);
    }
    problems_pass_on(problems, fleet->problems);
}
