/* boxes.c - signs, the line that says when to call, decision, nevers, cautions
 * and the base's own rules (room: compose). */
#include "berth.h"
#include "card_set.h"

const struct phrase *signs_joined(struct composing *composing, const struct sheet *sheet)
{
    const struct list_value *signs = &composing->slot->procedure->signs;
    const struct said *more = said_take(composing, &composing->slot->procedure->more_signs);
    const struct phrase **phrases =
        arena_array(composing->arena, signs->count + 1, sizeof *phrases);
    size_t count = 0;
    for (; count < signs->count; count++)
        phrases[count] = numbers_fill(composing, sheet, &signs->items[count]);
    if (more != NULL)
        phrases[count++] = numbers_fill(composing, sheet, &more->say);
    return phrase_list(composing->arena, WORD_JOIN_DOT, phrases, count);
}

/* A procedure names a step that this boat's card may lack: then the card is
 * wrong as it stands, and it is held. */
static int number_of_step(struct composing *composing, const struct sheet *sheet,
                          const struct text_value *id)
{
    const struct card_step *step = step_by_id(sheet_steps(sheet), id->text);
    if (step != NULL)
        return step->number;
    composing->held = true;
    problem_add(composing->problems, SEVERITY_HELD, id->place,
                "name a step that stands on the card of every boat",
                "%s: the step %s is not on this boat's card", sheet->name, id->text);
    return 0;
}

/* NULL where it says nothing. */
static const struct phrase *call_line(struct composing *composing, const struct sheet *sheet)
{
    const struct said *said = said_take(composing, &composing->slot->procedure->call_when);
    return said == NULL ? NULL : numbers_fill(composing, sheet, &said->say);
}

static void exit_refuse(struct composing *composing, const struct said *said)
{
    composing->held = true;
    if (left_out_tell(composing, said->card.text))
        return;
    problem_add(composing->problems, SEVERITY_HELD, said->card.place,
                "lead to a card that belongs to the set of every boat",
                "%s: the card %s is not in this boat's set", composing->slot->name,
                said->card.text);
}

/* What the exit says, and the card it leads to by number and name. */
static const struct phrase *exit_phrase(struct composing *composing, const struct sheet *sheet,
                                        const struct said *said)
{
    struct arena *arena = composing->arena;
    if (said == NULL)
        return word_alone(composing, WORD_NOT_RECORDED);
    const struct phrase *words = numbers_fill(composing, sheet, &said->say);
    const struct slot *slot = slot_of(composing, said->card.text);
    if (said->card.text != NULL && slot == NULL)
        exit_refuse(composing, said);
    if (slot == NULL)
        return words;
    const struct phrase *card = phrase_word(
        arena, WORD_SEE_CARD, "number", card_numbers(composing, said->card.text), "subject",
        phrase_text(arena, &slot->procedure->subject), NULL);
    return phrase_word(arena, WORD_EXIT_CARD, "say", words, "card", card, NULL);
}

const struct slot *distress_slot(const struct composing *composing)
{
    for (size_t i = 0; i < composing->slot_count; i++)
        if (composing->slots[i].procedure->kind.value == SHEET_DISTRESS)
            return &composing->slots[i];
    return NULL;
}

/* The words of a milder call can yield: they stand on the distress card. NULL: there are none, or
 * no such card. */
static const char *urgency_exit(struct composing *composing, const struct phrase *no)
{
    const struct slot *distress = distress_slot(composing);
    if (distress == NULL || !card_has_milder_call(composing))
        return NULL;
    return phrase_said(composing,
                       phrase_word(composing->arena, WORD_URGENCY_CARD, "say", no, "number",
                                   phrase_verbatim(composing->arena, distress->number), NULL));
}

static const struct phrase *question(struct composing *composing, const struct sheet *sheet,
                                     const struct decision *decision)
{
    return phrase_word(composing->arena, WORD_AFTER_STEP, "step",
                       phrase_number(composing->arena,
                                     number_of_step(composing, sheet, &decision->after)),
                       "ask", phrase_text(composing->arena, &decision->ask), NULL);
}

