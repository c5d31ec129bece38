/* test_base_record.c - reading base.yaml: numbers one can ring, channels one can
 * talk on, rules with a source. */
#include "record_test.h"

#include "boat.h"

static bool sound;

#define CENTRE "rescue_centre: {name: Centre, channel: \"06\"}\n"
#define AREA "cruising_area: {latitude: north, longitude: both, sea_area: A1}\n"
#define REAL "base: {name: Quay, phone_24h: +44 20 7946 0000}\n"

#define INVENTED "base: {name: Quay, specimen: yes, phone_24h: +999 555 0100}\n"

static const struct base_record *base_of(const char *text)
{
    return base_read(file_of("base.yaml", text), test.arena, test.problems, &sound);
}

static void a_whole_base_is_read(void **state)
{
    (void)state;
    const struct base_record *base = base_of(
        "base: {name: Quay, specimen: yes, phone_24h: +999 555 0100}\n"
        "rescue_centre: {name: Centre, call: QUAY RADIO, channel: \"67\", phone: +999 555 0199,"
        " checked_on: 2026-10-01}\n" AREA
        "languages: [en]\n"
        "approvals:\n"
        "  - {card: engine_fire, initials: AB, qualification: surveyor, date: 2026-10,"
        " until: 2027-10}\n"
        "lines:\n"
        "  - {card: flooding, say: Call the harbour too., source: Harbour order 3, does: []}\n");
    expect_errors(0);
    assert_true(sound);
    assert_string_equal(base->name.text, "Quay");
    assert_string_equal(base->centre_name.text, "Centre");
    assert_string_equal(base->centre_channel.text, "67");
    assert_int_equal(base->centre_checked_on.date.day, 1);
    assert_int_equal(base->longitude.value, HEMISPHERE_BOTH);
    assert_int_equal(base->sea_area.value, SEA_AREA_A1);
    assert_false(base_beyond_a1(base));
    assert_int_equal(base->languages.count, 1);
    assert_int_equal(base->approval_count, 1);
    assert_string_equal(base->approvals[0].initials.text, "AB");
    assert_int_equal(base->own_lines.count, 1);
    assert_string_equal(base->own_lines.rows[0].source.text, "Harbour order 3");
}

static void real_numbers_are_international(void **state)
{
    (void)state;
    static const char *const wrong[] = {"020 7946 0000", "+44 20-7946", "+0 123 456 789",
                                        "+44 20", "+1234567890123456", "112"};
    base_of(REAL CENTRE AREA);
    expect_errors(0);
    for (size_t i = 0; i < sizeof wrong / sizeof wrong[0]; i++) {
        test.problems = problems_new(test.arena);
        base_of(text_format(test.arena, "base: {name: Quay, phone_24h: \"%s\"}\n" CENTRE AREA,
                            wrong[i]));
        expect_errors(1);
        expect_error(1, "phone_24h is not an international number", NULL);
        assert_false(sound);
    }
}

/* S13 */
static void a_plus_stands_in_place_of_00(void **state)
{
    (void)state;
    base_of(REAL "rescue_centre: {name: Centre, channel: \"06\", phone: 00385 1 195}\n" AREA);
    expect_errors(1);
    expect_error(2, "phone is not an international number",
                 "write + in place of the 00, which is not dialled everywhere");
}

static void the_centre_s_channel_is_one_that_talks(void **state)
{
    (void)state;
    static const struct { const char *channel, *what; } wrong[] = {
        {"45", "there is no channel \"45\""}, {"00", "there is no channel \"00\""},
        {"29", "there is no channel \"29\""}, {"89", "there is no channel \"89\""},
        {"70", "channel 70 carries data only"}, {"6", "channel \"6\" is not two digits"},
        {"16A", "channel \"16A\" is not two digits"},
        {"\xEF\xBC\x96", "channel \"\xEF\xBC\x96\" is not two digits"},
    };
    for (size_t i = 0; i < sizeof wrong / sizeof *wrong; i++) {
        test.problems = problems_new(test.arena);
        base_of(text_format(test.arena, REAL "rescue_centre: {name: Centre, channel: \"%s\"}\n"
                            AREA, wrong[i].channel));
        expect_error_with(2, wrong[i].what, "");
        expect_errors(1);
    }
    test.problems = problems_new(test.arena);
    base_of(REAL "rescue_centre: {name: Centre, channel: 08}\n" AREA);
    expect_errors(0);
}

/* S14 */
static void own_lines_send_nobody_to_channel_70(void **state)
{
    (void)state;
    base_of(REAL CENTRE AREA "lines:\n"
            "  - {card: flooding, say: Call them on channel 70., source: Order 3, does: []}\n");
    expect_errors(1);
    expect_error(5, "channel 70 carries data only: nobody can be heard there", NULL);
}

static void a_real_base_has_no_reserved_number(void **state)
{
    (void)state;
    base_of("base: {name: Quay, phone_24h: +999 555 0100}\n" CENTRE AREA);
    expect_errors(1);
    expect_error(1, "phone_24h begins with +999, which is no country's",
                 "write the real number, or base: specimen: yes for an invented base");
}

static void a_specimen_has_only_reserved_numbers(void **state)
{
    (void)state;
    base_of("base: {name: Quay, specimen: yes, phone_24h: +44 20 7946 0000}\n"
            "rescue_centre: {name: Centre, channel: \"06\", phone: \"112\"}\n" AREA);
    expect_errors(2);
    expect_error(1, "phone_24h of a specimen must begin with +999, which is no country's",
                 "write a number that nobody can have, such as +999 000 0000");
    expect_error(2, "phone of a specimen must begin with +999, which is no country's", NULL);
}

