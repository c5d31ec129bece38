/* distress_position.c - where on the distress card the position comes from, the other way to say
 * it, and what UTC is by the clock on board (room: compose). Never tells an offset that the base
 * has not recorded. */
#include "distress_room.h"

#include <stdlib.h>

enum { MINUTES_OF_HOUR = 60 };

/* ---- UTC ---- */

static const struct phrase *hours_phrase(struct composing *composing, int minutes)
{
    struct arena *arena = composing->arena;
    int left = abs(minutes) % MINUTES_OF_HOUR;
    const struct phrase *hours = phrase_number(arena, abs(minutes) / MINUTES_OF_HOUR);
    if (left == 0)
        return phrase_word(arena, WORD_HOURS, "hours", hours, NULL);
    return phrase_word(arena, WORD_HOURS_MINUTES, "hours", hours, "minutes",
                       phrase_number(arena, left), NULL);
}

/* A clock that is ahead of UTC shows more than it. */
static const struct phrase *clock_phrase(struct composing *composing, const struct clock *clock)
{
    struct arena *arena = composing->arena;
    enum word word = clock->minutes > 0 ? WORD_UTC_MINUS : WORD_UTC_PLUS;
    const struct phrase *utc =
        clock->minutes == 0
            ? word_alone(composing, WORD_UTC_SAME)
            : phrase_word(arena, word, "time", hours_phrase(composing, clock->minutes), NULL);
    if (!clock->from.given)
        return utc;
    return phrase_word(arena, WORD_UTC_DATED, "from", phrase_verbatim(arena, clock->from.text),
                       "to", phrase_verbatim(arena, clock->to.text), "utc", utc, NULL);
}

static void clock_lines(struct composing *composing, struct section_facts *section)
{
    const struct base_record *base = composing->in->base;
    for (size_t i = 0; i < base->clock_count; i++)
        section_line_add(composing, section, NULL,
                         (struct card_text){phrase_said(composing,
                                                        clock_phrase(composing,
                                                                     &base->clocks[i])),
                                            base->clocks[i].place});
}

/* ---- where it is read ---- */

/* How the set is told the position; of one that does not know it, that. */
static void position_hints(struct composing *composing, struct section_facts *section)
{
    const struct radio_facts *radio = &composing->in->boat->radio;
    if (radio->gnss.answer == ANSWER_NO)
        hint_add(composing, section, word_alone(composing, WORD_POSITION_UNSENT),
                 (struct card_hint){.id = "radio gnss", .yields = YIELDS_POSITION_UNSENT,
                                    .origin = radio->gnss.place});
    hint_add(composing, section,
             steps_phrase(composing, WORD_POSITION_STEPS, &radio->manual_position_steps),
             (struct card_hint){.id = "radio manual_position_steps",
                                .yields = YIELDS_POSITION_KEYS,
                                .origin = radio->manual_position_steps.place});
}

void position_section(struct composing *composing, struct sheet *sheet)
{
    const struct boat *boat = composing->in->boat;
    struct section_facts *section = section_add(composing, sheet, BLOCK_POSITION,
                                               WORD_DISTRESS_POSITION);
    bool shown = dsc_ready(boat) && boat->radio.gnss.answer == ANSWER_YES;
    section->note = section_word(composing, shown ? WORD_POSITION_READ
                                                  : WORD_POSITION_READ_ELSEWHERE);
    if (dsc_ready(boat))
        position_hints(composing, section);
    clock_lines(composing, section);
    section_line_add(composing, section, NULL,
                     (struct card_text){section_word(composing, WORD_POSITION_OR),
                                        boat->place});
    section->script = script_landmark(composing->arena);
}
