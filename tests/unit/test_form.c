/* test_form.c - forms: each line once and in order on as many pages as they take, sections under
 * their titles again, what must stand on one page told where it does not, and pages that pass
 * proofreading; what is asked below a line stands there with its boxes. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "compose/form_room.h"
#include "faces_fixture.h"
#include "layout.h"
#include "proof.h"
#include "text.h"

#define GEAR "  - {item: knife, tag: E1, zone: cockpit, side: port}\n"

static const struct form_column columns[] = {
    {FORM_NUMBER, "No.", 0}, {FORM_SIGN, "Tag", 0}, {FORM_TEXT, "What and where", 0},
    {FORM_TICK, "Here", 0}, {FORM_BLANK, "Date", 250}};
#define COLUMNS (sizeof columns / sizeof *columns)

static const struct form_section listed = {.title = "Cockpit", .note = "Begin at the wheel.",
                                           .columns = columns, .column_count = COLUMNS};

/* A line whose number is that of its place in the section. */
static void line_add(struct form_writer *writer, size_t number, const char *words)
{
    const struct form_cell cells[COLUMNS] = {
        {text_format(test.arena, "%zu", number), NULL}, {"E1", item_kind_of(ITEM_knife)},
        {words, NULL}, {number % 5 == 0 ? NULL : "", NULL}, {number % 3 == 0 ? "until" : "", NULL}};
    form_line_add(writer, cells, number % 4 == 0 ? FORM_STRONG : FORM_PLAIN,
                  test.boat->equipment[0].place);
}

/* Of two sections; that many lines in the first. */
static const struct sheet_set *form_of(size_t lines, const char *words, size_t alone)
{
    const struct compose_input input = case_input(&test, false);
    struct form_writer writer = form_begin(&input, test.arena, test.problems);
    struct form_section second = listed;
    form_section_add(&writer, &listed);
    for (size_t i = 1; i <= lines; i++)
        line_add(&writer, i, words);
    second.title = "Saloon";
    second.note = "";
    second.manner = FORM_WARNED;
    form_section_add(&writer, &second);
    line_add(&writer, 1, "Knife, on the mast");
    return form_end(&writer, &(struct form_head){
                                 .id = "walk", .alone = alone,
                                 .title = phrase_verbatim(test.arena, "Walk round"),
                                 .signs = phrase_verbatim(test.arena, "Go in this order.")});
}

static const char *const choices[] = {"shut", "open", "neither of these two"};

/* The same, with questions below its only line: that many of each kind. */
static const struct sheet_set *form_asking(size_t count, const char *label, size_t across)
{
    const struct compose_input input = case_input(&test, false);
    struct form_writer writer = form_begin(&input, test.arena, test.problems);
    form_section_add(&writer, &listed);
    line_add(&writer, 1, "Knife, in the sheath");
    for (size_t i = 0; i < count; i++) {
        form_blank_add(&writer, &(struct form_blank){label, choices, 3, FORM_NO_ROOM});
        form_blank_add(&writer, &(struct form_blank){label, NULL, 0, FORM_SHORT});
        form_blank_add(&writer, &(struct form_blank){"", choices, 1, FORM_LONG});
    }
    form_blanks_align(&writer, across);
    return form_end(&writer, &(struct form_head){
                                 .id = "walk", .title = phrase_verbatim(test.arena, "Walk round"),
                                 .signs = phrase_verbatim(test.arena, "Go in this order.")});
}

static const struct laid_sheet *laid_of(const struct sheet_set *set, enum paper_key paper)
{
    const struct layout_input input = {set, faces, paper_of(paper), false};
    struct laid_set *laid = arena_alloc(test.arena, sizeof *laid);
    *laid = layout_set(&input, test.arena, test.problems);
    assert_int_equal(laid->count, 1);
    return &laid->sheets[0];
}

/* The numbers of the lines of the section with that title on the page, which go on from `next`;
 * gives the next. */
