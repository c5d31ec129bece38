/* sheet_kinds.c - what the rooms that all others see ask of a kind of sheet (room: procedure). */
#include "sheet_kinds.h"

#include "promise.h"

const char *const sheet_kind_words[] = {
#define KIND_WORD(name, key, ...) key,
    SHEET_KIND_LIST(KIND_WORD)
#undef KIND_WORD
    NULL};

static const struct kind_row {
    enum sheet_source source;
    enum page_rules rules;
} kind_rows[SHEET_KIND_COUNT] = {
#define KIND_ROW(name, key, source, composer, calls, turn, template, rules, ...) \
    [SHEET_##name] = {source, rules},
    SHEET_KIND_LIST(KIND_ROW)
#undef KIND_ROW
};

enum sheet_source sheet_source_of(enum sheet_kind kind)
{
    promise(kind < SHEET_KIND_COUNT);
    return kind_rows[kind].source;
}

enum page_rules page_rules_of(enum sheet_kind kind)
{
    promise(kind < SHEET_KIND_COUNT);
    return kind_rows[kind].rules;
}
