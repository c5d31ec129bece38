/* test_layout.c - whole pages of the specimen fleet: everything on the paper,
 * nothing over anything else, nothing too small, and the same blocks at the same
 * place on every card. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "faces_fixture.h"
#include "draw.h"
#include "layout/layout_room.h"
#include "text.h"

static size_t page_count;

static const char *const boats[] = {"tests/fleet/boats/tamarisk.yaml",
                                    "tests/fleet/boats/samphire.yaml"};
#define BOAT_COUNT (sizeof boats / sizeof boats[0])

static const struct page *const *laid_out(const struct sheet_set *cards, bool draft)
{
    struct layout_input input = {cards, faces, paper_of(PAPER_A4), draft};
    struct laid_set laid = layout_set(&input, test.arena, test.problems);
    page_count = case_pages(&test, &laid).count;
    return case_pages(&test, &laid).at;
}

/* The pages of one boat of the fleet: all cards fit. */
static const struct page *const *pages_of(const char *boat)
{
    case_boat(&test, boat);
    const struct page *const *pages = laid_out(case_compose(&test, false), false);
    if (problems_reach(test.problems, SEVERITY_HELD))
        fail_msg("%s", case_problems_text(&test));
    for (size_t i = 0; i < page_count; i++)
        assert_non_null(pages[i]);
    return pages;
}

static const char *item_words(const struct page_item *item)
{
    return item->kind == PAGE_TEXT ? item->run->text : block_word(item->block);
}

static bool lies_in(struct area inner, struct area outer, mpt slack)
{
    return inner.x >= outer.x - slack && inner.y >= outer.y - slack &&
           inner.x + inner.width <= outer.x + outer.width + slack &&
           inner.y + inner.height <= outer.y + outer.height + slack;
}

/* Marks stand beside the hole, in the margin. */
static bool is_in_margin(const struct page_item *item)
{
    return item->block == BLOCK_MARK || item->block == BLOCK_UNAPPROVED;
}

/* Of words from the capitals' height to the base line: a line's bounds have room round them. */
static struct area letters_of(const struct page_item *item)
{
    struct area area = item->area;
    if (item->kind == PAGE_TEXT) {
        area.y = item->baseline - item->run->size * 7 / 10;
        area.height = item->baseline - area.y;
    }
    return area;
}

/* Letters alone count within the safe area. */
static void everything_lies_in_the_safe_area(void **state)
{
    (void)state;
    const struct page_needs needs = {.way = 0};
    struct area safe = frame_make(paper_of(PAPER_A4), TEMPLATE_CARD, &needs).safe;
    assert_in_range(safe.x, MM(10), MM(10));
    assert_in_range(safe.y, MM(16), MM(16));
    for (size_t b = 0; b < BOAT_COUNT; b++) {
        const struct page *const *pages = pages_of(boats[b]);
        for (size_t p = 0; p < page_count; p++) {
            assert_in_range(pages[p]->width, MM(210) - 10, MM(210) + 10);
            assert_in_range(pages[p]->height, MM(297) - 10, MM(297) + 10);
            for (size_t i = 0; i < pages[p]->count; i++)
                if (!lies_in(letters_of(&pages[p]->items[i]), safe, 10) &&
                    !is_in_margin(&pages[p]->items[i]))
                    fail_msg("%s: `%s` leaves the safe area", pages[p]->id,
                             item_words(&pages[p]->items[i]));
        }
    }
}

static bool overlap(struct area a, struct area b)
{
    return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height &&
           b.y < a.y + a.height;
}

static void no_text_lies_on_another(void **state)
{
    (void)state;
    for (size_t b = 0; b < BOAT_COUNT; b++) {
        const struct page *const *pages = pages_of(boats[b]);
        for (size_t p = 0; p < page_count; p++)
            for (size_t i = 0; i < pages[p]->count; i++)
                for (size_t j = 0; j < i; j++) {
                    const struct page_item *a = &pages[p]->items[i], *c = &pages[p]->items[j];
                    if (a->kind == PAGE_TEXT && c->kind == PAGE_TEXT && overlap(a->area, c->area))
                        fail_msg("%s: `%s` lies on `%s`", pages[p]->id, item_words(a),
                                 item_words(c));
                }
    }
}

