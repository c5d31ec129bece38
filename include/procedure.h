/* procedure.h - the general instructions for one emergency, what they ask of a boat,
 * and the sources they stand on (room: procedure). */
#ifndef MAYDECK_PROCEDURE_H
#define MAYDECK_PROCEDURE_H

#include <stdbool.h>
#include <stddef.h>

#include "arena.h"
#include "choices.h"
#include "end_state.h"
#include "hazard.h"
#include "item_fields.h"
#include "problem.h"
#include "sheet_kinds.h"
#include "symbol.h"
#include "trait.h"
#include "yaml_fields.h"

/* ---- conditions ---- */

enum condition_kind {
    CONDITION_FITTED,      /* item */
    CONDITION_NOT_FITTED,  /* item */
    CONDITION_INSIDE,      /* item, zones */
    CONDITION_IS,          /* item, field, value */
    CONDITION_CUTS,        /* item, other: what is cut off */
    CONDITION_REACH,       /* item, reach: how far one goes for it at most */
    CONDITION_BEYOND,      /* the same; a piece of it lies farther away */
    CONDITION_BOAT,        /* trait: what she is, see trait.h; of one engine space: its engine */
    CONDITION_BREATHS,     /* breaths: of her base */
    CONDITION_STING,       /* sting: of her base */
    CONDITION_TIDE,        /* tide: of her base's waters */
    CONDITION_SURELY,      /* one child: what is not known counts as no, and asks for nothing */
    CONDITION_ALL, CONDITION_ANY, CONDITION_NONE  /* children */
};

/* How far one goes for a piece of gear, from the nearest: both feet on open deck; on deck,
 * but reaching into a locker; at arm's length in the companionway; through the boat, but not
 * into the space that the card is about. */
#define REACH_LIST(X) \
    X(REACH_OPEN_DECK, "open_deck") X(REACH_DECK, "deck") X(REACH_COMPANIONWAY, "companionway") \
    X(REACH_BELOW, "below")
enum reach {
    REACH_ANY,             /* as a limit: none is given */
    REACH_LIST(CHOICE_NAME)
    REACH_COUNT
};
extern const char *const reach_words[];   /* NULL-ended, each at its value less one */
struct reach_value CHOICE_OF(enum reach);

struct condition {
    enum condition_kind kind;
    struct place place;
    enum item_key item, other;
    const enum zone_key *zones;
    size_t zone_count;
    enum gear_field field;
    const char *value;
    enum reach reach;
    enum trait trait;
    enum breaths breaths;
    enum sting sting;
    enum tide tide;
    const struct condition *const *children;
    size_t child_count;
};

/* A mapping with several keys, or a list, means all of them. NULL (with
 * problems) when it is not understood. */
const struct condition *condition_read(const struct yaml_node *node, struct arena *arena,
                                       struct problems *problems);

/* ---- sources ---- */

/* Is it still in force? */
#define SOURCE_STATUS_LIST(X) \
    X(SOURCE_CURRENT, "current") X(SOURCE_SUPERSEDED, "superseded") X(SOURCE_UNKNOWN, "unknown")
enum source_status { SOURCE_STATUS_NONE, SOURCE_STATUS_LIST(CHOICE_NAME) SOURCE_STATUS_COUNT };
extern const char *const source_status_words[];  /* NULL-ended, each at its value less one */
struct source_status_value CHOICE_OF(enum source_status);

/* Read in full; the passage alone; no authority. */
#define SOURCE_GRADE_LIST(X) X(GRADE_VA, "VA") X(GRADE_VB, "VB") X(GRADE_VC, "VC")
enum source_grade { GRADE_NONE, SOURCE_GRADE_LIST(CHOICE_NAME) GRADE_COUNT };
extern const char *const source_grade_words[];   /* NULL-ended, each at its value less one */
struct source_grade_value CHOICE_OF(enum source_grade);

struct authority {
    struct text_value key, issuer, id, title, tag;
    struct date_value read;
    struct source_status_value status;
    struct source_grade_value grade;
    struct place place;
};

struct authorities {
    const struct authority *rows;
    size_t count;
};

const struct authorities *authorities_read(const struct source *source, struct arena *arena,
                                           struct problems *problems);
/* All keys of a file of sources. */
const struct field_table *authority_file_fields(void);
const struct authority *authority_find(const struct authorities *authorities, const char *key);

