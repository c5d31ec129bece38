/* take.c - a table that is read back: its columns, and of it all one edited file a boat (room:
 * table). Nothing is given where anything was wrong. */
#include "table_room.h"

#include <stdarg.h>

#include "text.h"

struct take {
    const struct csv_table *table;
    struct boat_rows *rows;              /* by boat */
    const struct yaml_edited **edited;   /* by boat; NULL: nothing of hers changes */
    struct change_list changes;
    size_t value_column;
    size_t passed;
};

void taking_error(const struct taking *taking, const struct csv_row *row, size_t column,
                  const char *remedy, const char *format, ...)
{
    va_list list;
    va_start(list, format);
    const char *what = text_format_list(taking->arena, format, list);
    va_end(list);
    problem_add(taking->problems, SEVERITY_ERROR, csv_cell_place(taking->table, row, column),
                remedy, "%s: %s", csv_cell_name(taking->table, row, column, taking->arena), what);
}

/* ---- columns ---- */

static const char *head_remedy(const struct taking *taking, const char *word)
{
    const struct leaves *gear = &taking->leaves->gear;
    const char **heads =
        arena_array(taking->arena, gear->count + TABLE_COLUMN_COUNT, sizeof *heads);
    size_t count = 0;
    for (unsigned i = 1; i < TABLE_COLUMN_COUNT; i++)
        heads[count++] = choice_word(table_column_words, i);
    for (size_t i = 0; i < gear->count; i++)
        heads[count++] = gear->rows[i].head;
    return text_nearest_remedy(taking->arena, word, heads, count,
                               "take the column out; `maydeck list fields` names the fields of "
                               "gear");
}

static size_t *table_column_of(struct taking *taking, const char *word)
{
    unsigned own = choice_find(table_column_words, word);
    size_t leaf = leaf_find(&taking->leaves->gear, word);
    if (own > 0)
        return &taking->columns[own];
    return leaf < taking->leaves->gear.count ? &taking->leaf_columns[leaf] : NULL;
}

static void column_take(struct taking *taking, size_t column)
{
    const struct csv_row *head = &taking->table->head;
    const char *word = cell_plain(csv_cell_text(head, column), taking->arena);
    size_t *found = table_column_of(taking, word);
    if (word[0] == '\0')
        taking_error(taking, head, column, "give it the name it had, or take the column out",
                     "the column has no name");
    else if (found == NULL)
        taking_error(taking, head, column, head_remedy(taking, word),
                     "there is no column \"%s\"", word);
    else if (*found < head->count)
        taking_error(taking, head, column, "keep one of the two",
                     "a second column of that name");
    else
        *found = column;
}

static void columns_take(struct taking *taking)
{
    static const enum table_column needed[] = {TABLE_BOAT, TABLE_TAG, TABLE_ITEM};
    const struct csv_row *head = &taking->table->head;
    for (size_t i = 0; i < TABLE_COLUMN_COUNT; i++)
        taking->columns[i] = head->count;
    for (size_t i = 0; i < taking->leaves->gear.count; i++)
        taking->leaf_columns[i] = head->count;
    for (size_t i = 0; i < head->count; i++)
        column_take(taking, i);
    for (size_t i = 0; i < sizeof needed / sizeof *needed; i++)
        if (taking->columns[needed[i]] == head->count)
            problem_add(taking->problems, SEVERITY_ERROR,
                        csv_cell_place(taking->table, head, 0),
                        "begin with the file that `maydeck table` writes",
                        "row %zu: the column %s is missing", head->number,
                        choice_word(table_column_words, needed[i]));
}

/* ---- the whole ---- */

static struct taking taking_begin(const struct csv_table *table, const struct table_boats *boats,
                                  struct arena *arena, struct problems *problems)
{
    struct table_leaves *leaves = arena_alloc(arena, sizeof *leaves);
    *leaves = table_leaves_make(arena);
    struct taking taking = {.table = table, .boats = boats, .leaves = leaves, .arena = arena,
                            .problems = problems_part(problems)};
    taking.leaf_columns = arena_array(arena, leaves->gear.count, sizeof *taking.leaf_columns);
    taking.rows = arena_array(arena, boats->count, sizeof *taking.rows);
    for (size_t i = 0; i < boats->count; i++)
        taking.rows[i] = boat_rows_of(&boats->rows[i], leaves, arena);
    return taking;
}

static bool nothing_wrong(const struct taking *taking)
{
    return !problems_reach(taking->problems, SEVERITY_ERROR);
}

