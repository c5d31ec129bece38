/* survey_line.c - lines of a survey: what is known of a piece of gear, and below it what is to be
 * tried, read and recorded (room: compose). A fact that is not recorded is asked, never
 * supposed. */
#include "gear_words.h"
#include "survey_room.h"

#include "item_states.h"

/* ---- columns ---- */

static struct form_column column_of(enum form_cell_kind kind, const char *head)
{
    return (struct form_column){.kind = kind, .head = head};
}

static struct survey_columns columns_with(struct survey *survey, const enum word *ticks,
                                          size_t count)
{
    struct form_column *columns = arena_array(survey_composing(survey)->arena, 3 + count,
                                              sizeof *columns);
    columns[0] = column_of(FORM_NUMBER, "");
    columns[1] = column_of(FORM_SIGN, "");
    columns[2] = column_of(FORM_TEXT, "");
    for (size_t i = 0; i < count; i++)
        columns[3 + i] = column_of(FORM_TICK, survey_word(survey, ticks[i]));
    return (struct survey_columns){columns, 3 + count};
}

struct survey_columns survey_recorded_columns(struct survey *survey)
{
    static const enum word ticks[] = {WORD_SURVEY_HERE, WORD_SURVEY_MOVED, WORD_SURVEY_MISSING,
                                      WORD_SURVEY_WORKS};
    return columns_with(survey, ticks, sizeof ticks / sizeof *ticks);
}

struct survey_columns survey_unrecorded_columns(struct survey *survey)
{
    static const enum word ticks[] = {WORD_SURVEY_ABOARD, WORD_SURVEY_NONE, WORD_SURVEY_WORKS};
    return columns_with(survey, ticks, sizeof ticks / sizeof *ticks);
}

/* ---- what is known ---- */

static const struct phrase *zones_phrase(struct survey *survey, const struct zone_values *zones,
                                         enum word word)
{
    struct arena *arena = survey_composing(survey)->arena;
    const struct phrase **names = arena_array(arena, zones->count, sizeof *names);
    for (size_t i = 0; i < zones->count; i++)
        names[i] = phrase_zone(arena, zone_of(zones->items[i].value));
    const struct phrase *list = phrase_list(arena, WORD_JOIN_COMMA, names, zones->count);
    return list == NULL ? NULL : phrase_word(arena, word, "places", list, NULL);
}

/* "across: SHUT"; of gear that has one use, that. */
static const struct phrase *handled(struct survey *survey, const struct equipment *gear,
                                    enum end_state state)
{
    struct arena *arena = survey_composing(survey)->arena;
    const struct phrase *how = phrase_text(arena, gear_handling_of(gear, state));
    if (how == NULL || state == STATE_ANY)
        return how;
    return phrase_word(arena, WORD_HANDLED_STATE, "how", how, "state",
                       phrase_upper(arena, phrase_state(arena, state)), NULL);
}

static const struct phrase *survey_handlings(struct survey *survey, const struct equipment *gear)
{
    const struct phrase *members[STATE_COUNT];
    size_t count = 0;
    enum item_key item = gear->kind->item;
    if (!item_is_contrary(item))
        return handled(survey, gear, STATE_ANY);
    for (enum end_state state = STATE_ANY + 1; state < STATE_COUNT; state++)
        if (item_state_field(item, state) == GEAR_how)
            members[count++] = handled(survey, gear, state);
    return phrase_list(survey_composing(survey)->arena, WORD_JOIN_COMMA, members, count);
}

static const struct phrase *text_fact(struct survey *survey, const struct text_value *text,
                                      enum word word)
{
    struct arena *arena = survey_composing(survey)->arena;
    const struct phrase *said = phrase_text(arena, text);
    return said == NULL ? NULL : phrase_word(arena, word, "fact", said, NULL);
}

/* Bold name, spot and what a crew can use; how it is worked; the way to it. */
static const char *piece_known(struct survey *survey, const struct equipment *gear)
{
    struct composing *composing = survey_composing(survey);
    struct arena *arena = composing->arena;
    struct gear_words words = gear_words_of(composing, gear);
    const struct phrase *first =
        phrase_joined(arena, WORD_JOIN_COMMA,
                      phrase_word(arena, WORD_SURVEY_NAME, "name", words.name, NULL),
                      words.detail, NULL);
    const struct phrase *rest[] = {
        survey_handlings(survey, gear), text_fact(survey, &gear->painter, WORD_SURVEY_LINE_FAST),
        text_fact(survey, &gear->release, WORD_SURVEY_FREED),
        zones_phrase(survey, &gear->inside, WORD_SURVEY_WAY_IN),
        zones_phrase(survey, &gear->past, WORD_SURVEY_WAY_PAST),
        survey_untried(survey, gear->kind->item)};
    const struct phrase *second = phrase_list(arena, WORD_JOIN_SEMICOLON, rest,
                                              sizeof rest / sizeof *rest);
    return survey_said(survey, phrase_joined(arena, WORD_JOIN_SEMICOLON, first, second, NULL));
}

