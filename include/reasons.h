/* reasons.h - what each part of a composed card stands on: the case taken, the
 * lines of the boat file and of the procedure, the sources (room: explain). */
#ifndef MAYDECK_REASONS_H
#define MAYDECK_REASONS_H

#include "arena.h"
#include "compose.h"
#include "figure.h"
#include "procedure.h"
#include "text.h"

/* The condition in words, such as "fire_port, engine_extinguisher fitted;
 * engine_extinguisher fits_port = yes". Children of `all` are parted by "; ",
 * and by " and " in brackets where it stands inside another. */
const char *condition_words(const struct condition *condition, struct arena *arena);

/* Adds all that `sheet` rests on as plain text: its head, every step, the boxes,
 * the call, what awaits sign-off, what holds it back. Lines have at most 100
 * characters where the text has a space to break at; what comes from a file ends
 * with "at FILE:LINE", never broken. `set` is what compose_set made of `input`,
 * and `sheet` one of its sheets. */
void card_reasons(const struct compose_input *input, const struct sheet_set *set,
                  const struct sheet *sheet, struct text_builder *out);

/* One line of such an explanation, unbroken. */
struct reason {
    size_t depth;              /* 0: a part of the card; 1: what belongs to it; 2: a detail */
    const char *text;
    struct place place;        /* what it stands on, where a file is named; else NO_PLACE */
};
struct reason_list { struct reason *rows; size_t count, room; };

/* The same as rows, which live as long as the arena. */
struct reason_list card_reason_rows(const struct compose_input *input,
                                    const struct sheet_set *set, const struct sheet *sheet,
                                    struct arena *arena);

/* What the record gives for the base and the skipper alone: each figure of `check` that
 * has a result, with its inputs and formula. Nothing where there is none. */
void figures_for_base(const struct compose_input *input, struct text_builder *out);

/* Adds how one figure of this boat comes about: what it reads, with file and line, the
 * formula and its source, the result before and after rounding, the verdict, and
 * whether a card carries it. `set` is what compose_set made of `input`; NULL: the boat
 * has no cards. */
void figure_reasons(const struct compose_input *input, const struct sheet_set *set,
                    const struct figure *figure, struct text_builder *out);
struct reason_list figure_reason_rows(const struct compose_input *input,
                                      const struct sheet_set *set, const struct figure *figure,
                                      struct arena *arena);

#endif
