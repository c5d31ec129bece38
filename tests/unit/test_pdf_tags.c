/* test_pdf_tags.c - the structure of tagged documents as poppler and qpdf read it back. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include <string.h>

#include "pdf_case.h"

#define TEXT_SIZE 12000

static struct page_item words_of(size_t part, const char *words)
{
    struct page_item item = text_item(FACE_TEXT, TEXT_SIZE, 20000, (mpt)(20000 + 9000 * part),
                                      words);

    item.reading = part;
    return item;
}

static struct page_item rule_of(size_t part)
{
    return (struct page_item){.kind = PAGE_LINE, .stroke = INK_BLACK, .line_width = 1000,
                              .from = {20000, 90000}, .to = {60000, 90000},
                              .area = {20000, 90000, 40000, 0}, .reading = part};
}

static struct page tagged(const struct page_item *items, size_t count,
                          const struct reading_part *parts, size_t part_count)
{
    struct page page = page_of(items, count);

    page.parts = parts;
    page.part_count = part_count;
    return page;
}

#define COUNT(array) (sizeof(array) / sizeof *(array))
#define TAGGED(items, parts) tagged(items, COUNT(items), parts, COUNT(parts))

/* What poppler reads of the structure. */
#define READ_STRUCTURE \
    "pdfinfo -struct-text tags.pdf | awk -f \"$OLDPWD/tests/readback/structure.awk\""

static void expect_structure(const struct page *const *pages, size_t count, const char *expected)
{
    bytes_store(pdf_of(pages, count), "tags.pdf");
    command_read("qpdf --check tags.pdf");
    assert_string_equal(command_read(READ_STRUCTURE), expected);
}

/* The document as text, a key a line. */
static const char *objects_read(void)
{
    return command_read("qpdf --qdf --normalize-content=n tags.pdf - | tr -d '\\000' | "
                        "strings -n 2");
}

static int count_in(const char *text, const char *words)
{
    int count = 0;

    while ((text = strstr(text, words)) != NULL) {
        text += strlen(words);
        count++;
    }
    return count;
}

/* ---- the tree ---- */

static const struct reading_part step_parts[] = {
    {.kind = READING_GROUP},
    {.kind = READING_TITLE},
    {.kind = READING_GROUP},
    {.kind = READING_ENTRY, .parent = 2},
    {.kind = READING_LABEL, .parent = 3},
    {.kind = READING_HEADING, .parent = 3},
    {.kind = READING_LINE, .parent = 3},
    {.kind = READING_LINE, .parent = 3},
    {.kind = READING_TEXT, .parent = 3},
    {.kind = READING_ENTRY, .parent = 2},
    {.kind = READING_LABEL, .parent = 9},
    {.kind = READING_GROUP},              /* nothing in it */
};

static void the_tree_is_in_the_order_of_reading(void **state)
{
    struct page_item items[] = {
        words_of(8, "why"), words_of(10, "2"), words_of(7, "C2"), words_of(7, "pump"),
        words_of(6, "C1"), rule_of(0), words_of(6, "valve"), words_of(5, "SHUT it"),
        words_of(4, "1"), words_of(1, "FIRE"), words_of(0, "decoration")};
    struct page page = TAGGED(items, step_parts);
    const struct page *pages[] = {&page};

    (void)state;
    expect_structure(pages, 1,
                     "Document\n  Art\n    H1\n      \"FIRE \"\n    Sect\n      L\n"
                     "        LI\n          Lbl\n            \"1 \"\n          LBody\n"
                     "            H2\n              \"SHUT it \"\n            L\n"
                     "              LI\n                LBody\n                  \"C1 valve \"\n"
                     "              LI\n                LBody\n                  \"C2 pump \"\n"
                     "            P\n              \"why \"\n"
                     "        LI\n          Lbl\n            \"2 \"\n          LBody\n");
    assert_non_null(strstr(objects_read(), "/ListNumbering /Decimal"));
}

static void each_page_has_its_own_article(void **state)
{
    static const struct reading_part parts[] = {{.kind = READING_GROUP}, {.kind = READING_TEXT}};
    struct page_item one[] = {words_of(1, "one")}, two[] = {words_of(1, "two")};
    struct page first = TAGGED(one, parts), second = TAGGED(two, parts), bare = page_of(one, 0);
    const struct page *pages[] = {&first, &bare, &second};

    (void)state;
    second.language = "de";
    expect_structure(pages, 3, "Document\n  Art\n    P\n      \"one \"\n  Art\n"
                               "  Art\n    P\n      \"two \"\n");
    assert_non_null(strstr(objects_read(), "/Lang (de)"));
}

/* ---- text ---- */

static void words_are_parted_by_spaces_but_where_they_are_joined(void **state)
{
    static const struct reading_part parts[] = {{.kind = READING_GROUP}, {.kind = READING_TEXT}};
    struct page_item items[] = {words_of(1, "SHUT the"), words_of(1, "valve"), words_of(1, "."),
                                words_of(1, "Code "), words_of(1, "dot"), words_of(1, " and"),
                                words_of(1, "end")};
    struct page page = TAGGED(items, parts);
    const struct page *pages[] = {&page};

    (void)state;
    items[2].joined = true;
    expect_structure(pages, 1,
                     "Document\n  Art\n    P\n      \"SHUT the valve. Code dot and end \"\n");
}

