/* progress.h - a line on the terminal that tells how far a long run is (room: app). Private
 * to src/app. */
#ifndef MAYDECK_PROGRESS_H
#define MAYDECK_PROGRESS_H

#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

/* The line comes once a run has taken a second. */
struct progress {
    bool wanted, shown;
    size_t total;
    int64_t begun_ms;
};

/* Of a run over `total` boats. One that is all zeros tells nothing. */
struct progress progress_begin(size_t total);
void progress_tell(struct progress *progress, size_t done, const char *boat);

/* Takes the line away: before anything else is printed, and at the end. */
void progress_clear(struct progress *progress);

#endif
