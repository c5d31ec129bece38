/* test_known_measures.c - what is known of texts, scripts and steps while a set is laid out is what
 * is found of them anew. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "faces_fixture.h"
#include "layout/call.h"
#include "layout/marked.h"
#include "layout/paragraph_known.h"
#include "layout/steps.h"
#include "layout/text_known.h"

static struct pen pen_of(const struct sheet *sheet)
{
    return (struct pen){.faces = faces, .arena = test.arena, .problems = test.problems,
                        .sheet = sheet, .paper = paper_of(PAPER_A4), .block = BLOCK_STEPS};
}

static struct pen knowing_pen(const struct sheet *sheet)
{
    struct pen pen = pen_of(sheet);
    pen.known = paragraphs_begin(test.arena);
    pen.texts = paragraphs_texts(pen.known);
    return pen;
}

/* A text is known by its bytes, wherever they lie; and not by where other bytes lay before. */
static void a_text_is_known_by_its_bytes(void **state)
{
    char first[] = "SHUT **the seacock**", second[] = "SHUT **the seacock**";
    (void)state;
    struct known_texts *known = texts_begin(test.arena);
    struct known_text *text = text_known(known, first);
    assert_ptr_equal(text_known(known, first), text);
    assert_ptr_equal(text_known(known, second), text);
    assert_int_equal(texts_count(known), 1);
    first[0] = 'C';
    assert_ptr_not_equal(text_known(known, first), text);
    assert_string_equal(text->text, second);
    first[0] = 'S';
    assert_ptr_equal(text_known(known, first), text);
    assert_int_equal(texts_count(known), 2);
}

static void widths_are_those_of_texts_measured_anew(void **state)
{
    static const char *const texts[] = {"", " ", "E4", "**SHUT** the **seacock**, ****then pump",
                                        "**", "水 below", "forepeak, port"};
    struct sheet card = {.name = "CARD", .language = "en", .words = test.words};
    struct pen pen = pen_of(&card), knowing = knowing_pen(&card);
    size_t wide = 0;
    (void)state;
    for (size_t i = 0; i < 7 * 3 * 4; i++) {
        const char *text = texts[i % 7];
        mpt size = 8000 + 750 * (mpt)(i / 7 % 3);
        struct style plain = {ROLE_ROW, i / 21 % 2 == 0 ? FACE_TEXT : FACE_BOLD, size, INK_BLACK};
        struct style bold = {ROLE_ROW, FACE_BOLD, size + 500 * (mpt)(i / 42), INK_BLACK};
        const struct marked_styles styles = {plain, bold};
        assert_int_equal(pen_width(&knowing, &plain, text), pen_width(&pen, &plain, text));
        assert_int_equal(marked_width(&knowing, &styles, text), marked_width(&pen, &styles, text));
        wide += marked_width(&pen, &styles, text) > MM(10) ? 1 : 0;
    }
    assert_true(wide > 20);
    paragraphs_end(knowing.known);
}

static void scripts_equal(const struct laid_script *a, const struct laid_script *b)
{
    assert_int_equal(a->height, b->height);
    assert_int_equal(a->count, b->count);
    for (size_t i = 0; i < a->count; i++) {
        const struct laid_phrase *first = &a->phrases[i], *second = &b->phrases[i];
        assert_int_equal(first->indent, second->indent);
        assert_int_equal(first->words.origin.line, second->words.origin.line);
        assert_int_equal(first->words.line_count, second->words.line_count);
        for (size_t l = 0; l < first->words.line_count; l++)
            assert_memory_equal(&first->words.lines[l], &second->words.lines[l],
                                sizeof first->words.lines[l]);
    }
}

/* Scripts of all cards, at sizes and in columns from wide to narrow. */
static void scripts_are_those_laid_out_anew(void **state)
{
    size_t phrases = 0;
    (void)state;
    case_boat(&test, "tests/fleet/boats/tamarisk.yaml");
    const struct sheet_set *set = case_compose(&test, false);
    struct pen knowing = knowing_pen(set->sheets[0]);
    for (size_t i = 0; i < set->count * 4; i++) {
        struct pen pen = pen_of(set->sheets[i / 4]);
        mpt size = 12000 + 500 * (mpt)(i % 2), width = MM(60 + 50 * (mpt)(i % 4 / 2));
        knowing.sheet = pen.sheet;
        if (sheet_block(pen.sheet, BLOCK_CALL) == NULL)
            continue;
        const struct script *script = sheet_call(pen.sheet)->script;
        struct laid_script first = script_lay(&pen, script, size, width);
        struct laid_script second = script_lay(&knowing, script, size, width);
        scripts_equal(&first, &second);
        phrases += first.count;
    }
    assert_true(phrases > 100);
    paragraphs_end(knowing.known);
}

/* Steps of all cards in all forms: where they are known the second time, and where they are not. */
static void steps_are_those_laid_out_anew(void **state)
{
    size_t steps = 0;
    (void)state;
    case_boat(&test, "tests/fleet/boats/tamarisk.yaml");
    const struct sheet_set *set = case_compose(&test, false);
    struct pen knowing = knowing_pen(set->sheets[0]);
    for (size_t i = 0; i < 2 * set->count * FORMS_COUNT; i++) {
        struct pen pen = pen_of(set->sheets[i / FORMS_COUNT % set->count]);
        struct step_sizes sizes = {18000, 13000, (enum row_forms)(i % FORMS_COUNT)};
        knowing.sheet = pen.sheet;
        struct laid_steps first = steps_lay(&pen, sizes, MM(110));
        struct laid_steps second = steps_lay(&knowing, sizes, MM(110));
        assert_int_equal(first.height, second.height);
        assert_int_equal(first.excess, second.excess);
        assert_int_equal(first.excess_at.line, second.excess_at.line);
        for (size_t s = 0; s < first.count; s++)
            for (size_t r = 0; r < first.steps[s].step->row_count; r++)
                assert_int_equal(first.steps[s].rows[r]->form, second.steps[s].rows[r]->form);
        steps += first.count;
    }
    assert_true(steps > 200);
    paragraphs_end(knowing.known);
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(a_text_is_known_by_its_bytes),
        TEST(widths_are_those_of_texts_measured_anew),
        TEST(scripts_are_those_laid_out_anew),
        TEST(steps_are_those_laid_out_anew),
    };
    int failed = cmocka_run_group_tests(tests, NULL, NULL);
    return failed != 0;
}
