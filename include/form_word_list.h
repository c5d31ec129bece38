/* form_word_list.h - the words that all forms share, a row each as in WORD_LIST, and those
 * of each form (room: words). */
#ifndef MAYDECK_FORM_WORD_LIST_H
#define MAYDECK_FORM_WORD_LIST_H

#include "survey_word_list.h"

#define FORM_WORD_LIST(X) \
    X(FORM_SHEET, form_sheet, PLAIN, "number") \
    X(FORM_SHEETS, form_sheets, COUNTED, "count") \
    X(FORM_DEFER, form_defer, PLAIN, "") \
    X(FORM_RECORD, form_record, PLAIN, "") \
    SURVEY_WORD_LIST(X)

#endif
