/* procedure_read.c - one emergency's general instructions (room: procedure): the
 * logic file as a whole, and the head of its texts. Steps, boxes and checks are in files
 * of their own. Never looks at a boat, and never at another procedure. */
#include "procedure_texts.h"

#include "text.h"

/* The file as it is read; nodes are read further by their own readers. */
struct procedure_file {
    struct procedure procedure;
    struct node_value call_when, when, steps, decision, never, cautions, calls;
};

#define FILE_ROW(key, member, field_kind, ...) \
    KEYED(struct procedure_file, key, member, field_kind, __VA_ARGS__)

static const char *const per_words[] = {PER_LIST(CHOICE_WORD) NULL};
/* The classes that a card may be of, in the order of enum sign_class. */
static const char *const stripes[] = {
    [SIGN_FIRE - 1] = "fire", [SIGN_RESCUE - 1] = "rescue", [SIGN_CONTROL - 1] = "control",
    [SIGN_WARNING - 1] = "warning", NULL};

static const struct field file_rows[] = {
    FILE_ROW("procedure", procedure.key, FIELD_TEXT, .required = true,
             .about = "its key: small letters, digits and _"),
    FILE_ROW("number", procedure.number, FIELD_NUMBER, .required = true, .low = 1000,
             .high = 99000, .whole = true,
             .about = "the card's number, fixed for good: printed cards name each other by it"),
    FILE_ROW("kind", procedure.kind, FIELD_ENUM, .choices = sheet_kind_words,
             .about = "card; distress: the distress call; safety_plan: where everything is"),
    FILE_ROW("per", procedure.per, FIELD_ENUM, .choices = per_words,
             .about = "engine_space: a boat with two gets two cards"),
    FILE_ROW("symbol", procedure.symbol, FIELD_ENUM, .required = true, .choices = symbol_keys,
             .about = "the sign beside the title"),
    FILE_ROW("stripe", procedure.stripe, FIELD_ENUM, .required = true, .choices = stripes,
             .about = "colour of the stripe"),
    FILE_ROW("call_when", call_when, FIELD_NODE, .about = "who calls when"),
    FILE_ROW("vapour_from", procedure.vapour_from, FIELD_ENUMS, .choices = item_key_list,
             .about = "items in whose lockers vapour lies: other gear there is out of reach"),
    FILE_ROW("despite_vapour", procedure.despite_vapour, FIELD_ENUMS, .choices = item_key_list,
             .about = "items that are offered there all the same, with words of their own"),
    FILE_ROW("when", when, FIELD_NODE, .about = "boats that need the card; all, if left out"),
    FILE_ROW("steps", steps, FIELD_NODE, .about = "what to do, in order"),
    FILE_ROW("decision", decision, FIELD_NODE, .about = "the one question"),
    FILE_ROW("never", never, FIELD_NODE, .about = "what must not be done"),
    FILE_ROW("cautions", cautions, FIELD_NODE, .about = "warnings of authorities"),
    FILE_ROW("calls", calls, FIELD_NODE, .about = "the radio message"),
};
static const struct field_table file_table = LOGIC_TABLE("a procedure", file_rows);

