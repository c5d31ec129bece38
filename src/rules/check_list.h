/* check_list.h - every check, one row each (private to src/rules). Columns: id,
 * severity of what it finds, sentence, source. Adding a check is adding a row here
 * and a call of rule_tell in the file of its family. */
#ifndef MAYDECK_CHECK_LIST_H
#define MAYDECK_CHECK_LIST_H

/* What the stages before and after the checks have to say, each under one id. */
#define FAMILY_LIST(X) \
    X(run, FAILURE, "the run itself cannot go on, or was asked for in a wrong way", "maydeck") \
    X(program, FAILURE, "a procedure, word or face of the program is wrong", "maydeck") \
    X(base, ERROR, "base.yaml cannot be read, or says something that cannot be", "maydeck") \
    X(today_behind, ERROR, "today lies before a day on which a text or the base was checked", \
      "reason") \
    X(lost_since_print, DEFICIENCY, "what the last print had is in the record no longer", \
      "the base's register") \
    X(record, ERROR, "a boat's file cannot be read, or says something that cannot be", \
      "maydeck") \
    X(cards, HELD, "a fact that a card needs is not recorded", "maydeck") \
    X(leads_into_hazard, ERROR, "a card, or a chain of cards, leads into its own hazard", \
      "the rows of src/prove/forbid_list.h") \
    X(page, ERROR, "a card does not fit its page, or does not pass proofreading", "maydeck") \
    X(figure_unrecorded, NOTE, "what a figure waits for is not recorded", "maydeck") \
    X(figure_without_room, NOTE, "a figure finds no room on its card", "maydeck") \
    X(hint_without_room, NOTE, "what is recorded about calling finds no room on its card", \
      "maydeck") \
    X(on_no_card, NOTE, "facts that are recorded stand on no card of the boat", "maydeck")

/* LACK: it finds too little. While a piece of gear could not be read, what seems to be missing
 * may be that one, and nothing is told. */
