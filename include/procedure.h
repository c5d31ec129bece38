/* procedure.h - the general instructions for one emergency, the sources they
 * stand on, and the words of a language (room: record). */
#ifndef MAYDECK_PROCEDURE_H
#define MAYDECK_PROCEDURE_H

#include <stdbool.h>
#include <stddef.h>

#include "arena.h"
#include "problem.h"
#include "symbol.h"
#include "yaml_fields.h"

/* ---- conditions ---- */

enum condition_kind {
    CONDITION_FITTED,      /* item */
    CONDITION_NOT_FITTED,  /* item */
    CONDITION_INSIDE,      /* item; words: zones */
    CONDITION_IS,          /* item, field, words: one value */
    CONDITION_CUTS,        /* item; words: one other item */
    CONDITION_REACH,       /* item; words: how far one goes for it at most, see enum reach */
    CONDITION_BEYOND,      /* the same; a piece of it lies farther away */
    CONDITION_BOAT,        /* words: what she is, one of boat_words */
    CONDITION_SURELY,      /* one child: what is not known counts as no, and asks for nothing */
    CONDITION_ALL, CONDITION_ANY, CONDITION_NONE  /* children */
};

/* How far one goes for a piece of gear, from the nearest: both feet on open deck; on deck,
 * but reaching into a locker; at arm's length in the companionway; through the boat. */
enum reach { REACH_OPEN_DECK, REACH_DECK, REACH_COMPANIONWAY, REACH_BELOW };
extern const char *const reach_words[];   /* by enum reach but the last; NULL-ended */

/* What a condition may ask of the boat herself: monohull, catamaran; gas: she carries
 * cooking gas, or her record does not deny it; dsc: her fixed set may send a digital
 * alert, or its record does not deny it. NULL-ended. */
extern const char *const boat_words[];

struct condition {
    enum condition_kind kind;
    struct place place;
    const char *item;
    const char *field;
    const char *const *words;
    size_t word_count;
    const struct condition *const *children;
    size_t child_count;
};

/* A mapping with several keys, or a list, means all of them. NULL (with
 * problems) when it is not understood. */
const struct condition *condition_read(const struct yaml_node *node, struct arena *arena,
                                       struct problems *problems);

/* ---- sources ---- */

struct authority {
    struct text_value key, issuer, id, title, tag;
    struct date_value read;
    struct text_value status;   /* current, superseded, unknown */
    struct text_value grade;    /* VA, VB, VC */
};

struct authorities {
    const struct authority *rows;
    size_t count;
};

const struct authorities *authorities_read(const struct source *source, struct arena *arena,
                                           struct problems *problems);
const struct authority *authority_find(const struct authorities *authorities, const char *key);

/* ---- procedures ---- */

/* Words to print, with where they came from. */
struct basis {
    struct list_value sources;
    struct answer_value practice;
};

/* `act` holds **bold** parts. A case without `when` always applies. One with an `id` has an
 * act of its own, one without has that of its step. */
struct step_case {
    const struct condition *when;
    struct text_value id, act, because, within, state, shows;
    struct list_value uses, also;
    struct list_value lethal_ids, lethal;   /* as many: the ids, and their texts */
    struct basis basis;
    struct place place;
};

struct procedure_step {
    struct text_value id, act, because, who, table;
    struct text_value within;       /* a reach_word: gear farther away is not offered */
    struct text_value state;        /* on or off (shut): handling for the other is not printed */
    struct text_value shows;        /* field of the gear printed as its handling; NULL: how */
    struct list_value lethal_ids;   /* what kills here: the ids, and as many texts, a line each */
    struct list_value lethal;
    struct list_value uses, also;   /* also: gear shown when fitted, nothing said when not */
    struct basis basis;
    const struct condition *when;   /* the step stands on the card only then; NULL: always */
    const struct step_case *cases;
    size_t case_count;
    bool ends;                      /* the last case is for every other boat */
    struct place place;
};

