/* test_pdf.c - documents as poppler and qpdf read them back, and what is refused:
 * judged by other programs, not by what was meant to be written. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include <string.h>

#include "pdf_case.h"

#define SAMPLE "šok ő Ё Ї Ύ AVAST To"

/* Cuts the next line off and leaves its spaces at both ends out; NULL at the end. */
static char *line_take(char **rest)
{
    char *line = *rest + strspn(*rest, " "), *end = strchr(line, '\n');

    if (end == NULL)
        return NULL;
    *rest = end + 1;
    while (end > line && end[-1] == ' ')
        end--;
    *end = '\0';
    return line;
}

static void words_are_read_back_exactly(void **state)
{
    static const char *const lines[] = {SAMPLE, "SHUT the fuel: 1 I l | 0 O", "Αθήνα АВЕ ABE",
                                        "no\xC2\xA0" "break", "Ж\xCC\x81ук"};
    struct page_item items[FACE_COUNT * 5];
    struct text_builder wanted = text_builder_in(pdf_case.arena);
    size_t count = 0;

    (void)state;
    for (int role = 0; role < FACE_COUNT; role++)
        for (size_t i = 0; i < 5; i++) {
            items[count] = text_item((enum face_role)role, 14000, 20000,
                                     (mpt)(20000 + 18000 * count), lines[i]);
            count++;
            text_add_format(&wanted, "%s\n", i == 3 ? "no break" : lines[i]);
        }
    page_store(items, count, "words.pdf");
    char *words = command_read("pdftotext -layout -nopgbrk words.pdf -");
    struct text_builder trimmed = text_builder_in(pdf_case.arena);
    for (char *line = line_take(&words); line != NULL; line = line_take(&words))
        if (*line != '\0')
            text_add_format(&trimmed, "%s\n", line);
    assert_string_equal(trimmed.at, wanted.at);
}

static void fonts_are_embedded_subsets(void **state)
{
    struct page_item items[FACE_COUNT];

    (void)state;
    for (int role = 0; role < FACE_COUNT; role++)
        items[role] = text_item((enum face_role)role, 14000, 20000, 50000 + 30000 * role, SAMPLE);
    page_store(items, FACE_COUNT, "fonts.pdf");
    const char *fonts = command_read("pdffonts fonts.pdf");
    assert_non_null(strstr(fonts, "+RobotoCondensed-Regular"));
    assert_non_null(strstr(fonts, "+RobotoCondensed-Bold"));
    assert_non_null(strstr(fonts, "+Hack-Bold"));
    size_t good = 0;
    for (const char *at = fonts; (at = strstr(at, "Identity-H       yes yes yes")) != NULL; at++)
        good++;
    assert_int_equal(good, FACE_COUNT);
}

/* ---- the document ---- */

static void document_facts_are_written(void **state)
{
    struct page_item item = text_item(FACE_TEXT, 14000, 20000, 50000, "x");
    struct page first = page_of(&item, 1), second = page_of(&item, 1);
    const struct page *pages[] = {&first, &second};

    (void)state;
    second.width = 595276;
    second.height = 841890;
    second.title = "Man overboard";
    bytes_store(pdf_of(pages, 2), "facts.pdf");
    const char *facts = command_read("pdfinfo -f 1 -l 2 facts.pdf");
    assert_non_null(strstr(facts, "Title:           TAMARISK – emergency cards Ё\n"));
    assert_non_null(strstr(facts, "Subject:         Sub\n"));
    assert_non_null(strstr(facts, "Producer:        maydeck\n"));
    assert_null(strstr(facts, "Date"));
    assert_non_null(strstr(facts, "Page    1 size:  300 x 300 pts"));
    assert_non_null(strstr(facts, "Page    2 size:  595.276 x 841.89 pts (A4)"));
    command_read("qpdf --check facts.pdf");
    const char *catalog = command_read("qpdf --qdf --object-streams=disable facts.pdf - | "
                                       "tr -d '\\000' | strings -n 2");
    assert_non_null(strstr(catalog, "/DisplayDocTitle true"));
    assert_non_null(strstr(catalog, "/PrintScaling /None"));
    assert_non_null(strstr(catalog, "/Lang (en)"));
    assert_non_null(strstr(catalog, "/First "));
    assert_non_null(strstr(catalog, "/Count 2"));
}

/* The 32 digits of the first and the second identity in the trailer. */
static const unsigned char *identity_of(struct bytes pdf)
{
    static const char key[] = "/ID [ <";
    size_t at = pdf.length - 100;

    while (at > 0 && memcmp(pdf.at + at, key, sizeof key - 1) != 0)
        at--;
    assert_true(at > 0);
    return pdf.at + at + sizeof key - 1;
}

#define IDENTITY_DIGITS 32
#define SECOND_IDENTITY 35   /* after "> <" */

