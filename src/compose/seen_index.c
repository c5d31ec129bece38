/* seen_index.c - the index of a set's cards: what a guest sees, hears or smells first, and the
 * card to take (room: compose). It stands on the safety plan, and on a sheet of its own where a
 * base asks for that. Every card that the boat has is in it, and no other: who
 * looks for one that is held back would find nothing.
 *
 * Lines stand by what kind of thing it is, in five or six groups in an order that never changes:
 * who is frightened knows "smoke" or "somebody", and not with which word a list begins. */
#include "card_set.h"

static const struct { enum seen_as group; enum word word; } seen_heads[] = {
    {SEEN_AS_HELP, WORD_SEEN_HELP}, {SEEN_AS_FIRE, WORD_SEEN_FIRE},
    {SEEN_AS_SMELL, WORD_SEEN_SMELL}, {SEEN_AS_WATER, WORD_SEEN_WATER},
    {SEEN_AS_PEOPLE, WORD_SEEN_PEOPLE}, {SEEN_AS_BOAT, WORD_SEEN_BOAT}};
#define SEEN_HEAD_COUNT (sizeof seen_heads / sizeof *seen_heads)

/* Of two engines each has its line. All entries of a card count as one line of its texts: where in
 * it each stands differs by language. */
static struct seen_line seen_line_of(struct composing *composing, const struct slot *slot,
                                     const struct text_value *entry)
{
    struct arena *arena = composing->arena;
    const struct phrase *words = phrase_text(arena, entry);
    const struct phrase *space = slot_space_phrase(composing, slot);
    if (space != NULL)
        words = phrase_joined(arena, WORD_JOIN_COMMA, words, space, NULL);
    return (struct seen_line){phrase_said(composing, words), slot->number,
                              slot->procedure->symbol.value,
                              said_place(composing, &slot->procedure->seen.items[0])};
}

/* Is the card of that slot printed? */
static bool is_aboard(const struct composing *composing, const struct sheet_list *others,
                      size_t slot)
{
    return slot >= others->count || !others->at[slot]->held ||
           (composing->in->draft && !others->at[slot]->unsafe);
}

static size_t seen_lines_most(const struct composing *composing)
{
    size_t most = 0;
    for (size_t i = 0; i < composing->slot_count; i++)
        most += composing->slots[i].procedure->seen.count;
    return most;
}

static struct seen_group seen_group_of(struct composing *composing,
                                       const struct sheet_list *others, size_t index)
{
    struct seen_line *lines = arena_array(composing->arena, seen_lines_most(composing),
                                          sizeof *lines);
    struct seen_group group = {
        phrase_said(composing, word_alone(composing, seen_heads[index].word)), lines, 0};
    for (size_t i = 0; i < composing->slot_count; i++) {
        const struct slot *slot = &composing->slots[i];
        if (slot->procedure->seen_as.value != seen_heads[index].group ||
            !is_aboard(composing, others, i))
            continue;
        for (size_t k = 0; k < slot->procedure->seen.count; k++)
            lines[group.count++] = seen_line_of(composing, slot, &slot->procedure->seen.items[k]);
    }
    return group;
}

void seen_make(struct composing *composing, struct sheet *sheet,
               const struct sheet_list *others)
{
    struct seen_facts *seen = arena_alloc(composing->arena, sizeof *seen);
    struct seen_group *groups = arena_array(composing->arena, SEEN_HEAD_COUNT, sizeof *groups);
    *seen = (struct seen_facts){
        .ask = phrase_said(composing, word_alone(composing, WORD_SEEN_ASK)),
        .take = phrase_said(composing, word_alone(composing, WORD_SEEN_TAKE)), .groups = groups};
    for (size_t i = 0; i < SEEN_HEAD_COUNT; i++) {
        groups[seen->count] = seen_group_of(composing, others, i);
        seen->count += groups[seen->count].count > 0 ? 1 : 0;
    }
    if (seen->count > 0)
        block_add(composing, sheet, BLOCK_SEEN)->seen = seen;
}

/* Who finds nothing in it is sent to the distress call: that is always right in grave danger. */
const struct cases_facts *seen_call_line(struct composing *composing, const struct sheet *sheet,
                                         const struct sheet_list *others)
{
    const struct slot *distress = distress_slot(composing);
    const struct phrase *said = word_alone(composing, WORD_SEEN_LINE);
    if (distress != NULL && is_aboard(composing, others, (size_t)(distress - composing->slots)))
        said = phrase_word(composing->arena, WORD_SEEN_LINE_CALL, "number",
                           phrase_verbatim(composing->arena, distress->number), NULL);
    return cases_of(composing->arena,
                    (struct card_text){phrase_said(composing, said), sheet->origin});
}

/* ---- a sheet of its own ---- */

void index_compose(struct composing *composing, struct sheet *sheet,
                   const struct sheet_list *others)
{
    signs_make(composing, sheet, NULL, signs_joined(composing, sheet));
    seen_make(composing, sheet, others);
    block_add(composing, sheet, BLOCK_CALL_LINE)->cases = seen_call_line(composing, sheet, others);
    warnings_make(composing, sheet);
    pages_add(composing, sheet);
}