/* A sign hides what lies under it, and is hidden by a text over it. */
static void no_sign_lies_on_a_text_or_another_sign(void **state)
{
    (void)state;
    for (size_t b = 0; b < BOAT_COUNT; b++) {
        const struct page *const *pages = pages_of(boats[b]);
        for (size_t p = 0; p < page_count; p++)
            for (size_t i = 0; i < pages[p]->count; i++)
                for (size_t j = 0; j < pages[p]->count; j++) {
                    const struct page_item *sign = &pages[p]->items[i];
                    const struct page_item *other = &pages[p]->items[j];
                    if (sign->kind == PAGE_SIGN && i != j &&
                        (other->kind == PAGE_TEXT || other->kind == PAGE_SIGN) &&
                        overlap(sign->area, other->area))
                        fail_msg("%s: a sign lies on `%s`", pages[p]->id, item_words(other));
                }
    }
}

/* Places are a point larger than names of gear; what is said is larger on a page of its own. */
static mpt aim_of(const struct page *page, enum page_role role)
{
    bool is_front = page->sheet->kind != SHEET_DISTRESS && text_equal(page->id, page->sheet->id);
    if (role == ROLE_SCRIPT && !is_front)
        return spoken_size_rule(page->paper).aim;
    return size_rule(page->paper, role).aim + (role == ROLE_ROW ? MPT_PER_POINT : 0);
}

static void no_size_is_below_its_floor(void **state)
{
    (void)state;
    for (size_t b = 0; b < BOAT_COUNT; b++) {
        const struct page *const *pages = pages_of(boats[b]);
        for (size_t p = 0; p < page_count; p++)
            for (size_t i = 0; i < pages[p]->count; i++) {
                const struct page_item *item = &pages[p]->items[i];
                if (item->kind == PAGE_SIGN)
                    assert_true(item->area.width >= MM(7) && item->area.height >= MM(7));
                if (item->kind != PAGE_TEXT || item->role == ROLE_NUMBER)
                    continue;
                if (item->run->size < size_rule(pages[p]->paper, item->role).floor ||
                    item->run->size > aim_of(pages[p], item->role))
                    fail_msg("%s: `%s` is set in %d mpt", pages[p]->id, item_words(item),
                             (int)item->run->size);
            }
    }
}

/* ---- the same blocks at the same place ---- */

/* The first box of a block on a page. */
static const struct page_item *box_of(const struct page *page, enum block_key block)
{
    for (size_t i = 0; i < page->count; i++)
        if (page->items[i].kind == PAGE_BOX && page->items[i].block == block)
            return &page->items[i];
    fail_msg("%s has no block %s", page->id, block_word(block));
    return NULL;
}

/* The frame of the call panel: the box of its block that is only stroked. */
static const struct page_item *panel_of(const struct page *page)
{
    for (size_t i = 0; i < page->count; i++)
        if (page->items[i].kind == PAGE_BOX && page->items[i].block == BLOCK_CALL &&
            page->items[i].fill == INK_NONE)
            return &page->items[i];
    fail_msg("%s has no call panel", page->id);
    return NULL;
}

/* A panel grows from the foot of the page. */
static void same_foot(const struct page *page, const struct page_item *a,
                      const struct page_item *b)
{
    if (a->area.x != b->area.x || a->area.width != b->area.width ||
        a->area.y + a->area.height != b->area.y + b->area.height)
        fail_msg("%s: the block %s stands elsewhere", page->id, block_word(a->block));
}

static void same_area(const struct page *page, const struct page_item *a,
                      const struct page_item *b)
{
    if (memcmp(&a->area, &b->area, sizeof a->area) != 0)
        fail_msg("%s: the block %s stands elsewhere", page->id, block_word(a->block));
}

