/* form_stickers.c - a sticker for each piece of gear (room: compose): its tag, what cards call it,
 * and how a hand brings it into each of its states, in the words of their rows. A state of which
 * nothing is recorded is not on it. */
#include "form_room.h"

#include "item_states.h"

#include <stdlib.h>

static void state_list(struct sticker *sticker, const char **states, const char *said)
{
    if (said != NULL && !text_empty(said))
        states[sticker->state_count++] = said;
}

static const char *state_told(struct composing *composing, const struct equipment *gear,
                                 enum end_state state)
{
    return gear_handling_of(gear, state) == NULL
               ? NULL
               : phrase_said(composing, gear_handling(composing, gear, state));
}

/* Gear without contrary states has one use. */
static void states_list(struct composing *composing, const struct equipment *gear,
                        struct sticker *sticker)
{
    const char **states = arena_array(composing->arena, STATE_COUNT, sizeof *states);
    sticker->states = states;
    if (!item_is_contrary(gear->item.value)) {
        state_list(sticker, states, state_told(composing, gear, STATE_ANY));
        return;
    }
    for (enum end_state state = STATE_ANY + 1; state < STATE_COUNT; state++)
        if (item_state_field(gear->item.value, state) == GEAR_how)
            state_list(sticker, states, state_told(composing, gear, state));
}

static int stickers_compare(const void *first, const void *second)
{
    const struct sticker *a = first, *b = second;
    return tag_compare(a->tag, b->tag);
}

static const char *sticker_foot(const struct form_writer *writer)
{
    struct arena *arena = writer->composing.arena;
    const struct boat *boat = writer->composing.in->boat;
    enum word word = boat->facts.specimen.answer == ANSWER_YES ? WORD_STICKER_FOOT_SPECIMEN
                                                               : WORD_STICKER_FOOT;
    return phrase_said(&writer->composing,
                       phrase_word(arena, word, "boat",
                                   phrase_verbatim(arena, text_upper(arena,
                                                                     boat->facts.name.text)),
                                   NULL));
}

const struct sheet_set *stickers_compose(const struct compose_input *input, struct arena *arena,
                                         struct problems *problems)
{
    struct form_writer writer = form_begin(input, arena, problems);
    struct composing *composing = &writer.composing;
    struct sticker *items = arena_array(arena, input->boat->equipment_count, sizeof *items);
    struct stickers_facts *stickers = arena_alloc(arena, sizeof *stickers);
    *stickers = (struct stickers_facts){.foot = sticker_foot(&writer), .items = items};
    for (size_t i = 0; i < input->boat->equipment_count; i++) {
        const struct equipment *gear = &input->boat->equipment[i];
        if (gear->tag.text == NULL)
            continue;
        struct sticker *sticker = &items[stickers->count++];
        *sticker = (struct sticker){
            .kind = gear->kind, .tag = gear->tag.text, .origin = gear->place,
            .name = phrase_said(composing, gear_name(composing, gear, 1, CAPACITY_WEIGHT))};
        states_list(composing, gear, sticker);
    }
    if (stickers->count > 1)
        qsort(items, stickers->count, sizeof *items, stickers_compare);
    return stickers_end(&writer, &(struct form_head){
                                     .id = "stickers",
                                     .title = word_alone(composing, WORD_STICKERS_TITLE)},
                        stickers);
}
