/* test_name_rules.c - which names hold a boat back, and what is only told. */
#include "rules_case.h"

/* Lines: name 3, name_latin 6, name_spoken 7. */
static void names_run(const char *name, const char *latin, const char *spoken)
{
    struct boat boat = {.key = "boat"};
    boat.facts.name = text_at(name, 3);
    boat.facts.name_latin = text_at(latin, 6);
    boat.facts.name_spoken = text_at(spoken, 7);
    family_run(name_rules, &boat, NULL);
}

static void sound_names_are_silent(void **state)
{
    (void)state;
    static const struct { const char *name, *latin, *spoken; } names[] = {
        {"Tamarisk", NULL, NULL}, {"Sea-Me & Co. 2", NULL, NULL}, {"Off", NULL, NULL},
        {"\xC3\x96re", "Oere", NULL}, {"\xC3\x96re", "Ore", NULL}, {"O\xCC\x88re", "OERE", NULL},
        {"\xC3\x96re", "Oere", "Orray"}, {"Anna II", NULL, "Anna Two"},
        {"Tamarisk", "TAMARISK", NULL}, {"Sea Me", "SEA-ME", NULL},
        {"\xCE\x91\xCE\x92\xCE\x93", "Alphabeta", NULL},
        {"\xD0\xA2\xD0\xB5\xD1\x81\xD1\x82", "Tyest", NULL},
        {"N\xC2\xBA 1", "No 1", NULL},
    };
    for (size_t i = 0; i < sizeof names / sizeof names[0]; i++) {
        names_run(names[i].name, names[i].latin, names[i].spoken);
        if (told_count() != 0)
            problems_show();
        assert_int_equal(told_count(), 0);
    }
}

/* P01 to P13: in no alphabet is a spelling taken that the base did not write. */
static void other_letters_hold_the_boat_back(void **state)
{
    (void)state;
    static const struct { const char *name, *proposal; } names[] = {
        {"\xC3\x96re", "OERE (or ORE)"}, {"O\xCC\x88re", "OERE (or ORE)"},
        {"\xC4\x8Cist", "CIST"}, {"\xC3\x91u", "NU"}, {"Stra\xC3\x9F" "e", "STRASSE"},
        {"I\xC5\x9F\xC4\xB1k", "ISIK"}, {"\xCE\x91\xCE\x92\xCE\x93", "AVG"},
        {"\xD0\xA2\xD0\xB5\xD1\x81\xD1\x82", "TEST"},
    };
    for (size_t i = 0; i < sizeof names / sizeof names[0]; i++) {
        names_run(names[i].name, NULL, NULL);
        expect_told("name_unspeakable", "cannot be called out", 3);
        assert_int_equal(told_count(), 1);
        assert_int_equal(told_by("name_unspeakable")->severity, SEVERITY_ERROR);
        const char *remedy = told_by("name_unspeakable")->remedy;
        assert_true(text_ends(remedy, names[i].proposal));
        assert_non_null(strstr(remedy, "proposed, to be compared with the licence"));
    }
    names_run("N\xC2\xBA 1", NULL, NULL);
    expect_told("name_unspeakable", "U+00BA has no code word", 3);
    assert_null(strstr(told_by("name_unspeakable")->remedy, "proposed"));
    names_run("-", NULL, NULL);
    expect_told("name_unspeakable", "no letter", 3);
}

static void greek_and_cyrillic_are_told_to_vary(void **state)
{
    (void)state;
    names_run("\xCE\x91\xCE\x92\xCE\x93", NULL, NULL);
    assert_non_null(strstr(told_by("name_unspeakable")->remedy, "may spell it in another way"));
    names_run("T\xD0\xB0m", NULL, NULL);
    assert_non_null(strstr(told_by("name_unspeakable")->remedy, "several alphabets"));
}

static void what_is_written_for_the_radio_must_be_fit_for_it(void **state)
{
    (void)state;
    names_run("Tamarisk", "T\xC3\xA4m", NULL);
    expect_told("name_unspeakable", "U+00C4", 6);
    names_run("Tamarisk", NULL, "T\xC3\xA4m");
    expect_told("name_unspeakable", "U+00C4", 7);
    names_run("Tamarisk", "T\xC3\xA4m", "Tam");
    expect_told("name_unspeakable", "U+00C4", 6);
}

static void how_it_is_said_does_not_tell_how_it_is_spelled(void **state)
{
    (void)state;
    names_run("\xC3\x96re", NULL, "Orray");
    expect_told("name_latin_missing", "the cards spell `Orray`", 3);
    assert_non_null(strstr(told_by("name_latin_missing")->remedy, "name_latin: OERE"));
    assert_int_equal(told_count(), 1);
}

static void another_boat_s_name_is_noted(void **state)
{
    (void)state;
    names_run("\xC3\x96re", "Bora", NULL);
    expect_told("name_latin_differs", "name_latin `Bora` is not how `\xC3\x96re`", 6);
    names_run("Tamarisk", "Tamarix", NULL);
    expect_told("name_latin_differs", "(TAMARISK)", 6);
    assert_int_equal(told_by("name_latin_differs")->severity, SEVERITY_NOTE);
}

static void numerals_ask_how_they_are_said(void **state)
{
    (void)state;
    static const struct {
        const char *name, *latin, *spoken;
        int line;
        const char *proposal;
    } names[] = {
        {"Anna II", NULL, NULL, 3, "ANNA TWO"}, {"Anna iv", NULL, NULL, 3, "ANNA FOUR"},
        {"Anna", "Anna V", NULL, 6, "ANNA FIVE"}, {"Anna", NULL, "Anna III", 7, "ANNA THREE"},
        {"Anna II of Wick", NULL, NULL, 3, "ANNA TWO OF WICK"},
    };
    for (size_t i = 0; i < sizeof names / sizeof names[0]; i++) {
        names_run(names[i].name, names[i].latin, names[i].spoken);
        expect_told("name_roman", "as a number or as letters", names[i].line);
        assert_non_null(strstr(told_by("name_roman")->remedy,
                               text_format(test.arena, "`name_spoken: %s`", names[i].proposal)));
    }
}

/* P09 */
static void a_fine_apostrophe_is_noted(void **state)
{
    (void)state;
    names_run("L\xE2\x80\x99" "Exemple", NULL, NULL);
    expect_told("name_apostrophe", "U+2019, which is neither said nor spelled", 3);
    names_run("L\xE2\x80\x99" "Exemple", "L'EXEMPLE", NULL);
    assert_int_equal(told_count(), 0);
}

static void ais_shows_twenty_characters(void **state)
{
    (void)state;
    names_run("Twenty Characters 20", NULL, NULL);
    assert_int_equal(told_count(), 0);
    names_run("Twenty-One Characters", NULL, NULL);
    expect_told("name_long", "has 21 characters", 3);
    names_run("\xC3\x96re", "Twenty-One Characters", NULL);
    expect_told("name_long", "has 21 characters", 6);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(sound_names_are_silent),
        TEST(other_letters_hold_the_boat_back),
        TEST(greek_and_cyrillic_are_told_to_vary),
        TEST(what_is_written_for_the_radio_must_be_fit_for_it),
        TEST(how_it_is_said_does_not_tell_how_it_is_spelled),
        TEST(another_boat_s_name_is_noted),
        TEST(numerals_ask_how_they_are_said),
        TEST(a_fine_apostrophe_is_noted),
        TEST(ais_shows_twenty_characters),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
