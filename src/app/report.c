/* report.c - telling what a run found, and the exit status (room: app). */
#include "app.h"

#include <stdio.h>

enum exit_status status_of(const struct problems *problems, bool deficiencies_count)
{
    if (problems_reach(problems, SEVERITY_FAILURE))
        return EXIT_SYSTEM;
    if (problems_reach(problems, SEVERITY_USE))
        return EXIT_USE;
    enum severity least = deficiencies_count ? SEVERITY_DEFICIENCY : SEVERITY_HELD;
    return problems_reach(problems, least) ? EXIT_FOUND : EXIT_GOOD;
}

static void text_print(const struct text_builder *out)
{
    if (out->length > 0)
        fwrite(out->at, 1, out->length, stderr);
}

enum exit_status report(struct fleet *fleet, bool deficiencies_count)
{
    size_t count;
    const struct problem *list = problems_sorted(fleet->problems, &count);
    struct text_builder out = text_builder_in(fleet->arena);
    for (size_t i = 0; i < count; i++)
        problem_print(&list[i], &out);
    text_print(&out);
    return status_of(fleet->problems, deficiencies_count);
}

/* ---- where cards are the point ---- */

static bool is_for_check(const struct problem *problem)
{
    const struct check *check = check_find(problem->check);
    return check != NULL && !check->family && problem->severity < SEVERITY_HELD;
}

enum exit_status report_of_cards(struct fleet *fleet)
{
    size_t count;
    const struct problem *list = problems_sorted(fleet->problems, &count);
    struct text_builder out = text_builder_in(fleet->arena);
    for (size_t i = 0; i < count; i++)
        if (!is_for_check(&list[i]))
            problem_print(&list[i], &out);
    text_print(&out);
    return status_of(fleet->problems, false);
}

enum exit_status report_of_run(struct fleet *fleet)
{
    size_t count;
    struct problems *found = problems_new(fleet->arena);
    const struct problem *list = problems_sorted(fleet->problems, &count);
    struct text_builder out = text_builder_in(fleet->arena);
    for (size_t i = 0; i < count; i++) {
        if (list[i].boat != NULL || !text_equal(list[i].check, "run"))
            continue;
        problem_print(&list[i], &out);
        problem_add(found, list[i].severity, list[i].place, NULL, "%s", list[i].what);
    }
    text_print(&out);
    return status_of(found, false);
}

/*
 * The deficiencies of one boat, or (NULL) those of the base. Notes are not
 * counted here: those of the figures are known to `check` alone.
 */
static void left_count(const struct problem *list, size_t count, const char *boat,
                       const char *label)
{
    size_t found = 0;
    for (size_t i = 0; i < count; i++)
        if (list[i].severity == SEVERITY_DEFICIENCY && is_for_check(&list[i]) &&
            (boat == NULL ? list[i].boat == NULL : text_equal(list[i].boat, boat)))
            found++;
    if (found > 0)
        printf("%s: `maydeck check` tells of %zu deficienc%s\n", label, found,
               found == 1 ? "y" : "ies");
}

void report_left_for_check(struct fleet *fleet)
{
    size_t count;
    const struct problem *list = problems_sorted(fleet->problems, &count);
    left_count(list, count, NULL, "base.yaml");
    for (size_t i = 0; i < fleet->boat_count; i++)
        left_count(list, count, fleet->boat_keys[i], fleet->boat_keys[i]);
}
