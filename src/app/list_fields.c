/* list_fields.c - every key of base.yaml and of a boat's file, and what may stand there (room:
 * app), from the tables by which those files are read. */
#include "lists.h"

#include <string.h>

#include "number.h"
#include "reader.h"

#define AT(member) offsetof(struct field_listed, member)
static const struct json_member field_members[] = {
    {"file", JSON_TEXT, AT(file), NULL, NULL, NULL},
    {"section", JSON_TEXT, AT(section), NULL, NULL, "the keys above it; \"\": none"},
    {"key", JSON_TEXT, AT(key), NULL, NULL, NULL},
    {"kind", JSON_TEXT, AT(kind), NULL, NULL, NULL},
    {"needed", JSON_FLAG, AT(needed), NULL, NULL, "an error where it is missing"},
    {"unit", JSON_TEXT_OR_NULL, AT(unit), NULL, NULL, "of a number; null: none"},
    {"range", JSON_TEXT_OR_NULL, AT(range), NULL, NULL, "least and most; null: any"},
    {"about", JSON_TEXT, AT(about), NULL, NULL, NULL},
    {"read_by", JSON_TEXTS, AT(read_by), NULL, NULL,
     "where its value is read: parts of sheets, reports; empty of what holds other keys"},
    {"choices", JSON_TEXTS, AT(choices), NULL, NULL,
     "what may stand there; of items and zones see their lists"},
    {"items", JSON_TEXTS, AT(items), NULL, NULL, "gear that has it; empty: all, or no gear"},
};
#undef AT
static const struct json_shape field_shape = {
    "field", sizeof(struct field_listed), field_members,
    sizeof field_members / sizeof *field_members};

struct fields_listing {
    const char *file;
    struct field_listed *rows;
    size_t count, room;
    struct arena *arena;
};

/* ---- what may stand there ---- */

/* The ends of keys that are units, and the units in words. */
static const struct { const char *end, *words; } unit_rows[] = {
    {"m", "metres"}, {"mm", "millimetres"}, {"m3", "cubic metres"}, {"kg", "kilograms"},
    {"low", "kilograms"}, {"high", "kilograms"}, {"l", "litres"}, {"litres", "litres"},
    {"lph", "litres an hour"}, {"lpm", "litres a minute"}, {"s", "seconds"}, {"kn", "knots"},
    {"months", "months"}, {"days", "days"},
};

static const char *unit_of(const struct field *field)
{
    const char *last = strrchr(field->key, '_');
    const char *end = last == NULL ? field->key : last + 1;
    if (field->kind != FIELD_NUMBER)
        return NULL;
    for (size_t i = 0; i < sizeof unit_rows / sizeof *unit_rows; i++)
        if (text_equal(unit_rows[i].end, end))
            return unit_rows[i].words;
    return NULL;
}

static const char *range_of(const struct field *field, struct arena *arena)
{
    if (field->kind != FIELD_NUMBER || (field->low == 0 && field->high == 0))
        return NULL;
    return text_format(arena, "%s to %s", number_text_milli(arena, field->low),
                       number_text_milli(arena, field->high));
}

/* What has a list of its own is named by it. */
static const char *kind_of(const struct field *field)
{
    bool several = field->kind == FIELD_CHOICES;
    if (field->choices == item_key_list)
        return several ? "items" : "item";
    if (field->choices == zone_key_list)
        return several ? "zones" : "zone";
    return field->choices == air_space_words ? "own_box or zone" : field_kind_word(field->kind);
}

static struct json_list choices_of(const struct field *field)
{
    bool listed = field->choices == item_key_list || field->choices == zone_key_list ||
                  field->choices == air_space_words;
    if (field->choices == NULL || listed)
        return (struct json_list){NULL, 0};
    return (struct json_list){field->choices, text_list_length(field->choices)};
}

static struct json_list readers_of(const struct field *field, struct arena *arena)
{
    const char **words = arena_array(arena, READER_COUNT, sizeof *words);
    size_t count = 0;
    for (enum reader_bit reader = 0; reader < READER_COUNT; reader++)
        if ((field->readers >> reader & 1u) != 0)
            words[count++] = reader_word(reader);
    return (struct json_list){words, count};
}

/* Of a field of gear that not every piece may have, those that may. */
static struct json_list items_with(const struct field_path *path, struct arena *arena)
{
    enum gear_field field = gear_field_find(path->field->key);
    const char **words = arena_array(arena, ITEM_COUNT, sizeof *words);
    size_t count = 0;
    if (path->table != equipment_fields() || field_is_general(field))
        return (struct json_list){NULL, 0};
    for (enum item_key item = ITEM_NONE + 1; item < ITEM_COUNT; item++)
        if (item_field(item, field) != BELONGS_NOT)
            words[count++] = item_word(item);
    return (struct json_list){words, count};
}

/* ---- rows ---- */

struct field_listed field_listed_of(const struct field_path *path, struct arena *arena)
{
    const struct field *field = path->field;
    return (struct field_listed){
        .section = path->outer == NULL ? "" : field_path_text(path->outer, arena),
        .key = field->key, .kind = kind_of(field), .needed = field->required,
        .unit = unit_of(field), .range = range_of(field, arena),
        .about = field->about == NULL ? "" : field->about, .choices = choices_of(field),
        .read_by = readers_of(field, arena), .items = items_with(path, arena)};
}

static void field_row_add(const struct field_path *path, void *context)
{
    struct fields_listing *listing = context;
    listing->rows = arena_grow(listing->arena, listing->rows, listing->count, &listing->room,
                               sizeof *listing->rows);
    struct field_listed *row = &listing->rows[listing->count++];
    *row = field_listed_of(path, listing->arena);
    row->file = listing->file;
}

struct list_made list_fields(const struct listing *listing)
{
    struct fields_listing fields = {.file = "base.yaml", .arena = listing->arena};
    fields_walk(base_file_fields(), field_row_add, &fields);
    fields.file = "boats/BOAT.yaml";
    fields_walk(boat_file_fields(), field_row_add, &fields);
    return (struct list_made){&field_shape, {fields.rows, fields.count}};
}
