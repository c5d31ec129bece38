/* item_list.h - the register of gear, one row a kind (private to src/record).
 * Columns: key, class, key of its symbol, one for each engine?, what to record
 * besides the place. A kind whose sign nobody drew has none: a neighbour's sign
 * would send people to the wrong thing. */
#ifndef MAYDECK_ITEM_LIST_H
#define MAYDECK_ITEM_LIST_H

#define ITEM_LIST(X) \
    X(fire_port, FIRE, "fireport", true, "its bore, its label, which extinguisher goes in") \
    X(engine_extinguisher, FIRE, "ext", true, "agent, kg, whether it fits the port, service date") \
    X(fixed_extinguisher, FIRE, "fixed", true, "agent, kg, automatic or by hand, where to pull") \
    X(fire_extinguisher, FIRE, "ext", false, "agent, kg, rating, service date") \
    X(fire_blanket, FIRE, "blanket", false, "size; reachable with the cooker alight") \
    X(bucket_lanyard, CONTROL, "bucket", false, "how many, each on a line") \
    X(smoke_alarm, FIRE, "smokealarm", false, "its age: the date it runs out") \
    X(co_alarm, CONTROL, "coalarm", false, "the date it runs out") \
    X(gas_alarm, CONTROL, "gasalarm", false, "where the sensor sits, how to mute it") \
    X(engine_blower, CONTROL, "blower", true, "where its switch is") \
    X(engine_vent_closure, CONTROL, "ventflap", true, "how many, how they close, tool needed") \
    X(engine_stop, CONTROL, "engstop", true, "electric or mechanical, how it is worked") \
    X(generator_stop, CONTROL, "genstop", false, "at the panel, at the set, or both") \
    X(fuel_shutoff_diesel, CONTROL, "fuel", true, "how it shuts; inside the engine space or not") \
    X(fuel_shutoff_generator, CONTROL, "fuel", false, "how it shuts; inside which space") \
    X(fuel_shutoff_heater, CONTROL, "fuel", false, "how it shuts; inside which space") \
    X(heater_stop, CONTROL, "heater", false, "how it is worked, how long it runs on") \
    X(battery_isolator_service, CONTROL, "battery", false, "what it cuts: radio, pumps") \
    X(battery_isolator_engine, CONTROL, "battery", true, "what it cuts, its colour") \
    X(battery_isolator_thruster, CONTROL, "battery", false, "what it cuts") \
    X(lithium_bank, CONTROL, NULL, false, "kind, which space, where it vents to, its own cut-off") \
    X(inverter_switch, CONTROL, "inverter", false, "how it is switched off") \
    X(shore_power_inlet, CONTROL, "shorepower", false, "where to pull the lead") \
    X(solar_isolator, CONTROL, "solar", false, "how it is switched off") \
    X(lpg_locker, CONTROL, NULL, false, "its latch; unlocked while in use; drain clear") \
    X(lpg_bottle_valve, CONTROL, "gas", false, "wheel, lever or clip-on; how many bottles") \
    X(lpg_remote_switch, CONTROL, "solenoid", false, "its light; shuts without current?") \
    X(lpg_cabin_valve, CONTROL, "gas", false, "how it shuts") \
    X(lpg_hose, CONTROL, NULL, false, "the date on the hose and on the regulator") \
    X(cooker, CONTROL, "cooker", false, "where its taps are; flame failure device") \
    X(seacock, CONTROL, "seacock", false, "its name, bore, depth, how it shuts, valve or none") \
    X(softwood_bung, CONTROL, "plug", false, "sizes; tied to the seacocks or in one place") \
    X(bilge_pump_electric, CONTROL, "bilgeel", false, "rated litres an hour, switch, bilge") \
    X(bilge_pump_manual, CONTROL, "bilgeman", false, "where its handle is, which bilge") \
    X(bilge_alarm, CONTROL, NULL, false, "where it sounds") \
    X(bilge_access, CONTROL, "panel", false, "how it lifts, tool needed") \
    X(shaft_seal, CONTROL, NULL, false, "kind, bore, age") \
    X(leak_kit, CONTROL, "leakkit", false, "what is in it, dates of putty and tape") \
    X(lifejacket, RESCUE, "jacket", false, "how many, weights in kg, automatic, service date") \
    X(harness_tether, RESCUE, NULL, false, "how many") \
    X(jackstay, RESCUE, NULL, false, "its age") \
    X(horseshoe_buoy, RESCUE, "buoy", false, "with or without line and light") \
    X(danbuoy, RESCUE, "dan", false, "rigid or inflatable, service date, its beacon") \
    X(mob_light, RESCUE, "buoylight", false, "battery date") \
    X(heaving_line, RESCUE, "line", false, "its length in metres") \
    X(recovery_sling, RESCUE, "sling", false, "how it comes free") \
    X(recovery_tackle, RESCUE, "tackle", false, "which halyard and winch; tried or not") \
    X(boarding_ladder, RESCUE, "ladder", false, "whether it can be let down from the water") \
    X(mob_button, RESCUE, "mob", false, "what it does, how long to hold it") \
    X(personal_beacon, RESCUE, "beaconperson", false, "kind, identity, battery date") \
    X(liferaft, RESCUE, "raft", false, "persons, painter, release, service date, serial number") \
    X(hydrostatic_release, RESCUE, "hru", false, "what it holds, the date it runs out") \
    X(grab_bag, CONTROL, "grab", false, "what is in it, its first date") \
    X(epirb, RESCUE, "epirb", false, "identity, battery date, how it comes out of its holder") \
    X(sart, RESCUE, "sart", false, "battery date") \
    X(flares, RESCUE, "flares", false, "kinds, how many, the date printed on them") \
    X(vhf_dsc, RESCUE, "vhffix", false, "under `radio:` - its switch, its red key, its identity") \
    X(vhf_handheld, RESCUE, "vhfhand", false, "charged, with DSC or without, kept where") \
    X(emergency_aerial, RESCUE, NULL, false, "which plug it goes in") \
    X(thermal_aid, RESCUE, "suit", false, "how many") \
    X(water_emergency, RESCUE, "water", false, "litres, the date it runs out") \
    X(dinghy, RESCUE, "dinghy", false, "persons, oars, blown up or stowed") \
    X(outboard_kill, CONTROL, "killcord", false, "how many cords, where the spare is") \
    X(petrol_stowage, CONTROL, "petrol", false, "litres, how it is lashed") \
    X(spill_kit, CONTROL, "spill", false, "how many cloths") \
    X(first_aid_kit, RESCUE, "firstaid", false, "its list, its first date") \
    X(torch, CONTROL, "torch", false, "how many, watertight or not") \
    X(knife, RESCUE, "knife", false, "how many, in which sheath") \
    X(bolt_cutters, CONTROL, "cutter", false, "the thickest rigging it cuts") \
    X(emergency_tiller, CONTROL, "tiller", false, "where it goes in, the key of the deck plate") \
    X(anchor_main, CONTROL, "anchor", false, "kg, metres of chain, how the end is made fast") \
    X(anchor_kedge, CONTROL, "anchor", false, "kg, metres of chain and line") \
    X(tool_kit, CONTROL, "toolkit", false, "what is in it") \
    X(escape_hatch, RESCUE, "hatch", false, "opens from inside, size, which way up when capsized") \
    X(watertight_door, CONTROL, "door", false, "how it shuts, kept open or shut") \
    X(bow_thruster, CONTROL, NULL, false, "what lies near its motor") \
    X(foghorn, RESCUE, NULL, false, "by mouth, gas or current") \
    X(searchlight, CONTROL, NULL, false, "where its socket is") \
    X(radar_reflector, RESCUE, "radarreflector", false, "fixed or to be hoisted") \
    X(stowage_plan, RESCUE, NULL, false, "its date; that it shows this boat") \
    X(contacts_card, RESCUE, NULL, false, "its date") \
    X(bathing_platform, CONTROL, "platform", false, "how it is let down, by hand as well") \
    X(hatch, RESCUE, "hatch", false, "opens from inside, size") \
    X(blankets, RESCUE, "blanketwarm", false, "how many")

#endif
