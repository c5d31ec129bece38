/* survey_facts.c - the first section of a survey: what the boat is called, and what else of her own
 * is held against paint and papers, or is not recorded (room: compose). */
#include "survey_room.h"

#include "reading.h"

#define FACT_SHARE_WHAT 320
#define FACT_SHARE_VALUE 240

static const struct phrase *verbatim(struct survey *survey, const char *text)
{
    return phrase_verbatim(survey_composing(survey)->arena, text);
}

/* A fact that is held against the boat; the value NULL: it is not recorded. Of a new boat all of
 * them are written. */
static void held_fact_add(struct survey *survey, const char *what, const char *value,
                          struct place origin)
{
    bool known = !text_empty(value);
    const struct form_cell asked[] = {{survey_number(survey), NULL}, {what, NULL}, {"", NULL}};
    if (survey_is_new(survey)) {
        form_line_add(&survey->writer, asked, FORM_PLAIN, origin);
        return;
    }
    const struct form_cell cells[] = {
        {asked[0].text, NULL}, {what, NULL},
        {known ? survey_grouped(survey, value) : survey_word(survey, WORD_NOT_RECORDED), NULL},
        {known ? "" : NULL, NULL}, {"", NULL}};
    form_line_add(&survey->writer, cells, FORM_PLAIN, origin);
}

static void boat_fact_add(struct survey *survey, enum boat_fact fact)
{
    const struct boat *boat = survey_boat(survey);
    const struct field *field = boat_fact_row(fact);
    held_fact_add(survey, survey_boat_word(survey, fact),
                  field_text(field, &boat->facts, survey_composing(survey)->arena),
                  place_or(field_place(field, &boat->facts), boat->place));
}

static bool radio_absent(const struct boat *boat)
{
    return boat_fitted(boat, ITEM_vhf_dsc) == ANSWER_NO;
}

static void radio_fact_add(struct survey *survey, enum radio_fact fact)
{
    const struct boat *boat = survey_boat(survey);
    const struct field *field = radio_fact_row(fact);
    held_fact_add(survey, survey_radio_word(survey, fact),
                  field_text(field, &boat->radio, survey_composing(survey)->arena),
                  place_or(field_place(field, &boat->radio), boat->radio_place));
}

/* The identity of each beacon, for the papers of its registration. */
static void beacons_add(struct survey *survey)
{
    const struct boat *boat = survey_boat(survey);
    struct composing *composing = survey_composing(survey);
    for (size_t i = 0; i < boat->equipment_count; i++) {
        const struct equipment *gear = &boat->equipment[i];
        if (item_field(gear->kind->item, GEAR_hex_id) < BELONGS_ASKED)
            continue;
        const struct phrase *what =
            phrase_word(composing->arena, WORD_SURVEY_IDENTITY, "tag",
                        verbatim(survey, TEXT_OR_EMPTY(gear->tag)), "name",
                        gear_called(composing, gear, 1), NULL);
        held_fact_add(survey, survey_said(survey, what), gear->hex_id.text, gear->place);
    }
}

/* What stands on a line of its own. */
static const enum boat_fact held_facts[] = {BOAT_name, BOAT_flag, BOAT_persons_max,
                                            BOAT_draught_m};

static bool has_line(enum boat_fact fact)
{
    for (size_t i = 0; i < sizeof held_facts / sizeof *held_facts; i++)
        if (held_facts[i] == fact)
            return true;
    return false;
}

/* A name is asked in other words only where it is recorded in them. */
static bool boat_fact_asked(struct survey *survey, enum boat_fact fact)
{
    const struct boat *boat = survey_boat(survey);
    bool of_sails = fact == BOAT_thickest_wire_mm && boat->facts.rig.value == RIG_MOTOR;
    bool of_name = fact == BOAT_name_spoken || fact == BOAT_name_latin;
    return survey_boat_word(survey, fact) != NULL && !has_line(fact) && !of_sails && !of_name &&
           field_place(boat_fact_row(fact), &boat->facts).line == 0;
}

/* The line that they stand below, before the first of them. */
static void rest_begin(struct survey *survey, enum lacks_said *said)
{
    enum word word = survey_is_new(survey) ? WORD_SURVEY_REST : WORD_SURVEY_REST_LACKING;
    size_t columns = survey_is_new(survey) ? 3 : 5;
    struct form_cell cells[5] = {{"", NULL}, {"", NULL}, {"", NULL}};
    if (*said == LACKS_SAID)
        return;
    cells[0].text = survey_number(survey);
    cells[1].text = survey_word(survey, word);
    cells[columns - 1].text = NULL;
    form_line_add(&survey->writer, cells, FORM_PLAIN, survey_boat(survey)->place);
    *said = LACKS_SAID;
}

