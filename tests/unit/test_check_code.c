/* test_check_code.c - the short code: its published answers, and that whatever a
 * reader would see changed changes it. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>
#include <zlib.h>

#include "card_fixture.h"
#include "text.h"

static const char *code_of(const char *bytes, size_t length)
{
    return check_code_of((const unsigned char *)bytes, length, test.arena);
}

/* CRC-32 values are published; seven base-32 signs and value mod 37 follow. */
static void published_answers(void **state)
{
    (void)state;
    static const struct { const char *text; uint32_t crc; const char *code; } answers[] = {
        {"", 0x00000000, "0000-0000"},
        {"abc", 0x352441C2, "0TJ8-GE22"},
        {"123456789", 0xCBF43926, "35Z8-E96Q"},
        {"card: fire\nboat: 12\nrev: 1\n", 0x09577449, "04NE-X296"},
        {"card: fire\nboat: 12\nrev: 2\n", 0x227A278A, "0H7M-9WAG"}};
    for (size_t i = 0; i < sizeof answers / sizeof answers[0]; i++) {
        assert_int_equal(crc32(0, (const Bytef *)answers[i].text,
                               (uInt)strlen(answers[i].text)), answers[i].crc);
        assert_true(answers[i].crc % 37 < 32);
        assert_string_equal(code_of(answers[i].text, strlen(answers[i].text)), answers[i].code);
    }
}

/* Worked out by hand from CRC-32 alone: the first check values are 32 to 36. */
static void awkward_check_values_are_hashed_again(void **state)
{
    (void)state;
    assert_string_equal(code_of("125", 3), "0107-MNWC");  /* counter 1 gives 32 or more too */
    assert_string_equal(code_of("169", 3), "2MVY-DBCW");
    assert_string_equal(code_of("194", 3), "0BMT-30WV");
    assert_string_equal(code_of("461", 3), "0GVY-ZY0A");  /* up to counter 3 */
}

static uint32_t sign_value(char sign)
{
    static const char signs[] = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
    const char *at = strchr(signs, sign);
    assert_non_null(at);
    return (uint32_t)(at - signs);
}

/* Read back by hand: the seven signs are the value, the eighth its rest by 37. */
static void the_check_sign_is_the_value_mod_37(void **state)
{
    (void)state;
    for (int i = 0; i < 3000; i++) {
        const char *text = text_format(test.arena, "card %d", i);
        const char *code = code_of(text, strlen(text));
        uint64_t value = 0;
        assert_int_equal(strlen(code), 9);
        assert_int_equal(code[4], '-');
        for (size_t s = 0; s < 8; s++)
            if (s != 4)
                value = value * 32 + sign_value(code[s]);
        assert_true(value <= UINT32_MAX);
        assert_int_equal(sign_value(code[8]), value % 37);
    }
}

/* ---- of a card ---- */

static struct sheet card_of(const char *boat, const char *key)
{
    case_boat(&test, boat);
    return *case_card(case_compose(&test, false), key);
}

static const char *code(const struct sheet *card)
{
    return check_code(card, test.arena);
}

/* The word is replaced where it stands; the code must follow. */
static void must_matter(const struct sheet *card, const char **word, const char *what)
{
    const char *before = *word, *old = code(card);
    *word = before == NULL ? "x" : text_format(test.arena, "%sx", before);
    if (strcmp(old, code(card)) == 0)
        fail_msg("%s may change without the code following", what);
    *word = before;
    assert_string_equal(old, code(card));
}

static void the_print_date_does_not_matter(void **state)
{
    (void)state;
    struct sheet first = card_of("tests/fleet/boats/tamarisk.yaml", "engine_fire");
    test.today = (struct date){2027, 1, 3};
    struct sheet later = card_of("tests/fleet/boats/tamarisk.yaml", "engine_fire");
    assert_string_not_equal(sheet_footer(&first)->printed, sheet_footer(&later)->printed);
    assert_string_equal(sheet_footer(&first)->code, sheet_footer(&later)->code);
}

/* Each of them, since room on the page is no fact of the card. */
static void every_figure_matters(void **state)
{
    (void)state;
    struct sheet card = card_of("tests/fleet/boats/samphire.yaml", "flooding");
    struct steps_facts *steps = FACTS(test.arena, &card, steps, BLOCK_STEPS);
    struct card_figure *figures = arena_array(test.arena, steps->figure_count, sizeof *figures);
    assert_true(steps->figure_count > 1);      /* more than her card has room for */
    memcpy(figures, steps->figures, steps->figure_count * sizeof *figures);
    steps->figures = figures;
    for (size_t i = 0; i < steps->figure_count; i++)
        must_matter(&card, &figures[i].text, "a figure");
}

/* What hangs on the day stands on the card and not in the code; an approval is in both. */
static void gear_out_of_date_keeps_the_code(void **state)
{
    (void)state;
    struct sheet first = card_of("tests/fleet/boats/tamarisk.yaml", "engine_fire");
    test.today = (struct date){2041, 1, 3};
    struct sheet later = card_of("tests/fleet/boats/tamarisk.yaml", "engine_fire");
    assert_string_not_equal(sheet_footer(&first)->dates, sheet_footer(&later)->dates);
    assert_string_equal(sheet_footer(&first)->left[1], sheet_footer(&later)->left[1]);
    assert_string_equal(sheet_footer(&first)->code, sheet_footer(&later)->code);
    FACTS(test.arena, &later, footer, BLOCK_FOOTER)->undated++;
    assert_string_not_equal(code(&first), code(&later));
}

static void composed_twice_the_codes_are_equal_and_all_differ(void **state)
{
    (void)state;
    static const char *const boats[] = {"tests/fleet/boats/tamarisk.yaml",
                                        "tests/fleet/boats/samphire.yaml"};
    const char *codes[64];
    size_t count = 0;
    for (size_t b = 0; b < 2; b++) {
        case_boat(&test, boats[b]);
        const struct sheet_set *first = case_compose(&test, false);
        const struct sheet_set *second = case_compose(&test, false);
        assert_int_equal(first->count, second->count);
        for (size_t i = 0; i < first->count; i++) {
            const char *own = sheet_footer(first->sheets[i])->code;
            assert_string_equal(own, sheet_footer(second->sheets[i])->code);
            if (text_equal(first->sheets[i]->page, "B"))
                continue;
            for (size_t j = 0; j < count; j++)
                assert_string_not_equal(own, codes[j]);
            codes[count++] = own;
        }
    }
    assert_true(count > 8);
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(published_answers),
        TEST(awkward_check_values_are_hashed_again),
        TEST(the_check_sign_is_the_value_mod_37),
        TEST(the_print_date_does_not_matter),
        TEST(every_figure_matters),
        TEST(gear_out_of_date_keeps_the_code),
        TEST(composed_twice_the_codes_are_equal_and_all_differ),
    };
    return cmocka_run_group_tests(tests, NULL, NULL) != 0;
}
