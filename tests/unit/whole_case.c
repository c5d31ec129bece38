/* whole_case.c - records in which every field is given, made from the tables of fields. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include "whole_case.h"

#include "choices.h"
#include "item_fields.h"
#include "item_states.h"
#include "number.h"
#include "text.h"

/* ---- values ---- */

/* A record as it is made. */
struct making {
    struct arena *arena;
    const struct whole_kind *kind;
    enum item_key item;               /* of the entry being made; ITEM_NONE: a section */
};

/* Values that must have a form, or that must agree with others, by key. */
static const struct form { const char *key, *value; } forms[] = {
    {"rig", "sail"}, {"loa_m", "12"}, {"beam_m", "6"}, {"bwl_m", "3"}, {"lwl_m", "11"},
    {"openings", "1"}, {"flag", "QZ"}, {"call_sign", "QTAB2"}, {"name", "Tern"},
    {"rating", "en 13A 70B"}, {"side", "port"}, {"at", "[6, -1]"}, {"cuts", "[]"},
    {"serves", "[engine_space]"}, {"space", "own_box"}, {"kg_high", "200"},
    {"inside", "[cockpit_locker]"}, {"past", "[cockpit]"}, {"zone", "cockpit"},
    {"made", "2025-03"}, {"tried", "2026-03"}, {"installed", "2026-03"}, {"serviced", "2026-04"},
    {"phone_24h", "\"+999 00 000 000\""}, {"phone", "\"+999 00 000 001\""},
    {"fire_phone", "\"+999 02\""}, {"offset", "\"+2\""},
    {"position", "12 30.50 N 060 15.25 E"}, {"channel", "\"67\""}, {"variation", "4 E"},
    {"checked_on", "2026-11-02"}, {"variation_on", "2026-01-01"}, {"card", "flooding"},
    {"item", "fire_blanket"}, {"date", "2026-11-20"}, {"changed", "2026-11-01"},
    {"mmsi", "\"200014730\""}, {"languages", "[en]"}, {"name_latin", "Tern"},
    {"name_spoken", "Tern"},
};

/* Each beacon of the record has an identity of her own. */
static const char *hex_id_of(const struct making *making)
{
    size_t number = 0;
    for (enum item_key item = ITEM_NONE + 1; item < making->item; item++)
        number += item_field(item, GEAR_hex_id) != BELONGS_NOT ? 1 : 0;
    return text_format(making->arena, "\"990D0 0013%c 00001\"", (char)('4' + number));
}

/* Beacons, handhelds and devices for persons have numbers of three kinds. */
static const char *mmsi_of(const struct making *making)
{
    bool handheld = making->item == ITEM_vhf_handheld;
    return text_format(making->arena, "\"%s%05d\"", handheld ? "8200" : "9740",
                       10000 + (int)making->item);
}

static const char *zone_for(const struct making *making)
{
    const struct zone *zone = zone_of(item_kind_of(making->item)->usual_zone);
    return making->kind->hull == HULL_CATAMARAN && zone->id == ZONE_engine_space
               ? zone_word(ZONE_engine_space_port) : zone_word(zone->id);
}

static bool is_below(enum item_key item)
{
    return zone_of(item_kind_of(item)->usual_zone)->level == LEVEL_BELOW;
}

/* Each text is another, so that it is seen whose it is. */
static const char *words_of(const struct making *making, const struct field *field)
{
    return making->item == ITEM_NONE
               ? text_format(making->arena, "the %s here", field->key)
               : text_format(making->arena, "%s of %s", field->key,
                             whole_tag(making->item, making->arena));
}

/* Of an entry, what follows from its item. NULL: nothing does. */
static const char *gear_value(const struct making *making, enum gear_field field)
{
    enum item_key item = making->item;
    bool two = making->kind->hull == HULL_CATAMARAN;
    switch ((int)field) {
    case GEAR_item:
        return item_word(item);
    case GEAR_name:
        return words_of(making, gear_field_row(field));
    case GEAR_tag:
        return whole_tag(item, making->arena);
    case GEAR_zone:
        return zone_for(making);
    case GEAR_hex_id:
        return hex_id_of(making);
    case GEAR_mmsi:
        return mmsi_of(making);
    case GEAR_serves:
        return two ? "[engine_space_port, engine_space_starboard]" : "[engine_space]";
    case GEAR_from_cockpit:
        return is_below(item) ? "no" : "yes";
    case GEAR_below:
        return is_below(item) ? "yes" : "no";
    default:
        return NULL;
    }
}

