/* test_pdf_look.c - whole PDFs are taken for whole, whoever made them; cut and damaged ones are
 * not; and what a PDF says of itself is read. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include <string.h>

#include "pdf_case.h"
#include "pdf_look.h"

/* Two pages in two faces, and a blank one between them. */
static struct bytes document_made(const char *title)
{
    struct page_item items[] = {text_item(FACE_TEXT, 14000, 20000, 50000, "Shut the seacock"),
                                text_item(FACE_CODE, 9000, 20000, 90000, "0TJ8-GE2D")};
    struct page first = page_of(items, 2), second = page_of(items, 1);
    struct page blank = page_of(items, 0);
    const struct page *pages[] = {&first, &blank, &second};
    struct document document = document_of(pages, 3);
    struct bytes bytes;

    document.title = title;
    assert_true(pdf_make(&document, pdf_case.faces, pdf_case.arena, &bytes, pdf_case.problems));
    return bytes;
}

static struct pdf_look look_of(struct bytes bytes)
{
    return pdf_look(bytes, pdf_case.arena);
}

static void our_own_are_whole(void **state)
{
    (void)state;
    struct pdf_look look = look_of(document_made("Žarko & co: <cards> \"two\""));
    assert_null(look.wrong);
    assert_true(look.ours);
    assert_int_equal(look.pages, 3);
    assert_string_equal(look.title, "Žarko & co: <cards> \"two\"");
    assert_string_equal(look.language, "en");
    assert_int_equal(look.code_count, 0);
}

/* A file that another program has written again: its table is a stream. */
static struct bytes stored_read(const char *name)
{
    const char *hex = command_read(text_format(pdf_case.arena, "od -An -v -tx1 %s | tr -d ' \\n'",
                                               name));
    size_t length = strlen(hex) / 2;
    unsigned char *bytes = arena_alloc(pdf_case.arena, length);
    for (size_t i = 0; i < length; i++) {
        const char *upper = "0123456789abcdef";
        bytes[i] = (unsigned char)(16 * (strchr(upper, hex[2 * i]) - upper) +
                                   (strchr(upper, hex[2 * i + 1]) - upper));
    }
    return (struct bytes){bytes, length};
}

static void those_of_others_are_whole(void **state)
{
    (void)state;
    bytes_store(document_made("Cards"), "ours.pdf");
    command_read("qpdf --object-streams=generate ours.pdf streams.pdf");
    command_read("qpdf --object-streams=disable --qdf ours.pdf plain.pdf");
    assert_null(look_of(stored_read("streams.pdf")).wrong);
    struct pdf_look plain = look_of(stored_read("plain.pdf"));
    assert_null(plain.wrong);
    assert_int_equal(plain.pages, 3);
}

/* However much is missing at the end but for the last line end. */
static void every_cut_is_seen(void **state)
{
    (void)state;
    struct bytes whole = document_made("Cards");
    size_t step = whole.length / 700 + 1;
    for (size_t length = 0; length < whole.length - 1; length += step)
        assert_non_null(look_of((struct bytes){whole.at, length}).wrong);
    for (size_t less = 2; less < 400; less++)
        assert_non_null(look_of((struct bytes){whole.at, whole.length - less}).wrong);
}

/* A cut file with the end of the whole one behind it, as where a disk lost what is between. */
static void what_lacks_in_the_middle_is_seen(void **state)
{
    (void)state;
    struct bytes whole = document_made("Cards");
    for (size_t from = 100; from + 700 < whole.length; from += whole.length / 60) {
        unsigned char *copy = arena_alloc(pdf_case.arena, whole.length);
        memcpy(copy, whole.at, from);
        memcpy(copy + from, whole.at + from + 512, whole.length - from - 512);
        assert_non_null(look_of((struct bytes){copy, whole.length - 512}).wrong);
    }
}

/* Where the bytes of the next packed stream begin from `at` on; 0: there is none. */
static size_t packed_after(struct bytes whole, size_t at)
{
    static const char head[] = "stream\r\n";
    for (size_t length = sizeof head - 1; at + length + 40 < whole.length; at++)
        if (memcmp(whole.at + at, head, length) == 0 && (whole.at[at + length] & 0x0F) == 8)
            return at + length;
    return 0;
}

