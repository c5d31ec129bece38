/* test_sheet.c - blocks of a sheet: found by their keys, empty where there are none, each
 * with facts of its kind; and the kinds of sheet, a row each. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "card_fixture.h"
#include "fact.h"
#include "text.h"

static void a_sheet_without_blocks_says_nothing(void **state)
{
    (void)state;
    const struct sheet bare = {.kind = SHEET_CARD};
    for (enum block_key key = BLOCK_NONE; key < BLOCK_COUNT; key++)
        assert_null(sheet_block(&bare, key));
    assert_string_equal(sheet_text(&bare, BLOCK_MARK)->text, "");
    assert_string_equal(sheet_title(&bare)->title, "");
    assert_string_equal(sheet_signs(&bare)->word, "");
    assert_int_equal(sheet_steps(&bare)->count, 0);
    assert_string_equal(sheet_decision(&bare)->ask, "");
    assert_int_equal(sheet_warnings(&bare, BLOCK_NEVER)->count, 0);
    assert_string_equal(sheet_contact(&bare)->left, "");
    assert_null(sheet_call(&bare)->script);
    assert_int_equal(sheet_plan(&bare)->marker_count, 0);
    assert_int_equal(sheet_places(&bare)->count, 0);
    assert_string_equal(sheet_legend(&bare)->words[2], "");
    assert_string_equal(sheet_footer(&bare)->code, "");
    assert_null(sheet_section(&bare, BLOCK_NATURE));
}

static void a_block_is_found_by_its_key(void **state)
{
    (void)state;
    const struct card_text mark = {.text = "SPECIMEN"};
    const struct cases_facts cases = {{{.text = "ALONE: call now"}}, 1};
    const struct block blocks[] = {{BLOCK_MARK, {.text = &mark}, YIELDS_NEVER},
                                   {BLOCK_CALL_LINE, {.cases = &cases}, YIELDS_NEVER}};
    const struct sheet sheet = {.blocks = blocks, .block_count = 2};
    assert_ptr_equal(sheet_block(&sheet, BLOCK_CALL_LINE), &blocks[1]);
    assert_string_equal(sheet_cases(&sheet)->items[0].text, "ALONE: call now");
    assert_null(sheet_block(&sheet, BLOCK_SOURCES));
}

/* ---- facts ---- */

struct seen { size_t facts, printed, known; };

static void fact_check(void *of, const struct fact *fact)
{
    struct seen *seen = of;
    assert_non_null(fact->text);
    assert_non_null(fact->name);
    if (fact->joined)
        assert_true(seen->facts > 0);          /* something stands before it */
    seen->facts++;
    seen->printed += fact->kind != FACT_KNOWN ? 1 : 0;
    seen->known += fact->kind != FACT_SHOWN ? 1 : 0;
}

static void every_block_of_the_fleet_has_facts(void **state)
{
    static const char *const boats[] = {"tests/fleet/boats/tamarisk.yaml",
                                        "tests/fleet/boats/samphire.yaml",
                                        "tests/fleet/boats/bramble.yaml"};
    (void)state;
    bool met[BLOCK_COUNT] = {false};
    for (size_t b = 0; b < sizeof boats / sizeof *boats; b++) {
        case_boat(&test, boats[b]);
        const struct sheet_set *set = case_compose(&test, false);
        for (size_t s = 0; s < set->count; s++)
            for (size_t i = 0; i < set->sheets[s]->block_count; i++) {
                const struct block *block = &set->sheets[s]->blocks[i];
                if (facts_kind_of(block->key) == FACTS_PAGES)
                    continue;                  /* they are told of the pages, one by one */
                struct seen seen = {0};
                block_visit(block, test.arena, fact_check, &seen);
                if (seen.facts == 0 || seen.known == 0)
                    fail_msg("%s: the block %s has no facts", set->sheets[s]->id,
                             block_word(block->key));
                met[block->key] = true;
            }
    }
    for (enum block_key key = BLOCK_NONE + 1; key < BLOCK_COUNT; key++)
        if (!met[key] && facts_kind_of(key) != FACTS_BARE &&
            facts_kind_of(key) != FACTS_PAGES && key != BLOCK_LOCAL_RULES && key != BLOCK_ROWS &&
            key != BLOCK_FORM)
            fail_msg("no sheet of the fleet has the block %s", block_word(key));
}

static void blocks_stand_in_the_order_in_which_they_are_read(void **state)
{
    (void)state;
    case_boat(&test, "tests/fleet/boats/tamarisk.yaml");
    const struct sheet_set *set = case_compose(&test, false);
    for (size_t s = 0; s < set->count; s++)
        for (size_t i = 1; i < set->sheets[s]->block_count; i++)
            assert_true(set->sheets[s]->blocks[i - 1].key < set->sheets[s]->blocks[i].key);
}

static void every_block_has_a_word_of_its_own(void **state)
{
    (void)state;
    for (enum block_key a = BLOCK_NONE; a < BLOCK_COUNT; a++)
        for (enum block_key b = BLOCK_NONE; b < a; b++)
            assert_string_not_equal(block_word(a), block_word(b));
}

/* ---- kinds ---- */

static void a_kind_says_what_it_is_made_from_and_which_rules_hold(void **state)
{
    (void)state;
    assert_int_equal(sheet_source_of(SHEET_CARD), FROM_STEPS);
    assert_int_equal(sheet_source_of(SHEET_DISTRESS), FROM_RECORD_AND_WARNINGS);
    assert_int_equal(sheet_source_of(SHEET_SAFETY_PLAN), FROM_RECORD);
    assert_int_equal(page_rules_of(SHEET_CARD), RULES_NO_OTHERS);
    assert_int_equal(page_rules_of(SHEET_SAFETY_PLAN), RULES_ESCAPE_PLAN);
    assert_string_equal(sheet_kind_words[SHEET_SAFETY_PLAN - 1], "safety_plan");
    assert_null(sheet_kind_words[SHEET_KIND_COUNT - 1]);
}

static void each_kind_has_the_blocks_of_its_composer(void **state)
{
    (void)state;
    case_boat(&test, "tests/fleet/boats/tamarisk.yaml");
    const struct sheet_set *set = case_compose(&test, false);
    for (size_t s = 0; s < set->count; s++) {
        const struct sheet *sheet = set->sheets[s];
        assert_int_equal(sheet->kind, sheet->procedure->kind.value);
        assert_int_equal(sheet_block(sheet, BLOCK_STEPS) != NULL, sheet->kind == SHEET_CARD);
        assert_int_equal(sheet_block(sheet, BLOCK_NATURE) != NULL,
                         sheet->kind == SHEET_DISTRESS);
        assert_int_equal(sheet_block(sheet, BLOCK_LABELS) != NULL,
                         sheet->kind == SHEET_SAFETY_PLAN);
        assert_non_null(sheet_block(sheet, BLOCK_TITLE));
        assert_non_null(sheet_block(sheet, BLOCK_MARK));          /* all kinds are marked */
        assert_int_equal(strlen(sheet_footer(sheet)->code), 9);   /* and coded */
    }
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(a_sheet_without_blocks_says_nothing),
        TEST(a_block_is_found_by_its_key),
        TEST(every_block_of_the_fleet_has_facts),
        TEST(blocks_stand_in_the_order_in_which_they_are_read),
        TEST(every_block_has_a_word_of_its_own),
        TEST(a_kind_says_what_it_is_made_from_and_which_rules_hold),
        TEST(each_kind_has_the_blocks_of_its_composer),
    };
    return cmocka_run_group_tests(tests, NULL, NULL) != 0;
}
