/* item_state_list.h - which states a piece of each kind can be brought into, one row an item
 * and state (room: record). Columns: item, state, the field of its entry that tells how a hand
 * brings that about; NONE: nobody needs to be told. Each item has one state at least whose
 * handling is in `how`; one with two contrary states there has its `how` by state. */
#ifndef MAYDECK_ITEM_STATE_LIST_H
#define MAYDECK_ITEM_STATE_LIST_H

/* Families of states; what is switched or shut can also be left as it is. */
#define SWITCHED(X, item) X(item, OFF, how) X(item, ON, how) X(item, LEAVE, NONE)
#define SHUTS(X, item) X(item, SHUT, how) X(item, OPEN, how) X(item, LEAVE, NONE)
#define OPENS(X, item) X(item, OPEN, how) X(item, SHUT, how)
#define STOPPED(X, item) X(item, STOP, how) X(item, LEAVE, NONE)
#define USED(X, item) X(item, USE, how)
#define CARRIED(X, item) X(item, USE, how) X(item, TAKE, NONE)
#define WORN(X, item) X(item, WEAR, how)
#define LIT(X, item) X(item, ON, how) X(item, TAKE, NONE) X(item, RELEASE, release)
#define FREED(X, item) X(item, USE, how) X(item, RELEASE, release)

#define ITEM_STATE_LIST(X) \
    USED(X, fire_port) \
    USED(X, engine_extinguisher) \
    X(fixed_extinguisher, RELEASE, how) X(fixed_extinguisher, LEAVE, NONE) \
    CARRIED(X, fire_extinguisher) \
    USED(X, fire_blanket) \
    USED(X, bucket_lanyard) \
    USED(X, smoke_alarm) \
    USED(X, co_alarm) \
    USED(X, gas_alarm) \
    SWITCHED(X, engine_blower) \
    SHUTS(X, engine_vent_closure) \
    STOPPED(X, engine_stop) \
    STOPPED(X, generator_stop) \
    SHUTS(X, fuel_shutoff_diesel) \
    SHUTS(X, fuel_shutoff_petrol) \
    SHUTS(X, fuel_shutoff_generator) \
    SHUTS(X, fuel_shutoff_heater) \
    SWITCHED(X, heater_stop) \
    SWITCHED(X, battery_isolator_service) \
    SWITCHED(X, battery_isolator_engine) \
    SWITCHED(X, battery_isolator_thruster) \
    X(lithium_bank, OFF, how) X(lithium_bank, LEAVE, NONE) \
    SWITCHED(X, inverter_switch) \
    SWITCHED(X, shore_power_inlet) \
    SWITCHED(X, solar_isolator) \
    OPENS(X, lpg_locker) \
    SHUTS(X, lpg_bottle_valve) \
    SHUTS(X, lpg_remote_switch) \
    SHUTS(X, lpg_cabin_valve) \
    USED(X, lpg_hose) \
    SWITCHED(X, cooker) \
    SHUTS(X, seacock) \
    USED(X, softwood_bung) \
    SWITCHED(X, bilge_pump_electric) \
    USED(X, bilge_pump_manual) \
    USED(X, bilge_alarm) \
    OPENS(X, bilge_access) \
    USED(X, shaft_seal) \
    USED(X, leak_kit) \
    WORN(X, lifejacket) \
    WORN(X, harness_tether) \
    USED(X, jackstay) \
    FREED(X, horseshoe_buoy) \
    FREED(X, danbuoy) \
    FREED(X, mob_light) \
    FREED(X, heaving_line) \
    FREED(X, recovery_sling) \
    FREED(X, recovery_tackle) \
    FREED(X, boarding_ladder) \
    X(mob_button, ON, how) \
    LIT(X, personal_beacon) X(personal_beacon, TIED, NONE) \
    X(liferaft, PULL, how) X(liferaft, TIED, painter) X(liferaft, READY, painter) \
    X(liferaft, RELEASE, release) X(liferaft, CUT, NONE) \
    FREED(X, hydrostatic_release) \
    X(grab_bag, TAKE, how) X(grab_bag, RELEASE, release) \
    LIT(X, epirb) X(epirb, TIED, NONE) \
    LIT(X, sart) \
    CARRIED(X, flares) \
    X(vhf_dsc, ON, how) X(vhf_dsc, LEAVE, NONE) \
    CARRIED(X, vhf_handheld) \
    USED(X, emergency_aerial) \
    WORN(X, thermal_aid) \
    CARRIED(X, water_emergency) \
    X(dinghy, READY, how) X(dinghy, TIED, painter) X(dinghy, RELEASE, release) \
    X(dinghy, CUT, NONE) \
    X(outboard_kill, PULL, how) \
    X(petrol_stowage, SHUT, how) X(petrol_stowage, LEAVE, NONE) \
    USED(X, spill_kit) \
    CARRIED(X, first_aid_kit) \
    CARRIED(X, torch) \
    CARRIED(X, knife) \
    USED(X, bolt_cutters) \
    USED(X, emergency_tiller) \
    X(anchor_main, READY, how) X(anchor_main, RELEASE, release) \
    X(anchor_kedge, READY, how) X(anchor_kedge, RELEASE, release) \
    USED(X, tool_kit) \
    OPENS(X, escape_hatch) \
    SHUTS(X, watertight_door) \
    SWITCHED(X, bow_thruster) \
    USED(X, foghorn) \
    SWITCHED(X, searchlight) \
    USED(X, radar_reflector) \
    USED(X, stowage_plan) \
    USED(X, contacts_card) \
    FREED(X, bathing_platform) \
    OPENS(X, hatch) \
    USED(X, blankets) \
    X(throttle, NEUTRAL, how) X(throttle, AHEAD, how) X(throttle, ASTERN, how) \
    X(engine_start, ON, how) X(engine_start, OFF, NONE) \
    X(autopilot, ON, how) X(autopilot, OFF, how) \
    X(sail_rope, RELEASE, how) \
    X(front_sail_roller, IN, how) X(front_sail_roller, OUT, how) \
    X(mainsail_down, DOWN, how) \
    X(windlass, DOWN, how) X(windlass, UP, how) \
    USED(X, position_display) \
    X(light_switch, ON, how) \
    CARRIED(X, aed) \
    X(steering_access, OPEN, how) \
    X(drogue, OUT, how) \
    USED(X, boathook) \
    USED(X, hacksaw) \
    X(fender, OUT, how) \
    X(washboards, IN, how) \
    USED(X, capsize_line)

#endif
