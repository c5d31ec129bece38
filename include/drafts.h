/* drafts.h - files that one process writes and another gives their names, and a folder that one
 * run has for itself (room: draw). It does not know what is in them.
 *
 * A draft lies in its folder under a name that nobody can foretell, whole and closed, until it is
 * committed or dropped. Who writes drafts has claimed their folder before: nobody else sweeps it
 * then, whichever process of the run is still alive. Drafts of a run that was killed are swept by
 * the next one that claims the folder. */
#ifndef MAYDECK_DRAFTS_H
#define MAYDECK_DRAFTS_H

#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

#include "arena.h"
#include "draw.h"
#include "problem.h"
#include "sha256.h"

/* ---- a folder for one run alone ---- */

/* Claims the folder, which must be there, for this run and sweeps it. False, with a
 * SEVERITY_FAILURE: another run has it. *hold is for folder_release, at the end of the run and by
 * the process that claimed it; -1 where the disk knows no such locks: then the run goes on, and
 * nothing is ever swept there. The claim goes over to processes that are forked, and lasts until
 * the last of them has ended or released it. It is of the run, not of the process: who has claimed
 * a folder is refused a second time. */
bool folder_claim(const char *folder, struct arena *arena, struct problems *problems, int *hold);

/* Sweeps the folder that this run has claimed of what its own processes left that ended in the
 * middle: for the end of the run, when no draft waits any more. Nothing with a hold of -1. */
void folder_claimed_sweep(const char *folder, int hold, struct arena *arena);

/* Has a run claimed the folder, or does one hold it? Nothing is swept. */
bool folder_is_claimed(const char *folder);

/* Is that, by its name, a file that a run writes and has not given its name yet? */
bool folder_is_temporary(const char *name);

/* ---- names that nobody can foretell ---- */

/* Sixteen hexadecimal digits and a NUL. */
#define UNFORETOLD_TEXT 17

/* By the system's own chance. False with errno: it gives none. */
bool unforetold_make(char out[UNFORETOLD_TEXT]);

/* ---- drafts ---- */

/* Nothing was written, or it was dropped or lost; it waits for its name; it has it. */
enum draft_state { DRAFT_NONE, DRAFT_WAITING, DRAFT_PLACED };

/* A file that waits for its name. Plain bytes without a pointer, so that it can be sent through
 * a pipe to another process of the run. */
struct file_draft {
    enum draft_state state;
    char name[256];               /* that it is to get, in the folder */
    char temporary[48];           /* under which it lies there */
    uint64_t device, inode;       /* what was written: only that gets the name */
    uint64_t bytes;
    char sum[SHA256_TEXT];
};

/* Writes the content whole under a temporary name; not yet safe on the disk. False, with a
 * problem, and nothing is left: what the system refused, a name that leaves the folder or is too
 * long, something in its place that is no regular file. */
bool file_draft_write(const char *folder, const char *name, struct bytes content,
                      struct arena *arena, struct problems *problems, struct file_draft *out);

/* Makes all that wait safe on the disk, then gives each its name, then makes the names last: one
 * sync of the folder for all. One that fails stops no other: it is told, removed and DRAFT_NONE,
 * and the result is false; all others are DRAFT_PLACED, *committed of them. False, too, where the
 * folder cannot be made sure of: those placed are in their places all the same. */
bool file_drafts_commit(const char *folder, struct file_draft *drafts, size_t count,
                        struct arena *arena, struct problems *problems, size_t *committed);

/* Removes those that wait. */
void file_drafts_drop(const char *folder, struct file_draft *drafts, size_t count,
                      struct arena *arena);

/* Those that wait among the first *count of these are removed when memory runs out: `drafts` and
 * *count stand until it is called again, with NULL. A forked process calls it with NULL first,
 * since those of its parent are not its own. */
void file_drafts_guard(const char *folder, const struct file_draft *drafts, const size_t *count);

#endif
