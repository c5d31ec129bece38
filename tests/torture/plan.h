/* plan.h - which trials are made, and what came of them. */
#ifndef MAYDECK_TORTURE_PLAN_H
#define MAYDECK_TORTURE_PLAN_H

#include <stdint.h>

#include "text.h"
#include "trial.h"

#define ROWS_MOST 64

/* A row of the table: a kind of fault. */
struct plan_row {
    const char *name;
    long tried[OUTCOME_COUNT];
};

struct plan {
    const struct bench *bench;
    long each;                     /* trials of each kind of each command; LONG_MAX: all */
    uint64_t seed;
    const char *only;              /* the name of one trial; NULL: all that are drawn */
    char **commands;               /* those of these alone, where there are any */
    int command_count;
    struct plan_row rows[ROWS_MOST];
    int row_count;
};

/* The commands that are tried, and how many. */
extern struct subject subjects[];
extern const int subject_count;

/* Is that command to be tried? */
bool subject_wanted(const struct plan *plan, const struct subject *subject);
struct subject *subject_named(const char *name);

/* Drawn in turn from the seed and what the name says; below `below`. */
uint64_t draw_below(uint64_t *state, uint64_t below);
uint64_t draw_begin(const struct plan *plan, const char *name);

/* Makes the trial if it is one of those asked for, and notes what came of it under the row. */
void trial_do(struct plan *plan, const char *row, struct subject *subject, const char *name,
              const struct trouble *trouble);
bool trial_wanted(const struct plan *plan, const char *name);
void outcome_note(struct plan *plan, const char *row, const char *name, enum outcome outcome,
                  const char *wrong);

/* Each a file of its own. */
void calls_try(struct plan *plan);
void limits_try(struct plan *plan);
void kills_try(struct plan *plan);
void at_once_try(struct plan *plan);

/* Prints the table; true: something was lost. */
bool table_tell(const struct plan *plan);

#endif
