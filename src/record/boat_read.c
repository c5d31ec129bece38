/* boat_read.c - one boat's file read into a record (room: record). Places, tags
 * and doubles are judged in files of their own. Never looks at another record,
 * and never fills in a fact that the file does not hold. */
#include "boat.h"

#include "item_fields.h"
#include "record.h"
#include "text.h"

#include <string.h>

enum { NAME_LIMIT = 34 };   /* characters: what the title band and a row can hold */

static const enum zone_key monohull_spaces[] = {ZONE_engine_space};
static const enum zone_key catamaran_spaces[] = {ZONE_engine_space_port,
                                                 ZONE_engine_space_starboard};

static void name_check(const struct boat_reading *reading, const struct text_value *name)
{
    long length = name->text == NULL ? 0 : text_code_points(name->text);
    if (length > NAME_LIMIT)
        problem_add(reading->problems, SEVERITY_ERROR, name->place,
                    "shorten it: a card never cuts a name",
                    "name is %ld characters long, at most %d fit", length, NAME_LIMIT);
}

static void weights_check(const struct boat_reading *reading, const struct equipment *gear)
{
    if (gear->kg_low.given && gear->kg_high.given && gear->kg_low.milli > gear->kg_high.milli)
        problem_add(reading->problems, SEVERITY_ERROR, gear->kg_low.place,
                    "kg_low is the lightest wearer, kg_high the heaviest",
                    "kg_low %s is more than kg_high %s", gear->kg_low.text, gear->kg_high.text);
}

static void spaces_default(struct boat *boat)
{
    if (boat->catamaran) {
        boat->engine_spaces = catamaran_spaces;
        boat->engine_space_count = 2;
    } else {
        boat->engine_spaces = monohull_spaces;
        boat->engine_space_count = 1;
    }
}

/* Does the engine burn something in a space? One whose fuel is not recorded may. */
static bool burns_inside(const struct engine *engine)
{
    return engine->space.value != ZONE_NONE && engine->fuel.value != FUEL_ELECTRIC;
}

static bool space_listed(const struct boat *boat, enum zone_key space)
{
    for (size_t i = 0; i < boat->engine_space_count; i++)
        if (boat->engine_spaces[i] == space)
            return true;
    return false;
}

static void spaces_given(struct boat *boat, struct arena *arena)
{
    enum zone_key *spaces = arena_array(arena, boat->engine_count, sizeof *spaces);
    boat->engine_spaces = spaces;
    boat->engine_space_count = 0;
    for (size_t i = 0; i < boat->engine_count; i++)
        if (burns_inside(&boat->engines[i]) && !space_listed(boat, boat->engines[i].space.value))
            spaces[boat->engine_space_count++] = boat->engines[i].space.value;
}

/* `engine_space` beside one of its two halves would be a card too many. */
static void engine_space_check(const struct boat_reading *reading, const struct engine *engine)
{
    const struct boat *boat = reading->boat;
    const struct zone *zone = zone_of(engine->space.value);
    if (!hull_has_zone(boat->facts.hull.value, zone))
        problem_add(reading->problems, SEVERITY_ERROR, engine->space.place,
                    "write engine_space", "%s is found on catamarans only", zone->key);
    if (zone->id == ZONE_generator_space && engine->drive.value != DRIVE_NONE &&
        engine->drive.value != DRIVE_GENERATOR)
        problem_add(reading->problems, SEVERITY_ERROR, engine->space.place,
                    "name the engine space that it stands in, or correct its drive",
                    "generator_space is that of a generator, which drives nothing");
    for (size_t i = 0; zone->id == ZONE_engine_space && i < boat->engine_count; i++)
        if (zone_of(boat->engines[i].space.value) != NULL &&
            zone_of(boat->engines[i].space.value)->side != SIDE_NONE) {
            problem_add(reading->problems, SEVERITY_ERROR, engine->space.place,
                        "write engine_space for both, or that of port and of starboard",
                        "engine_space stands beside one of its halves");
            return;
        }
}

/* Where the one or the other was refused, that is told. */
static bool is_without_space(const struct engine *engine)
{
    return engine->space.value == ZONE_NONE && engine->space.place.line == 0 &&
           (engine->drive.value != DRIVE_NONE || engine->drive.place.line == 0);
}

/* An outboard hangs outside; every other engine stands in a space that can burn. */
static void engine_check(const struct boat_reading *reading, const struct engine *engine)
{
    bool outboard = engine->drive.value == DRIVE_OUTBOARD;
    if (engine->space.value != ZONE_NONE && outboard)
        problem_add(reading->problems, SEVERITY_ERROR, engine->space.place,
                    "take `space` out: an outboard hangs outside; or correct its drive",
                    "an outboard has no engine space");
    else if (engine->space.value != ZONE_NONE)
        engine_space_check(reading, engine);
    else if (!outboard && is_without_space(engine))
        problem_add(reading->problems, SEVERITY_ERROR, engine->place,
                    "write space: and where it stands, as engine_space; or drive: outboard",
                    "an engine needs its space, unless it is an outboard");
}

