/* measures.h - the style of the blocks: their paddings, gaps, lines and signs, and shares of
 * the size of type. None of them is a place on a page: those stand in template.c. Private to
 * src/layout. */
#ifndef MAYDECK_MEASURES_H
#define MAYDECK_MEASURES_H

#include "page.h"

/* ---- shares of the size of type, in thousandths ---- */

enum em_share {
    EM_CAPITALS = 711,     /* how tall capitals are, as the faces of words have them */
    EM_ASCENT = 740,       /* from the base line up to where the bounds of a line begin */
    EM_LINE = 950,         /* height of those bounds */
    EM_DESCENT = 220,      /* below the base line of a line with blanks */
    EM_TAG_BOX = 1180,     /* height of the box of a tag */
    EM_DIGIT = 760,        /* the number in the disc of a step, which is as wide as the size */
    EM_LETTER = 450        /* an average letter, wide */
};

static inline mpt em_share(mpt size, enum em_share thousandths)
{
    return size * (mpt)thousandths / 1000;
}

/* ---- lines and frames ---- */

#define HAIR MM(0.35)              /* the thinnest line that printers keep */
#define THIN_FRAME MM(0.5)
#define FRAME MM(0.7)              /* round what is read as one block */
#define FRAME_CORNER MM(1)               /* radius of the corners of frames and dark heads */
#define BAND_CORNER MM(1.5)
#define TAG_CORNER MM(0.8)
#define LABEL_CORNER MM(0.6)       /* of the dark box behind a label of the call */

/* ---- signs ---- */

#define GEAR_SIGN MM(7)           /* read at a glance from a metre */
#define SIGN_OF_BOX MM(9)

/* ---- steps ---- */

#define STEP_INDENT MM(10.4)       /* of words, behind the disc and the signs */
#define STEP_SIGN_AT MM(1.2)       /* signs stand below the number, tags below the headline */
#define STEP_GAP MM(0.7)
#define STEP_GAP_MOST MM(12)
#define STEP_LINE_LOW MM(0.25)     /* a headline reaches below its height, a disc does not */
#define LETHAL_GAP MM(0.3)         /* below the headline, whose letters reach low */
#define ROW_PITCH MM(7.05)
#define ROW_EXTRA_MOST MM(3.5)
#define ROW_TAG_PAD MM(2)          /* of both sides together */
#define ROW_TAG_SLACK MM(0.6)      /* between the boxes of tags one below the other */
#define ROW_TAG_GAP MM(0.7)        /* behind a tag, and behind the last before the name */
#define ROW_WHERE_GAP MM(1.8)      /* between the name and where it is */
#define FIGURE_GAP MM(0.4)

/* ---- the table of openings ---- */

#define CELL_START MM(1.2)         /* from the tag to the words */
#define CELL_END MM(1.5)           /* from them to the next column */
#define TABLE_SIGN_DOWN MM(0.6)
#define TABLE_NOTE_GAP MM(2)

/* ---- boxes ---- */

#define BOX_PAD_X MM(2.4)
#define BOX_PAD_Y MM(0.9)
#define BOX_GAP MM(1.4)            /* between two boxes */
#define BOX_SIGN_GAP MM(2)         /* from the sign of a never to its words */
#define BOX_TAG_GAP MM(1.5)        /* from the last word to the tags of sources */

#endif