/* Words of which the first whose `when` holds are printed (NULL: always); `card`: the card
 * that is to be gone on with. {id} in them stands for the number of a step of this
 * procedure or of another card. */
struct said {
    const struct condition *when;
    struct text_value id;           /* NULL where there is only one */
    struct text_value say, card;
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
    struct text_value symbol;   /* of a never: the sign of a prohibition, or none */
    const struct condition *when;
    struct basis basis;
    struct place place;
};

struct procedure_call {
    const struct condition *when;   /* boats it is for; NULL: all */
    struct text_value id;       /* where the card has several */
    struct text_value signal;   /* mayday, pan_pan, securite */
    struct text_value nature;   /* DSC nature key, mayday only */
    struct text_value say;      /* the nature phrase, in English */
    struct text_value assist;   /* the assistance phrase, in English */
    struct text_value from;     /* one of call_froms */
    struct text_value if_;      /* the condition in words, when there are several */
    struct place place;
};

/* Where a call is made from: the fixed set; the same in a fire, only outside the smoke; the
 * handheld on deck first, then the set; the handheld on deck alone; the same, or the one
 * that somebody has with him. */
enum call_from {
    CALL_FROM_FIXED, CALL_FROM_FIXED_IN_FIRE, CALL_FROM_DECK_FIRST, CALL_FROM_HANDHELD,
    CALL_FROM_HANDHELD_CARRIED
};
extern const char *const call_froms[];      /* by enum call_from; NULL-ended */
enum call_from call_from_of(const struct procedure_call *call);

struct procedure {
    const struct source *source;
    struct text_value key, per, title, subject, kind;
    struct text_value symbol;       /* the sign beside the title: of the class of the stripe */
    enum sign_class stripe;         /* fire, rescue, control or warning */
    struct number_value order;
    struct list_value signs;
    struct said_list call_when;     /* who calls when: the line under the title */
    struct text_value rows_below;   /* printed with each step that has gear below deck */
    struct list_value vapour_from;  /* items whose lockers nobody reaches into for other gear */
    struct list_value despite_vapour;   /* items that are offered there all the same */
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
};

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
};

/* Reads one procedure. NULL (with problems) when anything in it is wrong: also where an id
 * of the logic has no text in one of the languages, where a text belongs to no id, or where
 * languages differ in what they say or in the {names} in it. All of it, and what
 * `authorities` and the sources hold, must live as long as the procedure. */
const struct procedure *procedure_read(const struct procedure_files *files,
                                       const struct authorities *authorities,
                                       struct arena *arena, struct problems *problems);

bool procedure_has_step(const struct procedure *procedure, const char *id);

struct procedure_set {
    const struct procedure *const *rows;   /* by `order`, then key */
    size_t count;
};

/* Tells cards that texts and exits lead to and that are none of the set; true: none was. */
bool procedure_set_check(const struct procedure_set *set, struct arena *arena,
                         struct problems *problems);

/* ---- words ---- */

/* Every word and sentence a card prints besides the procedures' own. The first
 * column names the word in C, the second its key in procedures/words. */
