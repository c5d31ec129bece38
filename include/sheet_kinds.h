/* sheet_kinds.h - the kinds of sheet, a row each: a new kind is a row, a composer, a template
 * and a procedure that is of it (room: procedure). Each room reads the columns that are its
 * own: the other names mean nothing to it. */
#ifndef MAYDECK_SHEET_KINDS_H
#define MAYDECK_SHEET_KINDS_H

#include "choice.h"
#include "yaml_fields.h"

/* KIND(name in C, key of `kind:` in a procedure, what it is made from, composer, composer of
 * its radio calls alone, when it is composed, template, page rules beside those of every page,
 * whether it has a check code, whether it carries the marks of the set). FORM, which is last, is of
 * no procedure: commands compose forms, see src/compose/form_room.h. Of the others:
 * from steps of the procedure; or from the boat's record, and then the procedure has none, and
 * warnings only where they are printed beside;
 * alone, or after the others, when it tells what they stand on. */
#define SHEET_KIND_LIST(KIND) \
    KIND(CARD, "card", FROM_STEPS, card_compose, card_call_compose, ALONE, \
         TEMPLATE_CARD, RULES_NO_OTHERS, CODED, MARKED) \
    KIND(DISTRESS, "distress", FROM_RECORD_AND_WARNINGS, distress_compose, \
         distress_call_compose, ALONE, TEMPLATE_DISTRESS, RULES_NO_OTHERS, CODED, MARKED) \
    KIND(SAFETY_PLAN, "safety_plan", FROM_RECORD, safety_plan_compose, no_call_compose, \
         AFTER_OTHERS, TEMPLATE_SAFETY_PLAN, RULES_ESCAPE_PLAN, CODED, MARKED) \
    KIND(INDEX, "index", FROM_RECORD, index_compose, no_call_compose, AFTER_OTHERS, \
         TEMPLATE_INDEX, RULES_NO_OTHERS, CODED, MARKED) \
    KIND(FORM, NULL, FROM_RECORD, no_compose, no_call_compose, ALONE, \
         TEMPLATE_FORM, RULES_NO_OTHERS, NOT_CODED, NOT_MARKED)

enum sheet_kind {
    SHEET_NONE,
#define SHEET_KIND_ENUM(name, ...) SHEET_##name,
    SHEET_KIND_LIST(SHEET_KIND_ENUM)
#undef SHEET_KIND_ENUM
    SHEET_KIND_COUNT
};
struct sheet_kind_value CHOICE_OF(enum sheet_kind);
extern const char *const sheet_kind_words[];    /* NULL-ended, each at its value less one */

enum sheet_source { FROM_STEPS, FROM_RECORD_AND_WARNINGS, FROM_RECORD };
enum sheet_turn { ALONE, AFTER_OTHERS };

/* The rules for one kind of page: see include/proof.h. */
enum page_rules { RULES_NO_OTHERS, RULES_ESCAPE_PLAN };

enum sheet_code { CODED, NOT_CODED };
enum sheet_marks { MARKED, NOT_MARKED };

/* What a procedure of that kind is made from, and the rules for its pages. */
enum sheet_source sheet_source_of(enum sheet_kind kind);
enum page_rules page_rules_of(enum sheet_kind kind);

#endif
