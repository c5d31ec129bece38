/* sign_off.c - the sheet by which a qualified person approves a procedure: its head, what stands
 * round its steps, its sources, and where to sign (room: explain). Leaves no text out. */
#include "sign_off_room.h"

#include "fingerprint.h"
#include "reasons.h"

#include <stdarg.h>

/* ---- lines ---- */

void sign_section_begin(struct signing *signing, const char *title)
{
    signing->sections = arena_grow(signing->arena, signing->sections, signing->count,
                                   &signing->room, sizeof *signing->sections);
    signing->sections[signing->count++] = (struct sign_section){.title = title};
    signing->lines = NULL;
    signing->line_room = 0;
}

void sign_add(struct signing *signing, enum sign_line_kind kind, size_t depth,
              const char *format, ...)
{
    struct sign_section *section = &signing->sections[signing->count - 1];
    va_list list;
    va_start(list, format);
    const char *text = text_format_list(signing->arena, format, list);
    va_end(list);
    signing->lines = arena_grow(signing->arena, signing->lines, section->count,
                                &signing->line_room, sizeof *signing->lines);
    signing->lines[section->count++] = (struct sign_line){kind, depth, text};
    section->lines = signing->lines;
}

static const char *text_to_sign(const struct signing *signing, const struct text_value *text)
{
    return text->text == NULL ? NULL : text_for(text, words_language(signing->in->words));
}

void sign_said(struct signing *signing, size_t depth, const char *before,
               const struct text_value *text)
{
    if (text->text != NULL)
        sign_add(signing, SIGN_STRONG, depth, "%s%s", before, text_to_sign(signing, text));
}

void sign_when(struct signing *signing, size_t depth, const struct condition *when)
{
    if (when != NULL)
        sign_add(signing, SIGN_TEXT, depth, "where: %s", condition_words(when, signing->arena));
}

static void source_sign(struct signing *signing, size_t depth, const char *key)
{
    const struct authority *row = authority_find(signing->in->authorities, key);
    if (row == NULL)
        return;
    sign_add(signing, SIGN_BASIS, depth, "source %s: %s, %s, \"%s\"; read %s, %s, grade %s", key,
             TEXT_OR_EMPTY(row->issuer), TEXT_OR_EMPTY(row->id), TEXT_OR_EMPTY(row->title),
             TEXT_OR_EMPTY(row->read), choice_word(source_status_words, row->status.value),
             choice_word(source_grade_words, row->grade.value));
}

void sign_basis(struct signing *signing, size_t depth, const struct basis *basis)
{
    for (size_t i = 0; i < basis->sources.count; i++)
        source_sign(signing, depth, basis->sources.items[i].text);
    if (basis->practice.answer == ANSWER_YES)
        sign_add(signing, SIGN_BASIS, depth, "PRACTICE: no authority's text says it; who signs "
                 "answers for it");
}

/* ---- the head ---- */

static const char *hazards_joined(const struct hazard_values *hazards, struct arena *arena)
{
    struct text_builder out = text_builder_in(arena);
    for (size_t i = 0; i < hazards->count; i++)
        text_add_format(&out, "%s%s", i == 0 ? "" : ", ",
                        choice_word(hazard_words, hazards->items[i].value));
    return out.length == 0 ? "none" : out.at;
}

static void hazards_sign(struct signing *signing)
{
    const struct procedure *procedure = signing->in->procedure;
    sign_add(signing, SIGN_TEXT, 0, "what is so when the card is taken up: %s",
             hazards_joined(&procedure->hazards, signing->arena));
    for (size_t i = 0; i < procedure->hazard_case_count; i++) {
        sign_add(signing, SIGN_TEXT, 0, "and %s",
                 hazards_joined(&procedure->hazard_cases[i].hazards, signing->arena));
        sign_when(signing, 1, procedure->hazard_cases[i].when);
    }
    if (procedure->over.count > 0)
        sign_add(signing, SIGN_TEXT, 0, "what is over by then: %s",
                 hazards_joined(&procedure->over, signing->arena));
}

static void list_sign(struct signing *signing, const char *before, const struct list_value *list)
{
    for (size_t i = 0; i < list->count; i++)
        sign_said(signing, 0, before, &list->items[i]);
}

static void said_list_sign(struct signing *signing, const char *before,
                           const struct said_list *list)
{
    for (size_t i = 0; i < list->count; i++) {
        sign_said(signing, 0, before, &list->items[i].say);
        sign_when(signing, 1, list->items[i].when);
        if (list->items[i].card.text != NULL)
            sign_add(signing, SIGN_TEXT, 1, "goes on with the card %s", list->items[i].card.text);
        sign_basis(signing, 1, &list->items[i].basis);
    }
}

static void head_sign(struct signing *signing)
{
    const struct procedure *procedure = signing->in->procedure;
    sign_section_begin(signing, "The card");
    sign_add(signing, SIGN_TEXT, 0, "procedure %s of %s", procedure->key.text,
             procedure->source->name);
    sign_add(signing, SIGN_TEXT, 0, "%s",
             procedure->origin == PROCEDURE_OF_PROGRAM ? "a card of the program"
             : procedure->origin == PROCEDURE_CHANGED ? "one of the program's, changed by the base"
                                                      : "a card of the base's own");
    sign_add(signing, SIGN_TEXT, 0, "%s",
             procedure->when == NULL ? "every boat has it" : "not every boat has it");
    sign_when(signing, 1, procedure->when);
    sign_said(signing, 1, "else: ", &procedure->when_reason);
    sign_said(signing, 0, "other cards call it: ", &procedure->subject);
    hazards_sign(signing);
    list_sign(signing, "one takes it up when: ", &procedure->signs);
    said_list_sign(signing, "and: ", &procedure->more_signs);
    list_sign(signing, "in the index of cards: ", &procedure->seen);
    said_list_sign(signing, "in a berth: ", &procedure->berth);
    said_list_sign(signing, "at anchor: ", &procedure->anchor);
    said_list_sign(signing, "who calls when: ", &procedure->call_when);
    sign_said(signing, 0, "with gear below deck: ", &procedure->rows_below);
}

