/* proof_breaks_set.c - cards that differ from the others of their boat (rules G14, G16,
 * G20, G22): see proof_case.h. */
#include <string.h>

#include "proof_case.h"

#define COUNT_OF(list) (sizeof list / sizeof *(list))

/* Everything of one block, moved. */
static void block_move(struct proof_try *try, enum block_key block, mpt right, mpt down)
{
    for (size_t i = 0; i < try->page.count; i++)
        if (try->items[i].block == block)
            item_move(&try->items[i], right, down);
}

/* The call grows upwards from the foot: its lower edge is the same on all. */
static void call_off_the_foot(struct proof_try *try, bool broken)
{
    block_move(try, BLOCK_CALL, 0, broken ? -MM(0.6) : -MM(0.4));
}

static void mark_to_the_right(struct proof_try *try, bool broken)
{
    block_move(try, BLOCK_UNAPPROVED, broken ? MM(0.6) : MM(0.4), 0);
}

static void footer_to_the_right(struct proof_try *try, bool broken)
{
    block_move(try, BLOCK_FOOTER, broken ? MM(1) : 0, 0);
}

static void steps_lower(struct proof_try *try, bool broken)
{
    block_move(try, BLOCK_STEPS, 0, broken ? MM(2) : 0);
}

/* The bar stands below the line for a berth on cards that have it, and without it on others. */
static void bar_lower(struct proof_try *try, bool broken)
{
    block_move(try, BLOCK_CALL_LINE, 0, broken ? MM(0.6) : MM(0.4));
}

/* The first tag of the plan, elsewhere than on the cards before this one. */
static void tag_moved(struct proof_try *try, mpt right, mpt down)
{
    struct page_item *tag = try_text(try, BLOCK_PLAN, ROLE_PLAN_TAG, 0);
    item_move(tag, right, down);
    item_move(tag - 1, right, down);
}

static void tag_farther_aft(struct proof_try *try, bool broken)
{
    tag_moved(try, 0, broken ? MM(2) : MM(0.1));
}

static void tag_farther_out(struct proof_try *try, bool broken)
{
    tag_moved(try, broken ? -MM(0.4) : 0, 0);
}

static void another_name(struct proof_try *try, bool broken)
{
    struct row_item *item = try_item(try, 1);
    item->name = broken ? "Motor switch" : item->name;
}

static void another_kind(struct proof_try *try, bool broken)
{
    struct row_item *item = try_item(try, 1);
    item->kind = broken ? item_find("epirb") : item->kind;
}

static void exit_to_no_card(struct proof_try *try, bool broken)
{
    FACTS(try->arena, &try->card, decision, BLOCK_DECISION)->yes_card =
        broken ? "volcano" : "abandon_ship";
}

static const struct proof_break rows[] = {
    {RULE_BLOCKS_SET, "call off the foot", "flooding", call_off_the_foot},
    {RULE_BLOCKS_SET, "mark to the right", "flooding", mark_to_the_right},
    {RULE_BLOCKS_SET, "footer to the right", "flooding", footer_to_the_right},
    {RULE_BLOCKS_SET, "steps lower", "flooding", steps_lower},
    {RULE_BLOCKS_SET, "bar lower", "flooding", bar_lower},
    {RULE_BLOCKS_SET, "bar lower without a line for a berth", "abandon_ship", bar_lower},
    {RULE_PLAN_SAME, "farther aft", "flooding", tag_farther_aft},
    {RULE_PLAN_SAME, "farther out", "abandon_fire", tag_farther_out},
    {RULE_PLAN_SAME, "catamaran", "samphire galley_fire", tag_farther_aft},
    {RULE_ONE_TERM, "another name", "engine_fire", another_name},
    {RULE_ONE_TERM, "another kind", "engine_fire", another_kind},
    {RULE_EXIT_CARD, "no such card", "engine_fire", exit_to_no_card},
};

const struct proof_breaks breaks_set = {rows, COUNT_OF(rows)};
