/* boats.h - boats that nobody wrote by hand: records of specimens, each complete and free of
 * errors, drawn from a seed. The same seed gives the same boats. */
#ifndef MAYDECK_GENERATE_BOATS_H
#define MAYDECK_GENERATE_BOATS_H

#include <stdbool.h>
#include <stdint.h>

#define BOATS_MOST 20000

/* Writes base.yaml, and `count` boats into boats/ below `folder`, which must both exist and be
 * without boats. False, with errno as it was left: a file could not be written. */
bool boats_write(const char *folder, uint64_t seed, int count);

#endif
