/* fuzz_trial.c - a harness that fails on one word: by it the tests see that a failure is told, and
 * libFuzzer that it is found. */
#include "fuzz.h"

#include <string.h>

static void trial_one(struct fuzz *fuzz)
{
    CHECK(strncmp(fuzz->bytes, "fall", 4) != 0);
}

const struct harness harness = {NULL, trial_one, false};
