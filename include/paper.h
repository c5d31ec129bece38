/* paper.h - the papers that sheets are laid out on, and the sizes of type that follow from
 * how far off a paper is read (room: layout). The papers are the rows of PAPER_LIST; what is
 * laid out asks the paper that it is given. */
#ifndef MAYDECK_PAPER_H
#define MAYDECK_PAPER_H

#include "choice.h"
#include "page.h"
#include "paper_list.h"

/* A card of steps on one page, or on two: front and back of one leaf. */
enum paper_sides { ONE_SIDE, TWO_SIDES };

/* Where a card is punched, half-way along that edge; PUNCH_UNSAID: at its head. */
#define PUNCH_LIST(X) X(PUNCH_TOP, "top") X(PUNCH_LEFT, "left") X(PUNCH_NONE, "none")
enum punch { PUNCH_UNSAID, PUNCH_LIST(CHOICE_NAME) PUNCH_COUNT };

/* Where a card hangs that is laminated in a pouch of the paper's size. In a dry place the sheet
 * goes into it as it is, and 3 mm of film seal it; in a wet one it is cut smaller first, and 8 mm
 * do. */
#define POUCH_LIST(X) X(POUCH_DRY, "dry") X(POUCH_WET, "wet")
enum pouch { POUCH_UNSAID, POUCH_LIST(CHOICE_NAME) POUCH_COUNT };

/* Labels on a sheet: their size, the gaps between them, and where the first begins. */
struct labels {
    mpt width, height;
    mpt gap_across, gap_down;
    mpt left, top;
    size_t across, down;     /* so many stand side by side, and one below the other */
};

struct paper {
    const char *key;         /* what it is called where papers are named: letter */
    mpt width, height;
    mpt side, head, foot;    /* margins, in which nothing is printed; `side` is left and right */
    mpt punch_down;          /* from the upper edge to the middle of a hole that is punched half
                                way across; 0: none is */
    mpt punch_clear;         /* across: what stands beside the hole keeps half of it from there */
    int reading_mm;          /* how far the eye is from the rows of a card on this paper */
    int title_mm;            /* and from its title, by which it is told from the others */
    enum paper_sides sides;
    enum palette palette;    /* with which it is printed */
    mpt punch_in;            /* from an upright edge to the middle of a hole half-way down it: the
                                left one, and of two sides that of the front; 0: none is there */
    mpt gutter;              /* more margin at the left for it, of two sides at the right too */
    mpt trim;                /* what is cut off all round before the sheet is laminated */
    struct labels labels;    /* that it is parted into; of no width: it is none of labels */
};

/* The paper of that key parted into labels, which are read from where a hand works: nothing is
 * printed on its outer 5 mm, and it has no hole. `labels` tell size and gaps, and where the first
 * begins; one below 0 of that: all of them stand in the middle. How many there are follows: 0 where
 * not one has room. */
struct paper paper_of_labels(enum paper_key key, const struct labels *labels,
                             enum palette palette);

/* How a sheet is printed, punched and laminated. */
struct finish { enum palette palette; enum punch punch; enum pouch pouch; };

/* The paper of that key so finished: its margins follow. */
struct paper paper_finished(enum paper_key key, const struct finish *finish);

/* The paper of that key, which is none but PAPER_NONE; it lives as long as the program. */
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
 * Headlines are read at 1.6 times the distance of the rows: 16 points at 0.8 m. Titles have
 * capitals of a 200th of theirs: 8 mm at 1.6 m. Tags on a plan, sources and footers have one
 * size on every paper. */
struct size_rule size_rule(const struct paper *paper, enum page_role role);

/* How large what is said on the radio may be where it has a page: its floor is that of scripts. */
struct size_rule spoken_size_rule(const struct paper *paper);

/* A length that holds such type, or a sign that is read from as far: `at_half_a_metre` on paper
 * that is read from there, more on paper that is read from farther off, never less: lines and
 * gaps beside it stay what they are. */
mpt grown(const struct paper *paper, mpt at_half_a_metre);

/* A length that holds a title: `at_most` on paper that is told from 1.6 m off, less on paper whose
 * titles are smaller. */
mpt title_share(const struct paper *paper, mpt at_most);

/* From line to line at that size of type, by the leading of the role, to half a hundredth of the
 * size. */
mpt line_pitch(enum page_role role, mpt size);

#endif
