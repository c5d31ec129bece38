/* proof_sign.c - signs: told apart without colour, never alone, never contrary to the
 * words beside them, large enough (room: proof). Rules G10, G21, P4. */
#include "proof_room.h"

#define WORD_NEAR MM(15)
#define SIGN_LEAST MM(7)

/* ---- shapes ---- */

enum shape { SHAPE_SQUARE, SHAPE_ROUND_SQUARE, SHAPE_DISC, SHAPE_TRIANGLE, SHAPE_RING };
static const enum shape shapes[SIGN_CLASS_COUNT] = {
    [SIGN_FIRE] = SHAPE_SQUARE,           [SIGN_RESCUE] = SHAPE_ROUND_SQUARE,
    [SIGN_CONTROL] = SHAPE_DISC,          [SIGN_WARNING] = SHAPE_TRIANGLE,
    [SIGN_PROHIBITION] = SHAPE_RING,      [SIGN_MANDATORY] = SHAPE_DISC,
};

static void shape_judge(struct proofing *p, size_t i)
{
    const struct page_item *item = &p->page->items[i];
    proof_measured(p, 1);
    for (size_t j = 0; j < i; j++) {
        const struct page_item *other = &p->page->items[j];
        if (other->kind != PAGE_SIGN || other->sign == item->sign ||
            shapes[other->sign] != shapes[item->sign])
            continue;
        proof_found(p, RULE_SIGN_SHAPE, item, "the frame of %s and of %s is the same",
                    sign_named(item, "?"), sign_named(other, "?"));
        return;
    }
}

/* ---- words ---- */

/* Words beside the sign: at its height, of its block, within 15 mm. */
static const struct page_item *word_beside(const struct proofing *p, const struct page_item *sign)
{
    for (size_t i = 0; i < p->page->count; i++) {
        const struct page_item *item = &p->page->items[i];
        struct area ink = p->ink[i];
        bool level = ink.y < FOOT_OF(sign->area) && FOOT_OF(ink) > sign->area.y;
        if (is_text(item) && level && item->block == sign->block &&
            area_gap(ink, sign->area) <= WORD_NEAR && !area_within(ink, sign->area))
            return item;
    }
    return NULL;
}

static void sign_judge(struct proofing *p, const struct page_item *sign)
{
    mpt side = sign->area.width < sign->area.height ? sign->area.width : sign->area.height;
    proof_measured(p, 2);
    if (word_beside(p, sign) == NULL)
        proof_found(p, RULE_SIGN_WORD, sign, "the sign %s has no words within 15 mm",
                    sign_named(sign, "frame"));
    if (side < SIGN_LEAST - 1)
        proof_found(p, RULE_SIGN_SIZE, sign, "%s mm", mm_words(p->arena, side));
}

/* ---- stripes ---- */

static bool class_ink(enum sign_class sign, enum ink ink)
{
    switch (sign) {
    case SIGN_FIRE:
    case SIGN_PROHIBITION:
        return ink == INK_FIRE;
    case SIGN_RESCUE:
        return ink == INK_RESCUE;
    case SIGN_CONTROL:
    case SIGN_MANDATORY:
        return ink == INK_CONTROL;
    case SIGN_WARNING:
        return ink == INK_WARNING;
    case SIGN_NONE:
    case SIGN_CLASS_COUNT:
        break;
    }
    return false;
}

static void stripe_judge(struct proofing *p, const struct page_item *stripe)
{
    if (stripe->kind == PAGE_TEXT || stripe->kind == PAGE_SIGN || stripe->fill < INK_FIRE)
        return;
    proof_measured(p, 1);
    for (size_t i = 0; i < p->page->count; i++)
        if (p->page->items[i].kind == PAGE_SIGN &&
            class_ink(p->page->items[i].sign, stripe->fill) &&
            p->page->items[i].block == stripe->block)
            return;
    proof_found(p, RULE_STRIPE, stripe, "no sign of the stripe's class in its block");
}

/* ---- what a sign shows, and the words it must not stand beside ---- */

#define ACTS_MOST 2
static const struct contrary {
    enum symbol_key glyph;
    enum word_set acts[ACTS_MOST];
    size_t act_count;
} contraries[] = {
    {SYMBOL_fuel, {SET_ACT_OPEN, SET_ACT_START}, 2},     /* its lever stands across: shut */
    {SYMBOL_gas, {SET_ACT_OPEN, SET_ACT_LIGHT}, 2},
    {SYMBOL_seacock, {SET_ACT_OPEN}, 1},
    {SYMBOL_engstop, {SET_ACT_START}, 1},
    {SYMBOL_phatch, {SET_ACT_OPEN, SET_ACT_LIFT}, 2},    /* do not open */
    {SYMBOL_pflame, {SET_ACT_LIGHT}, 1},                 /* no flame */
    {SYMBOL_pwater, {SET_ACT_POUR}, 1},                  /* no water */
    {SYMBOL_raft, {SET_ACT_LEAVE}, 1},
    {SYMBOL_grab, {SET_ACT_LEAVE}, 1},
};

static bool says_contrary(const struct words *words, const struct contrary *row,
                          const char *command)
{
    for (size_t i = 0; i < row->act_count; i++)
        if (has_word(command, words, row->acts[i]))
            return true;
    return false;
}

/* The command of the step whose rows the sign stands in. */
static const char *command_above(const struct proofing *p, const struct page_item *sign)
{
    const char *command = "";
    for (size_t i = 0; i < p->page->count && &p->page->items[i] != sign; i++) {
        const struct page_item *item = &p->page->items[i];
        if (is_text(item) && item->role == ROLE_HEADLINE && item->run->role == FACE_BOLD)
            command = item->run->text;
    }
    return command;
}

static void contrary_judge(struct proofing *p, const struct page_item *sign)
{
    if (sign->glyph == SYMBOL_NONE || !in_block(sign, BLOCK_STEPS) ||
        !proof_rule_judges(RULE_CONTRARY_SIGN, p->sheet->words))
        return;
    const char *command = command_above(p, sign);
    proof_measured(p, 1);
    for (size_t i = 0; i < sizeof contraries / sizeof *contraries; i++)
        if (contraries[i].glyph == sign->glyph &&
            says_contrary(p->sheet->words, &contraries[i], command))
            proof_found(p, RULE_CONTRARY_SIGN, sign, "the sign %s beside \"%s\"",
                        sign_named(sign, ""), command);
}

void proof_signs(struct proofing *p)
{
    for (size_t i = 0; i < p->page->count; i++) {
        stripe_judge(p, &p->page->items[i]);
        if (p->page->items[i].kind != PAGE_SIGN)
            continue;
        shape_judge(p, i);
        sign_judge(p, &p->page->items[i]);
        contrary_judge(p, &p->page->items[i]);
    }
}
