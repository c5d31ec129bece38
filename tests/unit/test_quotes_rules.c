/* test_quotes_rules.c - values that other readers of YAML take for something else, and
 * the numbers of the base. Vectors P15, S12, S14. */
#include "rules_case.h"

#include "boat.h"

static bool sound;

#define BOAT \
    "boat: {name: %s, flag: %s, hull: monohull, rig: sail, loa_m: 12, beam_m: 4, " \
    "persons_max: 8}\n"
#define RADIO "radio: {tag: E1, call_sign: %s, mmsi: %s}\n"

static void boat_run(const char *name, const char *flag, const char *call_sign,
                     const char *mmsi)
{
    const struct source *source = file_of("b.yaml", text_format(test.arena, BOAT RADIO, name,
                                                                flag, call_sign, mmsi));
    const struct boat *boat = boat_read(source, "b", test.arena, test.problems, &sound);
    assert_non_null(boat);
    family_run(quotes_rules, boat, NULL);
}

static void each_trap_is_noted(void **state)
{
    (void)state;
    static const struct {
        const char *name, *flag, *call_sign, *mmsi, *words;
        int line;
    } traps[] = {
        {"Off", "HR", "9A2345", "\"238123457\"", "name `Off` is read here", 1},
        {"On", "HR", "9A2345", "\"238123457\"", "take it for yes or no", 1},
        {"1984", "HR", "9A2345", "\"238123457\"", "take it for a number", 1},
        {"12:30", "HR", "9A2345", "\"238123457\"", "take it for a number", 1},
        {"2024-05-01", "HR", "9A2345", "\"238123457\"", "take it for a date", 1},
        {"Ana", "NO", "9A2345", "\"238123457\"", "flag `NO` is read here", 1},
        {"Ana", "HR", "5E12", "\"238123457\"", "call_sign `5E12` is read here", 2},
        {"Ana", "HR", "3E2345", "\"238123457\"", "call_sign `3E2345` is read here", 2},
        {"Ana", "HR", "9A2345", "238123457", "mmsi `238123457` is read here", 2},
        {"Ana", "HR", "9A2345", "002320014", "mmsi `002320014` is read here", 2},
        {"Ana", "HR", "9A2345", "023208591", "mmsi `023208591` is read here", 2},
        {"Ana", "HR", "9A2345", "232_001_234", "mmsi `232_001_234` is read here", 2},
        {"Ana", "HR", "9A2345", "232001234.0", "mmsi `232001234.0` is read here", 2},
        {"Ana", "HR", "9A2345", "2.38E+08", "mmsi `2.38E+08` is read here", 2},
    };
    for (size_t i = 0; i < sizeof traps / sizeof traps[0]; i++) {
        boat_run(traps[i].name, traps[i].flag, traps[i].call_sign, traps[i].mmsi);
        expect_told("without_quotes", traps[i].words, traps[i].line);
        assert_int_equal(told_count(), 1);
        assert_non_null(strstr(told_by("without_quotes")->remedy, "write it in quotes: "));
    }
}

static void quotes_and_plain_words_are_silent(void **state)
{
    (void)state;
    static const struct { const char *name, *flag, *call_sign, *mmsi; } plain[] = {
        {"\"Off\"", "\"NO\"", "\"5E12\"", "\"238123457\""},
        {"'Off'", "'NO'", "'3E2345'", "'238123457'"},
        {"Nora", "HR", "9A2345", "238 123 457"}, {"Offshore", "GB", "E5AB", "23812345O"},
        {"5 Oclock", "GR", "none", "238-123-456"}, {"1-2-3", "QZ", "SVAB", "2.3.8"},
    };
    for (size_t i = 0; i < sizeof plain / sizeof plain[0]; i++) {
        boat_run(plain[i].name, plain[i].flag, plain[i].call_sign, plain[i].mmsi);
        if (told_count() != 0)
            problems_show();
        assert_int_equal(told_count(), 0);
    }
}

static void gear_is_looked_at_too(void **state)
{
    (void)state;
    const struct source *source = file_of("b.yaml", text_format(test.arena, BOAT
        "equipment:\n"
        "  - {item: epirb, tag: E2, zone: cockpit, side: port, hex_id: 2024E7252400000}\n"
        "  - {item: vhf_handheld, tag: E3, zone: saloon, spot: rack, mmsi: \"823812345\"}\n",
        "Ana", "HR"));
    const struct boat *boat = boat_read(source, "b", test.arena, test.problems, &sound);
    family_run(quotes_rules, boat, NULL);
    expect_told("without_quotes", "hex_id `2024E7252400000`", 3);
    assert_int_equal(told_count(), 1);
}

/* A text that stands in no file has nothing round it. */
static void a_text_from_nowhere_is_silent(void **state)
{
    (void)state;
    struct boat boat = {.key = "boat"};
    boat.radio.call_sign = text_at("5E12", 2);
    family_run(quotes_rules, &boat, NULL);
    assert_int_equal(told_count(), 0);
}

/* ---- the base ---- */

static void base_run(const char *phone, const char *channel)
{
    const struct source *source = file_of("base.yaml", text_format(test.arena,
        "base: {name: Quay, phone_24h: +44 20 7946 0000}\n"
        "rescue_centre: {name: Centre, phone: %s, channel: %s}\n"
        "cruising_area: {latitude: north, longitude: both}\n", phone, channel));
    const struct base_record *base = base_read(source, test.arena, test.problems, &sound);
    assert_non_null(base);
    test.problems = problems_new(test.arena);
    const struct date today = {2026, 11, 20};
    struct rules_input input = {.base = base, .today = today, .from = today, .to = today};
    (void)rules_check_base(&input, test.arena, test.problems);
}

/* S12 */
static void a_short_code_alone_is_a_deficiency(void **state)
{
    (void)state;
    static const char *const codes[] = {"\"112\"", "\"195\"", "\"1 1 2\""};
    for (size_t i = 0; i < sizeof codes / sizeof codes[0]; i++) {
        base_run(codes[i], "\"67\"");
        expect_told("centre_phone_short", "is a short code", 2);
        assert_non_null(strstr(told_by("centre_phone_short")->remedy, "country code"));
        assert_null(told_by("without_quotes"));
    }
    base_run("+385 1 195", "\"67\"");
    assert_null(told_by("centre_phone_short"));
}

/* S14: 08 is printed as it stands. */
static void a_channel_without_quotes_is_noted(void **state)
{
    (void)state;
    base_run("+385 1 195", "08");
    expect_told("without_quotes", "channel `08`", 2);
    assert_null(told_by("centre_phone_short"));
    base_run("+385 1 195", "\"06\"");
    assert_null(told_by("without_quotes"));
    base_run("+385912345678", "\"06\"");
    expect_told("without_quotes", "phone `+385912345678`", 2);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(each_trap_is_noted),
        TEST(quotes_and_plain_words_are_silent),
        TEST(gear_is_looked_at_too),
        TEST(a_text_from_nowhere_is_silent),
        TEST(a_short_code_alone_is_a_deficiency),
        TEST(a_channel_without_quotes_is_noted),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
