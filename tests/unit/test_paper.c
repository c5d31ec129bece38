/* test_paper.c - the specimen fleet on every paper of the table and on papers that no table
 * has: what fits passes proofreading, what does not is held and told. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "faces_fixture.h"
#include "layout/template.h"
#include "proof.h"

/* Smaller than the papers of the table, with other margins; larger, and not punched; one that
 * hangs so high that it is read from farther off; and one that is held before the eyes. */
static const struct paper small = {"small", MM(200), MM(290), MM(11), MM(17), MM(9), MM(8), 500};
static const struct paper large = {"large", MM(240), MM(340), MM(10), MM(10), MM(10), 0, 500};
static const struct paper far = {"far", MM(297), MM(420), MM(12), MM(18), MM(10), MM(8), 700};
static const struct paper tall = {"tall", 612000, 1008000, MM(10), MM(16), MM(8), MM(8), 550};
static const struct paper near = {"near", MM(210), MM(297), MM(10), MM(10), MM(8), 0, 450};

static const char *const boats[] = {"tests/fleet/boats/tamarisk.yaml",
                                    "tests/fleet/boats/samphire.yaml",
                                    "tests/fleet/boats/bramble.yaml",
                                    "tests/islands/boats/thrift.yaml"};
#define BOAT_COUNT (sizeof boats / sizeof boats[0])

static struct laid_set laid_set;
static struct case_pages pages;

static void lay_out_on(const struct paper *paper, const char *boat)
{
    case_boat(&test, boat);
    struct layout_input input = {case_compose(&test, false), faces, paper, false};
    laid_set = layout_set(&input, test.arena, test.problems);
    pages = case_pages(&test, &laid_set);
}

/* ---- what is laid out ---- */

static bool starts(const char *text, const char *with)
{
    return strncmp(text, with, strlen(with)) == 0;
}

static bool lies_inside(struct area inner, struct area outer)
{
    const mpt slack = 10;
    return inner.x >= outer.x - slack && inner.y >= outer.y - slack &&
           inner.x + inner.width <= outer.x + outer.width + slack &&
           inner.y + inner.height <= outer.y + outer.height + slack;
}

static void stays_in_the_safe_area(const struct page *page)
{
    const struct page_needs needs = {.marked = false};
    struct area safe = frame_make(page->paper, TEMPLATE_CARD, &needs).safe;
    for (size_t i = 0; i < page->count; i++)
        if (!lies_inside(page->items[i].area, safe))
            fail_msg("%s on %s: an item of the block %s leaves the safe area", page->id,
                     page->paper->key, block_word(page->items[i].block));
}

static void passes(const struct page *page, const struct proof_report *report)
{
    for (size_t i = 0; i < report->count; i++) {
        const struct proof_finding *finding = &report->findings[i];
        if (proof_rule(finding->rule)->severity == PROOF_ERROR)
            fail_msg("%s on %s: %s: %s", page->id, page->paper->key,
                     proof_rule(finding->rule)->id, finding->measured);
    }
    assert_true(report->measured > 100);
}

/* A card that does not fit: some error says so, and by how much or for what there is no room. */
static void is_told(const struct sheet *card, const char *paper)
{
    size_t count;
    const struct problem *all = problems_sorted(test.problems, &count);
    for (size_t i = 0; i < count; i++)
        if (all[i].severity == SEVERITY_ERROR && starts(all[i].what, card->number) &&
            (strstr(all[i].what, " mm too long") != NULL || strstr(all[i].what, "no room")))
            return;
    fail_msg("%s on %s is held and nobody is told why", card->id, paper);
}

/* Gives 1 for whole: how many pages that takes hangs on the paper. */
static size_t sheet_is_whole_or_told(const struct laid_sheet *laid, const char *paper)
{
    for (size_t i = 0; i < laid->page_count; i++)
        if (laid->pages[i] == NULL) {
            is_told(laid->sheet, paper);
            return 0;
        }
    return 1;
}

