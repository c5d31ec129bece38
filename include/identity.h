/* identity.h - MMSI, call sign and name taken apart (room: radio).
 *
 * Pure: a text goes in, what it is and what is wrong with it comes out. Nothing is
 * repaired and nobody is told: a wrong digit sends the rescuers after another boat,
 * and what a fault means for a boat is for the checks to say (rules.h). Tables of the
 * ITU as of RADIO_TABLES_DATED. */
#ifndef MAYDECK_IDENTITY_H
#define MAYDECK_IDENTITY_H

#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

#include "arena.h"

/* ---- administrations ---- */

/* `iso`: HR, GI; UNO, ICAO, WMO for bodies. `administration` answers for it: overseas
 * territories bear their parent's code, by which identities are compared. */
struct administration { const char *iso, *administration, *name; };

#define RADIO_TABLES_DATED "2024"

/* By ISO code; of a MID (the first three characters are looked at); of a call sign's
 * prefix. NULL: not known, not allocated, or not to be decided. */
const struct administration *administration_find(const char *iso);
const struct administration *mid_find(const char *mid);
const struct administration *call_sign_find(const char *call_sign);

/* ---- MMSI (Rec. ITU-R M.585) ---- */

enum { MMSI_DIGITS = 9, MID_DIGITS = 3 };

/* What keeps a text from being nine digits; the first that is found, in this order. */
enum mmsi_fault {
    MMSI_SOUND,
    MMSI_WORDS,        /* none, unknown: no digit in it */
    MMSI_EXPONENT,     /* 2.38E+08: a spreadsheet's, digits lost */
    MMSI_DECIMAL,      /* 238123456.0 */
    MMSI_APOSTROPHE,   /* '238123456: how a spreadsheet keeps a number as text */
    MMSI_UNDERSCORE,   /* 238_123_456 */
    MMSI_SEPARATED,    /* 238,123,456 and the like */
    MMSI_LETTER_O,     /* O or o among digits */
    MMSI_LETTER_L,     /* l, I or | among digits */
    MMSI_WIDE_DIGIT,   /* U+FF10 to U+FF19 */
    MMSI_NO_DIGIT,     /* any other character */
    MMSI_SPACES,       /* spaces at the ends, or two in a row; nine digits otherwise */
    MMSI_LENGTH,
    MMSI_OTHER_FORM    /* sound, but not of the form that was wanted */
};

enum mmsi_form {
    MMSI_SHIP,          /* MIDXXXXXX */
    MMSI_GROUP,         /* 0MIDXXXXX */
    MMSI_COAST,         /* 00MIDXXXX */
    MMSI_AIRCRAFT,      /* 111MIDXXX, search and rescue */
    MMSI_HANDHELD,      /* 8MIDXXXXX */
    MMSI_TENDER,        /* 98MIDXXXX, craft of a parent ship */
    MMSI_AID,           /* 99MIDXXXX, aid to navigation */
    MMSI_AIS_SART,      /* 970XXYYYY: XX is a maker, no MID stands in it */
    MMSI_MAN_OVERBOARD, /* 972XXYYYY */
    MMSI_EPIRB_AIS,     /* 974XXYYYY */
    MMSI_AUTONOMOUS,    /* 979... */
    MMSI_UNASSIGNED     /* all other beginnings */
};

struct mmsi {
    enum mmsi_fault fault;
    size_t at;                      /* the character at fault, from 1; 0: none */
    uint32_t code_point;            /* that character */
    size_t digit_count;             /* of 0 to 9, whatever else is wrong */
    char digits[MMSI_DIGITS + 1];   /* "" unless there are nine */
    enum mmsi_form form;            /* where there are nine */
    char mid[MID_DIGITS + 1];       /* "" where the form has none */
    const struct administration *administration; /* NULL: no MID, or unallocated */
};

/* Single spaces (also no-break ones) between digits are passed over. True when there
 * are nine digits, whatever their form. */
bool mmsi_decode(const char *text, struct mmsi *mmsi);

/* The same, and MMSI_OTHER_FORM when the form is not `wanted`. */
bool mmsi_decode_as(const char *text, enum mmsi_form wanted, struct mmsi *mmsi);

/* All six digits after the MID equal, or 123456: put in for the time being? For a sound
 * one. Three zeros at the end are legitimate. */
bool mmsi_looks_made_up(const struct mmsi *mmsi);

/* What is wrong, to be put after the text itself: "has 8 digits, not nine: ..."; NULL
 * for a sound one. */
const char *mmsi_fault_words(const struct mmsi *mmsi, struct arena *arena);

/* Whose it is: "a ship's", "a coast station's". */
const char *mmsi_form_words(enum mmsi_form form);

