/* proof_breaks_sign.c - pages whose signs stand alone, look alike, are small or say the
 * contrary of the words (rules G10, G21, P4): see proof_case.h. */
#include "proof_case.h"

#define COUNT_OF(list) (sizeof list / sizeof *(list))

/* Both a control's frame and a mandatory sign's are discs. */
static void two_classes_of_one_shape(struct proof_try *try, bool broken)
{
    try_thing(try, BLOCK_STEPS, PAGE_SIGN, 1)->sign = broken ? SIGN_MANDATORY : SIGN_CONTROL;
}

static void sign_without_words(struct proof_try *try, bool broken)
{
    struct page_item *sign = try_thing(try, BLOCK_STEPS, PAGE_SIGN, 1);
    sign->block = broken ? BLOCK_NONE : BLOCK_STEPS;
}

static void sign_far_from_its_words(struct proof_try *try, bool broken)
{
    struct page_item *sign = item_add(try, PAGE_SIGN);
    struct page_item *words = try_saying(try, "+999");
    mpt gap = broken ? MM(15.5) : MM(14.5);
    sign->sign = SIGN_RESCUE;
    sign->glyph = SYMBOL_raft;
    sign->block = BLOCK_LEGEND;
    sign->area = (struct area){words->area.x - gap - MM(7), words->area.y, MM(7), MM(7)};
    words->block = BLOCK_LEGEND;
    words = try_saying(try, "Base, no");
    item_move(words, -MM(60), 0);
}

static void small_sign(struct proof_try *try, bool broken)
{
    struct page_item *sign = try_thing(try, BLOCK_STEPS, PAGE_SIGN, 1);
    sign->area.width = sign->area.height = broken ? MM(6.8) : MM(7);
}

static void stripe_of_another_class(struct proof_try *try, bool broken)
{
    for (size_t i = 0; i < try->page.count; i++)
        if (try->items[i].kind == PAGE_BOX && try->items[i].fill == INK_FIRE)
            try->items[i].fill = broken ? INK_RESCUE : INK_FIRE;
}

/* ---- P4 ---- */

/* The command above the n-th sign of the steps, which becomes that glyph. */
static void command_above(struct proof_try *try, enum symbol_key glyph, enum sign_class class,
                          const char *command)
{
    struct page_item *sign = try_thing(try, BLOCK_STEPS, PAGE_SIGN, 1);
    sign->glyph = glyph;
    sign->sign = class;
    item_say(try, try_saying(try, "STOP"), command);
}

static void open_beside_shut_fuel(struct proof_try *try, bool broken)
{
    command_above(try, SYMBOL_fuel, SIGN_CONTROL, broken ? "OPEN" : "SHUT");
}

static void open_beside_shut_gas(struct proof_try *try, bool broken)
{
    command_above(try, SYMBOL_gas, SIGN_CONTROL, broken ? "OPEN" : "SHUT");
}

static void open_beside_shut_seacock(struct proof_try *try, bool broken)
{
    command_above(try, SYMBOL_seacock, SIGN_CONTROL, broken ? "OPEN" : "CLOSE");
}

static void start_beside_stop(struct proof_try *try, bool broken)
{
    command_above(try, SYMBOL_engstop, SIGN_CONTROL, broken ? "START" : "STOP");
}

static void open_beside_keep_shut(struct proof_try *try, bool broken)
{
    command_above(try, SYMBOL_phatch, SIGN_PROHIBITION, broken ? "LIFT" : "KEEP");
}

static void light_beside_no_flame(struct proof_try *try, bool broken)
{
    command_above(try, SYMBOL_pflame, SIGN_PROHIBITION, broken ? "LIGHT" : "KEEP");
}

static void spray_beside_no_water(struct proof_try *try, bool broken)
{
    command_above(try, SYMBOL_pwater, SIGN_PROHIBITION, broken ? "SPRAY" : "COVER");
}

static void leave_beside_take(struct proof_try *try, bool broken)
{
    command_above(try, SYMBOL_grab, SIGN_RESCUE, broken ? "LEAVE" : "TAKE");
}

static void leave_beside_raft(struct proof_try *try, bool broken)
{
    command_above(try, SYMBOL_raft, SIGN_RESCUE, broken ? "LEAVE" : "LAUNCH");
}

/* ---- all ---- */

static const struct proof_break rows[] = {
    {RULE_SIGN_SHAPE, "two discs", "engine_fire", two_classes_of_one_shape},
    {RULE_SIGN_WORD, "no words", "engine_fire", sign_without_words},
    {RULE_SIGN_WORD, "far words", "engine_fire", sign_far_from_its_words},
    {RULE_SIGN_SIZE, "small", "engine_fire", small_sign},
    {RULE_STRIPE, "another class", "engine_fire", stripe_of_another_class},
    {RULE_CONTRARY_SIGN, "open, fuel shut", "engine_fire", open_beside_shut_fuel},
    {RULE_CONTRARY_SIGN, "open, gas shut", "engine_fire", open_beside_shut_gas},
    {RULE_CONTRARY_SIGN, "open, seacock shut", "engine_fire", open_beside_shut_seacock},
    {RULE_CONTRARY_SIGN, "start, stop", "engine_fire", start_beside_stop},
    {RULE_CONTRARY_SIGN, "lift, keep shut", "engine_fire", open_beside_keep_shut},
    {RULE_CONTRARY_SIGN, "light, no flame", "engine_fire", light_beside_no_flame},
    {RULE_CONTRARY_SIGN, "spray, no water", "engine_fire", spray_beside_no_water},
    {RULE_CONTRARY_SIGN, "leave, take along", "engine_fire", leave_beside_take},
    {RULE_CONTRARY_SIGN, "leave, raft", "engine_fire", leave_beside_raft},
};

const struct proof_breaks breaks_sign = {rows, COUNT_OF(rows)};
