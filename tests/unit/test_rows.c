/* test_rows.c - rows by place: their forms, where lines may end, how high they are, and that the
 * height of the steps of a card is what its budget says. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "layout/measures.h"
#include "layout/steps.h"
#include "pen_fixture.h"
#include "text.h"

#define FLOOR 12000
#define COLUMN MM(120.5)
#define COUNT_OF(list) (sizeof(list) / sizeof *(list))

static const char *const tags[] = {"C1", "C2", "C3", "C4"};

/* ---- rows that the tests lay ---- */

#define ITEM(n, words, how) \
    {.kind = &gear, .tags = &tags[n], .tag_count = 1, .name = words, .spot = "", .end = how}
static const struct item_kind gear = {.item = ITEM_torch, .class = ITEM_CONTROL,
                                      .symbol = SYMBOL_torch};

static const struct row_item short_item[] = {ITEM(0, "Torch", "")};
static const struct row_item valve[] = {ITEM(0, "Fuel valve", "= **across the pipe: SHUT**")};
static const struct row_item two_items[] = {ITEM(0, "Engine stop", "= **hold STOP**"),
                                            ITEM(1, "Fan", "= **down: OFF**")};
static const struct row_item two_short[] = {ITEM(0, "Torch", ""), ITEM(1, "Knife", "")};
static const struct row_item four_items[] = {ITEM(0, "Torch", ""), ITEM(1, "Knife", ""),
                                             ITEM(2, "Flares", ""), ITEM(3, "Grab bag", "")};
static const struct row_item long_item[] = {
    ITEM(0, "Boarding ladder, folding, aluminium", "= **lift out the pin and fold down: OPEN**")};

static const struct card_row torch = {"Saloon, PORT", "", short_item, 1, {0}};
static const struct card_row fuel = {"Cockpit locker, PORT,", "aft face", valve, 1, {0}};
static const struct card_row engine = {"Cockpit, STARBOARD,", "by the wheel", two_items, 2, {0}};
static const struct card_row pair = {"Cockpit, PORT", "", two_short, 2, {0}};
static const struct card_row four = {"Cockpit, PORT", "", four_items, 4, {0}};
static const struct card_row ladder = {"Transom", "", long_item, 1, {0}};
static const struct card_row far_spot = {
    "Cockpit locker, STARBOARD,", "inside the cupboard to the left of the cooker", short_item, 1,
    {0}};

static struct row_setting setting_for(const struct card_row *row, mpt size)
{
    struct row_setting setting = row_setting_make(&pen, size, COLUMN);
    row_setting_widen(&pen, &setting, row, 1);
    setting.located = true;
    return setting;
}

static struct laid_row laid_as(const struct card_row *row, mpt size, enum row_form form)
{
    static struct row_setting setting;
    setting = setting_for(row, size);
    return row_lay(&pen, &setting, row, form);
}

#define ABOUT(length, millimetres) \
    assert_true((length) > MM((millimetres) - 0.1) && (length) < MM((millimetres) + 0.1))

/* ---- a row ---- */

static void a_row_of_lines_is_as_high_as_its_lines(void **state)
{
    (void)state;
    ABOUT(laid_as(&torch, FLOOR, ROW_OF_LINES).height, 10.14);
    ABOUT(laid_as(&engine, FLOOR, ROW_OF_LINES).height, 10.14);
    ABOUT(laid_as(&torch, FLOOR, ROW_ON_ONE_LINE).height, 7.3);
    ABOUT(laid_as(&four, FLOOR, ROW_OF_LINES).height, 14.7);
}

/* Between the place and its spot. */
static void a_long_spot_takes_a_line_more(void **state)
{
    (void)state;
    struct laid_row laid = laid_as(&far_spot, FLOOR, ROW_OF_LINES);
    assert_int_equal(laid.place_lines, 2);
    assert_int_equal(laid.item_lines, 1);
    assert_true(laid.over <= 0);
    ABOUT(laid.height, 10.14 + 4.87);
}