/* The first page whose sheet has the block; not all kinds of sheet have each. */
static const struct page *page_with(const struct page *const *pages, enum block_key block)
{
    for (size_t p = 0; p < page_count; p++)
        if (sheet_block(pages[p]->sheet, block) != NULL)
            return pages[p];
    fail_msg("no page has the block %s", block_word(block));
    return NULL;
}

/* The first card like this one in whether lines for a berth and an anchorage push down what
 * stands below them. */
static const struct page *page_alike(const struct page *const *pages, const struct page *page)
{
    for (size_t p = 0; p < page_count; p++)
        if (sheet_block(pages[p]->sheet, BLOCK_CALL_LINE) != NULL &&
            (sheet_block(pages[p]->sheet, BLOCK_BERTH) == NULL) ==
                (sheet_block(page->sheet, BLOCK_BERTH) == NULL))
            return pages[p];
    return page;
}

static void the_same_blocks_stand_at_the_same_place(void **state)
{
    (void)state;
    static const enum block_key blocks[] = {BLOCK_MARK, BLOCK_TITLE};
    for (size_t b = 0; b < BOAT_COUNT; b++) {
        const struct page *const *pages = pages_of(boats[b]);
        size_t distress = 0, safety = 0;
        for (size_t p = 0; p < page_count; p++) {
            const struct sheet *sheet = pages[p]->sheet;
            distress += sheet->kind == SHEET_DISTRESS ? 1 : 0;
            safety += sheet->kind == SHEET_SAFETY_PLAN ? 1 : 0;
            for (size_t i = 0; i < sizeof blocks / sizeof blocks[0]; i++)
                if (sheet_block(sheet, blocks[i]) != NULL)
                    same_area(pages[p], box_of(pages[p], blocks[i]),
                              box_of(page_with(pages, blocks[i]), blocks[i]));
            if (sheet_block(sheet, BLOCK_CALL_LINE) != NULL)
                same_area(pages[p], box_of(pages[p], BLOCK_CALL_LINE),
                          box_of(page_alike(pages, pages[p]), BLOCK_CALL_LINE));
            if (sheet_block(sheet, BLOCK_CALL) != NULL && sheet_steps(sheet)->count > 0)
                same_foot(pages[p], panel_of(pages[p]), panel_of(page_with(pages, BLOCK_STEPS)));
        }
        assert_int_equal(distress, 4);                 /* they are among those compared */
        assert_true(safety >= 2);
    }
}

/* The footer's lines on all pages, and the size that a card's call is set in. */
static void what_is_read_on_every_card_is_set_alike(void **state)
{
    (void)state;
    for (size_t b = 0; b < BOAT_COUNT; b++) {
        const struct page *const *pages = pages_of(boats[b]);
        mpt footer = 0;
        for (size_t p = 0; p < page_count; p++) {
            bool steps = sheet_steps(pages[p]->sheet)->count > 0;
            mpt script_size = 0;
            for (size_t i = 0; i < pages[p]->count; i++) {
                const struct page_item *item = &pages[p]->items[i];
                if (item->kind != PAGE_TEXT)
                    continue;
                if (steps && item->block == BLOCK_CALL && item->role == ROLE_SCRIPT) {
                    assert_true(script_size == 0 || item->run->size == script_size);
                    script_size = item->run->size;
                }
                if (text_equal(item->run->text, words_get(test.words, WORD_DEFER))) {
                    footer = footer == 0 ? item->baseline : footer;
                    assert_int_equal(item->baseline, footer);
                }
            }
        }
        assert_true(footer > 0);
    }
}

/* ---- nothing is dropped ---- */

/* Every text of the page, in order, parted by line breaks. */
static const char *page_words(const struct page *page)
{
    struct text_builder out = text_builder_in(test.arena);
    for (size_t i = 0; i < page->count; i++)
        if (page->items[i].kind == PAGE_TEXT)
            text_add_format(&out, "%s\n", page->items[i].run->text);
    return out.at;
}

static void must_say(const struct page *page, const char *words)
{
    if (strstr(page_words(page), words) == NULL)
        fail_msg("%s does not say `%s`", page->id, words);
}

