/* csv.c - reading a table that a spreadsheet wrote (room: base). What a cell means is its
 * reader's affair. */
#include "csv.h"

#include <stdbool.h>
#include <string.h>

#include "utf8.h"

struct csv_reading {
    const struct source *source;
    struct arena *arena;
    struct problems *problems;
    struct csv_table *table;
    size_t at;                  /* the byte that is read next */
    size_t row_number;
    struct csv_row *rows;
    size_t row_capacity;
    struct csv_cell *cells;     /* of the row that is being read */
    size_t cell_count, cell_capacity;
    size_t errors;
    bool stopped;               /* what follows cannot be read */
};

__attribute__((format(printf, 4, 5)))
static void csv_error(struct csv_reading *reading, size_t at, const char *remedy,
                      const char *format, ...)
{
    va_list list;

    va_start(list, format);
    char *what = text_format_list(reading->arena, format, list);
    va_end(list);
    problem_add(reading->problems, SEVERITY_ERROR, source_place(reading->source, at), remedy,
                "%s", what);
    if (++reading->errors == CSV_ERRORS_MOST)
        reading->stopped = true;
}

/* ---- is it such a file at all? ---- */

#define ENCODING_REMEDY "save it again as CSV, with the character set Unicode (UTF-8)"

static bool looks_utf16(const struct source *source)
{
    const char *bytes = source->bytes;
    bool marked = source->length >= 2 && (memcmp(bytes, "\xFF\xFE", 2) == 0 ||
                                          memcmp(bytes, "\xFE\xFF", 2) == 0);
    return marked || (source->length >= 4 && ((bytes[0] == '\0' && bytes[2] == '\0') ||
                                              (bytes[1] == '\0' && bytes[3] == '\0')));
}

static bool encoding_sound(struct csv_reading *reading)
{
    const struct source *source = reading->source;
    size_t invalid = utf8_first_invalid(source->bytes, source->length);
    const char *zero = memchr(source->bytes, '\0', source->length);

    if (source->length >= 4 && memcmp(source->bytes, "PK\x03\x04", 4) == 0)
        csv_error(reading, 0, "open it in the spreadsheet program and save it as CSV, in UTF-8",
                  "this is a spreadsheet program's own file, not CSV");
    else if (looks_utf16(source))
        csv_error(reading, 0, ENCODING_REMEDY, "the file is in UTF-16");
    else if (invalid < source->length)
        csv_error(reading, invalid, ENCODING_REMEDY, "the file is not UTF-8 here");
    else if (zero != NULL)
        csv_error(reading, (size_t)(zero - source->bytes), ENCODING_REMEDY,
                  "a zero byte stands here");
    return reading->errors == 0;
}

/* ---- what parts the cells ---- */

static bool is_line_end(char byte)
{
    return byte == '\n' || byte == '\r';
}

/* How often the sign stands in the head, outside of quotes. */
static size_t delimiter_count(const struct source *source, size_t from, char sign)
{
    size_t count = 0;
    bool quoted = false;

    for (size_t i = from; i < source->length && (quoted || !is_line_end(source->bytes[i])); i++) {
        if (source->bytes[i] == '"')
            quoted = !quoted;
        count += !quoted && source->bytes[i] == sign ? 1 : 0;
    }
    return count;
}

/* The sign that stands there most often; a table of one column has none, and is read by commas. */
static char delimiter_find(struct csv_reading *reading, size_t head)
{
    static const char signs[] = CSV_DELIMITERS;
    size_t most = 0;
    char found = signs[0];
    bool tie = false;

    for (size_t i = 0; i < sizeof signs - 1; i++) {
        size_t count = delimiter_count(reading->source, head, signs[i]);
        tie = count == most ? tie || count > 0 : tie && count < most;
        if (count > most) {
            most = count;
            found = signs[i];
        }
    }
    if (tie) {
        csv_error(reading, head, "write the head with one sign between its cells: a comma, a "
                  "semicolon, a tab or a bar",
                  "the head does not tell what stands between cells");
        reading->stopped = true;
    }
    return found;
}

/* ---- cells ---- */

static bool cell_ends(const struct csv_reading *reading, size_t at)
{
    return at >= reading->source->length || is_line_end(reading->source->bytes[at]) ||
           reading->source->bytes[at] == reading->table->delimiter;
}

/* The first character of the cell that no text may hold is told. A line end, also one that is
 * part of CRLF, may stand in quotes. */
static void csv_characters_check(struct csv_reading *reading, size_t from, size_t to)
{
    const char *bytes = reading->source->bytes;
    uint32_t code_point;

    for (size_t i = from; i < to;) {
        size_t at = i;
        if (!utf8_next(bytes, to, &i, &code_point))
            return;
        if (code_point == '\n' || code_point == '\r' || utf8_refusal(code_point) == NULL)
            continue;
        csv_error(reading, at, "take it out, in the spreadsheet or with a text editor",
                  "the cell holds a character that is not allowed: %s (U+%04x)",
                  utf8_refusal(code_point), (unsigned)code_point);
        return;
    }
}

static void csv_cell_add(struct csv_reading *reading, const char *text, size_t at)
{
    reading->cells = arena_grow(reading->arena, reading->cells, reading->cell_count,
                                &reading->cell_capacity, sizeof *reading->cells);
    reading->cells[reading->cell_count++] = (struct csv_cell){text, at};
}

static void plain_cell_read(struct csv_reading *reading)
{
    const char *bytes = reading->source->bytes;
    size_t start = reading->at, quote = 0;
    bool quoted = false;

    for (; !cell_ends(reading, reading->at); reading->at++)
        if (bytes[reading->at] == '"' && !quoted) {
            quoted = true;
            quote = reading->at;
        }
    if (quoted)
        csv_error(reading, quote, "put the whole cell into quotes, and write each quote in it "
                  "twice",
                  "a quote stands in a cell that does not begin with one");
    csv_characters_check(reading, start, reading->at);
    csv_cell_add(reading, arena_copy(reading->arena, bytes + start, reading->at - start), start);
}

