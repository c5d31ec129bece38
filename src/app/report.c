/* report.c - telling what a run found, and the exit status (room: app). */
#include "fleet.h"
#include "told.h"


enum exit_status status_of(const struct problems *problems, enum severity least)
{
    if (problems_reach(problems, SEVERITY_FAILURE))
        return EXIT_SYSTEM;
    if (problems_reach(problems, SEVERITY_USE))
        return EXIT_USE;
    return problems_reach(problems, least) ? EXIT_FOUND : EXIT_GOOD;
}

struct problems *fleet_problems_of_no_boat(const struct fleet *fleet)
{
    struct problems *all = problems_new(fleet->arena);
    problems_join(all, fleet->problems);
    problems_join(all, fleet->base_problems);
    return all;
}

struct problems *fleet_problems(const struct fleet *fleet)
{
    struct problems *all = fleet_problems_of_no_boat(fleet);
    for (size_t i = 0; i < fleet->boat_count; i++)
        problems_join(all, fleet->boats[i].problems);
    return all;
}

static bool at_one_place(const struct problem *a, const struct problem *b)
{
    return a->place.source == b->place.source && a->place.line == b->place.line &&
           a->place.column == b->place.column;
}

/* Was it said of another boat? What is in her model is at one place for all her sisters. */
static bool told_before(const struct problem *sorted, size_t index)
{
    for (size_t i = index; i-- > 0 && at_one_place(&sorted[i], &sorted[index]);)
        if (problem_says_same(&sorted[i], &sorted[index]))
            return true;
    return false;
}

/* Those that the function takes. */
static void problems_print(const struct problems *problems,
                           bool (*takes)(const struct problem *problem), struct arena *arena)
{
    size_t count;
    const struct problem *list = problems_sorted(problems, &count);
    struct text_builder out = text_builder_in(arena);
    for (size_t i = 0; i < count; i++)
        if (takes(&list[i]) && !told_before(list, i))
            problem_print(&list[i], &out);
    if (out.length > 0)
        told_refusal(out.at);
}

static bool is_any(const struct problem *problem)
{
    return problem != NULL;
}

static bool is_refusal(const struct problem *problem)
{
    return problem->severity >= SEVERITY_USE;
}

void report_refusals(const struct fleet *fleet)
{
    problems_print(fleet_problems(fleet), is_refusal, fleet->arena);
}

enum exit_status report(const struct fleet *fleet, enum severity least)
{
    struct problems *all = fleet_problems(fleet);
    problems_print(all, is_any, fleet->arena);
    return status_of(all, least);
}

/* ---- where cards are the point ---- */

static bool is_for_check(const struct problem *problem)
{
    const struct check *check = check_find(problem->check);
    return check != NULL && !check->family && problem->severity < SEVERITY_HELD;
}

bool is_told_with_cards(const struct problem *problem)
{
    return !is_for_check(problem);
}

enum exit_status report_of_cards(const struct fleet *fleet)
{
    struct problems *all = fleet_problems(fleet);
    problems_print(all, is_told_with_cards, fleet->arena);
    return status_of(all, SEVERITY_HELD);
}

enum exit_status report_of_run_and_base(const struct fleet *fleet)
{
    struct problems *all = fleet_problems_of_no_boat(fleet);
    problems_print(all, is_told_with_cards, fleet->arena);
    return status_of(all, SEVERITY_HELD);
}

enum exit_status report_late(const struct fleet *fleet, struct problems *late)
{
    problems_print(late, is_any, fleet->arena);
    return status_of(late, SEVERITY_HELD);
}

enum exit_status status_worst(enum exit_status a, enum exit_status b)
{
    return a > b ? a : b;
}

enum exit_status report_of_run(const struct fleet *fleet)
{
    problems_print(fleet->problems, is_any, fleet->arena);
    return status_of(fleet->problems, SEVERITY_HELD);
}

/* Notes are not counted: those of the figures are known to `check` alone. */
size_t deficiencies_for_check(const struct problems *problems)
{
    size_t count, found = 0;
    const struct problem *list = problems_sorted(problems, &count);
    for (size_t i = 0; i < count; i++)
        if (list[i].severity == SEVERITY_DEFICIENCY && is_for_check(&list[i]))
            found++;
    return found;
}

void deficiencies_tell(const char *label, size_t count)
{
    if (count > 0)
        told_lines("%s: `maydeck check` tells of %zu deficienc%s\n", label, count,
                   count == 1 ? "y" : "ies");
}

void report_left_for_check(const struct fleet *fleet)
{
    deficiencies_tell("base.yaml", deficiencies_for_check(fleet->base_problems));
    for (size_t i = 0; i < fleet->boat_count; i++)
        deficiencies_tell(fleet->boats[i].key, deficiencies_for_check(fleet->boats[i].problems));
}
