/* distress.c - the distress card: what is said of a MAYDAY, and what its pages are called (room:
 * compose). Its other sections are in the files distress_*.c. */
#include "distress_room.h"

/* A text of the record, filled into a word; NULL: it is not recorded. */
static const struct phrase *hint_phrase(struct composing *composing, enum word word,
                                        const char *name, const struct text_value *text)
{
    const struct phrase *told = phrase_text(composing->arena, text);
    return told == NULL ? NULL : phrase_word(composing->arena, word, name, told, NULL);
}

static const struct phrase *second_station_hint(struct composing *composing)
{
    const struct phrase *place = second_station_place(composing);
    return place == NULL ? NULL
                         : phrase_word(composing->arena, WORD_SECOND_STATION, "place", place, NULL);
}

/* What belongs to the fixed set and lies elsewhere. */
static void set_hints(struct composing *composing, struct section_facts *section)
{
    const struct radio_facts *radio = &composing->in->boat->radio;
    hint_add(composing, section,
             second_station_hint(composing),
             (struct card_hint){.id = "radio second_station", .yields = YIELDS_SECOND_STATION,
                                .origin = radio->second_station.section.place});
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
    if (boat_fitted(composing->in->boat, ITEM_vhf_dsc) == ANSWER_YES)
        set_hints(composing, section);
    if (section->hint_count > 0)
        block_add(composing, sheet, BLOCK_HINTS)->section = section;
}

/* That the nature is left open is a choice of a set's list: without one it says nothing. */
static bool nature_listed(const struct boat *boat, enum nature_key key)
{
    return key != NATURE_UNDESIGNATED || boat_can_alert(boat);
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
        if (!nature_listed(composing->in->boat, key))
            continue;
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

void distress_call_compose(struct composing *composing, struct sheet *sheet)
{
    bool radio = !no_radio_aboard(composing->in->boat);
    nature_section(composing, sheet);
    if (radio) {
        position_section(composing, sheet);
        urgency_make(composing, sheet);
    }
    answers_make(composing, sheet);
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
    {CALL_PART_HELP, WORD_HELP_TITLE, WORD_COUNT, WORD_HELP_CALL_LINE},
    {CALL_PART_PLACE, WORD_PLACE_TITLE, WORD_COUNT, WORD_HELP_CALL_LINE},
    {CALL_PART_URGENCY, WORD_URGENCY_TITLE, WORD_COUNT, WORD_HELP_CALL_LINE},
    {CALL_PART_PHRASES, WORD_URGENCY_TITLE, WORD_COUNT, WORD_HELP_CALL_LINE},
    {CALL_PART_ANSWERING, WORD_RELAY_TITLE, WORD_RELAY_WHEN, WORD_ANSWER_CALL_LINE},
    {CALL_PART_ANSWER, WORD_RELAY_TITLE, WORD_RELAY_WHEN, WORD_ANSWER_CALL_LINE},
    {CALL_PART_RELAY, WORD_RELAY_TITLE, WORD_RELAY_WHEN, WORD_ANSWER_CALL_LINE},
    {CALL_PART_CANCEL, WORD_CANCEL_TITLE, WORD_CANCEL_WHEN, WORD_ANSWER_CALL_LINE},
    {CALL_PART_BEACON, WORD_BEACON_TITLE, WORD_CANCEL_WHEN, WORD_ANSWER_CALL_LINE}};

static void part_when_make(struct composing *composing, struct pages_facts *pages,
                           enum call_part part, enum word when)
{
    const char *signs = when == WORD_COUNT ? ""
                                           : phrase_said(composing, word_alone(composing, when));
    pages->signs_of_two[part] = signs;
    for (size_t last = 0; last < SHEET_PAGES_MOST; last++)
        pages->signs_of_many[part][last] = signs;
}

static const struct cases_facts *line_cases(struct composing *composing,
                                            const struct phrase *line)
{
    struct place origin = source_whole(composing->slot->procedure->source);
    return cases_of(composing->arena,
                    (struct card_text){phrase_said(composing, line), origin});
}

/* On the first page: where the urgency call is, and, behind it, all else. */
static const struct phrase *first_line(struct composing *composing, size_t urgency, size_t rest)
{
    return phrase_word(composing->arena, WORD_CALL_PAGE_LINE, "urgency",
                       call_page_named(composing, urgency), "number",
                       call_page_named(composing, rest), NULL);
}

static void first_lines_make(struct composing *composing, struct pages_facts *pages)
{
    for (size_t urgency = 1; urgency < CALL_REST_MOST; urgency++)
        for (size_t rest = urgency + 1; rest <= CALL_REST_MOST; rest++)
            pages->first_lines[urgency][rest] =
                line_cases(composing, first_line(composing, urgency, rest));
}

/* Other pages than the first are about what helps to send a call, about the distress of others,
 * and about ending one's own. */
static void call_pages_make(struct composing *composing, struct sheet *sheet)
{
    struct pages_facts *pages = pages_add(composing, sheet);
    for (size_t i = 0; i < sizeof part_words / sizeof *part_words; i++) {
        const struct part_words *own = &part_words[i];
        pages->titles[own->part] =
            phrase_said(composing, phrase_upper(composing->arena,
                                                word_alone(composing, own->title)));
        part_when_make(composing, pages, own->part, own->when);
        pages->call_lines[own->part] =
            line_cases(composing, phrase_of_page(composing, own->line, 0));
    }
    first_lines_make(composing, pages);
}

void distress_compose(struct composing *composing, struct sheet *sheet,
                      const struct sheet_list *others)
{
    bool radio = !no_radio_aboard(composing->in->boat);
    (void)others;
    signs_make(composing, sheet, NULL, word_alone(composing, WORD_DISTRESS_WHEN));
    const struct phrase *line = word_alone(composing, radio ? WORD_DISTRESS_CALL_LINE
                                                            : WORD_CALL_NO_RADIO_ABOARD);
    cases_add_block(composing, sheet,
                    (struct card_text){phrase_said(composing, line), sheet->origin});
    warnings_make(composing, sheet);
    distress_call_compose(composing, sheet);
    contact_make(composing, sheet);
    plan_make(composing, sheet);
    if (radio)
        call_pages_make(composing, sheet);
}
