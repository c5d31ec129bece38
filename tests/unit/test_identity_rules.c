/* test_identity_rules.c - what the checks tell of MMSI, call sign and flag. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "arena.h"
#include "problem.h"
#include "radio.h"
#include "rules/rules_room.h"

static struct arena *arena;
static struct problems *problems;

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

static struct text_value text_at(const char *text, int line)
{
    return (struct text_value){.text = text, .place = {.line = line, .column = 12}};
}

/* A real boat whose set has its MMSI. Lines: call sign 11, MMSI 12, flag 5, name 3. */
static struct boat boat_of(const char *call_sign, const char *mmsi, const char *flag)
{
    struct boat boat = {.key = "boat"};
    boat.facts.name = text_at("Tamarisk", 3);
    boat.facts.flag = text_at(flag, 5);
    boat.radio_place.line = 10;
    boat.radio.call_sign = text_at(call_sign, 11);
    boat.radio.mmsi = text_at(mmsi, 12);
    boat.radio.dsc.answer = ANSWER_YES;
    boat.radio.mmsi_programmed.answer = ANSWER_YES;
    return boat;
}

static bool check(const struct boat *boat)
{
    struct rules_input input = {.boat = boat, .today = {2026, 11, 20}};
    bool used[4] = {false};
    problems = problems_new(arena);
    struct rule_run run = {.in = &input, .arena = arena, .problems = problems, .used = used};
    identity_rules(&run);
    return problems_count(problems, SEVERITY_ERROR) == 0;
}

/* The one problem of this severity; NULL if there is none. Fails on two. */
static const struct problem *only(enum severity severity)
{
    size_t count = 0;
    const struct problem *all = problems_sorted(problems, &count), *found = NULL;
    for (size_t i = 0; i < count; i++) {
        assert_non_null(all[i].remedy);
        if (all[i].severity != severity)
            continue;
        assert_null(found);
        found = &all[i];
    }
    return found;
}

static void tells(enum severity severity, const char *words, int line)
{
    const struct problem *problem = only(severity);
    assert_non_null(problem);
    if (strstr(problem->what, words) == NULL)
        fail_msg("`%s` does not say `%s`", problem->what, words);
    assert_int_equal(problem->place.line, line);
}

static void is_silent(void)
{
    size_t count = 0;
    const struct problem *all = problems_sorted(problems, &count);
    if (count != 0)
        fail_msg("not silent: %s", all[0].what);
}

/* ---- MMSI ---- */

static void sound_identities_are_silent(void **state)
{
    (void)state;
    static const struct { const char *call_sign, *mmsi, *flag; } sound[] = {
        {"9A2345", "238123457", "HR"}, {"9A2345", "238 123 457", "HR"},
        {"9A2345", "238\xC2\xA0" "123\xC2\xA0" "457", "HR"},
        {"ZDAB2", "236123457", "GI"}, {"ZDAB2", "236123457", "GB"}, {"OXAB", "331000002", "GL"},
        {"PJAB", "306123457", "CW"}, {"5BAB2", "209123457", "CY"}, {"E5AB", "518123457", "CK"},
        {"ZJAB2", "378123457", "VG"}, {"BMAB", "416123457", "TW"}, {"2ABC3", "232123457", "IM"},
        {"none", "503123457", "AU"}, {"3E2345", "351123000", "PA"}, {"LXAB", "257123457", "NO"},
    };
    for (size_t i = 0; i < sizeof sound / sizeof sound[0]; i++) {
        struct boat boat = boat_of(sound[i].call_sign, sound[i].mmsi, sound[i].flag);
        assert_true(check(&boat));
        if (strcmp(sound[i].call_sign, "LXAB") == 0)
            tells(SEVERITY_DEFICIENCY, "call sign Luxembourg", 12);
        else
            is_silent();
    }
}

