/* script_draft.h - a line of a script while it is put together (private to the radio room). */
#ifndef MAYDECK_SCRIPT_DRAFT_H
#define MAYDECK_SCRIPT_DRAFT_H

#include "script.h"

#define PIECES_AT_MOST 10

/* Least room for wax-pencil figures: what lets the longitude and its time stand
 * on one line of the panel at the smallest size. Blanks take what is left. */
#define WIDTH_TWO_DIGITS 14
#define WIDTH_THREE_DIGITS 15
#define WIDTH_MINUTES 24
#define WIDTH_TIME 16
#define WIDTH_WORDS 45

struct line_draft {
    struct script_piece pieces[PIECES_AT_MOST];
    size_t count;
};

/* Puts words into the line, or a blank of that name. */
void draft_add(struct line_draft *draft, enum piece_kind kind, const char *text);
void draft_blank(struct line_draft *draft, const char *name, int width_mm);

/* What a time is told in: UTC where the base records what that is to the clock on board. */
const char *clock_said(const struct telling *telling);

/* A time that is filled in by hand: UTC where the base records what that is to the clock on
 * board, else the time of that clock, by its name. */
void draft_time(struct line_draft *draft, const struct telling *telling);

/* The line as it is kept; of no pieces: the form has no such line. */
struct script_line draft_line(const struct telling *telling, enum script_element element,
                              const struct line_draft *draft);

/* So many times, with commas. */
const char *said_times(const struct telling *telling, const char *words, int times);

/* With a full stop. */
const char *said_sentence(const struct telling *telling, const char *words);

/* script_message.c: the lines that tell where, what and who is aboard, in spoken order. */
struct script_line part_latitude(const struct telling *telling);
struct script_line part_longitude(const struct telling *telling);
struct script_line part_nature(const struct telling *telling);
struct script_line part_assistance(const struct telling *telling);
struct script_line part_plea(const struct telling *telling);
struct script_line part_in_water(const struct telling *telling);
struct script_line part_persons_and_end(const struct telling *telling);

#endif
