/* test_call_sign.c - holders of series and patterns of call signs. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "arena.h"
#include "radio.h"
#include "text.h"
#include "../../src/radio/identity.h"

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
    const struct administration *owner;
    for (const char *first = signs; *first != '\0'; first++)
        for (const char *second = signs; *second != '\0'; second++) {
            char key[] = {*first, *second, 'A', 'B', '\0'};
            if (*first != 'Q' && call_sign_series(key, &owner) == SERIES_UNALLOCATED)
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
    const struct administration *owner;
    for (const char *first = signs; *first != '\0'; first++)
        for (const char *second = signs; *second != '\0'; second++) {
            char key[] = {*first, *second, 'A', 'B', '\0'};
            enum series_kind kind = call_sign_series(key, &owner);
            for (; key[2] <= 'Z'; key[2]++)
                assert_int_equal(call_sign_series(key, &owner), kind);
        }
}

static void all_of_q_is_unallocated(void **state)
{
    (void)state;
    static const char signs[] = "ABCDEFGHIJKLMNOPQRSTUVWXYZ23456789";
    const struct administration *owner;
    for (const char *second = signs; *second != '\0'; second++) {
        char key[] = {'Q', *second, 'A', 'B', '\0'};
        assert_int_equal(call_sign_series(key, &owner), SERIES_UNALLOCATED);
        assert_null(owner);
    }
}

static void halved_series_need_a_letter(void **state)
{
    (void)state;
    const struct administration *owner;
    assert_int_equal(call_sign_series("3D2345", &owner), SERIES_HALVED);
    assert_null(call_sign_find("3D2345"));
    assert_int_equal(call_sign_series("SS2345", &owner), SERIES_HALVED);
    assert_int_equal(call_sign_series("SSA2345", &owner), SERIES_ALLOCATED);
    assert_string_equal(owner->iso, "EG");
}

static void impossible_beginnings_are_known(void **state)
{
    (void)state;
    static const char *const impossible[] = {"1AAB", "0AAB", "99AB", "22AB", "S1AB", "A0AB"};
    const struct administration *owner;
    for (size_t i = 0; i < sizeof impossible / sizeof impossible[0]; i++)
        assert_int_equal(call_sign_series(impossible[i], &owner), SERIES_IMPOSSIBLE);
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
        {"99AB", PATTERN_UNKNOWN}, {"1AAB", PATTERN_UNKNOWN}, {"ABCDEF", PATTERN_UNKNOWN},
        {"2345", PATTERN_UNKNOWN}, {"5E12", PATTERN_UNKNOWN},
    };
    for (size_t i = 0; i < sizeof expected / sizeof expected[0]; i++)
        assert_int_equal(call_sign_pattern(expected[i].call_sign), expected[i].pattern);
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
    };
    int failed = cmocka_run_group_tests(tests, NULL, NULL);
    return failed != 0;
}
