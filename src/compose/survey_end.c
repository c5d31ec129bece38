/* survey_end.c - the last sections of a survey: what is not fitted, what moved, how controls are
 * left, who decides whether the boat sails, and what the returning skipper tells (room:
 * compose). */
#include "survey_room.h"

/* So many boxes or controls are on one line at most: a line is never parted between two pages. */
#define END_LINE_ABSENT 12
#define END_LINE_CONTROLS 10
#define MOVED_LINES 7
#define MOVED_LINES_NEW 12

static void end_part_begin(struct survey *survey, enum word title, enum word note,
                       const struct survey_columns *columns)
{
    form_section_add(&survey->writer,
                     &(struct form_section){
                         .title = survey_word(survey, title),
                         .note = note == WORD_COUNT ? "" : survey_word(survey, note),
                         .columns = columns->at, .column_count = columns->count});
}

/* Of lines that ask below alone. */
static const struct form_column bare_column[] = {{FORM_TEXT, "", 0}};
static const struct survey_columns bare_columns = {bare_column, 1};

static void bare_line_add(struct survey *survey, size_t across)
{
    form_line_add(&survey->writer, &(struct form_cell){"", NULL}, FORM_PLAIN,
                  survey_boat(survey)->place);
    form_blanks_align(&survey->writer, across);
}

/* ---- what is not fitted ---- */

/* "81 Fire port, Engine space, port" */
static const char *absent_said(struct survey *survey, const struct absence *absence)
{
    struct composing *composing = survey_composing(survey);
    struct arena *arena = composing->arena;
    const struct phrase *name = phrase_item(arena, absence->item.value);
    for (size_t i = 0; !absence->whole && i < absence->serves.count; i++) {
        const struct zone *space = zone_of(absence->serves.items[i].value);
        name = phrase_joined(arena, WORD_JOIN_COMMA, name, phrase_zone(arena, space),
                             place_phrase(composing, NULL, space->side, NULL));
    }
    return survey_said(survey, phrase_word(arena, WORD_SURVEY_NUMBERED, "number",
                                           phrase_verbatim(arena, survey_number(survey)), "name",
                                           name, NULL));
}

static void absent_add(struct survey *survey)
{
    const struct absence_list *list = &survey_boat(survey)->not_fitted;
    if (list->count == 0)
        return;
    end_part_begin(survey, WORD_SURVEY_ABSENT, WORD_SURVEY_ABSENT_NOTE, &bare_columns);
    for (size_t i = 0; i < list->count; i++) {
        if (i % END_LINE_ABSENT == 0)
            bare_line_add(survey, 3);
        const char *const said[] = {absent_said(survey, &list->rows[i])};
        survey_ask_choice(survey, "", said, 1);
    }
}

/* ---- what moved ---- */

static void moved_add(struct survey *survey)
{
    struct form_column *columns = arena_array(survey_composing(survey)->arena, 4,
                                              sizeof *columns);
    const struct form_cell cells[] = {{"", NULL}, {"", NULL}, {"", NULL}, {"", NULL}};
    size_t count = survey_is_new(survey) ? MOVED_LINES_NEW : MOVED_LINES;
    columns[0] = (struct form_column){FORM_BLANK, survey_word(survey, WORD_SURVEY_MOVES_NUMBER),
                                      90};
    columns[1] = (struct form_column){FORM_BLANK, survey_word(survey, WORD_SURVEY_MOVES_WHAT), 0};
    columns[2] = (struct form_column){FORM_BLANK, survey_word(survey, WORD_SURVEY_MOVES_FROM), 0};
    columns[3] = (struct form_column){FORM_BLANK, survey_word(survey, WORD_SURVEY_MOVES_TO), 0};
    end_part_begin(survey, WORD_SURVEY_MOVES, WORD_COUNT, &(struct survey_columns){columns, 4});
    for (size_t i = 0; i < count; i++)
        form_line_add(&survey->writer, cells, FORM_PLAIN, survey_boat(survey)->place);
}

/* ---- how controls are left ---- */

static const char *control_said(struct survey *survey, size_t index)
{
    struct composing *composing = survey_composing(survey);
    struct arena *arena = composing->arena;
    const struct equipment *gear = &survey_boat(survey)->equipment[index];
    const struct phrase *label =
        phrase_word(arena, WORD_SURVEY_TAGGED, "number",
                    phrase_verbatim(arena, survey->numbers[index]), "tag",
                    phrase_verbatim(arena, TEXT_OR_EMPTY(gear->tag)), "name",
                    phrase_item(arena, gear->kind->item), NULL);
    return survey_said(survey, label);
}

