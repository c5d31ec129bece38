/* procedure_read.c - one emergency's general instructions (room: procedure): the logic as a
 * whole, and the head of its texts. Steps, boxes and checks are in files
 * of their own. Never looks at a boat, and never at another procedure. */
#include "procedure_texts.h"

#include "text.h"

const struct condition *when_read(const struct procedure_reading *reading,
                                  const struct node_value *node)
{
    if (node->node == NULL)
        return NULL;
    return condition_read(node->node, reading->arena, reading->problems);
}

/* ---- what words stand on ---- */

static void unknown_source_tell(const struct procedure_reading *reading,
                                const struct text_value *source)
{
    const struct authorities *known = reading->authorities;
    const char **keys = arena_array(reading->arena, known->count, sizeof *keys);
    size_t count = 0;
    for (size_t i = 0; i < known->count; i++)
        if (known->rows[i].key.text != NULL)
            keys[count++] = known->rows[i].key.text;
    problem_add(reading->problems, SEVERITY_ERROR, source->place,
                text_nearest_remedy(reading->arena, source->text, keys, count,
                                    "add it to sources.yaml, with how far it was read"),
                "no source is called %s", source->text);
}

/* A never or a caution may kill if it is wrong: hearsay does not carry it. */
static void grade_check(const struct procedure_reading *reading, const struct text_value *source,
                        const struct authority *authority, const char *what)
{
    if (authority->grade.value == GRADE_VC)
        problem_add(reading->problems, SEVERITY_ERROR, source->place,
                    "name an authority's text of which the passage was read (VA or VB)",
                    "%s stands on %s, which is no authority (VC)", what, source->text);
}

/* True when one of the sources is in force. */
static bool sources_check(const struct procedure_reading *reading, const struct basis *basis,
                          enum footing footing, const char *what)
{
    bool current = false;
    for (size_t i = 0; i < basis->sources.count; i++) {
        const struct text_value *source = &basis->sources.items[i];
        const struct authority *authority =
            source->text == NULL ? NULL : authority_find(reading->authorities, source->text);
        if (authority == NULL && source->text != NULL)
            unknown_source_tell(reading, source);
        if (authority == NULL)
            continue;
        if (footing == FOOTING_WARNING)
            grade_check(reading, source, authority, what);
        current |= authority->status.value == SOURCE_CURRENT;
    }
    return current;
}

void basis_check(const struct procedure_reading *reading, const struct basis *basis,
                 enum footing footing, struct place place, const char *what)
{
    bool current = sources_check(reading, basis, footing, what);
    bool practice = footing == FOOTING_STEP && basis->practice.answer == ANSWER_YES;
    if (basis->sources.count == 0 && !practice)
        problem_add(reading->problems, SEVERITY_ERROR, place,
                    footing == FOOTING_STEP
                        ? "write sources: [...], or practice: yes for trade practice"
                        : "write sources: [...]",
                    footing == FOOTING_STEP ? "%s has neither sources nor practice: yes"
                                            : "%s has no sources", what);
    else if (footing == FOOTING_WARNING && !current)
        problem_add(reading->problems, SEVERITY_ERROR, basis->sources.place,
                    "add a source whose status is current",
                    "%s stands on no source that is known to be in force", what);
}

/* ---- the whole ---- */

/* Where the texts of the parts stand. */
struct part_texts {
    struct said_texts more_signs, berth, anchor, call_when;
    struct texts_at steps, decision, never, cautions, calls;
};

static bool calls_have_ids(const struct entries_value *calls)
{
    const struct call_entry *entries = calls->items;
    for (size_t i = 0; i < calls->count; i++)
        if (entries[i].call.id.text != NULL)
            return true;
    return false;
}

static void own_texts_want(const struct procedure_reading *reading,
                           const struct procedure_logic *logic, struct wanted_list *list)
{
    struct procedure *procedure = reading->procedure;
    want(reading, list, (struct wanted_text){.field = head_texts.fields[HEAD_PROCEDURE],
                                             .same = TEXT_OR_EMPTY(procedure->key)});
    want(reading, list, text_under(&head_texts.fields[HEAD_TITLE], &procedure->title));
    want(reading, list, text_under(&head_texts.fields[HEAD_SUBJECT], &procedure->subject));
    want(reading, list, (struct wanted_text){.field = head_texts.fields[HEAD_SIGNS],
                                             .list = &procedure->signs,
                                             .naming = NAMES_STEPS_AND_CARDS});
    if (is_seen_first(procedure))
        want(reading, list, (struct wanted_text){.field = head_texts.fields[HEAD_SEEN],
                                                 .list = &procedure->seen});
    want(reading, list, text_under(&head_texts.fields[HEAD_ROWS_BELOW], &procedure->rows_below));
    if (logic->when.node != NULL)
        want(reading, list,
             text_under(&head_texts.fields[HEAD_WHEN_REASON], &procedure->when_reason));
}

/* Words of which one is taken, where the logic has any. */
static void said_want(const struct procedure_reading *reading, enum head_text row,
                      const struct entries_value *logic, struct said_texts *into,
                      struct wanted_list *list)
{
    if (logic->count > 0)
        want(reading, list, said_wanted(&head_texts.fields[row], logic, into));
}