static void engines_settle(struct boat_reading *reading)
{
    struct boat *boat = reading->boat;
    if (boat->engines_given)
        spaces_given(boat, reading->arena);
    else
        spaces_default(boat);
    for (size_t i = 0; i < boat->engine_count; i++)
        engine_check(reading, &boat->engines[i]);
}

static void facts_settle(struct boat_reading *reading)
{
    struct boat *boat = reading->boat;
    boat->catamaran = boat->facts.hull.value == HULL_CATAMARAN;
    name_check(reading, &boat->facts.name);
    engines_settle(reading);
}

/* A fact on the wrong entry would be lost, and lacks on the entry it was meant for. */
static void foreign_fields_tell(const struct boat_reading *reading, const struct equipment *gear)
{
    enum item_key item = gear->item.value;
    for (enum gear_field field = GEAR_FIELD_NONE + 1; field < GEAR_FIELD_COUNT; field++)
        if (item_field(item, field) == BELONGS_NOT &&
            field_text(gear_field_row(field), gear, reading->arena) != NULL)
            problem_add(reading->problems, SEVERITY_ERROR,
                        field_place(gear_field_row(field), gear),
                        item_field_remedy(item, field, reading->arena),
                        "%s does not belong to %s", gear_field_word(field), item_word(item));
}

static void gear_facts_check(const struct boat_reading *reading, const struct equipment *gear)
{
    foreign_fields_tell(reading, gear);
    handling_check(reading, gear);
}

static void gear_settle(struct boat_reading *reading, struct equipment *gear)
{
    gear->kind = item_kind_of(gear->item.value);
    if (gear->kind != NULL)
        gear_facts_check(reading, gear);
    name_check(reading, &gear->name);
    weights_check(reading, gear);
    if (gear->item.value != ITEM_vhf_dsc)
        return;
    problem_add(reading->problems, SEVERITY_ERROR, gear->item.place,
                "move its zone, side, spot and tag to `radio:`",
                "the fixed radio is recorded under radio, not in equipment");
    gear->kind = NULL;
}

/* A set on deck serves there only where its switch is reached too: not known counts as no. */
static struct answer_value switch_reach(const struct radio_facts *radio)
{
    const struct zone *zone = zone_of(radio->zone.value);
    struct answer_value reach = {0};
    if (zone != NULL && zone->level != LEVEL_BELOW &&
        radio->power_from_cockpit.answer != ANSWER_YES)
        reach.answer = ANSWER_NO;
    return reach;
}

/* The fixed radio has a section of its own, but is a piece of gear like others. */
static void radio_gear_make(struct boat_reading *reading)
{
    const struct radio_facts *radio = &reading->boat->radio;
    if (radio->zone.value == ZONE_NONE) {
        if (radio->tag.text != NULL && radio->zone.place.line == 0)
            problem_add(reading->problems, SEVERITY_ERROR, radio->tag.place,
                        "record where the set is: zone, side, spot",
                        "radio has a tag but no zone");
        return;
    }
    struct equipment *gear = &reading->gear[reading->gear_count++];
    *gear = (struct equipment){
        .from_cockpit = switch_reach(radio),
        .kind = item_kind_of(ITEM_vhf_dsc),
        .item = {.value = ITEM_vhf_dsc, .place = reading->boat->radio_place},
        .tag = radio->tag, .zone = radio->zone, .side = radio->side, .spot = radio->spot,
        .dsc = radio->dsc, .mmsi = radio->mmsi, .place = reading->boat->radio_place,
    };
}

/* There is room for one more than the file has: the fixed radio. */
static void equipment_take(struct boat_reading *reading, const struct entries_value *entries)
{
    reading->gear_count = entries->count;
    reading->gear = arena_array(reading->arena, entries->count + 1, sizeof *reading->gear);
    if (entries->count > 0)
        memcpy(reading->gear, entries->items, entries->count * sizeof *reading->gear);
    for (size_t i = 0; i < entries->count; i++)
        gear_settle(reading, &reading->gear[i]);
    radio_gear_make(reading);
    reading->boat->equipment = reading->gear;
    reading->boat->equipment_count = reading->gear_count;
}

/* Was some fact of the piece given, and refused? */
static bool is_unclear(const struct boat_reading *reading, const struct equipment *gear)
{
    for (enum gear_field field = GEAR_FIELD_NONE + 1; field < GEAR_FIELD_COUNT; field++)
        if (field_place(gear_field_row(field), gear).line > 0 &&
            field_text(gear_field_row(field), gear, reading->arena) == NULL)
            return true;
    return false;
}

/* Entries whose kind or place is not known are told as errors and then left out,
 * so that nobody after this has to ask whether there is a kind and a zone. */
static void unusable_leave_out(struct boat_reading *reading)
{
    size_t kept = 0;
    for (size_t i = 0; i < reading->gear_count; i++)
        if (reading->gear[i].kind != NULL && reading->gear[i].place_zone != NULL)
            reading->gear[kept++] = reading->gear[i];
    reading->boat->gear_unclear = kept < reading->gear_count;
    reading->gear_count = kept;
    reading->boat->equipment_count = kept;
    for (size_t i = 0; i < kept; i++)
        if (is_unclear(reading, &reading->gear[i]))
            reading->boat->gear_unclear = true;
}

