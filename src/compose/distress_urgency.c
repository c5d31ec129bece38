/* distress_urgency.c - the urgency call of the distress card, and phrases for the most common
 * ones (room: compose). */
#include "distress_room.h"

static void urgency_hint(struct composing *composing, struct section_facts *section)
{
    const struct list_value *steps = &composing->in->boat->radio.urgency_steps;
    if (dsc_ready(composing->in->boat))
        hint_add(composing, section, steps_phrase(composing, WORD_URGENCY_STEPS, steps),
                 (struct card_hint){.id = "radio urgency_steps", .yields = YIELDS_URGENCY_KEYS,
                                    .origin = steps->place});
}

/* The rows of a table of phrases, until its end. */
typedef const struct urgency_phrase *phrase_table(size_t index);

static void phrases_add(struct composing *composing, struct section_facts *section,
                        phrase_table *table)
{
    const struct urgency_phrase *row;
    for (size_t i = 0; (row = table(i)) != NULL; i++)
        section_line_add(composing, section, section_word(composing, row->brief),
                         (struct card_text){row->phrase, composing->in->boat->radio_place});
}

void urgency_make(struct composing *composing, struct sheet *sheet)
{
    static const struct script_block block = {BLOCK_PAN_PAN, WORD_DISTRESS_PAN_PAN,
                                              SCRIPT_PAN_PAN};
    urgency_hint(composing, script_section(composing, sheet, &block));
    phrases_add(composing, section_add(composing, sheet, BLOCK_PHRASES, WORD_DISTRESS_NATURE),
                urgency_problem);
    phrases_add(composing, section_add(composing, sheet, BLOCK_NEEDS, WORD_DISTRESS_NEEDS),
                urgency_need);
}
