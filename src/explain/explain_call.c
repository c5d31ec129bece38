/* explain_call.c - what the contacts, the call panel and the sections of the
 * distress card stand on (room: explain). Never words the message itself. */
#include "explain.h"

#include "promise.h"

/* ---- rules of the radio ---- */

/* What gives each form of message its words and order: by its signal on the call panel, by
 * its block on the distress card. */
static const char *const signal_rules[SIGNAL_COUNT] = {
    [SIGNAL_MAYDAY] = "ITU Radio Regulations 32.13C, 32.13D",
    [SIGNAL_PAN_PAN] = "ITU Radio Regulations 33.12",
    [SIGNAL_SECURITE] = "ITU Radio Regulations 33.35"};
static const char *const section_rules[BLOCK_COUNT] = {
    [BLOCK_NATURE] = "Recommendation ITU-R M.493, the natures in its order",
    [BLOCK_PAN_PAN] = "ITU Radio Regulations 33.12",
    [BLOCK_PHRASES] = "IMO standard phrases, as far as there is one",
    [BLOCK_HEARD] = "ITU Radio Regulations 32.28",
    [BLOCK_BEACON] = "no form of its own in the ITU Radio Regulations",
    [BLOCK_SPELL] = "ITU Radio Regulations, Appendix 14",
    [BLOCK_RELAY] = "ITU Radio Regulations 32.19E, 32.19F",
    [BLOCK_DOWNGRADE] = "no form of its own in the ITU Radio Regulations",
    [BLOCK_CANCEL] = "ITU Radio Regulations 32.53"};

static void rule_tell(const struct explaining *explaining, const char *rule)
{
    if (rule != NULL)
        line_tell(explaining, INDENT_REASON, "words and order: %s", rule);
}

/* ---- script ---- */

static struct place first_given(const struct text_value *const *values, size_t count)
{
    for (size_t i = 0; i < count; i++)
        if (values[i]->text != NULL)
            return values[i]->place;
    return (struct place){0};
}

#define FIRST_GIVEN(...) \
    first_given((const struct text_value *const[]){__VA_ARGS__}, \
                sizeof((const struct text_value *const[]){__VA_ARGS__}) / \
                    sizeof(const struct text_value *))

static struct place boat_name_place(const struct boat *boat)
{
    return FIRST_GIVEN(&boat->facts.name_spoken, &boat->facts.name_latin, &boat->facts.name);
}

/* Where the record says on which sides of the lines the boats sail. */
static struct place area_place(const struct base_record *base)
{
    return base->latitude.value != HEMISPHERE_NONE ? base->latitude.place
                                                   : base->longitude.place;
}

/* The word that tells the call from the other, as the card has it. */
static const char *label_of(const struct explaining *explaining,
                            const struct procedure_call *call)
{
    const char *word = text_for(&call->if_, explaining->sheet->language);
    return word == NULL ? "" : text_upper(explaining->arena, word);
}

/* The call of the procedure that a line belongs to: its label says which. */
static const struct procedure_call *call_of(const struct explaining *explaining,
                                            const char *label)
{
    const struct procedure *procedure = explaining->sheet->procedure;
    for (size_t i = 0; label != NULL && i < procedure->call_count; i++)
        if (text_equal(label_of(explaining, &procedure->calls[i]), label))
            return &procedure->calls[i];
    return procedure->call_count > 0 ? &procedure->calls[0] : NULL;
}

/* On the distress card some words stand for what is said elsewhere on it. */
static bool only_points(const struct script_line *line)
{
    return line->count == 1 && line->pieces[0].kind == PIECE_WORDS;
}

/* On a relay that line names the other vessel. */
static bool has_blank(const struct script_line *line)
{
    for (size_t i = 0; i < line->count; i++)
        if (line->pieces[i].kind == PIECE_BLANK)
            return true;
    return false;
}

/* The line that tells the looks and length of the boat; others of its kind, such
 * as the cancelling of an alert, tell nothing of her. */
static struct place description_place(const struct explaining *explaining,
                                      const struct script_line *line)
{
    const struct boat_facts *facts = &explaining->sheet->boat->facts;
    bool looks = facts->looks.text != NULL;
    const char *words = looks ? text_upper(explaining->arena, facts->looks.text) : "LENGTH";
    for (size_t i = 0; i < line->count; i++)
        if (text_begins(line->pieces[i].text, words))
            return looks ? facts->looks.place : facts->loa_m.place;
    return (struct place){0};
}

static struct place beacon_place(const struct boat *boat)
{
    for (size_t i = 0; i < boat->equipment_count; i++)
        if (boat->equipment[i].hex_id.text != NULL)
            return boat->equipment[i].hex_id.place;
    return (struct place){0};
}

/* The record that fills the line; none where the regulations give all of it. */
static struct place script_place(const struct explaining *explaining,
                                 const struct script_line *line)
{
    const struct boat *boat = explaining->sheet->boat;
    const struct procedure_call *call = call_of(explaining, line->label);
    const struct text_value none = {0};
    if (only_points(line) && (line->element == ELEMENT_NAME || line->element == ELEMENT_IDENTITY))
        return none.place;
    switch (line->element) {
    case ELEMENT_NAME:
        return boat_name_place(boat);
    case ELEMENT_MESSAGE_SIGNAL:
        return has_blank(line) ? none.place : boat_name_place(boat);
    case ELEMENT_IDENTITY:
        return FIRST_GIVEN(&boat->radio.call_sign, &boat->radio.mmsi);
    case ELEMENT_BEACON:
        return beacon_place(boat);
    case ELEMENT_POSITION:
        return area_place(explaining->in->base);
    case ELEMENT_NATURE:
        return call == NULL ? none.place : call->say.place;
    case ELEMENT_ASSISTANCE:
        return call == NULL ? none.place : call->assist.place;
    case ELEMENT_OTHER:
        return description_place(explaining, line);
    case ELEMENT_SIGNAL:
    case ELEMENT_ALL_STATIONS:
    case ELEMENT_OVER:
        return none.place;
    }
    promise_unreached();
}

