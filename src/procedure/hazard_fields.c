/* hazard_fields.c - how a procedure writes what is so on some boats, and which of its lines is a
 * guard (room: procedure). Never judges whether a step is safe. */
#include "procedure_fields.h"

#include "text.h"

#define GUARD_KEY(key, member, field_kind, ...) \
    KEYED(struct guard_said, key, member, field_kind, __VA_ARGS__)
static const struct field guard_rows[] = {
    GUARD_KEY("says", says, FIELD_CHOICE, .required = true, .choices = guard_words,
              .about = "what its words say"),
    GUARD_KEY("in", in, FIELD_TEXT, .required = true,
              .about = "act, rows_below, or the id under lethal whose text says so"),
};
const struct field_table guard_table = TABLE("a guard", guard_rows);

#define HAZARD_KEY(key, member, field_kind, ...) \
    KEYED(struct hazard_entry, key, member, field_kind, __VA_ARGS__)
static const struct field hazard_case_rows[] = {
    HAZARD_KEY("hazards", hazards, FIELD_CHOICES, .required = true, .choices = hazard_words,
               .about = "what is so on these boats besides"),
    HAZARD_KEY("when", when, FIELD_NODE, .required = true, .about = "boats it is so on"),
};
const struct field_table hazard_case_table = TABLE("a hazard of some boats", hazard_case_rows);

struct guards guards_of(const struct entries_value *list)
{
    return (struct guards){list->items, list->count};
}

static bool is_line_of(const struct list_value *ids, const char *id)
{
    for (size_t i = 0; i < ids->count; i++)
        if (text_equal(ids->items[i].text, id))
            return true;
    return false;
}

static bool is_line(const struct procedure_step *step, const char *id)
{
    bool found = text_equal(id, GUARD_IN_ACT) || text_equal(id, GUARD_IN_ROWS_BELOW) ||
                 is_line_of(&step->lethal_ids, id);
    for (size_t i = 0; i < step->case_count; i++)
        found = found || is_line_of(&step->cases[i].lethal_ids, id);
    return found;
}

static void guards_check(const struct procedure_reading *reading,
                         const struct procedure_step *step, const struct guards *guards)
{
    for (size_t i = 0; i < guards->count; i++) {
        const struct text_value *in = &guards->items[i].in;
        if (in->text != NULL && !is_line(step, in->text))
            problem_add(reading->problems, SEVERITY_ERROR, in->place,
                        "write act, rows_below, or an id under lethal of the step or its case",
                        "step %s prints no line %s", step->id.text, in->text);
    }
}

void step_guards_check(const struct procedure_reading *reading,
                       const struct procedure_step *step)
{
    guards_check(reading, step, &step->guards);
    for (size_t i = 0; i < step->case_count; i++)
        guards_check(reading, step, &step->cases[i].guards);
}

void hazard_cases_read(struct procedure_reading *reading, const struct entries_value *list)
{
    const struct hazard_entry *entries = list->items;
    struct hazard_case *cases = arena_array(reading->arena, list->count, sizeof *cases);
    for (size_t i = 0; i < list->count; i++)
        cases[i] = (struct hazard_case){entries[i].hazards,
                                        when_read(reading, &entries[i].when), entries[i].place};
    reading->procedure->hazard_cases = cases;
    reading->procedure->hazard_case_count = list->count;
}

static bool leads_away(const struct said_list *list)
{
    for (size_t i = 0; i < list->count; i++)
        if (list->items[i].card.text == NULL)
            return false;
    return true;
}

/* An answer that leads to a card rules the hazard out there; another one for the steps that
 * follow, which then are of those alone who gave it. */
static void exit_over_check(const struct procedure_reading *reading,
                            const struct said_list *list, const struct said_list *other)
{
    for (size_t i = 0; i < list->count; i++)
        if (list->items[i].over.count > 0 && list->items[i].card.text == NULL &&
            !leads_away(other))
            problem_add(reading->problems, SEVERITY_ERROR, list->items[i].over.place,
                        "take it out, or lead the other answer to a card",
                        "an answer rules a hazard out, but steps after it are done either way");
}

void over_check(const struct procedure_reading *reading)
{
    const struct decision *decision = &reading->procedure->decision;
    exit_over_check(reading, &decision->yes, &decision->no);
    exit_over_check(reading, &decision->no, &decision->yes);
}
