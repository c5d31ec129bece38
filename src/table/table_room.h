/* table_room.h - what the files of this room share. Private to src/table.
 *
 * A record is looked at as entries: the sections of a boat's file and her pieces of gear. An
 * entry has leaves: values that stand in one cell, such as `spot` or `how.shut`. */
#ifndef MAYDECK_TABLE_ROOM_H
#define MAYDECK_TABLE_ROOM_H

#include "choice.h"
#include "table.h"

/* ---- leaves.c ---- */

struct leaf {
    const char *head;            /* "how.shut" */
    const struct field *field;   /* of the key in the entry */
    const struct field *part;    /* of what `sub` is in a section; NULL: in none */
    const char *sub;             /* a key within the value; NULL: the value itself */
};

struct leaves {
    const struct leaf *rows;
    size_t count;
};

/* All that entries of that table may have, those of one key together. */
struct leaves leaves_of(const struct field_table *table, struct arena *arena);

/* The index of the leaf with that head; `count` where there is none. */
size_t leaf_find(const struct leaves *leaves, const char *head);

/* The field that says what may stand in the cell. */
const struct field *leaf_field(const struct leaf *leaf);

/* Do the leaves of the field each stand under a key of the value? */
bool value_is_parted(const struct field *field, const struct yaml_node *value);

/* What the entry says in that leaf, as a cell without its guard; "" where nothing. */
const char *leaf_cell(const struct leaf *leaf, const struct yaml_node *entry,
                      struct arena *arena);

/* The value of a cell; NULL, with what is wrong, where it is none. */
const struct yaml_node *cell_node(const struct field *field, const char *text,
                                  struct arena *arena, const char **fault);

/* The cell as the table itself writes its value. */
const char *cell_canonical(const struct field *field, const char *text, struct arena *arena);

/* ---- cells.c ---- */

/* The cell as it is written: an apostrophe stands before what a spreadsheet would change. */
const char *cell_guarded(const char *text, struct arena *arena);

/* What a cell of a spreadsheet says of a field in which `recorded` stands. */
struct cell_said {
    const char *text;            /* as the file is to say it */
    const char *fault, *remedy;  /* fault NULL: it can be taken */
};
struct cell_said cell_said(const struct field *field, const char *recorded, const char *cell,
                           struct arena *arena);

/* The cell without guard and spaces at its ends. */
const char *cell_plain(const char *cell, struct arena *arena);

/* ---- columns of the table's own ---- */

#define TABLE_COLUMN_LIST(X) \
    X(TABLE_BOAT, "boat") X(TABLE_TAG, "tag") X(TABLE_ITEM, "item") X(TABLE_OUT, "out") \
    X(TABLE_VALUE, "value") X(TABLE_MARK, "mark")
enum table_column { TABLE_OTHER, TABLE_COLUMN_LIST(CHOICE_NAME) TABLE_COLUMN_COUNT };
extern const char *const table_column_words[];

/* Item and tag of a piece stand in columns of the table's own. */
bool leaf_has_own_column(const struct leaf *leaf);

/* What stands in `value` of gear that is not recorded: the key of its list in a boat's file. */
#define TABLE_ABSENCE_LIST(X) \
    X(TABLE_NOT_FITTED, "not_fitted") X(TABLE_NOT_SURVEYED, "not_surveyed")
enum table_absence { TABLE_PRESENT, TABLE_ABSENCE_LIST(CHOICE_NAME) TABLE_ABSENCE_COUNT };
extern const char *const table_absence_words[];

/* ---- entries.c ---- */

/* A cell of a spreadsheet that says something else than the record. */
struct asked_cell {
    const char *text;                  /* NULL: nothing else */
    const struct csv_row *row;
    size_t column;
};

enum entry_kind { ENTRY_SECTION, ENTRY_GEAR };

