/* faults.c - every call of every command fails, once and from then on; every command is killed
 * and stopped at a call. */
#include <errno.h>
#include <limits.h>
#include <stdio.h>
#include <string.h>

#include "plan.h"

#define CALL_ROW(name, errors) {#name, errors},

static const struct call_row {
    const char *name, *errors;
} call_rows[] = {CALL_LIST(CALL_ROW)};

static const struct fault_name {
    const char *name;
    int number;
} fault_names[] = {
    {"EACCES", EACCES}, {"EAGAIN", EAGAIN}, {"EBADF", EBADF}, {"EDQUOT", EDQUOT},
    {"EFBIG", EFBIG}, {"EINTR", EINTR}, {"EIO", EIO}, {"EMFILE", EMFILE}, {"ENFILE", ENFILE},
    {"ENOENT", ENOENT}, {"ENOLCK", ENOLCK}, {"ENOMEM", ENOMEM}, {"ENOSPC", ENOSPC},
    {"ENOSYS", ENOSYS}, {"EOPNOTSUPP", EOPNOTSUPP}, {"EPERM", EPERM}, {"EPIPE", EPIPE},
    {"EROFS", EROFS}, {"EWOULDBLOCK", EWOULDBLOCK}, {"SHORT", FAULT_SHORT},
    {"KILL", FAULT_KILL}, {"TERM", FAULT_TERM},
};

static int fault_number(const char *name, size_t length)
{
    for (size_t i = 0; i < sizeof fault_names / sizeof *fault_names; i++)
        if (strlen(fault_names[i].name) == length &&
            memcmp(fault_names[i].name, name, length) == 0)
            return fault_names[i].number;
    return 0;
}

/* A call that is interrupted for ever is begun for ever; a process is killed once. */
static bool may_stay(int error)
{
    return error != EINTR && error != FAULT_KILL && error != FAULT_TERM;
}

/* The trials of one call of one command by one caller. */
struct stratum {
    struct subject *subject;
    enum call call;
    enum caller caller;
    long points, errors;        /* times it is made, errors it can have */
    const char *prefix;
};

static const char *error_at(const struct stratum *stratum, long index, size_t *length)
{
    const char *at = call_rows[stratum->call].errors;

    for (; index > 0; index--)
        at += strcspn(at, " ") + 1;
    *length = strcspn(at, " ");
    return at;
}

/* Of all: point by error by once or from then on. */
static void one_try(struct plan *plan, const struct stratum *stratum, long index,
                    struct arena *arena)
{
    size_t length;
    const char *error = error_at(stratum, index / 2 % stratum->errors, &length);
    struct trouble trouble = {.order = {.call = stratum->call, .caller = stratum->caller,
                                        .at = index / 2 / stratum->errors + 1,
                                        .error = fault_number(error, length),
                                        .stays = (int)(index % 2)}};
    if (trouble.order.stays && !may_stay(trouble.order.error))
        return;
    const char *row = stratum->call != CALL_any             ? call_rows[stratum->call].name
                      : trouble.order.error == FAULT_KILL ? "killed at a call"
                                                          : "stopped at a call";
    trial_do(plan, row, stratum->subject,
             text_format(arena, "%s %.*s %ld%s", stratum->prefix, (int)length, error,
                         trouble.order.at, trouble.order.stays ? " stays" : ""),
             &trouble);
}

/* Killed or short of memory it can be anywhere: these have more points than all others. */
static long wanted_of(const struct plan *plan, const struct stratum *stratum)
{
    bool many = stratum->call == CALL_any || stratum->call == CALL_malloc;

    return plan->each == LONG_MAX || !many ? plan->each : 2 * plan->each;
}

static void stratum_try(struct plan *plan, const struct stratum *stratum)
{
    long all = stratum->points * stratum->errors * 2;
    long wanted = wanted_of(plan, stratum);
    uint64_t state = draw_begin(plan, stratum->prefix);
    struct arena *arena = arena_new((size_t)1024 * 1024 * 1024);

    if (plan->only != NULL && strncmp(plan->only, stratum->prefix, strlen(stratum->prefix)) != 0)
        all = 0;
    if (plan->only != NULL || wanted >= all)
        for (long i = 0; i < all; i++)
            one_try(plan, stratum, i, arena);
    else
        for (long i = 0; i < wanted; i++)
            one_try(plan, stratum, (long)draw_below(&state, (uint64_t)all), arena);
    arena_free(arena);
}

static long words_count(const char *words)
{
    long count = 1;

    for (const char *at = words; *at != '\0'; at++)
        count += *at == ' ' ? 1 : 0;
    return count;
}

static void subject_try(struct plan *plan, struct subject *subject)
{
    static const char *const callers[] = {"", "worker "};

    subject_know(plan->bench, subject);
    for (int caller = 0; caller < CALLER_COUNT; caller++)
        for (int call = 0; call < CALL_COUNT; call++) {
            if (subject->seen[caller][call] == 0)
                continue;
            stratum_try(plan, &(struct stratum){
                .subject = subject, .call = (enum call)call, .caller = (enum caller)caller,
                .points = subject->seen[caller][call],
                .errors = words_count(call_rows[call].errors),
                .prefix = text_format(plan->bench->arena, "%s %s%s", subject->name,
                                      callers[caller], call_rows[call].name)});
        }
}

void calls_try(struct plan *plan)
{
    for (int i = 0; i < subject_count; i++)
        if (subject_wanted(plan, &subjects[i]))
            subject_try(plan, &subjects[i]);
}
