/* test_code_facts.c - every fact of a sheet is in its check code: each is changed where it
 * stands, and the code must follow. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "card_fixture.h"
#include "text.h"

static struct sheet card_of(const char *boat, const char *key)
{
    case_boat(&test, boat);
    return *case_card(case_compose(&test, false), key);
}

static const char *code(const struct sheet *card)
{
    return check_code(card, test.arena);
}

/* The word is replaced where it stands; the code must follow. */
static void must_matter(const struct sheet *card, const char **word, const char *what)
{
    const char *before = *word, *old = code(card);
    *word = before == NULL ? "x" : text_format(test.arena, "%sx", before);
    if (strcmp(old, code(card)) == 0)
        fail_msg("%s may change without the code following", what);
    *word = before;
    assert_string_equal(old, code(card));
}

/* Facts of the card under test, which may be changed. */
#define OWN(card, type, key) FACTS(test.arena, &(card), type, key)

static void every_word_of_the_frame_matters(void **state)
{
    (void)state;
    struct sheet card = card_of("tests/fleet/boats/tamarisk.yaml", "engine_fire");
    assert_string_equal(sheet_footer(&card)->code, code(&card));
    struct title_facts *title = OWN(card, title, BLOCK_TITLE);
    struct signs_facts *signs = OWN(card, signs, BLOCK_SIGNS);
    struct contact_facts *contact = OWN(card, contact, BLOCK_CONTACT);
    struct footer_facts *footer = OWN(card, footer, BLOCK_FOOTER);
    struct cases_facts *cases = OWN(card, cases, BLOCK_CALL_LINE);
    struct card_text *mark = case_facts(test.arena, &card, BLOCK_MARK);
    struct card_text *berth = case_facts(test.arena, &card, BLOCK_BERTH);
    struct card_text *anchor = case_facts(test.arena, &card, BLOCK_ANCHOR);
    struct card_text *ashore = case_facts(test.arena, &card, BLOCK_BERTH_SAY);
    const struct { const char **word; const char *what; } words[] = {
        {&card.id, "id"}, {&card.language, "language"}, {&title->title, "title"},
        {&title->boat, "boat"}, {&title->number, "number"}, {&signs->word, "WHEN"},
        {&signs->signs, "signs"}, {&cases->items[0].text, "call line"},
        {&berth->text, "berth"}, {&anchor->text, "anchor"}, {&ashore->text, "ashore"},
        {&contact->left, "rescue centre"}, {&contact->right, "base"}, {&mark->text, "mark"},
        {&footer->left[0], "deferral"}, {&footer->left[1], "approval"},
        {&footer->first_date, "dates"}, {&footer->code_word, "check code"}};
    for (size_t i = 0; i < sizeof words / sizeof words[0]; i++)
        must_matter(&card, words[i].word, words[i].what);
}

static void every_word_of_the_decision_and_the_call_matters(void **state)
{
    (void)state;
    struct sheet card = card_of("tests/fleet/boats/tamarisk.yaml", "engine_fire");
    struct decision_facts *decision = OWN(card, decision, BLOCK_DECISION);
    struct call_facts *call = OWN(card, call, BLOCK_CALL);
    struct card_text operate = call->operate[0];
    struct script_piece piece = {.kind = PIECE_STRONG, .text = "I AM FLOODING."};
    struct script_line line = {.label = "RISING", .pieces = &piece, .count = 1};
    struct script script = {.lines = &line, .count = 1};
    call->operate = &operate;
    call->operate_count = 1;
    call->script = &script;
    const struct { const char **word; const char *what; } words[] = {
        {&decision->ask, "question"}, {&decision->yes, "yes"}, {&decision->no, "no"},
        {&decision->yes_word, "YES"}, {&decision->no_word, "NO"}, {&call->title, "call title"},
        {&call->station, "station"}, {&operate.text, "a line of the set"},
        {&line.label, "label"}, {&piece.text, "a spoken word"}};
    for (size_t i = 0; i < sizeof words / sizeof words[0]; i++)
        must_matter(&card, words[i].word, words[i].what);
}