struct entry {
    enum entry_kind kind;
    const char *name;                  /* "radio"; of gear its tag */
    enum item_key item;                /* of gear */
    const struct leaves *leaves;
    const struct yaml_node *own;       /* in her own file; NULL: it is not there */
    const struct yaml_node *models;    /* in her model's; NULL: likewise */
    const char **cells;                /* by leaf, as recorded */
    /* from the table that is taken */
    struct asked_cell *asked;          /* by leaf */
    const struct csv_row *row;         /* of gear; NULL: none has been met */
    const struct csv_row **fact_rows;  /* by leaf, of a section: the row that told it */
    size_t row_column;                 /* of that row: where its tag stands */
    enum { ENTRY_STAYS, ENTRY_NEW, ENTRY_OUT } fate;
};

/* Gear that she has not, or that nobody has looked for. */
struct absence_row {
    enum table_absence list;
    enum item_key item;
    const char *serves;                /* a cell; "": of the whole boat */
    bool own;                          /* in her own file, as entry `index` of its list */
    size_t index;
    const struct csv_row *row;         /* of the table that is taken; NULL: none has been met */
    enum { ABSENCE_STAYS, ABSENCE_NEW, ABSENCE_OUT } fate;
};

struct boat_rows {
    const struct table_boat *boat;
    struct entry *entries;             /* sections first, then gear as in the record */
    size_t count, room;
    struct absence_row *absences;
    size_t absence_count, absence_room;
};

/* The leaves of each kind of entry, made once. */
struct table_leaves {
    struct leaves sections[3];         /* by section_names */
    struct leaves gear;
    struct leaves absence;
};
extern const char *const section_names[];    /* NULL-ended */
struct table_leaves table_leaves_make(struct arena *arena);

struct boat_rows boat_rows_of(const struct table_boat *boat, const struct table_leaves *leaves,
                              struct arena *arena);

/* A piece that no record has yet. */
struct entry *entry_add(struct boat_rows *rows, const struct entry *entry, struct arena *arena);

/* The item of an entry of not_fitted or not_surveyed. */
enum item_key absence_item(const struct yaml_node *node);

/* The list under that key of a boat's file, or NULL; and its member that has the tag. */
const struct yaml_node *list_under(const struct yaml_node *tree, const char *key);
const struct yaml_node *gear_node(const struct yaml_node *tree, const char *tag);

/* Is her own entry of gear all that counts of it, or does it add to the model's? */
bool entry_is_whole(const struct entry *entry);

/* ---- marks.c ----
 *
 * The last cell of a row is a mark of what the row said when it was written. By it a table
 * that lay about does not undo what was recorded since. */

/* Of gear, by its cells; of a fact, or of gear that she has not. */
const char *gear_mark(const struct leaves *leaves, const char *const *cells,
                      struct arena *arena);
const char *value_mark(const char *value, const char *serves, struct arena *arena);

/* ---- take.c ---- */

struct taking {
    const struct csv_table *table;
    const struct table_boats *boats;
    const struct table_leaves *leaves;
    struct boat_rows *rows;            /* by boat */
    struct arena *arena;
    struct problems *problems;         /* of this take alone */
    size_t columns[TABLE_COLUMN_COUNT];    /* where in the table; its head's count: nowhere */
    size_t *leaf_columns;              /* by leaf of gear, the same */
    size_t passed;                     /* rows that nobody changed, of what was recorded anew */
};

/* An error about a cell; `what` follows its row and column. */
void taking_error(const struct taking *taking, const struct csv_row *row, size_t column,
                  const char *remedy, const char *format, ...)
    __attribute__((format(printf, 5, 6)));

/* ---- cell_check.c ---- */

/* The first fault that the reader of boats' files finds in a value; NULL: none. */
const struct problem *cell_check(const struct leaf *leaf, const struct yaml_node *value,
                                 const struct taking *taking);

/* ---- take_rows.c ---- */

/* Reads every row into what is asked of the entries. */
void rows_take(struct taking *taking);

/* ---- take_edits.c ---- */

/* What the leaf is to say: as the table has it, else as recorded. */
const char *leaf_wanted(const struct entry *entry, size_t leaf);

struct change_list {
    struct table_change *rows;
    size_t count, room;
};

/* What the entries of one boat ask for, as an edited file and changes to tell; NULL where
 * nothing changes, or with errors where it cannot be made. */
const struct yaml_edited *boat_edit(const struct taking *taking, struct boat_rows *rows,
                                    struct change_list *changes);

#endif
