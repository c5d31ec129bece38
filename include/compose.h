/* compose.h - the sheets of one boat, composed from her record, the base and the procedures
 * (room: compose): what is said, in order, and never how large or where on a page. */
#ifndef MAYDECK_COMPOSE_H
#define MAYDECK_COMPOSE_H

#include <stdbool.h>
#include <stddef.h>

#include "boat.h"
#include "date.h"
#include "problem.h"
#include "procedure.h"
#include "radio.h"
#include "sheet.h"
#include "words.h"

/* A procedure of which this boat has no card, and why: she does not need it, or it is left out;
 * then `left_out`. */
struct sheet_not_hers { const char *name, *reason, *procedure_key; bool left_out; };

struct sheet_set {
    const struct sheet *const *sheets;
    size_t count;
    size_t held;
    /* Items told as not recorded at all, since they hold cards back. */
    const enum item_key *unrecorded;
    size_t unrecorded_count;
    const struct sheet_not_hers *not_hers;
    size_t not_hers_count;
};

struct hire;    /* brief.h */

/* What a set is composed from. */
struct compose_input {
    const struct boat *boat;
    const struct base_record *base;
    const struct procedure_set *procedures;
    const struct authorities *authorities;
    const struct words *words;
    struct languages languages;   /* each that a text of the record may be in */
    struct date today;            /* printed, and for approvals */
    bool draft;                   /* cards that lack facts are composed too, marked */
    const struct hire *hire;      /* the charter that a skipper's sheet is for; NULL: of all else */
};

/* All cards of the boat's set, in order. A card that needs a fact which the
 * record lacks has `held` set; each such fact is told once with the cards it
 * holds and the YAML to paste. NULL only when nothing could be composed. */
const struct sheet_set *compose_set(const struct compose_input *input, struct arena *arena,
                                   struct problems *problems);

/* A form that shows these pages small, each with its number and check code: what hangs can be held
 * beside it. */
const struct sheet_set *overview_compose(const struct compose_input *input,
                                         const struct views_facts *views, struct arena *arena,
                                         struct problems *problems);

/* A sticker for each piece of the boat's gear that has a tag, in the order of their tags. */
const struct sheet_set *stickers_compose(const struct compose_input *input, struct arena *arena,
                                         struct problems *problems);

/* Notes: each field that a figure of these cards lacks, with its place. */
void figure_notes(const struct compose_input *input, const struct sheet_set *set,
                  struct arena *arena, struct problems *problems);

/* A sheet of the boat's set by its names. */
struct sheet_name { const char *id, *procedure_key, *name; };

/* All of them in order; none is composed. */
const struct sheet_name *sheet_names(const struct compose_input *input, struct arena *arena,
                                     size_t *count);

/* Of the sheet with this id, which must be one of sheet_names, only what it says on the
 * radio: the call panel and the sections of the distress card. A script that cannot be said
 * is NULL, with problems. */
const struct sheet *sheet_calls(const struct compose_input *input, const char *id,
                                struct arena *arena, struct problems *problems);

/* A script of the distress card in full; with a nature, the MAYDAY with that
 * phrase. Also what boats without a fixed set say. NULL (with problems) when it
 * cannot be said. */
const struct script *call_script(const struct compose_input *input, enum script_form form,
                                 const struct nature *nature, struct arena *arena,
                                 struct problems *problems);

/* May a digital distress alert leave this boat? True also where the record does not say
 * of her fixed set. */
bool boat_can_alert(const struct boat *boat);

/* Is an EPIRB or a personal beacon recorded on her? */
bool boat_has_beacon(const struct boat *boat);

/* Name and call sign spelled, MMSI in threes: a line each, what is not recorded or
 * not given left out. NULL (with problems) when the name cannot be said. */
const char *call_spelling(const struct boat *boat, struct arena *arena,
                          struct problems *problems);

/* Cards that base.yaml names in approvals, lines and its choice of cards must be cards of
 * the procedures: an error each with the nearest one. False when one is not. */
bool base_cards_check(const struct base_record *base, const struct procedure_set *procedures,
                      struct arena *arena, struct problems *problems);

/* The same of a boat's lines and choice of cards; and more lines on a card, with those of the base
 * (NULL: it could not be used), than it has room for. */
bool boat_cards_check(const struct boat *boat, const struct base_record *base,
                      const struct procedure_set *procedures, struct arena *arena,
                      struct problems *problems);

/* The same of a choice of cards alone, as a boat's file has one; and what is chosen must be such
 * as can be chosen. */
bool cards_chosen_check(const struct card_choice *choice, const struct procedure_set *procedures,
                        struct arena *arena, struct problems *problems);

/* Does the base hang its card, on boats that say nothing else? */
bool base_hangs(const struct base_record *base, const struct procedure *procedure);

/* Is the card made only where it is asked for, and nobody asks for it? */
bool card_not_asked_for(const struct compose_input *in, const struct procedure *procedure);

/* Notes what the safety plan of this boat cannot show for want of a record. */
void safety_plan_notes(const struct boat *boat, struct problems *problems);

/* The check code of a composed card: CRC-32 of its own facts and language as seven
 * Crockford base-32 signs and a check sign, such as 0TJ8-GE2D. Nothing of other cards but
 * their fixed numbers is in it, nothing that hangs on today's date but approvals, and not
 * what finds room on the page: pages of one sheet share its code. */
const char *check_code(const struct sheet *sheet, struct arena *arena);

/* The code of any canonical bytes; tests use the published answers. */
const char *check_code_of(const unsigned char *bytes, size_t length, struct arena *arena);

/* A fact of the record on which no sheet of the set hangs. */
struct unprinted_fact {
    const char *owner;            /* a tag, boat, gas or radio */
    const char *field, *value;
    struct place place;
};
struct unprinted_facts {
    const struct unprinted_fact *rows;
    size_t count;
};

/* All of them, of the boat's sections and then of her gear: by field, and item by item. Takes
 * the time of composing the set some dozens of times. */
struct unprinted_facts unprinted_facts(const struct compose_input *input,
                                       const struct sheet_set *set, struct arena *arena);

/* The composed sheet as stable text: a line a fact, "~" before what is in no check code, "="
 * before what is on no page. */
void sheet_dump(const struct sheet *sheet, struct text_builder *out);

#endif
