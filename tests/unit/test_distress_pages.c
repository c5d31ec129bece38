/* test_distress_pages.c - a distress call over its pages: every block on one of them, the call
 * first and largest, and long names that take smaller type or move, but are never refused. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "faces_fixture.h"
#include "layout/pages.h"
#include "text.h"

static const char *const boats[] = {
    "tests/fleet/boats/tamarisk.yaml", "tests/fleet/boats/samphire.yaml",
    "tests/fleet/boats/bramble.yaml", "tests/islands/boats/eelgrass.yaml",
    "tests/unusual/boats/skua.yaml"};
#define BOAT_COUNT (sizeof boats / sizeof *boats)

#define LONG_NAME "Wandering Albatross of the Far Sea"       /* 34 letters */

static struct laid_sheet laid;

/* The distress card of the case's boat, by itself, with all its pages. */
static void lay_out_on(enum paper_key paper)
{
    const struct sheet *card = case_card(case_compose(&test, false), "distress_call");
    const struct sheet **one = arena_array(test.arena, 1, sizeof *one);
    struct sheet_set *set = arena_alloc(test.arena, sizeof *set);
    one[0] = card;
    *set = (struct sheet_set){.sheets = one, .count = 1};
    struct layout_input input = {.set = set, .faces = faces, .paper = paper_of(paper)};
    laid = layout_set(&input, test.arena, test.problems).sheets[0];
    for (size_t p = 0; p < laid.page_count; p++)
        if (card->held || laid.pages[p] == NULL)
            fail_msg("%s", case_problems_text(&test));
}

static void lay_out(void)
{
    lay_out_on(PAPER_A4);
}

static void lay_out_boat(const char *boat)
{
    case_boat(&test, boat);
    lay_out();
}

/* A boat of that name, her radio, and what else she has of what is called with. */
static const char *boat_named(const char *name, const char *more)
{
    return text_format(test.arena,
                       "boat: {name: %s, specimen: yes, hull: monohull, rig: sail, loa_m: 12, "
                       "beam_m: 4, persons_max: 8, looks: White sailing yacht}\n%s%sequipment:\n"
                       "  - {item: vhf_handheld, tag: E4, zone: companionway, side: port, "
                       "from_cockpit: yes}\n"
                       "  - {item: epirb, tag: E3, zone: companionway, side: starboard, "
                       "from_cockpit: yes}\n", name, CASE_RADIO, more);
}

/* ---- which page ---- */

static size_t pages_with(enum block_key key)
{
    size_t count = 0;
    for (size_t p = 0; p < laid.page_count; p++)
        count += sheet_block(laid.pages[p]->sheet, key) != NULL ? 1 : 0;
    return count;
}

static bool is_placed(const struct page *page, enum block_key key)
{
    for (size_t i = 0; i < page->count; i++)
        if (page->items[i].kind == PAGE_TEXT && page->items[i].block == key)
            return true;
    return false;
}

/* What is titled, what is warned of and the call itself. */
static bool is_of_one_page(enum block_key key)
{
    enum facts_kind facts = facts_kind_of(key);
    return facts == FACTS_SECTION || facts == FACTS_WARNINGS || facts == FACTS_CALL;
}

static void assert_each_block_once(void)
{
    for (size_t i = 0; i < laid.sheet->block_count; i++) {
        enum block_key key = laid.sheet->blocks[i].key;
        size_t placed = 0;
        for (size_t p = 0; p < laid.page_count; p++)
            placed += is_placed(laid.pages[p], key) ? 1 : 0;
        if (is_of_one_page(key) && (pages_with(key) != 1 || placed != 1))
            fail_msg("%s: %s stands on %zu pages", laid.sheet->boat->facts.name.text,
                     block_word(key), placed);
    }
}

