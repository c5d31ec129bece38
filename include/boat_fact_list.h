/* boat_fact_list.h - the fields of the sections boat and radio of a boat's file, one row
 * each (room: record). Columns: key, and member of struct boat_facts or struct
 * radio_facts; kind; what else struct field says of it, with where its value is read
 * (reader.h). Adding a field is adding a row and the member. */
#ifndef MAYDECK_BOAT_FACT_LIST_H
#define MAYDECK_BOAT_FACT_LIST_H

#include "reader.h"

#define BOAT_FACT_LIST(X) \
    X(name, FIELD_TEXT, .any_word = true, .required = true, \
      .own = true, .readers = READ_HEAD | READ_SCRIPT, \
      .about = "the boat's name as painted") \
    X(name_spoken, FIELD_TEXT, .any_word = true, \
      .own = true, .readers = READ_SCRIPT, \
      .about = "the name as it is to be spoken on the radio") \
    X(name_latin, FIELD_TEXT, .any_word = true, .own = true, .readers = READ_SCRIPT | READ_SPELL, \
      .about = "the name in Latin letters") \
    X(specimen, FIELD_ANSWER, .own = true, .readers = READ_HEAD | READ_CHECK, \
      .about = "an invented boat with reserved identities?") \
    X(hull, FIELD_CHOICE, .required = true, .choices = hull_words, \
      .readers = READ_PLAN | READ_CASE, \
      .about = "her hull") \
    X(rig, FIELD_CHOICE, .required = true, .choices = rig_words, \
      .readers = READ_CASE, \
      .about = "what moves her besides engines: sail, or nothing: motor") \
    X(loa_m, FIELD_NUMBER, .required = true, .low = 4000, .high = 30000, \
      .readers = READ_SCRIPT | READ_PLAN, \
      .about = "length over all, in metres") \
    X(beam_m, FIELD_NUMBER, .required = true, .low = 1000, .high = 15000, \
      .readers = READ_PLAN, \
      .about = "greatest beam, in metres") \
    X(draught_m, FIELD_NUMBER, .low = 200, .high = 6000, .readers = READ_CASE, \
      .about = "draught, in metres") \
    X(persons_max, FIELD_NUMBER, .required = true, .low = 1000, .high = 30000, .whole = true, \
      .readers = READ_FIGURE | READ_CHECK, \
      .about = "the most people allowed on board") \
    X(flag, FIELD_TEXT, .any_word = true, .readers = READ_FIGURE | READ_REST, \
      .about = "the flag state, two letters") \
    X(looks, FIELD_WORDING, .readers = READ_SCRIPT, \
      .about = "how she looks to a searcher") \
    X(rooms, FIELD_CHOICES, .choices = zone_key_list, \
      .readers = READ_PLAN | READ_CHECK, \
      .about = "the rooms that she has below") \
    X(openings, FIELD_NUMBER, .low = 0, .high = 60000, .whole = true, \
      .readers = READ_CHECK | READ_REST, \
      .about = "openings in the hull below the waterline, counted from outside") \
    X(lwl_m, FIELD_NUMBER, .low = 3000, .high = 30000, .readers = READ_FIGURE, \
      .about = "length on the waterline") \
    X(bwl_m, FIELD_NUMBER, .low = 300, .high = 10000, \
      .readers = READ_FIGURE, \
      .about = "beam on the waterline, of one hull") \
    X(usual_kn, FIELD_NUMBER, .low = 1000, .high = 30000, .readers = READ_FIGURE, \
      .about = "her usual speed, in knots") \
    X(cabin_m3, FIELD_NUMBER, .low = 1000, .high = 500000, \
      .readers = READ_FIGURE, \
      .about = "air in the cabins, in cubic metres") \
    X(engine_space_m3, FIELD_NUMBER, .low = 100, .high = 100000, \
      .readers = READ_FIGURE, \
      .about = "an engine space with its bilge, in cubic metres") \
    X(bilge_to_sole_l, FIELD_NUMBER, .low = 10000, .high = 20000000, \
      .readers = READ_FIGURE, \
      .about = "litres of water in one hull until the floorboards are wet") \
    X(thickest_wire_mm, FIELD_NUMBER, .low = 1000, .high = 40000, \
      .readers = READ_CHECK | READ_REST, \
      .about = "the thickest wire or rod that holds the mast") \
    X(lay_down_place, FIELD_WORDING, .readers = READ_CASE, \
      .about = "the hardest flat floor, for a person who is hurt") \
    X(mounted, FIELD_SECTION, SECTION_WITHIN(.table = &mounted_table), \
      .readers = READ_SAFETY, \
      .about = "where the cards hang: {zone: , faces: }")

