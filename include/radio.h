/* radio.h - who the boat is on the air and what is said (room: radio).
 *
 * The script is in English whatever the card's language, in the order of the
 * Radio Regulations (call: 32.13C; message: 32.13D; relay 32.19E and F; urgency
 * 33.12; safety 33.35; cancelling 32.53). */
#ifndef MAYDECK_RADIO_H
#define MAYDECK_RADIO_H

#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

#include "arena.h"
#include "boat.h"
#include "identity.h"
#include "position.h"
#include "problem.h"
#include "words.h"

/* ---- spelling ---- */

/* QTAB2 gives "QUEBEC TANGO ALFA BRAVO TWO"; digits are plain ZERO to NINE, a
 * hyphen HYPHEN, & AND; a space gives " / "; apostrophe and full stop nothing.
 * NULL for any other character: *bad then holds its code point. */
const char *spell(struct arena *arena, const char *word, uint32_t *bad);

/* 20 gives "BISSOTWO NADAZERO": the figure words of Radio Regulations Appendix 14, for
 * training only. Hardly anybody uses them, and they may hinder a real call,
 * so no card and no script has them. What is no digit is passed over. */
const char *spell_itu_figures(struct arena *arena, const char *digits);

/* 200014730 gives "200 014 730". */
const char *mmsi_in_threes(struct arena *arena, const char *mmsi);

/* "FOUR THREE DEGREES TWO EIGHT DECIMAL THREE FIVE MINUTES NORTH, ZERO ONE SIX DEGREES
 * ... EAST": minutes with 0 to 3 decimals. */
const char *position_spoken(struct arena *arena, const struct position *position, int decimals);

/* ---- who speaks (MMSI, call sign and name are taken apart by identity.h) ---- */

/* The name to be spoken: name_spoken, else name_latin, else the name if it is
 * plain Latin; upper case. NULL with an error when none can be spoken. */
const char *spoken_name(const struct boat *boat, struct arena *arena, struct problems *problems);

/* The name to be spelled, in capitals: what the rescuers look up, so name_latin, else
 * the name if it is plain Latin, and only then name_spoken. NULL with an error when
 * none can be spelled. */
const char *spelled_name(const struct boat *boat, struct arena *arena,
                         struct problems *problems);

/* Is there a call sign to say? Not when it is `none` or missing. */
bool call_sign_given(const struct text_value *call_sign);

/* May the set send a DSC alert: dsc yes, and its MMSI programmed? */
bool dsc_ready(const struct boat *boat);

/* ---- natures of distress, in the order of ITU-R M.493 ---- */

struct nature {
    int symbol;            /* 100 */
    const char *label;     /* Fire/explosion: the recommendation's words */
    enum word brief;       /* the same, short enough for a card's list */
    const char *phrase;    /* I AM ON FIRE */
};
const struct nature *nature_of(enum nature_key key);    /* NULL for NATURE_NONE */

/* ---- scripts ---- */

enum piece_kind {
    PIECE_WORDS,     /* spoken */
    PIECE_STRONG,    /* spoken, set in bold */
    PIECE_BLANK,     /* to be filled in by hand; `text` names it (for tests and screen) */
    PIECE_CHOICE     /* one of the words in `text`, parted by spaces, to be circled */
};

struct script_piece {
    enum piece_kind kind;
    const char *text;
    int width_mm;    /* PIECE_BLANK: least width */
};

/* Phrases of a script that cards also quote in their own sentences. What is said on the radio
 * is English in every language. */
#define SPOKEN_THIS_IS "THIS IS"
#define SPOKEN_OVER "OVER"

enum script_element {
    ELEMENT_SIGNAL, ELEMENT_ALL_STATIONS, ELEMENT_NAME, ELEMENT_IDENTITY,
    ELEMENT_MESSAGE_SIGNAL, ELEMENT_POSITION, ELEMENT_NATURE, ELEMENT_ASSISTANCE,
    ELEMENT_OTHER, ELEMENT_OVER
};

/* One phrase, on one line of the card. `label`: only in that case ("GAINING");
 * NULL: always said. */
struct script_line {
    enum script_element element;
    const char *label;
    const struct script_piece *pieces;
    size_t count;
};

struct script {
    const struct script_line *lines;
    size_t count;
};

enum script_form {
    SCRIPT_MAYDAY, SCRIPT_PAN_PAN, SCRIPT_SECURITE, SCRIPT_RELAY, SCRIPT_DOWNGRADE, SCRIPT_CANCEL
};

/* What a script is made from. */
struct script_request {
    enum script_form form;
    const char *label;         /* with `other`: when this form is meant */
    const char *nature;        /* the phrase; NULL: a line "I ..." is left to the caller's list */
    const char *assistance;    /* NULL: I REQUIRE IMMEDIATE ASSISTANCE for MAYDAY */
    bool from_handheld;        /* no DSC alert was sent: the MMSI is not spoken */
    const char *unrecorded;    /* said of a call sign or MMSI that is not recorded; NULL: the line
                                * goes without */
    const struct script_request *other; /* the milder form of the same card, or NULL */
};

/* The script, a phrase a line, in spoken order. With `other`, lines that differ
 * carry labels and the rest is shared. Position: latitude and longitude with
 * degrees and minutes (hemisphere printed where the cruising area lies in one,
 * else to circle), time UTC. NULL (with problems) when the name or call sign
 * cannot be spoken. */
const struct script *script_make(const struct script_request *request, const struct boat *boat,
                                 const struct base_record *base, struct arena *arena,
                                 struct problems *problems);

/* The same script with the blanks of its position filled in, the minutes with
 * POSITION_SAID_DECIMALS, and the position's own hemispheres. */
#define POSITION_SAID_DECIMALS 2
const struct script *script_placed(const struct script *script, const struct position *position,
                                   struct arena *arena);

/* The script as plain lines of text, blanks as "____ (name)". */
const char *script_text(const struct script *script, struct arena *arena);

#endif
