/* survey_asked.c - how a fact is asked on a survey: its words, boxes for what it can be, or room
 * to write (room: compose). */
#include "survey_room.h"

#include "item_states.h"

/* ---- words of facts ---- */

#define GEAR_WORD(key, ...) [GEAR_##key] = WORD_ASK_##key,
#define WORD_ASK_item WORD_COUNT   /* what it is, and metres: never asked */
#define WORD_ASK_at WORD_COUNT
static const enum word gear_fact_words[GEAR_FIELD_COUNT] = {GEAR_FIELD_LIST(GEAR_WORD)};

/* What tells a boat's kind is on no list of what is asked. */
#define WORD_ASK_BOAT_specimen WORD_COUNT
#define WORD_ASK_BOAT_hull WORD_COUNT
#define WORD_ASK_BOAT_rig WORD_COUNT
#define BOAT_WORD(key, ...) [BOAT_##key] = WORD_ASK_BOAT_##key,
static const enum word boat_fact_words[BOAT_FACT_COUNT] = {BOAT_FACT_LIST(BOAT_WORD)};

/* The place of the set is asked as that of all gear. */
#define WORD_ASK_RADIO_tag WORD_COUNT
#define WORD_ASK_RADIO_zone WORD_COUNT
#define WORD_ASK_RADIO_side WORD_COUNT
#define WORD_ASK_RADIO_spot WORD_COUNT
#define RADIO_WORD(key, ...) [RADIO_##key] = WORD_ASK_RADIO_##key,
static const enum word radio_fact_words[RADIO_FACT_COUNT] = {RADIO_FACT_LIST(RADIO_WORD)};

static const char *word_of_fact(struct survey *survey, enum word word)
{
    return word == WORD_COUNT ? NULL : survey_word(survey, word);
}

const char *survey_gear_word(struct survey *survey, enum gear_field field)
{
    return word_of_fact(survey, gear_fact_words[field]);
}

const char *survey_boat_word(struct survey *survey, enum boat_fact fact)
{
    return word_of_fact(survey, boat_fact_words[fact]);
}

const char *survey_radio_word(struct survey *survey, enum radio_fact fact)
{
    return word_of_fact(survey, radio_fact_words[fact]);
}

/* ---- what is asked ---- */

static const char *label_lacking(struct survey *survey, const char *label)
{
    struct arena *arena = survey_composing(survey)->arena;
    return survey_said(survey,
                       phrase_joined(arena, WORD_JOIN_SPACE,
                                     word_alone(survey_composing(survey), WORD_SURVEY_LACKS),
                                     phrase_verbatim(arena, label), NULL));
}

void survey_ask_blank(struct survey *survey, const struct form_blank *blank)
{
    struct form_blank own = *blank;
    if (survey->lacks_next)
        own.label = label_lacking(survey, blank->label);
    survey->lacks_next = false;
    form_blank_add(&survey->writer, &own);
}

void survey_ask(struct survey *survey, const char *label, enum form_room room)
{
    survey_ask_blank(survey, &(struct form_blank){.label = label, .room = room});
}

void survey_ask_choice(struct survey *survey, const char *label, const char *const *choices,
                       size_t count)
{
    survey_ask_blank(survey, &(struct form_blank){label, choices, count, FORM_NO_ROOM});
}

void survey_ask_answer(struct survey *survey, const char *label)
{
    const char *const answers[] = {survey_word(survey, WORD_SURVEY_YES),
                                   survey_word(survey, WORD_SURVEY_NO)};
    survey_ask_choice(survey, label, answers, 2);
}

void survey_ask_side(struct survey *survey)
{
    const char *const sides[] = {
        survey_word(survey, WORD_SIDE_PORT), survey_word(survey, WORD_SIDE_STARBOARD),
        survey_word(survey, WORD_SIDE_CENTRE), survey_word(survey, WORD_SIDE_BOTH)};
    survey_ask_choice(survey, survey_gear_word(survey, GEAR_side), sides,
                      sizeof sides / sizeof *sides);
}

/* Fields whose choices have boxes: the words of all of them stand one behind the other. */
struct choice_words {
    enum gear_field field;
    enum word first;
    size_t count;
};

