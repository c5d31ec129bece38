/* renew_code.c - a check code that somebody read off a card (room: app): which card it is of, and
 * whether that card is still true. A slip of the reader is told from an old card. */
#include "renew.h"

#include <string.h>

/* Codes as they are meant, and what was found of each. */
struct asking {
    struct renewing *renewing;
    struct names codes;
    struct code_told *told;        /* of each */
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
static void rows_find(const struct renewing *renewing, struct code_told *told)
{
    const struct register_rows *rows = &renewing->rows;
    for (size_t i = 0; i < rows->count; i++) {
        if (!text_equal(rows->rows[i].code, told->code))
            continue;
        told->rows = arena_grow(renewing->fleet->arena, told->rows, told->row_count,
                                &told->row_room, sizeof *told->rows);
        told->rows[told->row_count++] = &rows->rows[i];
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

static const char *code_kept(struct arena *arena, const char *text)
{
    return text == NULL ? NULL : arena_copy(arena, text, strlen(text));
}

/* All of it outlives the boat. */
static void card_found(const struct asking *asking, size_t index, const struct code_card *card)
{
    struct arena *arena = asking->renewing->fleet->arena;
    struct code_told *told = &asking->told[index];
    const char *const *reasons = card->reasons.at;
    const char **copies = arena_array(arena, card->reasons.count + 1, sizeof *copies);
    for (size_t i = 0; i < card->reasons.count; i++)
        copies[i] = code_kept(arena, reasons[i]);
    told->cards = arena_grow(arena, told->cards, told->count, &told->room, sizeof *told->cards);
    told->cards[told->count++] = (struct code_card){
        card->state, code_kept(arena, card->boat), code_kept(arena, card->card),
        code_kept(arena, card->name), code_kept(arena, card->now), card->printed,
        {copies, card->reasons.count}};
    told->current = told->current || card->state == CODE_CURRENT;
}

static void sheet_ask(const struct asking *asking, const struct sheets *sheets,
                      const struct sheet *sheet, size_t index)
{
    const struct renewing *renewing = asking->renewing;
    const char *code = asking->codes.at[index];
    const struct register_row now = row_of_sheet(&sheets->input, sheet, sheets->boat->arena);
    const struct register_row *row = row_of_code(&renewing->rows, &now, code);
    bool same = text_equal(now.code, code) && !sheet->held;
    struct code_card card = {.boat = now.boat, .card = now.card, .name = now.name,
                             .printed = row != NULL};
    if (same && (row == NULL || same_print(row, &now))) {
        card.state = CODE_CURRENT;
    } else if (row != NULL && sheet->held) {
        card.state = CODE_OLD_HELD;
    } else if (row != NULL) {
        card.state = CODE_OLD;
        card.now = same ? NULL : now.code;
        card.reasons = renew_reasons(&renewing->rows, sheets, sheet, row, sheets->boat->arena);
    } else {
        return;
    }
    card_found(asking, index, &card);
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
static bool code_judge(const struct asking *asking, size_t index)
{
    struct code_told *told = &asking->told[index];
    rows_find(asking->renewing, told);
    if (told->count == 0 && told->row_count == 0)
        problem_add(asking->renewing->fleet->problems, SEVERITY_ERROR, NO_PLACE,
                    "it may be of another base, of a print that was never recorded, or a draft: "
                    "print the\ncard anew and replace it",
                    "%s is a sound code, but neither the register nor a card of today has it",
                    told->code);
    return told->current;
}

static struct asking asking_of(struct renewing *renewing)
{
    const struct names *typed = &renewing->options->codes;
    struct arena *arena = renewing->fleet->arena;
    struct asking asking = {.renewing = renewing};
    for (size_t i = 0; i < typed->count; i++) {
        const char *code = code_meant(renewing->fleet, typed->at[i]);
        if (code != NULL && !names_hold(&asking.codes, code))
            names_add(&asking.codes, code, arena);
    }
    asking.told = arena_array(arena, asking.codes.count + 1, sizeof *asking.told);
    for (size_t i = 0; i < asking.codes.count; i++)
        asking.told[i].code = asking.codes.at[i];
    return asking;
}

enum exit_status renew_codes(struct renewing *renewing)
{
    static const struct job_use use = {.last = STEP_COMPOSE, .sheets = asked_sheets,
                                       .end = asked_end};
    struct asking asking = asking_of(renewing);
    struct job job = job_of(renewing->options, renewing->fleet);
    job.languages = renew_languages(renewing);
    job_run(&job, &use, &asking);
    bool all = true;
    for (size_t i = 0; i < asking.codes.count; i++)
        all = code_judge(&asking, i) && all;
    if (renewing->options->json && asking.codes.count > 0)
        codes_json_print(renewing, asking.told, asking.codes.count);
    else if (!renewing->options->json)
        codes_text_print(asking.told, asking.codes.count, renewing->fleet->arena);
    return all ? EXIT_GOOD : EXIT_FOUND;
}
