/* item_list.h - the register of gear, one row a kind (room: record).
 * Columns: key, class, its sign in symbol.h, the zone where most boats have it (only
 * for the order of a walk: where it is, is recorded), one for each engine?, what to
 * record besides the place. Each kind has a sign that shows it: a neighbour's sign would
 * send people to the wrong thing, and NONE does not compile. */
#ifndef MAYDECK_ITEM_LIST_H
#define MAYDECK_ITEM_LIST_H

#define ITEM_LIST(X) \
    X(fire_port, FIRE, fireport, companionway, true, \
      "its bore, its label, which extinguisher goes in") \
    X(engine_extinguisher, FIRE, ext, companionway, true, \
      "agent, kg, whether it fits the port, service date") \
    X(fixed_extinguisher, FIRE, fixed, engine_space, true, \
      "agent, kg, automatic or by hand, where to pull") \
    X(fire_extinguisher, FIRE, ext, saloon, false, "agent, kg, rating, service date") \
    X(fire_blanket, FIRE, blanket, galley, false, "size; reachable with the cooker alight") \
    X(bucket_lanyard, CONTROL, bucket, cockpit_locker, false, "how many, each on a line") \
    X(smoke_alarm, FIRE, smokealarm, saloon, false, "its age: the date it runs out") \
    X(co_alarm, CONTROL, coalarm, saloon, false, "the date it runs out") \
    X(gas_alarm, CONTROL, gasalarm, galley, false, "where the sensor sits, how to mute it") \
    X(engine_blower, CONTROL, blower, cockpit, true, "where its switch is") \
    X(engine_vent_closure, CONTROL, ventflap, cockpit, true, \
      "how many, how they close, tool needed") \
    X(engine_stop, CONTROL, engstop, cockpit, true, "electric or mechanical, how it is worked") \
    X(generator_stop, CONTROL, genstop, navigation_station, false, \
      "at the panel, at the set, or both") \
    X(fuel_shutoff_diesel, CONTROL, fuel, cockpit_locker, true, \
      "how it shuts; inside the engine space or not") \
    X(fuel_shutoff_petrol, CONTROL, fuel, cockpit_locker, false, \
      "how it shuts; inside the engine space or not") \
    X(fuel_shutoff_generator, CONTROL, fuel, cockpit_locker, false, \
      "how it shuts; inside which space") \
    X(fuel_shutoff_heater, CONTROL, fuel, cockpit_locker, false, \
      "how it shuts; inside which space") \
    X(heater_stop, CONTROL, heater, saloon, false, "how it is worked, how long it runs on") \
    X(battery_isolator_service, CONTROL, battery, aft_cabin, false, \
      "what it cuts: radio, pumps") \
    X(battery_isolator_engine, CONTROL, battery, aft_cabin, true, "what it cuts, its colour") \
    X(battery_isolator_thruster, CONTROL, battery, forward_cabin, false, "what it cuts") \
    X(lithium_bank, CONTROL, lithium, saloon, false, \
      "kind, which space, where it vents to, its own cut-off") \
    X(inverter_switch, CONTROL, inverter, navigation_station, false, "how it is switched off") \
    X(shore_power_inlet, CONTROL, shorepower, cockpit, false, "where to pull the lead") \
    X(solar_isolator, CONTROL, solar, navigation_station, false, "how it is switched off") \
    X(lpg_locker, CONTROL, gaslocker, gas_locker, false, \
      "its latch; unlocked while in use; drain clear") \
    X(lpg_bottle_valve, CONTROL, gas, gas_locker, false, \
      "wheel, lever or clip-on; how many bottles") \
    X(lpg_remote_switch, CONTROL, solenoid, galley, false, "its light; shuts without current?") \
    X(lpg_cabin_valve, CONTROL, gas, galley, false, "how it shuts") \
    X(lpg_hose, CONTROL, gashose, gas_locker, false, "the date on the hose and on the regulator") \
    X(cooker, CONTROL, cooker, galley, false, "where its taps are; flame failure device") \
    X(seacock, CONTROL, seacock, forward_heads, false, \
      "its name, what it leads to, bore, depth, how it shuts and how easily, valve or none") \
    X(softwood_bung, CONTROL, plug, saloon, false, \
      "sizes; tied to the seacocks or in one place") \
    X(bilge_pump_electric, CONTROL, bilgeel, navigation_station, false, \
      "rated litres an hour, switch, bilge") \
    X(bilge_pump_manual, CONTROL, bilgeman, cockpit, false, "where its handle is, which bilge") \
    X(bilge_alarm, CONTROL, bilgealarm, navigation_station, false, "where it sounds") \
    X(bilge_access, CONTROL, panel, bilge, false, "how it lifts, tool needed") \
    X(shaft_seal, CONTROL, shaftseal, engine_space, false, "kind, bore, depth, age") \
    X(leak_kit, CONTROL, leakkit, saloon, false, "what is in it, dates of putty and tape") \
    X(lifejacket, RESCUE, jacket, saloon, false, \
      "how many, weights in kg, automatic, service date") \
    X(harness_tether, RESCUE, tether, saloon, false, "how many") \
    X(jackstay, RESCUE, jackstay, side_deck, false, "its age") \
    X(horseshoe_buoy, RESCUE, buoy, pushpit, false, "with or without line and light") \
    X(danbuoy, RESCUE, dan, pushpit, false, "rigid or inflatable, service date, its beacon") \
    X(mob_light, RESCUE, buoylight, pushpit, false, "battery date") \
    X(heaving_line, RESCUE, line, cockpit, false, "its length in metres") \
    X(recovery_sling, RESCUE, sling, pushpit, false, "how it comes free") \
    X(recovery_tackle, RESCUE, tackle, cockpit_locker, false, \
      "which halyard and winch; tried or not") \
    X(boarding_ladder, RESCUE, ladder, transom, false, \
      "whether it can be let down from the water") \
    X(mob_button, RESCUE, mob, navigation_station, false, "what it does, how long to hold it") \
    X(personal_beacon, RESCUE, beaconperson, companionway, false, \
      "kind, identity, battery date") \
    X(liferaft, RESCUE, raft, coachroof, false, \
      "persons, painter, release, service date, serial number") \
    X(hydrostatic_release, RESCUE, hru, coachroof, false, \
      "what it holds, the date it runs out") \
    X(grab_bag, RESCUE, grab, companionway, false, "what is in it, its first date") \
    X(epirb, RESCUE, epirb, companionway, false, \
      "identity, battery date, how it comes out of its holder") \
    X(sart, RESCUE, sart, companionway, false, "battery date") \
    X(flares, RESCUE, flares, cockpit_locker, false, \
      "kinds, how many, the date printed on them") \
    X(vhf_dsc, RESCUE, vhffix, navigation_station, false, \
      "under `radio:` - its switch, its red key, its identity") \
    X(vhf_handheld, RESCUE, vhfhand, companionway, false, \
      "charged, with DSC or without, kept where") \
    X(emergency_aerial, RESCUE, aerial, navigation_station, false, "which plug it goes in") \
    X(thermal_aid, RESCUE, suit, saloon, false, "how many") \
    X(water_emergency, RESCUE, water, cockpit_locker, false, "litres, the date it runs out") \
    X(dinghy, RESCUE, dinghy, foredeck, false, "persons, oars, blown up or stowed") \
    X(outboard_kill, CONTROL, killcord, pushpit, false, "how many cords, where the spare is") \
    X(petrol_stowage, CONTROL, petrol, lazarette, false, "litres, how it is lashed") \
    X(spill_kit, CONTROL, spill, cockpit_locker, false, "how many cloths") \
    X(first_aid_kit, RESCUE, firstaid, saloon, false, "its list, its first date") \
    X(torch, CONTROL, torch, companionway, false, "how many, watertight or not") \
    X(knife, RESCUE, knife, cockpit, false, "how many, in which sheath") \
    X(bolt_cutters, CONTROL, cutter, cockpit_locker, false, "the thickest rigging it cuts") \
    X(emergency_tiller, CONTROL, tiller, lazarette, false, \
      "where it goes in, the key of the deck plate") \
    X(anchor_main, CONTROL, anchor, anchor_locker, false, \
      "kg, metres of chain, how the end is made fast") \
    X(anchor_kedge, CONTROL, anchor, lazarette, false, "kg, metres of chain and line") \
    X(tool_kit, CONTROL, toolkit, saloon, false, "what is in it") \
    X(escape_hatch, RESCUE, hatch, escape_hatch_hull, false, \
      "opens from inside, size, which way up when capsized") \
    X(watertight_door, CONTROL, door, forward_cabin, false, "how it shuts, kept open or shut") \
    X(bow_thruster, CONTROL, bowthruster, forward_cabin, false, "what lies near its motor") \
    X(foghorn, RESCUE, foghorn, cockpit_locker, false, "by mouth, gas or current") \
    X(searchlight, CONTROL, searchlight, cockpit_locker, false, "where its socket is") \
    X(radar_reflector, RESCUE, radarreflector, mast, false, "fixed or to be hoisted") \
    X(stowage_plan, RESCUE, boatplan, navigation_station, false, \
      "its date; that it shows this boat") \
    X(contacts_card, RESCUE, contacts, navigation_station, false, "its date") \
    X(bathing_platform, CONTROL, platform, bathing_platform, false, \
      "how it is let down, by hand as well") \
    X(hatch, RESCUE, hatch, forward_cabin, false, "opens from inside, size") \
    X(blankets, RESCUE, blanketwarm, saloon, false, "how many") \
    X(throttle, CONTROL, throttle, cockpit, true, \
      "how its lever stands in neutral; where a second one is") \
    X(engine_start, CONTROL, enginekey, cockpit, true, \
      "key or button, in which order, seconds of warming") \
    X(autopilot, CONTROL, autopilot, cockpit, false, "its keys; whether it drives the rudder") \
    X(sail_rope, CONTROL, sailrope, cockpit, false, \
      "of which sail, its colour, its clutch or winch") \
    X(front_sail_roller, CONTROL, sailroller, cockpit, false, \
      "its line and colour, which rope must be free") \
    X(mainsail_down, CONTROL, saildown, mast, false, \
      "into the mast or the boom, or dropped; its rope and clutch") \
    X(windlass, CONTROL, windlass, foredeck, false, \
      "its control, its breaker, whether the engine must run") \
    X(position_display, CONTROL, position, navigation_station, false, \
      "which page or key shows latitude and longitude") \
    X(light_switch, CONTROL, lamp, navigation_station, false, "which lights") \
    X(aed, RESCUE, aed, saloon, false, "the dates of its battery and its pads") \
    X(steering_access, CONTROL, rudderlid, lazarette, false, "what lifts, tool needed") \
    X(drogue, CONTROL, drogue, cockpit_locker, false, "metres of line, its strong points") \
    X(boathook, CONTROL, boathook, side_deck, false, "its length in metres") \
    X(hacksaw, CONTROL, hacksaw, cockpit_locker, false, "spare blades") \
    X(fender, CONTROL, fender, cockpit_locker, false, "how many") \
    X(washboards, CONTROL, boards, companionway, false, "where stowed, how they lock") \
    X(capsize_line, RESCUE, hullline, crossbeam_aft, false, "where under the bridge deck")

/* What saves lives, the first to be looked for first: the index of the safety plan names
 * those of them that a boat has, as many as it has room for. */
#define LIFE_SAVING_LIST(X) \
    X(epirb) X(liferaft) X(lifejacket) X(flares) X(vhf_handheld) X(grab_bag) \
    X(vhf_dsc) X(fire_extinguisher)

#endif
