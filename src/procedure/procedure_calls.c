/* procedure_calls.c - the radio messages of a procedure (room: procedure): English by law, so
 * what they say stands in the logic. Never words anything itself. */
#include "procedure_texts.h"

#include "text.h"

/* From the gravest down. */
static const char *const signals[] = {"mayday", "pan_pan", "securite", NULL};
const char *const call_froms[] = {
    [CALL_FROM_FIXED] = "fixed", [CALL_FROM_FIXED_IN_FIRE] = "fixed_in_fire",
    [CALL_FROM_DECK_FIRST] = "deck_first", [CALL_FROM_HANDHELD] = "handheld_on_deck",
    [CALL_FROM_HANDHELD_CARRIED] = "handheld_carried", NULL};
/* The natures a DSC set offers (Rec. ITU-R M.493). */
static const char *const natures[] = {
    "fire", "flooding", "collision", "grounding", "listing", "sinking", "adrift",
    "undesignated", "abandon", "piracy", "mob", NULL};

struct call_entry {
    struct procedure_call call;
    struct node_value when;
};

#define CALL_ROW(key, member, field_kind, ...) \
    KEYED(struct call_entry, key, member, field_kind, __VA_ARGS__)
static const struct field call_rows[] = {
    CALL_ROW("id", call.id, FIELD_TEXT,
             .about = "where a card has several: how the texts name it"),
    CALL_ROW("when", when, FIELD_NODE, .about = "boats it is for; left out: all"),
    CALL_ROW("signal", call.signal, FIELD_CHOICE, .required = true, .choices = signals,
             .about = "distress, urgency or safety"),
    CALL_ROW("nature", call.nature, FIELD_CHOICE, .choices = natures,
             .about = "the nature of distress the set is told"),
    CALL_ROW("say", call.say, FIELD_TEXT, .required = true,
             .about = "what is wrong, in English"),
    CALL_ROW("assist", call.assist, FIELD_TEXT, .about = "the help needed, in English"),
    CALL_ROW("from", call.from, FIELD_CHOICE, .required = true, .choices = call_froms,
             .about = "the radio it is made from"),
};
static const struct field_table call_table = LOGIC_TABLE("a call", call_rows);

enum call_from call_from_of(const struct procedure_call *call)
{
    int from = CALL_FROM_FIXED;
    while (call_froms[from] != NULL && !text_equal(call_froms[from], call->from.text))
        from++;
    return call_froms[from] == NULL ? CALL_FROM_FIXED : (enum call_from)from;
}

static bool from_handheld_alone(const struct procedure_call *call)
{
    enum call_from from = call_from_of(call);
    return from == CALL_FROM_HANDHELD || from == CALL_FROM_HANDHELD_CARRIED;
}

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
    if (!written && is_mayday(call) && call->from.text != NULL && !from_handheld_alone(call))
        problem_add(reading->problems, SEVERITY_ERROR, call->place,
                    "write nature: with what the set shall tell, such as nature: fire",
                    "a MAYDAY from the fixed radio needs a nature");
}

/* The word that tells a call from the other stands in the texts, under its id. */
static void call_id_check(const struct procedure_reading *reading,
                          const struct procedure_call *call, size_t count)
{
    if (count > 1 && call->id.text == NULL)
        problem_add(reading->problems, SEVERITY_ERROR, call->place,
                    "write id: and, under that id in the texts, the word that tells this call "
                    "from the other", "a card with several calls needs an id for each");
    if (count <= 1 && call->id.text != NULL)
        problem_add(reading->problems, SEVERITY_ERROR, call->id.place, "take it out",
                    "the card has one call: the words of its id would not be printed");
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

static struct procedure_call call_read(const struct procedure_reading *reading,
                                       const struct yaml_node *node)
{
    struct call_entry entry = {0};
    section_read(node, &call_table, &entry, reading->arena, reading->problems);
    entry.call.place = node->place;
    entry.call.when = when_read(reading, &entry.when);
    english_check("say", &entry.call.say, reading->problems);
    english_check("assist", &entry.call.assist, reading->problems);
    nature_check(reading, &entry.call, node);
    return entry.call;
}

static void calls_texts_read(struct procedure_reading *reading, struct procedure_call *calls,
                             size_t count, const struct texts_at *texts)
{
    const struct text_value **ids = arena_array(reading->arena, count, sizeof *ids);
    struct wanted_list list = {0};
    size_t together = 0;                /* those that every boat has on one card */
    for (size_t i = 0; i < count; i++) {
        ids[i] = &calls[i].id;
        together += calls[i].when == NULL ? 1 : 0;
        if (calls[i].id.text != NULL)
            want(reading, &list, text_by_id(reading, &calls[i].id, &calls[i].if_));
    }
    ids_check(reading, ids, count, "calls");
    texts_read(reading, texts, "a set of texts under calls", list.rows, list.count);
    for (size_t i = 0; i < count; i++)
        call_id_check(reading, &calls[i], together);
}

void calls_read(struct procedure_reading *reading, const struct node_value *list,
                const struct texts_at *texts)
{
    size_t count = entries_count(list, "calls", reading->problems);
    struct procedure_call *calls = arena_array(reading->arena, count, sizeof *calls);
    for (size_t i = 0; i < count; i++) {
        calls[i] = call_read(reading, list->node->items[i]);
        gravity_check(reading, calls, i);
    }
    calls_texts_read(reading, calls, count, texts);
    reading->procedure->calls = calls;
    reading->procedure->call_count = count;
}
