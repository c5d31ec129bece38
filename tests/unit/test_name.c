/* test_name.c - names taken apart: what is called out, what is spelled, what is only
 * proposed. Vectors P01 to P15. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "arena.h"
#include "radio.h"
#include "text.h"

static struct arena *arena;

static int set_up(void **state)
{
    (void)state;
    arena = arena_new((size_t)1 << 22);
    return arena == NULL;
}

static int tear_down(void **state)
{
    (void)state;
    arena_free(arena);
    return 0;
}

/* ---- names that can be called out as they are ---- */

static void plain_names_are_spoken_and_spelled(void **state)
{
    (void)state;
    static const struct { const char *text, *spoken, *spelled; } names[] = {
        {"Tamarisk", "TAMARISK", "TANGO ALFA MIKE ALFA ROMEO INDIA SIERRA KILO"},
        {"Off", "OFF", "OSCAR FOXTROT FOXTROT"},
        {"Sea-Me & Co. 2", "SEA-ME & CO. 2",
         "SIERRA ECHO ALFA HYPHEN MIKE ECHO / AND / CHARLIE OSCAR / TWO"},
        {"L\xE2\x80\x99" "Exemple", "L\xE2\x80\x99" "EXEMPLE",
         "LIMA ECHO X-RAY ECHO MIKE PAPA LIMA ECHO"},
        {"5E12", "5E12", "FIVE ECHO ONE TWO"},
    };
    for (size_t i = 0; i < sizeof names / sizeof names[0]; i++) {
        struct name name;
        assert_true(name_decode(names[i].text, arena, &name));
        assert_string_equal(name.spoken, names[i].spoken);
        assert_string_equal(name.spelled, names[i].spelled);
        assert_null(name.proposal);
        assert_null(name_fault_words(&name, arena));
        assert_int_equal(name.typographic, strstr(names[i].text, "\xE2\x80\x99") != NULL);
    }
}

/* ---- names that only get a proposal ---- */

