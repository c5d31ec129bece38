/* procedure_boxes.c - what stands beside the steps (room: procedure): who calls when, the
 * decision, nevers and cautions, with their texts. Never words anything itself. */
#include "procedure_texts.h"

#include "text.h"

#define DECISION_ROW(key, member, field_kind, ...) \
    KEYED(struct decision_entry, key, member, field_kind, __VA_ARGS__)
#define WARNING_ROW(key, member, field_kind, ...) \
    KEYED(struct warning_entry, key, member, field_kind, __VA_ARGS__)

#define SAID_ROW(key, member, field_kind, ...) \
    KEYED(struct said_entry, key, member, field_kind, __VA_ARGS__)
static const struct field exit_rows[] = {
    SAID_ROW("id", said.id, FIELD_TEXT, .about = "how the texts name it, where it has cases"),
    SAID_ROW("when", when, FIELD_NODE, .about = "boats it is for; left out: all others"),
    SAID_ROW("card", said.card, FIELD_TEXT, .about = "the card to go on with"),
};
static const struct field call_when_rows[] = {
    SAID_ROW("id", said.id, FIELD_TEXT, .about = "how the texts name it, where it has cases"),
    SAID_ROW("when", when, FIELD_NODE, .about = "boats it is for; left out: all others"),
};
static const struct field never_rows[] = {
    WARNING_ROW("id", warning.id, FIELD_TEXT, .required = true,
                .about = "how the texts name it"),
    WARNING_ROW("symbol", warning.symbol, FIELD_CHOICE, .choices = symbol_keys,
                .about = "its sign, of a prohibition"),
    WARNING_ROW("when", when, FIELD_NODE, .about = "boats it is for"),
    WARNING_ROW("sources", warning.basis.sources, FIELD_WORDS, .about = "what it stands on"),
};
static const struct field caution_rows[] = {
    WARNING_ROW("id", warning.id, FIELD_TEXT, .required = true,
                .about = "how the texts name it"),
    WARNING_ROW("when", when, FIELD_NODE, .about = "boats it is for"),
    WARNING_ROW("sources", warning.basis.sources, FIELD_WORDS, .about = "what it stands on"),
};
static const struct field_table exit_table = LOGIC_TABLE("the exit of a decision", exit_rows);
#define EXITS ENTRIES_OF(struct said_entry, .table = &exit_table, .one_or_many = true)

static const struct field decision_rows[] = {
    DECISION_ROW("after", decision.after, FIELD_TEXT, .required = true,
                 .about = "the id of the step after which it is asked"),
    DECISION_ROW("yes", yes, FIELD_ENTRIES, EXITS, .required = true, .about = "what then"),
    DECISION_ROW("no", no, FIELD_ENTRIES, EXITS, .required = true, .about = "what then"),
    DECISION_ROW("sources", decision.basis.sources, FIELD_WORDS, .about = "what it stands on"),
    DECISION_ROW("practice", decision.basis.practice, FIELD_ANSWER, .about = "trade practice"),
};
const struct field_table decision_table = LOGIC_TABLE("a decision", decision_rows);
const struct field_table call_when_table = LOGIC_TABLE("the line that says when to call",
                                                       call_when_rows);
const struct field_table never_table = LOGIC_TABLE("a never", never_rows);
const struct field_table caution_table = LOGIC_TABLE("a caution", caution_rows);

/* The texts of a decision. */
enum decision_text { DECISION_ASK, DECISION_YES, DECISION_NO };
static const struct field decision_texts[] = {
    [DECISION_ASK] = {.key = "ask", .kind = FIELD_TEXT, .required = true,
                      .about = "a question that looking answers"},
    [DECISION_YES] = {.key = "yes", .kind = FIELD_NODE, .about = "what then"},
    [DECISION_NO] = {.key = "no", .kind = FIELD_NODE, .about = "what then"},
};

/* ---- words of which one is taken ---- */

struct wanted_text said_wanted(const struct field *row, const struct entries_value *logic,
                               struct said_texts *into)
{
    struct wanted_text wanted = {.field = *row, .naming = NAMES_STEPS_AND_CARDS};
    bool several = !logic->alone;
    wanted.field.required = true;
    wanted.field.kind = several ? FIELD_NODE : FIELD_TEXT;
    if (several)
        wanted.inside = &into->several;
    else
        wanted.text = &into->one;
    return wanted;
}

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

static struct said said_settled(const struct procedure_reading *reading,
                                const struct said_entry *entry)
{
    struct said said = entry->said;
    said.place = entry->place;
    said.when = when_read(reading, &entry->when);
    return said;
}