static void each_block_stands_on_one_page(void **state)
{
    (void)state;
    for (size_t b = 0; b < BOAT_COUNT; b++) {
        lay_out_boat(boats[b]);
        assert_int_equal(laid.page_count, 4);
        assert_int_equal(laid.yielded_count, 0);
        assert_each_block_once();
        assert_int_equal(pages_with(BLOCK_CONTACT), 4);
    }
}

static void each_page_says_which_it_is(void **state)
{
    (void)state;
    static const enum word titles[] = {WORD_URGENCY_TITLE, WORD_RELAY_TITLE, WORD_CANCEL_TITLE};
    lay_out_boat(boats[0]);
    const struct sheet *first = laid.pages[0]->sheet;
    assert_string_equal(sheet_title(first)->number, "Card 2A");
    assert_string_equal(sheet_title(first)->title, sheet_title(laid.sheet)->title);
    assert_non_null(strstr(sheet_cases(first)->items[1].text, "card 2B"));
    assert_non_null(strstr(sheet_cases(first)->items[2].text, "card 2C"));
    for (size_t p = 1; p < 4; p++) {
        const struct sheet *page = laid.pages[p]->sheet;
        assert_string_equal(sheet_title(page)->number,
                            text_format(test.arena, "Card 2%c", (int)('A' + p)));
        assert_string_equal(sheet_title(page)->title,
                            text_upper(test.arena, words_get(test.words, titles[p - 1])));
        assert_non_null(strstr(sheet_cases(page)->items[0].text, "card 2A"));
    }
    assert_string_equal(sheet_signs(laid.pages[3]->sheet)->signs,
                        words_get(test.words, WORD_CANCEL_WHEN));
    assert_string_equal(laid.pages[1]->id, "distress_call_2");
}

/* The number behind "card " in the case of that index of the first page's call line. */
static const struct sheet *page_named(size_t index)
{
    const char *said = strstr(sheet_cases(laid.pages[0]->sheet)->items[index].text, "card 2");
    assert_non_null(said);
    size_t page = (size_t)(said[strlen("card 2")] - 'A');
    assert_true(page < laid.page_count);
    return laid.pages[page]->sheet;
}

/* On leaves of two sides the call has the first alone; what is urgent is where its first page
 * says, however many come between. */
static void on_small_paper_there_are_more_pages(void **state)
{
    (void)state;
    for (size_t b = 0; b < BOAT_COUNT; b++) {
        case_boat(&test, boats[b]);
        lay_out_on(PAPER_A5);
        assert_in_range(laid.page_count, 6, 9);
        assert_each_block_once();
        assert_true(is_placed(laid.pages[0], BLOCK_CALL));
        assert_true(is_placed(laid.pages[1], BLOCK_NATURE));
        assert_non_null(sheet_block(page_named(1), BLOCK_PAN_PAN));
        assert_non_null(sheet_block(page_named(2), BLOCK_ASKED));
    }
}

/* Without a radio nobody answers or relays; but a beacon goes off by mistake all the same. */
static void without_a_radio_there_is_one_page(void **state)
{
    (void)state;
    case_boat(&test, case_boat_text(&test, "radio: {call_sign: none}\n",
                                    "  - {item: epirb, tag: E3, zone: cockpit}\n",
                                    "  - vhf_dsc\n  - vhf_handheld\n  - flares\n"));
    lay_out();
    assert_int_equal(laid.page_count, 1);
    assert_string_equal(sheet_title(laid.pages[0]->sheet)->number, "Card 2");
    assert_true(is_placed(laid.pages[0], BLOCK_BEACON));
    assert_each_block_once();
    lay_out_on(PAPER_A5);
    assert_int_equal(pages_with(BLOCK_BEACON), 1);
    assert_each_block_once();
}

/* ---- the call first ---- */

static mpt top_of(const struct page *page, enum block_key key)
{
    mpt top = page->height;
    for (size_t i = 0; i < page->count; i++)
        if (page->items[i].block == key && page->items[i].area.y < top)
            top = page->items[i].area.y;
    return top;
}

