/* procedure_boxes.c - what stands beside the steps (room: procedure): what to do in a berth
 * and at anchor, who calls when, the decision, nevers and cautions, with their texts. Never words
 * anything itself. */
#include "procedure_texts.h"

#include "text.h"

/* ---- words of which one is taken ---- */

/* One without an id stands alone. */
static bool is_alone(const struct entries_value *list)
{
    const struct said_entry *entries = list->items;
    return list->count == 1 && entries[0].said.id.text == NULL;
}

struct wanted_text said_wanted(const struct field *row, const struct entries_value *logic,
                               struct said_texts *into)
{
    struct wanted_text wanted = {.field = *row, .naming = into->naming};
    wanted.field.required = true;
    wanted.field.kind = is_alone(logic) ? FIELD_TEXT : FIELD_NODE;
    if (is_alone(logic))
        wanted.text = &into->one;
    else
        wanted.inside = &into->several;
    return wanted;
}

/* What follows words without `when` would never be printed. */
static void said_order_check(const struct procedure_reading *reading, const struct said *items,
                             size_t count, const char *what)
{
    for (size_t i = 0; i < count; i++)
        if (items[i].when == NULL && i + 1 < count)
            problem_add(reading->problems, SEVERITY_ERROR, items[i].place,
                        "make it the last, or give it a when",
                        "a case of %s has no when, so those after it never come", what);
}

/* A boat that none of the cases fits still needs words. */
static void said_end_check(const struct procedure_reading *reading,
                           const struct said_list *said, const char *what)
{
    const struct said *last = said->count == 0 ? NULL : &said->items[said->count - 1];
    if (last != NULL && last->when != NULL)
        problem_add(reading->problems, SEVERITY_ERROR, last->place,
                    "write a last case without when",
                    "%s says nothing to a boat that fits none of its cases", what);
}

/* Each of several has its words under its id. */
static void said_texts_read(struct procedure_reading *reading, struct said *items, size_t count,
                            const struct said_texts *texts, const char *what)
{
    const struct text_value **ids = arena_array(reading->arena, count, sizeof *ids);
    struct wanted_list list = {0};
    for (size_t i = 0; i < count; i++) {
        ids[i] = &items[i].id;
        if (items[i].id.text == NULL) {
            problem_add(reading->problems, SEVERITY_ERROR, items[i].place,
                        "write id: with a short name, and its words under that name in the texts",
                        "a case of %s has no id", what);
            continue;
        }
        struct wanted_text wanted = text_by_id(reading, &items[i].id, &items[i].say);
        wanted.naming = texts->naming;
        want(reading, &list, wanted);
    }
    ids_check(reading, ids, count, "its cases");
    texts_read(reading, &texts->several, "a set of texts by case", list.rows, list.count);
}

/* Words for some boats; another has none. `what` is the whole in messages. */
static struct said_list said_for_some_read(struct procedure_reading *reading,
                                           const struct entries_value *list,
                                           const struct said_texts *texts, const char *what)
{
    const struct said_entry *entries = list->items;
    struct said *items = arena_array(reading->arena, list->count, sizeof *items);
    for (size_t i = 0; i < list->count; i++) {
        items[i] = entries[i].said;
        items[i].place = entries[i].place;
        items[i].when = when_read(reading, &entries[i].when);
    }
    if (is_alone(list))
        items[0].say = texts->one;
    else
        said_texts_read(reading, items, list->count, texts, what);
    said_order_check(reading, items, list->count, what);
    return (struct said_list){items, list->count};
}

/* Words for every boat. */
static struct said_list said_read(struct procedure_reading *reading,
                                  const struct entries_value *list,
                                  const struct said_texts *texts, const char *what)
{
    struct said_list said = said_for_some_read(reading, list, texts, what);
    said_end_check(reading, &said, what);
    return said;
}

void more_signs_read(struct procedure_reading *reading, const struct entries_value *list,
                     const struct said_texts *texts)
{
    reading->procedure->more_signs = said_for_some_read(reading, list, texts, "the sign more");
}

void call_when_read(struct procedure_reading *reading, const struct entries_value *list,
                    const struct said_texts *texts)
{
    reading->procedure->call_when =
        said_read(reading, list, texts, "the line that says when to call");
}

