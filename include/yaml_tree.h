/* yaml_tree.h - one YAML file as a tree in which each node knows its place
 * (room: yaml). Only src/yaml sees libyaml.
 *
 * The reader is strict, since what YAML forgives can cost a life: UTF-8 only;
 * no control or bidirectional characters; one document; mappings whose keys are
 * plain words, each once and with a colon ({spot: here, below} would lose a word); no
 * typographic quotes around a text; no anchors, aliases, tags or directives; depth 16,
 * 10,000 events, 256 KiB. Scalars stay as written: NO, 012 and 5E12 are text. */
#ifndef MAYDECK_YAML_TREE_H
#define MAYDECK_YAML_TREE_H

#include <stdbool.h>
#include <stddef.h>

#include "arena.h"
#include "problem.h"
#include "source.h"

#define YAML_FILE_LIMIT ((size_t)256 * 1024)

enum yaml_kind { YAML_SCALAR, YAML_SEQUENCE, YAML_MAPPING };

struct yaml_node;

/* Bytes of the source, from the first to behind the last. */
struct byte_range {
    size_t start, end;
};

/* One `key: value` of a mapping. */
struct yaml_pair {
    const char *key;
    struct place key_place;
    struct byte_range key_range;        /* with its quotes, without the colon */
    const struct yaml_node *value;
};

struct yaml_node {
    enum yaml_kind kind;
    struct place place;
    /* Brackets and quotes included. Of what has no brackets: from the first sign in it to
     * behind the last. Of a block scalar: without the white space at its end. Empty (start
     * is end) for a value that was left out; in brackets that is at the sign behind it. */
    struct byte_range range;
    const char *text;                   /* scalar: NFC as written; "" if empty */
    bool quoted;                        /* scalar: in quotes or a block scalar */
    bool flow;                          /* sequence, mapping: in brackets, { } or [ ] */
    const struct yaml_node *const *items; /* sequence */
    const struct yaml_pair *pairs;      /* mapping, in file order */
    size_t count;                       /* of items or pairs */
};

/* The file's tree, or NULL when anything in it was an error (all that could be
 * found is in `problems`: after a syntax error libyaml cannot go on, but
 * duplicate keys, characters, anchors and the like are all told, up to a hundred a
 * file). An empty file is an error. Line breaks stand only in block scalars (`|`),
 * and none at their end; tabs stand in no text. */
const struct yaml_node *yaml_tree_read(const struct source *source, struct arena *arena,
                                       struct problems *problems);

/* The value of `key` in a mapping, or NULL. */
const struct yaml_node *yaml_get(const struct yaml_node *mapping, const char *key);

/* Stable text of the tree, for tests and for looking. */
void yaml_dump(const struct yaml_node *node, struct text_builder *out);

/* What the tree says, each part with its length: the same for two files that differ only in
 * comments, quotes, line breaks, brackets and the order of keys in a mapping, and for no others. */
void yaml_content_add(const struct yaml_node *node, struct text_builder *out);

/* "a text", "a list", "a mapping": for messages. */
const char *yaml_kind_word(const struct yaml_node *node);

#endif
