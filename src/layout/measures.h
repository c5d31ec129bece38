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
    EM_TAG_BOX = 1180,     /* height of the box of a tag, */
    EM_PLAN_TAG_BOX = 1080,   /* and on the plan beside the steps; */
    EM_NAME_BASELINE = 750,   /* there a name has as much above it as below its lowest letters */
    EM_LETTER = 450,       /* an average letter, wide */
    EM_LABEL_LARGE = 1125, /* of the least size: rows of a safety plan that have room, */
    EM_LABEL_TITLE = 1083  /* and the names of places over them */
};

static inline mpt em_share(mpt size, enum em_share thousandths)
{
    return size * (mpt)thousandths / 1000;
}

/* A measure that no line reaches: for paragraphs of one line. */
#define ANY_WIDTH MM(2000)

/* ---- lines and frames ---- */

#define HAIR MM(0.35)              /* the thinnest line that printers keep */
#define THIN_FRAME MM(0.5)
#define FRAME MM(0.7)              /* round what is read as one block */
#define FRAME_CORNER MM(1)               /* radius of the corners of frames and dark heads */
#define BAND_CORNER MM(1.5)
#define TAG_CORNER MM(0.8)
#define CALL_LABEL_CORNER MM(0.6)       /* of the dark box behind a label of the call */

/* ---- punching and cutting ---- */

#define UNPUNCHED_HEAD MM(12)      /* margin at the head, with the marks of a page */
#define UNPUNCHED_GAP MM(2)        /* between these */
#define WET_TRIM MM(5)             /* cut off all round, so that film seals with 8 mm */
#define TRIMMED_MARGIN MM(5)       /* from the cut to words */
#define TRIM_MARK MM(8)            /* length of a mark on the cut, at the corners */

/* ---- signs ---- */

#define GEAR_SIGN MM(7)           /* read at a glance from a metre */
#define SIGN_OF_BOX MM(9)

/* ---- title band, call line, footer ---- */

#define STRIP_PAD_LEAST MM(1.4)    /* left and right of the words of a strip at least */
#define STRIP_CLEAR MM(0.15)       /* above and below their ink */
#define BAND_OF_TWO_LINES MM(21)   /* height of a band that holds a title on two lines */
#define BAND_PAD MM(1.5)           /* round the white plate of the sign */
#define PLATE_PAD MM(0.9)          /* from the plate's edge to the sign; */
#define PLATE_PADS MM(1.8)         /* on both sides */
#define BAND_SIGN_GAP MM(2)
#define BAND_PAD_RIGHT MM(3)       /* right of the boat's name */
#define BAND_TITLE_GAP MM(6)       /* that, and from the title to the boat's name */
#define TITLE_CLEAR MM(0.1)        /* above and below the ink of a title on two lines */
#define TITLE_LINE_GAP_LEAST MM(2.5)  /* between its capitals, where accents need the room */
#define TITLE_LINE_GAP MM(2.8)     /* between the capitals of two lines */
#define STRIPE_PITCH_FIRE MM(4)    /* without colour: from line to line of the hatch, */
#define STRIPE_PITCH_RESCUE MM(3)
#define STRIPE_PITCH_WARNING MM(2)
#define STRIPE_LINE_FIRE MM(1)     /* and their width */
#define STRIPE_LINE_RESCUE MM(0.8)
#define STRIPE_LINE_WARNING MM(0.6)
#define BERTH_GAP MM(4)            /* between what to do in a berth and what at anchor */
#define CALL_LINE_PAD MM(3)        /* left of the words; */
#define CALL_LINE_PADS MM(6)       /* left and right of them */
#define CALL_LINE_CLEAR MM(1)      /* above and below them, where they take several lines */
#define CALL_CELL_GAP MM(3)        /* from case to case at least, with the rule in its middle */
#define CALL_CELL_RULE MM(0.4)
#define FOOTER_GAP MM(2)           /* between left and right words */
#define FOOTER_PITCH MM(3.4)       /* from line to line, one below the other */
#define MEASURE_LENGTH MM(100)
#define MEASURE_TICK MM(0.8)       /* of its ends, up and down */

/* ---- steps ---- */

