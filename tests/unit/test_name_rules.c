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
        {"Tamarisk", NULL, NULL}, {"Off", NULL, NULL},
        {"Sea-Me & Co. 2", NULL, "Sea Me and Co. Two"},
        {"\xC3\x96re", "Oere", NULL}, {"\xC3\x96re", "Ore", NULL}, {"O\xCC\x88re", "OERE", NULL},
        {"\xC3\x96re", "Oere", "Orray"}, {"Anna II", NULL, "Anna Two"},
        {"Tamarisk", "TAMARISK", NULL}, {"Sea Me", "SEA-ME", NULL},
        {"\xCE\x91\xCE\x92\xCE\x93", "Alphabeta", NULL},
        {"\xD0\xA2\xD0\xB5\xD1\x81\xD1\x82", "Tyest", NULL},
        {"N\xC2\xBA 1", "No 1", "Number One"},
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

/* ---- names that are heard as something else ---- */

/* `said`: the first that the remedy proposes. */
static const struct doubted { const char *name, *check, *what, *said; } doubted[] = {
    {"40", "name_figures", "how its figures are called out", "YACHT FORTY"},
    {"07", "name_figures", "how its figures are called out", "YACHT ZERO SEVEN"},
    {"40.07", "name_figures", "how its figures are called out", "YACHT FORTY. ZERO SEVEN"},
    {"Dolce Vita 45", "name_figures", "how its figures", "DOLCE VITA FORTY-FIVE"},
    {"Dolce Vita 13", "name_figures", "how its figures", "DOLCE VITA THIRTEEN"},
    {"Dolce Vita 380", "name_figures", "how its figures", "DOLCE VITA THREE EIGHT ZERO"},
    {"Anna 2", "name_figures", "how its figures", "ANNA TWO"},
    {"2 Annas", "name_figures", "how its figures", "TWO ANNAS"},
    {"Anna 2nd", "name_figures", "how its figures", "ANNA TWO ND"},
    {"M2", "name_figures", "how its figures", "M TWO"},
    {"5E12", "name_figures", "how its figures", "FIVE E TWELVE"},
    {"Blue-7", "name_figures", "how its figures", "BLUE-SEVEN"},
    {"No. 1", "name_figures", "how its figures", "NO. ONE"},
    {"Mayday", "name_signal", "MAYDAY is heard as what it says", "YACHT MAYDAY"},
    {"MAYDAY", "name_signal", "MAYDAY is heard", "YACHT MAYDAY"},
    {"May Day", "name_signal", "MAY DAY is heard", "YACHT MAY DAY"},
    {"May-Day II", "name_signal", "MAY DAY is heard", "YACHT MAY-DAY II"},
    {"Lady Mayday", "name_signal", "MAYDAY is heard", "YACHT LADY MAYDAY"},
    {"Mayday 2", "name_signal", "MAYDAY is heard", "YACHT MAYDAY TWO"},
    {"Pan Pan", "name_signal", "PAN PAN is heard", "YACHT PAN PAN"},
    {"Pan-Pan", "name_signal", "PAN PAN is heard", "YACHT PAN-PAN"},
    {"Panpan", "name_signal", "PANPAN is heard", "YACHT PANPAN"},
    {"Securite", "name_signal", "SECURITE is heard", "YACHT SECURITE"},
    {"Seelonce", "name_signal", "SEELONCE is heard", "YACHT SEELONCE"},
    {"Silence", "name_signal", "SILENCE is heard", "YACHT SILENCE"},
    {"Over", "name_signal", "OVER is heard", "YACHT OVER"},
    {"Out", "name_signal", "OUT is heard", "YACHT OUT"},
    {"Over & Out", "name_signal", "OVER AND OUT is heard", "YACHT OVER & OUT"},
    {"Moon Over", "name_signal", "OVER is heard", "YACHT MOON OVER"},
    {"Over the Moon", "name_signal", "OVER is heard", "YACHT OVER THE MOON"},
    {"Relay", "name_signal", "RELAY is heard", "YACHT RELAY"},
    {"Relay Race", "name_signal", "RELAY is heard", "YACHT RELAY RACE"},
    {"Say Again", "name_signal", "SAY AGAIN is heard", "YACHT SAY AGAIN"},
    {"All Stations", "name_signal", "ALL STATIONS is heard", "YACHT ALL STATIONS"},
    {"Roger", "name_signal", "ROGER is heard", "YACHT ROGER"},
    {"Coastguard", "name_signal", "COASTGUARD is heard", "YACHT COASTGUARD"},
    {"Man Overboard", "name_signal", "MAN OVERBOARD is heard", "YACHT MAN OVERBOARD"},
    {"Help", "name_signal", "HELP is heard", "YACHT HELP"},
    {"Oscar", "name_letters", "it is heard as O,", "YACHT OSCAR"},
    {"Mike Two", "name_letters", "it is heard as M2,", "YACHT MIKE TWO"},
    {"Mike 2", "name_letters", "it is heard as M2,", "YACHT MIKE TWO"},
    {"Golf-Sierra", "name_letters", "it is heard as GS,", "YACHT GOLF-SIERRA"},
    {"Alpha", "name_letters", "it is heard as A,", "YACHT ALPHA"},
    {"Juliet", "name_letters", "it is heard as J,", "YACHT JULIET"},
    {"X-Ray", "name_letters", "it is heard as X,", "YACHT X-RAY"},
    {"Whisky Papa", "name_letters", "it is heard as WP,", "YACHT WHISKY PAPA"},
    {"Seven", "name_letters", "it is heard as 7,", "YACHT SEVEN"},
    {"Niner", "name_letters", "it is heard as 9,", "YACHT NINER"},
    {"Four Zero", "name_letters", "it is heard as 40,", "YACHT FOUR ZERO"},
    {"Delta 45", "name_letters", "it is heard as D45,", "YACHT DELTA FORTY-FIVE"},
};

