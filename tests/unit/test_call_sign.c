/* test_call_sign.c - call signs taken apart: what they are made of, holders of series,
 * patterns. Vectors C01 to C34. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "arena.h"
#include "radio.h"
#include "text.h"
#include "radio/administrations.h"

static void all_holders_are_found(void **state)
{
    (void)state;
    static const struct { const char *call_sign, *iso; } expected[] = {
        {"SVAB", "GR"}, {"9A2345", "HR"}, {"9A1234", "HR"}, {"ZM1726", "NZ"}, {"9HAB2", "MT"},
        {"2ABC3", "GB"}, {"FAB2345", "FR"}, {"WDE5678", "US"}, {"V2AB", "AG"}, {"5BAB2", "CY"},
        {"P3CD4", "CY"}, {"TCAB", "TR"}, {"DH4567", "DE"}, {"E7AB2", "BA"}, {"OXAB", "DK"},
        {"MABC2", "GB"}, {"PQ4821", "BR"}, {"SSAB", "EG"}, {"SSNB", "SD"}, {"3DAB", "SZ"},
        {"3DNB", "FJ"}, {"HBAB", "CH"}, {"F2AB2", "FR"}, {"ZDAB2", "GB"}, {"PJAB", "NL"},
        {"E5AB", "CK"}, {"ZJAB2", "GB"}, {"BMAB", "CN"}, {"5WAB", "WS"}, {"TFAB", "IS"},
        {"3E2345", "PA"}, {"9E2345", "ET"}, {"L4AB", "AR"}, {"4U2345", "UNO"}, {"SSM2", "EG"},
        {"AAA", "US"}, {"9ZZZ", "TT"}, {"ELZZ", "LR"}, {"EMAA", "UA"}, {"M0ABC", "GB"},
    };
    for (size_t i = 0; i < sizeof expected / sizeof expected[0]; i++) {
        const struct administration *who = call_sign_find(expected[i].call_sign);
        assert_non_null(who);
        assert_string_equal(who->iso, expected[i].iso);
    }
}

static void nobody_holds_these(void **state)
{
    (void)state;
    static const char *const none[] = {"QABC", "QTAB2", "QZ2345", "4NAB", "1AAB", "99AB", "0AAB",
                                       "S1AB", "T9AB", "YZAB", "22AB", "", "S", "SV"};
    for (size_t i = 0; i < sizeof none / sizeof none[0]; i++)
        assert_null(call_sign_find(none[i]));
}

/* Every beginning of two characters is looked at; those without a holder must be
 * the series published as unallocated, no more and no fewer. */
static void the_gaps_are_the_published_ones(void **state)
{
    (void)state;
    static const char signs[] = "ABCDEFGHIJKLMNOPQRSTUVWXYZ23456789";
    struct arena *arena = arena_new((size_t)1 << 20);
    struct text_builder gaps = text_builder_in(arena);
    const struct administration *owner, *other;
    for (const char *first = signs; *first != '\0'; first++)
        for (const char *second = signs; *second != '\0'; second++) {
            char key[] = {*first, *second, 'A', 'B', '\0'};
            if (*first != 'Q' && call_sign_series(key, &owner, &other) == SERIES_UNALLOCATED)
                text_add_format(&gaps, "%.2s ", key);
        }
    assert_string_equal(gaps.at,
        "E8 E9 H5 J9 O2 O3 O4 O5 O6 O7 O8 O9 S4 T9 U2 U3 U4 U5 U6 U7 U8 U9 V9 "
        "X2 X3 X4 X5 X6 X7 X8 X9 YZ Z4 Z5 Z6 Z7 Z9 4N ");
    arena_free(arena);
}

/* A letter in third place never falls between two series. */
static void no_series_ends_too_soon(void **state)
{
    (void)state;
    static const char signs[] = "ABCDEFGHIJKLMNOPQRSTUVWXYZ23456789";
    const struct administration *owner, *other;
    for (const char *first = signs; *first != '\0'; first++)
        for (const char *second = signs; *second != '\0'; second++) {
            char key[] = {*first, *second, 'A', 'B', '\0'};
            enum series_kind kind = call_sign_series(key, &owner, &other);
            for (; key[2] <= 'Z'; key[2]++)
                assert_int_equal(call_sign_series(key, &owner, &other), kind);
        }
}

static void all_of_q_is_unallocated(void **state)
{
    (void)state;
    static const char signs[] = "ABCDEFGHIJKLMNOPQRSTUVWXYZ23456789";
    const struct administration *owner, *other;
    for (const char *second = signs; *second != '\0'; second++) {
        char key[] = {'Q', *second, 'A', 'B', '\0'};
        assert_int_equal(call_sign_series(key, &owner, &other), SERIES_UNALLOCATED);
        assert_null(owner);
    }
}

