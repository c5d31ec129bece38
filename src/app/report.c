/* report.c - telling what a run found, and the exit status (room: app). */
#include "app.h"

#include <stdio.h>

static enum exit_status status_of(const struct problems *problems, bool deficiencies_count)
{
    if (problems_reach(problems, SEVERITY_FAILURE))
        return EXIT_SYSTEM;
    if (problems_reach(problems, SEVERITY_USE))
        return EXIT_USE;
    enum severity least = deficiencies_count ? SEVERITY_DEFICIENCY : SEVERITY_HELD;
    return problems_reach(problems, least) ? EXIT_FOUND : EXIT_GOOD;
}

enum exit_status report(struct fleet *fleet, bool deficiencies_count)
{
    size_t count;
    const struct problem *list = problems_sorted(fleet->problems, &count);
    struct text_builder out = text_builder_in(fleet->arena);
    for (size_t i = 0; i < count; i++)
        problem_print(&list[i], &out);
    if (out.length > 0)
        fwrite(out.at, 1, out.length, stderr);
    return status_of(fleet->problems, deficiencies_count);
}