static void same_input_gives_same_bytes(void **state)
{
    struct page_item items[2] = {text_item(FACE_TEXT, 14000, 20000, 50000, SAMPLE)};
    struct page page = page_of(items, 2);
    const struct page *pages[] = {&page};

    (void)state;
    items[1] = (struct page_item){.kind = PAGE_SIGN, .block = BLOCK_NONE, .sign = SIGN_FIRE,
                                  .glyph = SYMBOL_ext, .area = {1000, 90000, MM(10), MM(10)}};
    struct bytes one = pdf_of(pages, 1), two = pdf_of(pages, 1);
    assert_int_equal(one.length, two.length);
    assert_memory_equal(one.at, two.at, one.length);
    items[0].baseline++;
    struct bytes other = pdf_of(pages, 1);
    const unsigned char *first = identity_of(one), *second = identity_of(other);
    assert_memory_not_equal(first, second, IDENTITY_DIGITS);
    assert_memory_equal(first, first + SECOND_IDENTITY, IDENTITY_DIGITS);
    assert_memory_not_equal(first, "00000000000000000000000000000000", IDENTITY_DIGITS);
}

/* ---- what is refused ---- */

static void refusal_expect(struct page_item item, const char *what)
{
    struct page page = page_of(&item, 1);
    const struct page *pages[] = {&page};
    struct document document = document_of(pages, 1);
    struct problems *told = problems_new(pdf_case.arena);
    struct bytes bytes = {NULL, 0};
    size_t count;

    assert_false(pdf_make(&document, pdf_case.faces, pdf_case.arena, &bytes, told));
    assert_null(bytes.at);
    assert_int_equal(problems_count(told, SEVERITY_FAILURE), 1);
    const char *said = problems_sorted(told, &count)[0].what;
    if (strstr(said, what) == NULL || strstr(said, "test_card") == NULL)
        fail_msg("\"%s\" does not say \"%s\"", said, what);
}

static struct page_item sign_of(enum sign_class sign, enum symbol_key glyph, mpt side)
{
    return (struct page_item){.kind = PAGE_SIGN, .block = BLOCK_NONE, .sign = sign, .glyph = glyph,
                              .area = {0, 0, side, side}};
}

static void signs_that_mislead_are_refused(void **state)
{
    (void)state;
    refusal_expect(sign_of(SIGN_FIRE, SYMBOL_COUNT, MM(10)), "does not exist");
    refusal_expect(sign_of(SIGN_FIRE, SYMBOL_ext, SIGN_SMALLEST - 1), "smaller than 7 mm");
    refusal_expect(sign_of(SIGN_FIRE, SYMBOL_NONE, SIGN_SMALLEST - 1), "smaller than 7 mm");
    refusal_expect(sign_of(SIGN_CONTROL, SYMBOL_phatch, MM(10)), "frame of another class");
    refusal_expect(sign_of(SIGN_CLASS_COUNT, SYMBOL_NONE, MM(10)), "no class");
    refusal_expect(sign_of(SIGN_NONE, SYMBOL_NONE, MM(10)), "no class");
}

static void invisible_things_are_refused(void **state)
{
    struct page_item text = text_item(FACE_TEXT, 14000, 0, 20000, "x");
    struct page_item none = text, off = text;

    (void)state;
    none.fill = INK_NONE;
    refusal_expect(none, "a text without ink");
    none = text;
    none.run = NULL;
    refusal_expect(none, "a text without a run");
    off.baseline = 20000000;
    refusal_expect(off, "a text without a run, size or place");
    off = text;
    off.area.x = -20000000;
    refusal_expect(off, "off any paper");
    refusal_expect((struct page_item){.kind = PAGE_LINE, .stroke = INK_BLACK}, "without width");
    refusal_expect((struct page_item){.kind = PAGE_LINE, .line_width = 5}, "a line without ink");
    refusal_expect((struct page_item){.kind = PAGE_BOX, .fill = INK_COUNT}, "an ink that does not");
}

static void broken_paths_are_refused(void **state)
{
    static const struct path_step line = {.verb = PATH_LINE, .to = {1, 1}};
    static const struct path_step far = {.verb = PATH_MOVE, .to = {99999999, 1}};

    (void)state;
    refusal_expect((struct page_item){.kind = PAGE_PATH, .steps = &line, .step_count = 1,
                                      .fill = INK_BLACK}, "a path that does not begin");
    refusal_expect((struct page_item){.kind = PAGE_PATH, .steps = &far, .step_count = 1,
                                      .fill = INK_BLACK}, "a path that does not begin");
}

static void pages_without_size_are_refused(void **state)
{
    struct page page = page_of(NULL, 0);
    const struct page *pages[] = {&page};
    struct document document = document_of(pages, 1);
    struct problems *told = problems_new(pdf_case.arena);
    struct bytes bytes;

    (void)state;
    page.width = 0;
    assert_false(pdf_make(&document, pdf_case.faces, pdf_case.arena, &bytes, told));
    document.count = 0;
    assert_false(pdf_make(&document, pdf_case.faces, pdf_case.arena, &bytes, told));
    assert_int_equal(problems_count(told, SEVERITY_FAILURE), 2);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(words_are_read_back_exactly),
        cmocka_unit_test(fonts_are_embedded_subsets),
        cmocka_unit_test(document_facts_are_written),
        cmocka_unit_test(same_input_gives_same_bytes),
        cmocka_unit_test(signs_that_mislead_are_refused),
        cmocka_unit_test(invisible_things_are_refused),
        cmocka_unit_test(broken_paths_are_refused),
        cmocka_unit_test(pages_without_size_are_refused),
    };

    return cmocka_run_group_tests_name("pdf", tests, pdf_case_open, pdf_case_close) != 0;
}