const struct take *table_take(const struct csv_table *table, const struct table_boats *boats,
                              struct arena *arena, struct problems *problems)
{
    struct taking taking = taking_begin(table, boats, arena, problems);
    struct take *take = arena_alloc(arena, sizeof *take);
    *take = (struct take){.table = table, .rows = taking.rows,
                          .edited = arena_array(arena, boats->count, sizeof(void *))};
    columns_take(&taking);
    take->value_column = taking.columns[TABLE_VALUE];
    if (nothing_wrong(&taking))
        rows_take(&taking);
    take->passed = taking.passed;
    for (size_t i = 0; i < boats->count; i++)
        take->edited[i] = boat_edit(&taking, &taking.rows[i], &take->changes);
    return problems_settle(problems, taking.problems) ? take : NULL;
}

const struct table_change *take_changes(const struct take *take, size_t *count)
{
    *count = take->changes.count;
    return take->changes.rows;
}

size_t take_passed(const struct take *take)
{
    return take->passed;
}

const struct yaml_edited *take_edited(const struct take *take, size_t boat)
{
    return take->edited[boat];
}

/* ---- places in a changed file ---- */

static struct taken_cell cell_found(const struct take *take, const struct csv_row *row,
                                    size_t column, struct arena *arena)
{
    return (struct taken_cell){csv_cell_place(take->table, row, column),
                               csv_cell_name(take->table, row, column, arena)};
}

static bool bytes_hold(struct byte_range range, size_t offset)
{
    return offset >= range.start && offset < (range.end > range.start ? range.end
                                                                      : range.start + 1);
}

/* The pair that the offset is in, key and value; NULL: in none. */
static const struct yaml_pair *pair_at(const struct yaml_node *mapping, size_t offset)
{
    for (size_t i = 0; i < mapping->count; i++)
        if (offset >= mapping->pairs[i].key_range.start &&
            (bytes_hold(mapping->pairs[i].value->range, offset) ||
             bytes_hold(mapping->pairs[i].key_range, offset)))
            return &mapping->pairs[i];
    return NULL;
}

/* A cell that was emptied: what it lacks now is told of the whole. */
static const struct asked_cell *emptied_cell(const struct entry *entry)
{
    for (size_t i = 0; i < entry->leaves->count; i++)
        if (entry->asked[i].text != NULL && entry->asked[i].text[0] == '\0')
            return &entry->asked[i];
    return NULL;
}

/* The cell that was asked of that key; else one that was emptied, or the row of a new piece. */
static struct taken_cell entry_cell(const struct take *take, const struct entry *entry,
                                    const struct yaml_pair *pair, struct arena *arena)
{
    for (size_t i = 0; pair != NULL && i < entry->leaves->count; i++)
        if (entry->asked[i].text != NULL &&
            text_equal(entry->leaves->rows[i].field->key, pair->key))
            return cell_found(take, entry->asked[i].row, entry->asked[i].column, arena);
    const struct asked_cell *emptied = emptied_cell(entry);
    if (emptied != NULL)
        return cell_found(take, emptied->row, emptied->column, arena);
    if (entry->row != NULL && entry->fate == ENTRY_NEW)
        return cell_found(take, entry->row, entry->row_column, arena);
    return (struct taken_cell){.name = NULL};
}

static const struct yaml_node *entry_node(const struct entry *entry, const struct yaml_node *tree)
{
    return entry->kind == ENTRY_GEAR ? gear_node(tree, entry->name) : yaml_get(tree, entry->name);
}

/* The row that says, or keeps saying, that she has no such gear. */
static const struct absence_row *absence_at(const struct boat_rows *rows,
                                            const struct yaml_node *tree, size_t offset)
{
    for (size_t i = 0; i < rows->absence_count; i++) {
        const struct absence_row *row = &rows->absences[i];
        const struct yaml_node *list =
            list_under(tree, choice_word(table_absence_words, row->list));
        for (size_t k = 0; list != NULL && row->row != NULL && k < list->count; k++)
            if (bytes_hold(list->items[k]->range, offset) &&
                absence_item(list->items[k]) == row->item &&
                row->fate != ABSENCE_OUT)
                return row;
    }
    return NULL;
}

struct taken_cell take_cell_of(const struct take *take, size_t boat,
                               const struct yaml_node *tree, size_t offset,
                               struct arena *arena)
{
    const struct boat_rows *rows = &take->rows[boat];
    for (size_t i = 0; i < rows->count; i++) {
        const struct yaml_node *node = entry_node(&rows->entries[i], tree);
        if (node != NULL && node->kind == YAML_MAPPING && bytes_hold(node->range, offset))
            return entry_cell(take, &rows->entries[i], pair_at(node, offset), arena);
    }
    const struct absence_row *absence = absence_at(rows, tree, offset);
    return absence == NULL ? (struct taken_cell){.name = NULL}
                           : cell_found(take, absence->row, take->value_column, arena);
}
