/* procedure_boxes.c - what stands beside the steps (room: procedure): the decision,
 * nevers, cautions and the radio message. Never words anything itself. */
#include "procedure_room.h"

#include "text.h"

struct decision_entry {
    struct decision decision;
    struct node_value yes, no;
};

struct said_entry {
    struct said said;
    struct node_value when;
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
#define SAID_ROW(key, member, field_kind, ...) \
    KEYED(struct said_entry, key, member, field_kind, __VA_ARGS__)
static const struct field exit_rows[] = {
    SAID_ROW("when", when, FIELD_NODE, .about = "boats it is for; left out: all others"),
    SAID_ROW("say", said.say, FIELD_TEXT, .required = true, .about = "what to do"),
    SAID_ROW("card", said.card, FIELD_TEXT, .about = "the card to go on with"),
};
static const struct field call_when_rows[] = {
    SAID_ROW("when", when, FIELD_NODE, .about = "boats it is for; left out: all others"),
    SAID_ROW("say", said.say, FIELD_TEXT, .required = true,
             .about = "who calls when; {id} is the number of a step"),
};
static const struct field never_rows[] = {
    WARNING_ROW("say", warning.say, FIELD_TEXT, .required = true, .about = "what never to do"),
    WARNING_ROW("symbol", warning.symbol, FIELD_CHOICE, .choices = symbol_keys,
                .about = "its sign, of a prohibition"),
    WARNING_ROW("when", when, FIELD_NODE, .about = "boats it is for"),
    WARNING_ROW("sources", warning.basis.sources, FIELD_WORDS, .about = "what it stands on"),
};
static const struct field caution_rows[] = {
    WARNING_ROW("say", warning.say, FIELD_TEXT, .required = true, .about = "the warning"),
    WARNING_ROW("when", when, FIELD_NODE, .about = "boats it is for"),
    WARNING_ROW("sources", warning.basis.sources, FIELD_WORDS, .about = "what it stands on"),
};
static const struct field_table decision_table = TABLE("a decision", decision_rows);
static const struct field_table exit_table = TABLE("the exit of a decision", exit_rows);
static const struct field_table call_when_table = TABLE("the line that says when to call",
                                                         call_when_rows);
static const struct field_table never_table = TABLE("a never", never_rows);
static const struct field_table caution_table = TABLE("a caution", caution_rows);

const char *const signal_words[] = {SIGNAL_LIST(CHOICE_WORD) NULL};
const char *const call_from_words[] = {CALL_FROM_LIST(CHOICE_WORD) NULL};

struct call_entry {
    struct procedure_call call;
    struct node_value when;
};

#define CALL_ROW(key, member, field_kind, ...) \
    KEYED(struct call_entry, key, member, field_kind, __VA_ARGS__)
static const struct field call_rows[] = {
    CALL_ROW("when", when, FIELD_NODE, .about = "boats it is for; left out: all"),
    CALL_ROW("signal", call.signal, FIELD_CHOICE, .required = true, .choices = signal_words,
             .about = "distress, urgency or safety"),
    CALL_ROW("nature", call.nature, FIELD_CHOICE, .choices = nature_words,
             .about = "the nature of distress the set is told"),
    CALL_ROW("say", call.say, FIELD_TEXT, .required = true,
             .about = "what is wrong, in English"),
    CALL_ROW("assist", call.assist, FIELD_TEXT, .about = "the help needed, in English"),
    CALL_ROW("from", call.from, FIELD_CHOICE, .required = true, .choices = call_from_words,
             .about = "the radio it is made from"),
    CALL_ROW("if", call.if_, FIELD_TEXT, .about = "when this call, where a card has several"),
};
static const struct field_table call_table = TABLE("a call", call_rows);

/* ---- words of which one is taken ---- */

/* What follows words without `when` would never be printed; and a boat that none fits
 * still needs words. */
static void said_order_check(const struct procedure_reading *reading, const struct said *items,
                             size_t count, const char *what)
{
    for (size_t i = 0; i < count; i++)
        if (items[i].when == NULL && i + 1 < count)
            problem_add(reading->problems, SEVERITY_ERROR, items[i].place,
                        "make it the last, or give it a when",
                        "a case of %s has no when, so those after it never come", what);
    if (count > 0 && items[count - 1].when != NULL)
        problem_add(reading->problems, SEVERITY_ERROR, items[count - 1].place,
                    "write a last case without when",
                    "%s says nothing to a boat that fits none of its cases", what);
}

static void said_one_read(const struct procedure_reading *reading, const struct yaml_node *node,
                          const struct field_table *table, struct said *out)
{
    struct said_entry entry = {0};
    section_read(node, table, &entry, reading->arena, reading->problems);
    *out = entry.said;
    out->place = node->place;
    out->when = when_read(reading, &entry.when);
}

/* A mapping is a list of one. */
static struct said_list said_read(const struct procedure_reading *reading,
                                  const struct node_value *value, const struct field_table *table)
{
    const struct yaml_node *node = value->node;
    if (node == NULL)
        return (struct said_list){0};
    bool list = node->kind == YAML_SEQUENCE;
    size_t count = list ? node->count : 1;
    struct said *items = arena_array(reading->arena, count, sizeof *items);
    for (size_t i = 0; i < count; i++)
        said_one_read(reading, list ? node->items[i] : node, table, &items[i]);
    said_order_check(reading, items, count, table->what);
    return (struct said_list){items, count};
}

void call_when_read(struct procedure_reading *reading, const struct node_value *node)
{
    reading->procedure->call_when = said_read(reading, node, &call_when_table);
}

void decision_read(struct procedure_reading *reading, const struct node_value *node)
{
    struct decision_entry entry = {0};
    struct decision *decision = &entry.decision;
    if (node->node == NULL)
        return;
    section_read(node->node, &decision_table, &entry, reading->arena, reading->problems);
    decision->yes = said_read(reading, &entry.yes, &exit_table);
    decision->no = said_read(reading, &entry.no, &exit_table);
    decision->given = true;
    decision->place = node->node->place;
    basis_check(reading, &decision->basis, FOOTING_STEP, decision->place, "the decision");
    reading->procedure->decision = *decision;
}

/* ---- nevers and cautions ---- */

static const char *prohibitions_joined(struct arena *arena)
{
    struct text_builder keys = text_builder_in(arena);
    for (int i = SYMBOL_NONE + 1; i < SYMBOL_COUNT; i++) {
        const struct symbol *symbol = symbol_of((enum symbol_key)i);
        if (symbol->sign == SIGN_PROHIBITION)
            text_add_format(&keys, "%s%s", keys.length == 0 ? "" : ", ", symbol->key);
    }
    return keys.at;
}

/* Beside a never any other sign would tell people to do what they must not. */
static void never_sign_check(const struct procedure_reading *reading,
                             const struct symbol_value *written)
{
    const struct symbol *symbol = symbol_of(written->value);
    if (symbol != NULL && symbol->sign != SIGN_PROHIBITION)
        problem_add(reading->problems, SEVERITY_ERROR, written->place,
                    text_format(reading->arena, "write one of: %s",
                                prohibitions_joined(reading->arena)),
                    "the sign %s is no prohibition, but of the class %s", symbol->key,
                    sign_class_word(symbol->sign));
}

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
        never_sign_check(reading, &entry.warning.symbol);
        basis_check(reading, &entry.warning.basis, FOOTING_WARNING, node->place, table->what);
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

static bool from_handheld_alone(const struct procedure_call *call)
{
    return call->from.value == CALL_FROM_HANDHELD ||
           call->from.value == CALL_FROM_HANDHELD_CARRIED;
}

static bool is_mayday(const struct procedure_call *call)
{
    return call->signal.value == SIGNAL_MAYDAY;
}

/* A nature that is written but wrong has been told already. */
static void nature_check(const struct procedure_reading *reading,
                         const struct procedure_call *call, const struct yaml_node *node)
{
    bool written = node->kind == YAML_MAPPING && yaml_get(node, "nature") != NULL;
    if (call->nature.value != NATURE_NONE && call->signal.value != SIGNAL_NONE &&
        !is_mayday(call))
        problem_add(reading->problems, SEVERITY_ERROR, call->nature.place,
                    "take it out: only a distress alert has a nature",
                    "nature %s goes with signal mayday only",
                    choice_word(nature_words, call->nature.value));
    if (!written && is_mayday(call) && call->from.value != CALL_FROM_NONE &&
        !from_handheld_alone(call))
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
    if (count <= 1 && call->if_.text != NULL)
        problem_add(reading->problems, SEVERITY_ERROR, call->if_.place, "take it out",
                    "the card has one call: its if would not be printed");
}

/* One whose signal was refused is none of them. */
static void gravity_check(const struct procedure_reading *reading,
                          const struct procedure_call *calls, size_t index)
{
    enum call_signal first = index == 0 ? SIGNAL_NONE : calls[index - 1].signal.value;
    enum call_signal next = calls[index].signal.value;
    if (next != SIGNAL_NONE && next < first)
        problem_add(reading->problems, SEVERITY_ERROR, calls[index].place,
                    "put the graver call first", "%s stands after the milder %s",
                    choice_word(signal_words, next), choice_word(signal_words, first));
}

void calls_read(struct procedure_reading *reading, const struct node_value *list)
{
    size_t count = entries_count(list, "calls", reading->problems);
    struct procedure_call *calls = arena_array(reading->arena, count, sizeof *calls);
    size_t together = 0;                /* those that every boat has on one card */
    for (size_t i = 0; i < count; i++) {
        const struct yaml_node *node = list->node->items[i];
        struct call_entry entry = {0};
        section_read(node, &call_table, &entry, reading->arena, reading->problems);
        calls[i] = entry.call;
        calls[i].place = node->place;
        calls[i].when = when_read(reading, &entry.when);
        together += calls[i].when == NULL ? 1 : 0;
        english_check("say", &calls[i].say, reading->problems);
        english_check("assist", &calls[i].assist, reading->problems);
        nature_check(reading, &calls[i], node);
        gravity_check(reading, calls, i);
    }
    for (size_t i = 0; i < count; i++)
        if_check(reading, &calls[i], together);
    reading->procedure->calls = calls;
    reading->procedure->call_count = count;
}
