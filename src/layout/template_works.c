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

bool distress_holds(struct pen *trial, const struct page_needs *needs, mpt least_row)
{
    (void)least_row;
    return distress_fits(trial, needs);
}

bool distress_sheet_place(struct pen *pen, struct pen *trial, const struct shared *shared)
{
    struct frame frame = frame_make(pen->paper, TEMPLATE_DISTRESS, &shared->needs);
    (void)trial;
    if (!distress_place(pen, &shared->needs))
        return false;
    foot_blocks_place(pen, shared, &frame);
    return true;
}

bool shares_no_height(struct pen *trial, const struct page_needs *needs, mpt least_row)
{
    (void)trial;
    (void)needs;
    (void)least_row;
    return true;
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
