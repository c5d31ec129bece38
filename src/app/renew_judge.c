/* renew_judge.c - each card of a boat held against what hangs and what was printed of it (room:
 * app). Two cards of one name at two places are judged one by one. */
#include "print_list.h"
#include "renew.h"

#include <string.h>

/* Days within which what changes by itself is told where no day was named. */
#define DAYS_AHEAD 30

/* ---- the boat ---- */

void renew_begin(void *run, struct boat_job *boat)
{
    struct renewing *renewing = run;
    renewing->arena = boat->arena;
    renewing->hers = (struct renew_boat){.boat = boat->key};
    renewing->own = rows_of_boat(&renewing->by_boat, boat->key);
    renewing->judged = arena_array(boat->arena, renewing->own.count + 1,
                                   sizeof *renewing->judged);
}

/* ---- what is to be printed ---- */

static struct reprint *reprint_of(struct renewing *renewing, const struct register_row *row,
                                  const char *paper)
{
    struct arena *arena = renewing->fleet->arena;
    for (size_t i = 0; i < renewing->reprint_count; i++) {
        struct reprint *one = &renewing->reprints[i];
        if (text_equal(one->boat, row->boat) && text_equal(one->language, row->language) &&
            text_equal(one->paper, paper))
            return one;
    }
    renewing->reprints = arena_grow(arena, renewing->reprints, renewing->reprint_count,
                                    &renewing->reprint_room, sizeof *renewing->reprints);
    struct reprint *one = &renewing->reprints[renewing->reprint_count++];
    *one = (struct reprint){.boat = arena_copy(arena, row->boat, strlen(row->boat)),
                            .language = arena_copy(arena, row->language, strlen(row->language)),
                            .paper = arena_copy(arena, paper, strlen(paper))};
    return one;
}

static void reprint_add(struct renewing *renewing, const struct register_row *row,
                        const char *paper)
{
    struct reprint *one = reprint_of(renewing, row, paper);
    if (!names_hold(&one->cards, row->card))
        names_add(&one->cards, row->card, renewing->fleet->arena);
}

/* ---- one card ---- */

static void replace_tell(struct renewing *renewing, const struct sheets *sheets,
                         const struct sheet *sheet, const struct register_row *now,
                         const struct register_row *hung)
{
    const struct register_row *print = print_of(&renewing->own, now, NULL);
    struct renew_finding *finding = finding_add(renewing, RENEW_REPLACE, hung);
    finding->place = hung->place;
    finding->now = text_equal(now->code, hung->code) ? NULL : now->code;
    finding->printed = print == NULL ? NULL : date_text(renewing->arena, print->date);
    finding->reasons = renew_reasons(&renewing->own, sheets, sheet, hung, renewing->arena);
    renewing->found = true;
    reprint_add(renewing, now, hung->paper);
}

/* `hung` NULL: nothing of it hangs. */
static void held_card_tell(struct renewing *renewing, const struct sheets *sheets,
                           const struct sheet *sheet, const struct register_row *now,
                           const struct register_row *hung)
{
    const struct problem *reason = held_reason(sheets, sheet);
    struct renew_finding *finding =
        finding_add(renewing, hung == NULL ? RENEW_HELD : RENEW_HANGS_HELD,
                    hung == NULL ? now : hung);
    if (hung == NULL)
        finding->name = sheet->name;
    finding->place = hung == NULL ? NULL : hung->place;
    finding->why = reason == NULL ? NULL : reason->what;
    renewing->found = true;
}

/* Nothing of it hangs. */
static void unhung_tell(struct renewing *renewing, const struct register_row *now,
                        const char *paper)
{
    const struct register_row *print = print_of(&renewing->own, now, NULL);
    const struct register_row *last = print_last(&renewing->own, now, NULL);
    renewing->found = true;
    if (print != NULL) {
        finding_add(renewing, RENEW_NOT_HUNG, now)->printed =
            date_text(renewing->arena, print->date);
    } else if (last != NULL) {
        struct renew_finding *finding = finding_add(renewing, RENEW_PRINT_AGAIN, last);
        finding->printed = date_text(renewing->arena, last->date);
        finding->now = now->code;
        reprint_add(renewing, now, last->paper);
    } else {
        finding_add(renewing, RENEW_NEVER, now);
        if (renewing->own.count > 0)
            reprint_add(renewing, now, paper);
    }
}

/* Judges each card of that name that hangs; how many there are. */
static size_t hanging_judge(struct renewing *renewing, const struct sheets *sheets,
                            const struct sheet *sheet, const struct register_row *now)
{
    size_t hangs = 0, right = 0;
    for (size_t i = 0; i < renewing->own.count; i++) {
        const struct register_row *hung = &renewing->own.rows[i];
        if (!same_card(hung, now) || !hangs_still(&renewing->own, i))
            continue;
        hangs++;
        renewing->judged[i] = true;
        if (sheet->held)
            held_card_tell(renewing, sheets, sheet, now, hung);
        else if (same_print(hung, now))
            right++;
        else
            replace_tell(renewing, sheets, sheet, now, hung);
    }
    renewing->hers.right += hangs > 0 && right == hangs ? 1 : 0;
    return hangs;
}

