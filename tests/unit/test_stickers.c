/* test_stickers.c - stickers: one a tag, each with the words of its rows and inside its own label,
 * on any labels that have room; and pages of cards shown small. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "compose.h"
#include "faces_fixture.h"
#include "layout.h"
#include "layout/views.h"
#include "proof.h"
#include "text.h"

#define GEAR \
    "  - {item: knife, tag: E10, zone: cockpit, side: port, how: on its string}\n" \
    "  - {item: fuel_shutoff_diesel, tag: C2, zone: cockpit_locker, side: port, " \
    "how: {shut: across pipe, open: along pipe}}\n" \
    "  - {item: seacock, tag: C1, name: sink drain, bore_mm: 25, zone: galley, side: port, " \
    "how: {shut: across}}\n" \
    "  - {item: horseshoe_buoy, tag: E8, zone: pushpit, side: port}\n"

static const struct sheet *stickers_of_boat(void)
{
    const struct compose_input input = case_input(&test, false);
    return stickers_compose(&input, test.arena, test.problems)->sheets[0];
}

static void each_tag_has_one_in_the_words_of_its_rows(void **state)
{
    (void)state;
    const struct stickers_facts *all = sheet_stickers(stickers_of_boat());
    static const char *const tags[] = {"C1", "C2", "E8", "E10"};
    size_t at = 0;
    for (size_t i = 0; i < all->count; i++)
        if (all->items[i].kind->item != ITEM_vhf_dsc)
            assert_string_equal(all->items[i].tag, tags[at++]);
    assert_int_equal(at, 4);
    for (size_t i = 0; i < all->count; i++) {
        const struct sticker *sticker = &all->items[i];
        if (text_equal(sticker->tag, "C2")) {
            assert_string_equal(sticker->name, "Fuel valve");
            assert_int_equal(sticker->state_count, 2);
            assert_string_equal(sticker->states[0], "across pipe: SHUT");
            assert_string_equal(sticker->states[1], "along pipe: OPEN");
        } else if (text_equal(sticker->tag, "C1")) {
            assert_int_equal(sticker->state_count, 1);
            assert_string_equal(sticker->states[0], "across: SHUT");
        } else if (text_equal(sticker->tag, "E10")) {
            assert_string_equal(sticker->states[0], "on its string");
        } else if (text_equal(sticker->tag, "E8")) {
            assert_int_equal(sticker->state_count, 0);
        }
    }
    assert_string_equal(case_problems_text(&test), "");
}

static struct laid_set laid_on(const struct paper *paper, const struct sheet *sheet)
{
    const struct sheet **list = arena_array(test.arena, 1, sizeof *list);
    struct sheet_set *set = arena_alloc(test.arena, sizeof *set);
    list[0] = sheet;
    *set = (struct sheet_set){.sheets = list, .count = 1};
    const struct layout_input input = {set, faces, paper, false};
    return layout_set(&input, test.arena, test.problems);
}

static const struct labels labels_tried[] = {
    {.width = MM(63), .height = MM(40), .left = -1, .top = -1},
    {.width = MM(90), .height = MM(50), .gap_across = MM(4), .gap_down = MM(2), .left = -1,
     .top = -1},
    {.width = MM(70), .height = MM(37), .left = 0, .top = 0},
    {.width = MM(180), .height = MM(100), .left = MM(12), .top = MM(20)}};

/* Every word and sign within some label, cut marks alone outside of all. */
static void items_are_in_labels(const struct page *page)
{
    const struct labels *labels = &page->paper->labels;
    for (size_t i = 0; i < page->count; i++) {
        const struct area *area = &page->items[i].area;
        if (page->items[i].part == PART_CUT)
            continue;
        mpt column = (area->x - labels->left) / (labels->width + labels->gap_across);
        mpt row = (area->y - labels->top) / (labels->height + labels->gap_down);
        assert_true(column >= 0 && (size_t)column < labels->across);
        assert_true(row >= 0 && (size_t)row < labels->down);
        assert_true(area->x + area->width <= labels->left + column * (labels->width +
                                             labels->gap_across) + labels->width);
        assert_true(area->y + area->height <= labels->top + row * (labels->height +
                                              labels->gap_down) + labels->height);
    }
}

