/* test_words.c - reading the words of a language and filling in their blanks. */
#include "record_test.h"

#include "item.h"
#include "procedure.h"

static const char *const word_keys[] = {
#define WORD_KEY(name, key) key,
    WORD_LIST(WORD_KEY)
#undef WORD_KEY
};

/* A complete file, but for one word, item or zone, and with one word's text
 * given. Line 4 is the first word. */
struct recipe {
    const char *left_out, *key, *text, *extra;
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
    for (enum item_key item = ITEM_NONE + 1; item < ITEM_COUNT; item++)
        if (!text_equal(item_word(item), recipe->left_out))
            text_add_format(out, "  %s: {one: One %s, many: Many %s}\n", item_word(item),
                            item_word(item), item_word(item));
    text_add(out, "zones:\n");
    for (size_t i = 0; zone_at(i) != NULL; i++)
        if (!text_equal(zone_at(i)->key, recipe->left_out) &&
            text_equal(zone_at(i)->key, zone_at(i)->family))
            text_add_format(out, "  %s: Zone %s\n", zone_at(i)->key, zone_at(i)->key);
}

static const struct words *words_of(const struct recipe *recipe)
{
    struct text_builder out = text_builder_in(test.arena);
    text_add(&out, "language: en\nname: English\nwords:\n");
    words_write(&out, recipe);
    names_write(&out, recipe);
    if (recipe->extra != NULL)
        text_add(&out, recipe->extra);
    return words_read(file_of("words/en.yaml", out.at), test.arena, test.problems);
}

static void a_complete_file_is_read(void **state)
{
    (void)state;
    const struct words *words = words_of(&(struct recipe){.key = "yes", .text = "YES!"});
    expect_errors(0);
    assert_string_equal(words_language(words), "en");
    assert_string_equal(words_get(words, WORD_YES), "YES!");
    assert_string_equal(words_get(words, WORD_VALVE_NONE), "word");
    assert_string_equal(words_item(words, ITEM_fire_port), "One fire_port");
    assert_string_equal(words_items(words, ITEM_blankets), "Many blankets");
    assert_string_equal(words_zone(words, "galley"), "Zone galley");
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

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(a_complete_file_is_read),
        TEST(a_row_has_its_familys_name),
        TEST(nothing_may_be_missing),
        TEST(nothing_unknown_is_taken),
        TEST(braces_and_stars_are_whole),
        TEST(blanks_are_filled),
    };
    int failed = cmocka_run_group_tests_name("words", tests, NULL, NULL);
    return failed != 0;
}
