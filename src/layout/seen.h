/* seen.h - the index of cards on a page: what one sees first, a line each, with the sign and the
 * number of its card. Private to src/layout. */
#ifndef MAYDECK_SEEN_H
#define MAYDECK_SEEN_H

#include "pages.h"

#define SEEN_COLUMNS_MOST 2

/* The head of a group, or one of its lines. */
struct seen_item {
    const struct seen_group *group;
    const struct seen_line *line;      /* NULL: the head */
    struct paragraph words;            /* of a line */
    mpt height;
};

/* Items that stand one below the other. Where the first is a line, the head of its group stands
 * above it again. */
struct seen_column { size_t first, end; };

struct laid_seen {
    const struct seen_facts *seen;
    mpt size, width;                   /* of type; of a column */
    mpt top, head;                     /* heights: of the line over a column, of a group's head */
    mpt ease;                          /* below each item, besides */
    struct seen_item *items;
    size_t count;
    struct seen_column columns[SEEN_COLUMNS_MOST];
    size_t column_count;
    bool wide;                         /* a word is wider than its column */
    mpt over;                          /* by which it is too high; <= 0: it is not */
};

/* Laid out at the largest size at which it stands in the area: with whole groups in each column
 * if that can be, else with a group cut between two lines. */
struct laid_seen seen_fit(const struct pen *pen, struct area area);

void seen_place(struct pen *pen, const struct laid_seen *laid, struct area area);

#endif
