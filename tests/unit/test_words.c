/* test_words.c - reading the words of a language and filling in their blanks. */
#include "record_test.h"

#include "item.h"
#include "words.h"

static const char *const word_keys[] = {
#define WORD_KEY(name, key) key,
    WORD_LIST(WORD_KEY)
#undef WORD_KEY
};

/* A complete file, but for one word, item or zone, and with one word's text given; the
 * language it is of, its rules of plurals and the name of each item where they are not those
 * of English. Line 5 is the first word. */
struct recipe {
    const char *left_out, *key, *text, *extra;
    const char *language, *plurals, *item_name;
};

static void words_write(struct text_builder *out, const struct recipe *recipe)
{
    for (size_t i = 0; i < WORD_COUNT; i++)
        if (!text_equal(word_keys[i], recipe->left_out))
            text_add_format(out, "  \"%s\": \"%s\"\n", word_keys[i],
                            text_equal(word_keys[i], recipe->key) ? recipe->text : "word");
}

static void names_write(struct text_builder *out, const struct recipe *recipe)
{
    text_add(out, "items:\n");
    for (size_t i = 0; i < item_count(); i++)
        if (!text_equal(item_at(i)->key, recipe->left_out))
            text_add_format(out, "  %s: %s\n", item_at(i)->key,
                            recipe->item_name != NULL ? recipe->item_name
                                                      : "{one: One thing, other: many things}");
    text_add(out, "zones:\n");
    for (size_t i = 0; zone_at(i) != NULL; i++)
        if (!text_equal(zone_at(i)->key, recipe->left_out) &&
            text_equal(zone_at(i)->key, zone_at(i)->family))
            text_add_format(out, "  %s: Zone %s\n", zone_at(i)->key, zone_at(i)->key);
}

static const struct words *words_of(const struct recipe *recipe)
{
    struct text_builder out = text_builder_in(test.arena);
    text_add_format(&out, "language: %s\nname: English\nplurals: %s\nwords:\n",
                    recipe->language != NULL ? recipe->language : "en",
                    recipe->plurals != NULL ? recipe->plurals : "{one: {is: 1}}");
    words_write(&out, recipe);
    names_write(&out, recipe);
    if (recipe->extra != NULL)
        text_add(&out, recipe->extra);
    return words_read(file_of("words/en/words.yaml", out.at), "en", test.arena, test.problems);
}

static void a_complete_file_is_read(void **state)
{
    (void)state;
    const struct words *words = words_of(&(struct recipe){.key = "yes", .text = "YES!"});
    expect_errors(0);
    assert_string_equal(words_language(words), "en");
    assert_string_equal(words_get(words, WORD_YES), "YES!");
    assert_string_equal(words_get(words, WORD_VALVE_NONE), "word");
    assert_string_equal(words_language_name(words), "English");
    assert_string_equal(words_item(words, "fire_port"), "One thing");
    assert_string_equal(words_items(words, "blankets", 2), "many things");
    assert_string_equal(words_items(words, "blankets", 1), "One thing");
    assert_string_equal(words_zone(words, "galley"), "Zone galley");
    assert_null(words_item(words, "rocket"));
    assert_null(words_items(words, "rocket", 2));
    assert_null(words_zone(words, "attic"));
}

static void a_row_has_its_familys_name(void **state)
{
    (void)state;
    const struct words *words = words_of(
        &(struct recipe){.extra = "  aft_cabin_port: The port cabin\n"});
    expect_errors(0);
    assert_string_equal(words_zone(words, "aft_cabin_port"), "The port cabin");
    assert_string_equal(words_zone(words, "aft_cabin_starboard"), "Zone aft_cabin");
    assert_string_equal(words_zone(words, "engine_space_port"), "Zone engine_space");
}

static void nothing_may_be_missing(void **state)
{
    (void)state;
    static const char *const keys[] = {"set_no_dsc", "fire_port", "cockpit_locker"};
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
    static const struct { const char *text, *what; } rows[] = {
        {"see {card", "see_card holds a brace that is not part of a {name}"},
        {"see {}", "see_card holds a brace that is not part of a {name}"},
        {"see card}", "see_card holds a brace that is not part of a {name}"},
        {"see {Card}", "see_card holds a brace that is not part of a {name}"},
        {"**see", "see_card holds bold stars that are never closed"},
    };
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
        test.problems = problems_new(test.arena);
        assert_null(words_of(&(struct recipe){.key = "see_card", .text = rows[i].text}));
        expect_errors(1);
        assert_non_null(problem_saying(rows[i].what));
    }
}

static void blanks_are_filled(void **state)
{
    (void)state;
    const struct words *words = words_of(
        &(struct recipe){.key = "after_step", .text = "After {step}: {ask} {step}"});
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
    assert_string_equal(words_item(words, "lifejacket"), "Vest");
    assert_string_equal(words_items(words, "lifejacket", 21), "vest");
    assert_string_equal(words_items(words, "lifejacket", 3), "veste");
    assert_string_equal(words_items(words, "lifejacket", 8), "vests");
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
    assert_string_equal(words_item(words, "torch"), "Thing");
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
        {"{one: {is: 1}, other: {is: 2}}", "a mapping of plurals has no key \"other\""},
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
    assert_non_null(problem_saying("a name of an item needs the key \"other\""));
    test.problems = problems_new(test.arena);
    assert_null(words_of(&(struct recipe){.item_name = "{one: a, few: b, other: c}"}));
    assert_non_null(problem_saying("a name of an item has no key \"few\""));
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
        TEST(blanks_are_filled),
        TEST(a_number_takes_the_form_of_its_language),
        TEST(rules_look_at_numbers_or_their_ends),
        TEST(rules_must_be_understood),
        TEST(an_item_has_each_form_and_no_other),
        TEST(a_file_is_of_the_language_of_its_folder),
    };
    int failed = cmocka_run_group_tests_name("words", tests, NULL, NULL);
    return failed != 0;
}
