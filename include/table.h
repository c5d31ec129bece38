/* table.h - boats' records as a table that a spreadsheet opens, and what was changed in it taken
 * back into their files (room: table). It judges no record: a changed file is read again by
 * whoever writes it.
 *
 * A row is a fact of a boat (its key in `item`, such as radio.mmsi, and what is recorded in
 * `value`), a piece of gear (its tag and item, a field a column), or gear that she has not or
 * that nobody has looked for (its item, and in `value` not_fitted or not_surveyed). A cell is
 * what stands in the file; what a spreadsheet would make something else of has an apostrophe
 * before it. */
#ifndef MAYDECK_TABLE_H
#define MAYDECK_TABLE_H

#include <stddef.h>

#include "boat.h"
#include "csv.h"
#include "yaml_edit.h"
#include "yaml_tree.h"

/* A boat whose record is sound. */
struct table_boat {
    const char *key;
    const struct source *source;       /* her file */
    const struct yaml_node *tree;      /* the same, read */
    const struct yaml_node *model;     /* the file of the model she is like; NULL: of none */
    const struct boat *boat;
};

struct table_boats {
    const struct table_boat *rows;
    size_t count;
    const char *const *others;         /* keys of boats that cannot be used, NULL-ended */
};

/* The table, with a byte order mark, a delimiter and LF. */
struct text_builder table_write(const struct table_boats *boats, struct arena *arena);

/* One value that is to change, as it is told. */
struct table_change {
    const char *boat, *what;           /* "C4 torch spot" */
    const char *from, *to;             /* NULL: nothing is recorded */
};

struct take;

/* Reads the table against the records. NULL, with an error by row and column for each fault,
 * when anything in it was wrong. */
const struct take *table_take(const struct csv_table *table, const struct table_boats *boats,
                              struct arena *arena, struct problems *problems);

/* What is to change, in the order of boats and rows. */
const struct table_change *take_changes(const struct take *take, size_t *count);

/* How many rows nobody changed, of what was recorded anew after the table was written: nothing is
 * taken from them. */
size_t take_passed(const struct take *take);

/* Her file with all of it made; NULL: nothing of hers changes. */
const struct yaml_edited *take_edited(const struct take *take, size_t boat);

/* What is told of a place in her changed file, whose tree this is: of which cell of the table
 * that is. `name` is NULL where no cell had to do with it. */
struct taken_cell {
    struct place place;
    const char *name;                  /* "row 12, column H (expires)" */
};
struct taken_cell take_cell_of(const struct take *take, size_t boat,
                               const struct yaml_node *tree, size_t offset,
                               struct arena *arena);

#endif
