/* assignment.h - least total length assignment of sites to ports. Private to
 * src/layout. */
#ifndef MAYDECK_ASSIGNMENT_H
#define MAYDECK_ASSIGNMENT_H

#include <stddef.h>

#include "arena.h"

/* What it costs to lead site `site` to port `port`: its length, and more where
 * that pair is unwanted. */
struct costs {
    size_t sites, ports;         /* ports >= sites */
    const double *at;            /* sites rows of ports columns, each >= 0 and finite */
};

/* Gives each site a port of its own so that the sum of costs is least (the
 * Hungarian method with potentials: Kuhn 1955, Munkres 1957; O(sites^2 ports)).
 * Among assignments of equal sum the one whose list of ports is first in
 * lexicographic order is taken, so that the same plan gives the same page. With
 * true lengths as costs no two leaders cross.
 * chosen: room for `sites` numbers of ports. */
void assignment_solve(const struct costs *costs, struct arena *arena, size_t *chosen);

/* The sum of the chosen costs. */
double assignment_sum(const struct costs *costs, const size_t *chosen);

#endif
