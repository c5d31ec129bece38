/* laying_set.h - a set on its way to pages: what its tries have in common, and a page of a try.
 * Private to src/layout. */
#ifndef MAYDECK_LAYING_SET_H
#define MAYDECK_LAYING_SET_H

#include "boat_slots.h"
#include "page_known.h"

struct laying_set {
    const struct layout_input *input;
    const struct sheets_asked *asked;   /* NULL: all are */
    struct arena *arena;         /* for the pages */
    struct arena *scratch;       /* for the trials of this try, thrown away with it */
    struct problems *problems;   /* of this try */
    struct laying *laying;       /* one a sheet of the set */
    struct known_page **known;   /* the same, of all tries */
    struct known_paragraphs *paragraphs;
    struct boat_slots slots;     /* where tags stand on every card */
    enum head_lines head_lines;
    bool is_tried;               /* something was, and with this: */
    struct shared tried;
};

struct pen pen_for(const struct laying_set *set, const struct sheet *sheet, struct arena *arena);

/* Is the sheet a plan that is not asked for? It is not laid out: only is found how many pages it
 * has, since what all pages share hangs on that, and so do numbers of pages. */
bool is_measured(const struct laying_set *set, const struct laying *laying);

/* The page with that index of the sheet with that, as it was laid out before, else as it is now. */
const struct made_page *page_made(const struct laying_set *set, const struct shared *shared,
                                  size_t sheet, size_t index);

#endif
