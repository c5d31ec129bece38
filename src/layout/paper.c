/* paper.c - the papers as rows of one table (room: layout). */
#include "paper.h"

#include "promise.h"

#define PAPER_ROW(name, ...) [name] = {__VA_ARGS__, .palette = PALETTE_COLOUR},
static const struct paper papers[PAPER_COUNT] = {PAPER_LIST(PAPER_ROW)};

const struct paper *paper_of(enum paper_key key)
{
    promise(key > PAPER_NONE && key < PAPER_COUNT);
    return &papers[key];
}