static const char *form_of(const char *key)
{
    for (size_t i = 0; i < sizeof forms / sizeof *forms; i++)
        if (text_equal(forms[i].key, key))
            return forms[i].value;
    return NULL;
}

static const char *number_of(const struct making *making, const struct field *field)
{
    int64_t milli = field->low == 0 ? 1000 : field->low * 2;
    if (field->high > 0 && milli > field->high)
        milli = field->high;
    return number_text_milli(making->arena, milli);
}

/* {shut: way 3 of C4, open: way 4 of C4}, of the states whose handling it has. */
static const char *handling_of(const struct making *making)
{
    struct text_builder out = text_builder_in(making->arena);
    for (enum end_state state = STATE_ANY + 1; state < STATE_COUNT; state++)
        if (item_state_field(making->item, state) == GEAR_how)
            text_add_format(&out, "%s%s: way %d of %s", out.length == 0 ? "{" : ", ",
                            end_state_words[state - 1], (int)state,
                            whole_tag(making->item, making->arena));
    text_add(&out, "}");
    return out.at;
}

static const char *value_of(const struct making *making, const struct field *field);

/* {zone: cockpit, side: port, spot: ...}: each field of the part, in one line. */
static const char *part_of(const struct making *making, const struct field *field)
{
    const struct field_table *table = field->part->table;
    struct text_builder out = text_builder_in(making->arena);
    for (size_t i = 0; i < table->count; i++)
        text_add_format(&out, "%s%s: %s", i == 0 ? "{" : ", ", table->fields[i].key,
                        value_of(making, &table->fields[i]));
    text_add(&out, "}");
    return out.at;
}

static const char *rooms_of(const struct making *making)
{
    struct text_builder out = text_builder_in(making->arena);
    for (enum zone_key zone = ZONE_NONE + 1; zone < ZONE_COUNT; zone++)
        if (zone_of(zone)->room && hull_has_zone(making->kind->hull, zone_of(zone)))
            text_add_format(&out, "%s%s", out.length == 0 ? "[" : ", ", zone_word(zone));
    text_add(&out, "]");
    return out.at;
}

static const char *value_by_kind(const struct making *making, const struct field *field)
{
    switch (field->kind) {
    case FIELD_CHOICE:
        return field->choices[0];
    case FIELD_CHOICES:
    case FIELD_PAIRED:
        return text_format(making->arena, "[%s]", field->choices[0]);
    case FIELD_NUMBER:
        return number_of(making, field);
    case FIELD_ANSWER:
        return "yes";
    case FIELD_DATE:
        return "2030-04";
    case FIELD_PAIR:
        return "[1, 2]";
    case FIELD_SECTION:
        return part_of(making, field);
    case FIELD_ENTRIES:
        return text_format(making->arena, "[%s]", part_of(making, field));
    case FIELD_BY_CHOICE:
        return handling_of(making);
    case FIELD_LIST:
    case FIELD_WORDINGS:
    case FIELD_WORDS:
        return text_format(making->arena, "[%s]", words_of(making, field));
    case FIELD_TEXT:
    case FIELD_WORDING:
    case FIELD_NODE:
    default:
        return words_of(making, field);
    }
}

static const char *value_of(const struct making *making, const struct field *field)
{
    const char *form = form_of(field->key);
    if (field->choices == hull_words)
        return hull_words[making->kind->hull - 1];
    if (text_equal(field->key, "rooms"))
        return rooms_of(making);
    if (text_equal(field->key, "tag"))
        return whole_tag(ITEM_vhf_dsc, making->arena);
    return form != NULL ? form : value_by_kind(making, field);
}

/* ---- gear ---- */

const char *whole_tag(enum item_key item, struct arena *arena)
{
    size_t number = 0;
    for (enum item_key before = ITEM_NONE + 1; before <= item; before++)
        number += item_kind_of(before)->class == item_kind_of(item)->class ? 1 : 0;
    return text_format(arena, "%c%zu", (char)item_kind_of(item)->class, number);
}

static bool is_placed(enum gear_field field)
{
    return field == GEAR_side || field == GEAR_spot || field == GEAR_how ||
           field == GEAR_inside || field == GEAR_from_cockpit;
}

bool whole_asks(enum item_key item, enum gear_field field)
{
    enum belonging how = item_field(item, field);
    return how > BELONGS_MAY || (how == BELONGS_MAY && is_placed(field));
}

