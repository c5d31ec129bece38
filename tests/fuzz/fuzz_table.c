/* fuzz_table.c - any bytes as a table: read and written again it is the same, and what it changes
 * in a boat's file is a file again. */
#include "fuzz.h"

#include <string.h>

#include "csv.h"
#include "table.h"
#include "text.h"

static struct table_boat table_rows[1];
static const char *const no_other_boats[] = {NULL};

static void table_open_own(void)
{
    own_open(OWN_TEXTS | OWN_BOATS);
    table_rows[0] = (struct table_boat){
        "samphire", own.boat_sources[0],
        yaml_tree_read(own.boat_sources[0], own.arena, own.problems), NULL, own.boats[0]};
}

static void row_write(const struct fuzz *fuzz, const struct csv_table *table,
                      const struct csv_row *row, struct text_builder *out)
{
    const char **cells = arena_array(fuzz->arena, table->head.count, sizeof *cells);
    for (size_t i = 0; i < table->head.count; i++)
        cells[i] = csv_cell_text(row, i);
    csv_row_add(out, table->delimiter, cells, table->head.count);
}

static void rows_same(const struct csv_table *one, const struct csv_row *a,
                      const struct csv_row *b)
{
    for (size_t i = 0; i < one->head.count; i++)
        CHECK(text_equal(csv_cell_text(a, i), csv_cell_text(b, i)));
}

static void csv_check(const struct fuzz *fuzz, const struct csv_table *table)
{
    struct text_builder out = text_builder_in(fuzz->arena);
    struct problems *told = problems_new(fuzz->arena);
    row_write(fuzz, table, &table->head, &out);
    for (size_t i = 0; i < table->count; i++)
        row_write(fuzz, table, &table->rows[i], &out);
    const struct csv_table *again = csv_read(fuzz_part(fuzz, "again.csv", out.at, out.length),
                                             fuzz->arena, told);
    CHECK(again != NULL && again->head.count == table->head.count);
    CHECK(again->count == table->count);
    CHECK(again->head.count < 2 || again->delimiter == table->delimiter);
    rows_same(table, &table->head, &again->head);
    for (size_t i = 0; i < table->count; i++)
        rows_same(table, &table->rows[i], &again->rows[i]);
}

static void edited_check(const struct fuzz *fuzz, const struct take *take)
{
    size_t count;
    bool sound;
    const struct table_change *changes = take_changes(take, &count);
    const struct yaml_edited *edited = take_edited(take, 0);
    for (size_t i = 0; i < count; i++)
        CHECK(changes[i].what != NULL && (changes[i].from != NULL || changes[i].to != NULL));
    CHECK((edited == NULL) == (count == 0));
    if (edited == NULL)
        return;
    const struct source *source = fuzz_part(fuzz, "samphire.yaml", edited->bytes, edited->length);
    struct problems *told = problems_new(fuzz->arena);
    const struct yaml_node *tree = yaml_tree_read(source, fuzz->arena, told);
    CHECK(tree != NULL);
    size_t at = fuzz_choice(fuzz, edited->length);
    const char *cell = take_cell_of(take, 0, tree, at, fuzz->arena).name;
    CHECK(cell == NULL || text_is_shown(cell));
    const struct boat *boat = boat_read(source, "samphire", fuzz->arena, told, &sound);
    CHECK((boat != NULL && sound) == !problems_reach(told, SEVERITY_ERROR));
}

static void table_one(struct fuzz *fuzz)
{
    const struct table_boats boats = {table_rows, 1, no_other_boats};
    const struct csv_table *table = csv_read(fuzz_source(fuzz, "any.csv"), fuzz->arena,
                                             fuzz->problems);
    sound_check(fuzz, table != NULL);
    if (table == NULL)
        return;
    csv_check(fuzz, table);
    const struct take *take = table_take(table, &boats, fuzz->arena, fuzz->problems);
    sound_check(fuzz, take != NULL);
    if (take != NULL)
        edited_check(fuzz, take);
}

const struct harness harness = {table_open_own, table_one, true};
