/* boat_fields.c - the fields of a boat file's sections: what each is called, may
 * hold and means (room: record). Adding a field is adding a row and a member; the rows of
 * equipment stand in gear_field_list.h. Never reads a file. */
#include "boat.h"

#include "gear_field_list.h"
#include "record.h"

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

#define GEAR_ROW(key, member, field_kind, who, ...) \
    KEYED(struct equipment, #key, member, field_kind, __VA_ARGS__),
static const struct field gear_rows[] = {GEAR_FIELD_LIST(GEAR_ROW)};
#undef GEAR_ROW

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
