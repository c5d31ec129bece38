/* boat_fields.c - the fields of a boat file's sections: what each is called, may
 * hold and means (room: record). The rows of equipment stand in gear_field_list.h, those of
 * the boat and her radio in boat_fact_list.h. Never reads a file. */
#include "boat.h"

#include "end_state.h"

#include "boat_facts.h"
#include "gear_field_list.h"
#include "record.h"

#define ROWS_IN(rows) (sizeof(rows) / sizeof *(rows))
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
    "engine_space", "engine_space_port", "engine_space_starboard", "generator_space", NULL};
_Static_assert(ZONE_engine_space_port == ZONE_engine_space + 1 &&
                   ZONE_engine_space_starboard == ZONE_engine_space + 2 &&
                   ZONE_generator_space == ZONE_engine_space + 3,
               "the choices of engine spaces are values of zones");
#define ENGINE_SPACES .choices = engine_space_keys, .first = ZONE_engine_space

/* What a model says beside the fields of a boat's file: when it was last changed. */
#define CHANGED_ROW(record) \
    ROW(record, changed, FIELD_DATE, .readers = READ_DIFFERS, \
        .about = "the day of its last change, where that is later " \
        "than the file's")

/* Where one stands, and where a handle is kept. */
#define GEAR_SPOT_ROW(member, ...) ROW(struct gear_spot, member, __VA_ARGS__)
#define GEAR_SPOT_SIDE \
    GEAR_SPOT_ROW(side, FIELD_CHOICE, .choices = side_words, .slips = side_slips, \
                  .readers = READ_PLACE, .about = "which side, facing the bow")
static const struct field from_rows[] = {
    GEAR_SPOT_ROW(zone, FIELD_CHOICE, .required = true, .choices = zone_key_list,
                  .readers = READ_PLACE, .about = "the part of the boat one stands in"),
    GEAR_SPOT_SIDE,
    GEAR_SPOT_ROW(spot, FIELD_WORDING, .readers = READ_PLACE,
                  .about = "where exactly, in a few words"),
};
static const struct field handle_rows[] = {
    GEAR_SPOT_ROW(zone, FIELD_CHOICE, .choices = zone_key_list,
                  .readers = READ_PLACE, .about = "the part of the boat it is kept in"),
    GEAR_SPOT_SIDE,
    GEAR_SPOT_ROW(spot, FIELD_WORDING, .readers = READ_PLACE,
                  .about = "where exactly, in a few words"),
};
static const struct field_table from_table = TABLE("the place from which gear is worked",
                                                   from_rows);
static const struct field_table handle_table = TABLE("the place of a handle", handle_rows);

/* A second handset. */
static const struct field second_station_rows[] = {
    GEAR_SPOT_ROW(zone, FIELD_CHOICE, .required = true, .choices = zone_key_list,
                  .readers = READ_PANEL | READ_DISTRESS,
                  .about = "the part of the boat it is in"),
    GEAR_SPOT_ROW(side, FIELD_CHOICE, .choices = side_words, .slips = side_slips,
                  .readers = READ_PANEL | READ_DISTRESS, .about = "which side, facing the bow"),
    GEAR_SPOT_ROW(spot, FIELD_WORDING, .readers = READ_PANEL | READ_DISTRESS,
                  .about = "where exactly, in a few words"),
};
static const struct field_table second_station_table = TABLE("the place of a second handset",
                                                             second_station_rows);

