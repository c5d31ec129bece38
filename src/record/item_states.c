/* item_states.c - the states of each kind of gear, and what an entry tells of them (room:
 * record). Never reads a text: which state a handling leads to is said by its key. */
#include "item_states.h"

#include "item_state_list.h"
#include "promise.h"
#include "text.h"

const char *const end_state_words[] = {END_STATE_LIST(CHOICE_WORD) NULL};

struct item_state {
    enum item_key item;
    enum end_state state;
    enum gear_field field;
};

#define GEAR_NONE GEAR_FIELD_NONE
#define STATE_ROW(item, state, field) {ITEM_##item, STATE_##state, GEAR_##field},
static const struct item_state state_rows[] = {ITEM_STATE_LIST(STATE_ROW)};
#undef STATE_ROW
#undef GEAR_NONE

enum { STATE_ROWS = sizeof state_rows / sizeof *state_rows };

static const struct item_state *state_row(enum item_key item, enum end_state state)
{
    for (size_t i = 0; i < STATE_ROWS; i++)
        if (state_rows[i].item == item && state_rows[i].state == state)
            return &state_rows[i];
    return NULL;
}

bool item_has_state(enum item_key item, enum end_state state)
{
    return state_row(item, state) != NULL;
}

enum gear_field item_state_field(enum item_key item, enum end_state state)
{
    const struct item_state *row = state_row(item, state);
    return row == NULL ? GEAR_FIELD_NONE : row->field;
}

enum end_state item_use(enum item_key item)
{
    for (size_t i = 0; i < STATE_ROWS; i++)
        if (state_rows[i].item == item && state_rows[i].field == GEAR_how)
            return state_rows[i].state;
    promise_unreached();
}

static bool handled_in_how(enum item_key item, enum end_state state)
{
    return item_state_field(item, state) == GEAR_how;
}

bool item_is_contrary(enum item_key item)
{
    static const enum end_state contraries[][2] = {
        {STATE_ON, STATE_OFF}, {STATE_SHUT, STATE_OPEN}, {STATE_IN, STATE_OUT},
        {STATE_UP, STATE_DOWN}, {STATE_AHEAD, STATE_ASTERN}};
    for (size_t i = 0; i < sizeof contraries / sizeof *contraries; i++)
        if (handled_in_how(item, contraries[i][0]) && handled_in_how(item, contraries[i][1]))
            return true;
    return false;
}

static void state_add(struct text_builder *out, enum end_state state)
{
    text_add_format(out, "%s%s", out->length == 0 ? "" : ", ", end_state_words[state - 1]);
}

const char *item_states_joined(enum item_key item, struct arena *arena)
{
    struct text_builder out = text_builder_in(arena);
    for (size_t i = 0; i < STATE_ROWS; i++)
        if (state_rows[i].item == item)
            state_add(&out, state_rows[i].state);
    return out.at;
}

const char *item_handled_joined(enum item_key item, struct arena *arena)
{
    struct text_builder out = text_builder_in(arena);
    for (size_t i = 0; i < STATE_ROWS; i++)
        if (state_rows[i].item == item && state_rows[i].field == GEAR_how)
            state_add(&out, state_rows[i].state);
    return out.at;
}

/* Of `how`, by state or as one text for the item's use. */
static const struct text_value *how_to(const struct equipment *gear, enum end_state state)
{
    const struct wordings_value *how = &gear->how;
    if (how->by_choice != NULL)
        return &how->by_choice[state];
    return state == item_use(gear->item.value) ? &how->one : NULL;
}

const struct text_value *gear_handling_of(const struct equipment *gear, enum end_state state)
{
    enum item_key item = gear->item.value;
    const struct text_value *text = NULL;
    if (state == STATE_ANY && item_is_contrary(item))
        return NULL;
    if (state == STATE_ANY)
        state = item_use(item);
    enum gear_field field = item_state_field(item, state);
    if (field == GEAR_how)
        text = how_to(gear, state);
    else if (field == GEAR_painter)
        text = &gear->painter;
    else if (field == GEAR_release)
        text = &gear->release;
    return text == NULL || text->text == NULL ? NULL : text;
}
