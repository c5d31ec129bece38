/* test_yaml_wording.c - texts that people may give in several languages. */
#include "record_test.h"

#include "reading.h"

struct wording_record {
    struct text_value spot;
    struct list_value steps;
};

static const struct field wording_fields[] = {
    ROW(struct wording_record, spot, FIELD_WORDING, .about = "where exactly"),
    ROW(struct wording_record, steps, FIELD_WORDINGS, .about = "one after another"),
};
static const struct field_table wording_table = TABLE("gear", wording_fields);

static struct wording_record record_of(const char *yaml)
{
    struct wording_record record = {.steps.given = false};
    test.problems = problems_new(test.arena);
    const struct yaml_node *node =
        yaml_tree_read(file_of("boat.yaml", yaml), test.arena, test.problems);
    if (node != NULL)
        plain_section_read(node, &wording_table, &record, test.arena, test.problems);
    return record;
}

static void one_text_is_for_all_languages(void **state)
{
    (void)state;
    struct wording_record record = record_of("spot: over the table\nsteps: [Menu, Call]\n");
    expect_errors(0);
    assert_string_equal(record.spot.text, "over the table");
    assert_null(record.spot.languages);
    assert_int_equal(record.spot.place.column, 7);
    assert_int_equal(record.steps.count, 2);
    assert_string_equal(text_for(&record.spot, "de"), "over the table");
    record = record_of("spot:\n");
    assert_null(record.spot.text);
    assert_null(text_for(&record.spot, "de"));
}

static void each_language_has_its_text(void **state)
{
    (void)state;
    struct wording_record record = record_of(
        "spot:\n  de: über dem Tisch\n  en: over the table\n  pt-BR: na mesa\n"
        "steps: [{en: Menu, de: Menü}, Call]\n");
    expect_errors(0);
    assert_string_equal(record.spot.text, "über dem Tisch");
    assert_int_equal(record.spot.place.line, 2);
    assert_int_equal(record.spot.languages[1].place.line, 3);
    assert_null(record.spot.languages[3].text);
    assert_string_equal(text_for(&record.spot, "en"), "over the table");
    assert_string_equal(text_for(&record.spot, "pt-BR"), "na mesa");
    assert_string_equal(text_for(&record.spot, "hr"), "über dem Tisch");
    assert_int_equal(record.steps.count, 2);
    assert_string_equal(text_for(&record.steps.items[0], "de"), "Menü");
    assert_null(record.steps.items[1].languages);
}

static void what_is_no_text_is_told(void **state)
{
    (void)state;
    static const struct { const char *yaml, *what; } rows[] = {
        {"spot: [over, under]", "\"spot\" must be a text, not a list"},
        {"spot: {under the sink: x}", "\"under the sink\" is no code of a language"},
        {"spot: {EN: x}", "\"EN\" is no code of a language"},
        {"spot: {e: x}", "\"e\" is no code of a language"},
        {"spot: {engl: x}", "\"engl\" is no code of a language"},
        {"spot: {en-: x}", "\"en-\" is no code of a language"},
        {"spot: {en-longerthan8: x}", "\"en-longerthan8\" is no code of a language"},
        {"spot: {}", "\"spot\" must be a text, not an empty mapping"},
        {"spot: {en: [a]}", "\"spot\" in en must be a text, not a list"},
        {"spot:\n  en:\n  de: x", "\"spot\" in en must be a text, not empty"},
        {"spot: {en: ~}", "\"spot\" in en is \"~\", which would be read as a text"},
        {"steps: {en: a}", "\"steps\" must be a list, not a mapping"},
        {"steps: a", "\"steps\" must be a list, not the text \"a\""},
        {"steps: [{en: a, de: b}, a]", "\"a\" stands twice in \"steps\""},
        {"steps: [[a]]", "an entry of \"steps\" must be a text, not a list"},
        {"steps: [\"\"]", "an entry of \"steps\" is empty"},
    };
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
        struct wording_record record = record_of(rows[i].yaml);
        assert_null(record.spot.text);
        expect_errors(1);
        assert_non_null(problem_saying(rows[i].what));
    }
}

static void a_language_stands_once(void **state)
{
    (void)state;
    record_of("spot: {en: a, en: b}\n");
    expect_errors(1);
    expect_error_with(1, "the key \"en\" stands here a second time", "keep only one");
}

/* What is refused in one text is refused in each language, at its own place. */
static void each_language_is_checked(void **state)
{
    (void)state;
    static const struct { const char *text, *what; } rows[] = {
        {"two  spaces", "spot holds two spaces in a row"},
        {"\"**bold**\"", "spot holds ** or a brace"},
        {"\"{tag}\"", "spot holds ** or a brace"},
        {"tbd", "spot is \"tbd\", which stands where a fact is yet to be recorded"},
    };
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
        record_of(text_format(test.arena, "spot:\n  en: sound\n  de: %s\n", rows[i].text));
        expect_errors(1);
        expect_error(3, rows[i].what, NULL);
    }
    assert_null(record_of("spot: {en: sound, de: tbd}\n").spot.text);
    assert_int_equal(record_of("steps: [{en: a, de: tbd}, b]\n").steps.count, 1);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(one_text_is_for_all_languages),
        TEST(each_language_has_its_text),
        TEST(what_is_no_text_is_told),
        TEST(a_language_stands_once),
        TEST(each_language_is_checked),
    };
    return cmocka_run_group_tests_name("yaml_wording", tests, NULL, NULL);
}