static const struct vector {
    const char *name, *text;
    uint32_t code_point;         /* the first that cannot be called out, in capitals */
    const char *proposal, *other;
    enum name_alphabet alphabet;
} vectors[] = {
    {"P01", "\xC3\x96re", 0xD6, "OERE", "ORE", ALPHABET_LATIN},
    {"P02", "O\xCC\x88re", 0xD6, "OERE", "ORE", ALPHABET_LATIN},
    {"P03", "\xC4\x8Cist", 0x10C, "CIST", NULL, ALPHABET_LATIN},
    {"P03 NFD", "C\xCC\x8Cist", 0x10C, "CIST", NULL, ALPHABET_LATIN},
    {"P04", "\xC3\x91u", 0xD1, "NU", NULL, ALPHABET_LATIN},
    {"P06", "Stra\xC3\x9F" "e", 0, "STRASSE", NULL, ALPHABET_LATIN},
    {"P07", "I\xC5\x9F\xC4\xB1k", 0x15E, "ISIK", NULL, ALPHABET_LATIN},
    {"dotted I", "\xC4\xB0zmir", 0x130, "IZMIR", NULL, ALPHABET_LATIN},
    {"double acute", "F\xC5\x91", 0x150, "FO", NULL, ALPHABET_LATIN},
    {"A-ring", "\xC3\x85sa", 0xC5, "AASA", "ASA", ALPHABET_LATIN},
    {"U-diaeresis", "\xC3\x9C" "ber", 0xDC, "UEBER", "UBER", ALPHABET_LATIN},
    {"D-stroke", "\xC4\x90uro", 0x110, "DURO", "DJURO", ALPHABET_LATIN},
    {"thorn", "\xC3\x9E\xC3\xB3r", 0xDE, "THOR", NULL, ALPHABET_LATIN},
    {"L-stroke", "\xC5\x81una", 0x141, "LUNA", NULL, ALPHABET_LATIN},
    {"P11", "\xCE\x91\xCE\x92\xCE\x93", 0x391, "AVG", NULL, ALPHABET_GREEK},
    {"tonos, final sigma", "\xCE\x86\xCE\xB8\xCF\x82", 0x386, "ATHS", NULL, ALPHABET_GREEK},
    {"omicron upsilon", "\xCE\xA0\xCE\xBF\xCF\x8D", 0x3A0, "POU", NULL, ALPHABET_GREEK},
    {"alpha upsilon, voiced", "\xCE\x91\xCF\x8D\xCF\x81\xCE\xB1", 0x391, "AVRA", NULL,
     ALPHABET_GREEK},
    {"epsilon upsilon, voiceless", "\xCE\x95\xCF\x85\xCF\x84", 0x395, "EFT", NULL,
     ALPHABET_GREEK},
    {"epsilon upsilon at the end", "\xCE\x95\xCF\x8D", 0x395, "EF", NULL, ALPHABET_GREEK},
    {"diaeresis parts", "\xCE\x91\xCF\x8B", 0x391, "AY", NULL, ALPHABET_GREEK},
    {"two gammas", "\xCE\x91\xCE\x93\xCE\x93\xCE\x91", 0x391, "ANGA", NULL, ALPHABET_GREEK},
    {"mu pi in front", "\xCE\x9C\xCF\x80\xCE\xB1", 0x39C, "BA", NULL, ALPHABET_GREEK},
    {"mu pi within", "\xCE\x91\xCE\xBC\xCF\x80\xCE\xB1", 0x391, "AMPA", NULL, ALPHABET_GREEK},
    {"P12", "\xD0\xA2\xD0\xB5\xD1\x81\xD1\x82", 0x422, "TEST", NULL, ALPHABET_CYRILLIC},
    {"zhe", "\xD0\x99\xD0\xBE\xD0\xB6", 0x419, "IOZH", NULL, ALPHABET_CYRILLIC},
    {"Serbian", "\xD0\x89\xD1\x83\xD0\xB1\xD0\xB0\xD0\x8F", 0x409, "LJUBADZ", NULL,
     ALPHABET_CYRILLIC},
    {"he and y without Ukrainian letters", "\xD0\x93\xD0\xB8", 0x413, "GI", NULL,
     ALPHABET_CYRILLIC},
    {"he and y with Ukrainian letters", "\xD0\x93\xD0\xB8\xD1\x96", 0x413, "HYI", NULL,
     ALPHABET_CYRILLIC},
    {"full-width digit", "Anna \xEF\xBC\x92", 0xFF12, "ANNA 2", NULL, ALPHABET_LATIN},
    {"Cyrillic in a Latin name", "T\xD0\xB0mar\xD0\xB2", 0x410, "TAMARB", "TAMARV",
     ALPHABET_MIXED},
    {"Latin in a Cyrillic name", "T\xD0\xB0\xD0\xBC\xD0\xB0\xD1\x80\xD0\xB0", 0x410, "TAMAPA",
     "TAMARA", ALPHABET_MIXED},
    {"dotless i alone", "Bal\xC4\xB1k", 0x131, "BALIK", NULL, ALPHABET_LATIN},
    {"long s", "\xC5\xBFun", 0x17F, "SUN", NULL, ALPHABET_LATIN},
};

static void other_letters_get_a_proposal_and_no_speech(void **state)
{
    (void)state;
    for (size_t i = 0; i < sizeof vectors / sizeof vectors[0]; i++) {
        const struct vector *vector = &vectors[i];
        struct name name;
        assert_false(name_decode(vector->text, arena, &name));
        if (!text_equal(name.proposal, vector->proposal) ||
            !text_equal(name.other_proposal, vector->other) ||
            name.fault != NAME_OTHER_LETTERS || name.alphabet != vector->alphabet)
            fail_msg("%s: %s or %s, fault %d, alphabet %d", vector->name,
                     name.proposal == NULL ? "nothing" : name.proposal,
                     name.other_proposal == NULL ? "nothing" : name.other_proposal,
                     (int)name.fault, (int)name.alphabet);
        if (vector->code_point != 0)
            assert_int_equal(name.code_point, vector->code_point);
        assert_null(name.spoken);
        assert_null(name.spelled);
        assert_non_null(strstr(name_remedy(&name, arena),
                               text_format(arena, "name_latin: %s", vector->proposal)));
    }
}

static void the_second_spelling_is_offered_too(void **state)
{
    (void)state;
    struct name name;
    assert_false(name_decode("\xC3\x96re", arena, &name));
    assert_true(text_ends(name_remedy(&name, arena), "name_latin: OERE (or ORE)"));
}

