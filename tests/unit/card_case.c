/* card_case.c - the program's own files and records from texts, for the tests of
 * composed cards and laid-out pages. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <dirent.h>
#include <string.h>

#include "card_case.h"

#include "fingerprint.h"
#include "source.h"
#include "speak.h"
#include "text.h"

#define ARENA_LIMIT ((size_t)1024 * 1024 * 1024)
#define FILE_LIMIT ((size_t)256 * 1024)
#define PROCEDURES_MOST 40
#define TEXTS_LINE "=== texts\n"

static const struct source *named_source(struct card_case *card_case, const char *name,
                                         const char *text)
{
    return source_from(card_case->arena, name, text, strlen(text));
}

static const struct source *source_of(struct card_case *card_case, const char *text)
{
    struct source *source = NULL;
    if (!text_ends(text, ".yaml"))
        return named_source(card_case, "text.yaml", text);
    if (source_read(card_case->arena, text, FILE_LIMIT, &source) != SOURCE_READ)
        fail_msg("%s cannot be read", text);
    return source;
}

const char *case_problems_text(const struct card_case *card_case)
{
    struct text_builder out = text_builder_in(card_case->arena);
    size_t count = 0;
    const struct problem *all = problems_sorted(card_case->problems, &count);
    for (size_t i = 0; i < count; i++)
        problem_print(&all[i], &out);
    return out.at;
}

static void must_be_sound(const struct card_case *card_case, bool sound)
{
    if (!sound || problems_reach(card_case->problems, SEVERITY_ERROR))
        fail_msg("what the test reads is not sound:\n%s", case_problems_text(card_case));
}

static const struct procedure *procedure_of(struct card_case *card_case,
                                            const struct source *logic,
                                            const struct source *texts)
{
    const struct procedure_text_file text_file = {"en", texts};
    const struct procedure_files files = {.logic = logic, .texts = &text_file,
                                          .text_count = 1};
    const struct procedure *procedure = procedure_read(
        &files, card_case->authorities, card_case->arena, card_case->problems);
    must_be_sound(card_case, procedure != NULL);
    return procedure;
}

/* Of the program's own, by the name of its files. */
static const struct procedure *own_procedure(struct card_case *card_case, const char *name)
{
    return procedure_of(
        card_case, source_of(card_case, text_format(card_case->arena, "procedures/%s", name)),
        source_of(card_case, text_format(card_case->arena, "procedures/words/en/%s", name)));
}

/* As case_procedure_text made it: the logic, and behind a line the texts. */
static const struct procedure *written_procedure(struct card_case *card_case, const char *text)
{
    const char *texts = strstr(text, TEXTS_LINE);
    assert_non_null(texts);
    const char *logic = arena_copy(card_case->arena, text, (size_t)(texts - text));
    return procedure_of(card_case, named_source(card_case, "logic.yaml", logic),
                        named_source(card_case, "words.yaml", texts + strlen(TEXTS_LINE)));
}

/* By `number`, then key, as procedure.h has it. */
static void procedure_insert(const struct procedure **rows, size_t *count,
                             const struct procedure *procedure)
{
    size_t at = (*count)++;
    assert_true(*count <= PROCEDURES_MOST);
    for (; at > 0; at--) {
        int64_t before = rows[at - 1]->number.milli, own = procedure->number.milli;
        if (before < own || (before == own &&
                             strcmp(rows[at - 1]->key.text, procedure->key.text) < 0))
            break;
        rows[at] = rows[at - 1];
    }
    rows[at] = procedure;
}

static void own_procedures(struct card_case *card_case)
{
    const struct procedure **rows = arena_array(card_case->arena, PROCEDURES_MOST, sizeof *rows);
    DIR *folder = opendir("procedures");
    size_t count = 0;
    assert_non_null(folder);
    for (struct dirent *entry; (entry = readdir(folder)) != NULL;)
        if (text_ends(entry->d_name, ".yaml") && strcmp(entry->d_name, "sources.yaml") != 0)
            procedure_insert(rows, &count, own_procedure(card_case, entry->d_name));
    closedir(folder);
    assert_true(count > 0);
    card_case->procedures = (struct procedure_set){rows, count};
}

void case_begin(struct card_case *card_case)
{
    *card_case = (struct card_case){.arena = arena_new(ARENA_LIMIT), .today = {2026, 11, 25}};
    card_case->problems = problems_new(card_case->arena);
    card_case->words = words_read(source_of(card_case, "procedures/words/en/words.yaml"),
                                  "en",
                                  card_case->arena, card_case->problems);
    card_case->authorities = authorities_read(source_of(card_case, "procedures/sources.yaml"),
                                              card_case->arena, card_case->problems);
    must_be_sound(card_case, card_case->words != NULL && card_case->authorities != NULL);
    own_procedures(card_case);
    card_case->base = case_base(card_case, "tests/fleet/base.yaml");
}

