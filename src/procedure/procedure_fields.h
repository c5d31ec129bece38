/* procedure_fields.h - what a procedure's two files may say, as structs that the tables of
 * procedure_fields.c fill. Private to src/procedure. */
#ifndef MAYDECK_PROCEDURE_FIELDS_H
#define MAYDECK_PROCEDURE_FIELDS_H

#include "procedure_room.h"

/* ---- the logic ---- */

/* Of each entry: what is kept of it, its condition before that is read, and its place. */
struct said_entry {
    struct said said;
    struct node_value when;
    struct place place;
};

struct case_entry {
    struct step_case step_case;
    struct node_value when;
    struct entries_value guards;        /* struct guard_said */
    struct place place;
};

struct step_entry {
    struct procedure_step step;
    struct node_value when;
    struct entries_value cases;         /* struct case_entry */
    struct entries_value guards;        /* struct guard_said */
    struct place place;
};

struct hazard_entry {
    struct hazard_values hazards;
    struct node_value when;
    struct place place;
};

struct warning_entry {
    struct warning warning;
    struct node_value when;
    struct place place;
};

struct call_entry {
    struct procedure_call call;
    struct node_value when;
    struct place place;
};

struct decision_entry {
    struct decision decision;
    struct entries_value yes, no;       /* struct said_entry */
};

/* The whole file. */
struct procedure_logic {
    struct procedure procedure;
    struct node_value when;
    struct entries_value hazards_if;    /* struct hazard_entry */
    struct entries_value more_signs;    /* struct said_entry */
    struct entries_value berth, anchor, call_when;     /* struct said_entry */
    struct entries_value steps;         /* struct step_entry */
    struct entries_value never, cautions;   /* struct warning_entry */
    struct entries_value calls;         /* struct call_entry */
    struct section_value decision;
    struct decision_entry decided;      /* what `decision` holds */
};

extern const struct field_table logic_table;

/* ---- hazard_fields.c ---- */

extern const struct field_table guard_table, hazard_case_table;

struct guards guards_of(const struct entries_value *list);

/* Tells guards of the step and of its cases that name no line of it. */
void step_guards_check(const struct procedure_reading *reading,
                       const struct procedure_step *step);

/* Tells answers that rule a hazard out though the other one leads to no card: then nobody
 * knows that it is ruled out. */
void over_check(const struct procedure_reading *reading);

void hazard_cases_read(struct procedure_reading *reading, const struct entries_value *list);

/* ---- the texts ---- */

/* Rows of a file of texts, of a step, a case and a decision in it. What stands under ids is
 * read by rows that are made of the ids (procedure_texts.h). */
enum head_text {
    HEAD_PROCEDURE, HEAD_TITLE, HEAD_SUBJECT, HEAD_SIGNS, HEAD_SEEN, HEAD_WHEN_REASON,
    HEAD_ROWS_BELOW, HEAD_MORE_SIGNS, HEAD_BERTH, HEAD_ANCHOR, HEAD_CALL_WHEN, HEAD_STEPS,
    HEAD_DECISION, HEAD_NEVER, HEAD_CAUTIONS, HEAD_CALLS
};
enum step_text { STEP_ACT, STEP_BECAUSE, STEP_WHO, STEP_LETHAL, STEP_CASES };
enum case_text { CASE_ACT, CASE_BECAUSE };
enum decision_text { DECISION_ASK, DECISION_YES, DECISION_NO };

extern const struct field_table head_texts, step_texts, case_texts, decision_texts;

#endif
