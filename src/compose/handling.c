/* handling.c - how a piece of gear is worked, as far as it serves the step (room: compose).
 * Never prints the handling that leads to another state than the one that is wanted. */
#include "compose_room.h"

#include "item_states.h"
#include "reading.h"
#include "text.h"

/* Where nothing at all is recorded of how gear is worked, a check tells that. */
static void untold_tell(struct composing *composing, const struct equipment *gear,
                        enum end_state state)
{
    const char *word = end_state_words[state - 1];
    bool by_choice = gear->how.by_choice != NULL;
    if (item_state_field(gear->item.value, state) != GEAR_how ||
        (!by_choice && item_field(gear->item.value, GEAR_how) == BELONGS_MUST))
        return;
    problem_add(composing->problems, SEVERITY_NOTE, place_or(gear->how.place, gear->place),
                text_format(composing->arena,
                            "work it as in an emergency, then add to its how, such as how: "
                            "{%s: ...}", word),
                "how of %s does not tell how it comes to be %s: cards print the state alone",
                gear->tag.text == NULL ? gear->kind->key : gear->tag.text, word);
}

const struct phrase *gear_handling_known(struct composing *composing,
                                         const struct equipment *gear, enum end_state state)
{
    const struct phrase *how = phrase_text(composing->arena, gear_handling_of(gear, state));
    if (how == NULL && state != STATE_ANY)
        untold_tell(composing, gear, state);
    return how;
}

/* What the headline says already is not said again of each piece. */
static const bool is_said_by_headlines[STATE_COUNT] = {
    [STATE_ANY] = true, [STATE_USE] = true, [STATE_TAKE] = true, [STATE_WEAR] = true,
    [STATE_READY] = true};

const struct phrase *state_said(const struct composing *composing, enum end_state state)
{
    return is_said_by_headlines[state]
               ? NULL
               : phrase_upper(composing->arena, phrase_state(composing->arena, state));
}

const struct phrase *gear_handling(struct composing *composing, const struct equipment *gear,
                                   enum end_state state)
{
    const struct phrase *how = gear_handling_known(composing, gear, state);
    const struct phrase *said = state_said(composing, state);
    if (how != NULL)
        return said == NULL ? how
                            : phrase_word(composing->arena, WORD_HANDLED_STATE, "how", how,
                                          "state", said, NULL);
    if (state == STATE_ANY)
        return NULL;
    return phrase_joined(composing->arena, WORD_JOIN_COMMA, said,
                         handling_unrecorded(composing, gear, state), NULL);
}