static void engines_ask(struct survey *survey, enum lacks_said *said)
{
    const struct boat *boat = survey_boat(survey);
    for (size_t i = 0; !boat->engines_given && i < boat->engine_space_count; i++) {
        rest_begin(survey, said);
        survey_ask(survey, survey_word(survey, WORD_SURVEY_ENGINE), FORM_LONG);
    }
}

static void gas_ask(struct survey *survey, enum lacks_said *said)
{
    const struct gas_facts *gas = &survey_boat(survey)->gas;
    const char *const drains[] = {survey_word(survey, WORD_SURVEY_OVERBOARD),
                                  survey_word(survey, WORD_SURVEY_INBOARD),
                                  survey_word(survey, WORD_SURVEY_NOWHERE)};
    if (gas->carried.answer == ANSWER_NOT_RECORDED) {
        rest_begin(survey, said);
        survey_ask_answer(survey, survey_word(survey, WORD_SURVEY_GAS));
    }
    if (gas->carried.answer != ANSWER_NO && gas->locker_drains.value == DRAIN_UNSAID) {
        rest_begin(survey, said);
        survey_ask_choice(survey, survey_word(survey, WORD_SURVEY_DRAIN), drains, 3);
    }
}

/* All else that is not recorded. */
static void rest_ask(struct survey *survey)
{
    enum lacks_said said = LACKS_UNSAID;
    for (enum boat_fact fact = BOAT_FACT_NONE + 1; fact < BOAT_FACT_COUNT; fact++)
        if (boat_fact_asked(survey, fact)) {
            rest_begin(survey, &said);
            survey_ask_boat(survey, fact);
        }
    engines_ask(survey, &said);
    gas_ask(survey, &said);
}

static void cards_line_add(struct survey *survey)
{
    const struct form_cell cells[] = {
        {survey_number(survey), NULL}, {survey_word(survey, WORD_SURVEY_CODES), NULL},
        {survey_word(survey, WORD_SURVEY_OF_BASE), NULL}, {"", NULL}, {"", NULL}};
    form_line_add(&survey->writer, cells, FORM_PLAIN, survey_boat(survey)->place);
}

/* What the model of a sister ship says was not yet seen on her. */
static const char *facts_note(struct survey *survey)
{
    if (survey_is_new(survey))
        return "";
    return survey_word(survey, survey_boat(survey)->likeness.supposed ? WORD_SURVEY_MODEL_NOTE
                                                                      : WORD_SURVEY_BOAT_NOTE);
}

/* What is recorded has columns of its own. */
static void facts_section_begin(struct survey *survey)
{
    struct form_column *columns = arena_array(survey_composing(survey)->arena, 5,
                                              sizeof *columns);
    size_t count = 0;
    columns[count++] = (struct form_column){.kind = FORM_NUMBER, .head = ""};
    columns[count++] = (struct form_column){FORM_TEXT, "", FACT_SHARE_WHAT};
    if (!survey_is_new(survey)) {
        columns[count++] = (struct form_column){
            FORM_TEXT, survey_word(survey, WORD_SURVEY_RECORDED), FACT_SHARE_VALUE};
        columns[count++] = (struct form_column){
            FORM_TICK, survey_word(survey, WORD_SURVEY_RIGHT), 0};
    }
    columns[count++] = (struct form_column){
        FORM_BLANK, survey_is_new(survey) ? "" : survey_word(survey, WORD_SURVEY_ELSE), 0};
    form_section_add(&survey->writer,
                     &(struct form_section){
                         .title = survey_word(survey, WORD_SURVEY_BOAT),
                         .note = facts_note(survey),
                         .columns = columns, .column_count = count});
}

void survey_facts_add(struct survey *survey)
{
    facts_section_begin(survey);
    for (size_t i = 0; i < sizeof held_facts / sizeof *held_facts; i++)
        boat_fact_add(survey, held_facts[i]);
    if (!radio_absent(survey_boat(survey))) {
        radio_fact_add(survey, RADIO_call_sign);
        radio_fact_add(survey, RADIO_mmsi);
    }
    beacons_add(survey);
    if (!survey_is_new(survey))
        cards_line_add(survey);
    rest_ask(survey);
}
