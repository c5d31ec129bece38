/* yaml_fields_record.h - a record with a field of each kind, and its table. */
#ifndef MAYDECK_YAML_FIELDS_RECORD_H
#define MAYDECK_YAML_FIELDS_RECORD_H

#include <stddef.h>

#include "yaml_fields.h"

enum record_side { NO_SIDE, PORT_SIDE, STARBOARD_SIDE, CENTRE_SIDE };
/* Its values are counted from another number than 1. */
enum record_zone { NO_ZONE, COCKPIT_ZONE = 7, SALOON_ZONE, ENGINE_ZONE };
struct record_side_value CHOICE_OF(enum record_side);
struct record_zone_value CHOICE_OF(enum record_zone);
struct record_zones CHOICES_OF(struct record_zone_value);

struct record {
    struct text_value name, spot;
    struct record_side_value side;
    struct record_zones zones;
    struct number_value loa_m, hold_s, depth_m;
    struct answer_value fitted;
    struct date_value due;
    struct list_value steps, uses;
    struct node_value gear;
};

static const char *const sides[] = {"port", "starboard", "centre", NULL};
static const struct choice_slip side_slips[] = {{"LEFT", "write port"}, {NULL, NULL}};
static const char *const zones[] = {"cockpit", "saloon", "engine_space", NULL};

#define AT(member) .offset = offsetof(struct record, member)

static const struct field fields[] = {
    {.key = "name", .kind = FIELD_TEXT, .required = true, AT(name), .about = "as painted"},
    {.key = "side", .kind = FIELD_CHOICE, AT(side), .choices = sides,
     .slips = side_slips},
    {.key = "spot", .kind = FIELD_TEXT, .required = true, AT(spot)},
    {.key = "loa_m", .kind = FIELD_NUMBER, AT(loa_m), .low = 2000, .high = 60000,
     .about = "length over all"},
    {.key = "hold_s", .kind = FIELD_NUMBER, AT(hold_s), .low = 1000, .high = 10000},
    {.key = "depth_m", .kind = FIELD_NUMBER, AT(depth_m)},
    {.key = "fitted", .kind = FIELD_ANSWER, AT(fitted)},
    {.key = "due", .kind = FIELD_DATE, AT(due)},
    {.key = "zones", .kind = FIELD_CHOICES, AT(zones), .choices = zones,
     .first = COCKPIT_ZONE},
    {.key = "steps", .kind = FIELD_LIST, AT(steps)},
    {.key = "uses", .kind = FIELD_WORDS, AT(uses)},
    {.key = "gear", .kind = FIELD_NODE, AT(gear)},
};

static const struct field_table table = {
    .what = "an equipment item", .fields = fields, .count = sizeof fields / sizeof fields[0]};

/* An input and all that is told of it, each problem with its remedy below. */
struct row {
    const char *input;
    const char *told;
};

/* Where nobody can tell which date was meant. */
#define GENERAL_REMEDY \
    "write year, month and day, or less, with hyphens: 2027-04-30, 2027-04, 2027"

#endif
