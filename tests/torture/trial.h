/* trial.h - one run of the program under a fault, and the judgement of it. */
#ifndef MAYDECK_TORTURE_TRIAL_H
#define MAYDECK_TORTURE_TRIAL_H

#include <stdbool.h>
#include <sys/resource.h>

#include "arena.h"
#include "calls.h"
#include "tree.h"

/* A command as it is tried, and how it goes without a fault. */
struct subject {
    const char *name;
    const char *words;              /* its command line, in the folder of the trial */
    const char *again;              /* commands that do the rest of it, for one that refuses to
                                     * write what is there; NULL: itself */
    bool known;
    int status;
    const char *out, *err;
    struct tree after;
    long seen[CALLER_COUNT][CALL_COUNT];
};

/* How a process ended. */
struct ended {
    int status;                     /* 128 and the signal, where one ended it */
    bool hung;
    const char *out, *err;
};

/* What is done to a run; what is 0 or NULL is not done. */
struct trouble {
    struct fault_order order;
    const char *output;             /* where standard output goes */
    int closed;                     /* of standard input, output, error: 1, 2, 4 */
    bool full;                      /* the disk is: the next run is made once it has room */
    bool limited;
    int resource;
    rlim_t limit;
    long kill_us;                   /* killed after so long */
};

enum outcome { OUTCOME_WHOLE, OUTCOME_TOLD, OUTCOME_LOST, OUTCOME_MISSED, OUTCOME_COUNT };

/* The program, the shim, folders; found once. */
struct bench {
    const char *program, *shim;
    const char *work;               /* the folder of a trial */
    const char *said;               /* a folder beside it, for what a run says */
    struct torture_page *page;
    const char *page_path;
    struct tree before;
    struct arena *arena;            /* lasts as long as the driver */
};

/* Begins the command, without waiting; `number` tells apart what several say. */
int run_begin(const struct bench *bench, const char *words, const struct trouble *trouble,
              int number);
struct ended run_end(const struct bench *bench, int pid, const struct trouble *trouble, int number,
                     struct arena *arena);
/* Waits for what the runs forked. False: some of it did not end. */
bool runs_gone(void);
struct ended run_whole(const struct bench *bench, const char *words,
                       const struct trouble *trouble, struct arena *arena);

/* Runs the subject without a fault, unless that was done. */
void subject_know(const struct bench *bench, struct subject *subject);

/* Runs the subject under the trouble. *wrong says what was lost. */
enum outcome trial_run(const struct bench *bench, struct subject *subject,
                       const struct trouble *trouble, const char **wrong, struct arena *arena);

/* The line behind that one. */
const char *line_next(const char *at);

/* What is wrong with rows that were `before` and are to be `after`; NULL: nothing. A killed run may
 * have torn the last. */
const char *register_wrong(const char *now, const char *before, const char *after, bool killed);

/* Is that a table of records with its head and a whole last line? Its columns hang on which boats
 * are in it. */
bool is_whole_table(const char *text);

/* Spoils what a run did, as TORTURE_PROOF asks for: the oracle must tell it. */
void proof_spoil(const struct bench *bench, const struct subject *subject, struct ended *ended,
                 struct arena *arena);

/* Is the folder as a run that was broken off may leave it, and right after the next run? What is
 * wrong; NULL: nothing. */
const char *folder_wrong(const struct bench *bench, const struct subject *subject, bool killed,
                         struct arena *arena);

#endif
