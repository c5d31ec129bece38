/* compose_again.c - a card of a finished set composed once more, alone, for those who
 * ask why it is as it is (room: compose). The set and the run's problems stay untouched. */
#include "compose.h"

static struct slot slot_again(const struct card *card)
{
    return (struct slot){.procedure = card->procedure, .space = card->space, .key = card->key,
                         .title = card->title, .subject = card->subject,
                         .name = card->name, .number = card->number, .page = card->page};
}

struct composing *composing_again(const struct compose_input *input, const struct card_set *set,
                                  const struct card *card, struct arena *arena)
{
    struct slot *slots = arena_array(arena, set->count, sizeof *slots);
    struct composing *composing = arena_alloc(arena, sizeof *composing);
    *composing = (struct composing){.in = input, .arena = arena, .problems = problems_new(arena),
                                    .slots = slots, .slot_count = set->count};
    for (size_t i = 0; i < set->count; i++) {
        slots[i] = slot_again(set->cards[i]);
        if (set->cards[i] == card)
            composing->slot = &slots[i];
    }
    return composing;
}

const struct problem *card_held_by(struct composing *composing, const struct card *card,
                                   size_t *count)
{
    struct card again = *card;
    steps_make(composing, &again);
    boxes_make(composing, &again);
    if (again.distress)
        distress_make(composing, &again);
    call_make(composing, &again);
    missing_tell(composing);
    return problems_sorted(composing->problems, count);
}