static void rows_must_stand(const struct page *page, const struct card_row *rows, size_t count)
{
    for (size_t r = 0; r < count; r++) {
        must_say(page, rows[r].place);
        must_say(page, rows[r].spot);
        for (size_t i = 0; i < rows[r].item_count; i++) {
            must_say(page, rows[r].items[i].name);
            must_say(page, rows[r].items[i].spot);
        }
    }
}

static void every_row_opening_and_tag_is_on_its_page(void **state)
{
    (void)state;
    for (size_t b = 0; b < BOAT_COUNT; b++) {
        const struct page *const *pages = pages_of(boats[b]);
        for (size_t p = 0; p < page_count; p++) {
            const struct sheet *card = pages[p]->sheet;
            must_say(pages[p], sheet_title(card)->number);
            must_say(pages[p], sheet_footer(card)->code);
            must_say(pages[p], sheet_text(card, BLOCK_MARK)->text);
            for (size_t s = 0; s < sheet_steps(card)->count; s++) {
                const struct card_step *step = &sheet_steps(card)->items[s];
                must_say(pages[p], text_format(test.arena, "%d\n", step->number));
                rows_must_stand(pages[p], step->rows, step->row_count);
                for (size_t g = 0; g < step->table_count; g++)
                    rows_must_stand(pages[p], step->table[g].rows, step->table[g].row_count);
            }
            bool by_rows = card->kind != SHEET_CARD; /* test_safety_page */
            for (size_t m = 0; m < sheet_plan(card)->marker_count && !by_rows; m++)
                must_say(pages[p],
                         text_format(test.arena, "%s\n", sheet_plan(card)->markers[m].tag));
        }
    }
}

static void the_same_set_gives_the_same_items(void **state)
{
    (void)state;
    for (size_t b = 0; b < BOAT_COUNT; b++) {
        const struct page *const *first = pages_of(boats[b]), *const *second = pages_of(boats[b]);
        for (size_t p = 0; p < page_count; p++) {
            struct text_builder old = text_builder_in(test.arena);
            struct text_builder new = text_builder_in(old.arena);
            page_dump(first[p], &old);
            page_dump(second[p], &new);
            assert_string_equal(old.at, new.at);
        }
    }
}

/* ---- what does not fit ---- */

static void a_held_card_has_no_page_unless_it_is_a_draft(void **state)
{
    (void)state;
    case_boat(&test, boats[0]);
    const struct sheet_set *whole = case_compose(&test, false);
    struct sheet held = *case_card(whole, "gas_leak");
    const struct sheet *const cards[] = {&held, case_card(whole, "flooding")};
    struct sheet_set two = {.sheets = cards, .count = 2};
    held.held = true;
    const struct page *const *pages = laid_out(&two, false);
    assert_null(pages[0]);
    assert_non_null(pages[1]);
    pages = laid_out(&two, true);
    assert_non_null(pages[0]);
}

/* The distress card shares the call panel with the others: where they are held
 * back and would let it grow, it still fits. */
static void the_distress_card_fits_without_the_others(void **state)
{
    (void)state;
    for (size_t b = 0; b < BOAT_COUNT; b++) {
        case_boat(&test, boats[b]);
        const struct sheet *const cards[] = {
            case_card(case_compose(&test, false), "distress_call")};
        const struct page *const *pages =
            laid_out(&(struct sheet_set){.sheets = cards, .count = 1}, false);
        if (pages[0] == NULL)
            fail_msg("%s", case_problems_text(&test));
    }
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(everything_lies_in_the_safe_area),
        TEST(no_text_lies_on_another),
        TEST(no_sign_lies_on_a_text_or_another_sign),
        TEST(no_size_is_below_its_floor),
        TEST(the_same_blocks_stand_at_the_same_place),
        TEST(what_is_read_on_every_card_is_set_alike),
        TEST(every_row_opening_and_tag_is_on_its_page),
        TEST(the_same_set_gives_the_same_items),
        TEST(a_held_card_has_no_page_unless_it_is_a_draft),
        TEST(the_distress_card_fits_without_the_others),
    };
    int failed = cmocka_run_group_tests(tests, NULL, NULL);
    return failed != 0;
}
