/* test_mmsi.c - nine digits taken apart. Vectors M01 to M30. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "arena.h"
#include "radio.h"

static struct arena *arena;

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

/* What each text is when a ship's, a coast station's or a handheld's is wanted. */
static const struct vector {
    const char *name, *text;
    enum mmsi_form wanted;
    enum mmsi_fault fault;
    enum mmsi_form form;        /* where there are nine digits */
    const char *mid, *iso;      /* iso NULL: nobody's */
    size_t at;                  /* the character at fault */
} vectors[] = {
    {"M01", "238123456", MMSI_SHIP, MMSI_SOUND, MMSI_SHIP, "238", "HR", 0},
    {"M02", "238 123 456", MMSI_SHIP, MMSI_SOUND, MMSI_SHIP, "238", "HR", 0},
    {"M02 no-break", "238\xC2\xA0" "123\xC2\xA0" "456", MMSI_SHIP, MMSI_SOUND, MMSI_SHIP, "238",
     "HR", 0},
    {"M03", "238,123,456", MMSI_SHIP, MMSI_SEPARATED, MMSI_UNASSIGNED, "", NULL, 4},
    {"M04", "238.123.456", MMSI_SHIP, MMSI_SEPARATED, MMSI_UNASSIGNED, "", NULL, 4},
    {"M05", "23812345", MMSI_SHIP, MMSI_LENGTH, MMSI_UNASSIGNED, "", NULL, 0},
    {"M06", "2381234567", MMSI_SHIP, MMSI_LENGTH, MMSI_UNASSIGNED, "", NULL, 0},
    {"M07", "23812345O", MMSI_SHIP, MMSI_LETTER_O, MMSI_UNASSIGNED, "", NULL, 9},
    {"M08", "238\xEF\xBC\x92" "12345", MMSI_SHIP, MMSI_WIDE_DIGIT, MMSI_UNASSIGNED, "", NULL, 4},
    {"M09", "217123456", MMSI_SHIP, MMSI_SOUND, MMSI_SHIP, "217", NULL, 0},
    {"M10", "260123456", MMSI_SHIP, MMSI_SOUND, MMSI_SHIP, "260", NULL, 0},
    {"M11", "002320014", MMSI_SHIP, MMSI_OTHER_FORM, MMSI_COAST, "232", "GB", 0},
    {"M12", "002320014", MMSI_COAST, MMSI_SOUND, MMSI_COAST, "232", "GB", 0},
    {"M13", "2320014", MMSI_COAST, MMSI_LENGTH, MMSI_UNASSIGNED, "", NULL, 0},
    {"M14", "023208591", MMSI_SHIP, MMSI_OTHER_FORM, MMSI_GROUP, "232", "GB", 0},
    {"M15", "982381234", MMSI_SHIP, MMSI_OTHER_FORM, MMSI_TENDER, "238", "HR", 0},
    {"M16", "992380001", MMSI_SHIP, MMSI_OTHER_FORM, MMSI_AID, "238", "HR", 0},
    {"M17", "970123456", MMSI_SHIP, MMSI_OTHER_FORM, MMSI_AIS_SART, "", NULL, 0},
    {"M18", "972123456", MMSI_SHIP, MMSI_OTHER_FORM, MMSI_MAN_OVERBOARD, "", NULL, 0},
    {"M19", "974123456", MMSI_SHIP, MMSI_OTHER_FORM, MMSI_EPIRB_AIS, "", NULL, 0},
    {"M20", "111232001", MMSI_SHIP, MMSI_OTHER_FORM, MMSI_AIRCRAFT, "232", "GB", 0},
    {"M21", "823800001", MMSI_SHIP, MMSI_OTHER_FORM, MMSI_HANDHELD, "238", "HR", 0},
    {"M22", "823800001", MMSI_HANDHELD, MMSI_SOUND, MMSI_HANDHELD, "238", "HR", 0},
    {"M23", "123456789", MMSI_SHIP, MMSI_OTHER_FORM, MMSI_UNASSIGNED, "", NULL, 0},
    {"M24", "975123456", MMSI_SHIP, MMSI_OTHER_FORM, MMSI_UNASSIGNED, "", NULL, 0},
    {"M25", "238000000", MMSI_SHIP, MMSI_SOUND, MMSI_SHIP, "238", "HR", 0},
    {"M26", "306123456", MMSI_SHIP, MMSI_SOUND, MMSI_SHIP, "306", "BQ+CW+SX", 0},
    {"M27", "331000001", MMSI_SHIP, MMSI_SOUND, MMSI_SHIP, "331", "GL", 0},
    {"M28", "2.38123E+08", MMSI_SHIP, MMSI_EXPONENT, MMSI_UNASSIGNED, "", NULL, 0},
    {"979", "979123456", MMSI_SHIP, MMSI_OTHER_FORM, MMSI_AUTONOMOUS, "", NULL, 0},
    {"90", "901234567", MMSI_SHIP, MMSI_OTHER_FORM, MMSI_UNASSIGNED, "", NULL, 0},
    {"96", "961234567", MMSI_SHIP, MMSI_OTHER_FORM, MMSI_UNASSIGNED, "", NULL, 0},
    {"971", "971123456", MMSI_SHIP, MMSI_OTHER_FORM, MMSI_UNASSIGNED, "", NULL, 0},
    {"ship's in a handheld", "238123457", MMSI_HANDHELD, MMSI_OTHER_FORM, MMSI_SHIP, "238", "HR",
     0},
    {"small exponent", "2.38e+08", MMSI_SHIP, MMSI_EXPONENT, MMSI_UNASSIGNED, "", NULL, 0},
    {"comma exponent", "2,38E+08", MMSI_SHIP, MMSI_EXPONENT, MMSI_UNASSIGNED, "", NULL, 0},
    {"decimal", "238123456.0", MMSI_SHIP, MMSI_DECIMAL, MMSI_UNASSIGNED, "", NULL, 0},
    {"decimal comma", "238123456,00", MMSI_SHIP, MMSI_DECIMAL, MMSI_UNASSIGNED, "", NULL, 0},
    {"apostrophe", "'238123456", MMSI_SHIP, MMSI_APOSTROPHE, MMSI_UNASSIGNED, "", NULL, 0},
    {"thousands", "238'123'456", MMSI_SHIP, MMSI_SEPARATED, MMSI_UNASSIGNED, "", NULL, 4},
    {"word", "none", MMSI_SHIP, MMSI_WORDS, MMSI_UNASSIGNED, "", NULL, 0},
    {"words", "not_programmed", MMSI_SHIP, MMSI_WORDS, MMSI_UNASSIGNED, "", NULL, 0},
    {"underscore", "238_123_456", MMSI_SHIP, MMSI_UNDERSCORE, MMSI_UNASSIGNED, "", NULL, 4},
    {"letter l", "238l23456", MMSI_SHIP, MMSI_LETTER_L, MMSI_UNASSIGNED, "", NULL, 4},
    {"letter I", "238I23456", MMSI_SHIP, MMSI_LETTER_L, MMSI_UNASSIGNED, "", NULL, 4},
    {"letter o", "2381234o6", MMSI_SHIP, MMSI_LETTER_O, MMSI_UNASSIGNED, "", NULL, 8},
    {"letter x", "23812345x", MMSI_SHIP, MMSI_NO_DIGIT, MMSI_UNASSIGNED, "", NULL, 9},
    {"hyphens", "238-123-456", MMSI_SHIP, MMSI_NO_DIGIT, MMSI_UNASSIGNED, "", NULL, 4},
    {"Arabic digit", "\xD9\xA2" "38123456", MMSI_SHIP, MMSI_NO_DIGIT, MMSI_UNASSIGNED, "", NULL,
     1},
    {"broken bytes", "2381\xFF" "23456", MMSI_SHIP, MMSI_NO_DIGIT, MMSI_UNASSIGNED, "", NULL, 5},
    {"two cells", "238123456238123457", MMSI_SHIP, MMSI_LENGTH, MMSI_UNASSIGNED, "", NULL, 0},
    {"two spaces", "238  123456", MMSI_SHIP, MMSI_SPACES, MMSI_UNASSIGNED, "", NULL, 5},
    {"space in front", " 238123456", MMSI_SHIP, MMSI_SPACES, MMSI_UNASSIGNED, "", NULL, 1},
    {"space behind", "238123456 ", MMSI_SHIP, MMSI_SPACES, MMSI_UNASSIGNED, "", NULL, 10},
    {"nothing", "", MMSI_SHIP, MMSI_LENGTH, MMSI_UNASSIGNED, "", NULL, 0},
};

