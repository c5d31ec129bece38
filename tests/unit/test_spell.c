/* test_spell.c - code words, numbers in threes, and the name to be spoken. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "arena.h"
#include "problem.h"
#include "radio.h"
#include "text.h"

static struct arena *arena;
static struct problems *problems;

static int set_up(void **state)
{
    (void)state;
    arena = arena_new((size_t)1 << 20);
    return arena == NULL;
}

static int tear_down(void **state)
{
    (void)state;
    arena_free(arena);
    return 0;
}

static void spells(const char *word, const char *expected)
{
    uint32_t bad = 0;
    const char *spelled = spell(arena, word, &bad);
    assert_non_null(spelled);
    assert_string_equal(spelled, expected);
}

static void refuses(const char *word, uint32_t code_point)
{
    uint32_t bad = 0;
    assert_null(spell(arena, word, &bad));
    assert_int_equal(bad, code_point);
}

static void every_letter_has_its_code_word(void **state)
{
    (void)state;
    spells("ABCDEFGHIJKLM", "ALFA BRAVO CHARLIE DELTA ECHO FOXTROT GOLF HOTEL INDIA JULIETT "
                            "KILO LIMA MIKE");
    spells("NOPQRSTUVWXYZ", "NOVEMBER OSCAR PAPA QUEBEC ROMEO SIERRA TANGO UNIFORM VICTOR "
                            "WHISKEY X-RAY YANKEE ZULU");
}

static void digits_are_plain_words(void **state)
{
    (void)state;
    spells("0123456789", "ZERO ONE TWO THREE FOUR FIVE SIX SEVEN EIGHT NINE");
}

static void call_signs_are_spelled(void **state)
{
    (void)state;
    spells("QTAB2", "QUEBEC TANGO ALFA BRAVO TWO");
    spells("9A2345", "NINE ALFA TWO THREE FOUR FIVE");
    spells("3E2345", "THREE ECHO TWO THREE FOUR FIVE");
    spells("5E12", "FIVE ECHO ONE TWO");
}

static void names_are_spelled_in_either_case(void **state)
{
    (void)state;
    spells("Tamarisk", "TANGO ALFA MIKE ALFA ROMEO INDIA SIERRA KILO");
    spells("OERE", "OSCAR ECHO ROMEO ECHO");
    spells("CIST", "CHARLIE INDIA SIERRA TANGO");
    spells("NU", "NOVEMBER UNIFORM");
    spells("Off", "OSCAR FOXTROT FOXTROT");
}

static void signs_are_said_or_left_out(void **state)
{
    (void)state;
    spells("SEA-ME", "SIERRA ECHO ALFA HYPHEN MIKE ECHO");
    spells("A & B", "ALFA / AND / BRAVO");
    spells("A2 B", "ALFA TWO / BRAVO");
    spells("L'EX", "LIMA ECHO X-RAY");
    spells("L\xE2\x80\x99" "EXEMPLE", "LIMA ECHO X-RAY ECHO MIKE PAPA LIMA ECHO");
    spells("ST. IO", "SIERRA TANGO / INDIA OSCAR");
}

static void spaces_make_one_pause_and_none_at_the_ends(void **state)
{
    (void)state;
    spells("  A  B ", "ALFA / BRAVO");
    spells("", "");
    spells(" ", "");
}

static void other_characters_are_refused(void **state)
{
    (void)state;
    refuses("\xC3\x96re", 0xD6);               /* composed */
    refuses("O\xCC\x88re", 0x308);             /* decomposed */
    refuses("N\xC2\xBA 1", 0xBA);              /* ordinal sign */
    refuses("\xD0\xA1\xD0\x92", 0x421);        /* Cyrillic that looks like Latin */
    refuses("A_B", '_');
    refuses("A\tB", '\t');
    refuses("A\xFF", 0xFFFD);                  /* no valid UTF-8 */
    refuses("\xEF\xBC\x92", 0xFF12);           /* full-width digit */
}

