/* forbid_list.h - what each hazard forbids, one row one purpose (private to src/prove).
 * Columns: id, hazard, act, rule, then what makes the act right all the same: the guard that is
 * printed, the act since which alone it counts, the act that must come first, the act that must
 * come later (NONE: nothing does); and why. */
#ifndef MAYDECK_FORBID_LIST_H
#define MAYDECK_FORBID_LIST_H

#define FORBID_LIST(X) \
    /* inside the space */ \
    X(fire_enter, FIRE, ENTER_SPACE, "R1", NONE, ALL_OUT, NONE, NONE, \
      "the space that burns is entered") \
    X(vapour_enter, VAPOUR, ENTER_SPACE, "R1", NONE, NONE, NONE, NONE, \
      "the space that the vapour comes from is entered") \
    X(battery_enter, BATTERY_GAS, ENTER_SPACE, "R1", NONE, NONE, NONE, NONE, \
      "the space of the gassing battery is entered") \
    X(mist_enter, FUEL_MIST, ENTER_SPACE, "R17", NONE, NONE, NONE, NONE, \
      "the space is entered before it is known that no fuel sprays there") \
    X(air_enter, BAD_AIR, ENTER_SPACE, "R19", NONE, NONE, NONE, NONE, \
      "the space with bad air is entered") \
    /* below, once all are on deck */ \
    X(vapour_below, VAPOUR, GO_BELOW, "R2", NONE, ALL_OUT, NONE, NONE, \
      "somebody goes below into the vapour") \
    X(vapour_reach, VAPOUR, REACH_IN, "R2", NONE, ALL_OUT, NONE, NONE, \
      "somebody reaches into the vapour from the companionway") \
    X(battery_below, BATTERY_GAS, GO_BELOW, "R2", NONE, ALL_OUT, NONE, NONE, \
      "somebody goes below into the battery gas") \
    X(battery_reach, BATTERY_GAS, REACH_IN, "R2", NONE, ALL_OUT, NONE, NONE, \
      "somebody reaches into the battery gas from the companionway") \
    X(fire_below, FIRE, GO_BELOW, "R3", OUTSIDE_SMOKE, ALL_OUT, NONE, NONE, \
      "somebody goes below without: only outside the smoke") \
    X(air_below, BAD_AIR, GO_BELOW, "R19", CLEAN_AIR, ALL_OUT, NONE, NONE, \
      "something is fetched from the bad air") \
    X(person_below, PERSON_IN_WATER, GO_BELOW, "R10", THIRD_PERSON, NONE, NONE, NONE, \
      "somebody goes below while a person is in the water") \
    X(fire_all_out, FIRE, END, "R3", NONE, NONE, ALL_OUT, NONE, "nobody is told to go on deck") \
    X(vapour_all_out, VAPOUR, END, "R2", NONE, NONE, ALL_OUT, NONE, \
      "nobody is told to go on deck") \
    X(battery_all_out, BATTERY_GAS, END, "R2", NONE, NONE, ALL_OUT, NONE, \
      "nobody is told to go on deck") \
    X(air_all_out, BAD_AIR, END, "R19", NONE, NONE, ALL_OUT, NONE, \
      "nobody is told to go on deck") \
    /* what lights vapour */ \
    X(vapour_spark, VAPOUR, SPARK, "R4", NONE, NONE, NONE, NONE, "a contact can spark in vapour") \
    X(vapour_flame, VAPOUR, FLAME, "R4", NONE, NONE, NONE, NONE, "a flame is lit in vapour") \
    X(vapour_flare, VAPOUR, FLARE, "R4", FAR_OFF, NONE, NONE, NONE, \
      "a flare is offered where vapour lies") \
    X(vapour_fixed, VAPOUR, FIXED_RADIO, "R4", NONE, NONE, NONE, NONE, \
      "the fixed radio is worked in vapour") \
    X(vapour_key, VAPOUR, RED_KEY, "R4", NONE, NONE, NONE, NONE, \
      "the red key is pressed in vapour") \
    X(vapour_handheld, VAPOUR, HANDHELD, "R4", UPWIND, NONE, NONE, NONE, \
      "the handheld is keyed without: upwind") \
    X(vapour_beacon, VAPOUR, BEACON, "R4", UPWIND, NONE, UPWIND, NONE, \
      "the beacon is turned on without: upwind") \
    X(vapour_engine, VAPOUR, START_ENGINE, "R4", NONE, NONE, NONE, NONE, \
      "an engine is started in vapour") \
    /* a gassing battery */ \
    X(battery_shut, BATTERY_GAS, SHUT_SPACE, "R5", NOT_ITS_VENT, NONE, NONE, NONE, \
      "battery gas is shut in and explodes") \
    X(battery_open, BATTERY_GAS, OPEN_SPACE, "R5", NONE, NONE, NONE, NONE, \
      "the battery's lid or space is opened") \
    X(battery_line, BATTERY_GAS, STAND_IN_LINE, "R5", NONE, NONE, NONE, NONE, \
      "somebody stands in line with the battery's lid") \
    X(battery_water, BATTERY_GAS, WATER_ON_IT, "R7", NONE, NONE, NONE, NONE, \
      "water goes on the battery") \
    X(battery_carry, BATTERY_GAS, CARRY_IT, "R7", NONE, NONE, NONE, NONE, \
      "the battery is carried") \
    X(battery_flare, BATTERY_GAS, FLARE, "R5", FAR_OFF, NONE, NONE, NONE, \
      "a flare is offered beside battery gas") \
    X(battery_flame, BATTERY_GAS, FLAME, "R5", NONE, NONE, NONE, NONE, \
      "a flame is lit beside battery gas") \
    X(battery_fixed, BATTERY_GAS, FIXED_RADIO, "R16", UPWIND, NONE, NONE, NONE, \
      "the fixed radio is worked in battery gas") \
    X(battery_key, BATTERY_GAS, RED_KEY, "R16", NONE, NONE, NONE, NONE, \
      "the red key is pressed in battery gas") \
    /* a fire */ \
    X(fire_open, FIRE, OPEN_SPACE, "R6", NONE, NONE, NONE, NONE, "the burning space is opened") \
    X(fire_air, FIRE, LET_AIR_IN, "R6", WAY_OUT, NONE, NONE, NONE, "air is let in to the fire") \
    X(fire_fan, FIRE, USE_FAN, "R6", NONE, NONE, NONE, NONE, "the fan feeds the fire") \
    X(fire_engine, FIRE, START_ENGINE, "R6", NONE, NONE, NONE, NONE, \
      "the engine is started in a fire") \
    X(fire_water, FIRE, WATER_ON_IT, "R7", NOT_ON_IT, NONE, NONE, NONE, \
      "water can go on fat, fuel or live wires") \
    X(fire_carry, FIRE, CARRY_IT, "R7", NONE, NONE, NONE, NONE, "what burns is carried") \
    X(flame_smother, GAS_FLAME, SMOTHER_FLAME, "R12", PAN_ALONE, NONE, NONE, NONE, \
      "a flame is covered while gas may flow") \
    X(flame_first, GAS_FLAME, SMOTHER_FLAME, "R12", NONE, NONE, GAS_SEEN_TO, NONE, \
      "a flame is covered before the gas is dealt with") \
    X(mist_open, FUEL_MIST, OPEN_SPACE, "R17", NONE, NONE, NONE, NONE, \
      "the space is opened before it is known that no fuel sprays there") \
    X(mist_flame, FUEL_MIST, FLAME, "R17", NONE, NONE, NONE, NONE, "a flame is lit in fuel mist") \
    X(mist_engine, FUEL_MIST, START_ENGINE, "R17", NONE, NONE, NONE, NONE, \
      "the engine is started on wet fuel") \
    /* current */ \
    X(radio_said, ANY, CUT_RADIO, "R8", AFTER_CALL, NONE, NONE, NONE, \
      "the radio's current is cut without: after the call") \
    X(radio_order, ANY, CUT_RADIO, "R8", NONE, NONE, CALL, NONE, \
      "the radio's current is cut before the call") \
    X(radio_dead, ANY, FIXED_RADIO, "R8", NONE, CUT_RADIO, NONE, NONE, \
      "the radio's current was cut before") \
    X(radio_dead_key, ANY, RED_KEY, "R8", NONE, CUT_RADIO, NONE, NONE, \
      "the radio's current was cut before its red key") \
    X(water_pumps, WATER, CUT_PUMPS, "R9", PUMPS_WATCHED, NONE, NONE, NONE, \
      "the pumps' current is cut while water comes in") \
    X(water_pump_off, WATER, PUMP_OFF, "R9", NONE, NONE, NONE, NONE, \
      "a pump is turned off while water comes in") \
    X(pump_back, ANY, PUMP_OFF, "R9", NONE, NONE, NONE, PUMP_ON, \
      "a pump that is turned off is never turned on again") \
    /* a person in the water */ \
    X(person_propeller, PERSON_IN_WATER, TURN_PROPELLER, "R10", NOBODY_NEAR, NONE, NONE, NONE, \
      "a propeller turns near the person") \
    X(person_ladder, PERSON_IN_WATER, LADDER, "R10", FLAT_WATER, NONE, NONE, NONE, \
      "a ladder is offered without: flat water, engine off") \
    X(person_pointer, PERSON_IN_WATER, LOOK_AWAY, "R10", NONE, NONE, NONE, NONE, \
      "who points gets another task") \
    X(person_jump, PERSON_IN_WATER, JUMP_IN, "R10", NONE, NONE, NONE, NONE, \
      "somebody jumps in after the person") \
    X(engine_ropes, ADRIFT, START_ENGINE, "R20", ROPES_IN, NONE, NONE, NONE, \
      "the engine is started without: ropes in, no person near") \
    X(drive_ropes, ADRIFT, TURN_PROPELLER, "R20", ROPES_IN, NONE, NONE, NONE, \
      "a propeller turns without: ropes in, no person near") \
    /* leaving the boat */ \
    X(leave_count, ANY, LEAVE_BOAT, "R11", NONE, NONE, HEADCOUNT, NONE, \
      "people leave the boat uncounted") \
    X(leave_call, ANY, LEAVE_BOAT, "R11", NONE, NONE, CALL, NONE, \
      "people leave the boat before a call was tried") \
    X(leave_jackets, ANY, LEAVE_BOAT, "R11", NONE, NONE, JACKETS, NONE, \
      "people leave the boat without lifejackets or what stands for them") \
    X(raft_tied, ANY, FREE_RAFT, "R11", NONE, NONE, TIE_RAFT, NONE, \
      "the raft is freed before its line is tied") \
    X(raft_cut, ANY, CUT_LINE, "R11", NONE, NONE, COUNT_IN, NONE, \
      "the line is let go before all in the raft are counted") \
    X(beacon_hull, ANY, TIE_BEACON_TO_HULL, "R11", NONE, NONE, NONE, NONE, \
      "the beacon is tied to the boat") \
    X(aground_leave, AGROUND, SEND_OFF, "R23", NONE, NONE, NONE, NONE, \
      "people are sent off a boat aground") \
    X(aground_line, AGROUND, LINE_ASTERN, "R23", ROPES_IN, NONE, NONE, NONE, \
      "the propeller turns with a line astern") \
    /* no distress */ \
    X(urgency_key, NO_DISTRESS, RED_KEY, "R13", NONE, NONE, NONE, NONE, \
      "an urgency call names the red key") \
    X(urgency_beacon, NO_DISTRESS, BEACON, "R13", NONE, NONE, NONE, NONE, \
      "an urgency call names the beacon") \
    X(urgency_flare, NO_DISTRESS, FLARE, "R13", NONE, NONE, NONE, NONE, \
      "an urgency call names flares") \
    /* one card leads to another */ \
    X(fire_sinks, FIRE, PREPARE_TO_SINK, "R16", NONE, NONE, NONE, NONE, \
      "a fire leads to the card of a boat that goes down") \
    X(vapour_sinks, VAPOUR, PREPARE_TO_SINK, "R16", NONE, NONE, NONE, NONE, \
      "vapour leads to the card of a boat that goes down") \
    X(battery_sinks, BATTERY_GAS, PREPARE_TO_SINK, "R16", NONE, NONE, NONE, NONE, \
      "battery gas leads to the card of a boat that goes down") \
    /* upside down, thunder */ \
    X(inverted_hidden, INVERTED, REACH_HIDDEN, "R21", NONE, NONE, NONE, NONE, \
      "gear is offered that is not reached upside down") \
    X(inverted_flame, INVERTED, FLAME, "R21", NONE, NONE, NONE, NONE, \
      "a flame is lit in the air that is left") \
    X(lightning_metal, LIGHTNING, TOUCH_METAL, "R22", STORM_FAR, NONE, NONE, NONE, \
      "metal is touched in thunder")

#endif
