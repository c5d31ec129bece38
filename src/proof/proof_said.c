/* proof_said.c - does every word of the card stand on its page (room: proof). Rule
 * G3: nothing is cut or dropped in silence. */
#include "proof_room.h"

static void says_judge(struct proofing *p, enum block_key block, const char *text)
{
    if (text_empty(text))
        return;
    proof_measured(p, 1);
    if (!block_says(p, block, text))
        proof_found(p, RULE_WORDS_LOST, NULL, "\"%s\" is not on the page", text);
}

static void said_judge(struct proofing *p, enum block_key block, const char *const *texts,
                       size_t count)
{
    for (size_t i = 0; i < count; i++)
        says_judge(p, block, texts[i]);
}

static void warnings_said_judge(struct proofing *p, const struct card_warning *warnings,
                                size_t count)
{
    for (size_t i = 0; i < count; i++)
        says_judge(p, BLOCK_NONE, warnings[i].text);
}

static const char *or_nothing(const char *text)
{
    return text == NULL ? "" : text;
}

/* Tags, name and place stand beside each other: other rows may have one of them too. */
static const char *row_said_judge(struct proofing *p, const struct card_row *row)
{
    struct text_builder out = text_builder_in(p->arena);
    for (size_t t = 0; t < row->tag_count; t++)
        text_add(&out, row->tags[t]);
    text_add(&out, or_nothing(row->name));
    text_add(&out, or_nothing(row->where));
    return out.at;
}

static void table_judge(struct proofing *p, const struct card_step *step)
{
    if (step->table_count == 0)
        return;
    says_judge(p, BLOCK_STEPS, step->table_note);
    said_judge(p, BLOCK_STEPS, step->table_heads, TABLE_CELLS);
    for (size_t r = 0; r < step->table_count; r++) {
        says_judge(p, BLOCK_STEPS, or_nothing(step->table[r].head));
        for (size_t c = 0; c < TABLE_CELLS; c++) {
            const struct table_cell *cell = &step->table[r].cells[c];
            says_judge(p, BLOCK_STEPS, text_format(p->arena, "%s%s", or_nothing(cell->tag),
                                               or_nothing(cell->name)));
        }
    }
}

static void step_judge(struct proofing *p, const struct card_step *step)
{
    says_judge(p, BLOCK_STEPS, step->headline.text);
    for (size_t i = 0; i < step->lethal_count; i++)
        says_judge(p, BLOCK_STEPS, step->lethal[i].text);
    for (size_t r = 0; r < step->row_count; r++)
        says_judge(p, BLOCK_STEPS, row_said_judge(p, &step->rows[r]));
    table_judge(p, step);
}

static void script_judge(struct proofing *p, const struct script *script)
{
    for (size_t i = 0; script != NULL && i < script->count; i++)
        for (size_t k = 0; k < script->lines[i].count; k++)
            if (script->lines[i].pieces[k].kind == PIECE_WORDS ||
                script->lines[i].pieces[k].kind == PIECE_STRONG)
                says_judge(p, BLOCK_NONE, script->lines[i].pieces[k].text);
}

static void section_judge(struct proofing *p, const struct card_section *section)
{
    says_judge(p, BLOCK_NONE, section->title);
    for (size_t i = 0; i < section->line_count; i++)
        says_judge(p, BLOCK_NONE, section->lines[i].text);
    says_judge(p, BLOCK_NONE, section->note);
    says_judge(p, BLOCK_NONE, section->end_note);
    script_judge(p, section->script);
}

/* Names are set behind the tags, and detail behind the name. */
static void safety_judge(struct proofing *p, const struct safety_plan *safety)
{
    for (size_t i = 0; i < safety->place_count; i++) {
        const struct plan_place *place = &safety->places[i];
        says_judge(p, BLOCK_LABELS, place->title);
        for (size_t r = 0; r < place->row_count; r++) {
            said_judge(p, BLOCK_LABELS, place->rows[r].chips, place->rows[r].chip_count);
            says_judge(p, BLOCK_LABELS, text_format(p->arena, "%s%s", place->rows[r].name,
                                                place->rows[r].detail));
        }
    }
    said_judge(p, BLOCK_LEGEND, safety->legend, COUNT_OF(safety->legend));
    says_judge(p, BLOCK_NONE, safety->sources);
    if (safety->here_given) {
        says_judge(p, BLOCK_LABELS, safety->here_word);
        says_judge(p, BLOCK_LABELS, safety->here_words);
    }
}

static void card_judge(struct proofing *p, const struct card *card)
{
    const char *const whole[] = {card->title,          card->boat,           card->number_text,
                                 card->signs,          card->call_line,      card->footer_right,
                                 card->footer_left[0], card->footer_left[1], card->code,
                                 card->printed,        card->mark,           card->decision.ask,
                                 card->decision.yes,   card->decision.no,    card->call.title,
                                 card->call.station};
    const char *const contact[] = {card->contact_left, card->contact_right};
    said_judge(p, BLOCK_NONE, whole, COUNT_OF(whole));
    if (card->safety == NULL)
        said_judge(p, BLOCK_NONE, contact, COUNT_OF(contact));
    warnings_said_judge(p, card->nevers, card->never_count);
    warnings_said_judge(p, card->cautions, card->caution_count);
    warnings_said_judge(p, card->local_rules, card->local_rule_count);
}

void proof_said(struct proofing *p)
{
    const struct card *card = p->card;
    card_judge(p, card);
    for (size_t i = 0; i < card->step_count; i++)
        step_judge(p, &card->steps[i]);
    for (size_t i = 0; i < card->figure_count; i++)
        says_judge(p, BLOCK_NONE, card->figures[i].text);
    for (size_t i = 0; i < card->call.operate_count; i++)
        says_judge(p, BLOCK_CALL, card->call.operate[i].text);
    script_judge(p, card->call.script);
    for (size_t i = 0; i < card->section_count; i++)
        section_judge(p, &card->sections[i]);
    if (card->safety != NULL)
        safety_judge(p, card->safety);
}
