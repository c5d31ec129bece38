/* procedure_boxes.c - what stands beside the steps (room: record): the decision,
 * nevers, cautions and the radio message. Never words anything itself. */
#include "record.h"

#include "text.h"

struct decision_entry {
    struct decision decision;
    struct node_value yes, no;
};

struct warning_entry {
    struct warning warning;
    struct node_value when;
};

#define DECISION_ROW(key, member, field_kind, ...) \
    KEYED(struct decision_entry, key, member, field_kind, __VA_ARGS__)
#define WARNING_ROW(key, member, field_kind, ...) \
    KEYED(struct warning_entry, key, member, field_kind, __VA_ARGS__)

static const struct field decision_rows[] = {
    DECISION_ROW("ask", decision.ask, FIELD_TEXT, .required = true,
                 .about = "a question that looking answers"),
    DECISION_ROW("after", decision.after, FIELD_TEXT, .required = true,
                 .about = "the id of the step after which it is asked"),
    DECISION_ROW("yes", yes, FIELD_NODE, .required = true, .about = "what then"),
    DECISION_ROW("no", no, FIELD_NODE, .required = true, .about = "what then"),
    DECISION_ROW("sources", decision.basis.sources, FIELD_WORDS, .about = "what it stands on"),
    DECISION_ROW("practice", decision.basis.practice, FIELD_ANSWER, .about = "trade practice"),
};
static const struct field exit_rows[] = {
    ROW(struct exit_way, say, FIELD_TEXT, .required = true, .about = "what to do"),
    ROW(struct exit_way, card, FIELD_TEXT, .about = "the card to go on with"),
};
static const struct field never_rows[] = {
    WARNING_ROW("say", warning.say, FIELD_TEXT, .required = true, .about = "what never to do"),
    WARNING_ROW("symbol", warning.symbol, FIELD_CHOICE, .choices = never_symbols,
                .about = "its sign"),
    WARNING_ROW("when", when, FIELD_NODE, .about = "boats it is for"),
    WARNING_ROW("sources", warning.basis.sources, FIELD_WORDS, .about = "what it stands on"),
};
static const struct field caution_rows[] = {
    WARNING_ROW("say", warning.say, FIELD_TEXT, .required = true, .about = "the warning"),
    WARNING_ROW("when", when, FIELD_NODE, .about = "boats it is for"),
    WARNING_ROW("sources", warning.basis.sources, FIELD_WORDS, .about = "what it stands on"),
};
static const struct field_table decision_table = TABLE("decision", decision_rows);
static const struct field_table exit_table = TABLE("exit of a decision", exit_rows);
static const struct field_table never_table = TABLE("never", never_rows);
static const struct field_table caution_table = TABLE("caution", caution_rows);

/* From the gravest down. */
static const char *const signals[] = {"mayday", "pan_pan", "securite", NULL};
static const char *const froms[] = {"fixed", "handheld_on_deck", NULL};
/* The natures a DSC set offers (Rec. ITU-R M.493). */
static const char *const natures[] = {
    "fire", "flooding", "collision", "grounding", "listing", "sinking", "adrift",
    "undesignated", "abandon", "piracy", "mob", NULL};

static const struct field call_rows[] = {
    ROW(struct procedure_call, signal, FIELD_CHOICE, .required = true, .choices = signals,
        .about = "distress, urgency or safety"),
    ROW(struct procedure_call, nature, FIELD_CHOICE, .choices = natures,
        .about = "the nature of distress the set is told"),
    ROW(struct procedure_call, say, FIELD_TEXT, .required = true,
        .about = "what is wrong, in English"),
    ROW(struct procedure_call, assist, FIELD_TEXT, .about = "the help needed, in English"),
    ROW(struct procedure_call, from, FIELD_CHOICE, .required = true, .choices = froms,
        .about = "the radio it is made from"),
    KEYED(struct procedure_call, "if", if_, FIELD_TEXT,
          .about = "when this call, where a card has several"),
};
static const struct field_table call_table = TABLE("call", call_rows);

void decision_read(struct procedure_reading *reading, const struct node_value *node)
{
    struct decision_entry entry = {0};
    struct decision *decision = &entry.decision;
    if (node->node == NULL)
        return;
    section_read(node->node, &decision_table, &entry, reading->arena, reading->problems);
    section_read(entry.yes.node, &exit_table, &decision->yes, reading->arena, reading->problems);
    section_read(entry.no.node, &exit_table, &decision->no, reading->arena, reading->problems);
    decision->given = true;
    decision->place = node->node->place;
    basis_check(reading, &decision->basis, FOOTING_STEP, decision->place, "the decision");
    reading->procedure->decision = *decision;
}

