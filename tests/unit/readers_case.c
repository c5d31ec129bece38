/* readers_case.c - a record and a base as texts, for those who read them. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>
#include "fact.h"
#include "figure.h"
#include "gear_date.h"
#include "number.h"
#include "promise.h"
#include "readers_case.h"
#include "readers_gear.h"
#include "rules.h"
#include "source.h"
#include "text.h"

/* ---- the texts ---- */

static const struct world_part boat_parts[] = {
    {"boat", "boat: {",
     "name: Alder, specimen: yes, hull: monohull, rig: sail, loa_m: 10.2, beam_m: 3.4, "
     "persons_max: 6, usual_kn: 5, cabin_m3: 18, bilge_to_sole_l: 300, looks: White sloop, "
     "lwl_m: 8.6, bwl_m: 2.6, engine_space_m3: 1.2, mounted: {zone: saloon, faces: bow}, "
     "openings: 2, flag: QZ, rooms: [forepeak, forward_cabin, forward_heads, saloon, galley, "
     "navigation_station, aft_heads, aft_cabin]", "}\n"},
    {"engines", "engines:\n  - {", "space: engine_space, fuel: diesel, drive: shaft", "}\n"},
    {"gas", "gas: {", "carried: yes, locker_drains: overboard", "}\n"},
    {"radio", "radio: {",
     "tag: E1, call_sign: QALD3, mmsi: \"200014810\", mmsi_programmed: yes, dsc: yes, "
     "zone: navigation_station, side: starboard, spot: over the table, power_switch: breaker VHF, "
     "distress_key: Lift the red lid, hold_s: 5, antenna_m: 4, gnss: yes, "
     "nature_steps: [press MENU], urgency_steps: [press CALL]", "}\n"},
    {"", "", "retired_tags: [C80], tags_given: [F3], ", ""},
    {"silenced", "silenced:\n  - {",
     "check: bilge_pump_electric_missing, reason: it is asked for, until: 2027-05", "}\n"},
    {"lines", "lines:\n  - {",
     "card: flooding, say: Her sump is deep, source: yard, does: []", "}\n"},
    {NULL, NULL, NULL, NULL}};

static const struct world_part base_parts[] = {
    {"base", "base: {",
     "name: Wrack Quay (specimen), specimen: yes, phone_24h: \"+999 00 000 000\", "
     "position: 12 30.50 N 060 15.25 E", "}\n"},
    {"rescue_centre", "rescue_centre: {",
     "name: Wrack Sound, call: WRACK SOUND COASTGUARD, channel: \"67\", "
     "phone: \"+999 00 000 001\", checked_on: 2026-11-02, antenna_m: 120", "}\n"},
    {"ashore", "ashore: {", "fire_phone: \"+999 02\", marina: Wrack Quay, berth: C", "}\n"},
    {"cruising_area", "cruising_area: {",
     "latitude: north, longitude: east, sea_area: A1, variation: 4 E, variation_on: 2026-01-01",
     "}\n"},
    {"first_aid", "first_aid: {", "drowning_breaths: 5", "}\n"},
    {"dates", "dates: {", "month_means: end, margin_days: 3", "}\n"},
    {"intervals", "intervals:\n  - {", "item: grab_bag, months: 6", "}\n"},
    {"shelters", "shelters:\n  - {", "name: Inner Pool, position: 12 34.20 N 060 20.10 E", "}\n"},
    {"clocks", "clocks:\n  - {", "offset: +2, from: 2026-03-29, to: 2027-10-25", "}\n"},
    {"approvals", "approvals:\n  - {",
     "card: flooding, text: " TEXT_NOW ", initials: AB, qualification: surveyor, "
     "date: 2026-10, until: 2027-10",
     "}\n"},
    {"lines", "lines:\n  - {",
     "card: flooding, say: Keep clear of the dam, source: harbour office, does: []", "}\n"},
    {NULL, NULL, NULL, NULL}};

struct world world_new(struct arena *arena)
{
    struct world world = {.arena = arena};
    _Static_assert(sizeof boat_parts <= sizeof world.boat, "room for the parts");
    memcpy(world.boat, boat_parts, sizeof boat_parts);
    memcpy(world.base, base_parts, sizeof base_parts);
    return world;
}

/* Where the pair ends: behind its comma, which stands outside all brackets and quotes. */
static const char *pair_end(const char *pair)
{
    int depth = 0;
    bool quoted = false;
    for (; *pair != '\0'; pair++) {
        quoted = quoted != (*pair == '"');
        depth += !quoted && strchr("[{", *pair) != NULL ? 1 : 0;
        depth -= !quoted && strchr("]}", *pair) != NULL ? 1 : 0;
        if (!quoted && depth == 0 && *pair == ',')
            return pair + 2;
    }
    return pair;
}

static const char *pairs_with(struct arena *arena, const char *pairs, const char *key,
                              const char *value)
{
    struct text_builder out = text_builder_in(arena);
    text_add(&out, "");
    for (const char *end; *pairs != '\0'; pairs = end) {
        end = pair_end(pairs);
        if (!text_begins(pairs, text_format(arena, "%s: ", key)))
            text_add_bytes(&out, pairs, (size_t)(end - pairs));
    }
    if (value == NULL)
        return out.at;
    const char *joint = out.length == 0 || text_ends(out.at, ", ") ? "" : ", ";
    return text_format(arena, "%s%s%s: %s", out.at, joint, key, value);
}

