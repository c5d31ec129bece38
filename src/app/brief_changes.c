/* brief_changes.c - what her cards say otherwise than those that hung when she was last handed
 * over, by the register of the base (room: app). It judges no card: `renew` does. */
#include "brief_changes.h"

#include "register_file.h"

void hire_register_take(const struct options *options, struct fleet *fleet)
{
    struct register_rows *rows = arena_alloc(fleet->arena, sizeof *rows);
    struct hire *hire = arena_alloc(fleet->arena, sizeof *hire);
    if (fleet->hire == NULL || fleet->hire->since.year == 0 ||
        !is_plain_file(register_path(options, fleet->arena)) ||
        !register_take(options, fleet, rows))
        return;
    *hire = *fleet->hire;
    hire->hung = rows;
    fleet->hire = hire;
}

/* That which hung of the card on that day; NULL: none did. */
static const struct register_row *hung_on(const struct register_rows *rows,
                                          const struct register_row *card, struct date day)
{
    const struct register_row *last = NULL;
    for (size_t i = 0; i < rows->count; i++) {
        const struct register_row *row = &rows->rows[i];
        if (same_card(row, card) && row->event != EVENT_PRINTED &&
            date_compare(row->date, day) <= 0)
            last = row->event == EVENT_HUNG ? row : NULL;
    }
    return last;
}

struct hire_changes {
    struct hire_change *at;
    size_t count, room;
};

static void hire_change_add(struct hire_changes *changes, const char *number, const char *reason,
                            struct arena *arena)
{
    for (size_t i = 0; i < changes->count; i++)
        if (text_equal(changes->at[i].reason, reason))
            return;
    changes->at = arena_grow(arena, changes->at, changes->count, &changes->room,
                             sizeof *changes->at);
    changes->at[changes->count++] = (struct hire_change){number, reason};
}

/* Where what the card said is not kept, that it is another. */
static void card_changes_add(const struct compose_input *input, const struct sheet *sheet,
                             struct hire_changes *changes, struct arena *arena)
{
    const struct register_rows *rows = input->hire->hung;
    const struct register_row now = row_of_sheet(input, sheet, arena);
    const struct register_row *hung = hung_on(rows, &now, input->hire->since);
    if (hung == NULL || text_equal(hung->code, now.code))
        return;
    const char *packed = content_of(rows, hung);
    const char *old = packed == NULL ? NULL : content_unpack(packed, arena);
    struct register_changes reasons = {0};
    if (old != NULL)
        reasons = register_changes(old, register_content(input, sheet, arena), arena);
    for (size_t i = 0; i < reasons.count; i++)
        hire_change_add(changes, sheet->number, reasons.at[i], arena);
    if (reasons.count == 0)
        hire_change_add(changes, sheet->number, "", arena);
}

const struct hire *hire_with_changes(const struct compose_input *input,
                                     const struct sheet_set *cards, struct arena *arena)
{
    struct hire *hire = arena_alloc(arena, sizeof *hire);
    struct hire_changes changes = {0};
    if (input->hire->hung == NULL)
        return input->hire;
    for (size_t i = 0; i < cards->count; i++)
        if (!cards->sheets[i]->held && sheet_is_registered(cards->sheets[i]))
            card_changes_add(input, cards->sheets[i], &changes, arena);
    *hire = *input->hire;
    hire->changes = changes.at;
    hire->change_count = changes.count;
    return hire;
}
