/* prove.h - no card, and no chain of cards that exits lead through, makes people do what the
 * hazards on the way forbid (room: prove). It reads composed sheets and changes none. */
#ifndef MAYDECK_PROVE_H
#define MAYDECK_PROVE_H

#include "compose.h"
#include "hazard.h"

/* One row of the table: under that hazard nobody does that. */
struct forbid {
    const char *id;          /* vapour_spark */
    enum hazard hazard;      /* HAZARD_ANY: whatever is so */
    enum act act;
    const char *rule;        /* R4: of the trade's rules which it is part of */
    enum guard guard;        /* printed words that make it harmless; GUARD_NONE: none do */
    enum act since;          /* it counts once that was done; ACT_NONE: from the start */
    enum act first;          /* it is right behind that, in its step or an earlier one */
    enum act later;          /* it is right if a later step of the card does that */
    const char *why;
};

struct forbids {
    const struct forbid *rows;
    size_t count;
};

/* The whole table. */
struct forbids forbids_all(void);

/* What breaks a rule, and how one gets there. */
struct hazard_failure {
    const struct sheet *sheet;         /* where it stands */
    const struct sheet *from;          /* the first of the chain: the same, or one with an exit */
    const struct card_step *step;      /* NULL: in the call panel or an exit */
    const struct equipment *gear;      /* NULL: no piece is to blame */
    const struct own_line *local;    /* NULL: no line of the base's own is to blame */
    const struct forbid *row;          /* NULL: no row, but `what` */
    const char *rule;
    const char *chain;                 /* 9 GAS LEAK > 13 ABANDON: FIRE OR GAS */
    const char *what;                  /* in words, with its rule */
    struct place place;
};
struct hazard_failures {
    const struct hazard_failure *rows;
    size_t count;
};

/* All of them for a boat's composed set, in each chain that begins with a card of that
 * procedure; NULL: of any. What is held back is passed over. */
struct hazard_failures hazards_prove(const struct compose_input *input,
                                     const struct sheet_set *set,
                                     const struct forbids *forbids, const char *from,
                                     struct arena *arena);

/* The same by the whole table, told as errors of the check `leads_into_hazard`. Gives the set
 * with each card that leads there marked as unsafe and held; the set itself where none does. */
const struct sheet_set *hazards_judge(const struct compose_input *input,
                                      const struct sheet_set *set, struct arena *arena,
                                      struct problems *problems);

#endif
