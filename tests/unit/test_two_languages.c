/* test_two_languages.c - a set composed in two languages from one record: the same cards with
 * the same blocks, and in each the same facts from the same places, told in other words. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "card_fixture.h"
#include "fact.h"
#include "pseudo_case.h"
#include "text.h"

#define FACTS_MOST 16000

/* All facts of a set, one after the other, and the sheet and block of each. */
struct told {
    struct fact facts[FACTS_MOST];
    const struct sheet *sheets[FACTS_MOST];
    enum block_key blocks[FACTS_MOST];
    const struct sheet *sheet;
    enum block_key block;
    size_t count;
};

static void fact_keep(void *of, const struct fact *fact)
{
    struct told *told = of;
    assert_true(told->count < FACTS_MOST);
    told->sheets[told->count] = told->sheet;
    told->blocks[told->count] = told->block;
    told->facts[told->count++] = *fact;
}

static const struct told *told_by(const struct sheet_set *set)
{
    struct told *told = arena_alloc(test.arena, sizeof *told);
    for (size_t i = 0; i < set->count; i++)
        for (size_t b = 0; b < set->sheets[i]->block_count; b++) {
            told->sheet = set->sheets[i];
            told->block = told->sheet->blocks[b].key;
            block_visit(&told->sheet->blocks[b], test.arena, fact_keep, told);
        }
    return told;
}

static const struct sheet_set *composed(const struct words *words)
{
    const struct words *own = test.words, *both[] = {own, words};
    const struct compose_input input = {
        .boat = test.boat, .base = test.base, .procedures = &test.procedures,
        .authorities = test.authorities, .words = words, .languages = {both, 2},
        .today = test.today};
    const struct sheet_set *set = compose_set(&input, test.arena, test.problems);
    assert_non_null(set);
    return set;
}

/* ---- what must be equal ---- */

static bool is_letter(char c)
{
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (unsigned char)c >= 0x80;
}

/* The text without its letters: numbers, marks, spaces. */
static const char *without_letters(const char *text)
{
    struct text_builder out = text_builder_in(test.arena);
    text_add(&out, "");
    for (; *text != '\0'; text++)
        if (!is_letter(*text))
            text_add_bytes(&out, text, 1);
    return out.at;
}

/* A fact that is the same in every language; what is said on the radio too. */
static bool is_wordless(const struct fact *fact, enum block_key block)
{
    static const char *const names[] = {"tag", "marker", "zone", "level", "boat", "step",
                                        "figure of", "mm aft", "first date", "undated", "source",
                                        NULL};
    for (size_t i = 0; names[i] != NULL; i++)
        if (text_equal(fact->name, names[i]))
            return true;
    return block == BLOCK_CALL && text_equal(fact->name, "say");
}

/* One place: of the record, where both languages of a text stand in one line; else at the same
 * place of two files, which differ by the folder of their language. */
static bool is_one_place(struct place a, struct place b)
{
    if (a.source == b.source)
        return a.line == b.line;
    if (a.line != b.line || a.column != b.column)
        return false;
    const char *first = strstr(a.source->name, "/en/"), *second = strstr(b.source->name, "/qps/");
    return first != NULL && second != NULL &&
           text_equal(first + strlen("/en/"), second + strlen("/qps/"));
}

static void fact_same(const struct told *english, const struct told *other, size_t i)
{
    const struct fact *a = &english->facts[i], *b = &other->facts[i];
    const char *where = text_format(test.arena, "%s, %s: %s \"%s\" and %s \"%s\"",
                                    english->sheets[i]->id, block_word(english->blocks[i]),
                                    a->name, a->text, b->name, b->text);
    if (!text_equal(english->sheets[i]->id, other->sheets[i]->id) ||
        english->blocks[i] != other->blocks[i] || !text_equal(a->name, b->name))
        fail_msg("another fact: %s", where);
    if (a->kind != b->kind || a->joined != b->joined)
        fail_msg("another kind of fact: %s", where);
    if (!is_one_place(a->origin, b->origin))
        fail_msg("from another place (lines %d and %d): %s", a->origin.line, b->origin.line,
                 where);
    if (is_wordless(a, english->blocks[i]) && !text_equal(a->text, b->text))
        fail_msg("not the same: %s", where);
    if (!text_equal(a->name, "code") &&
        !text_equal(without_letters(a->text), without_letters(b->text)))
        fail_msg("other numbers: %s", where);
}

static void sheet_same(const struct sheet *a, const struct sheet *b)
{
    assert_string_equal(a->id, b->id);
    assert_string_equal(a->number, b->number);
    assert_int_equal(a->kind, b->kind);
    assert_int_equal(a->space, b->space);
    assert_int_equal(a->held, b->held);
    assert_int_equal(a->block_count, b->block_count);
    for (size_t i = 0; i < a->block_count; i++) {
        assert_int_equal(a->blocks[i].key, b->blocks[i].key);
        assert_int_equal(a->blocks[i].yields, b->blocks[i].yields);
    }
    assert_string_not_equal(sheet_title(a)->title, sheet_title(b)->title);
    assert_string_not_equal(sheet_footer(a)->code, sheet_footer(b)->code);
}

static void sets_same(const struct sheet_set *english, const struct sheet_set *other)
{
    assert_int_equal(english->count, other->count);
    assert_int_equal(english->not_hers_count, other->not_hers_count);
    for (size_t i = 0; i < english->count; i++)
        sheet_same(english->sheets[i], other->sheets[i]);
    const struct told *first = told_by(english), *second = told_by(other);
    assert_int_equal(first->count, second->count);
    assert_true(first->count > 500);
    for (size_t i = 0; i < first->count; i++)
        fact_same(first, second, i);
}

static void in_two_languages(const char *file)
{
    const struct words *words = pseudo_words(&test);
    pseudo_procedures(&test);
    pseudo_boat(&test, file);
    sets_same(composed(test.words), composed(words));
}

static void a_yacht_is_the_same_in_two_languages(void **state)
{
    (void)state;
    in_two_languages("tests/fleet/boats/tamarisk.yaml");
}

static void a_catamaran_is_the_same_in_two_languages(void **state)
{
    (void)state;
    in_two_languages("tests/fleet/boats/samphire.yaml");
}

static void a_boat_with_gaps_is_the_same_in_two_languages(void **state)
{
    (void)state;
    in_two_languages("tests/fleet/boats/bramble.yaml");
}

/* What is told of a text points at the text of the language that it is told of. */
static void a_text_comes_from_the_file_of_its_language(void **state)
{
    (void)state;
    const struct words *words = pseudo_words(&test);
    pseudo_procedures(&test);
    pseudo_boat(&test, "tests/fleet/boats/tamarisk.yaml");
    const struct sheet *card = case_card(composed(words), "flooding");
    const struct card_step *step = &sheet_steps(card)->items[0];
    assert_string_equal(step->headline.origin.source->name, "procedures/words/qps/flooding.yaml");
    assert_string_equal(sheet_warnings(card, BLOCK_NEVER)->items[0].origin.source->name,
                        "procedures/words/qps/flooding.yaml");
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(a_yacht_is_the_same_in_two_languages),
        TEST(a_catamaran_is_the_same_in_two_languages),
        TEST(a_boat_with_gaps_is_the_same_in_two_languages),
        TEST(a_text_comes_from_the_file_of_its_language),
    };
    return cmocka_run_group_tests_name("two languages", tests, NULL, NULL) != 0;
}
