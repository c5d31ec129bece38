/* radio.h - who the boat is on the air and what is said (room: radio).
 *
 * The script is in English whatever the card's language, in the order of the
 * Radio Regulations (call: 32.13C; message: 32.13D; receipt 32.28; relay 32.19E and F;
 * urgency 33.12; safety 33.35; cancelling 32.53). */
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

/* The same as words: "TWO ZERO ZERO, ZERO ONE FOUR, SEVEN THREE ZERO". */
const char *mmsi_spelled(struct arena *arena, const char *mmsi);

/* "FOUR THREE DEGREES TWO EIGHT DECIMAL THREE FIVE MINUTES NORTH, ZERO ONE SIX DEGREES
 * ... EAST": minutes with 0 to 3 decimals. */
const char *position_spoken(struct arena *arena, const struct position *position, int decimals);

/* ---- who speaks (MMSI, call sign and name are taken apart by identity.h) ---- */

/* Why a name that has its letters can still not be called out as it stands. */
enum name_doubt_kind {
    NAME_DOUBT_NONE,
    NAME_DOUBT_FIGURES,   /* "40": as a number, or figure by figure? */
    NAME_DOUBT_SIGNAL,    /* Mayday, Over: heard as what it says */
    NAME_DOUBT_LETTERS    /* Oscar, Mike Two: heard as O and M2 */
};

struct name_doubt {
    enum name_doubt_kind kind;
    const struct text_value *value;      /* the field that would be called out */
    const char *words, *remedy;          /* NULL without a doubt */
};

/* Is the name that spoken_name would give doubtful? False also where it cannot be called
 * out at all. With name_spoken its words are judged: they may hold a signal word behind
 * others, and code words where the licence's name has not the same. */
bool name_doubted(const struct boat_facts *facts, struct arena *arena, struct name_doubt *doubt);

/* The name to be spoken: name_spoken, else name_latin, else the name if it is
 * plain Latin; upper case. NULL with an error when none can be spoken, or it is
 * doubted. */
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

/* ---- phrases of an urgency call ---- */

/* What is wrong, and what is asked for, in the words of one table: where a nature of distress
 * has a phrase for the same, that. */
struct urgency_phrase {
    enum word brief;       /* what a card's list calls it */
    const char *phrase;    /* I AM AGROUND; or, behind I REQUIRE, A TOW */
};

/* The row of that index; NULL behind the last. */
const struct urgency_phrase *urgency_problem(size_t index);
const struct urgency_phrase *urgency_need(size_t index);

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
#define SPOKEN_ALL_STATIONS "ALL STATIONS"
#define SPOKEN_OVER "OVER"

enum script_element {
    ELEMENT_SIGNAL, ELEMENT_ALL_STATIONS, ELEMENT_NAME, ELEMENT_IDENTITY,
    ELEMENT_MESSAGE_SIGNAL, ELEMENT_BEACON, ELEMENT_POSITION, ELEMENT_NATURE, ELEMENT_ASSISTANCE,
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
    SCRIPT_MAYDAY, SCRIPT_PAN_PAN, SCRIPT_SECURITE,
    SCRIPT_RECEIPT,          /* of another's MAYDAY */
    SCRIPT_RELAY, SCRIPT_DOWNGRADE,
    SCRIPT_CANCEL,           /* a false alert of the set */
    SCRIPT_CANCEL_BEACON,    /* a beacon's */
    SCRIPT_FORM_COUNT
};

/* What a script is made from. */
struct script_request {
    enum script_form form;
    const char *label;         /* with `other`: when this form is meant */
    const char *nature;        /* the phrase; NULL: a blank, for a phrase of the caller's list */
    const char *assistance;    /* NULL: I REQUIRE IMMEDIATE ASSISTANCE for MAYDAY */
    bool from_handheld;        /* no DSC alert was sent: the MMSI is not spoken */
    bool person_lost;          /* how many are in the water, and since when, is said too */
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

/* The same script with its time filled in: 1430, by the clock that the script names. */
const struct script *script_timed(const struct script *script, const char *digits,
                                  struct arena *arena);

/* "____ MILES ____ OF ____": what is said in place of latitude and longitude. */
const struct script *script_landmark(struct arena *arena);

/* The words of a choice, of which one is said: "NORTH SOUTH" as "NORTH / SOUTH". */
struct text_builder;
void script_choice_add(struct text_builder *out, const char *words);

/* The script as plain lines of text, blanks as "____ (name)". */
const char *script_text(const struct script *script, struct arena *arena);

/* One line of it without its label. */
const char *script_line_text(const struct script_line *line, struct arena *arena);

#endif
