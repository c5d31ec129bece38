/* starter.c - new base and boat files to be filled in, made from the field tables
 * and from what the procedures ask for (room: record). Values stay empty: a place
 * or number that nobody read off the boat must not get onto a card. */
#include "starter_lines.h"

#include "item_states.h"
#include "record.h"

enum { FEW_CHOICES = 7, KEY_WIDTH = 24, ZONES_WIDTH = 76, START_TAG_HIGHEST = 99 };

size_t boat_items_mentioned(const struct boat *boat)
{
    size_t count = 0;
    for (enum item_key item = ITEM_NONE + 1; item < ITEM_COUNT; item++)
        count += boat_fitted(boat, item) != ANSWER_NOT_RECORDED ? 1 : 0;
    return count;
}

/* ---- fields ---- */

/* What may be written, where the field's own words do not say it. */
static void values_add(struct text_builder *out, const struct field *field)
{
    size_t count = 0;
    while (field->choices != NULL && field->choices[count] != NULL)
        count++;
    if (field->kind == FIELD_ANSWER)
        text_add(out, " yes or no");
    if (field->kind == FIELD_DATE)
        text_add(out, ", as 2027-04-30 or 2027-04");
    if (field->kind == FIELD_LIST || field->kind == FIELD_WORDINGS ||
        field->kind == FIELD_CHOICES)
        text_add(out, ", as [first, second]");
    for (size_t i = 0; count <= FEW_CHOICES && i < count; i++)
        text_add_format(out, "%s%s", i == 0 ? ": " : i + 1 == count ? " or " : ", ",
                        field->choices[i]);
}

void starter_field_add(struct text_builder *out, const struct field *field, const char *value)
{
    text_add_format(out, "  %s: %-*s# %s", field->key,
                    KEY_WIDTH - (int)text_code_points(field->key), value, field->about);
    values_add(out, field);
    text_add(out, field->required ? " (needed)\n" : "\n");
}

/* `value_key` is filled in with `value`. */
static void fields_add(struct text_builder *out, const struct field_table *table,
                       const char *value_key, const char *value)
{
    for (size_t i = 0; i < table->count; i++)
        starter_field_add(out, &table->fields[i],
                          text_equal(table->fields[i].key, value_key) && value != NULL ? value
                                                                                       : "");
}

static void row_add(struct text_builder *out, const struct field_table *table)
{
    text_add(out, "  #- {");
    for (size_t i = 0; i < table->count; i++)
        text_add_format(out, "%s%s: ", i == 0 ? "" : ", ", table->fields[i].key);
    text_add(out, "}\n");
}

void starter_key_explain(struct text_builder *out, const struct field *field)
{
    text_add_format(out, "  #   %s: %s", field->key, field->about);
    values_add(out, field);
    text_add(out, "\n");
}

/* What an entry may say, as remarks. */
static void keys_of_entry_add(struct text_builder *out, const struct field_table *table)
{
    for (size_t i = 0; i < table->count; i++)
        starter_key_explain(out, &table->fields[i]);
}

/* ---- entries ---- */

/* The fixed radio is recorded in a section of its own. */
static bool in_equipment(const struct asked_item *asked)
{
    return asked->kind->item != ITEM_vhf_dsc;
}

/* What is to be filled in behind `how: `: each state, where there are contrary ones. */
static const char *handling_blank(enum item_key item, struct arena *arena)
{
    struct text_builder out = text_builder_in(arena);
    text_add(&out, "");
    if (!item_is_contrary(item))
        return out.at;
    for (enum end_state state = STATE_ANY + 1; state < STATE_COUNT; state++)
        if (item_state_field(item, state) == GEAR_how)
            text_add_format(&out, "%s%s: ", out.length == 0 ? "{" : ", ",
                            end_state_words[state - 1]);
    text_add(&out, "}");
    return out.at;
}

/* `space` none: for no engine in particular. */
static void entry_add(struct text_builder *out, const struct asked_item *asked, const char *tag,
                      enum zone_key space, struct arena *arena)
{
    text_add_format(out, "{item: %s, tag: %s, zone: , side: , spot: , how: %s", asked->kind->key,
                    tag, handling_blank(asked->kind->item, arena));
    for (size_t i = 0; i < asked->fact_count; i++)
        if (space == ZONE_NONE || asked->facts[i] != GEAR_serves)
            text_add_format(out, ", %s: ", gear_field_word(asked->facts[i]));
    if (space != ZONE_NONE)
        text_add_format(out, ", serves: [%s]", zone_word(space));
    text_add(out, "}");
}

const char *starter_entry_for(const struct asked_item *asked, const char *tag,
                              enum zone_key space, struct arena *arena)
{
    struct text_builder out = text_builder_in(arena);
    if (!in_equipment(asked))
        return text_format(arena, "# into radio: tag: %s, zone:, side:, spot:", tag);
    text_add(&out, "- ");
    entry_add(&out, asked, tag, space, arena);
    return out.at;
}

