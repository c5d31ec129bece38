/* brief_base.c - what only the base can tell a skipper: what changed on board, the rules of the
 * place, whom to call (room: compose). What the record does not have is asked for, with a line to
 * write it upon. */
#include "brief_room.h"

enum { BLANKS_FOR_CHANGES = 3, BLANKS_FOR_RULES = 2 };

/* ---- since the last charter ---- */

/* What was done to a piece, by a date of its entry. */
static const struct done_row { enum gear_field field; enum word word; } done_rows[] = {
    {GEAR_serviced, WORD_BRIEF_SINCE_SERVICED}, {GEAR_installed, WORD_BRIEF_SINCE_NEW},
    {GEAR_tried, WORD_BRIEF_SINCE_TRIED}};

static const struct date_value *done_date(const struct equipment *gear, enum gear_field field)
{
    return field == GEAR_tried ? &gear->tried : gear_date_field(gear, field);
}

static void done_add(struct briefing *briefing, const struct equipment *gear,
                     const struct done_row *row)
{
    struct arena *arena = briefing->writer.composing.arena;
    const struct date_value *value = done_date(gear, row->field);
    struct date since = briefing->hire->since;
    if (since.year == 0 || !value->given ||
        date_compare(date_first_day(value->date), since) < 0)
        return;
    const struct form_cell cell =
        brief_cell(briefing, phrase_word(arena, row->word, "gear", brief_gear(briefing, gear),
                                         "date", brief_day(briefing, value->date), "place",
                                         brief_where(briefing, gear), NULL));
    const struct form_cell cells[2] = {brief_sign(gear), cell};
    form_line_add(&briefing->writer, cells, FORM_PLAIN, value->place);
}

static const struct form_column changed_columns[] = {{FORM_SIGN, "", 0}, {FORM_BLANK, "", 0}};
static const struct form_column done_columns[] = {{FORM_SIGN, "", 0}, {FORM_TEXT, "", 0}};

/* By the dates that the record has of gear; only where it is told since when. */
static void record_since_add(struct briefing *briefing)
{
    const struct boat *boat = briefing->writer.composing.in->boat;
    size_t before = briefing->writer.count;
    if (briefing->hire->since.year == 0)
        return;
    brief_section_add(briefing,
                      &(struct brief_section){
                          .title = WORD_BRIEF_SINCE_RECORD,
                          .note = phrase_word(briefing->writer.composing.arena,
                                              WORD_BRIEF_SINCE_DAY, "date",
                                              brief_day(briefing, briefing->hire->since), NULL),
                          .columns = done_columns, .column_count = 2});
    for (size_t i = 0; i < boat->equipment_count; i++)
        for (size_t k = 0; k < sizeof done_rows / sizeof *done_rows; k++)
            done_add(briefing, &boat->equipment[i], &done_rows[k]);
    if (briefing->writer.sections[before].line_count > 0)
        return;
    const struct form_cell cells[2] = {
        brief_sign(NULL),
        brief_cell(briefing, brief_word(briefing, WORD_BRIEF_SINCE_NOTHING))};
    form_line_add(&briefing->writer, cells, FORM_PLAIN, boat->place);
}

/* Words that a line of a form may have at most, less those that stand before them. */
#define REASON_WORDS_MOST 16

static size_t reason_words(const char *text)
{
    size_t count = text_empty(text) ? 0 : 1;
    for (; *text != '\0'; text++)
        count += *text == ' ' ? 1 : 0;
    return count;
}

/* A reason that is long, or not known, sends people to the card. */
static void change_add(struct briefing *briefing, const struct hire_change *change)
{
    struct arena *arena = briefing->writer.composing.arena;
    bool told = !text_empty(change->reason) &&
                reason_words(change->reason) <= REASON_WORDS_MOST;
    const struct phrase *number = phrase_verbatim(arena, change->number);
    brief_text_add(briefing,
                   told ? phrase_word(arena, WORD_BRIEF_SINCE_CHANGE, "number", number, "reason",
                                      phrase_verbatim(arena, change->reason), NULL)
                        : phrase_word(arena, WORD_BRIEF_SINCE_CARD, "number", number, NULL),
                   briefing->writer.composing.in->boat->place);
}

/* By the register, where the base has one: what her cards say otherwise than those that hung. */
static void cards_since_add(struct briefing *briefing)
{
    const struct hire *hire = briefing->hire;
    if (hire->hung == NULL)
        return;
    brief_section_add(briefing,
                      &(struct brief_section){
                          .title = WORD_BRIEF_SINCE_CARDS,
                          .note = phrase_word(briefing->writer.composing.arena,
                                              WORD_BRIEF_SINCE_DAY, "date",
                                              brief_day(briefing, hire->since), NULL),
                          .columns = brief_text_column, .column_count = 1});
    for (size_t i = 0; i < hire->change_count; i++)
        change_add(briefing, &hire->changes[i]);
    if (hire->change_count == 0)
        brief_text_add(briefing, brief_word(briefing, WORD_BRIEF_SINCE_NOTHING),
                       briefing->writer.composing.in->boat->place);
}

static const struct phrase *cards_named(struct briefing *briefing)
{
    struct arena *arena = briefing->writer.composing.arena;
    const struct sheet_set *cards = briefing->cards;
    const struct phrase *numbers = NULL;
    for (size_t i = 0; i < cards->count; i++)
        if (!cards->sheets[i]->held)
            numbers = phrase_joined(arena, WORD_JOIN_COMMA, numbers,
                                    phrase_verbatim(arena, cards->sheets[i]->number), NULL);
    return numbers == NULL ? NULL : phrase_word(arena, WORD_BRIEF_CARDS_HANG, "cards", numbers,
                                                NULL);
}

