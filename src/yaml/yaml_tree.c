/* yaml_tree.c - builds the tree of a file from its pieces (room: yaml). Goes on
 * after an error where it can, so that all are told, but then gives no tree.
 * Never judges what a key or value means. */
#include "yaml_tree.h"

#include <string.h>

#include "text.h"
#include "yaml_reader.h"

#define DEPTH_LIMIT 16

static const struct yaml_node *tree_node_read(struct yaml_reader *reader, struct piece piece,
                                              int depth);

/* The line breaks at the end of a block scalar are none of its text. */
static const char *scalar_text(struct yaml_reader *reader, const struct piece *piece)
{
    char *text = text_nfc(reader->arena, piece->text);

    if (piece->style == SCALAR_BLOCK) {
        size_t length = 0;
        for (size_t i = 0; text[i] != '\0'; i++)
            if (text[i] != '\n')
                length = i + 1;
        text[length] = '\0';
    }
    return text;
}

/* The bytes from where `start` begins to where `end` ends. */
static struct byte_range pieces_range(struct yaml_reader *reader, const struct piece *start,
                                      const struct piece *end)
{
    size_t first = reader_offset(reader, start->start);

    return (struct byte_range){first, reader_offset(reader, end->end)};
}

/* libyaml counts the empty lines behind a block scalar as a part of it. */
static struct byte_range scalar_range(struct yaml_reader *reader, const struct piece *piece)
{
    struct byte_range range = pieces_range(reader, piece, piece);
    const char *bytes = reader->clean->bytes;

    while (piece->style == SCALAR_BLOCK && range.end > range.start + 1 &&
           strchr(" \t\r\n", bytes[range.end - 1]) != NULL)
        range.end--;
    return range;
}

static void scalar_read(struct yaml_reader *reader, const struct piece *piece,
                        struct yaml_node *node)
{
    node->kind = YAML_SCALAR;
    node->text = scalar_text(reader, piece);
    node->quoted = piece->style != SCALAR_PLAIN;
    node->range = scalar_range(reader, piece);
    scalar_check(reader, piece);
}

/* Brackets are underlined to their end; what has none, at its first sign. `last` is the
 * end of the last value in it. */
static void collection_place(struct yaml_reader *reader, const struct piece *start,
                             const struct piece *end, size_t last, struct yaml_node *node)
{
    node->flow = start->flow;
    node->range = pieces_range(reader, start, start->flow ? end : start);
    if (start->flow) {
        node->place = reader_place(reader, start->start, end->end);
        return;
    }
    node->place = reader_spot(reader, start->start.line, start->start.column, 1);
    node->range.end = last;
}

static bool piece_ends(const struct piece *piece)
{
    return piece->kind == PIECE_STOP || piece->kind == PIECE_END;
}

/* What is read next stands inside of `start`; returns what to go back to. */
static const struct piece *collection_open(struct yaml_reader *reader,
                                           const struct piece *start)
{
    const struct piece *outer = reader->open;

    reader->open = start;
    return outer;
}

static void sequence_read(struct yaml_reader *reader, const struct piece *start, int depth,
                          struct yaml_node *node)
{
    const struct piece *outer = collection_open(reader, start);
    const struct yaml_node **items = NULL;
    size_t capacity = 0;
    struct piece piece = piece_next(reader);

    for (; !piece_ends(&piece); piece = piece_next(reader)) {
        items = arena_grow(reader->arena, items, node->count, &capacity, sizeof *items);
        items[node->count++] = tree_node_read(reader, piece, depth + 1);
    }
    node->kind = YAML_SEQUENCE;
    node->items = items;
    collection_place(reader, start, &piece,
                     node->count > 0 ? items[node->count - 1]->range.end : 0, node);
    reader->open = outer;
}

static const struct yaml_pair *pair_find(const struct yaml_pair *pairs, size_t count,
                                         const char *key)
{
    for (size_t i = 0; i < count; i++)
        if (text_equal(pairs[i].key, key))
            return &pairs[i];
    return NULL;
}

/* The key's text, or NULL (told) for what cannot be one. */
static const char *key_read(struct yaml_reader *reader, const struct piece *piece, int depth,
                            struct yaml_pair *pair)
{
    const struct yaml_node *node = tree_node_read(reader, *piece, depth + 1);
    const struct place *place = &pair->key_place;

    pair->key_place = node->place;
    pair->key_range = node->range;
    if (piece->kind == PIECE_ALIAS || piece->kind == PIECE_STOP)
        return NULL;
    if (node->kind != YAML_SCALAR) {
        reader_error(reader, *place,
                     "write a plain word as the key; a text that begins with { or [ needs quotes",
                     "a key must be a plain word, not %s", yaml_kind_word(node));
        return NULL;
    }
    if (text_empty(node->text)) {
        reader_error(reader, *place, "write the key before the colon", "a key is missing");
        return NULL;
    }
    if (!node->quoted && text_equal(node->text, "<<")) {
        reader_error(reader, *place, "write out the keys that were to be merged",
                     "the merge key \"<<\" is not allowed");
        return NULL;
    }
    return node->text;
}

static void repeat_tell(struct yaml_reader *reader, struct place place,
                        const struct yaml_pair *first)
{
    reader_error(reader, place, "keep only one of the two",
                 "the key \"%s\" stands here a second time; the first is at %s:%d", first->key,
                 reader->source->name, first->key_place.line);
}