/* ---- what is to be read on it ---- */

static void dates_ask(struct survey *survey, const struct equipment *gear)
{
    struct arena *arena = survey_composing(survey)->arena;
    for (enum gear_field field = GEAR_FIELD_NONE + 1; field < GEAR_FIELD_COUNT; field++) {
        const struct field *row = gear_field_row(field);
        const char *date = row->kind == FIELD_DATE ? field_text(row, gear, arena) : NULL;
        if (date == NULL)
            continue;
        const struct phrase *label =
            phrase_word(arena, WORD_SURVEY_DATE, "what",
                        phrase_verbatim(arena, survey_gear_word(survey, field)), "date",
                        phrase_verbatim(arena, date), NULL);
        survey_ask(survey, survey_said(survey, label), FORM_SHORT);
    }
}

static void identity_ask(struct survey *survey, const char *what, const struct text_value *value)
{
    struct arena *arena = survey_composing(survey)->arena;
    const char *const same[] = {survey_word(survey, WORD_SURVEY_AS_ON_IT)};
    if (value->text == NULL)
        return;
    const struct phrase *label = phrase_word(arena, WORD_SURVEY_SAME, "what",
                                             phrase_verbatim(arena, what), "value",
                                             phrase_verbatim(arena, survey_grouped(
                                                                        survey, value->text)),
                                             NULL);
    survey_ask_blank(survey,
                     &(struct form_blank){survey_said(survey, label), same, 1, FORM_LONG});
}

static void identities_ask(struct survey *survey, const struct equipment *gear)
{
    identity_ask(survey, survey_gear_word(survey, GEAR_hex_id), &gear->hex_id);
    identity_ask(survey, survey_gear_word(survey, GEAR_mmsi), &gear->mmsi);
    identity_ask(survey, survey_gear_word(survey, GEAR_serial), &gear->serial);
    if (gear->kind->item == ITEM_vhf_dsc)
        identity_ask(survey, survey_radio_word(survey, RADIO_mmsi),
                     &survey_boat(survey)->radio.mmsi);
}

/* ---- what is not recorded ---- */

static bool fact_asked_of(const struct asked_item *asked, const struct equipment *gear,
                          enum gear_field field)
{
    for (size_t i = 0; asked != NULL && i < asked->fact_count; i++)
        if (asked->facts[i] == field)
            return true;
    return item_field(gear->kind->item, field) >= BELONGS_ASKED;
}

/* A hand may get there from the cockpit. Of all other places the zone tells. */
static bool survey_may_reach(const struct zone *zone)
{
    return zone != NULL && (zone->at_door || zone->id == ZONE_companionway);
}

/* Facts that other facts of the piece make idle. */
static bool fact_idle(const struct boat *boat, const struct equipment *gear,
                      enum gear_field field)
{
    if (field == GEAR_side)
        return gear->place_side != SIDE_NONE ||
               (gear->place_zone != NULL && gear->place_zone->narrow);
    if (field == GEAR_serves)
        return boat->engine_space_count < 2;
    if (field == GEAR_from_cockpit)
        return !survey_may_reach(worked_zone(gear));
    return field == GEAR_works && gear->valve.answer == ANSWER_NO;
}

bool survey_lacks(const struct boat *boat, const struct asked_item *asked,
                  const struct equipment *gear, enum gear_field field)
{
    const struct field *row = gear_field_row(field);
    if (field == GEAR_item || field == GEAR_zone || field == GEAR_how ||
        !fact_asked_of(asked, gear, field) || fact_idle(boat, gear, field))
        return false;
    return field_place(row, gear).line == 0;
}

static const struct asked_item *asked_row_of(const struct survey *survey, enum item_key item)
{
    for (size_t i = 0; i < survey->asked.count; i++)
        if (survey->asked.rows[i].kind->item == item)
            return &survey->asked.rows[i];
    return NULL;
}

/* The call sign is not on the set: it is asked with the papers. */
static void facts_of_radio_ask(struct survey *survey, const struct radio_facts *radio,
                               enum lacks_said *said)
{
    for (enum radio_fact fact = RADIO_FACT_NONE + 1; fact < RADIO_FACT_COUNT; fact++) {
        if (fact == RADIO_call_sign || survey_radio_word(survey, fact) == NULL ||
            field_place(radio_fact_row(fact), radio).line > 0)
            continue;
        survey_lacks_say(survey, said);
        survey_ask_radio(survey, fact);
    }
}

