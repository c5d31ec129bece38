/* steps.c - which case of which step, numbered (room: compose). */
#include "step_cases.h"

const struct card_step *step_by_id(const struct steps_facts *steps, const char *id)
{
    for (size_t i = 0; i < steps->count; i++)
        if (text_equal(steps->items[i].id, id))
            return &steps->items[i];
    return NULL;
}

const struct step_case *case_take(struct composing *composing,
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

static const struct item_uses *case_list_of(const struct item_uses *own,
                                              const struct item_uses *of_step)
{
    return own != NULL && own->given ? own : of_step;
}

static bool uses_table(const struct procedure_step *step, const struct item_uses *uses)
{
    return step->table.value == GEAR_TABLE_ZONES && uses->count > 0;
}

/* What the case has of its own or from its step. */
#define OF_CASE(taken, step, member) \
    ((taken) == NULL ? (step)->member.value : (taken)->member.value)

static void gear_fill(struct composing *composing, const struct procedure_step *step,
                      const struct condition *undecided, struct card_step *out, bool *below)
{
    const struct step_case *taken = out->taken;
    struct step_gear wants = {
        .uses = case_list_of(taken == NULL ? NULL : &taken->uses, &step->uses),
        .also = case_list_of(taken == NULL ? NULL : &taken->also, &step->also),
        .when = taken == NULL ? NULL : taken->when, .undecided = undecided,
        .within = OF_CASE(taken, step, within)};
    if (uses_table(step, wants.uses))
        table_make(composing, wants.uses->items[0].value, wants.uses->items[0].state,
                   out);
    else
        *below = rows_make(composing, &wants, out);
}

static void step_fill(struct composing *composing, const struct procedure_step *step,
                      struct card_step *out, bool *below)
{
    const struct condition *undecided = NULL;
    const struct step_case *taken = case_take(composing, step, &undecided);
    out->id = step->id.text;
    out->step = step;
    out->taken = taken;
    gear_fill(composing, step, undecided, out, below);
}

/* What to do: the words of the case, else of its step. Numbers in them are those of the card,
 * so all steps must be there. */
static struct card_text headline_of(struct composing *composing, const struct sheet *sheet,
                                    const struct card_step *step)
{
    const struct step_case *taken = step->taken;
    const struct text_value *act = taken != NULL && taken->act.text != NULL ? &taken->act
                                                                            : &step->step->act;
    return (struct card_text){phrase_said(composing, numbers_fill(composing, sheet, act)),
                              said_place(composing, act)};
}

/* Gives the step its lines on what kills there, after the card's own line about gear below
 * (`rows_below`; NULL: the step has none below). Numbers in them are those of the card, so
 * all steps must be there. */
static void lethal_make(struct composing *composing, const struct sheet *sheet,
                        struct card_step *step, const struct text_value *rows_below)
{
    const struct list_value *lines = step->taken == NULL ? &step->step->lethal
                                                         : &step->taken->lethal;
    struct card_text *out = arena_array(composing->arena, lines->count + 1, sizeof *out);
    size_t count = 0;
    if (rows_below != NULL && rows_below->text != NULL)
        out[count++] = (struct card_text){
            phrase_said(composing, phrase_text(composing->arena, rows_below)),
            said_place(composing, rows_below)};
    for (size_t i = 0; i < lines->count; i++)
        out[count++] = (struct card_text){
            phrase_said(composing, numbers_fill(composing, sheet, &lines->items[i])),
            said_place(composing, &lines->items[i])};
    step->lethal = out;
    step->lethal_count = count;
}

/* The steps that stand on the sheet, numbered; gives how many. */
static size_t steps_fill(struct composing *composing, struct card_step *steps, bool *below)
{
    const struct procedure *procedure = composing->slot->procedure;
    size_t count = 0;
    for (size_t i = 0; i < procedure->step_count; i++) {
        if (condition_judge(composing, procedure->steps[i].when) == TRUTH_NO)
            continue;
        step_fill(composing, &procedure->steps[i], &steps[count], &below[count]);
        steps[count].number = (int)count + 1;
        count++;
    }
    return count;
}

void steps_make(struct composing *composing, struct sheet *sheet)
{
    size_t most = composing->slot->procedure->step_count;
    composing->engine_stopped = false;
    struct card_step *items = arena_array(composing->arena, most, sizeof *items);
    bool *below = arena_array(composing->arena, most, sizeof *below);
    struct steps_facts *steps = arena_alloc(composing->arena, sizeof *steps);
    *steps = (struct steps_facts){.items = items, .count = steps_fill(composing, items, below)};
    block_add(composing, sheet, BLOCK_STEPS)->steps = steps;
    for (size_t i = 0; i < steps->count; i++) {
        items[i].headline = headline_of(composing, sheet, &items[i]);
        lethal_make(composing, sheet, &items[i],
                    below[i] ? &composing->slot->procedure->rows_below : NULL);
    }
    figures_make(composing, items, steps);
}