#define STEP_DISC MM(6.2)          /* across, round the number */
#define STEP_DISC_AT MM(0.7)
#define STEP_WORDS_AT MM(9)        /* headlines and notes, behind the disc */
#define STEP_GAP MM(1)             /* between two steps, for the line between them */
#define STEP_GAP_MOST MM(12)
#define NOTE_CLEAR MM(0.2)         /* above a line of a note */
#define HEADLINE_MOST 1450         /* thousandths of the rows: no headline is larger */
#define HEADLINE_REST_LESS MPT_PER_POINT * 5 / 2   /* its words that are not bold are smaller */

/* ---- rows ---- */

#define ROW_SIGN_AT MM(0.6)        /* signs stand below the number */
#define ROW_SIGN_PITCH MM(7.4)     /* from sign to sign, side by side or one below the other */
#define ROW_SIGN_CLEAR MM(0.3)     /* of a row, beside its signs */
#define SIGNS_BELOW_WORDS MM(0.7)  /* above signs that stand below words, at least */
#define ROW_WORDS_AT MM(8.6)       /* behind one sign */
#define ROW_CLEAR MM(0.4)          /* of a row, beside its lines */
#define ROW_EXTRA_MOST MM(3.5)
#define ROW_TAG_PAD MM(2)          /* of both sides together */
#define ROW_TAG_SLACK MM(0.6)      /* between the boxes of tags one below the other */
#define ROW_TAG_GAP MM(0.7)        /* behind a tag, and behind the last before the name */
#define ROW_ITEM_GAP MM(3)         /* between two pieces of gear on one line */
#define ROW_PLACE_GAP MM(3.2)      /* behind the place, where gear stands on its line */
#define PLACE_LARGER MPT_PER_POINT /* by which places are larger than names, */
#define PLACE_LARGER_FROM (MPT_PER_POINT / 2)      /* of names so much over their floor */
#define LOCATOR_WIDTH MM(9)
#define LOCATOR_HEIGHT MM(9.4)     /* at most */
#define LOCATOR_CLEAR MM(0.5)      /* of a row, above and below it together */
#define LOCATOR_GAP MM(1.8)        /* before it */
#define LOCATOR_LINE MM(0.5)
#define LOCATOR_DOT MM(2)

/* ---- the table of openings ---- */

#define TABLE_COLUMN_GAP MM(2)
#define TABLE_OPENING_GAP MM(1.4)  /* between two openings on one line */
#define TABLE_SIGN_DOWN MM(0.6)

/* ---- boxes ---- */

#define BOX_PAD_X MM(2.4)
#define BOX_PAD_Y MM(0.9)
#define BOX_GAP MM(1.1)            /* between two boxes */
#define BOX_SIGN_GAP MM(2)         /* from the sign of a never to its words */
#define BOX_TAG_GAP MM(1.5)        /* from the last word to the tags of sources */

/* ---- the call panel, and scripts ---- */

#define PANEL_HEAD MM(6.1)         /* height of its dark head */
#define PANEL_PAD MM(2.4)          /* left and right of words */
#define PANEL_LIST_LEAST MM(42)    /* the list of how to work the set is so wide */
#define PANEL_LIST_MOST MM(64)
#define PANEL_LIST_STEP MM(2)
#define PANEL_SCRIPT_LEAST MM(110) /* what is said has less beside no list */
#define ENDS_CLEAR MM(1.8)         /* above and below two texts that stand on two lines */
#define OPERATE_GAP MM(3)          /* between two lines of the list that stand side by side */
#define PANEL_PAD_TOP MM(0.6)      /* below the head */
#define PANEL_PAD_FOOT MM(0.8)
#define ENDS_GAP MM(4)             /* least between two texts at the ends of a line */
#define CALL_GAP_MOST MM(1.6)      /* between two phrases that belong together */
#define CALL_LABEL_PAD_X MM(1)     /* left of its word; */
#define CALL_LABEL_PADS_X MM(2)    /* left and right of it */
#define CALL_LABEL_PAD_Y MM(0.35)
#define CALL_LABEL_GAP MM(1.5)     /* from a label to the words */
#define BLANK_HEIGHT MM(7.6)       /* of a line to write on, at least */
#define BLANK_CLEAR MM(6.56)       /* of it, above what letters beside the blank reach down */
#define BLANK_RULE MM(0.5)
#define BLANK_DROP MM(0.65)        /* of the rule below the base line */

/* ---- the sections of the distress card ---- */

