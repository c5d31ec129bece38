/* sheets.c - one part of a job for one boat: composing it, and telling what was found (room:
 * app). */
#include "job.h"

#include "promise.h"

struct compose_input compose_input_of(const struct boat_job *boat, const struct words *words)
{
    const struct fleet *fleet = boat->job->fleet;
    const struct options *options = boat->job->options;
    return (struct compose_input){boat->boat, fleet->base, &fleet->procedures, fleet->authorities,
                                  words, fleet->languages, options->today, options->draft};
}

void sheets_compose_within(struct sheets *sheets, const struct set_limits *limits)
{
    struct boat_job *boat = sheets->boat;
    sheets->problems = problems_new(boat->arena);
    problems_about(sheets->problems, boat->key, "cards");
    promise(sheets->part.kind < boat->job->kind_count);
    sheets->set = boat->job->kinds[sheets->part.kind].compose(&sheets->input, limits, boat->arena,
                                                              sheets->problems);
}

struct sheets sheets_compose(struct boat_job *boat, struct job_part part)
{
    struct sheets sheets = {
        .boat = boat, .part = part,
        .input = compose_input_of(boat, boat->job->languages.rows[part.language])};
    sheets_compose_within(&sheets, &(struct set_limits){.figure_count = 0});
    boat->parts_made++;
    return sheets;
}

bool sheets_are_first_of_kind(const struct sheets *sheets)
{
    return sheets->part.language == 0 && sheets->part.paper == 0;
}

/* ---- which cards were asked for ---- */

bool card_named(const struct options *options, const char *key, const char *procedure_key)
{
    return options->cards.count == 0 || names_hold(&options->cards, key) ||
           names_hold(&options->cards, procedure_key);
}

bool card_wanted(const struct options *options, const struct sheet *sheet)
{
    return card_named(options, sheet->id, sheet->procedure_key);
}

void no_such_card(struct boat_job *boat, const struct names *keys, const char *name)
{
    problem_add(boat->problems, SEVERITY_USE, (struct place){0},
                names_remedy(keys, name, "cards of this boat: ", boat->arena),
                "there is no card \"%s\"", name);
}

/* False, with a problem, when none of hers is called so. */
static bool card_exists(const struct sheets *sheets, const char *name)
{
    struct names keys = {0};
    for (size_t i = 0; i < sheets->set->count; i++) {
        const struct sheet *sheet = sheets->set->sheets[i];
        if (text_equal(name, sheet->id) || text_equal(name, sheet->procedure_key))
            return true;
        names_add(&keys, sheet->id, sheets->boat->arena);
    }
    no_such_card(sheets->boat, &keys, name);
    return false;
}

static bool cards_exist(const struct sheets *sheets)
{
    const struct names *asked = &sheets->boat->job->options->cards;
    bool all = true;
    if (sheets->set->count == 0) {
        problem_add(sheets->boat->problems, SEVERITY_ERROR, (struct place){0},
                    "look at `when:` of the procedures", "no card is for this boat");
        return false;
    }
    for (size_t i = 0; i < asked->count; i++)
        all = card_exists(sheets, asked->at[i]) && all;
    return all;
}

void sheets_tell(struct sheets *sheets)
{
    problems_join(sheets->boat->problems, sheets->problems);
    problems_about(sheets->boat->problems, sheets->boat->key, "run");
    sheets->asked_exist = cards_exist(sheets);
}
