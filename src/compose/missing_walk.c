/* missing_walk.c - what of a boat's model does not count, since nobody has walked round her
 * after it was changed (room: compose). All of it is told in one problem, with the cards that
 * wait for it: what to record is not asked for, since the model has it. */
#include "compose_room.h"

bool is_unwalked(const struct composing *composing, const struct missing *missing)
{
    return missing->fact == GEAR_FIELD_NONE &&
           boat_unwalked(composing->in->boat, missing->item);
}

static bool is_named(const char *const *names, size_t count, const char *name)
{
    for (size_t i = 0; i < count; i++)
        if (text_equal(names[i], name))
            return true;
    return false;
}

/* "3 ENGINE FIRE; 7 FLOODING": each once. "" where no card waits. */
static const char *cards_waiting(struct composing *composing)
{
    struct text_builder words = text_builder_in(composing->arena);
    const char **names = NULL;
    size_t count = 0, room = 0;
    text_add(&words, "");
    for (size_t i = 0; i < composing->missing_count; i++) {
        const struct missing *missing = &composing->missing[i];
        for (size_t k = 0; is_unwalked(composing, missing) && !missing->helps &&
                           k < missing->card_count; k++) {
            if (is_named(names, count, missing->cards[k]))
                continue;
            names = arena_grow(composing->arena, names, count, &room, sizeof *names);
            names[count++] = missing->cards[k];
            text_add_format(&words, "%s%s", count == 1 ? "" : "; ", missing->cards[k]);
        }
    }
    return words.at;
}

void unwalked_tell(struct composing *composing)
{
    const struct boat *boat = composing->in->boat;
    if (boat->likeness.unwalked == NULL)
        return;
    const char *cards = cards_waiting(composing);
    bool holds = !text_empty(cards) && !composing->in->draft;
    problem_add(composing->problems, holds ? SEVERITY_HELD : SEVERITY_DEFICIENCY,
                boat->likeness.walk_place, unwalked_remedy(boat, composing->arena),
                "%s%s%s", unwalked_words(boat, composing->arena),
                text_empty(cards) ? ""
                : holds           ? ": cards that wait for it: "
                                  : ": cards that go without it: ",
                cards);
}
