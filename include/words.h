/* words.h - the words of one language (room: words): every sentence a card prints besides
 * the procedures' own, the names of gear and of zones, and which form a number takes. */
#ifndef MAYDECK_WORDS_H
#define MAYDECK_WORDS_H

#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

#include "arena.h"
#include "call_word_list.h"
#include "end_state.h"
#include "form_word_list.h"
#include "item.h"
#include "known_names.h"
#include "problem.h"
#include "source.h"
#include "yaml_fields.h"
#include "zone.h"

/* What the file has for a word: one text; a text, or one for each form that a number takes;
 * how two of a list are joined, or that for two, for many and for the last of many. */
enum word_shape { SHAPE_PLAIN, SHAPE_COUNTED, SHAPE_JOIN };

/* One row a word: its name in C, its key in procedures/words, its shape, and the {names} that
 * are filled in: the text of each language has all of them and no other, so that no language
 * leaves out a place or a tag. (A form that is for one number alone may do without the
 * number, which is the first name of a counted word.) */
#define WORD_LIST(X) \
    X(WHEN, when, PLAIN, "") \
    X(BERTH_SAY, berth_say, PLAIN, "") \
    X(BERTH_SAY_HOME, berth_say_home, PLAIN, "home") \
    X(CARD_NUMBER, card_number, PLAIN, "number") \
    X(YES, yes, PLAIN, "") \
    X(NO, no, PLAIN, "") \
    X(NEVER, never, PLAIN, "") \
    X(CAUTION, caution, PLAIN, "") \
    X(AFTER_STEP, after_step, PLAIN, "step ask") \
    X(SEE_CARD, see_card, PLAIN, "number subject") \
    X(EXIT_CARD, exit_card, PLAIN, "say card") \
    X(URGENCY_CARD, urgency_card, PLAIN, "say number") \
    X(LOCAL_RULE, local_rule, PLAIN, "") \
    X(CONTACT_CENTRE, contact_centre, PLAIN, "name ways") \
    X(CHANNEL_16, channel_16, PLAIN, "") \
    X(CONTACT_BASE, contact_base, PLAIN, "phone") \
    X(CALL_MAYDAY, call_mayday, PLAIN, "") \
    X(CALL_PAN_PAN, call_pan_pan, PLAIN, "") \
    X(CALL_BOTH, call_both, PLAIN, "") \
    X(CALL_HANDHELD, call_handheld, PLAIN, "") \
    X(CALL_NO_RADIO, call_no_radio, PLAIN, "") \
    X(RADIO_AT, radio_at, PLAIN, "tag place") \
    X(HANDHELD_AT, handheld_at, PLAIN, "tag place") \
    X(SET_ON, set_on, PLAIN, "switch") \
    X(SET_ON_PLAIN, set_on_plain, PLAIN, "") \
    X(SET_KEY, set_key, PLAIN, "cover seconds") \
    X(SET_KEY_NO_HOLD, set_key_no_hold, PLAIN, "cover") \
    X(MAYDAY_ONLY, mayday_only, PLAIN, "what") \
    X(SET_KEY_DEAD, set_key_dead, PLAIN, "") \
    X(SET_KEY_HANDHELD, set_key_handheld, PLAIN, "") \
    X(SAY_POSITION, say_position, PLAIN, "") \
    X(READ_POSITION, read_position, PLAIN, "place") \
    X(READ_POSITION_SET, read_position_set, PLAIN, "") \
    X(READ_POSITION_ON, read_position_on, PLAIN, "tag place") \
    X(SET_NO_FIXED, set_no_fixed, PLAIN, "") \
    X(SET_CHANNEL, set_channel, PLAIN, "channel") \
    X(SET_TALK, set_talk, PLAIN, "") \
    X(CAUSE_SMOKE, cause_smoke, PLAIN, "act") \
    X(CAUSE_WATER, cause_water, PLAIN, "act") \
    X(CAUSE_ANY, cause_any, PLAIN, "act") \
    X(USE_HANDHELD, use_handheld, PLAIN, "tag place") \
    X(USE_HANDHELD_KEY, use_handheld_key, PLAIN, "tag place") \
    X(GO_ON_DECK, go_on_deck, PLAIN, "") \
    X(SET_HANDHELD_FIRST, set_handheld_first, PLAIN, "tag place") \
    X(SET_SECOND, set_second, PLAIN, "place") \
    X(SECOND_NAMED, second_named, PLAIN, "place") \
    X(HANDHELD_NAMED, handheld_named, PLAIN, "tag place") \
    X(RADIO_NAMED, radio_named, PLAIN, "tag place") \
    X(SET_HANDHELD_BELOW, set_handheld_below, PLAIN, "tag") \
    X(SET_DECK, set_deck, PLAIN, "") \
    X(SET_CLEAN_AIR, set_clean_air, PLAIN, "") \
    X(SET_CHANNEL_HANDHELD, set_channel_handheld, PLAIN, "") \
    X(SET_LEAVE_FIXED, set_leave_fixed, PLAIN, "") \
    X(NUMBERED_LINE, numbered_line, PLAIN, "number line") \
    X(NO_ANSWER_WAYS, no_answer_ways, PLAIN, "ways") \
    X(NO_ANSWER, no_answer, PLAIN, "") \
    X(THEN_HANDHELD, then_handheld, PLAIN, "tag") \
    X(THEN_PHONE, then_phone, PLAIN, "number") \
    X(THEN_PHONE_ON, then_phone_on, PLAIN, "number") \
    X(THEN_EPIRB, then_epirb, PLAIN, "tag") \
    X(THEN_SET, then_set, PLAIN, "tag") \
    X(THEN_BEACON, then_beacon, PLAIN, "tag") \
    X(THEN_FLARES, then_flares, PLAIN, "tag") \
    X(THEN_SART, then_sart, PLAIN, "tag") \
    X(THEN_SIGNALS, then_signals, PLAIN, "") \
    X(WAY_UPWIND, way_upwind, PLAIN, "way") \
    X(WAY_AT_RAIL, way_at_rail, PLAIN, "way") \
    X(WAY_IN_RAFT, way_in_raft, PLAIN, "way") \
    X(WAY_SPARE_AERIAL, way_spare_aerial, PLAIN, "way") \
    X(WAYS_AND_MAYDAY, ways_and_mayday, PLAIN, "ways grave") \
    X(BEACON_FIRST, beacon_first, PLAIN, "beacons") \
    X(SET_KEY_PLAIN, set_key_plain, PLAIN, "") \
    X(SET_HANDHELD_CARRIED, set_handheld_carried, PLAIN, "") \
    X(SET_FIRST, set_first, PLAIN, "means") \
    X(SET_SMOKE_FIRST, set_smoke_first, PLAIN, "means") \
    X(SET_ALONE, set_alone, PLAIN, "means") \
    X(CLEAR_OF_SMOKE, clear_of_smoke, PLAIN, "means") \
    X(ON_DECK_TOO, on_deck_too, PLAIN, "means") \
    X(SET_OUTSIDE_SMOKE, set_outside_smoke, PLAIN, "") \
    X(CALL_NO_RADIO_IN_REACH, call_no_radio_in_reach, PLAIN, "") \
    X(CALL_NO_RADIO_ABOARD, call_no_radio_aboard, PLAIN, "") \
    X(BEACON_NOW, beacon_now, PLAIN, "beacon tag place") \
    X(BEACON_UPWIND, beacon_upwind, PLAIN, "beacon tag place") \
    X(SET_UPWIND, set_upwind, PLAIN, "") \
    X(PHONE_UPWIND, phone_upwind, PLAIN, "number") \
    X(PHONE_CENTRE, phone_centre, PLAIN, "number") \
    X(FLARES_NOW, flares_now, PLAIN, "beacon tag place") \
    X(WAVE_WHISTLE, wave_whistle, PLAIN, "") \
    X(NATURE_STEPS, nature_steps, PLAIN, "steps") \
    X(POSITION_STEPS, position_steps, PLAIN, "steps") \
    X(POSITION_UNSENT, position_unsent, PLAIN, "") \
    X(URGENCY_STEPS, urgency_steps, PLAIN, "steps") \
    X(NATURE_FIRE, nature_fire, PLAIN, "") \
    X(NATURE_FLOODING, nature_flooding, PLAIN, "") \
    X(NATURE_COLLISION, nature_collision, PLAIN, "") \
    X(NATURE_GROUNDING, nature_grounding, PLAIN, "") \
    X(NATURE_LISTING, nature_listing, PLAIN, "") \
    X(NATURE_SINKING, nature_sinking, PLAIN, "") \
    X(NATURE_ADRIFT, nature_adrift, PLAIN, "") \
    X(NATURE_UNDESIGNATED, nature_undesignated, PLAIN, "") \
    X(NATURE_ABANDON, nature_abandon, PLAIN, "") \
    X(NATURE_PIRACY, nature_piracy, PLAIN, "") \
    X(NATURE_MOB, nature_mob, PLAIN, "") \
    CALL_WORD_LIST(X) \
    FORM_WORD_LIST(X) \
    X(INSIDE_LEAVE, inside_leave, PLAIN, "") \
    X(PERSONS, persons, COUNTED, "count") \
    X(KILOGRAMS, kilograms, PLAIN, "count") \
    X(TABLE_CENTRE, table_centre, PLAIN, "") \
    X(TABLE_BOTH_SIDES, table_both_sides, PLAIN, "") \
    X(TABLE_SIDE_UNKNOWN, table_side_unknown, PLAIN, "") \
    X(DEFER, defer, PLAIN, "") \
    X(DEFER_ORDER, defer_order, PLAIN, "") \
    X(CHECK_CODE, check_code, PLAIN, "") \
    X(PRINTED, printed, PLAIN, "date") \
    X(LANGUAGE, language, PLAIN, "") \
    X(GEAR_DATES, gear_dates, PLAIN, "date") \
    X(GEAR_DATES_NONE, gear_dates_none, PLAIN, "") \
    X(REPLACE, replace, PLAIN, "") \
    X(GEAR_DATES_PAST, gear_dates_past, PLAIN, "date") \
    X(GEAR_DATES_SOME, gear_dates_some, COUNTED, "count date") \
    X(APPROVED, approved, PLAIN, "initials qualification date") \
    X(MARK_SPECIMEN, mark_specimen, PLAIN, "") \
    X(MARK_DRAFT, mark_draft, PLAIN, "") \
    X(MARK_NOT_APPROVED, mark_not_approved, PLAIN, "") \
    X(NOT_RECORDED, not_recorded, PLAIN, "") \
    X(DRAFT_FACT, draft_fact, PLAIN, "fact") \
    X(DRAFT_HANDHELD, draft_handheld, PLAIN, "") \
    X(DRAFT_SIDE, draft_side, PLAIN, "") \
    X(DRAFT_PERSONS, draft_persons, PLAIN, "") \
    X(DRAFT_DSC, draft_dsc, PLAIN, "") \
    X(MEASURE, measure, PLAIN, "") \
    X(PLAN_BOW, plan_bow, PLAIN, "") \
    X(PLAN_STERN, plan_stern, PLAIN, "") \
    X(PLAN_PORT, plan_port, PLAIN, "") \
    X(PLAN_STARBOARD, plan_starboard, PLAIN, "") \
    X(PLAN_PORT_HINT, plan_port_hint, PLAIN, "") \
    X(PLAN_STARBOARD_HINT, plan_starboard_hint, PLAIN, "") \
    X(PLAN_FACING, plan_facing, PLAIN, "") \
    X(PLAN_FACING_STERN, plan_facing_stern, PLAIN, "") \
    X(PLAN_DECK, plan_deck, PLAIN, "") \
    X(PLAN_BELOW, plan_below, PLAIN, "") \
    X(PLAN_HEAD_BELOW, plan_head_below, PLAIN, "") \
    X(PLAN_HEAD_DECK, plan_head_deck, PLAIN, "") \
    X(PLAN_HEAD_HULLS, plan_head_hulls, PLAIN, "") \
    X(PLAN_HEAD_DECK_SALOON, plan_head_deck_saloon, PLAIN, "") \
    X(PLAN_HEAD_WHOLE, plan_head_whole, PLAIN, "") \
    X(PLAN_TOLD, plan_told, PLAIN, "") \
    X(PLAN_TOLD_STERN, plan_told_stern, PLAIN, "") \
    X(TAG_TOLD, tag_told, PLAIN, "tag place") \
    X(BLANK_TOLD, blank_told, PLAIN, "") \
    X(SPACE_MAIN, space_main, PLAIN, "") \
    X(SPACE_GENERATOR, space_generator, PLAIN, "") \
    X(SPACE_PORT, space_port, PLAIN, "") \
    X(SPACE_STARBOARD, space_starboard, PLAIN, "") \
    X(SIDE_PORT, side_port, PLAIN, "") \
    X(SIDE_STARBOARD, side_starboard, PLAIN, "") \
    X(SIDE_CENTRE, side_centre, PLAIN, "") \
    X(SIDE_BOTH, side_both, PLAIN, "") \
    X(VALVE_NONE, valve_none, PLAIN, "") \
    X(ROW_PLACE, row_place, PLAIN, "place") \
    X(ROW_NAME, row_name, PLAIN, "name") \
    X(ROW_END, row_end, PLAIN, "end") \
    X(ROW_CONDITION, row_condition, PLAIN, "gear conditions") \
    X(BEHIND, behind, PLAIN, "what") \
    X(HANDLE_AT, handle_at, PLAIN, "place") \
    X(WORKED_FROM, worked_from, PLAIN, "place") \
    X(ONLY_WHEN, only_when, PLAIN, "conditions") \
    X(ENGINE_RUNNING, engine_running, PLAIN, "") \
    X(ENGINE_STOPPED, engine_stopped, PLAIN, "") \
    X(PLATFORM_UP, platform_up, PLAIN, "") \
    X(PLATFORM_DOWN, platform_down, PLAIN, "") \
    X(HANDLED_STATE, handled_state, PLAIN, "how state") \
    X(OPENINGS_AT, openings_at, PLAIN, "side") \
    X(OPENINGS_HANDLED, openings_handled, PLAIN, "side how state") \
    X(OPENING_HANDLED, opening_handled, PLAIN, "opening how") \
    X(TAG_RANGE, tag_range, PLAIN, "first last") \
    X(VENTS_TO, vents_to, PLAIN, "fact") \
    X(NO_LIVE_ELECTRICS, no_live_electrics, PLAIN, "") \
    X(FOR_ADULTS, for_adults, PLAIN, "") \
    X(FOR_CHILDREN, for_children, PLAIN, "") \
    X(FROM_KILOGRAMS, from_kilograms, PLAIN, "fact") \
    X(TO_KILOGRAMS, to_kilograms, PLAIN, "fact") \
    X(LITRES, litres, PLAIN, "fact") \
    X(METRES_LONG, metres_long, PLAIN, "fact") \
    X(LINE_METRES, line_metres, PLAIN, "fact") \
    X(WITH_DSC, with_dsc, PLAIN, "") \
    X(NOT_CHARGED, not_charged, PLAIN, "") \
    X(STIFF, stiff, PLAIN, "") \
    X(SEIZED, seized, PLAIN, "") \
    X(LOCKED, locked, PLAIN, "") \
    X(BREAKER_AT, breaker_at, PLAIN, "fact") \
    X(NEEDS_ENGINE, needs_engine, PLAIN, "") \
    X(SOUNDS, sounds, PLAIN, "fact") \
    X(SECOND_STATION, second_station, PLAIN, "place") \
    X(SPARE_AERIAL, spare_aerial, PLAIN, "place") \
    X(ENGINE_PORT, engine_port, PLAIN, "") \
    X(ENGINE_STARBOARD, engine_starboard, PLAIN, "") \
    X(SAFETY_DECK, safety_deck, PLAIN, "") \
    X(SAFETY_BELOW, safety_below, PLAIN, "") \
    X(SAFETY_SIGNS_DECK, safety_signs_deck, PLAIN, "number") \
    X(SAFETY_SIGNS_BELOW, safety_signs_below, PLAIN, "number") \
    X(SAFETY_SIGNS_MANY, safety_signs_many, PLAIN, "first last") \
    X(SAFETY_SIGNS_DECK_MANY, safety_signs_deck_many, PLAIN, "first last") \
    X(SAFETY_SIGNS_BELOW_MANY, safety_signs_below_many, PLAIN, "first last") \
    X(SAFETY_CALL_LINE, safety_call_line, PLAIN, "") \
    X(SAFETY_SEEN, safety_seen, PLAIN, "") \
    X(SAFETY_SIGNS_SEEN, safety_signs_seen, PLAIN, "") \
    X(SEEN_ASK, seen_ask, PLAIN, "") \
    X(SEEN_TAKE, seen_take, PLAIN, "") \
    X(SEEN_LINE, seen_line, PLAIN, "") \
    X(SEEN_LINE_CALL, seen_line_call, PLAIN, "number") \
    X(SEEN_HELP, seen_help, PLAIN, "") \
    X(SEEN_FIRE, seen_fire, PLAIN, "") \
    X(SEEN_SMELL, seen_smell, PLAIN, "") \
    X(SEEN_WATER, seen_water, PLAIN, "") \
    X(SEEN_PEOPLE, seen_people, PLAIN, "") \
    X(SEEN_BOAT, seen_boat, PLAIN, "") \
    X(SOURCES, sources, PLAIN, "sources") \
    X(SOURCE, source, PLAIN, "tag issuer ids") \
    X(HERE, here, PLAIN, "") \
    X(HERE_BOW, here_bow, PLAIN, "") \
    X(HERE_STERN, here_stern, PLAIN, "") \
    X(HERE_PORT, here_port, PLAIN, "") \
    X(HERE_STARBOARD, here_starboard, PLAIN, "") \
    X(LEGEND_FIRE, legend_fire, PLAIN, "") \
    X(LEGEND_RESCUE, legend_rescue, PLAIN, "") \
    X(LEGEND_CONTROL, legend_control, PLAIN, "") \
    X(FIGURE_FACT, figure_fact, PLAIN, "figure") \
    X(FIGURE_ESTIMATED, figure_estimated, PLAIN, "figure") \
    X(FIGURE_BEATS, figure_beats, PLAIN, "openings") \
    X(FIGURE_MAY_BEAT, figure_may_beat, PLAIN, "openings") \
    X(FIGURE_BEATS_AND_MAY, figure_beats_and_may, PLAIN, "openings others") \
    X(FIGURE_ANY_BEATS, figure_any_beats, PLAIN, "") \
    X(FIGURE_WORST, figure_worst, PLAIN, "openings") \
    X(FIGURE_BUNG, figure_bung, PLAIN, "openings size") \
    X(FIGURE_SEALS, figure_seals, COUNTED, "") \
    X(FIGURE_FLOOR, figure_floor, COUNTED, "minutes") \
    X(FIGURE_RUN, figure_run, PLAIN, "knots metres") \
    X(FIGURE_BOAT_FULL, figure_boat_full, PLAIN, "") \
    X(FIGURE_RAFT, figure_raft, PLAIN, "places persons") \
    X(FIGURE_EMPTY, figure_empty, PLAIN, "seconds") \
    X(DOCUMENT_TITLE, document_title, PLAIN, "boat what") \
    X(DOCUMENT_CARDS, document_cards, PLAIN, "") \
    X(LEAF_FRONT, leaf_front, PLAIN, "card") \
    X(LEAF_BACK, leaf_back, PLAIN, "card") \
    X(LEAF_CALL, leaf_call, PLAIN, "card") \
    X(LEAF_CALL_BACK, leaf_call_back, PLAIN, "line") \
    X(LEAF_CALL_APART, leaf_call_apart, PLAIN, "line") \
    X(COUNTED_ITEMS, counted_items, PLAIN, "count items") \
    X(JOIN_COMMA, join_comma, JOIN, "before next") \
    X(JOIN_DOT, join_dot, JOIN, "before next") \
    X(JOIN_SPACE, join_space, JOIN, "before next") \
    X(JOIN_STOP, join_stop, JOIN, "before next") \
    X(JOIN_SEMICOLON, join_semicolon, JOIN, "before next") \
    X(JOIN_SLASH, join_slash, JOIN, "before next")

