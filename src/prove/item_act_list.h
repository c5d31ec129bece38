/* item_act_list.h - what working a piece of gear makes, a row an item, state and act (private
 * to src/prove). Columns: item; state, ANY: each but LEAVE; act; when: WHENEVER, or what
 * the record must not exclude. What is not recorded counts as so. */
#ifndef MAYDECK_ITEM_ACT_LIST_H
#define MAYDECK_ITEM_ACT_LIST_H

#define ITEM_ACT_LIST(X) \
    X(engine_stop, ANY, SPARK, IF_ELECTRIC) \
    X(generator_stop, ANY, SPARK, WHENEVER) X(generator_stop, ANY, CUT_PUMPS, IF_FEEDS_PUMPS) \
    X(heater_stop, ANY, SPARK, WHENEVER) \
    X(engine_blower, ANY, SPARK, WHENEVER) X(engine_blower, ON, USE_FAN, WHENEVER) \
    X(battery_isolator_service, ANY, SPARK, WHENEVER) \
    X(battery_isolator_service, OFF, CUT_RADIO, IF_CUTS_RADIO) \
    X(battery_isolator_service, OFF, CUT_PUMPS, IF_CUTS_PUMPS) \
    X(battery_isolator_engine, ANY, SPARK, WHENEVER) \
    X(battery_isolator_engine, OFF, CUT_RADIO, IF_CUTS_RADIO) \
    X(battery_isolator_engine, OFF, CUT_PUMPS, IF_CUTS_PUMPS) \
    X(battery_isolator_thruster, ANY, SPARK, WHENEVER) \
    X(battery_isolator_thruster, OFF, CUT_RADIO, IF_CUTS_RADIO) \
    X(inverter_switch, ANY, SPARK, WHENEVER) X(inverter_switch, OFF, CUT_PUMPS, IF_FEEDS_PUMPS) \
    X(shore_power_inlet, ANY, SPARK, WHENEVER) \
    X(shore_power_inlet, OFF, CUT_PUMPS, IF_FEEDS_PUMPS) \
    X(solar_isolator, ANY, SPARK, WHENEVER) \
    X(lithium_bank, OFF, SPARK, WHENEVER) X(lithium_bank, OFF, STAND_IN_LINE, WHENEVER) \
    X(engine_vent_closure, SHUT, SHUT_SPACE, WHENEVER) \
    X(engine_vent_closure, OPEN, OPEN_SPACE, WHENEVER) \
    X(fire_port, ANY, STAND_IN_LINE, WHENEVER) \
    X(bilge_access, OPEN, OPEN_SPACE, WHENEVER) \
    X(hatch, OPEN, LET_AIR_IN, WHENEVER) X(escape_hatch, OPEN, LET_AIR_IN, WHENEVER) \
    X(watertight_door, OPEN, LET_AIR_IN, WHENEVER) \
    X(lpg_remote_switch, ANY, SPARK, WHENEVER) \
    X(cooker, ON, FLAME, WHENEVER) X(cooker, OFF, SPARK, WHENEVER) \
    X(bilge_pump_electric, ANY, SPARK, WHENEVER) X(bilge_pump_electric, OFF, PUMP_OFF, WHENEVER) \
    X(bilge_pump_electric, ON, PUMP_ON, WHENEVER) \
    X(bucket_lanyard, USE, WATER_ON_IT, WHENEVER) \
    X(fire_extinguisher, USE, WATER_ON_IT, IF_WET) \
    X(fire_blanket, ANY, SMOTHER_FLAME, WHENEVER) \
    X(lifejacket, ANY, JACKETS, WHENEVER) \
    X(mob_button, ANY, SPARK, WHENEVER) X(bow_thruster, ANY, SPARK, WHENEVER) \
    X(bow_thruster, ON, TURN_PROPELLER, WHENEVER) \
    X(outboard_kill, ANY, SPARK, IF_NOT_OPEN_DECK) \
    X(searchlight, ANY, SPARK, WHENEVER) X(torch, USE, SPARK, WHENEVER) \
    X(foghorn, ANY, FLAME, WHENEVER) \
    X(flares, ANY, FLARE, WHENEVER) \
    X(vhf_dsc, ANY, FIXED_RADIO, WHENEVER) \
    X(vhf_handheld, USE, HANDHELD, WHENEVER) \
    X(epirb, ON, BEACON, WHENEVER) \
    X(personal_beacon, ON, BEACON, WHENEVER) \
    X(sart, ON, BEACON, WHENEVER) \
    X(liferaft, TIED, TIE_RAFT, WHENEVER) X(liferaft, RELEASE, FREE_RAFT, WHENEVER) \
    X(liferaft, CUT, CUT_LINE, WHENEVER) X(dinghy, CUT, CUT_LINE, WHENEVER) \
    X(boarding_ladder, ANY, LADDER, WHENEVER) X(bathing_platform, ANY, LADDER, WHENEVER) \
    X(anchor_main, ANY, TOUCH_METAL, WHENEVER) X(anchor_kedge, ANY, TOUCH_METAL, WHENEVER) \
    X(seacock, ANY, TOUCH_METAL, WHENEVER) \
    X(engine_start, ANY, SPARK, WHENEVER) X(engine_start, ON, START_ENGINE, WHENEVER) \
    X(throttle, AHEAD, TURN_PROPELLER, WHENEVER) X(throttle, ASTERN, TURN_PROPELLER, WHENEVER) \
    X(autopilot, ANY, SPARK, WHENEVER) \
    X(windlass, ANY, SPARK, WHENEVER) X(windlass, ANY, TOUCH_METAL, WHENEVER) \
    X(light_switch, ANY, SPARK, WHENEVER) X(position_display, ANY, SPARK, WHENEVER) \
    X(aed, USE, SPARK, WHENEVER) \
    X(mainsail_down, ANY, TOUCH_METAL, WHENEVER)

#endif
