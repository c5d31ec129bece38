/* csv.h - tables as spreadsheets write and read them: a row a line, cells with a sign between
 * (room: base).
 *
 * The reader is strict, since a cell that is cut at a wrong place is a wrong fact: UTF-8
 * alone; a quote stands first and last in its cell and is doubled within; no control
 * characters. Which sign parts the cells, the head row tells: comma, semicolon, tab or bar. */
#ifndef MAYDECK_CSV_H
#define MAYDECK_CSV_H

#include <stddef.h>

#include "arena.h"
#include "problem.h"
#include "source.h"
#include "text.h"

#define CSV_FILE_LIMIT ((size_t)16 * 1024 * 1024)
enum { CSV_COLUMNS_MOST = 512, CSV_ROWS_MOST = 200000, CSV_ERRORS_MOST = 100 };

/* What may stand between cells; a table of one column is read with the first. */
#define CSV_DELIMITERS ",;\t|"

/* At the start of a file, so that a spreadsheet knows that it is UTF-8. */
#define CSV_MARK "\xEF\xBB\xBF"

struct csv_cell {
    const char *text;           /* without quotes; line ends in it are LF */
    size_t at;                  /* byte of the source where it begins */
};

struct csv_row {
    const struct csv_cell *cells;
    size_t count;               /* of the head: without empty cells at its end */
    size_t number;              /* as a spreadsheet counts rows: the head of most is 1 */
    size_t at;
};

/* Rows that hold nothing are left out. No row has a cell with words in it past the head's last;
 * one may have fewer cells than the head. */
struct csv_table {
    const struct source *source;
    char delimiter;
    struct csv_row head;
    const struct csv_row *rows; /* below the head */
    size_t count;
};

/* The table, or NULL when anything in it was an error. All is told, up to CSV_ERRORS_MOST;
 * nothing after a quote that is never closed can be. */
const struct csv_table *csv_read(const struct source *source, struct arena *arena,
                                 struct problems *problems);

/* Where a cell stands. A column that the row does not have is where the row ends. */
struct place csv_cell_place(const struct csv_table *table, const struct csv_row *row,
                            size_t column);

/* "row 12, column H (expires)": as a spreadsheet names it, with the word of the head. */
const char *csv_cell_name(const struct csv_table *table, const struct csv_row *row,
                          size_t column, struct arena *arena);

/* The text of a cell; "" where the row has none there. */
const char *csv_cell_text(const struct csv_row *row, size_t column);

/* The column whose head has that word; the head's `count` where none has. */
size_t csv_column_find(const struct csv_table *table, const char *word);

/* Adds a row with its line end, LF. A cell is in quotes where it needs them: where it holds a
 * quote, a line end or what might be taken for a delimiter, or spaces at its ends. */
void csv_row_add(struct text_builder *out, char delimiter, const char *const *cells,
                 size_t count);

#endif
