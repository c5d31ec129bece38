/* identities_written.c - the identities in a boat's file, whatever else is wrong with it
 * (room: record): those of all boats of a base are held against each other, also where one
 * boat alone is asked for. Never tells anything and judges nothing. */
#include "boat.h"

#include <string.h>

#include "record.h"
#include "text.h"

#define TREE_LIMIT ((size_t)64 * 1024 * 1024)

static const char *const identity_keys[] = {
    [IDENTITY_MMSI] = "mmsi", [IDENTITY_CALL_SIGN] = "call_sign", [IDENTITY_BEACON] = "hex_id"};
#define IDENTITY_KEY_COUNT (sizeof identity_keys / sizeof *identity_keys)

/* One file as it is looked through. */
struct looking {
    struct written_identity *rows;
    size_t count, room;
    struct arena *arena;
};

static void keep(struct looking *looking, size_t kind, const char *at, size_t length,
                 struct place place)
{
    looking->rows = arena_grow(looking->arena, looking->rows, looking->count, &looking->room,
                               sizeof *looking->rows);
    looking->rows[looking->count++] = (struct written_identity){
        (enum identity_kind)kind,
        {.text = arena_copy(looking->arena, at, length), .place = place}};
}

/* ---- in the tree ---- */

static void node_look(struct looking *looking, const struct yaml_node *node);

static void pair_look(struct looking *looking, const struct yaml_pair *pair)
{
    for (size_t kind = 0; kind < IDENTITY_KEY_COUNT; kind++)
        if (pair->value->kind == YAML_SCALAR && text_equal(pair->key, identity_keys[kind]))
            keep(looking, kind, pair->value->text, strlen(pair->value->text),
                 pair->value->place);
    node_look(looking, pair->value);
}

static void node_look(struct looking *looking, const struct yaml_node *node)
{
    for (size_t i = 0; node->kind == YAML_SEQUENCE && i < node->count; i++)
        node_look(looking, node->items[i]);
    for (size_t i = 0; node->kind == YAML_MAPPING && i < node->count; i++)
        pair_look(looking, &node->pairs[i]);
}

/* ---- in the lines of a file that gives no tree ---- */

/* Where the value begins, if the key stands here; else 0. */
static size_t value_start(const char *line, size_t length, size_t at, const char *key)
{
    size_t end = at + strlen(key);
    if ((at > 0 && strchr(" {,\"'\t", line[at - 1]) == NULL) || end >= length ||
        memcmp(line + at, key, strlen(key)) != 0)
        return 0;
    while (end < length && (line[end] == ' ' || line[end] == '"' || line[end] == '\''))
        end++;
    if (end >= length || line[end] != ':')
        return 0;
    do
        end++;
    while (end < length && line[end] == ' ');
    return end;
}

/* To the closing quote, or to what ends a plain word. */
static size_t value_length(const char *at, size_t length, char quote)
{
    size_t end = 0;
    while (end < length && (quote != '\0' ? at[end] != quote : strchr(",}#", at[end]) == NULL))
        end++;
    while (quote == '\0' && end > 0 && at[end - 1] == ' ')
        end--;
    return end;
}

static void value_keep(struct looking *looking, const struct source *source, int number,
                       size_t kind, size_t start)
{
    size_t length;
    const char *line = source_line(source, number, &length);
    char quote = '\0';
    if (start < length && (line[start] == '"' || line[start] == '\''))
        quote = line[start++];
    size_t size = value_length(line + start, length - start, quote);
    struct place place = source_place(source, source->line_starts[number - 1] + start);
    place.span = (int)size;
    keep(looking, kind, line + start, size, place);
}

static void line_look(struct looking *looking, const struct source *source, int number)
{
    size_t length;
    const char *line = source_line(source, number, &length);
    for (size_t at = 0; at < length; at++) {
        if (line[at] == '#' && (at == 0 || line[at - 1] == ' '))
            return;
        for (size_t kind = 0; kind < IDENTITY_KEY_COUNT; kind++) {
            size_t start = value_start(line, length, at, identity_keys[kind]);
            if (start > 0)
                value_keep(looking, source, number, kind, start);
        }
    }
}

/* ---- both ---- */

struct written_identities identities_written(const struct source *source, struct arena *arena)
{
    struct looking looking = {.arena = arena};
    struct arena *own = arena_new(TREE_LIMIT);
    const struct yaml_node *root = yaml_tree_read(source, own, problems_new(own));
    bool whole = root != NULL;
    if (whole)
        node_look(&looking, root);
    for (size_t i = 1; !whole && i <= source->line_count; i++)
        line_look(&looking, source, (int)i);
    arena_free(own);
    return (struct written_identities){looking.rows, looking.count, whole};
}
