/* sheet_make.c - one sheet: begun, composed as its kind is, and finished with what every sheet
 * carries (room: compose). */
#include "compose_room.h"

#include "promise.h"

#include <stdlib.h>
#include <string.h>

static const struct kind_composing kinds[SHEET_KIND_COUNT] = {
#define KIND_COMPOSING(name, key, source, composer, calls, turn, template, rules, code, marks) \
    [SHEET_##name] = {composer, calls, turn, code, marks},
    SHEET_KIND_LIST(KIND_COMPOSING)
#undef KIND_COMPOSING
};

enum sheet_turn sheet_turn_of(enum sheet_kind kind)
{
    return kinds[kind].turn;
}

union block_facts *block_add(struct composing *composing, struct sheet *sheet,
                             enum block_key key)
{
    composing->blocks = arena_grow(composing->arena, composing->blocks, composing->block_count,
                                   &composing->block_room, sizeof *composing->blocks);
    struct block *block = &composing->blocks[composing->block_count++];
    block->key = key;
    sheet->blocks = composing->blocks;
    sheet->block_count = composing->block_count;
    return &block->facts;
}

void text_add_block(struct composing *composing, struct sheet *sheet, enum block_key key,
                    struct card_text text)
{
    struct card_text *facts = arena_alloc(composing->arena, sizeof *facts);
    *facts = text;
    if (!text_empty(text.text))
        block_add(composing, sheet, key)->text = facts;
}

#define CASES_PARTED " | "

const struct cases_facts *cases_of(struct arena *arena, struct card_text said)
{
    struct cases_facts *facts = arena_alloc(arena, sizeof *facts);
    *facts = (struct cases_facts){.count = 0};
    for (const char *at = said.text; !text_empty(at) && facts->count < CASES_MOST;) {
        const char *end = facts->count + 1 < CASES_MOST ? strstr(at, CASES_PARTED) : NULL;
        size_t length = end == NULL ? strlen(at) : (size_t)(end - at);
        facts->items[facts->count++] =
            (struct card_text){arena_copy(arena, at, length), said.origin};
        at = end == NULL ? NULL : end + strlen(CASES_PARTED);
    }
    return facts;
}

void cases_add_block(struct composing *composing, struct sheet *sheet, struct card_text said)
{
    const struct cases_facts *facts = cases_of(composing->arena, said);
    if (facts->count > 0)
        block_add(composing, sheet, BLOCK_CALL_LINE)->cases = facts;
}

void sheet_begin(struct composing *composing, const struct slot *slot, struct sheet *sheet)
{
    slot_take(composing, slot);
    composing->held = slot->undecided || slot->procedure->replaced;
    composing->drafted = false;
    composing->blocks = NULL;
    composing->block_count = composing->block_room = 0;
    composing->markers = NULL;
    composing->marker_count = composing->marker_room = 0;
    composing->dates = (struct gear_dates){.undated = 0};
    *sheet = (struct sheet){
        .kind = slot->procedure->kind.value, .id = slot->key,
        .procedure_key = slot->procedure->key.text, .space = slot->space,
        .number = slot->number, .page = "", .name = slot->name,
        .language = words_language(composing->in->words), .words = composing->in->words,
        .boat = composing->in->boat, .procedure = slot->procedure,
        .unsafe = slot->procedure->replaced,
        .origin = source_whole(slot->procedure->source)};
}

void kind_compose(struct composing *composing, struct sheet *sheet,
                  const struct sheet_list *others)
{
    promise(kinds[sheet->kind].compose != NULL);
    kinds[sheet->kind].compose(composing, sheet, others);
}

/* Blocks stand in the order of block.h, in whatever order they were made. */
static int block_compare(const void *first, const void *second)
{
    const struct block *a = first, *b = second;
    return (a->key > b->key) - (a->key < b->key);
}

static void sheet_finish(struct composing *composing, const struct kind_composing *kind,
                         struct sheet *sheet)
{
    promise(sheet->number != NULL && sheet->name != NULL && sheet->boat != NULL);
    sheet->held = composing->held;
    surround_make(composing, sheet);
    if (kind->marks == MARKED)
        mark_make(composing, sheet);
    qsort(composing->blocks, composing->block_count, sizeof *composing->blocks, block_compare);
    if (kind->code == CODED)
        code_make(composing, sheet);
}

void sheet_make_as(struct composing *composing, const struct kind_composing *kind,
                   const struct slot *slot, const struct sheet_list *others,
                   struct sheet *sheet)
{
    sheet_begin(composing, slot, sheet);
    kind->compose(composing, sheet, others);
    sheet_finish(composing, kind, sheet);
}

void sheet_make(struct composing *composing, const struct slot *slot,
                const struct sheet_list *others, struct sheet *sheet)
{
    const struct kind_composing *kind = &kinds[slot->procedure->kind.value];
    promise(kind->compose != NULL);
    sheet_make_as(composing, kind, slot, others, sheet);
}

void sheet_calls_make(struct composing *composing, const struct slot *slot, struct sheet *sheet)
{
    sheet_begin(composing, slot, sheet);
    kinds[sheet->kind].calls(composing, sheet);
    sheet->held = composing->held;
}

/* ---- the composer of cards with steps ---- */

static bool has_distress_card(const struct composing *composing)
{
    for (size_t i = 0; i < composing->slot_count; i++)
        if (composing->slots[i].procedure->kind.value == SHEET_DISTRESS)
            return true;
    return false;
}

/* A card without a script sends people to the telephone: its numbers stay. */
static void contact_yields(struct composing *composing, const struct sheet *sheet)
{
    const struct call_facts *call = sheet_call(sheet);
    if (has_distress_card(composing) && call->script != NULL && !call->silent)
        composing->blocks[composing->block_count - 1].yields = YIELDS_CONTACT;
}

void card_compose(struct composing *composing, struct sheet *sheet,
                  const struct sheet_list *others)
{
    (void)others;
    steps_make(composing, sheet);
    boxes_make(composing, sheet);
    card_call_compose(composing, sheet);
    contact_make(composing, sheet);
    contact_yields(composing, sheet);
    plan_make(composing, sheet);
}

void no_call_compose(struct composing *composing, struct sheet *sheet)
{
    (void)composing;
    (void)sheet;
}
