/* states.h - all that a record can say of what a part of a card hangs on, and the proof of the
 * card and of the chains from it in each such state. */
#ifndef MAYDECK_PROVE_STATES_H
#define MAYDECK_PROVE_STATES_H

#include "forms.h"
#include "prove.h"

#define STATE_ARENA ((size_t)64 * 1024 * 1024)

/* What every state is composed with. */
struct house {
    const struct authorities *authorities;
    const struct words *words;
    const struct base_record *base;
    struct procedure_set procedures;
    struct forbids forbids;
    bool stop;                         /* at the first failure */
    struct arena *arena;
    bool *taken;                       /* cases, in the order of the procedures */
};

/* A part of a card: a step, its decision, its call. */
struct unit {
    const struct procedure *procedure;
    const struct procedure_step *step; /* NULL: not a step */
    const char *name;
};

/* The hulls that parts are tried on, and what the unit reads on one. */
const struct reads *unit_reads(const struct unit *unit, const struct boat *boat,
                               struct arena *arena);
const struct boat *boat_made(const char *text, struct arena *arena, struct problems *problems);
const struct boat *hull_boat(const struct hull_kind *hull, struct arena *arena);

/* Is the unit tried on that kind of boat, or is an earlier one like it? */
bool hull_is_tried(const struct unit *unit, size_t hull);

/* How many states there are of them. */
size_t product_of(const struct forms *forms, size_t count);

/* On how many grounds a product of these is tried: a large one on the first alone. */
size_t grounds_of(const struct forms *varied, size_t count);

/* What was told already. */
struct told {
    const char **at;
    size_t count, room;
};
struct tally {
    size_t states, held, failures;
    struct told told;
};

/* Proves the unit in all its states; tells each failure once, with the boat. */
void unit_prove(const struct house *house, const struct unit *unit, struct tally *tally);

/* Is it the first such text since all were forgotten? */
bool seen_first(const char *text, size_t length);
void seen_forget(void);

/* Which of all cases this is. */
size_t case_number(const struct house *house, const struct step_case *step_case);

/* The procedure and all that its exits and words lead to, in the order of the set. */
struct procedure_set chain_set(const struct house *house, const struct procedure *procedure,
                               struct arena *arena);

#endif
