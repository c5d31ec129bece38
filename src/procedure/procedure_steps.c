/* procedure_steps.c - the steps of a procedure and their cases (room: procedure).
 * Never chooses a case: that takes a boat. */
#include "procedure_room.h"

#include "text.h"

struct step_entry {
    struct procedure_step step;
    struct node_value when, cases;
};

struct case_entry {
    struct step_case step_case;
    struct node_value when;
};

#define STEP_ROW(key, member, field_kind, ...) \
    KEYED(struct step_entry, key, member, field_kind, __VA_ARGS__)
#define CASE_ROW(key, member, field_kind, ...) \
    KEYED(struct case_entry, key, member, field_kind, __VA_ARGS__)

static const char *const gear_table_words[] = {GEAR_TABLE_LIST(CHOICE_WORD) NULL};
static const char *const gear_state_words[] = {GEAR_STATE_LIST(CHOICE_WORD) NULL};
static const char *const shown_words[] = {SHOWN_LIST(CHOICE_WORD) NULL};

enum { MOST_LETHAL = 2 };

static const struct field step_rows[] = {
    STEP_ROW("id", step.id, FIELD_TEXT, .required = true, .about = "how others name the step"),
    STEP_ROW("act", step.act, FIELD_TEXT, .about = "the headline, **bold** in stars"),
    STEP_ROW("uses", step.uses, FIELD_CHOICES, .choices = item_key_list, .about = "gear to use"),
    STEP_ROW("also", step.also, FIELD_CHOICES, .choices = item_key_list,
             .about = "gear shown when fitted"),
    STEP_ROW("because", step.because, FIELD_TEXT, .about = "why, for the skipper"),
    STEP_ROW("who", step.who, FIELD_TEXT, .about = "whose task it is"),
    STEP_ROW("table", step.table, FIELD_CHOICE, .choices = gear_table_words,
             .about = "zones: the gear as a table by zone"),
    STEP_ROW("lethal", step.lethal, FIELD_LIST, .about = "what kills here, printed with it"),
    STEP_ROW("within", step.within, FIELD_CHOICE, .choices = reach_words,
             .about = "how far one may go for its gear; what is farther is not offered"),
    STEP_ROW("state", step.state, FIELD_CHOICE, .choices = gear_state_words,
             .about = "how its gear is left: on (open), off (shut)"),
    STEP_ROW("shows", step.shows, FIELD_CHOICE, .choices = shown_words,
             .about = "what of its gear is printed as handling; how, if left out"),
    STEP_ROW("when", when, FIELD_NODE, .about = "boats that have the step"),
    STEP_ROW("cases", cases, FIELD_NODE, .about = "what to do on which boat, first match"),
    STEP_ROW("sources", step.basis.sources, FIELD_WORDS, .about = "what it stands on"),
    STEP_ROW("practice", step.basis.practice, FIELD_ANSWER, .about = "trade practice"),
};
static const struct field case_rows[] = {
    CASE_ROW("when", when, FIELD_NODE, .about = "boats it is for; left out: all others"),
    CASE_ROW("act", step_case.act, FIELD_TEXT, .about = "the headline, if another"),
    CASE_ROW("uses", step_case.uses, FIELD_CHOICES, .choices = item_key_list,
             .about = "gear to use"),
    CASE_ROW("also", step_case.also, FIELD_CHOICES, .choices = item_key_list,
             .about = "gear shown when fitted"),
    CASE_ROW("lethal", step_case.lethal, FIELD_LIST, .about = "what kills here, if another"),
    CASE_ROW("within", step_case.within, FIELD_CHOICE, .choices = reach_words,
             .about = "how far one may go for its gear, if another"),
    CASE_ROW("state", step_case.state, FIELD_CHOICE, .choices = gear_state_words,
             .about = "how its gear is left, if another"),
    CASE_ROW("shows", step_case.shows, FIELD_CHOICE, .choices = shown_words,
             .about = "what of its gear is printed as handling, if another"),
    CASE_ROW("because", step_case.because, FIELD_TEXT, .about = "why, if for another reason"),
    CASE_ROW("sources", step_case.basis.sources, FIELD_WORDS, .about = "what it stands on"),
    CASE_ROW("practice", step_case.basis.practice, FIELD_ANSWER, .about = "trade practice"),
};
static const struct field_table step_table = TABLE("a step", step_rows);
static const struct field_table case_table = TABLE("a case", case_rows);

static void act_check(const struct procedure_reading *reading, const struct text_value *act)
{
    const char *fault = act->text == NULL ? NULL : bold_fault(act->text);
    if (fault != NULL)
        problem_add(reading->problems, SEVERITY_ERROR, act->place,
                    "put two stars before and two after the bold words: **SHUT** the fuel",
                    "act %s", fault);
}

