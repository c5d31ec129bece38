/* test_speak.c - saying phrases in a language: what is filled in, lists, forms of numbers,
 * capitals, names that are not given. */
#include "words_case.h"

#include "speak.h"

static struct speaker *speaker_of(const struct recipe *recipe)
{
    const struct words *words = words_of(recipe);
    expect_errors(0);
    return speaker_new(words, test.arena, test.problems);
}

static const struct phrase *name(const char *text)
{
    return phrase_verbatim(test.arena, text);
}

static void words_are_filled_in(void **state)
{
    (void)state;
    struct speaker *speaker = speaker_of(&(struct recipe){
        .given = {{"radio_at", "'{place}: **{tag}** radio, {place}'"}}});
    const struct phrase *phrase = phrase_word(test.arena, WORD_RADIO_AT, "tag", name("E3"),
                                              "place", name("{tag}"), NULL);
    assert_string_equal(say(speaker, phrase), "{tag}: **E3** radio, {tag}");
    phrase = phrase_word(test.arena, WORD_RADIO_AT, "tag", NULL, "place",
                         phrase_zone(test.arena, zone_find("galley")), NULL);
    assert_string_equal(say(speaker, phrase), "Zone galley: **** radio, Zone galley");
    assert_string_equal(say(speaker, NULL), "");
    assert_string_equal(say(speaker, phrase_date(test.arena, (struct date){2027, 4, 0})),
                        "2027-04");
    assert_string_equal(say(speaker, phrase_number(test.arena, -12)), "-12");
    expect_errors(0);
}

static const struct phrase *list_of(enum word join, size_t count)
{
    const struct phrase *members[] = {name("one"), name("two"), name("three"), name("four")};
    return phrase_list(test.arena, join, members, count);
}

static void lists_are_joined_by_their_words(void **state)
{
    (void)state;
    struct speaker *speaker = speaker_of(&(struct recipe){
        .given = {{"join_comma", "{two: '{before} and {next}', many: '{before}, {next}', "
                                 "last: '{next} after {before}'}"},
                  {"join_dot", "'{before} · {next}'"}}});
    static const char *const comma[] = {"", "one", "one and two", "three after one, two",
                                        "four after one, two, three"};
    static const char *const dot[] = {"", "one", "one · two", "one · two · three",
                                      "one · two · three · four"};
    for (size_t count = 0; count <= 4; count++) {
        assert_string_equal(say(speaker, list_of(WORD_JOIN_COMMA, count)), comma[count]);
        assert_string_equal(say(speaker, list_of(WORD_JOIN_DOT, count)), dot[count]);
    }
}

/* A member that holds what looks like a {name} is taken as it is. */
static void members_are_never_filled_in(void **state)
{
    (void)state;
    struct speaker *speaker = speaker_of(&(struct recipe){
        .given = {{"join_dot", "'{before} · {next}'"}}});
    const struct phrase *phrase = phrase_joined(test.arena, WORD_JOIN_DOT, name("{next}"),
                                                name("{before}"), name("x"));
    assert_string_equal(say(speaker, phrase), "{next} · {before} · x");
}

/* One for 1, 21, 31; few for 2 to 4, 22 to 24; many for the rest. */
static void numbers_take_their_forms(void **state)
{
    (void)state;
    struct speaker *speaker = speaker_of(&(struct recipe){
        .plurals = "{one: {ends: 1, not: 11}, few: {ends: 2-4, not: 12-14}, "
                   "many: {ends: [0, 5-9, 11-14]}}",
        .item_name = "{name: Vest, one: vest, few: veste, many: vests, other: vesto}",
        .given = {{"persons", "{one: '{count} person', few: '{count} persone', "
                              "many: '{count} persons', other: '{count} persono'}"},
                  {"counted_items", "'{count} {items}'"}}});
    static const struct { uint64_t count; const char *items, *persons; } rows[] = {
        {1, "1 vest", "1 person"}, {2, "2 veste", "2 persone"}, {5, "5 vests", "5 persons"},
        {11, "11 vests", "11 persons"}, {21, "21 vest", "21 person"},
        {22, "22 veste", "22 persone"}};
    enum item_key vest = ITEM_lifejacket;
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
        const struct phrase *count = phrase_number(test.arena, (int64_t)rows[i].count);
        assert_string_equal(say(speaker, phrase_items(test.arena, vest, rows[i].count)),
                            rows[i].items);
        assert_string_equal(say(speaker, phrase_counted(test.arena, WORD_PERSONS, rows[i].count,
                                                        "count", count, NULL)),
                            rows[i].persons);
    }
    assert_string_equal(say(speaker, phrase_item(test.arena, vest)), "Vest");
}

