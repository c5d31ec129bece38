/* procedure_check.c - what only the whole procedure shows (room: procedure): how
 * many of each, and steps that are named but do not exist. Never mends. */
#include "procedure_texts.h"

#include "text.h"

enum { MOST_STEPS = 8, MOST_NEVERS = 3, MOST_CAUTIONS = 3 };

/* Warnings that some boats alone have may exclude each other: the page is judged again when
 * it is proofread. */
static size_t for_every_boat(const struct warning *warnings, size_t count)
{
    size_t every = 0;
    for (size_t i = 0; i < count; i++)
        every += warnings[i].when == NULL ? 1 : 0;
    return every;
}

static bool is_from_record(const struct procedure *procedure)
{
    return sheet_source_of(procedure->kind.value) != FROM_STEPS;
}

static void whole_tell(const struct procedure_reading *reading, const char *remedy,
                       const char *what)
{
    const struct procedure *procedure = reading->procedure;
    problem_add(reading->problems, SEVERITY_ERROR,
                place_or(procedure->key.place, source_whole(procedure->source)), remedy, "%s",
                what);
}

static bool is_plain_key(const char *text)
{
    bool plain = text[0] >= 'a' && text[0] <= 'z';
    for (size_t i = 0; plain && text[i] != '\0'; i++)
        plain = (text[i] >= 'a' && text[i] <= 'z') || (text[i] >= '0' && text[i] <= '9') ||
                text[i] == '_';
    return plain;
}

static void key_check(const struct procedure_reading *reading)
{
    const struct text_value *key = &reading->procedure->key;
    if (key->text != NULL && !is_plain_key(key->text))
        problem_add(reading->problems, SEVERITY_ERROR, key->place,
                    "write small letters, digits and _, a letter first: files are named by it",
                    "procedure \"%s\" is not a plain key", key->text);
}

static void too_many_tell(const struct procedure_reading *reading, size_t count, size_t most,
                          struct place place, const char *what)
{
    if (count > most)
        problem_add(reading->problems, SEVERITY_ERROR, place, "keep those that save most lives",
                    "%zu %s: a card holds at most %zu", count, what, most);
}

static void numbers_check(const struct procedure_reading *reading)
{
    const struct procedure *procedure = reading->procedure;
    if (procedure->step_count > MOST_STEPS)
        too_many_tell(reading, procedure->step_count, MOST_STEPS,
                      procedure->steps[MOST_STEPS].place, "steps");
    size_t nevers = for_every_boat(procedure->nevers, procedure->never_count);
    size_t cautions = for_every_boat(procedure->cautions, procedure->caution_count);
    if (nevers > MOST_NEVERS)
        too_many_tell(reading, nevers, MOST_NEVERS, procedure->nevers[MOST_NEVERS].place,
                      "nevers");
    if (is_from_record(procedure))
        return;
    if (cautions > MOST_CAUTIONS)
        too_many_tell(reading, cautions, MOST_CAUTIONS, procedure->cautions[MOST_CAUTIONS].place,
                      "cautions");
    if (procedure->caution_count == 0)
        whole_tell(reading, "write cautions: with one to three warnings of authorities",
                   "the procedure has no caution");
    if (procedure->step_count == 0)
        whole_tell(reading, "write steps: with what to do, in order",
                   "the procedure has no steps");
}

/* What these cards do not print must not be written as if they did. */
static void from_record_check(const struct procedure_reading *reading)
{
    const struct procedure *procedure = reading->procedure;
    if (!is_from_record(procedure))
        return;
    if (procedure->step_count > 0 || procedure->decision.given || procedure->call_count > 0)
        whole_tell(reading, "take them out: its texts come from the boat's record",
                   text_format(reading->arena, "a card of the kind %s has no steps, decision "
                               "or calls",
                               choice_word(sheet_kind_words, procedure->kind.value)));
    if (sheet_source_of(procedure->kind.value) == FROM_RECORD &&
        (procedure->never_count > 0 || procedure->caution_count > 0 || procedure->when != NULL))
        whole_tell(reading, "take them out: every boat has one, and it only shows where gear is",
                   text_format(reading->arena, "a card of the kind %s has no never, cautions or "
                               "when",
                               choice_word(sheet_kind_words, procedure->kind.value)));
}

bool procedure_has_step(const struct procedure *procedure, const char *id)
{
    for (size_t i = 0; i < procedure->step_count; i++)
        if (text_equal(procedure->steps[i].id.text, id))
            return true;
    return false;
}

