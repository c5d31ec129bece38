/* distress.c - the distress card: working the set, every script, the natures of
 * distress and the boat's name spelled (room: compose). */
#include "compose_room.h"

#include "promise.h"

static struct section_facts *section_add(struct composing *composing, struct sheet *sheet,
                                         enum block_key key, enum word title)
{
    struct section_facts *section = arena_alloc(composing->arena, sizeof *section);
    *section = (struct section_facts){.title = phrase_said(composing,
                                                          word_alone(composing, title))};
    block_add(composing, sheet, key)->section = section;
    return section;
}

static const struct script *script_of(struct composing *composing, enum script_form form)
{
    const struct boat *boat = composing->in->boat;
    struct script_request request = call_request(boat, form, NULL);
    request.unrecorded = script_unrecorded(composing);
    const struct script *script = script_make(&request, boat, composing->in->base,
                                              composing->arena, composing->problems);
    if (script == NULL)
        composing->held = true;
    return script;
}

/* What the call panel at the foot says is not printed again in every script: a
 * line of words stands for it. */
struct shortening {
    enum script_form form;
    enum script_element from[2];   /* a line of words stands for these... */
    enum word named;
    enum script_element tail[3];   /* ...and another for these, at the end */
    size_t from_count, tail_count;
    enum word ended;
};

static const struct shortening shortenings[] = {
    {.form = SCRIPT_PAN_PAN, .from_count = 2, .named = WORD_DISTRESS_NAMED_AS_BELOW,
     .from = {ELEMENT_NAME, ELEMENT_IDENTITY}, .tail_count = 2,
     .ended = WORD_DISTRESS_THEN_AS_ABOVE,
     .tail = {ELEMENT_POSITION, ELEMENT_OTHER}},
    {.form = SCRIPT_RELAY, .from_count = 2, .named = WORD_DISTRESS_NAMED_AS_BELOW,
     .from = {ELEMENT_NAME, ELEMENT_IDENTITY}, .tail_count = 3,
     .tail = {ELEMENT_POSITION, ELEMENT_NATURE, ELEMENT_OTHER},
     .ended = WORD_DISTRESS_THEN_THEIRS},
    {.form = SCRIPT_DOWNGRADE, .from_count = 2, .named = WORD_DISTRESS_NAMED_AS_BELOW,
     .from = {ELEMENT_NAME, ELEMENT_IDENTITY}, .tail_count = 1, .tail = {ELEMENT_NATURE},
     .ended = WORD_DISTRESS_WHAT_ENDED},
    {.form = SCRIPT_CANCEL, .from_count = 2, .named = WORD_DISTRESS_NAMED_AS_BELOW,
     .from = {ELEMENT_NAME, ELEMENT_IDENTITY}},
};

static const struct shortening *shortening_of(enum script_form form)
{
    for (size_t i = 0; i < sizeof shortenings / sizeof *shortenings; i++)
        if (shortenings[i].form == form)
            return &shortenings[i];
    return NULL;
}

static bool among(enum script_element element, const enum script_element *list, size_t count)
{
    for (size_t i = 0; i < count; i++)
        if (list[i] == element)
            return true;
    return false;
}

/* A line of words that stands for others. What it quotes of them is said on the radio: English
 * in every language. */
static const char *standing_for(struct composing *composing, enum word word)
{
    struct arena *arena = composing->arena;
    return phrase_said(composing,
                       phrase_word(arena, word, "this_is", phrase_verbatim(arena, SPOKEN_THIS_IS),
                                   "over", phrase_verbatim(arena, SPOKEN_OVER), NULL));
}

static struct script_line words_line(struct composing *composing, enum word word,
                                     enum script_element element)
{
    struct script_piece *piece = arena_alloc(composing->arena, sizeof *piece);
    *piece = (struct script_piece){.kind = PIECE_WORDS, .text = standing_for(composing, word)};
    return (struct script_line){.element = element, .pieces = piece, .count = 1};
}

/* The first line of those that are named elsewhere becomes the words for all. */
static const struct script *script_shortened(struct composing *composing,
                                             const struct script *script,
                                             const struct shortening *rule)
{
    struct script *out = arena_alloc(composing->arena, sizeof *out);
    struct script_line *lines = arena_array(composing->arena, script->count, sizeof *lines);
    bool named = false;
    for (size_t i = 0; i < script->count; i++) {
        enum script_element element = script->lines[i].element;
        if (among(element, rule->tail, rule->tail_count))
            continue;
        if (!among(element, rule->from, rule->from_count))
            lines[out->count++] = script->lines[i];
        else if (!named)
            lines[out->count++] = words_line(composing, rule->named, element);
        named = named || among(element, rule->from, rule->from_count);
    }
    out->lines = lines;
    return out;
}