static void the_call_stands_above_all_that_helps_to_send_it(void **state)
{
    (void)state;
    static const enum block_key below[] = {BLOCK_NATURE, BLOCK_NO_ANSWER, BLOCK_POSITION,
                                           BLOCK_CAUTIONS, BLOCK_CONTACT};
    for (size_t b = 0; b < BOAT_COUNT; b++) {
        lay_out_boat(boats[b]);
        const struct page *page = laid.pages[0];
        mpt call = top_of(page, BLOCK_CALL), natures = top_of(page, BLOCK_NATURE);
        assert_true(call > top_of(page, BLOCK_CALL_LINE));
        for (size_t i = 0; i < sizeof below / sizeof *below; i++)
            if (is_placed(page, below[i]))
                assert_true(top_of(page, below[i]) > call &&
                            top_of(page, below[i]) >= natures);
    }
}

/* The block of the first words that are read, behind head and bar. */
static enum block_key read_first(const struct page *page)
{
    enum block_key first = BLOCK_NONE;
    size_t least = SIZE_MAX;
    for (size_t i = 0; i < page->count; i++) {
        const struct page_item *item = &page->items[i];
        if (item->kind == PAGE_TEXT && item->reading > 0 && item->block > BLOCK_CALL_LINE &&
            item->reading < least) {
            least = item->reading;
            first = item->block;
        }
    }
    return first;
}

static void the_call_is_read_before_the_cautions(void **state)
{
    (void)state;
    lay_out_boat(boats[0]);
    assert_true(is_placed(laid.pages[0], BLOCK_CAUTIONS));
    assert_int_equal(read_first(laid.pages[0]), BLOCK_CALL);
    assert_int_equal(read_first(laid.pages[1]), BLOCK_PAN_PAN);
    assert_int_equal(read_first(laid.pages[2]), BLOCK_ASKED);
}

/* What is said: the largest words of the block but the title. */
static mpt size_in(const struct page *page, enum block_key key)
{
    mpt size = 0;
    for (size_t i = 0; i < page->count; i++) {
        const struct page_item *item = &page->items[i];
        if (item->kind == PAGE_TEXT && item->block == key && item->role == ROLE_SCRIPT &&
            item->run->size > size)
            size = item->run->size;
    }
    return size;
}

static void what_is_said_is_large_and_nothing_below_it_is_larger(void **state)
{
    (void)state;
    for (size_t b = 0; b < BOAT_COUNT; b++) {
        lay_out_boat(boats[b]);
        mpt said = size_in(laid.pages[0], BLOCK_CALL);
        assert_in_range(said, 16000, 18000);
        assert_in_range(size_in(laid.pages[0], BLOCK_NATURE), 12000, said);
        assert_in_range(size_in(laid.pages[1], BLOCK_PAN_PAN), 14000, 18000);
        assert_in_range(size_in(laid.pages[2], BLOCK_RELAY), 12000, 18000);
        assert_in_range(size_in(laid.pages[3], BLOCK_DOWNGRADE), 14000, 18000);
    }
}

static void what_is_done_first_is_numbered_in_discs(void **state)
{
    (void)state;
    size_t discs = 0, numbers = 0;
    lay_out_boat(boats[0]);
    const struct page *page = laid.pages[0];
    for (size_t i = 0; i < page->count; i++) {
        const struct page_item *item = &page->items[i];
        discs += item->kind == PAGE_ELLIPSE && item->block == BLOCK_CALL ? 1 : 0;
        if (item->kind == PAGE_TEXT && item->role == ROLE_NUMBER)
            assert_string_equal(item->run->text, text_format(test.arena, "%zu", ++numbers));
    }
    assert_int_equal(numbers, 4);
    assert_int_equal(discs, 4);
}

/* ---- long names ---- */

