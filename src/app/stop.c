/* stop.c - signals that end a run (room: app). A run ends between two boats: what it is writing
 * then is finished or taken away, and what remains is told. */
#include "stop.h"

#include "text.h"

#include <poll.h>
#include <signal.h>
#include <stddef.h>
#include <unistd.h>

/* Which signal came: a handler is given no context. */
static volatile sig_atomic_t stopping;

static void stop_note(int number)
{
    if (stopping == 0)
        stopping = number;
}

static const struct { int number; const char *name; } stop_signals[] = {
    {SIGINT, "SIGINT"}, {SIGTERM, "SIGTERM"}, {SIGHUP, "SIGHUP"}};
enum { STOP_SIGNALS = sizeof stop_signals / sizeof *stop_signals };

/* What SIGPIPE did when the program was started. A global because a signal is of the process. */
static struct sigaction pipe_before;

void refusals_await(void)
{
    struct sigaction ignore = {.sa_handler = SIG_IGN};

    sigemptyset(&ignore.sa_mask);
    sigaction(SIGPIPE, &ignore, &pipe_before);
    sigaction(SIGXFSZ, &ignore, NULL);
}

bool reader_is_gone(void)
{
    struct pollfd output = {.fd = STDOUT_FILENO, .events = POLLOUT};

    return poll(&output, 1, 0) == 1 && (output.revents & POLLERR) != 0;
}

void end_by_reader(void)
{
    if (pipe_before.sa_handler == SIG_IGN)
        return;
    sigaction(SIGPIPE, &pipe_before, NULL);
    raise(SIGPIPE);
}

void stop_await(void)
{
    struct sigaction note = {.sa_handler = stop_note, .sa_flags = (int)SA_RESETHAND}, before;

    sigemptyset(&note.sa_mask);
    for (size_t i = 0; i < STOP_SIGNALS; i++)
        if (sigaction(stop_signals[i].number, NULL, &before) == 0 && before.sa_handler != SIG_IGN)
            sigaction(stop_signals[i].number, &note, NULL);
}

const char *run_stopped(void)
{
    for (size_t i = 0; i < STOP_SIGNALS; i++)
        if (stopping == stop_signals[i].number)
            return stop_signals[i].name;
    return NULL;
}

void stop_tell(size_t printed, const struct names *remaining, struct arena *arena,
               struct problems *problems)
{
    struct text_builder names = text_builder_in(arena);

    if (run_stopped() == NULL || remaining->count == 0)
        return;
    for (size_t i = 0; i < remaining->count; i++)
        text_add_format(&names, "%s%s", i == 0 ? "" : ",", remaining->at[i]);
    problem_add(problems, SEVERITY_FAILURE, NO_PLACE,
                text_format(arena, "print them: --boat %s", names.at),
                "stopped by %s: %zu boat%s printed, %zu remain%s: %s", run_stopped(), printed,
                printed == 1 ? "" : "s", remaining->count, remaining->count == 1 ? "s" : "",
                names.at);
}