static void halved_series_need_a_letter(void **state)
{
    (void)state;
    const struct administration *owner, *other;
    assert_int_equal(call_sign_series("3D2345", &owner, &other), SERIES_HALVED);
    assert_string_equal(owner->iso, "SZ");
    assert_string_equal(other->iso, "FJ");
    assert_null(call_sign_find("3D2345"));
    assert_int_equal(call_sign_series("SS2345", &owner, &other), SERIES_HALVED);
    assert_int_equal(call_sign_series("SSA2345", &owner, &other), SERIES_ALLOCATED);
    assert_string_equal(owner->iso, "EG");
}

static void impossible_beginnings_are_known(void **state)
{
    (void)state;
    static const char *const impossible[] = {"1AAB", "0AAB", "99AB", "22AB", "S1AB", "A0AB"};
    const struct administration *owner, *other;
    for (size_t i = 0; i < sizeof impossible / sizeof impossible[0]; i++)
        assert_int_equal(call_sign_series(impossible[i], &owner, &other), SERIES_IMPOSSIBLE);
}

static void patterns_are_told_apart(void **state)
{
    (void)state;
    static const struct { const char *call_sign; enum call_sign_pattern pattern; } expected[] = {
        {"SVAB", PATTERN_SHIP}, {"9A2345", PATTERN_SHIP}, {"9HAB2", PATTERN_SHIP},
        {"2ABC3", PATTERN_SHIP}, {"FAB2345", PATTERN_SHIP}, {"WDE5678", PATTERN_SHIP},
        {"V2AB", PATTERN_SHIP}, {"3E2345", PATTERN_SHIP}, {"QTAB2", PATTERN_SHIP},
        {"9A1234", PATTERN_SHIP_0_OR_1}, {"ZM1726", PATTERN_SHIP_0_OR_1},
        {"SVAB1", PATTERN_SHIP_0_OR_1}, {"FAB0345", PATTERN_SHIP_0_OR_1},
        {"SVAB22", PATTERN_SURVIVAL_CRAFT}, {"SVAB222", PATTERN_SURVIVAL_CRAFT},
        {"SVABC", PATTERN_AIRCRAFT}, {"SVA", PATTERN_LAND}, {"SVA2", PATTERN_LAND},
        {"SVA21", PATTERN_LAND}, {"SVA210", PATTERN_LAND},
        {"SV1ABC", PATTERN_AMATEUR}, {"9A2AB", PATTERN_AMATEUR}, {"SV9A", PATTERN_AMATEUR},
        {"W1AW", PATTERN_AMATEUR}, {"M0ABC", PATTERN_AMATEUR}, {"K1A", PATTERN_AMATEUR},
        {"2E0ABC", PATTERN_AMATEUR}, {"S1AB", PATTERN_UNKNOWN},
        {"99AB", PATTERN_UNKNOWN}, {"1AAB", PATTERN_UNKNOWN}, {"ABCDEF", PATTERN_UNKNOWN},
        {"2345", PATTERN_UNKNOWN}, {"5E12", PATTERN_UNKNOWN},
    };
    for (size_t i = 0; i < sizeof expected / sizeof expected[0]; i++)
        assert_int_equal(call_sign_pattern(expected[i].call_sign), expected[i].pattern);
}

/* ---- the whole, with a fault or without ---- */

