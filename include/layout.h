/* layout.h - composed cards to pages (room: layout): line breaking, blocks, plan,
 * fitting. It knows no PDF.
 *
 * Sizes of type are those of the one table in src/layout/sizes.c. Space yields in this order:
 * spacing to its floor, size to its floor, then what the sheet says may yield, by rank; a plan
 * of much gear takes more pages; then it is an error. Nothing that must stand is cut or
 * dropped. */
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
    bool draft;                /* held sheets are laid out too */
};

/* The pages of each sheet, in the order of the set; NULL where a sheet is held or a page does
 * not fit (a problem then names the block, the excess in mm and the cheapest cut, and sheet
 * and language). The same blocks stand at the same coordinates on every page of the set: what
 * all need is measured over the whole set first. */
struct laid_set layout_set(const struct layout_input *input, struct arena *arena,
                           struct problems *problems);

/* Which sheets are asked for; `of` is what `asked` was given to know. */
struct sheets_asked {
    bool (*asked)(const void *of, const struct sheet *sheet);
    const void *of;
};

/* The same, but a plan of the boat that is not asked for is not laid out: it has as many pages, and
 * each is NULL. Cards hang on each other, and all are. NULL: all are asked for. */
struct laid_set layout_asked(const struct layout_input *input, const struct sheets_asked *asked,
                             struct arena *arena, struct problems *problems);

/* A page with nothing on it, of the same paper: the back of a leaf whose front is that page. */
const struct page *page_blank(const struct page *before, struct arena *arena);

/* Notes: each figure and each hint that found no room. */
void room_notes(const struct laid_set *laid, struct arena *arena, struct problems *problems);

#endif
