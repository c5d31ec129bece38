/* layout.h - composed cards to pages (room: layout): line breaking, blocks, plan,
 * fitting. It knows no PDF.
 *
 * All sizes are those of the one table in src/layout/sizes.c. Space yields in
 * this order: spacing to its floor, size to its floor, error. Nothing is cut,
 * dropped or set on a second page. */
#ifndef MAYDECK_LAYOUT_H
#define MAYDECK_LAYOUT_H

#include <stdbool.h>
#include <stddef.h>

#include "arena.h"
#include "compose.h"
#include "face.h"
#include "page.h"
#include "paper.h"
#include "problem.h"

/* What layout works on. The paper may be any: see paper.h. */
struct layout_input {
    const struct sheet_set *set;
    const struct faces *faces;
    const struct paper *paper;
    bool draft;                /* held cards are laid out too */
    bool *full;                /* one a card, told here: with less on it it may fit; or NULL */
};

/* One page a card, in the order of the set; NULL where a card is held or does
 * not fit (a problem then names the block, the excess in mm and the cheapest
 * cut, and card and language). The same blocks stand at the same coordinates on
 * every card of the set: what all need is measured over the whole set first. */
const struct page *const *layout_set(const struct layout_input *input, struct arena *arena,
                                     struct problems *problems);

#endif
