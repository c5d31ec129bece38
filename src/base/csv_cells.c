/* csv_cells.c - cells of a table by row and column, and writing rows (room: base). */
#include "csv.h"

#include <string.h>

/* ---- looking at it ---- */

struct place csv_cell_place(const struct csv_table *table, const struct csv_row *row,
                            size_t column)
{
    if (column < row->count)
        return source_place(table->source, row->cells[column].at);
    size_t last = row->count == 0 ? row->at : row->cells[row->count - 1].at;
    return source_place(table->source, last);
}

/* A, B, ... Z, AA, AB, ... of columns from 0. */
static const char *column_letters(size_t column, struct arena *arena)
{
    char letters[16];
    size_t at = sizeof letters - 1;

    letters[at] = '\0';
    for (size_t rest = column + 1; rest > 0; rest = (rest - 1) / 26)
        letters[--at] = (char)('A' + (rest - 1) % 26);
    return text_format(arena, "%s", letters + at);
}

const char *csv_cell_name(const struct csv_table *table, const struct csv_row *row,
                          size_t column, struct arena *arena)
{
    return text_format(arena, "row %zu, column %s (%s)", row->number,
                       column_letters(column, arena), csv_cell_text(&table->head, column));
}

const char *csv_cell_text(const struct csv_row *row, size_t column)
{
    return column < row->count ? row->cells[column].text : "";
}

size_t csv_column_find(const struct csv_table *table, const char *word)
{
    size_t column = 0;

    while (column < table->head.count && !text_equal(table->head.cells[column].text, word))
        column++;
    return column;
}

/* ---- writing ---- */

static bool needs_quotes(const char *text)
{
    size_t length = strlen(text);

    return length > 0 && (strpbrk(text, "\"\r\n" CSV_DELIMITERS) != NULL || text[0] == ' ' ||
                          text[length - 1] == ' ');
}

static void cell_write(struct text_builder *out, const char *text)
{
    if (!needs_quotes(text)) {
        text_add(out, text);
        return;
    }
    text_add(out, "\"");
    for (; *text != '\0'; text++)
        text_add_bytes(out, *text == '"' ? "\"\"" : text, *text == '"' ? 2 : 1);
    text_add(out, "\"");
}

void csv_row_add(struct text_builder *out, char delimiter, const char *const *cells,
                 size_t count)
{
    for (size_t i = 0; i < count; i++) {
        if (i > 0)
            text_add_bytes(out, &delimiter, 1);
        cell_write(out, cells[i]);
    }
    text_add(out, "\n");
}
