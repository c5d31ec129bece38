/* test_page_facts.c - nothing stands on a page of the specimen fleet that is no fact of the
 * sheet as it has it, so that the check code covers all that is printed; and no frame of a
 * sign stands empty. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "faces_fixture.h"
#include "fact.h"
#include "layout.h"
#include "text.h"

static const char *const boats[] = {"tests/fleet/boats/tamarisk.yaml",
                                    "tests/fleet/boats/samphire.yaml",
                                    "tests/fleet/boats/bramble.yaml",
                                    "tests/islands/boats/thrift.yaml",
                                    "tests/islands/boats/sundew.yaml",
                                    "tests/islands/boats/eelgrass.yaml"};
#define BOAT_COUNT (sizeof boats / sizeof boats[0])

static void fact_gather(void *of, const struct fact *fact)
{
    text_add_format(of, " %s", fact->text);
}

#define PARTS " .,:;[]()/·–_"

/* Each word of a run must stand in a fact. */
static void words_must_be_facts(const struct page *page, const struct page_item *item,
                                const char *facts)
{
    for (const char *at = item->run->text; *(at += strspn(at, PARTS)) != '\0';) {
        const char *word = arena_copy(test.arena, at, strcspn(at, PARTS));
        if (strstr(facts, word) == NULL)
            fail_msg("%s: \"%s\" in the block %s is in no fact of the sheet", page->id, word,
                     block_word(item->block));
        at += strlen(word);
    }
}

static const char *facts_of(const struct sheet *sheet)
{
    struct text_builder facts = text_builder_in(test.arena);
    for (size_t i = 0; i < sheet->block_count; i++)
        block_visit(&sheet->blocks[i], test.arena, fact_gather, &facts);
    return facts.at;
}

static void page_must_be_facts(const struct page *page)
{
    const char *facts = facts_of(page->sheet);
    for (size_t i = 0; i < page->count; i++)
        if (page->items[i].kind == PAGE_TEXT)
            words_must_be_facts(page, &page->items[i], facts);
}

/* Only the legend shows bare frames: they tell what a class is. */
static void frames_must_have_signs(const struct page *page)
{
    for (size_t i = 0; i < page->count; i++) {
        const struct page_item *item = &page->items[i];
        if (item->kind == PAGE_SIGN && item->block != BLOCK_LEGEND && item->glyph == SYMBOL_NONE)
            fail_msg("%s: a frame without a sign", page->id);
    }
}

static void pages_of_boat(const char *boat, void (*judge)(const struct page *page))
{
    case_boat(&test, boat);
    struct layout_input input = {case_compose(&test, false), faces, paper_of(PAPER_A4), false};
    struct laid_set laid = layout_set(&input, test.arena, test.problems);
    assert_true(laid.count > 0);
    for (size_t s = 0; s < laid.count; s++)
        for (size_t p = 0; p < laid.sheets[s].page_count; p++)
            judge(laid.sheets[s].pages[p]);
}

static void a_page_says_nothing_but_the_facts_of_its_sheet(void **state)
{
    (void)state;
    for (size_t b = 0; b < BOAT_COUNT; b++)
        pages_of_boat(boats[b], page_must_be_facts);
}

static void no_frame_of_a_sign_stands_empty(void **state)
{
    (void)state;
    for (size_t b = 0; b < BOAT_COUNT; b++)
        pages_of_boat(boats[b], frames_must_have_signs);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(a_page_says_nothing_but_the_facts_of_its_sheet, set_up,
                                        tear_down),
        cmocka_unit_test_setup_teardown(no_frame_of_a_sign_stands_empty, set_up, tear_down),
    };
    return cmocka_run_group_tests(tests, NULL, NULL) != 0;
}