/* A form that is for one number alone need not say it; one for several must. */
static void a_single_number_may_go_without_saying(void **state)
{
    (void)state;
    struct speaker *speaker = speaker_of(&(struct recipe){
        .given = {{"persons", "{one: 'a person', other: '{count} persons'}"}}});
    assert_string_equal(say(speaker, phrase_counted(test.arena, WORD_PERSONS, 1, "count",
                                                    name("1"), NULL)), "a person");
    assert_null(words_of(&(struct recipe){
        .plurals = "{one: {ends: 1}}",
        .given = {{"persons", "{one: 'a person', other: '{count} persons'}"}}}));
    assert_non_null(problem_saying("persons does not say {count}"));
}

static void capitals_are_made_of_any_letters(void **state)
{
    (void)state;
    struct speaker *speaker = speaker_of(&(struct recipe){
        .given = {{"radio_at", "'{tag}: šum, ωκεανός, **{place}**'"}}});
    const struct phrase *phrase = phrase_word(test.arena, WORD_RADIO_AT, "tag", name("e3"),
                                              "place", name("ǆemla"), NULL);
    assert_string_equal(say(speaker, phrase_upper(test.arena, phrase)),
                        "E3: ŠUM, ΩΚΕΑΝΌΣ, **ǄEMLA**");
    assert_string_equal(say(speaker, phrase), "e3: šum, ωκεανός, **ǆemla**");
}

/* A sentence that would print a hole is told, and printed with its braces. */
static void names_that_are_not_given_stay_visible(void **state)
{
    (void)state;
    struct speaker *speaker = speaker_of(&(struct recipe){
        .given = {{"radio_at", "'{tag} at {place}'"}}});
    const struct phrase *phrase = phrase_from(
        test.arena, phrase_word(test.arena, WORD_RADIO_AT, "place", name("here"), NULL),
        (struct place){.line = 12});
    assert_string_equal(say(speaker, phrase), "{tag} at here");
    expect_errors(1);
    expect_error(12, "nothing is filled in for {tag} in: {tag} at {place}", NULL);
    const struct text_value text = {.text = "Go to step {stop}.", .place = {.line = 4}};
    assert_string_equal(say(speaker, phrase_text(test.arena, &text)), "Go to step {stop}.");
    expect_error(4, "nothing is filled in for {stop} in: Go to step {stop}.", NULL);
}

static void texts_of_people_are_filled_in(void **state)
{
    (void)state;
    struct speaker *speaker = speaker_of(&(struct recipe){.left_out = NULL});
    const struct text_value text = {.text = "**GO** to {a}, then {b}.", .place = {.line = 4}};
    const struct phrase_part parts[] = {{"a", name("3")}, {"b", name("**4**")}};
    assert_string_equal(say(speaker, phrase_text_filled(test.arena, &text, parts, 2)),
                        "**GO** to 3, then **4**.");
    expect_errors(0);
}

/* Its own language; where it is not given in that, the first of those that people gave. */
static void texts_are_said_in_their_language(void **state)
{
    (void)state;
    struct speaker *speaker = speaker_of(&(struct recipe){.left_out = NULL});
    static const struct text_in_language with[] = {
        {.language = "de", .text = "{a} Tisch"}, {.language = "en", .text = "table {a}"},
        {.text = NULL}};
    static const struct text_in_language without[] = {
        {.language = "hr", .text = "stol {a}"}, {.language = "de", .text = "Tisch"},
        {.text = NULL}};
    const struct phrase_part parts[] = {{"a", name("4")}};
    static const struct { struct text_value text; const char *said; } rows[] = {
        {{.text = "{a} Tisch", .languages = with}, "table 4"},
        {{.text = "stol {a}", .languages = without}, "stol 4"},
        {{.text = "over {a}"}, "over 4"}};
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++)
        assert_string_equal(say(speaker, phrase_text_filled(test.arena, &rows[i].text, parts, 1)),
                            rows[i].said);
}

/* What is said is kept: the same phrase gives the same string. Many more than are kept at
 * first, each still its own. */
static void what_was_said_is_kept(void **state)
{
    (void)state;
    enum { MANY = 400 };
    const struct phrase *phrases[MANY];
    const char *said[MANY];
    struct speaker *speaker = speaker_of(&(struct recipe){
        .given = {{"persons", "'{count} persons'"}}});
    for (int i = 0; i < MANY; i++) {
        phrases[i] = phrase_word(test.arena, WORD_PERSONS, "count",
                                 phrase_number(test.arena, i), NULL);
        said[i] = say(speaker, phrases[i]);
    }
    for (int i = 0; i < MANY; i++) {
        assert_ptr_equal(say(speaker, phrases[i]), said[i]);
        assert_string_equal(said[i], text_format(test.arena, "%d persons", i));
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(words_are_filled_in),
        TEST(lists_are_joined_by_their_words),
        TEST(members_are_never_filled_in),
        TEST(numbers_take_their_forms),
        TEST(a_single_number_may_go_without_saying),
        TEST(capitals_are_made_of_any_letters),
        TEST(names_that_are_not_given_stay_visible),
        TEST(texts_of_people_are_filled_in),
        TEST(texts_are_said_in_their_language),
        TEST(what_was_said_is_kept),
    };
    return cmocka_run_group_tests_name("speak", tests, NULL, NULL);
}
