/* sheet_kinds.c - the kinds of sheet by name, and the columns of theirs that no other room has
 * a table of: what a sheet is made from, and the rules for its pages (room: procedure). */
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