static void decision_make(struct composing *composing, struct sheet *sheet)
{
    const struct decision *decision = &composing->slot->procedure->decision;
    if (!decision->given)
        return;
    const struct said *yes = said_take(composing, &decision->yes);
    const struct said *no = said_take(composing, &decision->no);
    const struct phrase *no_words = exit_phrase(composing, sheet, no);
    struct decision_facts *facts = arena_alloc(composing->arena, sizeof *facts);
    *facts = (struct decision_facts){
        .yes_word = phrase_said(composing, word_alone(composing, WORD_YES)),
        .no_word = phrase_said(composing, word_alone(composing, WORD_NO)),
        .ask = phrase_said(composing, question(composing, sheet, decision)),
        .yes = phrase_said(composing, exit_phrase(composing, sheet, yes)),
        .no = phrase_said(composing, no_words),
        .no_lesser = urgency_exit(composing, no_words),
        .yes_card = yes == NULL ? NULL : yes->card.text,
        .no_card = no == NULL ? NULL : no->card.text,
        .origin = said_place(composing, &decision->ask)};
    block_add(composing, sheet, BLOCK_DECISION)->decision = facts;
}

const struct authority *basis_authority(const struct composing *composing,
                                        const struct basis *basis)
{
    const struct authority *found = NULL;
    for (size_t i = basis->sources.count; i-- > 0;) {
        const struct authority *authority = authority_find(composing->in->authorities,
                                                           basis->sources.items[i].text);
        if (authority != NULL &&
            (found == NULL || authority->status.value == SOURCE_CURRENT))
            found = authority;
    }
    return found;
}

/* None is added where none is for this boat. */
static void warnings_add(struct composing *composing, struct sheet *sheet, enum block_key key,
                         struct warnings_facts warnings)
{
    struct warnings_facts *facts = arena_alloc(composing->arena, sizeof *facts);
    *facts = warnings;
    if (facts->count > 0)
        block_add(composing, sheet, key)->warnings = facts;
}

static struct warnings_facts warnings_of(struct composing *composing, enum word word,
                                         const struct warning *warnings, size_t given)
{
    struct card_warning *out = arena_array(composing->arena, given, sizeof *out);
    struct warnings_facts facts = {.word = phrase_said(composing, word_alone(composing, word)),
                                   .items = out};
    for (size_t i = 0; i < given; i++) {
        const struct authority *source = basis_authority(composing, &warnings[i].basis);
        if (condition_judge(composing, warnings[i].when) != TRUTH_NO)
            out[facts.count++] = (struct card_warning){
                .text = phrase_said(composing, phrase_text(composing->arena, &warnings[i].say)),
                .symbol = warnings[i].symbol.value,
                .tag = source == NULL ? "" : source->tag.text, .source = source,
                .origin = said_place(composing, &warnings[i].say)};
    }
    return facts;
}

static struct warnings_facts own_lines_of(struct composing *composing,
                                          const struct sheet *sheet)
{
    const struct compose_input *in = composing->in;
    struct card_warning *out = arena_array(composing->arena, in->base->own_lines.count +
                                           in->boat->own_lines.count, sizeof *out);
    struct warnings_facts facts = {.word = phrase_said(composing,
                                                       word_alone(composing, WORD_OWN_LINE)),
                                   .items = out};
    const struct own_line *line;
    for (size_t i = 0; (line = own_line_next(in->base, in->boat, sheet->procedure_key, sheet->id,
                                             &i)) != NULL;)
        out[facts.count++] = (struct card_warning){
            .text = phrase_said(composing, phrase_text(composing->arena, &line->say)),
            .tag = line->source.text, .origin = said_place(composing, &line->say)};
    return facts;
}

void warnings_make(struct composing *composing, struct sheet *sheet)
{
    const struct procedure *procedure = composing->slot->procedure;
    warnings_add(composing, sheet, BLOCK_NEVER,
                 warnings_of(composing, WORD_NEVER, procedure->nevers, procedure->never_count));
    warnings_add(composing, sheet, BLOCK_CAUTIONS,
                 warnings_of(composing, WORD_CAUTION, procedure->cautions,
                             procedure->caution_count));
    warnings_add(composing, sheet, BLOCK_OWN_LINES, own_lines_of(composing, sheet));
}

void signs_make(struct composing *composing, struct sheet *sheet, const struct phrase *word,
                const struct phrase *signs)
{
    struct signs_facts *facts = arena_alloc(composing->arena, sizeof *facts);
    *facts = (struct signs_facts){phrase_said(composing, word), phrase_said(composing, signs)};
    block_add(composing, sheet, BLOCK_SIGNS)->signs = facts;
}

void boxes_make(struct composing *composing, struct sheet *sheet)
{
    signs_make(composing, sheet, word_alone(composing, WORD_WHEN), signs_joined(composing, sheet));
    berth_make(composing, sheet);
    cases_add_block(composing, sheet,
                    (struct card_text){phrase_said(composing, call_line(composing, sheet)),
                                       sheet->origin});
    decision_make(composing, sheet);
    warnings_make(composing, sheet);
}