/* What was moved, broken or changed no record tells: the lines are blank. */
void brief_since_add(struct briefing *briefing)
{
    const struct phrase *cards = cards_named(briefing);
    record_since_add(briefing);
    cards_since_add(briefing);
    brief_section_add(briefing, &(struct brief_section){
                                    .title = WORD_BRIEF_SINCE,
                                    .note = brief_word(briefing, WORD_BRIEF_SINCE_ASK),
                                    .columns = changed_columns, .column_count = 2});
    for (size_t i = 0; i < BLANKS_FOR_CHANGES; i++) {
        const struct form_cell cells[2] = {
            brief_sign(NULL),
            brief_blank(briefing, brief_word(briefing, WORD_BRIEF_SINCE_BLANK))};
        form_line_add(&briefing->writer, cells, FORM_PLAIN,
                      briefing->writer.composing.in->boat->place);
    }
    if (cards != NULL) {
        const struct form_cell cells[2] = {brief_sign(NULL), brief_blank(briefing, cards)};
        form_line_add(&briefing->writer, cells, FORM_PLAIN,
                      briefing->writer.composing.in->boat->place);
    }
}

/* ---- local rules ---- */

void brief_rules_add(struct briefing *briefing)
{
    struct arena *arena = briefing->writer.composing.arena;
    const struct compose_input *in = briefing->writer.composing.in;
    const struct own_lines *lists[] = {&in->base->own_lines, &in->boat->own_lines};
    bool none = lists[0]->count + lists[1]->count == 0;
    brief_section_add(briefing,
                      &(struct brief_section){
                          .title = WORD_BRIEF_RULES,
                          .note = none ? brief_word(briefing, WORD_BRIEF_RULES_NONE) : NULL,
                          .columns = none ? brief_blank_column : brief_text_column,
                          .column_count = 1});
    for (size_t i = 0; none && i < BLANKS_FOR_RULES; i++)
        brief_blank_add(briefing, NULL);
    for (size_t k = 0; k < sizeof lists / sizeof *lists; k++)
        for (size_t i = 0; i < lists[k]->count; i++) {
            const struct own_line *line = &lists[k]->rows[i];
            brief_text_add(briefing,
                           phrase_word(arena, WORD_BRIEF_RULE, "rule",
                                       phrase_text(arena, &line->say), "source",
                                       phrase_text(arena, &line->source), NULL),
                           line->place);
        }
}

/* ---- whom to call ---- */

static void contact_add(struct briefing *briefing, enum word word, const struct text_value *value,
                        const char *name)
{
    struct arena *arena = briefing->writer.composing.arena;
    if (value->text != NULL)
        brief_text_add(briefing,
                       phrase_word(arena, word, name, phrase_text(arena, value), "name",
                                   phrase_text(arena, &briefing->writer.composing.in->base->name),
                                   NULL),
                       value->place);
}

static void berth_add(struct briefing *briefing)
{
    struct arena *arena = briefing->writer.composing.arena;
    const struct base_record *base = briefing->writer.composing.in->base;
    const struct phrase *berth = phrase_joined(arena, WORD_JOIN_COMMA,
                                               phrase_text(arena, &base->marina),
                                               phrase_text(arena, &base->berth), NULL);
    if (berth != NULL)
        brief_text_add(briefing, phrase_word(arena, WORD_BRIEF_CONTACT_BERTH, "berth", berth, NULL),
                       place_or(base->marina.place, base->berth.place));
}

static void centre_add(struct briefing *briefing)
{
    struct arena *arena = briefing->writer.composing.arena;
    const struct base_record *base = briefing->writer.composing.in->base;
    const struct phrase *name =
        phrase_word(arena, WORD_BRIEF_CONTACT_CENTRE, "name",
                    phrase_verbatim(arena, TEXT_OR_EMPTY(base->centre_name)), NULL);
    const struct phrase *phone =
        base->centre_phone.text == NULL
            ? NULL
            : phrase_word(arena, WORD_BRIEF_CONTACT_PHONE, "phone",
                          phrase_verbatim(arena, base->centre_phone.text), NULL);
    const struct phrase *channel =
        base->centre_channel.text == NULL
            ? NULL
            : phrase_word(arena, WORD_BRIEF_CONTACT_CHANNEL, "channel",
                          phrase_verbatim(arena, base->centre_channel.text), NULL);
    brief_text_add(briefing, phrase_joined(arena, WORD_JOIN_COMMA, name, channel, phone),
                   place_or(base->centre_name.place, base->centre_place));
}

static void shelters_add(struct briefing *briefing)
{
    struct arena *arena = briefing->writer.composing.arena;
    const struct base_record *base = briefing->writer.composing.in->base;
    for (size_t i = 0; i < base->shelter_count; i++)
        brief_text_add(briefing,
                       phrase_word(arena, WORD_BRIEF_CONTACT_SHELTER, "name",
                                   phrase_text(arena, &base->shelters[i].name), "position",
                                   phrase_verbatim(arena,
                                                   TEXT_OR_EMPTY(base->shelters[i].position)),
                                   NULL),
                       base->shelters[i].place);
}

void brief_contacts_add(struct briefing *briefing)
{
    const struct base_record *base = briefing->writer.composing.in->base;
    brief_section_add(briefing, &(struct brief_section){.title = WORD_BRIEF_CONTACTS,
                                                        .columns = brief_text_column,
                                                        .column_count = 1});
    centre_add(briefing);
    contact_add(briefing, WORD_BRIEF_CONTACT_BASE, &base->phone_24h, "phone");
    contact_add(briefing, WORD_BRIEF_CONTACT_FIRE, &base->fire_phone, "phone");
    berth_add(briefing);
    shelters_add(briefing);
}
