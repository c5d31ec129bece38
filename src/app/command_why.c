/* command_why.c - the reasons of cards or figures on standard output (room: app).
 * Knows no reason itself: compose tells them. */
#include "app.h"

#include <stdio.h>

#include "reasons.h"

static void cards_list(const struct boat_work *work)
{
    printf("%s: %zu cards. Name one with --card, or take --all:\n", work->key, work->set->count);
    for (size_t i = 0; i < work->set->count; i++)
        printf("  %-24s %s\n", work->set->cards[i]->key, work->set->cards[i]->name);
}

static void reasons_print(const struct options *options, const struct fleet *fleet,
                          const struct boat_work *work)
{
    struct compose_input input = compose_input_of(options, fleet, work->boat);
    struct text_builder out = text_builder_in(fleet->arena);
    size_t count = 0;
    for (size_t i = 0; i < work->set->count; i++) {
        if (!card_wanted(options, work->set->cards[i]))
            continue;
        text_add(&out, count++ == 0 ? "" : "\n\n");
        card_reasons(&input, work->set, work->set->cards[i], &out);
    }
    fwrite(out.at, 1, out.length, stdout);
}

static void figures_print(const struct options *options, const struct fleet *fleet,
                          const struct boat_work *work)
{
    struct compose_input input = compose_input_of(options, fleet, work->boat);
    struct text_builder out = text_builder_in(fleet->arena);
    const struct figure *figure;
    size_t count = 0;
    for (size_t i = 0; (figure = figure_at(i)) != NULL; i++) {
        if (!text_equal(options->figure, "all") && !text_equal(options->figure, figure->id))
            continue;
        text_add(&out, count++ == 0 ? "" : "\n");
        figure_reasons(&input, work->set, figure, &out);
    }
    fwrite(out.at, 1, out.length, stdout);
}

/* True when something was printed. */
static bool boat_tell(const struct options *options, const struct fleet *fleet, size_t index,
                      bool after_another)
{
    struct boat_work work = boat_work(options, fleet, index);
    if (work.set != NULL && !work.cards_exist)
        return after_another;
    fputs(after_another ? "\n\n" : "", stdout);
    if (work.set == NULL)
        printf("%s: no cards: errors in her file or in the base's\n", work.key);
    else if (options->figure != NULL)
        figures_print(options, fleet, &work);
    else if (options->cards.count == 0 && !options->all && work.set->count > 1)
        cards_list(&work);
    else
        reasons_print(options, fleet, &work);
    return true;
}

/* False, with a problem, when there is no such figure. */
static bool figure_is_known(const struct options *options, const struct fleet *fleet)
{
    const char **ids = arena_array(fleet->arena, figure_count() + 1, sizeof *ids);
    struct text_builder list = text_builder_in(fleet->arena);
    text_add(&list, "figures: all");
    if (options->figure == NULL || text_equal(options->figure, "all") ||
        figure_find(options->figure) != NULL)
        return true;
    for (size_t i = 0; i < figure_count(); i++) {
        ids[i] = figure_at(i)->id;
        text_add_format(&list, ", %s", ids[i]);
    }
    const char *nearest = text_nearest(options->figure, ids, figure_count());
    problem_add(fleet->problems, SEVERITY_USE, (struct place){0},
                nearest == NULL ? list.at
                                : text_format(fleet->arena, "did you mean \"%s\"?", nearest),
                "there is no figure \"%s\"", options->figure);
    return false;
}

enum exit_status command_why(const struct options *options)
{
    struct fleet fleet;
    bool open = fleet_open(options, &fleet) && figure_is_known(options, &fleet);
    bool printed = false;
    for (size_t i = 0; open && i < fleet.boat_count; i++)
        printed = boat_tell(options, &fleet, i, printed);
    enum exit_status status = report_of_cards(&fleet);
    fleet_close(&fleet);
    return status;
}