static void case_item_add(struct card_case *card_case, struct text_builder *out,
                          const struct row_item *item)
{
    const char *const parts[] = {item->name, item->spot, item->end};
    for (size_t t = 0; t < item->tag_count; t++)
        text_add_format(out, "%s[%s]", t == 0 ? " " : "", item->tags[t]);
    for (size_t i = 0; i < sizeof parts / sizeof *parts; i++)
        if (!text_empty(parts[i]))
            text_add_format(out, " %s", text_plain(card_case->arena, parts[i]));
}

const char *case_row(struct card_case *card_case, const struct card_row *row)
{
    struct text_builder out = text_builder_in(card_case->arena);
    text_add(&out, row->place);
    if (!text_empty(row->spot))
        text_add_format(&out, " %s", row->spot);
    text_add(&out, " |");
    for (size_t i = 0; i < row->item_count; i++)
        case_item_add(card_case, &out, &row->items[i]);
    return out.at;
}


const struct words *case_words_without_proof(struct card_case *card_case)
{
    const struct source *whole = source_of(card_case, "procedures/words/en/words.yaml");
    const char *proof = strstr(whole->bytes, "\nproof:\n");
    const struct source *source = source_from(card_case->arena, "words.yaml", whole->bytes,
                                              (size_t)(proof + 1 - whole->bytes));
    return words_read(source, "en", card_case->arena, card_case->problems);
}

const char *case_said(struct card_case *card_case, const struct phrase *phrase)
{
    struct speaker *speaker = speaker_new(card_case->words, card_case->arena,
                                          problems_new(card_case->arena));
    return phrase == NULL ? NULL : say(speaker, phrase);
}

void case_end(struct card_case *card_case)
{
    arena_free(card_case->arena);
}

const struct boat *case_boat(struct card_case *card_case, const char *text)
{
    bool sound = false;
    card_case->problems = problems_new(card_case->arena);
    card_case->boat = boat_read(source_of(card_case, text), "boat", card_case->arena,
                                card_case->problems, &sound);
    must_be_sound(card_case, sound);
    return card_case->boat;
}

const struct base_record *case_base(struct card_case *card_case, const char *text)
{
    bool sound = false;
    card_case->base = base_read(source_of(card_case, text), card_case->arena,
                                card_case->problems, &sound);
    must_be_sound(card_case, sound);
    return card_case->base;
}

void case_procedures(struct card_case *card_case, const char *const *texts)
{
    const struct procedure **rows = arena_array(card_case->arena, PROCEDURES_MOST, sizeof *rows);
    size_t count = 0;
    for (; texts[count] != NULL; count++) {
        assert_true(count < PROCEDURES_MOST);
        rows[count] = written_procedure(card_case, texts[count]);
    }
    card_case->procedures = (struct procedure_set){rows, count};
}

const char *case_fingerprint(const struct card_case *card_case, const char *key)
{
    for (size_t i = 0; i < card_case->procedures.count; i++)
        if (text_equal(card_case->procedures.rows[i]->key.text, key))
            return procedure_fingerprint(card_case->procedures.rows[i], card_case->authorities,
                                         card_case->words, card_case->arena);
    fail_msg("there is no procedure %s", key);
    return NULL;
}

struct compose_input case_input(const struct card_case *card_case, bool draft)
{
    return (struct compose_input){card_case->boat, card_case->base, &card_case->procedures,
                                  card_case->authorities, card_case->words, {0}, card_case->today,
                                  draft, NULL};
}

const struct sheet_set *case_compose(struct card_case *card_case, bool draft)
{
    struct compose_input input = case_input(card_case, draft);
    card_case->problems = problems_new(card_case->arena);
    const struct sheet_set *set = compose_set(&input, card_case->arena, card_case->problems);
    assert_non_null(set);
    return set;
}

struct case_pages case_pages(const struct card_case *card_case, const struct laid_set *laid)
{
    struct case_pages pages = {.count = 0};
    for (size_t i = 0; i < laid->count; i++)
        pages.count += laid->sheets[i].page_count;
    const struct page **at = arena_array(card_case->arena, pages.count, sizeof *at);
    pages.at = at;
    for (size_t i = 0; i < laid->count; i++)
        for (size_t p = 0; p < laid->sheets[i].page_count; p++)
            *at++ = laid->sheets[i].pages[p];
    return pages;
}

const struct sheet *case_card(const struct sheet_set *set, const char *key)
{
    for (size_t i = 0; i < set->count; i++)
        if (strcmp(set->sheets[i]->id, key) == 0)
            return set->sheets[i];
    fail_msg("the set has no card %s", key);
    return NULL;
}

