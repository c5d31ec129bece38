/* many.c - work on many things by processes, its results in order (room: app). It knows nothing of
 * the work. A worker is handed one index after the other through a pipe and answers each with a
 * length and so many bytes through another; it ends when its pipe does. */
#include "many.h"

#include <errno.h>
#include <poll.h>
#include <signal.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/types.h>
#include <sys/wait.h>
#include <unistd.h>

#include "promise.h"

#define WORKERS_MOST 64
#define RESULT_LIMIT ((size_t)1024 * 1024 * 1024)

/* So many results for each worker may wait for one before them that takes longer. */
#define AHEAD 4

/* Bytes that are read from a worker at once. */
#define PIECE ((size_t)16 * 1024)

struct worker {
    pid_t pid;                 /* 0: there is none */
    int to, from;              /* pipes */
    bool busy;
    size_t index;              /* what it works on */
    struct arena *arena;       /* of the answer that is coming in */
    unsigned char *at;         /* head and bytes of it */
    size_t length, room;
};

/* An answer that waits for its turn. */
struct waiting {
    bool there;
    struct many_result result;
};

struct many {
    const struct many_use *use;
    void *context;
    size_t count;
    size_t next;               /* the first that nobody works on yet */
    size_t taken;
    bool stopped;
    struct worker workers[WORKERS_MOST];
    unsigned worker_count;
    struct waiting waiting[WORKERS_MOST * AHEAD];    /* by index, in turns */
};

unsigned many_processors(void)
{
    long count = sysconf(_SC_NPROCESSORS_ONLN);
    return count < 1 ? 1 : count > WORKERS_MOST ? WORKERS_MOST : (unsigned)count;
}

/* ---- in this process ---- */

static void here_run(const struct many_use *use, void *context, size_t from, size_t count)
{
    bool go = true;
    for (size_t i = from; go && i < count; i++) {
        struct arena *arena = arena_new(RESULT_LIMIT);
        struct text_builder out = text_builder_in(arena);
        use->work(context, i, &out);
        struct many_result result = {packet_of(out.at, out.length), NULL, arena};
        go = use->take(context, i, &result);
        arena_free(arena);
    }
}

/* ---- a worker ---- */

static bool pipe_read(int file, void *out, size_t length)
{
    unsigned char *at = out;
    while (length > 0) {
        ssize_t count = read(file, at, length);
        if (count < 0 && errno == EINTR)
            continue;
        if (count <= 0)
            return false;
        at += count;
        length -= (size_t)count;
    }
    return true;
}

static bool pipe_write(int file, const void *from, size_t length)
{
    const unsigned char *at = from;
    while (length > 0) {
        ssize_t count = write(file, at, length);
        if (count < 0 && errno == EINTR)
            continue;
        if (count <= 0)
            return false;
        at += count;
        length -= (size_t)count;
    }
    return true;
}

/* What it wrote to standard output would come in no order: nothing is left there for it. What it
 * leaves undone, the process above tells. */
static _Noreturn void worker_work(const struct many *many, int from, int to)
{
    size_t index;
    bool good = true;
    arena_exhaustion_from(NULL);
    while (good && pipe_read(from, &index, sizeof index)) {
        struct arena *arena = arena_new(RESULT_LIMIT);
        struct text_builder out = text_builder_in(arena);
        many->use->work(many->context, index, &out);
        uint64_t length = out.length;
        good = pipe_write(to, &length, sizeof length) && pipe_write(to, out.at, out.length);
        arena_free(arena);
    }
    exit(good ? EXIT_SUCCESS : EXIT_FAILURE);
}

static void pipe_close(int pair[2])
{
    (void)close(pair[0]);
    (void)close(pair[1]);
}

static void others_close(const struct many *many)
{
    for (unsigned i = 0; i < many->worker_count; i++)
        if (many->workers[i].pid != 0) {
            (void)close(many->workers[i].to);
            (void)close(many->workers[i].from);
        }
}

/* False: the system gives no process more. */
static bool worker_begin(struct many *many, struct worker *worker)
{
    int down[2], up[2];
    if (pipe(down) != 0)
        return false;
    if (pipe(up) != 0) {
        pipe_close(down);
        return false;
    }
    fflush(NULL);
    pid_t pid = fork();
    if (pid == 0) {
        others_close(many);
        (void)close(down[1]);
        (void)close(up[0]);
        worker_work(many, down[0], up[1]);
    }
    (void)close(down[0]);
    (void)close(up[1]);
    if (pid < 0) {
        (void)close(down[1]);
        (void)close(up[0]);
        return false;
    }
    *worker = (struct worker){.pid = pid, .to = down[1], .from = up[0]};
    return true;
}

/* Waits until it has ended. */
static int worker_end(struct worker *worker)
{
    int status = 0;
    (void)close(worker->to);
    (void)close(worker->from);
    while (waitpid(worker->pid, &status, 0) < 0 && errno == EINTR)
        continue;
    arena_free(worker->arena);
    *worker = (struct worker){0};
    return status;
}

/* ---- results ---- */

static struct waiting *waiting_of(struct many *many, size_t index)
{
    return &many->waiting[index % (many->worker_count * AHEAD)];
}

static void result_put(struct many *many, size_t index, const struct many_result *result)
{
    struct waiting *waiting = waiting_of(many, index);
    promise(!waiting->there);
    *waiting = (struct waiting){true, *result};
}

static const char *end_words(int status, struct arena *arena)
{
    if (WIFSIGNALED(status))
        return text_format(arena, "the process that worked on it was ended by signal %d",
                           WTERMSIG(status));
    return text_format(arena, "the process that worked on it ended with status %d",
                       WIFEXITED(status) ? WEXITSTATUS(status) : -1);
}