static void item_words_matter(const struct sheet *card, struct row_item *item)
{
    const char **tags = arena_array(test.arena, item->tag_count, sizeof *tags);
    memcpy(tags, item->tags, item->tag_count * sizeof *tags);
    item->tags = tags;
    for (size_t t = 0; t < item->tag_count; t++)
        must_matter(card, &tags[t], "tag");
    must_matter(card, &item->name, "name");
    must_matter(card, &item->lesser, "lesser name");
    must_matter(card, &item->spot, "own spot");
    must_matter(card, &item->end, "end");
}

static void row_words_matter(const struct sheet *card, struct card_row *row)
{
    struct row_item *items = arena_array(test.arena, row->item_count, sizeof *items);
    memcpy(items, row->items, row->item_count * sizeof *items);
    row->items = items;
    must_matter(card, &row->place, "place");
    must_matter(card, &row->spot, "spot");
    for (size_t i = 0; i < row->item_count; i++)
        item_words_matter(card, &items[i]);
}

static void step_words_matter(const struct sheet *card, struct card_step *step)
{
    struct card_row *rows = arena_array(test.arena, step->row_count, sizeof *rows);
    struct card_text *lethal = arena_array(test.arena, step->lethal_count, sizeof *lethal);
    if (step->row_count > 0)
        memcpy(rows, step->rows, step->row_count * sizeof *rows);
    if (step->lethal_count > 0)
        memcpy(lethal, step->lethal, step->lethal_count * sizeof *lethal);
    step->rows = rows;
    step->lethal = lethal;
    must_matter(card, &step->headline.text, "headline");
    for (size_t l = 0; l < step->lethal_count; l++)
        must_matter(card, &lethal[l].text, "lethal line");
    for (size_t r = 0; r < step->row_count; r++)
        row_words_matter(card, &rows[r]);
}

static void every_word_of_the_steps_matters(void **state)
{
    (void)state;
    struct sheet card = card_of("tests/fleet/boats/tamarisk.yaml", "engine_fire");
    struct steps_facts *facts = OWN(card, steps, BLOCK_STEPS);
    struct card_step *steps = arena_array(test.arena, facts->count, sizeof *steps);
    memcpy(steps, facts->items, facts->count * sizeof *steps);
    facts->items = steps;
    for (size_t s = 0; s < facts->count; s++)
        step_words_matter(&card, &steps[s]);
}

/* The card with that one step, which may be changed. */
static struct sheet card_of_one_step(const char *id, struct card_step *step)
{
    struct sheet card = card_of("tests/fleet/boats/tamarisk.yaml", "flooding");
    *step = *case_step(&card, id);
    struct steps_facts *facts = OWN(card, steps, BLOCK_STEPS);
    facts->items = step;
    facts->count = 1;
    return card;
}

static void group_words_matter(const struct sheet *card, struct opening_group *group)
{
    struct card_row *rows = arena_array(test.arena, group->row_count, sizeof *rows);
    memcpy(rows, group->rows, group->row_count * sizeof *rows);
    group->rows = rows;
    must_matter(card, &group->head, "a head of the table");
    for (size_t r = 0; r < group->row_count; r++)
        row_words_matter(card, &rows[r]);
}

static void every_opening_of_the_table_matters(void **state)
{
    (void)state;
    struct card_step step;
    struct sheet card = card_of_one_step("seacocks", &step);
    struct opening_group *table = arena_array(test.arena, step.table_count, sizeof *table);
    assert_true(step.table_count > 0);
    memcpy(table, step.table, step.table_count * sizeof *table);
    step.table = table;
    for (size_t g = 0; g < step.table_count; g++)
        group_words_matter(&card, &table[g]);
}

static void every_condition_of_a_row_matters(void **state)
{
    (void)state;
    struct card_step step;
    struct sheet card = card_of_one_step("seacocks", &step);
    struct card_text condition = {.text = "**C1** only with engine running."};
    step.conditions = &condition;
    step.condition_count = 1;
    must_matter(&card, &condition.text, "condition");
}

static void the_number_of_a_step_matters(void **state)
{
    (void)state;
    struct card_step step;
    struct sheet card = card_of_one_step("seacocks", &step);
    const char *old = code(&card);
    step.number++;
    assert_string_not_equal(old, code(&card));
}

