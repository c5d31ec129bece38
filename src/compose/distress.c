/* distress.c - the distress card: working the set, every script, the natures of
 * distress and the boat's name spelled (room: compose). */
#include "compose.h"

struct sections {
    struct card_section *at;
    size_t count, room;
};

static struct card_section *section_add(struct composing *composing, struct sections *sections,
                                        const char *key, enum word title)
{
    sections->at = arena_grow(composing->arena, sections->at, sections->count, &sections->room,
                              sizeof *sections->at);
    struct card_section *section = &sections->at[sections->count++];
    *section = (struct card_section){.key = key,
                                     .title = words_get(composing->in->words, title)};
    return section;
}

static const struct script *script_of(struct composing *composing, enum script_form form)
{
    bool by_hand = boat_fitted(composing->in->boat, "vhf_dsc") == ANSWER_NO;
    struct script_request request = {.form = form, .from_handheld = by_hand};
    const struct script *script = script_make(&request, composing->in->boat, composing->in->base,
                                              composing->arena, composing->problems);
    if (script == NULL)
        composing->held = true;
    return script;
}

/* What the card says once is not printed in every script: those parts are left
 * out, and a line of words stands for them. */
struct left_out {
    enum script_form form;
    enum script_element elements[4];
    size_t count;
    enum word instead;
};

static const struct left_out left_out[] = {
    {SCRIPT_MAYDAY, {ELEMENT_NATURE}, 1, WORD_COUNT},
    {SCRIPT_PAN_PAN, {ELEMENT_POSITION, ELEMENT_TIME, ELEMENT_OTHER}, 3,
     WORD_DISTRESS_THEN_AS_ABOVE},
    {SCRIPT_RELAY, {ELEMENT_POSITION, ELEMENT_TIME, ELEMENT_NATURE, ELEMENT_OTHER}, 4,
     WORD_DISTRESS_THEN_THEIRS},
};

static const struct left_out *left_out_of(enum script_form form)
{
    for (size_t i = 0; i < sizeof left_out / sizeof *left_out; i++)
        if (left_out[i].form == form)
            return &left_out[i];
    return NULL;
}

static bool is_left_out(const struct left_out *rule, enum script_element element)
{
    for (size_t i = 0; rule != NULL && i < rule->count; i++)
        if (rule->elements[i] == element)
            return true;
    return false;
}

static const struct script *script_shortened(struct composing *composing,
                                             const struct script *script,
                                             const struct left_out *rule)
{
    struct script *out = arena_alloc(composing->arena, sizeof *out);
    struct script_line *lines = arena_array(composing->arena, script->count, sizeof *lines);
    for (size_t i = 0; i < script->count; i++)
        if (!is_left_out(rule, script->lines[i].element))
            lines[out->count++] = script->lines[i];
    out->lines = lines;
    return out;
}

static void script_section(struct composing *composing, struct sections *sections,
                           const char *key, enum word title, enum script_form form)
{
    const struct left_out *rule = left_out_of(form);
    struct card_section *section = section_add(composing, sections, key, title);
    section->script = script_of(composing, form);
    if (section->script != NULL)
        section->script = script_shortened(composing, section->script, rule);
    if (rule != NULL && rule->instead != WORD_COUNT)
        section->end_note = words_get(composing->in->words, rule->instead);
}

static const char *steps_joined(struct composing *composing, const struct list_value *steps)
{
    struct text_builder builder = text_builder_in(composing->arena);
    for (size_t i = 0; i < steps->count; i++)
        text_add_format(&builder, "%s%s", i == 0 ? "" : ", ", steps->items[i].text);
    return builder.at;
}

static void set_section(struct composing *composing, struct sections *sections)
{
    struct card_section *section = section_add(composing, sections, "set", WORD_DISTRESS_SET);
    section->lines = operate_lines(composing, true, true, false, &section->line_count);
}

/* The natures, as sets list them, each with the words to say. How this set is
 * told the nature stands above them. */
static void nature_section(struct composing *composing, struct sections *sections)
{
    const struct list_value *steps = &composing->in->boat->radio.nature_steps;
    struct card_section *section = section_add(composing, sections, "nature",
                                               WORD_DISTRESS_NATURE);
    size_t count = 0;
    while (nature_at(count) != NULL)
        count++;
    struct card_text *lines = arena_array(composing->arena, count, sizeof *lines);
    for (size_t i = 0; i < count; i++)
        lines[i] = (struct card_text){
            .text = text_format(composing->arena, "%s\t%s", nature_at(i)->label,
                                nature_at(i)->phrase),
            .origin = composing->in->boat->radio_place};
    section->lines = lines;
    section->line_count = count;
    if (steps->count > 0 && dsc_ready(composing->in->boat))
        section->note = words_fill(composing->in->words, composing->arena, WORD_NATURE_STEPS,
                                   "steps", steps_joined(composing, steps), NULL);
}

static void spell_section(struct composing *composing, struct sections *sections)
{
    struct card_section *section = section_add(composing, sections, "spell", WORD_DISTRESS_SPELL);
    const char *name = spoken_name(composing->in->boat, composing->arena, composing->problems);
    struct card_text *line = arena_array(composing->arena, 1, sizeof *line);
    uint32_t bad = 0;
    if (name == NULL) {
        composing->held = true;
        return;
    }
    line->text = spell(composing->arena, name, &bad);
    line->origin = composing->in->boat->facts.name.place;
    section->lines = line;
    section->line_count = line->text == NULL ? 0 : 1;
    section->end_note = words_get(composing->in->words, WORD_DISTRESS_SAY_SLOWLY);
}

void distress_make(struct composing *composing, struct card *card)
{
    struct sections sections = {0};
    card->signs = words_get(composing->in->words, WORD_DISTRESS_WHEN);
    set_section(composing, &sections);
    script_section(composing, &sections, "mayday", WORD_DISTRESS_MAYDAY, SCRIPT_MAYDAY);
    nature_section(composing, &sections);
    script_section(composing, &sections, "pan_pan", WORD_DISTRESS_PAN_PAN, SCRIPT_PAN_PAN);
    script_section(composing, &sections, "relay", WORD_DISTRESS_RELAY, SCRIPT_RELAY);
    script_section(composing, &sections, "downgrade", WORD_DISTRESS_DOWNGRADE, SCRIPT_DOWNGRADE);
    script_section(composing, &sections, "cancel", WORD_DISTRESS_CANCEL, SCRIPT_CANCEL);
    sections.at[sections.count - 1].note = words_get(composing->in->words,
                                                     WORD_DISTRESS_CANCEL_SET);
    spell_section(composing, &sections);
    card->sections = sections.at;
    card->section_count = sections.count;
}
