/* command_renew.c - which cards on board are to be replaced, and why; what card a code is of; and
 * printing those to be replaced (room: app). */
#include "renew.h"
#include "told.h"

#include <stdio.h>

/* ---- languages ---- */

static void language_join(struct languages *languages, const struct words **rows,
                          const struct words *words)
{
    for (size_t i = 0; i < languages->count; i++)
        if (words == NULL || rows[i] == words)
            return;
    if (words != NULL)
        rows[languages->count++] = words;
}

struct languages renew_languages(const struct renewing *renewing)
{
    const struct fleet *fleet = renewing->fleet;
    size_t most = fleet->printed.count + fleet->languages.count;
    const struct words **rows = arena_array(fleet->arena, most, sizeof *rows);
    struct languages languages = {.rows = rows};
    for (size_t i = 0; i < fleet->printed.count; i++)
        language_join(&languages, rows, fleet->printed.rows[i]);
    for (size_t i = 0; i < renewing->rows.count; i++)
        language_join(&languages, rows,
                      language_words(&fleet->languages, renewing->rows.rows[i].language));
    return languages;
}

/* ---- what hangs ---- */

static void all_judge(struct renewing *renewing)
{
    static const struct job_use use = {.last = STEP_COMPOSE, .begin = renew_begin,
                                       .sheets = renew_sheets, .end = renew_end};
    struct job job = job_of(renewing->options, renewing->fleet);
    job.languages = renew_languages(renewing);
    job_run(&job, &use, renewing);
    if (renewing->options->boats.count == 0)
        renew_gone_boats(renewing);
    if (renewing->options->json)
        renew_json_print(renewing);
}

/* As `print --card` does, each boat's cards of one language and paper at a time. */
static enum exit_status reprints_print(const struct renewing *renewing)
{
    enum exit_status worst = EXIT_GOOD;
    for (size_t i = 0; i < renewing->reprint_count; i++) {
        struct reprint *one = &renewing->reprints[i];
        struct options options = {.base = renewing->options->base, .cards = one->cards,
                                  .output = renewing->options->output,
                                  .today = renewing->options->today,
                                  .paper = choice_find(paper_words, one->paper)};
        names_add(&options.boats, one->boat, renewing->fleet->arena);
        names_add(&options.languages, one->language, renewing->fleet->arena);
        enum exit_status status = command_print(&options);
        worst = status > worst ? status : worst;
    }
    if (renewing->reprint_count == 0)
        told_lines("nothing is to be printed\n");
    return worst;
}

enum exit_status command_renew(const struct options *options)
{
    struct fleet fleet;
    struct renewing renewing = {.options = options, .fleet = &fleet};
    enum exit_status told = EXIT_GOOD, printed = EXIT_GOOD;
    bool begun = fleet_open(options, NEED_TEXTS, &fleet) &&
                 register_take(options, &fleet, &renewing.rows);
    if (begun) {
        renewing.by_boat = rows_by_boat(&renewing.rows, fleet.arena);
        if (options->codes.count > 0)
            told = renew_codes(&renewing);
        else
            all_judge(&renewing);
    }
    if (begun && options->print) {
        fflush(stdout);
        printed = reprints_print(&renewing);
    }
    told = status_worst(told, renewing.found ? EXIT_FOUND : EXIT_GOOD);
    told = status_worst(status_worst(told, printed), report_of_cards(&fleet));
    fleet_close(&fleet);
    return told;
}
