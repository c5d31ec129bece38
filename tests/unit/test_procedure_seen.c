/* test_procedure_seen.c - what a guest sees first, by which the index of cards names a card: how
 * many entries, how long, in which group, and none for two cards. */
#include "procedure_case.h"

#define WITH(keys) STEPS CAUTIONS "seen_as: " keys "\n"
#define SEEN(entries) ALL_TEXTS "seen: [" entries "]\n"

/* In line 7 of the logic and of the texts. */
static void each_card_is_seen_as_something(void **state)
{
    (void)state;
    taken(WITH("smell"), SEEN("Smell gas, Hiss"));
    refused(WITH("noise"), SEEN("Bang"),
            FAULT(7, "\"seen_as\" cannot be \"noise\"", NULL));
    refused(STEPS CAUTIONS "optional: yes\ncore: yes\nseen_as: fire\n", SEEN("Bang"),
            FAULT(7, "core and optional: a card of the core set is on every boat",
                  "take one of the two out"));
}

/* The fixture adds it where a test says nothing of the index. */
static void a_card_without_is_told(void **state)
{
    const char *const texts[] = {TEXTS_HEAD ALL_TEXTS "seen: [Bang]\n", NULL};
    (void)state;
    test.problems = problems_new(test.arena);
    assert_null(procedure_in(LOGIC_HEAD STEPS CAUTIONS "# \nseen_as:\n", texts));
    expect_errors(1);
    test.problems = problems_new(test.arena);
    const char *const bare[] = {TEXTS_HEAD ALL_TEXTS "# \nseen:\n", NULL};
    assert_null(procedure_in(LOGIC_HEAD WITH("fire"), bare));
    expect_errors(1);
}

static void entries_are_few_and_short(void **state)
{
    (void)state;
    taken(WITH("fire"), SEEN("One, Two, Three"));
    refused(WITH("fire"), SEEN("One, Two, Three, Four"),
            FAULT(7, "seen: 4 entries", "write one to three entries: what most guests would say "
                  "first"));
    refused(WITH("fire"), SEEN(""), FAULT(7, "seen: 0 entries", NULL));
    taken(WITH("fire"), SEEN("Battery hisses or smokes"));
    refused(WITH("fire"), SEEN("Hisses, Batteries hissing or smoke"),
            FAULT(7, "seen: \"Batteries hissing or smoke\" is 26 letters in 4 words", NULL));
}

static void entries_are_judged_by_letters_and_words(void **state)
{
    (void)state;
    refused(WITH("fire"), SEEN("A bang and then smoke"),
            FAULT(7, "seen: \"A bang and then smoke\" is 21 letters in 5 words",
                  "say it in 4 words and 24 letters at most: it is read in fright"));
    refused(WITH("fire"), SEEN("Accumulator compartment on"),
            FAULT(7, "seen: \"Accumulator compartment on\" is 26 letters in 3 words", NULL));
    taken(WITH("fire"), SEEN("Überschwemmung überall ü"));
}

/* Other languages are longer than the first. */
static void other_languages_have_half_as_much_more(void **state)
{
    static const char *const others[] = {"Eins zwei drei vier fünf sechs", "Eins zwei drei vier "
                                         "fünf sechs sieben",
                                         "Buchstabenreichesunterseegeschwader"};
    (void)state;
    for (size_t i = 0; i < 3; i++) {
        const char *const texts[] = {
            TEXTS_HEAD SEEN("Bang"),
            text_format(test.arena, TEXTS_HEAD ALL_TEXTS "seen: [%s]\n", others[i]), NULL};
        test.problems = problems_new(test.arena);
        assert_int_equal(procedure_in(LOGIC_HEAD WITH("fire"), texts) != NULL, i != 1);
        expect_errors(i == 1 ? 1 : 0);
    }
}

static void a_plan_is_seen_by_nobody_first(void **state)
{
    (void)state;
    refused("kind: safety_plan\nseen_as: fire\n", "",
            FAULT(6, "seen_as: a sheet of the kind safety_plan is seen by nobody first",
                  "take it out: the index of cards does not lead to such a sheet"));
}

/* ---- two cards ---- */

static const struct procedure *card_named(const char *key, int number, const char *more,
                                          const char *entries)
{
    const char *const texts[] = {
        text_format(test.arena, "procedure: %s\ntitle: T\nsubject: S\nsigns: [Smoke]\n" ALL_TEXTS
                    "seen: [%s]\n", key, entries), NULL};
    return procedure_in(text_format(test.arena, "procedure: %s\nnumber: %d\nsymbol: flame\n"
                                    "stripe: fire\n%s" WITH("fire"), key, number, more), texts);
}

static void two_cards_expect(const struct procedure *one, const struct procedure *other,
                             const char *what)
{
    const struct procedure *both[] = {one, other};
    const struct procedure_set set = {both, 2};
    assert_non_null(one);
    assert_non_null(other);
    assert_int_equal(procedure_set_check(&set, test.arena, test.problems), what == NULL);
    expect_errors(what == NULL ? 0 : 1);
    if (what != NULL)
        expect_error(7, what, "say what tells the two apart: one entry leads to one card, once");
    test.problems = problems_new(test.arena);
}

static void an_entry_leads_to_one_card(void **state)
{
    (void)state;
    test.problems = problems_new(test.arena);
    two_cards_expect(card_named("one", 10, "", "Bang, Hiss"), card_named("two", 11, "", "Smoke"),
                     NULL);
    two_cards_expect(card_named("one", 10, "", "Bang, Hiss"),
                     card_named("two", 11, "", "Smoke, hISS"),
                     "seen: \"hISS\" leads to the card one already");
    two_cards_expect(card_named("one", 10, "", "Bang"), card_named("two", 11, "", "Hiss, HISS"),
                     "seen: \"HISS\" leads to the card two already");
    two_cards_expect(card_named("one", 10, "", "Bang"),
                     card_named("two", 10, "form_of: one\nform_letter: T\n", "Bang"), NULL);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(each_card_is_seen_as_something),
        TEST(a_card_without_is_told),
        TEST(entries_are_few_and_short),
        TEST(entries_are_judged_by_letters_and_words),
        TEST(other_languages_have_half_as_much_more),
        TEST(a_plan_is_seen_by_nobody_first),
        TEST(an_entry_leads_to_one_card),
    };
    return cmocka_run_group_tests_name("procedure seen", tests, NULL, NULL) != 0;
}
