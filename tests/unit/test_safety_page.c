/* test_safety_page.c - the safety plan on paper: everything recorded is there, level with its
 * tag on the boat, on every kind of boat and whichever way its reader looks. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "faces_fixture.h"
#include "layout/layout_room.h"
#include "text.h"

static struct laid_set laid;
static const struct page *const *pages;
static size_t page_count;

static const char *const boats[] = {"tests/fleet/boats/tamarisk.yaml",
                                    "tests/fleet/boats/samphire.yaml",
                                    "tests/fleet/boats/bramble.yaml"};
#define BOAT_COUNT (sizeof boats / sizeof boats[0])

/* Only the safety plans, whatever the other cards lack. */
static void lay_out(const char *boat)
{
    case_boat(&test, boat);
    const struct sheet_set *whole = case_compose(&test, false);
    const struct sheet **plans = arena_array(test.arena, whole->count, sizeof *plans);
    struct sheet_set *only = arena_alloc(test.arena, sizeof *only);
    *only = (struct sheet_set){.sheets = plans};
    for (size_t i = 0; i < whole->count; i++)
        if (sheet_block(whole->sheets[i], BLOCK_LABELS) != NULL)
            plans[only->count++] = whole->sheets[i];
    test.problems = problems_new(test.arena);
    struct layout_input input = {only, faces, paper_of(PAPER_A4), false};
    laid = layout_set(&input, test.arena, test.problems);
    pages = case_pages(&test, &laid).at;
    page_count = case_pages(&test, &laid).count;
}

static void lay_out_whole(const char *boat)
{
    lay_out(boat);
    for (size_t p = 0; p < page_count; p++)
        if (pages[p] == NULL)
            fail_msg("%s", case_problems_text(&test));
}

static bool is_leader(const struct page_item *item)
{
    return item->kind == PAGE_LINE && item->block == BLOCK_LEADERS &&
           item->stroke == INK_BLACK;
}

static bool is_tag(const struct page_item *item)
{
    return item->kind == PAGE_BOX && item->fill == INK_BLACK && item->block == BLOCK_PLAN;
}

static bool overlap(struct area a, struct area b)
{
    return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height &&
           b.y < a.y + a.height;
}

/* ---- lines ---- */

/* Rows of a page; what is on both sides stands in both lists. */
static size_t rows_of(const struct page *page)
{
    const struct places_facts *plan = sheet_places(page->sheet);
    size_t rows_told = 0;
    for (size_t i = 0; i < plan->count; i++)
        rows_told += plan->places[i].row_count * (plan->places[i].marker.side == SIDE_BOTH ? 2 : 1);
    return rows_told;
}

static void lines_are_level_one_a_row(void **state)
{
    (void)state;
    for (size_t b = 0; b < BOAT_COUNT; b++) {
        lay_out_whole(boats[b]);
        for (size_t p = 0; p < page_count; p++) {
            size_t leaders = 0;
            for (size_t i = 0; i < pages[p]->count; i++) {
                if (!is_leader(&pages[p]->items[i]))
                    continue;
                leaders++;
                assert_int_equal(pages[p]->items[i].from.y, pages[p]->items[i].to.y);
            }
            assert_int_equal(leaders, rows_of(pages[p]));
        }
    }
}

static void tags_do_not_overlap(void **state)
{
    (void)state;
    for (size_t b = 0; b < BOAT_COUNT; b++) {
        lay_out_whole(boats[b]);
        for (size_t p = 0; p < page_count; p++)
            for (size_t i = 0; i < pages[p]->count; i++)
                for (size_t j = 0; j < i; j++)
                    if (is_tag(&pages[p]->items[i]) && is_tag(&pages[p]->items[j]) &&
                        overlap(pages[p]->items[i].area, pages[p]->items[j].area))
                        fail_msg("%s: two tags overlap", pages[p]->id);
    }
}

/* ---- words ---- */

/* All words of a block, with single spaces, lines joined. */
static const char *block_words(const struct page *page, enum block_key block)
{
    struct text_builder out = text_builder_in(test.arena);
    for (size_t i = 0; i < page->count; i++)
        if (page->items[i].kind == PAGE_TEXT && page->items[i].block == block)
            text_add_format(&out, "%s ", page->items[i].run->text);
    return out.at;
}

static bool is_one_text(const struct page *page, const char *words)
{
    for (size_t i = 0; i < page->count; i++)
        if (page->items[i].kind == PAGE_TEXT && page->items[i].block == BLOCK_LABELS &&
            (strcmp(page->items[i].run->text, words) == 0 ||
             strcmp(page->items[i].run->text, text_format(test.arena, "%s,", words)) == 0))
            return true;
    return false;
}

static void must_say(const char *words, const char *said)
{
    if (strstr(words, said) == NULL)
        fail_msg("`%s` does not stand in `%s`", said, words);
}

static void place_is_said(const char *words, const struct plan_place *place)
{
    must_say(words, place->title);
    for (size_t r = 0; r < place->row_count; r++) {
        const struct plan_row *row = &place->rows[r];
        must_say(words, text_format(test.arena, "%s%s%s", row->marker.tag,
                                    row->kind == NULL ? "" : " ", row->name));
        must_say(words, row->detail);
    }
}

static void every_place_and_line_is_printed(void **state)
{
    (void)state;
    for (size_t b = 0; b < BOAT_COUNT; b++) {
        lay_out_whole(boats[b]);
        for (size_t p = 0; p < page_count; p++) {
            const struct places_facts *safety = sheet_places(pages[p]->sheet);
            const char *words = block_words(pages[p], BLOCK_LABELS);
            for (size_t i = 0; i < safety->count; i++)
                place_is_said(words, &safety->places[i]);
            for (size_t i = 0; i < 3; i++)
                must_say(block_words(pages[p], BLOCK_LEGEND),
                         sheet_legend(pages[p]->sheet)->words[i]);
        }
    }
}

