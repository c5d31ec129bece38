/* print_stickers.h - stickers in the place of cards (room: app). Private to src/app. */
#ifndef MAYDECK_PRINT_STICKERS_H
#define MAYDECK_PRINT_STICKERS_H

#include "fleet.h"

/* Prints the stickers of each boat as BOAT-stickers.pdf, on labels as the options tell. A wrong
 * size of labels is told, and nothing is printed. */
void stickers_print(const struct options *options, struct fleet *fleet);

#endif
