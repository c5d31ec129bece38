/* proof_case.h - what the tests of page rules share: a page of the specimen fleet,
 * with the card it was laid out from, that a test may spoil. */
#ifndef MAYDECK_PROOF_CASE_H
#define MAYDECK_PROOF_CASE_H

#include "card_case.h"
#include "proof.h"

/* A page and its card, all of it the test's own. */
struct proof_try {
    struct arena *arena;
    struct faces *faces;
    struct sheet card;
    struct card_step *steps;      /* of the card; rows too may be changed: try_row */
    struct page page;
    struct page_item *items;      /* of the page */
};

/* One way to break a rule. With `broken` false the same page is made, but just within
 * the limit, or not spoilt at all: it must pass. */
struct proof_break {
    enum proof_rule_key rule;
    const char *name;
    const char *card;             /* key, after "samphire " or "bramble " of that boat, else
                                     Tamarisk's */
    void (*spoil)(struct proof_try *try, bool broken);
};
struct proof_breaks { const struct proof_break *rows; size_t count; };

/* proof_breaks_*.c */
extern const struct proof_breaks breaks_place, breaks_size, breaks_light, breaks_sign,
    breaks_wording, breaks_steps, breaks_rows, breaks_plan, breaks_bands, breaks_set;

/* For cmocka's group: lays the boats out once. */
int proof_case_open(void **state);
int proof_case_close(void **state);

/* A fresh copy of that page, in the group's arena. */
struct proof_try try_begin(const char *card);

/* What is found on the page, alone or among the other pages of its boat. */
struct proof_report try_judge(struct proof_try *try);
struct proof_report try_judge_in_set(struct proof_try *try);
size_t found_of(const struct proof_report *report, enum proof_rule_key rule);

/* Both, and the test fails unless the mended page passes and the broken one is caught. */
void break_must_be_caught(const struct proof_break *row);

/* ---- finding things on the page: the test fails where there is none ---- */

/* The n-th (from 0) text of that role in that block. */
struct page_item *try_text(struct proof_try *try, enum block_key block, enum page_role role,
                           size_t n);
/* The first text that begins so. */
struct page_item *try_saying(struct proof_try *try, const char *words);
/* The n-th thing of that kind in that block. */
struct page_item *try_thing(struct proof_try *try, enum block_key block, enum page_kind kind,
                            size_t n);
/* The n-th row of the card's steps. */
struct card_row *try_row(struct proof_try *try, size_t n);

/* The first piece of gear of that row. */
struct row_item *try_item(struct proof_try *try, size_t n);

/* ---- spoiling ---- */

/* Sets the text anew, where it began, with other words, size or face. */
void item_say(struct proof_try *try, struct page_item *item, const char *words);
void item_resize(struct proof_try *try, struct page_item *item, mpt size);
void item_face(struct proof_try *try, struct page_item *item, enum face_role face);

/* Text and whatever it consists of, moved. */
void item_move(struct page_item *item, mpt right, mpt down);
void item_move_to(struct page_item *item, mpt x, mpt y);

/* One more thing, painted last; in no block. */
struct page_item *item_add(struct proof_try *try, enum page_kind kind);
void item_remove(struct proof_try *try, struct page_item *item);
/* Takes the marks beside the hole away: the margin at the head of the paper is empty then. */
void margin_clear(struct proof_try *try);
/* A copy of that text elsewhere, such as in that margin. */
struct page_item *words_add(struct proof_try *try, const struct page_item *like, mpt x,
                           mpt baseline);
/* A line between two points, a box. */
struct page_item *line_add(struct proof_try *try, struct point from, struct point to,
                           enum ink ink, mpt width);
struct page_item *box_add(struct proof_try *try, struct area area, enum ink fill);

#endif
