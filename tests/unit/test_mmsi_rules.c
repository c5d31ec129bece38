/* test_mmsi_rules.c - what the checks tell of the MMSI of a ship and of her handheld. */
#include "identity_case.h"

/* ---- MMSI ---- */

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
        {"238I23456", "letter I"}, {"23812345\xEF\xBC\x92", "full-width digit in place 9 (U+FF12)"},
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
        struct boat *boat = boat_of("none", damaged[i].mmsi, "HR");
        assert_false(check(boat));
        tells(strstr(damaged[i].words, "digits, not nine") != NULL ? "mmsi_length"
                                                                  : "mmsi_damaged",
              damaged[i].words, 12);
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
        struct boat *boat = boat_of("none", others[i].mmsi, "HR");
        assert_false(check(boat));
        tells("mmsi_form", others[i].words, 12);
    }
}

static void an_unallocated_mid_is_a_deficiency(void **state)
{
    (void)state;
    static const char *const unallocated[] = {"217123457", "260123457", "799123457"};
    for (size_t i = 0; i < 3; i++) {
        struct boat *boat = boat_of("9A2345", unallocated[i], "HR");
        assert_true(check(boat));
        tells("mmsi_mid_unknown", "(ITU table of " RADIO_TABLES_DATED ")", 12);
        assert_non_null(strstr(told_by("mmsi_mid_unknown")->remedy,
                               "`silenced: [{check: mmsi_mid_unknown, reason: , until: }]`"));
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
        struct boat *boat = boat_of("9A2345", stand_ins[i], "HR");
        assert_true(check(boat));
        tells("mmsi_made_up", "for the time being", 12);
    }
}

/* ---- DSC ---- */

static void dsc_needs_a_programmed_mmsi(void **state)
{
    (void)state;
    struct boat *boat = boat_of("9A2345", "238123457", "HR");
    assert_true(dsc_ready(boat));
    boat->radio.mmsi_programmed = (struct answer_value){ANSWER_NO, {.line = 13}};
    assert_false(dsc_ready(boat));
    assert_true(check(boat));
    tells("mmsi_not_programmed", "DSC not available: voice only", 13);
    assert_non_null(strstr(only(SEVERITY_DEFICIENCY)->remedy, "dealer"));
    boat->radio.mmsi_programmed = (struct answer_value){0};
    boat->radio.dsc.place.line = 14;
    assert_false(dsc_ready(boat));
    assert_true(check(boat));
    tells("mmsi_programming_unknown", "DSC not available: voice only", 14);
}

static void dsc_needs_an_mmsi(void **state)
{
    (void)state;
    struct boat *boat = boat_of("9A2345", NULL, "HR");
    boat->radio.dsc.place.line = 14;
    assert_false(dsc_ready(boat));
    assert_true(check(boat));
    tells("mmsi_missing", "DSC not available: voice only", 14);
    assert_non_null(strstr(only(SEVERITY_DEFICIENCY)->remedy, "do not guess"));
    boat->radio.mmsi = text_at("23812345", 12);
    assert_false(dsc_ready(boat));
}

static void a_set_without_dsc_needs_none(void **state)
{
    (void)state;
    struct boat *boat = boat_of("9A2345", NULL, "HR");
    boat->radio.mmsi_programmed = (struct answer_value){0};
    boat->radio.dsc.answer = ANSWER_NO;
    assert_false(dsc_ready(boat));
    assert_true(check(boat));
    is_silent();
    boat->radio.mmsi = text_at("238123457", 12);
    boat->radio.mmsi_programmed.answer = ANSWER_YES;
    boat->radio.dsc.answer = ANSWER_NOT_RECORDED;
    assert_false(dsc_ready(boat));
}

/* ---- handhelds ---- */

/* A boat with a handheld; its MMSI stands in line 20. */
static struct boat *boat_with_handheld(struct equipment *gear, const char *mmsi)
{
    struct boat *boat = boat_of("9A2345", "238123457", "HR");
    *gear = (struct equipment){.kind = item_find("vhf_handheld"), .mmsi = text_at(mmsi, 20)};
    boat->equipment = gear;
    boat->equipment_count = 1;
    return boat;
}

