/* boxes.h - the boxes of a card, laid out at a size and placed as they were laid out. Private
 * to src/layout. */
#ifndef MAYDECK_BOXES_H
#define MAYDECK_BOXES_H

#include "layout_room.h"

/* What boxes go without where a column has no room for all: each form also without what those
 * before it do. Never without a sentence. */
enum box_form {
    BOXES_WHOLE,
    BOXES_WITHOUT_SIGN,           /* beside what one never does; the sources of all cautions end
                                     the last */
    BOXES_WITHOUT_SOURCES,        /* they stand on the safety plan */
    BOX_FORM_COUNT
};

struct box_measure { mpt size, width; enum box_form form; };

struct laid_decision {
    struct paragraph ask, yes, no;
    mpt height;                   /* 0: the card asks nothing */
};

/* A sentence, and the tags of its sources behind it. */
struct laid_warning {
    struct paragraph text;
    const char *tags;             /* NULL: they stand behind another sentence */
    struct style tag_style;
    mpt tag_line;                 /* height of a line of their own; 0: they end the last line
                                     of the text */
    mpt height;
};

struct laid_nevers {
    enum symbol_key symbol;       /* SYMBOL_NONE: there is no sign */
    mpt indent;                   /* of the words, behind the sign */
    struct laid_warning *nevers;
    size_t count;
    mpt height;
};

struct laid_warnings {
    struct laid_warning *warnings;
    size_t count;
    mpt height;
};

/* The boxes that a card has, from the top; of no height where it has none of a kind. */
struct laid_boxes {
    mpt size, width, height;      /* with the gaps behind them */
    struct laid_decision decision;
    struct laid_nevers nevers;
    struct laid_warnings cautions, own_lines;
};
struct laid_boxes boxes_lay(const struct pen *pen, struct box_measure measure);
void boxes_place(struct pen *pen, const struct laid_boxes *laid, mpt x, mpt top);

#endif
