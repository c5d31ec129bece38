/* register_rows.c - rows of a register as lines: writing them, and what of them tells what hangs
 * now (room: register). */
#include "csv.h"
#include "register_room.h"

#include <stdlib.h>
#include <string.h>

const char *const register_event_words[] = {REGISTER_EVENT_LIST(CHOICE_WORD) NULL};
const char *const register_column_words[] = {REGISTER_COLUMN_LIST(CHOICE_WORD) NULL};

/* ---- writing ---- */

void register_head_add(struct text_builder *out)
{
    csv_row_add(out, REGISTER_DELIMITER, register_column_words, COLUMN_COUNT - 1);
}

static const char *cell_text(const char *text)
{
    return text_empty(text) ? REGISTER_NOTHING : text;
}

/* A line is a row: what would end it, as in the name of a file, becomes a space. */
static const char *cell_written(const char *text, struct arena *arena)
{
    char *cell = arena_copy(arena, cell_text(text), strlen(cell_text(text)));
    for (char *at = cell; *at != '\0'; at++)
        if ((unsigned char)*at < ' ')
            *at = ' ';
    return cell;
}

void register_row_add(const struct register_row *row, struct text_builder *out)
{
    const char *cells[COLUMN_COUNT - 1] = {
        [COLUMN_EVENT - 1] = choice_word(register_event_words, row->event),
        [COLUMN_BOAT - 1] = row->boat, [COLUMN_CARD - 1] = row->card,
        [COLUMN_NUMBER - 1] = row->number, [COLUMN_NAME - 1] = row->name,
        [COLUMN_LANGUAGE - 1] = row->language, [COLUMN_PAPER - 1] = row->paper,
        [COLUMN_CODE - 1] = row->code, [COLUMN_DATE - 1] = date_text(out->arena, row->date),
        [COLUMN_PLACE - 1] = row->place, [COLUMN_BY - 1] = row->by,
        [COLUMN_UNTIL - 1] = row->until, [COLUMN_DATES - 1] = row->dates,
        [COLUMN_PROGRAM - 1] = row->program, [COLUMN_TEXTS - 1] = row->texts,
        [COLUMN_CONTENT - 1] = row->content};
    for (size_t i = 0; i < COLUMN_COUNT - 1; i++)
        cells[i] = cell_written(cells[i], out->arena);
    csv_row_add(out, REGISTER_DELIMITER, cells, COLUMN_COUNT - 1);
}

static const char *cell_copy(const char *text, struct arena *arena)
{
    return text == NULL ? NULL : arena_copy(arena, text, strlen(text));
}

struct register_row row_copy(const struct register_row *row, struct arena *arena)
{
    return (struct register_row){
        .event = row->event, .date = row->date, .boat = cell_copy(row->boat, arena),
        .card = cell_copy(row->card, arena), .number = cell_copy(row->number, arena),
        .name = cell_copy(row->name, arena), .language = cell_copy(row->language, arena),
        .paper = cell_copy(row->paper, arena), .code = cell_copy(row->code, arena),
        .place = cell_copy(row->place, arena), .by = cell_copy(row->by, arena),
        .until = cell_copy(row->until, arena), .dates = cell_copy(row->dates, arena),
        .program = cell_copy(row->program, arena), .texts = cell_copy(row->texts, arena),
        .content = cell_copy(row->content, arena)};
}

/* ---- which rows belong together ---- */

bool same_card(const struct register_row *a, const struct register_row *b)
{
    return text_equal(a->boat, b->boat) && text_equal(a->card, b->card) &&
           text_equal(a->language, b->language);
}

bool same_print(const struct register_row *a, const struct register_row *b)
{
    return same_card(a, b) && text_equal(a->code, b->code) &&
           text_equal(cell_text(a->dates), cell_text(b->dates));
}

static const char *gap_skip(const char *at)
{
    while (*at == ' ')
        at++;
    return at;
}

