/* proof_breaks_place.c - pages on which something stands in a wrong place (rules G1,
 * G2, G3): see proof_case.h. */
#include "proof_case.h"

#define COUNT_OF(list) (sizeof list / sizeof *(list))
#define A4_WIDE 595276
#define A4_TALL 841890

/* ---- G1 ---- */

static void left_of_the_safe_area(struct proof_try *try, bool broken)
{
    struct page_item *words = try_saying(try, "Rescue centre");
    item_move_to(words, broken ? MM(9.5) : MM(10.2), words->area.y);
}

static void right_of_the_safe_area(struct proof_try *try, bool broken)
{
    struct page_item *words = try_saying(try, "+999");
    item_move_to(words, A4_WIDE - MM(10) - words->area.width + (broken ? MM(0.5) : 0),
                 words->area.y);
}

static void above_the_safe_area(struct proof_try *try, bool broken)
{
    box_add(try, (struct area){MM(20), broken ? MM(15.5) : MM(16.1), MM(10), MM(2)}, INK_BLACK);
}

/* What tells the kind of copy stands beside the hole, above the safe area; but not on the edge. */
static void a_mark_near_the_edge(struct proof_try *try, bool broken)
{
    item_move(try_thing(try, BLOCK_MARK, PAGE_BOX, 0), 0, broken ? -MM(1.5) : -MM(0.8));
}

/* Nothing else may stand there. */
static void no_mark_beside_the_hole(struct proof_try *try, bool broken)
{
    struct page_item *strip = try_thing(try, BLOCK_UNAPPROVED, PAGE_BOX, 0);
    strip->block = broken ? BLOCK_SOURCES : strip->block;
}

static void below_the_safe_area(struct proof_try *try, bool broken)
{
    box_add(try, (struct area){MM(20), A4_TALL - MM(12), MM(10), broken ? MM(4.2) : MM(4)},
            INK_BLACK);
}

/* Paper is punched in the middle, 8 mm down: 15 mm about it are kept clear. */
static void in_the_hole(struct proof_try *try, bool broken)
{
    box_add(try, (struct area){A4_WIDE / 2 - MM(2), broken ? MM(15.4) : MM(15.5), MM(4), MM(2)},
            INK_BLACK);
}

static void beside_the_hole(struct proof_try *try, bool broken)
{
    box_add(try, (struct area){A4_WIDE / 2 + (broken ? MM(7.4) : MM(7.5)), MM(7), MM(4), MM(2)},
            INK_BLACK);
}

/* The corner of a box in the corner of the paper: an arc of 5 mm, 3 mm inside the cut. */
static void in_a_corner(struct proof_try *try, bool broken)
{
    mpt in = broken ? MM(3.3) : MM(3.8);
    box_add(try, (struct area){in, in, MM(3), MM(3)}, INK_BLACK);
}

static void in_the_lowest_corner(struct proof_try *try, bool broken)
{
    mpt in = broken ? MM(3.3) : MM(3.8);
    box_add(try, (struct area){A4_WIDE - in - MM(3), A4_TALL - in - MM(3), MM(3), MM(3)},
            INK_BLACK);
}

/* ---- G2 ---- */

static void row_over_row(struct proof_try *try, bool broken)
{
    struct page_item *first = try_saying(try, "Engine stop");
    struct page_item *second = try_saying(try, "Engine fan");
    if (broken)
        item_move(second, 0, first->baseline - second->baseline + MM(3));
}

static void columns_too_close(struct proof_try *try, bool broken)
{
    struct page_item *left = try_text(try, BLOCK_STEPS, ROLE_HEADLINE, 1);
    struct page_item *right = try_text(try, BLOCK_DECISION, ROLE_BOX, 0);
    mpt ends = left->area.x + left->area.width;
    if (broken)
        item_move_to(right, ends + MM(0.5), left->area.y + MM(1));
}