const char *starter_entry(const struct asked_item *asked, const char *tag, struct arena *arena)
{
    return starter_entry_for(asked, tag, ZONE_NONE, arena);
}

/* Numbers given so far, by class; no tag is proposed when they are used up. */
struct tag_counts {
    size_t fire, rescue, control;
};

static const char *tag_next(struct tag_counts *counts, enum item_class class,
                            struct arena *arena)
{
    size_t *count = class == ITEM_FIRE     ? &counts->fire
                    : class == ITEM_RESCUE ? &counts->rescue
                                           : &counts->control;
    return *count < START_TAG_HIGHEST ? text_format(arena, "%c%zu", (char)class, ++*count) : "";
}

static size_t last_used(const struct boat *boat, enum item_class class, struct arena *arena)
{
    const char *free_tag = boat_free_tag(boat, class, arena);
    size_t number = 0;
    for (size_t i = 1; free_tag != NULL && free_tag[i] != '\0'; i++)
        number = number * 10 + (size_t)(free_tag[i] - '0');
    return number > 0 ? number - 1 : START_TAG_HIGHEST;
}

const char *const *starter_tags(const struct asked_list *asked, const struct boat *boat,
                                const enum item_key *told, size_t told_count,
                                struct arena *arena)
{
    const char **tags = arena_array(arena, asked->count, sizeof *tags);
    struct tag_counts counts = {last_used(boat, ITEM_FIRE, arena),
                                last_used(boat, ITEM_RESCUE, arena),
                                last_used(boat, ITEM_CONTROL, arena)};
    for (size_t i = 0; i < told_count; i++)
        tag_next(&counts, item_kind_of(told[i])->class, arena);
    for (size_t i = 0; i < asked->count; i++)
        tags[i] = tag_next(&counts, asked->rows[i].kind->class, arena);
    return tags;
}

void starter_name_add(struct text_builder *out, const struct known_names *known,
                      const char *key)
{
    const char *printed = known_printed(known, key);
    text_add(out, key);
    if (printed != NULL)
        text_add_format(out, " (\"%s\")", printed);
}

static void zone_head_add(struct text_builder *out, const struct known_names *known,
                          const char *zone)
{
    text_add(out, "\n  # ---- on most boats: ");
    starter_name_add(out, known, zone);
    text_add(out, " ----\n");
}

static void entries_add(struct text_builder *out, const struct asked_list *asked,
                        const struct known_names *known, struct arena *arena)
{
    struct tag_counts counts = {.rescue = 1};   /* E1 is the radio's */
    const struct zone *zone = NULL;
    for (size_t i = 0; i < asked->count; i++) {
        const struct asked_item *row = &asked->rows[i];
        if (!in_equipment(row))
            continue;
        if (row->usual != zone)
            zone_head_add(out, known, row->usual->key);
        zone = row->usual;
        text_add(out, "  # ");
        starter_name_add(out, known, row->kind->key);
        text_add_format(out, ": %s\n  #- ", row->kind->record);
        entry_add(out, row, tag_next(&counts, row->kind->class, arena),
                  ZONE_NONE, arena);
        text_add(out, "\n");
    }
}

/* How a key stands to the lines of the file. */
enum key_use { KEY_OF_LINES, KEY_OF_ALL, KEY_OF_SOME };

static enum key_use key_use_of(const struct asked_list *asked, enum gear_field field)
{
    for (size_t k = 0; k < asked->count; k++)
        for (size_t f = 0; f < asked->rows[k].fact_count; f++)
            if (asked->rows[k].facts[f] == field)
                return KEY_OF_LINES;
    return field_is_general(field) ? KEY_OF_ALL : KEY_OF_SOME;
}

/* What an entry may say, each key once. */
static void keys_explain(struct text_builder *out, const struct asked_list *asked,
                         enum key_use use)
{
    for (enum gear_field field = GEAR_FIELD_NONE + 1; field < GEAR_FIELD_COUNT; field++)
        if (key_use_of(asked, field) == use)
            starter_key_explain(out, gear_field_row(field));
}

static void zones_explain(struct text_builder *out, enum hull hull,
                          const struct known_names *known)
{
    size_t column = 0;
    text_add(out, "  # Zones, and what cards call them:");
    for (enum zone_key zone = ZONE_NONE + 1; zone < ZONE_COUNT; zone++) {
        if (!hull_has_zone(hull, zone_of(zone)))
            continue;
        struct text_builder named = text_builder_in(out->arena);
        starter_name_add(&named, known, zone_word(zone));
        size_t length = (size_t)text_code_points(named.at) + 2;
        bool full = column == 0 || column + length > ZONES_WIDTH;
        text_add_format(out, "%s%s%s", column == 0 ? "" : ",", full ? "\n  #   " : " ", named.at);
        column = full ? length : column + length;
    }
    text_add(out, ".\n");
}