/* ---- boxes ---- */

static void decision_sign(struct signing *signing)
{
    const struct decision *decision = &signing->in->procedure->decision;
    if (!decision->given)
        return;
    sign_section_begin(signing, "The question");
    sign_add(signing, SIGN_TEXT, 0, "after the step %s", TEXT_OR_EMPTY(decision->after));
    sign_said(signing, 0, "", &decision->ask);
    sign_basis(signing, 1, &decision->basis);
    said_list_sign(signing, "YES: ", &decision->yes);
    said_list_sign(signing, "NO: ", &decision->no);
}

static void forbids_sign(struct signing *signing, const struct act_values *forbids)
{
    for (size_t i = 0; i < forbids->count; i++)
        sign_add(signing, SIGN_TEXT, 1, "on no later card either: %s",
                 choice_word(act_words, forbids->items[i].value));
}

static void warnings_sign(struct signing *signing, const char *title, const char *before,
                          const struct warning *warnings, size_t count)
{
    if (count > 0)
        sign_section_begin(signing, title);
    for (size_t i = 0; i < count; i++) {
        sign_said(signing, 0, before, &warnings[i].say);
        sign_when(signing, 1, warnings[i].when);
        forbids_sign(signing, &warnings[i].forbids);
        sign_basis(signing, 1, &warnings[i].basis);
    }
}

static void calls_sign(struct signing *signing)
{
    const struct procedure *procedure = signing->in->procedure;
    if (procedure->call_count > 0)
        sign_section_begin(signing, "The call");
    for (size_t i = 0; i < procedure->call_count; i++) {
        const struct procedure_call *call = &procedure->calls[i];
        sign_add(signing, SIGN_STRONG, 0, "%s: %s%s%s",
                 choice_word(signal_words, call->signal.value), TEXT_OR_EMPTY(call->say),
                 call->assist.text == NULL ? "" : ". ", TEXT_OR_EMPTY(call->assist));
        sign_said(signing, 1, "under: ", &call->if_);
        sign_when(signing, 1, call->when);
        if (call->nature.value != NATURE_NONE)
            sign_add(signing, SIGN_TEXT, 1, "nature of distress: %s",
                     choice_word(nature_words, call->nature.value));
        sign_add(signing, SIGN_TEXT, 1, "called from: %s",
                 choice_word(call_from_words, call->from.value));
    }
}

/* ---- where it is signed ---- */

static void signature_sign(struct signing *signing, const char *fingerprint)
{
    static const char *const blanks[] = {"Name", "Initials", "Qualification", "Date",
                                         "Holds until", "Signature"};
    sign_section_begin(signing, "I have read all of this and approve it");
    for (size_t i = 0; i < sizeof blanks / sizeof *blanks; i++)
        sign_add(signing, SIGN_BLANK, 0, "%s", blanks[i]);
    sign_section_begin(signing, "For base.yaml, once it is signed");
    sign_add(signing, SIGN_PASTE, 0, "approvals:");
    sign_add(signing, SIGN_PASTE, 0, "  - {card: %s, text: %s, initials: , qualification: , "
             "date: , until: }", signing->in->procedure->key.text, fingerprint);
}

static void reading_help_sign(struct signing *signing)
{
    sign_section_begin(signing, "How to read it");
    sign_add(signing, SIGN_TEXT, 0, "A step has the words of its first case that is true of the "
             "boat; {names} stand for numbers of steps and cards, or for facts of the boat or the "
             "base. Rows of gear, with places and handling, come from each boat's record. The "
             "words on how to call, and all that stands round the steps of every card, are "
             "approved with the sheet of the distress call.");
}

const struct sign_off *sign_off_compose(const struct sign_off_input *input, struct arena *arena)
{
    const struct procedure *procedure = input->procedure;
    struct signing signing = {.in = input, .arena = arena};
    struct sign_off *made = arena_alloc(arena, sizeof *made);
    *made = (struct sign_off){
        .card = procedure->key.text,
        .title = text_format(arena, "Card %lld, %s (%s)",
                             (long long)(procedure->number.milli / 1000),
                             text_for(&procedure->title, words_language(input->words)),
                             words_language_name(input->words)),
        .fingerprint = procedure_fingerprint(procedure, input->authorities, input->words, arena)};
    reading_help_sign(&signing);
    head_sign(&signing);
    sign_steps(&signing);
    decision_sign(&signing);
    warnings_sign(&signing, "Nobody ever", "never ", procedure->nevers, procedure->never_count);
    warnings_sign(&signing, "Cautions", "", procedure->cautions, procedure->caution_count);
    calls_sign(&signing);
    sign_scripts(&signing);
    sign_words(&signing);
    signature_sign(&signing, made->fingerprint);
    made->sections = signing.sections;
    made->count = signing.count;
    return made;
}
