/* mark_word_list.h - what a sheet says of itself in its strips and its footer, as rows of
 * WORD_LIST in words.h (room: words). */
#ifndef MAYDECK_MARK_WORD_LIST_H
#define MAYDECK_MARK_WORD_LIST_H

#define MARK_WORD_LIST(X) \
    X(DEFER, defer, PLAIN, "") \
    X(DEFER_ORDER, defer_order, PLAIN, "") \
    X(CHECK_CODE, check_code, PLAIN, "") \
    X(PRINTED, printed, PLAIN, "date") \
    X(LANGUAGE, language, PLAIN, "") \
    X(GEAR_DATES, gear_dates, PLAIN, "date") \
    X(GEAR_DATES_NONE, gear_dates_none, PLAIN, "") \
    X(REPLACE, replace, PLAIN, "") \
    X(GEAR_DATES_PAST, gear_dates_past, PLAIN, "date") \
    X(GEAR_DATES_SOME, gear_dates_some, COUNTED, "count date") \
    X(APPROVED, approved, PLAIN, "initials qualification date") \
    X(MARK_SPECIMEN, mark_specimen, PLAIN, "") \
    X(MARK_DRAFT, mark_draft, PLAIN, "") \
    X(MARK_SPECIMEN_SHORT, mark_specimen_short, PLAIN, "") \
    X(MARK_DRAFT_SHORT, mark_draft_short, PLAIN, "") \
    X(MARK_CHANGED, mark_changed, PLAIN, "") \
    X(MARK_OF_BASE, mark_of_base, PLAIN, "") \
    X(MARK_NOT_APPROVED, mark_not_approved, PLAIN, "")

#endif
