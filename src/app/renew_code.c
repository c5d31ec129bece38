/* renew_code.c - a check code that somebody read off a card (room: app): which card it is of, and
 * whether that card is still true. A slip of the reader is told from an old card. */
#include "renew.h"

#include <stdio.h>

/* Codes as they are meant, and what was found of each. */
struct asking {
    struct renewing *renewing;
    struct names codes;
    bool *current, *known;
    struct text_builder *told;     /* of each code, what is to be said behind what is printed */
};

/* The code as it is meant; NULL, with a problem: it is none. */
static const char *code_meant(const struct fleet *fleet, const char *typed)
{
    const char *code, *wrong;
    switch (code_read(typed, fleet->arena, &code, &wrong)) {
    case CODE_SOUND:
        return code;
    case CODE_MISTYPED:
        problem_add(fleet->problems, SEVERITY_USE, NO_PLACE,
                    "read all eight signs off the card again: 0 is a zero, 1 a one, and no code "
                    "has I, L, O or U",
                    "%s is mistyped: its last sign does not fit the others, so no card has it",
                    code);
        return NULL;
    case CODE_NO_CODE:
        problem_add(fleet->problems, SEVERITY_USE, NO_PLACE,
                    "write it as it stands at the foot of the card, such as 3EHB-1W4H",
                    "\"%s\" is no check code: %s", typed, wrong);
        return NULL;
    }
    return NULL;
}

/* What the register has of the code: each card that had it, printed and hung. */
static void rows_tell(const struct asking *asking, size_t index)
{
    const struct renewing *renewing = asking->renewing;
    const char *code = asking->codes.at[index];
    struct arena *arena = renewing->fleet->arena;
    const struct register_rows *rows = &renewing->rows;
    for (size_t i = 0; i < rows->count; i++) {
        const struct register_row *row = &rows->rows[i];
        const char *day = date_text(arena, row->date);
        if (!text_equal(row->code, code))
            continue;
        asking->known[index] = true;
        if (row->event == EVENT_PRINTED)
            printf("%s: %s, %s, %s: printed %s on %s\n", code, row->boat, row->name,
                   row->language, day, row->paper);
        else
            printf("%s: %s, %s, %s: %s %s, %s, by %s\n", code, row->boat, row->name,
                   row->language, row->event == EVENT_HUNG ? "hung" : "taken down", day,
                   row->place, row->by);
    }
}

/* The last row of that card with the code; NULL: it never had it. */
static const struct register_row *row_of_code(const struct register_rows *rows,
                                              const struct register_row *now, const char *code)
{
    for (size_t i = rows->count; i-- > 0;)
        if (same_card(&rows->rows[i], now) && text_equal(rows->rows[i].code, code))
            return &rows->rows[i];
    return NULL;
}

static void sheet_ask(const struct asking *asking, const struct sheets *sheets,
                      const struct sheet *sheet, size_t index)
{
    const struct renewing *renewing = asking->renewing;
    const char *code = asking->codes.at[index];
    struct text_builder *out = &asking->told[index];
    const struct register_row now = row_of_sheet(&sheets->input, sheet, sheets->boat->arena);
    const struct register_row *row = row_of_code(&renewing->rows, &now, code);
    bool same = text_equal(now.code, code) && !sheet->held;
    if (same && (row == NULL || same_print(row, &now))) {
        asking->current[index] = true;
        text_add_format(out, "%s: %s, %s: current, it says what the record says today%s\n", code,
                        now.boat, now.name, row == NULL ? "; the register has no such print" : "");
    } else if (row != NULL && sheet->held) {
        text_add_format(out, "%s: %s, %s: OLD, and the card is held back today\n", code, now.boat,
                        now.name);
    } else if (row != NULL) {
        text_add_format(out, "%s: %s, %s: OLD, replace it%s%s\n", code, now.boat, now.name,
                        same ? "" : "; the card has now ", same ? "" : now.code);
        struct text_builder reasons = text_builder_in(sheets->boat->arena);
        renew_reasons(&renewing->rows, sheets, sheet, row, "    ", &reasons);
        text_add(out, reasons.length == 0 ? "" : reasons.at);
    }
}

static void asked_sheets(void *run, struct sheets *sheets)
{
    const struct asking *asking = run;
    for (size_t c = 0; c < asking->codes.count; c++)
        for (size_t i = 0; i < sheets->set->count; i++)
            sheet_ask(asking, sheets, sheets->set->sheets[i], c);
}

static void asked_end(void *run, struct boat_job *boat)
{
    (void)run;
    if (boat->parts_made > 0)
        boat->problems = problems_from(boat->problems, SEVERITY_USE, boat->arena);
}

/* Once all boats were looked through. */
static bool code_tell(const struct asking *asking, size_t index)
{
    const struct fleet *fleet = asking->renewing->fleet;
    const char *code = asking->codes.at[index];
    const struct text_builder *told = &asking->told[index];
    rows_tell(asking, index);
    if (told->length > 0)
        fwrite(told->at, 1, told->length, stdout);
    else if (asking->known[index])
        printf("%s: OLD, take it down: no boat of the base has that card today\n", code);
    else
        problem_add(fleet->problems, SEVERITY_ERROR, NO_PLACE,
                    "it may be of another base, of a print that was never recorded, or a draft: "
                    "print the\ncard anew and replace it",
                    "%s is a sound code, but neither the register nor a card of today has it",
                    code);
    return asking->current[index];
}

enum exit_status renew_codes(struct renewing *renewing)
{
    static const struct job_use use = {.last = STEP_COMPOSE, .sheets = asked_sheets,
                                       .end = asked_end};
    const struct names *typed = &renewing->options->codes;
    struct arena *arena = renewing->fleet->arena;
    struct asking asking = {.renewing = renewing};
    struct job job = job_of(renewing->options, renewing->fleet);
    for (size_t i = 0; i < typed->count; i++) {
        const char *code = code_meant(renewing->fleet, typed->at[i]);
        if (code != NULL && !names_hold(&asking.codes, code))
            names_add(&asking.codes, code, arena);
    }
    asking.current = arena_array(arena, asking.codes.count + 1, sizeof *asking.current);
    asking.known = arena_array(arena, asking.codes.count + 1, sizeof *asking.known);
    asking.told = arena_array(arena, asking.codes.count + 1, sizeof *asking.told);
    for (size_t i = 0; i < asking.codes.count; i++)
        asking.told[i] = text_builder_in(arena);
    job.languages = renew_languages(renewing);
    job_run(&job, &use, &asking);
    bool all = true;
    for (size_t i = 0; i < asking.codes.count; i++)
        all = code_tell(&asking, i) && all;
    return all ? EXIT_GOOD : EXIT_FOUND;
}
