/* fingerprint.c - the short name of a procedure's text in one language (room: compose).
 * Never reads a file. */
#include "fingerprint.h"

#include "approval.h"
#include "radio.h"
#include "sha256.h"
#include "text.h"

#include <string.h>

/* What is gathered, part by part, each with its length. */
struct gathering {
    const struct procedure *procedure;
    const struct authorities *authorities;
    const struct words *words;
    struct text_builder out;
};

static void gather(struct gathering *gathering, const char *text)
{
    const char *part = text == NULL ? "" : text;
    text_add_format(&gathering->out, "%zu:", strlen(part));
    text_add(&gathering->out, part);
}

/* ---- sources ---- */

/* Not the day on which it was read: who reads the same edition once more changes nothing. */
static void authority_gather(struct gathering *gathering, const char *key)
{
    const struct authority *authority = authority_find(gathering->authorities, key);
    gather(gathering, key);
    if (authority == NULL)
        return;
    gather(gathering, authority->issuer.text);
    gather(gathering, authority->id.text);
    gather(gathering, authority->title.text);
    gather(gathering, authority->tag.text);
    text_add_format(&gathering->out, "%d,%d;", (int)authority->status.value,
                    (int)authority->grade.value);
}

static void basis_gather(const struct basis *basis, void *context)
{
    for (size_t i = 0; i < basis->sources.count; i++)
        authority_gather(context, basis->sources.items[i].text);
}

/* ---- gear ---- */

static void uses_gather(struct gathering *gathering, const struct item_uses *uses)
{
    for (size_t i = 0; i < uses->count; i++) {
        const struct item_use *use = &uses->items[i];
        gather(gathering, words_item(gathering->words, use->value));
        gather(gathering, words_items(gathering->words, use->value, 2));
        if (use->state != STATE_ANY)
            gather(gathering, words_state(gathering->words, use->state));
    }
}

static void gear_names_gather(struct gathering *gathering)
{
    const struct procedure *procedure = gathering->procedure;
    for (size_t i = 0; i < procedure->step_count; i++) {
        const struct procedure_step *step = &procedure->steps[i];
        uses_gather(gathering, &step->uses);
        uses_gather(gathering, &step->also);
        for (size_t k = 0; k < step->case_count; k++) {
            uses_gather(gathering, &step->cases[k].uses);
            uses_gather(gathering, &step->cases[k].also);
        }
    }
}

/* ---- what is said on the radio ---- */

/* Each form as a boat says it of which nothing but a name is recorded. */
static void scripts_gather(struct gathering *gathering)
{
    static const struct boat caller = {.facts.name.text = "Wrack"};
    struct arena *arena = gathering->out.arena;
    for (enum script_form form = 0; form < SCRIPT_FORM_COUNT; form++) {
        const struct script_request request = {.form = form};
        const struct script *script = script_make(&request, &caller, NULL, arena,
                                                  problems_new(arena));
        gather(gathering, script == NULL ? NULL : script_text(script, arena));
    }
    for (enum nature_key key = NATURE_NONE + 1; key < NATURE_COUNT; key++)
        gather(gathering, nature_of(key)->phrase);
    for (size_t i = 0; urgency_problem(i) != NULL; i++)
        gather(gathering, urgency_problem(i)->phrase);
    for (size_t i = 0; urgency_need(i) != NULL; i++)
        gather(gathering, urgency_need(i)->phrase);
}

/* ---- the whole ---- */

static const char *texts_sum(const struct procedure *procedure, const char *language)
{
    const struct text_in_language *sum = procedure->text_sums;
    while (sum->text != NULL && !text_equal(sum->language, language))
        sum++;
    return sum->text;
}

static void all_gather(struct gathering *gathering, const char *texts)
{
    const struct procedure *procedure = gathering->procedure;
    gather(gathering, procedure->logic_sum);
    gather(gathering, procedure->origin == PROCEDURE_OF_PROGRAM ? "" : "of a base");
    gather(gathering, words_language(gathering->words));
    gather(gathering, texts);
    procedure_bases(procedure, basis_gather, gathering);
    gear_names_gather(gathering);
    if (sheet_source_of(procedure->kind.value) != FROM_STEPS)
        gather(gathering, words_sum(gathering->words));
    if (procedure->kind.value == SHEET_DISTRESS)
        scripts_gather(gathering);
}

/* The first signs of the sum in capitals, in groups. */
static const char *signs_grouped(const char *sum, struct arena *arena)
{
    struct text_builder out = text_builder_in(arena);
    for (size_t i = 0; i < FINGERPRINT_SIGNS; i++)
        text_add_format(&out, "%s%c", i > 0 && i % FINGERPRINT_GROUP == 0 ? "-" : "",
                        sum[i] >= 'a' ? sum[i] - 'a' + 'A' : sum[i]);
    return out.at;
}

const char *procedure_fingerprint(const struct procedure *procedure,
                                  const struct authorities *authorities,
                                  const struct words *words, struct arena *arena)
{
    const char *texts = texts_sum(procedure, words_language(words));
    char sum[SHA256_TEXT];
    if (texts == NULL)
        return NULL;
    struct gathering gathering = {procedure, authorities, words, text_builder_in(arena)};
    all_gather(&gathering, texts);
    sha256_text((const unsigned char *)gathering.out.at, gathering.out.length, sum);
    return signs_grouped(sum, arena);
}
