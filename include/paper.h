/* paper.h - the papers that sheets are laid out on, and the sizes of type that follow from
 * how far off a paper is read (room: layout). A paper is a row of PAPER_LIST and nothing
 * else: what is laid out asks the paper that it is given. */
#ifndef MAYDECK_PAPER_H
#define MAYDECK_PAPER_H

#include "page.h"

/* PAPER(name, key, width, height, side, head, foot, punch_down, reading_mm): the members of
 * struct paper, in thousandths of a point but for the last. A4 is 210 x 297 mm, Letter is
 * 8.5 x 11 inches. Margins: 16 mm at the head for a hole of 7 mm whose middle is 8 mm down,
 * with room for lamination round it. */
#define PAPER_LIST(PAPER) \
    PAPER(A4, "a4", 595276, 841890, MM(10), MM(16), MM(8), MM(8), 500) \
    PAPER(LETTER, "letter", 612000, 792000, MM(10), MM(16), MM(8), MM(8), 500)

#define PAPER_KEY(name, ...) PAPER_##name,
enum paper_key { PAPER_LIST(PAPER_KEY) PAPER_COUNT };
#undef PAPER_KEY

struct paper {
    const char *key;         /* what it is called where papers are named: letter */
    mpt width, height;
    mpt side, head, foot;    /* margins, in which nothing is printed; `side` is left and right */
    mpt punch_down;          /* from the upper edge to the middle of a hole that is punched half
                                way across; 0: none is */
    int reading_mm;          /* how far the eye is from the rows of a card on this paper */
};

/* The paper of that key; it lives as long as the program. */
const struct paper *paper_of(enum paper_key key);

/* Sizes of type for the words of one role. */
struct size_rule {
    mpt floor;               /* never smaller than this */
    mpt aim;                 /* as large as this where there is room */
    int leading;             /* from line to line, hundredths of the size */
};

/* The sizes on that paper. What is read in an emergency grows with the distance: size =
 * k x distance, where k is the 12 points at 0.5 m whose small letters, 0.528 of the size,
 * are 2.2 mm tall: a sight angle of 15 minutes of arc, h = 0.0044 x distance (CAP 676).
 * Headlines are read at 1.6 times the distance of the rows: 16 points at 0.8 m. Titles
 * (capitals of 8 mm), tags on a plan, sources and footers have one size on every paper. */
struct size_rule size_rule(const struct paper *paper, enum page_role role);

/* A length that holds such type, or a sign that is read from as far: `at_half_a_metre` on paper
 * that is read from there, more on paper that is read from farther off, never less: lines and
 * gaps beside it stay what they are. */
mpt grown(const struct paper *paper, mpt at_half_a_metre);

/* From line to line at that size of type, by the leading of the role, to half a hundredth of the
 * size. */
mpt line_pitch(enum page_role role, mpt size);

#endif