/* What people do where help is near stands on something, as what they do at a step does. */
static struct said_list ashore_read(struct procedure_reading *reading,
                                    const struct entries_value *list,
                                    const struct said_texts *texts, const char *what)
{
    struct said_list said = said_read(reading, list, texts, what);
    for (size_t i = 0; i < said.count; i++)
        basis_check(reading, &said.items[i].basis, FOOTING_STEP, said.items[i].place, what);
    return said;
}

void berth_read(struct procedure_reading *reading, const struct entries_value *list,
                const struct said_texts *texts)
{
    reading->procedure->berth = ashore_read(reading, list, texts, "the line for a berth");
}

void anchor_read(struct procedure_reading *reading, const struct entries_value *list,
                 const struct said_texts *texts)
{
    reading->procedure->anchor = ashore_read(reading, list, texts, "the line for an anchorage");
}

static void exits_read(struct procedure_reading *reading, const struct decision_entry *entry,
                       const struct texts_at *texts, struct decision *decision)
{
    struct said_texts yes = {.naming = NAMES_STEPS_AND_CARDS}, no = yes;
    struct wanted_list list = {0};
    want(reading, &list, text_under(&decision_texts.fields[DECISION_ASK], &decision->ask));
    if (entry->yes.count > 0)
        want(reading, &list,
             said_wanted(&decision_texts.fields[DECISION_YES], &entry->yes, &yes));
    if (entry->no.count > 0)
        want(reading, &list, said_wanted(&decision_texts.fields[DECISION_NO], &entry->no, &no));
    texts_read(reading, texts, decision_texts.what, list.rows, list.count);
    decision->yes = said_read(reading, &entry->yes, &yes, "the exit of a decision");
    decision->no = said_read(reading, &entry->no, &no, "the exit of a decision");
}

void decision_read(struct procedure_reading *reading, const struct procedure_logic *logic,
                   const struct texts_at *texts)
{
    struct decision *decision = &reading->procedure->decision;
    if (!logic->decision.given)
        return;
    *decision = logic->decided.decision;
    exits_read(reading, &logic->decided, texts, decision);
    decision->given = true;
    decision->place = logic->decision.place;
    basis_check(reading, &decision->basis, FOOTING_STEP, decision->place, "the decision");
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

/* Nevers or cautions, as `key` says. */
struct warnings {
    const char *key;
    struct warning *items;
    size_t count;
};

static void warnings_texts_read(struct procedure_reading *reading,
                                const struct warnings *warnings, const struct texts_at *texts)
{
    const struct text_value **ids = arena_array(reading->arena, warnings->count, sizeof *ids);
    const char *what = text_format(reading->arena, "a set of texts under %s", warnings->key);
    struct wanted_list list = {0};
    for (size_t i = 0; i < warnings->count; i++) {
        struct warning *warning = &warnings->items[i];
        ids[i] = &warning->id;
        if (warning->id.text != NULL)
            want(reading, &list, text_by_id(reading, &warning->id, &warning->say));
    }
    ids_check(reading, ids, warnings->count, warnings->key);
    texts_read(reading, texts, what, list.rows, list.count);
}

/* `what` is one of them in messages. */
static struct warnings warnings_read(const struct procedure_reading *reading,
                                     const struct entries_value *list, const char *key,
                                     const char *what)
{
    const struct warning_entry *entries = list->items;
    struct warnings warnings = {
        key, arena_array(reading->arena, list->count, sizeof *warnings.items), list->count};
    for (size_t i = 0; i < list->count; i++) {
        struct warning *warning = &warnings.items[i];
        *warning = entries[i].warning;
        warning->place = entries[i].place;
        warning->when = when_read(reading, &entries[i].when);
        never_sign_check(reading, &warning->symbol);
        basis_check(reading, &warning->basis, FOOTING_WARNING, warning->place, what);
    }
    return warnings;
}

void nevers_read(struct procedure_reading *reading, const struct entries_value *list,
                 const struct texts_at *texts)
{
    const struct warnings nevers = warnings_read(reading, list, "never", "a never");
    warnings_texts_read(reading, &nevers, texts);
    reading->procedure->nevers = nevers.items;
    reading->procedure->never_count = nevers.count;
}

void cautions_read(struct procedure_reading *reading, const struct entries_value *list,
                   const struct texts_at *texts)
{
    const struct warnings cautions = warnings_read(reading, list, "cautions", "a caution");
    warnings_texts_read(reading, &cautions, texts);
    reading->procedure->cautions = cautions.items;
    reading->procedure->caution_count = cautions.count;
}
