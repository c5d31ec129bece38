/* test_phrase.c - making, comparing and walking phrases. */
#include "record_test.h"

#include "phrase.h"

static const struct phrase *place_of(const char *spot)
{
    return phrase_joined(test.arena, WORD_JOIN_COMMA,
                         phrase_zone(test.arena, zone_find("galley")),
                         phrase_word(test.arena, WORD_SIDE_PORT, NULL),
                         phrase_verbatim(test.arena, spot));
}

static void what_is_not_there_says_nothing(void **state)
{
    (void)state;
    const struct text_value none = {.text = NULL};
    assert_null(phrase_text(test.arena, NULL));
    assert_null(phrase_text(test.arena, &none));
    assert_null(phrase_verbatim(test.arena, NULL));
    assert_null(phrase_zone(test.arena, NULL));
    assert_null(phrase_upper(test.arena, NULL));
    assert_null(phrase_from(test.arena, NULL, (struct place){.line = 1}));
    assert_true(phrase_is_empty(NULL));
    assert_true(phrase_is_empty(&(struct phrase){.kind = PHRASE_NOTHING}));
    assert_true(phrase_is_empty(phrase_verbatim(test.arena, "")));
    assert_false(phrase_is_empty(phrase_number(test.arena, 0)));
    assert_false(phrase_is_empty(phrase_word(test.arena, WORD_YES, NULL)));
}

static void a_list_has_what_says_something(void **state)
{
    (void)state;
    const struct phrase *galley = phrase_zone(test.arena, zone_find("galley"));
    const struct phrase *empty = phrase_verbatim(test.arena, "");
    assert_null(phrase_joined(test.arena, WORD_JOIN_DOT, NULL, empty, NULL));
    assert_ptr_equal(phrase_joined(test.arena, WORD_JOIN_DOT, NULL, galley, empty), galley);
    const struct phrase *list = phrase_joined(test.arena, WORD_JOIN_DOT, galley, NULL, galley);
    assert_int_equal(list->kind, PHRASE_LIST);
    assert_int_equal(list->part_count, 2);
    assert_int_equal(list->word, WORD_JOIN_DOT);
}

static void equal_is_what_says_the_same(void **state)
{
    (void)state;
    const struct phrase *place = place_of("under the sink");
    assert_true(phrase_equal(place, place_of("under the sink")));
    assert_true(phrase_equal(place, phrase_from(test.arena, place, (struct place){.line = 9})));
    assert_true(phrase_equal(NULL, phrase_verbatim(test.arena, "")));
    enum item_key torch = ITEM_torch;
    const struct phrase *others[] = {
        NULL, place_of("under the sin"), place_of(NULL), phrase_upper(test.arena, place),
        phrase_zone(test.arena, zone_find("saloon")), phrase_zone(test.arena, zone_find("mast")),
        phrase_item(test.arena, torch), phrase_items(test.arena, torch, 2),
        phrase_items(test.arena, torch, 3), phrase_item(test.arena, ITEM_knife),
        phrase_date(test.arena, (struct date){2027, 4, 0}),
        phrase_date(test.arena, (struct date){2027, 5, 0}), phrase_number(test.arena, 7),
        phrase_word(test.arena, WORD_YES, NULL), phrase_word(test.arena, WORD_NO, NULL),
        phrase_word(test.arena, WORD_PERSONS, "count", phrase_number(test.arena, 2), NULL),
        phrase_counted(test.arena, WORD_PERSONS, 2, "count", phrase_number(test.arena, 2), NULL),
        phrase_counted(test.arena, WORD_PERSONS, 2, "some", phrase_number(test.arena, 2), NULL)};
    size_t count = sizeof others / sizeof others[0];
    for (size_t i = 0; i < count; i++) {
        assert_false(phrase_equal(place, others[i]));
        for (size_t j = 0; j < count; j++)
            assert_int_equal(phrase_equal(others[i], others[j]), i == j);
    }
}

static void texts_are_equal_in_all_languages(void **state)
{
    (void)state;
    static const struct text_in_language one[] = {
        {.language = "en", .text = "a"}, {.language = "de", .text = "b"}, {.text = NULL}};
    static const struct text_in_language other[] = {
        {.language = "en", .text = "a"}, {.language = "de", .text = "c"}, {.text = NULL}};
    static const struct text_in_language shorter[] = {
        {.language = "en", .text = "a"}, {.text = NULL}};
    static const struct text_value texts[] = {
        {.text = "a"}, {.text = "a", .languages = one}, {.text = "a", .languages = other},
        {.text = "a", .languages = shorter}};
    for (size_t i = 0; i < 4; i++)
        for (size_t j = 0; j < 4; j++)
            assert_int_equal(phrase_equal(phrase_text(test.arena, &texts[i]),
                                          phrase_text(test.arena, &texts[j])), i == j);
}

static void a_text_keeps_its_place(void **state)
{
    (void)state;
    const struct text_value text = {.text = "over the table", .place = {.line = 7, .column = 9}};
    const struct phrase *phrase = phrase_text(test.arena, &text);
    assert_int_equal(phrase->origin.line, 7);
    phrase = phrase_from(test.arena, phrase, (struct place){.line = 3});
    assert_int_equal(phrase->origin.line, 3);
    assert_int_equal(phrase->text.place.line, 7);
}

static void kind_note(void *context, const struct phrase *phrase)
{
    static const char letters[] = "-wiszTvdl";
    text_add_bytes(context, &letters[phrase->kind], 1);
}

static void all_is_visited_in_order(void **state)
{
    (void)state;
    const struct text_value spot = {.text = "under the sink"};
    const struct phrase *place = phrase_joined(
        test.arena, WORD_JOIN_COMMA, phrase_zone(test.arena, zone_find("galley")),
        phrase_word(test.arena, WORD_SIDE_PORT, NULL), phrase_text(test.arena, &spot));
    const struct phrase *phrase = phrase_word(
        test.arena, WORD_RADIO_AT, "tag", phrase_verbatim(test.arena, "E3"), "none", NULL,
        "place", place, "when", phrase_date(test.arena, (struct date){2027, 0, 0}), "what",
        phrase_items(test.arena, ITEM_torch, 2), NULL);
    struct text_builder out = text_builder_in(test.arena);
    phrase_visit(phrase, kind_note, &out);
    assert_string_equal(out.at, "wvlzwTdwvi");
    phrase_visit(NULL, kind_note, &out);
    assert_string_equal(out.at, "wvlzwTdwvi");
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(what_is_not_there_says_nothing),
        TEST(a_list_has_what_says_something),
        TEST(equal_is_what_says_the_same),
        TEST(texts_are_equal_in_all_languages),
        TEST(a_text_keeps_its_place),
        TEST(all_is_visited_in_order),
    };
    return cmocka_run_group_tests_name("phrase", tests, NULL, NULL);
}
