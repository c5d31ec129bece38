/* printed_room.h - what writing and reading the list of what was printed share. Private to
 * src/register. */
#ifndef MAYDECK_PRINTED_ROOM_H
#define MAYDECK_PRINTED_ROOM_H

#include "printed.h"

extern const char *const printed_column_words[];    /* NULL-ended, each at its value less one */

/* What a cell holds that has nothing to say: no cell of a row is empty. */
#define PRINTED_NOTHING "-"
#define PRINTED_OF " of "
#define PRINTED_YES "yes"
#define PRINTED_NO "no"

#endif