static void damaged_mmsi_are_errors(void **state)
{
    (void)state;
    static const struct { const char *mmsi, *words; } damaged[] = {
        {"238,123,456", "commas, full stops"}, {"238.123.456", "commas, full stops"},
        {"238_123_456", "underscores"}, {"'238123456", "apostrophe in front"},
        {"23812345", "8 digits, not nine: were zeros in front lost"},
        {"2320014", "7 digits, not nine: were zeros in front lost"},
        {"2381234567", "10 digits, not nine"}, {"238123456238123456", "18 digits, not nine"},
        {"23812345O", "letter O"}, {"2381234o6", "letter o"}, {"l23812345", "letter l"},
        {"238I23456", "letter l"}, {"23812345\xEF\xBC\x92", "full-width digit in place 9 (U+FF12)"},
        {"2.38123E+08", "exponent"}, {"2.38E+08", "exponent"}, {"238E6", "exponent"},
        {"238123456.0", "decimal number"}, {"238123456,0", "decimal number"},
        {"23812345x", "no digit in place 9 (U+0078)"},
        {"+238123456", "no digit in place 1 (U+002B)"},
        {"238-123-456", "no digit in place 4 (U+002D)"},
        {"\xD9\xA2" "38123456", "no digit in place 1 (U+0662)"},
        {"238  123456", "spaces where none belong"}, {" 238123456", "spaces where none belong"},
        {"238123456 ", "spaces where none belong"},
    };
    for (size_t i = 0; i < sizeof damaged / sizeof damaged[0]; i++) {
        struct boat boat = boat_of("none", damaged[i].mmsi, "HR");
        assert_false(check(&boat));
        tells(SEVERITY_ERROR, damaged[i].words, 12);
    }
}

static void numbers_of_others_are_named(void **state)
{
    (void)state;
    static const struct { const char *mmsi, *words; } others[] = {
        {"002320014", "coast station's (MID 232)"},
        {"023208591", "a group of ships' (MID 232)"}, {"982381234", "tender's"},
        {"992380001", "an aid to navigation's (MID 238)"}, {"970123456", "AIS-SART"},
        {"972123456", "man-overboard"}, {"974123456", "EPIRB-AIS"},
        {"979123456", "autonomous"}, {"111232001", "a rescue aircraft's (MID 232)"},
        {"823800001", "a handheld radio's (MID 238)"}, {"123456789", "not assigned"},
        {"975123456", "not assigned"}, {"901234567", "not assigned"},
    };
    for (size_t i = 0; i < sizeof others / sizeof others[0]; i++) {
        struct boat boat = boat_of("none", others[i].mmsi, "HR");
        assert_false(check(&boat));
        tells(SEVERITY_ERROR, others[i].words, 12);
    }
}

static void an_unallocated_mid_is_a_deficiency(void **state)
{
    (void)state;
    static const char *const unallocated[] = {"217123457", "260123457", "799123457"};
    for (size_t i = 0; i < 3; i++) {
        struct boat boat = boat_of("9A2345", unallocated[i], "HR");
        assert_true(check(&boat));
        tells(SEVERITY_DEFICIENCY, "(ITU table of " RADIO_TABLES_DATED ")", 12);
        assert_non_null(strstr(only(SEVERITY_DEFICIENCY)->what,
                               (char[]){unallocated[i][0], unallocated[i][1],
                                        unallocated[i][2], '\0'}));
    }
}

static void stand_ins_are_noted(void **state)
{
    (void)state;
    static const char *const stand_ins[] = {"238000000", "238123456", "238999999"};
    for (size_t i = 0; i < 3; i++) {
        struct boat boat = boat_of("9A2345", stand_ins[i], "HR");
        assert_true(check(&boat));
        tells(SEVERITY_NOTE, "for the time being", 12);
    }
}

/* ---- DSC ---- */

static void dsc_needs_a_programmed_mmsi(void **state)
{
    (void)state;
    struct boat boat = boat_of("9A2345", "238123457", "HR");
    assert_true(dsc_ready(&boat));
    boat.radio.mmsi_programmed = (struct answer_value){ANSWER_NO, {.line = 13}};
    assert_false(dsc_ready(&boat));
    assert_true(check(&boat));
    tells(SEVERITY_DEFICIENCY, "DSC not available: voice only", 13);
    assert_non_null(strstr(only(SEVERITY_DEFICIENCY)->remedy, "dealer"));
    boat.radio.mmsi_programmed.answer = ANSWER_NOT_RECORDED;
    boat.radio.dsc.place.line = 14;
    assert_false(dsc_ready(&boat));
    assert_true(check(&boat));
    tells(SEVERITY_DEFICIENCY, "DSC not available: voice only", 14);
}

