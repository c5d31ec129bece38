/* at_once.c - runs that are killed at a moment, their workers too; two and four runs at once into
 * one folder on a slow disk, with kills. */
#define _GNU_SOURCE
#include <limits.h>
#include <signal.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

#include "plan.h"

#define RUNS_MOST 4
#define KILLED (128 + SIGKILL)
#define TRIAL_MEMORY ((size_t)2 * 1024 * 1024 * 1024)

static const char *const killed[] = {"print-1", "print-2", "print-register-1", "print-register-2",
                                     "survey", "renew-print", "hang", "take", "start", "table"};
enum { KILLED_COUNT = sizeof killed / sizeof *killed };

/* ---- kills ---- */

/* About how long it takes here. */
static long length_us(const struct plan *plan, const struct subject *subject)
{
    static const struct trouble none;
    struct timespec begun, ended;
    struct arena *arena = arena_new(TRIAL_MEMORY);

    tree_lay(plan->bench->work, &plan->bench->before, arena);
    clock_gettime(CLOCK_MONOTONIC, &begun);
    run_whole(plan->bench, subject->words, &none, arena);
    clock_gettime(CLOCK_MONOTONIC, &ended);
    arena_free(arena);
    return (ended.tv_sec - begun.tv_sec) * 1000000 + (ended.tv_nsec - begun.tv_nsec) / 1000 + 1;
}

/* All: two hundred in all. */
void kills_try(struct plan *plan)
{
    long each = plan->each == LONG_MAX ? 200 / KILLED_COUNT : plan->each;

    for (int i = 0; i < KILLED_COUNT; i++) {
        struct subject *subject = subject_named(killed[i]);
        uint64_t state = draw_begin(plan, text_format(plan->bench->arena, "%s kill", killed[i]));
        if (!subject_wanted(plan, subject))
            continue;
        subject_know(plan->bench, subject);
        long length = plan->only == NULL ? length_us(plan, subject) : 1000000;
        for (long k = 0; k < each; k++) {
            long part = (long)draw_below(&state, 1000);
            struct trouble trouble = {.kill_us = length * part / 1000 + 1};
            trial_do(plan, "killed at a moment", subject,
                     text_format(plan->bench->arena, "%s killed after %ld thousandths",
                                 subject->name, part), &trouble);
        }
    }
}

/* ---- at once ---- */

/* A run that ends well has printed all; one that another keeps out says so. */
static const char *ends_wrong(const struct subject *subject, const struct ended *ended,
                              int count, bool kill_first, struct arena *arena)
{
    int good = 0;

    for (int i = 0; i < count; i++) {
        if (ended[i].hung)
            return "one did not end";
        good += ended[i].status == subject->status ? 1 : 0;
        if (ended[i].status == subject->status || (i == 0 && kill_first &&
                                                   ended[i].status == KILLED))
            continue;
        if (ended[i].status != 3 || strstr(ended[i].err, "another print is at work") == NULL)
            return text_format(arena, "one ended with %d: %s", ended[i].status, ended[i].err);
    }
    return good == 0 && !kill_first ? "none ended well" : NULL;
}

static const char *folder_whole(const struct plan *plan, const struct subject *subject,
                                struct arena *arena)
{
    struct tree now = tree_read(plan->bench->work, arena);
    const char *differs = tree_differs(&now, &subject->after);

    return differs == NULL ? NULL
                           : text_format(arena, "one ended well, and %s is another", differs);
}

static const char *together_wrong(const struct plan *plan, const struct subject *subject,
                                  int count, long kill_us, struct arena *arena)
{
    struct trouble first = {.order = {.slow_ms = 1}, .kill_us = kill_us}, other = first;
    struct ended ended[RUNS_MOST];
    int pids[RUNS_MOST];
    bool whole = false;

    other.kill_us = 0;
    tree_lay(plan->bench->work, &plan->bench->before, arena);
    memset(plan->bench->page, 0, sizeof *plan->bench->page);
    plan->bench->page->order = first.order;
    for (int i = 0; i < count; i++)
        pids[i] = run_begin(plan->bench, subject->words, &first, i);
    for (int i = 0; i < count; i++)
        ended[i] = run_end(plan->bench, pids[i], i == 0 ? &first : &other, i, arena);
    bool gone = runs_gone();
    plan->bench->page->order = (struct fault_order){0};
    if (!gone)
        return "what one forked did not end";
    const char *wrong = ends_wrong(subject, ended, count, kill_us > 0, arena);
    for (int i = 0; i < count; i++)
        whole = whole || ended[i].status == subject->status;
    if (wrong == NULL && whole && kill_us == 0)
        wrong = folder_whole(plan, subject, arena);
    return wrong != NULL ? wrong : folder_wrong(plan->bench, subject, kill_us > 0, arena);
}

static void together_try(struct plan *plan, struct subject *subject, int count, long number)
{
    const char *row = count == 2 ? "two at once" : "four at once";
    const char *name = text_format(plan->bench->arena, "%s %s %ld", subject->name, row, number);
    uint64_t state = draw_begin(plan, name);

    if (!trial_wanted(plan, name))
        return;
    struct arena *arena = arena_new(TRIAL_MEMORY);
    long kill_us = number % 2 == 0 ? 0 : (long)draw_below(&state, 600000) + 1;
    const char *wrong = together_wrong(plan, subject, count, kill_us, arena);
    outcome_note(plan, row, name, wrong == NULL ? OUTCOME_TOLD : OUTCOME_LOST, wrong);
    arena_free(arena);
}

/* All: a hundred pairs and as many fours. */
void at_once_try(struct plan *plan)
{
    static const char *const together[] = {"print-1", "print-2", "print-register-1",
                                           "print-register-2", "survey"};
    long each = plan->each == LONG_MAX ? 20 : plan->each;

    for (size_t i = 0; i < sizeof together / sizeof *together; i++) {
        struct subject *subject = subject_named(together[i]);
        if (!subject_wanted(plan, subject))
            continue;
        subject_know(plan->bench, subject);
        for (long k = 0; k < each; k++) {
            together_try(plan, subject, 2, k);
            together_try(plan, subject, 4, k);
        }
    }
}
