/* procedure_steps.c - the steps of a procedure and their cases, with their texts (room:
 * procedure). Never chooses a case: that takes a boat. */
#include "procedure_texts.h"

#include "item_states.h"
#include "text.h"

enum { MOST_LETHAL = 2 };

/* A step while it is read: its cases can still be written to. */
struct step_work {
    struct procedure_step step;
    struct step_case *cases;
    struct texts_at texts;
};

static void act_check(const struct procedure_reading *reading, const struct text_value *act)
{
    const char *fault = act->text == NULL ? NULL : bold_fault(act->text);
    if (fault != NULL)
        problem_add(reading->problems, SEVERITY_ERROR, act->place,
                    "put two stars before and two after the bold words: **SHUT** the fuel",
                    "act %s", fault);
}

/* ---- the logic ---- */

static void lethal_check(const struct procedure_reading *reading, const struct list_value *ids)
{
    if (ids->count > MOST_LETHAL)
        problem_add(reading->problems, SEVERITY_ERROR, ids->items[MOST_LETHAL].place,
                    "keep the two that save most lives", "%zu lethal lines: a step has at most %d",
                    ids->count, MOST_LETHAL);
}

static void state_check(const struct procedure_reading *reading, const struct item_use *use)
{
    const char *item = item_word(use->value);
    if (use->state == STATE_ANY && item_is_contrary(use->value))
        problem_add(reading->problems, SEVERITY_ERROR, use->place,
                    text_format(reading->arena, "write {%s: ...} with one of: %s", item,
                                item_states_joined(use->value, reading->arena)),
                    "%s is named without the state that the step brings it into", item);
    if (use->state != STATE_ANY && !item_has_state(use->value, use->state))
        problem_add(reading->problems, SEVERITY_ERROR, use->place,
                    text_format(reading->arena, "its states: %s",
                                item_states_joined(use->value, reading->arena)),
                    "%s cannot be brought into the state %s", item,
                    end_state_words[use->state - 1]);
}

static void states_check(const struct procedure_reading *reading, const struct item_uses *uses)
{
    for (size_t i = 0; i < uses->count; i++)
        state_check(reading, &uses->items[i]);
}

static struct step_case case_read(const struct procedure_reading *reading,
                                  const struct case_entry *entry)
{
    struct step_case step_case = entry->step_case;
    step_case.place = entry->place;
    step_case.when = when_read(reading, &entry->when);
    english_check("report", &step_case.report, reading->problems);
    step_case.guards = guards_of(&entry->guards);
    lethal_check(reading, &step_case.lethal_ids);
    states_check(reading, &step_case.uses);
    states_check(reading, &step_case.also);
    return step_case;
}

/* The first case that holds is taken, so what follows one without `when` can never come. */
static void cases_order_check(const struct procedure_reading *reading,
                              const struct case_entry *entries,
                              const struct procedure_step *step)
{
    for (size_t i = 0; i + 1 < step->case_count; i++)
        if (entries[i].when.node == NULL)
            problem_add(reading->problems, SEVERITY_ERROR, entries[i].place,
                        "make it the last, or give it a when",
                        "a case of step %s has no when, so those after it never come",
                        step->id.text);
}

static void cases_read(const struct procedure_reading *reading, const struct entries_value *list,
                       struct step_work *work)
{
    const struct case_entry *entries = list->items;
    size_t count = list->count;
    const struct text_value **ids = arena_array(reading->arena, count, sizeof *ids);
    work->cases = arena_array(reading->arena, count, sizeof *work->cases);
    for (size_t i = 0; i < count; i++) {
        work->cases[i] = case_read(reading, &entries[i]);
        ids[i] = &work->cases[i].id;
    }
    work->step.cases = work->cases;
    work->step.case_count = count;
    work->step.ends = count > 0 && entries[count - 1].when.node == NULL;
    ids_check(reading, ids, count, "cases");
    cases_order_check(reading, entries, &work->step);
}

