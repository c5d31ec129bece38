/* boat_handling.c - what an entry tells of the states of its gear (room: record): one text where
 * there are two contrary states, and states that such gear does not have, are errors. */
#include "record.h"

#include "item_states.h"
#include "text.h"

#include <string.h>

static bool is_handled(enum item_key item, enum end_state state)
{
    return state != STATE_ANY && item_state_field(item, state) == GEAR_how;
}

/* The state that a part of a text names behind its "=", as in "across = shut"; STATE_ANY:
 * none that such gear has. */
static enum end_state state_written(const struct boat_reading *reading, enum item_key item,
                                    const char *part, size_t length)
{
    const char *equal = memchr(part, '=', length);
    if (equal == NULL)
        return STATE_ANY;
    const char *word = equal + 1 + strspn(equal + 1, " ");
    const char *copy = arena_copy(reading->arena, word, (size_t)(part + length - word));
    enum end_state state = (enum end_state)choice_find(end_state_words, copy);
    return is_handled(item, state) ? state : STATE_ANY;
}

/* "shut: across", of a part that names a state. */
static void part_add(struct text_builder *out, const char *part, enum end_state state)
{
    size_t length = strcspn(part, "=");
    while (length > 0 && part[length - 1] == ' ')
        length--;
    text_add_format(out, "%s%s: %.*s", out->length == 0 ? "" : ", ",
                    end_state_words[state - 1], (int)length, part);
}

/* "shut: across, open: along", where all parts of the text name a state, as handling used to be
 * written; "" else. */
static const char *states_written(const struct boat_reading *reading, enum item_key item,
                                  const char *how)
{
    struct text_builder out = text_builder_in(reading->arena);
    text_add(&out, "");
    for (const char *part = how; *part != '\0';) {
        size_t length = strcspn(part, ",;");
        enum end_state state = state_written(reading, item, part, length);
        if (state == STATE_ANY)
            return "";
        part_add(&out, part, state);
        part += length + strspn(part + length, ",; ");
    }
    return out.at;
}

static const char *states_remedy(const struct boat_reading *reading, enum item_key item,
                                 const char *how)
{
    const char *written = states_written(reading, item, how);
    struct text_builder out = text_builder_in(reading->arena);
    if (!text_empty(written))
        return text_format(reading->arena, "write how: {%s}", written);
    for (const char *state = item_handled_joined(item, reading->arena); *state != '\0';) {
        size_t length = strcspn(state, ",");
        text_add_format(&out, "%s%.*s: ...", out.length == 0 ? "" : ", ", (int)length, state);
        state += length + strspn(state + length, ", ");
    }
    return text_format(reading->arena, "write one for each: how: {%s}", out.at);
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

/* The state is said by the key alone: "down = off" as the use of a beacon would turn it off. */
static void equal_check(const struct boat_reading *reading, const struct equipment *gear,
                        const struct text_value *text)
{
    struct text_value one;
    for (size_t i = 0; text_next(text, &i, &one);) {
        const char *written = states_written(reading, gear->item.value, one.text);
        if (strchr(one.text, '=') == NULL)
            continue;
        problem_add(reading->problems, SEVERITY_ERROR, one.place,
                    text_empty(written)
                        ? "write what a hand does, without =; the state it leads to is the key"
                        : text_format(reading->arena, "write how: {%s}", written),
                    "how of %s holds =: which state it leads to is said by its key",
                    item_word(gear->item.value));
    }
}

void handling_check(const struct boat_reading *reading, const struct equipment *gear)
{
    enum item_key item = gear->item.value;
    if (gear->how.one.text != NULL && item_is_contrary(item))
        one_text_tell(reading, gear);
    else
        equal_check(reading, gear, &gear->how.one);
    for (enum end_state state = STATE_ANY + 1;
         gear->how.by_choice != NULL && state < STATE_COUNT; state++) {
        if (gear->how.by_choice[state].text != NULL && !is_handled(item, state))
            state_tell(reading, gear, state);
        equal_check(reading, gear, &gear->how.by_choice[state]);
    }
}
