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

static bool distress_sheet_holds(struct pen *trial, const struct page_needs *needs,
                                 mpt least_row)
{
    (void)least_row;
    return distress_fits(trial, needs);
}

static bool distress_sheet_place(struct pen *pen, struct pen *trial, const struct shared *shared)
{
    struct frame frame = frame_make(pen->paper, TEMPLATE_DISTRESS, &shared->needs);
    (void)trial;
    if (!distress_place(pen, &shared->needs))
        return false;
    foot_blocks_place(pen, shared, &frame);
    return true;
}

/* It shares no height with others but that of head and footer. */
static bool safety_sheet_holds(struct pen *trial, const struct page_needs *needs, mpt least_row)
{
    (void)trial;
    (void)needs;
    (void)least_row;
    return true;
}

static bool safety_sheet_place(struct pen *pen, struct pen *trial, const struct shared *shared)
{
    (void)trial;
    return safety_place(pen, &shared->needs);
}

const struct template_work template_works[TEMPLATE_COUNT] = {
    [TEMPLATE_CARD] = {card_holds, card_place, card_split, rank_lessen, true},
    [TEMPLATE_DISTRESS] = {distress_sheet_holds, distress_sheet_place, whole_split, rank_lessen,
                           true},
    [TEMPLATE_SAFETY_PLAN] = {safety_sheet_holds, safety_sheet_place, plan_split, plan_lessen,
                              false}};
