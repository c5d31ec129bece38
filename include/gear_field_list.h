/* gear_field_list.h - the fields of an entry of equipment, one row each (room: record).
 * Columns: key in a boat file; member of struct equipment; kind; the items whose entry
 * may have it, and how (see item_fields.h); what else struct field says of it, with where its
 * value is read (reader.h). Adding a
 * field is adding a row here and the member. Families of items, such as EXTINGUISHERS, stand in
 * src/record/item_families.h.
 *
 * EVERYWHERE: on the entry of any item. MUST: `check` tells where it is missing. ASKED: the
 * cards, the figures or the checks have a use for it. MAY: it is a fact of such gear, and
 * kept. On all others it is an error: a fact one line too high would be lost, or taken
 * for that of another piece. */
#ifndef MAYDECK_GEAR_FIELD_LIST_H
#define MAYDECK_GEAR_FIELD_LIST_H

#include "reader.h"

#define GEAR_FIELD_LIST(X) \
    X(item, item, FIELD_CHOICE, EVERYWHERE(MUST), \
      .required = true, .choices = item_key_list, \
      .readers = READ_PLACE, \
      .about = "what it is: a key of the register") \
    X(tag, tag, FIELD_TEXT, EVERYWHERE(MUST), \
      .readers = READ_PLACE, \
      .about = "its own letter and number, fixed for the boat's life") \
    X(name, name, FIELD_WORDING, EVERYWHERE(MAY) MUST(ITEM_seacock), \
      .readers = READ_ROW | READ_SAFETY, \
      .about = "what tells it from its like, such as engine intake") \
    X(zone, zone, FIELD_CHOICE, EVERYWHERE(MUST), \
      .required = true, .choices = zone_key_list, .readers = READ_PLACE, \
      .about = "the part of the boat it is in") \
    X(side, side, FIELD_CHOICE, EVERYWHERE(ASKED), .choices = side_words, \
      .slips = side_slips, .readers = READ_PLACE, \
      .about = "which side, facing the bow") \
    X(spot, spot, FIELD_WORDING, EVERYWHERE(MAY), .readers = READ_PLACE, \
      .about = "where exactly, in a few words") \
    X(how, how, FIELD_BY_CHOICE, EVERYWHERE(MAY) MUST(WORKED), .choices = end_state_words, \
      .readers = READ_ROW, \
      .about = "how a hand works it; by state where it has two, as {shut: across, open: along}") \
    X(behind, behind, FIELD_WORDING, EVERYWHERE(MAY), \
      .readers = READ_ROW | READ_SAFETY, \
      .about = "what is opened or taken off before it, such as panel with two clips") \
    X(from, from.section, FIELD_SECTION, EVERYWHERE(MAY), \
      SECTION_OF(struct equipment, from, .table = &from_table), \
      .readers = READ_PLACE, \
      .about = "where one stands to work it, if not at it: {zone: , side: , spot: }") \
    X(inside, inside, FIELD_CHOICES, EVERYWHERE(MAY), .choices = zone_key_list, \
      .readers = READ_CASE, \
      .about = "spaces one must open or enter to reach it; [] for none") \
    X(past, past, FIELD_CHOICES, EVERYWHERE(MAY), .choices = zone_key_list, \
      .readers = READ_CASE, \
      .about = "spaces one passes on the way to it") \
    X(only_when, only_when, FIELD_CHOICES, EVERYWHERE(MAY), .choices = only_when_words, \
      .readers = READ_ROW | READ_SAFETY, \
      .about = "what must be so for a hand to work it") \
    X(cuts, cuts, FIELD_CHOICES, \
      MUST(ITEM_battery_isolator_service, ITEM_battery_isolator_engine) \
      MAY(ITEM_battery_isolator_thruster, ITEM_engine_stop, ITEM_generator_stop, \
          ITEM_inverter_switch, ITEM_shore_power_inlet, ITEM_solar_isolator, \
          ITEM_lithium_bank), \
      .choices = item_key_list, \
      .readers = READ_CASE | READ_CHECK, \
      .about = "gear that loses its current when this is turned off; [] for none") \
    X(serves, serves, FIELD_CHOICES, \
      ASKED(BY_ENGINE) \
      MAY(OPENINGS, PUMPS, ALARMS, FUEL_SHUTOFFS, ISOLATORS, ITEM_fire_extinguisher, \
          ITEM_generator_stop, ITEM_heater_stop, ITEM_lithium_bank, ITEM_inverter_switch, \
          ITEM_softwood_bung, ITEM_bilge_alarm, ITEM_bilge_access, ITEM_leak_kit, \
          ITEM_outboard_kill, ITEM_watertight_door), \
      ENGINE_SPACES, .readers = READ_CASE | READ_SAFETY, \
      .about = "the engine spaces it belongs to, on a boat with two") \
    X(count, count, FIELD_NUMBER, \
      EVERYWHERE(MAY) MUST(ITEM_lpg_bottle_valve, ITEM_engine_vent_closure) \
      ASKED(ITEM_lifejacket, ITEM_harness_tether, ITEM_bucket_lanyard, ITEM_flares, \
            ITEM_thermal_aid, ITEM_torch, ITEM_knife, ITEM_blankets, ITEM_outboard_kill), \
      .low = 1000, .high = 99000, .whole = true, .readers = READ_ROW | READ_SAFETY, \
      .about = "how many in this place") \
    X(at, at, FIELD_PAIR, EVERYWHERE(MAY), \
      .readers = READ_PLAN, \
      .about = "[metres aft of the bow, metres to starboard, port negative]") \
    X(agent, agent, FIELD_CHOICE, ASKED(EXTINGUISHERS), .choices = agent_words, \
      .readers = READ_CASE | READ_REST, \
      .about = "what the extinguisher holds") \
    X(rating, rating, FIELD_TEXT, \
      ASKED(ITEM_fire_extinguisher) MAY(ITEM_engine_extinguisher, ITEM_fixed_extinguisher), \
      .readers = READ_CHECK | READ_REST, \
      .about = "the rating printed on it") \
    X(kind, kind_of, FIELD_CHOICE, \
      MUST(ITEM_lpg_bottle_valve) MAY(ITEM_lpg_cabin_valve, ITEM_seacock, FUEL_SHUTOFFS), \
      .choices = valve_words, .readers = READ_REST, \
      .about = "how the valve is turned or taken off") \
    X(stop, stop, FIELD_CHOICE, \
      ASKED(ITEM_engine_stop) MAY(ITEM_generator_stop, ITEM_heater_stop), \
      .choices = stop_words, .readers = READ_CASE, \
      .about = "how the engine is stopped") \
    X(space, space, FIELD_CHOICE, ASKED(ITEM_lithium_bank), .choices = air_space_words, \
      .readers = READ_CASE | READ_CHECK, \
      .about = "the space a battery shares its air with: a zone, or own_box") \
    X(vents_to, vents_to, FIELD_WORDING, \
      MUST(ITEM_lithium_bank) MAY(ITEM_lpg_locker, ITEM_petrol_stowage, ITEM_engine_blower), \
      .readers = READ_SAFETY, \
      .about = "where its own vent leads") \
    X(serial, serial, FIELD_TEXT, EVERYWHERE(MAY), .own = true, .readers = READ_REST, \
      .about = "the serial number") \
    X(hex_id, hex_id, FIELD_TEXT, \
      MUST(ITEM_epirb) ASKED(ITEM_personal_beacon) MAY(ITEM_danbuoy, ITEM_lifejacket), \
      .own = true, .readers = READ_SPELL | READ_CHECK, \
      .about = "the beacon's identity, in quotes") \
    X(mmsi, mmsi, FIELD_TEXT, \
      ASKED(ITEM_vhf_handheld) MAY(BEACONS, ITEM_vhf_dsc, ITEM_danbuoy, ITEM_lifejacket), \
      .own = true, .readers = READ_PANEL | READ_CHECK | READ_REST, \
      .about = "the identity of nine digits, in quotes") \
    X(size, size, FIELD_TEXT, EVERYWHERE(MAY), .readers = READ_REST, \
      .about = "its size as written on it") \
    X(painter, painter, FIELD_WORDING, MUST(ITEM_liferaft) MAY(ITEM_dinghy), \
      .readers = READ_ROW, \
      .about = "where the raft's line is made fast") \
    X(release, release, FIELD_WORDING, \
      MUST(ITEM_liferaft) \
      MAY(BEACONS, ANCHORS, ITEM_dinghy, ITEM_hydrostatic_release, ITEM_danbuoy, \
          ITEM_horseshoe_buoy, ITEM_mob_light, ITEM_heaving_line, ITEM_recovery_sling, \
          ITEM_recovery_tackle, ITEM_boarding_ladder, ITEM_bathing_platform, ITEM_grab_bag), \
      .readers = READ_ROW, \
      .about = "how it is freed from its stowage") \
    X(handle, handle.section, FIELD_SECTION, \
      ASKED(ITEM_bilge_pump_manual) \
      MAY(FUEL_SHUTOFFS, ANCHORS, ITEM_seacock, ITEM_bilge_access, ITEM_engine_vent_closure, \
          ITEM_engine_stop, ITEM_lpg_bottle_valve, ITEM_emergency_tiller, ITEM_escape_hatch, \
          ITEM_hatch, ITEM_watertight_door, ITEM_recovery_tackle, ITEM_boarding_ladder, \
          ITEM_bathing_platform, ITEM_fire_port), \
      SECTION_OF(struct equipment, handle, .table = &handle_table, .lone = "spot"), \
      .readers = READ_ROW | READ_SAFETY, \
      .about = "where its handle is kept: a few words, or {zone: , side: , spot: }") \
    X(kg, kg, FIELD_NUMBER, \
      MUST(EXTINGUISHERS) ASKED(ITEM_lpg_bottle_valve) \
      MAY(ANCHORS, ITEM_liferaft, ITEM_dinghy, ITEM_lithium_bank, ITEM_grab_bag), \
      .low = 100, .high = 60000, .readers = READ_ROW | READ_SAFETY | READ_FIGURE, \
      .about = "weight of the filling or the gear") \
    X(litres, litres, FIELD_NUMBER, \
      ASKED(ITEM_water_emergency, ITEM_petrol_stowage) \
      MAY(EXTINGUISHERS, ITEM_bucket_lanyard, ITEM_spill_kit, ITEM_grab_bag, ITEM_liferaft), \
      .low = 100, .high = 1000000, .readers = READ_SAFETY, \
      .about = "how much it holds") \
    X(persons, persons, FIELD_NUMBER, \
      MUST(ITEM_liferaft) ASKED(ITEM_dinghy) \
      MAY(ITEM_first_aid_kit, ITEM_grab_bag, ITEM_thermal_aid, ITEM_water_emergency), \
      .low = 1000, .high = 30000, .whole = true, .readers = READ_ROW | READ_SAFETY | READ_FIGURE, \
      .about = "for how many people") \
    X(bore_mm, bore_mm, FIELD_NUMBER, ASKED(OPENINGS) MAY(ITEM_fire_port), \
      .low = 5000, .high = 200000, .readers = READ_FIGURE, \
      .about = "bore of the opening") \
    X(depth_m, depth_m, FIELD_NUMBER, ASKED(OPENINGS), \
      .low = 0, .high = 3000, .readers = READ_FIGURE, \
      .about = "below the waterline") \
    X(leads_to, leads_to, FIELD_CHOICE, ASKED(ITEM_seacock) MAY(ITEM_shaft_seal), \
      .choices = opening_words, .readers = READ_CHECK | READ_REST, \
      .about = "what the opening leads to") \
    X(works, works, FIELD_CHOICE, \
      ASKED(ITEM_seacock) MAY(WORKED, ITEM_escape_hatch, ITEM_hatch, ITEM_bilge_access), \
      .choices = works_words, .readers = READ_ROW | READ_SAFETY, \
      .about = "how easily it is worked by hand") \
    X(bung_mm, bung_mm, FIELD_NUMBER, \
      ASKED(ITEM_seacock) MAY(ITEM_shaft_seal, ITEM_softwood_bung), \
      .low = 5000, .high = 200000, .readers = READ_FIGURE, \
      .about = "size of its bung") \
    X(discharge_s, discharge_s, FIELD_NUMBER, \
      ASKED(PORTABLE_EXTINGUISHERS) MAY(ITEM_fixed_extinguisher), \
      .low = 1000, .high = 600000, .readers = READ_ROW, \
      .about = "seconds until it is empty, from its label") \
    X(length_m, length_m, FIELD_NUMBER, \
      ASKED(ANCHORS, ITEM_heaving_line) \
      MAY(ITEM_liferaft, ITEM_jackstay, ITEM_harness_tether, ITEM_horseshoe_buoy, \
          ITEM_danbuoy, ITEM_bucket_lanyard, ITEM_recovery_sling, ITEM_recovery_tackle, \
          ITEM_boarding_ladder, ITEM_lpg_hose, ITEM_shore_power_inlet, ITEM_dinghy, \
          ITEM_drogue, ITEM_boathook), \
      .low = 500, .high = 200000, .readers = READ_SAFETY, \
      .about = "length of line or chain") \
    X(rated_lph, rated_lph, FIELD_NUMBER, ASKED(ITEM_bilge_pump_electric), \
      .low = 100000, .high = 100000000, .readers = READ_FIGURE, \
      .about = "litres an hour printed on the pump") \
    X(measured_lpm, measured_lpm, FIELD_NUMBER, ASKED(PUMPS), \
      .low = 1000, .high = 2000000, \
      .readers = READ_FIGURE, \
      .about = "litres a minute measured at the pump's outlet") \
    X(stroke_l, stroke_l, FIELD_NUMBER, ASKED(ITEM_bilge_pump_manual), \
      .low = 100, .high = 5000, .readers = READ_FIGURE, \
      .about = "litres a stroke of the hand pump") \
    X(protects_m3, protects_m3, FIELD_NUMBER, \
      ASKED(ITEM_fixed_extinguisher) MAY(ITEM_engine_extinguisher), \
      .low = 10, .high = 100000, .readers = READ_REST, \
      .about = "the space its label covers, in cubic metres") \
    X(fed_by, fed_by, FIELD_CHOICE, \
      MUST(ITEM_bilge_pump_electric) \
      MAY(ALARMS, ITEM_bilge_alarm, ITEM_engine_blower, ITEM_bow_thruster, \
          ITEM_searchlight), \
      .choices = feed_words, \
      .readers = READ_REST, \
      .about = "what drives the pump: battery (12 or 24 V), or mains (230 V)") \
    X(antenna_m, antenna_m, FIELD_NUMBER, \
      ASKED(ITEM_vhf_handheld) MAY(ITEM_sart, ITEM_emergency_aerial, ITEM_radar_reflector), \
      .low = 500, .high = 60000, .readers = READ_FIGURE, \
      .about = "height of its aerial above the water in use") \
    X(gas, gas, FIELD_CHOICE, ASKED(ITEM_lpg_bottle_valve) MAY(ITEM_lpg_locker), \
      .choices = gas_words, .readers = READ_FIGURE, \
      .about = "what the gas bottle holds") \
    X(wearer, wearer, FIELD_CHOICE, \
      ASKED(ITEM_lifejacket) MAY(ITEM_harness_tether, ITEM_thermal_aid), \
      .choices = wearer_words, .readers = READ_SAFETY | READ_CHECK, \
      .about = "whom the lifejacket is made for") \
    X(lanyard, lanyard, FIELD_CHOICE, \
      MUST(ITEM_epirb) ASKED(ITEM_personal_beacon, ITEM_sart), .choices = lanyard_words, \
      .readers = READ_CHECK | READ_REST, \
      .about = "the beacon's own line: stowed, or made fast to the boat") \
    X(kg_low, kg_low, FIELD_NUMBER, ASKED(ITEM_lifejacket) MAY(ITEM_harness_tether), \
      .low = 1000, .high = 300000, .readers = READ_SAFETY, \
      .about = "lightest wearer") \
    X(kg_high, kg_high, FIELD_NUMBER, ASKED(ITEM_lifejacket) MAY(ITEM_harness_tether), \
      .low = 1000, .high = 300000, .readers = READ_SAFETY, \
      .about = "heaviest wearer") \
    X(service_due, service_due, FIELD_DATE, \
      EVERYWHERE(MAY) ASKED(EXTINGUISHERS, ITEM_liferaft, ITEM_lifejacket), \
      .own = true, .readers = READ_FOOT | READ_DATES, \
      .about = "the date the next service is due") \
    X(expires, expires, FIELD_DATE, \
      EVERYWHERE(MAY) \
      ASKED(ALARMS, BEACONS, ITEM_flares, ITEM_hydrostatic_release, ITEM_grab_bag, \
            ITEM_water_emergency, ITEM_first_aid_kit, ITEM_mob_light), \
      .own = true, .readers = READ_FOOT | READ_DATES, \
      .about = "the date it runs out") \
    X(serviced, serviced, FIELD_DATE, EVERYWHERE(MAY) ASKED(ITEM_harness_tether), \
      .own = true, .readers = READ_FOOT | READ_DATES, \
      .about = "the date of the last service") \
    X(made, made, FIELD_DATE, EVERYWHERE(MAY) ASKED(ITEM_lpg_hose), \
      .own = true, .readers = READ_FOOT | READ_DATES, \
      .about = "the date it was made") \
    X(installed, installed, FIELD_DATE, EVERYWHERE(MAY) ASKED(ITEM_jackstay), \
      .own = true, .readers = READ_FOOT | READ_DATES, \
      .about = "the date it was put in") \
    X(valve, valve, FIELD_ANSWER, ASKED(ITEM_seacock), .readers = READ_ROW | READ_SAFETY, \
      .about = "does the opening have a valve?") \
    X(fits_port, fits_port, FIELD_ANSWER, ASKED(ITEM_engine_extinguisher), \
      .readers = READ_CASE, \
      .about = "does it fit the fire port?") \
    X(electrical_ok, electrical_ok, FIELD_ANSWER, \
      ASKED(ITEM_fire_extinguisher) MAY(ITEM_engine_extinguisher, ITEM_fixed_extinguisher), \
      .readers = READ_SAFETY, \
      .about = "may it be used on live electrics?") \
    X(vents_overboard, vents_overboard, FIELD_ANSWER, MAY(ITEM_lithium_bank), \
      .readers = READ_CASE, \
      .about = "does its own vent lead out of the boat?") \
    X(from_cockpit, from_cockpit, FIELD_ANSWER, EVERYWHERE(MAY), \
      .readers = READ_CASE, \
      .about = "can it be reached without going below?") \
    X(fails_shut, fails_shut, FIELD_ANSWER, \
      MUST(ITEM_lpg_remote_switch) MAY(ITEM_lpg_cabin_valve, FUEL_SHUTOFFS), \
      .readers = READ_CHECK | READ_REST, \
      .about = "does it shut when the current fails?") \
    X(locked, locked, FIELD_ANSWER, EVERYWHERE(MAY), \
      .readers = READ_ROW | READ_SAFETY | READ_CHECK, \
      .about = "is it under lock?") \
    X(disposable, disposable, FIELD_ANSWER, MAY(EXTINGUISHERS), \
      .readers = READ_DATES | READ_REST, \
      .about = "is the extinguisher thrown away, never refilled?") \
    X(below, below, FIELD_ANSWER, EVERYWHERE(MAY), \
      .readers = READ_PLAN | READ_CASE, \
      .about = "is it below deck, whatever its zone?") \
    X(charged, charged, FIELD_ANSWER, \
      MUST(ITEM_vhf_handheld) MAY(ITEM_torch, ITEM_searchlight, ITEM_mob_light), \
      .readers = READ_SAFETY | READ_CHECK, \
      .about = "is it kept charged?") \
    X(in_charger, in_charger, FIELD_ANSWER, ASKED(ITEM_vhf_handheld), \
      .readers = READ_CASE | READ_PANEL | READ_CHECK, \
      .about = "is it kept in its charger?") \
    X(dsc, dsc, FIELD_ANSWER, ASKED(ITEM_vhf_handheld) MAY(ITEM_vhf_dsc, ITEM_personal_beacon), \
      .readers = READ_SAFETY | READ_PANEL, \
      .about = "can it send a digital distress alert?") \
    X(automatic, automatic, FIELD_ANSWER, \
      ASKED(ITEM_fixed_extinguisher, ITEM_lifejacket) \
      MAY(ITEM_bilge_pump_electric, ITEM_danbuoy, ITEM_mob_light, ITEM_hydrostatic_release, \
          ITEM_personal_beacon, ITEM_epirb, ITEM_bilge_alarm), \
      .readers = READ_CASE | READ_REST, \
      .about = "does it work by itself?") \
    X(reach_inverted, reach_inverted, FIELD_ANSWER, \
      EVERYWHERE(MAY) \
      ASKED(ITEM_liferaft, ITEM_grab_bag, ITEM_epirb, ITEM_vhf_handheld, ITEM_flares, \
            ITEM_knife), \
      .readers = READ_CASE | READ_REST, \
      .about = "can it be reached in a capsized boat?") \
    X(upright, upright, FIELD_ANSWER, MUST(ITEM_throttle), .readers = READ_REST, \
      .about = "does its lever stand upright in neutral?") \
    X(drives, drives, FIELD_CHOICE, ASKED(ITEM_autopilot), .choices = drives_words, \
      .readers = READ_CASE, \
      .about = "what it drives: rudder, where it steers with the wheel's gear broken, or wheel") \
    X(needs_engine, needs_engine, FIELD_ANSWER, ASKED(ITEM_windlass), \
      .readers = READ_CASE | READ_SAFETY, \
      .about = "must the engine run for it to work?") \
    X(breaker, breaker, FIELD_WORDING, ASKED(ITEM_windlass), .readers = READ_SAFETY, \
      .about = "where its breaker is, which trips when it is overloaded") \
    X(chain_end, chain_end, FIELD_CHOICE, ASKED(ITEM_anchor_main), .choices = chain_end_words, \
      .readers = READ_CASE | READ_CHECK, \
      .about = "how the last link is made fast: a cord, which a knife cuts, a shackle, or loose") \
    X(from_water, from_water, FIELD_ANSWER, ASKED(ITEM_boarding_ladder), \
      .readers = READ_CHECK | READ_REST, \
      .about = "can a swimmer let it down from the water?") \
    X(tried, tried, FIELD_DATE, ASKED(ITEM_emergency_tiller, ITEM_recovery_tackle), \
      .own = true, .readers = READ_CHECK | READ_REST, \
      .about = "the date it was last tried on this boat") \
    X(cuts_mm, cuts_mm, FIELD_NUMBER, ASKED(ITEM_bolt_cutters), \
      .low = 2000, .high = 40000, .readers = READ_CASE | READ_CHECK, \
      .about = "the thickest wire it cuts") \
    X(kit, kit, FIELD_CHOICES, ASKED(ITEM_first_aid_kit), .choices = kit_words, \
      .readers = READ_CASE, \
      .about = "what is in it of these; [] for none") \
    X(sound, sound, FIELD_WORDING, ASKED(ALARMS, ITEM_bilge_alarm), .readers = READ_SAFETY, \
      .about = "how it sounds, such as three beeps, then a pause")

#endif