/* Gives how many sheets were laid out whole. */
static size_t fleet_on(const struct paper *paper)
{
    size_t laid = 0;
    for (size_t b = 0; b < BOAT_COUNT; b++) {
        lay_out_on(paper, boats[b]);
        const struct proof_report *reports = proof_set(&laid_set, faces, test.arena);
        for (size_t i = 0; i < pages.count; i++) {
            if (pages.at[i] == NULL)
                continue;
            assert_ptr_equal(pages.at[i]->paper, paper);
            assert_int_equal(pages.at[i]->width, paper->width);
            assert_int_equal(pages.at[i]->height, paper->height);
            stays_in_the_safe_area(pages.at[i]);
            passes(pages.at[i], &reports[i]);
        }
        for (size_t i = 0; i < laid_set.count; i++)
            laid += sheet_is_whole_or_told(&laid_set.sheets[i], paper->key);
    }
    return laid;
}

static size_t cards_of_the_fleet(void)
{
    size_t count = 0;
    for (size_t b = 0; b < BOAT_COUNT; b++) {
        lay_out_on(paper_of(PAPER_A4), boats[b]);
        count += laid_set.count;
    }
    return count;
}

/* ---- papers ---- */

/* All of the fleet on A4, most of it on Letter; on other papers each card fits or is told. */
static void every_paper_of_the_table_carries_what_fits(void **state)
{
    (void)state;
    size_t all = cards_of_the_fleet();
    for (enum paper_key key = 0; key < PAPER_COUNT; key++) {
        size_t laid = fleet_on(paper_of(key));
        assert_true(key != PAPER_A4 || laid == all);
        assert_true(key != PAPER_LETTER || laid > all / 2);
    }
}

static void a_paper_that_no_table_has_carries_what_fits(void **state)
{
    (void)state;
    size_t on_small = fleet_on(&small), on_large = fleet_on(&large), on_far = fleet_on(&far);
    size_t on_near = fleet_on(&near), on_tall = fleet_on(&tall);
    assert_true(on_small > 0 && on_small < cards_of_the_fleet());
    assert_int_equal(on_large, cards_of_the_fleet());
    assert_true(on_far > 0);
    assert_true(on_tall > 0);
    assert_int_equal(on_near, cards_of_the_fleet());
}

/* ---- sizes by the reading distance ---- */

static mpt smallest_of(const struct page *page, enum page_role role)
{
    mpt least = 0;
    for (size_t i = 0; i < page->count; i++) {
        const struct page_item *item = &page->items[i];
        if (item->kind == PAGE_TEXT && item->role == role &&
            (least == 0 || item->run->size < least))
            least = item->run->size;
    }
    return least;
}

static const struct page *some_page_of_steps(void)
{
    for (size_t i = 0; i < pages.count; i++)
        if (pages.at[i] != NULL && sheet_steps(pages.at[i]->sheet)->count > 0)
            return pages.at[i];
    fail_msg("no card of steps fits");
    return NULL;
}

static void what_is_read_from_farther_off_is_larger(void **state)
{
    (void)state;
    lay_out_on(&far, boats[0]);
    const struct page *page = some_page_of_steps();
    assert_true(smallest_of(page, ROLE_ROW) >= 16800);
    assert_true(smallest_of(page, ROLE_HEADLINE) >= 22400);
    assert_true(smallest_of(page, ROLE_FOOTER) == 8000);
}

/* The same page, said to be read from where its words are too small. */
static void too_small_for_its_distance_is_found(void **state)
{
    (void)state;
    lay_out_on(paper_of(PAPER_A4), boats[0]);
    struct page page = *some_page_of_steps();
    struct proof_report report;
    page.paper = &far;
    proof_page(&page, faces, test.arena, &report);
    size_t found = 0;
    for (size_t i = 0; i < report.count; i++)
        found += report.findings[i].rule == RULE_SIZE_FLOOR ? 1 : 0;
    assert_true(found > 0);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(every_paper_of_the_table_carries_what_fits),
        cmocka_unit_test(a_paper_that_no_table_has_carries_what_fits),
        cmocka_unit_test(what_is_read_from_farther_off_is_larger),
        cmocka_unit_test(too_small_for_its_distance_is_found),
    };
    return cmocka_run_group_tests(tests, set_up, tear_down);
}
