/* distress.c - the distress card: working the set, every script, the natures of distress, the
 * boat's name spelled, and what its pages are called (room: compose). */
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

/* What the call at the head of the page says is not printed again below it, and what no blank
 * tells has words of its own: a line of words stands for it. */
struct shortening {
    enum script_form form;
    enum script_element from[2];   /* a line of words stands for these... */
    enum word named;
    enum script_element tail[3];   /* ...and another for these, at the end */
    size_t from_count, tail_count;
    enum word ended;
};

static const struct shortening shortenings[] = {
    {.form = SCRIPT_PAN_PAN, .from_count = 2, .named = WORD_DISTRESS_NAMED_AS_MAYDAY,
     .from = {ELEMENT_NAME, ELEMENT_IDENTITY}, .tail_count = 2,
     .ended = WORD_DISTRESS_THEN_AS_MAYDAY,
     .tail = {ELEMENT_POSITION, ELEMENT_OTHER}},
    {.form = SCRIPT_RELAY, .tail_count = 3,
     .tail = {ELEMENT_POSITION, ELEMENT_NATURE, ELEMENT_OTHER},
     .ended = WORD_DISTRESS_THEN_THEIRS},
    {.form = SCRIPT_DOWNGRADE, .from_count = 1, .named = WORD_DISTRESS_WHAT_ENDED,
     .from = {ELEMENT_NATURE}},
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
static void position_hints(struct composing *composing, struct section_facts *section)
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

/* Where nothing of that is recorded there is no block of it. */
static void hints_section(struct composing *composing, struct sheet *sheet)
{
    struct section_facts *section = arena_alloc(composing->arena, sizeof *section);
    *section = (struct section_facts){.title = ""};
    if (dsc_ready(composing->in->boat))
        position_hints(composing, section);
    if (boat_fitted(composing->in->boat, ITEM_vhf_dsc) == ANSWER_YES)
        set_hints(composing, section);
    if (section->hint_count > 0)
        block_add(composing, sheet, BLOCK_HINTS)->section = section;
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
    hints_section(composing, sheet);
    spell_section(composing, sheet);
    general_call_make(composing, sheet);
}

/* ---- the pages ---- */

static const struct phrase *call_page_named(struct composing *composing, size_t index)
{
    return phrase_verbatim(composing->arena, page_number(composing, index));
}

/* A word that names the page of that index: "card 2B". */
static const struct phrase *phrase_of_page(struct composing *composing, enum word word,
                                           size_t index)
{
    return phrase_word(composing->arena, word, "number", call_page_named(composing, index), NULL);
}

/* How a page that shows that part is headed; WORD_COUNT: as the sheet. */
static const struct part_words {
    enum call_part part;
    enum word title, when, line;
} part_words[] = {
    {CALL_PART_ANSWERING, WORD_ANSWER_TITLE, WORD_ANSWER_WHEN_ALERT, WORD_ANSWER_CALL_LINE},
    {CALL_PART_HELP, WORD_HELP_TITLE, WORD_COUNT, WORD_HELP_CALL_LINE},
    {CALL_PART_URGENCY, WORD_URGENCY_TITLE, WORD_COUNT, WORD_HELP_CALL_LINE},
    {CALL_PART_RELAY, WORD_RELAY_TITLE, WORD_ANSWER_WHEN, WORD_ANSWER_CALL_LINE},
    {CALL_PART_CANCEL, WORD_CANCEL_TITLE, WORD_CANCEL_WHEN, WORD_ANSWER_CALL_LINE}};

static void part_when_make(struct composing *composing, struct pages_facts *pages,
                           enum call_part part, enum word when)
{
    const char *signs = when == WORD_COUNT ? ""
                                           : phrase_said(composing, word_alone(composing, when));
    pages->signs_of_two[part] = signs;
    for (size_t last = 0; last < SHEET_PAGES_MOST; last++)
        pages->signs_of_many[part][last] = signs;
}

static void part_line_make(struct composing *composing, struct pages_facts *pages,
                           enum call_part part, const struct phrase *line)
{
    struct place origin = source_whole(composing->slot->procedure->source);
    pages->call_lines[part] = cases_of(composing->arena,
                                       (struct card_text){phrase_said(composing, line), origin});
}

/* Other pages than the first are about what helps to send a call, about the distress of others,
 * and about ending one's own. */
static void call_pages_make(struct composing *composing, struct sheet *sheet)
{
    struct pages_facts *pages = pages_add(composing, sheet);
    for (size_t i = 0; i < sizeof part_words / sizeof *part_words; i++) {
        const struct part_words *own = &part_words[i];
        bool alert = boat_can_alert(composing->in->boat);
        enum word when = own->when == WORD_ANSWER_WHEN_ALERT && !alert ? WORD_ANSWER_WHEN
                                                                      : own->when;
        pages->titles[own->part] =
            phrase_said(composing, phrase_upper(composing->arena,
                                                word_alone(composing, own->title)));
        part_when_make(composing, pages, own->part, when);
        part_line_make(composing, pages, own->part, phrase_of_page(composing, own->line, 0));
    }
    part_line_make(composing, pages, CALL_PART_CALL,
                   phrase_word(composing->arena, WORD_CALL_PAGE_LINE,
                               "urgency", call_page_named(composing, 2),
                               "number", call_page_named(composing, 3), NULL));
}

void distress_compose(struct composing *composing, struct sheet *sheet,
                      const struct sheet_list *others)
{
    bool radio = !no_radio_aboard(composing->in->boat);
    (void)others;
    signs_make(composing, sheet, NULL, word_alone(composing, WORD_DISTRESS_WHEN));
    const struct phrase *line = radio ? phrase_of_page(composing, WORD_DISTRESS_CALL_LINE, 1)
                                      : word_alone(composing, WORD_CALL_NO_RADIO_ABOARD);
    cases_add_block(composing, sheet,
                    (struct card_text){phrase_said(composing, line), sheet->origin});
    warnings_make(composing, sheet);
    distress_call_compose(composing, sheet);
    contact_make(composing, sheet);
    plan_make(composing, sheet);
    if (radio)
        call_pages_make(composing, sheet);
}
