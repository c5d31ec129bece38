/* boat_fields.c - the fields of a boat file's sections: what each is called, may
 * hold and means (room: record). The rows of equipment stand in gear_field_list.h, those of
 * the boat and her radio in boat_fact_list.h. Never reads a file. */
#include "boat.h"

#include "end_state.h"

#include "boat_facts.h"
#include "gear_field_list.h"
#include "record.h"

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

/* Where one stands, and where a handle is kept. */
#define GEAR_SPOT_ROW(member, ...) ROW(struct gear_spot, member, __VA_ARGS__)
#define GEAR_SPOT_SIDE \
    GEAR_SPOT_ROW(side, FIELD_CHOICE, .choices = side_words, .slips = side_slips, \
                  .about = "which side, facing the bow")
static const struct field from_rows[] = {
    GEAR_SPOT_ROW(zone, FIELD_CHOICE, .required = true, .choices = zone_key_list,
                  .about = "the part of the boat one stands in"),
    GEAR_SPOT_SIDE,
    GEAR_SPOT_ROW(spot, FIELD_WORDING, .about = "where exactly, in a few words"),
};
static const struct field handle_rows[] = {
    GEAR_SPOT_ROW(zone, FIELD_CHOICE, .choices = zone_key_list,
                  .about = "the part of the boat it is kept in"),
    GEAR_SPOT_SIDE,
    GEAR_SPOT_ROW(spot, FIELD_WORDING, .about = "where exactly, in a few words"),
};
static const struct field_table from_table = TABLE("the place from which gear is worked",
                                                   from_rows);
static const struct field_table handle_table = TABLE("the place of a handle", handle_rows);

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

#define BOAT_ROW(member, field_kind, ...) ROW(struct boat_facts, member, field_kind, __VA_ARGS__),
static const struct field boat_rows[] = {BOAT_FACT_LIST(BOAT_ROW)};
#undef BOAT_ROW

static const struct field engine_rows[] = {
    ROW(struct engine, space, FIELD_CHOICE, ENGINE_SPACES,
        .about = "the space it stands in; an outboard has none"),
    ROW(struct engine, fuel, FIELD_CHOICE, .choices = fuel_words, .about = "what it burns"),
    ROW(struct engine, drive, FIELD_CHOICE, .choices = drive_words,
        .about = "what it drives her by, or generator"),
};

static const struct field gas_section_rows[] = {
    ROW(struct gas_facts, carried, FIELD_ANSWER, .about = "is there cooking gas aboard?"),
    ROW(struct gas_facts, locker_drains, FIELD_CHOICE, .choices = drain_words,
        .about = "where the locker of its bottles drains to"),
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

#define RADIO_ROW(member, field_kind, ...) \
    ROW(struct radio_facts, member, field_kind, __VA_ARGS__),
static const struct field radio_rows[] = {RADIO_FACT_LIST(RADIO_ROW)};
#undef RADIO_ROW

static const struct field_table gear_table = TABLE("an equipment item", gear_rows);
/* Keys that stand elsewhere in a boat's file. */
static const struct stray_key boat_strays[] = {
    {"type", "write hull: monohull, hull: catamaran or hull: trimaran, and rig: sail or rig: "
             "motor"},
    {"engine_spaces", "list her engines in a section of their own, one a line:\n  engines:\n"
                      "    - {space: engine_space, fuel: diesel, drive: shaft}"},
    {"gas", "give gas a section of its own:\n  gas: {carried: yes, locker_drains: overboard}"},
    {NULL, NULL}};
static const struct field_table boat_table = {
    .what = "a boat", .fields = boat_rows, .count = sizeof boat_rows / sizeof *boat_rows,
    .strays = boat_strays};
static const struct field_table engine_table = TABLE("an engine", engine_rows);
static const struct field_table gas_section_table = TABLE("her gas", gas_section_rows);
static const struct field_table radio_table = TABLE("a radio", radio_rows);

static const struct field_table absence_table = TABLE("an entry of not_fitted", absence_rows);
static const struct field_table silence_table = TABLE("a silenced check", silence_rows);

#define BOAT_FILE(name, member, field_kind, ...) \
    KEYED(struct boat_file, name, member, field_kind, __VA_ARGS__)

static const struct field boat_file_rows[] = {
    BOAT_FILE("boat", boat, FIELD_SECTION,
             SECTION_OF(struct boat_file, record.facts, .table = &boat_table),
             .required = true, .about = "the boat herself"),
    BOAT_FILE("engines", engines, FIELD_ENTRIES,
             ENTRIES_OF(struct engine, .table = &engine_table),
             .about = "every engine: those that move her, and a generator's; [] for none"),
    BOAT_FILE("gas", gas, FIELD_SECTION,
             SECTION_OF(struct boat_file, record.gas, .table = &gas_section_table),
             .about = "cooking gas"),
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

const struct field_table *engine_fields(void)
{
    return &engine_table;
}

const struct field_table *gas_fields(void)
{
    return &gas_section_table;
}

const struct field_table *radio_fields(void)
{
    return &radio_table;
}

const struct field *boat_fact_row(enum boat_fact fact)
{
    return fact == BOAT_FACT_NONE ? NULL : &boat_rows[fact - 1];
}

const struct field *radio_fact_row(enum radio_fact fact)
{
    return fact == RADIO_FACT_NONE ? NULL : &radio_rows[fact - 1];
}
