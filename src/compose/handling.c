/* handling.c - how a piece of gear is worked, as far as it serves the step (room: compose).
 * What of it names the contrary of what is wanted is left out by the words of the language. */
#include "compose.h"

static void contrary_tell(struct composing *composing, const struct equipment *gear,
                          const char *state)
{
    problem_add(composing->problems, SEVERITY_DEFICIENCY, gear->how.place,
                "write both ways of it, such as: up = on, down = off",
                "how of %s does not tell how it is %s: %s prints no handling for it",
                gear->tag.text == NULL ? gear->kind->key : gear->tag.text,
                text_equal(state, "on") ? "turned on or opened" : "turned off or shut",
                composing->slot->name);
}

const char *handling_words(struct composing *composing, const struct equipment *gear,
                           const char *shows, const char *state)
{
    const struct field *field = shows == NULL ? NULL : field_find(equipment_fields(), shows);
    const char *how = TEXT_OR_EMPTY(gear->how);
    if (field != NULL)
        how = field_text(field, gear, composing->arena);
    if (text_empty(how))
        return "";
    if (field != NULL || state == NULL)
        return how;
    enum handled wanted = text_equal(state, "on") ? HANDLED_ON : HANDLED_OFF;
    const char *towards = words_handling(composing->in->words, how, wanted, composing->arena);
    if (towards == NULL)
        contrary_tell(composing, gear, state);
    return towards == NULL ? "" : towards;
}