#define RADIO_FACT_LIST(X) \
    X(call_sign, FIELD_TEXT, .any_word = true, .own = true, .readers = READ_SCRIPT | READ_SPELL, \
      .about = "the call sign, or none") \
    X(mmsi, FIELD_TEXT, .own = true, .readers = READ_SCRIPT | READ_SPELL, \
      .about = "the identity of nine digits, in quotes") \
    X(tag, FIELD_TEXT, .readers = READ_PLACE, \
      .about = "the set's tag") \
    X(zone, FIELD_CHOICE, .choices = zone_key_list, .readers = READ_PLACE, \
      .about = "the part of the boat it is in") \
    X(side, FIELD_CHOICE, .choices = side_words, .slips = side_slips, \
      .readers = READ_PLACE, \
      .about = "which side, facing the bow") \
    X(spot, FIELD_WORDING, .readers = READ_PLACE, \
      .about = "where exactly, in a few words") \
    X(power_switch, FIELD_WORDING, .readers = READ_PANEL, \
      .about = "the switch that gives it current") \
    X(power_from_cockpit, FIELD_ANSWER, \
      .readers = READ_PLACE, \
      .about = "of a set on deck: can its switch be reached from the cockpit?") \
    X(distress_key, FIELD_WORDING, \
      .readers = READ_PANEL, \
      .about = "how the distress key is uncovered, such as Lift the red lid") \
    X(second_station, FIELD_SECTION, \
      SECTION_OF(struct radio_facts, second_station, .table = &second_station_table), \
      .readers = READ_PANEL | READ_DISTRESS, \
      .about = "where a second handset of the set is: {zone: , side: , spot: }") \
    X(position_read_at, FIELD_WORDING, .any_word = true, .readers = READ_PANEL, \
      .about = "where the position is read: the tag of a piece of gear, or a few words") \
    X(emergency_aerial, FIELD_WORDING, .readers = READ_DISTRESS, \
      .about = "the spare aerial, and where") \
    X(mmsi_programmed, FIELD_ANSWER, .own = true, \
      .readers = READ_SCRIPT | READ_PANEL, \
      .about = "is the identity programmed into the set?") \
    X(dsc, FIELD_ANSWER, .readers = READ_PANEL | READ_CASE, \
      .about = "can the set send a digital distress alert?") \
    X(gnss, FIELD_ANSWER, .readers = READ_PANEL | READ_DISTRESS | READ_CHECK, \
      .about = "does the set know the position?") \
    X(hold_s, FIELD_NUMBER, .low = 1000, .high = 30000, \
      .readers = READ_PANEL, \
      .about = "seconds to hold the distress key") \
    X(antenna_m, FIELD_NUMBER, .low = 500, .high = 60000, \
      .readers = READ_FIGURE, \
      .about = "height of the aerial above the water") \
    X(nature_steps, FIELD_WORDINGS, .any_word = true, \
      .readers = READ_DISTRESS, \
      .about = "the keys that choose the nature of distress") \
    X(urgency_steps, FIELD_WORDINGS, .any_word = true, \
      .readers = READ_DISTRESS | READ_SCRIPT, \
      .about = "the keys that send an urgency call") \
    X(manual_position_steps, FIELD_WORDINGS, .any_word = true, \
      .readers = READ_DISTRESS, \
      .about = "the keys that enter a position") \
    X(silence_steps, FIELD_WORDINGS, .any_word = true, \
      .readers = READ_DISTRESS, \
      .about = "the keys that stop the alarm of an answer")

#endif
