/* yaml_slip.h - slips of writing that YAML takes for something else (private to
 * the room yaml): what they look like, and the same put right. */
#ifndef MAYDECK_YAML_SLIP_H
#define MAYDECK_YAML_SLIP_H

#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

#include "arena.h"
#include "known_names.h"

enum { PROPOSAL_LIMIT = 160 };   /* bytes: longer texts are not written out in remedies */

#define KEY_SIGNS "abcdefghijklmnopqrstuvwxyz0123456789_"

/* Length of the key that the text begins with: KEY_SIGNS from a small letter on. */
size_t key_length(const char *text);

/* `tag:E8` as `tag: E8`; NULL for a text that does not begin with a key and a colon. */
const char *colon_spaced(struct arena *arena, const char *text);

/* `zone=galley` as `zone: galley`; NULL for a text that does not begin with a key of files and
 * an equals sign. */
const char *equals_spaced(struct arena *arena, const struct known_names *known,
                          const char *text);

/* Does the text stand in typographic quotes, which YAML takes for letters? */
bool quotes_around(const char *text);

/* The text without typographic quotes at its start and end. */
const char *quotes_off(struct arena *arena, const char *text);

/* The text in the quotes of YAML: double ones where it holds neither " nor \. */
const char *quotes_on(struct arena *arena, const char *text);

/* The text in single quotes, in which only those themselves are doubled. */
const char *single_quotes_on(struct arena *arena, const char *text);

/* Looks like a space and is none: the no-break space and its like. */
bool looks_like_space(uint32_t code_point);

#endif
