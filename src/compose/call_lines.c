/* call_lines.c - the lines on working a radio, as they are put together (room: compose). */
#include "call_room.h"

void call_line_put(struct composing *composing, struct call_line_list *list,
                   const struct phrase *line, struct place origin)
{
    list->at = arena_grow(composing->arena, list->at, list->count, &list->room,
                          sizeof *list->at);
    list->at[list->count++] = (struct card_text){phrase_said(composing, line), origin};
}

void call_line_add(struct composing *composing, struct call_lines *lines,
                   const struct phrase *line, struct place origin)
{
    call_line_put(composing, &lines->all, line, origin);
}

void call_act_add(struct composing *composing, struct call_lines *lines,
                  const struct phrase *line, struct place origin)
{
    if (lines->acts.count == 0)
        lines->act_first = lines->all.count;
    call_line_put(composing, &lines->acts, line, origin);
    const struct phrase *number = phrase_number(composing->arena, (int)lines->acts.count);
    call_line_add(composing, lines,
                  phrase_word(composing->arena, WORD_NUMBERED_LINE, "number", number, "line",
                              line, NULL), origin);
}

void call_act_word_add(struct composing *composing, struct call_lines *lines, enum word word,
                       struct place origin)
{
    call_act_add(composing, lines, word_alone(composing, word), origin);
}

void call_word_add(struct composing *composing, struct call_lines *lines, enum word word,
                   struct place origin)
{
    call_line_add(composing, lines, word_alone(composing, word), origin);
}