static void step_read(const struct procedure_reading *reading, const struct step_entry *entry,
                      struct step_work *work)
{
    struct procedure_step *step = &work->step;
    *step = entry->step;
    step->place = entry->place;
    if (step->id.text == NULL)
        step->id.text = "?";
    step->when = when_read(reading, &entry->when);
    step->guards = guards_of(&entry->guards);
    lethal_check(reading, &step->lethal_ids);
    states_check(reading, &step->uses);
    states_check(reading, &step->also);
    basis_check(reading, &step->basis, FOOTING_STEP, step->place,
                text_format(reading->arena, "step %s", step->id.text));
    cases_read(reading, &entry->cases, work);
    step_guards_check(reading, step);
}

/* ---- the texts ---- */

/* As many texts as ids, wanted under these. */
static void lethal_want(const struct procedure_reading *reading, const struct list_value *ids,
                        struct list_value *lethal, struct wanted_list *list)
{
    struct text_value *texts = arena_array(reading->arena, ids->count, sizeof *texts);
    for (size_t i = 0; i < ids->count; i++) {
        struct wanted_text wanted = text_by_id(reading, &ids->items[i], &texts[i]);
        wanted.naming = NAMES_STEPS_AND_CARDS;
        want(reading, list, wanted);
    }
    *lethal = *ids;
    lethal->items = texts;
}

static void lethal_texts_read(struct procedure_reading *reading, struct step_work *work,
                              const struct texts_at *at)
{
    struct wanted_list list = {0};
    lethal_want(reading, &work->step.lethal_ids, &work->step.lethal, &list);
    for (size_t i = 0; i < work->step.case_count; i++)
        lethal_want(reading, &work->cases[i].lethal_ids, &work->cases[i].lethal,
                    &list);
    texts_read(reading, at, "a set of texts under lethal", list.rows, list.count);
}

static void case_texts_read(struct procedure_reading *reading, struct step_case *step_case,
                            const struct texts_at *at)
{
    const struct wanted_text rows[] = {
        filled_text_under(&case_texts.fields[CASE_ACT], &step_case->act),
        text_under(&case_texts.fields[CASE_BECAUSE], &step_case->because)};
    texts_read(reading, at, case_texts.what, rows, sizeof rows / sizeof *rows);
    act_check(reading, &step_case->act);
}

static void cases_texts_read(struct procedure_reading *reading, struct step_work *work,
                             const struct texts_at *at)
{
    size_t count = work->step.case_count;
    struct texts_at *inside = arena_array(reading->arena, count, sizeof *inside);
    struct wanted_list list = {0};
    for (size_t i = 0; i < count; i++)
        if (work->cases[i].id.text != NULL)
            want(reading, &list,
                 texts_under_id(reading, &work->cases[i].id, &inside[i]));
    texts_read(reading, at, "a set of texts under cases", list.rows, list.count);
    for (size_t i = 0; i < count; i++)
        case_texts_read(reading, &work->cases[i], &inside[i]);
}

static bool has_lethal(const struct procedure_step *step)
{
    bool has = step->lethal_ids.count > 0;
    for (size_t i = 0; i < step->case_count; i++)
        has = has || step->cases[i].lethal_ids.count > 0;
    return has;
}

static bool has_case_ids(const struct procedure_step *step)
{
    for (size_t i = 0; i < step->case_count; i++)
        if (step->cases[i].id.text != NULL)
            return true;
    return false;
}

static void step_own_texts_read(struct procedure_reading *reading, struct step_work *work,
                                struct texts_at *lethal, struct texts_at *cases)
{
    struct procedure_step *step = &work->step;
    struct wanted_list list = {0};
    want(reading, &list, filled_text_under(&step_texts.fields[STEP_ACT], &step->act));
    list.rows[0].field.required = step->case_count == 0;
    want(reading, &list, text_under(&step_texts.fields[STEP_BECAUSE], &step->because));
    want(reading, &list, text_under(&step_texts.fields[STEP_WHO], &step->who));
    if (has_lethal(step))
        want(reading, &list, texts_under(&step_texts.fields[STEP_LETHAL], lethal));
    if (has_case_ids(step))
        want(reading, &list, texts_under(&step_texts.fields[STEP_CASES], cases));
    texts_read(reading, &work->texts, step_texts.what, list.rows, list.count);
    act_check(reading, &step->act);
}