/* Each is an error, and what its remedy proposes is an answer to it. */
static void what_is_heard_as_something_else_asks_how_it_is_said(void **state)
{
    (void)state;
    assert_int_equal(sizeof doubted / sizeof doubted[0], 50);
    for (size_t i = 0; i < sizeof doubted / sizeof doubted[0]; i++) {
        const struct doubted *row = &doubted[i];
        names_run(row->name, NULL, NULL);
        expect_told(row->check, row->what, 3);
        assert_int_equal(told_by(row->check)->severity, SEVERITY_ERROR);
        const char *remedy = text_format(test.arena, "`name_spoken: %s`", row->said);
        if (strstr(told_by(row->check)->remedy, remedy) == NULL)
            fail_msg("%s: %s", row->name, told_by(row->check)->remedy);
        names_run(row->name, NULL, row->said);
        if (told_by(row->check) != NULL)
            fail_msg("%s, said as %s: %s", row->name, row->said, told_by(row->check)->what);
    }
}

static void names_with_such_words_beside_others_are_names(void **state)
{
    (void)state;
    static const struct { const char *name, *spoken; } names[] = {
        {"Peter Pan", NULL}, {"Oscar Wilde", NULL}, {"Romeo & Juliett", NULL},
        {"Mike's Two Boats", NULL}, {"Moonover", NULL}, {"Overture", NULL}, {"Outlaw", NULL},
        {"Fire Opal", NULL}, {"Wait and See", NULL}, {"Maydays", NULL}, {"Forty", NULL},
        {"Sevenoaks", NULL}, {"Golfer", NULL}, {"Wing of Hope", NULL}, {"Never Say Again", NULL},
        {"5E12", "Five Echo One Two"}, {"40", "Four Zero"}, {"Mayday", "Lady May"},
        {"Oscar", "Boat Oscar"},
    };
    for (size_t i = 0; i < sizeof names / sizeof names[0]; i++) {
        names_run(names[i].name, NULL, names[i].spoken);
        if (told_count() != 0)
            problems_show();
        assert_int_equal(told_count(), 0);
    }
}

/* What was written to be said is held to it too, so that a copied name answers nothing. */
static void an_answer_that_says_the_same_is_none(void **state)
{
    (void)state;
    static const struct { const char *name, *latin, *spoken, *check; int line; } rows[] = {
        {"Oscar", NULL, "Oscar", "name_letters", 7},
        {"Mike 2", NULL, "Mike Two", "name_letters", 7},
        {"Anna 2", NULL, "Anna 2", "name_figures", 7}, {"Anna", NULL, "Anna 2", "name_figures", 7},
        {"Mayday", NULL, "MAYDAY", "name_signal", 7}, {"Anna", NULL, "Pan Pan", "name_signal", 7},
        {"Relay Race", NULL, "Relay Race", "name_signal", 7},
        {"Mayday", NULL, "Mayday Yacht", "name_signal", 7},
        {"Lady Mayday", NULL, "May Day Lady", "name_signal", 7},
        {"Anna", "Anna 2", NULL, "name_figures", 6},
        {"S\xC3\xA9" "curit\xC3\xA9", "Securite", NULL, "name_signal", 6},
    };
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
        names_run(rows[i].name, rows[i].latin, rows[i].spoken);
        assert_non_null(told_by(rows[i].check));
        expect_told(rows[i].check, "name `", rows[i].line);
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
    names_run("Twenty Characters XY", NULL, NULL);
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
        TEST(what_is_heard_as_something_else_asks_how_it_is_said),
        TEST(names_with_such_words_beside_others_are_names),
        TEST(an_answer_that_says_the_same_is_none),
        TEST(a_fine_apostrophe_is_noted),
        TEST(ais_shows_twenty_characters),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