static size_t numbers_on(const struct page *page, const char *title, size_t next)
{
    const struct form_facts *form = sheet_form(page->sheet);
    for (size_t i = 0; i < form->count; i++)
        for (size_t k = 0; text_equal(form->sections[i].title, title) &&
                           k < form->sections[i].line_count; k++)
            assert_string_equal(form->sections[i].lines[k].cells[0].text,
                                text_format(test.arena, "%zu", next++));
    return next;
}

static size_t items_of(const struct page *page, enum page_part part)
{
    size_t count = 0;
    for (size_t i = 0; i < page->count; i++)
        count += page->items[i].part == part ? 1 : 0;
    return count;
}

/* Square frames as large as a box to tick. */
static size_t boxes_of(const struct page *page)
{
    size_t count = 0;
    for (size_t i = 0; i < page->count; i++) {
        const struct page_item *item = &page->items[i];
        count += item->kind == PAGE_BOX && item->area.width == MM(6) &&
                 item->area.height == MM(6) ? 1 : 0;
    }
    return count;
}

static void every_line_stands_once_and_in_order(void **state)
{
    (void)state;
    static const enum paper_key papers[] = {PAPER_A4, PAPER_LETTER};
    for (size_t p = 0; p < sizeof papers / sizeof *papers; p++) {
        const struct laid_sheet *laid = laid_of(form_of(70, "Knife, in the sheath", 0), papers[p]);
        size_t next = 1, blanks = 0;
        assert_true(laid->page_count >= 3 && laid->page_count < 8);
        for (size_t i = 0; i < laid->page_count; i++) {
            assert_non_null(laid->pages[i]);
            next = numbers_on(laid->pages[i], "Cockpit", next);
            blanks += items_of(laid->pages[i], PART_BLANK);
        }
        assert_int_equal(next, 71);
        assert_int_equal(blanks, 71);
        assert_int_equal(numbers_on(laid->pages[laid->page_count - 1], "Saloon", 1), 2);
    }
    assert_string_equal(case_problems_text(&test), "");
}

static void pages_are_counted_and_pass_proofreading(void **state)
{
    (void)state;
    const struct laid_sheet *laid = laid_of(form_of(40, "Knife, in the sheath at the wheel", 0),
                                            PAPER_A4);
    const struct proof_report *reports = proof_set(&(struct laid_set){laid, 1}, faces,
                                                   test.arena);
    for (size_t i = 0; i < laid->page_count; i++) {
        const struct page *page = laid->pages[i];
        assert_string_equal(page->label, text_format(test.arena, "Sheet %zu", i + 1));
        assert_string_equal(sheet_signs(page->sheet)->signs,
                            text_format(test.arena, "Go in this order. %zu sheets.",
                                        laid->page_count));
        if (reports[i].errors + reports[i].notes > 0)
            fail_msg("%s: %s", proof_rule(reports[i].findings[0].rule)->id,
                     reports[i].findings[0].measured);
        assert_true(reports[i].measured > 100);
    }
}

/* Boxes of the line's cell and of what is asked below it; lines to write upon; all within the
 * page, and all words there. */
static void what_is_asked_below_a_line_stands_there(void **state)
{
    (void)state;
    for (size_t across = 0; across < 4; across += 3) {
        const struct laid_sheet *laid = laid_of(form_asking(5, "it turns", across), PAPER_LETTER);
        const struct proof_report *reports = proof_set(&(struct laid_set){laid, 1}, faces,
                                                       test.arena);
        assert_non_null(laid->pages[0]);
        assert_int_equal(items_of(laid->pages[0], PART_BLANK), 1 + 2 * 5);
        assert_int_equal(boxes_of(laid->pages[0]), 1 + 4 * 5);
        if (reports[0].errors + reports[0].notes > 0)
            fail_msg("%s: %s", proof_rule(reports[0].findings[0].rule)->id,
                     reports[0].findings[0].measured);
    }
}