static struct section_facts *script_section(struct composing *composing, struct sheet *sheet,
                                            enum block_key key, enum word title,
                                            enum script_form form)
{
    const struct shortening *rule = shortening_of(form);
    struct section_facts *section = section_add(composing, sheet, key, title);
    section->script = script_of(composing, form);
    if (section->script != NULL && rule != NULL)
        section->script = script_shortened(composing, section->script, rule);
    if (rule != NULL && rule->tail_count > 0)
        section->end_note = standing_for(composing, rule->ended);
    return section;
}

/* Keys to press, in a sentence of that word; NULL where none is recorded. */
static const struct phrase *steps_phrase(struct composing *composing, enum word word,
                                         const struct list_value *steps)
{
    const struct phrase **phrases = arena_array(composing->arena, steps->count, sizeof *phrases);
    for (size_t i = 0; i < steps->count; i++)
        phrases[i] = phrase_text(composing->arena, &steps->items[i]);
    const struct phrase *told = phrase_list(composing->arena, WORD_JOIN_COMMA, phrases,
                                            steps->count);
    if (told == NULL && word == WORD_NATURE_STEPS)
        told = unrecorded(composing);
    return told == NULL ? NULL : phrase_word(composing->arena, word, "steps", told, NULL);
}

/* ---- hints: what else is recorded about calling ---- */

/* One more that a section has; a phrase of NULL says nothing. */
static void hint_add(struct composing *composing, struct section_facts *section,
                     const struct phrase *phrase, struct card_hint hint)
{
    enum { HINTS_MOST = 4 };
    struct card_hint *hints = arena_array(composing->arena, HINTS_MOST, sizeof *hints);
    if (phrase == NULL)
        return;
    promise(section->hint_count < HINTS_MOST);
    for (size_t i = 0; i < section->hint_count; i++)
        hints[i] = section->hints[i];
    hint.text = phrase_said(composing, phrase);
    hints[section->hint_count++] = hint;
    section->hints = hints;
}

/* A text of the record, filled into a word; NULL: it is not recorded. */
static const struct phrase *hint_phrase(struct composing *composing, enum word word,
                                        const char *name, const struct text_value *text)
{
    const struct phrase *told = phrase_text(composing->arena, text);
    return told == NULL ? NULL : phrase_word(composing->arena, word, name, told, NULL);
}

/* How the set is told the position; of one that does not know it, that. */
static void position_hint(struct composing *composing, struct section_facts *section)
{
    const struct radio_facts *radio = &composing->in->boat->radio;
    const struct phrase *steps = steps_phrase(composing, WORD_POSITION_STEPS,
                                              &radio->manual_position_steps);
    if (radio->gnss.answer == ANSWER_NO)
        hint_add(composing, section, word_alone(composing, WORD_POSITION_UNSENT),
                 (struct card_hint){.id = "radio gnss", .yields = YIELDS_POSITION_UNSENT,
                                    .origin = radio->gnss.place});
    hint_add(composing, section, steps,
             (struct card_hint){.id = "radio manual_position_steps",
                                .yields = YIELDS_POSITION_KEYS,
                                .origin = radio->manual_position_steps.place});
}

/* What belongs to the fixed set and lies elsewhere. */
static void set_hints(struct composing *composing, struct section_facts *section)
{
    const struct radio_facts *radio = &composing->in->boat->radio;
    hint_add(composing, section,
             hint_phrase(composing, WORD_SECOND_STATION, "place", &radio->second_station),
             (struct card_hint){.id = "radio second_station", .yields = YIELDS_SECOND_STATION,
                                .origin = radio->second_station.place});
    hint_add(composing, section,
             hint_phrase(composing, WORD_SPARE_AERIAL, "place", &radio->emergency_aerial),
             (struct card_hint){.id = "radio emergency_aerial", .yields = YIELDS_SPARE_AERIAL,
                                .origin = radio->emergency_aerial.place});
}

