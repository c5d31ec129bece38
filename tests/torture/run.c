/* run.c - begins the program under a fault, waits for it and for all that it forked. Never waits
 * for ever. */
#define _GNU_SOURCE
#include <errno.h>
#include <fcntl.h>
#include <signal.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/wait.h>
#include <time.h>
#include <unistd.h>

#include "text.h"
#include "trial.h"

#define WORDS_MOST 24
#define WAIT_S 40

static const char *said_path(const struct bench *bench, const char *what, int number,
                             struct arena *arena)
{
    return text_format(arena, "%s/%s-%d", bench->said, what, number);
}

static void stream_put(const char *path, int as)
{
    int file = open(path, O_WRONLY | O_CREAT | O_TRUNC, 0666);

    if (file < 0 || dup2(file, as) < 0)
        _exit(126);
    close(file);
}

static _Noreturn void program_become(const struct bench *bench, const char *words,
                                     const struct trouble *trouble, int number)
{
    char *arguments[WORDS_MOST] = {0};
    size_t count = 0;
    struct rlimit limit = {trouble->limit, trouble->limit};

    arguments[count++] = arena_copy(bench->arena, "maydeck", strlen("maydeck"));
    for (const char *at = words; *at != '\0' && count + 1 < WORDS_MOST; at += strspn(at, " ")) {
        size_t length = strcspn(at, " ");
        arguments[count++] = arena_copy(bench->arena, at, length);
        at += length;
    }
    stream_put("/dev/null", STDIN_FILENO);
    stream_put(trouble->output ? trouble->output : said_path(bench, "out", number, bench->arena),
               STDOUT_FILENO);
    stream_put(said_path(bench, "err", number, bench->arena), STDERR_FILENO);
    for (int file = STDIN_FILENO; file <= STDERR_FILENO; file++)
        if ((trouble->closed >> file & 1) != 0)
            close(file);
    if (chdir(bench->work) != 0)
        _exit(126);
    setenv(TORTURE_PAGE, bench->page_path, 1);
    setenv("LD_PRELOAD", bench->shim, 1);
    if (trouble->limited && setrlimit((__rlimit_resource_t)trouble->resource, &limit) != 0)
        _exit(126);
    sigset_t none;
    sigemptyset(&none);
    sigprocmask(SIG_SETMASK, &none, NULL);
    execv(bench->program, arguments);
    _exit(127);
}

int run_begin(const struct bench *bench, const char *words, const struct trouble *trouble,
              int number)
{
    fflush(NULL);
    pid_t pid = fork();
    if (pid < 0)
        give_up("cannot fork for", words);
    if (pid == 0)
        program_become(bench, words, trouble, number);
    return pid;
}

/* ---- waiting ---- */

/* Until a child ends or so long; SIGCHLD is blocked. */
static void child_await(long long ns)
{
    sigset_t child;
    struct timespec wait = {ns / 1000000000, ns % 1000000000};

    sigemptyset(&child);
    sigaddset(&child, SIGCHLD);
    (void)sigtimedwait(&child, NULL, &wait);
}

static long long now_ns(void)
{
    struct timespec now;

    clock_gettime(CLOCK_MONOTONIC, &now);
    return now.tv_sec * 1000000000LL + now.tv_nsec;
}

/* False: it did not end in time, and was killed. */
static bool status_await(int pid, int *status, long long until)
{
    for (;;) {
        pid_t got = waitpid(pid, status, WNOHANG);
        if (got == pid || (got < 0 && errno == ECHILD))
            return true;
        if (now_ns() > until) {
            kill(pid, SIGKILL);
            waitpid(pid, status, 0);
            return false;
        }
        child_await(20 * 1000000LL);
    }
}

/* What it forked is ours once it is gone. False: some of it did not end. */
static bool orphans_await(long long until)
{
    int status;

    for (;;) {
        pid_t got = waitpid(-1, &status, WNOHANG);
        if (got < 0)
            return true;
        if (got == 0 && now_ns() > until)
            return false;
        if (got == 0)
            child_await(5 * 1000000LL);
    }
}

struct ended run_end(const struct bench *bench, int pid, const struct trouble *trouble, int number,
                     struct arena *arena)
{
    struct ended ended = {0};
    size_t length;
    int status = 0;

    if (trouble->kill_us > 0) {
        struct timespec wait = {trouble->kill_us / 1000000, trouble->kill_us % 1000000 * 1000};
        nanosleep(&wait, NULL);
        kill(pid, SIGKILL);
    }
    ended.hung = !status_await(pid, &status, now_ns() + WAIT_S * 1000000000LL);
    ended.status = WIFSIGNALED(status) ? 128 + WTERMSIG(status) : WEXITSTATUS(status);
    ended.out = file_text(said_path(bench, "out", number, arena), arena, &length);
    ended.err = file_text(said_path(bench, "err", number, arena), arena, &length);
    return ended;
}

bool runs_gone(void)
{
    return orphans_await(now_ns() + WAIT_S * 1000000000LL);
}

struct ended run_whole(const struct bench *bench, const char *words,
                       const struct trouble *trouble, struct arena *arena)
{
    memset(bench->page, 0, sizeof *bench->page);
    bench->page->order = trouble->order;
    struct ended ended = run_end(bench, run_begin(bench, words, trouble, 0), trouble, 0, arena);
    if (!runs_gone())
        ended.hung = true;
    bench->page->order = (struct fault_order){0};
    return ended;
}
