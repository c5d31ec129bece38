/* yaml_edit.h - changing single values of a YAML file and keeping all its other bytes as
 * they are (room: yaml): comments, blank lines, indentation, quotes, line ends, a byte
 * order mark, a last line without its end.
 *
 * What is written is read again with the strict reader, and must be the old tree with
 * the edits made and nothing else: otherwise there is an error and no bytes. */
#ifndef MAYDECK_YAML_EDIT_H
#define MAYDECK_YAML_EDIT_H

#include <stddef.h>

#include "arena.h"
#include "problem.h"
#include "source.h"
#include "yaml_tree.h"

enum yaml_edit_kind {
    YAML_EDIT_SET,     /* another value for a key, or for an entry of a list */
    YAML_EDIT_ADD,     /* a key behind the last of a mapping, an entry behind the last */
    YAML_EDIT_REMOVE   /* a key with its value, or an entry */
};

/* One change of a mapping or list of the tree.
 *
 * SET puts the new value where the old one stands in one line: a text, or a list or
 * mapping in brackets. A trailing comment stays, and quotes stay where there were some.
 * ADD puts the new one in brackets behind the last value; where there are no brackets, in
 * lines of its own behind the last line of the last value, written as the others are.
 * REMOVE takes whole lines, with the comments in them, or in brackets the value and a
 * comma. What holds a list or mapping without brackets cannot lose all of it. */
struct yaml_edit {
    enum yaml_edit_kind kind;
    const struct yaml_node *in;     /* the mapping or list, a node of the tree */
    const char *key;                /* of a mapping; NULL for a list */
    size_t index;                   /* SET, REMOVE of a list: which entry, from 0 */
    /* SET, ADD. Only kind, text, quoted, items, pairs (with their keys) and count are looked
     * at. A text gets quotes where without them the strict reader would read something
     * else, and where `quoted` says so; the empty text without `quoted` leaves the value
     * out. Texts are made NFC; one with a line break cannot be written. */
    const struct yaml_node *value;
};

/* One file and what is to change in it. */
struct yaml_change {
    const struct source *source;
    const struct yaml_node *tree;   /* read from `source` */
    const struct yaml_edit *edits;  /* in any order; ADDs to the same place in theirs */
    size_t edit_count;
};

/* A file's bytes, with the byte order mark if it had one; followed by a NUL that `length`
 * does not count. */
struct yaml_edited {
    const char *bytes;
    size_t length;
};

/* The file with all edits made, in the arena; NULL, with an error for each edit that
 * cannot be made, where one cannot: two about the same value, one inside of what another
 * removes, a key that is not there or there already, an old value of several lines. */
const struct yaml_edited *yaml_edit(const struct yaml_change *change, struct arena *arena,
                                    struct problems *problems);

/* The value in one line, as an edit would write it within brackets; where none of its texts has a
 * line break, and no entry of a list in it is left out, it is read as the same value again. */
const char *yaml_line(const struct yaml_node *value, struct arena *arena);

#endif
