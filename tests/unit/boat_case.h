/* boat_case.h - small boat files for the tests of boat_read. */
#ifndef MAYDECK_TEST_BOAT_CASE_H
#define MAYDECK_TEST_BOAT_CASE_H

#include "record_test.h"

#include "boat.h"

#define MONOHULL \
    "boat: {name: Tamarisk, hull: monohull, rig: sail, loa_m: 12.6, beam_m: 4.1, persons_max: 8}\n"
#define CATAMARAN \
    "boat: {name: Saltbush, hull: catamaran, rig: sail, loa_m: 13, beam_m: 7.2, persons_max: 10}\n"

static bool sound;

static inline const struct boat *boat_of(const char *text)
{
    return boat_read(file_of("boats/tamarisk.yaml", text), "tamarisk", test.arena, test.problems,
                     &sound);
}

/* One piece of gear in line 3 of a monohull's file. */
static inline const struct boat *gear_of(const char *entry)
{
    return boat_of(text_format(test.arena, MONOHULL "equipment:\n  - {%s}\n", entry));
}

#endif