static void a_handheld_has_a_number_of_its_own(void **state)
{
    (void)state;
    static const struct { const char *mmsi, *check, *words; bool sound; } numbers[] = {
        {"823812345", NULL, NULL, true},
        {"238123457", "handheld_mmsi_ships", "the ship's own MMSI 238123457", true},
        {"238 123 457", "handheld_mmsi_ships", "the ship's own MMSI 238123457", true},
        {"238123458", "handheld_mmsi", "`238123458` is a ship's (MID 238)", false},
        {"002320014", "handheld_mmsi", "is a coast station's (MID 232)", false},
        {"972123456", "handheld_mmsi", "is a man-overboard device's", false},
        {"82381234", "handheld_mmsi", "has 8 digits, not nine", false},
        {"8238l2345", "handheld_mmsi", "has the letter l in place 5", false},
        {"820012345", "mmsi_reserved", "MID 200 is no country's", false},
        {"821712345", "mmsi_mid_unknown", "MID 217 is no country's", true},
        {"823712345", "identities_disagree", "of Greece, the ship's of Croatia", true},
    };
    for (size_t i = 0; i < sizeof numbers / sizeof numbers[0]; i++) {
        struct equipment gear;
        struct boat *boat = boat_with_handheld(&gear, numbers[i].mmsi);
        assert_int_equal(check(boat), numbers[i].sound);
        if (numbers[i].check == NULL)
            is_silent();
        else
            tells(numbers[i].check, numbers[i].words, 20);
    }
}

static void a_handheld_needs_no_number(void **state)
{
    (void)state;
    struct equipment gear;
    struct boat *boat = boat_with_handheld(&gear, NULL);
    assert_true(check(boat));
    is_silent();
    boat = boat_with_handheld(&gear, "123");
    gear.kind = item_find("sart");
    assert_true(check(boat));
    is_silent();
}

static void a_specimen_s_handheld_has_a_reserved_number(void **state)
{
    (void)state;
    struct equipment gear;
    struct boat *boat = boat_with_handheld(&gear, "820012345");
    boat->facts.specimen.answer = ANSWER_YES;
    boat->radio.call_sign = text_at("QTAB2", 11);
    boat->radio.mmsi = text_at("200014730", 12);
    assert_true(check(boat));
    is_silent();
    gear.mmsi = text_at("823812345", 20);
    assert_false(check(boat));
    tells("mmsi_of_specimen", "MID 238, Croatia", 20);
}

/* ---- silences ---- */

static void an_unknown_mid_can_be_silenced(void **state)
{
    (void)state;
    struct silence silence = {.check = text_at("mmsi_mid_unknown", 30),
                              .reason = text_at("as on the licence", 30),
                              .until = {.date = {2027, 12, 31}, .text = "2027-12-31",
                                        .given = true}};
    struct boat *boat = boat_of("none", "217123457", NULL);
    boat->silences = &silence;
    boat->silence_count = 1;
    assert_true(check(boat));
    assert_int_equal(told_by("mmsi_mid_unknown")->severity, SEVERITY_SILENCED);
    silence.until.date = (struct date){2026, 11, 19};
    assert_true(check(boat));
    tells("mmsi_mid_unknown", "MID 217", 12);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(damaged_mmsi_are_errors),
        TEST(numbers_of_others_are_named),
        TEST(an_unallocated_mid_is_a_deficiency),
        TEST(stand_ins_are_noted),
        TEST(dsc_needs_a_programmed_mmsi),
        TEST(dsc_needs_an_mmsi),
        TEST(a_set_without_dsc_needs_none),
        TEST(a_handheld_has_a_number_of_its_own),
        TEST(a_handheld_needs_no_number),
        TEST(a_specimen_s_handheld_has_a_reserved_number),
        TEST(an_unknown_mid_can_be_silenced),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
