/* procedure_read.c - one emergency's general instructions (room: procedure): the
 * file as a whole. Steps, boxes and checks are in files of their own. Never
 * looks at a boat, and never at another procedure. */
#include "procedure_room.h"

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
const char *const procedure_kind_words[] = {PROCEDURE_KIND_LIST(CHOICE_WORD) NULL};

static const struct field file_rows[] = {
    FILE_ROW("procedure", procedure.key, FIELD_TEXT, .required = true,
             .about = "its key: small letters, digits and _"),
    FILE_ROW("number", procedure.number, FIELD_NUMBER, .required = true, .low = 1000,
             .high = 99000, .whole = true,
             .about = "the card's number, fixed for good: printed cards name each other by it"),
    FILE_ROW("kind", procedure.kind, FIELD_CHOICE, .choices = procedure_kind_words,
             .about = "card; distress: the distress call; safety_plan: where everything is"),
    FILE_ROW("per", procedure.per, FIELD_CHOICE, .choices = per_words,
             .about = "engine_space: a boat with two gets two cards"),
    FILE_ROW("title", procedure.title, FIELD_TEXT, .required = true, .about = "the card's title"),
    FILE_ROW("subject", procedure.subject, FIELD_TEXT, .required = true,
             .about = "what other cards call it"),
    FILE_ROW("symbol", procedure.symbol, FIELD_CHOICE, .required = true, .choices = symbol_keys,
             .about = "the sign beside the title"),
    FILE_ROW("stripe", procedure.stripe, FIELD_CHOICE, .required = true, .choices = stripes,
             .about = "colour of the stripe"),
    FILE_ROW("signs", procedure.signs, FIELD_LIST, .required = true, .about = "how one knows"),
    FILE_ROW("call_when", call_when, FIELD_NODE, .about = "who calls when"),
    FILE_ROW("vapour_from", procedure.vapour_from, FIELD_CHOICES, .choices = item_key_list,
             .about = "items in whose lockers vapour lies: other gear there is out of reach"),
    FILE_ROW("despite_vapour", procedure.despite_vapour, FIELD_CHOICES, .choices = item_key_list,
             .about = "items that are offered there all the same, with words of their own"),
    FILE_ROW("rows_below", procedure.rows_below, FIELD_TEXT,
             .about = "printed with each step that has gear below deck"),
    FILE_ROW("when", when, FIELD_NODE, .about = "boats that need the card; all, if left out"),
    FILE_ROW("when_reason", procedure.when_reason, FIELD_TEXT,
             .about = "why other boats do not need it"),
    FILE_ROW("steps", steps, FIELD_NODE, .about = "what to do, in order"),
    FILE_ROW("decision", decision, FIELD_NODE, .about = "the one question"),
    FILE_ROW("never", never, FIELD_NODE, .about = "what must not be done"),
    FILE_ROW("cautions", cautions, FIELD_NODE, .about = "warnings of authorities"),
    FILE_ROW("calls", calls, FIELD_NODE, .about = "the radio message"),
};
static const struct field_table file_table = TABLE("a procedure", file_rows);

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

static void file_read(struct procedure_reading *reading, const struct yaml_node *root)
{
    struct procedure_file file = {0};
    struct procedure *procedure = reading->procedure;
    section_read(root, &file_table, &file, reading->arena, reading->problems);
    file.procedure.source = procedure->source;
    *procedure = file.procedure;
    call_when_read(reading, &file.call_when);
    title_sign_check(reading);
    procedure->when = when_read(reading, &file.when);
    steps_read(reading, &file.steps);
    decision_read(reading, &file.decision);
    nevers_read(reading, &file.never);
    cautions_read(reading, &file.cautions);
    calls_read(reading, &file.calls);
    procedure_check(reading);
    voice_words_check(root, reading->arena, reading->problems);
}

const struct procedure *procedure_read(const struct source *source,
                                       const struct authorities *authorities,
                                       struct arena *arena, struct problems *all)
{
    struct problems *problems = problems_part(all);
    struct procedure *procedure = arena_alloc(arena, sizeof *procedure);
    struct procedure_reading reading = {.procedure = procedure, .authorities = authorities,
                                        .arena = arena, .problems = problems};
    const struct yaml_node *root = yaml_tree_read(source, arena, problems);
    procedure->source = source;
    if (root != NULL && root->kind == YAML_MAPPING)
        file_read(&reading, root);
    else
        section_read(root, &file_table, &(struct procedure_file){0}, arena, problems);
    return problems_settle(all, problems) && root != NULL ? procedure : NULL;
}
