/* guards.c - which guards stand printed with a step (room: prove). A guard that the procedure
 * names and the card does not print lifts nothing. */
#include "prove_room.h"

/* Lines on what kills there: the card's own line about gear below comes first. */
static size_t rows_below_count(const struct card_step *step)
{
    const struct list_value *ids = step->taken == NULL ? &step->step->lethal_ids
                                                       : &step->taken->lethal_ids;
    return step->lethal_count - ids->count;
}

static bool lethal_printed(const struct card_step *step, const char *id)
{
    const struct list_value *ids = step->taken == NULL ? &step->step->lethal_ids
                                                       : &step->taken->lethal_ids;
    for (size_t i = 0; i < ids->count; i++)
        if (text_equal(ids->items[i].text, id))
            return !text_empty(step->lethal[rows_below_count(step) + i].text);
    return false;
}

static bool guard_printed(const struct card_step *step, const char *in)
{
    if (lethal_printed(step, in))
        return true;
    if (text_equal(in, GUARD_IN_ACT))
        return !text_empty(step->headline.text);
    return text_equal(in, GUARD_IN_ROWS_BELOW) && rows_below_count(step) > 0;
}

static flags guards_among(const struct card_step *step, const struct guards *guards)
{
    flags printed = 0;
    for (size_t i = 0; i < guards->count; i++)
        if (guard_printed(step, guards->items[i].in.text))
            printed |= FLAG(guards->items[i].says.value);
    return printed;
}

flags guards_printed(const struct card_step *step)
{
    flags printed = guards_among(step, &step->step->guards);
    return step->taken == NULL ? printed : printed | guards_among(step, &step->taken->guards);
}
