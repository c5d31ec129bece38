/* administrations.h - what the tables of the ITU share (private to the radio room). */
#ifndef MAYDECK_ADMINISTRATIONS_H
#define MAYDECK_ADMINISTRATIONS_H

#include "identity.h"

#define MIDS_AT_MOST 12

/* One row: who it is, and the MIDs it was given (ended by 0 if fewer). */
struct administration_row {
    struct administration who;
    unsigned short mids[MIDS_AT_MOST];
};

/* The rows in order; NULL past the end. A country's own row comes before those
 * of its parts that bear its ISO code too (Azores, Alaska). */
const struct administration_row *administration_at(size_t index);

/* Whose series: *holder for SERIES_ALLOCATED, both for SERIES_HALVED, else NULL.
 * `call_sign`: A-Z and 0-9 only. */
enum series_kind call_sign_series(const char *call_sign, const struct administration **holder,
                                  const struct administration **other);

/* `call_sign`: A-Z and 0-9 only. */
enum call_sign_pattern call_sign_pattern(const char *call_sign);

/* The Latin capital or digit that a character may be taken for by eye: Cyrillic and
 * Greek capitals, full-width signs. 0: none. */
char latin_lookalike(uint32_t code_point);

/* A spelling in letters A to Z of a text in capitals (NFC), or NULL where a character has
 * none; *other is the second one that is permitted, or NULL. */
const char *name_transliterate(struct arena *arena, const char *upper, const char **other);

/* ALPHABET_LATIN too for what is no letter at all. */
enum name_alphabet name_alphabet(const char *upper);

#endif
