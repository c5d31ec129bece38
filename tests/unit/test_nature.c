/* test_nature.c - the natures of distress: order, keys, words. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "radio.h"

static const struct { const char *key; int symbol; } expected[] = {
    {"fire", 100}, {"flooding", 101}, {"collision", 102}, {"grounding", 103},
    {"listing", 104}, {"sinking", 105}, {"adrift", 106}, {"undesignated", 107},
    {"abandon", 108}, {"piracy", 109}, {"mob", 110},
};

#define EXPECTED_COUNT (sizeof expected / sizeof expected[0])

static void the_order_is_the_recommendation_s(void **state)
{
    (void)state;
    for (size_t i = 0; i < EXPECTED_COUNT; i++) {
        const struct nature *nature = nature_at(i);
        assert_non_null(nature);
        assert_string_equal(nature->key, expected[i].key);
        assert_int_equal(nature->symbol, expected[i].symbol);
    }
    assert_null(nature_at(EXPECTED_COUNT));
    assert_null(nature_at(SIZE_MAX));
}

static void natures_are_found_by_key(void **state)
{
    (void)state;
    for (size_t i = 0; i < EXPECTED_COUNT; i++)
        assert_ptr_equal(nature_find(expected[i].key), nature_at(i));
    assert_null(nature_find("epirb"));   /* no crew can choose it */
    assert_null(nature_find("Fire"));
    assert_null(nature_find(""));
    assert_null(nature_find(NULL));
}

static void every_phrase_can_be_said(void **state)
{
    (void)state;
    for (size_t i = 0; nature_at(i) != NULL; i++) {
        const char *phrase = nature_at(i)->phrase;
        assert_true(strlen(phrase) > 5);
        assert_int_equal(strspn(phrase, "ABCDEFGHIJKLMNOPQRSTUVWXYZ ,."), strlen(phrase));
        assert_true(strlen(nature_at(i)->label) > 0);
    }
}

/* A list that told two natures in the same words would send the wrong one. */
static void no_two_natures_share_words(void **state)
{
    (void)state;
    for (size_t i = 0; nature_at(i) != NULL; i++)
        for (size_t j = 0; j < i; j++) {
            assert_string_not_equal(nature_at(i)->key, nature_at(j)->key);
            assert_int_not_equal(nature_at(i)->brief, nature_at(j)->brief);
            assert_string_not_equal(nature_at(i)->phrase, nature_at(j)->phrase);
        }
}

static void phrases_are_the_standard_ones(void **state)
{
    (void)state;
    assert_string_equal(nature_find("fire")->phrase, "I AM ON FIRE");
    assert_string_equal(nature_find("flooding")->phrase, "I AM FLOODING");
    assert_string_equal(nature_find("grounding")->phrase, "I AM AGROUND");
    assert_string_equal(nature_find("listing")->phrase, "I AM IN DANGER OF CAPSIZING");
    assert_string_equal(nature_find("sinking")->phrase, "I AM SINKING");
    assert_string_equal(nature_find("adrift")->phrase, "I AM NOT UNDER COMMAND, DRIFTING");
    assert_string_equal(nature_find("mob")->phrase, "I HAVE LOST PERSON OVERBOARD");
    assert_string_equal(nature_find("mob")->label, "Man overboard");
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(the_order_is_the_recommendation_s),
        cmocka_unit_test(natures_are_found_by_key),
        cmocka_unit_test(every_phrase_can_be_said),
        cmocka_unit_test(no_two_natures_share_words),
        cmocka_unit_test(phrases_are_the_standard_ones),
    };
    int failed = cmocka_run_group_tests(tests, NULL, NULL);
    return failed != 0;
}