const struct card_step *case_step(const struct sheet *card, const char *id)
{
    for (size_t i = 0; i < sheet_steps(card)->count; i++)
        if (strcmp(sheet_steps(card)->items[i].id, id) == 0)
            return &sheet_steps(card)->items[i];
    fail_msg("the card %s has no step %s", card->id, id);
    return NULL;
}

static size_t facts_size(enum block_key key)
{
    static const size_t sizes[] = {
        [FACTS_TEXT] = sizeof(struct card_text), [FACTS_TITLE] = sizeof(struct title_facts),
        [FACTS_SIGNS] = sizeof(struct signs_facts),
        [FACTS_CASES] = sizeof(struct cases_facts), [FACTS_STEPS] = sizeof(struct steps_facts),
        [FACTS_PLAN] = sizeof(struct plan_facts),
        [FACTS_DECISION] = sizeof(struct decision_facts),
        [FACTS_WARNINGS] = sizeof(struct warnings_facts),
        [FACTS_CONTACT] = sizeof(struct contact_facts), [FACTS_CALL] = sizeof(struct call_facts),
        [FACTS_SECTION] = sizeof(struct section_facts),
        [FACTS_PLACES] = sizeof(struct places_facts),
        [FACTS_INDEX] = sizeof(struct index_facts), [FACTS_SEEN] = sizeof(struct seen_facts),
        [FACTS_LEGEND] = sizeof(struct legend_facts),
        [FACTS_ROWS] = sizeof(struct rows_facts), [FACTS_FORM] = sizeof(struct form_facts),
        [FACTS_VIEWS] = sizeof(struct views_facts),
        [FACTS_STICKERS] = sizeof(struct stickers_facts),
        [FACTS_PAGES] = sizeof(struct pages_facts),
        [FACTS_FOOTER] = sizeof(struct footer_facts)};
    size_t size = sizes[facts_kind_of(key)];
    if (size == 0)
        fail_msg("facts of the block %d have no size here", (int)key);
    return size;
}

void *case_facts(struct arena *arena, struct sheet *sheet, enum block_key key)
{
    struct block *blocks = arena_array(arena, sheet->block_count + 1, sizeof *blocks);
    void *facts = arena_alloc(arena, facts_size(key));
    size_t at = 0;
    if (sheet->block_count > 0)
        memcpy(blocks, sheet->blocks, sheet->block_count * sizeof *blocks);
    while (at < sheet->block_count && blocks[at].key != key)
        at++;
    if (at < sheet->block_count)
        memcpy(facts, blocks[at].facts.text, facts_size(key));
    else
        sheet->block_count++;
    blocks[at].key = key;
    blocks[at].facts.text = facts;    /* all members are pointers to the facts */
    sheet->blocks = blocks;
    return facts;
}

size_t case_blocks(const struct sheet *sheet, enum facts_kind facts)
{
    size_t count = 0;
    for (size_t i = 0; i < sheet->block_count; i++)
        count += facts_kind_of(sheet->blocks[i].key) == facts ? 1 : 0;
    return count;
}

const struct problem *case_problem(const struct card_case *card_case, const char *what)
{
    size_t count = 0;
    const struct problem *all = problems_sorted(card_case->problems, &count);
    for (size_t i = 0; i < count; i++)
        if (strcmp(all[i].what, what) == 0)
            return &all[i];
    return NULL;
}

const char *case_procedure_text(struct card_case *card_case, const char *key, int number,
                                const char *logic, const char *texts)
{
    return text_format(card_case->arena,
                       "procedure: %s\nnumber: %d\nsymbol: flame\nstripe: fire\n%s"
                       "cautions:\n  - {id: smoke, sources: [S5]}\nseen_as: fire\n" TEXTS_LINE
                       "procedure: %s\ntitle: %s card\nsubject: %s\nsigns: [Smoke, a bang]\n%s"
                       "cautions:\n  smoke: Smoke kills.\nseen: [Smoke of %s]\n",
                       key, number, logic, key, key, key, texts, key);
}

const char *case_boat_text(struct card_case *card_case, const char *radio, const char *gear,
                           const char *not_fitted)
{
    return text_format(card_case->arena,
                       "boat: {name: Tamarisk, specimen: yes, hull: monohull, rig: sail, "
                       "loa_m: 12, beam_m: 4, persons_max: 8}\n%sequipment:\n%s%s%s",
                       radio, gear, not_fitted[0] == '\0' ? "" : "not_fitted:\n", not_fitted);
}

struct faces *case_faces(struct card_case *card_case)
{
    struct faces *faces = faces_open("out/fonts", card_case->arena, card_case->problems);
    if (faces == NULL)
        fail_msg("the faces cannot be opened:\n%s", case_problems_text(card_case));
    return faces;
}
