/* position.h - positions and bearings: reading them as people write them, and
 * printing them (room: base). All in integers: a position in ten-millionths of a
 * degree (about 1 cm), a bearing in thousandths, a variation in tenths. */
#ifndef MAYDECK_POSITION_H
#define MAYDECK_POSITION_H

#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

#include "arena.h"

/* North and east are positive; at most 90 and 180 degrees. */
struct position {
    int64_t latitude_e7, longitude_e7;
};

/* ---- reading ---- */

enum position_fault {
    POSITION_SOUND,
    POSITION_EMPTY,
    POSITION_SIGN,             /* a sign that no position holds */
    POSITION_NUMBER,           /* a number was due here */
    POSITION_DECIMAL_COMMA,    /* 43,4725: one number, or two? */
    POSITION_MINUTES,          /* 60 or more */
    POSITION_SECONDS,
    POSITION_LATITUDE_RANGE,   /* over 90 degrees */
    POSITION_LONGITUDE_RANGE,  /* over 180 degrees */
    POSITION_SIGN_AND_LETTER,  /* -43 N */
    POSITION_NO_LETTER,        /* minutes without N, S, E or W, or only one of the two has it */
    POSITION_TWO_LATITUDES,
    POSITION_TWO_LONGITUDES,
    POSITION_MARK,             /* a degree, minute or second sign in the wrong place */
    POSITION_SEXAGESIMAL,      /* 156600: 43:30:00 that a program took for seconds */
    POSITION_ONE_VALUE,        /* the other half is missing */
    POSITION_MORE,             /* something follows the position */
    POSITION_RUN_TOGETHER      /* degrees and minutes in one number that is not DDMM and DDDMM */
};

/* `at`: the character of the text, from 1. */
struct position_error {
    enum position_fault fault;
    size_t at;
};

/* Reads decimal degrees ("43.4725, 16.435", "-43.5 16.4", "43.4725 N 16.435 E"),
 * degrees and minutes ("43 28.35 N 016 26.1 E") or degrees, minutes and seconds
 * ("43°30'29.3"N 016°26'24.7"E"): signs may be left out, letters stand before or
 * behind, in either case. A plotter's "4328.35N 01626.1E" is read where both halves are
 * so written, with all digits and with their letters. Latitude first, unless letters
 * tell. Decimals past the ninth are dropped; the whole is rounded once. False, with
 * *error, when it is none. */
bool position_parse(const char *text, struct position *position, struct position_error *error);

/* What is wrong and how to put it right, for a message. */
const char *position_fault_text(enum position_fault fault);
const char *position_fault_remedy(enum position_fault fault);

/* ---- printing ---- */

enum position_axis { POSITION_LATITUDE, POSITION_LONGITUDE };

enum position_form {
    POSITION_DEGREES,     /* 43.47250°N: up to 7 decimals */
    POSITION_MINUTES_OF,  /* 43°28.350'N: up to 3 decimals */
    POSITION_SECONDS_OF   /* 43°28'21.0"N: up to 1 decimal */
};

/* One half of a position, rounded once, at its last unit, half away from zero, and carried
 * over. The hemisphere is the position's own, so that it is one letter in every form and at
 * every rounding; zero itself is north and east. What a form does not have is 0; `fraction`
 * is in units of the last decimal. */
struct angle {
    char letter;          /* N S E W */
    unsigned degrees, minutes, seconds, fraction;
};
struct angle position_angle(const struct position *position, enum position_axis axis,
                            enum position_form form, int decimals);

/* 43°28.350'N, and both halves with a space between. */
const char *position_axis_text(struct arena *arena, const struct position *position,
                               enum position_axis axis, enum position_form form, int decimals);
const char *position_text(struct arena *arena, const struct position *position,
                          enum position_form form, int decimals);

/* ---- bearings ---- */

/* As taken: 0 to 360 degrees. */
struct bearing {
    int64_t milli;
    bool magnetic;
};

enum bearing_fault {
    BEARING_SOUND,
    BEARING_NONE,        /* no degrees from 0 to 360, or something behind them */
    BEARING_NO_LETTER    /* "100": by a compass, or true? */
};

/* "100 M" is magnetic, "266 T" true; a bearing without its letter is neither. One to
 * three digits, perhaps with up to three decimals and a degree sign; either case.
 * *bearing is left alone unless the text is sound. */
enum bearing_fault bearing_parse(const char *text, struct bearing *bearing);

/* "4 E", "14 W", "4.5E", "4°30'E", "0": tenths of a degree, east positive; minutes are
 * rounded to tenths. At most 90 degrees. */
bool variation_parse(const char *text, int *tenths);
const char *variation_text(struct arena *arena, int tenths);   /* 4.5 E */

/* The true bearing in thousandths, 0 to 359999: magnetic, plus east, minus west. */
int64_t bearing_true(const struct bearing *bearing, int variation_tenths);

/* The other way: a mark's bearing gives the direction from the mark. */
int64_t bearing_reverse(int64_t milli);

/* Whole degrees in three digits: 086; 359.6 gives 000. */
const char *bearing_text(struct arena *arena, int64_t milli);

/* The nearest of sixteen points: N, NNE, NE, ... */
const char *compass_point(int64_t milli);

#endif
