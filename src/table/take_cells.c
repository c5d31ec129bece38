/* take_cells.c - single cells of a table that is taken: what each says otherwise than the record
 * (room: table). */
#include "taken_row.h"

#include "text.h"

const char *row_cell(const struct table_row *row, size_t column)
{
    return csv_cell_text(row->row, column);
}

const char *own_cell(const struct table_row *row, enum table_column column)
{
    return cell_plain(row_cell(row, row->taking->columns[column]), row->taking->arena);
}

/* ---- one cell ---- */

/* A row that ends too early has lost what stood behind, or never had it. */
static bool cell_missing(const struct table_row *row, const char *recorded, size_t column)
{
    if (column < row->row->count)
        return false;
    if (recorded[0] != '\0')
        taking_error(row->taking, row->row, column,
                     "write all cells of the row, also those that are empty",
                     "the row ends before this cell, in which \"%s\" stood", recorded);
    return true;
}

/* Can the cell be read, and may such a value stand there at all? */
static bool cell_value_sound(const struct table_row *row, const struct leaf *leaf,
                             const char *text, size_t column)
{
    const char *fault;
    const struct yaml_node *node =
        text[0] == '\0' ? NULL : cell_node(leaf_field(leaf), text, row->taking->arena, &fault);
    const struct problem *wrong = node == NULL ? NULL : cell_check(leaf, node, row->taking);
    if (text[0] != '\0' && node == NULL)
        taking_error(row->taking, row->row, column,
                     "write words with commas between, or a list as in a boat's file: [a, b]",
                     "\"%s\": %s", text, fault);
    else if (wrong != NULL)
        taking_error(row->taking, row->row, column, wrong->remedy, "%s", wrong->what);
    return text[0] == '\0' || (node != NULL && wrong == NULL);
}

void leaf_ask(const struct table_row *row, struct entry *entry, size_t leaf, size_t column)
{
    struct arena *arena = row->taking->arena;
    const struct field *field = leaf_field(&entry->leaves->rows[leaf]);
    const char *recorded = entry->cells[leaf];
    if (column == row->taking->table->head.count || cell_missing(row, recorded, column))
        return;
    struct cell_said said = cell_said(field, recorded, row_cell(row, column), arena);
    if (said.fault != NULL) {
        taking_error(row->taking, row->row, column, said.remedy, "\"%s\": %s", said.text,
                     said.fault);
        return;
    }
    const char *text = cell_canonical(field, said.text, arena);
    if (!text_equal(text, recorded) &&
        cell_value_sound(row, &entry->leaves->rows[leaf], text, column))
        entry->asked[leaf] = (struct asked_cell){text, row->row, column};
}

/* Cells of gear stand in a row that is none. */
void leaf_cells_refuse(const struct table_row *row, size_t but)
{
    for (size_t i = 0; i < row->taking->leaves->gear.count; i++) {
        size_t column = row->taking->leaf_columns[i];
        if (i != but && cell_plain(row_cell(row, column), row->taking->arena)[0] != '\0')
            taking_error(row->taking, row->row, column,
                         "empty the cell, or write the tag of the piece into the row",
                         "only rows of gear have a value here");
    }
}

const char *gear_row_mark(const struct table_row *row)
{
    const struct leaves *gear = &row->taking->leaves->gear;
    const char **cells = arena_array(row->taking->arena, gear->count, sizeof *cells);
    for (size_t i = 0; i < gear->count; i++)
        cells[i] = cell_plain(row_cell(row, row->taking->leaf_columns[i]), row->taking->arena);
    return gear_mark(gear, cells, row->taking->arena);
}

bool row_passes(const struct table_row *row, const char *recorded, const char *cells)
{
    const char *written = own_cell(row, TABLE_MARK);
    if (written[0] == '\0' || text_equal(written, recorded))
        return false;
    bool unchanged = !row->out && text_equal(written, cells);
    if (unchanged)
        row->taking->passed++;
    else if (row->out || !text_equal(recorded, cells))
        taking_error(row->taking, row->row, row->taking->columns[TABLE_MARK],
                     "write the table anew with `maydeck table` and change the row there",
                     "this was changed in the boat's file after the table was written, and in "
                     "the table too");
    return true;
}