static void every_warning_matters(void **state)
{
    static const enum block_key keys[] = {BLOCK_NEVER, BLOCK_CAUTIONS, BLOCK_OWN_LINES};
    (void)state;
    struct sheet card = card_of("tests/fleet/boats/tamarisk.yaml", "engine_fire");
    for (size_t i = 0; i < sizeof keys / sizeof *keys; i++) {
        struct card_warning one = {.text = "Anchor lights on", .tag = "Harbour"};
        struct warnings_facts *warnings = OWN(card, warnings, keys[i]);
        *warnings = (struct warnings_facts){.word = "NEVER", .items = &one, .count = 1};
        must_matter(&card, &warnings->word, block_word(keys[i]));
        must_matter(&card, &one.text, block_word(keys[i]));
        must_matter(&card, &one.tag, "its source");
        warnings->count = 0;
    }
}

static void every_section_matters(void **state)
{
    static const enum block_key keys[] = {
        BLOCK_NATURE, BLOCK_NO_ANSWER, BLOCK_POSITION, BLOCK_PAN_PAN, BLOCK_PHRASES, BLOCK_NEEDS,
        BLOCK_HEARD, BLOCK_RELAY, BLOCK_DOWNGRADE, BLOCK_CANCEL, BLOCK_BEACON, BLOCK_ASKED,
        BLOCK_SPELL, BLOCK_HINTS};
    (void)state;
    struct sheet card = card_of("tests/fleet/boats/tamarisk.yaml", "distress_call");
    for (size_t i = 0; i < sizeof keys / sizeof *keys; i++) {
        struct section_facts *section = OWN(card, section, keys[i]);
        struct card_text *lines = arena_array(test.arena, section->line_count, sizeof *lines);
        if (section->line_count > 0)
            memcpy(lines, section->lines, section->line_count * sizeof *lines);
        section->lines = lines;
        must_matter(&card, &section->title, "a section's title");
        must_matter(&card, &section->note, "a section's note");
        must_matter(&card, &section->end_note, "a section's last line");
        for (size_t l = 0; l < section->line_count; l++)
            must_matter(&card, &lines[l].text, "a section's line");
    }
}

static void every_word_of_a_safety_plan_matters(void **state)
{
    (void)state;
    struct sheet plan = card_of("tests/fleet/boats/tamarisk.yaml", "safety_plan");
    struct places_facts *facts = OWN(plan, places, BLOCK_LABELS);
    struct plan_place *places = arena_array(test.arena, facts->count, sizeof *places);
    memcpy(places, facts->places, facts->count * sizeof *places);
    facts->places = places;
    for (size_t i = 0; i < facts->count; i++) {
        struct plan_row *rows = arena_array(test.arena, places[i].row_count, sizeof *rows);
        memcpy(rows, places[i].rows, places[i].row_count * sizeof *rows);
        places[i].rows = rows;
        must_matter(&plan, &places[i].title, "a place");
        for (size_t r = 0; r < places[i].row_count; r++) {
            must_matter(&plan, &rows[r].name, "a name of gear");
            must_matter(&plan, &rows[r].detail, "a detail of gear");
            must_matter(&plan, &rows[r].marker.tag, "a tag");
        }
    }
    struct index_facts *index = OWN(plan, index, BLOCK_INDEX);
    struct index_entry *entries = arena_array(test.arena, index->count, sizeof *entries);
    memcpy(entries, index->entries, index->count * sizeof *entries);
    index->entries = entries;
    for (size_t i = 0; i < index->count; i++) {
        struct index_spot *spots = arena_array(test.arena, entries[i].spot_count, sizeof *spots);
        memcpy(spots, entries[i].spots, entries[i].spot_count * sizeof *spots);
        entries[i].spots = spots;
        must_matter(&plan, &entries[i].name, "an entry of the index");
        must_matter(&plan, &spots[0].place, "a place of the index");
    }
    struct legend_facts *legend = OWN(plan, legend, BLOCK_LEGEND);
    for (size_t i = 0; i < 3; i++)
        must_matter(&plan, &legend->words[i], "the legend");
}