/* Of a language that is not printed by itself a base hangs as many cards as it likes. */
static bool is_expected(const struct renewing *renewing, const struct register_row *now)
{
    return language_words(&renewing->fleet->printed, now->language) != NULL ||
           print_last(&renewing->own, now, NULL) != NULL;
}

static void card_judge(struct renewing *renewing, const struct sheets *sheets,
                       const struct sheet *sheet)
{
    const struct register_row now = row_of_sheet(&sheets->input, sheet, renewing->arena);
    size_t hangs = hanging_judge(renewing, sheets, sheet, &now);
    bool expected = is_expected(renewing, &now);
    renewing->hers.of += hangs > 0 || expected ? 1 : 0;
    if (hangs > 0 || !expected)
        return;
    if (sheet->held)
        held_card_tell(renewing, sheets, sheet, &now, NULL);
    else
        unhung_tell(renewing, &now, sheets->boat->job->papers[sheets->part.paper].key);
}

/* ---- one language ---- */

/* Why she has no such card; NULL: it is none that she could have. */
static const char *not_hers_reason(const struct sheets *sheets, const char *card)
{
    for (size_t i = 0; i < sheets->set->not_hers_count; i++)
        if (text_begins(card, sheets->set->not_hers[i].procedure_key))
            return sheets->set->not_hers[i].reason;
    return NULL;
}

static void take_down_tell(struct renewing *renewing, const struct register_row *hung,
                           const char *reason)
{
    struct renew_finding *finding = finding_add(renewing, RENEW_TAKE_DOWN, hung);
    finding->place = hung->place;
    finding->why = reason == NULL ? "she has no such card any more" : reason;
    renewing->found = true;
}

static void lost_cards_tell(struct renewing *renewing, const struct sheets *sheets)
{
    const char *language = words_language(sheets->input.words);
    for (size_t i = 0; i < renewing->own.count; i++) {
        const struct register_row *hung = &renewing->own.rows[i];
        if (renewing->judged[i] || !text_equal(hung->language, language) ||
            !hangs_still(&renewing->own, i))
            continue;
        renewing->judged[i] = true;
        take_down_tell(renewing, hung, not_hers_reason(sheets, hung->card));
    }
}

static void changing_tell(struct renewing *renewing, const struct sheets *sheets)
{
    struct date asked = renewing->options->horizon;
    struct date until = asked.year != 0
                            ? asked : date_days_later(renewing->options->today, DAYS_AHEAD);
    size_t due = renew_due(renewing, sheets, until);
    renewing->found = renewing->found || (due > 0 && asked.year != 0);
}

/* Is her set in that language in the register, or what would be printed? */
static bool is_of_concern(const struct renewing *renewing, const char *language)
{
    for (size_t i = 0; i < renewing->own.count; i++)
        if (text_equal(renewing->own.rows[i].language, language))
            return true;
    return language_words(&renewing->fleet->printed, language) != NULL;
}

void renew_sheets(void *run, struct sheets *sheets)
{
    struct renewing *renewing = run;
    if (!is_of_concern(renewing, words_language(sheets->input.words)))
        return;
    for (size_t i = 0; i < sheets->set->count; i++)
        if (sheet_is_registered(sheets->set->sheets[i]))
            card_judge(renewing, sheets, sheets->set->sheets[i]);
    lost_cards_tell(renewing, sheets);
    changing_tell(renewing, sheets);
}

/* ---- telling ---- */

/* Cards that hang by these rows. */
static size_t hanging_count(const struct register_rows *rows)
{
    size_t count = 0;
    for (size_t i = 0; i < rows->count; i++)
        count += hangs_still(rows, i) ? 1 : 0;
    return count;
}

/* Rows of languages that the program has no more. */
static void unjudged_tell(struct renewing *renewing)
{
    for (size_t i = 0; i < renewing->own.count; i++)
        if (!renewing->judged[i] && hangs_still(&renewing->own, i))
            take_down_tell(renewing, &renewing->own.rows[i],
                           "the program has no words in its language");
}

void renew_end(void *run, struct boat_job *boat)
{
    struct renewing *renewing = run;
    renewing->hers.hanging = hanging_count(&renewing->own);
    renewing->hers.state = boat->parts_made == 0 ? RENEW_NOT_JUDGED : RENEW_JUDGED;
    renewing->found = renewing->found || boat->parts_made == 0;
    if (boat->parts_made > 0)
        unjudged_tell(renewing);
    renew_boat_tell(renewing, &renewing->hers);
    if (boat->parts_made > 0)
        boat->problems = problems_from(boat->problems, SEVERITY_USE, boat->arena);
}

void renew_gone_boats(struct renewing *renewing)
{
    const struct fleet *fleet = renewing->fleet;
    struct names gone = {0};
    for (size_t i = 0; i < renewing->rows.count; i++) {
        const char *boat = renewing->rows.rows[i].boat;
        if (names_hold(&fleet->base_keys, boat) || names_hold(&gone, boat))
            continue;
        names_add(&gone, boat, fleet->arena);
        struct register_rows own = rows_of_boat(&renewing->by_boat, boat);
        size_t count = hanging_count(&own);
        if (count == 0)
            continue;
        renewing->found = true;
        renew_boat_tell(renewing, &(struct renew_boat){.boat = boat, .state = RENEW_GONE,
                                                       .hanging = count});
    }
}