static char letter_small(char letter)
{
    return letter >= 'A' && letter <= 'Z' ? (char)(letter - 'A' + 'a') : letter;
}

bool same_place(const char *a, const char *b)
{
    for (a = gap_skip(a), b = gap_skip(b); *a != '\0' || *b != '\0';) {
        bool gap = *a == ' ' || *b == ' ';
        const char *next_a = gap_skip(a), *next_b = gap_skip(b);
        if (gap && *next_a != '\0' && *next_b != '\0' && (next_a == a || next_b == b))
            return false;
        a = next_a;
        b = next_b;
        if (letter_small(*a) != letter_small(*b))
            return false;
        a += *a != '\0' ? 1 : 0;
        b += *b != '\0' ? 1 : 0;
    }
    return true;
}

const struct register_row *print_last(const struct register_rows *rows,
                                      const struct register_row *card, const char *paper)
{
    for (size_t i = rows->count; i-- > 0;) {
        const struct register_row *row = &rows->rows[i];
        if (row->event == EVENT_PRINTED && same_card(row, card) &&
            (paper == NULL || text_equal(row->paper, paper)))
            return row;
    }
    return NULL;
}

const struct register_row *print_of(const struct register_rows *rows,
                                    const struct register_row *card, const char *paper)
{
    const struct register_row *last = print_last(rows, card, paper);
    return last != NULL && same_print(last, card) ? last : NULL;
}

bool hangs_still(const struct register_rows *rows, size_t index)
{
    const struct register_row *hung = &rows->rows[index];
    for (size_t i = index + 1; hung->event == EVENT_HUNG && i < rows->count; i++) {
        const struct register_row *later = &rows->rows[i];
        if (later->event != EVENT_PRINTED && same_card(later, hung) &&
            same_place(later->place, hung->place))
            return false;
    }
    return hung->event == EVENT_HUNG;
}

const char *content_of(const struct register_rows *rows, const struct register_row *card)
{
    for (size_t i = rows->count; i-- > 0;) {
        const struct register_row *row = &rows->rows[i];
        if (same_card(row, card) && text_equal(row->code, card->code) &&
            !text_equal(row->content, REGISTER_NOTHING))
            return row->content;
    }
    return NULL;
}

/* ---- by boat ---- */

static int boat_compare(const void *left, const void *right)
{
    const struct register_row *const *a = left, *const *b = right;
    int boats = strcmp((*a)->boat, (*b)->boat);
    return boats != 0 ? boats : (*a > *b) - (*a < *b);    /* of one array: the order of the file */
}

struct register_rows rows_by_boat(const struct register_rows *rows, struct arena *arena)
{
    const struct register_row **order = arena_array(arena, rows->count, sizeof *order);
    struct register_row *sorted = arena_array(arena, rows->count, sizeof *sorted);
    for (size_t i = 0; i < rows->count; i++)
        order[i] = &rows->rows[i];
    if (rows->count > 0)
        qsort(order, rows->count, sizeof *order, boat_compare);
    for (size_t i = 0; i < rows->count; i++)
        sorted[i] = *order[i];
    return (struct register_rows){.rows = sorted, .count = rows->count};
}

/* How many rows are of a boat whose key, compared with that one, comes out below the limit: 0 for
 * those before her, 1 for hers too. */
static size_t rows_before(const struct register_rows *by_boat, const char *boat, int limit)
{
    size_t low = 0, high = by_boat->count;
    while (low < high) {
        size_t middle = low + (high - low) / 2;
        if (strcmp(by_boat->rows[middle].boat, boat) < limit)
            low = middle + 1;
        else
            high = middle;
    }
    return low;
}

struct register_rows rows_of_boat(const struct register_rows *by_boat, const char *boat)
{
    size_t first = rows_before(by_boat, boat, 0), end = rows_before(by_boat, boat, 1);
    if (first == end)
        return (struct register_rows){0};
    return (struct register_rows){.rows = by_boat->rows + first, .count = end - first};
}