static void is_as_told(const struct vector *vector, const struct mmsi *mmsi)
{
    if (mmsi->fault != vector->fault || mmsi->form != vector->form || mmsi->at != vector->at ||
        strcmp(mmsi->mid, vector->mid) != 0)
        fail_msg("%s: fault %d form %d at %zu mid %s", vector->name, (int)mmsi->fault,
                 (int)mmsi->form, mmsi->at, mmsi->mid);
    if (vector->iso == NULL) {
        assert_null(mmsi->administration);
        return;
    }
    assert_non_null(mmsi->administration);
    assert_string_equal(mmsi->administration->iso, vector->iso);
}

static void every_vector_is_taken_apart(void **state)
{
    (void)state;
    for (size_t i = 0; i < sizeof vectors / sizeof vectors[0]; i++) {
        const struct vector *vector = &vectors[i];
        struct mmsi mmsi;
        bool wanted = mmsi_decode_as(vector->text, vector->wanted, &mmsi);
        assert_int_equal(wanted, vector->fault == MMSI_SOUND);
        is_as_told(vector, &mmsi);
        assert_int_equal(mmsi_fault_words(&mmsi, arena) == NULL, wanted);
    }
}

/* Without a wanted form any nine digits are sound, and nothing else is. */
static void a_form_is_no_fault_by_itself(void **state)
{
    (void)state;
    for (size_t i = 0; i < sizeof vectors / sizeof vectors[0]; i++) {
        struct mmsi mmsi;
        bool nine = vectors[i].fault == MMSI_SOUND || vectors[i].fault == MMSI_OTHER_FORM;
        assert_int_equal(mmsi_decode(vectors[i].text, &mmsi), nine);
        assert_int_equal(mmsi.digits[0] != '\0', nine);
        assert_int_equal(mmsi.form, vectors[i].form);
    }
}

