/* compose_again.c - a card of a finished set composed once more, alone, for those who
 * ask why it is as it is (room: compose). The set and the run's problems stay untouched. */
#include "compose_room.h"

static struct slot slot_again(const struct sheet *sheet)
{
    return (struct slot){.procedure = sheet->procedure, .space = sheet->space,
                         .key = sheet->id, .title = sheet_title(sheet)->title,
                         .name = sheet->name, .number = sheet->number};
}

struct composing *composing_again(const struct compose_input *input, const struct sheet_set *set,
                                  const struct sheet *sheet, struct arena *arena)
{
    struct slot *slots = arena_array(arena, set->count, sizeof *slots);
    struct composing *composing = arena_alloc(arena, sizeof *composing);
    *composing = (struct composing){.in = input, .arena = arena, .problems = problems_new(arena),
                                    .slots = slots, .slot_count = set->count};
    for (size_t i = 0; i < set->count; i++) {
        slots[i] = slot_again(set->sheets[i]);
        if (set->sheets[i] == sheet)
            slot_take(composing, &slots[i]);
    }
    return composing;
}

const struct problem *card_held_by(struct composing *composing, const struct sheet *sheet,
                                   size_t *count)
{
    struct sheet again;
    sheet_begin(composing, composing->slot, &again);
    kind_compose(composing, &again, &(struct sheet_list){&sheet, 1});
    missing_tell(composing);
    return problems_sorted(composing->problems, count);
}
