/* figure_rows.c - figures on the cards, each under the step it serves: all that have something
 * to say, the first the last to yield (room: compose). Which of them find room is seen when
 * the page is laid out. */
#include "compose_room.h"

#include "figure.h"

struct figure_list {
    struct card_figure *at;
    size_t count, room;
};

static void figure_add(struct composing *composing, struct figure_list *list,
                       struct card_figure figure)
{
    list->at = arena_grow(composing->arena, list->at, list->count, &list->room,
                          sizeof *list->at);
    list->at[list->count++] = figure;
}

static struct figure_result evaluate(const struct composing *composing,
                                     const struct figure *figure)
{
    struct figure_record record = {composing->in->boat, composing->in->base};
    return figure_evaluate(figure, &record, composing->arena);
}

/* The figures of this card that have something to say: the next at or after *index. */
static const struct figure *figure_next(const struct composing *composing, size_t *index,
                                        struct figure_result *result)
{
    for (const struct figure *figure; (figure = figure_at((*index)++)) != NULL;) {
        if (!text_equal(figure->procedure, composing->slot->procedure->key.text))
            continue;
        *result = evaluate(composing, figure);
        if (result->status == FIGURE_VALUE && result->sentence != NULL)
            return figure;
    }
    return NULL;
}

/* A step's own figures, from those of the card. */
static void step_figures_set(struct composing *composing, struct card_step *step,
                             const struct figure_list *all)
{
    struct figure_list own = {0};
    for (size_t i = 0; i < all->count; i++)
        if (text_equal(all->at[i].step, step->id))
            figure_add(composing, &own, all->at[i]);
    step->figures = own.at;
    step->figure_count = own.count;
}

static struct figure_list candidates_of(struct composing *composing)
{
    struct figure_list list = {0};
    struct figure_result result;
    size_t index = 0;
    for (const struct figure *figure; (figure = figure_next(composing, &index, &result)) != NULL;)
        figure_add(composing, &list, (struct card_figure){.id = figure->id, .step = figure->step,
                                                          .text = phrase_said(composing,
                                                                              result.sentence),
                                                          .origin = result.origin});
    return list;
}

void figures_make(struct composing *composing, struct card_step *items,
                  struct steps_facts *steps)
{
    struct figure_list known = candidates_of(composing), all = {0};
    for (size_t i = 0; i < known.count; i++) {
        known.at[i].yields = YIELDS_FIGURE + (int)all.count;
        if (step_by_id(steps, known.at[i].step) != NULL)
            figure_add(composing, &all, known.at[i]);
    }
    for (size_t i = 0; i < steps->count; i++)
        step_figures_set(composing, &items[i], &all);
    steps->figures = all.at;
    steps->figure_count = all.count;
}