static const char *nearest_step(const struct procedure_reading *reading, const char *id)
{
    const struct procedure *procedure = reading->procedure;
    const char **ids = arena_array(reading->arena, procedure->step_count, sizeof *ids);
    for (size_t i = 0; i < procedure->step_count; i++)
        ids[i] = procedure->steps[i].id.text;
    return text_nearest_remedy(reading->arena, id, ids, procedure->step_count,
                               "write the id of a step of this procedure");
}

static void step_name_check(const struct procedure_reading *reading, const char *key,
                            const struct text_value *id)
{
    if (id->text == NULL || procedure_has_step(reading->procedure, id->text))
        return;
    problem_add(reading->problems, SEVERITY_ERROR, id->place, nearest_step(reading, id->text),
                "%s: no step is called %s", key, id->text);
}

static void id_unique_check(const struct procedure_reading *reading,
                            const struct text_value *const *ids, size_t index, const char *key)
{
    const struct text_value *id = ids[index];
    for (size_t i = 0; i < index; i++)
        if (text_equal(ids[i]->text, id->text) && ids[i]->place.line > 0) {
            problem_add(reading->problems, SEVERITY_ERROR, id->place,
                        "give each an id of its own",
                        "id %s stands twice under %s (first on line %d)", id->text, key,
                        ids[i]->place.line);
            return;
        }
}

void ids_check(const struct procedure_reading *reading, const struct text_value *const *ids,
               size_t count, const char *key)
{
    for (size_t i = 0; i < count; i++) {
        if (ids[i]->text == NULL || ids[i]->place.line == 0)
            continue;
        if (!is_plain_key(ids[i]->text))
            problem_add(reading->problems, SEVERITY_ERROR, ids[i]->place,
                        "write small letters, digits and _, a letter first",
                        "id \"%s\" is not a plain name", ids[i]->text);
        id_unique_check(reading, ids, i, key);
    }
}

static bool shows_also(const struct procedure *procedure, enum item_key item)
{
    for (size_t i = 0; i < procedure->step_count; i++) {
        const struct procedure_step *step = &procedure->steps[i];
        if (item_use_find(&step->also, item) != NULL)
            return true;
        for (size_t k = 0; k < step->case_count; k++)
            if (item_use_find(&step->cases[k].also, item) != NULL)
                return true;
    }
    return false;
}

/* What no step shows `also` holds the card wherever it is named, or is not named at all. */
static void must_know_check(const struct procedure_reading *reading)
{
    const struct item_values *items = &reading->procedure->must_know;
    for (size_t i = 0; i < items->count; i++)
        if (!shows_also(reading->procedure, items->items[i].value))
            problem_add(reading->problems, SEVERITY_ERROR, items->items[i].place,
                        "take it out, or name it under also in the step that shows it",
                        "must_know: no step shows %s also",
                        item_word(items->items[i].value));
}

/* What no message says is reported to nobody. */
static void reports_check(const struct procedure_reading *reading)
{
    const struct procedure *procedure = reading->procedure;
    for (size_t i = 0; procedure->call_count == 0 && i < procedure->step_count; i++)
        for (size_t k = 0; k < procedure->steps[i].case_count; k++) {
            const struct text_value *report = &procedure->steps[i].cases[k].report;
            if (report->text != NULL)
                problem_add(reading->problems, SEVERITY_ERROR, report->place,
                            "take it out, or write calls: with the message",
                            "report: the procedure has no call that could say it");
        }
}

static void calling_check(const struct procedure_reading *reading)
{
    const struct procedure *procedure = reading->procedure;
    if (procedure->call_count > 0 && procedure->call_when.count == 0)
        whole_tell(reading, "write call_when: {} and, in the texts, who calls when",
                   "the procedure has a call but no call_when");
    if (procedure->call_count == 0 && procedure->call_when.count > 0)
        problem_add(reading->problems, SEVERITY_ERROR, procedure->call_when.items[0].place,
                    "write calls: with the message, or take call_when out",
                    "the procedure says when to call but has no call");
}

void procedure_check(const struct procedure_reading *reading)
{
    const struct procedure *procedure = reading->procedure;
    key_check(reading);
    numbers_check(reading);
    from_record_check(reading);
    step_name_check(reading, "after", &procedure->decision.after);
    calling_check(reading);
    reports_check(reading);
    must_know_check(reading);
    over_check(reading);
}