/* ---- call signs (RR 19.45 to 19.60) ---- */

enum { CALL_SIGN_SHORTEST = 3, CALL_SIGN_LONGEST = 7 };

enum call_sign_fault {
    CALL_SIGN_SOUND,
    CALL_SIGN_SMALL_LETTER,
    CALL_SIGN_SPACE,
    CALL_SIGN_OTHER_LETTER,   /* above U+007F; `looks_like` may tell */
    CALL_SIGN_SIGN,           /* ASCII, but neither letter nor digit */
    CALL_SIGN_BYTES,          /* not valid UTF-8 */
    CALL_SIGN_LENGTH,
    CALL_SIGN_NONE            /* the word in capitals: it would be called out */
};

enum call_sign_pattern {
    PATTERN_SHIP,            /* RR 19.55, 19.56: 2+2L, 2+2L+1D, 2+4D, 2+1L+4D */
    PATTERN_SHIP_0_OR_1,     /* the same, but 0 or 1 follows a letter: some countries do it */
    PATTERN_SURVIVAL_CRAFT,  /* a ship's with two digits more */
    PATTERN_AIRCRAFT, PATTERN_LAND, PATTERN_AMATEUR, PATTERN_UNKNOWN
};

enum series_kind {
    SERIES_ALLOCATED, SERIES_UNALLOCATED,
    SERIES_HALVED,     /* shared by two: only a letter in third place would tell */
    SERIES_IMPOSSIBLE  /* 0, 1 or two digits in front: no series can be so */
};

struct call_sign {
    enum call_sign_fault fault;
    size_t at;                 /* the character at fault, from 1; 0: none */
    uint32_t code_point;       /* what stands there */
    char looks_like;           /* the letter or digit it may be taken for; 0: none */
    size_t length;             /* in characters */
    /* only where there is no fault: */
    enum call_sign_pattern pattern;
    enum series_kind series;
    const struct administration *holder;       /* SERIES_ALLOCATED, and the first of two */
    const struct administration *other_holder; /* SERIES_HALVED: the second */
    bool of_a_body;            /* United Nations and the like: never a yacht's */
};

/* True when it is made of what call signs are made of, 3 to 7 long. */
bool call_sign_decode(const char *text, struct call_sign *call_sign);

/* What is wrong, to be put after the text itself; NULL for a sound one. */
const char *call_sign_fault_words(const struct call_sign *call_sign, struct arena *arena);

/* How to put it right. */
#define CALL_SIGN_REMEDY \
    "write it as on the ship's radio licence: capitals A to Z and digits only,\n" \
    "or `call_sign: none` if the administration issued none"

/* Why a pattern is worth a word; NULL: a ship's. */
const char *call_sign_pattern_words(enum call_sign_pattern pattern);

/* ---- names ---- */

enum name_fault {
    NAME_SOUND,
    NAME_EMPTY,          /* nothing, or nothing that could be called out */
    NAME_OTHER_LETTERS,  /* letters besides A to Z, for which `proposal` is known */
    NAME_UNSPEAKABLE     /* a sign or letter that has no spelling here */
};

enum name_alphabet { ALPHABET_LATIN, ALPHABET_GREEK, ALPHABET_CYRILLIC, ALPHABET_MIXED };

enum { AIS_NAME_LONGEST = 20 };   /* characters; the six-bit name of AIS */

struct name {
    enum name_fault fault;
    size_t at;                   /* the character at fault, from 1, of the NFC text */
    uint32_t code_point;         /* upper case, unless that is one of A to Z */
    const char *spoken;          /* in capitals; NULL on a fault */
    const char *spelled;         /* in code words; NULL on a fault */
    const char *proposal;        /* in letters A to Z, to be compared with the licence; NULL */
    const char *other_proposal;  /* where ICAO 9303-3 permits a second; NULL: none */
    enum name_alphabet alphabet;
    const char *roman;           /* a numeral that is a word behind another; NULL: none */
    const char *roman_word;      /* its number in English: TWO */
    size_t roman_at;             /* where in `spoken` it stands, in bytes from 0 */
    bool typographic;            /* holds U+2019, which is not on a licence's keyboard */
    size_t length;               /* characters, of the spoken name or its proposal */
};

/* NFC and NFD alike. True when it can be called out and spelled as it is: letters A to
 * Z in either case, digits, space and - ' . & and U+2019. */
bool name_decode(const char *text, struct arena *arena, struct name *name);

/* What is wrong, to be put after the text itself; NULL for a sound one. */
const char *name_fault_words(const struct name *name, struct arena *arena);

/* How to put it right, with the proposal if there is one. */
const char *name_remedy(const struct name *name, struct arena *arena);

#endif
