/* pages.h - how the sheets of each template are laid out. Private to src/layout. */
#ifndef MAYDECK_PAGES_H
#define MAYDECK_PAGES_H

#include "layout_room.h"
#include "trim.h"

/* What all sheets of a set share. */
struct shared {
    struct head_sizes sizes;
    struct page_needs needs;     /* heights of title band, signs and the line for a berth */
};

/* A sheet on its way to pages: how it is to stand on them, and what came of it. */
struct laying {
    const struct sheet *whole;
    struct trim trim;                       /* what of it yielded so far */
    int wanted[SHEET_PARTS];                /* pages that a part of a sheet is to have; 0: as few
                                               as can be */
    int cut[PLAN_PART_COUNT];               /* and how many it has, since it cannot be cut more */
    int parted[PLAN_PART_COUNT];            /* how finely zones are parted that no page holds */
    bool call_apart;                        /* it has a leaf of its own */
    bool call_behind;                       /* of paper of one side: the call has a second */
    const struct sheet **sheets;            /* as it stands on each page, in the order of pages */
    enum template_key *templates;           /* of each page */
    const struct page **pages;              /* NULL: not to be made */
    bool *full;                             /* with less on it the page may fit */
    bool lost;                              /* whatever yielded, it came about on no page */
    size_t count;                           /* of the four; 0: it is not laid out */
    int tries[SHEET_PAGES_MOST];            /* how many times each page was laid out, */
    int changes;                            /* and how many times the sheet, or what all share,
                                               was to stand there otherwise */
};

struct template_work {
    /* Places all between head and footer; `trial` is the same pen for what is thrown away.
     * False: there is more than the page holds. A word that is too long for its line, or has
     * a letter too many, fails the page alone. */
    bool (*place)(struct pen *pen, struct pen *trial, const struct shared *shared);
    /* Sets the sheets that stand on the pages, SHEET_PAGES_MOST at most, and the template of a
     * page where it is not that of the sheet; gives how many. The pen is the whole sheet's, with
     * an arena for what stays. */
    size_t (*split)(struct laying *laying, struct pen *pen);
    /* One of its pages is full: less is to stand on them, or more pages are to be had. False:
     * nothing can be done. */
    bool (*lessen)(struct laying *laying);
    enum page_failure {
        FULL_IS_TOLD,       /* a page is full where `place` says so, and else it fails alone */
        FULL_PAGE_FAILS     /* what fails the page alone may have room with less on it, too */
    } failure;
    /* Of such as are told: is there no more than the page holds? Nothing is placed. */
    bool (*fits)(struct pen *trial, const struct page_needs *needs);
};
extern const struct template_work template_works[TEMPLATE_COUNT];

/* Of the sheet on that paper; of its first page where its pages differ. */
enum template_key template_of(const struct sheet *sheet, const struct paper *paper);

/* How large the signs and the line for a berth are: as the line allows, or, where that leaves a
 * card with no room for what it says, no larger than they must be. */
enum head_lines { HEAD_LINES_LARGE, HEAD_LINES_LEAST };

/* The pages of a set, in order. */
struct page_list {
    const struct sheet **sheets;
    size_t count;
    enum head_lines lines;
};

/* share.c: what they share. The pen is of trials, in an arena that is thrown away. */
struct shared shared_find(const struct page_list *list, const struct pen *trial);

/* And what the sheet's page needs beside it: lines of the contact line and of the footer. */
struct page_needs page_needs_of(const struct pen *trial, const struct page_needs *shared);

bool safety_sheet_place(struct pen *pen, struct pen *trial, const struct shared *shared);

/* A copy of the sheet as one of several pages: its number, title, signs and call line are those
 * of the page with that index, of so many, which shows that part: one of enum plan_part or enum
 * call_part. (page_sheet.c) */
struct page_place {
    size_t index, count;
    int part;
    size_t alike;            /* so many of them are told of in its signs; 0: all */
};
struct sheet *page_sheet(const struct sheet *whole, const struct page_place *place,
                         struct arena *arena);

/* Puts facts in the place of those that a block of the copy has. */
void page_facts_set(struct sheet *sheet, enum block_key key, union block_facts facts);

/* Takes a block from the copy. */
void page_block_remove(struct sheet *sheet, enum block_key key);

/* ---- yielding by rank (card_fitting.c) ---- */

/* The sheet on one page, without what yielded so far. */
size_t whole_split(struct laying *laying, struct pen *pen);

/* The same of a card, which has no more figures than a card may have, and none that is too
 * long for two lines. */
size_t card_split(struct laying *laying, struct pen *pen);

/* What yields goes; when nothing is left that does, the call goes to a second side. */
bool card_lessen(struct laying *laying);

/* What is highest in rank goes from each page that is full; or from that page. */
bool rank_lessen(struct laying *laying);
bool page_lessen(struct laying *laying, size_t index);

/* ---- leaf.c: a card on front and back of one leaf ---- */

size_t leaf_split(struct laying *laying, struct pen *pen);
bool leaf_lessen(struct laying *laying);

/* A card on paper of one side whose call has a second: its sheet, which is the first of the
 * laying, is split in two. Taking it: false where that was done, or there is no call. */
size_t call_behind_split(struct laying *laying, struct pen *pen);
bool call_behind_take(struct laying *laying);
bool card_front_place(struct pen *pen, struct pen *trial, const struct shared *shared);
bool card_back_place(struct pen *pen, struct pen *trial, const struct shared *shared);
bool card_call_place(struct pen *pen, struct pen *trial, const struct shared *shared);

/* ---- plan_split.c: a plan of the boat over several pages ---- */

size_t plan_split(struct laying *laying, struct pen *pen);
bool plan_lessen(struct laying *laying);

/* ---- seen_page.c: the index of cards, on pages of a safety plan or as a sheet ---- */

/* How many pages it takes on them, and sets these: behind so many others. */
size_t seen_page_count(const struct laying *laying);
void seen_pages_set(struct laying *laying, size_t first, struct arena *arena);

size_t seen_split(struct laying *laying, struct pen *pen);
bool seen_pages_lessen(struct laying *laying);
bool seen_sheet_place(struct pen *pen, struct pen *trial, const struct shared *shared);

/* ---- form_page.c: what people work through and write upon ---- */

size_t form_split(struct laying *laying, struct pen *pen);
bool form_lessen(struct laying *laying);
bool form_sheet_place(struct pen *pen, struct pen *trial, const struct shared *shared);

/* ---- stickers_page.c: labels, one a piece of gear ---- */

size_t stickers_split(struct laying *laying, struct pen *pen);
bool stickers_place(struct pen *pen, struct pen *trial, const struct shared *shared);

/* ---- a distress call over two pages: sending it; answering that of others, and ending it ---- */

/* distress_split.c: the blocks of each page in the order in which they are read. */
size_t distress_split(struct laying *laying, struct pen *pen);
bool distress_lessen(struct laying *laying);

/* distress_page.c */
bool distress_sheet_place(struct pen *pen, struct pen *trial, const struct shared *shared);

/* ---- card_page.c: steps on the left, plan and boxes on the right ---- */

bool card_place(struct pen *pen, struct pen *trial, const struct shared *shared);

/* The contact line and the call panel, as far as the sheet has them; the panel is as it was laid
 * out. */
struct laid_panel;
void foot_blocks_place(struct pen *pen, const struct laid_panel *panel,
                       const struct frame *frame);

#endif
