/* test_reading.c - what is read of a page, and in which order: by block, paragraph and role,
 * and by what blocks tell of their words. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "pen_fixture.h"
#include "text.h"

static const char *const kind_words[READING_KIND_COUNT] = {
    [READING_GROUP] = "group",   [READING_TITLE] = "title",   [READING_HEADING] = "heading",
    [READING_TEXT] = "text",     [READING_SPOKEN] = "spoken", [READING_ENTRY] = "entry",
    [READING_LINE] = "line",     [READING_LABEL] = "label",   [READING_FIGURE] = "figure",
    [READING_BLANK] = "blank",
};

static void words_put(enum page_role role, const char *words)
{
    struct style style = {role, FACE_TEXT, 12000, INK_BLACK};
    pen_text(&pen, &style, MM(20), MM(20), words, strlen(words), (struct place){0});
}

static void block_put(enum block_key block, enum page_role role, const char *words)
{
    pen.block = block;
    words_put(role, words);
}

static const struct page *settled(void)
{
    struct page *page = arena_alloc(test.arena, sizeof *page);
    *page = (struct page){.items = pen.items, .count = pen.count};
    reading_settle(&pen, page);
    return page;
}

/* A part with its words, then those that belong to it: "group[text(a b)]". */
static void part_tell(const struct page *page, size_t part, struct text_builder *out)
{
    const char *between = "";
    text_add(out, kind_words[page->parts[part].kind]);
    for (size_t i = 0; i < page->count; i++)
        if (page->items[i].reading == part && page->items[i].kind == PAGE_TEXT) {
            text_add_format(out, "%s%s", *between == '\0' ? "(" : between,
                            page->items[i].run->text);
            between = " ";
        }
    text_add(out, *between == '\0' ? "" : ")");
    between = "[";
    for (size_t i = part + 1; i < page->part_count; i++)
        if (page->parts[i].parent == part) {
            text_add(out, between);
            part_tell(page, i, out);
            between = " ";
        }
    text_add(out, *between == '[' ? "" : "]");
}

static void expect_reading(const char *expected)
{
    struct text_builder out = text_builder_in(test.arena);
    const struct page *page = settled();
    for (size_t i = 1; i < page->part_count; i++)
        assert_true(page->parts[i].parent < i);
    part_tell(page, 0, &out);
    assert_string_equal(out.at, expected);
}

static void lines_of_a_paragraph_are_one_text(void **state)
{
    (void)state;
    words_put(ROLE_BOX, "alone");
    paragraph_begin(&pen);
    words_put(ROLE_BOX, "one");
    words_put(ROLE_BOX, "two");
    paragraph_end(&pen);
    words_put(ROLE_BOX, "after");
    expect_reading("group[group[text(alone) text(one two) text(after)]]");
}

static void blocks_are_read_in_their_order_and_the_picture_late(void **state)
{
    (void)state;
    block_put(BLOCK_FOOTER, ROLE_FOOTER, "code");
    block_put(BLOCK_PLAN, ROLE_PLAN_TAG, "C1");
    block_put(BLOCK_CONTACT, ROLE_CONTACT, "phone");
    block_put(BLOCK_CALL, ROLE_SCRIPT, "press");
    block_put(BLOCK_NEVER, ROLE_BOX, "never");
    block_put(BLOCK_STEPS, ROLE_BOX, "do");
    block_put(BLOCK_SIGNS, ROLE_SIGNS, "when");
    expect_reading("group[group[text(when)] group[text(do)] group[text(never)] "
                   "group[text(press)] group[text(phone)] figure(C1) group[text(code)]]");
}

static void a_title_is_read_before_what_stands_beside_it(void **state)
{
    (void)state;
    block_put(BLOCK_TITLE, ROLE_BOAT, "boat");
    block_put(BLOCK_TITLE, ROLE_TITLE, "fire");
    expect_reading("group[group[title(fire) text(boat)]]");
}

static void an_entry_has_its_number_as_label(void **state)
{
    (void)state;
    for (int i = 0; i < 2; i++) {
        size_t outer = reading_begin(&pen, READING_ENTRY);
        words_put(ROLE_NUMBER, i == 0 ? "1" : "2");
        words_put(ROLE_HEADLINE, "STOP");
        size_t inner = reading_begin(&pen, READING_LINE);
        words_put(ROLE_ROW, "C1");
        words_put(ROLE_ROW, "valve");
        reading_end(&pen, inner);
        words_put(ROLE_ROW, "figure");
        reading_end(&pen, outer);
    }
    words_put(ROLE_NUMBER, "no label");
    expect_reading("group[group[entry[label(1) heading(STOP) line(C1 valve) text(figure)] "
                   "entry[label(2) heading(STOP) line(C1 valve) text(figure)] "
                   "text(no label)]]");
}