static void words_of_a_line_run_together(struct proof_try *try, bool broken)
{
    struct page_item *name = try_saying(try, "Engine stop");
    struct page_item *where = name + 1;
    if (broken)
        item_move_to(where, name->area.x + name->area.width + MM(0.1), where->area.y);
}

/* Only a mark stands at the very word beside it, never another word. */
static void a_word_joins_a_bold_one(struct proof_try *try, bool broken)
{
    struct page_item *name = try_saying(try, "Engine stop");
    struct page_item *where = name + 1;
    if (broken)
        item_move_to(where, name->area.x + name->area.width, where->area.y);
}

static void words_over_a_sign(struct proof_try *try, bool broken)
{
    struct page_item *sign = try_thing(try, BLOCK_STEPS, PAGE_SIGN, 1);
    struct page_item *words = try_saying(try, "Engine stop");
    if (broken)
        item_move(words, sign->area.x + MM(3) - words->area.x, 0);
}

static void words_close_to_a_sign(struct proof_try *try, bool broken)
{
    struct page_item *sign = try_thing(try, BLOCK_STEPS, PAGE_SIGN, 1);
    struct page_item *words = try_saying(try, "Engine stop");
    mpt right = sign->area.x + sign->area.width;
    if (broken)
        item_move_to(words, right - MM(0.1), sign->area.y + MM(1));
}

static void sign_over_sign(struct proof_try *try, bool broken)
{
    struct page_item *first = try_thing(try, BLOCK_STEPS, PAGE_SIGN, 1);
    struct page_item *second = try_thing(try, BLOCK_STEPS, PAGE_SIGN, 2);
    item_move_to(second, first->area.x,
                 first->area.y + first->area.height - (broken ? MM(0.2) : 0));
}

static void tags_of_the_plan_touch(struct proof_try *try, bool broken)
{
    struct page_item *tag = try_text(try, BLOCK_PLAN, ROLE_PLAN_TAG, 0);
    struct page_item *other = try_text(try, BLOCK_PLAN, ROLE_PLAN_TAG, 1);
    struct page_item *frame = tag - 1, *own = other - 1;
    mpt apart = broken ? MM(0.25) : MM(0.35);          /* of black: the white rims are paper */
    mpt right = frame->area.x + frame->area.width + apart - frame->line_width - own->area.x;
    item_move(other, right, frame->area.y - own->area.y);
    item_move(own, right, frame->area.y - own->area.y);
}

/* ---- G3 ---- */

static void words_over_a_line(struct proof_try *try, bool broken)
{
    margin_clear(try);
    struct page_item *words = words_add(try, try_saying(try, "Engine stop"), MM(20), MM(10));
    mpt y = words->baseline + (broken ? -MM(1) : MM(2));
    line_add(try, (struct point){words->area.x, y},
             (struct point){words->area.x + words->area.width, y}, INK_BLACK, MM(0.35));
}

/* A slanted line is where it is, not all of the area it spans. */
static void words_over_a_slanted_line(struct proof_try *try, bool broken)
{
    margin_clear(try);
    words_add(try, try_saying(try, "Engine stop"), MM(20), MM(10));
    line_add(try, (struct point){MM(18), MM(14)}, (struct point){broken ? MM(60) : MM(160), MM(4)},
             INK_BLACK, MM(0.5));
}

static void words_over_the_edge_of_a_box(struct proof_try *try, bool broken)
{
    struct page_item *words = try_text(try, BLOCK_DECISION, ROLE_BOX, 1);
    struct page_item *box = try_thing(try, BLOCK_DECISION, PAGE_BOX, 0);
    if (broken)
        item_move_to(words, box->area.x + box->area.width - words->area.width / 2,
                     words->area.y);
}

static void block_into_block(struct proof_try *try, bool broken)
{
    struct page_item *box = try_thing(try, BLOCK_NEVER, PAGE_BOX, 0);
    box->area.y -= broken ? MM(8) : 0;
    box->area.height += broken ? MM(8) : 0;
}

static void a_name_is_cut(struct proof_try *try, bool broken)
{
    item_say(try, try_saying(try, "Engine stop"), broken ? "Engine st" : "Engine stop");
}