enum word {
#define WORD_ENUM(name, ...) WORD_##name,
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

/* Sets of words by which texts that people wrote are understood, one row each: its name in C,
 * the section and the key it has in the file. Those of `reading` every language has: by them
 * what the record says is read, and lines are broken. Those of `proof` a language may lack: then
 * its commands are not judged so. */
#define WORD_SET_LIST(X) \
    X(UNITS, reading, units) X(NUMBERED, reading, numbered) X(AHEAD, reading, ahead) \
    X(ABAFT, reading, abaft) X(FORE, reading, fore) X(AFT, reading, aft) \
    X(BOTH_SIDES, reading, both_sides) \
    X(VERBS, proof, verbs) X(COMMAND_STATES, proof, command_states) \
    X(DONTS, proof, donts) X(JOINTS, proof, joints) X(NEGATIVES, proof, negatives) \
    X(PASSIVE, proof, passive) X(ACT_OPEN, proof, act_open) X(ACT_START, proof, act_start) \
    X(ACT_LIGHT, proof, act_light) X(ACT_LIFT, proof, act_lift) X(ACT_POUR, proof, act_pour) \
    X(ACT_LEAVE, proof, act_leave) X(ENDS_OFF, proof, ends_off) X(ENDS_ON, proof, ends_on) \
    X(COLOURS, proof, colours)

enum word_set {
#define WORD_SET_ENUM(name, section, key) SET_##name,
    WORD_SET_LIST(WORD_SET_ENUM)
#undef WORD_SET_ENUM
    WORD_SET_COUNT
};

struct words;

/* The words of some languages. */
struct languages {
    const struct words *const *rows;
    size_t count;
};

/* Those of that language; NULL: it is none of them. */
const struct words *language_words(const struct languages *languages, const char *language);

/* The words of one file, made in the arena; `language` is what its folder is called. Complete
 * or not at all: NULL (with problems, each at its place) when a word, item or zone is missing,
 * unknown or malformed, or the file is of another language. */
const struct words *words_read(const struct source *source, const char *language,
                               struct arena *arena, struct problems *problems);

/* All keys of a file of words, with every form that any language may have. */
const struct field_table *words_file_fields(void);

/* The code of the language (en), and the language's own name for itself (English). */
const char *words_language(const struct words *words);
const char *words_language_name(const struct words *words);

/* By how many hundredths its texts are longer than English ones that say the same: as many may
 * the words of a headline be. 0: its file does not tell. */
int words_longer(const struct words *words);

/* The text of a word as the file has it, with its {names} and **bold** parts; of one with
 * several the one that stands for most. */
const char *words_get(const struct words *words, enum word word);

/* The text that a counted word has for so many. */
const char *words_counted(const struct words *words, enum word word, uint64_t count);

/* How the joint of a list with `members` between its members `at` - 1 and `at` is written. */
const char *words_joint(const struct words *words, enum word word, size_t at, size_t members);

/* Length of a {name} at the start of `text`, braces included; 0 where there is none. */
size_t words_blank_length(const char *text);

/* The sentence with each {name} replaced by the value given for it, as pairs
 * name, value, ended by NULL. A name that is not given stays visible in braces,
 * which the proofreader refuses. */
const char *words_fill(const struct words *words, struct arena *arena, enum word word, ...)
    __attribute__((sentinel));

/* Which form that many things take in this language. */
enum plural words_plural(const struct words *words, uint64_t count);

/* What one piece of gear is called where it stands alone ("Fuel valve"), and behind a number
 * of them ("fuel valves"). NULL for ITEM_NONE. */
const char *words_item(const struct words *words, enum item_key item);
const char *words_items(const struct words *words, enum item_key item, uint64_t count);

/* The words of a set, in the file's order; count 0 where the language lacks it. */
const struct list_value *words_set(const struct words *words, enum word_set set);

/* Is the word, of so many bytes, among them, whatever its case? */
bool words_in_set(const struct words *words, enum word_set set, const char *word, size_t length);

/* All names that gear and zones have in these languages, in the singular and behind numbers, and
 * the synonyms that their files list, of keys and choices too: what the readers of a base's
 * files are handed, so that they can tell what a word was meant for. */
struct known_names words_known(const struct languages *languages, struct arena *arena);

/* What the zone is called ("Chart table"). NULL for ZONE_NONE. */
const char *words_zone(const struct words *words, enum zone_key zone);

/* What the state is called ("shut"). */
const char *words_state(const struct words *words, enum end_state state);

#endif
