/* test_sizes.c - the one table of sizes against what the cards must be readable
 * at: floors and aims of the page's specification, in the faces really used. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include "card_case.h"
#include "layout/layout_room.h"

static void every_role_has_a_size(void **state)
{
    (void)state;
    const struct paper *a4 = paper_of(PAPER_A4);
    for (int role = 0; role < ROLE_COUNT; role++) {
        struct size_rule rule = size_rule(a4, (enum page_role)role);
        assert_true(rule.floor >= 8000);
        assert_true(rule.floor <= rule.aim);
        assert_true(rule.leading >= 100 && rule.leading <= 150);
    }
}

static void floors_and_aims_are_those_of_the_specification(void **state)
{
    (void)state;
    const struct paper *a4 = paper_of(PAPER_A4);
    static const struct { enum page_role role; mpt floor, aim; } rules[] = {
        {ROLE_HEADLINE, 16000, 24000}, {ROLE_ROW, 12000, 16500}, {ROLE_SCRIPT, 12000, 13500},
        {ROLE_BOX, 12000, 14000}, {ROLE_FOOTER, 8000, 8000}, {ROLE_SOURCE_TAG, 8000, 8000},
        {ROLE_CODE, 8000, 8000}, {ROLE_TABLE, 12000, 13000},
        {ROLE_BOAT, 12000, 16000}, {ROLE_NUMBER, 14000, 18000}, {ROLE_TITLE, 32000, 40000},
        {ROLE_PLAN_TAG, 9000, 10000}, {ROLE_PLAN_LABEL, 9000, 12000}, {ROLE_MARK, 9000, 9000},
        {ROLE_SIGNS, 12000, 14000}, {ROLE_CALL_LINE, 12000, 14000}, {ROLE_CONTACT, 12000, 14000},
        {ROLE_BERTH, 12000, 14000}};
    for (size_t i = 0; i < sizeof rules / sizeof rules[0]; i++) {
        assert_int_equal(size_rule(a4, rules[i].role).floor, rules[i].floor);
        assert_int_equal(size_rule(a4, rules[i].role).aim, rules[i].aim);
    }
    /* what is read in an emergency is never smaller than a row */
    static const enum page_role read[] = {ROLE_BOAT, ROLE_SIGNS, ROLE_BERTH, ROLE_CALL_LINE,
                                          ROLE_TABLE, ROLE_CONTACT, ROLE_NUMBER};
    for (size_t i = 0; i < sizeof read / sizeof read[0]; i++)
        assert_true(size_rule(a4, read[i]).floor >= 12000);
}

/* Read from twice as far off, what is read in an emergency is twice as large; what is looked
 * up in hand is not. Nothing becomes too small to read on a paper held before the eyes. */
static void sizes_grow_with_the_reading_distance(void **state)
{
    (void)state;
    const struct paper *a4 = paper_of(PAPER_A4);
    struct paper far = *a4, near = *a4;
    far.reading_mm = 2 * a4->reading_mm;
    near.reading_mm = 100;
    static const enum page_role grows[] = {ROLE_HEADLINE, ROLE_ROW, ROLE_SCRIPT, ROLE_BOX};
    static const enum page_role stays[] = {ROLE_TITLE, ROLE_PLAN_TAG, ROLE_SOURCE_TAG, ROLE_FOOTER};
    for (size_t i = 0; i < sizeof grows / sizeof grows[0]; i++) {
        assert_int_equal(size_rule(&far, grows[i]).floor, 2 * size_rule(a4, grows[i]).floor);
        assert_int_equal(size_rule(&far, grows[i]).aim, 2 * size_rule(a4, grows[i]).aim);
        assert_int_equal(size_rule(&near, grows[i]).floor, 8000);
    }
    for (size_t i = 0; i < sizeof stays / sizeof stays[0]; i++) {
        assert_int_equal(size_rule(&far, stays[i]).floor, size_rule(a4, stays[i]).floor);
        assert_int_equal(size_rule(&near, stays[i]).aim, size_rule(a4, stays[i]).aim);
    }
}

/* Capitals of the title: 8 mm at least, 10 mm if there is room. */
static void the_title_s_capitals_are_tall_enough(void **state)
{
    (void)state;
    struct card_case test;
    case_begin(&test);
    struct faces *faces = case_faces(&test);
    const struct face_metrics *bold = face_metrics(faces, FACE_BOLD);
    struct size_rule title = size_rule(paper_of(PAPER_A4), ROLE_TITLE);
    assert_true((int64_t)title.floor * bold->cap_height / bold->units_per_em >= MM(8));
    assert_true((int64_t)title.aim * bold->cap_height / bold->units_per_em >= MM(10));
    faces_close(faces);
    case_end(&test);
}

/* A text set in the middle of a height by its capitals stands in the middle. */
static void capitals_stand_in_the_middle(void **state)
{
    (void)state;
    struct card_case test;
    case_begin(&test);
    struct faces *faces = case_faces(&test);
    for (int role = FACE_TEXT; role <= FACE_BOLD; role++) {
        const struct face_metrics *metrics = face_metrics(faces, (enum face_role)role);
        for (mpt size = 8000; size <= 40000; size += 2000) {
            mpt capital = (mpt)((int64_t)size * metrics->cap_height / metrics->units_per_em);
            mpt top = MM(30), height = MM(21), baseline = baseline_in(top, height, size);
            mpt above = baseline - capital - top, below = top + height - baseline;
            assert_in_range(above - below + MM(0.1), 0, 2 * MM(0.1));
        }
    }
    faces_close(faces);
    case_end(&test);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(every_role_has_a_size),
        cmocka_unit_test(floors_and_aims_are_those_of_the_specification),
        cmocka_unit_test(sizes_grow_with_the_reading_distance),
        cmocka_unit_test(the_title_s_capitals_are_tall_enough),
        cmocka_unit_test(capitals_stand_in_the_middle),
    };
    int failed = cmocka_run_group_tests(tests, NULL, NULL);
    return failed != 0;
}
