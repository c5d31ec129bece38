/* print_older.h - what an older print left in the folder (room: app). Private to src/app. */
#ifndef MAYDECK_PRINT_OLDER_H
#define MAYDECK_PRINT_OLDER_H

#include "fleet.h"

/* Tells of each PDF of a boat of this run that lies in the folder and is none of those written: an
 * older print must not pass for a new one. A folder that cannot be read is a problem. */
void older_tell(const struct fleet *fleet, const char *folder, const struct names *written,
                struct problems *problems);

#endif