static const char *without_line_end(struct arena *arena, const char *text)
{
    size_t length = 0;
    while (text[length] != '\0' && text[length] != '\n')
        length++;
    return arena_copy(arena, text, length);
}

static void script_tell(const struct explaining *explaining, const struct script *script)
{
    for (size_t i = 0; script != NULL && i < script->count; i++) {
        struct script one = {.lines = &script->lines[i], .count = 1};
        placed_tell(explaining, INDENT_REASON, script_place(explaining, &script->lines[i]),
                    "say: %s",
                    without_line_end(explaining->arena, script_text(&one, explaining->arena)));
    }
}

/* ---- panel ---- */

static void message_tell(const struct explaining *explaining, const struct procedure_call *call)
{
    struct text_builder words = text_builder_in(explaining->arena);
    text_add_format(&words, "message: %s", choice_word(signal_words, call->signal.value));
    if (call->if_.text != NULL)
        text_add_format(&words, ", if %s", text_for(&call->if_, explaining->sheet->language));
    if (call->nature.value != NATURE_NONE)
        text_add_format(&words, ", nature %s", choice_word(nature_words, call->nature.value));
    text_add_format(&words, ", from %s: %s", choice_word(call_from_words, call->from.value),
                    TEXT_OR_EMPTY(call->say));
    if (call->assist.text != NULL)
        text_add_format(&words, ", %s", call->assist.text);
    placed_tell(explaining, INDENT_REASON, call->place, "%s", words.at);
    only_where_tell(explaining, INDENT_DETAIL, call->when);
    condition_record_tell(explaining, INDENT_DETAIL, call->when);
    rule_tell(explaining, signal_rules[call->signal.value]);
}

static void panel_tell(const struct explaining *explaining)
{
    const struct sheet *sheet = explaining->sheet;
    const struct call_facts *call = sheet_call(sheet);
    if (sheet_block(sheet, BLOCK_CALL) == NULL)
        return;
    placed_tell(explaining, INDENT_PART, call->origin, "Call: %s | %s", call->title,
                call->station);
    for (size_t i = 0; i < sheet->procedure->call_count; i++)
        if (condition_judge(explaining->composing, sheet->procedure->calls[i].when) != TRUTH_NO)
            message_tell(explaining, &sheet->procedure->calls[i]);
    if (sheet->procedure->call_count == 0)
        rule_tell(explaining, signal_rules[SIGNAL_MAYDAY]);
    for (size_t i = 0; i < call->operate_count; i++)
        placed_tell(explaining, INDENT_REASON, call->operate[i].origin, "set: %s",
                    call->operate[i].text);
    script_tell(explaining, call->script);
    blank_tell(explaining);
}

/* ---- sections of the distress card ---- */

/* How this set is told the nature is of its record; all other notes are ours. */
static void note_tell(const struct explaining *explaining, const struct block *block)
{
    const struct list_value *steps = &explaining->sheet->boat->radio.nature_steps;
    bool of_set = block->key == BLOCK_NATURE;
    if (block->facts.section->note != NULL)
        placed_tell(explaining, INDENT_REASON, of_set ? steps->place : (struct place){0},
                    "note: %s", block->facts.section->note);
    for (size_t i = 0; i < block->facts.section->hint_count; i++)
        placed_tell(explaining, INDENT_REASON, block->facts.section->hints[i].origin,
                    "hint, if there is room: %s", block->facts.section->hints[i].text);
}

/* The natures are the same on every boat, wherever the card takes them to stand. */
static struct place section_line_place(const struct block *block, size_t index)
{
    if (block->key == BLOCK_NATURE)
        return (struct place){0};
    return block->facts.section->lines[index].origin;
}

static void section_tell(const struct explaining *explaining, const struct block *block)
{
    const struct section_facts *section = block->facts.section;
    line_tell(explaining, INDENT_PART, "Section %s: %s", block_word(block->key), section->title);
    rule_tell(explaining, section_rules[block->key]);
    note_tell(explaining, block);
    for (size_t i = 0; i < section->line_count; i++)
        placed_tell(explaining, INDENT_REASON, section_line_place(block, i), "line: %s%s%s",
                    section->lead == NULL ? "" : section->lead[i],
                    section->lead == NULL ? "" : " ", section->lines[i].text);
    script_tell(explaining, section->script);
    if (section->end_note != NULL)
        placed_tell(explaining, INDENT_REASON, (struct place){0}, "note: %s", section->end_note);
    blank_tell(explaining);
}

static void contact_tell(const struct explaining *explaining)
{
    const struct contact_facts *contact = sheet_contact(explaining->sheet);
    if (sheet_block(explaining->sheet, BLOCK_CONTACT) == NULL)
        return;
    placed_tell(explaining, INDENT_PART, explaining->in->base->centre_name.place, "Contact: %s",
                contact->left);
    placed_tell(explaining, INDENT_PART, explaining->in->base->phone_24h.place, "Contact: %s",
                contact->right);
    blank_tell(explaining);
}

void call_tell(const struct explaining *explaining)
{
    const struct sheet *sheet = explaining->sheet;
    for (size_t i = 0; i < sheet->block_count; i++)
        if (facts_kind_of(sheet->blocks[i].key) == FACTS_SECTION)
            section_tell(explaining, &sheet->blocks[i]);
    contact_tell(explaining);
    panel_tell(explaining);
}
