/* handling.c - how a piece of gear is worked, as far as it serves the step (room: compose).
 * What of it names the contrary of what is wanted is left out by the words of the language. */
#include "compose_room.h"

static void contrary_tell(struct composing *composing, const struct equipment *gear,
                          enum gear_state state)
{
    problem_add(composing->problems, SEVERITY_DEFICIENCY, gear->how.place,
                "write both ways of it, such as: up = on, down = off",
                "how of %s does not tell how it is %s: %s prints no handling for it",
                gear->tag.text == NULL ? gear->kind->key : gear->tag.text,
                state == STATE_ON ? "turned on or opened" : "turned off or shut",
                composing->slot->name);
}

/* The field that a step asks for by name. */
static const struct text_value *shown_field(const struct equipment *gear, enum shown shows)
{
    switch (shows) {
    case SHOWN_PAINTER:
        return &gear->painter;
    case SHOWN_RELEASE:
        return &gear->release;
    case SHOWN_HANDLE:
        return &gear->handle;
    case SHOWN_BY_STATE:
    case SHOWN_HOW:
    case SHOWN_COUNT:
        break;
    }
    return &gear->how;
}

const struct phrase *gear_handling(struct composing *composing, const struct equipment *gear,
                                   enum shown shows, enum gear_state state)
{
    const struct text_value *how = shown_field(gear, shows);
    if (how->text == NULL || shows != SHOWN_BY_STATE || state == STATE_ANY)
        return phrase_text(composing->arena, how);
    struct handling_wanted wanted = {&composing->in->languages, composing->in->words,
                                     state == STATE_ON ? HANDLED_ON : HANDLED_OFF};
    struct text_value towards = words_handling_by_language(&wanted, how, composing->arena);
    if (towards.text == NULL)
        contrary_tell(composing, gear, state);
    return phrase_text(composing->arena, &towards);
}