/* Poppler's structure knows nothing of texts beside their glyphs, but its text does. */
static void what_glyphs_do_not_tell_is_told_beside_them(void **state)
{
    static const struct reading_part parts[] = {{.kind = READING_GROUP}, {.kind = READING_TEXT}};
    struct page_item items[] = {words_of(1, "SHUT"), words_of(1, "Ж\xCC\x81ук"), words_of(1, "now"),
                                words_of(0, "Ж\xCC\x81")};
    struct page page = TAGGED(items, parts);
    const struct page *pages[] = {&page};

    (void)state;
    for (size_t i = 0; i < COUNT(items); i++)
        items[i].area.x = (mpt)(20000 + 40000 * i);
    bytes_store(pdf_of(pages, 1), "tags.pdf");
    command_read("qpdf --check tags.pdf");
    const char *text = strstr(command_read("pdftotext tags.pdf -"), "Ж\xCC\x81ук");
    assert_non_null(text);
    assert_non_null(strstr(text + 1, "Ж\xCC\x81"));
    assert_non_null(strstr(command_read(READ_STRUCTURE), "now"));
    assert_non_null(strstr(objects_read(),
                           "/Span <</MCID 1 /ActualText <FEFF041603010443043A0020>>>"));
}

static void decoration_is_marked_as_such(void **state)
{
    static const struct reading_part parts[] = {{.kind = READING_GROUP}, {.kind = READING_TEXT}};
    struct page_item items[] = {words_of(1, "read"), rule_of(0), rule_of(0), words_of(1, "too"),
                                words_of(1, "on")};
    struct page page = TAGGED(items, parts);
    const struct page *pages[] = {&page};

    (void)state;
    expect_structure(pages, 1, "Document\n  Art\n    P\n      \"read too on \"\n");
    const char *objects = objects_read(), *artifact = strstr(objects, "/Artifact BMC");
    assert_non_null(artifact);
    assert_null(strstr(artifact + 1, "/Artifact BMC"));
    assert_non_null(strstr(objects, "/P <</MCID 0>> BDC"));
    assert_non_null(strstr(artifact, "/P <</MCID 1>> BDC"));
    assert_null(strstr(objects, "/MCID 2"));
}

/* ---- alternatives ---- */

static void pictures_and_blanks_have_words_in_their_place(void **state)
{
    static const struct reading_part parts[] = {
        {.kind = READING_GROUP},
        {.kind = READING_SPOKEN, .language = "en"},
        {.kind = READING_BLANK, .parent = 1, .alternative = "to fill in"},
        {.kind = READING_FIGURE, .alternative = "C1: galley."}};
    struct page_item items[] = {words_of(3, "C1"), rule_of(3), words_of(1, "LAT"), rule_of(2),
                                words_of(1, "NORTH")};
    struct page page = TAGGED(items, parts);
    const struct page *pages[] = {&page};

    (void)state;
    items[1].area = (struct area){10000, 20000, 40000, 100000};
    expect_structure(pages, 1, "Document\n  Art\n    P\n      \"LAT \"\n      Form\n"
                               "      \"NORTH \"\n    Figure\n      \"C1 \"\n");
    const char *objects = command_read("qpdf --json tags.pdf");
    assert_non_null(strstr(objects, "\"/Alt\": \"u:to fill in\""));
    assert_non_null(strstr(objects, "\"/Alt\": \"u:C1: galley.\""));
    const char *language = strstr(objects, "\"/Lang\"");
    assert_null(strstr(language + 1, "\"/Lang\""));
    command_read("pdfinfo -struct tags.pdf | tr -d '\\n' | grep -q "
                 "'BBox .10 180 [0-9.]* 280'");
}

static void what_is_said_in_another_language_says_so(void **state)
{
    static const struct reading_part parts[] = {
        {.kind = READING_GROUP},
        {.kind = READING_SPOKEN, .language = "en"},
        {.kind = READING_BLANK, .parent = 1, .alternative = "auszufüllen"}};
    struct page_item items[] = {words_of(1, "OVER"), rule_of(2)};
    struct page page = TAGGED(items, parts);
    const struct page *pages[] = {&page};
    struct document document = document_of(pages, 1);
    struct bytes bytes;

    (void)state;
    page.language = document.language = "de";
    assert_true(pdf_make(&document, pdf_case.faces, pdf_case.arena, &bytes, pdf_case.problems));
    bytes_store(bytes, "tags.pdf");
    const char *objects = objects_read();
    assert_int_equal(count_in(objects, "/Lang (en)"), 1);
    assert_int_equal(count_in(objects, "/Lang (de)"), 2);     /* the document and the blank */
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(the_tree_is_in_the_order_of_reading),
        cmocka_unit_test(each_page_has_its_own_article),
        cmocka_unit_test(words_are_parted_by_spaces_but_where_they_are_joined),
        cmocka_unit_test(what_glyphs_do_not_tell_is_told_beside_them),
        cmocka_unit_test(decoration_is_marked_as_such),
        cmocka_unit_test(pictures_and_blanks_have_words_in_their_place),
        cmocka_unit_test(what_is_said_in_another_language_says_so),
    };

    return cmocka_run_group_tests_name("pdf_tags", tests, pdf_case_open, pdf_case_close) != 0;
}