/* A control that can be left in more than one state. */
static size_t control_states(struct survey *survey, const struct equipment *gear,
                             const char **words)
{
    size_t count = survey_states(survey, gear->kind->item, words);
    bool control = gear->kind->class == ITEM_CONTROL && gear->valve.answer != ANSWER_NO;
    return control && count > 1 ? count : 0;
}

static void controls_add(struct survey *survey)
{
    const struct boat *boat = survey_boat(survey);
    size_t added = 0;
    for (size_t i = 0; i < survey->walked_count; i++) {
        const char *words[STATE_COUNT];
        size_t index = survey->walked[i];
        size_t count = control_states(survey, &boat->equipment[index], words);
        if (count == 0)
            continue;
        if (added == 0)
            end_part_begin(survey, WORD_SURVEY_LEFT, WORD_SURVEY_LEFT_NOTE, &bare_columns);
        if (added++ % END_LINE_CONTROLS == 0)
            bare_line_add(survey, 2);
        survey_ask_choice(survey, control_said(survey, index), words, count);
    }
}

/* ---- hand-back ---- */

static void signed_ask(struct survey *survey, enum word by)
{
    survey_ask(survey, survey_word(survey, by), FORM_LONG);
    survey_ask(survey, survey_word(survey, WORD_SURVEY_DAY), FORM_SHORT);
    survey_ask(survey, survey_word(survey, WORD_SURVEY_SIGNED), FORM_LONG);
}

static void handed_back_add(struct survey *survey)
{
    static const enum word questions[] = {
        WORD_SURVEY_USED, WORD_SURVEY_HIT, WORD_SURVEY_GROUND, WORD_SURVEY_SMELL,
        WORD_SURVEY_LEAK, WORD_SURVEY_TURNED, WORD_SURVEY_ALARM};
    struct form_column *columns = arena_array(survey_composing(survey)->arena, 4,
                                              sizeof *columns);
    columns[0] = (struct form_column){FORM_TEXT, "", 400};
    columns[1] = (struct form_column){FORM_TICK, survey_word(survey, WORD_SURVEY_YES), 0};
    columns[2] = (struct form_column){FORM_TICK, survey_word(survey, WORD_SURVEY_NO), 0};
    columns[3] = (struct form_column){FORM_BLANK, survey_word(survey, WORD_SURVEY_BACK_WHAT), 0};
    form_section_add(&survey->writer,
                     &(struct form_section){.title = survey_word(survey, WORD_SURVEY_BACK),
                                            .note = survey_word(survey, WORD_SURVEY_BACK_NOTE),
                                            .columns = columns, .column_count = 4,
                                            .start = FORM_WHOLE});
    for (size_t i = 0; i < sizeof questions / sizeof *questions; i++) {
        const struct form_cell cells[] = {
            {survey_word(survey, questions[i]), NULL}, {"", NULL}, {"", NULL}, {"", NULL}};
        form_line_add(&survey->writer, cells, FORM_PLAIN, survey_boat(survey)->place);
    }
    signed_ask(survey, WORD_SURVEY_WHO);
}

/* ---- verdict ---- */

/* A box with its word, and a line to write upon. */
static void verdict_line_add(struct survey *survey, enum word word, enum form_room room)
{
    const char *const choice[] = {survey_word(survey, word)};
    bare_line_add(survey, 0);
    form_blank_add(&survey->writer, &(struct form_blank){"", choice, 1, room});
}

static void verdict_add(struct survey *survey)
{
    form_section_add(&survey->writer,
                     &(struct form_section){.title = survey_word(survey, WORD_SURVEY_VERDICT),
                                            .note = survey_word(survey,
                                                                WORD_SURVEY_VERDICT_NOTE),
                                            .columns = bare_columns.at,
                                            .column_count = bare_columns.count,
                                            .start = FORM_WHOLE, .manner = FORM_WARNED});
    verdict_line_add(survey, WORD_SURVEY_GO, FORM_NO_ROOM);
    verdict_line_add(survey, WORD_SURVEY_GO_WITH, FORM_LONG);
    bare_line_add(survey, 0);
    survey_ask(survey, "", FORM_LONG);
    survey_ask(survey, survey_word(survey, WORD_SURVEY_UNTIL), FORM_SHORT);
    verdict_line_add(survey, WORD_SURVEY_NOT_UNTIL, FORM_LONG);
    bare_line_add(survey, 0);
    signed_ask(survey, WORD_SURVEY_DECIDED);
    bare_line_add(survey, 0);
    signed_ask(survey, WORD_SURVEY_WALKED);
}

void survey_end_add(struct survey *survey)
{
    absent_add(survey);
    moved_add(survey);
    controls_add(survey);
    verdict_add(survey);
    if (!survey_is_new(survey))
        handed_back_add(survey);
}
