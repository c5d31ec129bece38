/* known_names.h - the names by which people know the keys of files: what cards call them, and
 * what they are called on other boats (room: base). The readers of files get them with the list
 * of problems (problems_know) and know neither language nor file that they come from. */
#ifndef MAYDECK_KNOWN_NAMES_H
#define MAYDECK_KNOWN_NAMES_H

#include <stddef.h>

#include "arena.h"

/* A name of a key. Several keys may have one name. */
struct known_name {
    const char *name;        /* as name_plain gives it */
    const char *key;         /* fuel_shutoff_diesel */
    const char *printed;     /* what cards call it: Fuel valve; NULL: they never name it */
};

struct known_names {
    const struct known_name *rows;
    size_t count;
    const char *const *file_keys;   /* every key that a file of a base may have, NULL-ended; NULL:
                                       nobody tells */
};

/* Is the word, of so many bytes, a key of files? */
enum key_sense { KEY_UNTOLD, KEY_IS_NONE, KEY_IS_ONE };
enum key_sense known_key_sense(const struct known_names *known, const char *word,
                               size_t length);

/* The name without case, accents and signs, its words parted by single spaces: "First-aid kit"
 * and first_aid_kit are one. */
const char *name_plain(struct arena *arena, const char *name);

/* What cards call the key; NULL: nothing that is known. */
const char *known_printed(const struct known_names *known, const char *key);

/* The remedy for a word that is none of `keys` (NULL-ended): the keys that have the name, else
 * the key that it is a slip of, by itself or by a name, else those that it is a part of;
 * `otherwise` where there is none or too many. `known` NULL: the keys are their only names. */
const char *known_remedy(struct arena *arena, const struct known_names *known, const char *word,
                         const char *const *keys, const char *otherwise);

/* The one key that such a remedy names; NULL: none, or several. */
const char *known_key(struct arena *arena, const struct known_names *known, const char *word,
                      const char *const *keys);

#endif
