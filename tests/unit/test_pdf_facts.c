/* test_pdf_facts.c - what a document says of itself, as poppler and qpdf read it back. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include <string.h>

#include "pdf_case.h"
#include "pdf_look.h"
#include "sheet.h"

/* A document of two pages, as facts.pdf; the second is called by nothing. */
static void document_store(const char *title, const char *subject)
{
    struct page_item item = text_item(FACE_TEXT, 14000, 20000, 50000, "x");
    struct page first = page_of(&item, 1), second = page_of(&item, 1);
    const struct page *pages[] = {&first, &second};
    struct document document = document_of(pages, 2);
    struct bytes bytes;

    first.label = "Карта 3P";
    document.title = title;
    document.subject = subject;
    assert_true(pdf_make(&document, pdf_case.faces, pdf_case.arena, &bytes, pdf_case.problems));
    bytes_store(bytes, "facts.pdf");
    command_read("qpdf --check facts.pdf");
}

/* ---- document information and XMP ---- */

/* What stands behind a key in the lines that pdfinfo gives. */
static const char *info_of(const char *key)
{
    return command_read(text_format(pdf_case.arena, "pdfinfo facts.pdf | sed -n 's/^%s: *//p' | "
                                    "tr -d '\\n'", key));
}

/* The text of a property of the XMP packet, or of the list in it; characters that XML writes in
 * other words are themselves again. */
static const char *xmp_of(const char *property)
{
    return command_read(text_format(pdf_case.arena,
                                    "pdfinfo -meta facts.pdf | "
                                    "sed -n 's/.*<%s>\\(.*\\)<.%s>.*/\\1/p' | "
                                    "sed 's/<[^>]*>//g; s/&lt;/</g; s/&gt;/>/g; s/&amp;/\\&/g' | "
                                    "tr -d '\\n'", property, property));
}

static void xmp_says_what_the_information_says(void **state)
{
    static const char *const titles[] = {"Žarko & co: <emergency> cards", "Ёлка &amp; \"two\" 'q'"};

    (void)state;
    for (size_t i = 0; i < 2; i++) {
        document_store(titles[i], "Sub & ject");
        assert_string_equal(info_of("Title"), titles[i]);
        assert_string_equal(xmp_of("dc:title"), titles[i]);
        assert_string_equal(info_of("Subject"), "Sub & ject");
        assert_string_equal(xmp_of("dc:description"), "Sub & ject");
        assert_string_equal(info_of("Producer"), xmp_of("pdf:Producer"));
        assert_string_equal(xmp_of("pdf:Producer"), "maydeck");
        assert_string_equal(xmp_of("dc:language"), "en");
    }
    assert_null(strstr(command_read("pdfinfo -meta facts.pdf"), "pdfa"));
}

/* Pages of one card have one code; a page without a code has none there. */
static void each_card_has_its_code(void **state)
{
    struct page_item item = text_item(FACE_TEXT, 14000, 20000, 50000, "x");
    struct page pages[4] = {page_of(&item, 1), page_of(&item, 1), page_of(&item, 1),
                            page_of(&item, 1)};
    const struct page *const all[] = {&pages[0], &pages[1], &pages[2], &pages[3]};
    struct footer_facts footers[2] = {{.code_word = "", .code = "0TJ8-GE2D"},
                                      {.code_word = "", .code = ""}};
    struct block blocks[2] = {{.key = BLOCK_FOOTER, .facts.footer = &footers[0]},
                              {.key = BLOCK_FOOTER, .facts.footer = &footers[1]}};
    struct sheet card = {.id = "flooding", .blocks = &blocks[0], .block_count = 1};
    struct sheet form = {.id = "survey", .blocks = &blocks[1], .block_count = 1};
    struct document document = document_of(all, 4);
    struct bytes bytes;

    (void)state;
    pages[0].sheet = pages[1].sheet = &card;
    pages[2].sheet = &form;
    assert_true(pdf_make(&document, pdf_case.faces, pdf_case.arena, &bytes, pdf_case.problems));
    bytes_store(bytes, "codes.pdf");
    assert_string_equal(command_read("pdfinfo -meta codes.pdf | grep -c '<xmp:Ident'"), "1\n");
    struct pdf_look look = pdf_look(bytes, pdf_case.arena);
    assert_null(look.wrong);
    assert_int_equal(look.pages, 4);
    assert_int_equal(look.code_count, 1);
    assert_string_equal(look.codes[0].code, "0TJ8-GE2D");
    assert_string_equal(look.codes[0].card, "flooding");
}

static void a_document_without_subject_has_none_in_xmp(void **state)
{
    (void)state;
    document_store("Cards", NULL);
    assert_string_equal(info_of("Subject"), "");
    assert_null(strstr(command_read("pdfinfo -meta facts.pdf"), "description>"));
}

/* ---- the catalog ---- */

static void the_catalog_tells_how_the_document_is_used(void **state)
{
    static const char *const entries[] = {"/Lang", "/Marked\": true", "/DisplayDocTitle\": true",
                                          "/PrintScaling\": \"/None", "/Metadata",
                                          "/StructTreeRoot"};

    (void)state;
    document_store("Cards", "Sub");
    const char *objects = command_read("qpdf --json facts.pdf");
    for (size_t i = 0; i < sizeof entries / sizeof *entries; i++)
        assert_non_null(strstr(objects, entries[i]));
    assert_non_null(strstr(command_read("pdfinfo facts.pdf"), "Tagged:          yes\n"));
}

