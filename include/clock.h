/* clock.h - the clock on board against UTC, as a base records it (room: record). */
#ifndef MAYDECK_CLOCK_H
#define MAYDECK_CLOCK_H

#include <stdbool.h>

#include "problem.h"
#include "yaml_fields.h"

/* How far the clock on board is ahead of UTC, and between which days. */
struct clock {
    struct text_value offset;               /* +2 or -3:30, as written */
    struct date_value from, to;             /* not given: always, from ever, for good */
    struct place place;
    int minutes;                            /* `offset`, read: 120 or -210 */
    bool read;
    bool refused;                           /* something in it cannot be read */
};

#endif