/* Another takes its place, if the system gives one. */
static void worker_lost(struct many *many, struct worker *worker)
{
    size_t index = worker->index;
    bool busy = worker->busy;
    int status = worker_end(worker);
    if (busy) {
        struct arena *arena = arena_new(RESULT_LIMIT);
        result_put(many, index, &(struct many_result){.lost = end_words(status, arena),
                                                      .arena = arena});
    }
    if (!many->stopped && many->next < many->count)
        worker_begin(many, worker);
}

static uint64_t answer_length(const struct worker *worker)
{
    uint64_t length;
    memcpy(&length, worker->at, sizeof length);
    return length;
}

static void answer_take(struct many *many, struct worker *worker)
{
    size_t head = sizeof(uint64_t);
    if (worker->length < head || worker->length - head < answer_length(worker))
        return;
    struct many_result result = {packet_of(worker->at + head, worker->length - head), NULL,
                                 worker->arena};
    result_put(many, worker->index, &result);
    worker->arena = NULL;
    worker->at = NULL;
    worker->length = worker->room = 0;
    worker->busy = false;
}

static void answer_room(struct worker *worker)
{
    if (worker->room - worker->length >= PIECE)
        return;
    size_t room = 2 * worker->room + PIECE;
    unsigned char *larger = arena_alloc(worker->arena, room);
    if (worker->length > 0)
        memcpy(larger, worker->at, worker->length);
    worker->at = larger;
    worker->room = room;
}

/* Takes what has come in so far. */
static void worker_hear(struct many *many, struct worker *worker)
{
    answer_room(worker);
    ssize_t count = read(worker->from, worker->at + worker->length, PIECE);
    if (count < 0 && (errno == EINTR || errno == EAGAIN))
        return;
    if (count <= 0) {
        worker_lost(many, worker);
        return;
    }
    worker->length += (size_t)count;
    answer_take(many, worker);
}

/* ---- the whole ---- */

static void work_give(struct many *many, struct worker *worker)
{
    worker->busy = true;
    worker->index = many->next++;
    worker->arena = arena_new(RESULT_LIMIT);
    if (!pipe_write(worker->to, &worker->index, sizeof worker->index))
        worker_lost(many, worker);
}

static unsigned workers_alive(const struct many *many)
{
    unsigned alive = 0;
    for (unsigned i = 0; i < many->worker_count; i++)
        alive += many->workers[i].pid != 0 ? 1 : 0;
    return alive;
}

static void idle_feed(struct many *many)
{
    for (unsigned i = 0; i < many->worker_count; i++) {
        struct worker *worker = &many->workers[i];
        if (!many->stopped && worker->pid != 0 && !worker->busy && many->next < many->count &&
            many->next < many->taken + many->worker_count * AHEAD)
            work_give(many, worker);
    }
}

static void ready_take(struct many *many)
{
    while (!many->stopped && many->taken < many->count && waiting_of(many, many->taken)->there) {
        struct waiting *waiting = waiting_of(many, many->taken);
        many->stopped = !many->use->take(many->context, many->taken, &waiting->result);
        arena_free(waiting->result.arena);
        *waiting = (struct waiting){0};
        many->taken++;
    }
}

static void workers_hear(struct many *many)
{
    struct pollfd polled[WORKERS_MOST];
    struct worker *heard[WORKERS_MOST];
    nfds_t count = 0;
    for (unsigned i = 0; i < many->worker_count; i++)
        if (many->workers[i].busy) {
            heard[count] = &many->workers[i];
            polled[count++] = (struct pollfd){.fd = many->workers[i].from, .events = POLLIN};
        }
    if (count == 0)
        return;
    if (poll(polled, count, -1) < 0) {
        if (errno != EINTR)
            worker_hear(many, heard[0]);   /* waits for it alone */
        return;
    }
    for (nfds_t i = 0; i < count; i++)
        if (polled[i].revents != 0)
            worker_hear(many, heard[i]);
}

/* What was begun and is not wanted any more is broken off. */
static void workers_end(struct many *many)
{
    for (unsigned i = 0; i < many->worker_count; i++)
        if (many->workers[i].pid != 0) {
            if (many->workers[i].busy)
                (void)kill(many->workers[i].pid, SIGKILL);
            worker_end(&many->workers[i]);
        }
    for (size_t i = 0; i < many->worker_count * AHEAD; i++)
        if (many->waiting[i].there)
            arena_free(many->waiting[i].result.arena);
}

static void workers_run(struct many *many)
{
    for (unsigned i = 0; i < many->worker_count; i++)
        worker_begin(many, &many->workers[i]);
    while (!many->stopped && many->taken < many->count && workers_alive(many) > 0) {
        idle_feed(many);
        ready_take(many);
        if (many->taken < many->count && !many->stopped)
            workers_hear(many);
    }
    workers_end(many);
}

void many_run(const struct many_use *use, void *context, size_t count, unsigned processes)
{
    struct arena *arena = arena_new(RESULT_LIMIT);
    struct many *many = arena_alloc(arena, sizeof *many);
    unsigned wanted = count < processes ? (unsigned)count : processes;
    *many = (struct many){.use = use, .context = context, .count = count,
                          .worker_count = wanted < WORKERS_MOST ? wanted : WORKERS_MOST};
    if (wanted > 1)
        workers_run(many);
    if (!many->stopped)
        here_run(use, context, many->taken, count);
    arena_free(arena);
}
