/* test_words.c - reading the words of a language and filling in their blanks. */
#include "words_case.h"

static void a_complete_file_is_read(void **state)
{
    (void)state;
    const struct words *words = words_of(&(struct recipe){.given = {{"yes", "YES!"}}});
    expect_errors(0);
    assert_string_equal(words_language(words), "en");
    assert_string_equal(words_get(words, WORD_YES), "YES!");
    assert_string_equal(words_get(words, WORD_VALVE_NONE), "word");
    assert_string_equal(words_language_name(words), "English");
    assert_string_equal(words_item(words, ITEM_fire_port), "One thing");
    assert_string_equal(words_items(words, ITEM_blankets, 2), "many things");
    assert_string_equal(words_items(words, ITEM_blankets, 1), "One thing");
    assert_string_equal(words_zone(words, ZONE_galley), "Zone galley");
    assert_null(words_item(words, ITEM_NONE));
    assert_null(words_items(words, ITEM_NONE, 2));
    assert_null(words_zone(words, ZONE_NONE));
}

static void a_row_has_its_familys_name(void **state)
{
    (void)state;
    const struct words *words = words_of(
        &(struct recipe){.extra = "  aft_cabin_port: The port cabin\n"});
    expect_errors(0);
    assert_string_equal(words_zone(words, ZONE_aft_cabin_port), "The port cabin");
    assert_string_equal(words_zone(words, ZONE_aft_cabin_starboard), "Zone aft_cabin");
    assert_string_equal(words_zone(words, ZONE_engine_space_port), "Zone engine_space");
}

static void nothing_may_be_missing(void **state)
{
    (void)state;
    static const char *const keys[] = {"set_key_dead", "fire_port", "cockpit_locker"};
    for (size_t i = 0; i < sizeof keys / sizeof keys[0]; i++) {
        test.problems = problems_new(test.arena);
        assert_null(words_of(&(struct recipe){.left_out = keys[i]}));
        expect_errors(1);
        const struct problem *problem = problems_sorted(test.problems, &(size_t){0});
        assert_non_null(strstr(problem->what, keys[i]));
    }
}

static void nothing_unknown_is_taken(void **state)
{
    (void)state;
    assert_null(words_of(&(struct recipe){.extra = "  galey: Kitchen\n"}));
    expect_errors(1);
    const struct problem *problem = problems_sorted(test.problems, &(size_t){0});
    assert_non_null(strstr(problem->what, "galey"));
    assert_non_null(strstr(problem->remedy, "galley"));
}

static void braces_and_stars_are_whole(void **state)
{
    (void)state;
    static const struct { const char *yaml, *what; } rows[] = {
        {"'{number} {subject} {card'", "see_card holds a brace that is not part of a {name}"},
        {"'{number} {subject} {}'", "see_card holds a brace that is not part of a {name}"},
        {"'{number} {subject} card}'", "see_card holds a brace that is not part of a {name}"},
        {"'{number} {Subject}'", "see_card holds a brace that is not part of a {name}"},
        {"'**{number} {subject}'", "see_card holds bold stars that are never closed"},
    };
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
        test.problems = problems_new(test.arena);
        assert_null(words_of(&(struct recipe){.given = {{"see_card", rows[i].yaml}}}));
        expect_errors(1);
        assert_non_null(problem_saying(rows[i].what));
    }
}

/* A language that leaves out a tag or a place would leave it out of the cards. */
static void each_text_has_the_names_of_its_word(void **state)
{
    (void)state;
    static const struct { const char *key, *yaml, *what, *remedy; } rows[] = {
        {"radio_at", "'Radio: {place}'", "radio_at does not say {tag}",
         "write {tag} where it belongs"},
        {"radio_at", "'{tag} {place} {plaec}'", "radio_at has no {name} such as {plaec}",
         "names that are filled in here: tag place"},
        {"radio_at", "'{tag} {plac}{place}'", "radio_at has no {name} such as {plac}",
         "names that are filled in here: tag place"},
        {"yes", "'YES {x}'", "yes has no {name} such as {x}",
         "nothing is filled in here: write it without braces"},
        {"join_comma", "{two: '{before} and {next}', many: '{before}, {next}', last: '{next}'}",
         "join_comma does not say {before}", "write {before} where it belongs"},
    };
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
        test.problems = problems_new(test.arena);
        assert_null(words_of(&(struct recipe){.given = {{rows[i].key, rows[i].yaml}}}));
        expect_errors(1);
        assert_string_equal(problem_saying(rows[i].what)->remedy, rows[i].remedy);
    }
    test.problems = problems_new(test.arena);
    words_of(&(struct recipe){.given = {{"radio_at", "'{place} ({tag}), {place}'"}}});
    expect_errors(0);
}

static void a_plain_word_has_one_text(void **state)
{
    (void)state;
    assert_null(words_of(&(struct recipe){.given = {{"yes", "{one: YES, other: YES}"}}}));
    expect_errors(1);
}

