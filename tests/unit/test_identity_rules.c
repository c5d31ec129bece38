/* test_identity_rules.c - what the checks tell of call sign and flag, and whether they
 * agree with the MMSI. Vectors A01 to A13. */
#include "identity_case.h"

static void sound_identities_are_silent(void **state)
{
    (void)state;
    /* A01, A03, A04, A06, A08 to A12 and more */
    static const struct { const char *call_sign, *mmsi, *flag; } sound[] = {
        {"9A2345", "238123457", "HR"}, {"9A2345", "238 123 457", "HR"},
        {"9A2345", "238\xC2\xA0" "123\xC2\xA0" "457", "HR"},
        {"ZDAB2", "236123457", "GI"}, {"ZDAB2", "236123457", "GB"}, {"OXAB", "331000002", "GL"},
        {"PJAB", "306123457", "CW"}, {"5BAB2", "209123457", "CY"}, {"E5AB", "518123457", "CK"},
        {"ZJAB2", "378123457", "VG"}, {"BMAB", "416123457", "TW"}, {"2ABC3", "232123457", "IM"},
        {"none", "503123457", "AU"}, {"3E2345", "351123000", "PA"}, {"LXAB", "257123457", "NO"},
    };
    for (size_t i = 0; i < sizeof sound / sizeof sound[0]; i++) {
        struct boat *boat = boat_of(sound[i].call_sign, sound[i].mmsi, sound[i].flag);
        assert_true(check(boat));
        if (strcmp(sound[i].call_sign, "LXAB") == 0)
            tells("identities_disagree", "call sign Luxembourg", 12);
        else
            is_silent();
    }
}

/* ---- call signs ---- */

static void unsound_call_signs_are_errors(void **state)
{
    (void)state;
    static const struct { const char *check, *call_sign, *words; } unsound[] = {
        {"call_sign_length", "9A", "it has 2 characters"},
        {"call_sign_length", "9A234567", "has 8 characters"},
        {"call_sign_length", "238123456", "has 9 characters"},
        {"call_sign_characters", "SV\xC3\x84" "B", "character 3 (U+00C4)"},
        {"call_sign_characters", "S VAB", "character 2 (U+0020) is a space"},
        {"call_sign_characters", "9a2345", "character 2 (U+0061) is a sm"},
        {"call_sign_characters", "\xD0\xA1\xD0\x92\xD0\x90\xD0\x92",
         "character 1 (U+0421) is not C, though"},
        {"call_sign_characters", "SV\xCE\x91" "B", "character 3 (U+0391)"},
        {"call_sign_characters", "SV\xC5\x81" "B", "character 3 (U+0141)"},
        {"call_sign_characters", "SV-AB", "neither a letter nor a digit"},
        {"call_sign_characters", "None", "small letter"},
        {"call_sign_characters", "NONE", "called out as a call sign"},
        {"call_sign_of_a_body", "4U2345", "United Nations"},
        {"call_sign_of_a_body", "C7AB", "Meteorological"},
        {"call_sign_impossible", "1AAB", "none can begin with 1A"},
        {"call_sign_impossible", "99AB", "none can begin with 99"},
    };
    for (size_t i = 0; i < sizeof unsound / sizeof unsound[0]; i++) {
        struct boat *boat = boat_of(unsound[i].call_sign, "238123457", NULL);
        assert_false(check(boat));
        tells(unsound[i].check, unsound[i].words, 11);
    }
}

static void odd_call_signs_are_noted(void **state)
{
    (void)state;
    static const struct { const char *call_sign, *flag, *words; } odd[] = {
        {"9A1234", "HR", "0 or 1 straight after a letter"},
        {"ZM1726", "NZ", "0 or 1 straight after a letter"},
        {"SVAB22", "GR", "liferaft"}, {"SV1ABC", "GR", "amateur"}, {"9A2AB", "HR", "amateur"},
        {"SVABC", "GR", "aircraft"}, {"SVA2", "GR", "land station"},
        {"SVABCD", "GR", "no pattern"}, {"3D2345", "FJ", "Eswatini and Fiji share the series 3D"},
    };
    for (size_t i = 0; i < sizeof odd / sizeof odd[0]; i++) {
        struct boat *boat = boat_of(odd[i].call_sign, NULL, odd[i].flag);
        boat->radio.dsc.answer = ANSWER_NO;
        assert_true(check(boat));
        tells(strstr(odd[i].words, "share") != NULL ? "call_sign_halved" : "call_sign_pattern",
              odd[i].words, 11);
    }
}

static void an_unallocated_series_is_a_deficiency(void **state)
{
    (void)state;
    struct boat *boat = boat_of("4NAB", "238123457", "HR");
    assert_true(check(boat));
    tells("call_sign_series_unknown", "no country holds the series 4N", 11);
    assert_non_null(strstr(only(SEVERITY_DEFICIENCY)->remedy,
                           "`silenced: [{check: call_sign_series_unknown, reason: , until: }]`"));
}