/* Of the bytes of packed streams nearly each that is another is seen, by the sum in the stream. */
static void flipped_streams_are_seen(void **state)
{
    (void)state;
    struct bytes whole = document_made("Cards");
    unsigned char *copy = arena_alloc(pdf_case.arena, whole.length);
    size_t tried = 0, seen = 0, at = 0;

    memcpy(copy, whole.at, whole.length);
    while ((at = packed_after(whole, at)) > 0) {
        copy[at + 20] ^= 0x10;
        seen += look_of((struct bytes){copy, whole.length}).wrong != NULL ? 1 : 0;
        copy[at + 20] ^= 0x10;
        tried++;
    }
    assert_true(tried >= 3);
    assert_int_equal(seen, tried);
}

static void what_is_no_pdf_is_told(void **state)
{
    static const char *const texts[] = {"", "%PDF-1.7\n%%EOF\n", "not at all", "%PDF-1.7\nxref\n",
                                        "%PDF-1.7\nstartxref\n9999999999\n%%EOF\n",
                                        "%PDF-1.7\nstartxref\n0\n%%EOF\n",
                                        "%PDF-1.7\nxref\n0 4194305\nstartxref\n9\n%%EOF",
                                        "%PDF-1.7\nxref\n0 1\n0000000000 65535 f \n"
                                        "trailer\n<<>>\nstartxref\n9\n%%EOF",
                                        "<x:xmpmeta <dc:title><rdf:li </x:xmpmeta>"};
    (void)state;
    for (size_t i = 0; i < sizeof texts / sizeof *texts; i++)
        assert_non_null(look_of((struct bytes){(const unsigned char *)texts[i],
                                               strlen(texts[i])}).wrong);
}

/* A table in very many sections takes no more memory than one of as many objects. */
static void many_sections_take_little(void **state)
{
    struct arena *small = arena_new((size_t)4 * 1024 * 1024);
    struct text_builder text = text_builder_in(pdf_case.arena);
    (void)state;
    text_add(&text, "%PDF-1.7\nxref\n");
    for (int i = 0; i < 20000; i++)
        text_add_format(&text, "%d 1\n0000000000 65535 f \n", i);
    text_add(&text, "trailer\n<</Root 1 0 R>>\nstartxref\n9\n%%EOF\n");
    struct pdf_look look = pdf_look((struct bytes){(const unsigned char *)text.at, text.length},
                                    small);
    assert_null(look.wrong);
    assert_int_equal(look.pages, 0);
    arena_free(small);
}

/* What a terminal would obey is not told on. */
static void signs_that_harm_are_not_told_on(void **state)
{
    static const char text[] = "%PDF-<x:xmpmeta <dc:title><rdf:li>a\x1B[31m\xFF</rdf:li></dc:title>"
                               "<xmp:Identifier><rdf:li>0TJ8-GE2D flooding</rdf:li>"
                               "<rdf:li>nothing</rdf:li></xmp:Identifier></x:xmpmeta>";
    (void)state;
    struct pdf_look look = look_of((struct bytes){(const unsigned char *)text, strlen(text)});
    assert_string_equal(look.title, "a?[31m?");
    assert_int_equal(look.code_count, 1);
    assert_string_equal(look.codes[0].code, "0TJ8-GE2D");
    assert_string_equal(look.codes[0].card, "flooding");
    assert_false(look.ours);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(our_own_are_whole),
        cmocka_unit_test(those_of_others_are_whole),
        cmocka_unit_test(every_cut_is_seen),
        cmocka_unit_test(what_lacks_in_the_middle_is_seen),
        cmocka_unit_test(flipped_streams_are_seen),
        cmocka_unit_test(what_is_no_pdf_is_told),
        cmocka_unit_test(many_sections_take_little),
        cmocka_unit_test(signs_that_harm_are_not_told_on),
    };

    return cmocka_run_group_tests_name("pdf_look", tests, pdf_case_open, pdf_case_close) != 0;
}
