/* progress.c - one line on a terminal that tells how far a long run is (room: app).
 * It is silent in the first second and on anything but a terminal, and no output
 * depends on its clock. */
#include "progress.h"

#include <stdio.h>
#include <time.h>
#include <unistd.h>

#define SILENT_MS 1000

static int64_t clock_ms(void)
{
    struct timespec now;
    if (clock_gettime(CLOCK_MONOTONIC, &now) != 0)
        return 0;
    return (int64_t)now.tv_sec * 1000 + now.tv_nsec / 1000000;
}

struct progress progress_begin(size_t total)
{
    return (struct progress){
        .wanted = isatty(STDERR_FILENO) == 1, .total = total, .begun_ms = clock_ms()};
}

void progress_tell(struct progress *progress, size_t done, const char *boat)
{
    if (!progress->wanted || clock_ms() - progress->begun_ms < SILENT_MS)
        return;
    fprintf(stderr, "\r\033[K%zu of %zu boats: %s", done + 1, progress->total, boat);
    fflush(stderr);
    progress->shown = true;
}

void progress_clear(struct progress *progress)
{
    if (!progress->shown)
        return;
    fputs("\r\033[K", stderr);
    fflush(stderr);
    progress->shown = false;
}
