/* check_rows.c - what `check` says of each boat in one line of a table (room: app). */
#include "check_rows.h"
#include "alike.h"
#include "findings.h"
#include "gear_date.h"
#include "item_fields.h"
#include "starter.h"
#include "told.h"

#include <stdio.h>
#include <string.h>

static const char *kept(struct arena *arena, const char *text)
{
    return text == NULL ? NULL : arena_copy(arena, text, strlen(text));
}

static void cards_count(const struct sheets *sheets, struct check_row *row)
{
    row->of += sheets->page_count;
    for (size_t i = 0; i < sheets->page_count; i++)
        row->ready += sheets->pages[i].page != NULL && !sheets->pages[i].sheet->held ? 1 : 0;
}

static void not_hers_keep(const struct sheet_set *set, struct check_row *row, struct arena *arena)
{
    struct sheet_not_hers *list = arena_array(arena, set->not_hers_count, sizeof *list);
    row->not_hers_count = set->not_hers_count;
    for (size_t i = 0; i < row->not_hers_count; i++)
        list[i] = (struct sheet_not_hers){.name = kept(arena, set->not_hers[i].name),
                                          .reason = kept(arena, set->not_hers[i].reason)};
    row->not_hers = list;
}

/* ---- dates of gear ---- */

static struct check_date check_date_of(const struct equipment *gear, const struct gear_date *date,
                                       const struct source *hers, struct arena *arena)
{
    struct check_date row = {.item = gear->kind->key, .tag = kept(arena, gear->tag.text),
                             .stamped = date->stamped,
                             .line = date->known ? date->place.line : gear->place.line};
    if ((date->known ? date->place : gear->place).source != hers)
        row.line = 0;                  /* in her model's file */
    if (date->known) {
        row.date = date_text(arena, gear_date_shown(date));
        row.from = gear_field_word(date->field);
    }
    return row;
}

/* Of each piece that has a date or needs one, and which of them runs out first. */
static void dates_find(const struct boat_job *job, struct check_row *row)
{
    const struct fleet *fleet = job->job->fleet;
    const struct boat *boat = job->boat;
    struct gear_dates all = {0};
    struct check_date *list = arena_array(fleet->arena, boat->equipment_count, sizeof *list);
    for (size_t i = 0; i < boat->equipment_count; i++) {
        const struct equipment *gear = &boat->equipment[i];
        struct gear_date date;
        gear_dates_add(&all, gear, fleet->base);
        if (!gear_date(gear, fleet->base, &date) && !date.rule->needed)
            continue;
        list[row->date_count] = check_date_of(gear, &date, boat->source, fleet->arena);
        if (all.piece == gear)
            row->first_date = &list[row->date_count];
        row->date_count++;
    }
    row->dates = list;
}

/* ---- cards ---- */

static const char *state_of(const struct sheet *sheet, size_t pages)
{
    return pages == 0 ? "held" : sheet->held ? "draft" : "ready";
}

static struct check_card check_card_of(const struct sheets *sheets, size_t first, size_t *next)
{
    struct arena *arena = sheets->boat->job->fleet->arena;
    const struct sheet *sheet = sheets->pages[first].sheet;
    size_t pages = 0;
    for (*next = first; *next < sheets->page_count && sheets->pages[*next].sheet == sheet; ++*next)
        pages += sheets->pages[*next].page != NULL ? 1 : 0;
    const char *code = sheet_footer(sheet)->code;
    return (struct check_card){
        .card = kept(arena, sheet->id), .number = kept(arena, sheet->number),
        .name = kept(arena, sheet->name), .language = kept(arena, sheet->language),
        .state = state_of(sheet, pages),
        .code = pages == 0 || text_empty(code) ? NULL : kept(arena, code), .pages = pages};
}

static void cards_keep(const struct sheets *sheets, struct check_row *row)
{
    struct check_card *cards = arena_array(sheets->boat->job->fleet->arena,
                                           row->card_count + sheets->page_count, sizeof *cards);
    for (size_t i = 0; i < row->card_count; i++)
        cards[i] = row->cards[i];
    for (size_t i = 0; i < sheets->page_count;)
        cards[row->card_count++] = check_card_of(sheets, i, &i);
    row->cards = cards;
}

struct check_row check_row_of(const struct boat_job *boat)
{
    return (struct check_row){.key = boat->key, .items = ITEM_COUNT - 1,
                              .problems = boat->job->fleet->boats[boat->index].problems};
}

void check_row_record(struct check_row *row, const struct boat_job *boat)
{
    row->read = boat->boat != NULL;
    if (!row->read)
        return;
    row->recorded = boat_items_mentioned(boat->boat);
    dates_find(boat, row);
}

void check_row_sheets(struct check_row *row, const struct sheets *sheets)
{
    row->composed = true;
    cards_count(sheets, row);
    cards_keep(sheets, row);
    not_hers_keep(sheets->set, row, sheets->boat->job->fleet->arena);
}

/* ---- the table ---- */

enum { COLUMNS = 8, CELL_BYTES = 64 };
struct cells { char at[COLUMNS][CELL_BYTES]; };

static const char *const heads[COLUMNS] = {
    "boat", "recorded", "cards", "errors", "deficiencies", "notes", "silenced", "first date"};