static const struct choice_words choice_rows[] = {
    {GEAR_agent, WORD_IS_agent_powder, AGENT_COUNT - 1},
    {GEAR_kind, WORD_IS_kind_handwheel, VALVE_COUNT - 1},
    {GEAR_stop, WORD_IS_stop_current, STOP_COUNT - 1},
    {GEAR_fed_by, WORD_IS_fed_by_battery, FEED_COUNT - 1},
    {GEAR_works, WORD_IS_works_freely, WORKS_COUNT - 1},
    {GEAR_wearer, WORD_IS_wearer_adult, WEARER_COUNT - 1},
    {GEAR_lanyard, WORD_IS_lanyard_stowed, LANYARD_COUNT - 1},
    {GEAR_drives, WORD_IS_drives_rudder, DRIVES_COUNT - 1},
    {GEAR_chain_end, WORD_IS_chain_end_cord, CHAIN_END_COUNT - 1},
    {GEAR_kit, WORD_IS_kit_tourniquet, KIT_COUNT - 1},
};
#define CHOICES_MOST 12

/* False: its choices have no words. */
static bool choices_ask(struct survey *survey, enum gear_field field)
{
    const char *words[CHOICES_MOST];
    for (size_t i = 0; i < sizeof choice_rows / sizeof *choice_rows; i++) {
        const struct choice_words *row = &choice_rows[i];
        if (row->field != field)
            continue;
        for (size_t k = 0; k < row->count && k < CHOICES_MOST; k++)
            words[k] = survey_word(survey, row->first + k);
        survey_ask_choice(survey, survey_gear_word(survey, field), words, row->count);
        return true;
    }
    return false;
}

static enum form_room room_of(const struct field *field)
{
    return field->kind == FIELD_NUMBER || field->kind == FIELD_DATE ? FORM_SHORT : FORM_LONG;
}

static void fact_ask(struct survey *survey, const struct field *field, const char *label)
{
    if (field->kind == FIELD_ANSWER)
        survey_ask_answer(survey, label);
    else
        survey_ask(survey, label, room_of(field));
}

void survey_ask_gear(struct survey *survey, enum gear_field field)
{
    if (field == GEAR_side)
        survey_ask_side(survey);
    else if (field == GEAR_tag)
        survey_ask(survey, survey_gear_word(survey, field), FORM_SHORT);
    else if (!choices_ask(survey, field))
        fact_ask(survey, gear_field_row(field), survey_gear_word(survey, field));
}

void survey_ask_boat(struct survey *survey, enum boat_fact fact)
{
    fact_ask(survey, boat_fact_row(fact), survey_boat_word(survey, fact));
}

void survey_ask_radio(struct survey *survey, enum radio_fact fact)
{
    fact_ask(survey, radio_fact_row(fact), survey_radio_word(survey, fact));
}

void survey_lacks_say(struct survey *survey, enum lacks_said *said)
{
    survey->lacks_next = *said == LACKS_UNSAID;
    *said = LACKS_SAID;
}

/* ---- how it is worked ---- */

static bool handling_known(const struct equipment *gear, enum end_state state)
{
    return gear != NULL && gear_handling_of(gear, state) != NULL;
}

static bool any_handling_known(const struct item_kind *kind, const struct equipment *gear)
{
    for (enum end_state state = STATE_ANY; state < STATE_COUNT; state++)
        if ((state == STATE_ANY || item_state_field(kind->item, state) == GEAR_how) &&
            handling_known(gear, state))
            return true;
    return false;
}

static const struct phrase *state_asked(struct survey *survey, enum end_state state)
{
    struct arena *arena = survey_composing(survey)->arena;
    return phrase_word(arena, WORD_SURVEY_HOW, "state", phrase_state(arena, state), NULL);
}

/* An opening without a valve is worked by nobody. */
bool survey_ask_handling(struct survey *survey, const struct item_kind *kind,
                         const struct equipment *gear)
{
    enum lacks_said said = gear == NULL ? LACKS_SAID : LACKS_UNSAID;
    bool contrary = item_is_contrary(kind->item);
    if (item_field(kind->item, GEAR_how) < BELONGS_ASKED || any_handling_known(kind, gear) ||
        (gear != NULL && gear->valve.answer == ANSWER_NO))
        return false;
    survey_lacks_say(survey, &said);
    for (enum end_state state = STATE_ANY + 1; contrary && state < STATE_COUNT; state++)
        if (item_state_field(kind->item, state) == GEAR_how)
            survey_ask(survey, survey_said(survey, state_asked(survey, state)), FORM_LONG);
    if (!contrary)
        survey_ask_gear(survey, GEAR_how);
    return gear != NULL;
}