#define GEAR_ROW(key, member, field_kind, who, ...) \
    KEYED(struct equipment, #key, member, field_kind, __VA_ARGS__),
static const struct field gear_rows[] = {GEAR_FIELD_LIST(GEAR_ROW)};
static const struct field model_gear_rows[] = {GEAR_FIELD_LIST(GEAR_ROW)
                                               CHANGED_ROW(struct equipment)};
#undef GEAR_ROW

static const struct field mounted_rows[] = {
    KEYED(struct boat_facts, "zone", mounted_zone, FIELD_CHOICE, .required = true,
          .choices = zone_key_list, .readers = READ_SAFETY,
          .about = "the part of the boat they hang in"),
    KEYED(struct boat_facts, "faces", mounted_faces, FIELD_CHOICE, .required = true,
          .choices = facing_words, .readers = READ_SAFETY,
          .about = "which way a reader of the card looks"),
};
static const struct field_table mounted_table = TABLE("a place of the cards", mounted_rows);

#define BOAT_ROW(member, field_kind, ...) ROW(struct boat_facts, member, field_kind, __VA_ARGS__),
static const struct field boat_rows[] = {BOAT_FACT_LIST(BOAT_ROW)};
static const struct field model_boat_rows[] = {BOAT_FACT_LIST(BOAT_ROW)
                                               CHANGED_ROW(struct boat_facts)};
#undef BOAT_ROW

#define ENGINE_ROWS \
    ROW(struct engine, space, FIELD_CHOICE, ENGINE_SPACES, .readers = READ_CASE, \
        .about = "the space it stands in; an outboard has none"), \
    ROW(struct engine, fuel, FIELD_CHOICE, .choices = fuel_words, .readers = READ_CASE, \
        .about = "what it burns"), \
    ROW(struct engine, drive, FIELD_CHOICE, .choices = drive_words, .readers = READ_CASE, \
        .about = "what it drives her by, or generator")
static const struct field engine_rows[] = {ENGINE_ROWS};
static const struct field model_engine_rows[] = {ENGINE_ROWS, CHANGED_ROW(struct engine)};

#define GAS_ROWS \
    ROW(struct gas_facts, carried, FIELD_ANSWER, .readers = READ_CASE, \
        .about = "is there cooking gas aboard?"), \
    ROW(struct gas_facts, locker_drains, FIELD_CHOICE, .choices = drain_words, \
        .readers = READ_CHECK | READ_REST, .about = "where the locker of its bottles drains to")
static const struct field gas_section_rows[] = {GAS_ROWS};
static const struct field model_gas_rows[] = {GAS_ROWS, CHANGED_ROW(struct gas_facts)};

static const struct field absence_rows[] = {
    ROW(struct absence, item, FIELD_CHOICE, .required = true, .choices = item_key_list,
        .readers = READ_CASE | READ_CHECK, .about = "what it is: a key of the register"),
    ROW(struct absence, serves, FIELD_CHOICES, .required = true, ENGINE_SPACES,
        .readers = READ_CASE | READ_CHECK,
        .about = "the engine spaces of which it is said; of the whole boat, write the name "
                 "alone"),
};

static const struct field model_absence_rows[] = {
    ROW(struct absence, item, FIELD_CHOICE, .required = true, .choices = item_key_list,
        .readers = READ_CASE | READ_CHECK, .about = "what is not fitted: a key of the register"),
    ROW(struct absence, serves, FIELD_CHOICES, ENGINE_SPACES,
        .readers = READ_CASE | READ_CHECK,
        .about = "the engine spaces that have none; left out: there is none at all"),
    CHANGED_ROW(struct absence),
};

static const struct field walk_rows[] = {
    ROW(struct walk, date, FIELD_DATE, .required = true, .readers = READ_DIFFERS,
        .about = "the day of the walk"),
    ROW(struct walk, by, FIELD_TEXT, .any_word = true, .required = true,
        .readers = READ_DIFFERS, .about = "who walked: name or initials"),
};

static const struct field silence_rows[] = {
    ROW(struct silence, check, FIELD_TEXT, .required = true,
        .readers = READ_CHECK, .about = "the check, as `check --list` names it"),
    ROW(struct silence, reason, FIELD_TEXT, .required = true,
        .readers = READ_CHECK, .about = "why it may be silent for this boat"),
    ROW(struct silence, until, FIELD_DATE, .required = true, .readers = READ_CHECK,
        .about = "when it speaks again"),
};

#define RADIO_ROW(member, field_kind, ...) \
    ROW(struct radio_facts, member, field_kind, __VA_ARGS__),
static const struct field radio_rows[] = {RADIO_FACT_LIST(RADIO_ROW)};
static const struct field model_radio_rows[] = {RADIO_FACT_LIST(RADIO_ROW)
                                                CHANGED_ROW(struct radio_facts)};
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
    .what = "a boat", .fields = boat_rows, .count = ROWS_IN(boat_rows),
    .strays = boat_strays};