static void dsc_needs_an_mmsi(void **state)
{
    (void)state;
    struct boat boat = boat_of("9A2345", NULL, "HR");
    boat.radio.dsc.place.line = 14;
    assert_false(dsc_ready(&boat));
    assert_true(check(&boat));
    tells(SEVERITY_DEFICIENCY, "DSC not available: voice only", 14);
    assert_non_null(strstr(only(SEVERITY_DEFICIENCY)->remedy, "do not guess"));
    boat.radio.mmsi = text_at("23812345", 12);
    assert_false(dsc_ready(&boat));
}

static void a_set_without_dsc_needs_none(void **state)
{
    (void)state;
    struct boat boat = boat_of("9A2345", NULL, "HR");
    boat.radio.mmsi_programmed.answer = ANSWER_NOT_RECORDED;
    boat.radio.dsc.answer = ANSWER_NO;
    assert_false(dsc_ready(&boat));
    assert_true(check(&boat));
    is_silent();
    boat.radio.mmsi = text_at("238123457", 12);
    boat.radio.mmsi_programmed.answer = ANSWER_YES;
    boat.radio.dsc.answer = ANSWER_NOT_RECORDED;
    assert_false(dsc_ready(&boat));
}

/* ---- call signs ---- */

static void unsound_call_signs_are_errors(void **state)
{
    (void)state;
    static const struct { const char *call_sign, *words; } unsound[] = {
        {"9A", "it has 2 characters"}, {"9A234567", "has 8 characters"},
        {"238123456", "has 9 characters"}, {"SV\xC3\x84" "B", "character 3 (U+00C4)"},
        {"S VAB", "character 2 (U+0020) is a space"}, {"9a2345", "character 2 (U+0061) is a sm"},
        {"\xD0\xA1\xD0\x92\xD0\x90\xD0\x92", "character 1 (U+0421) is not C, though"},
        {"SV\xCE\x91" "B", "character 3 (U+0391)"},
        {"SV\xC5\x81" "B", "character 3 (U+0141)"}, {"SV-AB", "neither a letter nor a digit"},
        {"None", "small letter"}, {"4U2345", "United Nations"}, {"C7AB", "Meteorological"},
        {"1AAB", "none can begin with 1A"}, {"99AB", "none can begin with 99"},
    };
    for (size_t i = 0; i < sizeof unsound / sizeof unsound[0]; i++) {
        struct boat boat = boat_of(unsound[i].call_sign, "238123457", NULL);
        assert_false(check(&boat));
        tells(SEVERITY_ERROR, unsound[i].words, 11);
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
        struct boat boat = boat_of(odd[i].call_sign, NULL, odd[i].flag);
        boat.radio.dsc.answer = ANSWER_NO;
        assert_true(check(&boat));
        tells(SEVERITY_NOTE, odd[i].words, 11);
    }
}

static void an_unallocated_series_is_a_deficiency(void **state)
{
    (void)state;
    struct boat boat = boat_of("4NAB", "238123457", "HR");
    assert_true(check(&boat));
    tells(SEVERITY_DEFICIENCY, "no country holds the series 4N", 11);
}

static void a_missing_call_sign_is_a_deficiency(void **state)
{
    (void)state;
    struct boat boat = boat_of(NULL, "238123457", "HR");
    assert_true(check(&boat));
    tells(SEVERITY_DEFICIENCY, "call sign not recorded", 10);
}

/* ---- agreement ---- */

static void disagreement_is_told_with_all_three(void **state)
{
    (void)state;
    struct boat boat = boat_of("SVAB", "238123457", "HR");
    assert_true(check(&boat));
    tells(SEVERITY_DEFICIENCY, "MMSI Croatia, call sign Greece, flag Croatia", 12);
    boat = boat_of("SVAB", "237123457", "HR");
    assert_true(check(&boat));
    tells(SEVERITY_DEFICIENCY, "MMSI Greece, call sign Greece, flag Croatia", 12);
    boat = boat_of("none", "237123457", "HR");
    assert_true(check(&boat));
    tells(SEVERITY_DEFICIENCY, "MMSI Greece, call sign not known, flag Croatia", 12);
    boat = boat_of("SVAB", NULL, "HR");
    boat.radio.dsc.answer = ANSWER_NO;
    assert_true(check(&boat));
    tells(SEVERITY_DEFICIENCY, "MMSI not known, call sign Greece, flag Croatia", 11);
}