/* ---- procedures ---- */

/* A sign, and the class of one, as a procedure names it. */
struct symbol_value CHOICE_OF(enum symbol_key);
struct class_value CHOICE_OF(enum sign_class);

/* What a text of a card stands on: sources, or practice that awaits sign-off. */
struct basis {
    struct list_value sources;
    struct answer_value practice;
};

/* A piece of gear of a step, and the state that the step brings it into; STATE_ANY: none is
 * named, and its one use is meant. */
struct item_use {
    enum item_key value;
    enum end_state state;
    struct place place;
};
struct item_uses CHOICES_OF(struct item_use);

/* The entry of the list that names the item; NULL: none does. */
const struct item_use *item_use_find(const struct item_uses *list, enum item_key item);

/* Gear as rows, or as a table by zone. */
#define GEAR_TABLE_LIST(X) X(GEAR_TABLE_ZONES, "zones")
enum gear_table { GEAR_TABLE_NONE, GEAR_TABLE_LIST(CHOICE_NAME) GEAR_TABLE_COUNT };
struct gear_table_value CHOICE_OF(enum gear_table);

/* `act` holds **bold** parts. A case without `when` always applies. One with an `id` has an
 * act of its own, one without has that of its step. `report`: what the card's radio messages
 * add where the case is taken, in English. */
struct step_case {
    const struct condition *when;
    struct reach_value within;
    struct text_value id, act, because, report;
    struct item_uses uses, also;
    struct list_value lethal_ids, lethal;   /* as many: the ids, and their texts */
    struct act_values does;         /* with those of its step */
    struct guards guards;           /* the same */
    struct basis basis;
    struct place place;
};

struct procedure_step {
    struct text_value id, act, because, who;
    struct gear_table_value table;
    struct reach_value within;      /* gear farther away is not offered */
    struct list_value lethal_ids;   /* what kills here: the ids, and as many texts, a line each */
    struct list_value lethal;
    struct item_uses uses, also;  /* also: gear shown where it is recorded; see asked.h */
    struct act_values does;         /* what its gear does not tell */
    struct guards guards;
    struct basis basis;
    const struct condition *when;   /* the step stands on the card only then; NULL: always */
    const struct step_case *cases;
    size_t case_count;
    bool ends;                      /* the last case is for every other boat */
    struct place place;
};

/* {names} of facts of the base, which words for a berth and an anchorage may have besides: whom
 * to ring there. */
#define BASE_NAME_LIST(X) X(BASE_FIRE_PHONE, "fire_phone") X(BASE_RESCUE_PHONE, "rescue_phone")
enum base_name { BASE_NAME_NONE, BASE_NAME_LIST(CHOICE_NAME) BASE_NAME_COUNT };
extern const char *const base_name_words[];    /* NULL-ended, each at its value less one */

/* {names} of facts of the boat, which all words may have that may name a step: her draught in
 * metres, a number alone, and where a person who is hurt is laid down. */
#define BOAT_NAME_LIST(X) X(BOAT_NAME_DRAUGHT, "draught") X(BOAT_NAME_LAY_DOWN, "lay_down_place")
enum boat_name { BOAT_NAME_NONE, BOAT_NAME_LIST(CHOICE_NAME) BOAT_NAME_COUNT };
extern const char *const boat_name_words[];    /* NULL-ended, each at its value less one */

/* Words of which the first whose `when` holds are printed (NULL: always); `card`: the card
 * that is to be gone on with. {id} in them stands for the number of a step of this
 * procedure or of another card. */
struct said {
    const struct condition *when;
    struct text_value id;           /* NULL where there is only one */
    struct text_value say, card;
    struct basis basis;             /* of words for a berth or an anchorage */
    struct hazard_values over;      /* of an exit: what that answer rules out for the steps that
                                       follow the question */
    struct place place;
};

struct said_list {
    const struct said *items;
    size_t count;
};

struct decision {
    bool given;
    struct text_value ask, after;
    struct said_list yes, no;
    struct basis basis;
    struct place place;
};

/* A never or a caution; `when` NULL: always. */
struct warning {
    struct text_value id, say;
    struct symbol_value symbol; /* of a never: the sign of a prohibition, or none */
    struct act_values forbids;  /* of a never: what nobody does, on later cards either */
    const struct condition *when;
    struct basis basis;
    struct place place;
};