#define WORD_LIST(X) \
    X(WHEN, "when") \
    X(CARD_OF, "card_of") X(YES, "yes") X(NO, "no") X(NEVER, "never") X(CAUTION, "caution") \
    X(AFTER_STEP, "after_step") X(SEE_CARD, "see_card") X(LOCAL_RULE, "local_rule") \
    X(RESCUE_CENTRE, "rescue_centre") X(CHANNEL_16, "channel_16") \
    X(BASE_PHONE, "base_phone") X(CALL_MAYDAY, "call_mayday") X(CALL_PAN_PAN, "call_pan_pan") \
    X(CALL_BOTH, "call_both") X(CALL_HANDHELD, "call_handheld") \
    X(CALL_NO_RADIO, "call_no_radio") X(RADIO_AT, "radio_at") \
    X(HANDHELD_AT, "handheld_at") X(SET_ON, "set_on") X(SET_ON_PLAIN, "set_on_plain") \
    X(SET_KEY, "set_key") X(SET_KEY_NO_HOLD, "set_key_no_hold") \
    X(MAYDAY_ONLY, "mayday_only") X(SET_NO_DSC, "set_no_dsc") \
    X(SET_NO_FIXED, "set_no_fixed") X(SET_CHANNEL, "set_channel") X(SET_TALK, "set_talk") \
    X(SET_HANDHELD, "set_handheld") X(SET_HANDHELD_FIRST, "set_handheld_first") \
    X(SET_HANDHELD_NONE, "set_handheld_none") X(SET_HANDHELD_BELOW, "set_handheld_below") \
    X(SET_DECK, "set_deck") X(SET_CHANNEL_HANDHELD, "set_channel_handheld") \
    X(SET_LEAVE_FIXED, "set_leave_fixed") X(NO_ANSWER, "no_answer") \
    X(THEN_HANDHELD, "then_handheld") X(THEN_EPIRB, "then_epirb") \
    X(THEN_FLARES, "then_flares") X(BEACON_FIRST, "beacon_first") \
    X(SET_KEY_PLAIN, "set_key_plain") \
    X(SET_HANDHELD_CARRIED, "set_handheld_carried") X(SET_DECK_FIRST, "set_deck_first") \
    X(SET_OUTSIDE_SMOKE, "set_outside_smoke") \
    X(CALL_NO_RADIO_ABOARD, "call_no_radio_aboard") X(BEACON_NOW, "beacon_now") \
    X(BEACON_UPWIND, "beacon_upwind") X(SET_UPWIND, "set_upwind") \
    X(PHONE_UPWIND, "phone_upwind") X(PHONE_CENTRE, "phone_centre") \
    X(FLARES_NOW, "flares_now") X(WAVE_WHISTLE, "wave_whistle") \
    X(NATURE_STEPS, "nature_steps") \
    X(DISTRESS_WHEN, "distress_when") X(DISTRESS_NATURE, "distress_nature") \
    X(DISTRESS_PAN_PAN, "distress_pan_pan") X(DISTRESS_RELAY, "distress_relay") \
    X(DISTRESS_DOWNGRADE, "distress_downgrade") X(DISTRESS_CANCEL, "distress_cancel") \
    X(DISTRESS_CANCEL_SET, "distress_cancel_set") X(DISTRESS_SPELL, "distress_spell") \
    X(DISTRESS_CALL_LINE, "distress_call_line") \
    X(DISTRESS_NAMED_AS_BELOW, "distress_named_as_below") \
    X(DISTRESS_THEN_AS_ABOVE, "distress_then_as_above") \
    X(DISTRESS_THEN_THEIRS, "distress_then_theirs") \
    X(DISTRESS_WHAT_ENDED, "distress_what_ended") \
    X(INSIDE_LEAVE, "inside_leave") X(PERSONS, "persons") X(KILOGRAMS, "kilograms") \
    X(ALL_HANDLED, "all_handled") X(OTHERS_HANDLED, "others_handled") \
    X(TABLE_CENTRE, "table_centre") X(TABLE_BOTH_SIDES, "table_both_sides") \
    X(TABLE_SIDE_UNKNOWN, "table_side_unknown") \
    X(DEFER, "defer") X(DEFER_ORDER, "defer_order") \
    X(CHECK_CODE, "check_code") X(PRINTED, "printed") X(LANGUAGE, "language") \
    X(GEAR_DATES, "gear_dates") X(GEAR_DATES_NONE, "gear_dates_none") X(REPLACE, "replace") \
    X(GEAR_DATES_PAST, "gear_dates_past") X(GEAR_DATES_SOME, "gear_dates_some") \
    X(APPROVED, "approved") X(MARK_SPECIMEN, "mark_specimen") X(MARK_DRAFT, "mark_draft") \
    X(MARK_NOT_APPROVED, "mark_not_approved") X(NOT_RECORDED, "not_recorded") \
    X(PLAN_BOW, "plan_bow") X(PLAN_PORT, "plan_port") X(PLAN_STARBOARD, "plan_starboard") \
    X(PLAN_PORT_HINT, "plan_port_hint") X(PLAN_STARBOARD_HINT, "plan_starboard_hint") \
    X(PLAN_FACING, "plan_facing") X(PLAN_DECK, "plan_deck") \
    X(PLAN_BELOW, "plan_below") X(SPACE_PORT, "space_port") \
    X(SPACE_STARBOARD, "space_starboard") \
    X(SIDE_PORT, "side_port") X(SIDE_STARBOARD, "side_starboard") X(SIDE_CENTRE, "side_centre") \
    X(SIDE_BOTH, "side_both") X(VALVE_NONE, "valve_none") X(VENTS_TO, "vents_to") \
    X(ENGINE_PORT, "engine_port") X(ENGINE_STARBOARD, "engine_starboard") \
    X(SAFETY_DECK, "safety_deck") X(SAFETY_BELOW, "safety_below") \
    X(SAFETY_NUMBER, "safety_number") \
    X(SAFETY_SIGNS_DECK, "safety_signs_deck") X(SAFETY_SIGNS_BELOW, "safety_signs_below") \
    X(SAFETY_SIGNS_MANY, "safety_signs_many") \
    X(SAFETY_SIGNS_DECK_MANY, "safety_signs_deck_many") \
    X(SAFETY_SIGNS_BELOW_MANY, "safety_signs_below_many") \
    X(SAFETY_CALL_LINE, "safety_call_line") X(SOURCES, "sources") X(HERE, "here") \
    X(HERE_BOW, "here_bow") X(HERE_STERN, "here_stern") X(HERE_PORT, "here_port") \
    X(HERE_STARBOARD, "here_starboard") X(LEGEND_FIRE, "legend_fire") \
    X(LEGEND_RESCUE, "legend_rescue") X(LEGEND_CONTROL, "legend_control") \
    X(FIGURE_ESTIMATED, "figure_estimated") X(FIGURE_BEATS, "figure_beats") \
    X(FIGURE_MAY_BEAT, "figure_may_beat") X(FIGURE_BEATS_AND_MAY, "figure_beats_and_may") \
    X(FIGURE_ANY_BEATS, "figure_any_beats") X(FIGURE_WORST, "figure_worst") \
    X(FIGURE_BUNG, "figure_bung") X(FIGURE_SEAL, "figure_seal") \
    X(FIGURE_SEALS, "figure_seals") X(FIGURE_FLOOR, "figure_floor") \
    X(FIGURE_FLOOR_ONE, "figure_floor_one") X(FIGURE_RUN, "figure_run") \
    X(FIGURE_BOAT_FULL, "figure_boat_full") X(FIGURE_RAFT, "figure_raft") \
    X(FIGURE_EMPTY, "figure_empty")

enum word {
#define WORD_ENUM(name, key) WORD_##name,
    WORD_LIST(WORD_ENUM)
#undef WORD_ENUM
    WORD_COUNT
};

struct words;

/* NULL (with problems) when a word, item or zone is missing or unknown. */
const struct words *words_read(const struct source *source, struct arena *arena,
                               struct problems *problems);

const char *words_language(const struct words *words);      /* en */
const char *words_get(const struct words *words, enum word word);

/* The sentence with each {name} replaced by the value given for it, as pairs
 * name, value, ended by NULL. A name that is not given stays visible in braces,
 * which the proofreader refuses. */
const char *words_fill(const struct words *words, struct arena *arena, enum word word, ...)
    __attribute__((sentinel));

const char *words_item(const struct words *words, const char *item);       /* Fuel valve */
const char *words_items(const struct words *words, const char *item);      /* Fuel valves */
const char *words_zone(const struct words *words, const char *zone);       /* Chart table */

#endif
