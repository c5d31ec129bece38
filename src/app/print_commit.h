/* print_commit.h - files of a run get their names, boat after boat, and what came of each is told
 * (room: app). Private to src/app. */
#ifndef MAYDECK_PRINT_COMMIT_H
#define MAYDECK_PRINT_COMMIT_H

#include "many.h"
#include "print_boat.h"
#include "printed_file.h"
#include "progress.h"
#include "register_file.h"

/* Boats that are printed and wait for their files' names. */
struct print_waiting {
    const char *key;
    struct print_made made;
};

/* So many are given their names at once: one look at the disk for all of them. */
enum { PRINT_WAITING_MOST = 16 };

struct print_commit {
    const struct print_run *run;
    struct printed_file *list;         /* of the folder; NULL: nothing is written there */
    struct register_writing registered;
    struct progress progress;
    struct arena *arena;               /* of those that wait */
    struct print_waiting waiting[PRINT_WAITING_MOST];
    size_t waiting_count;
    struct names written;              /* files that this run gave their names, or that stand */
    struct names told;                 /* messages that several boats may share */
    size_t *deficiencies;              /* of each boat of the run, by her index */
    size_t begun;                      /* boats that were taken */
    bool failed, used_wrongly, held;   /* something of that weight was told */
};

/* `list` is that of the folder; NULL: nothing is written there. */
struct print_commit print_commit_begin(const struct print_run *run, struct printed_file *list);

/* Takes what the boat of that index came to: see many_use. False: the run is to stop. */
bool print_commit_take(void *commit, size_t index, struct many_result *result);

/* All that still waits. */
void print_commit_end(struct print_commit *commit);

#endif
