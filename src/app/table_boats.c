/* table_boats.c - the boats of a base as a table takes them (room: app): those whose record can be
 * read without errors. */
#include "fleet.h"
#include "table.h"

static const struct yaml_node *model_tree(const struct fleet *fleet, const struct boat *boat)
{
    struct problems *told = problems_new(fleet->arena);
    return boat->likeness.source == NULL
               ? NULL
               : yaml_tree_read(boat->likeness.source, fleet->arena, told);
}

/* Of a sound record only errors are kept back: `check` tells the rest. */
static const struct boat *sound_boat(const struct fleet *fleet, const struct boat_asked *asked)
{
    struct boat_input input = {asked->source, asked->key, &fleet->models};
    struct problems *told = problems_part(asked->problems);
    bool sound = false;
    problems_know(told, &fleet->known);
    const struct boat *boat = boat_read_like(&input, fleet->arena, told, &sound);
    if (!sound)
        problems_join(asked->problems, told);
    return sound ? boat : NULL;
}

static void table_boat_add(const struct fleet *fleet, const struct boat_asked *asked,
                           const struct boat *boat, struct table_boat *row)
{
    struct problems *told = problems_new(fleet->arena);
    *row = (struct table_boat){asked->key, asked->source,
                               yaml_tree_read(asked->source, fleet->arena, told),
                               model_tree(fleet, boat), boat};
}

struct table_boats table_boats_open(const struct fleet *fleet)
{
    struct table_boat *rows = arena_array(fleet->arena, fleet->boat_count, sizeof *rows);
    const char **others = arena_array(fleet->arena, fleet->boat_count + 1, sizeof *others);
    struct table_boats boats = {.rows = rows, .others = others};
    size_t other_count = 0;
    for (size_t i = 0; i < fleet->boat_count; i++) {
        const struct boat_asked *asked = &fleet->boats[i];
        const struct boat *boat = asked->source == NULL ? NULL : sound_boat(fleet, asked);
        if (boat != NULL)
            table_boat_add(fleet, asked, boat, &rows[boats.count++]);
        else
            others[other_count++] = asked->key;
    }
    return boats;
}