static void mmsi_is_grouped(void **state)
{
    (void)state;
    assert_string_equal(mmsi_in_threes(arena, "200014730"), "200 014 730");
    assert_string_equal(mmsi_in_threes(arena, "238 123 456"), "238 123 456");
    assert_string_equal(mmsi_in_threes(arena, "2381\xC2\xA0" "23456"), "238 123 456");
    assert_string_equal(mmsi_in_threes(arena, ""), "");
}

/* ---- names ---- */

static struct text_value text_at(const char *text, int line)
{
    return (struct text_value){.text = text, .place = {.line = line}};
}

/* The only problem, which must be of this severity. */
static const struct problem *only(enum severity severity)
{
    size_t count = 0;
    const struct problem *all = problems_sorted(problems, &count);
    assert_int_equal(count, 1);
    assert_int_equal(all[0].severity, severity);
    assert_non_null(all[0].remedy);
    return all;
}

static void tells(enum severity severity, const char *words, int line)
{
    const struct problem *problem = only(severity);
    if (strstr(problem->what, words) == NULL)
        fail_msg("`%s` does not say `%s`", problem->what, words);
    assert_int_equal(problem->place.line, line);
}

static void is_silent(void)
{
    size_t count = 0;
    problems_sorted(problems, &count);
    assert_int_equal(count, 0);
}

static const char *name_said(const char *name, const char *latin, const char *spoken)
{
    struct boat boat = {.key = "boat"};
    boat.facts.name = text_at(name, 3);
    boat.facts.name_latin = text_at(latin, 6);
    boat.facts.name_spoken = text_at(spoken, 7);
    problems = problems_new(arena);
    return spoken_name(&boat, arena, problems);
}

static void plain_names_are_said_in_capitals(void **state)
{
    (void)state;
    assert_string_equal(name_said("Tamarisk", NULL, NULL), "TAMARISK");
    assert_string_equal(name_said("Off", NULL, NULL), "OFF");
    assert_string_equal(name_said("Sea-Me & Co.", NULL, NULL), "SEA-ME & CO.");
    assert_string_equal(name_said("L'Exemple", NULL, NULL), "L'EXEMPLE");
    is_silent();
    assert_string_equal(name_said("\xC3\x96re", "Oere", NULL), "OERE");
    is_silent();
    assert_string_equal(name_said("\xC3\x96re", "Oere", "Orray"), "ORRAY");
    is_silent();
}

/* A Latin spelling is proposed to people and never used by itself. */
static void other_letters_are_errors_with_a_proposal(void **state)
{
    (void)state;
    static const struct { const char *name, *code_point, *proposal; } names[] = {
        {"\xC3\x96re", "U+00D6", "OERE"}, {"O\xCC\x88re", "U+00D6", "OERE"},
        {"\xC4\x8Cist", "U+010C", "CIST"}, {"\xC3\x91u", "U+00D1", "NU"},
        {"I\xC5\x9F\xC4\xB1k", "U+015E", "ISIK"}, {"\xC3\x85sa", "U+00C5", "AASA"},
        {"\xC5\x81una", "U+0141", "LUNA"}, {"\xC3\x9E\xC3\xB3r", "U+00DE", "THOR"},
        {"\xCE\x91\xCE\x92\xCE\x93", "U+0391", "AVG"},
        {"\xCE\x86\xCE\xB8\xCF\x82", "U+0386", "ATHS"},
        {"\xD0\xA2\xD0\xB5\xD1\x81\xD1\x82", "U+0422", "TEST"},
        {"\xD0\x99\xD0\xBE\xD0\xB6", "U+0419", "IOZH"},
    };
    for (size_t i = 0; i < sizeof names / sizeof names[0]; i++) {
        assert_null(name_said(names[i].name, NULL, NULL));
        tells(SEVERITY_ERROR, names[i].code_point, 3);
        const char *wanted = text_format(arena, "name_latin: %s", names[i].proposal);
        assert_non_null(strstr(only(SEVERITY_ERROR)->remedy, wanted));
    }
}

