/* beacon.h - the hexadecimal identity of a distress beacon, decoded (room: radio).
 *
 * Pure: a text goes in, a plain struct comes out; what follows from it for a boat
 * is the caller's. First generation (15 digits, bits 26 to 85 of the message):
 * C/S T.001 Issue 4 Rev. 12, Annex A. Second generation (23 digits): C/S T.018
 * Issue 1 Rev. 12, section 3.6. An identity has no check
 * digit: a slip that gives another sound identity cannot be seen here. */
#ifndef MAYDECK_BEACON_H
#define MAYDECK_BEACON_H

#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

#include "arena.h"
#include "radio.h"

enum {
    BEACON_SHORT_DIGITS = 15,  /* first generation, and the short form of the second */
    BEACON_LONG_DIGITS = 23    /* second generation */
};

/* What is wrong with an identity; several may hold at once. */
enum beacon_fault {
    /* The text is no identity: nothing else is known of it. */
    BEACON_FAULT_SPACE,         /* in front, behind, or two in a row; `fault_at` */
    BEACON_FAULT_LOOK_ALIKE,    /* O, I, L, S, G or Z at `fault_at`: `meant` was meant? */
    BEACON_FAULT_SIGN,          /* `sign` at `fault_at` is no hexadecimal digit */
    BEACON_FAULT_LENGTH,        /* `digit_count` is not 15 or 23, nor 22, 30 or 36 */

    /* What it codes cannot be told. */
    BEACON_FAULT_FRAME,         /* whole message: its beginning does not fit its length */
    BEACON_FAULT_CHECK_BITS,    /* whole message: its own check bits do not fit */
    BEACON_FAULT_FIXED_BITS,    /* 23 digits: bits 1 and 12 to 14 are not 1101 */
    BEACON_FAULT_RESERVED,      /* a protocol or type that is not in use */
    BEACON_FAULT_BAUDOT,        /* the character `fault_at` of what is coded is none */
    BEACON_FAULT_FIGURE,        /* the character `fault_at` of a call sign is no figure */
    BEACON_FAULT_ALIGNMENT,     /* call sign: a space inside it, or on the wrong side */
    BEACON_FAULT_BLANK,         /* only spaces stand where the ship's identity belongs */
    BEACON_FAULT_BEACON_NUMBER, /* is not 0 to 9 or A to Z */
    BEACON_FAULT_MMSI_RANGE,    /* more digits than an MMSI has */
    BEACON_FAULT_NOT_NUMBERED,  /* a certificate or serial number that nobody has: 0, or too high */
    BEACON_FAULT_AIS_RANGE,     /* second generation: EPIRB-AIS number over 9999 */

    /* Decoded, but not as a ship's EPIRB should be. */
    BEACON_FAULT_DEVICE_IDENTITY,   /* 97x, 98x: a tender's or AIS identity; may be discarded */
    BEACON_FAULT_COUNTRY_UNKNOWN,   /* no country has this code (table of RADIO_TABLES_DATED) */
    BEACON_FAULT_COUNTRY_NOT_MMSI,  /* second generation: country code is not the MMSI's MID */
    BEACON_FAULT_TEST,              /* coded for tests: no alert is acted on */
    BEACON_FAULT_ORBITOGRAPHY,      /* coded for measuring satellites' orbits */
    BEACON_FAULT_AVIATION,          /* an aircraft's beacon */
    BEACON_FAULT_SHIP_SECURITY,     /* a ship's security alert, which is no distress beacon */
    BEACON_FAULT_PLB,               /* a personal beacon's: right for a PLB, not for an EPIRB */
    BEACON_FAULT_SPARE_BITS,        /* bits that must be zero are not */
    BEACON_FAULT_TAC,               /* second generation: type-approval number 10000 or less */
    BEACON_FAULT_SHORT_FORM,        /* second generation in 15 digits: the ship is cut off */
    BEACON_FAULT_WHOLE_MESSAGE,     /* not the identity but a message that holds it */
    BEACON_FAULT_POSITION,          /* copied from a transmission: holds a position */
    BEACON_FAULT_COUNT
};

enum beacon_outcome {
    BEACON_UNREADABLE,  /* no identity: only the fault's own members are filled in */
    BEACON_FAULTY,      /* decoded as far as it goes; see the faults */
    BEACON_SOUND
};

enum beacon_generation { BEACON_FIRST_GENERATION = 1, BEACON_SECOND_GENERATION = 2 };

enum beacon_protocol {
    BEACON_PROTOCOL_RESERVED,
    /* user protocols, bits 37-39 */
    BEACON_USER_ORBITOGRAPHY, BEACON_USER_AVIATION, BEACON_USER_MARITIME, BEACON_USER_SERIAL,
    BEACON_USER_NATIONAL, BEACON_USER_CALL_SIGN, BEACON_USER_TEST,
    /* location protocols, bits 37-40 */
    BEACON_STANDARD_MMSI, BEACON_STANDARD_ADDRESS, BEACON_STANDARD_ELT, BEACON_STANDARD_OPERATOR,
    BEACON_STANDARD_EPIRB, BEACON_STANDARD_PLB, BEACON_STANDARD_SECURITY, BEACON_STANDARD_TEST,
    BEACON_NATIONAL_ELT, BEACON_NATIONAL_EPIRB, BEACON_NATIONAL_PLB, BEACON_NATIONAL_TEST,
    BEACON_RETURN_LINK, BEACON_ELT_TRACKING,
    BEACON_SECOND
};