static void a_missing_call_sign_is_a_deficiency(void **state)
{
    (void)state;
    struct boat *boat = boat_of(NULL, "238123457", "HR");
    assert_true(check(boat));
    tells("call_sign_missing", "call sign not recorded", 10);
}

/* ---- agreement ---- */

static void disagreement_is_told_with_all_three(void **state)
{
    (void)state;
    struct boat *boat = boat_of("SVAB", "238123457", "HR");
    assert_true(check(boat));
    tells("identities_disagree", "MMSI Croatia, call sign Greece, flag Croatia", 12);
    boat = boat_of("SVAB", "237123457", "HR");
    assert_true(check(boat));
    tells("identities_disagree", "MMSI Greece, call sign Greece, flag Croatia", 12);
    boat = boat_of("none", "237123457", "HR");
    assert_true(check(boat));
    tells("identities_disagree", "MMSI Greece, call sign not known, flag Croatia", 12);
    boat = boat_of("SVAB", NULL, "HR");
    boat->radio.dsc.answer = ANSWER_NO;
    assert_true(check(boat));
    tells("identities_disagree", "MMSI not known, call sign Greece, flag Croatia", 11);
}

static void a_flag_that_is_no_code_is_noted(void **state)
{
    (void)state;
    struct boat *boat = boat_of("9A2345", "238123457", "Croatia");
    assert_true(check(boat));
    tells("flag_unknown", "flag `Croatia` is not known", 5);
}

/* Half a series is enough to tell that it is of neither country. */
static void a_halved_series_may_still_disagree(void **state)
{
    (void)state;
    struct boat *boat = boat_of("3D2345", "520123457", "FJ");
    assert_true(check(boat));
    assert_null(told_by("identities_disagree"));
    boat = boat_of("3D2345", "238123457", "HR");
    assert_true(check(boat));
    tells("identities_disagree", "call sign Eswatini or Fiji, flag Croatia", 12);
}

/* ---- specimens ---- */

static void specimens_carry_reserved_identities(void **state)
{
    (void)state;
    static const struct { const char *call_sign, *mmsi; } reserved[] = {
        {"QTAB2", "200014730"}, {"QTAB", "217123456"}, {"QT2345", "200000000"},
        {"QTA2345", "799123456"}, {"none", "200014730"},
    };
    for (size_t i = 0; i < sizeof reserved / sizeof reserved[0]; i++) {
        struct boat *boat = specimen_of(reserved[i].call_sign, reserved[i].mmsi);
        assert_true(check(boat));
        is_silent();
    }
}

static void specimens_never_carry_real_ones(void **state)
{
    (void)state;
    static const char *const real[] = {"9A2345", "4NAB", "QTA", "Q1AB2", "QT1ABC"};
    for (size_t i = 0; i < sizeof real / sizeof real[0]; i++) {
        struct boat *boat = specimen_of(real[i], "200014730");
        assert_false(check(boat));
        tells("call_sign_of_specimen", "of a specimen boat could be a real one", 11);
    }
    struct boat *boat = specimen_of("QTAB2", "238123457");
    assert_false(check(boat));
    tells("mmsi_of_specimen", "MID 238, Croatia", 12);
    boat = specimen_of("QTAB2", "002320014");
    assert_false(check(boat));
    tells("mmsi_form", "coast station", 12);
}

static void real_boats_never_carry_reserved_ones(void **state)
{
    (void)state;
    static const enum answer not_specimens[] = {ANSWER_NO, ANSWER_NOT_RECORDED};
    for (size_t i = 0; i < 2; i++) {
        struct boat *boat = boat_of("QTAB2", "238123457", "HR");
        boat->facts.specimen.answer = not_specimens[i];
        assert_false(check(boat));
        tells("call_sign_reserved", "nobody holds the series Q", 11);
        boat = boat_of("9A2345", "200014730", "HR");
        boat->facts.specimen.answer = not_specimens[i];
        assert_false(check(boat));
        tells("mmsi_reserved", "MID 200", 12);
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(sound_identities_are_silent),
        TEST(unsound_call_signs_are_errors),
        TEST(odd_call_signs_are_noted),
        TEST(an_unallocated_series_is_a_deficiency),
        TEST(a_missing_call_sign_is_a_deficiency),
        TEST(disagreement_is_told_with_all_three),
        TEST(a_flag_that_is_no_code_is_noted),
        TEST(a_halved_series_may_still_disagree),
        TEST(specimens_carry_reserved_identities),
        TEST(specimens_never_carry_real_ones),
        TEST(real_boats_never_carry_reserved_ones),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