/* Before an end state, and between two pieces of gear. */
static void gear_takes_the_lines_it_needs(void **state)
{
    (void)state;
    struct laid_row laid = laid_as(&ladder, FLOOR, ROW_OF_LINES);
    assert_int_equal(laid.item_lines, 2);
    assert_true(laid.over <= 0);
    assert_int_equal(laid_as(&engine, FLOOR, ROW_OF_LINES).item_lines, 1);
    assert_int_equal(laid_as(&engine, 14000, ROW_OF_LINES).item_lines, 2);
}

static void one_line_holds_what_has_room_on_it(void **state)
{
    (void)state;
    assert_true(laid_as(&torch, FLOOR, ROW_ON_ONE_LINE).over <= 0);
    assert_true(laid_as(&pair, FLOOR, ROW_ON_ONE_LINE).over <= 0);
    assert_true(laid_as(&fuel, FLOOR, ROW_ON_ONE_LINE).over > 0);
    mpt located = laid_as(&fuel, FLOOR, ROW_ON_ONE_LINE).over;
    mpt bare = laid_as(&fuel, FLOOR, ROW_BARE).over;
    ABOUT(located - bare, 10.8);
}

/* Places are larger than names where these are not at their floor. */
static void a_place_is_no_smaller_than_its_gear(void **state)
{
    (void)state;
    assert_int_equal(setting_for(&torch, FLOOR).place_size, FLOOR);
    assert_int_equal(setting_for(&torch, 12250).place_size, 12250);
    assert_int_equal(setting_for(&torch, 12500).place_size, 13500);
    assert_int_equal(setting_for(&torch, 16500).place_size, 17500);
}

/* What is measured is what is placed. */
static void a_row_is_placed_as_it_was_laid(void **state)
{
    static const struct card_row *const rows[] = {&torch, &fuel, &engine, &pair, &four, &ladder,
                                                  &far_spot};
    (void)state;
    for (size_t i = 0; i < COUNT_OF(rows); i++)
        for (mpt size = FLOOR; size <= 16500; size += 1500) {
            struct pen page = pen;
            struct row_setting setting = setting_for(rows[i], size);
            setting.located = false;
            struct laid_row laid = row_lay(&pen, &setting, rows[i], ROW_OF_LINES);
            struct area area = {MM(10), MM(50), COLUMN, laid.height};
            row_place(&page, &setting, &laid, area);
            for (size_t k = 0; k < page.count; k++) {
                const struct page_item *item = &page.items[k];
                assert_true(item->area.y >= area.y &&
                            item->area.y + item->area.height <= area.y + area.height);
                assert_true(laid.over > 0 ||
                            item->area.x + item->area.width <= area.x + COLUMN);
            }
        }
}

/* ---- the budget ---- */

/* A card of so many steps, rows, notes and lines of a table, and what is left of each. */
struct counted { size_t steps, lines_rows, one_line_rows, notes, table_lines; };

static void steps_of(struct steps_facts *facts, const struct counted *counted)
{
    static const struct card_text headline = {.text = "**STOP** the engine."};
    static const struct card_text note = {.text = "Only outside the smoke."};
    struct card_step *steps = arena_array(test.arena, counted->steps, sizeof *steps);
    size_t rows = counted->lines_rows + counted->one_line_rows;
    struct card_row *list = arena_array(test.arena, rows, sizeof *list);
    for (size_t r = 0; r < rows; r++)
        list[r] = r < counted->lines_rows ? fuel : torch;
    for (size_t s = 0; s < counted->steps; s++) {
        steps[s] = (struct card_step){.number = (int)s + 1, .headline = headline};
        if (s == counted->steps - 1) {
            steps[s].rows = list;
            steps[s].row_count = rows;
        }
        steps[s].lethal = &note;
        steps[s].lethal_count = s < counted->notes ? 1 : 0;
    }
    *facts = (struct steps_facts){.items = steps, .count = counted->steps};
}

static void openings_add(struct steps_facts *facts, size_t lines)
{
    struct card_step *step = (struct card_step *)(uintptr_t)&facts->items[0];
    struct opening_group *group = arena_alloc(test.arena, sizeof *group);
    size_t count = 2 * (lines - 1);
    struct card_row *rows = arena_array(test.arena, count, sizeof *rows);
    for (size_t r = 0; r < count; r++)
        rows[r] = torch;
    *group = (struct opening_group){.side = SIDE_PORT, .head = "**PORT**", .rows = rows,
                                    .row_count = count};
    step->table = group;
    step->table_count = 1;
    step->table_kind = &gear;
}

