/* plan.c - the commands that are tried, how trials are drawn and counted. */
#include <limits.h>
#include <stdio.h>
#include <string.h>

#include "plan.h"

#define TRIAL_MEMORY ((size_t)2 * 1024 * 1024 * 1024)
#define DAY " --date 2026-11-20 "

/* `base` has a register, `plain` has none; `out` holds older prints of all. */
struct subject subjects[] = {
    {.name = "print-1", .words = "print plain -j 1 --card flooding" DAY "-o out"},
    {.name = "print-2", .words = "print plain -j 2 --card flooding" DAY "-o out"},
    {.name = "print-register-1", .words = "print base -j 1 --card flooding" DAY "-o out"},
    {.name = "print-register-2", .words = "print base -j 2 --card flooding" DAY "-o out"},
    {.name = "print-new", .words = "print plain -j 2 --card flooding" DAY "-o new/folder"},
    {.name = "print-list", .words = "print base --list -j 2 --card flooding" DAY},
    {.name = "stickers", .words = "print plain --stickers" DAY "-o out"},
    {.name = "check", .words = "check base --boat cicely --card flooding" DAY},
    {.name = "brief",
     .words = "brief base --people 4 --from 2026-11-21 --to 2026-11-28" DAY "-o out"},
    {.name = "survey", .words = "survey base --boat cicely" DAY "-o out"},
    {.name = "start", .words = "start fresh --boat ash,birch",
     .again = "start fresh;start fresh --register;start fresh --boat ash;start fresh --boat birch"},
    {.name = "start-boats", .words = "start base --boat ash,birch",
     .again = "start base --boat ash;start base --boat birch"},
    {.name = "start-register", .words = "start plain --register",
     .again = "start plain --register"},
    {.name = "start-schemas", .words = "start plain --schemas",
     .again = "start plain --schemas"},
    {.name = "hang", .words = "hang base --boat dittany --card flooding --place table --by AB" DAY},
    {.name = "renew", .words = "renew base" DAY},
    {.name = "renew-print", .words = "renew base --print" DAY "-o out"},
    {.name = "due", .words = "due base --ics" DAY "-o due.ics"},
    {.name = "table", .words = "table base -o other.csv"},
    {.name = "take", .words = "take base table.csv --write" DAY},
    {.name = "verify", .words = "verify out --base plain"},
    {.name = "call", .words = "call plain --boat cicely --position 43.4725,16.435"},
    {.name = "list", .words = "list items"},
    {.name = "manual", .words = "manual files"},
    {.name = "completion", .words = "completion boats base"},
    {.name = "schema", .words = "schema boat"},
    {.name = "why", .words = "why plain --boat cicely --card flooding" DAY},
};
const int subject_count = (int)(sizeof subjects / sizeof *subjects);

bool subject_wanted(const struct plan *plan, const struct subject *subject)
{
    size_t length = strlen(subject->name);

    if (plan->only != NULL && (strncmp(plan->only, subject->name, length) != 0 ||
                               plan->only[length] != ' '))
        return false;
    for (int i = 0; i < plan->command_count; i++)
        if (strcmp(plan->commands[i], subject->name) == 0)
            return true;
    return plan->command_count == 0;
}

struct subject *subject_named(const char *name)
{
    for (int i = 0; i < subject_count; i++)
        if (strcmp(subjects[i].name, name) == 0)
            return &subjects[i];
    return NULL;
}

/* ---- chance ---- */

/* Splitmix64: the same seed draws the same trials everywhere. */
static uint64_t draw_next(uint64_t *state)
{
    uint64_t value = *state += 0x9e3779b97f4a7c15;

    value = (value ^ (value >> 30)) * 0xbf58476d1ce4e5b9;
    value = (value ^ (value >> 27)) * 0x94d049bb133111eb;
    return value ^ (value >> 31);
}

uint64_t draw_below(uint64_t *state, uint64_t below)
{
    return draw_next(state) % below;
}

uint64_t draw_begin(const struct plan *plan, const char *name)
{
    uint64_t state = plan->seed;

    for (const char *at = name; *at != '\0'; at++)
        state = (state ^ (unsigned char)*at) * 0x100000001b3;
    return state;
}

/* ---- counting ---- */

bool trial_wanted(const struct plan *plan, const char *name)
{
    return plan->only == NULL || strcmp(plan->only, name) == 0;
}

static struct plan_row *row_of(struct plan *plan, const char *name)
{
    for (int i = 0; i < plan->row_count; i++)
        if (strcmp(plan->rows[i].name, name) == 0)
            return &plan->rows[i];
    plan->rows[plan->row_count] = (struct plan_row){.name = name};
    return &plan->rows[plan->row_count++];
}

void outcome_note(struct plan *plan, const char *row, const char *name, enum outcome outcome,
                  const char *wrong)
{
    row_of(plan, row)->tried[outcome]++;
    if (outcome == OUTCOME_LOST)
        printf("LOST  %s\n      again: TORTURE_ONLY='%s' make torture\n      %s\n", name, name,
               wrong);
}

void trial_do(struct plan *plan, const char *row, struct subject *subject, const char *name,
              const struct trouble *trouble)
{
    const char *wrong = NULL;

    if (!trial_wanted(plan, name))
        return;
    struct arena *arena = arena_new(TRIAL_MEMORY);
    enum outcome outcome = trial_run(plan->bench, subject, trouble, &wrong, arena);
    outcome_note(plan, row, name, outcome, wrong);
    arena_free(arena);
}

/* ---- telling ---- */

static long row_tried(const struct plan_row *row)
{
    return row->tried[OUTCOME_WHOLE] + row->tried[OUTCOME_TOLD] + row->tried[OUTCOME_LOST];
}

static void row_tell(const struct plan_row *row)
{
    printf("%-22s %8ld %8ld %8ld %8ld %8ld\n", row->name, row_tried(row), row->tried[OUTCOME_WHOLE],
           row->tried[OUTCOME_TOLD], row->tried[OUTCOME_WHOLE] + row->tried[OUTCOME_TOLD],
           row->tried[OUTCOME_LOST]);
}

bool table_tell(const struct plan *plan)
{
    struct plan_row all = {.name = "all"};

    printf("%-22s %8s %8s %8s %8s %8s\n", "fault", "tried", "whole", "told", "survived", "lost");
    for (int i = 0; i < plan->row_count; i++) {
        row_tell(&plan->rows[i]);
        for (int k = 0; k < OUTCOME_COUNT; k++)
            all.tried[k] += plan->rows[i].tried[k];
    }
    row_tell(&all);
    return all.tried[OUTCOME_LOST] > 0 || row_tried(&all) == 0;
}