static void a_centre_may_have_a_short_number(void **state)
{
    (void)state;
    base_of(REAL "rescue_centre: {name: Centre, channel: \"06\", phone: \"112\"}\n" AREA);
    expect_errors(0);
}

static void channels_have_two_digits(void **state)
{
    (void)state;
    static const char *const wrong[] = {"6", "067", "six", "6A"};
    for (size_t i = 0; i < sizeof wrong / sizeof wrong[0]; i++) {
        test.problems = problems_new(test.arena);
        base_of(text_format(test.arena, REAL "rescue_centre: {name: C, channel: %s}\n" AREA,
                            wrong[i]));
        expect_errors(1);
        expect_error(2, text_format(test.arena, "channel \"%s\" is not two digits", wrong[i]),
                     "write two digits: 06, 67");
    }
}

#define ASHORE(number) "ashore: {fire_phone: \"" number "\"}\n"

/* What brings the fire brigade is short in many lands; of a specimen it is short and nobody's. */
static void the_fire_brigade_may_have_a_short_number(void **state)
{
    (void)state;
    base_of(REAL CENTRE AREA ASHORE("112"));
    expect_errors(0);
    assert_string_equal(base_of(REAL CENTRE AREA ASHORE("+44 20 7946 0001"))->fire_phone.text,
                        "+44 20 7946 0001");
    expect_errors(0);
    base_of(REAL CENTRE AREA ASHORE("the porter"));
    expect_errors(1);
    expect_error(4, "fire_phone is not an international number", NULL);
    test.problems = problems_new(test.arena);
    base_of(REAL CENTRE AREA ASHORE("+999 02"));
    expect_errors(1);
    expect_error(4, "fire_phone begins with +999, which is no country's", NULL);
    test.problems = problems_new(test.arena);
    base_of(INVENTED CENTRE AREA ASHORE("+999 02"));
    expect_errors(0);
    base_of(INVENTED CENTRE AREA ASHORE("112"));
    expect_errors(1);
    expect_error(4, "fire_phone of a specimen must begin with +999, which is no country's", NULL);
    test.problems = problems_new(test.arena);
    base_of(REAL CENTRE AREA "ashore: {marina: Quay}\n");
    expect_errors(1);
    expect_error_with(4, "fire_phone", "ashore");
}

static void nobody_talks_on_70(void **state)
{
    (void)state;
    base_of(REAL "rescue_centre: {name: C, channel: 70}\n" AREA);
    expect_errors(1);
    expect_error(2, "channel 70 carries data only: nobody can be heard there",
                 "name the channel on which the centre talks");
}

static void what_is_required_is_asked_for(void **state)
{
    (void)state;
    base_of("base: {specimen: no}\nrescue_centre: {call: QUAY}\n"
            "cruising_area: {latitude: nrth}\n");
    expect_errors(6);
    expect_error_with(1, "phone_24h", "base");
    expect_error_with(2, "channel", "rescue centre");
    expect_error_with(3, "longitude", "cruising area");
    expect_error_with(3, "nrth", "north");
    test.problems = problems_new(test.arena);
    base_of("languages: [en]\n");
    expect_errors(3);
}

static void a_card_has_two_own_lines_at_most(void **state)
{
    (void)state;
    base_of(REAL CENTRE AREA
            "lines:\n"
            "  - {card: flooding, say: One., source: A, does: []}\n"
            "  - {card: flooding, say: Two., source: A, does: []}\n"
            "  - {card: gas_leak, say: One., source: A, does: []}\n"
            "  - {card: flooding, say: Three., source: A, does: []}\n"
            "  - {card: engine_fire, say: No source., does: []}\n");
    expect_errors(2);
    expect_error(8, "card flooding has more than 2 lines of the base",
                 "keep the two that matter most");
    expect_error_with(9, "source", "a line");
}

static void approvals_end_after_they_begin(void **state)
{
    (void)state;
    base_of(REAL CENTRE AREA
            "approvals: [{card: a, initials: B, qualification: c, date: 2026-10, "
            "until: 2026-09-30}]\n");
    expect_errors(1);
    expect_error(4, "the approval ends 2026-09-30, before it begins 2026-10",
                 "correct one of the two dates");
}

static void languages_are_codes(void **state)
{
    (void)state;
    base_of(REAL CENTRE AREA "languages: [en, English, E1]\n");
    expect_errors(2);
    expect_error(4, "languages: \"English\" is not a language code", NULL);
}

static void a_file_that_is_no_mapping_gives_nothing(void **state)
{
    (void)state;
    assert_null(base_of("- base\n"));
    assert_false(sound);
    assert_true(problems_count(test.problems, SEVERITY_ERROR) == 1);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(a_whole_base_is_read),
        TEST(real_numbers_are_international),
        TEST(a_plus_stands_in_place_of_00),
        TEST(the_centre_s_channel_is_one_that_talks),
        TEST(own_lines_send_nobody_to_channel_70),
        TEST(a_real_base_has_no_reserved_number),
        TEST(a_specimen_has_only_reserved_numbers),
        TEST(a_centre_may_have_a_short_number),
        TEST(channels_have_two_digits),
        TEST(the_fire_brigade_may_have_a_short_number),
        TEST(nobody_talks_on_70),
        TEST(what_is_required_is_asked_for),
        TEST(a_card_has_two_own_lines_at_most),
        TEST(approvals_end_after_they_begin),
        TEST(languages_are_codes),
        TEST(a_file_that_is_no_mapping_gives_nothing),
    };
    int failed = cmocka_run_group_tests_name("base_record", tests, NULL, NULL);
    return failed != 0;
}
