/* block.c - what blocks are called, and which facts they have (room: compose). */
#include "block.h"

#include "promise.h"

static const struct block_row {
    const char *word;
    enum facts_kind facts;
} block_rows[BLOCK_COUNT] = {
    [BLOCK_NONE] = {"-", FACTS_BARE},
#define BLOCK_ROW(name, word, facts) [BLOCK_##name] = {word, FACTS_##facts},
    BLOCK_LIST(BLOCK_ROW)
#undef BLOCK_ROW
};

const char *block_word(enum block_key block)
{
    promise(block < BLOCK_COUNT);
    return block_rows[block].word;
}

enum facts_kind facts_kind_of(enum block_key block)
{
    promise(block < BLOCK_COUNT);
    return block_rows[block].facts;
}
