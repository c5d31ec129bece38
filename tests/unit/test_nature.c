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
    assert_int_equal(EXPECTED_COUNT, NATURE_COUNT - 1);
    for (unsigned i = 0; i < EXPECTED_COUNT; i++) {
        assert_string_equal(nature_words[i], expected[i].key);
        assert_int_equal(nature_of(i + 1)->symbol, expected[i].symbol);
    }
    assert_null(nature_of(NATURE_NONE));
}

static void natures_are_found_by_key(void **state)
{
    (void)state;
    assert_int_equal(choice_find(nature_words, "fire"), NATURE_FIRE);
    assert_int_equal(choice_find(nature_words, "mob"), NATURE_MOB);
    assert_int_equal(choice_find(nature_words, "epirb"), NATURE_NONE);   /* no crew can choose it */
    assert_int_equal(choice_find(nature_words, "Fire"), NATURE_NONE);
    assert_int_equal(choice_find(nature_words, ""), NATURE_NONE);
    assert_string_equal(choice_word(nature_words, NATURE_MOB), "mob");
    assert_null(choice_word(nature_words, NATURE_NONE));
}

static void every_phrase_can_be_said(void **state)
{
    (void)state;
    for (enum nature_key key = NATURE_NONE + 1; key < NATURE_COUNT; key++) {
        const char *phrase = nature_of(key)->phrase;
        assert_true(strlen(phrase) > 5);
        assert_int_equal(strspn(phrase, "ABCDEFGHIJKLMNOPQRSTUVWXYZ ,."), strlen(phrase));
        assert_true(strlen(nature_of(key)->label) > 0);
    }
}

/* A list that told two natures in the same words would send the wrong one. */
static void no_two_natures_share_words(void **state)
{
    (void)state;
    for (enum nature_key key = NATURE_NONE + 1; key < NATURE_COUNT; key++)
        for (enum nature_key other = NATURE_NONE + 1; other < key; other++) {
            assert_int_not_equal(nature_of(key)->brief, nature_of(other)->brief);
            assert_string_not_equal(nature_of(key)->phrase, nature_of(other)->phrase);
        }
}

static void phrases_are_the_standard_ones(void **state)
{
    (void)state;
    assert_string_equal(nature_of(NATURE_FIRE)->phrase, "I AM ON FIRE");
    assert_string_equal(nature_of(NATURE_FLOODING)->phrase, "I AM FLOODING");
    assert_string_equal(nature_of(NATURE_GROUNDING)->phrase, "I AM AGROUND");
    assert_string_equal(nature_of(NATURE_LISTING)->phrase, "I AM IN DANGER OF CAPSIZING");
    assert_string_equal(nature_of(NATURE_SINKING)->phrase, "I AM SINKING");
    assert_string_equal(nature_of(NATURE_ADRIFT)->phrase, "I AM NOT UNDER COMMAND, DRIFTING");
    assert_string_equal(nature_of(NATURE_MOB)->phrase, "I HAVE LOST PERSON OVERBOARD");
    assert_string_equal(nature_of(NATURE_MOB)->label, "Man overboard");
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
