/* paper_list.h - the papers that cards are printed on, a row each: a new paper is a row and
 * nothing else (room: record). A base's file and the command line name them by their keys;
 * layout reads the columns that are its own (paper.h). */
#ifndef MAYDECK_PAPER_LIST_H
#define MAYDECK_PAPER_LIST_H

/* PAPER(name in C, key, width, height, margins at the sides, at the head and at the foot, from
 * the upper edge to the middle of a hole, how much of the width the hole takes, how far the eye
 * is from rows and from titles, on how many sides a card of steps is printed): lengths in
 * thousandths of a point but for the two distances, which are millimetres. A4 is 210 x 297 mm,
 * Letter is 8.5 x 11 inches, A5, which is held in the hand, 148 x 210 mm. The head has room for
 * a hole of 7 mm and the lamination round it. */
#define PAPER_LIST(PAPER) \
    PAPER(PAPER_A4, "a4", 595276, 841890, MM(10), MM(16), MM(8), MM(8), MM(21), 500, 1600, \
          ONE_SIDE) \
    PAPER(PAPER_LETTER, "letter", 612000, 792000, MM(10), MM(16), MM(8), MM(8), MM(21), 500, 1600, \
          ONE_SIDE) \
    PAPER(PAPER_A5, "a5", 419528, 595276, MM(8), MM(15), MM(7), MM(7), MM(16), 500, 1400, \
          TWO_SIDES)

enum paper_key {
    PAPER_NONE,
#define PAPER_KEY(name, ...) name,
    PAPER_LIST(PAPER_KEY)
#undef PAPER_KEY
    PAPER_COUNT
};

#endif
