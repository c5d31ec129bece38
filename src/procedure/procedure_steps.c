/* procedure_steps.c - the steps of a procedure and their cases, with their texts (room:
 * procedure). Never chooses a case: that takes a boat. */
#include "procedure_texts.h"

#include "text.h"

struct case_entry {
    struct step_case step_case;
    struct node_value when;
    struct place place;
};

#define STEP_ROW(key, member, field_kind, ...) \
    KEYED(struct step_entry, key, member, field_kind, __VA_ARGS__)
#define CASE_ROW(key, member, field_kind, ...) \
    KEYED(struct case_entry, key, member, field_kind, __VA_ARGS__)

static const char *const gear_table_words[] = {GEAR_TABLE_LIST(CHOICE_WORD) NULL};
static const char *const gear_state_words[] = {GEAR_STATE_LIST(CHOICE_WORD) NULL};
static const char *const shown_words[] = {SHOWN_LIST(CHOICE_WORD) NULL};

enum { MOST_LETHAL = 2 };

static const struct field case_rows[] = {
    CASE_ROW("id", step_case.id, FIELD_TEXT,
             .about = "how the texts name it; left out: it has the act of its step"),
    CASE_ROW("when", when, FIELD_NODE, .about = "boats it is for; left out: all others"),
    CASE_ROW("uses", step_case.uses, FIELD_CHOICES, .choices = item_key_list,
             .about = "gear to use"),
    CASE_ROW("also", step_case.also, FIELD_CHOICES, .choices = item_key_list,
             .about = "gear shown when fitted"),
    CASE_ROW("lethal", step_case.lethal_ids, FIELD_LIST,
             .about = "what kills here, if another: ids of texts"),
    CASE_ROW("within", step_case.within, FIELD_CHOICE, .choices = reach_words,
             .about = "how far one may go for its gear, if another"),
    CASE_ROW("state", step_case.state, FIELD_CHOICE, .choices = gear_state_words,
             .about = "how its gear is left, if another"),
    CASE_ROW("shows", step_case.shows, FIELD_CHOICE, .choices = shown_words,
             .about = "what of its gear is printed as handling, if another"),
    CASE_ROW("sources", step_case.basis.sources, FIELD_WORDS, .about = "what it stands on"),
    CASE_ROW("practice", step_case.basis.practice, FIELD_ANSWER, .about = "trade practice"),
};
static const struct field_table case_table = LOGIC_TABLE("a case", case_rows);

static const struct field step_rows[] = {
    STEP_ROW("id", step.id, FIELD_TEXT, .required = true, .about = "how others name the step"),
    STEP_ROW("uses", step.uses, FIELD_CHOICES, .choices = item_key_list, .about = "gear to use"),
    STEP_ROW("also", step.also, FIELD_CHOICES, .choices = item_key_list,
             .about = "gear shown when fitted"),
    STEP_ROW("table", step.table, FIELD_CHOICE, .choices = gear_table_words,
             .about = "zones: the gear as a table by zone"),
    STEP_ROW("lethal", step.lethal_ids, FIELD_LIST,
             .about = "what kills here, printed with it: ids of texts"),
    STEP_ROW("within", step.within, FIELD_CHOICE, .choices = reach_words,
             .about = "how far one may go for its gear; what is farther is not offered"),
    STEP_ROW("state", step.state, FIELD_CHOICE, .choices = gear_state_words,
             .about = "how its gear is left: on (open), off (shut)"),
    STEP_ROW("shows", step.shows, FIELD_CHOICE, .choices = shown_words,
             .about = "what of its gear is printed as handling; how, if left out"),
    STEP_ROW("when", when, FIELD_NODE, .about = "boats that have the step"),
    STEP_ROW("cases", cases, FIELD_ENTRIES, ENTRIES_OF(struct case_entry, .table = &case_table),
             .about = "what to do on which boat, first match"),
    STEP_ROW("sources", step.basis.sources, FIELD_WORDS, .about = "what it stands on"),
    STEP_ROW("practice", step.basis.practice, FIELD_ANSWER, .about = "trade practice"),
};
const struct field_table step_table = LOGIC_TABLE("a step", step_rows);

