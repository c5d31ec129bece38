/* explain_boxes.c - what the decision, nevers, cautions and the base's own rules
 * stand on (room: explain). Never words anything itself. */
#include "explain.h"

static void said_case_tell(const struct explaining *explaining, const struct said_list *list,
                           size_t index, const struct said *taken)
{
    const struct said *one = &list->items[index];
    const char *words = one->when == NULL ? "every other boat"
                                          : condition_words(one->when, explaining->arena);
    const char *verdict = "passed over: ";
    if (one == taken)
        verdict = "";
    else if (taken == NULL && condition_judge(explaining->composing, one->when) == TRUTH_UNKNOWN)
        verdict = "not to be decided: ";
    placed_tell(explaining, INDENT_DETAIL, one->place, "%scase %zu of %zu%s: %s", verdict,
                index + 1, list->count, one == taken ? "" : ", which asks", words);
}

/* All up to the one taken, or to one that cannot be decided. */
static size_t said_tried(const struct explaining *explaining, const struct said_list *list,
                         const struct said *taken)
{
    if (taken != NULL)
        return (size_t)(taken - list->items) + 1;
    for (size_t i = 0; i < list->count; i++)
        if (condition_judge(explaining->composing, list->items[i].when) == TRUTH_UNKNOWN)
            return i + 1;
    return list->count;
}

void said_tell(const struct explaining *explaining, const struct said_list *list)
{
    const struct said *taken = said_take(explaining->composing, list);
    size_t tried = said_tried(explaining, list, taken);
    if (list->count == 0 || (list->count == 1 && list->items[0].when == NULL))
        return;
    for (size_t i = 0; i < tried; i++)
        said_case_tell(explaining, list, i, taken);
    said_record_tell(explaining, INDENT_DETAIL, list, tried);
}

static void exit_tell(const struct explaining *explaining, const char *word, const char *words,
                      const struct said_list *list)
{
    const struct said *way = said_take(explaining->composing, list);
    if (way == NULL)
        line_tell(explaining, INDENT_REASON, "%s: %s", word, words);
    else
        placed_tell(explaining, INDENT_REASON, way->say.place, "%s: %s", word, words);
    said_tell(explaining, list);
    if (way != NULL && way->card.text != NULL)
        placed_tell(explaining, INDENT_DETAIL, way->card.place, "leads to the card %s",
                    way->card.text);
}

static void decision_tell(const struct explaining *explaining)
{
    const struct decision_facts *made = sheet_decision(explaining->sheet);
    const struct decision *decision = &explaining->sheet->procedure->decision;
    if (sheet_block(explaining->sheet, BLOCK_DECISION) == NULL)
        return;
    placed_tell(explaining, INDENT_PART, made->origin, "Decision: %s", made->ask);
    placed_tell(explaining, INDENT_REASON, decision->after.place, "asked after step %s",
                decision->after.text);
    exit_tell(explaining, "yes", made->yes, &decision->yes);
    exit_tell(explaining, "no", made->no, &decision->no);
    basis_tell(explaining, INDENT_REASON, &decision->basis);
    blank_tell(explaining);
}

/* What the card has of the warning, by where its text stands; NULL: it is not on the card. */
static const struct card_warning *made_from(const struct card_warning *made, size_t count,
                                            struct place said)
{
    for (size_t i = 0; i < count; i++)
        if (made[i].origin.line == said.line && made[i].origin.column == said.column)
            return &made[i];
    return NULL;
}

/* The text, and below it where the logic asks for it. */
static void warning_tell(const struct explaining *explaining, const char *word,
                         const struct warning *warning, const struct card_warning *made)
{
    const char *language = explaining->sheet->language;
    placed_tell(explaining, INDENT_PART, text_place_for(&warning->say, language), "%s%s: %s",
                made == NULL ? "Not on this card: " : "", word,
                made == NULL ? text_for(&warning->say, language) : made->text);
    placed_tell(explaining, INDENT_REASON, warning->place, "called %s", warning->id.text);
    only_where_tell(explaining, INDENT_REASON, warning->when);
    condition_record_tell(explaining, INDENT_DETAIL, warning->when);
    if (made == NULL)
        return;
    line_tell(explaining, INDENT_REASON, "tag of its source: %s", made->tag);
    basis_tell(explaining, INDENT_REASON, &warning->basis);
}

static void warnings_tell(const struct explaining *explaining, const char *word,
                          const struct warning *warnings, size_t count,
                          const struct card_warning *made, size_t made_count)
{
    for (size_t i = 0; i < count; i++)
        warning_tell(explaining, word, &warnings[i],
                     made_from(made, made_count,
                               text_place_for(&warnings[i].say, explaining->sheet->language)));
    if (count > 0)
        blank_tell(explaining);
}

static void own_lines_tell(const struct explaining *explaining)
{
    const struct sheet *sheet = explaining->sheet;
    const struct warnings_facts *rules = sheet_warnings(sheet, BLOCK_OWN_LINES);
    for (size_t i = 0; i < rules->count; i++) {
        placed_tell(explaining, INDENT_PART, rules->items[i].origin, "Line of the base: %s",
                    rules->items[i].text);
        line_tell(explaining, INDENT_REASON, "source of the base: %s", rules->items[i].tag);
    }
    if (rules->count > 0)
        blank_tell(explaining);
}

void boxes_tell(const struct explaining *explaining)
{
    const struct sheet *sheet = explaining->sheet;
    const struct warnings_facts *cautions = sheet_warnings(sheet, BLOCK_CAUTIONS);
    const struct warnings_facts *nevers = sheet_warnings(sheet, BLOCK_NEVER);
    const struct procedure *procedure = sheet->procedure;
    decision_tell(explaining);
    warnings_tell(explaining, "Never", procedure->nevers, procedure->never_count, nevers->items,
                  nevers->count);
    warnings_tell(explaining, "Caution", procedure->cautions, procedure->caution_count,
                  cautions->items, cautions->count);
    own_lines_tell(explaining);
}
