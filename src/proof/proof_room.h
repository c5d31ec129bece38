/* proof_room.h - what the files of the proofreader share. Private to src/proof. */
#ifndef MAYDECK_PROOF_ROOM_H
#define MAYDECK_PROOF_ROOM_H

#include "legible.h"
#include "proof.h"

/* A stretch of items that follow each other and belong to one block. */
struct proof_block {
    enum block_key key;
    size_t first, end;
    struct area area;          /* all it holds */
    const char *words;         /* all it says, without blanks; made when asked */
};

/* A page being judged. */
struct proofing {
    const struct page *page;
    const struct sheet *sheet;    /* the page's */
    const struct sheet *whole;    /* all that stands on its pages; of one judged alone its own */
    struct proofing *const *pages;    /* these pages, of which it is one; none of one alone */
    size_t page_count;
    size_t page_index;
    const struct faces *faces;
    struct arena *arena;
    const struct area *ink;    /* by item: where its ink stands, lines with their width */
    const struct page_item *const *frames;    /* by item: the frame of a tag on a plan, or NULL */
    struct nearness *nearness; /* what stands near what: proof_near.h */
    const struct contrasts *contrasts;        /* between the inks of the page */
    struct proof_block *blocks;
    size_t block_count;
    const char *words;         /* all words of the page, without blanks; made when asked */
    struct proof_finding *findings;
    size_t count, room;
    size_t measured;
};

struct proofing proofing_begin(const struct page *page, const struct faces *faces,
                               struct arena *arena);

/* One more thing was held against a rule. */
void proof_measured(struct proofing *p, size_t things);

/* A rule is broken, by the item (NULL: by the card as a whole). */
void proof_found(struct proofing *p, enum proof_rule_key rule, const struct page_item *item,
                 const char *format, ...) __attribute__((format(printf, 4, 5)));

/* ---- areas (proof_area.c) ---- */

#define COUNT_OF(list) (sizeof(list) / sizeof *(list))

#define RIGHT_OF(a) ((a).x + (a).width)
#define FOOT_OF(a) ((a).y + (a).height)

bool area_meets(struct area a, struct area b);           /* they share more than an edge */
bool area_within(struct area inner, struct area outer);
struct area area_union(struct area a, struct area b);
struct area area_between(struct point a, struct point b);    /* the least that holds both */
struct area area_grown(struct area a, mpt by);

/* Distance between two areas along the axis on which they are apart; negative:
 * they overlap, by the lesser overlap. */
mpt area_gap(struct area a, struct area b);

/* Is the whole area on the filled shape; does any of it touch the shape? */
bool item_covers(const struct page_item *item, struct area area);
bool item_touches(const struct page_item *item, struct area area);

/* A path as corners, curves in short pieces; and whether a point is inside. */
struct outline { const struct point *corners; size_t count; };
struct outline outline_of(const struct page_item *path, struct arena *arena);
bool outline_holds(const struct outline *outline, struct point point);

/* Which inks lie under an area that is drawn as item `above`: seen[ink] is set. */
void grounds_under(const struct proofing *p, size_t above, struct area area,
                   bool seen[INK_COUNT]);

/* ---- words (proof_text.c) ---- */

static inline bool is_text(const struct page_item *item)
{
    return item->kind == PAGE_TEXT && item->run != NULL;
}

static inline bool in_block(const struct page_item *item, enum block_key block)
{
    return item->block == block;
}

static inline bool in_plan(const struct page_item *item)
{
    return item->block == BLOCK_PLAN;
}

/* Is it the words of a tag on a plan? */
static inline bool is_plan_tag(const struct page_item *item)
{
    return is_text(item) && item->role == ROLE_PLAN_TAG && in_plan(item);
}

/* The frame under words, such as a tag's: the filled box right under them; NULL: none. */
const struct page_item *plan_tag_frame(const struct proofing *p, size_t text);

/* The key of a sign as files write it; `frame` where it is a frame alone. */
const char *sign_named(const struct page_item *sign, const char *frame);

/* Small fixed-point numbers for messages: "4.27" mm, "12.5" pt, "6.43". */
const char *mm_words(struct arena *arena, mpt length);
const char *pt_words(struct arena *arena, mpt size);
const char *ratio_words(struct arena *arena, double value);


/* The **bold** beginning of a text; "" if it does not begin so. */
const char *text_command(struct arena *arena, const char *text);

/* Do the words of that block of the page hold this text, blanks aside? An empty text is
 * held by every block. */
bool block_says(struct proofing *p, enum block_key block, const char *text);

/* All texts of a card that are sentences, one after the other. */
struct sentence { const char *text; struct place origin; };
struct sentence_list { struct sentence *at; size_t count, room; };
struct sentence_list card_sentences(const struct sheet *sheet, struct arena *arena);

size_t words_in(const char *text);

/* The next word from *at on; false at the end. */
bool word_next(const char **at, const char **word, size_t *length);

/* Is one of its words of the set? */
bool has_word(const char *text, const struct words *words, enum word_set set);

/* ---- rules, by what they look at ---- */

void proof_places(struct proofing *p);      /* proof_place.c: G1 G2 G3 */
void proof_said(struct proofing *p);        /* proof_said.c: G3, words lost */

/* Does all of the sheet stand on one of its pages, which these are, or has it yielded? G3 too;
 * what does not is a finding of the first page. (proof_said.c) */
void proof_whole(const struct laid_sheet *laid, struct proofing *const *pages, size_t count);

void proof_sizes(struct proofing *p);       /* proof_size.c: G4 G5 G6 G12 G30 A59 */
void proof_lights(struct proofing *p);      /* proof_light.c: G7 G8 G9 */
void proof_signs(struct proofing *p);       /* proof_sign.c: G10 P4, size of signs */
void proof_wording(struct proofing *p);     /* proof_wording.c: G12 G13 G25 */
void proof_steps(struct proofing *p);       /* proof_steps.c: G14 G15 G19 G23 G25 G27 */
void proof_rows(struct proofing *p);        /* proof_rows.c: G32 G33 G34 G35 */
void proof_plan(struct proofing *p);        /* proof_plan.c: G20 G21 */
void proof_views(struct proofing *p);       /* proof_views.c: G20 */
void proof_bands(struct proofing *p);       /* proof_bands.c, proof_turned.c: G20 */
void proof_glyphs(struct proofing *p);      /* proof_size.c: G18 */

/* The pages of a boat together (proof_set.c). */
void proof_together(const struct laid_set *laid, struct proofing *const *all, size_t count);
void proof_views_together(struct proofing *const *all, size_t count);    /* proof_views.c: G22 */

#endif
