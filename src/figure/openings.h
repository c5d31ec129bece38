/* openings.h - the openings in the hull of one boat, for the figures that are about them.
 * Private to src/figure. */
#ifndef MAYDECK_FIGURE_OPENINGS_H
#define MAYDECK_FIGURE_OPENINGS_H

#include "evaluate.h"
#include "flooding.h"

/* The openings of a boat with what they let in; count 0: the evaluation is over. */
struct openings {
    struct ranked_opening *ranked;       /* worst first */
    const struct equipment **gear;       /* by ranked_opening.index */
    size_t count;
};

struct openings openings_take(struct evaluation *evaluation);

/* Litres a minute through an opening. */
double opening_inflow_lpm(const struct ranked_opening *opening);

/* A shaft's seal is an opening as wide as its tube once the shaft is out. It has no valve
 * and no tag on the card: the card calls it by its name. */
bool is_seal(const struct equipment *gear);

/* Its tag, or its kind where it has none: for the base. */
const char *opening_tag(const struct equipment *gear);

/* Openings for a card: those added one by one, by their tags, and last the seals. */
struct opening_names {
    const struct phrase **at;
    size_t count;
    int64_t seals;
};

/* None yet, with room for all. */
struct opening_names names_begin(const struct evaluation *evaluation,
                                 const struct openings *openings);
void name_add(const struct evaluation *evaluation, struct opening_names *names,
              const struct equipment *gear);

/* "C13, C15, shaft seal"; NULL for none. */
const struct phrase *names_listed(const struct evaluation *evaluation,
                                  struct opening_names *names);

#endif