/* One pair after its key's piece; false where it is none of the mapping's. */
static bool tree_pair_read(struct yaml_reader *reader, const struct piece *key, int depth,
                           struct bare_words *bare, struct yaml_pair *pair)
{
    pair->key = key_read(reader, key, depth, pair);
    const struct piece value = piece_next(reader);
    bool is_bare = pair->key != NULL && pair_is_bare(reader, key, &value);

    if (is_bare)
        bare_words_add(reader, bare, key);
    else
        bare_words_end(reader, bare, key, &value);
    pair->value = tree_node_read(reader, value, depth + 1);
    return pair->key != NULL && !is_bare;
}

static void mapping_read(struct yaml_reader *reader, const struct piece *start, int depth,
                         struct yaml_node *node)
{
    const struct piece *outer = collection_open(reader, start);
    struct bare_words bare = {.value = {.kind = PIECE_STOP}};
    struct yaml_pair *pairs = NULL;
    size_t capacity = 0;
    struct piece piece = piece_next(reader);

    for (; !piece_ends(&piece); piece = piece_next(reader)) {
        struct yaml_pair pair = {0};
        if (!tree_pair_read(reader, &piece, depth, &bare, &pair))
            continue;
        const struct yaml_pair *first = pair_find(pairs, node->count, pair.key);
        if (first != NULL) {
            repeat_tell(reader, pair.key_place, first);
            continue;
        }
        pairs = arena_grow(reader->arena, pairs, node->count, &capacity, sizeof *pairs);
        pairs[node->count++] = pair;
    }
    bare_words_tell(reader, &bare);
    node->kind = YAML_MAPPING;
    node->pairs = pairs;
    collection_place(reader, start, &piece,
                     node->count > 0 ? pairs[node->count - 1].value->range.end : 0, node);
    reader->open = outer;
}

/* Stops the reader: libyaml's time grows with the square of the depth. */
static bool depth_check(struct yaml_reader *reader, const struct piece *piece, int depth)
{
    if (depth <= DEPTH_LIMIT)
        return true;
    if (!reader->stopped)
        reader_error(reader, reader_spot(reader, piece->start.line, piece->start.column, 1),
                     "look for a bracket or an indentation too many",
                     "lists and mappings stand more than %d deep in each other", DEPTH_LIMIT);
    reader->stopped = true;
    return false;
}

/* Never NULL, so that reading can go on: what is no value counts as empty. */
static const struct yaml_node *tree_node_read(struct yaml_reader *reader, struct piece piece,
                                              int depth)
{
    struct yaml_node *node = arena_alloc(reader->arena, sizeof *node);

    node->kind = YAML_SCALAR;
    node->text = "";
    node->place = piece_place(reader, &piece);
    if (piece.kind == PIECE_STOP)
        return node;
    marks_check(reader, &piece);
    if (piece.kind == PIECE_SCALAR)
        scalar_read(reader, &piece, node);
    else if (piece.kind == PIECE_SEQUENCE && depth_check(reader, &piece, depth))
        sequence_read(reader, &piece, depth, node);
    else if (piece.kind == PIECE_MAPPING && depth_check(reader, &piece, depth))
        mapping_read(reader, &piece, depth, node);
    return node;
}

static void empty_tell(struct yaml_reader *reader)
{
    reader_error(reader, source_whole(reader->source), "look whether the right file was saved",
                 "the file holds nothing but comments or white space");
}

/* The one document of a file. */
static const struct yaml_node *document_read(struct yaml_reader *reader)
{
    struct piece piece = piece_next(reader);

    if (piece.kind == PIECE_FILE_END)
        empty_tell(reader);
    if (piece.kind != PIECE_DOCUMENT)
        return NULL;
    piece = piece_next(reader);
    const struct yaml_node *root = tree_node_read(reader, piece, 1);
    if (piece.kind == PIECE_SCALAR && !root->quoted && text_empty(root->text))
        empty_tell(reader);
    (void)piece_next(reader);  /* the end of the document */
    piece = piece_next(reader);
    if (piece.kind == PIECE_DOCUMENT)
        reader_error(reader, piece_place(reader, &piece),
                     "delete the line, or move what follows to a file of its own",
                     "a second document begins here; a file holds one");
    return root;
}

/* libyaml's memory begins and ends here. */
static const struct yaml_node *clean_read(struct yaml_reader *reader)
{
    if (!yaml_parser_initialize(&reader->parser))
        arena_exhausted();
    yaml_parser_set_encoding(&reader->parser, YAML_UTF8_ENCODING);
    yaml_parser_set_input_string(&reader->parser,
                                 (const unsigned char *)reader->clean->bytes,
                                 reader->clean->length);
    const struct yaml_node *root = document_read(reader);
    yaml_parser_delete(&reader->parser);
    return root;
}

const struct yaml_node *yaml_tree_read(const struct source *source, struct arena *arena,
                                       struct problems *problems)
{
    struct yaml_reader reader = {
        .source = source,
        .arena = arena,
        .problems = problems,
        .last = {.kind = PIECE_STOP},
    };

    reader.clean = yaml_check_text(source, arena, problems, &reader.wrong);
    if (reader.clean == NULL)
        return NULL;
    const struct yaml_node *root = clean_read(&reader);
    return reader.wrong ? NULL : root;
}
