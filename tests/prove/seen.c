/* seen.c - which boats a card was proved on, told apart by the sums of their files. */
#include "states.h"

#include "promise.h"
#include "sha256.h"

#include <string.h>

#define SEEN_SLOTS ((size_t)1 << 18)

/* An empty slot has an empty sum; a sum stands in the first free slot from that which its first
 * digits name. */
static char seen_sums[SEEN_SLOTS][SHA256_TEXT];
static size_t seen_count;

void seen_forget(void)
{
    memset(seen_sums, 0, sizeof seen_sums);
    seen_count = 0;
}

static size_t slot_named(const char *sum)
{
    size_t slot = 0;
    for (size_t i = 0; i < 8; i++)
        slot = slot * 16 + (size_t)(sum[i] <= '9' ? sum[i] - '0' : sum[i] - 'a' + 10);
    return slot % SEEN_SLOTS;
}

bool seen_first(const char *text, size_t length)
{
    char sum[SHA256_TEXT];
    sha256_text((const unsigned char *)text, length, sum);
    size_t slot = slot_named(sum);
    for (; seen_sums[slot][0] != '\0'; slot = (slot + 1) % SEEN_SLOTS)
        if (memcmp(seen_sums[slot], sum, sizeof sum) == 0)
            return false;
    promise(++seen_count < SEEN_SLOTS);
    memcpy(seen_sums[slot], sum, sizeof sum);
    return true;
}