/* "not_fitted" of one engine of two, by the first of the kinds that each engine has. */
static void one_engine_add(struct text_builder *out, const struct asked_list *asked)
{
    for (size_t i = 0; i < asked->count; i++)
        if (asked->rows[i].kind->by_engine) {
            text_add_format(out,
                            "  # One engine alone has none: name its space, as in\n"
                            "  #   - {item: %s, serves: [engine_space_port]}\n",
                            asked->rows[i].kind->key);
            return;
        }
}

static void not_fitted_add(struct text_builder *out, const struct asked_list *asked,
                           enum hull hull)
{
    text_add(out, "\n# What she does not have: take the # away. What is mentioned nowhere counts as"
                  " not\n# recorded, and holds back every card that asks for it.\nnot_fitted:\n");
    if (hull == HULL_CATAMARAN)
        one_engine_add(out, asked);
    for (size_t i = 0; i < asked->count; i++)
        text_add_format(out, "  #- %s\n", asked->rows[i].kind->key);
}

static void not_surveyed_add(struct text_builder *out)
{
    text_add(out, "\n# What she may have, though nobody has looked yet: the names of it, as in"
                  " not_fitted.\n# Cards that ask for it wait, and check names it in one line."
                  " Look, then move each to\n# equipment or to not_fitted.\nnot_surveyed:\n");
}

/* Kept empty: nothing of a boat is filled in. */
static void tags_add(struct text_builder *out)
{
    text_add(out,
             "\n# Tags are never given twice: a gap between them shows that a piece fell out of"
             "\n# this file. When all gear is recorded write the last tag of each letter, such as"
             "\n# [F9, E18, C46], and keep it up. What no piece bears any more, or never did, goes"
             "\n# into retired_tags, such as [F3, C7]; check names it.\n"
             "tags_given:\n"
             "retired_tags:\n");
}

/* ---- files ---- */

static void engines_add(struct text_builder *out, enum hull hull)
{
    text_add(out, "\n# Every engine, each on a line of its own; engines: [] for none.\nengines:\n");
    for (enum zone_key zone = ZONE_engine_space; zone <= ZONE_engine_space_starboard; zone++)
        if ((zone == ZONE_engine_space) != (hull == HULL_CATAMARAN))
            text_add_format(out, "  #- {space: %s, fuel: , drive: }\n", zone_word(zone));
    text_add(out, "  # A generator in a space of its own: generator_space.\n");
}

const char *starter_boat(const struct asked_list *asked, enum hull hull,
                         const struct known_names *known, struct arena *arena)
{
    struct text_builder out = text_builder_in(arena);
    text_add(&out, MODE_LINE("../schema/boat.json") "# One boat's record.\n" HOW_TO_FILL
                   "boat:\n");
    fields_add(&out, boat_fields(), "hull", choice_word(hull_words, hull));
    engines_add(&out, hull);
    keys_of_entry_add(&out, engine_fields());
    text_add(&out, "\n# Cooking gas.\ngas:\n");
    fields_add(&out, gas_fields(), NULL, NULL);
    text_add(&out, "\n# The fixed radio; E1 is kept for its tag.\nradio:\n");
    fields_add(&out, radio_fields(), NULL, NULL);
    text_add(&out,
             "\n# Gear, with what cards call it, in the order of a walk: the deck from stern to"
             "\n# bow, then below from the companionway forward, then aft. Take the # of a line"
             "\n# away and fill it in where the thing really is. She has several: copy the line,"
             "\n# each with a tag of its own, the next free number. Other gear may be added.\n"
             "equipment:\n");
    zones_explain(&out, hull, known);
    text_add(&out, "  # Keys that lines below have, where there is a use for them:\n");
    keys_explain(&out, asked, KEY_OF_LINES);
    text_add(&out, "  # Keys that any entry may have:\n");
    keys_explain(&out, asked, KEY_OF_ALL);
    text_add(&out, "  # Keys of some gear besides; on other gear they are an error:\n");
    keys_explain(&out, asked, KEY_OF_SOME);
    entries_add(&out, asked, known, arena);
    not_fitted_add(&out, asked, hull);
    not_surveyed_add(&out);
    tags_add(&out);
    return out.at;
}

const char *starter_base(struct arena *arena)
{
    const struct field_table *table = base_file_fields();
    struct text_builder out = text_builder_in(arena);
    text_add(&out, MODE_LINE("schema/base.json") "# The base's own record.\n" HOW_TO_FILL);
    for (size_t i = 0; i < table->count; i++) {
        const struct field *field = &table->fields[i];
        if (field->part == NULL)
            continue;
        text_add_format(&out, "\n# %s\n%s:\n", field->about, field->key);
        if (field->kind == FIELD_ENTRIES)
            row_add(&out, field->part->table);
        else
            fields_add(&out, field->part->table, NULL, NULL);
    }
    return out.at;
}