static void each_stands_inside_its_label_and_passes_proofreading(void **state)
{
    (void)state;
    for (size_t i = 0; i < sizeof labels_tried / sizeof *labels_tried; i++) {
        struct paper paper = paper_of_labels(PAPER_A4, &labels_tried[i], PALETTE_COLOUR);
        struct laid_set laid = laid_on(&paper, stickers_of_boat());
        size_t each = paper.labels.across * paper.labels.down, stickers = 0;
        const struct proof_report *reports = proof_set(&laid, faces, test.arena);
        for (size_t p = 0; p < laid.sheets[0].page_count; p++) {
            const struct page *page = laid.sheets[0].pages[p];
            assert_non_null(page);
            items_are_in_labels(page);
            stickers += sheet_stickers(page->sheet)->count;
            assert_true(sheet_stickers(page->sheet)->count <= each);
            if (reports[p].errors > 0)
                fail_msg("labels %zu: %s: %s", i, proof_rule(reports[p].findings[0].rule)->id,
                         reports[p].findings[0].measured);
        }
        assert_int_equal(stickers, sheet_stickers(stickers_of_boat())->count);
    }
}

static void labels_are_counted_and_centred(void **state)
{
    (void)state;
    struct labels asked = labels_tried[0];
    struct paper paper = paper_of_labels(PAPER_A4, &asked, PALETTE_COLOUR);
    assert_int_equal(paper.labels.across, 3);
    assert_int_equal(paper.labels.down, 7);
    assert_int_equal(paper.labels.left, (paper.width - 3 * MM(63)) / 2);
    asked.width = MM(300);
    assert_int_equal(paper_of_labels(PAPER_A4, &asked, PALETTE_COLOUR).labels.across, 0);
    asked.width = 0;
    assert_int_equal(paper_of_labels(PAPER_A4, &asked, PALETTE_COLOUR).labels.across, 0);
}

static void what_has_no_room_is_told_by_its_tag(void **state)
{
    (void)state;
    const struct labels small = {.width = MM(63), .height = MM(22), .left = -1, .top = -1};
    struct paper paper = paper_of_labels(PAPER_A4, &small, PALETTE_COLOUR);
    assert_null(laid_on(&paper, stickers_of_boat()).sheets[0].pages[0]);
    assert_non_null(strstr(case_problems_text(&test), "the sticker of C2 is "));
    assert_non_null(strstr(case_problems_text(&test), "mm too tall for its label"));
}

/* ---- pages shown small ---- */

#define VIEWS_MOST 150

static void views_are_as_large_as_all_of_them_allow(void **state)
{
    (void)state;
    struct paper paper = *paper_of(PAPER_A4);
    const struct page shown = {.id = "shown", .width = MM(210), .height = MM(297)};
    struct form_view items[VIEWS_MOST];
    mpt before = MM(300);
    for (size_t i = 0; i < VIEWS_MOST; i++)
        items[i] = (struct form_view){&shown, "28", "0TJ8-GE2D"};
    for (size_t count = 1; count <= VIEWS_MOST; count++) {
        struct sheet sheet = *stickers_of_boat();
        struct views_facts *views = FACTS(test.arena, &sheet, views, BLOCK_VIEWS);
        *views = (struct views_facts){items, count};
        const struct pen pen = {.faces = faces, .arena = test.arena, .problems = test.problems,
                                .sheet = &sheet, .paper = &paper};
        const struct area area = {MM(10), MM(40), MM(190), MM(240)};
        struct laid_views laid;
        if (!views_lay(&pen, area, &laid)) {
            assert_true(count > 40);           /* what stands below a view must be read */
            return;
        }
        size_t rows = (count + laid.columns - 1) / laid.columns;
        assert_true(laid.width <= before);
        assert_true((mpt)laid.columns * laid.width <= area.width);
        assert_true((mpt)rows * laid.pitch <= area.height + MM(3));
        before = laid.width;
    }
    fail_msg("so many views have no room on a page");
}

static int stickers_set_up(void **state)
{
    set_up(state);
    case_boat(&test, case_boat_text(&test, CASE_RADIO, GEAR, "  - blankets\n"));
    return 0;
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, stickers_set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(each_tag_has_one_in_the_words_of_its_rows),
        TEST(each_stands_inside_its_label_and_passes_proofreading),
        TEST(labels_are_counted_and_centred),
        TEST(what_has_no_room_is_told_by_its_tag),
        TEST(views_are_as_large_as_all_of_them_allow),
    };
    return cmocka_run_group_tests(tests, NULL, NULL) != 0;
}
