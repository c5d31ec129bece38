/* own_line.h - lines of the base's own on cards, as its file or that of one boat has them (room:
 * record). A card has two at most. */
#ifndef MAYDECK_OWN_LINE_H
#define MAYDECK_OWN_LINE_H

#include <stdbool.h>
#include <stddef.h>

#include "arena.h"
#include "hazard.h"
#include "problem.h"
#include "yaml_fields.h"

struct own_line {
    struct text_value card, say, source;
    struct act_values does;                 /* what it has people do, for the proof */
    struct place place;
};

struct own_lines {
    const struct own_line *rows;
    size_t count;
};

/* The keys of a line. */
extern const struct field_table own_line_table;

struct base_record;
struct boat;

/* The lines of the sheet of that id and procedure one by one, the base's before the boat's, from
 * *index 0 on; NULL where there is no more. Either record may be NULL. */
const struct own_line *own_line_next(const struct base_record *base, const struct boat *boat,
                                     const char *procedure_key, const char *sheet_id,
                                     size_t *index);

/* Tells lines of one file that are more than a card has room for, and channels on which nobody
 * talks; and the same of a boat's lines beside those of her base. */
void own_lines_check(const struct own_lines *lines, struct arena *arena,
                     struct problems *problems);
void own_lines_beside_check(const struct own_lines *bases, const struct own_lines *lines,
                            struct problems *problems);

#endif
