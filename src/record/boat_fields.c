/* boat_fields.c - the fields of a boat file's sections: what each is called, may
 * hold and means (room: record). Adding a field is adding a row and a member.
 * Never reads a file. */
#include "boat.h"

#include "record.h"

#define GEAR(member, field_kind, ...) ROW(struct equipment, member, field_kind, __VA_ARGS__)
#define BOAT(member, field_kind, ...) ROW(struct boat_facts, member, field_kind, __VA_ARGS__)
#define RADIO(member, field_kind, ...) ROW(struct radio_facts, member, field_kind, __VA_ARGS__)

#define LEFT_REMEDY "write port if it is the left of one who faces the bow"
#define RIGHT_REMEDY "write starboard if it is the right of one who faces the bow"

/* Left and right turn with the one who looks. */
static const struct choice_slip side_slips[] = {
    {"LEFT", LEFT_REMEDY},       {"LINKS", LEFT_REMEDY},      {"SINISTRA", LEFT_REMEDY},
    {"GAUCHE", LEFT_REMEDY},     {"IZQUIERDA", LEFT_REMEDY},  {"LIJEVO", LEFT_REMEDY},
    {"BACKBORD", "write port"},  {"BABORD", "write port"},    {"B\u00C2BORD", "write port"},
    {"BABOR", "write port"},     {"RIGHT", RIGHT_REMEDY},     {"RECHTS", RIGHT_REMEDY},
    {"DESTRA", RIGHT_REMEDY},    {"DROITE", RIGHT_REMEDY},    {"DERECHA", RIGHT_REMEDY},
    {"DESNO", RIGHT_REMEDY},     {"STB", "write starboard"},  {"STBD", "write starboard"},
    {"TRIBORD", "write starboard"}, {"STEUERBORD", "write starboard"},
    {"ESTRIBOR", "write starboard"}, {"MIDDLE", "write centre"}, {"MIDSHIPS", "write centre"},
    {"AMIDSHIPS", "write centre"}, {NULL, NULL}};


/* The engine spaces stand together among the zones. */
static const char *const engine_space_keys[] = {
    "engine_space", "engine_space_port", "engine_space_starboard", NULL};
_Static_assert(ZONE_engine_space_port == ZONE_engine_space + 1 &&
                   ZONE_engine_space_starboard == ZONE_engine_space + 2,
               "the choices of engine spaces are values of zones");
#define ENGINE_SPACES .choices = engine_space_keys, .first = ZONE_engine_space

