/* paragraph_known.h - paragraphs that were broken before. Private to src/layout. */
#ifndef MAYDECK_PARAGRAPH_KNOWN_H
#define MAYDECK_PARAGRAPH_KNOWN_H

#include "layout_room.h"

/* Nothing is known yet. Paragraphs made by a pen that has it stand until it ends. */
struct known_paragraphs;
struct known_paragraphs *paragraphs_begin(struct arena *arena);
void paragraphs_end(struct known_paragraphs *known);

#endif
