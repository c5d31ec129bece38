/* phrase_known.h - lines of scripts that were laid out before: a call panel is tried at many
 * widths, and the same words stand on many cards. Private to src/layout. */
#ifndef MAYDECK_PHRASE_KNOWN_H
#define MAYDECK_PHRASE_KNOWN_H

#include "call.h"

struct known_phrases;
struct known_phrases *phrases_begin(struct arena *arena, struct known_texts *texts);

/* What a laid phrase hangs on. `line`: its words, whoever says them. */
struct phrase_key {
    const struct known_line *line;
    const struct words *words;
    struct script_sizes sizes;
    mpt width;
};
struct known_line *line_known(struct known_phrases *known, const struct script_line *line);

/* The phrase; NULL: it was not laid out so. Then room for it, in which it is known from then on. */
const struct laid_phrase *phrase_known(const struct known_phrases *known,
                                       const struct phrase_key *key);
struct laid_phrase *phrase_know(struct known_phrases *known, const struct phrase_key *key);

/* Its words and lines stand as long. */
struct arena *phrases_arena(const struct known_phrases *known);

#endif