static const struct field gear_rows[] = {
    GEAR(item, FIELD_CHOICE, .required = true, .choices = item_key_list,
         .about = "what it is: a key of the register"),
    GEAR(tag, FIELD_TEXT, .about = "its own letter and number, fixed for the boat's life"),
    GEAR(name, FIELD_WORDING, .about = "what tells it from its like, such as engine intake"),
    GEAR(zone, FIELD_CHOICE, .required = true, .choices = zone_key_list,
         .about = "the part of the boat it is in"),
    GEAR(side, FIELD_CHOICE, .choices = side_words, .slips = side_slips,
         .about = "which side, facing the bow"),
    GEAR(spot, FIELD_WORDING, .about = "where exactly, in a few words"),
    GEAR(how, FIELD_WORDING, .about = "how it is worked, such as across pipe = shut"),
    GEAR(inside, FIELD_CHOICES, .choices = zone_key_list,
         .about = "spaces one must open or enter to reach it; [] for none"),
    GEAR(cuts, FIELD_CHOICES, .choices = item_key_list,
         .about = "gear that loses its current when this is turned off; [] for none"),
    GEAR(serves, FIELD_CHOICES, ENGINE_SPACES,
         .about = "the engine spaces it belongs to, on a boat with two"),
    GEAR(count, FIELD_NUMBER, .low = 1000, .high = 99000, .whole = true,
         .about = "how many in this place"),
    GEAR(at, FIELD_PAIR, .about = "[metres aft of the bow, metres to starboard, port negative]"),
    GEAR(agent, FIELD_CHOICE, .choices = agent_words, .about = "what the extinguisher holds"),
    GEAR(rating, FIELD_TEXT, .about = "the rating printed on it"),
    KEYED(struct equipment, "kind", kind_of, FIELD_CHOICE, .choices = valve_words,
          .about = "how the valve is turned or taken off"),
    GEAR(stop, FIELD_CHOICE, .choices = stop_words, .about = "how the engine is stopped"),
    GEAR(space, FIELD_CHOICE, .choices = air_space_words,
         .about = "the space a battery shares its air with: a zone, or own_box"),
    GEAR(vents_to, FIELD_WORDING, .about = "where its own vent leads"),
    GEAR(serial, FIELD_TEXT, .about = "the serial number"),
    GEAR(hex_id, FIELD_TEXT, .about = "the beacon's identity, in quotes"),
    GEAR(mmsi, FIELD_TEXT, .about = "the identity of nine digits, in quotes"),
    GEAR(size, FIELD_TEXT, .about = "its size as written on it"),
    GEAR(painter, FIELD_WORDING, .about = "where the raft's line is made fast"),
    GEAR(release, FIELD_WORDING, .about = "how it is freed from its stowage"),
    GEAR(handle, FIELD_WORDING, .about = "where its handle is kept"),
    GEAR(kg, FIELD_NUMBER, .low = 100, .high = 60000, .about = "weight of the filling or the gear"),
    GEAR(litres, FIELD_NUMBER, .low = 100, .high = 1000000, .about = "how much it holds"),
    GEAR(persons, FIELD_NUMBER, .low = 1000, .high = 30000, .whole = true,
         .about = "for how many people"),
    GEAR(bore_mm, FIELD_NUMBER, .low = 5000, .high = 200000, .about = "bore of the opening"),
    GEAR(depth_m, FIELD_NUMBER, .low = 0, .high = 3000, .about = "below the waterline"),
    GEAR(leads_to, FIELD_CHOICE, .choices = opening_words,
         .about = "what the opening leads to"),
    GEAR(works, FIELD_CHOICE, .choices = works_words,
         .about = "how easily it is worked by hand"),
    GEAR(bung_mm, FIELD_NUMBER, .low = 5000, .high = 200000, .about = "size of its bung"),
    GEAR(discharge_s, FIELD_NUMBER, .low = 1000, .high = 600000,
         .about = "seconds until it is empty, from its label"),
    GEAR(length_m, FIELD_NUMBER, .low = 500, .high = 200000, .about = "length of line or chain"),
    GEAR(rated_lph, FIELD_NUMBER, .low = 100000, .high = 100000000,
         .about = "litres an hour printed on the pump"),
    GEAR(measured_lpm, FIELD_NUMBER, .low = 1000, .high = 2000000,
         .about = "litres a minute measured at the pump's outlet"),
    GEAR(stroke_l, FIELD_NUMBER, .low = 100, .high = 5000,
         .about = "litres a stroke of the hand pump"),
    GEAR(protects_m3, FIELD_NUMBER, .low = 10, .high = 100000,
         .about = "the space its label covers, in cubic metres"),
    GEAR(fed_by, FIELD_CHOICE, .choices = feed_words,
         .about = "what drives the pump: battery (12 or 24 V), or mains (230 V)"),
    GEAR(antenna_m, FIELD_NUMBER, .low = 500, .high = 60000,
         .about = "height of its aerial above the water in use"),
    GEAR(gas, FIELD_CHOICE, .choices = gas_words, .about = "what the gas bottle holds"),
    GEAR(wearer, FIELD_CHOICE, .choices = wearer_words, .about = "whom the lifejacket is made for"),
    GEAR(lanyard, FIELD_CHOICE, .choices = lanyard_words,
         .about = "the beacon's own line: stowed, or made fast to the boat"),
    GEAR(kg_low, FIELD_NUMBER, .low = 1000, .high = 300000, .about = "lightest wearer"),
    GEAR(kg_high, FIELD_NUMBER, .low = 1000, .high = 300000, .about = "heaviest wearer"),
    GEAR(service_due, FIELD_DATE, .about = "the date the next service is due"),
    GEAR(expires, FIELD_DATE, .about = "the date it runs out"),
    GEAR(serviced, FIELD_DATE, .about = "the date of the last service"),
    GEAR(made, FIELD_DATE, .about = "the date it was made"),
    GEAR(installed, FIELD_DATE, .about = "the date it was put in"),
    GEAR(valve, FIELD_ANSWER, .about = "does the opening have a valve?"),
    GEAR(fits_port, FIELD_ANSWER, .about = "does it fit the fire port?"),
    GEAR(electrical_ok, FIELD_ANSWER, .about = "may it be used on live electrics?"),
    GEAR(from_cockpit, FIELD_ANSWER, .about = "can it be reached without going below?"),
    GEAR(fails_shut, FIELD_ANSWER, .about = "does it shut when the current fails?"),
    GEAR(locked, FIELD_ANSWER, .about = "is it under lock?"),
    GEAR(disposable, FIELD_ANSWER, .about = "is the extinguisher thrown away, never refilled?"),
    GEAR(below, FIELD_ANSWER, .about = "is it below deck, whatever its zone?"),
    GEAR(charged, FIELD_ANSWER, .about = "is it kept charged?"),
    GEAR(dsc, FIELD_ANSWER, .about = "can it send a digital distress alert?"),
    GEAR(automatic, FIELD_ANSWER, .about = "does it work by itself?"),
    GEAR(reach_inverted, FIELD_ANSWER, .about = "can it be reached in a capsized boat?"),
};

