/* card_saying.c - what a card says on the radio, for those who rehearse it (room: compose).
 * Nothing else of a card is composed, and facts of gear that it lacks are not told. */
#include "compose.h"

#include "promise.h"

const struct card_name *card_names(const struct compose_input *input, struct arena *arena,
                                   size_t *count)
{
    struct composing composing = {.in = input, .arena = arena, .problems = problems_new(arena)};
    slots_make(&composing);
    struct card_name *names = arena_array(arena, composing.slot_count, sizeof *names);
    for (size_t i = 0; i < composing.slot_count; i++)
        names[i] = (struct card_name){composing.slots[i].key,
                                      composing.slots[i].procedure->key.text,
                                      composing.slots[i].name};
    *count = composing.slot_count;
    return names;
}

static const struct slot *slot_named(const struct composing *composing, const char *key)
{
    for (size_t i = 0; i < composing->slot_count; i++)
        if (text_equal(composing->slots[i].key, key))
            return &composing->slots[i];
    promise_unreached();
}

struct card_saying card_saying(const struct compose_input *input, const char *key,
                               struct arena *arena, struct problems *problems)
{
    struct composing composing = {.in = input, .arena = arena, .problems = problems};
    struct card card;
    slots_make(&composing);
    card_begin(&composing, slot_named(&composing, key), &card);
    if (card.distress)
        distress_make(&composing, &card);
    call_make(&composing, &card);
    return (struct card_saying){card.call, card.sections, card.section_count};
}
