/* speak.h - saying phrases in a language (room: speak). */
#ifndef MAYDECK_SPEAK_H
#define MAYDECK_SPEAK_H

#include "arena.h"
#include "phrase.h"
#include "problem.h"
#include "words.h"

/* Who says the phrases of a boat's sheets in one language, and what was said so far: a phrase
 * that is asked for again gives the same string, by address too. */
struct speaker;

/* Lives in the arena, and so does all that is said. What cannot be said well is told in
 * `problems`: an error at the place of the text. */
struct speaker *speaker_new(const struct words *words, struct arena *arena,
                            struct problems *problems);

/* The phrase as UTF-8 with its **bold** parts; "" for one that says nothing. A {name} that
 * nothing is given for stays visible in its braces, which is told, and which the proofreader
 * refuses. */
const char *say(struct speaker *speaker, const struct phrase *phrase);

/* The words that it speaks with. */
const struct words *speaker_words(const struct speaker *speaker);

#endif
