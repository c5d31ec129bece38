/* words.h - the words of one language (room: words): every sentence a card prints besides
 * the procedures' own, the names of gear and of zones, and which form a number takes. */
#ifndef MAYDECK_WORDS_H
#define MAYDECK_WORDS_H

#include <stdint.h>

#include "arena.h"
#include "problem.h"
#include "source.h"

/* The first column names the word in C, the second its key in procedures/words. */
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

/* The forms that a language may have for a number of things: each language names those it
 * has and gives a rule for all of them but `other`, which takes the numbers that are left. */
#define PLURAL_LIST(X) \
    X(ZERO, zero) X(ONE, one) X(TWO, two) X(FEW, few) X(MANY, many) X(OTHER, other)

enum plural {
#define PLURAL_ENUM(name, key) PLURAL_##name,
    PLURAL_LIST(PLURAL_ENUM)
#undef PLURAL_ENUM
    PLURAL_COUNT
};

struct words;

/* The words of one file, made in the arena; `language` is what its folder is called. Complete
 * or not at all: NULL (with problems, each at its place) when a word, item or zone is missing,
 * unknown or malformed, or the file is of another language. */
const struct words *words_read(const struct source *source, const char *language,
                               struct arena *arena, struct problems *problems);

/* The code of the language (en), and the language's own name for itself (English). */
const char *words_language(const struct words *words);
const char *words_language_name(const struct words *words);

/* The text of a word as the file has it, with its {names} and **bold** parts. */
const char *words_get(const struct words *words, enum word word);

/* The sentence with each {name} replaced by the value given for it, as pairs
 * name, value, ended by NULL. A name that is not given stays visible in braces,
 * which the proofreader refuses. */
const char *words_fill(const struct words *words, struct arena *arena, enum word word, ...)
    __attribute__((sentinel));

/* Which form that many things take in this language. */
enum plural words_plural(const struct words *words, uint64_t count);

/* What one piece of gear is called where it stands alone ("Fuel valve"), and behind a number
 * of them ("fuel valves"). NULL for what is no item. */
const char *words_item(const struct words *words, const char *item);
const char *words_items(const struct words *words, const char *item, uint64_t count);

/* What the zone is called ("Chart table"). NULL for what is no zone. */
const char *words_zone(const struct words *words, const char *zone);

#endif