enum beacon_kind {
    BEACON_KIND_NOT_TOLD,        /* second generation: the identity does not say */
    BEACON_EPIRB_FLOAT_FREE, BEACON_EPIRB_NOT_FLOAT_FREE,
    BEACON_EPIRB,                /* which of the two is not told */
    BEACON_PLB,                  /* personal */
    BEACON_ELT,                  /* an aircraft's */
    BEACON_SHIP_SECURITY, BEACON_TEST, BEACON_ORBITOGRAPHY,
    BEACON_NATIONAL              /* only the country can tell */
};

/* By what the beacon says whose it is. */
enum beacon_coding {
    BEACON_CODED_OTHERWISE,      /* aircraft, test, orbitography, or not to be told */
    BEACON_CODED_MMSI, BEACON_CODED_CALL_SIGN,
    BEACON_CODED_SERIAL,         /* need not equal the number on the label */
    BEACON_CODED_NATIONAL        /* `serial` is a number of the country's own */
};

enum beacon_homing {
    BEACON_HOMING_NOT_TOLD, BEACON_HOMING_NONE, BEACON_HOMING_121_5, BEACON_HOMING_SART,
    BEACON_HOMING_OTHER
};

enum beacon_position {
    BEACON_POSITION_NONE,        /* this protocol keeps none in the identity */
    BEACON_POSITION_DEFAULT,     /* "no position", as a label has it */
    BEACON_POSITION_CARRIED      /* a real one: `identity` differs from `digits` */
};

struct beacon {
    enum beacon_outcome outcome;
    uint32_t faults;             /* bit n: fault n; ask beacon_has */
    size_t fault_at;             /* from 1: character of the text as written, or of what is coded */
    uint32_t sign;               /* code point */
    char meant;                  /* the digit a look-alike stands for */
    size_t digit_count;

    enum beacon_generation generation;
    char digits[BEACON_LONG_DIGITS + 1];    /* as given, upper case; of a message, its 15 */
    char identity[BEACON_LONG_DIGITS + 1];  /* by which the register is searched */
    enum beacon_protocol protocol;
    enum beacon_kind kind;
    enum beacon_coding coding;
    enum beacon_homing homing;
    enum beacon_position position;

    unsigned country;            /* 0 to 1023; a MID where one is due */
    const struct administration *administration;  /* NULL: no country's */
    char mmsi[10];               /* all nine digits; "" where none is coded */
    char call_sign[8];           /* "" where none is coded */
    char number[3];              /* of the beacon on that ship: 0 the first; "" not coded */
    bool serial_given;
    unsigned serial;
    unsigned certificate;        /* type approval; 0: not coded. Second generation: TAC */
    char ais[5];                 /* last four digits of the EPIRB-AIS identity, or "" */
};

/* Decodes an identity as written: either case, single spaces between groups. 22, 30
 * or 36 digits are a whole message, from which the identity is taken. */
struct beacon beacon_decode(const char *text);

bool beacon_has(const struct beacon *beacon, enum beacon_fault fault);

/* Can be told what it codes? Not where the text is no identity, nor with a fault of
 * the second group of enum beacon_fault. */
bool beacon_decodable(const struct beacon *beacon);

/* "serial-coded float-free EPIRB, country code 366 (United States of America),
 * homing 121.5 MHz". NULL for BEACON_UNREADABLE. */
const char *beacon_words(const struct beacon *beacon, struct arena *arena);

/* `identity` in groups of five: "ADCD0 08004 40401". "" for BEACON_UNREADABLE. */
const char *beacon_grouped(const struct beacon *beacon, struct arena *arena);

/* Where beacon and ship's papers disagree: a set of these. What either of them does
 * not tell is not compared. Countries are compared by administration. */
enum beacon_disagreement {
    BEACON_OTHER_MMSI = 1,          /* MMSI-coded: the last six digits differ */
    BEACON_OTHER_MID = 2,           /* MMSI-coded: the first three differ (re-flagged?) */
    BEACON_OTHER_CALL_SIGN = 4,
    BEACON_OTHER_COUNTRY_MMSI = 8,  /* coded otherwise: not the country of the ship's MMSI */
    BEACON_OTHER_COUNTRY_FLAG = 16  /* not the flag's; MMSI-coded only if no MMSI is given */
};

/* `mmsi_digits`: nine digits, NULL or "" if not recorded; `call_sign` likewise, `none`
 * for a ship that has none; `flag` NULL if not known. 0: nothing disagrees, or the
 * beacon is not beacon_decodable. */
unsigned beacon_against(const struct beacon *beacon, const char *mmsi_digits,
                        const char *call_sign, const struct administration *flag);

#endif