/* The joints of two, of many and the last of many; one text is for all of them. */
static void lists_are_joined(void **state)
{
    (void)state;
    const struct words *words = words_of(&(struct recipe){
        .given = {{"join_comma", "{two: '{before} and {next}', many: '{before}, {next}', "
                                 "last: '{before}, and {next}'}"},
                  {"join_dot", "'{before} . {next}'"}}});
    expect_errors(0);
    assert_string_equal(words_joint(words, WORD_JOIN_COMMA, 1, 2), "{before} and {next}");
    assert_string_equal(words_joint(words, WORD_JOIN_COMMA, 1, 3), "{before}, {next}");
    assert_string_equal(words_joint(words, WORD_JOIN_COMMA, 2, 3), "{before}, and {next}");
    assert_string_equal(words_joint(words, WORD_JOIN_DOT, 1, 2), "{before} . {next}");
    assert_string_equal(words_joint(words, WORD_JOIN_DOT, 2, 3), "{before} . {next}");
    assert_null(words_of(&(struct recipe){.given = {{"join_comma", "{two: '{before}{next}'}"}}}));
    expect_errors(2);
    assert_non_null(problem_saying("the joint of a list needs the key \"last\""));
}

static void blanks_are_filled(void **state)
{
    (void)state;
    const struct words *words = words_of(
        &(struct recipe){.given = {{"after_step", "'After {step}: {ask} {step}'"}}});
    expect_errors(0);
    assert_string_equal(words_fill(words, test.arena, WORD_AFTER_STEP, "ask", "{step}?", "step",
                                   "4", NULL), "After 4: {step}? 4");
    assert_string_equal(words_fill(words, test.arena, WORD_AFTER_STEP, "step", "", NULL),
                        "After : {ask} ");
    assert_string_equal(words_fill(words, test.arena, WORD_AFTER_STEP, "ste", "4", "steps", "5",
                                   NULL), "After {step}: {ask} {step}");
    assert_string_equal(words_fill(words, test.arena, WORD_YES, NULL), "word");
}

/* A made-up language: one for 1, 21, 31; few for 2 to 4, 22 to 24; many for the rest. */
#define SLAVIC \
    "{one: {ends: 1, not: 11}, few: {ends: 2-4, not: 12-14}, many: {ends: [0, 5-9, 11-14]}}"

static void a_number_takes_the_form_of_its_language(void **state)
{
    (void)state;
    const struct words *words = words_of(
        &(struct recipe){.plurals = SLAVIC,
                         .item_name = "{name: Vest, one: vest, few: veste, many: vests, "
                                      "other: vesto}"});
    expect_errors(0);
    static const struct { uint64_t count; enum plural form; } rows[] = {
        {0, PLURAL_MANY}, {1, PLURAL_ONE}, {2, PLURAL_FEW}, {4, PLURAL_FEW}, {5, PLURAL_MANY},
        {11, PLURAL_MANY}, {12, PLURAL_MANY}, {14, PLURAL_MANY}, {20, PLURAL_MANY},
        {21, PLURAL_ONE}, {22, PLURAL_FEW}, {101, PLURAL_ONE}, {111, PLURAL_MANY},
        {113, PLURAL_MANY}, {1000003, PLURAL_FEW},
    };
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++)
        assert_int_equal(words_plural(words, rows[i].count), rows[i].form);
    assert_string_equal(words_item(words, ITEM_lifejacket), "Vest");
    assert_string_equal(words_items(words, ITEM_lifejacket, 21), "vest");
    assert_string_equal(words_items(words, ITEM_lifejacket, 3), "veste");
    assert_string_equal(words_items(words, ITEM_lifejacket, 8), "vests");
}

/* All forms that there are; ends of two digits, whole numbers, and a language without any. */
static void rules_look_at_numbers_or_their_ends(void **state)
{
    (void)state;
    const struct words *words = words_of(&(struct recipe){
        .plurals = "{zero: {is: 0}, one: {is: 1}, two: {is: 2}, few: {ends: 03-10}, "
                   "many: {ends: 11-99}}",
        .item_name = "{zero: z, one: o, two: t, few: f, many: m, other: r}"});
    expect_errors(0);
    static const struct { uint64_t count; enum plural form; } rows[] = {
        {0, PLURAL_ZERO}, {1, PLURAL_ONE}, {2, PLURAL_TWO}, {3, PLURAL_FEW}, {10, PLURAL_FEW},
        {11, PLURAL_MANY}, {99, PLURAL_MANY}, {100, PLURAL_OTHER}, {102, PLURAL_OTHER},
        {103, PLURAL_FEW}, {111, PLURAL_MANY},
    };
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++)
        assert_int_equal(words_plural(words, rows[i].count), rows[i].form);
    words = words_of(&(struct recipe){.plurals = "{}", .item_name = "{other: Thing}"});
    expect_errors(0);
    assert_int_equal(words_plural(words, 1), PLURAL_OTHER);
    assert_string_equal(words_item(words, ITEM_torch), "Thing");
    words = words_of(&(struct recipe){.plurals = "{one: {is: [0, 1, 7-12]}}"});
    expect_errors(0);
    assert_int_equal(words_plural(words, 0), PLURAL_ONE);
    assert_int_equal(words_plural(words, 10), PLURAL_ONE);
    assert_int_equal(words_plural(words, 13), PLURAL_OTHER);
}

