/* print_drafts.h - the files of a run that wait for their names: those that this process has to
 * remove when memory runs out (room: app). Private to src/app. */
#ifndef MAYDECK_PRINT_DRAFTS_H
#define MAYDECK_PRINT_DRAFTS_H

#include "drafts.h"

struct print_drafts {
    const char *folder;
    struct arena *arena;
    struct file_draft *at;
    size_t count, room;
    long process;                  /* that they wait in */
};

struct print_drafts *print_drafts_new(const char *folder, struct arena *arena);

/* One more, written here or handed over by a worker. */
void print_drafts_add(struct print_drafts *drafts, const struct file_draft *draft);

/* Before a boat is printed: those of the process that this one was forked from are not its own. */
void print_drafts_take_over(struct print_drafts *drafts);

/* They have their names, are dropped, or are another process's from now on. */
void print_drafts_forget(struct print_drafts *drafts);

#endif
