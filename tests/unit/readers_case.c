/* readers_case.c - a record and a base as texts, and what each reader says of them. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "readers_case.h"
#include "fact.h"

#include "fact.h"
#include "figure.h"
#include "gear_date.h"
#include "number.h"
#include "promise.h"
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
    {NULL, NULL, NULL, NULL}};

static const struct world_part base_parts[] = {
    {"base", "base: {",
     "name: Wrack Quay (specimen), specimen: yes, phone_24h: \"+999 00 000 000\", "
     "position: 12 30.50 N 060 15.25 E", "}\n"},
    {"rescue_centre", "rescue_centre: {",
     "name: Wrack Sound, call: WRACK SOUND COASTGUARD, channel: \"67\", "
     "phone: \"+999 00 000 001\", checked_on: 2026-11-02, antenna_m: 120", "}\n"},
    {"cruising_area", "cruising_area: {",
     "latitude: north, longitude: east, sea_area: A1, variation: 4 E, variation_on: 2026-01-01",
     "}\n"},
    {"dates", "dates: {", "month_means: end, margin_days: 3", "}\n"},
    {"intervals", "intervals:\n  - {", "item: grab_bag, months: 6", "}\n"},
    {"shelters", "shelters:\n  - {",
     "name: Inner Pool, position: 12 34.20 N 060 20.10 E", "}\n"},
    {"approvals", "approvals:\n  - {",
     "card: flooding, initials: AB, qualification: surveyor, date: 2026-10, until: 2027-10",
     "}\n"},
    {"local_rules", "local_rules:\n  - {",
     "card: flooding, rule: Keep clear of the dam, source: harbour office", "}\n"},
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
                       item == ITEM_lithium_bank ? ", space: saloon" : "");
}

void world_gear_set(struct world *world, enum item_key item, const char *key, const char *value)
{
    const char *gear = whole_gear(world->arena);
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

static const struct source *source_of_parts(const struct world *world,
                                            const struct world_part *parts, const char *name)
{
    struct text_builder out = text_builder_in(world->arena);
    bool gear = parts == world->base || part_is(parts, "equipment");
    for (size_t i = 0; parts[i].path != NULL; i++)
        part_add(world, &parts[i], &out);
    if (!gear)
        text_add(&out, whole_gear(world->arena));
    return source_from(world->arena, name, out.at, out.length);
}

/* ---- what they say ---- */

struct listening {
    struct text_builder said[READER_COUNT];
    enum block_key block;
    const char *card;
};

static void listening_add(struct listening *listening, enum reader_bit reader, const char *what,
                          const char *text)
{
    text_add_format(&listening->said[reader], "%s %s: %s\n", listening->card, what, text);
}

/* Which reader a block is; the words of a script are apart. */
static enum reader_bit block_reader(enum block_key block, const char *fact)
{
    bool script = text_equal(fact, "say") || text_equal(fact, "label");
    switch (facts_kind_of(block)) {
    case FACTS_STEPS:
        return text_begins(fact, "figure") ? READER_BIT_FIGURE : READER_BIT_ROW;
    case FACTS_PLAN: return READER_BIT_PLAN;
    case FACTS_PLACES: case FACTS_INDEX: return READER_BIT_SAFETY;
    case FACTS_CALL:
        return script ? READER_BIT_SCRIPT : READER_BIT_PANEL;
    case FACTS_SECTION:
        return script ? READER_BIT_SCRIPT : READER_BIT_DISTRESS;
    case FACTS_CONTACT: return READER_BIT_CONTACT;
    case FACTS_FOOTER: return READER_BIT_FOOT;
    case FACTS_TITLE: return READER_BIT_HEAD;
    case FACTS_WARNINGS:
        return block == BLOCK_LOCAL_RULES ? READER_BIT_RULE : READER_BIT_CASE;
    case FACTS_TEXT:
        return block == BLOCK_MARK ? READER_BIT_HEAD : READER_BIT_CASE;
    case FACTS_SIGNS: case FACTS_CASES: case FACTS_DECISION: case FACTS_LEGEND:
    case FACTS_ROWS: case FACTS_PAGES: case FACTS_BARE:
        return READER_BIT_CASE;
    }
    promise_unreached();
}

/* The code hangs on all else. */
static void fact_listen(void *of, const struct fact *fact)
{
    struct listening *listening = of;
    enum reader_bit reader = block_reader(listening->block, fact->name);
    if (text_empty(fact->text) || text_equal(fact->name, "code")) return;
    listening_add(listening, reader, fact->name, fact->text);
    if (reader == READER_BIT_ROW || reader == READER_BIT_PANEL)
        listening_add(listening, READER_BIT_CASE, fact->name, fact->text);
    if (reader == READER_BIT_ROW || reader == READER_BIT_SAFETY || reader == READER_BIT_PANEL ||
        reader == READER_BIT_PLAN)
        listening_add(listening, READER_BIT_PLACE, fact->name, fact->text);
}

