/* template_works.c - which template a kind of sheet has, and how each is laid out (room:
 * layout). */
#include "pages.h"

#include "promise.h"

enum template_key template_of(const struct sheet *sheet)
{
    static const enum template_key templates[SHEET_KIND_COUNT] = {
#define KIND_TEMPLATE(name, key, source, composer, calls, turn, template, ...) \
    [SHEET_##name] = template,
        SHEET_KIND_LIST(KIND_TEMPLATE)
#undef KIND_TEMPLATE
    };
    promise(sheet->kind > SHEET_NONE && sheet->kind < SHEET_KIND_COUNT);
    return templates[sheet->kind];
}

bool safety_sheet_place(struct pen *pen, struct pen *trial, const struct shared *shared)
{
    (void)trial;
    return safety_place(pen, &shared->needs);
}

const struct template_work template_works[TEMPLATE_COUNT] = {
#define TEMPLATE_WORK(name, rows, ways, ...) [TEMPLATE_##name] = {__VA_ARGS__},
    TEMPLATE_LIST(TEMPLATE_WORK)
#undef TEMPLATE_WORK
};
