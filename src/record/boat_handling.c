/* boat_handling.c - what an entry tells of the states of its gear (room: record): one text where
 * there are two contrary states, and states that such gear does not have, are errors. */
#include "record.h"

#include "item_states.h"
#include "text.h"

#include <string.h>

/* The state that a text names behind a last "=", as in "across = shut", and what stands
 * before it; STATE_ANY: none. */
static enum end_state state_written(const char *how, size_t *length)
{
    const char *equal = strrchr(how, '=');
    if (equal == NULL)
        return STATE_ANY;
    const char *word = equal + 1 + strspn(equal + 1, " ");
    *length = (size_t)(equal - how);
    while (*length > 0 && how[*length - 1] == ' ')
        (*length)--;
    return (enum end_state)choice_find(end_state_words, word);
}

static bool is_handled(enum item_key item, enum end_state state)
{
    return state != STATE_ANY && item_state_field(item, state) == GEAR_how;
}

/* As it would be written now, where the old form tells which state it is of. */
static const char *states_remedy(const struct boat_reading *reading, enum item_key item,
                                 const char *how)
{
    size_t length = 0;
    enum end_state state = state_written(how, &length);
    bool whole = is_handled(item, state) && strcspn(how, ",;=") >= length;
    const char *first = end_state_words[item_use(item) - 1];
    const char *contrary = strchr(item_handled_joined(item, reading->arena), ',') + 2;
    if (whole)
        return text_format(reading->arena, "write how: {%s: %.*s}", end_state_words[state - 1],
                           (int)length, how);
    return text_format(reading->arena, "write one for each: how: {%s: ..., %s: ...}", first,
                       contrary);
}

static void one_text_tell(const struct boat_reading *reading, const struct equipment *gear)
{
    const struct text_value *one = &gear->how.one;
    enum item_key item = gear->item.value;
    problem_add(reading->problems, SEVERITY_ERROR, one->place,
                states_remedy(reading, item, one->text),
                "how of %s is one text, but its states are %s: a hand must know which it leads to",
                item_word(item), item_handled_joined(item, reading->arena));
}

static void state_tell(const struct boat_reading *reading, const struct equipment *gear,
                       enum end_state state)
{
    enum item_key item = gear->item.value;
    enum gear_field field = item_state_field(item, state);
    const char *word = end_state_words[state - 1];
    struct place place = gear->how.by_choice[state].place;
    if (field == GEAR_painter || field == GEAR_release)
        problem_add(reading->problems, SEVERITY_ERROR, place,
                    text_format(reading->arena, "write it as %s: ...", gear_field_word(field)),
                    "how of %s does not tell how it comes to be %s", item_word(item), word);
    else
        problem_add(reading->problems, SEVERITY_ERROR, place,
                    text_format(reading->arena, "states of %s: %s", item_word(item),
                                item_handled_joined(item, reading->arena)),
                    "%s has no handling for the state %s", item_word(item), word);
}

void handling_check(const struct boat_reading *reading, const struct equipment *gear)
{
    enum item_key item = gear->item.value;
    if (gear->how.one.text != NULL && item_is_contrary(item))
        one_text_tell(reading, gear);
    for (enum end_state state = STATE_ANY + 1;
         gear->how.by_choice != NULL && state < STATE_COUNT; state++)
        if (gear->how.by_choice[state].text != NULL && !is_handled(item, state))
            state_tell(reading, gear, state);
}
