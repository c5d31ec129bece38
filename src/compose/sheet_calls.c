/* sheet_calls.c - what a sheet says on the radio, for those who rehearse it (room: compose).
 * Nothing else of it is composed, and facts of gear that it lacks are not told. */
#include "compose_room.h"

#include "promise.h"

const struct sheet_name *sheet_names(const struct compose_input *input, struct arena *arena,
                                     size_t *count)
{
    struct composing composing = {.in = input, .arena = arena, .problems = problems_new(arena)};
    slots_make(&composing);
    struct sheet_name *names = arena_array(arena, composing.slot_count, sizeof *names);
    for (size_t i = 0; i < composing.slot_count; i++)
        names[i] = (struct sheet_name){composing.slots[i].key,
                                       composing.slots[i].procedure->key.text,
                                       composing.slots[i].name};
    *count = composing.slot_count;
    return names;
}

static const struct slot *slot_named(const struct composing *composing, const char *id)
{
    for (size_t i = 0; i < composing->slot_count; i++)
        if (text_equal(composing->slots[i].key, id))
            return &composing->slots[i];
    promise_unreached();
}

const struct sheet *sheet_calls(const struct compose_input *input, const char *id,
                                struct arena *arena, struct problems *problems)
{
    struct composing composing = {.in = input, .arena = arena, .problems = problems};
    struct sheet *sheet = arena_alloc(arena, sizeof *sheet);
    slots_make(&composing);
    sheet_calls_make(&composing, slot_named(&composing, id), sheet);
    return sheet;
}
