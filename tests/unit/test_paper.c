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
#include "odd_papers.h"
#include "proof.h"

static const char *const boats[] = {"tests/fleet/boats/tamarisk.yaml",
                                    "tests/fleet/boats/samphire.yaml",
                                    "tests/fleet/boats/bramble.yaml",
                                    "tests/islands/boats/thrift.yaml"};
#define BOAT_COUNT (sizeof boats / sizeof boats[0])
#define BOAT_ARENA ((size_t)512 * 1024 * 1024)

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

/* What stands beside the hole, in the margin at the head. */
static bool is_of_the_strip(const struct page_item *item)
{
    return item->block == BLOCK_MARK || item->block == BLOCK_UNAPPROVED;
}

/* The bounds of a line have room above and below its letters. */
static struct area letters_of_item(const struct page_item *item)
{
    struct area area = item->area;
    if (item->kind == PAGE_TEXT)
        area.height = item->baseline - area.y;
    return area;
}

static void stays_in_the_safe_area(const struct page *page)
{
    const struct page_needs needs = {.way = 0};
    struct area safe = frame_make(page->paper, TEMPLATE_CARD, &needs).safe;
    for (size_t i = 0; i < page->count; i++)
        if (!is_of_the_strip(&page->items[i]) &&
            !lies_inside(letters_of_item(&page->items[i]), safe))
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
static size_t sheets_pass(const struct paper *paper)
{
    const struct proof_report *reports = proof_set(&laid_set, faces, test.arena);
    size_t laid = 0;
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
    return laid;
}

static size_t sheets_count(const struct paper *paper)
{
    (void)paper;
    return laid_set.count;
}

/* Each boat in memory of its own: all of them on many papers would not have room together. */
static size_t of_the_fleet(const struct paper *paper, size_t (*counted)(const struct paper *))
{
    const struct card_case outer = test;
    size_t count = 0;
    for (size_t b = 0; b < BOAT_COUNT; b++) {
        test.arena = arena_new(BOAT_ARENA);
        test.problems = problems_new(test.arena);
        lay_out_on(paper, boats[b]);
        count += counted(paper);
        arena_free(test.arena);
        test = outer;
    }
    return count;
}

static size_t fleet_on(const struct paper *paper)
{
    return of_the_fleet(paper, sheets_pass);
}

static size_t cards_of_the_fleet(void)
{
    return of_the_fleet(paper_of(PAPER_A4), sheets_count);
}

/* ---- papers ---- */

/* All of the fleet on A4, most of it on Letter; on other papers each card fits or is told. */
static void every_paper_of_the_table_carries_what_fits(void **state)
{
    (void)state;
    size_t all = cards_of_the_fleet();
    for (enum paper_key key = PAPER_NONE + 1; key < PAPER_COUNT; key++) {
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

/* ---- two sides ---- */

static const struct laid_sheet *laid_of(const char *id)
{
    for (size_t i = 0; i < laid_set.count; i++)
        if (strcmp(laid_set.sheets[i].sheet->id, id) == 0)
            return &laid_set.sheets[i];
    fail_msg("there is no card %s", id);
    return NULL;
}

static bool ends(const char *text, const char *with)
{
    size_t length = strlen(text), tail = strlen(with);
    return length >= tail && strcmp(text + length - tail, with) == 0;
}

/* Steps on the front, all that helps on the back; the words of the call there or on a page of
 * their own; nothing of the card on none. */
static void a_leaf_has_the_whole_card(const struct laid_sheet *laid)
{
    const struct sheet *front = laid->pages[0]->sheet, *back = laid->pages[1]->sheet;
    const struct sheet *call = laid->pages[laid->page_count - 1]->sheet;
    assert_true(laid->page_count == 2 || laid->page_count == 3);
    assert_true(ends(sheet_title(front)->number, " front"));
    assert_true(ends(sheet_title(back)->number, " back"));
    assert_true(sheet_steps(front)->count == sheet_steps(laid->sheet)->count);
    assert_null(sheet_block(front, BLOCK_NEVER));
    assert_true(sheet_warnings(back, BLOCK_NEVER)->count ==
                sheet_warnings(laid->sheet, BLOCK_NEVER)->count);
    assert_non_null(sheet_block(back, BLOCK_PLAN));
    assert_true((sheet_block(call, BLOCK_CALL) != NULL) ==
                (sheet_block(laid->sheet, BLOCK_CALL) != NULL));
    assert_true((sheet_block(call, BLOCK_CONTACT) != NULL) ==
                (sheet_block(laid->sheet, BLOCK_CONTACT) != NULL));
}

static void a_card_of_a5_has_two_sides(void **state)
{
    (void)state;
    size_t leaves = 0;
    for (size_t b = 0; b < BOAT_COUNT; b++) {
        lay_out_on(paper_of(PAPER_A5), boats[b]);
        for (size_t i = 0; i < laid_set.count; i++) {
            const struct laid_sheet *laid = &laid_set.sheets[i];
            if (laid->pages[0] == NULL || sheet_steps(laid->sheet)->count == 0)
                continue;
            a_leaf_has_the_whole_card(laid);
            leaves++;
        }
    }
    assert_true(leaves > 25);    /* the others have more steps than A5 has room for, and are told */
}

static bool has_locator(const struct page *page)
{
    for (size_t i = 0; i < page->count; i++)
        if (page->items[i].kind == PAGE_PATH && page->items[i].block == BLOCK_STEPS)
            return true;
    return false;
}

/* Where things are is told on the front too, though the plan is on the back. */
static void rows_on_a_front_have_locators(void **state)
{
    (void)state;
    lay_out_on(paper_of(PAPER_A5), boats[0]);
    assert_true(has_locator(laid_of("galley_fire")->pages[0]));
}

/* The words of a tag may stand on another page of its card, but not on none. */
static void a_tag_of_the_back_is_looked_for_on_the_front(void **state)
{
    (void)state;
    struct proof_report report;
    size_t found = 0;
    lay_out_on(paper_of(PAPER_A5), boats[0]);
    proof_page(laid_of("galley_fire")->pages[1], faces, test.arena, &report);
    for (size_t i = 0; i < report.count; i++)
        found += report.findings[i].rule == RULE_MARKERS_ROWS ? 1 : 0;
    assert_true(found > 0);
}

static void a_front_without_its_back_is_not_made(void **state)
{
    (void)state;
    struct paper low = *paper_of(PAPER_A5);
    size_t held = 0;
    low.height -= MM(30);
    lay_out_on(&low, boats[0]);
    for (size_t i = 0; i < laid_set.count; i++) {
        const struct laid_sheet *laid = &laid_set.sheets[i];
        for (size_t p = 1; p < laid->page_count && sheet_steps(laid->sheet)->count > 0; p++)
            assert_true((laid->pages[p] == NULL) == (laid->pages[0] == NULL));
        held += laid->pages[0] == NULL ? 1 : 0;
    }
    assert_true(held > 0);
}

/* Only the words of the call stand behind; all else is on the front, which tells where they are.
 * What those ashore say is left out where it has no room. */
static void the_call_alone_is_behind(const struct laid_sheet *laid)
{
    const struct sheet *front = laid->pages[0]->sheet, *back = laid->pages[1]->sheet;
    const struct cases_facts *cases = sheet_cases(front);
    assert_int_equal(laid->page_count, 2);
    assert_true(ends(sheet_title(front)->number, " front"));
    assert_true(ends(sheet_title(back)->number, " back"));
    assert_null(sheet_block(front, BLOCK_CALL));
    assert_non_null(sheet_block(back, BLOCK_CALL));
    assert_int_equal(sheet_steps(back)->count, 0);
    for (size_t i = 0; i < laid->sheet->block_count; i++) {
        enum block_key key = laid->sheet->blocks[i].key;
        if (key != BLOCK_CALL && key != BLOCK_CONTACT && key != BLOCK_BERTH_SAY &&
            sheet_block(front, key) == NULL)
            fail_msg("%s: the block %s is behind", laid->sheet->id, block_word(key));
    }
    assert_true(cases->count == 0 ||
                ends(cases->items[cases->count - 1].text, "**Words: back.**"));
}

/* On paper that is too low for all of them; a card that has room on one side stays on it. */
static void a_card_without_room_has_its_call_behind(void **state)
{
    (void)state;
    size_t behind = 0, alone = 0;
    lay_out_on(paper_of(PAPER_LETTER), boats[1]);
    for (size_t i = 0; i < laid_set.count; i++) {
        const struct laid_sheet *laid = &laid_set.sheets[i];
        if (laid->pages[0] == NULL || sheet_block(laid->sheet, BLOCK_CALL) == NULL ||
            sheet_steps(laid->sheet)->count == 0)
            continue;
        if (laid->page_count > 1)
            the_call_alone_is_behind(laid);
        *(laid->page_count > 1 ? &behind : &alone) += 1;
    }
    assert_true(behind > 3 && alone > 3);
    struct problems *notes = problems_new(test.arena);
    room_notes(&laid_set, test.arena, notes);
    assert_true(problems_count(notes, SEVERITY_NOTE) > 0);
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
        cmocka_unit_test(a_card_of_a5_has_two_sides),
        cmocka_unit_test(rows_on_a_front_have_locators),
        cmocka_unit_test(a_tag_of_the_back_is_looked_for_on_the_front),
        cmocka_unit_test(a_front_without_its_back_is_not_made),
        cmocka_unit_test(a_card_without_room_has_its_call_behind),
        cmocka_unit_test(what_is_read_from_farther_off_is_larger),
        cmocka_unit_test(too_small_for_its_distance_is_found),
    };
    return cmocka_run_group_tests(tests, set_up, tear_down);
}