/* The head of a file of texts. */
enum head_text {
    HEAD_PROCEDURE, HEAD_TITLE, HEAD_SUBJECT, HEAD_SIGNS, HEAD_WHEN_REASON, HEAD_ROWS_BELOW,
    HEAD_CALL_WHEN, HEAD_STEPS, HEAD_DECISION, HEAD_NEVER, HEAD_CAUTIONS, HEAD_CALLS
};
static const struct field head_rows[] = {
    [HEAD_PROCEDURE] = {.key = "procedure", .kind = FIELD_TEXT, .required = true,
                        .about = "the key of the procedure whose texts these are"},
    [HEAD_TITLE] = {.key = "title", .kind = FIELD_TEXT, .required = true,
                    .about = "the card's title"},
    [HEAD_SUBJECT] = {.key = "subject", .kind = FIELD_TEXT, .required = true,
                      .about = "what other cards call it"},
    [HEAD_SIGNS] = {.key = "signs", .kind = FIELD_LIST, .required = true,
                    .about = "how one knows"},
    [HEAD_WHEN_REASON] = {.key = "when_reason", .kind = FIELD_TEXT, .required = true,
                          .about = "why other boats do not need the card"},
    [HEAD_ROWS_BELOW] = {.key = "rows_below", .kind = FIELD_TEXT,
                         .about = "printed with each step that has gear below deck"},
    [HEAD_CALL_WHEN] = {.key = "call_when", .kind = FIELD_NODE, .about = "who calls when"},
    [HEAD_STEPS] = {.key = "steps", .kind = FIELD_NODE, .about = "the texts of each step"},
    [HEAD_DECISION] = {.key = "decision", .kind = FIELD_NODE,
                       .about = "the question, and what either answer leads to"},
    [HEAD_NEVER] = {.key = "never", .kind = FIELD_NODE,
                    .about = "what must not be done, without the word never"},
    [HEAD_CAUTIONS] = {.key = "cautions", .kind = FIELD_NODE, .about = "the warnings"},
    [HEAD_CALLS] = {.key = "calls", .kind = FIELD_NODE,
                    .about = "the word that tells one call from the other"},
};

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
    const char **keys = arena_array(reading->arena, known->count + 1, sizeof *keys);
    size_t count = 0;
    for (size_t i = 0; i < known->count; i++)
        if (known->rows[i].key.text != NULL)
            keys[count++] = known->rows[i].key.text;
    problem_add(reading->problems, SEVERITY_ERROR, source->place,
                nearest_remedy(source->text, keys, "add it to sources.yaml, with how far it was "
                               "read", reading->arena),
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
struct head_texts {
    struct said_texts call_when;
    struct texts_at steps, decision, never, cautions, calls;
};

static bool is_list(const struct node_value *value)
{
    return value->node != NULL && value->node->kind == YAML_SEQUENCE && value->node->count > 0;
}

static void own_texts_want(const struct procedure_reading *reading,
                           const struct procedure_file *file, struct wanted_list *list)
{
    struct procedure *procedure = reading->procedure;
    want(reading, list, (struct wanted_text){.field = head_rows[HEAD_PROCEDURE],
                                             .same = TEXT_OR_EMPTY(procedure->key)});
    want(reading, list, (struct wanted_text){.field = head_rows[HEAD_TITLE],
                                             .text = &procedure->title});
    want(reading, list, (struct wanted_text){.field = head_rows[HEAD_SUBJECT],
                                             .text = &procedure->subject});
    want(reading, list, (struct wanted_text){.field = head_rows[HEAD_SIGNS],
                                             .list = &procedure->signs});
    want(reading, list, (struct wanted_text){.field = head_rows[HEAD_ROWS_BELOW],
                                             .text = &procedure->rows_below});
    if (file->when.node != NULL)
        want(reading, list, (struct wanted_text){.field = head_rows[HEAD_WHEN_REASON],
                                                 .text = &procedure->when_reason});
}

/* Of each part, the texts are wanted where the logic has something to be said. */
static void part_texts_want(const struct procedure_reading *reading,
                            const struct procedure_file *file, struct head_texts *head,
                            struct wanted_list *list)
{
    if (file->call_when.node != NULL)
        want(reading, list,
             said_wanted(&head_rows[HEAD_CALL_WHEN], &file->call_when, &head->call_when));
    if (is_list(&file->steps))
        want(reading, list, texts_under(&head_rows[HEAD_STEPS], &head->steps));
    if (file->decision.node != NULL)
        want(reading, list, texts_under(&head_rows[HEAD_DECISION], &head->decision));
    if (is_list(&file->never))
        want(reading, list, texts_under(&head_rows[HEAD_NEVER], &head->never));
    if (is_list(&file->cautions))
        want(reading, list, texts_under(&head_rows[HEAD_CAUTIONS], &head->cautions));
    if (entries_have(&file->calls, "id"))
        want(reading, list, texts_under(&head_rows[HEAD_CALLS], &head->calls));
}

static void procedure_parts_read(struct procedure_reading *reading,
                                 const struct procedure_file *file)
{
    const struct texts_at roots = text_files_open(reading);
    struct head_texts head = {0};
    struct wanted_list list = {0};
    own_texts_want(reading, file, &list);
    part_texts_want(reading, file, &head, &list);
    texts_read(reading, &roots, "a file of texts", list.rows, list.count);
    call_when_read(reading, &file->call_when, &head.call_when);
    steps_read(reading, &file->steps, &head.steps);
    decision_read(reading, &file->decision, &head.decision);
    nevers_read(reading, &file->never, &head.never);
    cautions_read(reading, &file->cautions, &head.cautions);
    calls_read(reading, &file->calls, &head.calls);
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

static void logic_read(struct procedure_reading *reading, const struct yaml_node *root)
{
    struct procedure_file file = {0};
    struct procedure *procedure = reading->procedure;
    section_read(root, &file_table, &file, reading->arena, reading->problems);
    file.procedure.source = procedure->source;
    *procedure = file.procedure;
    if (procedure->kind.value == SHEET_NONE)
        procedure->kind.value = SHEET_CARD;
    title_sign_check(reading);
    procedure->when = when_read(reading, &file.when);
    procedure_parts_read(reading, &file);
    procedure_check(reading);
    voice_words_check(root, reading->arena, reading->problems);
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
        section_read(root, &file_table, &(struct procedure_file){0}, arena, problems);
    return problems_settle(all, problems) && root != NULL ? procedure : NULL;
}
