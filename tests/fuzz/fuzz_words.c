/* fuzz_words.c - any bytes as the words of a language: what is sound says all sheets of a boat. */
#include "fuzz.h"

static void words_open_own(void)
{
    own_open(OWN_TEXTS | OWN_BOATS);
}

static void words_one(struct fuzz *fuzz)
{
    const struct words *words = words_read(fuzz_source(fuzz, "words.yaml"), "en", fuzz->arena,
                                           fuzz->problems);
    sound_check(fuzz, words != NULL);
    if (words == NULL)
        return;
    struct compose_input input = own_input(own.boats[fuzz_choice(fuzz, 3)]);
    input.words = words;
    const struct sheet_set *set = boat_use(fuzz, &input);
    if (set != NULL)
        set_check(fuzz, &input, set);
}

const struct harness harness = {words_open_own, words_one, true};
