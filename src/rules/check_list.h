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
    X(record, ERROR, "a boat's file cannot be read, or says something that cannot be", \
      "maydeck") \
    X(cards, HELD, "a fact that a card needs is not recorded", "maydeck") \
    X(page, ERROR, "a card does not fit its page, or does not pass proofreading", "maydeck")

#define CHECK_LIST(X) \
    /* the base */ \
    X(approval_lapsed, DEFICIENCY, "an approval of a card has lapsed", "the base's approvals") \
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
    X(gear_date_to_come, DEFICIENCY, "something was done to a piece on a day to come", "reason") \
    /* capacities */ \
    X(persons_too_many, DEFICIENCY, "more people than the boat may carry", "the boat's papers") \
    X(raft_places_few, DEFICIENCY, "fewer places in the rafts than people", \
      "the raft's approval: one place a person") \
    X(raft_places_without_one, NOTE, "with one raft lost there are too few places", "judged") \
    X(jackets_few, DEFICIENCY, "fewer lifejackets than people", "trade practice") \
    X(jackets_unfit, DEFICIENCY, "not everybody has a lifejacket that fits", \
      "the body mass on its label") \
    X(jackets_unsized, NOTE, "whom a lifejacket fits is not recorded", "judged") \
    X(rating_without_system, DEFICIENCY, "a rating tells not whether it is EN or US", \
      "EN 3 and the US scale share letters, not units") \
    X(rating_unknown, DEFICIENCY, "a rating is none of either system", "EN 3; US scale") \
    X(co2_in_cabins, NOTE, "a carbon dioxide extinguisher is stowed in or next to the cabins", \
      "United Kingdom workboat code: not for accommodation save for electrical risk") \
    X(co2_share_unknown, NOTE, "how much of the cabin's air it would be is not known", "judged") \
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
    X(isolator_leaves_no_radio, DEFICIENCY, \
      "an isolator cuts the fixed radio, and no handheld is left in reach", "trade practice") \
    X(isolator_leaves_no_pump, DEFICIENCY, \
      "an isolator cuts the electric bilge pumps, and there is no hand pump", "trade practice") \
    X(control_inside, DEFICIENCY, \
      "what must be worked in an engine fire lies inside the space that burns", \
      "Boat Safety Scheme: the space must stay shut") \
    X(gas_valve_below, DEFICIENCY, "the gas bottles stand below deck", "trade practice") \
    X(gear_locked, DEFICIENCY, "gear for an emergency is under lock", \
      "Boat Safety Scheme: gas locker unlocked in use; other gear: trade practice") \
    X(pump_not_from_cockpit, DEFICIENCY, \
      "no hand bilge pump can be worked from the cockpit", "trade practice") \
    /* engine fire */ \
    X(engine_space_unprotected, DEFICIENCY, \
      "an engine space has neither a fire port nor a fixed extinguisher", \
      "Boat Safety Scheme: air makes an engine fire grow") \
    X(port_extinguisher_misfit, DEFICIENCY, \
      "an engine extinguisher does not fit the fire port", "Royal Yachting Association") \
    X(port_fit_unrecorded, NOTE, \
      "whether an engine extinguisher fits the fire port is not recorded", \
      "Royal Yachting Association") \
    X(port_without_extinguisher, DEFICIENCY, \
      "a fire port has no extinguisher to go into it", "trade practice") \
    X(extinguisher_without_port, DEFICIENCY, \
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
    X(alarm_unrecorded, DEFICIENCY, \
      "an alarm for smoke, carbon monoxide or gas is not recorded", \
      "Marine Accident Investigation Branch; gas: trade practice") \
    /* raft, beacon, what a capsized boat leaves in reach */ \
    X(raft_missing, DEFICIENCY, "there is no liferaft", "trade practice") \
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
    X(openings_too_few, DEFICIENCY, "fewer openings are recorded than were counted", \
      "trade practice") \
    X(openings_too_many, NOTE, "more openings are recorded than were counted", \
      "trade practice") \
    X(openings_uncounted, NOTE, "how many openings she has is not recorded", "trade practice") \
    X(opening_expected, NOTE, "an opening that the record lets expect is not recorded", \
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
    X(spare_aerial_missing, NOTE, "nothing replaces an aerial that goes with the mast", \
      "trade practice") \
    X(handheld_out_of_reach, DEFICIENCY, \
      "no handheld radio can be reached without going below", "trade practice") \
    X(handheld_not_charged, DEFICIENCY, "a handheld radio is not kept charged", \
      "trade practice") \
    X(handheld_charge_unrecorded, NOTE, \
      "whether a handheld radio is kept charged is not recorded", "trade practice") \
    /* the base: told once, of no boat */ \
    X(centre_unchecked, DEFICIENCY, \
      "nobody recorded when the rescue centre's channel and number were checked", "judged") \
    X(centre_check_old, DEFICIENCY, \
      "the rescue centre's channel and number were checked more than 12 months ago", "judged") \
    X(centre_contact_unrecorded, DEFICIENCY, \
      "the rescue centre's number, or what to call it, is not recorded", "trade practice") \
    X(sea_area_unrecorded, NOTE, "the radio sea area is not recorded", "sea areas of the IMO") \
    /* the silencing of checks */ \
    X(silence_unknown, ERROR, "a silenced check does not exist", "maydeck") \
    X(silence_of_error, ERROR, "an error is silenced: it must be put right instead", "maydeck") \
    X(silence_lapsed, DEFICIENCY, "the date by which a silence lapses is past", "maydeck") \
    X(silence_idle, NOTE, "a silenced check has nothing to say", "maydeck")

/* What is wrong with the boat, not with her record: an error, but her cards are true
 * and are printed. */
#define DANGER_LIST(X) \
    X(co2_share, ERROR, "carbon dioxide would be more than 3 % of the air in the cabins", \
      "NIOSH: short-term limit 3 %, immediately dangerous 4 %")

#endif
