/* command_why.c - each card's reasons on standard output (room: app). Knows no
 * reason itself: compose tells them. */
#include "app.h"

#include <stdio.h>

#include "reasons.h"

static void cards_list(const struct boat_work *work)
{
    printf("%s: %zu cards. Name one with --card, or take --all:\n", work->key, work->set->count);
    for (size_t i = 0; i < work->set->count; i++)
        printf("  %-24s %s\n", work->set->cards[i]->key, work->set->cards[i]->title);
}

static void reasons_print(const struct options *options, const struct fleet *fleet,
                          const struct boat_work *work)
{
    struct compose_input input = {
        .boat = work->boat, .base = fleet->base, .procedures = &fleet->procedures,
        .authorities = fleet->authorities, .words = fleet->words, .today = options->today,
        .draft = options->draft};
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

/* True when something was printed. */
static bool boat_tell(const struct options *options, const struct fleet *fleet, size_t index,
                      bool after_another)
{
    struct boat_work work = boat_work(options, fleet, index);
    if (problems_reach(fleet->problems, SEVERITY_USE))
        return after_another;
    fputs(after_another ? "\n\n" : "", stdout);
    if (work.set == NULL)
        printf("%s: no cards: errors in her file or in the base's\n", work.key);
    else if (options->card == NULL && !options->all && work.set->count > 1)
        cards_list(&work);
    else
        reasons_print(options, fleet, &work);
    return true;
}

/* False, with a problem, when one card and all of them are asked for. */
static bool choice_is_clear(const struct options *options, const struct fleet *fleet)
{
    if (options->card == NULL || !options->all)
        return true;
    problem_add(fleet->problems, SEVERITY_USE, (struct place){0},
                "leave one of the two out", "--card names one card and --all asks for every one");
    return false;
}

enum exit_status command_why(const struct options *options)
{
    struct fleet fleet;
    bool open = fleet_open(options, &fleet) && choice_is_clear(options, &fleet);
    bool printed = false;
    for (size_t i = 0; open && i < fleet.boat_count; i++)
        printed = boat_tell(options, &fleet, i, printed);
    enum exit_status status = report_of_cards(&fleet);
    fleet_close(&fleet);
    return status;
}
