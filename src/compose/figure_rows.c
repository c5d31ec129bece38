/* figure_rows.c - figures on the cards: under the step each serves, as far as the
 * budget of rows goes (room: compose). Never takes a step's or a row's place: what
 * finds no room is left out, and `why` and `check` tell. */
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

static size_t figure_rows_of(const struct steps_facts *steps)
{
    size_t rows = 0;
    for (size_t i = 0; i < steps->count; i++)
        rows += card_step_rows(&steps->items[i]);
    return rows;
}

size_t figures_allowed(const struct composing *composing)
{
    const struct set_limits *limits = &composing->limits;
    for (size_t i = 0; i < limits->figure_count; i++)
        if (text_equal(limits->figures[i].card, composing->slot->key))
            return limits->figures[i].most;
    return CARD_FIGURES_MOST;
}

/* How many figures the card has room for. */
static size_t room_on(const struct composing *composing, const struct steps_facts *steps)
{
    size_t rows = figure_rows_of(steps), room = rows < CARD_ROWS_MOST ? CARD_ROWS_MOST - rows : 0;
    return room < figures_allowed(composing) ? room : figures_allowed(composing);
}

/* A step's own figures, from those chosen for the card. */
static void step_figures_set(struct composing *composing, struct card_step *step,
                             const struct figure_list *chosen)
{
    struct figure_list own = {0};
    for (size_t i = 0; i < chosen->count; i++)
        if (text_equal(chosen->at[i].step, step->id))
            figure_add(composing, &own, chosen->at[i]);
    step->figures = own.at;
    step->figure_count = own.count;
}

static struct figure_list candidates_of(struct composing *composing)
{
    struct figure_list list = {0};
    struct figure_result result;
    size_t index = 0;
    for (const struct figure *figure; (figure = figure_next(composing, &index, &result)) != NULL;)
        figure_add(composing, &list, (struct card_figure){figure->id, figure->step,
                                                          phrase_said(composing, result.sentence),
                                                          result.origin});
    return list;
}

void figures_make(struct composing *composing, struct card_step *items,
                  struct steps_facts *steps)
{
    struct figure_list all = candidates_of(composing), shown = {0}, left_out = {0};
    size_t room = room_on(composing, steps);
    for (size_t i = 0; i < all.count; i++) {
        bool fits = shown.count < room && step_by_id(steps, all.at[i].step) != NULL &&
                    text_code_points(all.at[i].text) <= FIGURE_CHARACTERS_MOST;
        figure_add(composing, fits ? &shown : &left_out, all.at[i]);
    }
    for (size_t i = 0; i < steps->count; i++)
        step_figures_set(composing, &items[i], &shown);
    steps->known = all.at;
    steps->known_count = all.count;
    steps->shown = shown.at;
    steps->shown_count = shown.count;
    steps->left_out = left_out.at;
    steps->left_out_count = left_out.count;
}
