/* print_list.h - what `print --list` says of the sheets of a boat, and why one is held back (room:
 * app). Private to src/app. */
#ifndef MAYDECK_PRINT_LIST_H
#define MAYDECK_PRINT_LIST_H

#include "job.h"

/* Adds a line for each sheet that was asked for: its check code and name, or that it is held
 * back and the first reason for that. */
void sheets_list_add(const struct sheets *sheets, struct text_builder *out);

/* The first of what was told that holds the card back; NULL: nothing that was told names it. */
const struct problem *held_reason(const struct sheets *sheets, const struct sheet *sheet);

#endif
