/* item_act_list.h - what working a piece of gear makes, a row an item, state and act (private
 * to src/prove). Columns: item; state, ANY: each but LEAVE; act; when: ALWAYS, or what
 * the record must not exclude. What is not recorded counts as so. */
#ifndef MAYDECK_ITEM_ACT_LIST_H
#define MAYDECK_ITEM_ACT_LIST_H

#define ITEM_ACT_LIST(X) \
    X(engine_stop, ANY, SPARK, IF_ELECTRIC) \
    X(generator_stop, ANY, SPARK, ALWAYS) X(generator_stop, ANY, CUT_PUMPS, IF_FEEDS_PUMPS) \
    X(heater_stop, ANY, SPARK, ALWAYS) \
    X(engine_blower, ANY, SPARK, ALWAYS) X(engine_blower, ON, USE_FAN, ALWAYS) \
    X(battery_isolator_service, ANY, SPARK, ALWAYS) \
    X(battery_isolator_service, OFF, CUT_RADIO, IF_CUTS_RADIO) \
    X(battery_isolator_service, OFF, CUT_PUMPS, IF_CUTS_PUMPS) \
    X(battery_isolator_engine, ANY, SPARK, ALWAYS) \
    X(battery_isolator_engine, OFF, CUT_RADIO, IF_CUTS_RADIO) \
    X(battery_isolator_engine, OFF, CUT_PUMPS, IF_CUTS_PUMPS) \
    X(battery_isolator_thruster, ANY, SPARK, ALWAYS) \
    X(battery_isolator_thruster, OFF, CUT_RADIO, IF_CUTS_RADIO) \
    X(inverter_switch, ANY, SPARK, ALWAYS) X(inverter_switch, OFF, CUT_PUMPS, IF_FEEDS_PUMPS) \
    X(shore_power_inlet, ANY, SPARK, ALWAYS) \
    X(shore_power_inlet, OFF, CUT_PUMPS, IF_FEEDS_PUMPS) \
    X(solar_isolator, ANY, SPARK, ALWAYS) \
    X(lithium_bank, OFF, SPARK, ALWAYS) X(lithium_bank, OFF, STAND_IN_LINE, ALWAYS) \
    X(engine_vent_closure, SHUT, SHUT_SPACE, ALWAYS) \
    X(engine_vent_closure, OPEN, OPEN_SPACE, ALWAYS) \
    X(fire_port, ANY, STAND_IN_LINE, ALWAYS) \
    X(bilge_access, OPEN, OPEN_SPACE, ALWAYS) \
    X(hatch, OPEN, LET_AIR_IN, ALWAYS) X(escape_hatch, OPEN, LET_AIR_IN, ALWAYS) \
    X(watertight_door, OPEN, LET_AIR_IN, ALWAYS) \
    X(lpg_remote_switch, ANY, SPARK, ALWAYS) \
    X(cooker, ON, FLAME, ALWAYS) X(cooker, OFF, SPARK, ALWAYS) \
    X(bilge_pump_electric, ANY, SPARK, ALWAYS) X(bilge_pump_electric, OFF, PUMP_OFF, ALWAYS) \
    X(bilge_pump_electric, ON, PUMP_ON, ALWAYS) \
    X(bucket_lanyard, USE, WATER_ON_IT, ALWAYS) \
    X(fire_extinguisher, USE, WATER_ON_IT, IF_WET) \
    X(fire_blanket, ANY, SMOTHER_FLAME, ALWAYS) \
    X(lifejacket, ANY, JACKETS, ALWAYS) \
    X(mob_button, ANY, SPARK, ALWAYS) X(bow_thruster, ANY, SPARK, ALWAYS) \
    X(bow_thruster, ON, TURN_PROPELLER, ALWAYS) \
    X(outboard_kill, ANY, SPARK, IF_NOT_OPEN_DECK) \
    X(searchlight, ANY, SPARK, ALWAYS) X(torch, USE, SPARK, ALWAYS) \
    X(foghorn, ANY, FLAME, ALWAYS) \
    X(flares, ANY, FLARE, ALWAYS) \
    X(vhf_dsc, ANY, FIXED_RADIO, ALWAYS) \
    X(vhf_handheld, USE, HANDHELD, ALWAYS) \
    X(epirb, ON, BEACON, ALWAYS) \
    X(personal_beacon, ON, BEACON, ALWAYS) \
    X(sart, ON, BEACON, ALWAYS) \
    X(liferaft, TIED, TIE_RAFT, ALWAYS) X(liferaft, RELEASE, FREE_RAFT, ALWAYS) \
    X(liferaft, CUT, CUT_LINE, ALWAYS) X(dinghy, CUT, CUT_LINE, ALWAYS) \
    X(boarding_ladder, ANY, LADDER, ALWAYS) X(bathing_platform, ANY, LADDER, ALWAYS) \
    X(anchor_main, ANY, TOUCH_METAL, ALWAYS) X(anchor_kedge, ANY, TOUCH_METAL, ALWAYS) \
    X(seacock, ANY, TOUCH_METAL, ALWAYS)

#endif