bool world_set(struct world *world, const char *path, const char *key, const char *value)
{
    struct world_part *lists[] = {world->boat, world->base};
    for (size_t l = 0; l < sizeof lists / sizeof *lists; l++)
        for (struct world_part *part = lists[l]; part->path != NULL; part++)
            if (text_equal(part->path, path)) {
                part->pairs = pairs_with(world->arena, part->pairs, key, value);
                return true;
            }
    return false;
}

/* ---- gear ---- */

#define WHOLE_BOAT "tests/errors/base/boats/alder.yaml"
/* The gear of a boat that lacks nothing, from "equipment:" to what follows not_fitted. */
static const char *whole_gear(struct arena *arena)
{
    struct source *source = NULL;
    if (source_read(arena, WHOLE_BOAT, (size_t)1 << 18, &source) != SOURCE_READ)
        fail_msg("%s cannot be read", WHOLE_BOAT);
    const char *begin = strstr(source->bytes, "equipment:\n");
    const char *tags = strstr(begin, "\ntags_given:") + 1, *rest = strchr(tags, '\n') + 1;
    const char *end = strstr(rest, "\nengines:") + 1;
    return text_format(arena, "%.*s%.*s", (int)(tags - begin), begin, (int)(end - rest), rest);
}

/* The gear without lines of the item, and without its name in not_fitted. */
static const char *gear_without(struct arena *arena, const char *gear, const char *item)
{
    struct text_builder out = text_builder_in(arena);
    const char *entry = text_format(arena, "{item: %s,", item);
    const char *names[] = {text_format(arena, " %s,", item), text_format(arena, " %s]", item),
                           text_format(arena, "[%s,", item)};
    static const char *const left[] = {"", " hatch]", "["};
    for (const char *line = gear, *end; *line != '\0'; line = end) {
        end = strchr(line, '\n') + 1;
        char *words = arena_copy(arena, line, (size_t)(end - line));
        for (size_t i = 0; i < 3 && strstr(words, "item:") == NULL; i++) {
            const char *at = strstr(words, names[i]);
            if (at != NULL)
                words = text_format(arena, "%.*s%s%s", (int)(at - words), words, left[i],
                                    at + strlen(names[i]));
        }
        if (strstr(words, entry) == NULL)
            text_add(&out, words);
    }
    return out.at;
}

/* The pairs of the entry that the boat has of the item, or of one made up. */
static const char *entry_pairs(struct arena *arena, const char *gear, enum item_key item)
{
    const struct item_kind *kind = item_kind_of(item);
    const char *entry = strstr(gear, text_format(arena, "{item: %s,", kind->key));
    if (entry != NULL)
        return arena_copy(arena, entry + 1, (size_t)(strstr(entry, "}\n") - entry - 1));
    bool hers = !zone_of(kind->usual_zone)->catamaran_only;
    return text_format(arena, "item: %s, tag: %c71, zone: %s, side: port%s", kind->key,
                       (char)kind->class, zone_word(hers ? kind->usual_zone : ZONE_saloon),
                       item == ITEM_lithium_bank ? ", space: engine_space" : "");
}

void world_gear_set(struct world *world, enum item_key item, const char *key, const char *value)
{
    const char *gear = gear_beside(world->arena, whole_gear(world->arena), item);
    const char *pairs = entry_pairs(world->arena, gear, item);
    const char *rest = gear_without(world->arena, gear, item_word(item)) +
                       strlen("equipment:\n");
    struct world_part *part = world->boat;
    while (part->path != NULL)
        part++;
    *part = (struct world_part){"equipment", "equipment:\n  - {",
                                pairs_with(world->arena, pairs, key, value),
                                text_format(world->arena, "}\n%s", rest)};
    part[1] = (struct world_part){NULL, NULL, NULL, NULL};
}

/* ---- reading them ---- */

static bool part_is(const struct world_part *parts, const char *path)
{
    for (; parts->path != NULL; parts++)
        if (text_equal(parts->path, path))
            return true;
    return false;
}

static void part_add(const struct world *world, const struct world_part *part,
                     struct text_builder *out)
{
    if (part->path[0] != '\0') {
        text_add_format(out, "%s%s%s", part->head, part->pairs, part->foot);
        return;
    }
    for (const char *pair = part->pairs, *end; *pair != '\0'; pair = end) {
        end = pair_end(pair);
        const char *line = arena_copy(world->arena, pair, (size_t)(end - pair));
        size_t length = strlen(line);
        text_add_bytes(out, line, text_ends(line, ", ") ? length - 2 : length);
        text_add(out, "\n");
    }
}

const struct source *world_source(const struct world *world, const struct world_part *parts,
                                  const char *name)
{
    struct text_builder out = text_builder_in(world->arena);
    bool gear = parts == world->base || part_is(parts, "equipment");
    for (size_t i = 0; parts[i].path != NULL; i++)
        part_add(world, &parts[i], &out);
    if (!gear)
        text_add(&out, whole_gear(world->arena));
    return source_from(world->arena, name, out.at, out.length);
}
