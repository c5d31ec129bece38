/* readers_said.c - what each reader says of a record and a base. */
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
#include "prove.h"
#include "readers_case.h"
#include "readers_gear.h"
#include "rules.h"
#include "source.h"
#include "text.h"

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
        return block == BLOCK_OWN_LINES ? READER_BIT_LINES : READER_BIT_CASE;
    case FACTS_TEXT:
        if (block >= BLOCK_BERTH && block <= BLOCK_BERTH_SAY) return READER_BIT_BERTH;
        return block == BLOCK_MARK ? READER_BIT_HEAD : READER_BIT_CASE;
    case FACTS_SIGNS: case FACTS_CASES: case FACTS_DECISION: case FACTS_LEGEND:
    case FACTS_ROWS: case FACTS_FORM: case FACTS_STICKERS: case FACTS_VIEWS: case FACTS_PAGES:
    case FACTS_BARE: case FACTS_SEEN:
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
    const struct approvable approvables[] = {
        {.card = "flooding", .language = "en", .hung = true,
         .fingerprint = case_fingerprint(card_case, "flooding")},
        {.card = "gas_leak", .language = "en", .hung = true,
         .fingerprint = case_fingerprint(card_case, "gas_leak")}};
    struct rules_input input = {.boat = boat, .base = base, .today = today, .from = today,
                                .to = to, .approvables = approvables, .approvable_count = 2};
    struct arena *arena = listening->said[0].arena;
    struct problems *problems = problems_new(arena);
    rules_check(&input, arena, problems);
    rules_check_base(&input, arena, problems);
    problems_listen(listening, problems);
}

/* Of boats whose own lines do something: the others are proved elsewhere. */
static void proof_listen(struct listening *listening, const struct compose_input *input,
                         const struct sheet_set *set, struct arena *arena)
{
    struct problems *problems = problems_new(arena);
    const struct own_lines *lists[] = {&input->base->own_lines, &input->boat->own_lines};
    for (size_t l = 0; l < sizeof lists / sizeof *lists; l++)
        for (size_t i = 0; i < lists[l]->count; i++)
            if (lists[l]->rows[i].does.count > 0)
                hazards_judge(input, set, arena, problems);
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
                                  card_case->words, {0}, card_case->today, false, NULL};
    const struct sheet_set *set = compose_set(&input, arena, problems);
    assert_non_null(set);
    sheets_listen(listening, set, arena);
    figures_listen(listening, &(struct figure_record){boat, base}, arena);
    dates_listen(listening, boat, base, arena);
    rules_listen(listening, card_case, boat, base);
    proof_listen(listening, &input, set, arena);
    rest_listen(listening, &input, set, arena);
    const char *spelling = call_spelling(boat, arena, problems);
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

/* The fingerprint of the approved card as it is takes the place of TEXT_NOW. */
static const struct source *base_with_text_now(const struct card_case *card_case,
                                               const struct world *world)
{
    const struct source *written = world_source(world, world->base, "base.yaml");
    const char *at = strstr(written->bytes, TEXT_NOW);
    if (at == NULL)
        return written;
    const char *text = text_format(world->arena, "%.*s%s%s", (int)(at - written->bytes),
                                   written->bytes, case_fingerprint(card_case, "flooding"),
                                   at + strlen(TEXT_NOW));
    return source_from(world->arena, "base.yaml", text, strlen(text));
}

struct readings readings_of(const struct card_case *card_case, const struct world *world)
{
    struct readings readings = {.said = {NULL}};
    struct listening listening = {.card = ""};
    struct problems *problems = problems_new(world->arena);
    bool sound = false, base_sound = false;
    const struct source *base_file = base_with_text_now(card_case, world);
    const struct source *file = world_source(world, world->boat, "boats/alder.yaml");
    const struct base_record *base = base_read(base_file, world->arena, problems, &base_sound);
    const struct boat *boat = boat_read(file, "alder", world->arena, problems, &sound);
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