static void what_nobody_can_say_gets_none(void **state)
{
    (void)state;
    static const struct { const char *text; size_t at; uint32_t code_point; } names[] = {
        {"N\xC2\xBA 1", 2, 0xBA}, {"\xE8\x88\x9F", 1, 0x821F}, {"A_B", 2, '_'},
        {"\xE2\x98\xA0", 1, 0x2620}, {"A/B", 2, '/'}, {"A\xFF", 2, 0xFFFD},
    };
    for (size_t i = 0; i < sizeof names / sizeof names[0]; i++) {
        struct name name;
        assert_false(name_decode(names[i].text, arena, &name));
        assert_int_equal(name.fault, NAME_UNSPEAKABLE);
        assert_int_equal(name.at, names[i].at);
        assert_int_equal(name.code_point, names[i].code_point);
        assert_null(name.proposal);
        assert_null(strstr(name_remedy(&name, arena), "proposed"));
    }
}

static void a_name_without_letters_is_none(void **state)
{
    (void)state;
    static const char *const names[] = {"", "-", "' .", "&"};
    for (size_t i = 0; i < sizeof names / sizeof names[0]; i++) {
        struct name name;
        assert_false(name_decode(names[i], arena, &name));
        assert_int_equal(name.fault, NAME_EMPTY);
        assert_null(name.spoken);
    }
}

static void numerals_are_seen(void **state)
{
    (void)state;
    static const struct { const char *text, *roman, *word; size_t at; } names[] = {
        {"Anna II", "II", "TWO", 5}, {"Anna iv", "IV", "FOUR", 5},
        {"Anna Maria III", "III", "THREE", 11}, {"Anna V", "V", "FIVE", 5},
        {"Anna I", "I", "ONE", 5}, {"Anna-XX", "XX", "TWENTY", 5}, {"Anna VII.", "VII", "SEVEN", 5},
        {"Anna II of Split", "II", "TWO", 5}, {"Anna III-B", "III", "THREE", 5},
        {"A. IX", "IX", "NINE", 3}, {"Anna Vi", "VI", "SIX", 5}, {"Anna - II", "II", "TWO", 7},
        {"II", NULL, NULL, 0}, {"II Anna", NULL, NULL, 0}, {"Anna Vi A", NULL, NULL, 0},
        {"Anna V Maria", NULL, NULL, 0}, {"Anna IIII", NULL, NULL, 0}, {"Anna 2", NULL, NULL, 0},
        {"Anna XXI", NULL, NULL, 0}, {"Anna-", NULL, NULL, 0}, {"Anna .", NULL, NULL, 0},
        {"AnnaII", NULL, NULL, 0},
    };
    for (size_t i = 0; i < sizeof names / sizeof names[0]; i++) {
        struct name name;
        assert_true(name_decode(names[i].text, arena, &name));
        if (!text_equal(name.roman, names[i].roman))
            fail_msg("%s: %s", names[i].text, name.roman == NULL ? "none" : name.roman);
        assert_true(text_equal(name.roman_word, names[i].word));
        assert_int_equal(name.roman_at, names[i].at);
    }
}

static void characters_are_counted(void **state)
{
    (void)state;
    struct name name;
    assert_true(name_decode("Tamarisk of the Marsh", arena, &name));
    assert_int_equal(name.length, 21);
    assert_true(name_decode("L\xE2\x80\x99" "Ex", arena, &name));
    assert_int_equal(name.length, 4);
    assert_false(name_decode("\xC3\x96re", arena, &name));
    assert_int_equal(name.length, 4);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(plain_names_are_spoken_and_spelled),
        cmocka_unit_test(other_letters_get_a_proposal_and_no_speech),
        cmocka_unit_test(the_second_spelling_is_offered_too),
        cmocka_unit_test(what_nobody_can_say_gets_none),
        cmocka_unit_test(a_name_without_letters_is_none),
        cmocka_unit_test(numerals_are_seen),
        cmocka_unit_test(characters_are_counted),
    };
    int failed = cmocka_run_group_tests(tests, set_up, tear_down);
    return failed != 0;
}