static void lethal_check(const struct procedure_reading *reading, const struct list_value *lethal)
{
    if (lethal->count > MOST_LETHAL)
        problem_add(reading->problems, SEVERITY_ERROR, lethal->items[MOST_LETHAL].place,
                    "keep the two that save most lives", "%zu lethal lines: a step has at most %d",
                    lethal->count, MOST_LETHAL);
}

/* What a case leaves out it has from its step. */
static void case_complete(const struct procedure_reading *reading, struct step_case *step_case,
                          const struct procedure_step *step, const char *what)
{
    if (step_case->act.text == NULL)
        step_case->act = step->act;
    if (step_case->because.text == NULL)
        step_case->because = step->because;
    if (step_case->within.value == REACH_ANY)
        step_case->within = step->within;
    if (step_case->state.value == STATE_ANY)
        step_case->state = step->state;
    if (step_case->shows.value == SHOWN_BY_STATE)
        step_case->shows = step->shows;
    if (!step_case->lethal.given)
        step_case->lethal = step->lethal;
    if (step_case->basis.sources.given ||
        step_case->basis.practice.answer != ANSWER_NOT_RECORDED)
        basis_check(reading, &step_case->basis, FOOTING_STEP, step_case->place, what);
    else
        step_case->basis = step->basis;
}

static void case_read(const struct procedure_reading *reading, const struct yaml_node *node,
                      const struct procedure_step *step, struct step_case *out)
{
    struct case_entry entry = {0};
    const char *what = text_format(reading->arena, "a case of step %s", step->id.text);
    section_read(node, &case_table, &entry, reading->arena, reading->problems);
    *out = entry.step_case;
    out->place = node->place;
    out->when = when_read(reading, &entry.when);
    act_check(reading, &out->act);
    lethal_check(reading, &out->lethal);
    case_complete(reading, out, step, what);
    if (out->act.text == NULL)
        problem_add(reading->problems, SEVERITY_ERROR, node->place,
                    "write its act, or an act for the whole step", "%s has no act", what);
}

/* The first case that holds is taken, so what follows one without `when` can
 * never come; and a boat that no case fits still needs words. */
static void cases_order_check(const struct procedure_reading *reading,
                              const struct procedure_step *step, const bool *always)
{
    for (size_t i = 0; i + 1 < step->case_count; i++)
        if (always[i])
            problem_add(reading->problems, SEVERITY_ERROR, step->cases[i].place,
                        "make it the last, or give it a when",
                        "a case of step %s has no when, so those after it never come",
                        step->id.text);
    bool ends = step->case_count > 0 && always[step->case_count - 1];
    if (!ends && step->act.text == NULL)
        problem_add(reading->problems, SEVERITY_ERROR, step->place,
                    "write an act for the step, or a last case without when",
                    "step %s says nothing to a boat that fits none of its cases",
                    step->id.text);
}

static void cases_read(const struct procedure_reading *reading, const struct node_value *list,
                       struct procedure_step *step)
{
    size_t count = entries_count(list, "cases", reading->problems);
    struct step_case *cases = arena_array(reading->arena, count, sizeof *cases);
    bool *always = arena_array(reading->arena, count, sizeof *always);
    for (size_t i = 0; i < count; i++) {
        const struct yaml_node *node = list->node->items[i];
        case_read(reading, node, step, &cases[i]);
        always[i] = node->kind == YAML_MAPPING && yaml_get(node, "when") == NULL;
    }
    step->cases = cases;
    step->case_count = count;
    cases_order_check(reading, step, always);
}

static void step_read(const struct procedure_reading *reading, const struct yaml_node *node,
                      struct procedure_step *out)
{
    struct step_entry entry = {0};
    section_read(node, &step_table, &entry, reading->arena, reading->problems);
    *out = entry.step;
    out->place = node->place;
    if (out->id.text == NULL)
        out->id.text = "?";
    out->when = when_read(reading, &entry.when);
    act_check(reading, &out->act);
    lethal_check(reading, &out->lethal);
    basis_check(reading, &out->basis, FOOTING_STEP, node->place,
                text_format(reading->arena, "step %s", out->id.text));
    cases_read(reading, &entry.cases, out);
}

void steps_read(struct procedure_reading *reading, const struct node_value *list)
{
    size_t count = entries_count(list, "steps", reading->problems);
    struct procedure_step *steps = arena_array(reading->arena, count, sizeof *steps);
    for (size_t i = 0; i < count; i++)
        step_read(reading, list->node->items[i], &steps[i]);
    reading->procedure->steps = steps;
    reading->procedure->step_count = count;
}
