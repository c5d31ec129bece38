/* test_safety_page.c - the safety plan on paper: everything recorded is there, no
 * leader crosses another, a label or a foreign tag, and tags stand on the boat. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "faces_fixture.h"
#include "geometry.h"
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

/* ---- leaders ---- */

static void leader_keeps_clear(const struct page *page, const struct page_item *leader)
{
    for (size_t i = 0; i < page->count; i++) {
        const struct page_item *other = &page->items[i];
        if (other != leader && is_leader(other) &&
            segments_meet(leader->from, leader->to, other->from, other->to))
            fail_msg("%s: two leaders cross", page->id);
        if (other->kind == PAGE_TEXT && other->role != ROLE_PLAN_TAG &&
            segment_to_box(leader->from, leader->to, other->area) <= 0)
            fail_msg("%s: a leader runs under `%s`", page->id, other->run->text);
    }
}

/* It leaves from one tag or frame of tags, and comes near no other. */
static void leader_is_of_one_place(const struct page *page, const struct page_item *leader)
{
    size_t near = 0;
    struct area at = {0};
    for (size_t i = 0; i < page->count; i++) {
        const struct page_item *other = &page->items[i];
        bool frame = other->kind == PAGE_BOX && other->stroke == INK_BLACK &&
                     other->fill == INK_WHITE && other->block == BLOCK_PLAN &&
                     other->line_width < MM(1);
        if ((!is_tag(other) && !frame) ||
            segment_to_box(leader->from, leader->to, other->area) >= MM(0.5))
            continue;
        near += near == 0 || !overlap(at, other->area) ? 1 : 0;   /* tags lie in their frame */
        at = near == 1 && (at.width == 0 || frame) ? other->area : at;
    }
    if (near > 1)
        fail_msg("%s: a leader comes near a foreign tag", page->id);
}

/* Every page of these boats has leaders to all its places, or to none where the labels leave them
 * no room. */
static void leaders_cross_nothing(void **state)
{
    (void)state;
    for (size_t b = 0; b < BOAT_COUNT; b++) {
        lay_out_whole(boats[b]);
        for (size_t p = 0; p < page_count; p++) {
            const struct places_facts *safety = sheet_places(pages[p]->sheet);
            size_t leaders = 0;
            for (size_t i = 0; i < pages[p]->count; i++) {
                if (!is_leader(&pages[p]->items[i]))
                    continue;
                leaders++;
                leader_keeps_clear(pages[p], &pages[p]->items[i]);
                leader_is_of_one_place(pages[p], &pages[p]->items[i]);
            }
            if (leaders > 0)
                assert_int_equal(leaders, safety->count + (safety->here_given ? 1 : 0));
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
            strcmp(page->items[i].run->text, words) == 0)
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
        struct text_builder line = text_builder_in(test.arena);
        for (size_t c = 0; c < row->chip_count; c++)
            text_add_format(&line, "%s ", row->chips[c]);
        text_add_format(&line, "%s %s", row->name, row->detail);
        must_say(words, line.at);
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
            if (safety->here_given)
                must_say(words, safety->here_words);
        }
    }
}

/* A short name stands on one line, and the words behind it do when they stand below. */
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
    must_say(block_words(pages[1], BLOCK_LABELS), "Engine extinguisher, 2 kg");
    for (size_t p = 0; p < page_count; p++)
        assert_null(strstr(block_words(pages[p], BLOCK_LABELS), "empty in"));
}

/* Square: on deck; round: below. */
static void the_shape_of_a_tag_tells_its_level(void **state)
{
    (void)state;
    lay_out_whole(boats[0]);
    for (size_t p = 0; p < 2; p++) {
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
        assert_true(tags > 20);
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

static void too_much_for_a_page_is_told_and_not_printed(void **state)
{
    (void)state;
    lay_out(boat_with(90, "saloon", ""));
    size_t count;
    const struct problem *told = problems_sorted(test.problems, &count);
    assert_null(pages[0]);
    assert_int_equal(count, 1);
    assert_non_null(strstr(told[0].what, "SAFETY PLAN (en): the text of the labels is "));
    assert_non_null(strstr(told[0].what, " mm too long at the smallest size allowed"));
    assert_non_null(strstr(told[0].remedy,
                           "lines less, but only 0 entries need two"));
    assert_non_null(strstr(told[0].remedy, "the label of Saloon is the longest (90 lines)"));
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
        TEST(leaders_cross_nothing),
        TEST(tags_do_not_overlap),
        TEST(every_place_and_line_is_printed),
        TEST(short_names_are_not_torn),
        TEST(an_extinguisher_is_told_by_its_weight),
        TEST(the_shape_of_a_tag_tells_its_level),
        TEST(a_boat_of_which_little_is_recorded_has_one),
        TEST(too_much_for_a_page_is_told_and_not_printed),
        TEST(a_word_wider_than_its_column_is_told),
    };
    return cmocka_run_group_tests(tests, NULL, NULL) != 0;
}
