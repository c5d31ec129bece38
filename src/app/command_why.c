/* command_why.c - the reasons of cards or figures on standard output (room: app).
 * Knows no reason itself: the room explain tells them. */
#include "told.h"
#include "why_json.h"

#include <stdio.h>

#include "sign_off_command.h"

#include "reasons.h"

/* The run, and whether a boat was told of already. */
struct telling {
    const struct options *options;
    bool begun;
    struct why_gathering gathering;    /* with --json */
};

static void next_begin(struct telling *telling)
{
    fputs(telling->begun ? "\n\n" : "", stdout);
    telling->begun = true;
}

static void cards_list(const struct sheets *sheets)
{
    const struct sheet_set *set = sheets->set;
    told_lines("%s: %zu cards. Name one with --card, or take --all:\n", sheets->boat->key,
               set->count);
    for (size_t i = 0; i < set->count; i++)
        told_lines("  %-24s %s\n", set->sheets[i]->id, set->sheets[i]->name);
}

static void reasons_print(const struct options *options, const struct sheets *sheets)
{
    const struct sheet_set *set = sheets->set;
    struct text_builder out = text_builder_in(sheets->boat->arena);
    size_t count = 0;
    for (size_t i = 0; i < set->count; i++) {
        if (!card_wanted(options, set->sheets[i]))
            continue;
        text_add(&out, count++ == 0 ? "" : "\n\n");
        card_reasons(&sheets->input, set, set->sheets[i], &out);
    }
    told_print(&out);
}

static bool figure_asked(const struct options *options, const struct figure *figure)
{
    return options->figure != NULL && (text_equal(options->figure, "all") ||
                                       text_equal(options->figure, figure->id));
}

static void figures_print(const struct options *options, const struct sheets *sheets)
{
    struct text_builder out = text_builder_in(sheets->boat->arena);
    const struct figure *figure;
    size_t count = 0;
    for (size_t i = 0; (figure = figure_at(i)) != NULL; i++) {
        if (!figure_asked(options, figure))
            continue;
        text_add(&out, count++ == 0 ? "" : "\n");
        figure_reasons(&sheets->input, sheets->set, figure, &out);
    }
    told_print(&out);
}

/* What the text tells, as objects. Figures are the same in each language. */
static void sheets_gather(struct telling *telling, const struct sheets *sheets)
{
    const struct options *options = telling->options;
    const struct sheet_set *set = sheets->set;
    bool chosen = options->cards.count > 0 || options->all || set->count == 1;
    const struct figure *figure;
    for (size_t i = 0; options->figure == NULL && i < set->count; i++)
        if (card_wanted(options, set->sheets[i]))
            why_card_add(&telling->gathering, sheets, set->sheets[i],
                         chosen ? WHY_EXPLAINED : WHY_NAMED);
    for (size_t i = 0; sheets_are_first_of_kind(sheets) && (figure = figure_at(i)) != NULL; i++)
        if (figure_asked(options, figure))
            why_figure_add(&telling->gathering, sheets, figure);
}

static void sheets_explain(void *run, struct sheets *sheets)
{
    struct telling *telling = run;
    const struct options *options = telling->options;
    if (!sheets->asked_exist)
        return;
    if (options->json) {
        sheets_gather(telling, sheets);
        return;
    }
    next_begin(telling);
    if (options->figure != NULL)
        figures_print(options, sheets);
    else if (options->cards.count == 0 && !options->all && sheets->set->count > 1)
        cards_list(sheets);
    else
        reasons_print(options, sheets);
}

static void boat_begun_why(void *run, struct boat_job *boat)
{
    struct telling *telling = run;
    why_boat_add(&telling->gathering, boat->key);
}

static void boat_end(void *run, struct boat_job *boat)
{
    struct telling *telling = run;
    if (boat->parts_made > 0)
        why_boat_composed(&telling->gathering);
    if (boat->parts_made > 0 || telling->options->json)
        return;
    next_begin(run);
    told_lines("%s: no cards: errors in her file or in the base's\n", boat->key);
}

/* False, with a problem, when there is no such figure. */
static bool figure_is_known(const struct options *options, const struct fleet *fleet)
{
    struct names ids = {0};
    if (options->figure == NULL || text_equal(options->figure, "all") ||
        figure_find(options->figure) != NULL)
        return true;
    names_add(&ids, "all", fleet->arena);
    for (size_t i = 0; i < figure_count(); i++)
        names_add(&ids, figure_at(i)->id, fleet->arena);
    problem_add(fleet->problems, SEVERITY_USE, (struct place){0},
                names_remedy(&ids, options->figure, "figures: ", fleet->arena),
                "there is no figure \"%s\"", options->figure);
    return false;
}

/* No boat has any of the cards that were asked for. */
static bool is_refused(const struct telling *telling, const struct fleet *fleet)
{
    return status_of(fleet_problems(fleet), SEVERITY_HELD) == EXIT_USE &&
           why_told_nothing(&telling->gathering);
}

enum exit_status command_why(const struct options *options)
{
    static const struct job_use use = {.last = STEP_COMPOSE, .begin = boat_begun_why,
                                       .sheets = sheets_explain, .end = boat_end};
    struct telling telling = {.options = options};
    struct fleet fleet;
    if (options->sign_off)
        return why_sign_off(options);
    if (fleet_open(options, NEED_TEXTS, &fleet) && figure_is_known(options, &fleet)) {
        struct job job = job_of(options, &fleet);
        telling.gathering.arena = fleet.arena;
        job_run(&job, &use, &telling);
        if (options->json && !is_refused(&telling, &fleet))
            why_json_print(options, &telling.gathering);
    }
    enum exit_status status = report_of_cards(&fleet);
    fleet_close(&fleet);
    return status;
}
