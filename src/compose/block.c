/* block.c - what blocks are called (room: compose). */
#include "block.h"

#include "promise.h"

const char *block_word(enum block_key block)
{
    static const char *const words[] = {
        [BLOCK_NONE] = "-",
#define BLOCK_WORD(name, word) [BLOCK_##name] = (word),
        BLOCK_LIST(BLOCK_WORD)
#undef BLOCK_WORD
    };
    promise(block < BLOCK_COUNT);
    return words[block];
}
