/* test_template.c - templates on papers of several sizes: areas inside the margins, none over
 * another, shares of what there is. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include "layout/template.h"

/* A paper that no table has. */
static const struct paper odd = {
    .key = "odd", .width = MM(200), .height = MM(290), .side = MM(12), .head = MM(20),
    .foot = MM(9), .punch_down = MM(10), .punch_clear = MM(21), .reading_mm = 500,
    .title_mm = 1600};

static const struct page_needs needs = {
    .height = {[AREA_WHEN] = MM(12), [AREA_PANEL] = MM(40), [AREA_SOURCES] = MM(6)}};

static bool inside(struct area inner, struct area outer)
{
    return inner.x >= outer.x && inner.y >= outer.y && inner.width >= 0 && inner.height >= 0 &&
           inner.x + inner.width <= outer.x + outer.width &&
           inner.y + inner.height <= outer.y + outer.height;
}

static bool over_each_other(struct area a, struct area b)
{
    return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height &&
           b.y < a.y + a.height;
}

/* Beside the hole, in the margin at the head. */
static bool is_strip(int area)
{
    return area == AREA_STRIP_LEFT || area == AREA_STRIP_RIGHT;
}

static void areas_are_sound(const struct frame *frame)
{
    for (int i = 0; i < AREA_COUNT; i++) {
        if (frame->at[i].width == 0 || i == AREA_BODY)
            continue;
        assert_true(is_strip(i) || inside(frame->at[i], frame->safe));
        for (int j = 0; j < i; j++)
            assert_false(j != AREA_BODY && over_each_other(frame->at[i], frame->at[j]));
    }
}

static void on_paper(const struct paper *paper)
{
    for (enum template_key key = 0; key < TEMPLATE_COUNT; key++)
        for (int way = 0; way < template_ways(key); way++) {
            struct page_needs own = needs;
            own.way = way;
            struct frame frame = frame_make(paper, key, &own);
            areas_are_sound(&frame);
            assert_int_equal(frame.safe.width, safe_width(paper));
            assert_int_equal(frame.safe.x, paper->side);
            assert_int_equal(frame.safe.y, paper->head);
            assert_int_equal(frame.safe.y + frame.safe.height, paper->height - paper->foot);
        }
}

static void areas_lie_within_the_margins_and_apart(void **state)
{
    (void)state;
    for (enum paper_key key = PAPER_NONE + 1; key < PAPER_COUNT; key++)
        on_paper(paper_of(key));
    on_paper(&odd);
}

/* In thousandths of a point: the millimetres of A4. */
static void the_columns_of_a4_have_their_widths(void **state)
{
    (void)state;
    static const struct { enum template_key key; int way; mpt left; } rows[] = {
        {TEMPLATE_CARD, 0, MM(120.5)}, {TEMPLATE_DISTRESS, 0, MM(86)},
        {TEMPLATE_DISTRESS, 1, MM(95)}, {TEMPLATE_DISTRESS, 2, MM(105)},
        {TEMPLATE_SAFETY_PLAN, 0, MM(66)}};
    for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
        struct page_needs own = {.way = rows[i].way};
        struct frame frame = frame_make(paper_of(PAPER_A4), rows[i].key, &own);
        mpt left = frame.at[AREA_LEFT].width;
        assert_true(left >= rows[i].left - 2 && left <= rows[i].left + 2);
    }
}

static void wider_paper_has_wider_columns(void **state)
{
    (void)state;
    struct frame a4 = frame_make(paper_of(PAPER_A4), TEMPLATE_CARD, &needs);
    struct frame letter = frame_make(paper_of(PAPER_LETTER), TEMPLATE_CARD, &needs);
    assert_true(letter.at[AREA_LEFT].width > a4.at[AREA_LEFT].width);
    assert_int_equal(letter.at[AREA_RIGHT].width, a4.at[AREA_RIGHT].width);
    assert_int_equal(letter.at[AREA_BAND].height, a4.at[AREA_BAND].height);
    assert_int_equal(a4.at[AREA_BODY].height - letter.at[AREA_BODY].height, 841890 - 792000);
}

/* What nothing needs is not there, nor its gap. */
static void what_is_not_needed_takes_no_room(void **state)
{
    (void)state;
    struct page_needs own = needs;
    own.height[AREA_SOURCES] = 0;
    struct frame with = frame_make(&odd, TEMPLATE_SAFETY_PLAN, &needs);
    struct frame without = frame_make(&odd, TEMPLATE_SAFETY_PLAN, &own);
    assert_int_equal(without.at[AREA_SOURCES].height, 0);
    assert_int_equal(without.at[AREA_LEGEND].y - with.at[AREA_LEGEND].y, MM(6) + MM(1));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(areas_lie_within_the_margins_and_apart),
        cmocka_unit_test(the_columns_of_a4_have_their_widths),
        cmocka_unit_test(wider_paper_has_wider_columns),
        cmocka_unit_test(what_is_not_needed_takes_no_room),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
