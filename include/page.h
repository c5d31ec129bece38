/* page.h - a laid-out page: a flat list of placed things, made by layout, judged by proof
 * and drawn by draw (room: layout). Integer thousandths of a point, origin at the top left,
 * y down. The order of the list is the order of painting; what is read, and in which
 * order, its parts tell. */
#ifndef MAYDECK_PAGE_H
#define MAYDECK_PAGE_H

#include <stdbool.h>
#include <stddef.h>

#include "block.h"
#include "face.h"
#include "source.h"
#include "symbol.h"

struct paper;
struct sheet;

struct point { mpt x, y; };
struct area { mpt x, y, width, height; };

/* The colours of the page, and no others. The grey is darker than one of 60 %:
 * the names on the plan are small, and need 7:1 as other text. */
enum ink {
    INK_NONE,
    INK_BLACK,
    INK_WHITE,
    INK_GREY,      /* #555555: light zone names and zone lines on the plan */
    INK_FIRE,      /* #9B2423 */
    INK_RESCUE,    /* #237F52 */
    INK_CONTROL,   /* #005387 */
    INK_WARNING,   /* #F9A800 */
    INK_COUNT
};

/* With which inks a page is printed: in colour, or in black and greys alone, where classes are told
 * by hatches besides the frames of signs. */
enum palette { PALETTE_COLOUR, PALETTE_MONO, PALETTE_COUNT };

/* What an ink is on paper, as sRGB; of the mono palette all three are equal. INK_NONE is the paper:
 * white. */
struct rgb { unsigned char red, green, blue; };
struct rgb ink_rgb(enum palette palette, enum ink ink);

/* What a piece of text is for; sizes and limits hang on it. */
enum page_role {
    ROLE_TITLE, ROLE_BOAT, ROLE_SIGNS, ROLE_BERTH, ROLE_CALL_LINE, ROLE_HEADLINE, ROLE_ROW,
    ROLE_TABLE, ROLE_BOX, ROLE_CONTACT, ROLE_SCRIPT, ROLE_CODE, ROLE_FOOTER, ROLE_SOURCE_TAG,
    ROLE_MARK, ROLE_PLAN_TAG, ROLE_PLAN_LABEL, ROLE_NUMBER, ROLE_COUNT
};

enum page_kind { PAGE_TEXT, PAGE_BOX, PAGE_ELLIPSE, PAGE_LINE, PAGE_PATH, PAGE_SIGN, PAGE_VIEW };

/* What a line or shape is for, where its looks do not tell. */
enum page_part {
    PART_NONE,
    PART_BLANK,        /* a line to write upon */
    PART_LEADER,       /* from a name or tag to its place on a plan */
    PART_NET,          /* of a net's many lines, none of which means anything alone */
    PART_HATCH,        /* the same over a space that one does not enter */
    PART_CUT,          /* a mark along which the sheet is cut */
    PART_BAND,         /* across the boat, where a band of a safety plan begins */
    PART_COUNT
};

/* ---- how a page is read to one who does not see it ---- */

enum reading_kind {
    READING_GROUP,     /* parts that belong together: a block, a place of the safety plan */
    READING_TITLE,     /* of the page */
    READING_HEADING,   /* of a step, a block, a place */
    READING_TEXT,      /* a paragraph */
    READING_SPOKEN,    /* a paragraph that is said on the radio, in a language of its own */
    READING_ENTRY,     /* of a list, such as a step; entries one after the other are one list */
    READING_LINE,      /* an entry that is no more than its words, such as a line of gear */
    READING_LABEL,     /* what an entry is called by: the number of a step */
    READING_FIGURE,    /* a picture and the words in it, told by `alternative` */
    READING_BLANK,     /* a line to write upon, told by `alternative` */
    READING_KIND_COUNT
};

/* A part of what is read. Groups and entries hold parts, all others words; texts and what is
 * spoken may hold blanks among them. */
struct reading_part {
    enum reading_kind kind;
    size_t parent;                 /* the part that it belongs to; 0: the page */
    const char *alternative;       /* what is read in its place; NULL: its own words */
    const char *language;          /* NULL: the page's */
};

/* ---- what is placed ---- */

enum path_verb { PATH_MOVE, PATH_LINE, PATH_CURVE, PATH_CLOSE };
struct path_step {
    enum path_verb verb;
    struct point to;               /* end point */
    struct point control[2];       /* PATH_CURVE */
};

struct page_item {
    enum page_kind kind;
    struct area area;              /* bounds; for text: its line from ascent to descent */
    enum ink fill;                 /* text colour too; INK_NONE: not filled */
    enum ink stroke;               /* INK_NONE: no line */
    mpt line_width;
    mpt radius;                    /* PAGE_BOX: of its corners */
    const struct run *run;         /* PAGE_TEXT */
    mpt baseline;                  /* PAGE_TEXT: y of its base line */
    const struct path_step *steps; /* PAGE_PATH */
    size_t step_count;
    struct point from, to;         /* PAGE_LINE */
    enum sign_class sign;          /* PAGE_SIGN: area is the square it fills */
    enum symbol_key glyph;         /* PAGE_SIGN; SYMBOL_NONE: frame only */
    const struct page *view;       /* PAGE_VIEW: another page, as small as its area: a picture
                                      whose words are not read; it has none of these itself */
    enum page_role role;           /* text */
    enum page_part part;           /* lines and shapes */
    size_t paragraph;              /* text: lines of one paragraph share a number; 0: alone */
    bool joined;                   /* text: directly behind the text before it, without a space */
    size_t reading;                /* the part of what is read; 0: decoration, which is not */
    enum block_key block;          /* which block of the sheet it belongs to */
    struct place origin;           /* the line of the record or procedure it came from */
};

struct page {
    const char *id;                /* of its sheet, such as engine_fire; of the second page and
                                      those after it with their number: safety_plan_2 */
    const struct sheet *sheet;     /* as it stands on this page: without what yielded, and of
                                      several pages its part; see laid_sheet for the whole */
    const char *title;             /* for the outline */
    const char *label;             /* what the page is called by: Card 3P; NULL: by nothing */
    const char *language;          /* en */
    const struct paper *paper;     /* what it was laid out on: paper.h */
    enum palette palette;
    mpt trim;                      /* what is cut off the sheet all round */
    mpt width, height;
    const struct page_item *items;
    size_t count;
    const struct reading_part *parts;  /* in the order in which they are read, a part before
                                          those that belong to it; the first is the page */
    size_t part_count;
};

/* ---- what laying out a set gave ---- */

/* What stands on no page of its sheet, since there was no room for it. */
enum yield_cause {
    YIELDED_TO_OTHERS,             /* to what must stand */
    YIELDED_TOO_LONG               /* it is too long for its place itself */
};
struct yielded {
    enum block_key block;
    const char *id;                /* of a figure or a hint; NULL: it is none */
    const char *text;              /* NULL: the block as a whole */
    enum yield_cause cause;
    struct place origin;
};

struct laid_sheet {
    const struct sheet *sheet;     /* the whole, as composed */
    const struct page *const *pages;    /* NULL each: held, or not to be made; one at least */
    size_t page_count;
    const struct yielded *yielded;
    size_t yielded_count;
    int tries;                     /* how many times one of its pages was laid out, at most, */
    int changes;                   /* and how many times something was taken off it, or off what
                                      all cards share, or given back: for each it is once more */
};

/* In the order of the set. */
struct laid_set {
    const struct laid_sheet *sheets;
    size_t count;
};

#endif