static const struct field_table engine_table = TABLE("an engine", engine_rows);
static const struct field_table gas_section_table = TABLE("her gas", gas_section_rows);
static const struct field_table radio_table = TABLE("a radio", radio_rows);

static const struct field_table absence_table = TABLE("an entry of not_fitted", absence_rows);
static const struct field_table unsurveyed_table =
    TABLE("an entry of not_surveyed", absence_rows);
static const struct field_table silence_table = TABLE("a silenced check", silence_rows);

static const struct field_table walk_table = TABLE("a walk", walk_rows);

/* Of a file that is like a model: what is missing may stand there. */
static const struct field_table sister_boat_table = {
    .what = "a boat", .fields = boat_rows, .count = ROWS_IN(boat_rows), .partial = true,
    .strays = boat_strays};
static const struct field_table sister_gear_table = {
    .what = "an equipment item", .fields = gear_rows, .count = ROWS_IN(gear_rows),
    .partial = true};

#define FOR_MANY .own_remedy = "each boat has her own: write it in her file"
static const struct field_table model_boat_table = {
    .what = "a model", .fields = model_boat_rows, .count = ROWS_IN(model_boat_rows),
    .partial = true, .strays = boat_strays, FOR_MANY};
static const struct field_table model_radio_table = {
    .what = "a model's radio", .fields = model_radio_rows, .count = ROWS_IN(model_radio_rows),
    FOR_MANY};
static const struct field_table model_gear_table = {
    .what = "a model's equipment item", .fields = model_gear_rows,
    .count = ROWS_IN(model_gear_rows),
    .own_remedy = "each boat has her own: write it in her file, with the tag of the piece, such "
                  "as\n  - {tag: E3, expires: 2029-05}"};
static const struct field_table model_engine_table = TABLE("a model's engine", model_engine_rows);
static const struct field_table model_gas_table = TABLE("a model's gas", model_gas_rows);
static const struct field_table model_absence_table =
    TABLE("a model's entry of not_fitted", model_absence_rows);

/* ---- the files ---- */

#define BOAT_FILE(name, member, field_kind, ...) \
    KEYED(struct boat_file, name, member, field_kind, __VA_ARGS__)

/* Sections that the files of a boat, of one that is like a model and of a model have alike,
 * each with its own tables. */
#define BOAT_ROW(boat_part, needed) \
    BOAT_FILE("boat", boat, FIELD_SECTION, \
              SECTION_OF(struct boat_file, record.facts, .table = &(boat_part)), \
              .required = (needed), .about = "the boat herself")
#define ENGINES_ROW(engine_part) \
    BOAT_FILE("engines", engines, FIELD_ENTRIES, \
              ENTRIES_OF(struct engine, .table = &(engine_part)), \
              .about = "every engine: those that move her, and a generator's; [] for none")
#define GAS_ROW(gas_part) \
    BOAT_FILE("gas", gas, FIELD_SECTION, \
              SECTION_OF(struct boat_file, record.gas, .table = &(gas_part)), \
              .about = "cooking gas")
#define RADIO_ROW(radio_part) \
    BOAT_FILE("radio", radio, FIELD_SECTION, \
              SECTION_OF(struct boat_file, record.radio, .table = &(radio_part)), \
              .about = "the fixed radio")
#define EQUIPMENT_ROW(gear_part) \
    BOAT_FILE("equipment", equipment, FIELD_ENTRIES, \
              ENTRIES_OF(struct equipment, .table = &(gear_part)), .about = "every piece of gear")
#define NOT_FITTED_ROW(absence_part) \
    BOAT_FILE("not_fitted", not_fitted, FIELD_ENTRIES, \
              ENTRIES_OF(struct absence, .table = &(absence_part), .lone = "item"), \
              .about = "gear the boat does not have")
#define TAG_ROWS \
    BOAT_FILE("retired_tags", record.retired_tags, FIELD_LIST, .any_word = true, \
              .readers = READ_CHECK, .about = "tags of gear that is gone"), \
    BOAT_FILE("tags_given", record.tags_given, FIELD_LIST, .any_word = true, \
              .readers = READ_CHECK, .about = "the last tag ever given of each letter")

