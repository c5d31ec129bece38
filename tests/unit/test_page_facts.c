/* test_page_facts.c - nothing stands on a page of the specimen fleet that is no fact of the
 * sheet as it has it, so that the check code covers all that is printed. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "faces_fixture.h"
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

static void page_must_be_facts(const struct page *page, const char *facts)
{
    for (size_t i = 0; i < page->count; i++)
        if (page->items[i].kind == PAGE_TEXT)
            words_must_be_facts(page, &page->items[i], facts);
}

static void a_page_says_nothing_but_the_facts_of_its_sheet(void **state)
{
    (void)state;
    for (size_t b = 0; b < BOAT_COUNT; b++) {
        case_boat(&test, boats[b]);
        struct layout_input input = {case_compose(&test, false), faces, paper_of(PAPER_A4), false};
        struct laid_set laid = layout_set(&input, test.arena, test.problems);
        for (size_t s = 0; s < laid.count; s++)
            for (size_t p = 0; p < laid.sheets[s].page_count; p++) {
                const struct page *page = laid.sheets[s].pages[p];
                page_must_be_facts(page, facts_of(page->sheet));
            }
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(a_page_says_nothing_but_the_facts_of_its_sheet, set_up,
                                        tear_down),
    };
    return cmocka_run_group_tests(tests, NULL, NULL) != 0;
}