static void boat_begin(struct boat_file *file, const struct source *source, const char *key,
                       struct arena *arena)
{
    struct boat *boat = &file->record;
    boat->key = arena_copy(arena, key, strlen(key));
    boat->source = source;
    boat->place = place_or(file->boat.place, source_whole(source));
    boat->radio_place = place_or(file->radio.place, boat->place);
    boat->gas_place = place_or(file->gas.place, boat->place);
    boat->engines = file->engines.items;
    boat->engine_count = file->engines.count;
    boat->engines_given = file->engines.given;
    boat->engines_place = place_or(file->engines.place, boat->place);
    boat->silences = file->silenced.items;
    boat->silence_count = file->silenced.count;
    boat->own_lines = (struct own_lines){file->lines.items, file->lines.count};
}

/* Its key is misspelt: what it holds is there, but was not read. */
static bool section_misspelt(const struct section_value *section)
{
    return !section->given && section->place.line > 0;
}

static bool entries_misspelt(const struct entries_value *entries)
{
    return !entries->given && entries->place.line > 0;
}

/* The fixed radio has a tag, but is no piece of gear for want of a place. */
static bool set_left_out(const struct boat *boat)
{
    return boat->radio.tag.text != NULL && boat->radio.zone.value == ZONE_NONE;
}

static void unclear_note(struct boat *boat, const struct boat_file *file)
{
    if (entries_misspelt(&file->equipment))
        boat->gear_unclear = true;
    if (section_misspelt(&file->radio) || set_left_out(boat))
        boat->tags_unclear = true;
}

static const struct boat *boat_take(struct boat_file *file, struct arena *arena,
                                    struct problems *problems)
{
    struct boat *boat = &file->record;
    struct boat_reading reading = {.boat = boat, .arena = arena, .problems = problems};
    facts_settle(&reading);
    own_lines_check(&boat->own_lines, arena, problems);
    equipment_take(&reading, &file->equipment);
    absences_take(&reading, file);
    places_settle(&reading);
    tags_check(&reading);
    doubles_check(&reading);
    absences_check(&reading);
    unusable_leave_out(&reading);
    unclear_note(boat, file);
    return boat;
}

/* Does it say which model she is like? Also where its key is misspelt: what then stands in her
 * file is no less hers for that. */
static bool names_model(const struct yaml_node *root)
{
    static const char *const key[] = {"like"};
    for (size_t i = 0; root != NULL && root->kind == YAML_MAPPING && i < root->count; i++)
        if (text_nearest(root->pairs[i].key, key, 1) != NULL &&
            !(root->pairs[i].value->kind == YAML_SCALAR &&
              text_empty(root->pairs[i].value->text)))
            return true;
    return false;
}

static void file_read_in(struct boat_file *file, const struct boat_input *input,
                         struct arena *arena, struct problems *problems)
{
    const struct yaml_node *root = yaml_tree_read(input->source, arena, problems);
    const struct field_table *table =
        names_model(root) ? sister_file_fields() : boat_file_fields();
    plain_section_read(root, table, file, arena, problems);
    if (root != NULL)
        model_inherit(file, input, arena, problems);
}

/* What only shows on a boat that has all of her model, while that does not count: whoever is to
 * walk round her next has the model's file in hand, and mends it before. */
static void model_errors_tell(const struct boat_input *input, const struct source *model,
                              struct arena *arena, struct problems *problems)
{
    struct problems *supposed = problems_part(problems);
    bool sound;
    boat_read_by(input, WALK_SUPPOSED, arena, supposed, &sound);
    problems_join_errors_in(problems, supposed, model);
}

const struct boat *boat_read_by(const struct boat_input *input, enum walk_rule rule,
                                struct arena *arena, struct problems *all, bool *sound)
{
    struct problems *problems = problems_part(all);
    struct boat_file *file = arena_alloc(arena, sizeof *file);
    const struct boat *boat = NULL;
    file->walk_rule = rule;
    file_read_in(file, input, arena, problems);
    boat_begin(file, input->source, input->key, arena);
    if (file->boat.given && file->fitness != FITNESS_NOT_READ)
        boat = boat_take(file, arena, problems);
    if (rule == WALK_ASKED && file->record.likeness.unwalked != NULL)
        model_errors_tell(input, file->record.likeness.source, arena, problems);
    *sound = problems_settle(all, problems) && boat != NULL && file->fitness == FITNESS_WHOLE;
    return boat;
}

const struct boat *boat_read_like(const struct boat_input *input, struct arena *arena,
                                  struct problems *problems, bool *sound)
{
    return boat_read_by(input, WALK_ASKED, arena, problems, sound);
}

const struct boat *boat_read(const struct source *source, const char *key, struct arena *arena,
                             struct problems *problems, bool *sound)
{
    static const struct models none = {NULL, 0};
    return boat_read_like(&(struct boat_input){source, key, &none}, arena, problems, sound);
}