static void a_name_of_34_letters_is_never_refused(void **state)
{
    (void)state;
    assert_int_equal(strlen(LONG_NAME), 34);
    case_boat(&test, boat_named("Tern", ""));
    lay_out();
    mpt large = size_in(laid.pages[0], BLOCK_CALL);
    case_boat(&test, boat_named(LONG_NAME, ""));
    lay_out_on(PAPER_A5);
    assert_each_block_once();
    lay_out();
    mpt small = size_in(laid.pages[0], BLOCK_CALL);
    assert_in_range(small, 12000, large);
    assert_in_range(laid.page_count, 4, 7);
    assert_int_equal(laid.yielded_count, 0);
    assert_each_block_once();
}

/* A line of the message that begins with her name ends with it. */
static void a_long_line_breaks_before_the_call_sign(void **state)
{
    (void)state;
    case_boat(&test, boat_named(LONG_NAME, ""));
    lay_out();
    const struct page *page = laid.pages[0];
    for (size_t i = 0; i + 1 < page->count; i++)
        if (page->items[i].kind == PAGE_TEXT &&
            text_begins(page->items[i].run->text, "MAYDAY WANDERING")) {
            const struct page_item *next = &page->items[i + 1];
            assert_true(next->kind == PAGE_TEXT && next->baseline > page->items[i].baseline);
            assert_true(text_begins(next->run->text, "QUEBEC TANGO ALFA BRAVO TWO"));
            return;
        }
    fail_msg("the message does not begin with her name");
}

/* A full page of what is urgent, answered or undone takes one more before anything yields; the
 * MAYDAY is parted when nothing is left that does. */
static void pages_are_added_before_anything_yields(void **state)
{
    (void)state;
    struct pen pen = {.arena = test.arena, .paper = paper_of(PAPER_A4)};
    bool full[SHEET_PAGES_MOST];
    case_boat(&test, boat_named(LONG_NAME, "  urgency_steps: [press MENU, choose URGENCY]\n"));
    for (size_t p = 0; p < SHEET_PAGES_MOST; p++)
        full[p] = true;
    struct laying laying = {.whole = case_card(case_compose(&test, false), "distress_call"),
                            .trim = trim_nothing(), .full = full};
    laying.sheets = arena_array(test.arena, SHEET_PAGES_MOST, sizeof *laying.sheets);
    for (size_t count = 4; count <= 7; count++) {
        laying.count = distress_split(&laying, &pen);
        assert_int_equal(laying.count, count);
        assert_int_equal(sheet_section(laying.sheets[1], BLOCK_PAN_PAN)->hint_count, 1);
        assert_true(distress_lessen(&laying));
    }
    laying.count = distress_split(&laying, &pen);
    assert_int_equal(laying.count, 7);
    assert_int_equal(sheet_section(laying.sheets[1], BLOCK_PAN_PAN)->hint_count, 0);
    assert_true(distress_lessen(&laying));       /* the call has a page alone */
    laying.count = distress_split(&laying, &pen);
    assert_int_equal(laying.count, 8);
    assert_null(sheet_block(laying.sheets[0], BLOCK_NATURE));
    assert_non_null(sheet_block(laying.sheets[2], BLOCK_PAN_PAN));
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(each_block_stands_on_one_page),
        TEST(each_page_says_which_it_is),
        TEST(on_small_paper_there_are_more_pages),
        TEST(without_a_radio_there_is_one_page),
        TEST(the_call_stands_above_all_that_helps_to_send_it),
        TEST(the_call_is_read_before_the_cautions),
        TEST(what_is_said_is_large_and_nothing_below_it_is_larger),
        TEST(what_is_done_first_is_numbered_in_discs),
        TEST(a_name_of_34_letters_is_never_refused),
        TEST(a_long_line_breaks_before_the_call_sign),
        TEST(pages_are_added_before_anything_yields),
    };
    return cmocka_run_group_tests(tests, NULL, NULL) != 0;
}
