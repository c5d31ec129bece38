/* call_report.c - what a card's radio message adds to its own words: the reports of the cases
 * that are taken on this boat (room: compose). Who reads the script off the card tells so what the
 * steps left undone, such as a fuel valve that nobody reaches, without a blank to fill in. */
#include "call_room.h"

#include "step_cases.h"

const char *call_nature(struct composing *composing, const struct procedure_call *call)
{
    const struct procedure *procedure = composing->slot->procedure;
    const char *said = call->say.text;
    for (size_t i = 0; i < procedure->step_count; i++) {
        const struct procedure_step *step = &procedure->steps[i];
        const struct condition *undecided = NULL;
        if (condition_judge(composing, step->when) == TRUTH_NO)
            continue;
        const struct step_case *taken = case_take(composing, step, &undecided);
        if (taken != NULL && taken->report.text != NULL)
            said = text_format(composing->arena, "%s, %s", said, taken->report.text);
    }
    return said;
}
