/* boxes.c - signs, the line that says when to call, decision, nevers, cautions
 * and the base's own rules (room: compose). */
#include "compose.h"

static const char *signs_joined(struct composing *composing)
{
    const struct list_value *signs = &composing->slot->procedure->signs;
    struct text_builder builder = text_builder_in(composing->arena);
    for (size_t i = 0; i < signs->count; i++)
        text_add_format(&builder, "%s%s", i == 0 ? "" : " · ", signs->items[i].text);
    return builder.at;
}

/* A procedure names a step that this boat's card may lack: then the card is
 * wrong as it stands, and it is held. */
static int number_of_step(struct composing *composing, const struct card *card,
                          const struct text_value *id)
{
    const struct card_step *step = step_by_id(card, id->text);
    if (step != NULL)
        return step->number;
    composing->held = true;
    problem_add(composing->problems, SEVERITY_HELD, id->place,
                "name a step that stands on the card of every boat",
                "%s: the step %s is not on this boat's card", card->name, id->text);
    return 0;
}

static const char *call_line(struct composing *composing, const struct card *card)
{
    const struct said *said = said_take(composing, &composing->slot->procedure->call_when);
    return said == NULL ? "" : numbers_fill(composing, card, &said->say);
}

/* What the exit says, and the card it leads to by number and name. */
static const char *exit_words(struct composing *composing, const struct card *card,
                              const struct said *said)
{
    if (said == NULL)
        return words_get(composing->in->words, WORD_NOT_RECORDED);
    const char *words = numbers_fill(composing, card, &said->say);
    const struct slot *slot = slot_of(composing, said->card.text);
    if (said->card.text == NULL)
        return words;
    if (slot == NULL) {
        composing->held = true;
        problem_add(composing->problems, SEVERITY_HELD, said->card.place,
                    "lead to a card that belongs to the set of every boat",
                    "%s: the card %s is not in this boat's set", composing->slot->name,
                    said->card.text);
        return words;
    }
    return text_format(composing->arena, "%s **%s**", words,
                       words_fill(composing->in->words, composing->arena, WORD_SEE_CARD, "number",
                                  card_numbers(composing, said->card.text), "subject",
                                  slot->subject, NULL));
}

static void decision_make(struct composing *composing, struct card *card)
{
    const struct decision *decision = &composing->slot->procedure->decision;
    if (!decision->given)
        return;
    const struct said *yes = said_take(composing, &decision->yes);
    const struct said *no = said_take(composing, &decision->no);
    const char *number = text_format(composing->arena, "%d",
                                     number_of_step(composing, card, &decision->after));
    card->decision = (struct card_decision){
        .given = true,
        .ask = words_fill(composing->in->words, composing->arena, WORD_AFTER_STEP, "step", number,
                          "ask", decision->ask.text, NULL),
        .yes = exit_words(composing, card, yes),
        .no = exit_words(composing, card, no),
        .yes_card = yes == NULL ? NULL : yes->card.text,
        .no_card = no == NULL ? NULL : no->card.text,
        .origin = decision->ask.place};
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

static const char *source_tag(const struct composing *composing, const struct basis *basis)
{
    const struct authority *authority = basis_authority(composing, basis);
    return authority == NULL ? "" : authority->tag.text;
}

static const struct card_warning *warnings_make(struct composing *composing,
                                                const struct warning *warnings, size_t given,
                                                size_t *count)
{
    struct card_warning *out = arena_array(composing->arena, given, sizeof *out);
    *count = 0;
    for (size_t i = 0; i < given; i++)
        if (condition_judge(composing, warnings[i].when) != TRUTH_NO)
            out[(*count)++] = (struct card_warning){
                .text = warnings[i].say.text, .symbol = warnings[i].symbol.value,
                .tag = source_tag(composing, &warnings[i].basis),
                .origin = warnings[i].say.place};
    return out;
}

static void local_rules_make(struct composing *composing, struct card *card)
{
    const struct base_record *base = composing->in->base;
    struct card_warning *out = arena_array(composing->arena, base->local_rule_count, sizeof *out);
    for (size_t i = 0; i < base->local_rule_count; i++) {
        const struct local_rule *rule = &base->local_rules[i];
        if (!text_equal(rule->card.text, card->procedure_key) &&
            !text_equal(rule->card.text, card->key))
            continue;
        out[card->local_rule_count++] = (struct card_warning){
            .text = rule->rule.text, .tag = rule->source.text, .origin = rule->rule.place};
    }
    card->local_rules = out;
}

void boxes_make(struct composing *composing, struct card *card)
{
    const struct procedure *procedure = composing->slot->procedure;
    const struct words *words = composing->in->words;
    card->when_word = words_get(words, WORD_WHEN);
    card->yes_word = words_get(words, WORD_YES);
    card->no_word = words_get(words, WORD_NO);
    card->never_word = words_get(words, WORD_NEVER);
    card->caution_word = words_get(words, WORD_CAUTION);
    card->local_word = words_get(words, WORD_LOCAL_RULE);
    card->signs = signs_joined(composing);
    card->call_line = call_line(composing, card);
    decision_make(composing, card);
    card->nevers = warnings_make(composing, procedure->nevers, procedure->never_count,
                                 &card->never_count);
    card->cautions = warnings_make(composing, procedure->cautions, procedure->caution_count,
                                   &card->caution_count);
    local_rules_make(composing, card);
}