static void a_flag_that_is_no_code_is_noted(void **state)
{
    (void)state;
    struct boat boat = boat_of("9A2345", "238123457", "Croatia");
    assert_true(check(&boat));
    tells(SEVERITY_NOTE, "flag `Croatia` is not known", 5);
}

/* ---- specimens ---- */

static struct boat specimen_of(const char *call_sign, const char *mmsi)
{
    struct boat boat = boat_of(call_sign, mmsi, "QZ");
    boat.facts.specimen.answer = ANSWER_YES;
    return boat;
}

static void specimens_carry_reserved_identities(void **state)
{
    (void)state;
    static const struct { const char *call_sign, *mmsi; } reserved[] = {
        {"QTAB2", "200014730"}, {"QTAB", "217123456"}, {"QT2345", "200000000"},
        {"QTA2345", "799123456"}, {"none", "200014730"},
    };
    for (size_t i = 0; i < sizeof reserved / sizeof reserved[0]; i++) {
        struct boat boat = specimen_of(reserved[i].call_sign, reserved[i].mmsi);
        assert_true(check(&boat));
        is_silent();
    }
}

static void specimens_never_carry_real_ones(void **state)
{
    (void)state;
    static const char *const real[] = {"9A2345", "4NAB", "QTA", "Q1AB2", "QT1ABC"};
    for (size_t i = 0; i < sizeof real / sizeof real[0]; i++) {
        struct boat boat = specimen_of(real[i], "200014730");
        assert_false(check(&boat));
        tells(SEVERITY_ERROR, "of a specimen boat could be a real one", 11);
    }
    struct boat boat = specimen_of("QTAB2", "238123457");
    assert_false(check(&boat));
    tells(SEVERITY_ERROR, "MID 238, Croatia", 12);
    boat = specimen_of("QTAB2", "002320014");
    assert_false(check(&boat));
    tells(SEVERITY_ERROR, "coast station", 12);
}

static void real_boats_never_carry_reserved_ones(void **state)
{
    (void)state;
    static const enum answer not_specimens[] = {ANSWER_NO, ANSWER_NOT_RECORDED};
    for (size_t i = 0; i < 2; i++) {
        struct boat boat = boat_of("QTAB2", "238123457", "HR");
        boat.facts.specimen.answer = not_specimens[i];
        assert_false(check(&boat));
        tells(SEVERITY_ERROR, "nobody holds the series Q", 11);
        boat = boat_of("9A2345", "200014730", "HR");
        boat.facts.specimen.answer = not_specimens[i];
        assert_false(check(&boat));
        tells(SEVERITY_ERROR, "MID 200", 12);
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(sound_identities_are_silent),
        cmocka_unit_test(damaged_mmsi_are_errors),
        cmocka_unit_test(numbers_of_others_are_named),
        cmocka_unit_test(an_unallocated_mid_is_a_deficiency),
        cmocka_unit_test(stand_ins_are_noted),
        cmocka_unit_test(dsc_needs_a_programmed_mmsi),
        cmocka_unit_test(dsc_needs_an_mmsi),
        cmocka_unit_test(a_set_without_dsc_needs_none),
        cmocka_unit_test(unsound_call_signs_are_errors),
        cmocka_unit_test(odd_call_signs_are_noted),
        cmocka_unit_test(an_unallocated_series_is_a_deficiency),
        cmocka_unit_test(a_missing_call_sign_is_a_deficiency),
        cmocka_unit_test(disagreement_is_told_with_all_three),
        cmocka_unit_test(a_flag_that_is_no_code_is_noted),
        cmocka_unit_test(specimens_carry_reserved_identities),
        cmocka_unit_test(specimens_never_carry_real_ones),
        cmocka_unit_test(real_boats_never_carry_reserved_ones),
    };
    int failed = cmocka_run_group_tests(tests, set_up, tear_down);
    return failed != 0;
}