static void a_question_wider_than_its_row_is_told(void **state)
{
    (void)state;
    char words[200];
    memset(words, 'm', sizeof words - 1);
    words[sizeof words - 1] = '\0';
    assert_null(laid_of(form_asking(1, words, 0), PAPER_A4)->pages[0]);
    assert_non_null(strstr(case_problems_text(&test), "is wider than its column"));
}

/* Behind lines that fill a page but for a few. */
static void a_section_stands_whole_where_a_page_can_hold_it(void **state)
{
    (void)state;
    for (size_t lines = 8; lines < 24; lines++) {
        const struct compose_input input = case_input(&test, false);
        struct form_writer writer = form_begin(&input, test.arena, test.problems);
        struct form_section whole = listed;
        form_section_add(&writer, &listed);
        for (size_t i = 1; i <= lines; i++)
            line_add(&writer, i, "Knife, in the sheath");
        whole.title = "Saloon";
        whole.start = FORM_WHOLE;
        form_section_add(&writer, &whole);
        for (size_t i = 1; i <= 9; i++)
            line_add(&writer, i, "Knife, on the mast");
        const struct laid_sheet *laid = laid_of(
            form_end(&writer, &(struct form_head){
                                  .id = "walk", .title = phrase_verbatim(test.arena, "Walk"),
                                  .signs = phrase_verbatim(test.arena, "Go in this order.")}),
            PAPER_A4);
        size_t pages = 0;
        for (size_t i = 0; i < laid->page_count; i++)
            pages += numbers_on(laid->pages[i], "Saloon", 1) > 1 ? 1 : 0;
        assert_int_equal(pages, 1);
        assert_int_equal(numbers_on(laid->pages[laid->page_count - 1], "Saloon", 1), 10);
    }
}

static void a_note_stands_once(void **state)
{
    (void)state;
    const struct laid_sheet *laid = laid_of(form_of(70, "Knife", 0), PAPER_A4);
    assert_string_equal(sheet_form(laid->pages[0]->sheet)->sections[0].note, listed.note);
    assert_string_equal(sheet_form(laid->pages[1]->sheet)->sections[0].note, "");
}

static void what_must_stand_on_one_page_is_told_where_it_does_not(void **state)
{
    (void)state;
    assert_non_null(laid_of(form_of(8, "Knife", 2), PAPER_A4)->pages[0]);
    assert_string_equal(case_problems_text(&test), "");
    assert_null(laid_of(form_of(60, "Knife", 2), PAPER_A4)->pages[0]);
    assert_non_null(strstr(case_problems_text(&test), "what must stand on one page is "));
}

static void a_word_wider_than_its_column_is_told(void **state)
{
    (void)state;
    char word[100];
    memset(word, 'm', sizeof word - 1);
    word[sizeof word - 1] = '\0';
    assert_null(laid_of(form_of(1, word, 0), PAPER_A4)->pages[0]);
    assert_non_null(strstr(case_problems_text(&test), "is wider than its column"));
}

/* More than all pages that a sheet may have hold. */
static void a_form_without_end_is_told(void **state)
{
    (void)state;
    const struct laid_sheet *laid = laid_of(form_of(900, "Knife", 0), PAPER_A4);
    assert_null(laid->pages[0]);
    assert_non_null(strstr(case_problems_text(&test), "what must stand on one page is "));
}

static int form_set_up(void **state)
{
    set_up(state);
    case_boat(&test, case_boat_text(&test, CASE_RADIO, GEAR, "  - blankets\n"));
    return 0;
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, form_set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(every_line_stands_once_and_in_order),
        TEST(pages_are_counted_and_pass_proofreading),
        TEST(what_is_asked_below_a_line_stands_there),
        TEST(a_question_wider_than_its_row_is_told),
        TEST(a_section_stands_whole_where_a_page_can_hold_it),
        TEST(a_note_stands_once),
        TEST(what_must_stand_on_one_page_is_told_where_it_does_not),
        TEST(a_word_wider_than_its_column_is_told),
        TEST(a_form_without_end_is_told),
    };
    return cmocka_run_group_tests(tests, NULL, NULL) != 0;
}