static void lacking_ask(struct survey *survey, const struct equipment *gear)
{
    const struct boat *boat = survey_boat(survey);
    const struct asked_item *asked = asked_row_of(survey, gear->kind->item);
    enum lacks_said said =
        survey_ask_handling(survey, gear->kind, gear) ? LACKS_SAID : LACKS_UNSAID;
    for (enum gear_field field = GEAR_FIELD_NONE + 1; field < GEAR_FIELD_COUNT; field++) {
        if (!survey_lacks(boat, asked, gear, field))
            continue;
        survey_lacks_say(survey, &said);
        survey_ask_gear(survey, field);
    }
    if (gear->kind->item == ITEM_vhf_dsc)
        facts_of_radio_ask(survey, &boat->radio, &said);
}

/* ---- lines ---- */

void survey_piece_add(struct survey *survey, size_t index)
{
    const struct equipment *gear = &survey_boat(survey)->equipment[index];
    const char *number = survey_number(survey);
    const struct form_cell cells[] = {
        {number, NULL}, {TEXT_OR_EMPTY(gear->tag), gear->kind},
        {piece_known(survey, gear), NULL}, {"", NULL}, {"", NULL}, {"", NULL}, {"", NULL}};
    survey->numbers[index] = number;
    survey->walked[survey->walked_count++] = index;
    form_line_add(&survey->writer, cells, FORM_PLAIN, gear->place);
    survey_ask_try(survey, gear);
    dates_ask(survey, gear);
    identities_ask(survey, gear);
    lacking_ask(survey, gear);
}

/* "Fire port, port engine" */
static const struct phrase *unrecorded_name(struct survey *survey,
                                            const struct survey_unrecorded *line)
{
    struct arena *arena = survey_composing(survey)->arena;
    return phrase_joined(arena, WORD_JOIN_COMMA, phrase_item(arena, line->asked->kind->item),
                         phrase_zone(arena, zone_of(line->space)),
                         line->space == ZONE_NONE
                             ? NULL : place_phrase(survey_composing(survey), NULL,
                                                   zone_of(line->space)->side, NULL));
}

static const char *unrecorded_said(struct survey *survey, const struct survey_unrecorded *line)
{
    struct arena *arena = survey_composing(survey)->arena;
    const struct phrase *name = phrase_word(arena, WORD_SURVEY_NAME, "name",
                                            unrecorded_name(survey, line), NULL);
    if (line->place != NULL)
        name = phrase_word(arena, WORD_SURVEY_OFTEN, "name", name, "place", line->place, NULL);
    else if (line->ticked == TICKED_BELOW)
        name = phrase_word(arena, WORD_SURVEY_FIRST, "name", name, NULL);
    return survey_said(survey, name);
}

static void all_facts_ask(struct survey *survey, const struct survey_unrecorded *line)
{
    const struct asked_item *asked = line->asked;
    enum lacks_said said = LACKS_SAID;
    survey_ask_handling(survey, asked->kind, NULL);
    for (size_t i = 0; i < asked->fact_count; i++) {
        bool idle = asked->facts[i] == GEAR_serves ||
                    (asked->facts[i] == GEAR_from_cockpit && !survey_may_reach(asked->usual));
        if (!idle)
            survey_ask_gear(survey, asked->facts[i]);
    }
    if (asked->kind->item == ITEM_vhf_dsc)
        facts_of_radio_ask(survey, &survey_boat(survey)->radio, &said);
}

void survey_unrecorded_add(struct survey *survey, const struct survey_unrecorded *line)
{
    bool columns = line->ticked == TICKED_IN_COLUMNS;
    const char *tick = columns ? "" : NULL;
    const struct form_cell cells[] = {
        {survey_number(survey), NULL}, {line->tag, line->asked->kind},
        {unrecorded_said(survey, line), NULL}, {tick, NULL}, {tick, NULL}, {tick, NULL},
        {tick, NULL}};
    const char *const aboard[] = {survey_word(survey, WORD_SURVEY_IS_ABOARD),
                                  survey_word(survey, WORD_SURVEY_IS_NONE)};
    form_line_add(&survey->writer, cells, FORM_PLAIN, survey_boat(survey)->place);
    if (!columns)
        survey_ask_choice(survey, "", aboard, 2);
    survey_ask(survey, survey_word(survey, WORD_SURVEY_PLACE), FORM_LONG);
    all_facts_ask(survey, line);
}