static bool is_given(const struct making *making, enum gear_field field)
{
    enum belonging how = item_field(making->item, field);
    if (making->kind->fields == WHOLE_SHARED)
        return how > BELONGS_NOT && !gear_field_row(field)->own;
    return making->kind->fields == WHOLE_ALL ? how > BELONGS_NOT
                                             : whole_asks(making->item, field);
}

const char *whole_entry(const struct whole_kind *kind, enum item_key item, struct arena *arena)
{
    struct making making = {arena, kind, item};
    struct text_builder out = text_builder_in(arena);
    if (item == ITEM_vhf_dsc ||
        !hull_has_zone(kind->hull, zone_of(item_kind_of(item)->usual_zone)))
        return "";
    for (enum gear_field field = GEAR_FIELD_NONE + 1; field < GEAR_FIELD_COUNT; field++) {
        const char *own = gear_value(&making, field);
        if (is_given(&making, field))
            text_add_format(&out, "%s%s: %s", out.length == 0 ? "  - {" : ", ",
                            gear_field_word(field),
                            own != NULL ? own : value_of(&making, gear_field_row(field)));
    }
    text_add(&out, kind->fields == WHOLE_SHARED ? ", changed: 2026-11-01}\n" : "}\n");
    return out.at;
}

/* ---- files ---- */

static void section_add(const struct making *making, const struct field *field,
                        struct text_builder *out)
{
    const struct field_table *table = field->part->table;
    text_add_format(out, "%s:\n", field->key);
    for (size_t i = 0; i < table->count; i++)
        if (!table->fields[i].own || making->kind->fields != WHOLE_SHARED)
            text_add_format(out, "  %s: %s\n", table->fields[i].key,
                            value_of(making, &table->fields[i]));
}

static void entries_add(const struct making *making, const struct field *field,
                        struct text_builder *out)
{
    text_add_format(out, "%s:\n  - %s\n", field->key, part_of(making, field));
}

static void field_add(const struct making *making, const struct field *field,
                      struct text_builder *out)
{
    if (field->kind == FIELD_SECTION)
        section_add(making, field, out);
    else if (field->kind == FIELD_ENTRIES)
        entries_add(making, field, out);
    else
        text_add_format(out, "%s: %s\n", field->key, value_of(making, field));
}

/* One in each space, a generator beside the last of them, and an outboard. */
static void engines_add(const struct making *making, struct text_builder *out)
{
    bool two = making->kind->hull == HULL_CATAMARAN;
    const char *last = two ? "engine_space_starboard" : "engine_space";
    text_add(out, "engines:\n");
    if (two)
        text_add(out, "  - {space: engine_space_port, fuel: diesel, drive: shaft}\n");
    text_add_format(out, "  - {space: %s, fuel: diesel, drive: shaft}\n"
                         "  - {space: %s, fuel: petrol, drive: generator}\n"
                         "  - {fuel: petrol, drive: outboard}\n", last, last);
}

const char *whole_head(const struct whole_kind *kind, struct arena *arena)
{
    const struct field_table *table =
        kind->fields == WHOLE_SHARED ? model_file_fields() : boat_file_fields();
    struct making making = {arena, kind, ITEM_NONE};
    struct text_builder out = text_builder_in(arena);
    for (size_t i = 0; i < table->count; i++) {
        const struct field *field = &table->fields[i];
        if (field->kind == FIELD_DATE ||
            (field->kind == FIELD_SECTION && !text_equal(field->key, "walked")))
            field_add(&making, field, &out);
    }
    engines_add(&making, &out);
    text_add(&out, "equipment:\n");
    return out.at;
}

const char *whole_boat(const struct whole_kind *kind, struct arena *arena)
{
    struct text_builder out = text_builder_in(arena);
    text_add(&out, whole_head(kind, arena));
    for (enum item_key item = ITEM_NONE + 1; item < ITEM_COUNT; item++)
        text_add(&out, whole_entry(kind, item, arena));
    return out.at;
}

const char *whole_base(struct arena *arena)
{
    static const struct whole_kind kind = {HULL_MONOHULL, WHOLE_ALL};
    const struct field_table *table = base_file_fields();
    struct making making = {arena, &kind, ITEM_NONE};
    struct text_builder out = text_builder_in(arena);
    for (size_t i = 0; i < table->count; i++)
        field_add(&making, &table->fields[i], &out);
    return out.at;
}