static void spaces_go_and_digits_stay(void **state)
{
    (void)state;
    struct mmsi mmsi;
    assert_true(mmsi_decode("238 123 456", &mmsi));
    assert_string_equal(mmsi.digits, "238123456");
    assert_false(mmsi_decode("2320014", &mmsi));
    assert_int_equal(mmsi.digit_count, 7);
    assert_non_null(strstr(mmsi_fault_words(&mmsi, arena), "were zeros in front lost"));
    assert_false(mmsi_decode("238123456238123457", &mmsi));
    assert_int_equal(mmsi.digit_count, 18);
    assert_null(strstr(mmsi_fault_words(&mmsi, arena), "zeros"));
}

static void code_points_are_kept(void **state)
{
    (void)state;
    struct mmsi mmsi;
    assert_false(mmsi_decode("238\xEF\xBC\x92" "12345", &mmsi));
    assert_int_equal(mmsi.code_point, 0xFF12);
    assert_false(mmsi_decode("23812345O", &mmsi));
    assert_int_equal(mmsi.code_point, 'O');
}

/* Three zeros at the end were given to ships with satellite terminals. */
static void stand_ins_look_so(void **state)
{
    (void)state;
    static const struct { const char *text; bool made_up; } texts[] = {
        {"238000000", true}, {"238123456", true}, {"238999999", true}, {"238111111", true},
        {"238123000", false}, {"238123457", false}, {"238100000", false}, {"23800000", false},
    };
    for (size_t i = 0; i < sizeof texts / sizeof texts[0]; i++) {
        struct mmsi mmsi;
        mmsi_decode(texts[i].text, &mmsi);
        assert_int_equal(mmsi_looks_made_up(&mmsi), texts[i].made_up);
    }
}

static void every_form_has_words(void **state)
{
    (void)state;
    for (enum mmsi_form form = MMSI_SHIP; form <= MMSI_UNASSIGNED; form++)
        assert_non_null(strstr(mmsi_form_words(form), "s"));
    assert_string_equal(mmsi_form_words(MMSI_COAST), "a coast station's");
}

/* M29 and M30. */
static void it_is_spoken_digit_by_digit(void **state)
{
    (void)state;
    uint32_t bad = 0;
    assert_string_equal(spell(arena, mmsi_in_threes(arena, "238123456"), &bad),
                        "TWO THREE EIGHT / ONE TWO THREE / FOUR FIVE SIX");
    assert_string_equal(spell_itu_figures(arena, "238123456"),
                        "BISSOTWO TERRATHREE OKTOEIGHT UNAONE BISSOTWO TERRATHREE KARTEFOUR "
                        "PANTAFIVE SOXISIX");
    assert_string_equal(spell_itu_figures(arena, "70 9"), "SETTESEVEN NADAZERO NOVENINE");
    assert_string_equal(spell_itu_figures(arena, ""), "");
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(every_vector_is_taken_apart),
        cmocka_unit_test(a_form_is_no_fault_by_itself),
        cmocka_unit_test(spaces_go_and_digits_stay),
        cmocka_unit_test(code_points_are_kept),
        cmocka_unit_test(stand_ins_look_so),
        cmocka_unit_test(every_form_has_words),
        cmocka_unit_test(it_is_spoken_digit_by_digit),
    };
    int failed = cmocka_run_group_tests(tests, set_up, tear_down);
    return failed != 0;
}