/* The byte behind the quote that closes the cell, 0 where none does. What stands in it, with
 * single quotes and LF, is added to `out`. */
static size_t quoted_read(const struct csv_reading *reading, struct text_builder *out)
{
    const char *bytes = reading->source->bytes;
    size_t length = reading->source->length;

    for (size_t i = reading->at + 1; i < length; i++) {
        bool crlf = bytes[i] == '\r' && i + 1 < length && bytes[i + 1] == '\n';
        if (bytes[i] == '"' && i + 1 < length && bytes[i + 1] == '"')
            i++;
        else if (bytes[i] == '"')
            return i + 1;
        if (!crlf)
            text_add_bytes(out, bytes[i] == '\r' ? "\n" : &bytes[i], 1);
    }
    return 0;
}

static void quoted_cell_read(struct csv_reading *reading)
{
    struct text_builder out = text_builder_in(reading->arena);
    size_t start = reading->at;
    size_t end = quoted_read(reading, &out);

    text_add(&out, "");
    if (end == 0) {
        csv_error(reading, start, "write the quote that closes it",
                  "the quote that opens this cell is never closed");
        reading->stopped = true;
        return;
    }
    csv_characters_check(reading, start, end);
    if (!cell_ends(reading, end))
        csv_error(reading, end, "write each quote in a cell twice, and nothing behind the one "
                  "that closes it",
                  "words stand behind the quote that closes the cell");
    for (reading->at = end; !cell_ends(reading, reading->at);)
        reading->at++;
    csv_cell_add(reading, out.length == 0 ? "" : out.at, start);
}

/* ---- rows ---- */

static void line_end_pass(struct csv_reading *reading)
{
    const char *bytes = reading->source->bytes;

    if (reading->at < reading->source->length && bytes[reading->at] == '\r' &&
        bytes[reading->at + 1] == '\n')
        reading->at++;
    if (reading->at < reading->source->length)
        reading->at++;
}

static void cells_read(struct csv_reading *reading)
{
    const struct source *source = reading->source;

    for (;;) {
        if (reading->at < source->length && source->bytes[reading->at] == '"')
            quoted_cell_read(reading);
        else
            plain_cell_read(reading);
        if (reading->stopped || reading->at >= source->length ||
            source->bytes[reading->at] != reading->table->delimiter)
            return;
        reading->at++;
    }
}

/* How many cells there are before those at the end that hold nothing. */
static size_t cells_filled(const struct csv_cell *cells, size_t count)
{
    while (count > 0 && cells[count - 1].text[strspn(cells[count - 1].text, " ")] == '\0')
        count--;
    return count;
}

static struct csv_row csv_row_read(struct csv_reading *reading)
{
    struct csv_row row = {.number = ++reading->row_number, .at = reading->at};

    reading->cell_count = 0;
    cells_read(reading);
    line_end_pass(reading);
    row.count = reading->cell_count;
    struct csv_cell *cells = arena_array(reading->arena, row.count, sizeof *cells);
    if (row.count > 0)
        memcpy(cells, reading->cells, row.count * sizeof *cells);
    row.cells = cells;
    return row;
}

static void csv_row_take(struct csv_reading *reading, struct csv_row row)
{
    struct csv_table *table = reading->table;
    size_t filled = cells_filled(row.cells, row.count);

    if (filled == 0)
        return;
    if (filled > table->head.count)
        csv_error(reading, row.cells[table->head.count].at,
                  "give the column a head, or take the cell out; a text with the sign in it "
                  "stands in quotes",
                  "row %zu has %zu cells, the head %zu", row.number, filled, table->head.count);
    if (row.count > table->head.count)
        row.count = table->head.count;
    reading->rows = arena_grow(reading->arena, reading->rows, table->count,
                               &reading->row_capacity, sizeof *reading->rows);
    reading->rows[table->count++] = row;
    if (table->count < CSV_ROWS_MOST)
        return;
    csv_error(reading, row.at, "make several files of it", "the table has more than %d rows",
              CSV_ROWS_MOST - 1);
    reading->stopped = true;
}

static void csv_head_read(struct csv_reading *reading)
{
    const struct source *source = reading->source;

    while (reading->at < source->length && is_line_end(source->bytes[reading->at])) {
        line_end_pass(reading);
        reading->row_number++;
    }
    reading->table->delimiter = delimiter_find(reading, reading->at);
    if (reading->stopped)
        return;
    struct csv_row head = csv_row_read(reading);
    head.count = cells_filled(head.cells, head.count);
    reading->table->head = head;
    if (head.count == 0)
        csv_error(reading, head.at, "write a row with the names of the columns first",
                  "the table has no head");
    else if (head.count > CSV_COLUMNS_MOST)
        csv_error(reading, head.at, "make several files of it",
                  "the head has more than %d columns", CSV_COLUMNS_MOST);
    reading->stopped = reading->stopped || reading->errors > 0;
}

const struct csv_table *csv_read(const struct source *source, struct arena *arena,
                                 struct problems *problems)
{
    struct csv_table *table = arena_alloc(arena, sizeof *table);
    struct csv_reading reading = {.source = source, .arena = arena, .problems = problems,
                                  .table = table};

    table->source = source;
    if (!encoding_sound(&reading))
        return NULL;
    csv_head_read(&reading);
    while (!reading.stopped && reading.at < source->length)
        csv_row_take(&reading, csv_row_read(&reading));
    table->rows = reading.rows;
    return reading.errors == 0 ? table : NULL;
}
