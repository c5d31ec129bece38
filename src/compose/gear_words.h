/* gear_words.h - a piece of gear in the words of the safety plan. Private to src/compose. */
#ifndef MAYDECK_GEAR_WORDS_H
#define MAYDECK_GEAR_WORDS_H

#include "compose_room.h"

/* What a piece is called, and all that a crew can use of it besides its zone and side: its spot,
 * the engine it is for, where it is worked from and with what. The second may be NULL.
 * (safety_places.c) */
struct gear_words { const struct phrase *name, *detail; };
struct gear_words gear_words_of(struct composing *composing, const struct equipment *gear);

#endif
