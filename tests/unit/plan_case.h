/* plan_case.h - what the tests of the plan beside the steps share: boats with the places of
 * their tags, plans drawn into a column of a card, and what was drawn, read back. */
#ifndef MAYDECK_PLAN_CASE_H
#define MAYDECK_PLAN_CASE_H

#include "card_case.h"
#include "layout/boat_slots.h"

#define TAGS_MOST 96

struct plan_case {
    struct card_case cards;
    struct faces *faces;
    const struct sheet_set *set;
    struct boat_slots slots;
};
extern struct plan_case plan_case;

/* Before and after each test: cmocka_unit_test_setup_teardown. */
int plan_set_up(void **state);
int plan_tear_down(void **state);

/* Composes the cards of a boat, a file or a text, and finds the places of her tags. */
void plan_boat_begin(const char *boat);

/* The same of a boat with that hull and these torches, and the one card that asks for them. */
#define PLAN_TORCH(tag, rest) "  - {item: torch, tag: " tag ", " rest "}\n"
const struct sheet *plan_torches(const char *hull, const char *gear);

/* How tall a plan of that boat is at least, and at best. */
mpt plan_floor(void);
mpt plan_aim(void);

/* The right column of a card, of that height; and what the plan draws into it. */
struct area plan_column(mpt height);
struct pen plan_drawn(const struct sheet *card, mpt height);

bool has_plan(const struct sheet *card);

/* Calls `look` for each card of boats of several kinds, at the least height of the plan and at
 * its best. */
typedef void plan_look(const struct sheet *card, const struct pen *pen);
void each_plan(plan_look *look);

/* ---- what was drawn ---- */

struct drawn_tag { const char *text; struct area box; bool round; };
size_t tags_drawn(const struct pen *pen, struct drawn_tag tags[TAGS_MOST]);

/* How often a tag is drawn; the first of its boxes, and the last, from the left. */
struct found_tag { size_t count; struct drawn_tag left, right; };
struct found_tag tag_find(const struct pen *pen, const char *text);

/* The bar with the name of a view, as wide as the view; of no size where there is none such. */
struct area view_bar(const struct sheet *card, const struct pen *pen, enum plan_word head);

/* Fails where a tag lies on another, a word on another, or a tag on a word. */
void nothing_covers_another(const struct sheet *card, const struct pen *pen);

/* Fails where a tag stands outside of the view of its level, or on the wrong side. */
void each_tag_is_in_its_view(const struct sheet *card, const struct pen *pen);

/* Which view shows it. */
enum plan_word plan_head_of(const struct marker *marker);

bool is_plan_label(const struct page_item *item);
struct point box_middle(struct area box);

#endif