#define SECTION_HEAD MM(5.4)       /* height of its dark head */
#define SECTION_PAD MM(2.2)
#define SECTION_PAD_TOP MM(0.6)
#define SECTION_PAD_FOOT MM(0.9)
#define SECTION_TAB_GAP MM(2.5)    /* from the set's word to what to say */
#define SECTION_GAP MM(1.0)
#define SECTION_GAP_MOST MM(7)
#define SECTION_COLUMN_GAP MM(4)   /* between two columns of lines */

/* ---- the call right across the page ---- */

#define ACTS_GAP MM(3)             /* between what is done first and next to it */
#define ACT_GAP MM(0.8)            /* between it and what is done below it */
#define ACT_SMALLER 888            /* thousandths of the script: no act is larger */
#define SPOKEN_BLANK_HEIGHT MM(10) /* of its lines to write on */

/* ---- lists of the safety plan ---- */

#define LABEL_TITLE_GAP MM(0.6)    /* from the line over the name of a place to its capitals */
#define LABEL_TITLE_FOOT MM(0.5)   /* below it, whose letters reach low */
#define LABEL_PLACE_GAP MM(0.6)    /* from a row to the line over another place */
#define LABEL_PITCH_LEAST MM(7.15) /* from row to row: of signs that nearly touch */
#define LABEL_PITCH_MOST MM(9.2)
#define LABEL_SIGN_GAP MM(1.2)
#define LABEL_TEXT_GAP MM(1.2)     /* from the tag to the words */
#define LABEL_PITCH_STEP MM(0.05)  /* from one pitch that is tried to the next */
#define BAND_BOW_STEP MM(1)        /* the same of where the first band begins */
#define BAND_GAP MM(0.4)           /* below the longer list of a band */
#define CHIP_PAD MM(2)
#define CHIP_GAP MM(0.7)

/* ---- the index of the safety plan ---- */

#define INDEX_PAD_X MM(2.4)
#define INDEX_PAD_Y MM(0.8)
#define INDEX_LINE_GAP MM(0.2)     /* from the box of a tag to that of the next line */
#define INDEX_COLUMN_GAP MM(4)
#define INDEX_INDENT MM(4)         /* of lines that an entry goes on in */
#define INDEX_NAME_GAP MM(1.4)
#define INDEX_SPOT_GAP MM(3)

/* ---- the index of cards ---- */

#define SEEN_COLUMN_GAP MM(6)
#define SEEN_PAD MM(1.6)           /* before the head of a group, and behind the numbers */
#define SEEN_NUMBER_GAP MM(3)      /* before the widest number */
#define SEEN_LINE_CLEAR MM(0.8)    /* above and below the sign of a line together */
#define SEEN_HEAD_GAP MM(1.2)      /* above the head of a group */
#define SEEN_EASE_MOST MM(4)       /* between two lines, besides, where there is room */
#define SEEN_EASE_STEP MM(0.25)
#define SEEN_EVEN_STEP MM(1)       /* of the heights that are tried for two columns */

/* ---- forms ---- */

#define FORM_SECTION_GAP MM(2.2)
#define FORM_PAD_X MM(1.6)         /* left and right of the words of a cell, and in dark bars */
#define FORM_PAD_Y MM(1.1)         /* above and below them */
#define FORM_BAR_PAD MM(0.7)       /* above and below the words of a dark bar */
#define FORM_TICK_BOX MM(6)        /* a box to tick with a glove on */
#define FORM_TICK_CLEAR MM(1.4)    /* above and below it together */
#define FORM_BLANK_GAP MM(1.5)     /* from words to the line to write upon */
#define FORM_BLANK_DOWN MM(1)      /* from that line to the rule below */
#define FORM_BLANK_ABOVE MM(8.4)   /* above it, for a wax pencil */
#define FORM_BLANK_ROW MM(7.6)     /* a row of what is asked below a line; */
#define FORM_TICK_ROW MM(6.9)      /* of boxes and words alone */
#define FORM_TICK_PAD MM(1)        /* left and right of a box, and of the head over it */
#define FORM_BOX_GAP MM(1.2)       /* from a box to its word */
#define FORM_ASKED_GAP MM(2.5)       /* between the parts of what is asked, */
#define FORM_ASKED_APART MM(5)     /* and from one question to the next */
#define FORM_ROOM_SHORT MM(21)     /* to write a date or a number */
#define FORM_ROOM_LONG MM(38)      /* a few words, at least */
#define FORM_SIGN_GAP MM(1)        /* from a sign to its tag */
#define LABEL_UNPRINTED MM(5)      /* at the edges of a sheet of labels */
#define LABEL_READ_MM 400          /* a hand is so far from the eye */
#define LABEL_PAD MM(2.4)          /* of a sticker, all round */
#define LABEL_SIGN MM(13)          /* its sign, */
#define LABEL_TAG_HIGH MM(9)       /* the box of its tag */
#define LABEL_TAG_PAD MM(1.6)      /* left and right of the tag in it */
#define LABEL_GAP MM(1.6)          /* between sign, tag and name */
#define LABEL_STATE_GAP MM(1)      /* above the states */
#define LABEL_CUT MM(4)            /* a mark at the edge of the sheet along which labels are cut */
#define VIEW_GAP MM(2.4)           /* between pages that are shown small */
#define VIEW_WORDS_GAP MM(0.8)     /* below such a page, besides the line of its words */
#define VIEW_CODE_GAP MM(1.4)      /* from its number to its check code */

