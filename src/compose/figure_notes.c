/* figure_notes.c - what keeps figures off the cards: fields that the record lacks (room:
 * compose). Never more than notes: a card is whole without figures. */
#include "compose_room.h"

#include "figure.h"

static const struct sheet *card_of(const struct sheet_set *set, const char *procedure)
{
    for (size_t i = 0; i < set->count; i++)
        if (text_equal(set->sheets[i]->procedure_key, procedure))
            return set->sheets[i];
    return NULL;
}

/* Would the figure stand on a card of this boat, or does the base ask for it? */
static bool is_wanted(const struct sheet_set *set, const struct figure *figure)
{
    if (figure->in_check)
        return true;
    if (!figure_may_be_printed(figure))
        return false;
    return figure->in_rows ||
           (figure->procedure != NULL && card_of(set, figure->procedure) != NULL);
}

/* A field that is missing, and the figures that wait for it. */
struct wanting {
    struct figure_lack lack;
    struct text_builder figures;
    size_t count;
};

struct wanting_list {
    struct wanting *at;
    size_t count, room;
};

static struct wanting *wanting_of(struct wanting_list *list, const struct figure_lack *lack,
                                  struct arena *arena)
{
    for (size_t i = 0; i < list->count; i++)
        if (text_equal(list->at[i].lack.owner, lack->owner) &&
            text_equal(list->at[i].lack.field, lack->field))
            return &list->at[i];
    list->at = arena_grow(arena, list->at, list->count, &list->room, sizeof *list->at);
    list->at[list->count] = (struct wanting){.lack = *lack, .figures = text_builder_in(arena)};
    return &list->at[list->count++];
}

static void lacks_collect(struct wanting_list *list, const struct figure *figure,
                          const struct figure_result *result, struct arena *arena)
{
    for (size_t i = 0; i < result->lack_count; i++) {
        struct wanting *wanting = wanting_of(list, &result->lacks[i], arena);
        text_add_format(&wanting->figures, "%s%s", wanting->count++ == 0 ? "" : ", ",
                        figure->id);
    }
}

static void lacks_note(const struct wanting_list *list, struct arena *arena,
                       struct problems *problems)
{
    for (size_t i = 0; i < list->count; i++) {
        const struct wanting *wanting = &list->at[i];
        const struct figure_lack *lack = &wanting->lack;
        const char *subject = text_format(arena, "%s of %s", lack->field, lack->owner);
        problem_add_of(problems, (struct problem_subject){"figure_unrecorded", subject},
                       SEVERITY_NOTE, lack->place,
                       text_format(arena, "look at the boat, then record %s (%s)", lack->field,
                                   lack->about),
                       "%s is not recorded: the figure%s %s %s for it", subject,
                       wanting->count == 1 ? "" : "s", wanting->figures.at,
                       wanting->count == 1 ? "waits" : "wait");
    }
}

void figure_notes(const struct compose_input *input, const struct sheet_set *set,
                  struct arena *arena, struct problems *problems)
{
    struct figure_record record = {input->boat, input->base};
    struct wanting_list list = {0};
    const struct figure *figure;
    for (size_t i = 0; (figure = figure_at(i)) != NULL; i++) {
        if (!is_wanted(set, figure))
            continue;
        struct figure_result result = figure_evaluate(figure, &record, arena);
        lacks_collect(&list, figure, &result, arena);
    }
    lacks_note(&list, arena, problems);
}
