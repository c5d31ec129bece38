/* page_known.h - what came of a page that was laid out, for when it is to stand there in the same
 * way again. Private to src/layout. */
#ifndef MAYDECK_PAGE_KNOWN_H
#define MAYDECK_PAGE_KNOWN_H

#include "pages.h"

struct made_page {
    const struct page *page;          /* NULL: not to be made */
    bool full;
    const struct problems *problems;  /* what laying it out told */
};

/* The pages of one sheet, of all tries; NULL: none yet. */
struct known_page;

bool shared_equal(const struct shared *a, const struct shared *b);

/* NULL: the page with that index, as it is to stand and with what it shares, is not among them. */
const struct made_page *page_known(const struct known_page *known, const struct laying *laying,
                                   size_t index, const struct shared *shared);

/* Room for what comes of it. */
struct made_page *page_know(struct known_page **known, const struct laying *laying, size_t index,
                            const struct shared *shared, struct arena *arena);

#endif