/* ---- the boat ---- */

/* On a page of its own as walls and outlines of an escape plan (ISO 23601); beside the
 * steps about a third as large. */
#define OUTLINE_LARGE MM(1.6)
#define OUTLINE_SMALL MM(1.0)
#define BULKHEAD_LARGE MM(0.6)
#define BULKHEAD_SMALL MM(0.5)
#define MAST MM(1.6)               /* across */
#define NET_PITCH MM(3.2)          /* from line to line of a trampoline */

/* ---- tags on a plan ---- */

#define TAG_RIM MM(0.3)            /* shapes are told apart on the outline and each other */
#define PLAN_TAG_GAP MM(0.4)
#define PLAN_TAG_APART MM(0.06)    /* of one row to the next, besides their rims */
#define PLAN_ROW_EASE MM(0.2)      /* more of a row where there is room */
#define PLAN_WORDS_CLEAR MM(0.7)  /* words round the boat, from the heads */
#define WORD_HINT_GAP MM(1.2)
#define PLAN_CLEAR MM(0.8)         /* below the plan */
#define PLAN_TAG_PADS MM(1.4)      /* left and right of a tag in its box; */
#define PLAN_TAG_PADS_ROUND MM(1.8)   /* in a round one */
#define ZONE_NAME_GAP MM(0.3)

/* ---- the boat beside the steps, twice: below and on deck ---- */

#define PLAN_VIEW_WIDTH MM(32)
#define PLAN_VIEW_SEVERAL_WIDTH MM(33)   /* of a boat with several hulls */
#define PLAN_VIEW_ALONE_WIDTH MM(44)   /* of a boat that has one level */
#define VIEW_HEAD_HEIGHT MM(5)
#define VIEW_HEAD_GAP MM(2.2)
#define VIEW_WORDS_ABOVE MM(4.8)   /* the same with a line of words in it */
#define VIEW_HEAD_SIZE 10500
#define HATCH_PITCH MM(1.8)
#define BRIDGE_BEGINS 340          /* thousandths of the length: a catamaran's bridge deck */
#define PART_SLACK 6               /* hundredths: parts of the boat may overlap so far */
#define TAG_OVER_HULL MM(0.4)      /* a tag may pass the line so far */

/* ---- words round the plan beside the steps ---- */

#define PLAN_MARK MM(2.6)
#define PLAN_MARK_GAP MM(1.2)

/* ---- the safety plan ---- */

#define LEADER_LINE MM(0.5)
#define LEADER_HALO MM(1.5)
#define LEADER_OFF_WORDS MM(1.2)   /* from a row to its leader */
#define TAG_OFF_LINE MM(0.4)       /* between a tag and the outline */
#define TAG_OVER_CLEAR MM(0.15)    /* kept of the quarter of a tag that may pass the outline */
#define ZONE_NAME_OFF_LINE MM(0.6)
#define ZONE_NAMES_APART MM(1.2)   /* two names side by side in one hull */
#define HERE_MARK MM(7)            /* where the card hangs */
#define HERE_RING MM(1.1)
#define HERE_RIM MM(0.2)
#define HERE_DOT MM(1.4)
#define ARROW_TALL MM(3.2)         /* at the word for the bow */
#define ARROW_HALF MM(1.7)
#define ARROW_GAP MM(3)
#define LEGEND_MARK MM(4.2)
#define LEGEND_MARK_ROUND MM(6.4)
#define LEGEND_WORD_GAP MM(1.4)
#define LEGEND_GAP MM(4)

#endif
