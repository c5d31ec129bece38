/* pages.h - how the sheets of each template are laid out. Private to src/layout. */
#ifndef MAYDECK_PAGES_H
#define MAYDECK_PAGES_H

#include "layout_room.h"

/* What all sheets of a set share. */
struct shared {
    mpt when_size, script_size;
    struct page_needs needs;     /* heights of signs and call panel, and whether any is marked */
};

struct template_work {
    /* Does the sheet of `trial` fit with what all share, and with rows of this size or
     * larger? Nothing is placed that stays. */
    bool (*holds)(struct pen *trial, const struct page_needs *needs, mpt least_row);
    /* Places all between head and footer; `trial` is the same pen for what is thrown away.
     * False: there is more than the page holds. A word that is too long for its line, or has
     * a letter too many, fails the page alone. */
    bool (*place)(struct pen *pen, struct pen *trial, const struct shared *shared);
    bool fails_full;    /* what fails the page alone may have room with less on it */
};
extern const struct template_work template_works[TEMPLATE_COUNT];

enum template_key template_of(const struct sheet *sheet);

/* ---- card_page.c: steps on the left, plan and boxes on the right ---- */

bool card_holds(struct pen *trial, const struct page_needs *needs, mpt least_row);
bool card_place(struct pen *pen, struct pen *trial, const struct shared *shared);

/* The contact line and the call panel, as far as the sheet has them. */
void foot_blocks_place(struct pen *pen, const struct shared *shared, const struct frame *frame);

/* The size of rows that keeps pace with a script of that size. */
mpt row_beside_script(const struct paper *paper, mpt script_size);

#endif
