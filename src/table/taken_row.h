/* taken_row.h - a row of a table that is taken, and its cells. Private to src/table. */
#ifndef MAYDECK_TAKEN_ROW_H
#define MAYDECK_TAKEN_ROW_H

#include "table_room.h"

/* One row, with its cells that say which entry it is of. */
struct table_row {
    struct taking *taking;
    const struct csv_row *row;
    struct boat_rows *boat;
    const char *tag, *item, *value;
    bool out;
};

const char *row_cell(const struct table_row *row, size_t column);

/* A cell of the table's own columns, plain. */
const char *own_cell(const struct table_row *row, enum table_column column);

#define ROW_ERROR(row, column, ...) \
    taking_error((row)->taking, (row)->row, (row)->taking->columns[column], __VA_ARGS__)

/* Notes what the cell says of the leaf, where that is not what is recorded. */
void leaf_ask(const struct table_row *row, struct entry *entry, size_t leaf, size_t column);

/* The mark of a row of gear as its cells are now. */
const char *gear_row_mark(const struct table_row *row);

/* Is nothing to be taken from the row, by its marks: that of what is recorded now, "" where it is
 * not recorded, and that of its cells? So it is where nobody changed the row, or it says what is
 * recorded. A row that was changed, of what was recorded anew since, is an error. */
bool row_passes(const struct table_row *row, const char *recorded, const char *cells);

/* Tells cells of gear that stand in a row that is none; but that of one leaf. */
void leaf_cells_refuse(const struct table_row *row, size_t but);

#endif