/* What a boat's file alone has. */
#define BOAT_FILE_ROWS \
    BOAT_FILE("cards", cards, FIELD_SECTION, \
              SECTION_OF(struct boat_file, record.cards, .table = &card_choice_table), \
              .about = "which cards she has, where the base's choice is not hers"), \
    BOAT_FILE("not_surveyed", not_surveyed, FIELD_ENTRIES, \
              ENTRIES_OF(struct absence, .table = &unsurveyed_table, .lone = "item"), \
              .about = "gear that she may have: nobody has looked yet"), \
    BOAT_FILE("lines", lines, FIELD_ENTRIES, \
              ENTRIES_OF(struct own_line, .table = &own_line_table), \
              .about = "the base's own lines on her cards, two a card with those of base.yaml"), \
    BOAT_FILE("silenced", silenced, FIELD_ENTRIES, \
              ENTRIES_OF(struct silence, .table = &silence_table), \
              .about = "checks that are silent for this boat: {check: , reason: , until: }"), \
    BOAT_FILE("like", like, FIELD_TEXT, .any_word = true, .readers = READ_DIFFERS, \
              .about = "her model: the name of a file in models/, without .yaml"), \
    BOAT_FILE("walked", walked, FIELD_SECTION, \
              SECTION_OF(struct boat_file, walk, .table = &walk_table), \
              .about = "who saw, and when, that her model is true of her: {date: , by: }"), \
    BOAT_FILE("not_here", not_here, FIELD_LIST, .any_word = true, .readers = READ_DIFFERS, \
              .about = "tags of her model's gear that she has not")

static const struct field boat_file_rows[] = {
    BOAT_ROW(boat_table, true), ENGINES_ROW(engine_table),
    GAS_ROW(gas_section_table), RADIO_ROW(radio_table), EQUIPMENT_ROW(gear_table),
    NOT_FITTED_ROW(absence_table), TAG_ROWS, BOAT_FILE_ROWS,
};
static const struct field_table boat_file_table = TABLE("a boat file", boat_file_rows);

static const struct field sister_file_rows[] = {
    BOAT_ROW(sister_boat_table, true), ENGINES_ROW(engine_table),
    GAS_ROW(gas_section_table), RADIO_ROW(radio_table), EQUIPMENT_ROW(sister_gear_table),
    NOT_FITTED_ROW(absence_table), TAG_ROWS, BOAT_FILE_ROWS,
};
static const struct field_table sister_file_table = TABLE("a boat file", sister_file_rows);

static const struct field model_file_rows[] = {
    BOAT_FILE("changed", changed, FIELD_DATE, .required = true, .readers = READ_DIFFERS,
              .about = "the day of the last change of anything that has no later one of its own"),
    BOAT_ROW(model_boat_table, false), ENGINES_ROW(model_engine_table), GAS_ROW(model_gas_table),
    RADIO_ROW(model_radio_table), EQUIPMENT_ROW(model_gear_table),
    NOT_FITTED_ROW(model_absence_table), TAG_ROWS,
};
static const struct stray_key model_strays[] = {
    {"like", "a model is like no other: write out what it has"},
    {"walked", "write it in the file of each boat that somebody walked round"},
    {"not_surveyed", "look, then write it into the model; or name it in the file of a boat"},
    {"not_here", "take those pieces out of the model, or write it in the file of a boat"},
    {"cards", "write it in the file of a boat, or for all of them in base.yaml"},
    {"lines", "write them in the file of a boat, or for all of them in base.yaml"},
    {"silenced", "a check is silenced for one boat: write it in her file"},
    {NULL, NULL}};
static const struct field_table model_file_table = {
    .what = "a model's file", .fields = model_file_rows, .count = ROWS_IN(model_file_rows),
    .strays = model_strays};

const struct field_table *boat_file_fields(void)
{
    return &boat_file_table;
}

const struct field_table *sister_file_fields(void)
{
    return &sister_file_table;
}

const struct field_table *model_file_fields(void)
{
    return &model_file_table;
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

const struct field_table *absence_fields(void)
{
    return &absence_table;
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
