/* main.c - tries faults on every command and tells what was lost.
 *
 *   torture PROGRAM SHIM FIXTURE WORK [COMMAND...]
 *
 * FIXTURE is a folder as it is before each trial, WORK one to work in. Of each kind of call of
 * each command TORTURE_EACH trials are drawn (2; `all`: every one) by TORTURE_SEED; TORTURE_ONLY is
 * the name of one trial, as it is told where something was lost; TORTURE_PART is calls, limits,
 * kills or at_once, for these alone. Ends with 1 where anything was lost. */
#define _GNU_SOURCE
#include <errno.h>
#include <fcntl.h>
#include <limits.h>
#include <signal.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/mman.h>
#include <sys/prctl.h>
#include <sys/stat.h>
#include <unistd.h>

#include "plan.h"

#define DRIVER_MEMORY ((size_t)4 * 1024 * 1024 * 1024)

static void page_make(struct bench *bench)
{
    int file;

    bench->page_path = text_format(bench->arena, "%s/page", bench->said);
    file = open(bench->page_path, O_RDWR | O_CREAT | O_TRUNC | O_CLOEXEC, 0666);
    if (file < 0 || ftruncate(file, sizeof *bench->page) != 0)
        give_up("cannot make", bench->page_path);
    void *memory = mmap(NULL, sizeof *bench->page, PROT_READ | PROT_WRITE, MAP_SHARED, file, 0);
    if (memory == MAP_FAILED)
        give_up("cannot map", bench->page_path);
    close(file);
    bench->page = memory;
}

static const char *whole_path(struct arena *arena, const char *path)
{
    char *room = arena_alloc(arena, PATH_MAX);

    if (realpath(path, room) == NULL)
        give_up("there is no", path);
    return room;
}

static void bench_open(struct bench *bench, char **words)
{
    sigset_t child;

    bench->arena = arena_new(DRIVER_MEMORY);
    bench->program = whole_path(bench->arena, words[1]);
    bench->shim = whole_path(bench->arena, words[2]);
    const char *folder = whole_path(bench->arena, words[4]);
    bench->work = text_format(bench->arena, "%s/work", folder);
    bench->said = text_format(bench->arena, "%s/said", folder);
    if (mkdir(bench->said, 0777) != 0 && errno != EEXIST)
        give_up("cannot make", bench->said);
    page_make(bench);
    bench->before = tree_read(whole_path(bench->arena, words[3]), bench->arena);
    sigemptyset(&child);
    sigaddset(&child, SIGCHLD);
    sigprocmask(SIG_BLOCK, &child, NULL);
    prctl(PR_SET_CHILD_SUBREAPER, 1);
}

static struct plan plan_read(int count, char **commands)
{
    const char *each = getenv("TORTURE_EACH"), *seed = getenv("TORTURE_SEED");

    return (struct plan){
        .each = each == NULL || *each == '\0' ? 2
                : strcmp(each, "all") == 0    ? LONG_MAX
                                              : strtol(each, NULL, 10),
        .seed = seed == NULL ? 1 : strtoull(seed, NULL, 10),
        .only = getenv("TORTURE_ONLY"), .commands = commands, .command_count = count};
}

static const struct {
    const char *name;
    void (*try_all)(struct plan *plan);
} parts[] = {{"calls", calls_try}, {"limits", limits_try}, {"kills", kills_try},
             {"at_once", at_once_try}};

static bool part_wanted(const char *name)
{
    const char *only = getenv("TORTURE_PART");

    return only == NULL || *only == '\0' || strcmp(only, name) == 0;
}

int main(int count, char **words)
{
    struct bench bench = {0};

    if (count < 5) {
        fputs("usage: torture PROGRAM SHIM FIXTURE WORK [COMMAND...]\n", stderr);
        return 2;
    }
    setvbuf(stdout, NULL, _IOLBF, 0);
    bench_open(&bench, words);
    struct plan plan = plan_read(count - 5, words + 5);
    plan.bench = &bench;
    for (size_t i = 0; i < sizeof parts / sizeof *parts; i++)
        if (part_wanted(parts[i].name))
            parts[i].try_all(&plan);
    bool lost = table_tell(&plan);
    arena_free(bench.arena);
    return lost ? 1 : 0;
}