/* From the gravest down. */
#define SIGNAL_LIST(X) \
    X(SIGNAL_MAYDAY, "mayday") X(SIGNAL_PAN_PAN, "pan_pan") X(SIGNAL_SECURITE, "securite")
enum call_signal { SIGNAL_NONE, SIGNAL_LIST(CHOICE_NAME) SIGNAL_COUNT };
extern const char *const signal_words[];    /* NULL-ended, each at its value less one */
struct signal_value CHOICE_OF(enum call_signal);

/* What is about where a call is made, and so from where: the fixed set, and nothing bars it; the
 * same in a fire, only outside the smoke; first what can be worked on deck, since somebody is to
 * be kept in sight; the handheld on deck alone, since there is vapour; the same, or the one that
 * somebody has with him; the fixed set, on a boat that goes down; only what is reached on deck,
 * since the air below is bad or the boat lies upside down; a handheld first, since the set's
 * aerial went with the mast. */
#define CALL_FROM_LIST(X) \
    X(CALL_FROM_FIXED, "fixed") X(CALL_FROM_FIXED_IN_FIRE, "fixed_in_fire") \
    X(CALL_FROM_DECK_FIRST, "deck_first") X(CALL_FROM_HANDHELD, "handheld_on_deck") \
    X(CALL_FROM_HANDHELD_CARRIED, "handheld_carried") X(CALL_FROM_GOING_DOWN, "going_down") \
    X(CALL_FROM_ON_DECK, "on_deck") X(CALL_FROM_AERIAL_LOST, "aerial_lost")
enum call_from { CALL_FROM_NONE, CALL_FROM_LIST(CHOICE_NAME) CALL_FROM_COUNT };
extern const char *const call_from_words[];    /* NULL-ended, each at its value less one */
struct call_from_value CHOICE_OF(enum call_from);

struct procedure_call {
    const struct condition *when;   /* boats it is for; NULL: all */
    struct text_value id;       /* where the card has several */
    struct signal_value signal;
    struct nature_value nature; /* what the set is told, mayday only */
    struct text_value say;      /* the nature phrase, in English */
    struct text_value assist;   /* the assistance phrase, in English */
    struct call_from_value from;
    struct text_value if_;      /* the condition in words, when there are several */
    struct place place;
};

/* What kind of thing one sees, hears or smells first: the groups of the index of cards, in the
 * order in which they stand there. */
#define SEEN_AS_LIST(X) \
    X(SEEN_AS_HELP, "help") X(SEEN_AS_FIRE, "fire") X(SEEN_AS_SMELL, "smell") \
    X(SEEN_AS_WATER, "water") X(SEEN_AS_PEOPLE, "people") X(SEEN_AS_BOAT, "boat")
enum seen_as { SEEN_AS_NONE, SEEN_AS_LIST(CHOICE_NAME) SEEN_AS_COUNT };
struct seen_as_value CHOICE_OF(enum seen_as);

/* Whether a boat has one card of it, or one for each of her engine spaces. */
#define PER_LIST(X) X(PER_ENGINE_SPACE, "engine_space")
enum per { PER_BOAT, PER_LIST(CHOICE_NAME) PER_COUNT };
struct per_value CHOICE_OF(enum per);

/* What is so on the boats of its condition besides. */
struct hazard_case {
    struct hazard_values hazards;
    const struct condition *when;
    struct place place;
};

/* Whose it is: the program's; the program's as a base has changed it; a base's alone. */
enum procedure_origin { PROCEDURE_OF_PROGRAM, PROCEDURE_CHANGED, PROCEDURE_OF_BASE };

