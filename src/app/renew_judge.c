/* renew_judge.c - each card of a boat held against what hangs and what was printed of it (room:
 * app). Two cards of one name at two places are judged one by one. */
#include "print_list.h"
#include "renew.h"

#include <stdio.h>
#include <string.h>

/* Days within which what changes by itself is told where no day was named. */
#define DAYS_AHEAD 30

/* ---- the boat ---- */

void renew_begin(void *run, struct boat_job *boat)
{
    struct renewing *renewing = run;
    renewing->arena = boat->arena;
    renewing->out = text_builder_in(boat->arena);
    renewing->never = (struct names){0};
    renewing->right = renewing->sheets = 0;
    renewing->own = rows_of_boat(&renewing->by_boat, boat->key);
    renewing->judged = arena_array(boat->arena, renewing->own.count + 1,
                                   sizeof *renewing->judged);
}

static void finding_begin(struct renewing *renewing, const char *what)
{
    renewing->found = true;
    text_add_format(&renewing->out, "  %s ", what);
}

/* "7 FLOODING (3EHB-1W4H)", with its language where the boat has others. */
static void card_add(struct renewing *renewing, const struct register_row *row)
{
    text_add_format(&renewing->out, "%s", row->name);
    if (!text_equal(row->language, words_language(renewing->fleet->first_language)))
        text_add_format(&renewing->out, ", %s", row->language);
    text_add_format(&renewing->out, " (%s)", row->code);
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
    finding_begin(renewing, "REPLACE");
    card_add(renewing, hung);
    text_add_format(&renewing->out, ", %s", hung->place);
    if (!text_equal(now->code, hung->code))
        text_add_format(&renewing->out, "; now %s", now->code);
    if (print != NULL)
        text_add_format(&renewing->out, "; printed %s, not hung",
                        date_text(renewing->arena, print->date));
    text_add(&renewing->out, "\n");
    renew_reasons(&renewing->own, sheets, sheet, hung, "      ", &renewing->out);
    reprint_add(renewing, now, hung->paper);
}

static void held_card_tell(struct renewing *renewing, const struct sheets *sheets,
                           const struct sheet *sheet, const struct register_row *hung)
{
    const struct problem *reason = held_reason(sheets, sheet);
    finding_begin(renewing, hung == NULL ? "HELD BACK" : "HANGS, BUT IS HELD BACK");
    if (hung == NULL)
        text_add(&renewing->out, sheet->name);
    else
        card_add(renewing, hung);
    if (hung != NULL)
        text_add_format(&renewing->out, ", %s", hung->place);
    text_add_format(&renewing->out, "%s%s\n", reason == NULL ? "" : ": ",
                    reason == NULL ? "" : reason->what);
}

/* Nothing of it hangs. */
static void unhung_tell(struct renewing *renewing, const struct register_row *now,
                        const char *paper)
{
    const struct register_row *print = print_of(&renewing->own, now, NULL);
    const struct register_row *last = print_last(&renewing->own, now, NULL);
    if (print != NULL) {
        finding_begin(renewing, "PRINTED, NOT HUNG");
        card_add(renewing, now);
        text_add_format(&renewing->out, ", printed %s\n", date_text(renewing->arena, print->date));
    } else if (last != NULL) {
        finding_begin(renewing, "PRINT AGAIN");
        card_add(renewing, last);
        text_add_format(&renewing->out, ", printed %s and never hung; now %s\n",
                        date_text(renewing->arena, last->date), now->code);
        reprint_add(renewing, now, last->paper);
    } else {
        names_add(&renewing->never, now->name, renewing->arena);
        renewing->found = true;
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
            held_card_tell(renewing, sheets, sheet, hung);
        else if (same_print(hung, now))
            right++;
        else
            replace_tell(renewing, sheets, sheet, now, hung);
    }
    renewing->right += hangs > 0 && right == hangs ? 1 : 0;
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
    renewing->sheets += hangs > 0 || expected ? 1 : 0;
    if (hangs > 0 || !expected)
        return;
    if (sheet->held)
        held_card_tell(renewing, sheets, sheet, NULL);
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
    finding_begin(renewing, "TAKE DOWN");
    card_add(renewing, hung);
    text_add_format(&renewing->out, ", %s: %s\n", hung->place,
                    reason == NULL ? "she has no such card any more" : reason);
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
    size_t due = renew_due(renewing, sheets, until, &renewing->out);
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

static void never_tell(struct renewing *renewing)
{
    const struct names *never = &renewing->never;
    if (never->count == 0)
        return;
    text_add(&renewing->out, "  NEVER PRINTED ");
    if (never->count == renewing->sheets)
        text_add_format(&renewing->out, "all %zu cards", never->count);
    for (size_t i = 0; never->count < renewing->sheets && i < never->count; i++)
        text_add_format(&renewing->out, "%s%s", i == 0 ? "" : "; ", never->at[i]);
    text_add(&renewing->out, "\n");
}

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
    if (boat->parts_made == 0) {
        renewing->found = true;
        printf("%s: NOT JUDGED: errors in her file or in the base's; %zu cards hang, and nothing "
               "tells whether they are true\n", boat->key, hanging_count(&renewing->own));
        return;
    }
    never_tell(renewing);
    unjudged_tell(renewing);
    if (renewing->right == renewing->sheets && renewing->sheets > 0)
        printf("%s: all %zu cards hang as recorded\n", boat->key, renewing->right);
    else
        printf("%s: %zu of %zu cards hang as recorded\n", boat->key, renewing->right,
               renewing->sheets);
    if (renewing->out.length > 0)
        fwrite(renewing->out.at, 1, renewing->out.length, stdout);
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
        printf("%s: TAKE DOWN %zu card%s: the base has no such boat any more\n", boat, count,
               count == 1 ? "" : "s");
    }
}
