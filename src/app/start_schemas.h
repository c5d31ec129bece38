/* start_schemas.h - the schemas that `start` lays into a base (room: app). Private to src/app. */
#ifndef MAYDECK_START_SCHEMAS_H
#define MAYDECK_START_SCHEMAS_H

#include "fleet.h"

/* Writes those that are not there, and anew those that an older version of this program wrote; the
 * folder of the base must be there. False: one could not be written, which was told. */
bool schemas_write(const struct options *options, const struct fleet *fleet);

#endif