static const struct field mounted_rows[] = {
    KEYED(struct boat_facts, "zone", mounted_zone, FIELD_CHOICE, .required = true,
          .choices = zone_key_list, .about = "the part of the boat they hang in"),
    KEYED(struct boat_facts, "faces", mounted_faces, FIELD_CHOICE, .required = true,
          .choices = facing_words, .about = "which way a reader of the card looks"),
};
static const struct field_table mounted_table = TABLE("a place of the cards", mounted_rows);

static const struct field boat_rows[] = {
    BOAT(name, FIELD_TEXT, .any_word = true, .required = true,
         .about = "the boat's name as painted"),
    BOAT(name_spoken, FIELD_TEXT, .any_word = true,
         .about = "the name as it is to be spoken on the radio"),
    BOAT(name_latin, FIELD_TEXT, .any_word = true, .about = "the name in Latin letters"),
    BOAT(specimen, FIELD_ANSWER, .about = "an invented boat with reserved identities?"),
    BOAT(type, FIELD_CHOICE, .required = true, .choices = hull_words, .about = "her hull"),
    BOAT(loa_m, FIELD_NUMBER, .required = true, .low = 4000, .high = 30000,
         .about = "length over all, in metres"),
    BOAT(beam_m, FIELD_NUMBER, .required = true, .low = 1000, .high = 15000,
         .about = "greatest beam, in metres"),
    BOAT(draught_m, FIELD_NUMBER, .low = 200, .high = 6000, .about = "draught, in metres"),
    BOAT(persons_max, FIELD_NUMBER, .required = true, .low = 1000, .high = 30000, .whole = true,
         .about = "the most people allowed on board"),
    BOAT(flag, FIELD_TEXT, .any_word = true, .about = "the flag state, two letters"),
    BOAT(looks, FIELD_WORDING, .about = "how she looks to a searcher"),
    BOAT(engine_spaces, FIELD_CHOICES, ENGINE_SPACES,
         .about = "the spaces with an engine in them"),
    BOAT(openings, FIELD_NUMBER, .low = 0, .high = 60000, .whole = true,
         .about = "openings in the hull below the waterline, counted from outside"),
    BOAT(lwl_m, FIELD_NUMBER, .low = 3000, .high = 30000, .about = "length on the waterline"),
    BOAT(bwl_m, FIELD_NUMBER, .low = 300, .high = 10000,
         .about = "beam on the waterline, of one hull"),
    BOAT(usual_kn, FIELD_NUMBER, .low = 1000, .high = 30000, .about = "her usual speed, in knots"),
    BOAT(cabin_m3, FIELD_NUMBER, .low = 1000, .high = 500000,
         .about = "air in the cabins, in cubic metres"),
    BOAT(engine_space_m3, FIELD_NUMBER, .low = 100, .high = 100000,
         .about = "an engine space with its bilge, in cubic metres"),
    BOAT(bilge_to_sole_l, FIELD_NUMBER, .low = 10000, .high = 20000000,
         .about = "litres of water in one hull until the floorboards are wet"),
    BOAT(gas, FIELD_CHOICE, .choices = cooking_gas_words,
         .about = "cooking gas on board: none, or carried"),
    BOAT(mounted, FIELD_SECTION, SECTION_WITHIN(.table = &mounted_table),
         .about = "where the cards hang: {zone: , faces: }"),
};

static const struct field absence_rows[] = {
    ROW(struct absence, item, FIELD_CHOICE, .required = true, .choices = item_key_list,
        .about = "what is not fitted: a key of the register"),
    ROW(struct absence, serves, FIELD_CHOICES, .required = true, ENGINE_SPACES,
        .about = "the engine spaces that have none; where the boat has none at all, write the "
                 "name alone"),
};

static const struct field silence_rows[] = {
    ROW(struct silence, check, FIELD_TEXT, .required = true,
        .about = "the check, as `check --list` names it"),
    ROW(struct silence, reason, FIELD_TEXT, .required = true,
        .about = "why it may be silent for this boat"),
    ROW(struct silence, until, FIELD_DATE, .required = true, .about = "when it speaks again"),
};