static void urgency_hint(struct composing *composing, struct section_facts *section)
{
    const struct list_value *steps = &composing->in->boat->radio.urgency_steps;
    if (dsc_ready(composing->in->boat))
        hint_add(composing, section, steps_phrase(composing, WORD_URGENCY_STEPS, steps),
                 (struct card_hint){.id = "radio urgency_steps", .yields = YIELDS_URGENCY_KEYS,
                                    .origin = steps->place});
}

static void centre_hint(struct composing *composing, struct section_facts *section)
{
    const struct text_value *call = &composing->in->base->centre_call;
    hint_add(composing, section, hint_phrase(composing, WORD_CENTRE_CALL, "call", call),
             (struct card_hint){.id = "rescue_centre call", .yields = YIELDS_CENTRE_CALL,
                                .origin = call->place});
}

/* The natures, as sets list them, each with the words to say. How this set is
 * told the nature stands above them. */
static void nature_section(struct composing *composing, struct sheet *sheet)
{
    struct section_facts *section = section_add(composing, sheet, BLOCK_NATURE,
                                               WORD_DISTRESS_NATURE);
    struct card_text *lines = arena_array(composing->arena, NATURE_COUNT, sizeof *lines);
    const char **lead = arena_array(composing->arena, NATURE_COUNT, sizeof *lead);
    section->lines = lines;
    section->lead = lead;
    for (enum nature_key key = NATURE_NONE + 1; key < NATURE_COUNT; key++) {
        lead[section->line_count] = phrase_said(composing,
                                                word_alone(composing, nature_of(key)->brief));
        lines[section->line_count++] = (struct card_text){
            .text = nature_of(key)->phrase, .origin = composing->in->boat->radio_place};
    }
    if (dsc_ready(composing->in->boat))
        section->note = phrase_said(composing,
                                    steps_phrase(composing, WORD_NATURE_STEPS,
                                                 &composing->in->boat->radio.nature_steps));
    if (dsc_ready(composing->in->boat))
        position_hint(composing, section);
    if (boat_fitted(composing->in->boat, ITEM_vhf_dsc) == ANSWER_YES)
        set_hints(composing, section);
}

static void spell_section(struct composing *composing, struct sheet *sheet)
{
    struct section_facts *section = section_add(composing, sheet, BLOCK_SPELL,
                                               WORD_DISTRESS_SPELL);
    const char *name = spelled_name(composing->in->boat, composing->arena, composing->problems);
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
}

/* Where nobody can call, no words to say by radio; where no alert can be sent, none to
 * cancel. */
static void scripts_add(struct composing *composing, struct sheet *sheet)
{
    struct section_facts *urgency = script_section(composing, sheet, BLOCK_PAN_PAN,
                                                   WORD_DISTRESS_PAN_PAN, SCRIPT_PAN_PAN);
    urgency_hint(composing, urgency);
    struct section_facts *relay = script_section(composing, sheet, BLOCK_RELAY,
                                                 WORD_DISTRESS_RELAY, SCRIPT_RELAY);
    centre_hint(composing, relay);
    script_section(composing, sheet, BLOCK_DOWNGRADE, WORD_DISTRESS_DOWNGRADE, SCRIPT_DOWNGRADE);
    if (!boat_can_alert(composing->in->boat))
        return;
    struct section_facts *cancel = script_section(composing, sheet, BLOCK_CANCEL,
                                                  WORD_DISTRESS_CANCEL, SCRIPT_CANCEL);
    cancel->note = phrase_said(composing, word_alone(composing, WORD_DISTRESS_CANCEL_SET));
}

void distress_call_compose(struct composing *composing, struct sheet *sheet)
{
    nature_section(composing, sheet);
    if (!no_radio_aboard(composing->in->boat))
        scripts_add(composing, sheet);
    spell_section(composing, sheet);
    general_call_make(composing, sheet);
}

void distress_compose(struct composing *composing, struct sheet *sheet,
                      const struct sheet_list *others)
{
    bool radio = !no_radio_aboard(composing->in->boat);
    (void)others;
    enum word line = radio ? WORD_DISTRESS_CALL_LINE : WORD_CALL_NO_RADIO_ABOARD;
    signs_make(composing, sheet, NULL, word_alone(composing, WORD_DISTRESS_WHEN));
    text_add_block(composing, sheet, BLOCK_CALL_LINE,
                   (struct card_text){phrase_said(composing, word_alone(composing, line)),
                                      sheet->origin});
    warnings_make(composing, sheet);
    distress_call_compose(composing, sheet);
    contact_make(composing, sheet);
    plan_make(composing, sheet);
}