struct procedure {
    const struct source *source;
    enum procedure_origin origin;
    bool replaced;                  /* the base has put another in its place, which cannot be used:
                                       its cards are held, in drafts too */
    struct text_value key, title, subject;
    struct sheet_kind_value kind;   /* of its sheet; a card where none is given */
    struct per_value per;
    struct symbol_value symbol;     /* the sign beside the title: of the class of the stripe */
    struct class_value stripe;      /* fire, rescue, control or warning */
    struct number_value number;     /* of its card, fixed for good; only a form of it shares it */
    struct text_value form_of;      /* the procedure that it is another form of, for other boats */
    struct text_value form_letter;  /* added to its number on a boat that has both cards */
    struct answer_value core;       /* no base leaves its card out */
    struct answer_value optional;   /* its card is made only where it is asked for */
    struct seen_as_value seen_as;   /* the group of its entries in the index of cards, */
    struct list_value seen;         /* and these: what a guest sees, hears or smells first */
    struct list_value signs;
    struct said_list more_signs;    /* one more, on boats that its `when` tells */
    struct said_list berth, anchor; /* what to do there: the line under the signs */
    struct said_list call_when;     /* who calls when: the line under the title */
    struct text_value rows_below;   /* printed with each step that has gear below deck */
    struct hazard_values hazards;   /* what is so when its card is taken up */
    struct hazard_values over;      /* and what is no longer, whichever card led to it */
    const struct hazard_case *hazard_cases;
    size_t hazard_case_count;
    struct zone_value danger_in;    /* the zone that it is about, where it has no card a zone */
    struct item_values vapour_from; /* items whose lockers nobody reaches into for other gear */
    struct item_values despite_vapour;  /* items that are offered there all the same */
    struct item_values must_know;   /* gear shown `also` that holds the card while nothing is
                                       recorded of it */
    const struct condition *when;   /* the card belongs to the boat's set only then */
    struct text_value when_reason;
    const struct procedure_step *steps;
    size_t step_count;
    struct decision decision;
    const struct warning *nevers;
    size_t never_count;
    const struct warning *cautions;
    size_t caution_count;
    const struct procedure_call *calls;
    size_t call_count;
    const struct text_value *leads; /* {names} in its texts that are no steps of it */
    size_t lead_count;
    const char *logic_sum;          /* SHA-256 of what its logic says, comments and layout apart, */
    const struct text_in_language *text_sums;   /* and of its texts by language; NULL-ended */
    struct files_sums *files_sums;  /* see procedure_files_sum; NULL: none are kept */
};

/* SHA-256 of the bytes of the file of its logic and that of its texts in the language, one behind
 * the other, in hexadecimal. It is made once a procedure and language. */
const char *procedure_files_sum(const struct procedure *procedure, const char *language,
                                struct arena *arena);

/* Calls `visit` for what each of its texts stands on: berth and anchor, steps, cases, decision,
 * nevers and cautions. */
typedef void basis_visit(const struct basis *basis, void *context);
void procedure_bases(const struct procedure *procedure, basis_visit *visit, void *context);

/* A procedure is its logic and, apart from it, its texts in one language or several:
 * procedures/NAME.yaml and procedures/words/LANGUAGE/NAME.yaml. */
struct procedure_text_file {
    const char *language;                  /* its code, as en */
    const struct source *source;
};

struct procedure_files {
    const struct source *logic;
    const struct procedure_text_file *texts;   /* the first gives each text_value its `text` */
    size_t text_count;                         /* one at least */
    enum procedure_origin origin;
};

/* Numbers of cards that bases make, so that none of the program's ever meets them. */
enum { BASE_CARD_FIRST = 60, BASE_CARD_LAST = 99 };

/* Reads one procedure. NULL (with problems) when anything in it is wrong: also where an id
 * of the logic has no text in one of the languages, where a text belongs to no id, or where
 * languages differ in what they say or in the {names} in it. All of it, and what
 * `authorities` and the sources hold, must live as long as the procedure. */
const struct procedure *procedure_read(const struct procedure_files *files,
                                       const struct authorities *authorities,
                                       struct arena *arena, struct problems *problems);

/* All keys of a procedure's logic. What a `when` may hold no table says: all, any and none hold
 * conditions again, and what stands under the others depends on the gear named there. */
const struct field_table *procedure_file_fields(void);

/* All keys of a procedure's texts in one language. */
const struct field_table *procedure_text_fields(void);

bool procedure_has_step(const struct procedure *procedure, const char *id);

struct procedure_set {
    const struct procedure *const *rows;   /* by `number` */
    size_t count;
};

/* Are both of one number because one is another form of the other? */
bool procedures_are_forms(const struct procedure *one, const struct procedure *other);

/* Tells cards that texts and exits lead to, or that are said to have another form, and that are
 * none of the set; and entries of the index that stand for two cards. True: nothing was told. */
bool procedure_set_check(const struct procedure_set *set, struct arena *arena,
                         struct problems *problems);

#endif