/* A short name stands on one line. */
static void short_names_are_not_torn(void **state)
{
    (void)state;
    for (size_t b = 0; b < BOAT_COUNT; b++) {
        lay_out_whole(boats[b]);
        for (size_t p = 0; p < page_count; p++) {
            const struct places_facts *safety = sheet_places(pages[p]->sheet);
            for (size_t i = 0; i < safety->count; i++)
                for (size_t r = 0; r < safety->places[i].row_count; r++)
                    if (strlen(safety->places[i].rows[r].name) <= 18)
                        assert_true(is_one_text(pages[p], safety->places[i].rows[r].name));
        }
    }
}

/* Who looks for it wants to know which it is; the card of the fire says for how long. */
static void an_extinguisher_is_told_by_its_weight(void **state)
{
    (void)state;
    lay_out_whole(boats[0]);
    size_t told = 0;
    for (size_t p = 0; p < page_count; p++)
        told += strstr(block_words(pages[p], BLOCK_LABELS), "Engine extinguisher, 2 kg") != NULL;
    assert_int_equal(told, 1);
    for (size_t p = 0; p < page_count; p++)
        assert_null(strstr(block_words(pages[p], BLOCK_LABELS), "empty in"));
}

/* Square: on deck; round: below. The index of cards, on the last page, has no tags. */
static void the_shape_of_a_tag_tells_its_level(void **state)
{
    (void)state;
    lay_out_whole(boats[0]);
    assert_non_null(sheet_block(pages[page_count - 1]->sheet, BLOCK_SEEN));
    for (size_t p = 0; p + 1 < page_count; p++) {
        size_t tags = 0;
        for (size_t i = 0; i < pages[p]->count; i++) {
            const struct page_item *item = &pages[p]->items[i];
            bool chip = is_tag(item) || (item->kind == PAGE_BOX && item->fill == INK_BLACK &&
                                         item->block == BLOCK_LABELS);
            if (!chip)
                continue;
            tags++;
            assert_int_equal(item->radius > 0,
                             sheet_places(pages[p]->sheet)->part == PLAN_PART_BELOW);
        }
        assert_true(tags > 10);
    }
}

/* ---- much and little ---- */

#define TORCH "  - {item: torch, tag: C%zu, zone: %s, spot: hook %zu}\n"

static const char *boat_with(size_t torches, const char *zone, const char *more)
{
    struct text_builder gear = text_builder_in(test.arena);
    for (size_t i = 1; i <= torches; i++)
        text_add_format(&gear, TORCH, i, zone, i);
    text_add(&gear, more);
    return case_boat_text(&test, CASE_RADIO, gear.at, "");
}

static void a_boat_of_which_little_is_recorded_has_one(void **state)
{
    (void)state;
    lay_out_whole(boat_with(1, "saloon", ""));
    assert_int_equal(page_count, 1);
}

/* Gear that one page does not hold stands on more of them, even all in one place. */
static void ninety_pieces_in_one_place_have_room(void **state)
{
    (void)state;
    lay_out_whole(boat_with(90, "saloon", ""));
    assert_in_range(page_count, 3, 4);
}

/* Names and spots so long that each row takes six lines: no number of pages is enough. The
 * remedy names the row of which the least must go. */
static void what_to_shorten_is_told(void **state)
{
    struct text_builder gear = text_builder_in(test.arena);
    (void)state;
    for (size_t i = 1; i <= 99; i++)
        text_add_format(&gear, "  - {item: torch, tag: C%zu, zone: saloon, "
                        "name: \"Long-winded name of a piece, to 34\", spot: \"on a hook behind%s "
                        "the door to the tall forward cabin, %zu from the left\"}\n", i,
                        i == 1 ? "" : " the second curtain beside the panel of", i);
    lay_out(case_boat_text(&test, CASE_RADIO, gear.at, ""));
    size_t count;
    const struct problem *told = problems_sorted(test.problems, &count);
    assert_null(pages[0]);
    assert_true(count >= 1);
    assert_non_null(strstr(told[0].what, "SAFETY PLAN (en): what stands beside the boat is "));
    assert_non_null(strstr(told[0].what, " mm too long at the smallest size allowed"));
    assert_non_null(strstr(told[0].remedy, "shorten name or spot of the "));
    assert_non_null(strstr(told[0].remedy, " that take more than one line, which gives "));
    assert_non_null(strstr(told[0].remedy, " mm off \"Long-winded name of a piece, to 34, on a "
                                           "hook behind the door"));
    assert_non_null(strstr(told[0].remedy, "the list of Saloon is the longest ("));
}

static void a_word_wider_than_its_column_is_told(void **state)
{
    (void)state;
    lay_out(boat_with(1, "saloon", "  - {item: knife, tag: E1, zone: galley, "
                                   "name: Taschenmesserscheidenhalterungsgur}\n"));
    assert_null(pages[0]);
    assert_non_null(strstr(case_problems_text(&test), "a word in the block \"labels\" is "));
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(lines_are_level_one_a_row),
        TEST(tags_do_not_overlap),
        TEST(every_place_and_line_is_printed),
        TEST(short_names_are_not_torn),
        TEST(an_extinguisher_is_told_by_its_weight),
        TEST(the_shape_of_a_tag_tells_its_level),
        TEST(a_boat_of_which_little_is_recorded_has_one),
        TEST(ninety_pieces_in_one_place_have_room),
        TEST(what_to_shorten_is_told),
        TEST(a_word_wider_than_its_column_is_told),
    };
    return cmocka_run_group_tests(tests, NULL, NULL) != 0;
}