static const struct vector {
    const char *name, *text;
    enum call_sign_fault fault;
    enum call_sign_pattern pattern;
    enum series_kind series;
    const char *iso;         /* the holder; NULL: none */
    size_t at;               /* the character at fault */
    char looks_like;
} vectors[] = {
    {"C01", "SVAB", CALL_SIGN_SOUND, PATTERN_SHIP, SERIES_ALLOCATED, "GR", 0, 0},
    {"C02", "9A2345", CALL_SIGN_SOUND, PATTERN_SHIP, SERIES_ALLOCATED, "HR", 0, 0},
    {"C03", "9A1234", CALL_SIGN_SOUND, PATTERN_SHIP_0_OR_1, SERIES_ALLOCATED, "HR", 0, 0},
    {"C04", "ZM1726", CALL_SIGN_SOUND, PATTERN_SHIP_0_OR_1, SERIES_ALLOCATED, "NZ", 0, 0},
    {"C05", "9HAB2", CALL_SIGN_SOUND, PATTERN_SHIP, SERIES_ALLOCATED, "MT", 0, 0},
    {"C06", "2ABC3", CALL_SIGN_SOUND, PATTERN_SHIP, SERIES_ALLOCATED, "GB", 0, 0},
    {"C07", "FAB2345", CALL_SIGN_SOUND, PATTERN_SHIP, SERIES_ALLOCATED, "FR", 0, 0},
    {"C08", "WDE5678", CALL_SIGN_SOUND, PATTERN_SHIP, SERIES_ALLOCATED, "US", 0, 0},
    {"C09", "V2AB", CALL_SIGN_SOUND, PATTERN_SHIP, SERIES_ALLOCATED, "AG", 0, 0},
    {"C10", "5BAB2", CALL_SIGN_SOUND, PATTERN_SHIP, SERIES_ALLOCATED, "CY", 0, 0},
    {"C11", "P3CD4", CALL_SIGN_SOUND, PATTERN_SHIP, SERIES_ALLOCATED, "CY", 0, 0},
    {"C12", "TCAB", CALL_SIGN_SOUND, PATTERN_SHIP, SERIES_ALLOCATED, "TR", 0, 0},
    {"C13", "DH4567", CALL_SIGN_SOUND, PATTERN_SHIP, SERIES_ALLOCATED, "DE", 0, 0},
    {"C14", "E7AB2", CALL_SIGN_SOUND, PATTERN_SHIP, SERIES_ALLOCATED, "BA", 0, 0},
    {"C15", "OXAB", CALL_SIGN_SOUND, PATTERN_SHIP, SERIES_ALLOCATED, "DK", 0, 0},
    {"C16", "MABC2", CALL_SIGN_SOUND, PATTERN_SHIP, SERIES_ALLOCATED, "GB", 0, 0},
    {"C17", "PQ4821", CALL_SIGN_SOUND, PATTERN_SHIP, SERIES_ALLOCATED, "BR", 0, 0},
    {"C18", "SVAB22", CALL_SIGN_SOUND, PATTERN_SURVIVAL_CRAFT, SERIES_ALLOCATED, "GR", 0, 0},
    {"C19", "QABC", CALL_SIGN_SOUND, PATTERN_SHIP, SERIES_UNALLOCATED, NULL, 0, 0},
    {"C20", "4NAB", CALL_SIGN_SOUND, PATTERN_SHIP, SERIES_UNALLOCATED, NULL, 0, 0},
    {"C21", "1AAB", CALL_SIGN_SOUND, PATTERN_UNKNOWN, SERIES_IMPOSSIBLE, NULL, 0, 0},
    {"C22", "99AB", CALL_SIGN_SOUND, PATTERN_UNKNOWN, SERIES_IMPOSSIBLE, NULL, 0, 0},
    {"C23", "SV1ABC", CALL_SIGN_SOUND, PATTERN_AMATEUR, SERIES_ALLOCATED, "GR", 0, 0},
    {"C24", "9A2AB", CALL_SIGN_SOUND, PATTERN_AMATEUR, SERIES_ALLOCATED, "HR", 0, 0},
    {"C25", "9A", CALL_SIGN_LENGTH, PATTERN_UNKNOWN, SERIES_UNALLOCATED, NULL, 0, 0},
    {"C27", "SV\xC3\x84" "B", CALL_SIGN_OTHER_LETTER, PATTERN_UNKNOWN, SERIES_UNALLOCATED, NULL,
     3, 0},
    {"C28", "S VAB", CALL_SIGN_SPACE, PATTERN_UNKNOWN, SERIES_UNALLOCATED, NULL, 2, 0},
    {"C29", "\xD0\xA1\xD0\x92\xD0\x90\xD0\x92", CALL_SIGN_OTHER_LETTER, PATTERN_UNKNOWN,
     SERIES_UNALLOCATED, NULL, 1, 'C'},
    {"C30 SS", "SSAB", CALL_SIGN_SOUND, PATTERN_SHIP, SERIES_ALLOCATED, "EG", 0, 0},
    {"C30 SSN", "SSNB", CALL_SIGN_SOUND, PATTERN_SHIP, SERIES_ALLOCATED, "SD", 0, 0},
    {"C30 3DA", "3DAB", CALL_SIGN_SOUND, PATTERN_SHIP, SERIES_ALLOCATED, "SZ", 0, 0},
    {"C30 3DN", "3DNB", CALL_SIGN_SOUND, PATTERN_SHIP, SERIES_ALLOCATED, "FJ", 0, 0},
    {"C32", "3E2345", CALL_SIGN_SOUND, PATTERN_SHIP, SERIES_ALLOCATED, "PA", 0, 0},
    {"C33", "HBAB", CALL_SIGN_SOUND, PATTERN_SHIP, SERIES_ALLOCATED, "CH", 0, 0},
    {"C33 F2", "F2AB2", CALL_SIGN_SOUND, PATTERN_SHIP, SERIES_ALLOCATED, "FR", 0, 0},
    {"C34", "3D2345", CALL_SIGN_SOUND, PATTERN_SHIP, SERIES_HALVED, "SZ", 0, 0},
    {"5E12", "5E12", CALL_SIGN_SOUND, PATTERN_UNKNOWN, SERIES_ALLOCATED, "MA", 0, 0},
    {"too long", "9A234567", CALL_SIGN_LENGTH, PATTERN_UNKNOWN, SERIES_UNALLOCATED, NULL, 0, 0},
    {"small", "9a2345", CALL_SIGN_SMALL_LETTER, PATTERN_UNKNOWN, SERIES_UNALLOCATED, NULL, 2, 0},
    {"hyphen", "SV-AB", CALL_SIGN_SIGN, PATTERN_UNKNOWN, SERIES_UNALLOCATED, NULL, 3, 0},
    {"Greek", "SV\xCE\x91" "B", CALL_SIGN_OTHER_LETTER, PATTERN_UNKNOWN, SERIES_UNALLOCATED, NULL,
     3, 'A'},
    {"wide digit", "9A234\xEF\xBC\x95", CALL_SIGN_OTHER_LETTER, PATTERN_UNKNOWN,
     SERIES_UNALLOCATED, NULL, 6, '5'},
    {"the word", "NONE", CALL_SIGN_NONE, PATTERN_UNKNOWN, SERIES_UNALLOCATED, NULL, 0, 0},
    {"bytes", "SV\xFF" "B", CALL_SIGN_BYTES, PATTERN_UNKNOWN, SERIES_UNALLOCATED, NULL, 3, 0},
};

