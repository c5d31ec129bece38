/* steps.c - which case of which step, numbered (room: compose). */
#include "compose.h"

const struct card_step *step_by_id(const struct card *card, const char *id)
{
    for (size_t i = 0; i < card->step_count; i++)
        if (text_equal(card->steps[i].id, id))
            return &card->steps[i];
    return NULL;
}

/* The first case that holds. Where a case cannot be decided, later ones are not
 * tried: the card waits, and a draft shows the step's own words. */
static const struct step_case *case_take(struct composing *composing,
                                         const struct procedure_step *step,
                                         const struct condition **undecided)
{
    for (size_t i = 0; i < step->case_count; i++) {
        enum truth truth = condition_judge(composing, step->cases[i].when);
        if (truth == TRUTH_YES)
            return &step->cases[i];
        if (truth == TRUTH_UNKNOWN) {
            *undecided = step->cases[i].when;
            return NULL;
        }
    }
    return NULL;
}

static const struct list_value *list_of(const struct list_value *own,
                                        const struct list_value *of_step)
{
    return own != NULL && own->given ? own : of_step;
}

static bool uses_table(const struct procedure_step *step, const struct list_value *uses)
{
    return step->table.text != NULL && uses->count > 0;
}

static void step_fill(struct composing *composing, const struct procedure_step *step,
                      struct card_step *out)
{
    const struct condition *undecided = NULL;
    const struct step_case *taken = case_take(composing, step, &undecided);
    const struct text_value *act = taken != NULL && taken->act.text != NULL ? &taken->act
                                                                            : &step->act;
    const struct list_value *uses = list_of(taken == NULL ? NULL : &taken->uses, &step->uses);
    const struct list_value *also = list_of(taken == NULL ? NULL : &taken->also, &step->also);
    out->id = step->id.text;
    out->headline = (struct card_text){.text = act->text, .origin = act->place};
    out->lethal = (struct card_text){.text = step->lethal.text, .origin = step->lethal.place};
    out->step = step;
    out->taken = taken;
    if (uses_table(step, uses))
        table_make(composing, uses->items[0].text, out);
    else
        rows_make(composing, uses, also, taken == NULL ? NULL : taken->when, undecided, out);
}

void steps_make(struct composing *composing, struct card *card)
{
    const struct procedure *procedure = composing->slot->procedure;
    struct card_step *steps = arena_array(composing->arena, procedure->step_count, sizeof *steps);
    size_t count = 0;
    for (size_t i = 0; i < procedure->step_count; i++) {
        if (condition_judge(composing, procedure->steps[i].when) == TRUTH_NO)
            continue;
        step_fill(composing, &procedure->steps[i], &steps[count]);
        steps[count].number = (int)count + 1;
        count++;
    }
    card->steps = steps;
    card->step_count = count;
}