static void rules_must_be_understood(void **state)
{
    (void)state;
    static const struct { const char *plurals, *what; } rows[] = {
        {"{one: {is: one}}", "\"one\" is no number and no range of numbers"},
        {"{one: {is: 2-}}", "\"2-\" is no number and no range of numbers"},
        {"{one: {is: 4-2}}", "\"4-2\" is no number and no range of numbers"},
        {"{one: {ends: 2-14}}", "\"2-14\" is no number and no range of numbers"},
        {"{one: {ends: 2, not: 1x}}", "\"1x\" is no number and no range of numbers"},
        {"{one: {is: 12345678}}", "\"12345678\" is no number and no range of numbers"},
        {"{one: {not: 11}}", "the rule of a form names no numbers"},
        {"{one: {is: 1}, other: {is: 2}}", "the section plurals has no key \"other\""},
    };
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
        test.problems = problems_new(test.arena);
        assert_null(words_of(&(struct recipe){.plurals = rows[i].plurals}));
        expect_errors(1);
        expect_error(3, rows[i].what, NULL);
    }
}

static void an_item_has_each_form_and_no_other(void **state)
{
    (void)state;
    assert_null(words_of(&(struct recipe){.item_name = "{one: One thing}"}));
    assert_non_null(problem_saying("an entry of items needs the key \"other\""));
    test.problems = problems_new(test.arena);
    assert_null(words_of(&(struct recipe){.item_name = "{one: a, few: b, other: c}"}));
    assert_non_null(problem_saying("an entry of items has no key \"few\""));
}

/* Letters of any alphabet, whatever their case. */
static void sets_hold_words_in_any_case(void **state)
{
    (void)state;
    const struct words *words = words_of(&(struct recipe){
        .sets = NO_READING_ELSE "  units: [öffnen, ανοίγω]\n  numbered: [zu]\n"
                "proof:\n  verbs: [ziehen]\n"});
    expect_errors(0);
    assert_true(words_in_set(words, SET_UNITS, "ÖFFNEN", strlen("ÖFFNEN")));
    assert_true(words_in_set(words, SET_UNITS, "ΑΝΟΊΓΩ", strlen("ΑΝΟΊΓΩ")));
    assert_true(words_in_set(words, SET_VERBS, "Ziehen!", strlen("Ziehen")));
    assert_false(words_in_set(words, SET_UNITS, "öffne", strlen("öffne")));
    assert_false(words_in_set(words, SET_UNITS, "öffnend", strlen("öffnend")));
    assert_false(words_in_set(words, SET_NUMBERED, "öffnen", strlen("öffnen")));
    assert_false(words_in_set(words, SET_NUMBERED, "", 0));
    assert_int_equal(words_set(words, SET_VERBS)->count, 1);
    assert_int_equal(words_set(words, SET_NEGATIVES)->count, 0);
}

/* What the record is read by must be there; what commands are judged by may be left out. */
static void only_sets_of_reading_are_required(void **state)
{
    (void)state;
    assert_null(words_of(&(struct recipe){.sets = "reading: {units: [kg]}\n"}));
    assert_non_null(problem_saying("the section reading needs the key \"numbered\""));
    test.problems = problems_new(test.arena);
    assert_null(words_of(&(struct recipe){.sets = ""}));
    assert_non_null(problem_saying("a file of words needs the key \"reading\""));
    test.problems = problems_new(test.arena);
    assert_null(words_of(&(struct recipe){
        .sets = NO_READING "proof: {verb: [c]}\n"}));
    expect_errors(1);
    assert_non_null(problem_saying("the section proof has no key \"verb\""));
}

static void a_file_is_of_the_language_of_its_folder(void **state)
{
    (void)state;
    assert_null(words_of(&(struct recipe){.language = "de"}));
    expect_errors(1);
    expect_error(1, "language is \"de\", but the file lies in the folder en",
                 "write the code of its folder: en");
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(a_complete_file_is_read),
        TEST(a_row_has_its_familys_name),
        TEST(nothing_may_be_missing),
        TEST(nothing_unknown_is_taken),
        TEST(braces_and_stars_are_whole),
        TEST(each_text_has_the_names_of_its_word),
        TEST(a_plain_word_has_one_text),
        TEST(lists_are_joined),
        TEST(blanks_are_filled),
        TEST(a_number_takes_the_form_of_its_language),
        TEST(rules_look_at_numbers_or_their_ends),
        TEST(rules_must_be_understood),
        TEST(an_item_has_each_form_and_no_other),
        TEST(sets_hold_words_in_any_case),
        TEST(only_sets_of_reading_are_required),
        TEST(a_file_is_of_the_language_of_its_folder),
    };
    int failed = cmocka_run_group_tests_name("words", tests, NULL, NULL);
    return failed != 0;
}
