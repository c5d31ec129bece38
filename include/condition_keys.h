/* condition_keys.h - the keys of a condition and what may stand under each, for references and
 * schemas (room: procedure). */
#ifndef MAYDECK_CONDITION_KEYS_H
#define MAYDECK_CONDITION_KEYS_H

#include <stddef.h>

enum condition_takes {
    TAKES_WORD,              /* one of `choices` */
    TAKES_WORDS,             /* the same, or a list of them */
    TAKES_ITEM_WORD,         /* items with one of `choices` each */
    TAKES_ITEM_WORDS,        /* items with such a list each */
    TAKES_ITEM_CUTS,         /* items that cut currents, with an item each */
    TAKES_ITEM_FIELDS,       /* items with fields of theirs, with a value each */
    TAKES_CONDITION,
    TAKES_CONDITIONS         /* a list of them */
};

struct condition_key {
    const char *key;                 /* NULL past the last */
    const char *about;               /* how it is written and what it asks */
    enum condition_takes takes;
    const char *const *choices;      /* NULL-ended; NULL of what takes none */
};

struct condition_key condition_key_row(size_t index);

#endif
