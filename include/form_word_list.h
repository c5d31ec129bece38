/* form_word_list.h - the words that all forms share, a row each as in WORD_LIST, and behind them
 * those of each form (room: words). */
#ifndef MAYDECK_FORM_WORD_LIST_H
#define MAYDECK_FORM_WORD_LIST_H

#include "brief_word_list.h"
#include "survey_word_list.h"

#define FORM_WORD_LIST(X) \
    X(FORM_SHEET, form_sheet, PLAIN, "number") \
    X(FORM_SHEETS, form_sheets, COUNTED, "count") \
    X(FORM_DEFER, form_defer, PLAIN, "") \
    X(FORM_RECORD, form_record, PLAIN, "") \
    X(STICKERS_TITLE, stickers_title, PLAIN, "") \
    X(STICKER_FOOT, sticker_foot, PLAIN, "boat") \
    X(STICKER_FOOT_SPECIMEN, sticker_foot_specimen, PLAIN, "boat") \
    X(DOCUMENT_STICKERS, document_stickers, PLAIN, "") \
    X(OVERVIEW_TITLE, overview_title, PLAIN, "") \
    X(OVERVIEW_SIGNS, overview_signs, PLAIN, "") \
    X(DOCUMENT_OVERVIEW, document_overview, PLAIN, "") \
    BRIEF_WORD_LIST(X) \
    SURVEY_WORD_LIST(X)

#endif
