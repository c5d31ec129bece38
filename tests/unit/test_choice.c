/* test_choice.c - an enum and its words from one list: each value has its word, and each
 * word its value. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include "choice.h"
#include "choices.h"
#include "procedure.h"

#define COLOUR_LIST(X) X(COLOUR_RED, "red") X(COLOUR_BLUE, "blue")
enum colour { COLOUR_NONE, COLOUR_LIST(CHOICE_NAME) COLOUR_COUNT };
static const char *const colour_words[] = {COLOUR_LIST(CHOICE_WORD) NULL};

static void words_and_values_find_each_other(void **state)
{
    (void)state;
    assert_int_equal(COLOUR_COUNT, 3);
    assert_int_equal(choice_find(colour_words, "red"), COLOUR_RED);
    assert_int_equal(choice_find(colour_words, "blue"), COLOUR_BLUE);
    assert_int_equal(choice_find(colour_words, "Blue"), COLOUR_NONE);
    assert_int_equal(choice_find(colour_words, ""), COLOUR_NONE);
    assert_int_equal(choice_find(colour_words, NULL), COLOUR_NONE);
    assert_string_equal(choice_word(colour_words, COLOUR_RED), "red");
    assert_string_equal(choice_word(colour_words, COLOUR_BLUE), "blue");
    assert_null(choice_word(colour_words, COLOUR_NONE));
}

/* What other files rely on: the word that a value is written as. */
static void values_are_the_words_that_files_hold(void **state)
{
    (void)state;
    assert_string_equal(choice_word(hull_words, HULL_CATAMARAN), "catamaran");
    assert_string_equal(choice_word(hull_words, HULL_TRIMARAN), "trimaran");
    assert_string_equal(choice_word(rig_words, RIG_MOTOR), "motor");
    assert_string_equal(choice_word(fuel_words, FUEL_ELECTRIC), "electric");
    assert_string_equal(choice_word(drive_words, DRIVE_GENERATOR), "generator");
    assert_string_equal(choice_word(drain_words, DRAIN_ABSENT), "none");
    assert_string_equal(choice_word(agent_words, AGENT_CO2), "co2");
    assert_string_equal(choice_word(valve_words, VALVE_CLIP_ON), "clip-on");
    assert_string_equal(choice_word(lanyard_words, LANYARD_MADE_FAST), "made_fast");
    assert_string_equal(choice_word(facing_words, FACING_STARBOARD), "starboard");
    assert_string_equal(choice_word(reach_words, REACH_COMPANIONWAY), "companionway");
    assert_string_equal(choice_word(trait_words, TRAIT_DSC), "dsc");
    assert_string_equal(choice_word(signal_words, SIGNAL_PAN_PAN), "pan_pan");
    assert_string_equal(choice_word(call_from_words, CALL_FROM_HANDHELD), "handheld_on_deck");
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(words_and_values_find_each_other),
        cmocka_unit_test(values_are_the_words_that_files_hold),
    };
    int failed = cmocka_run_group_tests_name("choice", tests, NULL, NULL);
    return failed != 0;
}
