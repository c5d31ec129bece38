/* paragraph_known.h - paragraphs that were broken before. Private to src/layout. */
#ifndef MAYDECK_PARAGRAPH_KNOWN_H
#define MAYDECK_PARAGRAPH_KNOWN_H

#include "layout_room.h"

/* Nothing is known yet. Paragraphs made by a pen that has it stand until it ends. */
struct known_paragraphs;
struct known_paragraphs *paragraphs_begin(struct arena *arena);

/* The texts that they are made of, what is said, parts that are made of them; and what stands as
 * long. */
struct known_texts *paragraphs_texts(const struct known_paragraphs *known);
struct known_phrases *paragraphs_phrases(const struct known_paragraphs *known);
struct known_parts *paragraphs_parts(const struct known_paragraphs *known);
struct arena *paragraphs_arena(const struct known_paragraphs *known);

/* Where much is known nothing is any more, and no pen of before may be used again. */
void paragraphs_forget(struct known_paragraphs *known);
void paragraphs_end(struct known_paragraphs *known);

#endif
