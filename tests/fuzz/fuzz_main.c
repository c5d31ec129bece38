/* fuzz_main.c - a harness for libFuzzer. */
#include "fuzz.h"

int LLVMFuzzerInitialize(int *argc, char ***argv);
int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t length);

int LLVMFuzzerInitialize(int *argc, char ***argv)
{
    (void)argc;
    (void)argv;
    if (harness.open != NULL)
        harness.open();
    return 0;
}

int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t length)
{
    fuzz_one((const char *)bytes, length);
    return 0;
}
