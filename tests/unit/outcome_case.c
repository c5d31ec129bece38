/* outcome_case.c - all that follows from a boat's record. */
#include "outcome_case.h"

#include <stdio.h>
#include <string.h>

#include "rules.h"
#include "text.h"

static struct problems *problems_begun(const struct card_case *card_case, const char *check)
{
    struct problems *problems = problems_new(card_case->arena);
    problems_about(problems, "tern", check);
    return problems;
}

static void boat_judged(const struct card_case *card_case, const struct boat *boat,
                        struct outcome *outcome)
{
    struct rules_input rules = {.boat = boat, .base = card_case->base, .today = card_case->today,
                                .from = card_case->today, .to = card_case->today};
    struct compose_input input = {
        .boat = boat, .base = card_case->base, .procedures = &card_case->procedures,
        .authorities = card_case->authorities, .words = card_case->words,
        .today = card_case->today};
    outcome->sound = rules_check(&rules, card_case->arena, card_case->problems) && outcome->sound;
    if (!outcome->sound)
        return;
    const struct sheet_set *set = compose_set(&input, card_case->arena, card_case->problems);
    safety_plan_notes(boat, card_case->problems);
    figure_notes(&input, set, card_case->arena, card_case->problems);
    outcome->said = said_by(set->sheets, set->count, card_case->arena);
}

struct outcome outcome_of(struct card_case *card_case, const char *text)
{
    struct outcome outcome = {.sound = false};
    card_case->problems = problems_begun(card_case, "record");
    const struct source *source = source_from(card_case->arena, "tern.yaml", text, strlen(text));
    const struct boat *boat = boat_read(source, "tern", card_case->arena, card_case->problems,
                                        &outcome.sound);
    if (boat != NULL)
        boat_judged(card_case, boat, &outcome);
    outcome.problems = problems_sorted(card_case->problems, &outcome.count);
    return outcome;
}

static bool tells_same(const struct outcome *outcome, const struct problem *problem)
{
    for (size_t i = 0; i < outcome->count; i++)
        if (outcome->problems[i].severity == problem->severity &&
            text_equal(outcome->problems[i].what, problem->what))
            return true;
    return false;
}

static bool speaks_of(const struct problem *problem, const char *name)
{
    return name != NULL &&
           (strstr(problem->what, name) != NULL ||
            (problem->remedy != NULL && strstr(problem->remedy, name) != NULL));
}

bool outcome_tells(const struct outcome *outcome, const struct outcome *other,
                   enum severity least, const char *const names[3])
{
    for (size_t i = 0; i < outcome->count; i++) {
        const struct problem *problem = &outcome->problems[i];
        if (problem->severity >= least && !tells_same(other, problem) &&
            (speaks_of(problem, names[0]) || speaks_of(problem, names[1]) ||
             speaks_of(problem, names[2])))
            return true;
    }
    return false;
}

void outcome_print_new(const struct outcome *outcome, const struct outcome *other)
{
    for (size_t i = 0; i < outcome->count; i++)
        if (!tells_same(other, &outcome->problems[i]))
            printf("    %s: %s\n", severity_word(outcome->problems[i].severity),
                   outcome->problems[i].what);
}
