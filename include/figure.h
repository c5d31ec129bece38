/* figure.h - the one table of figures: what may be computed from a boat's record,
 * from which fields, and where it may be printed (room: figure).
 *
 * A figure is an id, a verdict and a function of the record. Only facts and
 * estimates (F, A) may stand on a card; what rests on an assumed coefficient is
 * printed as estimated; what lacks an input is not printed at all. */
#ifndef MAYDECK_FIGURE_H
#define MAYDECK_FIGURE_H

#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

#include "boat.h"
#include "phrase.h"

/* ---- rounding for print ---- */

/* Two significant figures in thousandths, to the safe side: up for inflow and gas,
 * down for time, pump rate and range. 132.05 up gives 140000, 42.86 down 42000, 9.33
 * down 9300. Up to 1e12; below 0.01 whole thousandths. What misses a whole step by
 * less than a part in 1e9 counts as that step. */
int64_t rounded_up_milli(double value);
int64_t rounded_down_milli(double value);

/* To the nearest thousandth. */
int64_t nearest_milli(double value);

/* ---- the table ---- */

enum figure_verdict {
    FIGURE_FACT = 'F',         /* may be printed as a fact */
    FIGURE_ESTIMATE = 'A',     /* may be printed as an order of magnitude */
    FIGURE_OFFICE = 'B',       /* for the base and the skipper, never on a card */
    FIGURE_NEVER = 'N'         /* not printed at all */
};

enum figure_status {
    FIGURE_VALUE,
    FIGURE_INPUT_MISSING,
    FIGURE_NOT_APPLICABLE      /* the boat has no such thing, or it says nothing */
};

/* What was read: "seacock C13 bore_mm", "38", and where it stands. */
struct figure_input {
    const char *what, *value;
    struct place place;
};

/* What the record lacks: the field `field` of `owner`, such as "seacock C14". */
struct figure_lack {
    const char *owner, *field, *about;
    struct place place;
};

struct figure_result {
    enum figure_status status;
    const struct figure_input *inputs;
    size_t input_count;
    const struct figure_lack *lacks;
    size_t lack_count;
    const char *reason;        /* FIGURE_NOT_APPLICABLE: why */
    const char *before, *after; /* the result in words, before and after rounding */
    const struct phrase *sentence; /* for a card; NULL: none */
    struct place origin;       /* of the record's line it rests on most */
};

/* What figures are computed from. */
struct figure_record {
    const struct boat *boat;
    const struct base_record *base;
};

struct evaluation;

struct figure {
    const char *id, *title;
    enum figure_verdict verdict;
    const char *reads;         /* the fields of the record, in words */
    const char *formula;
    const char *source;        /* whose numbers and formula */
    const char *assumed;       /* coefficients that no record gives; NULL: none */
    const char *procedure;     /* the card it may stand on, and the step; NULL: none */
    const char *step;
    bool in_rows;              /* stands in the rows of the gear it is about */
    bool label_tells;          /* its own first words, or its block's, say "estimated" */
    bool in_check;             /* for the base: `check` tells it, and what it lacks */
    const char *why_not;       /* why it is on no card; NULL where it may be */
    void (*evaluate)(struct evaluation *evaluation); /* NULL: not from the record */
};

/* In the order in which they are given room; NULL past the end. */
const struct figure *figure_at(size_t index);
const struct figure *figure_find(const char *id);

size_t figure_count(void);

/* Strings belong to the arena. */
struct figure_result figure_evaluate(const struct figure *figure,
                                     const struct figure_record *record, struct arena *arena);

/* May it reach a card at all? */
bool figure_may_be_printed(const struct figure *figure);

/* What ends the name of an extinguisher's row, such as "lasts 9 s", from the label's own
 * figure, whole seconds rounded down; NULL where it is not recorded. */
const struct phrase *figure_discharge(const struct equipment *gear, struct arena *arena);

#endif