static void sharp_s_is_proposed_as_two(void **state)
{
    (void)state;
    assert_null(name_said("Stra\xC3\x9F" "e", NULL, NULL));
    assert_non_null(strstr(only(SEVERITY_ERROR)->remedy, "name_latin: STRASSE"));
}

static void characters_nobody_can_say_get_no_proposal(void **state)
{
    (void)state;
    static const char *const names[] = {"N\xC2\xBA 1", "\xE8\x88\x9F", "A_B", "\xE2\x98\xA0"};
    for (size_t i = 0; i < sizeof names / sizeof names[0]; i++) {
        assert_null(name_said(names[i], NULL, NULL));
        assert_non_null(strstr(only(SEVERITY_ERROR)->remedy, "name_latin:"));
        assert_null(strstr(only(SEVERITY_ERROR)->remedy, "proposed"));
    }
    assert_null(name_said("-", NULL, NULL));
    tells(SEVERITY_ERROR, "no letter", 3);
    assert_null(name_said(NULL, NULL, NULL));
    tells(SEVERITY_ERROR, "no name", 0);
}

static void other_letters_in_given_spellings_are_errors_too(void **state)
{
    (void)state;
    assert_null(name_said("Tamarisk", "T\xC3\xA4m", NULL));
    tells(SEVERITY_ERROR, "U+00C4", 6);
    assert_null(name_said("Tamarisk", NULL, "T\xC3\xA4m"));
    tells(SEVERITY_ERROR, "U+00C4", 7);
}

/* What the rescuers look up is spelled: the licence's name, not how it sounds. */
static void the_licence_s_name_is_spelled(void **state)
{
    (void)state;
    static const struct { const char *name, *latin, *spoken, *said, *spelled; } names[] = {
        {"Tamarisk", NULL, NULL, "TAMARISK", "TAMARISK"},
        {"Tamarisk", NULL, "Tammarisk", "TAMMARISK", "TAMARISK"},
        {"Anna II", NULL, "Anna Two", "ANNA TWO", "ANNA II"},
        {"\xC3\x96re", "Oere", "Orray", "ORRAY", "OERE"},
        {"\xC3\x96re", "Oere", NULL, "OERE", "OERE"},
        {"\xC3\x96re", NULL, "Orray", "ORRAY", "ORRAY"},
    };
    for (size_t i = 0; i < sizeof names / sizeof names[0]; i++) {
        struct boat boat = {.key = "boat"};
        boat.facts.name = text_at(names[i].name, 3);
        boat.facts.name_latin = text_at(names[i].latin, 6);
        boat.facts.name_spoken = text_at(names[i].spoken, 7);
        problems = problems_new(arena);
        assert_string_equal(spoken_name(&boat, arena, problems), names[i].said);
        assert_string_equal(spelled_name(&boat, arena, problems), names[i].spelled);
        is_silent();
    }
    struct boat boat = {.key = "boat"};
    boat.facts.name = text_at("\xC3\x96re", 3);
    problems = problems_new(arena);
    assert_null(spelled_name(&boat, arena, problems));
    tells(SEVERITY_ERROR, "cannot be called out", 3);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(every_letter_has_its_code_word),
        cmocka_unit_test(digits_are_plain_words),
        cmocka_unit_test(call_signs_are_spelled),
        cmocka_unit_test(names_are_spelled_in_either_case),
        cmocka_unit_test(signs_are_said_or_left_out),
        cmocka_unit_test(spaces_make_one_pause_and_none_at_the_ends),
        cmocka_unit_test(other_characters_are_refused),
        cmocka_unit_test(mmsi_is_grouped),
        cmocka_unit_test(plain_names_are_said_in_capitals),
        cmocka_unit_test(other_letters_are_errors_with_a_proposal),
        cmocka_unit_test(sharp_s_is_proposed_as_two),
        cmocka_unit_test(characters_nobody_can_say_get_no_proposal),
        cmocka_unit_test(other_letters_in_given_spellings_are_errors_too),
        cmocka_unit_test(the_licence_s_name_is_spelled),
    };
    int failed = cmocka_run_group_tests(tests, set_up, tear_down);
    return failed != 0;
}