/* ---- logic and texts together ---- */

/* What a case leaves out it has from its step. */
static void case_complete(const struct procedure_reading *reading, struct step_case *step_case,
                          const struct procedure_step *step)
{
    if (step_case->id.text == NULL)
        step_case->act = step->act;
    if (step_case->because.text == NULL)
        step_case->because = step->because;
    if (step_case->within.value == REACH_ANY)
        step_case->within = step->within;
    if (!step_case->lethal_ids.given) {
        step_case->lethal_ids = step->lethal_ids;
        step_case->lethal = step->lethal;
    }
    if (step_case->basis.sources.given ||
        step_case->basis.practice.answer != ANSWER_NOT_RECORDED)
        basis_check(reading, &step_case->basis, FOOTING_STEP, step_case->place,
                    text_format(reading->arena, "a case of step %s", step->id.text));
    else
        step_case->basis = step->basis;
}

/* A boat that no case fits has the step's own words; so has a draft in which no case can be
 * decided. A last case for every other boat gives its words to both. */
static void act_complete(const struct procedure_reading *reading, struct step_work *work)
{
    struct procedure_step *step = &work->step;
    for (size_t i = 0; i < step->case_count; i++)
        if (step->cases[i].id.text == NULL && step->act.text == NULL)
            problem_add(reading->problems, SEVERITY_ERROR, step->cases[i].place,
                        "give it an id, and an act under that id in the texts; or give the "
                        "whole step an act", "a case of step %s has no act", step->id.text);
    if (step->act.text != NULL || step->case_count == 0)
        return;
    if (step->ends)
        step->act = step->cases[step->case_count - 1].act;
    else
        problem_add(reading->problems, SEVERITY_ERROR, step->place,
                    "write an act for the step in its texts, or a last case without when",
                    "step %s says nothing to a boat that fits none of its cases",
                    step->id.text);
}

/* Where the first language has nothing for the step, that has been told. */
static bool has_texts(const struct step_work *work)
{
    return work->texts.nodes != NULL && work->texts.nodes[0] != NULL;
}

static void step_complete(struct procedure_reading *reading, struct step_work *work)
{
    struct texts_at lethal = {0}, cases = {0};
    step_own_texts_read(reading, work, &lethal, &cases);
    lethal_texts_read(reading, work, &lethal);
    cases_texts_read(reading, work, &cases);
    for (size_t i = 0; i < work->step.case_count; i++)
        case_complete(reading, &work->cases[i], &work->step);
    if (has_texts(work))
        act_complete(reading, work);
}

static void steps_texts_read(struct procedure_reading *reading, struct step_work *works,
                             size_t count, const struct texts_at *texts)
{
    struct wanted_list list = {0};
    for (size_t i = 0; i < count; i++)
        if (works[i].step.id.place.line > 0)
            want(reading, &list,
                 texts_under_id(reading, &works[i].step.id, &works[i].texts));
    texts_read(reading, texts, "a set of texts under steps", list.rows, list.count);
    for (size_t i = 0; i < count; i++)
        step_complete(reading, &works[i]);
}

void steps_read(struct procedure_reading *reading, const struct entries_value *list,
                const struct texts_at *texts)
{
    const struct step_entry *entries = list->items;
    size_t count = list->count;
    struct step_work *works = arena_array(reading->arena, count, sizeof *works);
    struct procedure_step *steps = arena_array(reading->arena, count, sizeof *steps);
    const struct text_value **ids = arena_array(reading->arena, count, sizeof *ids);
    for (size_t i = 0; i < count; i++) {
        step_read(reading, &entries[i], &works[i]);
        ids[i] = &works[i].step.id;
    }
    ids_check(reading, ids, count, "steps");
    steps_texts_read(reading, works, count, texts);
    for (size_t i = 0; i < count; i++)
        steps[i] = works[i].step;
    reading->procedure->steps = steps;
    reading->procedure->step_count = count;
}