/* ---- nevers and cautions ---- */

static const struct warning *warnings_read(const struct procedure_reading *reading,
                                           const struct node_value *list,
                                           const struct field_table *table, size_t count)
{
    struct warning *warnings = arena_array(reading->arena, count, sizeof *warnings);
    for (size_t i = 0; i < count; i++) {
        struct warning_entry entry = {0};
        const struct yaml_node *node = list->node->items[i];
        section_read(node, table, &entry, reading->arena, reading->problems);
        entry.warning.place = node->place;
        entry.warning.when = when_read(reading, &entry.when);
        basis_check(reading, &entry.warning.basis, FOOTING_WARNING, node->place,
                    text_format(reading->arena, "a %s", table->what));
        warnings[i] = entry.warning;
    }
    return warnings;
}

void nevers_read(struct procedure_reading *reading, const struct node_value *list)
{
    struct procedure *procedure = reading->procedure;
    procedure->never_count = entries_count(list, "never", reading->problems);
    procedure->nevers = warnings_read(reading, list, &never_table, procedure->never_count);
}

void cautions_read(struct procedure_reading *reading, const struct node_value *list)
{
    struct procedure *procedure = reading->procedure;
    procedure->caution_count = entries_count(list, "cautions", reading->problems);
    procedure->cautions = warnings_read(reading, list, &caution_table, procedure->caution_count);
}

/* ---- calls ---- */

static bool is_mayday(const struct procedure_call *call)
{
    return text_equal(call->signal.text, signals[0]);
}

/* A nature that is written but wrong has been told already. */
static void nature_check(const struct procedure_reading *reading,
                         const struct procedure_call *call, const struct yaml_node *node)
{
    bool written = node->kind == YAML_MAPPING && yaml_get(node, "nature") != NULL;
    if (call->nature.text != NULL && call->signal.text != NULL && !is_mayday(call))
        problem_add(reading->problems, SEVERITY_ERROR, call->nature.place,
                    "take it out: only a distress alert has a nature",
                    "nature %s goes with signal mayday only", call->nature.text);
    if (!written && is_mayday(call) && text_equal(call->from.text, froms[0]))
        problem_add(reading->problems, SEVERITY_ERROR, call->place,
                    "write nature: with what the set shall tell, such as nature: fire",
                    "a MAYDAY from the fixed radio needs a nature");
}

static void if_check(const struct procedure_reading *reading, const struct procedure_call *call,
                     size_t count)
{
    if (count > 1 && call->if_.text == NULL)
        problem_add(reading->problems, SEVERITY_ERROR, call->place,
                    "write if: with the word that tells this call from the other",
                    "a card with several calls needs an if in each");
    if (count == 1 && call->if_.text != NULL)
        problem_add(reading->problems, SEVERITY_ERROR, call->if_.place, "take it out",
                    "the card has one call: its if would not be printed");
}

static size_t signal_rank(const struct procedure_call *call)
{
    size_t rank = 0;
    while (signals[rank] != NULL && !text_equal(signals[rank], call->signal.text))
        rank++;
    return rank;
}

static void gravity_check(const struct procedure_reading *reading,
                          const struct procedure_call *calls, size_t index)
{
    if (index > 0 && calls[index].signal.text != NULL && calls[index - 1].signal.text != NULL &&
        signal_rank(&calls[index]) < signal_rank(&calls[index - 1]))
        problem_add(reading->problems, SEVERITY_ERROR, calls[index].place,
                    "put the graver call first", "%s stands after the milder %s",
                    calls[index].signal.text, calls[index - 1].signal.text);
}

void calls_read(struct procedure_reading *reading, const struct node_value *list)
{
    size_t count = entries_count(list, "calls", reading->problems);
    struct procedure_call *calls = arena_array(reading->arena, count, sizeof *calls);
    for (size_t i = 0; i < count; i++) {
        const struct yaml_node *node = list->node->items[i];
        section_read(node, &call_table, &calls[i], reading->arena, reading->problems);
        calls[i].place = node->place;
        english_check("say", &calls[i].say, reading->problems);
        english_check("assist", &calls[i].assist, reading->problems);
        nature_check(reading, &calls[i], node);
        if_check(reading, &calls[i], count);
        gravity_check(reading, calls, i);
    }
    reading->procedure->calls = calls;
    reading->procedure->call_count = count;
}
