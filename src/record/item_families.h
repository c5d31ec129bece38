/* item_families.h - items that have facts in common, for the rows of gear_field_list.h.
 * Private to src/record/item_fields.c. */
#ifndef MAYDECK_ITEM_FAMILIES_H
#define MAYDECK_ITEM_FAMILIES_H

#define EXTINGUISHERS ITEM_engine_extinguisher, ITEM_fixed_extinguisher, ITEM_fire_extinguisher
#define PORTABLE_EXTINGUISHERS ITEM_engine_extinguisher, ITEM_fire_extinguisher
#define FUEL_SHUTOFFS \
    ITEM_fuel_shutoff_diesel, ITEM_fuel_shutoff_petrol, ITEM_fuel_shutoff_generator, \
        ITEM_fuel_shutoff_heater
#define ISOLATORS \
    ITEM_battery_isolator_service, ITEM_battery_isolator_engine, ITEM_battery_isolator_thruster
#define OPENINGS ITEM_seacock, ITEM_shaft_seal
#define PUMPS ITEM_bilge_pump_electric, ITEM_bilge_pump_manual
#define BEACONS ITEM_epirb, ITEM_personal_beacon, ITEM_sart
#define ALARMS ITEM_smoke_alarm, ITEM_co_alarm, ITEM_gas_alarm
#define ANCHORS ITEM_anchor_main, ITEM_anchor_kedge

/* What a hand works, and where cards print how. */
#define WORKED \
    ISOLATORS, FUEL_SHUTOFFS, ITEM_engine_stop, ITEM_generator_stop, ITEM_heater_stop, \
    ITEM_engine_blower, ITEM_engine_vent_closure, ITEM_inverter_switch, ITEM_solar_isolator, \
    ITEM_lpg_bottle_valve, ITEM_lpg_remote_switch, ITEM_lpg_cabin_valve, \
    ITEM_bilge_pump_electric, ITEM_fire_port, ITEM_fixed_extinguisher, ITEM_liferaft, \
    ITEM_epirb, ITEM_danbuoy, ITEM_mob_button, ITEM_recovery_tackle, ITEM_boarding_ladder, \
    ITEM_anchor_main, ITEM_shore_power_inlet, ITEM_watertight_door, ITEM_seacock, \
    ITEM_throttle, ITEM_engine_start, ITEM_autopilot, ITEM_front_sail_roller, \
    ITEM_mainsail_down, ITEM_windlass

/* Gear that each engine has. */
#define BY_ENGINE \
    ITEM_fire_port, ITEM_engine_extinguisher, ITEM_fixed_extinguisher, ITEM_engine_blower, \
    ITEM_engine_vent_closure, ITEM_engine_stop, ITEM_fuel_shutoff_diesel, \
    ITEM_battery_isolator_engine, ITEM_throttle, ITEM_engine_start

#endif