/* Of each part, the texts are wanted where the logic has something to be said. */
static void part_texts_want(const struct procedure_reading *reading,
                            const struct procedure_logic *logic, struct part_texts *head,
                            struct wanted_list *list)
{
    said_want(reading, HEAD_MORE_SIGNS, &logic->more_signs, &head->more_signs, list);
    said_want(reading, HEAD_BERTH, &logic->berth, &head->berth, list);
    said_want(reading, HEAD_ANCHOR, &logic->anchor, &head->anchor, list);
    said_want(reading, HEAD_CALL_WHEN, &logic->call_when, &head->call_when, list);
    if (logic->steps.count > 0)
        want(reading, list, texts_under(&head_texts.fields[HEAD_STEPS], &head->steps));
    if (logic->decision.given)
        want(reading, list, texts_under(&head_texts.fields[HEAD_DECISION], &head->decision));
    if (logic->never.count > 0)
        want(reading, list, texts_under(&head_texts.fields[HEAD_NEVER], &head->never));
    if (logic->cautions.count > 0)
        want(reading, list, texts_under(&head_texts.fields[HEAD_CAUTIONS], &head->cautions));
    if (calls_have_ids(&logic->calls))
        want(reading, list, texts_under(&head_texts.fields[HEAD_CALLS], &head->calls));
}

static void procedure_parts_read(struct procedure_reading *reading,
                                 const struct procedure_logic *logic)
{
    const struct texts_at roots = text_files_open(reading);
    struct part_texts head = {.more_signs.naming = NAMES_STEPS_AND_CARDS,
                              .berth.naming = NAMES_BASE_TOO, .anchor.naming = NAMES_BASE_TOO,
                              .call_when.naming = NAMES_STEPS_AND_CARDS};
    struct wanted_list list = {0};
    own_texts_want(reading, logic, &list);
    part_texts_want(reading, logic, &head, &list);
    texts_read(reading, &roots, head_texts.what, list.rows, list.count);
    more_signs_read(reading, &logic->more_signs, &head.more_signs);
    berth_read(reading, &logic->berth, &head.berth);
    anchor_read(reading, &logic->anchor, &head.anchor);
    call_when_read(reading, &logic->call_when, &head.call_when);
    steps_read(reading, &logic->steps, &head.steps);
    decision_read(reading, logic, &head.decision);
    nevers_read(reading, &logic->never, &head.never);
    cautions_read(reading, &logic->cautions, &head.cautions);
    calls_read(reading, &logic->calls, &head.calls);
    names_settle(reading);
}

/* The sign beside a title stands in the frame of the stripe's class. */
static void title_sign_check(const struct procedure_reading *reading)
{
    enum sign_class stripe = reading->procedure->stripe.value;
    const struct symbol_value *written = &reading->procedure->symbol;
    const struct symbol *symbol = symbol_of(written->value);
    if (symbol == NULL || stripe == SIGN_NONE || symbol->sign == stripe)
        return;
    problem_add(reading->problems, SEVERITY_ERROR, written->place,
                text_format(reading->arena, "name a sign of the class %s, or write the stripe "
                            "of the sign's class", sign_class_word(stripe)),
                "the sign %s is of the class %s, but the stripe of the class %s", symbol->key,
                sign_class_word(symbol->sign), sign_class_word(stripe));
}

/* A `when` with nothing behind it would be taken for one that was left out: every boat. */
static void empty_when_check(const struct procedure_reading *reading,
                             const struct yaml_node *node)
{
    for (size_t i = 0; node->kind == YAML_SEQUENCE && i < node->count; i++)
        empty_when_check(reading, node->items[i]);
    for (size_t i = 0; node->kind == YAML_MAPPING && i < node->count; i++) {
        const struct yaml_pair *pair = &node->pairs[i];
        if (pair->value->kind == YAML_SCALAR && text_empty(pair->value->text) &&
            text_equal(pair->key, "when"))
            problem_add(reading->problems, SEVERITY_ERROR, pair->key_place,
                        "write a condition such as {fitted: liferaft}, or take the key out",
                        "when asks nothing");
        empty_when_check(reading, pair->value);
    }
}

static void logic_read(struct procedure_reading *reading, const struct yaml_node *root)
{
    struct procedure_logic logic = {0};
    struct procedure *procedure = reading->procedure;
    section_read(root, &logic_table, &logic, reading->arena, reading->problems);
    empty_when_check(reading, root);
    logic.procedure.source = procedure->source;
    *procedure = logic.procedure;
    if (procedure->kind.value == SHEET_NONE)
        procedure->kind.value = SHEET_CARD;
    procedure->origin = reading->files->origin;
    logic_sum_take(reading, root);
    title_sign_check(reading);
    seen_as_check(reading);
    procedure->when = when_read(reading, &logic.when);
    hazard_cases_read(reading, &logic.hazards_if);
    procedure_parts_read(reading, &logic);
    procedure_check(reading);
    seen_check(reading);
    voice_words_check(root, NULL, reading->arena, reading->problems);
}

const struct procedure *procedure_read(const struct procedure_files *files,
                                       const struct authorities *authorities,
                                       struct arena *arena, struct problems *all)
{
    struct problems *problems = problems_part(all);
    struct procedure *procedure = arena_alloc(arena, sizeof *procedure);
    struct procedure_reading reading = {.files = files, .procedure = procedure,
                                        .authorities = authorities, .arena = arena,
                                        .problems = problems};
    const struct yaml_node *root = yaml_tree_read(files->logic, arena, problems);
    procedure->source = files->logic;
    if (root != NULL && root->kind == YAML_MAPPING)
        logic_read(&reading, root);
    else
        section_read(root, &logic_table, &(struct procedure_logic){0}, arena, problems);
    return problems_settle(all, problems) && root != NULL ? procedure : NULL;
}
