/* rules.h - the checks of a boat's record against itself, its dates and its base
 * (room: rules). Every check is one row of one table: src/rules/check_list.h. */
#ifndef MAYDECK_RULES_H
#define MAYDECK_RULES_H

#include <stdbool.h>
#include <stddef.h>

#include "arena.h"
#include "boat.h"
#include "date.h"
#include "problem.h"

/* One check. The rows below "run" to "page" are families: what reading, composing,
 * laying out and running as a whole have to say. */
struct check {
    const char *id;            /* raft_places: what `silenced:` and `check --list` name */
    enum severity severity;    /* of what it finds; of a family: the worst */
    bool family;
    bool danger;               /* an error of the boat, not of her record: holds nothing */
    bool lack;                 /* it finds too little: silent while a piece could not be read */
    const char *sentence;      /* what is wrong when it speaks */
    const char *source;        /* whose rule it is; "judged" and "trade practice" say so */
};

const struct check *check_at(size_t index);        /* NULL past the end */
const struct check *check_find(const char *id);    /* NULL: no such check */

/* A fact that cards go without where it is not recorded: the table of its row, its key, the check
 * that tells of the lack, and what follows from it. */
struct fact_lack {
    const struct field_table *table;
    const char *key, *check, *so;
};

/* False past the end. */
bool fact_lack_at(size_t index, struct fact_lack *lack);

/* The people of a charter, as far as they are known. */
struct crew {
    const int *kg;             /* body masses; NULL: not told */
    size_t count;              /* 0: as many as the boat may carry */
};

/* A procedure in one language, as an approval names it. */
struct approvable {
    const char *card, *language;
    const char *fingerprint;   /* see approval.h */
    bool hung;                 /* the base's boats may have its card in that language */
    const char *own_file;      /* the base's own: of its logic; NULL: it is the program's */
    bool changed;              /* it is one of the program's that the base has changed */
};

struct rules_input {
    const struct boat *boat;
    const struct base_record *base;   /* NULL: the base's file could not be used */
    struct date today;                /* all three of day precision */
    bool today_behind;                /* was told already: what is said to be done later is not */
    struct date from, to;             /* the charter, hand-back day included */
    struct crew crew;
    const struct approvable *approvables;   /* in every language that there is; NULL, none: the
                                               procedures could not be used */
    size_t approvable_count;
};

/* Runs every check over one boat. What a check finds is told with its id; what the
 * base has silenced for this boat is told as silenced. True when no error of
 * the record was found: those hold the whole boat back. The input is sound of its own kind
 * (boat_read gave it), but may have been told to hold errors. */
bool rules_check(const struct rules_input *input, struct arena *arena,
                 struct problems *problems);

/* The same for the base's own record, once a run: input->boat is not looked at, nothing
 * can be silenced. */
bool rules_check_base(const struct rules_input *input, struct arena *arena,
                      struct problems *problems);

/* What only shows across the fleet: one identity on two boats. The identities live in
 * the arena. `key` names the boat and must live as long. */
struct identities;
struct identities *identities_new(struct arena *arena);

/* Keeps those of one boat's file, which may be gone afterwards. False: the file gives no tree,
 * and only its lines were looked through. */
bool identities_add(struct identities *all, const struct source *source, const char *key);

/* False, and an error at each of her lines, when another boat's file has the same. Every
 * boat of the base must have been added; `source` is her file as it was added then. */
bool identities_own(const struct identities *all, const char *key, const struct source *source,
                    struct problems *problems);

#endif