/* Their texts. */
enum step_text { STEP_ACT, STEP_BECAUSE, STEP_WHO, STEP_LETHAL, STEP_CASES };
static const struct field step_texts[] = {
    [STEP_ACT] = {.key = "act", .kind = FIELD_TEXT,
                  .about = "the headline, **bold** in stars"},
    [STEP_BECAUSE] = {.key = "because", .kind = FIELD_TEXT, .about = "why, for the skipper"},
    [STEP_WHO] = {.key = "who", .kind = FIELD_TEXT, .about = "whose task it is"},
    [STEP_LETHAL] = {.key = "lethal", .kind = FIELD_NODE,
                     .about = "what kills here, by id, for the step and its cases"},
    [STEP_CASES] = {.key = "cases", .kind = FIELD_NODE,
                    .about = "the texts of each case that has an id"},
};
enum case_text { CASE_ACT, CASE_BECAUSE };
static const struct field case_texts[] = {
    [CASE_ACT] = {.key = "act", .kind = FIELD_TEXT, .required = true,
                  .about = "the headline, **bold** in stars"},
    [CASE_BECAUSE] = {.key = "because", .kind = FIELD_TEXT,
                      .about = "why, if for another reason than the step's"},
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

static struct step_case logic_case_take(const struct procedure_reading *reading,
                                        const struct case_entry *entry)
{
    struct step_case step_case = entry->step_case;
    step_case.place = entry->place;
    step_case.when = when_read(reading, &entry->when);
    lethal_check(reading, &step_case.lethal_ids);
    return step_case;
}

/* The first case that holds is taken, so what follows one without `when` can never come. */
static void cases_order_check(const struct procedure_reading *reading,
                              const struct step_entry *entry, const bool *always)
{
    const struct procedure_step *step = &entry->step;
    for (size_t i = 0; i + 1 < step->case_count; i++)
        if (always[i])
            problem_add(reading->problems, SEVERITY_ERROR, step->cases[i].place,
                        "make it the last, or give it a when",
                        "a case of step %s has no when, so those after it never come",
                        step->id.text);
}

static void cases_take(const struct procedure_reading *reading, struct step_entry *entry)
{
    struct arena *arena = reading->arena;
    const struct case_entry *entries = entry->cases.items;
    size_t count = entry->cases.count;
    struct step_case *cases = arena_array(arena, count, sizeof *cases);
    bool *always = arena_array(arena, count, sizeof *always);
    const struct text_value **ids = arena_array(arena, count, sizeof *ids);
    for (size_t i = 0; i < count; i++) {
        cases[i] = logic_case_take(reading, &entries[i]);
        ids[i] = &cases[i].id;
        always[i] = entries[i].when.place.line == 0;
    }
    entry->case_list = cases;
    entry->step.cases = cases;
    entry->step.case_count = count;
    entry->step.ends = count > 0 && always[count - 1];
    ids_check(reading, ids, count, "cases");
    cases_order_check(reading, entry, always);
}

static void step_settle(const struct procedure_reading *reading, struct step_entry *entry)
{
    struct procedure_step *step = &entry->step;
    step->place = entry->place;
    if (step->id.text == NULL)
        step->id.text = "?";
    step->when = when_read(reading, &entry->when);
    lethal_check(reading, &step->lethal_ids);
    basis_check(reading, &step->basis, FOOTING_STEP, step->place,
                text_format(reading->arena, "step %s", step->id.text));
    cases_take(reading, entry);
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

static void lethal_texts_read(struct procedure_reading *reading, struct step_entry *entry,
                              const struct texts_at *at)
{
    struct wanted_list list = {0};
    lethal_want(reading, &entry->step.lethal_ids, &entry->step.lethal, &list);
    for (size_t i = 0; i < entry->step.case_count; i++)
        lethal_want(reading, &entry->case_list[i].lethal_ids, &entry->case_list[i].lethal,
                    &list);
    texts_read(reading, at, "a set of texts under lethal", list.rows, list.count);
}

static void case_texts_read(struct procedure_reading *reading, struct step_case *step_case,
                            const struct texts_at *at)
{
    const struct wanted_text rows[] = {
        {.field = case_texts[CASE_ACT], .naming = NAMES_STEPS_AND_CARDS, .text = &step_case->act},
        {.field = case_texts[CASE_BECAUSE], .text = &step_case->because}};
    texts_read(reading, at, "a case", rows, sizeof rows / sizeof *rows);
    act_check(reading, &step_case->act);
}

static void cases_texts_read(struct procedure_reading *reading, struct step_entry *entry,
                             const struct texts_at *at)
{
    size_t count = entry->step.case_count;
    struct texts_at *inside = arena_array(reading->arena, count, sizeof *inside);
    struct wanted_list list = {0};
    for (size_t i = 0; i < count; i++)
        if (entry->case_list[i].id.text != NULL)
            want(reading, &list,
                 texts_under_id(reading, &entry->case_list[i].id, &inside[i]));
    texts_read(reading, at, "a set of texts under cases", list.rows, list.count);
    for (size_t i = 0; i < count; i++)
        case_texts_read(reading, &entry->case_list[i], &inside[i]);
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
    bool has = false;
    for (size_t i = 0; i < step->case_count; i++)
        has = has || step->cases[i].id.place.line > 0;
    return has;
}

static void step_own_texts_read(struct procedure_reading *reading, struct step_entry *entry,
                                struct texts_at *lethal, struct texts_at *cases)
{
    struct procedure_step *step = &entry->step;
    struct wanted_list list = {0};
    want(reading, &list, (struct wanted_text){.field = step_texts[STEP_ACT],
                                              .naming = NAMES_STEPS_AND_CARDS,
                                              .text = &step->act});
    list.rows[0].field.required = step->case_count == 0;
    want(reading, &list, (struct wanted_text){.field = step_texts[STEP_BECAUSE],
                                              .text = &step->because});
    want(reading, &list, (struct wanted_text){.field = step_texts[STEP_WHO], .text = &step->who});
    if (has_lethal(step))
        want(reading, &list, texts_under(&step_texts[STEP_LETHAL], lethal));
    if (has_case_ids(step))
        want(reading, &list, texts_under(&step_texts[STEP_CASES], cases));
    texts_read(reading, &entry->texts, "a step", list.rows, list.count);
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
    if (step_case->state.value == STATE_ANY)
        step_case->state = step->state;
    if (step_case->shows.value == SHOWN_BY_STATE)
        step_case->shows = step->shows;
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
static void act_complete(const struct procedure_reading *reading, struct step_entry *entry)
{
    struct procedure_step *step = &entry->step;
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
static bool has_texts(const struct step_entry *entry)
{
    return entry->texts.nodes != NULL && entry->texts.nodes[0] != NULL;
}

static void step_complete(struct procedure_reading *reading, struct step_entry *entry)
{
    struct texts_at lethal = {0}, cases = {0};
    step_own_texts_read(reading, entry, &lethal, &cases);
    lethal_texts_read(reading, entry, &lethal);
    cases_texts_read(reading, entry, &cases);
    for (size_t i = 0; i < entry->step.case_count; i++)
        case_complete(reading, &entry->case_list[i], &entry->step);
    if (has_texts(entry))
        act_complete(reading, entry);
}

static void steps_texts_read(struct procedure_reading *reading, struct step_entry *entries,
                             size_t count, const struct texts_at *texts)
{
    struct wanted_list list = {0};
    for (size_t i = 0; i < count; i++)
        if (entries[i].step.id.place.line > 0)
            want(reading, &list,
                 texts_under_id(reading, &entries[i].step.id, &entries[i].texts));
    texts_read(reading, texts, "a set of texts under steps", list.rows, list.count);
    for (size_t i = 0; i < count; i++)
        step_complete(reading, &entries[i]);
}

void steps_take(struct procedure_reading *reading, const struct entries_value *list,
                const struct texts_at *texts)
{
    struct procedure *procedure = reading->procedure;
    struct step_entry *entries = list->items;
    size_t count = list->count;
    struct procedure_step *steps = arena_array(reading->arena, count, sizeof *steps);
    const struct text_value **ids = arena_array(reading->arena, count, sizeof *ids);
    for (size_t i = 0; i < count; i++) {
        step_settle(reading, &entries[i]);
        ids[i] = &entries[i].step.id;
    }
    ids_check(reading, ids, count, "steps");
    steps_texts_read(reading, entries, count, texts);
    for (size_t i = 0; i < count; i++)
        steps[i] = entries[i].step;
    procedure->steps = steps;
    procedure->step_count = count;
}
