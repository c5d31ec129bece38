/* table_write.c - records as a table (room: table): which columns there are, and a row each for
 * facts, gear and what she has not. */
#include "table_room.h"

#include "item_fields.h"
#include "item_states.h"
#include "text.h"

struct table_writing {
    const struct table_leaves *leaves;
    size_t *columns;             /* leaves of gear that have one, in their order */
    size_t count;
    struct text_builder out;
    struct arena *arena;
};

/* The columns that stand before all others, though the table of fields has some between. */
static const enum gear_field first_fields[] = {GEAR_zone, GEAR_side, GEAR_spot};
enum { FIRST_FIELDS = sizeof first_fields / sizeof *first_fields };

static enum gear_field leaf_gear_field(const struct leaf *leaf)
{
    return gear_field_find(leaf->field->key);
}

static bool stands_first(enum gear_field field)
{
    for (size_t i = 0; i < FIRST_FIELDS; i++)
        if (first_fields[i] == field)
            return true;
    return false;
}

/* ---- which columns ---- */

/* Where an item has contrary states its handling is asked by state, else in one text. */
static bool handling_asked(const struct leaf *leaf, enum item_key item)
{
    bool contrary = item_is_contrary(item);
    if (leaf->sub == NULL)
        return !contrary;
    return contrary &&
           item_state_field(item, choice_find(end_state_words, leaf->sub)) == GEAR_how;
}

static bool leaf_asked(const struct leaf *leaf, enum item_key item)
{
    enum gear_field field = leaf_gear_field(leaf);
    if (item_field(item, field) < BELONGS_ASKED)
        return false;
    return leaf->field->kind != FIELD_BY_CHOICE || handling_asked(leaf, item);
}

static bool leaf_used(const struct boat_rows *rows, size_t leaf)
{
    for (size_t i = 0; i < rows->count; i++) {
        const struct entry *entry = &rows->entries[i];
        if (entry->kind == ENTRY_GEAR &&
            (entry->cells[leaf][0] != '\0' || leaf_asked(&entry->leaves->rows[leaf], entry->item)))
            return true;
    }
    return false;
}

/* That of an absence stands in the column of gear. */
static bool serves_used(const struct boat_rows *rows)
{
    for (size_t i = 0; i < rows->absence_count; i++)
        if (rows->absences[i].serves[0] != '\0')
            return true;
    return false;
}

static bool column_wanted(const struct table_writing *writing, const struct boat_rows *rows,
                          size_t count, size_t leaf)
{
    const struct leaf *row = &writing->leaves->gear.rows[leaf];
    enum gear_field field = leaf_gear_field(row);
    bool wanted = stands_first(field);
    for (size_t i = 0; !wanted && i < count; i++)
        wanted = leaf_used(&rows[i], leaf) || (field == GEAR_serves && serves_used(&rows[i]));
    return wanted && !leaf_has_own_column(row);
}

static void columns_choose(struct table_writing *writing, const struct boat_rows *rows,
                           size_t count)
{
    const struct leaves *gear = &writing->leaves->gear;
    writing->columns = arena_array(writing->arena, gear->count, sizeof *writing->columns);
    for (size_t i = 0; i < FIRST_FIELDS; i++)
        writing->columns[writing->count++] = leaf_find(gear, gear_field_word(first_fields[i]));
    for (size_t i = 0; i < gear->count; i++)
        if (!stands_first(leaf_gear_field(&gear->rows[i])) &&
            column_wanted(writing, rows, count, i))
            writing->columns[writing->count++] = i;
}

/* ---- rows ---- */

/* The cells of the table's own columns, of which the mark stands last; those of leaves by `cells`,
 * NULL: all are empty. */