/* In millimetres, at the floors. */
static double budget(const struct counted *counted)
{
    double steps = (double)counted->steps;
    return 6.55 * steps + 1.0 * (steps - 1) + 10.14 * (double)counted->lines_rows +
           7.3 * (double)counted->one_line_rows + 5.07 * (double)counted->notes +
           4.87 * (double)counted->table_lines;
}

/* A pen for a card of these steps. */
static struct pen pen_of_steps(const struct counted *counted)
{
    struct steps_facts *facts = arena_alloc(test.arena, sizeof *facts);
    struct block *block = arena_alloc(test.arena, sizeof *block);
    struct sheet *sheet = arena_alloc(test.arena, sizeof *sheet);
    struct pen own = pen;
    steps_of(facts, counted);
    if (counted->table_lines > 0)
        openings_add(facts, counted->table_lines);
    *block = (struct block){.key = BLOCK_STEPS, .facts = {.steps = facts}};
    *sheet = card;
    sheet->blocks = block;
    sheet->block_count = 1;
    own.sheet = sheet;
    return own;
}

static mpt steps_height(const struct counted *counted, enum row_forms forms)
{
    struct pen own = pen_of_steps(counted);
    struct laid_steps laid = steps_lay(&own, (struct step_sizes){16000, FLOOR, forms}, COLUMN);
    assert_true(laid.excess <= 0);
    return laid.height;
}

static void the_steps_are_as_high_as_their_budget(void **state)
{
    (void)state;
    static const struct counted cases[] = {
        {1, 0, 0, 0, 0}, {7, 10, 0, 0, 0}, {8, 7, 0, 3, 0}, {7, 0, 6, 1, 0}, {8, 4, 5, 0, 0},
        {7, 5, 0, 3, 7}, {7, 2, 4, 2, 5}};
    for (size_t i = 0; i < COUNT_OF(cases); i++) {
        double height = (double)steps_height(&cases[i], FORMS_BY_ROW) / MM(1);
        double said = budget(&cases[i]);
        if (height < said - 0.3 || height > said + 0.3)
            fail_msg("case %zu: %.2f mm, by the budget %.2f", i, height, said);
    }
}

/* Forms: none on one line, by step where all of a step can, by row. */
static void forms_differ_by_which_rows_are_on_one_line(void **state)
{
    (void)state;
    static const struct counted mixed = {4, 2, 2, 0, 0}, alike = {4, 0, 4, 0, 0};
    mpt lines = steps_height(&mixed, FORMS_OF_LINES);
    assert_int_equal(steps_height(&mixed, FORMS_BY_STEP), lines);
    assert_true(steps_height(&mixed, FORMS_BY_ROW) < lines - MM(5));
    assert_int_equal(steps_height(&alike, FORMS_BY_STEP), steps_height(&alike, FORMS_BY_ROW));
    assert_true(steps_height(&alike, FORMS_BY_STEP) <
                steps_height(&alike, FORMS_OF_LINES) - MM(10));
}

/* How far a line's ink reaches below its base line, at most. */
static mpt ink_foot(const struct page_item *text)
{
    return text->baseline + text->run->size * 22 / 100;
}

/* Where signs stand two abreast, one of them stands below the words of a note. */
static void signs_keep_clear_of_the_note_above_them(void **state)
{
    (void)state;
    static const struct card_row *const rows[] = {&torch, &engine, &pair, &four};
    static const struct counted one = {1, 1, 0, 1, 0};
    for (size_t r = 0; r < COUNT_OF(rows); r++) {
        struct pen own = pen_of_steps(&one);
        struct card_step *step = (struct card_step *)(uintptr_t)sheet_steps(own.sheet)->items;
        struct card_row *list = arena_array(test.arena, 2, sizeof *list);
        list[0] = *rows[r];
        list[1] = pair;
        step->rows = list;
        step->row_count = 2;
        struct laid_steps laid =
            steps_lay(&own, (struct step_sizes){16000, FLOOR, FORMS_BY_ROW}, COLUMN);
        steps_place(&own, &laid, (struct area){0, 0, COLUMN, laid.height});
        mpt note = 0, sign = laid.height;
        for (size_t i = 0; i < own.count; i++) {
            const struct page_item *item = &own.items[i];
            if (item->kind == PAGE_TEXT && text_begins(item->run->text, "Only"))
                note = ink_foot(item);
            if (item->kind == PAGE_SIGN && item->area.y < sign)
                sign = item->area.y;
        }
        assert_true(note > 0 && sign - note >= MM(0.5));
    }
}

