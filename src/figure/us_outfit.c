/* us_outfit.c - the extinguishers that the United States ask of a boat at least (room:
 * figure). Indicative: the list of her own flag decides. Never judges what she has. */
#include "fire_gas.h"

#include <stddef.h>

#include "promise.h"

#define METRES_PER_FOOT 0.3048
#define LENGTH_COVERED_FT 65.0

struct outfit_line {
    double below_ft;
    struct us_outfit outfits[2];      /* by enum us_system */
};

/* The last line takes in its own end. */
static const struct outfit_line lines[] = {
    {26.0, {{1, -1}, {0, -1}}},
    {40.0, {{2, 0}, {1, -1}}},
    {LENGTH_COVERED_FT, {{3, 1}, {2, 0}}},
};

bool us_outfit_least(double loa_m, enum us_system system, struct us_outfit *outfit)
{
    double feet = loa_m / METRES_PER_FOOT;
    if (feet > LENGTH_COVERED_FT)
        return false;
    size_t row = 0;
    while (row + 1 < sizeof lines / sizeof *lines && feet >= lines[row].below_ft)
        row++;
    promise(system <= US_FIXED_SYSTEM);
    *outfit = lines[row].outfits[system];
    return true;
}