static void table_row_add(struct table_writing *writing, const char *const *own,
                          const char *const *cells)
{
    size_t own_count = TABLE_MARK - 1;
    const char **row = arena_array(writing->arena, own_count + writing->count + 1, sizeof *row);
    for (size_t i = 0; i < own_count; i++)
        row[i] = own[i + 1] == NULL ? "" : cell_guarded(own[i + 1], writing->arena);
    for (size_t i = 0; i < writing->count; i++)
        row[own_count + i] =
            cells == NULL ? "" : cell_guarded(cells[writing->columns[i]], writing->arena);
    row[own_count + writing->count] = own[TABLE_MARK];
    csv_row_add(&writing->out, CSV_DELIMITERS[0], row, own_count + writing->count + 1);
}

static void table_head_add(struct table_writing *writing)
{
    const struct leaves *gear = &writing->leaves->gear;
    const char *own[TABLE_COLUMN_COUNT] = {NULL};
    const char **heads = arena_array(writing->arena, gear->count, sizeof *heads);
    for (size_t i = 0; i < gear->count; i++)
        heads[i] = gear->rows[i].head;
    for (unsigned i = 1; i < TABLE_COLUMN_COUNT; i++)
        own[i] = choice_word(table_column_words, i);
    table_row_add(writing, own, heads);
}

static void section_rows_add(struct table_writing *writing, const char *boat,
                             const struct entry *entry)
{
    for (size_t i = 0; i < entry->leaves->count; i++) {
        const char *own[TABLE_COLUMN_COUNT] = {
            [TABLE_BOAT] = boat,
            [TABLE_ITEM] = text_format(writing->arena, "%s.%s", entry->name,
                                       entry->leaves->rows[i].head),
            [TABLE_VALUE] = entry->cells[i],
            [TABLE_MARK] = value_mark(entry->cells[i], "", writing->arena)};
        table_row_add(writing, own, NULL);
    }
}

static void gear_row_add(struct table_writing *writing, const char *boat,
                         const struct entry *entry)
{
    const char *own[TABLE_COLUMN_COUNT] = {
        [TABLE_BOAT] = boat, [TABLE_TAG] = entry->name, [TABLE_ITEM] = item_word(entry->item),
        [TABLE_MARK] = gear_mark(entry->leaves, entry->cells, writing->arena)};
    table_row_add(writing, own, entry->cells);
}

static void absence_row_add(struct table_writing *writing, const char *boat,
                            const struct absence_row *absence)
{
    const struct leaves *gear = &writing->leaves->gear;
    const char *own[TABLE_COLUMN_COUNT] = {
        [TABLE_BOAT] = boat, [TABLE_ITEM] = item_word(absence->item),
        [TABLE_VALUE] = choice_word(table_absence_words, absence->list),
        [TABLE_MARK] = value_mark(choice_word(table_absence_words, absence->list),
                                  absence->serves, writing->arena)};
    const char **cells = arena_array(writing->arena, gear->count, sizeof *cells);
    for (size_t i = 0; i < gear->count; i++)
        cells[i] = "";
    cells[leaf_find(gear, gear_field_word(GEAR_serves))] = absence->serves;
    table_row_add(writing, own, cells);
}

static void boat_rows_add(struct table_writing *writing, const struct boat_rows *rows)
{
    const char *key = rows->boat->key;
    for (size_t i = 0; i < rows->count; i++)
        (rows->entries[i].kind == ENTRY_SECTION ? section_rows_add : gear_row_add)(
            writing, key, &rows->entries[i]);
    for (size_t i = 0; i < rows->absence_count; i++)
        absence_row_add(writing, key, &rows->absences[i]);
}

struct text_builder table_write(const struct table_boats *boats, struct arena *arena)
{
    struct table_leaves leaves = table_leaves_make(arena);
    struct boat_rows *rows = arena_array(arena, boats->count, sizeof *rows);
    struct table_writing writing = {.leaves = &leaves, .out = text_builder_in(arena),
                                    .arena = arena};
    for (size_t i = 0; i < boats->count; i++)
        rows[i] = boat_rows_of(&boats->rows[i], &leaves, arena);
    columns_choose(&writing, rows, boats->count);
    text_add(&writing.out, CSV_MARK);
    table_head_add(&writing);
    for (size_t i = 0; i < boats->count; i++)
        boat_rows_add(&writing, &rows[i]);
    return writing.out;
}