/* ---- what fits ---- */

static struct laid_steps fitted(const struct pen *own, double millimetres)
{
    return steps_fit(own, (struct area){0, 0, COLUMN, MM(millimetres)});
}

/* Rows of lines as long as another form does not make type a good deal larger. */
static void the_calmest_form_is_taken_that_has_room(void **state)
{
    (void)state;
    static const struct counted alike = {4, 0, 8, 0, 0};
    const struct pen own = pen_of_steps(&alike);
    struct laid_steps wide = fitted(&own, 250), least = wide;
    assert_int_equal(wide.sizes.row, 16500);
    assert_true(wide.sizes.headline > 23000 && wide.sizes.headline <= 24000);
    for (double room = 250; fitted(&own, room).sizes.forms == FORMS_OF_LINES; room--)
        least = fitted(&own, room);
    assert_true(least.sizes.row < 16500 && least.sizes.row >= 15500);
    assert_int_equal(fitted(&own, 111).sizes.forms, FORMS_BY_STEP);
    assert_int_equal(fitted(&own, 111).sizes.row, 16500);
    struct laid_steps over = fitted(&own, 60);
    assert_int_equal(over.sizes.row, FLOOR);
    assert_true(over.height > MM(60));
}

/* Headlines stay told apart from the places below them. */
static void a_headline_is_larger_than_its_places(void **state)
{
    (void)state;
    static const struct counted counted = {7, 5, 2, 2, 0};
    const struct pen own = pen_of_steps(&counted);
    for (double room = 115; room < 220; room += 5) {
        struct laid_steps laid = fitted(&own, room);
        assert_true(laid.height > MM(room) ||
                    (int64_t)laid.sizes.headline * 7 >= (int64_t)laid.setting->place_size * 8);
    }
}

/* By so many letters, and what that gives; of the cheapest rows first, no more than are needed. */
static void the_cheapest_cut_is_told(void **state)
{
    (void)state;
    static const struct counted counted = {3, 4, 0, 0, 0};
    const struct pen own = pen_of_steps(&counted);
    struct laid_steps laid = steps_lay(&own, (struct step_sizes){16000, FLOOR, FORMS_BARE}, COLUMN);
    const char *one = steps_cuts_find(&own, &laid, MM(2)).words;
    const char *two = steps_cuts_find(&own, &laid, MM(4)).words;
    assert_non_null(strstr(one, "shorten spot, how or name of C1 by about "));
    assert_non_null(strstr(one, "letters (2.9 mm)"));
    assert_null(strstr(one, ", of "));
    assert_non_null(strstr(two, "(2.9 mm), of C1 by about "));
    assert_null(steps_cuts_find(&own, &laid, MM(40)).words);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(a_row_of_lines_is_as_high_as_its_lines),
        cmocka_unit_test(a_long_spot_takes_a_line_more),
        cmocka_unit_test(gear_takes_the_lines_it_needs),
        cmocka_unit_test(one_line_holds_what_has_room_on_it),
        cmocka_unit_test(a_place_is_no_smaller_than_its_gear),
        cmocka_unit_test(a_row_is_placed_as_it_was_laid),
        cmocka_unit_test(the_steps_are_as_high_as_their_budget),
        cmocka_unit_test(signs_keep_clear_of_the_note_above_them),
        cmocka_unit_test(forms_differ_by_which_rows_are_on_one_line),
        cmocka_unit_test(the_calmest_form_is_taken_that_has_room),
        cmocka_unit_test(a_headline_is_larger_than_its_places),
        cmocka_unit_test(the_cheapest_cut_is_told),
    };
    return cmocka_run_group_tests(tests, set_up, tear_down);
}