static void every_line_of_the_index_of_cards_matters(void **state)
{
    (void)state;
    struct sheet plan = card_of("tests/fleet/boats/tamarisk.yaml", "safety_plan");
    struct seen_facts *seen = OWN(plan, seen, BLOCK_SEEN);
    struct seen_group *groups = arena_array(test.arena, seen->count, sizeof *groups);
    memcpy(groups, seen->groups, seen->count * sizeof *groups);
    seen->groups = groups;
    must_matter(&plan, &seen->ask, "the head of what is seen");
    must_matter(&plan, &seen->take, "the head of the cards");
    for (size_t i = 0; i < seen->count; i++) {
        struct seen_line *lines = arena_array(test.arena, groups[i].count, sizeof *lines);
        memcpy(lines, groups[i].lines, groups[i].count * sizeof *lines);
        groups[i].lines = lines;
        must_matter(&plan, &groups[i].name, "a group");
        must_matter(&plan, &lines[0].text, "what is seen");
        must_matter(&plan, &lines[0].number, "the number of its card");
    }
}

/* NEVER must not become CAUTION under the same code. */
static void a_never_is_not_a_caution(void **state)
{
    (void)state;
    struct sheet card = card_of("tests/fleet/boats/tamarisk.yaml", "engine_fire");
    struct card_warning items[] = {{.text = "go below", .tag = "A"},
                                   {.text = "use a phone", .tag = "B"}};
    struct warnings_facts *nevers = OWN(card, warnings, BLOCK_NEVER);
    struct warnings_facts *cautions = OWN(card, warnings, BLOCK_CAUTIONS);
    *nevers = (struct warnings_facts){.word = "same", .items = items, .count = 2};
    *cautions = (struct warnings_facts){.word = "same"};
    const char *two_nevers = code(&card);
    nevers->count = 1;
    cautions->items = &items[1];
    cautions->count = 1;
    assert_string_not_equal(two_nevers, code(&card));
}

/* ---- where things stand ---- */

static void the_words_of_the_plan_matter(void **state)
{
    (void)state;
    struct sheet card = card_of("tests/fleet/boats/tamarisk.yaml", "engine_fire");
    struct plan_facts *plan = OWN(card, plan, BLOCK_PLAN);
    struct plan_zone landmark = plan->landmarks[0];
    plan->landmarks = &landmark;
    plan->landmark_count = 1;
    must_matter(&card, &landmark.name, "a zone's name on the plan");
    for (size_t i = 0; i < PLAN_WORD_COUNT; i++)
        must_matter(&card, &plan->words[i], "a word round the plan");
}

static void a_moved_tag_changes_the_code(void **state)
{
    (void)state;
    struct sheet card = card_of("tests/fleet/boats/tamarisk.yaml", "engine_fire");
    struct plan_facts *plan = OWN(card, plan, BLOCK_PLAN);
    struct marker *markers = arena_array(test.arena, plan->marker_count, sizeof *markers);
    const char *old = code(&card);
    assert_true(plan->marker_count > 5);
    memcpy(markers, plan->markers, plan->marker_count * sizeof *markers);
    plan->markers = markers;
    for (size_t i = 0; i < plan->marker_count; i++) {
        struct marker kept = markers[i];
        must_matter(&card, &markers[i].tag, "a marker's tag");
        markers[i].x_mm++;
        assert_string_not_equal(old, code(&card));
        markers[i] = kept;
        markers[i].y_mm--;
        assert_string_not_equal(old, code(&card));
        markers[i] = kept;
        markers[i].zone = zone_of(kept.zone->id == ZONE_saloon ? ZONE_galley : ZONE_saloon);
        assert_string_not_equal(old, code(&card));
        markers[i] = kept;
        markers[i].level = kept.level == LEVEL_BELOW ? LEVEL_DECK : LEVEL_BELOW;
        assert_string_not_equal(old, code(&card));
        markers[i] = kept;
    }
    assert_string_equal(old, code(&card));
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(every_word_of_the_frame_matters),
        TEST(every_word_of_the_decision_and_the_call_matters),
        TEST(every_word_of_the_steps_matters),
        TEST(every_opening_of_the_table_matters),
        TEST(every_condition_of_a_row_matters),
        TEST(the_number_of_a_step_matters),
        TEST(every_warning_matters),
        TEST(every_section_matters),
        TEST(every_word_of_a_safety_plan_matters),
        TEST(every_line_of_the_index_of_cards_matters),
        TEST(a_never_is_not_a_caution),
        TEST(the_words_of_the_plan_matter),
        TEST(a_moved_tag_changes_the_code),
    };
    return cmocka_run_group_tests(tests, NULL, NULL) != 0;
}