static void every_vector_is_taken_apart(void **state)
{
    (void)state;
    for (size_t i = 0; i < sizeof vectors / sizeof vectors[0]; i++) {
        const struct vector *vector = &vectors[i];
        struct call_sign found;
        assert_int_equal(call_sign_decode(vector->text, &found),
                         vector->fault == CALL_SIGN_SOUND);
        if (found.fault != vector->fault || found.pattern != vector->pattern ||
            found.series != vector->series || found.at != vector->at ||
            found.looks_like != vector->looks_like)
            fail_msg("%s: fault %d pattern %d series %d at %zu", vector->name, (int)found.fault,
                     (int)found.pattern, (int)found.series, found.at);
        assert_int_equal(found.holder == NULL, vector->iso == NULL);
        if (found.holder != NULL)
            assert_string_equal(found.holder->iso, vector->iso);
    }
}

static void bodies_are_known(void **state)
{
    (void)state;
    static const struct { const char *text; bool body; } texts[] = {
        {"4U2345", true}, {"4YAB", true}, {"C7AB", true}, {"9A2345", false}, {"4X2345", false},
    };
    for (size_t i = 0; i < sizeof texts / sizeof texts[0]; i++) {
        struct call_sign call_sign;
        assert_true(call_sign_decode(texts[i].text, &call_sign));
        assert_int_equal(call_sign.of_a_body, texts[i].body);
    }
}

/* What the eye takes for a Latin letter is named; other letters are not. */
static void lookalikes_are_named(void **state)
{
    (void)state;
    struct arena *arena = arena_new((size_t)1 << 20);
    struct call_sign call_sign;
    assert_false(call_sign_decode("SV\xD0\x92" "B", &call_sign));
    assert_string_equal(call_sign_fault_words(&call_sign, arena),
                        "character 3 (U+0412) is not B, though it looks like it");
    assert_false(call_sign_decode("SV\xD0\x96" "B", &call_sign));
    assert_string_equal(call_sign_fault_words(&call_sign, arena),
                        "character 3 (U+0416) is not one of the letters A to Z");
    arena_free(arena);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(all_holders_are_found),
        cmocka_unit_test(nobody_holds_these),
        cmocka_unit_test(the_gaps_are_the_published_ones),
        cmocka_unit_test(no_series_ends_too_soon),
        cmocka_unit_test(all_of_q_is_unallocated),
        cmocka_unit_test(halved_series_need_a_letter),
        cmocka_unit_test(impossible_beginnings_are_known),
        cmocka_unit_test(patterns_are_told_apart),
        cmocka_unit_test(every_vector_is_taken_apart),
        cmocka_unit_test(bodies_are_known),
        cmocka_unit_test(lookalikes_are_named),
    };
    int failed = cmocka_run_group_tests(tests, NULL, NULL);
    return failed != 0;
}
