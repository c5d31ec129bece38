/* field_slips.h - the ways in which a hand writes a field of a file wrongly, each as a change of
 * the file's bytes and what must be told of it. */
#ifndef MAYDECK_FIELD_SLIPS_H
#define MAYDECK_FIELD_SLIPS_H

#include <stdbool.h>

#include "arena.h"
#include "source.h"
#include "yaml_fields.h"
#include "yaml_tree.h"

/* One key of a file, with its value. */
struct spot {
    struct arena *arena;
    const struct source *source;
    const struct yaml_node *mapping;
    size_t index;                     /* of its pair in the mapping */
    const struct field_table *table;
    const struct field *field;
};

/* A change of the file: these bytes in the place of those from `from` to `to`. What is told
 * then stands at `at` in the new file, and its remedy holds `named`. */
struct attempt {
    size_t from, to, at;
    const char *put, *named;
};

const struct yaml_pair *spot_pair(const struct spot *spot);

/* A kind of slip. `make` gives false where nothing of the kind can be written. */
struct field_slip {
    const char *name;
    bool (*make)(const struct spot *spot, struct attempt *attempt);
};
extern const struct field_slip field_slips[];
extern const size_t field_slip_count;

/* The key left without a value, and taken out: of braces with one comma, of lines with its
 * lines. */
struct attempt spot_emptied(const struct spot *spot);
struct attempt spot_taken_out(const struct spot *spot);

/* The file with the change made. */
const struct source *spot_changed(const struct spot *spot, const struct attempt *attempt);

#endif
