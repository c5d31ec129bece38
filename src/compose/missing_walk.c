/* missing_walk.c - what of a boat's model does not count, since nobody has walked round her
 * after it was changed (room: compose). All of it is told in one problem, with the cards that
 * wait for it: what to record is not asked for, since the model has it. */
#include "compose_room.h"

bool is_unwalked(const struct composing *composing, const struct missing *missing)
{
    return missing->fact == GEAR_FIELD_NONE &&
           boat_unwalked(composing->in->boat, missing->item);
}

/* Where no card waits, she lacks the walk all the same. */
void unwalked_tell(struct composing *composing)
{
    const struct boat *boat = composing->in->boat;
    if (boat->likeness.unwalked == NULL)
        return;
    struct lack_effect effect = effect_of_lack(composing, is_unwalked);
    problem_add(composing->problems,
                effect.severity == SEVERITY_NOTE ? SEVERITY_DEFICIENCY : effect.severity,
                boat->likeness.walk_place, unwalked_remedy(boat, composing->arena), "%s%s",
                unwalked_words(boat, composing->arena), effect.words);
}