static void number_set(char *cell, size_t number)
{
    snprintf(cell, CELL_BYTES, "%zu", number);
}

static struct cells row_cells(const struct check_row *row)
{
    struct cells cells;
    snprintf(cells.at[0], CELL_BYTES, "%s", row->key);
    snprintf(cells.at[1], CELL_BYTES, "%zu of %zu", row->recorded, row->items);
    snprintf(cells.at[2], CELL_BYTES, "%zu of %zu", row->ready, row->of);
    if (!row->read)
        snprintf(cells.at[1], CELL_BYTES, "-");
    if (!row->composed)
        snprintf(cells.at[2], CELL_BYTES, "none");
    number_set(cells.at[3], problems_count(row->problems, SEVERITY_ERROR) +
                                problems_count(row->problems, SEVERITY_HELD));
    number_set(cells.at[4], problems_count(row->problems, SEVERITY_DEFICIENCY));
    number_set(cells.at[5], problems_count(row->problems, SEVERITY_NOTE));
    number_set(cells.at[6], problems_count(row->problems, SEVERITY_SILENCED));
    if (row->first_date == NULL)
        snprintf(cells.at[7], CELL_BYTES, "none recorded");
    else
        snprintf(cells.at[7], CELL_BYTES, "%s %s %s", row->first_date->date,
                 row->first_date->item, row->first_date->tag == NULL ? "" : row->first_date->tag);
    return cells;
}

static void widths_find(const struct check_row *rows, size_t count, int widths[COLUMNS])
{
    for (int column = 0; column < COLUMNS; column++)
        widths[column] = (int)strlen(heads[column]);
    for (size_t i = 0; i < count; i++) {
        struct cells cells = row_cells(&rows[i]);
        for (int column = 0; column < COLUMNS; column++) {
            int length = (int)strlen(cells.at[column]);
            widths[column] = length > widths[column] ? length : widths[column];
        }
    }
}

static void line_print(const char *const *texts, const int widths[COLUMNS],
                       struct text_builder *out)
{
    for (int column = 0; column + 1 < COLUMNS; column++)
        text_add_format(out, "%-*s  ", widths[column], texts[column]);
    text_add_format(out, "%s\n", texts[COLUMNS - 1]);
}

/* A boat by herself, a line a column. */
static void boat_row_tell(const struct check_row *row, struct text_builder *out)
{
    struct cells cells = row_cells(row);
    for (int column = 0; column < COLUMNS; column++)
        text_add_format(out, "%s%s: %s\n", column == 0 ? "" : "  ", heads[column],
                        cells.at[column]);
}

static bool is_wider_than_terminal(const int widths[COLUMNS])
{
    size_t width = 2 * (COLUMNS - 1), columns = told_columns();
    for (int column = 0; column < COLUMNS; column++)
        width += (size_t)widths[column];
    return columns > 0 && width > columns;
}

static void table_print(const struct check_row *rows, size_t count, struct text_builder *out)
{
    int widths[COLUMNS];
    widths_find(rows, count, widths);
    if (is_wider_than_terminal(widths)) {
        for (size_t i = 0; i < count; i++)
            boat_row_tell(&rows[i], out);
        return;
    }
    line_print(heads, widths, out);
    for (size_t i = 0; i < count; i++) {
        struct cells cells = row_cells(&rows[i]);
        const char *texts[COLUMNS];
        for (int column = 0; column < COLUMNS; column++)
            texts[column] = cells.at[column];
        line_print(texts, widths, out);
    }
}

/* ---- cards that are not a boat's ---- */

/* One such card of one boat. */
struct card_without {
    const char *boat;
    const struct sheet_not_hers *card;
};

/* The boats that have no such card for that reason, of which the first is told. */
static void without_print(const struct fleet *fleet, const struct card_without *list, size_t first,
                          const struct alike *alike, struct text_builder *out)
{
    struct names boats = {0};
    for (size_t i = first; i < alike->count; i = alike->next[i])
        names_add(&boats, list[i].boat, fleet->arena);
    text_add_format(out, "%s: no card %s: %s\n", boats_words(fleet, &boats),
                    list[first].card->name, list[first].card->reason);
}

static void not_hers_print(const struct fleet *fleet, const struct check_row *rows, size_t count,
                           struct text_builder *out)
{
    struct arena *arena = fleet->arena;
    size_t most = 0, total = 0;
    for (size_t i = 0; i < count; i++)
        most += rows[i].not_hers_count;
    struct card_without *list = arena_array(arena, most, sizeof *list);
    const char **words = arena_array(arena, most, sizeof *words);
    for (size_t i = 0; i < count; i++)
        for (size_t k = 0; k < rows[i].not_hers_count; k++) {
            const struct sheet_not_hers *card = &rows[i].not_hers[k];
            words[total] = text_format(arena, "%s\n%s", card->name, card->reason);
            list[total++] = (struct card_without){rows[i].key, card};
        }
    struct alike alike = alike_of(words, total, arena);
    for (size_t i = 0; i < total; i++)
        if (alike.first[i] == i)
            without_print(fleet, list, i, &alike, out);
}

void check_rows_print(const struct fleet *fleet, const struct check_row *rows, size_t count,
                      struct text_builder *out)
{
    not_hers_print(fleet, rows, count, out);
    table_print(rows, count, out);
}
