/* limits.c - limits of the system: room in files, open files, processes, memory; a disk that is
 * full; standard output that takes nothing. */
#define _GNU_SOURCE
#include <limits.h>
#include <sched.h>
#include <stdio.h>
#include <string.h>
#include <sys/mount.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <unistd.h>

#include "plan.h"

/* From `least` to `most`: about as much as the program wants. */
static const struct limit_row {
    const char *name;
    int resource;
    unsigned long least, most, step;
} limit_rows[] = {
    {"file size", RLIMIT_FSIZE, 0, 48 * 1024, 512},
    {"open files", RLIMIT_NOFILE, 3, 14, 1},
    {"memory", RLIMIT_AS, 12ul << 20, 44ul << 20, 1ul << 18},
};

static const char *const limited[] = {"print-1", "print-2", "print-register-2", "survey", "start",
                                      "hang", "take", "table", "renew-print", "check"};

static void limit_try(struct plan *plan, struct subject *subject, const struct limit_row *row,
                      unsigned long value)
{
    struct trouble trouble = {.limited = true, .resource = row->resource, .limit = value};

    trial_do(plan, row->name, subject,
             text_format(plan->bench->arena, "%s limit of %s %lu", subject->name, row->name, value),
             &trouble);
}

static void row_try(struct plan *plan, struct subject *subject, const struct limit_row *row)
{
    unsigned long points = (row->most - row->least) / row->step + 1;
    const char *name = text_format(plan->bench->arena, "%s %s", subject->name, row->name);
    uint64_t state = draw_begin(plan, name);

    if (plan->only != NULL || plan->each >= (long)points)
        for (unsigned long i = 0; i < points; i++)
            limit_try(plan, subject, row, row->least + i * row->step);
    else
        for (long i = 0; i < plan->each; i++)
            limit_try(plan, subject, row, row->least + draw_below(&state, points) * row->step);
}

/* ---- a disk that is full ---- */

/* The folder of the trials is then a disk of that many bytes besides what is there before. */
static bool disk_small(const struct plan *plan, unsigned long room)
{
    unsigned long there = 0;

    for (size_t i = 0; i < plan->bench->before.count; i++)
        there += (plan->bench->before.files[i].raw_length + 4095) / 4096 * 4096;
    there += 4ul * 4096;
    return mount("tmpfs", plan->bench->work, "tmpfs", 0,
                 text_format(plan->bench->arena, "size=%lu", there + room)) == 0;
}

static void disk_try(struct plan *plan, struct subject *subject, unsigned long room)
{
    const char *name = text_format(plan->bench->arena, "%s full disk %lu", subject->name, room);
    struct trouble trouble = {0};

    if (!trial_wanted(plan, name) || (mkdir(plan->bench->work, 0777), !disk_small(plan, room)))
        return;
    trouble.full = true;
    trial_do(plan, "full disk", subject, name, &trouble);
    umount2(plan->bench->work, MNT_DETACH);
}

/* Only who may mount; what is mounted is seen by the driver alone and goes with it. */
static bool may_mount(void)
{
    return unshare(CLONE_NEWNS) == 0 && mount(NULL, "/", NULL, MS_REC | MS_PRIVATE, NULL) == 0;
}

static void disks_try(struct plan *plan, struct subject *subject)
{
    uint64_t state = draw_begin(plan, text_format(plan->bench->arena, "%s disk", subject->name));
    long points = 48;

    if (plan->only != NULL || plan->each >= points)
        for (long i = 0; i < points; i++)
            disk_try(plan, subject, (unsigned long)i * 4096);
    else
        for (long i = 0; i < plan->each; i++)
            disk_try(plan, subject, (unsigned long)draw_below(&state, (uint64_t)points) * 4096);
}

/* ---- standard output ---- */

static void output_try(struct plan *plan, struct subject *subject)
{
    struct trouble full = {.output = "/dev/full"};

    trial_do(plan, "output full", subject,
             text_format(plan->bench->arena, "%s output /dev/full", subject->name), &full);
    for (int closed = 1; closed < 8; closed++) {
        struct trouble shut = {.closed = closed};
        trial_do(plan, "streams closed", subject,
                 text_format(plan->bench->arena, "%s streams closed %d", subject->name, closed),
                 &shut);
    }
}

void limits_try(struct plan *plan)
{
    bool mounts = may_mount();

    for (int i = 0; i < subject_count; i++)
        if (subject_wanted(plan, &subjects[i]))
            output_try(plan, &subjects[i]);
    for (size_t i = 0; i < sizeof limited / sizeof *limited; i++) {
        struct subject *subject = subject_named(limited[i]);
        if (!subject_wanted(plan, subject))
            continue;
        subject_know(plan->bench, subject);
        for (size_t k = 0; k < sizeof limit_rows / sizeof *limit_rows; k++)
            row_try(plan, subject, &limit_rows[k]);
        if (mounts)
            disks_try(plan, subject);
    }
    if (!mounts)
        puts("full disk: not tried, since nothing may be mounted here");
}
