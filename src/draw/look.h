/* look.h - what the files that look at a PDF share. Private to src/draw. */
#ifndef MAYDECK_LOOK_H
#define MAYDECK_LOOK_H

#include <stdint.h>

#include "pdf_look.h"

#define BYTES_NOWHERE SIZE_MAX

bool bytes_stand_at(struct bytes bytes, size_t at, const char *word);

/* Where the word stands first, wholly from `from` on and before `to`; BYTES_NOWHERE. */
size_t bytes_find(struct bytes bytes, size_t from, size_t to, const char *word);

/* pdf_look_said.c: what the packet of XMP says, into the look. */
void said_look(struct bytes pdf, struct pdf_look *look, struct arena *arena);

#endif
