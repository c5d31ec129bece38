/* slots.h - rows and lanes of one hull or deck of a plan, and who has them: tags and names in
 * the order in which they lie on the boat, each as near to its place as all others allow.
 * Pure reckoning, without a page. Private to src/layout. */
#ifndef MAYDECK_SLOTS_H
#define MAYDECK_SLOTS_H

#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

#include "arena.h"
#include "face.h"

/* The most rows a hull is cut into from bow to stern. */
#define SLOT_ROWS_MOST 32

/* Who stands on which side of whom. Of the middle several may stand abreast where they have room:
 * of a hull of a boat with several all do. */
enum slot_queue { QUEUE_PORT, QUEUE_MIDDLE, QUEUE_STARBOARD, QUEUE_COUNT };

enum slot_kind {
    SLOT_TAG,
    SLOT_MARK,          /* what is drawn in the middle and has no tag, such as a mast */
    SLOT_NAME,          /* a line of words, in the middle as far as tags beside it let it */
    SLOT_NAME_BELOW     /* the line that stands directly below such */
};

struct slot_item {
    enum slot_kind kind;
    enum slot_queue queue;
    int32_t from, to;   /* thousandths of the boat's length: where the thing lies */
    int32_t at;         /* where in it it is drawn best */
    int32_t out;        /* thousandths of half the beam off the middle line: the order abreast */
    mpt width;          /* of a name or mark */
    int row;            /* found: from the bow, 0 the first */
    mpt x;              /* found: its middle, from the middle line of the body, to starboard */
};

/* A hull, or the deck between two. */
struct slot_body {
    int rows;
    mpt half[SLOT_ROWS_MOST];    /* half its breadth inside its lines, at its least in the row */
    mpt tag, gap;                /* width of a tag, and what it keeps from its neighbours */
    int stray_most;              /* rows: no farther outside its place does a thing stand */
};

/* Finds row and x of each item. What lies wholly ahead of another thing never stands abaft it;
 * of port stands to port of the middle line, of starboard to starboard. False: they have no
 * room, and nothing was found. Which of several best ways is taken is always the same. */
bool slots_find(const struct slot_body *body, struct slot_item *items, size_t count);

#endif