static void pages_are_called_as_their_cards(void **state)
{
    (void)state;
    document_store("Cards", "Sub");
    const char *labels = command_read("qpdf --json --json-key=pagelabels facts.pdf | tr -d ' \\n'");
    assert_non_null(strstr(labels, "[{\"index\":0,\"label\":{\"/P\":\"u:Карта3P\",\"/St\":1}},"
                                   "{\"index\":1,\"label\":{\"/St\":1}}]"));
}

/* ---- colours ---- */

struct colour_profile { const unsigned char *at; size_t length; };

static struct colour_profile profile_read(void)
{
    const char *hex = command_read(
        "qpdf --qdf facts.pdf plain.pdf && qpdf --show-object=$(strings -n 4 plain.pdf | "
        "sed -n 's/.*DestOutputProfile \\([0-9]*\\) .*/\\1/p') --filtered-stream-data plain.pdf | "
        "od -An -v -tx1 | tr -d ' \\n' | tr a-f A-F");
    size_t length = strlen(hex) / 2;
    unsigned char *at = arena_alloc(pdf_case.arena, length);

    for (size_t i = 0; i < length; i++)
        at[i] = (unsigned char)(hex_digit_value(hex[2 * i]) << 4 | hex_digit_value(hex[2 * i + 1]));
    return (struct colour_profile){at, length};
}

static uint32_t u32_at(struct colour_profile profile, size_t at)
{
    assert_true(at + 4 <= profile.length);
    return (uint32_t)profile.at[at] << 24 | (uint32_t)profile.at[at + 1] << 16 |
           (uint32_t)profile.at[at + 2] << 8 | profile.at[at + 3];
}

/* Where the value of a tag begins; the test fails where the profile has none of that type. */
static size_t tag_find(struct colour_profile profile, const char *name, const char *type)
{
    size_t count = u32_at(profile, 128);

    for (size_t i = 0; i < count; i++) {
        size_t entry = 132 + 12 * i, at = u32_at(profile, entry + 4);
        if (memcmp(profile.at + entry, name, 4) != 0)
            continue;
        assert_true(at >= 132 + 12 * count && at % 4 == 0);
        assert_true(at + u32_at(profile, entry + 8) <= profile.length);
        assert_memory_equal(profile.at + at, type, 4);
        return at + 8;
    }
    fail_msg("no tag %s", name);
    return 0;
}

/* A number of 65536ths, within two of them. */
static void expect_near(int32_t found, int32_t expected)
{
    if (found < expected - 2 || found > expected + 2)
        fail_msg("%d and not %d", found, expected);
}

static int32_t number_at(struct colour_profile profile, size_t at)
{
    return (int32_t)u32_at(profile, at);
}

static void the_profile_is_whole(void **state)
{
    static const char *const curves[] = {"rTRC", "gTRC", "bTRC"};

    (void)state;
    document_store("Cards", "Sub");
    struct colour_profile profile = profile_read();
    assert_int_equal(u32_at(profile, 0), profile.length);
    assert_memory_equal(profile.at + 36, "acsp", 4);
    assert_memory_equal(profile.at + 12, "mntrRGB XYZ ", 12);
    tag_find(profile, "desc", "mluc");
    tag_find(profile, "cprt", "mluc");
    tag_find(profile, "chad", "sf32");
    size_t white = tag_find(profile, "wtpt", "XYZ ");
    size_t red = tag_find(profile, "rXYZ", "XYZ "), green = tag_find(profile, "gXYZ", "XYZ ");
    size_t blue = tag_find(profile, "bXYZ", "XYZ ");
    for (size_t i = 0; i < 12; i += 4)
        expect_near(number_at(profile, red + i) + number_at(profile, green + i) +
                        number_at(profile, blue + i), number_at(profile, white + i));
    for (size_t i = 0; i < 3; i++)
        tag_find(profile, curves[i], "para");
}

/* The curve that IEC 61966-2-1 gives: a line, then a power that ends at 1. */
static void the_curve_is_that_of_the_standard(void **state)
{
    (void)state;
    document_store("Cards", "Sub");
    struct colour_profile profile = profile_read();
    size_t at = tag_find(profile, "rTRC", "para");
    int32_t a = number_at(profile, at + 8), b = number_at(profile, at + 12);
    assert_int_equal(u32_at(profile, at), 3 << 16);
    expect_near(number_at(profile, at + 4), (int32_t)(2.4 * 65536));
    expect_near(a + b, 65536);
    expect_near(number_at(profile, at + 16), (int32_t)(65536 / 12.92));
    expect_near(number_at(profile, at + 20), (int32_t)(0.04045 * 65536));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(xmp_says_what_the_information_says),
        cmocka_unit_test(each_card_has_its_code),
        cmocka_unit_test(a_document_without_subject_has_none_in_xmp),
        cmocka_unit_test(the_catalog_tells_how_the_document_is_used),
        cmocka_unit_test(pages_are_called_as_their_cards),
        cmocka_unit_test(the_profile_is_whole),
        cmocka_unit_test(the_curve_is_that_of_the_standard),
    };

    return cmocka_run_group_tests_name("pdf_facts", tests, pdf_case_open, pdf_case_close) != 0;
}