static void columns_are_read_one_after_the_other(void **state)
{
    (void)state;
    size_t columns[2];
    for (size_t i = 0; i < 2; i++) {
        size_t outer = reading_begin(&pen, READING_GROUP);
        columns[i] = reading_part_open(&pen);
        reading_end(&pen, outer);
    }
    for (int line = 0; line < 2; line++)
        for (size_t i = 0; i < 2; i++) {
            size_t outer = reading_resume(&pen, columns[i]);
            words_put(ROLE_TABLE, i == 0 ? "port" : "starboard");
            reading_end(&pen, outer);
        }
    expect_reading("group[group[group[text(port) text(port)] "
                   "group[text(starboard) text(starboard)]]]");
}

static void what_is_passed_over_is_in_no_part(void **state)
{
    (void)state;
    size_t outer = reading_skip(&pen);
    words_put(ROLE_MARK, "again");
    size_t inner = reading_begin(&pen, READING_LINE);
    words_put(ROLE_MARK, "and again");
    reading_end(&pen, inner);
    pen_line(&pen, (struct point){0, 0}, (struct point){9, 9}, INK_BLACK, 1000);
    pen_part(&pen, PART_BLANK);
    reading_end(&pen, outer);
    words_put(ROLE_MARK, "mark");
    for (size_t i = 0; i < 3; i++)
        assert_int_equal(settled()->items[i].reading, 0);
}

static void shapes_are_decoration_but_in_a_picture(void **state)
{
    (void)state;
    struct area area = {0, 0, MM(8), MM(8)};
    pen_box(&pen, area, INK_BLACK, INK_NONE, 0, 0);
    pen_sign(&pen, area, SIGN_FIRE, SYMBOL_NONE, (struct place){0});
    words_put(ROLE_ROW, "beside");
    pen.block = BLOCK_PLAN;
    pen_box(&pen, area, INK_BLACK, INK_NONE, 0, 0);
    const struct page *page = settled();
    assert_int_equal(page->items[0].reading, 0);
    assert_int_equal(page->items[1].reading, 0);
    assert_int_equal(page->parts[page->items[2].reading].kind, READING_TEXT);
    assert_int_equal(page->parts[page->items[3].reading].kind, READING_FIGURE);
}

static void a_blank_stands_among_the_words_that_are_said(void **state)
{
    (void)state;
    size_t outer = reading_begin(&pen, READING_SPOKEN);
    paragraph_begin(&pen);
    words_put(ROLE_SCRIPT, "LAT");
    pen_line(&pen, (struct point){0, 0}, (struct point){9, 9}, INK_BLACK, 1000);
    pen_part(&pen, PART_BLANK);
    words_put(ROLE_SCRIPT, "DEGREES");
    paragraph_end(&pen);
    reading_end(&pen, outer);
    expect_reading("group[group[spoken(LAT DEGREES)[blank]]]");
    const struct page *page = settled();
    const struct reading_part *blank = &page->parts[page->items[1].reading];
    assert_int_equal(blank->kind, READING_BLANK);
    assert_string_equal(blank->alternative, words_get(test.words, WORD_BLANK_TOLD));
    assert_string_equal(page->parts[blank->parent].language, "en");
}

static void the_picture_names_each_tag_and_its_place(void **state)
{
    (void)state;
    static const struct marker markers[] = {{.tag = "C1", .told = "C1: Galley."},
                                            {.tag = "C2"},
                                            {.tag = "E9", .told = "E9: Cockpit, port."}};
    struct plan_facts *plan = FACTS(test.arena, &card, plan, BLOCK_PLAN);
    plan->told = "The boat.";
    plan->markers = markers;
    plan->marker_count = sizeof markers / sizeof *markers;
    block_put(BLOCK_PLAN, ROLE_PLAN_TAG, "C1");
    const struct page *page = settled();
    assert_string_equal(page->parts[page->items[0].reading].alternative,
                        "The boat. C1: Galley. E9: Cockpit, port.");
}

static void pieces_joined_in_a_line_stay_joined(void **state)
{
    (void)state;
    struct style style = {ROLE_BOX, FACE_TEXT, 12000, INK_BLACK};
    struct paragraph words = paragraph_make(&pen, &style, "a **b**c d", MM(100),
                                            (struct place){0});
    paragraph_place(&pen, &words, MM(20), MM(20));
    assert_int_equal(pen.count, 3);
    assert_false(pen.items[0].joined);
    assert_false(pen.items[1].joined);
    assert_string_equal(pen.items[2].run->text, "c d");
    assert_true(pen.items[2].joined);
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(lines_of_a_paragraph_are_one_text),
        TEST(blocks_are_read_in_their_order_and_the_picture_late),
        TEST(a_title_is_read_before_what_stands_beside_it),
        TEST(an_entry_has_its_number_as_label),
        TEST(columns_are_read_one_after_the_other),
        TEST(what_is_passed_over_is_in_no_part),
        TEST(shapes_are_decoration_but_in_a_picture),
        TEST(a_blank_stands_among_the_words_that_are_said),
        TEST(the_picture_names_each_tag_and_its_place),
        TEST(pieces_joined_in_a_line_stay_joined),
    };
    return cmocka_run_group_tests(tests, NULL, NULL) != 0;
}