static const struct field radio_rows[] = {
    RADIO(call_sign, FIELD_TEXT, .any_word = true, .about = "the call sign, or none"),
    RADIO(mmsi, FIELD_TEXT, .about = "the identity of nine digits, in quotes"),
    RADIO(tag, FIELD_TEXT, .about = "the set's tag"),
    RADIO(zone, FIELD_CHOICE, .choices = zone_key_list, .about = "the part of the boat it is in"),
    RADIO(side, FIELD_CHOICE, .choices = side_words, .slips = side_slips,
          .about = "which side, facing the bow"),
    RADIO(spot, FIELD_WORDING, .about = "where exactly, in a few words"),
    RADIO(power_switch, FIELD_WORDING, .about = "the switch that gives it current"),
    RADIO(power_from_cockpit, FIELD_ANSWER,
          .about = "of a set on deck: can its switch be reached from the cockpit?"),
    RADIO(distress_key, FIELD_WORDING,
          .about = "how the distress key is uncovered, such as Lift the red lid"),
    RADIO(second_station, FIELD_WORDING, .about = "a second handset, and where"),
    RADIO(emergency_aerial, FIELD_WORDING, .about = "the spare aerial, and where"),
    RADIO(mmsi_programmed, FIELD_ANSWER, .about = "is the identity programmed into the set?"),
    RADIO(dsc, FIELD_ANSWER, .about = "can the set send a digital distress alert?"),
    RADIO(gnss, FIELD_ANSWER, .about = "does the set know the position?"),
    RADIO(hold_s, FIELD_NUMBER, .low = 1000, .high = 30000,
          .about = "seconds to hold the distress key"),
    RADIO(antenna_m, FIELD_NUMBER, .low = 500, .high = 60000,
          .about = "height of the aerial above the water"),
    RADIO(nature_steps, FIELD_WORDINGS, .any_word = true,
          .about = "the keys that choose the nature of distress"),
    RADIO(urgency_steps, FIELD_WORDINGS, .any_word = true,
          .about = "the keys that send an urgency call"),
    RADIO(manual_position_steps, FIELD_WORDINGS, .any_word = true,
          .about = "the keys that enter a position"),
};

static const struct field_table gear_table = TABLE("an equipment item", gear_rows);
static const struct field_table boat_table = TABLE("a boat", boat_rows);
static const struct field_table radio_table = TABLE("a radio", radio_rows);

static const struct field_table absence_table = TABLE("an entry of not_fitted", absence_rows);
static const struct field_table silence_table = TABLE("a silenced check", silence_rows);

#define BOAT_FILE(name, member, field_kind, ...) \
    KEYED(struct boat_file, name, member, field_kind, __VA_ARGS__)

static const struct field boat_file_rows[] = {
    BOAT_FILE("boat", boat, FIELD_SECTION,
             SECTION_OF(struct boat_file, record.facts, .table = &boat_table),
             .required = true, .about = "the boat herself"),
    BOAT_FILE("radio", radio, FIELD_SECTION,
             SECTION_OF(struct boat_file, record.radio, .table = &radio_table),
             .about = "the fixed radio"),
    BOAT_FILE("equipment", equipment, FIELD_ENTRIES,
             ENTRIES_OF(struct equipment, .table = &gear_table), .about = "every piece of gear"),
    BOAT_FILE("not_fitted", not_fitted, FIELD_ENTRIES,
             ENTRIES_OF(struct absence, .table = &absence_table, .lone = "item"),
             .about = "gear the boat does not have"),
    BOAT_FILE("retired_tags", record.retired_tags, FIELD_LIST, .any_word = true,
             .about = "tags of gear that is gone"),
    BOAT_FILE("tags_given", record.tags_given, FIELD_LIST, .any_word = true,
             .about = "the last tag ever given of each letter"),
    BOAT_FILE("silenced", silenced, FIELD_ENTRIES,
             ENTRIES_OF(struct silence, .table = &silence_table),
             .about = "checks that are silent for this boat: {check: , reason: , until: }"),
};
static const struct field_table boat_file_table = TABLE("a boat file", boat_file_rows);

const struct field_table *boat_file_fields(void)
{
    return &boat_file_table;
}

const struct field_table *equipment_fields(void)
{
    return &gear_table;
}

const struct field_table *boat_fields(void)
{
    return &boat_table;
}

const struct field_table *radio_fields(void)
{
    return &radio_table;
}
