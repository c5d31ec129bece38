/* procedure_calls.c - the radio messages of a procedure (room: procedure): English by law, so
 * what they say stands in the logic. Never words anything itself. */
#include "procedure_texts.h"

#include "text.h"

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
                         const struct procedure_call *call)
{
    bool written = call->nature.place.line > 0;
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

static struct procedure_call call_read(const struct procedure_reading *reading,
                                       const struct call_entry *entry)
{
    struct procedure_call call = entry->call;
    call.place = entry->place;
    call.when = when_read(reading, &entry->when);
    english_check("say", &call.say, reading->problems);
    english_check("assist", &call.assist, reading->problems);
    nature_check(reading, &call);
    return call;
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

void calls_read(struct procedure_reading *reading, const struct entries_value *list,
                const struct texts_at *texts)
{
    const struct call_entry *entries = list->items;
    struct procedure_call *calls = arena_array(reading->arena, list->count, sizeof *calls);
    for (size_t i = 0; i < list->count; i++) {
        calls[i] = call_read(reading, &entries[i]);
        gravity_check(reading, calls, i);
    }
    calls_texts_read(reading, calls, list->count, texts);
    reading->procedure->calls = calls;
    reading->procedure->call_count = list->count;
}
