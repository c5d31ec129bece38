/* print_stream.h - one PDF on standard output (room: app). Private to src/app. */
#ifndef MAYDECK_PRINT_STREAM_H
#define MAYDECK_PRINT_STREAM_H

#include "fleet.h"

/* Is it asked for? */
bool print_is_stream(const struct options *options);

/* Prints the cards of the one boat that is asked for. Nothing of them is written unless the whole
 * PDF is made, and no list or register tells of it. */
enum exit_status print_stream(const struct options *options, const struct fleet *fleet);

#endif
