/* explain.h - what the files that explain a card share. Private to src/explain. */
#ifndef MAYDECK_EXPLAIN_H
#define MAYDECK_EXPLAIN_H

#include "judging.h"
#include "reasons.h"

/* One card being explained. `composing` judges conditions for this card again;
 * nothing it finds missing reaches the run's problems. */
struct explaining {
    const struct compose_input *in;
    const struct sheet *sheet;
    struct composing *composing;
    struct arena *arena;
    struct text_builder *out;     /* NULL: not wanted as text */
    struct reason_list *rows;     /* NULL: not wanted as rows */
};

/* How far lines stand in: a part of the card, what belongs to it, its details. */
enum { INDENT_PART = 0, INDENT_REASON = 3, INDENT_DETAIL = 6 };

/* explain_lines.c */

/* A line of text, broken at spaces, without the stars of **bold** parts. */
void line_tell(const struct explaining *explaining, size_t indent, const char *format, ...)
    __attribute__((format(printf, 3, 4)));

/* The same, ended by "at FILE:LINE". Without a file: "(the program's own words)". */
void placed_tell(const struct explaining *explaining, size_t indent, struct place place,
                 const char *format, ...) __attribute__((format(printf, 4, 5)));

void blank_tell(const struct explaining *explaining);

/* What her base records of what such a condition asks: breaths, sting, tide. */
void base_tell(const struct explaining *explaining, size_t indent, enum condition_kind asked);

/* What words stand on: each source, and trade practice that awaits sign-off. */
void basis_tell(const struct explaining *explaining, size_t indent, const struct basis *basis);

/* explain_record.c */

/* The lines of the record that the choice of a step's words rests on. */
void record_tell(const struct explaining *explaining, const struct card_step *step);

/* The same for one condition (NULL: none), and for the first `tried` words with cases. */
void condition_record_tell(const struct explaining *explaining, size_t indent,
                           const struct condition *condition);
void said_record_tell(const struct explaining *explaining, size_t indent,
                      const struct said_list *said, size_t tried);

/* The line that says of this piece that it is fitted. */
struct place gear_place(const struct equipment *gear);

/* explain_steps.c */
void steps_tell(const struct explaining *explaining);
const struct item_uses *step_uses(const struct card_step *step);
const struct item_uses *step_also(const struct card_step *step);

/* How far the step lets people go for gear. */
enum reach step_within(const struct card_step *step);

/* On what the step or the words with cases stand, and what the record says of it. */
void only_where_tell(const struct explaining *explaining, size_t indent,
                     const struct condition *condition);

/* How many cases were looked at: all up to the one taken, or to one that cannot
 * be decided. */
size_t cases_tried(const struct explaining *explaining, const struct card_step *step);

/* explain_figures.c */

/* The figures of one step; NULL: those that stand in a section of their own. */
void figures_tell(const struct explaining *explaining, const char *step);

/* That they yield where a page has no room. */
void figures_yield_tell(const struct explaining *explaining);

/* explain_boxes.c: decision, nevers, cautions, lines of the base */
void boxes_tell(const struct explaining *explaining);

/* The cases of words that have any: those passed over, the one taken, the record. */
void said_tell(const struct explaining *explaining, const struct said_list *list);

/* explain_berth.c: the line on what to do in a berth and at anchor; what of it awaits sign-off, and
 * how many that are. */
void berth_tell(const struct explaining *explaining);
size_t berth_practice_tell(const struct explaining *explaining);

/* explain_call.c: contacts, call panel, sections of the distress card */
void call_tell(const struct explaining *explaining);

/* explain_safety.c: the labels of a safety plan */
void safety_tell(const struct explaining *explaining);

#endif