/* Each of several has its words under its id. */
static void said_texts_read(struct procedure_reading *reading, struct said *items, size_t count,
                            const struct texts_at *texts, const char *what)
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
        wanted.naming = NAMES_STEPS_AND_CARDS;
        want(reading, &list, wanted);
    }
    ids_check(reading, ids, count, "its cases");
    texts_read(reading, texts, "a set of texts by case", list.rows, list.count);
}

static void one_id_check(const struct procedure_reading *reading, const struct said *one)
{
    if (one->id.text != NULL)
        problem_add(reading->problems, SEVERITY_ERROR, one->id.place,
                    "take it out: the one text stands without", "an id where there are no cases");
}

/* A mapping is a list of one, whose text stands without an id. `what`: its table's name. */
static struct said_list said_take(struct procedure_reading *reading,
                                  const struct entries_value *list, const char *what,
                                  const struct said_texts *texts)
{
    const struct said_entry *entries = list->items;
    struct said *items = arena_array(reading->arena, list->count, sizeof *items);
    for (size_t i = 0; i < list->count; i++)
        items[i] = said_settled(reading, &entries[i]);
    if (list->alone) {
        items[0].say = texts->one;
        one_id_check(reading, &items[0]);
    } else {
        said_texts_read(reading, items, list->count, &texts->several, what);
    }
    said_order_check(reading, items, list->count, what);
    return (struct said_list){items, list->count};
}

void call_when_take(struct procedure_reading *reading, const struct entries_value *lines,
                    const struct said_texts *texts)
{
    if (lines->given)
        reading->procedure->call_when =
            said_take(reading, lines, call_when_table.what, texts);
}

static void exits_take(struct procedure_reading *reading, const struct decision_entry *entry,
                       const struct texts_at *texts, struct decision *decision)
{
    struct said_texts yes = {0}, no = {0};
    struct wanted_list list = {0};
    want(reading, &list, (struct wanted_text){.field = decision_texts[DECISION_ASK],
                                              .text = &decision->ask});
    if (entry->yes.given)
        want(reading, &list, said_wanted(&decision_texts[DECISION_YES], &entry->yes, &yes));
    if (entry->no.given)
        want(reading, &list, said_wanted(&decision_texts[DECISION_NO], &entry->no, &no));
    texts_read(reading, texts, "a decision", list.rows, list.count);
    decision->yes = said_take(reading, &entry->yes, exit_table.what, &yes);
    decision->no = said_take(reading, &entry->no, exit_table.what, &no);
}

void decision_take(struct procedure_reading *reading, const struct decision_entry *entry,
                   const struct texts_at *texts)
{
    struct decision *decision = &reading->procedure->decision;
    if (!entry->section.given)
        return;
    *decision = entry->decision;
    exits_take(reading, entry, texts, decision);
    decision->given = true;
    decision->place = entry->section.place;
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

/* Nevers or cautions, as `table` has it. */
struct warnings {
    const struct field_table *table;
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

static struct warnings warnings_take(struct procedure_reading *reading,
                                     const struct entries_value *list,
                                     const struct field_table *table, const char *key)
{
    const struct warning_entry *entries = list->items;
    struct warnings warnings = {
        table, key, arena_array(reading->arena, list->count, sizeof *warnings.items),
        list->count};
    for (size_t i = 0; i < list->count; i++) {
        struct warning *warning = &warnings.items[i];
        *warning = entries[i].warning;
        warning->place = entries[i].place;
        warning->when = when_read(reading, &entries[i].when);
        never_sign_check(reading, &warning->symbol);
        basis_check(reading, &warning->basis, FOOTING_WARNING, warning->place, table->what);
    }
    return warnings;
}

void nevers_take(struct procedure_reading *reading, const struct entries_value *list,
                 const struct texts_at *texts)
{
    const struct warnings nevers = warnings_take(reading, list, &never_table, "never");
    warnings_texts_read(reading, &nevers, texts);
    reading->procedure->nevers = nevers.items;
    reading->procedure->never_count = nevers.count;
}

void cautions_take(struct procedure_reading *reading, const struct entries_value *list,
                   const struct texts_at *texts)
{
    const struct warnings cautions = warnings_take(reading, list, &caution_table, "cautions");
    warnings_texts_read(reading, &cautions, texts);
    reading->procedure->cautions = cautions.items;
    reading->procedure->caution_count = cautions.count;
}
