/* survey_try.c - which states of a piece are tried on a walk round, and which never are (room:
 * compose). */
#include "survey_room.h"
#include "survey_try_list.h"

#include "item_states.h"

/* By item: what is said in the place of a trial; WORD_COUNT: its states are tried. */
struct untried {
    enum item_key item;
    enum word word;
};

#define UNTRIED_ROW(item, word) {ITEM_##item, WORD_SURVEY_##word},
static const struct untried untried_rows[] = {SURVEY_TRY_LIST(UNTRIED_ROW)};

static enum word untried_word(enum item_key item)
{
    for (size_t i = 0; i < sizeof untried_rows / sizeof *untried_rows; i++)
        if (untried_rows[i].item == item)
            return untried_rows[i].word;
    return WORD_COUNT;
}

/* A state that a hand brings about where the piece is; taking and wearing are none. */
static bool is_tried(enum item_key item, enum end_state state)
{
    static const bool is_use[STATE_COUNT] = {
        [STATE_TAKE] = true, [STATE_WEAR] = true, [STATE_USE] = true, [STATE_READY] = true,
        [STATE_TIED] = true, [STATE_CUT] = true, [STATE_LEAVE] = true};
    return !is_use[state] && item_state_field(item, state) == GEAR_how;
}

size_t survey_states(struct survey *survey, enum item_key item, const char **words)
{
    struct arena *arena = survey_composing(survey)->arena;
    size_t count = 0;
    for (enum end_state state = STATE_ANY + 1; state < STATE_COUNT; state++)
        if (is_tried(item, state))
            words[count++] = survey_said(survey, phrase_state(arena, state));
    return count;
}

const struct phrase *survey_untried(struct survey *survey, enum item_key item)
{
    enum word word = untried_word(item);
    return word == WORD_COUNT ? NULL : word_alone(survey_composing(survey), word);
}

/* Where there is one state alone, the box of what works says it. */
void survey_ask_try(struct survey *survey, const struct equipment *gear)
{
    const char *words[STATE_COUNT];
    size_t count = survey_states(survey, gear->kind->item, words);
    if (count > 1 && gear->valve.answer != ANSWER_NO &&
        untried_word(gear->kind->item) == WORD_COUNT)
        survey_ask_choice(survey, survey_word(survey, WORD_SURVEY_TRY), words, count);
}
