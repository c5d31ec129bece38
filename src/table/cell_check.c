/* cell_check.c - the value of one cell held against its field, as the reader of boats' files
 * would (room: table), so that each cell that is wrong is told at once. */
#include "table_room.h"

#include <string.h>

#include "text.h"

/* Room for what any table of a boat's file fills; what is read into it is thrown away. */
union any_record {
    struct equipment gear;
    struct boat_facts boat;
    struct gas_facts gas;
    struct radio_facts radio;
    struct gear_spot spot;
    struct absence absence;
};

const struct problem *cell_check(const struct leaf *leaf, const struct yaml_node *value,
                                 const struct taking *taking)
{
    struct field one = *leaf_field(leaf);
    struct problems *told = problems_new(taking->arena);
    union any_record *record = arena_alloc(taking->arena, sizeof *record);
    size_t count;
    one.required = false;
    if (leaf->sub != NULL && leaf->part == NULL)
        one.kind = FIELD_WORDING;      /* how it is brought into one state */
    struct yaml_pair pair = {.key = one.key, .value = value};
    struct yaml_node mapping = {.kind = YAML_MAPPING, .flow = true, .pairs = &pair, .count = 1};
    struct field_table table = {.what = "a row", .fields = &one, .count = 1};
    problems_know(told, problems_known(taking->problems));
    if (fields_read(&mapping, &table, record, taking->arena, told))
        return NULL;
    return problems_sorted(told, &count);
}