static void a_headline_is_dropped(struct proof_try *try, bool broken)
{
    if (broken)
        item_remove(try, try_text(try, BLOCK_STEPS, ROLE_HEADLINE, 1));
}

static void a_never_is_cut(struct proof_try *try, bool broken)
{
    if (broken)
        item_remove(try, try_text(try, BLOCK_NEVER, ROLE_BOX, 1));
}

static void a_phrase_of_the_call_is_lost(struct proof_try *try, bool broken)
{
    if (broken)
        item_remove(try, try_saying(try, "I AM ON FIRE"));
}

static void a_seacock_is_lost(struct proof_try *try, bool broken)
{
    struct page_item *cell = try_saying(try, "basin drain");
    item_say(try, cell, broken ? "drain" : cell->run->text);
}

static void a_label_of_the_safety_plan_is_lost(struct proof_try *try, bool broken)
{
    if (broken)
        item_remove(try, try_saying(try, "Drinking water"));
}

/* ---- all ---- */

static const struct proof_break rows[] = {
    {RULE_SAFE_AREA, "left", "engine_fire", left_of_the_safe_area},
    {RULE_SAFE_AREA, "right", "engine_fire", right_of_the_safe_area},
    {RULE_SAFE_AREA, "head", "engine_fire", above_the_safe_area},
    {RULE_SAFE_AREA, "mark near the edge", "engine_fire", a_mark_near_the_edge},
    {RULE_SAFE_AREA, "no mark beside the hole", "engine_fire", no_mark_beside_the_hole},
    {RULE_SAFE_AREA, "foot", "engine_fire", below_the_safe_area},
    {RULE_HOLE, "below the hole", "engine_fire", in_the_hole},
    {RULE_HOLE, "beside the hole", "engine_fire", beside_the_hole},
    {RULE_CORNERS, "head", "engine_fire", in_a_corner},
    {RULE_CORNERS, "foot", "engine_fire", in_the_lowest_corner},
    {RULE_TEXT_OVER_TEXT, "rows", "engine_fire", row_over_row},
    {RULE_TEXT_OVER_TEXT, "columns", "engine_fire", columns_too_close},
    {RULE_TEXT_OVER_TEXT, "words of a line", "engine_fire", words_of_a_line_run_together},
    {RULE_TEXT_OVER_TEXT, "a bold word", "engine_fire", a_word_joins_a_bold_one},
    {RULE_TEXT_OVER_SIGN, "over", "engine_fire", words_over_a_sign},
    {RULE_TEXT_OVER_SIGN, "close", "engine_fire", words_close_to_a_sign},
    {RULE_SIGN_OVER_SIGN, "over", "engine_fire", sign_over_sign},
    {RULE_MARKERS_APART, "close", "engine_fire", tags_of_the_plan_touch},
    {RULE_EDGE_CROSSED, "line", "engine_fire", words_over_a_line},
    {RULE_EDGE_CROSSED, "slanted line", "engine_fire", words_over_a_slanted_line},
    {RULE_EDGE_CROSSED, "box", "engine_fire", words_over_the_edge_of_a_box},
    {RULE_BLOCKS_APART, "never into decision", "engine_fire", block_into_block},
    {RULE_WORDS_LOST, "name of a row", "engine_fire", a_name_is_cut},
    {RULE_WORDS_LOST, "headline", "engine_fire", a_headline_is_dropped},
    {RULE_WORDS_LOST, "never", "engine_fire", a_never_is_cut},
    {RULE_WORDS_LOST, "call", "engine_fire", a_phrase_of_the_call_is_lost},
    {RULE_WORDS_LOST, "table", "samphire flooding", a_seacock_is_lost},
    {RULE_WORDS_LOST, "safety plan", "bramble safety_plan_2",
     a_label_of_the_safety_plan_is_lost},
};

const struct proof_breaks breaks_place = {rows, COUNT_OF(rows)};
