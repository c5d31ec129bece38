/* test_voice_words.c - words that are called out: signal words, the figure 5, channel
 * 70, and English. Vectors P16, S11, S14. */
#include "record_test.h"

#include "reading.h"

static void text_checked_but(const char *yaml, bool (*is_spared)(const char *key))
{
    test.problems = problems_new(test.arena);
    voice_words_check(yaml_tree_read(file_of("p.yaml", yaml), test.arena, test.problems),
                      is_spared, test.arena, test.problems);
}

static void text_checked(const char *yaml)
{
    text_checked_but(yaml, NULL);
}

static void signal_words_are_never_written_by_ear(void **state)
{
    (void)state;
    static const struct { const char *word, *signal; } words[] = {
        {"MAYDEJ", "MAYDAY"}, {"mejdej", "MAYDAY"}, {"Maiday", "MAYDAY"},
        {"МЭЙДЭЙ", "MAYDAY"}, {"Μεϊντεϊ", "MAYDAY"}, {"PANPAN", "PAN PAN"},
        {"sécurité", "SECURITE"}, {"SEKURITE", "SECURITE"},
    };
    for (size_t i = 0; i < sizeof words / sizeof words[0]; i++) {
        text_checked(text_format(test.arena, "a: 1\nsteps:\n  - {act: \"**CALL** %s, now\"}\n",
                                 words[i].word));
        expect_errors(1);
        expect_error_with(3, text_format(test.arena, "stands for the signal %s",
                                         words[i].signal), "the same in all languages");
    }
}

static void the_true_signals_are_silent(void **state)
{
    (void)state;
    static const char *const texts[] = {
        "MAYDAY, MAYDAY", "PAN PAN", "SECURITE", "Call MAYDAY on 16.", "security", "Monday",
        "pan on the cooker", "a panel", "maid",
    };
    for (size_t i = 0; i < sizeof texts / sizeof texts[0]; i++) {
        text_checked(text_format(test.arena, "act: \"%s\"\n", texts[i]));
        expect_errors(0);
    }
}

/* P16: a slip of spelling, so the card is not held for it. */
static void five_is_pantafive(void **state)
{
    (void)state;
    text_checked("words: {five: PENTAFIVE}\n");
    assert_int_equal(problems_count(test.problems, SEVERITY_DEFICIENCY), 1);
    assert_int_equal(problems_count(test.problems, SEVERITY_ERROR), 0);
    assert_string_equal(problem_saying("the Radio Regulations spell the figure 5 PANTAFIVE, "
                                       "not PENTAFIVE")->remedy, "write PANTAFIVE");
    text_checked("words: {five: PANTAFIVE}\n");
    expect_errors(0);
}

static void nobody_talks_on_channel_70(void **state)
{
    (void)state;
    static const char *const wrong[] = {
        "Call on channel 70.", "VHF 70", "Go to Ch. 70", "ch70", "CHANNEL  70, then 16"};
    static const char *const right[] = {
        "Call on channel 16.", "VHF 72", "channel 170", "channel 700", "70 litres", "reach 70",
        "Channel 16; 70 m of chain"};
    for (size_t i = 0; i < sizeof wrong / sizeof wrong[0]; i++) {
        text_checked(text_format(test.arena, "steps: [{act: \"%s\"}]\n", wrong[i]));
        expect_errors(1);
        expect_error(1, "channel 70 carries data only: nobody can be heard there", NULL);
    }
    for (size_t i = 0; i < sizeof right / sizeof right[0]; i++) {
        text_checked(text_format(test.arena, "steps: [{act: \"%s\"}]\n", right[i]));
        expect_errors(0);
    }
}

static bool is_never_or_because(const char *key)
{
    return text_equal(key, "never") || text_equal(key, "because");
}

static void texts_of_spared_keys_may_name_channel_70(void **state)
{
    (void)state;
    const char *yaml = "never: [{say: Talk on channel 70.}]\n"
                       "steps: [{act: Call, because: Channel 70 is watched.}]\n";
    text_checked_but(yaml, is_never_or_because);
    expect_errors(0);
    text_checked(yaml);
    expect_errors(2);
}

static void calls_are_in_english(void **state)
{
    (void)state;
    struct text_value value = {.text = "I AM ON FIRE", .place = {.line = 4}};
    english_check("say", &value, test.problems);
    expect_errors(0);
    value.text = "GORIM, POŽAR";
    english_check("say", &value, test.problems);
    expect_errors(1);
    expect_error(4, "say holds letters that English has not", NULL);
    value.text = NULL;
    english_check("say", &value, test.problems);
    expect_errors(1);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(signal_words_are_never_written_by_ear),
        TEST(the_true_signals_are_silent),
        TEST(five_is_pantafive),
        TEST(nobody_talks_on_channel_70),
        TEST(texts_of_spared_keys_may_name_channel_70),
        TEST(calls_are_in_english),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