static void sheets_listen(struct listening *listening, const struct sheet_set *set,
                          struct arena *arena)
{
    for (size_t i = 0; i < set->count; i++) {
        const struct sheet *sheet = set->sheets[i];
        listening->card = sheet->id;
        listening_add(listening, READER_BIT_CASE, "held", sheet->held ? "yes" : "no");
        for (size_t b = 0; b < sheet->block_count; b++) {
            listening->block = sheet->blocks[b].key;
            if (listening->block != BLOCK_PAGES)
                block_visit(&sheet->blocks[b], arena, fact_listen, listening);
        }
    }
    listening->card = "";
}

static void figures_listen(struct listening *listening, const struct figure_record *record,
                           struct arena *arena)
{
    const struct figure *figure;
    for (size_t f = 0; (figure = figure_at(f)) != NULL; f++) {
        struct figure_result result = figure_evaluate(figure, record, arena);
        for (size_t i = 0; i < result.input_count; i++)
            listening_add(listening, READER_BIT_FIGURE, result.inputs[i].what,
                          result.inputs[i].value);
        if (result.before != NULL)
            listening_add(listening, READER_BIT_FIGURE, figure->id, result.before);
    }
}

static void dates_listen(struct listening *listening, const struct boat *boat,
                         const struct base_record *base, struct arena *arena)
{
    for (size_t i = 0; i < boat->equipment_count; i++) {
        struct gear_date date = {.known = false};
        if (gear_date(&boat->equipment[i], base, &date))
            listening_add(listening, READER_BIT_DATES, boat->equipment[i].kind->key,
                          text_format(arena, "%d-%d-%d from %s", date.last.year, date.last.month,
                                      date.last.day, gear_field_word(date.field)));
    }
}

static void problems_listen(struct listening *listening, const struct problems *problems)
{
    size_t count;
    const struct problem *all = problems_sorted(problems, &count);
    for (size_t i = 0; i < count; i++) {
        listening_add(listening, READER_BIT_CHECK, severity_word(all[i].severity), all[i].what);
        listening_add(listening, READER_BIT_CHECK, all[i].check,
                      all[i].remedy == NULL ? "" : all[i].remedy);
    }
}

static void rules_listen(struct listening *listening, const struct card_case *card_case,
                         const struct boat *boat, const struct base_record *base)
{
    struct date today = card_case->today, to = {2026, 12, 2};
    struct rules_input input = {.boat = boat, .base = base, .today = today, .from = today,
                                .to = to};
    struct arena *arena = listening->said[0].arena;
    struct problems *problems = problems_new(arena);
    rules_check(&input, arena, problems);
    rules_check_base(&input, arena, problems);
    problems_listen(listening, problems);
}

static void rest_listen(struct listening *listening, const struct compose_input *input,
                        const struct sheet_set *set, struct arena *arena)
{
    struct unprinted_facts facts = unprinted_facts(input, set, arena);
    for (size_t i = 0; i < facts.count; i++)
        listening_add(listening, READER_BIT_REST,
                      text_format(arena, "%s %s", facts.rows[i].owner, facts.rows[i].field),
                      facts.rows[i].value);
}

static void world_listen(struct listening *listening, const struct card_case *card_case,
                         const struct boat *boat, const struct base_record *base)
{
    struct arena *arena = listening->said[0].arena;
    struct problems *problems = problems_new(arena);
    struct compose_input input = {boat, base, &card_case->procedures, card_case->authorities,
                                  card_case->words, {0}, card_case->today, false};
    const struct sheet_set *set = compose_set(&input, arena, problems);
    const char *spelling = call_spelling(boat, arena, problems);
    assert_non_null(set);
    sheets_listen(listening, set, arena);
    figures_listen(listening, &(struct figure_record){boat, base}, arena);
    dates_listen(listening, boat, base, arena);
    rules_listen(listening, card_case, boat, base);
    rest_listen(listening, &input, set, arena);
    listening_add(listening, READER_BIT_SPELL, "spelled", spelling == NULL ? "" : spelling);
}

static const char *first_error(const struct problems *problems)
{
    size_t count;
    const struct problem *all = problems_sorted(problems, &count);
    for (size_t i = 0; i < count; i++)
        if (all[i].severity >= SEVERITY_ERROR)
            return all[i].what;
    return "";
}

struct readings readings_of(const struct card_case *card_case, const struct world *world)
{
    struct readings readings = {.said = {NULL}};
    struct listening listening = {.card = ""};
    struct problems *problems = problems_new(world->arena);
    bool sound = false, base_sound = false;
    const struct base_record *base = base_read(
        source_of_parts(world, world->base, "base.yaml"), world->arena, problems, &base_sound);
    const struct boat *boat = boat_read(source_of_parts(world, world->boat, "boats/alder.yaml"),
                                        "alder", world->arena, problems, &sound);
    if (boat == NULL || base == NULL || !sound || !base_sound) {
        readings.fault = first_error(problems);
        return readings;
    }
    for (enum reader_bit reader = 0; reader < READER_COUNT; reader++) {
        listening.said[reader] = text_builder_in(world->arena);
        text_add(&listening.said[reader], "");
    }
    world_listen(&listening, card_case, boat, base);
    for (enum reader_bit reader = 0; reader < READER_COUNT; reader++)
        readings.said[reader] = listening.said[reader].at;
    return readings;
}
