/* identity.h - what the files of the radio room share (private to it). */
#ifndef MAYDECK_RADIO_IDENTITY_H
#define MAYDECK_RADIO_IDENTITY_H

#include <stdbool.h>
#include <stddef.h>

#include "radio.h"

/* ---- administrations ---- */

#define MIDS_AT_MOST 12

/* One row: who it is, and the MIDs it was given (ended by 0 if fewer). */
struct administration_row {
    struct administration who;
    unsigned short mids[MIDS_AT_MOST];
};

/* The rows in order; NULL past the end. A country's own row comes before those
 * of its parts that bear its ISO code too (Azores, Alaska). */
const struct administration_row *administration_at(size_t index);

/* By ISO code: HR, GI; also UNO, ICAO, WMO. NULL: not known. */
const struct administration *administration_find(const char *iso);

/* ---- call signs ---- */

enum call_sign_pattern {
    PATTERN_SHIP,            /* RR 19.55, 19.56 */
    PATTERN_SHIP_0_OR_1,     /* the same, but 0 or 1 follows a letter: some countries do it */
    PATTERN_SURVIVAL_CRAFT,  /* a ship's with two digits more */
    PATTERN_AIRCRAFT, PATTERN_LAND, PATTERN_AMATEUR, PATTERN_UNKNOWN
};

/* `call_sign`: A-Z and 0-9 only. */
enum call_sign_pattern call_sign_pattern(const char *call_sign);

enum series_kind {
    SERIES_ALLOCATED, SERIES_UNALLOCATED,
    SERIES_HALVED,     /* shared by two: only a letter in third place would tell */
    SERIES_IMPOSSIBLE  /* 0, 1 or two digits in front: no series can be so */
};

/* *owner is set for SERIES_ALLOCATED. */
enum series_kind call_sign_series(const char *call_sign, const struct administration **owner);

/* False with an error when the call sign holds what no call sign may hold or
 * is not 3 to 7 long. `none` and a missing one are sound. */
bool call_sign_sound(const struct text_value *call_sign, struct problems *problems);

/* All of identity_check that concerns the call sign alone. */
void call_sign_check(const struct boat *boat, struct problems *problems);

/* ---- MMSI ---- */

#define MMSI_DIGITS 9

/* The nine digits without the single spaces people put between them; false if
 * there are not nine, or anything else stands among them. */
bool mmsi_read(const char *text, char digits[MMSI_DIGITS + 1]);

/* All of identity_check that concerns the MMSI alone. */
void mmsi_check(const struct boat *boat, struct problems *problems);

/* ---- names ---- */

/* An upper-case Latin spelling to propose, or NULL where a letter is not known.
 * Only a proposal: what counts is the spelling on the ship's radio licence. */
const char *name_transliterate(struct arena *arena, const char *name);

#endif
