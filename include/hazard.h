/* hazard.h - what kills on board, what a step makes people do, and the printed words that make
 * an act harmless: the names by which procedures and bases tell of them (room: record). Which
 * hazard forbids which act is the table of the room prove. */
#ifndef MAYDECK_HAZARD_H
#define MAYDECK_HAZARD_H

#include "choice.h"
#include "yaml_fields.h"

/* What is so while a card is followed. */
#define HAZARD_LIST(X) \
    X(HAZARD_FIRE, "fire") X(HAZARD_GAS_FLAME, "gas_flame") X(HAZARD_FUEL_MIST, "fuel_mist") \
    X(HAZARD_VAPOUR, "vapour") X(HAZARD_BATTERY_GAS, "battery_gas") X(HAZARD_WATER, "water") \
    X(HAZARD_SINKING, "sinking") X(HAZARD_PERSON_IN_WATER, "person_in_water") \
    X(HAZARD_BAD_AIR, "bad_air") X(HAZARD_INVERTED, "inverted") X(HAZARD_AGROUND, "aground") \
    X(HAZARD_LIGHTNING, "lightning") X(HAZARD_ADRIFT, "adrift") \
    X(HAZARD_NO_DISTRESS, "no_distress")
enum hazard {
    HAZARD_ANY,              /* in the table: whatever else is so */
    HAZARD_LIST(CHOICE_NAME) HAZARD_COUNT
};
extern const char *const hazard_words[];   /* NULL-ended, each at its value less one */
struct hazard_value CHOICE_OF(enum hazard);
struct hazard_values CHOICES_OF(struct hazard_value);

/* What a step has people do. Most of it follows from its gear and where that is; the rest is
 * written at the step. */
#define ACT_LIST(X) \
    X(ACT_ALL_OUT, "all_out") X(ACT_HEADCOUNT, "count") X(ACT_COUNT_IN, "count_in") \
    X(ACT_CALL, "call") X(ACT_JACKETS, "jackets") \
    X(ACT_GO_BELOW, "go_below") X(ACT_REACH_IN, "reach_in") X(ACT_ENTER_SPACE, "enter_space") \
    X(ACT_OPEN_SPACE, "open_space") X(ACT_SHUT_SPACE, "shut_space") \
    X(ACT_LET_AIR_IN, "let_air_in") X(ACT_USE_FAN, "use_fan") \
    X(ACT_START_ENGINE, "start_engine") X(ACT_TURN_PROPELLER, "turn_propeller") \
    X(ACT_FLAME, "flame") X(ACT_SPARK, "spark") X(ACT_FLARE, "flare") \
    X(ACT_WATER_ON_IT, "water_on_it") X(ACT_CARRY_IT, "carry_it") \
    X(ACT_STAND_IN_LINE, "stand_in_line") X(ACT_SMOTHER_FLAME, "smother_flame") \
    X(ACT_GAS_SEEN_TO, "gas_seen_to") X(ACT_UPWIND, "upwind") \
    X(ACT_CUT_RADIO, "cut_radio") X(ACT_CUT_PUMPS, "cut_pumps") \
    X(ACT_PUMP_OFF, "pump_off") X(ACT_PUMP_ON, "pump_on") \
    X(ACT_HANDHELD, "handheld") X(ACT_FIXED_RADIO, "fixed_radio") X(ACT_RED_KEY, "red_key") \
    X(ACT_BEACON, "beacon") \
    X(ACT_TIE_RAFT, "tie_raft") X(ACT_FREE_RAFT, "free_raft") X(ACT_CUT_LINE, "cut_line") \
    X(ACT_LEAVE_BOAT, "leave_boat") X(ACT_SEND_OFF, "send_off") \
    X(ACT_TIE_BEACON_TO_HULL, "tie_beacon_to_hull") \
    X(ACT_LADDER, "ladder") X(ACT_LOOK_AWAY, "look_away") X(ACT_JUMP_IN, "jump_in") \
    X(ACT_TOUCH_METAL, "touch_metal") X(ACT_LINE_ASTERN, "line_astern") \
    X(ACT_REACH_HIDDEN, "reach_hidden") X(ACT_PREPARE_TO_SINK, "prepare_to_sink") \
    X(ACT_END, "end")
enum act { ACT_NONE, ACT_LIST(CHOICE_NAME) ACT_COUNT };
extern const char *const act_words[];      /* NULL-ended, each at its value less one */
struct act_value CHOICE_OF(enum act);
struct act_values CHOICES_OF(struct act_value);

/* Words on the card under which an act is harmless. */
#define GUARD_LIST(X) \
    X(GUARD_OUTSIDE_SMOKE, "outside_smoke") X(GUARD_UPWIND, "upwind") \
    X(GUARD_FAR_OFF, "far_off") X(GUARD_NOT_ON_IT, "not_on_it") \
    X(GUARD_PAN_ALONE, "pan_alone") X(GUARD_AFTER_CALL, "after_call") \
    X(GUARD_WAY_OUT, "way_out") X(GUARD_PUMPS_WATCHED, "pumps_watched") \
    X(GUARD_FLAT_WATER, "flat_water") X(GUARD_NOBODY_NEAR, "nobody_near") \
    X(GUARD_THIRD_PERSON, "third_person") X(GUARD_STORM_FAR, "storm_far") \
    X(GUARD_ROPES_IN, "ropes_in") X(GUARD_NOT_ITS_VENT, "not_its_vent") \
    X(GUARD_CLEAN_AIR, "clean_air")
enum guard { GUARD_NONE, GUARD_LIST(CHOICE_NAME) GUARD_COUNT };
extern const char *const guard_words[];    /* NULL-ended, each at its value less one */
struct guard_value CHOICE_OF(enum guard);

/* Where the words of a guard stand: the headline, `act`; the card's line on gear below,
 * `rows_below`; or the line of that id among what kills there. */
struct guard_said {
    struct guard_value says;
    struct text_value in;
    struct place place;
};
#define GUARD_IN_ACT "act"
#define GUARD_IN_ROWS_BELOW "rows_below"
struct guards {
    const struct guard_said *items;
    size_t count;
};

#endif
