/* template_works.c - which template a kind of sheet has, and how each is laid out (room:
 * layout). */
#include "pages.h"

#include "promise.h"

/* What stands in the place of a template on paper of two sides; 0: itself. */
static const enum template_key of_two_sides[TEMPLATE_COUNT] = {
    [TEMPLATE_CARD] = TEMPLATE_CARD_FRONT};

enum template_key template_of(const struct sheet *sheet, const struct paper *paper)
{
    static const enum template_key templates[SHEET_KIND_COUNT] = {
#define KIND_TEMPLATE(name, key, source, composer, calls, turn, template, ...) \
    [SHEET_##name] = template,
        SHEET_KIND_LIST(KIND_TEMPLATE)
#undef KIND_TEMPLATE
    };
    promise(sheet->kind > SHEET_NONE && sheet->kind < SHEET_KIND_COUNT);
    enum template_key key = templates[sheet->kind];
    bool two = paper->sides == TWO_SIDES && of_two_sides[key] != 0;
    return two ? of_two_sides[key] : key;
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