#define CHECK_LIST(X, LACK) \
    /* the base */ \
    X(approval_lapsed, DEFICIENCY, "an approval of a card has lapsed", "the base's approvals") \
    X(approval_without_text, ERROR, "an approval does not say which text was approved", \
      "the base's approvals") \
    X(approval_text_changed, DEFICIENCY, "the text of a card has changed since it was approved", \
      "the base's approvals") \
    X(approval_awaited, NOTE, "procedures await the approval of a qualified person", \
      "the base's approvals") \
    X(procedures_of_base, NOTE, "the base has procedures of its own, or changed the program's", \
      "the folder procedures/ of the base") \
    X(approval_lapses_during, NOTE, "an approval lapses before the charter ends", \
      "the base's approvals") \
    X(interval_unused, NOTE, "an interval of the base changes nothing", \
      "the row of the item in src/figure/gear_rules.c") \
    X(interval_twice, DEFICIENCY, "an item has two intervals", "reason") \
    /* dates of gear: the row of each kind in src/figure/gear_rules.c names its source */ \
    X(gear_expired, DEFICIENCY, "a piece of gear is out of date when the charter begins", \
      "the date stamped on it, else its interval") \
    X(gear_expires_during, DEFICIENCY, "a piece of gear runs out before the charter ends", \
      "the date stamped on it, else its interval") \
    X(gear_inside_margin, NOTE, "a piece of gear runs out within the base's margin", \
      "the base's margin_days") \
    X(gear_date_unknown, DEFICIENCY, "gear that runs out unseen has no date", "judged") \
    X(gear_dates_order, DEFICIENCY, "a piece was serviced or fitted before it was made", \
      "reason") \
    X(gear_stamp_too_far, DEFICIENCY, "a stamp lies further ahead than that kind of gear lasts", \
      "the row of the item in src/figure/stamp_limits.c") \
    /* capacities */ \
    X(persons_too_many, DEFICIENCY, "more people than the boat may carry", "the boat's papers") \
    LACK(raft_places_few, DEFICIENCY, "fewer places in the rafts than people", \
      "the raft's approval: one place a person") \
    LACK(raft_places_without_one, NOTE, "with one raft lost there are too few places", "judged") \
    LACK(jackets_few, DEFICIENCY, "fewer lifejackets than people", "trade practice") \
    LACK(jackets_unfit, DEFICIENCY, "not everybody has a lifejacket that fits", \
      "the body mass on its label") \
    LACK(jackets_unsized, NOTE, "whom a lifejacket fits is not recorded", "judged") \
    X(rating_without_system, DEFICIENCY, "a rating tells not whether it is EN or US", \
      "EN 3 and the US scale share letters, not units") \
    X(rating_unknown, DEFICIENCY, "a rating is none of either system", "EN 3; US scale") \
    X(co2_in_cabins, NOTE, "a carbon dioxide extinguisher is stowed in or next to the cabins", \
      "United Kingdom workboat code: not for accommodation save for electrical risk") \
    X(co2_share_unknown, NOTE, "how much of the cabin's air it would be is not known", "judged") \
    /* beacons */ \
    X(beacon_not_recorded, DEFICIENCY, "the coded identity of the EPIRB is not recorded", \
      "judged: the rescue centre asks for it") \
    X(beacon_doubtful, DEFICIENCY, "a beacon's identity can hardly be right", "C/S T.001, T.018") \
    X(beacon_copied, DEFICIENCY, "a beacon's identity was copied from a transmission", \
      "C/S T.001 Annex A") \
    X(beacon_other_kind, DEFICIENCY, "a beacon's identity is that of another kind of beacon", \
      "C/S T.001 Annex A") \
    X(beacon_country_unknown, DEFICIENCY, "a beacon's country code is no country's", \
      "ITU table of 2024") \
    X(beacon_of_specimen, DEFICIENCY, "a beacon of an invented boat could be a real one", \
      "maydeck") \
    X(beacon_other_call_sign, DEFICIENCY, "a beacon codes another call sign than the boat's", \
      "C/S T.001 Annex A") \
    X(beacon_other_country, DEFICIENCY, "a beacon is coded for another country than the boat's", \
      "C/S T.001: the country of coding keeps the register") \
    /* across the fleet */ \
    X(mmsi_twice, ERROR, "two boats have the same MMSI", "ITU-R M.585: one ship, one number") \
    X(call_sign_twice, ERROR, "two boats have the same call sign", "ITU Radio Regulations 19") \
    X(beacon_twice, ERROR, "two boats have a beacon of the same identity", "C/S T.001") \
    /* ---- contradictions and deficiencies in one boat's record ---- */ \
    /* A deficiency is what lives hang on, or a hole in the record that counts as the */ \
    /* dangerous case; a note is what a card or a figure would be better with. */ \
    /* what is turned off, and what lies where it burns */ \
    X(isolator_unrecorded, DEFICIENCY, \
      "what an isolator cuts is not recorded: it is taken to cut radio and pumps", \
      "trade practice") \
    X(isolator_cuts_radio, NOTE, \
      "an isolator that is not the service isolator cuts the fixed radio", "trade practice") \
    X(isolator_cuts_pumps, NOTE, \
      "an isolator that is not the service isolator cuts the electric bilge pumps", \
      "trade practice") \
    LACK(isolator_leaves_no_radio, DEFICIENCY, \
      "an isolator cuts the fixed radio, and no handheld is left in reach", "trade practice") \
    LACK(isolator_leaves_no_pump, DEFICIENCY, \
      "an isolator cuts the electric bilge pumps, and there is no hand pump", "trade practice") \
    X(pump_over_label, DEFICIENCY, "a pump is measured at more than its label has", \
      "trade practice") \
    X(control_inside, DEFICIENCY, \
      "what must be worked in an engine fire lies inside the space that burns", \
      "Boat Safety Scheme: the space must stay shut") \
    X(gas_valve_below, DEFICIENCY, "the gas bottles stand below deck", "trade practice") \
    X(locker_shared, DEFICIENCY, \
      "gear that calls for help or keeps people afloat lies in a locker with gas or petrol", \
      "Boat Safety Scheme: nothing else in a gas locker") \
    X(gas_denied, ERROR, "gas is not carried, but gear for gas is recorded", "reason") \
    X(gas_unrecorded, DEFICIENCY, \
      "she has no bottle valve, and whether she carries gas is not recorded", "reason") \
    X(gas_drain_unrecorded, DEFICIENCY, "where the gas locker drains to is not recorded", \
      "Boat Safety Scheme: gas must drain overboard") \
    X(gas_drain_inboard, DEFICIENCY, "the gas locker drains into the boat, or not at all", \
      "Boat Safety Scheme: gas must drain overboard") \
    X(engine_denied, ERROR, "gear of an engine is recorded that she is said not to have", \
      "reason") \
    X(engine_lost, DEFICIENCY, "a stop serves a space where no engine is recorded", "reason") \
    X(rooms_unrecorded, NOTE, "her rooms are not recorded", "judged: the plan's landmarks") \
    X(engines_unrecorded, DEFICIENCY, "her engines are not recorded", "reason") \
    X(engine_fact_unrecorded, DEFICIENCY, \
      "what an engine burns, or what it drives, is not recorded", "reason") \
    X(reach_unrecorded, NOTE, \
      "whether gear below that is wanted in smoke or gas is reached from deck is not recorded", \
      "judged: cards take it for out of reach") \
    X(reach_against_place, ERROR, \
      "gear that people must go below for is said to be reached from the cockpit", "reason") \
    X(cockpit_out_of_reach, DEFICIENCY, \
      "gear in the cockpit is said to be reached from below only", "reason") \
    X(level_against_place, DEFICIENCY, \
      "gear is said to be on another level than its zone is", "reason") \
    X(pump_feed_unrecorded, NOTE, "what drives an electric bilge pump is not recorded", \
      "judged: the card of flooding leaves the generator on") \
    X(gear_locked, DEFICIENCY, "gear for an emergency is under lock", \
      "Boat Safety Scheme: gas locker unlocked in use; other gear: trade practice") \
    X(pump_not_from_cockpit, DEFICIENCY, \
      "no hand bilge pump can be worked from the cockpit", "trade practice") \
    /* engine fire */ \
    LACK(engine_space_unprotected, DEFICIENCY, \
      "an engine space has neither a fire port nor a fixed extinguisher", \
      "Boat Safety Scheme: air makes an engine fire grow") \
    X(port_extinguisher_misfit, DEFICIENCY, \
      "an engine extinguisher does not fit the fire port", "Royal Yachting Association") \
    X(port_fit_unrecorded, NOTE, \
      "whether an engine extinguisher fits the fire port is not recorded", \
      "Royal Yachting Association") \
    LACK(port_without_extinguisher, DEFICIENCY, \
      "a fire port has no extinguisher to go into it", "trade practice") \
    LACK(extinguisher_without_port, DEFICIENCY, \
      "an engine extinguisher has no fire port to go into", \
      "Boat Safety Scheme: air makes an engine fire grow") \
    /* gas, battery, alarms */ \
    X(gas_switch_fails_open, DEFICIENCY, "the gas switch leaves the gas open without current", \
      "trade practice") \
    X(gas_switch_unrecorded, NOTE, \
      "whether the gas switch shuts without current is not recorded", "trade practice") \
    X(gas_valve_kind_unrecorded, NOTE, "how the gas bottle is shut is not recorded", \
      "trade practice") \
    X(lithium_vent_unrecorded, DEFICIENCY, \
      "where a lithium battery below deck lets its gas out is not recorded", \
      "Norwegian Maritime Authority") \
    X(alarm_missing, DEFICIENCY, "an alarm for smoke, carbon monoxide or gas is not fitted", \
      "Marine Accident Investigation Branch; gas: trade practice") \
    LACK(alarm_unrecorded, DEFICIENCY, \
      "an alarm for smoke, carbon monoxide or gas is not recorded", \
      "Marine Accident Investigation Branch; gas: trade practice") \
    /* raft, beacon, what a capsized boat leaves in reach */ \
    X(raft_missing, DEFICIENCY, "there is no liferaft", "trade practice") \
    X(lifting_gear_missing, DEFICIENCY, "nothing aboard lifts a person out of the water", \
      "MSC.1/Circ.1447; German BSU report 143/11") \
    X(ladder_missing, DEFICIENCY, "there is no ladder to climb out of the water by", \
      "trade practice") \
    X(ladder_from_deck, DEFICIENCY, "no swimmer can let a ladder down", \
      "trade practice") \
    X(gear_untried, NOTE, "when emergency tiller or lifting tackle was tried is not recorded", \
      "trade practice") \
    X(cutters_too_small, DEFICIENCY, "the bolt cutters do not cut her thickest wire", \
      "trade practice") \
    X(chain_end_loose, DEFICIENCY, "the end of the anchor's chain is made fast to nothing", \
      "trade practice") \
    X(chain_end_fixed, DEFICIENCY, "the end of the anchor's chain is held by a shackle", \
      "trade practice") \
    X(chain_end_unrecorded, NOTE, "how the end of the anchor's chain is held is not recorded", \
      "trade practice") \
    X(raft_line_unrecorded, DEFICIENCY, \
      "where the raft's line is made fast, or how the raft is freed, is not recorded", \
      "Royal National Lifeboat Institution") \
    X(raft_persons_unrecorded, DEFICIENCY, "for how many a raft is, is not recorded", \
      "trade practice") \
    X(beacon_missing, NOTE, "there is no EPIRB", "trade practice") \
    X(beacon_missing_beyond_a1, DEFICIENCY, \
      "there is no EPIRB, where coast stations may not hear VHF", "sea areas of the IMO") \
    X(beacon_made_fast, DEFICIENCY, "a beacon's own line is made fast to the boat", \
      "Netherlands Shipping Inspectorate") \
    X(beacon_line_unrecorded, NOTE, "where a beacon's own line is, is not recorded", \
      "Netherlands Shipping Inspectorate") \
    X(inverted_out_of_reach, DEFICIENCY, \
      "what keeps people alive cannot be reached in a capsized catamaran", \
      "Marine Accident Investigation Branch, leisure digest") \
    X(inverted_unrecorded, NOTE, \
      "whether it can be reached in a capsized catamaran is not recorded", \
      "Marine Accident Investigation Branch, leisure digest") \
    /* one piece written twice */ \
    X(identity_twice, ERROR, "two pieces have one beacon identity or MMSI", \
      "C/S T.001; ITU-R M.585") \
    X(identity_of_several, DEFICIENCY, "one identity or serial number stands for several pieces", \
      "trade practice") \
    X(serial_twice, DEFICIENCY, "two pieces of a kind have one serial number", \
      "trade practice") \
    /* openings in the hull */ \
    X(bung_unrecorded, DEFICIENCY, "no bung is recorded for an opening", "trade practice") \
    X(opening_without_stop, DEFICIENCY, "an opening without a valve has no bung recorded", \
      "trade practice") \
    X(bung_misfit, DEFICIENCY, \
      "a bung is thinner than the bore, or more than half as wide again", "judged") \
    X(opening_unmeasured, NOTE, "bore or depth of an opening is not recorded", "trade practice") \
    X(seacock_stiff, DEFICIENCY, "a seacock is recorded as stiff", "trade practice") \
    LACK(openings_too_few, DEFICIENCY, "fewer openings are recorded than were counted", \
      "trade practice") \
    X(openings_too_many, NOTE, "more openings are recorded than were counted", \
      "trade practice") \
    X(openings_uncounted, NOTE, "how many openings she has is not recorded", "trade practice") \
    LACK(opening_expected, NOTE, "an opening that the record lets expect is not recorded", \
      "judged") \
    /* radio */ \
    X(dsc_missing, DEFICIENCY, "the fixed radio cannot send a digital distress alert", \
      "trade practice") \
    X(dsc_unrecorded, DEFICIENCY, \
      "whether the fixed radio sends a digital distress alert is not recorded", \
      "trade practice") \
    X(dsc_without_position, DEFICIENCY, "the distress alert carries no position", \
      "ITU-R M.493") \
    X(dsc_position_unrecorded, NOTE, \
      "whether the distress alert carries the position is not recorded", "ITU-R M.493") \
    X(dsc_key_unrecorded, DEFICIENCY, \
      "how this set's distress key is worked is not recorded", "MSC/Circ.862") \
    X(radio_switch_unrecorded, DEFICIENCY, "what gives the fixed radio current is not recorded", \
      "trade practice") \
    LACK(spare_aerial_missing, NOTE, "nothing replaces an aerial that goes with the mast", \
      "trade practice") \
    X(handheld_out_of_reach, DEFICIENCY, \
      "no handheld radio can be reached without going below", "trade practice") \
    X(handheld_not_charged, DEFICIENCY, "a handheld radio is not kept charged", \
      "trade practice") \
    X(handheld_charge_unrecorded, NOTE, \
      "whether a handheld radio is kept charged is not recorded", "trade practice") \
    X(handheld_in_charger, NOTE, "a handheld radio is kept in its charger", \
      "trade practice") \
    X(handheld_charger_unrecorded, NOTE, \
      "whether a handheld radio is kept in its charger is not recorded", "trade practice") \
    X(handheld_mmsi_unrecorded, NOTE, \
      "a handheld radio has DSC, and its MMSI is not recorded", "ITU-R M.585") \
    X(position_tag_unknown, DEFICIENCY, \
      "the position is to be read on a tag that is on no piece", "trade practice") \
    /* what cards print where it is recorded; one note for all pieces */ \
    X(side_unrecorded, NOTE, "on which side gear is, is not recorded", "trade practice") \
    X(side_beside_sided, NOTE, \
      "on which side gear is, is not recorded, though it is of gear beside it", \
      "trade practice") \
    X(how_unrecorded, NOTE, "how a piece is worked is not recorded", "trade practice") \
    X(opening_unnamed, NOTE, "what an opening serves is not recorded", "trade practice") \
    X(extinguisher_unweighed, NOTE, "the weight of an extinguisher's filling is not recorded", \
      "trade practice") \
    X(pieces_uncounted, NOTE, "how many gas bottles or vents there are is not recorded", \
      "trade practice") \
    X(lever_unrecorded, NOTE, "how the engine lever stands in neutral is not recorded", \
      "trade practice") \
    X(case_fact_unrecorded, NOTE, "what decides between two acts of a card is not recorded", \
      "trade practice") \
    X(boat_fact_unrecorded, NOTE, "how the boat looks is not recorded", "trade practice") \
    X(radio_fact_unrecorded, NOTE, \
      "the fixed radio's place, or keys that it is worked by, are not recorded", \
      "trade practice") \
    /* tags: never given twice */ \
    LACK(tag_missing, DEFICIENCY, "a tag that was given is on no piece of the record", "reason") \
    X(tags_given_behind, DEFICIENCY, "a tag is higher than the last that was given", "reason") \
    X(tags_given_unrecorded, NOTE, "the last tag given of each letter is not recorded", \
      "judged") \
    /* the base: told once, of no boat */ \
    X(centre_unchecked, DEFICIENCY, \
      "nobody recorded when the rescue centre's channel and number were checked", "judged") \
    X(centre_check_old, DEFICIENCY, \
      "the rescue centre's channel and number were checked more than 12 months ago", "judged") \
    X(centre_contact_unrecorded, DEFICIENCY, \
      "the rescue centre's number, or what to call it, is not recorded", "trade practice") \
    X(berth_unnamed, NOTE, "harbour or place of the berths is not recorded", "HM Coastguard") \
    X(sea_area_unrecorded, NOTE, "the radio sea area is not recorded", "sea areas of the IMO") \
    X(clock_unrecorded, NOTE, "what UTC is by the clock on board is not recorded", "judged") \
    X(clock_lapsed, DEFICIENCY, "no clock of the base holds today or when the charter ends", \
      "judged") \
    /* MMSI */ \
    X(mmsi_damaged, ERROR, "the MMSI is not made of digits alone", "ITU-R M.585") \
    X(mmsi_length, ERROR, "the MMSI has not nine digits", "ITU-R M.585") \
    X(mmsi_form, ERROR, "the MMSI is of another kind of station than a ship", "ITU-R M.585") \
    X(mmsi_mid_unknown, DEFICIENCY, "no country is known to have the digits of the MMSI", \
      "ITU table of MIDs, " RADIO_TABLES_DATED) \
    X(mmsi_made_up, NOTE, "the MMSI looks like one put in for the time being", "judged") \
    X(mmsi_reserved, ERROR, "a real boat has an MMSI that is kept for specimens", "maydeck") \
    X(mmsi_of_specimen, ERROR, "a specimen has an MMSI that could be a real one", "maydeck") \
    X(mmsi_missing, DEFICIENCY, "the set has DSC, but no MMSI is recorded", "ITU-R M.493") \
    X(mmsi_not_programmed, DEFICIENCY, "the set has no MMSI programmed", "ITU-R M.493") \
    X(mmsi_programming_unknown, DEFICIENCY, "whether the set has its MMSI is not recorded", \
      "ITU-R M.493") \
    X(handheld_mmsi, ERROR, "the handheld's MMSI is neither a handheld's nor the ship's", \
      "ITU-R M.585") \
    X(handheld_mmsi_ships, NOTE, "the handheld bears the ship's own MMSI", "trade practice") \
    /* call sign */ \
    X(call_sign_missing, DEFICIENCY, "no call sign is recorded", "ITU Radio Regulations 19") \
    X(call_sign_characters, ERROR, "the call sign holds what no call sign may hold", \
      "ITU Radio Regulations 19.45") \
    X(call_sign_length, ERROR, "the call sign is too short or too long", \
      "ITU Radio Regulations 19") \
    X(call_sign_impossible, ERROR, "no call sign can begin so", "ITU Radio Regulations 19.50") \
    X(call_sign_of_a_body, ERROR, "the call sign is of a body such as the United Nations", \
      "ITU table of call sign series, " RADIO_TABLES_DATED) \
    X(call_sign_series_unknown, DEFICIENCY, "no country is known to hold the series", \
      "ITU table of call sign series, " RADIO_TABLES_DATED) \
    X(call_sign_halved, NOTE, "two countries share the series, and no letter tells which", \
      "ITU table of call sign series, " RADIO_TABLES_DATED) \
    X(call_sign_pattern, NOTE, "the call sign has not the pattern of a ship's", \
      "ITU Radio Regulations 19.55, 19.56") \
    X(call_sign_reserved, ERROR, "a real boat has a call sign that is kept for specimens", \
      "maydeck") \
    X(call_sign_of_specimen, ERROR, "a specimen has a call sign that could be a real one", \
      "maydeck") \
    X(identities_disagree, DEFICIENCY, "MMSI, call sign and flag are not of one country", \
      "ITU tables, " RADIO_TABLES_DATED) \
    X(flag_unknown, NOTE, "the flag is no country's code", "ISO 3166") \
    /* name */ \
    X(name_unspeakable, ERROR, "the name cannot be called out or spelled", \
      "ITU Radio Regulations, Appendix 14") \
    X(name_latin_missing, DEFICIENCY, "the name is not recorded in Latin letters", "judged") \
    X(name_latin_differs, NOTE, "the Latin spelling is not how such a name is spelled", \
      "ICAO Doc 9303-3") \
    X(name_roman, DEFICIENCY, "the name holds a numeral that can be said in two ways", \
      "judged") \
    X(name_figures, ERROR, "the name has figures, which can be called out in two ways", "judged") \
    X(name_signal, ERROR, "the name is heard as a signal or a word of procedure", \
      "ITU Radio Regulations 32 and 33; judged") \
    X(name_letters, ERROR, "the name is heard as letters, since its words are code words", \
      "ITU Radio Regulations, Appendix 14") \
    X(name_apostrophe, NOTE, "the name has an apostrophe that is on no keyboard", "judged") \
    X(name_long, NOTE, "the name is longer than AIS can show", "ITU-R M.1371") \
    /* how it is written */ \
    X(without_quotes, NOTE, "other programs do not read a value as it is written", \
      "YAML 1.1 and 1.2") \
    X(centre_phone_short, DEFICIENCY, "the rescue centre has no number that works everywhere", \
      "ITU-T E.164") \
    /* the silencing of checks */ \
    X(silence_unknown, ERROR, "a silenced check does not exist", "maydeck") \
    X(silence_of_error, ERROR, "an error is silenced: it must be put right instead", "maydeck") \
    X(silence_lapsed, DEFICIENCY, "a silence lapses before the boat is back", "maydeck") \
    X(silence_idle, NOTE, "a silenced check has nothing to say", "maydeck")

/* What is wrong with the boat, not with her record: an error, but her cards are true
 * and are printed. */
#define DANGER_LIST(X) \
    X(beacon_unreadable, ERROR, "a beacon's identity is no identity", "C/S T.001, T.018") \
    X(beacon_impossible, ERROR, "a beacon's identity codes what cannot be", "C/S T.001, T.018") \
    X(beacon_device_identity, ERROR, "a beacon is coded with a tender's or AIS device's number", \
      "United Kingdom safety bulletin 30 (2022), read in a copy") \
    X(beacon_test, ERROR, "a beacon is coded for tests or measuring", "C/S T.001 Annex A") \
    X(beacon_wrong_kind, ERROR, "a beacon is coded for an aircraft or for ship security", \
      "C/S T.001 Annex A") \
    X(beacon_other_mmsi, ERROR, "a beacon codes another MMSI than the boat's", \
      "C/S T.001 Annex A") \
    X(gear_date_to_come, ERROR, "something was done on board on a day to come", "reason") \
    X(co2_share, ERROR, "carbon dioxide would be more than 3 % of the air in the cabins", \
      "NIOSH: short-term limit 3 %, immediately dangerous 4 %")

#endif
