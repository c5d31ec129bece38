/* template.h - where the areas of a page stand on its paper: templates as rows of areas by
 * share and minimum. Private to src/layout. */
#ifndef MAYDECK_TEMPLATE_H
#define MAYDECK_TEMPLATE_H

#include <stdbool.h>

#include "paper.h"

/* The areas of pages. A template has some of them; the others are nowhere, of no size. */
enum page_area {
    AREA_STRIP_LEFT,     /* the marks of a page, to the left of the hole */
    AREA_STRIP_RIGHT,    /* and to the right */
    AREA_BAND,           /* title, boat and number */
    AREA_STRIPE,         /* the colour of the class below it */
    AREA_WHEN,           /* signs of what happens */
    AREA_BERTH,          /* what to do in a berth and at anchor */
    AREA_CALL_LINE,      /* when to call */
    AREA_BODY,           /* all between head and foot */
    AREA_LEFT, AREA_RIGHT,  /* columns of the body */
    AREA_MIDDLE,         /* between them: the boat of a safety plan */
    AREA_PLAN_HEAD,      /* above it: which side is which */
    AREA_LEGEND,         /* below it */
    AREA_INDEX,          /* what saves lives */
    AREA_SOURCES,
    AREA_CONTACT,
    AREA_PANEL,          /* how to call */
    AREA_FOOTER,
    AREA_MEASURE,        /* the line of 100 mm, below all else */
    AREA_COUNT,
    AREA_NONE            /* for no block: white */
};

/* TEMPLATE(name in C; its rows of areas, in template.c, and how many ways they tell; how a
 * sheet is laid out in them: see struct template_work in pages.h). */
#define TEMPLATE_LIST(TEMPLATE) \
    TEMPLATE(CARD, card_rows, 1, card_place, card_split, card_lessen, \
             FULL_PAGE_FAILS) \
    TEMPLATE(CARD_FRONT, card_front_rows, 1, card_front_place, leaf_split, leaf_lessen, \
             FULL_PAGE_FAILS) \
    TEMPLATE(CARD_BACK, card_back_rows, 1, card_back_place, leaf_split, leaf_lessen, \
             FULL_PAGE_FAILS) \
    TEMPLATE(CARD_CALL, card_call_rows, 1, card_call_place, leaf_split, leaf_lessen, \
             FULL_PAGE_FAILS) \
    TEMPLATE(DISTRESS, distress_rows, 3, distress_sheet_place, distress_split, \
             distress_lessen, FULL_PAGE_FAILS) \
    TEMPLATE(SAFETY_PLAN, safety_plan_rows, 1, safety_sheet_place, \
             plan_split, plan_lessen, FULL_IS_TOLD, safety_fits) \
    TEMPLATE(INDEX, index_rows, 1, seen_sheet_place, seen_split, seen_pages_lessen, \
             FULL_PAGE_FAILS) \
    TEMPLATE(FORM, form_areas, 1, form_sheet_place, form_split, form_lessen, \
             FULL_PAGE_FAILS) \
    TEMPLATE(STICKERS, stickers_areas, 1, stickers_place, stickers_split, form_lessen, \
             FULL_PAGE_FAILS)

enum template_key {
#define TEMPLATE_KEY(name, ...) TEMPLATE_##name,
    TEMPLATE_LIST(TEMPLATE_KEY)
#undef TEMPLATE_KEY
    TEMPLATE_COUNT
};

/* What the words of a set need where no template can know it, and which of its ways a
 * template is laid out in: some have columns in several widths, the first the best. */
struct page_needs {
    mpt height[AREA_COUNT];
    bool contact_yielded;    /* the sheet goes without its contact line: the body has its room */
    int way;
};

struct frame {
    const struct paper *paper;
    struct area safe;            /* the paper without its margins */
    struct area at[AREA_COUNT];
};

/* The paper's width without its margins: what areas that go right across are as wide as. */
mpt safe_width(const struct paper *paper);

/* The areas of a template on that paper. */
struct frame frame_make(const struct paper *paper, enum template_key key,
                        const struct page_needs *needs);

/* How many ways the template has: columns of several widths. */
int template_ways(enum template_key key);

/* ---- parts of an area, as shares of it ---- */

enum area_part {
    PART_OF_BAND_BOAT,       /* the boat's name may be so wide in the band */
    PART_OF_BAND_NAME,       /* base lines, from the band's upper edge */
    PART_OF_BAND_NUMBER,
    PART_OF_FOOTER_LEFT
};

/* That part of a width or height. */
mpt part_of(enum area_part part, mpt length);

#endif
