/* test_laid_once.c - nothing is done twice while a set is laid out: a text is shaped once a run, a
 * card is laid out once and once more for each thing that goes off it or off what all share, and a
 * plan that is not asked for is not laid out. Counted, not timed. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "faces_fixture.h"
#include "layout/laid_known.h"
#include "draw.h"
#include "text.h"

static const char *const boats[] = {
    "tests/fleet/boats/tamarisk.yaml", "tests/fleet/boats/samphire.yaml",
    "tests/unusual/boats/plover.yaml", "tests/unusual/boats/laden.yaml"};
#define BOATS (sizeof boats / sizeof *boats)

static struct laid_set laid_on(const char *boat, enum paper_key paper,
                               const struct sheets_asked *asked)
{
    case_boat(&test, boat);
    struct layout_input input = {case_compose(&test, true), faces, paper_of(paper), true};
    return layout_asked(&input, asked, test.arena, test.problems);
}

static void a_text_is_shaped_once_a_run(void **state)
{
    (void)state;
    assert_int_equal(texts_shaped(faces), 0);
    laid_on(boats[0], PAPER_A4, NULL);
    size_t first = texts_shaped(faces);
    assert_true(first > 1000);
    laid_on(boats[0], PAPER_A4, NULL);
    assert_int_equal(texts_shaped(faces), first);
    laid_on(boats[1], PAPER_A4, NULL);
    size_t second = texts_shaped(faces) - first;
    assert_true(second > 100 && second < first);
}

/* Of all sheets of a set: how many were laid out more than once, and that none was more often than
 * something changed. */
static size_t again_laid(const struct laid_set *laid)
{
    size_t again = 0;
    for (size_t i = 0; i < laid->count; i++) {
        const struct laid_sheet *sheet = &laid->sheets[i];
        if (sheet->tries > 1 + sheet->changes)
            fail_msg("%s was laid out %d times, with %d changes", sheet->sheet->id, sheet->tries,
                     sheet->changes);
        again += sheet->tries > 1 ? 1 : 0;
    }
    return again;
}

static void a_card_is_laid_out_again_only_where_something_changed(void **state)
{
    static const enum paper_key papers[] = {PAPER_A4, PAPER_LETTER, PAPER_A5};
    size_t again = 0, sheets = 0;
    (void)state;
    for (size_t b = 0; b < BOATS; b++)
        for (size_t p = 0; p < sizeof papers / sizeof *papers; p++) {
            struct laid_set laid = laid_on(boats[b], papers[p], NULL);
            again += again_laid(&laid);
            sheets += laid.count;
        }
    assert_true(again > 0 && again < sheets);
}

static bool is_flooding(const void *of, const struct sheet *sheet)
{
    const size_t *told = of;
    assert_int_equal(*told, 1);
    return strcmp(sheet->id, "flooding") == 0;
}

static const char *dump_of(const struct page *page)
{
    struct text_builder out = text_builder_in(test.arena);
    page_dump(page, &out);
    return out.at;
}

/* It has its pages all the same, and the others are what they are beside it. */
static void a_plan_that_is_not_asked_for_is_not_laid_out(void **state)
{
    const size_t told = 1;
    const struct sheets_asked asked = {is_flooding, &told};
    size_t plans = 0, pages = 0;
    (void)state;
    for (size_t b = 0; b < BOATS; b++) {
        struct laid_set all = laid_on(boats[b], PAPER_A4, NULL);
        struct laid_set some = laid_on(boats[b], PAPER_A4, &asked);
        assert_int_equal(some.count, all.count);
        for (size_t i = 0; i < all.count; i++) {
            bool plan = all.sheets[i].sheet->kind == SHEET_SAFETY_PLAN;
            assert_int_equal(some.sheets[i].page_count, all.sheets[i].page_count);
            for (size_t p = 0; p < all.sheets[i].page_count; p++) {
                const struct page *whole = all.sheets[i].pages[p], *page = some.sheets[i].pages[p];
                if (plan || whole == NULL)
                    assert_null(page);
                else
                    assert_string_equal(dump_of(page), dump_of(whole));
                pages += plan && whole != NULL ? 1 : 0;
            }
            plans += plan ? 1 : 0;
        }
    }
    assert_true(plans == BOATS && pages > plans);
}

/* A part is kept by all that it hangs on. */
static void a_part_is_known_by_all_that_it_hangs_on(void **state)
{
    int of[2];
    (void)state;
    struct known_parts *known = parts_begin(test.arena);
    struct laid_key keys[7];
    for (size_t i = 0; i < 7; i++)
        keys[i] = (struct laid_key){LAID_BOXES, &of[0], 0, 9000, 100, test.words};
    keys[1].part = LAID_STEPS;
    keys[2].of = &of[1];
    keys[3].way = 1;
    keys[4].size = 9250;
    keys[5].width = 101;
    keys[6].words = NULL;
    size_t count = sizeof keys / sizeof *keys;
    for (size_t i = 0; i < count; i++) {
        void **place = part_known(known, &keys[i]);
        assert_null(*place);
        *place = (void *)(uintptr_t)&keys[i];
    }
    for (size_t i = 0; i < count; i++)
        assert_ptr_equal(*part_known(known, &keys[i]), &keys[i]);
    assert_int_equal(parts_count(known), count);
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(a_text_is_shaped_once_a_run),
        TEST(a_card_is_laid_out_again_only_where_something_changed),
        TEST(a_plan_that_is_not_asked_for_is_not_laid_out),
        TEST(a_part_is_known_by_all_that_it_hangs_on),
    };
    int failed = cmocka_run_group_tests(tests, NULL, NULL);
    return failed != 0;
}
