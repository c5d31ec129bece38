/* lists.h - what the files of a base may say, as rows made from the program's own tables: what
 * the files that list it share. Private to src/app. */
#ifndef MAYDECK_LISTS_H
#define MAYDECK_LISTS_H

#include "fleet.h"
#include "json.h"

/* From what a list is made: the procedures, and the words of one language. */
struct listing {
    const struct procedure_set *procedures;
    const struct authorities *authorities;
    const struct words *words;
    struct arena *arena;
};

/* The shape of a row, whose members are the columns, and the rows. */
struct list_made {
    const struct json_shape *shape;
    struct json_list rows;
};

/* ---- list_gear.c ---- */
struct list_made list_items(const struct listing *listing);
struct list_made list_zones(const struct listing *listing);

/* ---- list_cards.c ---- */
struct list_made list_cards(const struct listing *listing);
struct list_made list_natures(const struct listing *listing);

/* ---- list_ids.c ---- */
struct list_made list_checks(const struct listing *listing);
struct list_made list_rules(const struct listing *listing);
struct list_made list_figures(const struct listing *listing);
struct list_made list_statuses(const struct listing *listing);

/* ---- list_fields.c ---- */
struct list_made list_fields(const struct listing *listing);

/* A key of a file, and what may stand there. `file` is for who lists it to tell. */
struct field_listed {
    const char *file, *section, *key, *kind, *unit, *range, *about;
    bool needed;
    struct json_list read_by, choices, items;
};
struct field_listed field_listed_of(const struct field_path *path, struct arena *arena);

/* ---- columns.c ---- */

/* The objects in columns under the names of their members, a line each; lists of texts have
 * commas between. Members that are objects have no column. */
void columns_add(const struct json_shape *shape, const struct json_list *rows,
                 struct arena *arena, struct text_builder *out);

/* The same on standard output. */
void columns_print(const struct json_shape *shape, const struct json_list *rows,
                   struct arena *arena);

#endif
